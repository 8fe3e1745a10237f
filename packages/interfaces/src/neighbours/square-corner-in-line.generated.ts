// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Square with a corner in line with the arm. */
export const squareCornerInLine: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "square-corner-in-line",
  "aliases": [],
  "kind": "convention",
  "title": "Square with a corner in line with the arm",
  "summary": "The commoner way: the flats stand at 45 degrees to the arm.",
  "topic": "square-orientation",
  "values": [
    {
      "id": "flat-to-arm",
      "use": "Angle between a flat and the arm",
      "quantity": {
        "value": 45,
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
      "id": "most",
      "statement": "Most arms.",
      "standing": "secondary",
      "sources": [
        "forum-orientation-108816",
        "square-orientation-2015"
      ]
    },
    {
      "id": "no-pair",
      "statement": "An arm of this way cannot be paired with one that has a flat in line.",
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
