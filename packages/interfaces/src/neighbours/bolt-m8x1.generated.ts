// Generated from the files in data/ by `npm run generate`; edit those.
import type { FixingRecord } from '../neighbour.ts';

/** Crank bolt M8x1. */
export const boltM8x1: FixingRecord = {
  "dataEdition": "2026.11",
  "id": "bolt-m8x1",
  "aliases": [],
  "kind": "fixing",
  "title": "Crank bolt M8x1",
  "summary": "The bolt of tapped square-taper spindles.",
  "form": "spindle-bolt",
  "thread": {
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
    "pitchDiameterMm": {
      "value": 7.3505,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Nominal diameter less 0.649519 pitches."
    },
    "minorDiameterMm": {
      "value": 6.7731,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "External thread: nominal diameter less 1.226869 pitches."
    },
    "internalMinorDiameterMm": {
      "value": 6.9175,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Internal thread: nominal diameter less 1.082532 pitches."
    },
    "stressAreaMm2": {
      "value": 39.167,
      "unit": "mm2",
      "standing": "derived",
      "sources": [
        "iso-898-1-quoted"
      ],
      "note": "pi/4 times the square of the nominal diameter less 0.938194 pitches."
    }
  },
  "heads": [
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
  "documents": [],
  "claims": [
    {
      "id": "right-hand",
      "statement": "JIS classes crank bolts as right-hand metric threads, not as cycle threads.",
      "standing": "secondary",
      "sources": [
        "bolt-classes-jp-2022"
      ]
    },
    {
      "id": "not-in-the-rule",
      "statement": "The rule of JIS that a fastener may not break at 120 per cent of its torque lists bar, stem, bar end, saddle and seatpost; crank bolts are not in that list.",
      "standing": "secondary",
      "sources": [
        "bolt-classes-jp-2022"
      ],
      "value": {
        "value": 120,
        "unit": "percent",
        "standing": "secondary",
        "sources": [
          "bolt-classes-jp-2022"
        ]
      }
    },
    {
      "id": "read-out",
      "statement": "One turn after contact is 1 mm of arm travel and bolt stretch together.",
      "standing": "derived",
      "sources": [
        "thread-size-list"
      ],
      "value": {
        "value": 1,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "thread-size-list"
        ],
        "note": "A turn."
      }
    }
  ],
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
  "mating": [],
  "conflicts": [
    {
      "id": "bolt-force",
      "subject": "Bolt force of a square taper at 40 Nm",
      "positions": [
        {
          "id": "nut-factor-0-15",
          "statement": "33.3 kN with a nut factor of 0.15.",
          "standing": "derived",
          "sources": [
            "fitting-workshop-page",
            "forum-roadbike-304978",
            "nut-factor-supplier-page"
          ],
          "value": {
            "value": 33333,
            "unit": "N",
            "standing": "derived",
            "sources": [
              "fitting-workshop-page",
              "forum-roadbike-304978",
              "nut-factor-supplier-page"
            ],
            "note": "Torque over nut factor and diameter: 40 Nm, 0.15, 8 mm."
          }
        },
        {
          "id": "nut-factor-0-20",
          "statement": "25.0 kN with a nut factor of 0.20.",
          "standing": "derived",
          "sources": [
            "fitting-workshop-page",
            "forum-roadbike-304978",
            "nut-factor-supplier-page"
          ],
          "value": {
            "value": 25000,
            "unit": "N",
            "standing": "derived",
            "sources": [
              "fitting-workshop-page",
              "forum-roadbike-304978",
              "nut-factor-supplier-page"
            ],
            "note": "Torque over nut factor and diameter: 40 Nm, 0.2, 8 mm."
          }
        },
        {
          "id": "nut-factor-0-25",
          "statement": "20.0 kN with a nut factor of 0.25.",
          "standing": "derived",
          "sources": [
            "fitting-workshop-page",
            "forum-roadbike-304978",
            "nut-factor-supplier-page"
          ],
          "value": {
            "value": 20000,
            "unit": "N",
            "standing": "derived",
            "sources": [
              "fitting-workshop-page",
              "forum-roadbike-304978",
              "nut-factor-supplier-page"
            ],
            "note": "Torque over nut factor and diameter: 40 Nm, 0.25, 8 mm."
          }
        }
      ],
      "comment": "Friction decides, and no measurement of the press or of the bolt force of a crank joint was found."
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
    }
  ],
  "missing": []
};
