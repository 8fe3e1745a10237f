// Generated from the files in data/ by `npm run generate`; edit those.
import type { ThreadFitData } from './thread-fit-data.ts';

/** Judgements behind the comparison of sizes. */
export const threadFitData: ThreadFitData = {
  "dataEdition": "2026.11",
  "sameDiameterMm": {
    "value": 0.15,
    "unit": "mm",
    "standing": "judgement",
    "sources": [],
    "note": "Nominal diameters closer than this are one thread in practice: 1.370 and 1.375 in are 0.127 mm apart and are treated as one."
  },
  "samePitchShare": {
    "value": 0.005,
    "unit": "ratio",
    "standing": "judgement",
    "sources": [],
    "note": "Pitches closer than this share go together over the length of any cup or bolt here; a millimetre and a 24th of an inch differ by 0.06."
  },
  "leastOverlapShare": {
    "value": 0.25,
    "unit": "ratio",
    "standing": "judgement",
    "sources": [],
    "note": "Below this share of the height of the thread the smaller part drops in; from it on it holds on its crests, and then strips."
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
    "note": "Bores closer than this carry one nominal size; the press of the parts themselves is another question, and no toleranced drawing was found."
  }
};
