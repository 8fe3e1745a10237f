// Generated from the files in data/ by `npm run generate`; edit those.
import type { BoltCircleRecord } from '../neighbour.ts';

/** Five-arm bolt circle of 74 mm. */
export const boltCircle74x5: BoltCircleRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-circle-74x5",
  "aliases": [],
  "kind": "bolt-circle",
  "title": "Five-arm bolt circle of 74 mm",
  "summary": "Five bolts on a circle of 74 mm; the smallest ring has 24 teeth.",
  "armCount": {
    "value": 5,
    "unit": "arms",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "boltCircleDiameterMm": {
    "value": 74,
    "unit": "mm",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "smallestRing": {
    "value": 24,
    "unit": "teeth",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "holeSpacingMm": {
    "value": 43.5,
    "unit": "mm",
    "standing": "derived",
    "sources": [
      "bolt-circle-list"
    ],
    "note": "Diameter times the sine of half the angle between two arms, which are taken as evenly spaced."
  },
  "documents": [],
  "claims": [],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": []
};
