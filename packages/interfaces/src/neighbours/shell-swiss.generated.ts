// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellThreadRecord } from '../neighbour.ts';

/** Swiss shell. */
export const shellSwiss: ShellThreadRecord = {
  "dataEdition": "2026.11",
  "id": "shell-swiss",
  "aliases": [],
  "kind": "shell-thread",
  "title": "Swiss shell",
  "summary": "The French thread with a left-hand right cup.",
  "threads": {
    "left": {
      "id": "left-cup",
      "use": "Left, adjustable cup",
      "designation": "M35x1",
      "nominalDiameterMm": {
        "value": 35,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "shells-fr-wiki"
        ]
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "shells-fr-wiki"
        ]
      },
      "hand": "right"
    },
    "right": {
      "id": "right-cup",
      "use": "Right, fixed cup",
      "designation": "M35x1",
      "nominalDiameterMm": {
        "value": 35,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "shells-fr-wiki"
        ]
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "shells-fr-wiki"
        ]
      },
      "hand": "left"
    }
  },
  "widths": [
    {
      "id": "w-68",
      "widthMm": {
        "value": 68,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "shells-fr-wiki"
        ]
      }
    }
  ],
  "caliper": {},
  "documents": [],
  "claims": [
    {
      "id": "like-french",
      "statement": "Diameter and pitch are the French ones; only the hand of the right cup differs.",
      "standing": "secondary",
      "sources": [
        "shells-fr-wiki"
      ]
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
    "The row of one table, which is cut off."
  ]
};
