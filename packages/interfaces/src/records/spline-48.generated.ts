// Generated from the files in data/ by `npm run generate`; edit those.
import type { SplineRecord } from '../record.ts';

/** Spindle with 48 straight splines. */
export const spline48: SplineRecord = {
  "dataEdition": "2026.11",
  "id": "spline-48",
  "aliases": [],
  "family": "spline",
  "title": "Spindle with 48 straight splines",
  "summary": "Fine straight splines on the ends of a spindle of 19, 22 or 24 mm, met on small-wheel competition bicycles.",
  "documents": [],
  "interchange": {
    "id": "by-diameter",
    "kind": "maker-specific",
    "statement": "Spindles of 48 splines come in three diameters, and no drawing of the teeth was found: the same count does not mean that parts fit.",
    "standing": "secondary",
    "sources": [
      "spline-48-history-2008",
      "spline-48-notes"
    ]
  },
  "geometry": {
    "splineCount": {
      "value": 48,
      "unit": "splines",
      "standing": "secondary",
      "sources": [
        "spline-48-history-2008"
      ]
    },
    "spindleDiameterMm": {
      "value": 19,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-48-notes"
      ],
      "note": "The commonest.",
      "alternatives": [
        {
          "value": 22,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "spline-48-notes"
          ],
          "set": "spindle-22"
        },
        {
          "value": 24,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "spline-48-notes"
          ],
          "set": "spindle-24"
        }
      ]
    },
    "claims": [
      {
        "id": "long-made",
        "statement": "Made for more than thirty years by 2008.",
        "standing": "secondary",
        "sources": [
          "spline-48-history-2008"
        ]
      }
    ]
  },
  "axialStop": {
    "kind": "shoulder",
    "claims": [
      {
        "id": "against-bearings",
        "statement": "The arms are drawn against spacers and bearings; nothing else stops them along straight splines.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "drawnTight": {
    "by": "centre-bolt-or-nut",
    "claims": [
      {
        "id": "end-bolts",
        "statement": "A bolt in each end of the spindle draws the arm on; some arms are pinched as well.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "fixingThreads": [],
  "fixingHeads": [],
  "puller": {
    "threads": [],
    "tip": [],
    "practice": [
      {
        "id": "driven-off",
        "statement": "Straight splines have no press of their own: the arm is driven off with a soft drift or drawn off by its bolt.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "indexPositions": {
    "count": {
      "value": 48,
      "unit": "positions",
      "standing": "derived",
      "sources": [
        "spline-48-history-2008"
      ],
      "note": "As many as splines."
    },
    "stepDeg": {
      "value": 7.5,
      "unit": "deg",
      "standing": "derived",
      "sources": [
        "spline-48-history-2008"
      ],
      "note": "360 degrees by 48."
    },
    "claims": [
      {
        "id": "small-step",
        "statement": "One step is 7.5 degrees: arms one step off look nearly right, so compare them from the side.",
        "standing": "derived",
        "sources": [
          "spline-48-history-2008"
        ]
      }
    ]
  },
  "torquePractice": [],
  "lubrication": [
    {
      "id": "grease-splines",
      "surface": "spline",
      "advice": "grease",
      "statement": "One instruction set greases splined spindles.",
      "standing": "secondary",
      "sources": [
        "no-grease-instruction"
      ]
    }
  ],
  "retightening": [],
  "failures": [
    {
      "id": "worn-splines",
      "where": "arm-bore",
      "statement": "Fine splines that were ridden loose wear to a point and do not hold again.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "inspection": [
    {
      "id": "one-step",
      "look": "arm-alignment",
      "statement": "Look at the arms from the side against a straight edge: one step off is 7.5 degrees.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "teeth",
      "look": "bore-flats",
      "statement": "Look for teeth worn to a point in the arm and on the spindle.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "mating": [
    {
      "id": "arm-of-19-on-spline-48",
      "spindle": "spline-48",
      "arm": "through-spindle-19",
      "verdict": "unknown",
      "statement": "Spindles of this diameter on small-wheel bicycles often carry 48 splines: count them and compare the teeth.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "spline-48-arm-on-spindle-of-19",
      "spindle": "through-spindle-19",
      "arm": "spline-48",
      "verdict": "unknown",
      "statement": "Spindles of this diameter on small-wheel bicycles often carry 48 splines: count them and compare the teeth.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "arm-of-22-on-spline-48",
      "spindle": "spline-48",
      "arm": "through-spindle-22",
      "verdict": "unknown",
      "statement": "Spindles of this diameter on small-wheel bicycles often carry 48 splines: count them and compare the teeth.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "spline-48-arm-on-spindle-of-22",
      "spindle": "through-spindle-22",
      "arm": "spline-48",
      "verdict": "unknown",
      "statement": "Spindles of this diameter on small-wheel bicycles often carry 48 splines: count them and compare the teeth.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "arm-of-24-on-spline-48",
      "spindle": "spline-48",
      "arm": "through-spindle-24",
      "verdict": "unknown",
      "statement": "Spindles of this diameter on small-wheel bicycles often carry 48 splines: count them and compare the teeth.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "spline-48-arm-on-spindle-of-24",
      "spindle": "through-spindle-24",
      "arm": "spline-48",
      "verdict": "unknown",
      "statement": "Spindles of this diameter on small-wheel bicycles often carry 48 splines: count them and compare the teeth.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "conflicts": [],
  "missing": [
    "Form and pitch of the teeth.",
    "Thread and torque of the end bolts."
  ]
};
