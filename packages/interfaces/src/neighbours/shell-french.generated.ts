// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellThreadRecord } from '../neighbour.ts';

/** French shell. */
export const shellFrench: ShellThreadRecord = {
  "dataEdition": "2026.11",
  "id": "shell-french",
  "aliases": [],
  "kind": "shell-thread",
  "title": "French shell",
  "summary": "35 mm by 1 mm, both cups with a right-hand thread.",
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
          "shell-thread-page"
        ]
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page"
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
          "shell-thread-page"
        ]
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page"
        ]
      },
      "hand": "right"
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
          "shell-thread-page"
        ]
      }
    }
  ],
  "caliper": {},
  "documents": [],
  "claims": [
    {
      "id": "caliper",
      "statement": "To a caliper it is a British one: the pitch and the hand tell them apart.",
      "standing": "secondary",
      "sources": [
        "shell-thread-page"
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
  "missing": []
};
