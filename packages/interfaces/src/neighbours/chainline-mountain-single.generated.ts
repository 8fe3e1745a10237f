// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Chainline of single-speed mountain bicycles. */
export const chainlineMountainSingle: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "chainline-mountain-single",
  "aliases": [],
  "kind": "convention",
  "title": "Chainline of single-speed mountain bicycles",
  "summary": "One ring, farther out than on the road.",
  "topic": "chainline",
  "values": [
    {
      "id": "chainline",
      "use": "Chainline",
      "quantity": {
        "value": 54,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "chainline-forum"
        ]
      }
    }
  ],
  "documents": [],
  "claims": [],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": []
};
