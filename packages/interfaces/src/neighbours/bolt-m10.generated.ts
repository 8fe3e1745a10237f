// Generated from the files in data/ by `npm run generate`; edit those.
import type { FixingRecord } from '../neighbour.ts';

/** Crank bolt M10, pitch not given. */
export const boltM10: FixingRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-m10",
  "aliases": [],
  "kind": "fixing",
  "title": "Crank bolt M10, pitch not given",
  "summary": "The bolt in the square spindle of an electric city bike.",
  "form": "spindle-bolt",
  "thread": {
    "id": "bolt-m10",
    "use": "Bolt in the spindle of an electric city bike",
    "designation": "M10",
    "nominalDiameterMm": {
      "value": 10,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "e-city-bike-manual"
      ]
    },
    "hand": "right"
  },
  "heads": [],
  "documents": [],
  "claims": [],
  "torquePractice": [
    {
      "id": "dealer-single-bolt",
      "joint": "Square taper, single M8 or M10 bolt",
      "torqueNm": {
        "value": 44.35,
        "unit": "Nm",
        "lower": 39.5,
        "upper": 49.2,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as 350 to 435 lbf.in; the value is the middle."
      }
    }
  ],
  "mating": [],
  "conflicts": [],
  "missing": [
    "The pitch."
  ]
};
