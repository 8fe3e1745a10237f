// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellBoreRecord } from '../neighbour.ts';

/** Plain shells for loose pressed cups. */
export const shellPlain: ShellBoreRecord = {
  "dataEdition": "2026.11",
  "id": "shell-plain",
  "aliases": [],
  "kind": "shell-bore",
  "title": "Plain shells for loose pressed cups",
  "summary": "Old plain shells without a shoulder, pressed cups of loose tolerance.",
  "seat": "loose-pressed-cup",
  "bores": [
    {
      "id": "b-30",
      "boreMm": {
        "value": 30,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-unthreaded-list"
        ]
      }
    },
    {
      "id": "b-33",
      "boreMm": {
        "value": 33,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-unthreaded-list"
        ]
      }
    },
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
    },
    {
      "id": "b-38",
      "boreMm": {
        "value": 38,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-unthreaded-list"
        ]
      }
    },
    {
      "id": "b-40",
      "boreMm": {
        "value": 40,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-unthreaded-list"
        ]
      }
    },
    {
      "id": "b-45",
      "boreMm": {
        "value": 45,
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
      "id": "w-65",
      "widthMm": {
        "value": 65,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-unthreaded-list"
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
          "shell-unthreaded-list"
        ]
      }
    },
    {
      "id": "w-70",
      "widthMm": {
        "value": 70,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-unthreaded-list"
        ]
      }
    }
  ],
  "spindles": [],
  "documents": [],
  "claims": [
    {
      "id": "two-or-three",
      "statement": "For two-piece and three-piece cranks.",
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
