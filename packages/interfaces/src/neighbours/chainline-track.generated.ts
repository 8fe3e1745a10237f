// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Chainline of track and single-speed road bicycles. */
export const chainlineTrack: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "chainline-track",
  "aliases": [],
  "kind": "convention",
  "title": "Chainline of track and single-speed road bicycles",
  "summary": "One ring, one sprocket, 42 mm from the middle plane.",
  "topic": "chainline",
  "values": [
    {
      "id": "chainline",
      "use": "Chainline",
      "quantity": {
        "value": 42,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "chainline-forum",
          "chainline-forum-tolerance"
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
