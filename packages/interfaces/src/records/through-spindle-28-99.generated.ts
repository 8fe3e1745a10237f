// Generated from the files in data/ by `npm run generate`; edit those.
import type { ThroughSpindleRecord } from '../record.ts';

/** Through spindle of 28.99 mm. */
export const throughSpindle2899: ThroughSpindleRecord = {
  "dataEdition": "2026.11",
  "id": "through-spindle-28-99",
  "aliases": [],
  "family": "through-spindle",
  "title": "Through spindle of 28.99 mm",
  "summary": "A spindle just under 29 mm, so that its bearings fit shells made for 24 mm as well as for 30 mm.",
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
      "value": 28.99,
      "unit": "mm",
      "standing": "from-memory",
      "sources": [],
      "note": "No source found."
    },
    "nonDriveSideDiameterMm": {
      "value": 28.99,
      "unit": "mm",
      "standing": "from-memory",
      "sources": [],
      "note": "No source found."
    },
    "claims": [
      {
        "id": "bearings",
        "statement": "The odd diameter leaves room for larger balls than a 30 mm spindle in the same cup.",
        "standing": "from-memory",
        "sources": []
      }
    ]
  },
  "axialStop": {
    "kind": "preload-adjuster",
    "claims": [
      {
        "id": "ring",
        "statement": "A threaded ring on the spindle beside the non-drive arm takes the play out of the bearings and is pinched with a small screw.",
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
    "A source for the diameter.",
    "Thread and torque of the bolt."
  ]
};
