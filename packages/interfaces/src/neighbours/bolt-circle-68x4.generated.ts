// Generated from the files in data/ by `npm run generate`; edit those.
import type { BoltCircleRecord } from '../neighbour.ts';

/** Four-arm bolt circle of 68 mm. */
export const boltCircle68x4: BoltCircleRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-circle-68x4",
  "aliases": [],
  "kind": "bolt-circle",
  "title": "Four-arm bolt circle of 68 mm",
  "summary": "Four bolts on a circle of 68 mm; the smallest ring has 22 teeth.",
  "armCount": {
    "value": 4,
    "unit": "arms",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "boltCircleDiameterMm": {
    "value": 68,
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
    "value": 48.08,
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
