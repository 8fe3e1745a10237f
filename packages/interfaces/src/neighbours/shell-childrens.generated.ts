// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** Small shell of children’s bicycles. */
export const shellChildrens: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-childrens",
  "aliases": [],
  "kind": "shell-bore",
  "title": "Small shell of children’s bicycles",
  "summary": "A plain shell for a small one-piece crank.",
  "seat": "pressed-cup",
  "bores": [
    {
      "id": "b-43",
      "boreMm": {
        "value": 43,
        "unit": "mm",
        "standing": "measured",
        "sources": [
          "shell-standards-table"
        ],
        "note": "About."
      }
    }
  ],
  "widths": [
    {
      "id": "w-65",
      "widthMm": {
        "value": 65,
        "unit": "mm",
        "standing": "measured",
        "sources": [
          "shell-standards-table"
        ],
        "note": "About."
      }
    }
  ],
  "spindles": [],
  "documents": [],
  "claims": [
    {
      "id": "cups",
      "statement": "Pressed cups, as in the large shell of its kind.",
      "standing": "from-memory",
      "sources": []
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": [
    "A toleranced drawing of the bore."
  ]
};
