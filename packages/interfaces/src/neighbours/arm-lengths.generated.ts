// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Lengths of crank arms. */
export const armLengths: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "arm-lengths",
  "aliases": [],
  "kind": "convention",
  "title": "Lengths of crank arms",
  "summary": "From the middle of the spindle to the middle of the pedal.",
  "topic": "arm-length",
  "values": [
    {
      "id": "a-165",
      "use": "Length in common use",
      "quantity": {
        "value": 165,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "a-167-5",
      "use": "Length in common use",
      "quantity": {
        "value": 167.5,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "a-170",
      "use": "Length in common use",
      "quantity": {
        "value": 170,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "a-175",
      "use": "Length in common use",
      "quantity": {
        "value": 175,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "a-172-5",
      "use": "Length of the arm in a published measurement",
      "quantity": {
        "value": 172.5,
        "unit": "mm",
        "standing": "measured",
        "sources": [
          "pedal-force-2009"
        ]
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "pair",
      "statement": "The two arms of a crank have one length; it is stamped or moulded on the inner side.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": []
};
