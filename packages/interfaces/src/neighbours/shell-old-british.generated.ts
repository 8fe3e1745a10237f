// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellThreadRecord } from '../neighbour.ts';

/** Shell of one old British maker. */
export const shellOldBritish: ShellThreadRecord = {
  "dataEdition": "2026.11",
  "id": "shell-old-british",
  "aliases": [],
  "kind": "shell-thread",
  "title": "Shell of one old British maker",
  "summary": "1 3/8 in by 26 threads an inch instead of 24.",
  "threads": {
    "left": {
      "id": "left-cup",
      "use": "Left, adjustable cup",
      "designation": "1 3/8 in x 26 tpi",
      "nominalDiameterMm": {
        "value": 34.925,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-old-british"
        ],
        "note": "1 3/8 in."
      },
      "pitchMm": {
        "value": 0.9769,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "shell-old-british"
        ],
        "note": "Exactly 25.4 mm by the number of threads an inch."
      },
      "threadsPerInch": {
        "value": 26,
        "unit": "tpi",
        "standing": "secondary",
        "sources": [
          "shell-old-british"
        ]
      },
      "hand": "right"
    },
    "right": {
      "id": "right-cup",
      "use": "Right, fixed cup",
      "designation": "1 3/8 in x 26 tpi",
      "nominalDiameterMm": {
        "value": 34.925,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-old-british"
        ],
        "note": "1 3/8 in."
      },
      "pitchMm": {
        "value": 0.9769,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "shell-old-british"
        ],
        "note": "Exactly 25.4 mm by the number of threads an inch."
      },
      "threadsPerInch": {
        "value": 26,
        "unit": "tpi",
        "standing": "secondary",
        "sources": [
          "shell-old-british"
        ]
      },
      "hand": "left"
    }
  },
  "widths": [
    {
      "id": "w-71",
      "widthMm": {
        "value": 71,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "w-76",
      "widthMm": {
        "value": 76,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    }
  ],
  "caliper": {},
  "documents": [],
  "claims": [
    {
      "id": "looks-like-24",
      "statement": "To a caliper it is the common British shell; a cup of 24 threads an inch starts and then binds.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "torquePractice": [
    {
      "id": "cups",
      "joint": "Bottom-bracket cups",
      "torqueNm": {
        "value": 36.8,
        "unit": "Nm",
        "lower": 32.9,
        "upper": 40.7,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "mating": [],
  "conflicts": [],
  "missing": [
    "A source for the widths."
  ]
};
