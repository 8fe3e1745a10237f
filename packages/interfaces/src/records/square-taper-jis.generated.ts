// Generated from the files in data/ by `npm run generate`; edit those.
import type { SquareTaperRecord } from '../record.ts';

/** Square taper after the Japanese standard (JIS). */
export const squareTaperJis: SquareTaperRecord = {
  "dataEdition": "2026.11",
  "id": "square-taper-jis",
  "aliases": [],
  "family": "square-taper",
  "title": "Square taper after the Japanese standard (JIS)",
  "summary": "Four flats on the spindle end, tapered by about two degrees a face; the wider and shorter of the two common squares.",
  "documents": [
    {
      "id": "jis-d-9401",
      "statement": "Named as the standard of the square taper.",
      "standing": "secondary",
      "sources": [
        "taper-jp-ham-2013"
      ],
      "note": "Another page names JIS D 9403; neither text was seen."
    },
    {
      "id": "jis-d-9403",
      "statement": "Named as the standard of the square taper.",
      "standing": "secondary",
      "sources": [
        "taper-fr-myths"
      ],
      "note": "Another page names JIS D 9401; neither text was seen."
    },
    {
      "id": "jis-d-9415",
      "statement": "The standard of chainwheels and cranks; lists cottered and cotterless cranks.",
      "standing": "secondary",
      "sources": [
        "crank-kinds-jp",
        "jis-d-9415"
      ],
      "note": "Contents list seen, dimensions not."
    },
    {
      "id": "is-1131",
      "statement": "The Indian standard of bottom-bracket axles covers cottered and cotterless ones.",
      "standing": "secondary",
      "sources": [
        "is-1131"
      ],
      "note": "Figures not reached."
    }
  ],
  "interchange": {
    "id": "sizes-without-tolerances",
    "kind": "published-sizes",
    "statement": "Parts of one square are meant to interchange; published sizes carry no tolerance and differ by 0.1 mm.",
    "standing": "secondary",
    "sources": [
      "taper-de-wiki",
      "taper-nl-workshop"
    ]
  },
  "geometry": {
    "sets": [
      {
        "id": "taper-jp-ham-2013",
        "acrossFlatsAtEndMm": {
          "value": 12.65,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "taper-jp-ham-2013"
          ],
          "set": "taper-jp-ham-2013",
          "note": "Said to be read from JIS D 9401."
        },
        "faceAngleDeg": {
          "value": 2,
          "unit": "deg",
          "standing": "secondary",
          "sources": [
            "taper-jp-ham-2013"
          ],
          "set": "taper-jp-ham-2013",
          "note": "Per face or included is not said."
        },
        "interpreted": [
          {
            "field": "faceAngleDeg",
            "why": "The source says 2 degrees without saying per face or included; read as per face, since no source says included."
          }
        ]
      },
      {
        "id": "taper-jp-sizes-2014",
        "acrossFlatsAtEndMm": {
          "value": 12.63,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "taper-jp-sizes-2014"
          ],
          "set": "taper-jp-sizes-2014",
          "note": "Labelled as the size at the root end of the taper."
        },
        "flatLengthMm": {
          "value": 15,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "taper-jp-sizes-2014"
          ],
          "set": "taper-jp-sizes-2014"
        },
        "interpreted": [
          {
            "field": "acrossFlatsAtEndMm",
            "why": "The wording puts this figure at the root of the taper; every other source with the same figure puts it at the tip, so it is read there."
          }
        ]
      },
      {
        "id": "taper-de-wiki",
        "acrossFlatsAtEndMm": {
          "value": 12.63,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "taper-de-wiki"
          ],
          "set": "taper-de-wiki"
        },
        "faceAngleDeg": {
          "value": 2,
          "unit": "deg",
          "standing": "secondary",
          "sources": [
            "taper-de-wiki"
          ],
          "set": "taper-de-wiki",
          "note": "Per face, against the axis."
        },
        "interpreted": []
      },
      {
        "id": "taper-fr-workshop-wiki",
        "acrossFlatsAtEndMm": {
          "value": 12.63,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "taper-fr-workshop-wiki"
          ],
          "set": "taper-fr-workshop-wiki"
        },
        "faceAngleDeg": {
          "value": 2.083333,
          "unit": "deg",
          "standing": "secondary",
          "sources": [
            "taper-fr-workshop-wiki"
          ],
          "set": "taper-fr-workshop-wiki",
          "note": "Two degrees and five minutes, as decimal degrees.",
          "alternatives": [
            {
              "value": 2.05,
              "unit": "deg",
              "standing": "secondary",
              "sources": [
                "taper-fr-workshop-wiki"
              ],
              "set": "taper-fr-workshop-wiki",
              "note": "The same figure read as a decimal."
            }
          ]
        },
        "interpreted": [
          {
            "field": "faceAngleDeg",
            "why": "Written 2 deg 05: read as two degrees five minutes, could also be a decimal."
          }
        ]
      },
      {
        "id": "taper-nl-workshop-first-maker",
        "acrossFlatsAtEndMm": {
          "value": 12.73,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "taper-nl-workshop"
          ],
          "set": "taper-nl-workshop-first-maker",
          "note": "First of two bearing makers quoted."
        },
        "interpreted": []
      },
      {
        "id": "taper-nl-workshop-second-maker",
        "acrossFlatsAtEndMm": {
          "value": 12.63,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "taper-nl-workshop"
          ],
          "set": "taper-nl-workshop-second-maker",
          "note": "Second of two bearing makers quoted."
        },
        "interpreted": []
      },
      {
        "id": "taper-de-dealer",
        "acrossFlatsAtEndMm": {
          "value": 12.73,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "taper-de-dealer"
          ],
          "set": "taper-de-dealer",
          "note": "A copy elsewhere labels the same figure as the length of the square: a slip of transcription."
        },
        "interpreted": []
      },
      {
        "id": "taper-hobby-metrology-2022",
        "acrossFlatsAtEndMm": {
          "value": 12.7,
          "unit": "mm",
          "standing": "measured",
          "sources": [
            "taper-hobby-metrology-2022"
          ],
          "set": "taper-hobby-metrology-2022",
          "note": "Caliper, all spindles measured; no uncertainty stated."
        },
        "faceAngleDeg": {
          "value": 2,
          "unit": "deg",
          "standing": "secondary",
          "sources": [
            "taper-hobby-metrology-2022"
          ],
          "set": "taper-hobby-metrology-2022",
          "note": "Per face or included is not said."
        },
        "interpreted": [
          {
            "field": "faceAngleDeg",
            "why": "The source says 2 degrees without saying per face or included; read as per face, since no source says included."
          }
        ]
      }
    ],
    "fallback": {
      "faceAngleDeg": {
        "value": 2,
        "unit": "deg",
        "standing": "secondary",
        "sources": [
          "taper-cad-spec",
          "taper-de-wiki",
          "taper-de-wiki-older",
          "taper-tech-notes"
        ],
        "note": "Per face, against the axis; opposite faces include twice as much.",
        "alternatives": [
          {
            "value": 2.083333,
            "unit": "deg",
            "standing": "secondary",
            "sources": [
              "taper-fr-workshop-wiki"
            ],
            "note": "Two degrees and five minutes, as decimal degrees. The page writes 2 deg 05, which could also be a decimal."
          },
          {
            "value": 2.05,
            "unit": "deg",
            "standing": "secondary",
            "sources": [
              "taper-fr-myths"
            ],
            "note": "Half of 4.10 included, said to hold for both tapers; 4.10 could also be 4 deg 10 min, which is twice 2 deg 05 min."
          }
        ]
      },
      "flatLengthMm": {
        "value": 15,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "taper-jp-sizes-2014"
        ],
        "note": "There is no agreement on the length between makers."
      }
    },
    "handFitShoulderGapMm": {
      "value": 2,
      "unit": "mm",
      "lower": 1,
      "upper": 3,
      "standing": "judgement",
      "sources": [],
      "note": "How far the inner face of an arm, pushed on by hand, stands from the inner end of the flats of its own standard. No gauge dimension of an arm bore is published; a trial fit replaces this."
    },
    "handFitEndGapMm": {
      "value": 2.5,
      "unit": "mm",
      "lower": 1.5,
      "upper": 3.5,
      "standing": "judgement",
      "sources": [],
      "note": "How far the bolt seat of an arm, pushed on by hand, stands proud of the spindle end of its own standard. No gauge dimension of an arm bore is published; a trial fit replaces this."
    },
    "claims": [
      {
        "id": "shoulder",
        "statement": "The flats end in a shoulder of varying shape, angle and length on which the inner face of the arm should not bear.",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki"
        ]
      },
      {
        "id": "bore-flats",
        "statement": "The flats of the bore are usually plane but can be slightly crowned.",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki"
        ]
      },
      {
        "id": "ends-earlier",
        "statement": "The JIS taper ends earlier and blunter than the ISO one.",
        "standing": "secondary",
        "sources": [
          "taper-de-wiki",
          "taper-de-wiki-older",
          "taper-tech-notes"
        ]
      },
      {
        "id": "other-sizes",
        "statement": "Other sizes exist besides JIS and ISO; one old Italian family is slightly narrower and longer than ISO, and nothing modern fits it.",
        "standing": "secondary",
        "sources": [
          "taper-de-wiki",
          "taper-de-wiki-older",
          "taper-fr-workshop-wiki"
        ]
      }
    ]
  },
  "axialStop": {
    "kind": "press-on-taper",
    "claims": [
      {
        "id": "no-stop",
        "statement": "Nothing stops the arm but its own press on the taper: it may bear neither on the shoulder nor, through its bolt seat, on the spindle end.",
        "standing": "secondary",
        "sources": [
          "forum-mixed-signs",
          "taper-fr-workshop-wiki",
          "taper-jp-sizes-2014"
        ]
      }
    ]
  },
  "drawnTight": {
    "by": "centre-bolt-or-nut",
    "claims": [
      {
        "id": "centre-bolt",
        "statement": "A bolt in the spindle end draws the arm up the taper; older spindles carry a stud and a nut.",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki",
          "thread-size-list"
        ]
      },
      {
        "id": "right-hand",
        "statement": "JIS classes the threads of axle, bolt and nut as right-hand metric threads, not as cycle threads.",
        "standing": "secondary",
        "sources": [
          "bolt-classes-jp-2022"
        ]
      },
      {
        "id": "thin-nuts",
        "statement": "Thin nuts on studded spindles are hard to tighten and come loose.",
        "standing": "secondary",
        "sources": [
          "left-arm-post"
        ]
      }
    ]
  },
  "fixingThreads": [
    {
      "id": "bolt-m8x1",
      "use": "Bolt in a tapped spindle end",
      "designation": "M8x1",
      "nominalDiameterMm": {
        "value": 8,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki",
          "thread-size-list"
        ]
      },
      "pitchMm": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki",
          "thread-size-list"
        ]
      },
      "hand": "right",
      "member": "internal",
      "usual": true
    },
    {
      "id": "nut-m10x1-25",
      "use": "Nut on a studded spindle end",
      "designation": "M10x1.25",
      "nominalDiameterMm": {
        "value": 10,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki"
        ]
      },
      "pitchMm": {
        "value": 1.25,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki"
        ]
      },
      "hand": "right",
      "member": "external",
      "note": "Another list gives M8x1.25 for the stud: measure."
    },
    {
      "id": "nut-m8x1-25",
      "use": "Nut on a studded spindle end",
      "designation": "M8x1.25",
      "nominalDiameterMm": {
        "value": 8,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "thread-size-list"
        ]
      },
      "pitchMm": {
        "value": 1.25,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "thread-size-list"
        ]
      },
      "hand": "right",
      "member": "external",
      "note": "Another page gives M10x1.25 for the stud: measure."
    },
    {
      "id": "bolt-m10",
      "use": "Bolt in the spindle of an electric city bike",
      "designation": "M10",
      "nominalDiameterMm": {
        "value": 10,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "e-city-bike-manual"
        ]
      },
      "hand": "right",
      "member": "internal",
      "note": "Pitch not given by the source."
    }
  ],
  "fixingHeads": [
    {
      "id": "hexagon-14",
      "kind": "external-hexagon",
      "acrossFlatsMm": {
        "value": 14,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "puller-threads-odd"
        ]
      }
    },
    {
      "id": "hexagon-15",
      "kind": "external-hexagon",
      "acrossFlatsMm": {
        "value": 15,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "puller-threads-odd"
        ]
      }
    },
    {
      "id": "hexagon-16",
      "kind": "external-hexagon",
      "acrossFlatsMm": {
        "value": 16,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "puller-threads-odd"
        ]
      },
      "note": "One old family."
    },
    {
      "id": "socket-8",
      "kind": "internal-hexagon",
      "acrossFlatsMm": {
        "value": 8,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "magazine-answer"
        ]
      },
      "note": "Modern bolts."
    }
  ],
  "puller": {
    "threads": [
      {
        "id": "m22x1",
        "use": "Almost all arms",
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
      },
      {
        "id": "m23x1",
        "use": "One old French family",
        "designation": "M23x1",
        "nominalDiameterMm": {
          "value": 23,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "puller-threads-fr-wiki",
            "puller-threads-odd"
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
        "member": "internal"
      },
      {
        "id": "odd-french",
        "use": "Another old French family, before 1982",
        "designation": "M23.35x1",
        "nominalDiameterMm": {
          "value": 23.35,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "puller-threads-fr-wiki"
          ],
          "alternatives": [
            {
              "value": 23.15,
              "unit": "mm",
              "standing": "secondary",
              "sources": [
                "puller-threads-odd"
              ]
            },
            {
              "value": 23.2,
              "unit": "mm",
              "standing": "secondary",
              "sources": [
                "puller-threads-odd"
              ],
              "set": "quoted-by-puller-threads-odd",
              "note": "Quoted on the same page."
            }
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
        "note": "A 23 mm puller starts in this thread and then strips it."
      },
      {
        "id": "repair-24",
        "use": "Oversize repair thread, cut with a special tap",
        "designation": "M24",
        "nominalDiameterMm": {
          "value": 24,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "puller-thread-repair"
          ]
        },
        "hand": "right",
        "member": "internal"
      }
    ],
    "tip": [
      {
        "id": "small-tip",
        "statement": "The tip has to pass the square hole and bear on the spindle end; the washer under the bolt comes out first.",
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
      },
      {
        "id": "heat",
        "statement": "Boiling water widens an aluminium bore against the steel and helps removal; disputed in the same thread.",
        "standing": "secondary",
        "sources": [
          "forum-heat-145257"
        ]
      },
      {
        "id": "no-riding-off",
        "statement": "Riding without the bolt to free a stuck arm rounds the bore each time.",
        "standing": "secondary",
        "sources": [
          "mailing-list-2001-05"
        ]
      }
    ]
  },
  "indexPositions": {
    "count": {
      "value": 4,
      "unit": "positions",
      "standing": "derived",
      "sources": [
        "square-orientation-2015"
      ],
      "note": "A square goes on in four positions."
    },
    "stepDeg": {
      "value": 90,
      "unit": "deg",
      "standing": "derived",
      "sources": [
        "square-orientation-2015"
      ]
    },
    "claims": [
      {
        "id": "corner-in-line",
        "statement": "Most arms put a corner of the square in line with the arm, so that the flats stand at 45 degrees to it.",
        "standing": "secondary",
        "sources": [
          "forum-orientation-108816",
          "square-orientation-2015"
        ]
      },
      {
        "id": "flat-in-line",
        "statement": "Some arms put a flat parallel to the arm.",
        "standing": "secondary",
        "sources": [
          "forum-orientation-108816",
          "square-orientation-2015"
        ]
      },
      {
        "id": "not-to-be-paired",
        "statement": "A left and a right arm of different orientation cannot be paired: they would not stand opposite each other.",
        "standing": "secondary",
        "sources": [
          "forum-orientation-108816",
          "square-orientation-2015"
        ]
      }
    ]
  },
  "torquePractice": [
    {
      "id": "dealer-single-bolt",
      "joint": "Square taper, single M8 or M10 bolt",
      "torqueNm": {
        "value": 44.35,
        "unit": "Nm",
        "lower": 39.5,
        "upper": 49.2,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as 350 to 435 lbf.in; the value is the middle."
      }
    },
    {
      "id": "dealer-sport-crank",
      "joint": "Plain sport crank, single M8 bolt",
      "torqueNm": {
        "value": 40,
        "unit": "Nm",
        "lower": 38,
        "upper": 42,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "owners-manual",
      "joint": "Crank bolts in general",
      "torqueNm": {
        "value": 39.35,
        "unit": "Nm",
        "lower": 34.5,
        "upper": 44.2,
        "standing": "secondary",
        "sources": [
          "owners-manual-torques"
        ],
        "note": "Published as 305 to 391 lbf.in; the value is the middle."
      }
    },
    {
      "id": "magazine",
      "joint": "Square taper",
      "torqueNm": {
        "value": 42.5,
        "unit": "Nm",
        "lower": 40,
        "upper": 45,
        "standing": "secondary",
        "sources": [
          "magazine-answer"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "workshop-page",
      "joint": "Square taper",
      "torqueNm": {
        "value": 40,
        "unit": "Nm",
        "standing": "secondary",
        "sources": [
          "fitting-workshop-page",
          "forum-roadbike-304978"
        ]
      }
    },
    {
      "id": "japanese-shop",
      "joint": "Square taper",
      "torqueNm": {
        "value": 35,
        "unit": "Nm",
        "standing": "secondary",
        "sources": [
          "jp-shop-excerpt"
        ],
        "note": "About."
      }
    },
    {
      "id": "forum-greased",
      "joint": "Square taper, flats greased",
      "torqueNm": {
        "value": 40.7,
        "unit": "Nm",
        "standing": "secondary",
        "sources": [
          "forum-roadbike-304978"
        ],
        "note": "Published as 30 lbf.ft."
      }
    },
    {
      "id": "trade-range",
      "joint": "Square taper, M8 steel bolt, range over the sources above",
      "torqueNm": {
        "value": 40,
        "unit": "Nm",
        "lower": 34,
        "upper": 50,
        "standing": "derived",
        "sources": [
          "dealer-torque-tables",
          "fitting-workshop-page",
          "forum-roadbike-304978",
          "jp-shop-excerpt",
          "magazine-answer",
          "owners-manual-torques"
        ],
        "note": "Where the published ranges begin and end; the value is where they centre."
      }
    }
  ],
  "lubrication": [
    {
      "id": "known-press",
      "surface": "flats",
      "advice": "grease",
      "statement": "No mechanical reason for dry fitting: finger grease lubricates already, and a lubricant gives a known, repeatable press at a given torque.",
      "standing": "secondary",
      "sources": [
        "fitting-answers-qa",
        "fitting-faq-1995"
      ]
    },
    {
      "id": "galling",
      "surface": "flats",
      "advice": "grease",
      "statement": "Dry, the harder spindle shaves flakes off the aluminium that stay trapped, spoil the fit and creak.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs"
      ]
    },
    {
      "id": "trade-habit",
      "surface": "flats",
      "advice": "dry",
      "statement": "Dry is the habit of the trade, reported by a page that disagrees with it.",
      "standing": "secondary",
      "sources": [
        "fitting-workshop-page"
      ]
    },
    {
      "id": "instruction",
      "surface": "flats",
      "advice": "dry",
      "statement": "One instruction set says never to grease a square taper, but to grease splined spindles.",
      "standing": "secondary",
      "sources": [
        "no-grease-instruction"
      ]
    },
    {
      "id": "degrease",
      "surface": "flats",
      "advice": "dry",
      "statement": "A service manual cleans the flats with acetone or alcohol before fitting.",
      "standing": "secondary",
      "sources": [
        "service-manual-page-16"
      ]
    },
    {
      "id": "climbs-too-far",
      "surface": "flats",
      "advice": "dry",
      "statement": "A greased arm is said to climb too far and to be over-expanded.",
      "standing": "secondary",
      "sources": [
        "fitting-answers-qa"
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
  "retightening": [
    {
      "id": "creep",
      "advice": "explains",
      "statement": "The arm creeps up the taper under riding load and unloads the bolt without the bolt turning.",
      "standing": "secondary",
      "sources": [
        "fitting-workshop-page",
        "forum-2005-933904",
        "forum-roadbike-304978",
        "retightening-log"
      ]
    },
    {
      "id": "after-first-ride",
      "advice": "once",
      "statement": "Tighten again once after the first ride, an hour or a few miles, then leave it alone.",
      "standing": "secondary",
      "sources": [
        "forum-roadbike-304978",
        "retightening-log"
      ]
    },
    {
      "id": "never-to-full-torque",
      "advice": "never",
      "statement": "Never tighten again to full torque after riding: repeated chasing splits the arm.",
      "standing": "secondary",
      "sources": [
        "fitting-workshop-page",
        "forum-2005-933904",
        "forum-mixed-signs"
      ]
    },
    {
      "id": "several-times",
      "advice": "repeatedly",
      "statement": "Several times after fitting is normal.",
      "standing": "secondary",
      "sources": [
        "forum-roadbike-65490"
      ]
    }
  ],
  "failures": [
    {
      "id": "ridden-loose",
      "where": "arm-bore",
      "statement": "Once ridden loose, the bore of the arm is deformed and does not hold again.",
      "standing": "secondary",
      "sources": [
        "fitting-answers-qa",
        "forum-mixed-signs",
        "forum-roadbike-65490"
      ]
    },
    {
      "id": "split-arm",
      "where": "arm-bore",
      "statement": "The arm splits at a corner of the square; asserted in the trade, no fractographic study found.",
      "standing": "secondary",
      "sources": [
        "forum-2005-933904"
      ]
    },
    {
      "id": "never-tight",
      "where": "fixing",
      "statement": "The bolt was never tight enough: a short key, no torque wrench.",
      "standing": "secondary",
      "sources": [
        "jp-shop-excerpt",
        "magazine-answer"
      ]
    },
    {
      "id": "bottomed",
      "where": "joint",
      "statement": "Wrong pairing, or a bore too deep on: the bolt seat lands on the spindle end and the bolt no longer presses the arm.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs",
        "taper-jp-sizes-2014"
      ]
    },
    {
      "id": "left-side",
      "where": "joint",
      "statement": "The left side comes loose more often: the torque of the left leg passes only that joint towards the spindle and reverses each turn.",
      "standing": "secondary",
      "sources": [
        "left-arm-post",
        "spindle-torque-answer-2007"
      ]
    },
    {
      "id": "root-of-square",
      "where": "spindle",
      "statement": "The spindle breaks at the large end of the square, where it leaves the arm: bending and torsion peak there.",
      "standing": "secondary",
      "sources": [
        "spindle-failures"
      ]
    },
    {
      "id": "helical-crack",
      "where": "spindle",
      "statement": "A spindle fracture is a slightly helical fatigue crack from many torque cycles, on the left side.",
      "standing": "secondary",
      "sources": [
        "spindle-torque-answer-2007"
      ]
    },
    {
      "id": "arm-root",
      "where": "arm",
      "statement": "Fatigue from a machining mark at the place of greatest tensile bending next to the spindle, slow and then faster.",
      "standing": "secondary",
      "sources": [
        "crank-fracture-open-university"
      ]
    },
    {
      "id": "inner-wing",
      "where": "arm",
      "statement": "A left arm of U section cracked at its inner wing; film and scratches start the crack.",
      "standing": "secondary",
      "sources": [
        "broken-crank-notes",
        "spindle-failures"
      ]
    }
  ],
  "inspection": [
    {
      "id": "whole-flat",
      "look": "witness-mark",
      "statement": "Marks along the whole flat of the spindle mean that the square of the arm is worn out: replace the arm.",
      "standing": "secondary",
      "sources": [
        "service-manual-page-16"
      ]
    },
    {
      "id": "straight-flats",
      "look": "bore-flats",
      "statement": "The square hole should have straight, even flats; look for rounding or mushrooming.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs",
        "service-manual-page-16"
      ]
    },
    {
      "id": "clearance",
      "look": "end-gap",
      "statement": "There has to be clearance between the bolt seat of the arm and the spindle end.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs",
        "taper-jp-sizes-2014"
      ]
    },
    {
      "id": "not-on-shoulder",
      "look": "shoulder-gap",
      "statement": "The arm may not bear on the shoulder at the inner end of the flats; an arm or chainring that touches the frame gives the same symptom.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs",
        "taper-fr-workshop-wiki"
      ]
    },
    {
      "id": "creak",
      "look": "creak-under-load",
      "statement": "A creak under load points to the joint, and as well to chainring bolts, pedals and cups; one that returns after tightening: remove, clean, grease, fit again.",
      "standing": "secondary",
      "sources": [
        "creak-advice",
        "magazine-answer"
      ]
    }
  ],
  "mating": [
    {
      "id": "iso-arm-on-jis-spindle",
      "spindle": "square-taper-jis",
      "arm": "square-taper-iso",
      "verdict": "mates-with-shift",
      "statement": "An ISO arm on a JIS spindle sits farther out and bears over a shorter length; accepted by one source with checking.",
      "standing": "secondary",
      "sources": [
        "taper-de-wiki",
        "taper-de-wiki-older",
        "taper-jp-sizes-2014"
      ],
      "note": "Mixing is officially excluded, and practised where the change of chainline is allowed for."
    }
  ],
  "conflicts": [
    {
      "id": "document-number",
      "subject": "Number of the Japanese standard of the square taper",
      "positions": [
        {
          "id": "d-9401",
          "statement": "JIS D 9401.",
          "standing": "secondary",
          "sources": [
            "taper-jp-ham-2013"
          ]
        },
        {
          "id": "d-9403",
          "statement": "JIS D 9403.",
          "standing": "secondary",
          "sources": [
            "taper-fr-myths"
          ]
        }
      ],
      "comment": "Neither text was seen; JIS D 9415 is the standard of cranks."
    },
    {
      "id": "across-flats-at-end",
      "subject": "Size across flats at the small end of the JIS spindle",
      "positions": [
        {
          "id": "12-63",
          "statement": "12.63 mm.",
          "standing": "secondary",
          "sources": [
            "taper-de-wiki",
            "taper-fr-workshop-wiki",
            "taper-jp-sizes-2014",
            "taper-nl-workshop"
          ]
        },
        {
          "id": "12-65",
          "statement": "12.65 mm, said to be read from the standard.",
          "standing": "secondary",
          "sources": [
            "taper-jp-ham-2013"
          ]
        },
        {
          "id": "12-70",
          "statement": "12.7 mm by caliper.",
          "standing": "measured",
          "sources": [
            "taper-hobby-metrology-2022"
          ]
        },
        {
          "id": "12-73",
          "statement": "12.73 mm.",
          "standing": "secondary",
          "sources": [
            "taper-de-dealer",
            "taper-de-dealer-copy",
            "taper-nl-workshop"
          ]
        }
      ],
      "comment": "A spread of 0.10 mm is 1.43 mm of seat at 2 deg per face. The figures stand in the sets of the geometry."
    },
    {
      "id": "mixed-arm-shift",
      "subject": "How far an arm of one square taper moves on a spindle of the other, against its own",
      "positions": [
        {
          "id": "about-4-5-mm",
          "statement": "An ISO arm on a JIS spindle sits this much farther out, a JIS arm on an ISO spindle this much farther in; no arithmetic is given.",
          "standing": "secondary",
          "sources": [
            "taper-de-wiki-older",
            "taper-hobby-metrology-2022"
          ],
          "value": {
            "value": 4.5,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "taper-de-wiki-older",
              "taper-hobby-metrology-2022"
            ]
          },
          "note": "At 2 deg per face it would take 0.314 mm of difference across flats, which no source publishes; it is reached only if 2 deg is taken as the included angle."
        },
        {
          "id": "119-by-110",
          "statement": "A 119 mm ISO spindle was replaced by a 110 mm JIS one and worked.",
          "standing": "measured",
          "sources": [
            "taper-hobby-metrology-2022"
          ],
          "value": {
            "value": 4.5,
            "unit": "mm",
            "standing": "derived",
            "sources": [
              "taper-hobby-metrology-2022"
            ],
            "note": "Half of the difference in spindle length. It shows that the crank could be used, not where the arm sat."
          }
        },
        {
          "id": "1-79-mm",
          "statement": "Computed by its source from 12.63 against 12.50 mm, in the same directions; an ISO arm on a JIS spindle then bears over 13.21 mm.",
          "standing": "secondary",
          "sources": [
            "taper-jp-sizes-2014"
          ],
          "value": {
            "value": 1.79,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "taper-jp-sizes-2014"
            ],
            "note": "Comes out with 2 deg 05 min per face."
          }
        },
        {
          "id": "half-way-on",
          "statement": "An ISO arm goes about half-way onto a JIS spindle; a JIS arm bottoms out on an ISO spindle.",
          "standing": "secondary",
          "sources": [
            "taper-workshop-blog-2010"
          ],
          "note": "No figure is given."
        },
        {
          "id": "a-little-farther-out",
          "statement": "An ISO arm on a JIS spindle may sit a little farther out.",
          "standing": "secondary",
          "sources": [
            "taper-jp-ham-2013"
          ],
          "value": {
            "value": 2.15,
            "unit": "mm",
            "standing": "derived",
            "sources": [
              "taper-jp-ham-2013"
            ],
            "note": "From 12.65 against 12.50 mm at 2 deg per face; 2.06 mm at 2 deg 05 min."
          }
        },
        {
          "id": "two-makers",
          "statement": "The sizes of two bearing makers differ between the tapers by the same amount in either set.",
          "standing": "secondary",
          "sources": [
            "taper-nl-workshop"
          ],
          "value": {
            "value": 1.86,
            "unit": "mm",
            "standing": "derived",
            "sources": [
              "taper-nl-workshop"
            ],
            "note": "From 0.13 mm at 2 deg per face; 1.79 mm at 2 deg 05 min."
          }
        },
        {
          "id": "measured-against-nominal",
          "statement": "A measured JIS size of 12.7 mm set against a nominal ISO size of 12.5 mm gives the largest shift that sizes in print support.",
          "standing": "derived",
          "sources": [
            "taper-hobby-metrology-2022"
          ],
          "value": {
            "value": 2.86,
            "unit": "mm",
            "standing": "derived",
            "sources": [
              "taper-hobby-metrology-2022"
            ],
            "note": "At 2 deg per face; 2.75 mm at 2 deg 05 min. A measurement beside a nominal value: not one set."
          }
        }
      ],
      "comment": "With about 2 deg per face, sets that give both sizes yield 1.8 to 2.1 mm, a measured size against a nominal one up to 2.9 mm. A trial fit of the arm settles it for the parts at hand."
    },
    {
      "id": "steepness",
      "subject": "Whether the two square tapers differ in steepness",
      "positions": [
        {
          "id": "same-angle",
          "statement": "One included angle for both tapers.",
          "standing": "secondary",
          "sources": [
            "taper-fr-myths"
          ],
          "value": {
            "value": 4.1,
            "unit": "deg",
            "standing": "secondary",
            "sources": [
              "taper-fr-myths"
            ],
            "note": "Included; could be 4 deg 10 min."
          }
        },
        {
          "id": "one-angle-given",
          "statement": "Sources that give an angle give one for both tapers.",
          "standing": "secondary",
          "sources": [
            "taper-de-wiki",
            "taper-fr-workshop-wiki",
            "taper-jp-ham-2013"
          ]
        },
        {
          "id": "tapers-differ",
          "statement": "The two tapers differ in steepness.",
          "standing": "common-practice",
          "sources": [],
          "support": "none-found"
        }
      ],
      "comment": "No source supports a difference in steepness. What differs is the size at the end and the length."
    },
    {
      "id": "face-angle",
      "subject": "Face angle of the square taper",
      "positions": [
        {
          "id": "2-deg-per-face",
          "statement": "Two degrees a face against the axis.",
          "standing": "secondary",
          "sources": [
            "taper-cad-spec",
            "taper-de-wiki",
            "taper-de-wiki-older",
            "taper-tech-notes"
          ],
          "value": {
            "value": 2,
            "unit": "deg",
            "standing": "secondary",
            "sources": [
              "taper-cad-spec",
              "taper-de-wiki",
              "taper-de-wiki-older",
              "taper-tech-notes"
            ]
          }
        },
        {
          "id": "2-deg-05-per-face",
          "statement": "Two degrees five a face against the axis, ambiguous between minutes and a decimal.",
          "standing": "secondary",
          "sources": [
            "taper-fr-workshop-wiki"
          ],
          "value": {
            "value": 2.083333,
            "unit": "deg",
            "standing": "secondary",
            "sources": [
              "taper-fr-workshop-wiki"
            ],
            "note": "Two degrees and five minutes, as decimal degrees."
          }
        },
        {
          "id": "4-10-included",
          "statement": "An included angle of 4.10, said to be exact, for both tapers.",
          "standing": "secondary",
          "sources": [
            "taper-fr-myths"
          ],
          "value": {
            "value": 4.1,
            "unit": "deg",
            "standing": "secondary",
            "sources": [
              "taper-fr-myths"
            ],
            "note": "Included; could be 4 deg 10 min."
          }
        },
        {
          "id": "2-deg-unspecified",
          "statement": "Two degrees, without saying per face or included.",
          "standing": "secondary",
          "sources": [
            "taper-hobby-metrology-2022",
            "taper-jp-ham-2013",
            "taper-workshop-blog-2010"
          ],
          "value": {
            "value": 2,
            "unit": "deg",
            "standing": "secondary",
            "sources": [
              "taper-hobby-metrology-2022",
              "taper-jp-ham-2013",
              "taper-workshop-blog-2010"
            ]
          }
        }
      ],
      "comment": "No source says two degrees included. 2 deg 05 min a face and 4 deg 10 min included agree with each other."
    },
    {
      "id": "reading-plane",
      "subject": "The plane in which the published size across flats is taken",
      "positions": [
        {
          "id": "at-the-tip",
          "statement": "At the small, outer end of the taper.",
          "standing": "secondary",
          "sources": [
            "taper-de-wiki",
            "taper-fr-workshop-wiki",
            "taper-hobby-metrology-2022",
            "taper-jp-ham-2013"
          ]
        },
        {
          "id": "at-the-root",
          "statement": "At the root end of the taper.",
          "standing": "secondary",
          "sources": [
            "taper-jp-sizes-2014"
          ],
          "note": "Probably a slip of wording."
        },
        {
          "id": "at-the-arm-face",
          "statement": "A JIS size of the arm, at the inner, wide face of its bore.",
          "standing": "secondary",
          "sources": [
            "taper-cad-spec"
          ],
          "value": {
            "value": 12.65,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "taper-cad-spec"
            ],
            "note": "A bore no wider than this at its mouth would hardly start on the spindle."
          }
        }
      ],
      "comment": "One millimetre of plane is 0.07 mm across flats. The two sets of one workshop page differ by 0.10 mm for both tapers, about an end chamfer: they may be one part read in two planes."
    },
    {
      "id": "taper-length",
      "subject": "Length of the taper",
      "positions": [
        {
          "id": "15-and-18",
          "statement": "JIS 15 mm, ISO 18 mm.",
          "standing": "secondary",
          "sources": [
            "taper-jp-sizes-2014"
          ]
        },
        {
          "id": "no-agreement",
          "statement": "There is no agreement between makers on the length.",
          "standing": "secondary",
          "sources": [
            "taper-de-wiki"
          ]
        },
        {
          "id": "lengths-differ",
          "statement": "Lengths differ on cartridge units of different eras, the longest on a recent one; some racing spindles of the 1980s are slightly shorter, all with the same tip.",
          "standing": "measured",
          "sources": [
            "taper-hobby-metrology-2022"
          ]
        }
      ],
      "comment": "Measure it on the part."
    },
    {
      "id": "nut-thread",
      "subject": "Thread of a spindle with studs for nuts",
      "positions": [
        {
          "id": "m10x1-25",
          "statement": "M10x1.25.",
          "standing": "secondary",
          "sources": [
            "taper-fr-workshop-wiki"
          ]
        },
        {
          "id": "m8x1-25",
          "statement": "M8x1.25.",
          "standing": "secondary",
          "sources": [
            "thread-size-list"
          ]
        }
      ],
      "comment": "Measure it."
    },
    {
      "id": "fixing-torque",
      "subject": "Tightening torque of the fixing bolt",
      "positions": [
        {
          "id": "dealer-tables",
          "statement": "Two tables of one origin, one line for the class and one for a plain sport crank.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        },
        {
          "id": "owners-manual",
          "statement": "A generic manual gives a range that begins lower.",
          "standing": "secondary",
          "sources": [
            "owners-manual-torques"
          ]
        },
        {
          "id": "japanese-shop",
          "statement": "A shop gives about 35 Nm.",
          "standing": "secondary",
          "sources": [
            "jp-shop-excerpt"
          ]
        },
        {
          "id": "workshop-pages",
          "statement": "Workshop pages, a magazine and a forum centre on 40 Nm.",
          "standing": "secondary",
          "sources": [
            "fitting-workshop-page",
            "forum-roadbike-304978",
            "magazine-answer"
          ]
        }
      ],
      "comment": "The value of the part maker stands above all of them. The figures are under torquePractice."
    },
    {
      "id": "lubrication-of-flats",
      "subject": "Grease or dry flats",
      "positions": [
        {
          "id": "grease",
          "statement": "No mechanical reason for dry fitting: the lubricant gives a known press at a given torque and keeps the flats from galling.",
          "standing": "secondary",
          "sources": [
            "fitting-answers-qa",
            "fitting-faq-1995",
            "fitting-workshop-page",
            "forum-mixed-signs"
          ]
        },
        {
          "id": "dry",
          "statement": "Flats are cleaned of grease before fitting; one instruction set says never to grease a square taper.",
          "standing": "secondary",
          "sources": [
            "no-grease-instruction",
            "service-manual-page-16"
          ]
        }
      ],
      "comment": "Both are practised. The press at a given torque differs by a factor of about 1.5 to 2.5, so the choice has to be stated beside a torque."
    },
    {
      "id": "retightening",
      "subject": "Whether to tighten again after riding",
      "positions": [
        {
          "id": "once",
          "statement": "Once, after the first ride.",
          "standing": "secondary",
          "sources": [
            "forum-roadbike-304978",
            "retightening-log"
          ]
        },
        {
          "id": "never",
          "statement": "Never to full torque: chasing it splits the arm.",
          "standing": "secondary",
          "sources": [
            "fitting-workshop-page",
            "forum-2005-933904",
            "forum-mixed-signs"
          ]
        },
        {
          "id": "several",
          "statement": "Several times after fitting is normal.",
          "standing": "secondary",
          "sources": [
            "forum-roadbike-65490"
          ]
        }
      ],
      "comment": "The first time restores the clamp that settling took; each further time drives the arm farther on."
    }
  ],
  "missing": [
    "Texts of ISO 6695 and of the JIS drawings: no tolerance of the square, no size at the large end, no corner form, no shoulder, no gauge dimension of the arm bore.",
    "Any published measurement of the travel of an arm on the taper, of its press, or of the loss of bolt preload in riding."
  ]
};
