// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Tread, or Q factor. */
export const tread: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "tread",
  "aliases": [],
  "kind": "convention",
  "title": "Tread, or Q factor",
  "summary": "The distance between the outer faces of the arms at the pedals, along the spindle.",
  "topic": "tread",
  "values": [],
  "documents": [],
  "claims": [
    {
      "id": "definition",
      "statement": "The distance between the outer pedal faces of the arms, parallel to the spindle.",
      "standing": "secondary",
      "sources": [
        "tread-definition"
      ]
    },
    {
      "id": "sum",
      "statement": "It changes by the sum of the shifts of both arms.",
      "standing": "derived",
      "sources": [
        "tread-definition"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": [
    "A table of values."
  ]
};
