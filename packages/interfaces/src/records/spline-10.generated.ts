// Generated from the files in data/ by `npm run generate`; edit those.
import type { SplineRecord } from '../record.ts';

/** Open ten-spline standard. */
export const spline10: SplineRecord = {
  "dataEdition": "2026.11",
  "id": "spline-10",
  "aliases": [],
  "family": "spline",
  "title": "Open ten-spline standard",
  "summary": "Ten tapered splines on each end of a spindle of constant diameter; the arm is pressed against a fixed stop.",
  "documents": [
    {
      "id": "open-standard",
      "statement": "The open standard document, revision D of March 2001; its revision table was read, its drawings were not.",
      "standing": "standard",
      "sources": [
        "spline-10-rev-d"
      ]
    }
  ],
  "interchange": {
    "id": "open",
    "kind": "open-standard",
    "statement": "The standard is open and fixes spindle, arm and bolt, so that parts of different makers go together.",
    "standing": "secondary",
    "sources": [
      "spline-10-overview",
      "spline-10-web"
    ]
  },
  "geometry": {
    "splineCount": {
      "value": 10,
      "unit": "splines",
      "standing": "secondary",
      "sources": [
        "spline-10-overview"
      ]
    },
    "majorDiameterMm": {
      "value": 22,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-10-letter-2000"
      ],
      "note": "Nominal, in the arm."
    },
    "minorDiameterMm": {
      "value": 18,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-10-letter-2000"
      ],
      "note": "Nominal, in the arm; the minor diameter of the flutes was enlarged by 0.02 mm at revision D."
    },
    "engagementMm": {
      "value": 16,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-10-letter-2000"
      ]
    },
    "minimumSplineLengthMm": {
      "value": 18.5,
      "unit": "mm",
      "standing": "standard",
      "sources": [
        "spline-10-rev-d"
      ],
      "note": "In the arm, since revision C of October 2000.",
      "alternatives": [
        {
          "value": 19,
          "unit": "mm",
          "standing": "standard",
          "sources": [
            "spline-10-rev-d"
          ],
          "set": "before-revision-c",
          "note": "Before revision C."
        }
      ]
    },
    "taperPerSideDeg": {
      "value": 1,
      "unit": "deg",
      "standing": "secondary",
      "sources": [
        "spline-10-letter-2000"
      ],
      "note": "On the flutes; in the arm it is coined after broaching, and the depth of coining sets the press."
    },
    "stopFromEndMm": {
      "value": 16,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "spline-10-overview"
      ],
      "note": "Exactly, from each end of the spindle."
    },
    "claims": [
      {
        "id": "minor-diameter-change",
        "statement": "The minor diameter of the flutes was enlarged at revision D.",
        "standing": "standard",
        "sources": [
          "spline-10-rev-d"
        ],
        "value": {
          "value": 0.02,
          "unit": "mm",
          "standing": "standard",
          "sources": [
            "spline-10-rev-d"
          ],
          "note": "The change, not the size."
        }
      },
      {
        "id": "coining",
        "statement": "The flutes of the arm get their taper by coining after broaching; the depth of coining sets the press.",
        "standing": "secondary",
        "sources": [
          "spline-10-answers"
        ]
      },
      {
        "id": "designation",
        "statement": "The designation of a spindle is the nominal distance between its two stops. Half of it is the distance from the middle plane of the shell to the drive-side stop, to which the offset of the crank is added for the chainline. Spindles are symmetric.",
        "standing": "secondary",
        "sources": [
          "spline-10-web"
        ]
      },
      {
        "id": "overall-length",
        "statement": "Everything is measured from the stops: the overall length of the spindle says nothing about the position of the arm.",
        "standing": "secondary",
        "sources": [
          "spline-10-answers"
        ]
      },
      {
        "id": "designations-in-trade",
        "statement": "Spindles of 108, 113, 118 and 128 mm between stops are met in the trade.",
        "standing": "from-memory",
        "sources": [],
        "note": "The list of the standard was not reached."
      }
    ]
  },
  "axialStop": {
    "kind": "shoulder",
    "claims": [
      {
        "id": "press-before-stop",
        "statement": "The arm reaches its press before it meets the fixed stop; the stop keeps it from creeping along the taper.",
        "standing": "secondary",
        "sources": [
          "spline-10-letter-2000"
        ]
      },
      {
        "id": "suggested-press",
        "statement": "Revision C added suggested interferences for aluminium arms in clause 3.1.2.",
        "standing": "standard",
        "sources": [
          "spline-10-rev-d"
        ],
        "note": "The figures were not reached."
      },
      {
        "id": "independent-of-torque",
        "statement": "Because the stop fixes the arm, the chainline does not depend on the torque.",
        "standing": "secondary",
        "sources": [
          "spline-10-web"
        ]
      }
    ]
  },
  "drawnTight": {
    "by": "centre-bolt-or-nut",
    "claims": [
      {
        "id": "m12-or-m15",
        "statement": "The standard allows an M12 or an M15 bolt. The smaller one leaves a thicker wall and a stronger spindle; the bolt should come with the bottom bracket, so that the threads match.",
        "standing": "secondary",
        "sources": [
          "spline-10-overview"
        ]
      },
      {
        "id": "bolt-requirements",
        "statement": "Revision D added tolerances for thread depth and washer thickness, and a requirement on the length of the bolt.",
        "standing": "standard",
        "sources": [
          "spline-10-rev-d"
        ]
      }
    ]
  },
  "fixingThreads": [
    {
      "id": "bolt-m12x1",
      "use": "Bolt in the spindle end, M12 spindles",
      "designation": "M12x1",
      "nominalDiameterMm": {
        "value": 12,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spline-10-overview"
        ]
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "thread-size-list"
        ],
        "note": "Given for some splined cranks."
      },
      "hand": "right",
      "member": "internal"
    },
    {
      "id": "bolt-m15x1",
      "use": "Bolt in the spindle end, M15 spindles",
      "designation": "M15x1",
      "nominalDiameterMm": {
        "value": 15,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "spline-10-overview"
        ]
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
  "fixingHeads": [],
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
      "value": 10,
      "unit": "positions",
      "standing": "derived",
      "sources": [
        "spline-10-overview"
      ],
      "note": "Ten evenly spaced splines."
    },
    "stepDeg": {
      "value": 36,
      "unit": "deg",
      "standing": "derived",
      "sources": [
        "spline-10-overview"
      ]
    },
    "claims": [
      {
        "id": "opposite",
        "statement": "Ten is even, so the arms can stand opposite each other; one step off is 36 degrees and shows at once.",
        "standing": "derived",
        "sources": [
          "spline-10-overview"
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
      "id": "standard-says-grease",
      "surface": "spline",
      "advice": "grease",
      "statement": "Revision C added the instruction to grease the interface between crank and spindle.",
      "standing": "standard",
      "sources": [
        "spline-10-rev-d"
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
      "id": "depends-on-maker",
      "surface": "spline",
      "advice": "depends",
      "statement": "The questions page of the standard leaves it to the maker of the crank.",
      "standing": "secondary",
      "sources": [
        "spline-10-web"
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
      "id": "not-home",
      "where": "joint",
      "statement": "An arm that was not drawn home onto its stop works on the splines and comes loose.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "inspection": [
    {
      "id": "home-on-stop",
      "look": "shoulder-gap",
      "statement": "The arm has to touch its stop: a gap there means that it is not home.",
      "standing": "secondary",
      "sources": [
        "spline-10-letter-2000",
        "spline-10-overview"
      ]
    },
    {
      "id": "end-clear",
      "look": "end-gap",
      "statement": "The end of the spindle has to stay clear of the seat of the bolt, or the bolt clamps the spindle and not the arm.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "mating": [],
  "conflicts": [
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
    },
    {
      "id": "lubrication-of-splines",
      "subject": "Grease on the splines",
      "positions": [
        {
          "id": "grease",
          "statement": "The standard adds the instruction to grease.",
          "standing": "standard",
          "sources": [
            "spline-10-rev-d"
          ]
        },
        {
          "id": "depends",
          "statement": "The questions page leaves it to the maker of the crank.",
          "standing": "secondary",
          "sources": [
            "spline-10-web"
          ]
        }
      ],
      "comment": "Follow the maker of the crank; without one, grease."
    }
  ],
  "missing": [
    "Drawings of the standard: tolerances, the figures for the press, the torque of the bolt, the list of designations.",
    "Sizes of the bolt head."
  ]
};
