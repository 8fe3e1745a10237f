// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Length of an asymmetric spindle. */
export const spindleLengthAsymmetric: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "spindle-length-asymmetric",
  "aliases": [],
  "kind": "convention",
  "title": "Length of an asymmetric spindle",
  "summary": "Only the drive-side half counts for the chainline.",
  "topic": "spindle-length",
  "values": [
    {
      "id": "spacer",
      "use": "Share of a spacer under the fixed cup that reaches the chainline",
      "quantity": {
        "value": 1,
        "unit": "ratio",
        "standing": "secondary",
        "sources": [
          "spindle-spacers-2016"
        ]
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "drive-half",
      "statement": "The change is that of the drive-side half only.",
      "standing": "secondary",
      "sources": [
        "spindle-spacers-2016"
      ]
    },
    {
      "id": "spacers",
      "statement": "Spacers under the fixed cup shift the drive side by their full thickness.",
      "standing": "secondary",
      "sources": [
        "spindle-spacers-2016"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": []
};
