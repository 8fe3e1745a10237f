// Generated from the files in data/ by `npm run generate`; edit those.
import type { ThroughSpindleRecord } from '../record.ts';

/** Stepped through spindle, 24 mm at the drive side and 22 mm at the other. */
export const throughSpindle2422: ThroughSpindleRecord = {
  "dataEdition": "2026.11",
  "id": "through-spindle-24-22",
  "aliases": [],
  "family": "through-spindle",
  "title": "Stepped through spindle, 24 mm at the drive side and 22 mm at the other",
  "summary": "The spindle is fixed in the drive-side arm and stepped down under the other bearing, where the arm is drawn against the inner ring.",
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
      "value": 24,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "through-spindle-randonneur"
      ]
    },
    "nonDriveSideDiameterMm": {
      "value": 22,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "through-spindle-randonneur"
      ]
    },
    "claims": [
      {
        "id": "stepped",
        "statement": "24 mm at the drive side, 22 mm at the non-drive side.",
        "standing": "secondary",
        "sources": [
          "through-spindle-randonneur"
        ]
      },
      {
        "id": "own-bearing",
        "statement": "The non-drive bearing has the bore of the step, so a cup set for a plain 24 mm spindle does not fit.",
        "standing": "from-memory",
        "sources": []
      }
    ]
  },
  "axialStop": {
    "kind": "preload-adjuster",
    "claims": [
      {
        "id": "step",
        "statement": "The arm is drawn against the inner ring of the non-drive bearing and fixes it; the other bearing floats.",
        "standing": "from-memory",
        "sources": []
      }
    ]
  },
  "drawnTight": {
    "by": "centre-bolt-or-nut",
    "claims": [
      {
        "id": "own-extractor",
        "statement": "One large bolt draws the arm on and, by a cap over its head, takes it off again.",
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
        "id": "self-extracting",
        "statement": "The bolt takes the arm off against its own cap; without the cap it only comes out.",
        "standing": "from-memory",
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
  "failures": [],
  "inspection": [
    {
      "id": "cap-first",
      "look": "play-at-arm",
      "statement": "Play of both arms together points to the bearings or a loose cap, play of the left arm alone to the clamp.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "bolt-torque",
      "look": "bolt-on-arrival",
      "statement": "The bolt is checked with a torque wrench before anything else is looked at.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "mating": [],
  "conflicts": [],
  "missing": [
    "Number, form and tolerances of the splines.",
    "Thread and torque of the bolt."
  ]
};
