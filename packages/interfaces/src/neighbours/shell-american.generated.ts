// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** American shell. */
export const shellAmerican: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-american",
  "aliases": [],
  "kind": "shell-bore",
  "title": "American shell",
  "summary": "The wide plain shell of one-piece cranks; adaptors and three-piece cranks use it too.",
  "seat": "pressed-cup",
  "bores": [
    {
      "id": "b-51-3",
      "boreMm": {
        "value": 51.3,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-standards-table"
        ],
        "note": "Table of the page.",
        "alternatives": [
          {
            "value": 51.4,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "shell-standards-table"
            ],
            "set": "text-of-the-page"
          },
          {
            "value": 51,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "spline-48-notes"
            ],
            "set": "small-wheel-trade",
            "note": "Rounded."
          }
        ]
      }
    }
  ],
  "widths": [
    {
      "id": "w-65",
      "widthMm": {
        "value": 65,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-standards-table"
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
          "shell-standards-table"
        ]
      }
    }
  ],
  "spindles": [
    {
      "id": "s-19",
      "spindleDiameterMm": {
        "value": 19,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-standards-table",
          "spline-48-notes"
        ]
      }
    },
    {
      "id": "s-22",
      "spindleDiameterMm": {
        "value": 22,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-standards-table",
          "spline-48-notes"
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
          "shell-standards-table",
          "spline-48-notes"
        ]
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "cups",
      "statement": "Press-in cups.",
      "standing": "secondary",
      "sources": [
        "one-piece-notes"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [
    {
      "id": "one-piece-bore",
      "subject": "Bore of the shell for a one-piece crank",
      "positions": [
        {
          "id": "table",
          "statement": "51.3 mm in the table of a page; 2.02 in is 51.3 mm.",
          "standing": "secondary",
          "sources": [
            "shell-standards-table"
          ],
          "value": {
            "value": 51.3,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "shell-standards-table"
            ]
          }
        },
        {
          "id": "text",
          "statement": "51.4 mm in the text of the same page.",
          "standing": "secondary",
          "sources": [
            "shell-standards-table"
          ],
          "value": {
            "value": 51.4,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "shell-standards-table"
            ]
          }
        },
        {
          "id": "trade",
          "statement": "51 mm in the trade of small-wheel bicycles.",
          "standing": "secondary",
          "sources": [
            "spline-48-notes"
          ],
          "value": {
            "value": 51,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "spline-48-notes"
            ]
          }
        }
      ],
      "comment": "Rounding explains two of them; measure the shell before a cup is pressed."
    }
  ],
  "missing": [
    "A toleranced drawing of the bore."
  ]
};
