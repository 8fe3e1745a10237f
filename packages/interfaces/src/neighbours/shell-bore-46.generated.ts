// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** Bore of 46 mm for pressed cups. */
export const shellBore46: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-bore-46",
  "aliases": [],
  "kind": "shell-bore",
  "title": "Bore of 46 mm for pressed cups",
  "summary": "Cups with the bearings are pressed into the frame.",
  "seat": "pressed-cup",
  "bores": [
    {
      "id": "b-46",
      "boreMm": {
        "value": 46,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      }
    }
  ],
  "widths": [
    {
      "id": "w-61",
      "widthMm": {
        "value": 61,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      }
    },
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
      "id": "w-79",
      "widthMm": {
        "value": 79,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ],
        "note": "Asymmetric."
      }
    },
    {
      "id": "w-83",
      "widthMm": {
        "value": 83,
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
  "spindles": [
    {
      "id": "s-30",
      "spindleDiameterMm": {
        "value": 30,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ]
      }
    },
    {
      "id": "s-24",
      "spindleDiameterMm": {
        "value": 24,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spacer-chart-24"
        ],
        "note": "Also."
      }
    }
  ],
  "documents": [],
  "claims": [],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": [
    "A toleranced drawing of the bore."
  ]
};
