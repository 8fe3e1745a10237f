// Generated from the files in data/ by `npm run generate`; edit those.
import type { BoltCircleRecord } from '../neighbour.ts';

/** Five-arm bolt circle of 56 mm. */
export const boltCircle56x5: BoltCircleRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-circle-56x5",
  "aliases": [],
  "kind": "bolt-circle",
  "title": "Five-arm bolt circle of 56 mm",
  "summary": "Five bolts on a circle of 56 mm; the smallest ring has 20 teeth.",
  "armCount": {
    "value": 5,
    "unit": "arms",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "boltCircleDiameterMm": {
    "value": 56,
    "unit": "mm",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "smallestRing": {
    "value": 20,
    "unit": "teeth",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "holeSpacingMm": {
    "value": 32.92,
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
