// Generated from the files in data/ by `npm run generate`; edit those.
import type { FixingRecord } from '../neighbour.ts';

/** Pinch bolt M6x1. */
export const pinchBoltM6x1: FixingRecord = {
  "dataEdition": "2026.11",
  "id": "pinch-bolt-m6x1",
  "aliases": [],
  "kind": "fixing",
  "title": "Pinch bolt M6x1",
  "summary": "One of the two bolts that close the slot of a pinched arm.",
  "form": "pinch-bolt",
  "thread": {
    "id": "pinch-m6x1",
    "use": "Pinch bolts of the arm",
    "designation": "M6x1",
    "nominalDiameterMm": {
      "value": 6,
      "unit": "mm",
      "standing": "from-memory",
      "sources": []
    },
    "pitchMm": {
      "value": 1,
      "unit": "mm",
      "standing": "from-memory",
      "sources": []
    },
    "hand": "right",
    "pitchDiameterMm": {
      "value": 5.3505,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Nominal diameter less 0.649519 pitches."
    },
    "minorDiameterMm": {
      "value": 4.7731,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "External thread: nominal diameter less 1.226869 pitches."
    },
    "internalMinorDiameterMm": {
      "value": 4.9175,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Internal thread: nominal diameter less 1.082532 pitches."
    },
    "stressAreaMm2": {
      "value": 20.123,
      "unit": "mm2",
      "standing": "derived",
      "sources": [
        "iso-898-1-quoted"
      ],
      "note": "pi/4 times the square of the nominal diameter less 0.938194 pitches."
    }
  },
  "heads": [
    {
      "id": "socket-5",
      "kind": "internal-hexagon",
      "acrossFlatsMm": {
        "value": 5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "jp-shop-pinch"
        ]
      },
      "note": "Pinch bolts."
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "alternately",
      "statement": "Two bolts, tightened alternately in small steps.",
      "standing": "secondary",
      "sources": [
        "dealer-torque-tables",
        "jp-shop-pinch",
        "pinch-torque-note"
      ]
    }
  ],
  "torquePractice": [
    {
      "id": "dealer-pinch",
      "joint": "Pinch arm, two bolts",
      "torqueNm": {
        "value": 13.5,
        "unit": "Nm",
        "lower": 12,
        "upper": 15,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "shop-pinch",
      "joint": "Pinch arm, two bolts",
      "torqueNm": {
        "value": 13,
        "unit": "Nm",
        "lower": 12,
        "upper": 14,
        "standing": "secondary",
        "sources": [
          "jp-shop-pinch",
          "pinch-torque-note"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "mating": [],
  "conflicts": [
    {
      "id": "pinch-torque",
      "subject": "Tightening torque of the pinch bolts",
      "positions": [
        {
          "id": "12-15",
          "statement": "12 to 15 Nm.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        },
        {
          "id": "12-14",
          "statement": "12 to 14 Nm.",
          "standing": "secondary",
          "sources": [
            "jp-shop-pinch",
            "pinch-torque-note"
          ]
        }
      ],
      "comment": "The value on the arm stands above both."
    }
  ],
  "missing": [
    "A source for the thread."
  ]
};
