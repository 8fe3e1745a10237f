// Generated from the files in data/ by `npm run generate`; edit those.
import type { IdentificationData } from './identification-data.ts';

/** Judgements behind the identification of a square. */
export const identificationData: IdentificationData = {
  "dataEdition": "2026.11",
  "priors": [
    {
      "id": "square-taper-jis",
      "probability": {
        "value": 0.45,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "No count of parts in use is known: both listed squares alike."
      }
    },
    {
      "id": "square-taper-iso",
      "probability": {
        "value": 0.45,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "No count of parts in use is known: both listed squares alike."
      }
    },
    {
      "id": "unlisted",
      "probability": {
        "value": 0.1,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "Other squares exist; a reading must never be forced onto a listed one."
      }
    }
  ],
  "spread": {
    "acrossFlatsMm": {
      "value": 0.02,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard deviation of one spindle about the published size of its set; no tolerance is published."
    },
    "faceAngleDeg": {
      "value": 0.05,
      "unit": "deg",
      "standing": "judgement",
      "sources": [],
      "note": "Standard deviation of the face angle; published angles lie between 2 deg and 2 deg 05 min."
    },
    "flatLengthMm": {
      "value": 1.5,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard deviation of the length of the flats; there is no agreement between makers."
    }
  },
  "unlisted": {
    "acrossFlatsAtEndMm": {
      "value": 12.7,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Middle of what an unlisted square may measure at its end."
    },
    "acrossFlatsSpreadMm": {
      "value": 0.5,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard deviation, wide on purpose."
    },
    "faceAngleDeg": {
      "value": 2,
      "unit": "deg",
      "standing": "judgement",
      "sources": [],
      "note": "Middle of the face angle of an unlisted square."
    },
    "faceAngleSpreadDeg": {
      "value": 0.3,
      "unit": "deg",
      "standing": "judgement",
      "sources": [],
      "note": "Standard deviation, wide on purpose."
    },
    "flatLengthMm": {
      "value": 16,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Middle of the length of the flats of an unlisted square."
    },
    "flatLengthSpreadMm": {
      "value": 4,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard deviation, wide on purpose."
    }
  },
  "assumedUncertainty": {
    "acrossFlatsMm": {
      "value": 0.03,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard uncertainty of a caliper reading across flats that comes without one."
    },
    "planeMm": {
      "value": 0.5,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard uncertainty of the plane of a reading that comes without one."
    },
    "flatLengthMm": {
      "value": 0.5,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard uncertainty of a length of flats that comes without one."
    },
    "finestMm": {
      "value": 0.001,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "No reading counts as finer than this, whatever it claims."
    }
  },
  "nextReading": {
    "acrossFlatsAtMm": {
      "value": 5,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Plane of a careful reading: clear of the end chamfer, on both squares."
    },
    "acrossFlatsMm": {
      "value": 0.01,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard uncertainty of a careful reading with a micrometer."
    },
    "planeMm": {
      "value": 0.1,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard uncertainty of the plane of a careful reading, set with a gauge block or a stop."
    },
    "flatLengthMm": {
      "value": 0.2,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard uncertainty of a careful reading of the length of the flats."
    },
    "worthwhileGain": {
      "value": 0.02,
      "unit": "probability",
      "standing": "judgement",
      "sources": [],
      "note": "A reading that raises the chance of naming the right square by less is not asked for."
    }
  },
  "convincingProbability": {
    "value": 0.9,
    "unit": "probability",
    "standing": "judgement",
    "sources": [],
    "note": "Below this the answer is said to be open."
  },
  "blunderProbability": {
    "value": 0.01,
    "unit": "probability",
    "standing": "judgement",
    "sources": [],
    "note": "Chance that the readings tell nothing: a slip of the jaws, a scale misread. It keeps every candidate possible."
  }
};
