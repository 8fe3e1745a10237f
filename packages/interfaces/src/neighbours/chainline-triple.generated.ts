// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Chainline of mountain and touring triples. */
export const chainlineTriple: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "chainline-triple",
  "aliases": [],
  "kind": "convention",
  "title": "Chainline of mountain and touring triples",
  "summary": "The middle ring counts.",
  "topic": "chainline",
  "values": [
    {
      "id": "middle-113",
      "use": "Middle ring with a spindle of 113 mm",
      "quantity": {
        "value": 47.5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "chainline-pairs-jp"
        ]
      }
    },
    {
      "id": "middle-118",
      "use": "Middle ring with a spindle of 118 mm",
      "quantity": {
        "value": 50,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "chainline-pairs-jp"
        ]
      }
    },
    {
      "id": "middle-range",
      "use": "Middle ring",
      "quantity": {
        "value": 49,
        "unit": "mm",
        "lower": 48,
        "upper": 50,
        "standing": "secondary",
        "sources": [
          "chainline-forum"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "outer-range",
      "use": "Outer ring",
      "quantity": {
        "value": 53,
        "unit": "mm",
        "lower": 52,
        "upper": 54,
        "standing": "secondary",
        "sources": [
          "chainline-forum"
        ],
        "note": "Published as a range; the value is its middle."
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
