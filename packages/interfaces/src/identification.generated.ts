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
  },
  "slip": {
    "probability": {
      "value": 0.02,
      "unit": "probability",
      "standing": "judgement",
      "sources": [],
      "note": "Chance that one reading across flats slips: a scale misread, a jaw in the wrong plane or on a burr."
    },
    "spreadMm": {
      "value": 0.7,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard deviation of what such a reading is off by: half a millimetre and a whole one are the usual slips of a scale."
    }
  },
  "commonErrorShare": {
    "value": 0.5,
    "unit": "share",
    "standing": "judgement",
    "sources": [],
    "note": "Share of the variance of a reading, and of its plane, that all readings of one sitting have in common: zero of the caliper, habit of the jaws. Several readings average the rest only."
  },
  "bore": {
    "unlisted": {
      "acrossFlatsAtMouthMm": {
        "value": 13.6,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Middle of what an unlisted bore may measure across flats at its inner mouth."
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
        "note": "Middle of the face angle of an unlisted bore."
      },
      "faceAngleSpreadDeg": {
        "value": 0.3,
        "unit": "deg",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation, wide on purpose."
      },
      "boreLengthMm": {
        "value": 17,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Middle of the length of an unlisted bore."
      },
      "boreLengthSpreadMm": {
        "value": 4,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation, wide on purpose."
      }
    },
    "assumedUncertainty": {
      "acrossFlatsMm": {
        "value": 0.05,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a reading across the flats of a bore with inside jaws, when it comes without one."
      },
      "planeMm": {
        "value": 0.7,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of the plane of such a reading; inside jaws hide where they bear."
      },
      "boreLengthMm": {
        "value": 0.5,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a bore length that comes without one."
      },
      "diameterMm": {
        "value": 0.05,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of the diameter of a round bore that comes without one."
      }
    },
    "nextReading": {
      "acrossFlatsAtMm": {
        "value": 3,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Plane of a careful reading: clear of the chamfer at the mouth."
      },
      "acrossFlatsMm": {
        "value": 0.02,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a careful reading with telescoping gauge and micrometer."
      },
      "planeMm": {
        "value": 0.2,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of the plane of a careful reading, set with a stop."
      },
      "boreLengthMm": {
        "value": 0.2,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a careful reading of the bore length with a depth rod."
      }
    },
    "round": {
      "unlistedProbability": {
        "value": 0.1,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "Other bores exist; a reading must never be forced onto a listed one."
      },
      "clearanceMm": {
        "value": 0.03,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "How much larger than its spindle the plain bore of an arm is, on average."
      },
      "clearanceSpreadMm": {
        "value": 0.05,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation of that; no fit is published."
      },
      "toothDepthMm": {
        "value": 0.6,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "How far the crests of the teeth in a bore lie inside the diameter of the spindle, on average; no profile is published."
      },
      "toothDepthSpreadMm": {
        "value": 0.4,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation of that, wide on purpose."
      },
      "minorSpreadMm": {
        "value": 0.1,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation of a minor diameter about the nominal one of its record."
      },
      "slipProbability": {
        "value": 0.02,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "Chance that a reading of a round bore, or the look at its teeth, tells nothing."
      },
      "toothedUnlistedProbability": {
        "value": 0.5,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "Chance that an unlisted round bore is toothed: nothing is known."
      }
    }
  },
  "threads": {
    "unlistedProbability": {
      "value": 0.1,
      "unit": "probability",
      "standing": "judgement",
      "sources": [],
      "note": "Other threads exist; a reading must never be forced onto a listed one."
    },
    "unlistedPitchMm": {
      "value": 1.2,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Middle of the pitch of an unlisted thread."
    },
    "unlistedPitchSpreadMm": {
      "value": 0.35,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard deviation, wide on purpose."
    },
    "unstatedPitchMm": {
      "value": 1.25,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Middle of the pitch of a listed thread whose source gives none."
    },
    "unstatedPitchSpreadMm": {
      "value": 0.25,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Standard deviation, wide on purpose."
    },
    "limits": {
      "allowanceUm": {
        "value": 15,
        "unit": "um",
        "standing": "from-memory",
        "sources": [],
        "note": "Rule of ISO 965-1 for tolerance position and grade as remembered, in micrometres with the pitch in millimetres; the standard was not read. Position g: 15 + 11 P below the nominal size."
      },
      "allowancePerPitchUm": {
        "value": 11,
        "unit": "um",
        "standing": "from-memory",
        "sources": [],
        "note": "Rule of ISO 965-1 for tolerance position and grade as remembered, in micrometres with the pitch in millimetres; the standard was not read. Position g: 15 + 11 P below the nominal size."
      },
      "majorWidthUm": {
        "value": 180,
        "unit": "um",
        "standing": "from-memory",
        "sources": [],
        "note": "Rule of ISO 965-1 for tolerance position and grade as remembered, in micrometres with the pitch in millimetres; the standard was not read. Grade 6, major diameter of a bolt: 180 P^(2/3) - 3.15 P^(-1/2)."
      },
      "majorWidthFallUm": {
        "value": 3.15,
        "unit": "um",
        "standing": "from-memory",
        "sources": [],
        "note": "Rule of ISO 965-1 for tolerance position and grade as remembered, in micrometres with the pitch in millimetres; the standard was not read. Grade 6, major diameter of a bolt: 180 P^(2/3) - 3.15 P^(-1/2)."
      },
      "minorWidthUm": {
        "value": 230,
        "unit": "um",
        "standing": "from-memory",
        "sources": [],
        "note": "Rule of ISO 965-1 for tolerance position and grade as remembered, in micrometres with the pitch in millimetres; the standard was not read. Grade 6, minor diameter of a nut, P from 1 mm: 230 P^0.7."
      },
      "fineMinorWidthUm": {
        "value": 433,
        "unit": "um",
        "standing": "from-memory",
        "sources": [],
        "note": "Rule of ISO 965-1 for tolerance position and grade as remembered, in micrometres with the pitch in millimetres; the standard was not read. Grade 6, minor diameter of a nut, P below 1 mm: 433 P - 190 P^1.22."
      },
      "fineMinorWidthFallUm": {
        "value": 190,
        "unit": "um",
        "standing": "from-memory",
        "sources": [],
        "note": "Rule of ISO 965-1 for tolerance position and grade as remembered, in micrometres with the pitch in millimetres; the standard was not read. Grade 6, minor diameter of a nut, P below 1 mm: 433 P - 190 P^1.22."
      }
    },
    "spread": {
      "metricMm": {
        "value": 0.03,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation of the diameter of a metric thread beyond its limits: wear, plating, other grades."
      },
      "otherMm": {
        "value": 0.06,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation of the diameter of a thread that is not metric about the same limits: its own limits were not reached."
      }
    },
    "chamfer": {
      "lengthRatio": {
        "value": 1,
        "unit": "pitches",
        "standing": "judgement",
        "sources": [],
        "note": "Length of the chamfer or countersink at the end of a thread, in pitches, at 45 degrees."
      },
      "lengthSpreadRatio": {
        "value": 0.5,
        "unit": "pitches",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation of that length."
      }
    },
    "assumedUncertainty": {
      "externalDiameterMm": {
        "value": 0.03,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a caliper reading over the crests of an external thread that comes without one."
      },
      "internalDiameterMm": {
        "value": 0.06,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a reading between the crests of an internal thread that comes without one; inside jaws bear on a chord."
      },
      "planeMm": {
        "value": 1,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of the plane of a reading that comes without one."
      },
      "pitchMm": {
        "value": 0.02,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a pitch read with a gauge, when it comes without one."
      },
      "threadsPerInch": {
        "value": 0.3,
        "unit": "threads per inch",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a count of threads per inch that comes without one."
      }
    },
    "assumedPlaneMm": {
      "value": 4,
      "unit": "mm",
      "standing": "judgement",
      "sources": [],
      "note": "Plane taken for a reading that comes without one: some pitches in, as a caliper lies over several crests."
    },
    "slipProbability": {
      "diameter": {
        "value": 0.03,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "Chance that a diameter slips: a scale misread, a jaw in a groove."
      },
      "pitch": {
        "value": 0.05,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "Chance that a pitch slips: the neighbouring blade of the gauge, a thread miscounted."
      },
      "hand": {
        "value": 0.01,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "Chance that the hand is taken down wrongly."
      }
    },
    "slipSpread": {
      "diameterMm": {
        "value": 0.8,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation of what a slipped diameter is off by: half a millimetre and a whole one are the usual slips of a scale."
      },
      "pitchMm": {
        "value": 0.15,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard deviation of what a slipped pitch is off by: the next blades of a gauge."
      }
    },
    "blunderProbability": {
      "value": 0.002,
      "unit": "probability",
      "standing": "judgement",
      "sources": [],
      "note": "Chance, for diameter and pitch each, that it has nothing to do with the thread. It keeps every candidate possible."
    },
    "nextReading": {
      "diameterMm": {
        "value": 0.01,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a careful diameter, with a micrometer."
      },
      "planeRatio": {
        "value": 4,
        "unit": "pitches",
        "standing": "judgement",
        "sources": [],
        "note": "Plane of a careful diameter, from the end of the thread: clear of the chamfer."
      },
      "pitchMm": {
        "value": 0.005,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Standard uncertainty of a careful pitch, read over ten threads."
      }
    },
    "nearMiss": {
      "leastOverlapShare": {
        "value": 0.3,
        "unit": "share",
        "standing": "judgement",
        "sources": [],
        "note": "Share of the full flank depth below which a thread drops through rather than starts."
      },
      "soundOverlapShare": {
        "value": 0.9,
        "unit": "share",
        "standing": "judgement",
        "sources": [],
        "note": "Share of the full flank depth below which a thread that starts is said to strip."
      },
      "pitchShare": {
        "value": 0.15,
        "unit": "share",
        "standing": "judgement",
        "sources": [],
        "note": "Difference of pitch, as a share of the pitch, up to which a thread starts by hand before it binds."
      },
      "engagedTurns": {
        "value": 8,
        "unit": "turns",
        "standing": "judgement",
        "sources": [],
        "note": "Turns over which the pitches may run apart: a cup, a pedal and a puller engage about so many."
      },
      "axialPlayMm": {
        "value": 0.05,
        "unit": "mm",
        "standing": "judgement",
        "sources": [],
        "note": "Axial play of a sound pair of threads; what the diameters differ by adds to it through the flanks of 60 degrees."
      },
      "worthNaming": {
        "value": 0.05,
        "unit": "probability",
        "standing": "judgement",
        "sources": [],
        "note": "Probability from which on the near-misses of a candidate are named."
      }
    }
  }
};
