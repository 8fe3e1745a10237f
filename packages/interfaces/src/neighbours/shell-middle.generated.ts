// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** Middle-size shell of small-wheel bicycles. */
export const shellMiddle: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-middle",
  "aliases": [],
  "kind": "shell-bore",
  "title": "Middle-size shell of small-wheel bicycles",
  "summary": "A plain shell of 41 mm in which the bearings sit directly.",
  "seat": "bearing",
  "bores": [
    {
      "id": "b-41",
      "boreMm": {
        "value": 41,
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
    },
    {
      "id": "not-the-wide-one",
      "statement": "The bore has the nominal size of the pressed-cup shell of road and mountain bicycles, but takes a bearing, not a cup.",
      "standing": "common-practice",
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
