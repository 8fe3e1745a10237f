// Generated from the files in data/ by `npm run generate`; edit those.
import type { FaceSplineRecord } from '../record.ts';

/** Face-spline joint in the middle of the spindle. */
export const faceSpline: FaceSplineRecord = {
  "dataEdition": "2026.11",
  "id": "face-spline",
  "aliases": [],
  "family": "face-spline",
  "title": "Face-spline joint in the middle of the spindle",
  "summary": "Each arm carries half of the spindle; radial teeth on the faces of the two halves meet inside the shell and one bolt draws them together.",
  "documents": [],
  "interchange": {
    "id": "no-standard-size",
    "kind": "maker-specific",
    "statement": "Pairs are made to match and there is no standard size.",
    "standing": "secondary",
    "sources": [
      "hirth-joint-wiki"
    ]
  },
  "geometry": {
    "claims": [
      {
        "id": "radial-teeth",
        "statement": "Radial teeth on the end faces, the centre not toothed.",
        "standing": "secondary",
        "sources": [
          "hirth-joint-wiki"
        ]
      },
      {
        "id": "half-spindles",
        "statement": "The outboard bearings sit on the half spindles.",
        "standing": "secondary",
        "sources": [
          "face-spline-page"
        ]
      }
    ]
  },
  "axialStop": {
    "kind": "face-teeth",
    "claims": [
      {
        "id": "teeth-stop",
        "statement": "The flanks of the teeth centre and stop the halves in one go.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "drawnTight": {
    "by": "centre-bolt-or-nut",
    "claims": [
      {
        "id": "one-bolt",
        "statement": "One central bolt draws the halves together.",
        "standing": "secondary",
        "sources": [
          "face-spline-page"
        ]
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
        "id": "bolt-out",
        "statement": "With the bolt out the halves are drawn apart by hand or with light blows; there is no press to overcome.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "indexPositions": {
    "claims": [
      {
        "id": "every-tooth",
        "statement": "Equal teeth go together in as many positions as there are teeth, unless the maker blocks the others.",
        "standing": "derived",
        "sources": [
          "hirth-joint-wiki"
        ]
      }
    ]
  },
  "torquePractice": [],
  "lubrication": [],
  "retightening": [],
  "failures": [
    {
      "id": "half-engaged",
      "where": "joint",
      "statement": "A bolt that is short of its torque lets the teeth ride up their flanks, wear and click.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "inspection": [
    {
      "id": "teeth",
      "look": "spindle-flats",
      "statement": "Look for burnished or chipped flanks on the teeth of both halves.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "clean-faces",
      "look": "shoulder-gap",
      "statement": "Dirt between the teeth keeps the halves apart and spoils the line of the bearings.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "mating": [],
  "conflicts": [],
  "missing": [
    "Diameter, number and angle of the teeth.",
    "Thread and torque of the bolt.",
    "A published account of greasing the teeth."
  ]
};
