// Generated from the files in data/ by `npm run generate`; edit those.
import type { PullerThreadRecord } from '../neighbour.ts';

/** Oversize puller thread of 24 mm. */
export const pullerRepair24: PullerThreadRecord = {
  "dataEdition": "2026.11",
  "id": "puller-repair-24",
  "aliases": [],
  "kind": "puller-thread",
  "title": "Oversize puller thread of 24 mm",
  "summary": "Cut with a special set of taps into an arm whose own thread has gone.",
  "thread": {
    "id": "repair-24",
    "use": "Oversize repair thread, cut with a special tap",
    "designation": "M24",
    "nominalDiameterMm": {
      "value": 24,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "puller-thread-repair"
      ]
    },
    "hand": "right"
  },
  "documents": [],
  "claims": [
    {
      "id": "special-tap",
      "statement": "Cut with a special tap set; it needs the puller that belongs to it.",
      "standing": "secondary",
      "sources": [
        "puller-thread-repair"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": [
    "The pitch."
  ]
};
