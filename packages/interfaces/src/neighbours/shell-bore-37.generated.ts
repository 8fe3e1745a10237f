// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** Bore of 37 mm for bearings in the frame. */
export const shellBore37: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-bore-37",
  "aliases": [],
  "kind": "shell-bore",
  "title": "Bore of 37 mm for bearings in the frame",
  "summary": "Bearings for a 24 mm spindle sit in the frame itself.",
  "seat": "bearing",
  "bores": [
    {
      "id": "b-37",
      "boreMm": {
        "value": 37,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-standards-table",
          "spacer-chart-24"
        ]
      }
    }
  ],
  "widths": [
    {
      "id": "w-90",
      "widthMm": {
        "value": 90,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-standards-table",
          "spacer-chart-24"
        ]
      }
    },
    {
      "id": "w-95",
      "widthMm": {
        "value": 95,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-standards-table",
          "spacer-chart-24"
        ],
        "note": "Mountain bicycles."
      }
    }
  ],
  "spindles": [
    {
      "id": "s-24",
      "spindleDiameterMm": {
        "value": 24,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-standards-table",
          "spacer-chart-24"
        ]
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
