// Generated from the files in data/ by `npm run generate`; edit those.
import type { BoltCircleRecord } from '../neighbour.ts';

/** Four-arm bolt circle of 64 mm. */
export const boltCircle64x4: BoltCircleRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-circle-64x4",
  "aliases": [],
  "kind": "bolt-circle",
  "title": "Four-arm bolt circle of 64 mm",
  "summary": "Four bolts on a circle of 64 mm; the smallest ring has 22 teeth.",
  "armCount": {
    "value": 4,
    "unit": "arms",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "boltCircleDiameterMm": {
    "value": 64,
    "unit": "mm",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "smallestRing": {
    "value": 22,
    "unit": "teeth",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "holeSpacingMm": {
    "value": 45.25,
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
