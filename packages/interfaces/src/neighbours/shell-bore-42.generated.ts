// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** Bore for bearings of 42 mm in the frame. */
export const shellBore42: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-bore-42",
  "aliases": [],
  "kind": "shell-bore",
  "title": "Bore for bearings of 42 mm in the frame",
  "summary": "Bearings sit in the frame itself and are held by circlips.",
  "seat": "bearing",
  "bores": [
    {
      "id": "b-41-96",
      "boreMm": {
        "value": 41.96,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-standards-table",
          "spacer-chart-24"
        ],
        "note": "Frame bore; nominal 42 mm."
      }
    }
  ],
  "widths": [
    {
      "id": "w-68",
      "widthMm": {
        "value": 68,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-standards-table",
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
          "shell-shop-notes",
          "shell-standards-table",
          "spacer-chart-24"
        ]
      }
    },
    {
      "id": "w-83",
      "widthMm": {
        "value": 83,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-standards-table",
          "spacer-chart-24"
        ],
        "note": "Asymmetric."
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
          "shell-shop-notes",
          "shell-standards-table",
          "spacer-chart-24"
        ]
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "bearing",
      "statement": "The bearing is 42 mm across.",
      "standing": "secondary",
      "sources": [
        "shell-standards-table"
      ],
      "value": {
        "value": 42,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-standards-table"
        ],
        "note": "Outer diameter."
      }
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": [
    "A toleranced drawing of the bore."
  ]
};
