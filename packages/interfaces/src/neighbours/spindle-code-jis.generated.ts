// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Codes of spindles after the Japanese standard. */
export const spindleCodeJis: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "spindle-code-jis",
  "aliases": [],
  "kind": "convention",
  "title": "Codes of spindles after the Japanese standard",
  "summary": "A leading digit for the shell, letters for the group of lengths.",
  "topic": "spindle-length",
  "values": [
    {
      "id": "digit-3",
      "use": "Width of the shell that the leading digit 3 stands for",
      "quantity": {
        "value": 68,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "taper-de-wiki"
        ],
        "note": "The typical British or ISO shell."
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "letters",
      "statement": "Letters tell the group of lengths.",
      "standing": "secondary",
      "sources": [
        "taper-de-wiki"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": [
    "The table of the codes."
  ]
};
