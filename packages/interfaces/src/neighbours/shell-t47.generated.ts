// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellThreadRecord } from '../neighbour.ts';

/** Shell with the 47 mm thread. */
export const shellT47: ShellThreadRecord = {
  "dataEdition": "2026.11",
  "id": "shell-t47",
  "aliases": [],
  "kind": "shell-thread",
  "title": "Shell with the 47 mm thread",
  "summary": "47 mm by 1 mm: a threaded shell wide enough for a 30 mm spindle.",
  "threads": {
    "left": {
      "id": "left-cup",
      "use": "Left, adjustable cup",
      "designation": "M47x1",
      "nominalDiameterMm": {
        "value": 47,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      },
      "hand": "right",
      "note": "The chart says to ask the maker; the hands are from memory."
    },
    "right": {
      "id": "right-cup",
      "use": "Right, fixed cup",
      "designation": "M47x1",
      "nominalDiameterMm": {
        "value": 47,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      },
      "hand": "left",
      "note": "The chart says to ask the maker; the hands are from memory."
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
          "spacer-chart-24"
        ]
      }
    },
    {
      "id": "w-73",
      "widthMm": {
        "value": 73,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      }
    },
    {
      "id": "w-77",
      "widthMm": {
        "value": 77,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      }
    },
    {
      "id": "w-85-5",
      "widthMm": {
        "value": 85.5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      }
    },
    {
      "id": "w-86-5",
      "widthMm": {
        "value": 86.5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      }
    }
  ],
  "caliper": {},
  "documents": [],
  "claims": [],
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
    "A source for the hands of the cups."
  ]
};
