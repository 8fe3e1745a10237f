// Generated from the files in data/ by `npm run generate`; edit those.
import type { OnePieceRecord } from '../record.ts';

/** One-piece crank. */
export const onePiece: OnePieceRecord = {
  "dataEdition": "2026.11",
  "id": "one-piece",
  "aliases": [],
  "family": "one-piece",
  "title": "One-piece crank",
  "summary": "Arm, axle and arm are one steel forging, threaded through the shell; cones and lock nut sit on the axle itself.",
  "documents": [],
  "interchange": {
    "id": "one-forging",
    "kind": "inseparable",
    "statement": "Arm, axle and arm are one forging: no arm can be changed by itself.",
    "standing": "secondary",
    "sources": [
      "one-piece-notes"
    ]
  },
  "geometry": {
    "shellBoreMm": {
      "value": 51.3,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "shell-standards-table"
      ],
      "note": "Table of the page.",
      "alternatives": [
        {
          "value": 51.4,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "shell-standards-table"
          ],
          "set": "text-of-the-page",
          "note": "Text of the same page."
        },
        {
          "value": 51,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "spline-48-notes"
          ],
          "set": "small-wheel-trade",
          "note": "Trade of small-wheel bicycles, rounded."
        }
      ]
    },
    "claims": [
      {
        "id": "shell-width",
        "statement": "The shell is 65 or 68 mm wide.",
        "standing": "secondary",
        "sources": [
          "shell-standards-table"
        ]
      },
      {
        "id": "pedal-thread",
        "statement": "The pedal thread is 1/2 in by 20 to the inch.",
        "standing": "secondary",
        "sources": [
          "pedal-threads-fr-wiki",
          "thread-size-list"
        ]
      },
      {
        "id": "cups",
        "statement": "Press-in cups.",
        "standing": "secondary",
        "sources": [
          "one-piece-notes"
        ]
      },
      {
        "id": "cone-thread",
        "statement": "Cones and lock nut of 24 threads to the inch, 28 on one make.",
        "standing": "from-memory",
        "sources": [],
        "value": {
          "value": 24,
          "unit": "tpi",
          "standing": "from-memory",
          "sources": [],
          "alternatives": [
            {
              "value": 28,
              "unit": "tpi",
              "standing": "from-memory",
              "sources": [],
              "set": "one-make"
            }
          ]
        },
        "note": "Not confirmed."
      }
    ]
  },
  "axialStop": {
    "kind": "forged",
    "claims": [
      {
        "id": "none",
        "statement": "There is no joint along the axis; the bearing cones set the position.",
        "standing": "derived",
        "sources": [
          "one-piece-notes"
        ]
      }
    ]
  },
  "drawnTight": {
    "by": "none",
    "claims": [
      {
        "id": "left-hand-cone",
        "statement": "Cone and lock nut on the left carry a left-hand thread.",
        "standing": "secondary",
        "sources": [
          "one-piece-notes"
        ]
      },
      {
        "id": "hold-no-arm",
        "statement": "They adjust the bearings and hold no arm.",
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
        "id": "out-whole",
        "statement": "With pedal, lock nut and cone of the left side off, the crank is threaded out of the shell to the right in one piece.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "indexPositions": {
    "count": {
      "value": 1,
      "unit": "positions",
      "standing": "derived",
      "sources": [
        "one-piece-notes"
      ],
      "note": "One forging."
    },
    "claims": [
      {
        "id": "cannot-turn",
        "statement": "The arms cannot be out of line but by bending.",
        "standing": "derived",
        "sources": [
          "one-piece-notes"
        ]
      }
    ]
  },
  "torquePractice": [],
  "lubrication": [
    {
      "id": "bearings",
      "surface": "bolt-thread-and-head",
      "advice": "grease",
      "statement": "Grease the bearings; nothing else is a joint.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "retightening": [],
  "failures": [
    {
      "id": "bent-arm",
      "where": "arm",
      "statement": "The arm bends before it breaks.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "inspection": [
    {
      "id": "arms",
      "look": "arm-straightness",
      "statement": "Turn the crank and watch both arms and the axle for a bend.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "play",
      "look": "play-at-arm",
      "statement": "Play of both arms together is play of the bearings.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "mating": [],
  "conflicts": [
    {
      "id": "one-piece-bore",
      "subject": "Bore of the shell for a one-piece crank",
      "positions": [
        {
          "id": "table",
          "statement": "51.3 mm in the table of a page; 2.02 in is 51.3 mm.",
          "standing": "secondary",
          "sources": [
            "shell-standards-table"
          ],
          "value": {
            "value": 51.3,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "shell-standards-table"
            ]
          }
        },
        {
          "id": "text",
          "statement": "51.4 mm in the text of the same page.",
          "standing": "secondary",
          "sources": [
            "shell-standards-table"
          ],
          "value": {
            "value": 51.4,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "shell-standards-table"
            ]
          }
        },
        {
          "id": "trade",
          "statement": "51 mm in the trade of small-wheel bicycles.",
          "standing": "secondary",
          "sources": [
            "spline-48-notes"
          ],
          "value": {
            "value": 51,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "spline-48-notes"
            ]
          }
        }
      ],
      "comment": "Rounding explains two of them; measure the shell before a cup is pressed."
    }
  ],
  "missing": [
    "A source for the thread of the cones."
  ]
};
