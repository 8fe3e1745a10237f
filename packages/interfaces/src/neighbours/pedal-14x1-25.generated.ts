// Generated from the files in data/ by `npm run generate`; edit those.
import type { PedalThreadRecord } from '../neighbour.ts';

/** Pedal thread of 14 mm. */
export const pedal14x125: PedalThreadRecord = {
  "dataEdition": "2026.11",
  "id": "pedal-14x1-25",
  "aliases": [],
  "kind": "pedal-thread",
  "title": "Pedal thread of 14 mm",
  "summary": "The old French pedal thread, the same as a common spark-plug thread.",
  "threads": {
    "left": {
      "id": "left-pedal",
      "use": "Left pedal and the eye of its arm",
      "designation": "M14x1.25",
      "nominalDiameterMm": {
        "value": 14,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "pedal-thread-moped",
          "pedal-threads-fr-wiki"
        ]
      },
      "pitchMm": {
        "value": 1.25,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "pedal-thread-moped",
          "pedal-threads-fr-wiki"
        ]
      },
      "hand": "left",
      "pitchDiameterMm": {
        "value": 13.1881,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "iso-68-1"
        ],
        "note": "Nominal diameter less 0.649519 pitches."
      },
      "minorDiameterMm": {
        "value": 12.4664,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "iso-68-1"
        ],
        "note": "External thread: nominal diameter less 1.226869 pitches."
      },
      "internalMinorDiameterMm": {
        "value": 12.6468,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "iso-68-1"
        ],
        "note": "Internal thread: nominal diameter less 1.082532 pitches."
      },
      "stressAreaMm2": {
        "value": 129.228,
        "unit": "mm2",
        "standing": "derived",
        "sources": [
          "iso-898-1-quoted"
        ],
        "note": "pi/4 times the square of the nominal diameter less 0.938194 pitches."
      }
    },
    "right": {
      "id": "right-pedal",
      "use": "Right pedal and the eye of its arm",
      "designation": "M14x1.25",
      "nominalDiameterMm": {
        "value": 14,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "pedal-thread-moped",
          "pedal-threads-fr-wiki"
        ]
      },
      "pitchMm": {
        "value": 1.25,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "pedal-thread-moped",
          "pedal-threads-fr-wiki"
        ]
      },
      "hand": "right",
      "pitchDiameterMm": {
        "value": 13.1881,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "iso-68-1"
        ],
        "note": "Nominal diameter less 0.649519 pitches."
      },
      "minorDiameterMm": {
        "value": 12.4664,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "iso-68-1"
        ],
        "note": "External thread: nominal diameter less 1.226869 pitches."
      },
      "internalMinorDiameterMm": {
        "value": 12.6468,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "iso-68-1"
        ],
        "note": "Internal thread: nominal diameter less 1.082532 pitches."
      },
      "stressAreaMm2": {
        "value": 129.228,
        "unit": "mm2",
        "standing": "derived",
        "sources": [
          "iso-898-1-quoted"
        ],
        "note": "pi/4 times the square of the nominal diameter less 0.938194 pitches."
      }
    }
  },
  "documents": [],
  "claims": [
    {
      "id": "cottered",
      "statement": "Most French cottered cranks had it.",
      "standing": "secondary",
      "sources": [
        "pedal-threads-fr-wiki"
      ]
    },
    {
      "id": "spark-plug",
      "statement": "It is a common spark-plug thread.",
      "standing": "secondary",
      "sources": [
        "pedal-thread-moped"
      ]
    },
    {
      "id": "tapped-out",
      "statement": "Arms of this thread are often cut out to 9/16 in, which leaves little of the flanks of the old thread.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "torquePractice": [
    {
      "id": "into-crank",
      "joint": "Pedal into crank",
      "torqueNm": {
        "value": 37.1,
        "unit": "Nm",
        "lower": 34.7,
        "upper": 39.5,
        "standing": "secondary",
        "sources": [
          "owners-manual-torques"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "mating": [],
  "conflicts": [],
  "missing": []
};
