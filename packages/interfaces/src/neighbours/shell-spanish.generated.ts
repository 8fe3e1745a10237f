// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** Spanish shell of small-wheel bicycles. */
export const shellSpanish: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-spanish",
  "aliases": [],
  "kind": "shell-bore",
  "title": "Spanish shell of small-wheel bicycles",
  "summary": "A plain shell of 37 mm in which the bearings sit directly.",
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
          "spline-48-notes"
        ]
      }
    }
  ],
  "widths": [],
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
      "id": "seat",
      "statement": "The bearings sit in the bore itself.",
      "standing": "from-memory",
      "sources": []
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": [
    "A toleranced drawing of the bore.",
    "Widths."
  ]
};
