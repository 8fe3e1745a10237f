// Generated from the files in data/ by `npm run generate`; edit those.
import type { ThroughSpindleRecord } from '../record.ts';

/** Through spindle of 22 mm. */
export const throughSpindle22: ThroughSpindleRecord = {
  "dataEdition": "2026.11",
  "id": "through-spindle-22",
  "aliases": [],
  "family": "through-spindle",
  "title": "Through spindle of 22 mm",
  "summary": "A hollow spindle of small-wheel competition bicycles, one size up from 19 mm.",
  "documents": [],
  "interchange": {
    "id": "diameter-is-not-fit",
    "kind": "maker-specific",
    "statement": "The diameter names the bearings that fit, not the arm: splines and end forms are the maker’s own.",
    "standing": "common-practice",
    "sources": [],
    "note": "The left arm comes with its own spindle and drive-side arm."
  },
  "geometry": {
    "driveSideDiameterMm": {
      "value": 22,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-48-notes"
      ]
    },
    "nonDriveSideDiameterMm": {
      "value": 22,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-48-notes"
      ]
    },
    "claims": [
      {
        "id": "where",
        "statement": "One of three diameters met on small-wheel competition bicycles.",
        "standing": "secondary",
        "sources": [
          "spline-48-notes"
        ]
      }
    ]
  },
  "axialStop": {
    "kind": "preload-adjuster",
    "claims": [
      {
        "id": "adjuster",
        "statement": "A cap or a threaded ring takes the play out of the bearings; it is turned by hand and carries no load.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "drawnTight": {
    "by": "pinch-bolts",
    "claims": [
      {
        "id": "pinch-or-end-bolt",
        "statement": "Arms are pinched, bolted to the spindle end, or both.",
        "standing": "from-memory",
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
        "id": "blind-spline",
        "statement": "A wider or a blind spline usually lets the arm go on opposite the other only.",
        "standing": "from-memory",
        "sources": [],
        "note": "Not so on every make."
      }
    ]
  },
  "torquePractice": [],
  "lubrication": [
    {
      "id": "thin-grease",
      "surface": "spline",
      "advice": "depends",
      "statement": "A thin film of grease on the splines against rust and noise; some makers ask for dry ones.",
      "standing": "common-practice",
      "sources": []
    }
  ],
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
  "conflicts": [],
  "missing": [
    "Number, form and tolerances of the splines.",
    "Threads and torques of its bolts."
  ]
};
