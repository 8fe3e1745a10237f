// Generated from the files in data/ by `npm run generate`; edit those.
import type { FixingRecord } from '../neighbour.ts';

/** Crank bolt M12x1. */
export const boltM12x1: FixingRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-m12x1",
  "aliases": [],
  "kind": "fixing",
  "title": "Crank bolt M12x1",
  "summary": "The smaller of the two bolts that the open ten-spline standard allows.",
  "form": "spindle-bolt",
  "thread": {
    "id": "bolt-m12x1",
    "use": "Bolt in the spindle end, M12 spindles",
    "designation": "M12x1",
    "nominalDiameterMm": {
      "value": 12,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-10-overview"
      ]
    },
    "pitchMm": {
      "value": 1,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "thread-size-list"
      ],
      "note": "Given for some splined cranks."
    },
    "hand": "right",
    "pitchDiameterMm": {
      "value": 11.3505,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Nominal diameter less 0.649519 pitches."
    },
    "minorDiameterMm": {
      "value": 10.7731,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "External thread: nominal diameter less 1.226869 pitches."
    },
    "internalMinorDiameterMm": {
      "value": 10.9175,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Internal thread: nominal diameter less 1.082532 pitches."
    },
    "stressAreaMm2": {
      "value": 96.104,
      "unit": "mm2",
      "standing": "derived",
      "sources": [
        "iso-898-1-quoted"
      ],
      "note": "pi/4 times the square of the nominal diameter less 0.938194 pitches."
    }
  },
  "heads": [],
  "documents": [],
  "claims": [
    {
      "id": "thicker-wall",
      "statement": "The smaller bolt leaves a thicker wall and a stronger spindle.",
      "standing": "secondary",
      "sources": [
        "spline-10-overview"
      ]
    }
  ],
  "torquePractice": [
    {
      "id": "dealer-m12-first",
      "joint": "Splined, single M12 bolt, first table",
      "torqueNm": {
        "value": 45.4,
        "unit": "Nm",
        "lower": 43.4,
        "upper": 47.4,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "dealer-m12-second",
      "joint": "Splined, single M12 bolt, second table",
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
      "id": "m12-torque",
      "subject": "Tightening torque of the M12 bolt",
      "positions": [
        {
          "id": "first-table",
          "statement": "43.4 to 47.4 Nm.",
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
      "comment": "Two tables of one origin. The value of the part maker stands above both."
    }
  ],
  "missing": []
};
