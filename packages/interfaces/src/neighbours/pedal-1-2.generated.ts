// Generated from the files in data/ by `npm run generate`; edit those.
import type { PedalThreadRecord } from '../neighbour.ts';

/** Pedal thread 1/2 in. */
export const pedal12: PedalThreadRecord = {
  "dataEdition": "2026.11",
  "id": "pedal-1-2",
  "aliases": [],
  "kind": "pedal-thread",
  "title": "Pedal thread 1/2 in",
  "summary": "The pedal thread of one-piece and children’s cranks.",
  "threads": {
    "left": {
      "id": "left-pedal",
      "use": "Left pedal and the eye of its arm",
      "designation": "1/2 in x 20 tpi",
      "nominalDiameterMm": {
        "value": 12.7,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "pedal-thread-de",
          "pedal-threads-fr-wiki",
          "thread-size-list"
        ],
        "note": "1/2 in."
      },
      "pitchMm": {
        "value": 1.27,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "pedal-thread-de",
          "pedal-threads-fr-wiki",
          "thread-size-list"
        ],
        "note": "Exactly 25.4 mm by the number of threads an inch."
      },
      "threadsPerInch": {
        "value": 20,
        "unit": "tpi",
        "standing": "secondary",
        "sources": [
          "pedal-thread-de",
          "pedal-threads-fr-wiki",
          "thread-size-list"
        ]
      },
      "hand": "left",
      "pitchDiameterMm": {
        "value": 11.8751,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "Nominal diameter less 0.649519 pitches."
      },
      "minorDiameterMm": {
        "value": 11.0502,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "External thread: nominal diameter less 1.299038 pitches."
      },
      "internalMinorDiameterMm": {
        "value": 11.3252,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "Internal thread: nominal diameter less 1.082532 pitches."
      },
      "stressAreaMm2": {
        "value": 103.196,
        "unit": "mm2",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "pi/4 times the square of the nominal diameter less 0.974279 pitches."
      }
    },
    "right": {
      "id": "right-pedal",
      "use": "Right pedal and the eye of its arm",
      "designation": "1/2 in x 20 tpi",
      "nominalDiameterMm": {
        "value": 12.7,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "pedal-thread-de",
          "pedal-threads-fr-wiki",
          "thread-size-list"
        ],
        "note": "1/2 in."
      },
      "pitchMm": {
        "value": 1.27,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "pedal-thread-de",
          "pedal-threads-fr-wiki",
          "thread-size-list"
        ],
        "note": "Exactly 25.4 mm by the number of threads an inch."
      },
      "threadsPerInch": {
        "value": 20,
        "unit": "tpi",
        "standing": "secondary",
        "sources": [
          "pedal-thread-de",
          "pedal-threads-fr-wiki",
          "thread-size-list"
        ]
      },
      "hand": "right",
      "pitchDiameterMm": {
        "value": 11.8751,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "Nominal diameter less 0.649519 pitches."
      },
      "minorDiameterMm": {
        "value": 11.0502,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "External thread: nominal diameter less 1.299038 pitches."
      },
      "internalMinorDiameterMm": {
        "value": 11.3252,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "Internal thread: nominal diameter less 1.082532 pitches."
      },
      "stressAreaMm2": {
        "value": 103.196,
        "unit": "mm2",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "pi/4 times the square of the nominal diameter less 0.974279 pitches."
      }
    }
  },
  "documents": [],
  "claims": [
    {
      "id": "where",
      "statement": "One-piece and children’s cranks.",
      "standing": "secondary",
      "sources": [
        "pedal-thread-de",
        "pedal-threads-fr-wiki",
        "thread-size-list"
      ]
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
