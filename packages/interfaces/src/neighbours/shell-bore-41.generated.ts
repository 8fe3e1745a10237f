// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** Bore of 41 mm for pressed cups. */
export const shellBore41: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-bore-41",
  "aliases": [],
  "kind": "shell-bore",
  "title": "Bore of 41 mm for pressed cups",
  "summary": "Cups with the bearings are pressed into a wide shell.",
  "seat": "pressed-cup",
  "bores": [
    {
      "id": "b-41",
      "boreMm": {
        "value": 41,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
        ]
      }
    }
  ],
  "widths": [
    {
      "id": "w-86",
      "widthMm": {
        "value": 86,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
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
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
        ]
      }
    },
    {
      "id": "w-89-5",
      "widthMm": {
        "value": 89.5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
        ]
      }
    },
    {
      "id": "w-92",
      "widthMm": {
        "value": 92,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
        ]
      }
    },
    {
      "id": "w-104-5",
      "widthMm": {
        "value": 104.5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
        ]
      }
    },
    {
      "id": "w-107",
      "widthMm": {
        "value": 107,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
        ]
      }
    },
    {
      "id": "w-121",
      "widthMm": {
        "value": 121,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
        ]
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
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
        ]
      }
    },
    {
      "id": "s-30",
      "spindleDiameterMm": {
        "value": 30,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-overview-mtb",
          "shell-standards-table",
          "spacer-chart-24",
          "through-spindle-pages"
        ],
        "note": "With thin bearings."
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "bore-grows",
      "statement": "Each pressing can enlarge the bore: a cup of 41.05 mm in a bore of 41.00 mm left it 0.05 mm larger.",
      "standing": "secondary",
      "sources": [
        "through-spindle-pages"
      ],
      "value": {
        "value": 0.05,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "through-spindle-pages"
        ],
        "note": "Growth of the bore."
      }
    },
    {
      "id": "example-bore",
      "statement": "The bore of that example.",
      "standing": "secondary",
      "sources": [
        "through-spindle-pages"
      ],
      "value": {
        "value": 41,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "through-spindle-pages"
        ]
      }
    },
    {
      "id": "example-cup",
      "statement": "The cup of that example.",
      "standing": "secondary",
      "sources": [
        "through-spindle-pages"
      ],
      "value": {
        "value": 41.05,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "through-spindle-pages"
        ]
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
