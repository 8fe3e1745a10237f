// Generated from the files in data/ by `npm run generate`; edit those.
import type { SplineRecord } from '../record.ts';

/** Eight-spline hollow spindle, short splines. */
export const spline8Short: SplineRecord = {
  "dataEdition": "2026.11",
  "id": "spline-8-short",
  "aliases": [],
  "family": "spline",
  "title": "Eight-spline hollow spindle, short splines",
  "summary": "Eight straight splines of 5 mm beside a surface that centres the arm, on a hollow spindle; a large bolt draws the arm home.",
  "documents": [
    {
      "id": "patents",
      "statement": "Described in a family of patents: a centring surface beside the splines, a hollow spindle, a bolt whose thread is at least as large as its head and whose flange extracts the arm.",
      "standing": "secondary",
      "sources": [
        "spline-8-patents"
      ]
    }
  ],
  "interchange": {
    "id": "one-of-two",
    "kind": "published-sizes",
    "statement": "Parts with short splines go together; the two kinds do not, since length and width differ.",
    "standing": "secondary",
    "sources": [
      "spline-8-glossary"
    ]
  },
  "geometry": {
    "splineCount": {
      "value": 8,
      "unit": "splines",
      "standing": "secondary",
      "sources": [
        "spline-8-glossary",
        "spline-8-magazine-17"
      ]
    },
    "spindleDiameterMm": {
      "value": 22,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-8-glossary"
      ],
      "note": "About; the glossary says the outer diameters of both kinds are equal, texts of the trade say 22 mm."
    },
    "splineWidthMm": {
      "value": 2.2,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-8-glossary"
      ]
    },
    "engagementMm": {
      "value": 5,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-8-glossary"
      ],
      "note": "Length of the spline.",
      "alternatives": [
        {
          "value": 3,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "spline-10-letter-2000"
          ],
          "set": "effective",
          "note": "Effective engagement."
        }
      ]
    },
    "claims": [
      {
        "id": "centring-surface",
        "statement": "A surface beside the splines centres the arm.",
        "standing": "secondary",
        "sources": [
          "spline-10-letter-2000",
          "spline-8-patents"
        ]
      },
      {
        "id": "hollow",
        "statement": "The spindle is hollow.",
        "standing": "secondary",
        "sources": [
          "spline-8-patents"
        ]
      },
      {
        "id": "little-press",
        "statement": "Little press: play and give in the splines work the bolt loose, says one engineer; a conical seat centres the arm.",
        "standing": "secondary",
        "sources": [
          "spline-10-letter-2000"
        ]
      }
    ]
  },
  "axialStop": {
    "kind": "shoulder",
    "claims": [
      {
        "id": "home",
        "statement": "The bolt draws the arm home until it stops on its seat; the splines carry the torque and do not locate it along the axis.",
        "standing": "from-memory",
        "sources": []
      }
    ]
  },
  "drawnTight": {
    "by": "centre-bolt-or-nut",
    "claims": [
      {
        "id": "large-bolt",
        "statement": "One bolt with a thread at least as large as its head; its flange works against a ring in the arm and extracts it.",
        "standing": "secondary",
        "sources": [
          "self-extracting-patents",
          "spline-8-patents"
        ]
      }
    ]
  },
  "fixingThreads": [
    {
      "id": "bolt-m15x1",
      "use": "Bolt in the spindle end",
      "designation": "M15x1",
      "nominalDiameterMm": {
        "value": 15,
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
    },
    {
      "id": "bolt-m12x1",
      "use": "Bolt in the spindle end",
      "designation": "M12x1",
      "nominalDiameterMm": {
        "value": 12,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "thread-size-list"
        ],
        "note": "Given for some splined cranks, without a name."
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "thread-size-list"
        ]
      },
      "hand": "right",
      "member": "internal"
    }
  ],
  "fixingHeads": [
    {
      "id": "socket-8",
      "kind": "internal-hexagon",
      "acrossFlatsMm": {
        "value": 8,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "socket-10",
      "kind": "internal-hexagon",
      "acrossFlatsMm": {
        "value": 10,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    }
  ],
  "puller": {
    "threads": [
      {
        "id": "m22x1",
        "use": "All splined three-piece arms",
        "designation": "M22x1",
        "nominalDiameterMm": {
          "value": 22,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "puller-threads-fr-wiki",
            "puller-threads-odd",
            "taper-fr-workshop-wiki"
          ]
        },
        "pitchMm": {
          "value": 1,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "puller-threads-fr-wiki"
          ]
        },
        "hand": "right",
        "member": "internal",
        "usual": true
      }
    ],
    "tip": [
      {
        "id": "large-tip",
        "statement": "The tip has to bear on the end face of the hollow spindle and may not enter its bore: the tip for a square taper is too small.",
        "standing": "common-practice",
        "sources": []
      }
    ],
    "practice": [
      {
        "id": "screw-in-fully",
        "statement": "Screw the puller in fully: partial engagement strips the thread of the arm.",
        "standing": "secondary",
        "sources": [
          "no-grease-instruction"
        ]
      },
      {
        "id": "self-extracting",
        "statement": "A self-extracting bolt works against a ring screwed into the same thread.",
        "standing": "secondary",
        "sources": [
          "forum-mixed-signs",
          "self-extracting-patents"
        ]
      }
    ]
  },
  "indexPositions": {
    "count": {
      "value": 1,
      "unit": "positions",
      "standing": "derived",
      "sources": [
        "eight-spline-index"
      ],
      "note": "One spline of the eight differs in width."
    },
    "claims": [
      {
        "id": "index-spline",
        "statement": "One of the eight splines differs in width and sets the arms opposite each other; forcing the arm on in another position damages it.",
        "standing": "secondary",
        "sources": [
          "eight-spline-index"
        ]
      }
    ]
  },
  "torquePractice": [
    {
      "id": "dealer-m12-first",
      "joint": "Splined, single M12 bolt, first table",
      "torqueNm": {
        "value": 45.4,
        "unit": "Nm",
        "lower": 43.4,
        "upper": 47.4,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "dealer-m12-second",
      "joint": "Splined, single M12 bolt, second table",
      "torqueNm": {
        "value": 50.85,
        "unit": "Nm",
        "lower": 47.5,
        "upper": 54.2,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "dealer-m15-first",
      "joint": "Splined, single M15 bolt, first table",
      "torqueNm": {
        "value": 48.8,
        "unit": "Nm",
        "lower": 43.4,
        "upper": 54.2,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "From the 384 to 480 lbf.in printed; the 42.4 to 47.4 Nm printed beside them do not agree and are taken for a misprint. The value is the middle."
      }
    },
    {
      "id": "dealer-m15-second",
      "joint": "Splined, single M15 bolt, second table",
      "torqueNm": {
        "value": 50.85,
        "unit": "Nm",
        "lower": 47.5,
        "upper": 54.2,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "lubrication": [
    {
      "id": "grease-supplied",
      "surface": "spline",
      "advice": "grease",
      "statement": "The maker supplies grease for the splines.",
      "standing": "secondary",
      "sources": [
        "spline-8-grease-note"
      ]
    },
    {
      "id": "grease-splines",
      "surface": "spline",
      "advice": "grease",
      "statement": "One instruction set greases splined spindles, and never square tapers.",
      "standing": "secondary",
      "sources": [
        "no-grease-instruction"
      ]
    },
    {
      "id": "bolt",
      "surface": "bolt-thread-and-head",
      "advice": "grease",
      "statement": "Grease on the thread of the bolt and under its head: agreed by all who mention it.",
      "standing": "secondary",
      "sources": [
        "magazine-answer",
        "no-grease-instruction"
      ]
    }
  ],
  "retightening": [],
  "failures": [
    {
      "id": "backlash",
      "where": "joint",
      "statement": "With little press, play and give in the splines work the bolt loose.",
      "standing": "secondary",
      "sources": [
        "spline-10-letter-2000"
      ]
    },
    {
      "id": "forced-index",
      "where": "arm-bore",
      "statement": "An arm forced on beside its index spline is damaged.",
      "standing": "secondary",
      "sources": [
        "eight-spline-index"
      ]
    }
  ],
  "inspection": [
    {
      "id": "home-on-seat",
      "look": "shoulder-gap",
      "statement": "The arm has to sit home on its seat; a gap there means that it is not.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "splines-of-arm",
      "look": "bore-flats",
      "statement": "Look for flattened or shaved splines in the arm: once it has been ridden loose they do not hold again.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "index",
      "look": "arm-alignment",
      "statement": "An arm out of line was forced on beside its index spline.",
      "standing": "secondary",
      "sources": [
        "eight-spline-index"
      ]
    }
  ],
  "mating": [
    {
      "id": "long-arm-on-short-spindle",
      "spindle": "spline-8-short",
      "arm": "spline-8-long",
      "verdict": "does-not-mate",
      "statement": "The two kinds of eight splines differ in length and width and do not go together.",
      "standing": "secondary",
      "sources": [
        "spline-8-glossary"
      ]
    }
  ],
  "conflicts": [
    {
      "id": "eight-spline-engagement",
      "subject": "Engagement of the short eight-spline joint",
      "positions": [
        {
          "id": "spline-length",
          "statement": "5 mm, the length of the spline.",
          "standing": "secondary",
          "sources": [
            "spline-8-glossary"
          ],
          "value": {
            "value": 5,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "spline-8-glossary"
            ]
          }
        },
        {
          "id": "effective",
          "statement": "3 mm of engagement.",
          "standing": "secondary",
          "sources": [
            "spline-10-letter-2000"
          ],
          "value": {
            "value": 3,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "spline-10-letter-2000"
            ]
          }
        }
      ],
      "comment": "One figure is the length of the spline, the other what engages of it."
    },
    {
      "id": "m12-torque",
      "subject": "Tightening torque of the M12 bolt",
      "positions": [
        {
          "id": "first-table",
          "statement": "43.4 to 47.4 Nm.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        },
        {
          "id": "second-table",
          "statement": "47.5 to 54.2 Nm.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        }
      ],
      "comment": "Two tables of one origin. The value of the part maker stands above both."
    },
    {
      "id": "m15-torque",
      "subject": "Tightening torque of the M15 bolt",
      "positions": [
        {
          "id": "first-table-nm",
          "statement": "42.4 to 47.4 Nm as printed.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ],
          "value": {
            "value": 44.9,
            "unit": "Nm",
            "lower": 42.4,
            "upper": 47.4,
            "standing": "secondary",
            "sources": [
              "dealer-torque-tables"
            ],
            "note": "Published as a range; the value is its middle. The upper end is probably a misprint for 54.2."
          }
        },
        {
          "id": "first-table-lbf-in",
          "statement": "384 to 480 lbf.in as printed on the same line, which is 43.4 to 54.2 Nm.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        },
        {
          "id": "second-table",
          "statement": "47.5 to 54.2 Nm.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        }
      ],
      "comment": "Dealer tables contain errors of unit."
    }
  ],
  "missing": [
    "Diameters of the splines and of the centring surface.",
    "A source for the thread of the bolt."
  ]
};
