// Generated from the files in data/ by `npm run generate`; edit those.
import type { PedalThreadRecord } from '../neighbour.ts';

/** Pedal thread 9/16 in. */
export const pedal916: PedalThreadRecord = {
  "dataEdition": "2026.11",
  "id": "pedal-9-16",
  "aliases": [],
  "kind": "pedal-thread",
  "title": "Pedal thread 9/16 in",
  "summary": "The international pedal thread of three-piece cranks.",
  "threads": {
    "left": {
      "id": "left-pedal",
      "use": "Left pedal and the eye of its arm",
      "designation": "9/16 in x 20 tpi",
      "nominalDiameterMm": {
        "value": 14.2875,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "pedal-thread-de",
          "pedal-threads-fr-wiki",
          "thread-size-list"
        ],
        "note": "9/16 in."
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
        "value": 13.4626,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "Nominal diameter less 0.649519 pitches."
      },
      "minorDiameterMm": {
        "value": 12.6377,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "External thread: nominal diameter less 1.299038 pitches."
      },
      "internalMinorDiameterMm": {
        "value": 12.9127,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "Internal thread: nominal diameter less 1.082532 pitches."
      },
      "stressAreaMm2": {
        "value": 133.759,
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
      "designation": "9/16 in x 20 tpi",
      "nominalDiameterMm": {
        "value": 14.2875,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "pedal-thread-de",
          "pedal-threads-fr-wiki",
          "thread-size-list"
        ],
        "note": "9/16 in."
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
        "value": 13.4626,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "Nominal diameter less 0.649519 pitches."
      },
      "minorDiameterMm": {
        "value": 12.6377,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "External thread: nominal diameter less 1.299038 pitches."
      },
      "internalMinorDiameterMm": {
        "value": 12.9127,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "asme-b1-1"
        ],
        "note": "Internal thread: nominal diameter less 1.082532 pitches."
      },
      "stressAreaMm2": {
        "value": 133.759,
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
      "id": "left-pedal",
      "statement": "The left pedal has a left-hand thread.",
      "standing": "secondary",
      "sources": [
        "pedal-thread-de",
        "pedal-threads-fr-wiki",
        "thread-size-list"
      ]
    },
    {
      "id": "fretting",
      "statement": "Fretting between the face of the pedal and the arm starts cracks at the eye.",
      "standing": "secondary",
      "sources": [
        "pedal-eye-fretting"
      ]
    },
    {
      "id": "one-rider",
      "statement": "One rider of heavy use broke an eye about every 16 000 km over 25 years, until the seat was reworked.",
      "standing": "secondary",
      "sources": [
        "pedal-eye-fretting"
      ],
      "value": {
        "value": 16000,
        "unit": "km",
        "standing": "secondary",
        "sources": [
          "pedal-eye-fretting"
        ],
        "note": "About; published as 10 000 miles."
      }
    },
    {
      "id": "iso-6698-is-not-it",
      "statement": "ISO 6698 is the standard of freewheel and hub threads, not of pedals.",
      "standing": "standard",
      "sources": [
        "iso-6698"
      ],
      "note": "Contents list seen."
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
