// Generated from the files in data/ by `npm run generate`; edit those.
import type { ShellThreadRecord } from '../neighbour.ts';

/** Shell with the British Standard Cycle thread, ISO 6696. */
export const shellBsc: ShellThreadRecord = {
  "dataEdition": "2026.11",
  "id": "shell-bsc",
  "aliases": [],
  "kind": "shell-thread",
  "title": "Shell with the British Standard Cycle thread, ISO 6696",
  "summary": "The commonest threaded shell: 24 threads an inch, the right-hand cup with a left-hand thread.",
  "threads": {
    "left": {
      "id": "left-cup",
      "use": "Left, adjustable cup",
      "designation": "1.370 in x 24 tpi",
      "nominalDiameterMm": {
        "value": 34.798,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ],
        "note": "1.370 in.",
        "alternatives": [
          {
            "value": 34.925,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "shell-thread-page"
            ],
            "set": "table-of-the-thread-page",
            "note": "1.375 in, called ISO in one table."
          },
          {
            "value": 34.925,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "cycle-threads-table"
            ],
            "set": "cycle-threads-table",
            "note": "1 3/8 in."
          }
        ]
      },
      "pitchMm": {
        "value": 1.0583,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ],
        "note": "Exactly 25.4 mm by the number of threads an inch."
      },
      "threadsPerInch": {
        "value": 24,
        "unit": "tpi",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ]
      },
      "hand": "right"
    },
    "right": {
      "id": "right-cup",
      "use": "Right, fixed cup",
      "designation": "1.370 in x 24 tpi",
      "nominalDiameterMm": {
        "value": 34.798,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ],
        "note": "1.370 in.",
        "alternatives": [
          {
            "value": 34.925,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "shell-thread-page"
            ],
            "set": "table-of-the-thread-page",
            "note": "1.375 in, called ISO in one table."
          },
          {
            "value": 34.925,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "cycle-threads-table"
            ],
            "set": "cycle-threads-table",
            "note": "1 3/8 in."
          }
        ]
      },
      "pitchMm": {
        "value": 1.0583,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ],
        "note": "Exactly 25.4 mm by the number of threads an inch."
      },
      "threadsPerInch": {
        "value": 24,
        "unit": "tpi",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ]
      },
      "hand": "left"
    }
  },
  "widths": [
    {
      "id": "w-68",
      "widthMm": {
        "value": 68,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ]
      }
    },
    {
      "id": "w-73",
      "widthMm": {
        "value": 73,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ]
      }
    },
    {
      "id": "w-83",
      "widthMm": {
        "value": 83,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ],
        "note": "Special."
      }
    },
    {
      "id": "w-100",
      "widthMm": {
        "value": 100,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "shell-shop-notes",
          "shell-thread-page",
          "spacer-chart-24",
          "taper-de-dealer"
        ],
        "note": "Special."
      }
    }
  ],
  "caliper": {
    "cupOutsideMm": {
      "value": 34.75,
      "unit": "mm",
      "lower": 34.6,
      "upper": 34.9,
      "standing": "secondary",
      "sources": [
        "shell-thread-page"
      ],
      "note": "Published as a range; the value is its middle."
    },
    "shellInsideMm": {
      "value": 33.75,
      "unit": "mm",
      "lower": 33.6,
      "upper": 33.9,
      "standing": "secondary",
      "sources": [
        "shell-thread-page"
      ],
      "note": "Published as a range; the value is its middle."
    }
  },
  "documents": [
    {
      "id": "iso-6696",
      "statement": "ISO 6696: adjustable cups right-hand, fixed cups left-hand; basic profile of ISO 68, the inch pitch kept for interchange; tolerances after ISO 965-1, gauges after ISO 1502.",
      "standing": "standard",
      "sources": [
        "iso-6696"
      ],
      "note": "Scope seen; the tables of limits were not reached."
    },
    {
      "id": "bs-6102-9",
      "statement": "BS 6102-9 is the same standard.",
      "standing": "standard",
      "sources": [
        "bs-6102-9"
      ],
      "note": "Contents list seen."
    }
  ],
  "claims": [
    {
      "id": "angle",
      "statement": "The thread angle is 60 degrees.",
      "standing": "secondary",
      "sources": [
        "cycle-threads-table",
        "shell-old-british"
      ],
      "value": {
        "value": 60,
        "unit": "deg",
        "standing": "secondary",
        "sources": [
          "cycle-threads-table",
          "shell-old-british"
        ]
      }
    },
    {
      "id": "core",
      "statement": "Core diameter of the 1 3/8 in cycle thread, 1.326 in.",
      "standing": "secondary",
      "sources": [
        "cycle-threads-table"
      ],
      "value": {
        "value": 33.68,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "cycle-threads-table"
        ]
      }
    },
    {
      "id": "misprint",
      "statement": "The same table prints the outside diameter as 1.625 in: a misprint.",
      "standing": "secondary",
      "sources": [
        "cycle-threads-table"
      ],
      "value": {
        "value": 41.275,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "cycle-threads-table"
        ],
        "note": "The misprint, 1.625 in; not to be used."
      }
    },
    {
      "id": "outboard-68",
      "statement": "Outboard cups on a 68 mm shell put the bearings as far apart as a shell of 86.5 mm.",
      "standing": "secondary",
      "sources": [
        "through-spindle-randonneur"
      ],
      "value": {
        "value": 86.5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "through-spindle-randonneur"
        ]
      }
    },
    {
      "id": "outboard-73",
      "statement": "Outboard cups on a 73 mm shell put the bearings as far apart as a shell of 91.5 mm.",
      "standing": "secondary",
      "sources": [
        "through-spindle-randonneur"
      ],
      "value": {
        "value": 91.5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "through-spindle-randonneur"
        ]
      }
    },
    {
      "id": "right-cup-tightens-left",
      "statement": "The right cup tightens against the clock: read the hand before force is used.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "torquePractice": [
    {
      "id": "cups",
      "joint": "Bottom-bracket cups",
      "torqueNm": {
        "value": 36.8,
        "unit": "Nm",
        "lower": 32.9,
        "upper": 40.7,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "mating": [],
  "conflicts": [
    {
      "id": "bsc-thread-diameter",
      "subject": "Diameter of the shell thread of British Standard Cycle and ISO",
      "positions": [
        {
          "id": "1-370",
          "statement": "1.370 in, 34.80 mm.",
          "standing": "secondary",
          "sources": [
            "shell-shop-notes",
            "shell-thread-page",
            "spacer-chart-24",
            "taper-de-dealer"
          ],
          "value": {
            "value": 34.798,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "shell-shop-notes",
              "shell-thread-page",
              "spacer-chart-24",
              "taper-de-dealer"
            ]
          }
        },
        {
          "id": "1-375",
          "statement": "1.375 in, 34.93 mm.",
          "standing": "secondary",
          "sources": [
            "cycle-threads-table",
            "shell-thread-page"
          ],
          "value": {
            "value": 34.925,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "cycle-threads-table",
              "shell-thread-page"
            ]
          }
        }
      ],
      "comment": "Treated as one thread in practice; the tables of limits of ISO 6696 were not reached."
    }
  ],
  "missing": [
    "Limits of cups and shell after ISO 6696, tables 2 and 3."
  ]
};
