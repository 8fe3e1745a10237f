// Generated from the files in data/ by `npm run generate`; edit those.
import type { MatingData } from './mating-data.ts';

/** Judgements behind the comparison of parts. */
export const matingData: MatingData = {
  "dataEdition": "2026.11",
  "sameDiameterMm": {
    "value": 0.15,
    "unit": "mm",
    "standing": "judgement",
    "sources": [],
    "note": "Nominal diameters of threads closer than this are one thread in practice: 1.370 and 1.375 in are 0.127 mm apart and are treated as one."
  },
  "clampClosesMm": {
    "value": 1.5,
    "unit": "mm",
    "standing": "judgement",
    "sources": [],
    "note": "A pinched arm whose bore is larger than the spindle by no more than this goes on, and its slot closes before it grips; a larger one just hangs."
  },
  "sameBoreMm": {
    "value": 0.1,
    "unit": "mm",
    "standing": "judgement",
    "sources": [],
    "note": "Bores and spindles closer than this carry one nominal size; the press of the parts themselves is another question, and no toleranced drawing was found."
  }
};
