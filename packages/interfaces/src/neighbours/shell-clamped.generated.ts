// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** Shell of 35 mm for a clamped cartridge. */
export const shellClamped: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-clamped",
  "aliases": [],
  "kind": "shell-bore",
  "title": "Shell of 35 mm for a clamped cartridge",
  "summary": "A plain or bevelled shell in which a cartridge is clamped between two nuts.",
  "seat": "clamped-cartridge",
  "bores": [
    {
      "id": "b-35",
      "boreMm": {
        "value": 35,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-unthreaded-list"
        ]
      }
    }
  ],
  "widths": [
    {
      "id": "w-range",
      "widthMm": {
        "value": 69,
        "unit": "mm",
        "lower": 65,
        "upper": 73,
        "standing": "secondary",
        "sources": [
          "shell-unthreaded-list"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "spindles": [],
  "documents": [],
  "claims": [
    {
      "id": "square",
      "statement": "Made for square tapers.",
      "standing": "secondary",
      "sources": [
        "shell-unthreaded-list"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": [
    "A toleranced drawing of the bore."
  ]
};
