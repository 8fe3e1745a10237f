// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellThreadRecord } from '../neighbour.ts';

/** Italian shell. */
export const shellItalian: ShellThreadRecord = {
  "dataEdition": "2026.11",
  "id": "shell-italian",
  "aliases": [],
  "kind": "shell-thread",
  "title": "Italian shell",
  "summary": "36 mm by 24 threads an inch, both cups with a right-hand thread.",
  "threads": {
    "left": {
      "id": "left-cup",
      "use": "Left, adjustable cup",
      "designation": "36 mm x 24 tpi",
      "nominalDiameterMm": {
        "value": 36,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "spacer-chart-24"
        ]
      },
      "pitchMm": {
        "value": 1.0583,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "shell-thread-page",
          "spacer-chart-24"
        ],
        "note": "Exactly 25.4 mm by the number of threads an inch."
      },
      "threadsPerInch": {
        "value": 24,
        "unit": "tpi",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "spacer-chart-24"
        ]
      },
      "hand": "right"
    },
    "right": {
      "id": "right-cup",
      "use": "Right, fixed cup",
      "designation": "36 mm x 24 tpi",
      "nominalDiameterMm": {
        "value": 36,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "spacer-chart-24"
        ]
      },
      "pitchMm": {
        "value": 1.0583,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "shell-thread-page",
          "spacer-chart-24"
        ],
        "note": "Exactly 25.4 mm by the number of threads an inch."
      },
      "threadsPerInch": {
        "value": 24,
        "unit": "tpi",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "spacer-chart-24"
        ]
      },
      "hand": "right"
    }
  },
  "widths": [
    {
      "id": "w-70",
      "widthMm": {
        "value": 70,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-thread-page",
          "spacer-chart-24"
        ]
      }
    }
  ],
  "caliper": {
    "cupOutsideMm": {
      "value": 35.75,
      "unit": "mm",
      "lower": 35.6,
      "upper": 35.9,
      "standing": "secondary",
      "sources": [
        "shell-thread-page"
      ],
      "note": "Published as a range; the value is its middle."
    },
    "shellInsideMm": {
      "value": 34.75,
      "unit": "mm",
      "lower": 34.6,
      "upper": 34.9,
      "standing": "secondary",
      "sources": [
        "shell-thread-page"
      ],
      "note": "Published as a range; the value is its middle."
    }
  },
  "documents": [],
  "claims": [
    {
      "id": "right-cup-loosens",
      "statement": "The right cup has a right-hand thread and tends to unscrew in riding: it is the one to be checked.",
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
  "missing": []
};
