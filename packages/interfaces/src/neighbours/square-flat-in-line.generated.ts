// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Square with a flat in line with the arm. */
export const squareFlatInLine: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "square-flat-in-line",
  "aliases": [],
  "kind": "convention",
  "title": "Square with a flat in line with the arm",
  "summary": "The rarer way: a flat is parallel to the arm.",
  "topic": "square-orientation",
  "values": [
    {
      "id": "flat-to-arm",
      "use": "Angle between a flat and the arm",
      "quantity": {
        "value": 0,
        "unit": "deg",
        "standing": "secondary",
        "sources": [
          "forum-orientation-108816",
          "square-orientation-2015"
        ]
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "some",
      "statement": "Some arms.",
      "standing": "secondary",
      "sources": [
        "forum-orientation-108816",
        "square-orientation-2015"
      ]
    },
    {
      "id": "no-pair",
      "statement": "An arm of this way cannot be paired with one that has a corner in line.",
      "standing": "secondary",
      "sources": [
        "forum-orientation-108816",
        "square-orientation-2015"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": []
};
