// Generated from the files in data/ by `npm run generate`; edit those.
import type { BoltCircleRecord } from '../neighbour.ts';

/** Four-arm bolt circle of 104 mm. */
export const boltCircle104x4: BoltCircleRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-circle-104x4",
  "aliases": [],
  "kind": "bolt-circle",
  "title": "Four-arm bolt circle of 104 mm",
  "summary": "Four bolts on a circle of 104 mm; the smallest ring has 32 teeth.",
  "armCount": {
    "value": 4,
    "unit": "arms",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "boltCircleDiameterMm": {
    "value": 104,
    "unit": "mm",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "smallestRing": {
    "value": 32,
    "unit": "teeth",
    "standing": "secondary",
    "sources": [
      "bolt-circle-list"
    ]
  },
  "holeSpacingMm": {
    "value": 73.54,
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
