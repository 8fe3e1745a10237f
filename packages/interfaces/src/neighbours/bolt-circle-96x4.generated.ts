// Generated from the files in data/ by `npm run generate`; edit those.
import type { BoltCircleRecord } from '../neighbour.ts';

/** Four-arm bolt circle of 96 mm. */
export const boltCircle96x4: BoltCircleRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-circle-96x4",
  "aliases": [],
  "kind": "bolt-circle",
  "title": "Four-arm bolt circle of 96 mm",
  "summary": "Four bolts on a circle of 96 mm; the smallest ring has 28 teeth.",
  "armCount": {
    "value": 4,
    "unit": "arms",
    "standing": "from-memory",
    "sources": []
  },
  "boltCircleDiameterMm": {
    "value": 96,
    "unit": "mm",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list-second"
    ]
  },
  "smallestRing": {
    "value": 28,
    "unit": "teeth",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list-second"
    ]
  },
  "holeSpacingMm": {
    "value": 67.88,
    "unit": "mm",
    "standing": "derived",
    "sources": [
      "bolt-circle-list-second"
    ],
    "note": "Diameter times the sine of half the angle between two arms, which are taken as evenly spaced."
  },
  "documents": [],
  "claims": [
    {
      "id": "other-list",
      "statement": "The second list has this circle where the first has the five-arm one of 94 mm: two patterns, no error.",
      "standing": "secondary",
      "sources": [
        "bolt-circle-list-second"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": []
};
