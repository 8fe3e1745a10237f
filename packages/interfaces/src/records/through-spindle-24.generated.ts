// Generated from the files in data/ by `npm run generate`; edit those.
import type { ThroughSpindleRecord } from '../record.ts';

/** Through spindle of 24 mm with a pinched arm. */
export const throughSpindle24: ThroughSpindleRecord = {
  "dataEdition": "2026.11",
  "id": "through-spindle-24",
  "aliases": [],
  "family": "through-spindle",
  "title": "Through spindle of 24 mm with a pinched arm",
  "summary": "A hollow spindle fixed in the drive-side arm passes through outboard bearings; the other arm slides on splines, is set by a cap and held by pinch bolts.",
  "documents": [],
  "interchange": {
    "id": "diameter-is-not-fit",
    "kind": "maker-specific",
    "statement": "A diameter of 24 mm names the bearings that fit, not the arm: splines and end forms are the maker's own.",
    "standing": "common-practice",
    "sources": [],
    "note": "The left arm comes with its own spindle and drive-side arm."
  },
  "geometry": {
    "driveSideDiameterMm": {
      "value": 24,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "through-spindle-pages"
      ]
    },
    "nonDriveSideDiameterMm": {
      "value": 24,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "through-spindle-pages"
      ],
      "note": "Over the whole length; a spindle stepped down to 22 mm is a record of its own."
    },
    "claims": [
      {
        "id": "pressed-in",
        "statement": "The spindle is pressed into the drive-side arm; its other end is splined.",
        "standing": "secondary",
        "sources": [
          "through-spindle-pages"
        ]
      }
    ]
  },
  "axialStop": {
    "kind": "preload-adjuster",
    "claims": [
      {
        "id": "cap-sets-bearings",
        "statement": "A cap in the spindle end draws the arm against the bearings until play is gone; it is plastic and goes hand tight only. The pinch bolts carry the load.",
        "standing": "secondary",
        "sources": [
          "through-spindle-pages"
        ]
      },
      {
        "id": "safety-catch",
        "statement": "Many arms carry a catch that drops into a hole of the spindle and keeps the arm from walking off; it has to be engaged before the bolts are tightened.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "drawnTight": {
    "by": "pinch-bolts",
    "claims": [
      {
        "id": "two-bolts",
        "statement": "Two pinch bolts, tightened alternately in small steps.",
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables",
          "jp-shop-pinch",
          "pinch-torque-note"
        ]
      },
      {
        "id": "history",
        "statement": "A patent of 1974 shows a pinched spline; early fine-spline arms walked off until a key through the pinch bolt was added.",
        "standing": "secondary",
        "sources": [
          "spindle-failures"
        ]
      }
    ]
  },
  "fixingThreads": [
    {
      "id": "pinch-m6x1",
      "use": "Pinch bolts of the arm",
      "designation": "M6x1",
      "nominalDiameterMm": {
        "value": 6,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      },
      "hand": "right",
      "member": "internal"
    }
  ],
  "fixingHeads": [
    {
      "id": "socket-5",
      "kind": "internal-hexagon",
      "acrossFlatsMm": {
        "value": 5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "jp-shop-pinch"
        ]
      },
      "note": "Pinch bolts."
    }
  ],
  "puller": {
    "threads": [],
    "tip": [],
    "practice": [
      {
        "id": "by-hand",
        "statement": "With the cap out, the bolts loose and the catch lifted the arm comes off by hand.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "indexPositions": {
    "claims": [
      {
        "id": "wide-spline",
        "statement": "A wider spline or a blind one lets the arm go on opposite the other only.",
        "standing": "from-memory",
        "sources": [],
        "note": "Not so on every make."
      }
    ]
  },
  "torquePractice": [
    {
      "id": "dealer-pinch",
      "joint": "Pinch arm, two bolts",
      "torqueNm": {
        "value": 13.5,
        "unit": "Nm",
        "lower": 12,
        "upper": 15,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "shop-pinch",
      "joint": "Pinch arm, two bolts",
      "torqueNm": {
        "value": 13,
        "unit": "Nm",
        "lower": 12,
        "upper": 14,
        "standing": "secondary",
        "sources": [
          "jp-shop-pinch",
          "pinch-torque-note"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "lubrication": [],
  "retightening": [],
  "failures": [
    {
      "id": "order",
      "where": "joint",
      "statement": "The usual order: too little torque on the pinch bolts, play in the left arm, the drive side drifts outward and shifting suffers, the plastic cap backs out.",
      "standing": "secondary",
      "sources": [
        "jp-shop-pinch"
      ]
    },
    {
      "id": "short-key",
      "where": "fixing",
      "statement": "With a short key a mechanic reaches about 8 Nm, with a long one 12 to 15 Nm.",
      "standing": "measured",
      "sources": [
        "jp-shop-pinch"
      ],
      "value": {
        "value": 8,
        "unit": "Nm",
        "standing": "measured",
        "sources": [
          "jp-shop-pinch"
        ],
        "note": "About, with a short 5 mm key."
      }
    }
  ],
  "inspection": [
    {
      "id": "slot-open",
      "look": "clamp-slot",
      "statement": "The slot of the clamp has to stay open: once it has closed the bolts no longer press the spindle.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "cap-first",
      "look": "play-at-arm",
      "statement": "Play of both arms together points to the bearings or a loose cap, play of the left arm alone to the clamp.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "no-gap",
      "look": "end-gap",
      "statement": "No gap at the end and an arm that comes off by hand are normal here.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "mating": [],
  "conflicts": [
    {
      "id": "pinch-torque",
      "subject": "Tightening torque of the pinch bolts",
      "positions": [
        {
          "id": "12-15",
          "statement": "12 to 15 Nm.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        },
        {
          "id": "12-14",
          "statement": "12 to 14 Nm.",
          "standing": "secondary",
          "sources": [
            "jp-shop-pinch",
            "pinch-torque-note"
          ]
        }
      ],
      "comment": "The value on the arm stands above both."
    }
  ],
  "missing": [
    "Number, form and tolerances of the splines.",
    "A published account of grease or dry splines."
  ]
};
