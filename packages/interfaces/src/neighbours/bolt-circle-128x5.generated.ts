// Generated from the files in data/ by `npm run generate`; edit those.
import type { BoltCircleRecord } from '../neighbour.ts';

/** Five-arm bolt circle of 128 mm. */
export const boltCircle128x5: BoltCircleRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-circle-128x5",
  "aliases": [],
  "kind": "bolt-circle",
  "title": "Five-arm bolt circle of 128 mm",
  "summary": "Five bolts on a circle of 128 mm; the smallest ring has 38 teeth.",
  "armCount": {
    "value": 5,
    "unit": "arms",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "boltCircleDiameterMm": {
    "value": 128,
    "unit": "mm",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "smallestRing": {
    "value": 38,
    "unit": "teeth",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "holeSpacingMm": {
    "value": 75.24,
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
