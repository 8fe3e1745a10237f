// Generated from the files in data/ by `npm run generate`; edit those.
import type { BoltCircleRecord } from '../neighbour.ts';

/** Five-arm bolt circle of 110 mm. */
export const boltCircle110x5: BoltCircleRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-circle-110x5",
  "aliases": [],
  "kind": "bolt-circle",
  "title": "Five-arm bolt circle of 110 mm",
  "summary": "Five bolts on a circle of 110 mm; the smallest ring has 34 teeth.",
  "armCount": {
    "value": 5,
    "unit": "arms",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "boltCircleDiameterMm": {
    "value": 110,
    "unit": "mm",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "smallestRing": {
    "value": 34,
    "unit": "teeth",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "holeSpacingMm": {
    "value": 64.66,
    "unit": "mm",
    "standing": "derived",
    "sources": [
      "bolt-circle-list"
    ],
    "note": "Diameter times the sine of half the angle between two arms, which are taken as evenly spaced."
  },
  "documents": [],
  "claims": [
    {
      "id": "printed-spacing",
      "statement": "Hole spacing as the list prints it.",
      "standing": "secondary",
      "sources": [
        "bolt-circle-list"
      ],
      "value": {
        "value": 64.7,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "bolt-circle-list"
        ]
      }
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": []
};
