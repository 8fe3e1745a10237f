// Generated from the files in data/ by `npm run generate`; edit those.
import type { FixingRecord } from '../neighbour.ts';

/** Crank bolt M15x1. */
export const boltM15x1: FixingRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-m15x1",
  "aliases": [],
  "kind": "fixing",
  "title": "Crank bolt M15x1",
  "summary": "The larger of the two bolts that the open ten-spline standard allows.",
  "form": "spindle-bolt",
  "thread": {
    "id": "bolt-m15x1",
    "use": "Bolt in the spindle end, M15 spindles",
    "designation": "M15x1",
    "nominalDiameterMm": {
      "value": 15,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-10-overview"
      ]
    },
    "pitchMm": {
      "value": 1,
      "unit": "mm",
      "standing": "from-memory",
      "sources": []
    },
    "hand": "right",
    "pitchDiameterMm": {
      "value": 14.3505,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Nominal diameter less 0.649519 pitches."
    },
    "minorDiameterMm": {
      "value": 13.7731,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "External thread: nominal diameter less 1.226869 pitches."
    },
    "internalMinorDiameterMm": {
      "value": 13.9175,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Internal thread: nominal diameter less 1.082532 pitches."
    },
    "stressAreaMm2": {
      "value": 155.3,
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
      "id": "socket-10",
      "kind": "internal-hexagon",
      "acrossFlatsMm": {
        "value": 10,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    }
  ],
  "documents": [],
  "claims": [],
  "torquePractice": [
    {
      "id": "dealer-m15-first",
      "joint": "Splined, single M15 bolt, first table",
      "torqueNm": {
        "value": 48.8,
        "unit": "Nm",
        "lower": 43.4,
        "upper": 54.2,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "From the 384 to 480 lbf.in printed; the 42.4 to 47.4 Nm printed beside them do not agree and are taken for a misprint. The value is the middle."
      }
    },
    {
      "id": "dealer-m15-second",
      "joint": "Splined, single M15 bolt, second table",
      "torqueNm": {
        "value": 50.85,
        "unit": "Nm",
        "lower": 47.5,
        "upper": 54.2,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "mating": [],
  "conflicts": [
    {
      "id": "m15-torque",
      "subject": "Tightening torque of the M15 bolt",
      "positions": [
        {
          "id": "first-table-nm",
          "statement": "42.4 to 47.4 Nm as printed.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ],
          "value": {
            "value": 44.9,
            "unit": "Nm",
            "lower": 42.4,
            "upper": 47.4,
            "standing": "secondary",
            "sources": [
              "dealer-torque-tables"
            ],
            "note": "Published as a range; the value is its middle. The upper end is probably a misprint for 54.2."
          }
        },
        {
          "id": "first-table-lbf-in",
          "statement": "384 to 480 lbf.in as printed on the same line, which is 43.4 to 54.2 Nm.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        },
        {
          "id": "second-table",
          "statement": "47.5 to 54.2 Nm.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        }
      ],
      "comment": "Dealer tables contain errors of unit."
    }
  ],
  "missing": [
    "A source for the pitch."
  ]
};
