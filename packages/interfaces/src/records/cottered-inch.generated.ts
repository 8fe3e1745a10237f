// Generated from the files in data/ by `npm run generate`; edit those.
import type { CotteredRecord } from '../record.ts';

/** Cottered crank, inch. */
export const cotteredInch: CotteredRecord = {
  "dataEdition": "2026.11",
  "id": "cottered-inch",
  "aliases": [],
  "family": "cottered",
  "title": "Cottered crank, inch",
  "summary": "A round spindle of 5/8 in with a flat across it; a cotter with one tapered flat is pressed through the arm and wedges it.",
  "documents": [
    {
      "id": "jis-d-9415",
      "statement": "Table 1 of JIS D 9415 lists the cottered crank with a single ring.",
      "standing": "secondary",
      "sources": [
        "crank-kinds-jp"
      ],
      "note": "Dimensions not reached."
    },
    {
      "id": "is-1131",
      "statement": "The Indian standard of bottom-bracket axles covers cottered ones.",
      "standing": "secondary",
      "sources": [
        "is-1131"
      ],
      "note": "Figures not reached."
    }
  ],
  "interchange": {
    "id": "most",
    "kind": "published-sizes",
    "statement": "Most cottered spindles measure 5/8 in at the crank; arms go on spindles of their own diameter with cotters of their own diameter and flat.",
    "standing": "secondary",
    "sources": [
      "cottered-notes"
    ]
  },
  "geometry": {
    "spindleDiameterMm": {
      "value": 15.875,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "cottered-notes"
      ],
      "note": "5/8 in."
    },
    "cotterDiameterMm": {
      "value": 9.5,
      "unit": "mm",
      "standing": "from-memory",
      "sources": [],
      "note": "British cotters; not confirmed."
    },
    "claims": [
      {
        "id": "most-spindles",
        "statement": "5/8 in for most cottered spindles, 15.5 mm for French ones.",
        "standing": "secondary",
        "sources": [
          "cottered-notes"
        ]
      },
      {
        "id": "flat",
        "statement": "The flats of cotters differ in angle and depth; a replacement is filed to fit or chosen by the old one.",
        "standing": "from-memory",
        "sources": []
      }
    ]
  },
  "axialStop": {
    "kind": "cotter",
    "claims": [
      {
        "id": "cotter-locates",
        "statement": "The cotter lies in a flat across the spindle and holds the arm along the axis as well as against turning.",
        "standing": "secondary",
        "sources": [
          "cottered-notes"
        ]
      }
    ]
  },
  "drawnTight": {
    "by": "cotters",
    "claims": [
      {
        "id": "press-in",
        "statement": "The cotter is pressed in; its nut only keeps it. Pressing rather than hammering and pulling with the nut gives a much lower rate of loosening.",
        "standing": "secondary",
        "sources": [
          "cotter-press"
        ]
      },
      {
        "id": "opposite-directions",
        "statement": "The cotters go in from opposite directions, so that their angles cancel and the arms stand opposite each other.",
        "standing": "secondary",
        "sources": [
          "cottered-notes"
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
        "id": "press-out",
        "statement": "The cotter is pressed out, not hammered: a blow spreads its threaded end and goes into the bearings.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  "indexPositions": {
    "claims": [
      {
        "id": "same-way-round",
        "statement": "Cotters the same way round leave the arms out of line.",
        "standing": "secondary",
        "sources": [
          "cottered-notes"
        ]
      }
    ]
  },
  "torquePractice": [],
  "lubrication": [],
  "retightening": [
    {
      "id": "field-recipe",
      "advice": "once",
      "statement": "Hammer in, tighten the nut, ride about 10 miles, hammer and tighten again.",
      "standing": "secondary",
      "sources": [
        "cottered-field-recipe-2007"
      ],
      "value": {
        "value": 16,
        "unit": "km",
        "standing": "secondary",
        "sources": [
          "cottered-field-recipe-2007"
        ],
        "note": "About; published as 10 miles."
      }
    }
  ],
  "failures": [
    {
      "id": "inner-edge",
      "where": "spindle",
      "statement": "The spindle cracks at the inner edge of the crank, starting opposite the cotter.",
      "standing": "secondary",
      "sources": [
        "spindle-failures"
      ]
    },
    {
      "id": "hard-use",
      "where": "joint",
      "statement": "Cottered cranks loosen or fail early on fixed-gear bicycles and tandems.",
      "standing": "secondary",
      "sources": [
        "cotterless-glossary"
      ]
    }
  ],
  "inspection": [
    {
      "id": "cotter-form",
      "look": "cotter",
      "statement": "A cotter with a step worn into its flat, or with a bent thread, is replaced, and by one of the same diameter and flat.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "one-step-off",
      "look": "arm-alignment",
      "statement": "Arms out of line mean cotters the same way round or cotters of different flats.",
      "standing": "secondary",
      "sources": [
        "cottered-notes"
      ]
    }
  ],
  "mating": [
    {
      "id": "metric-arm-on-inch-spindle",
      "spindle": "cottered-inch",
      "arm": "cottered-metric",
      "verdict": "does-not-mate",
      "statement": "A French arm bored for 15.5 mm does not go onto a spindle of 15.875 mm.",
      "standing": "derived",
      "sources": [
        "cottered-notes"
      ],
      "value": {
        "value": -0.375,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "cottered-notes"
        ],
        "note": "Bore less spindle."
      }
    },
    {
      "id": "inch-arm-on-metric-spindle",
      "spindle": "cottered-metric",
      "arm": "cottered-inch",
      "verdict": "starts-then-fails",
      "statement": "An arm bored for 15.875 mm goes onto a spindle of 15.5 mm with 0.375 mm of play, which the cotter takes up on one side only: the arm rocks and the cotter shears.",
      "standing": "derived",
      "sources": [
        "cottered-notes"
      ],
      "value": {
        "value": 0.375,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "cottered-notes"
        ],
        "note": "Bore less spindle."
      }
    }
  ],
  "conflicts": [
    {
      "id": "seating",
      "subject": "How to seat a cotter",
      "positions": [
        {
          "id": "press",
          "statement": "Press it in.",
          "standing": "secondary",
          "sources": [
            "cotter-press"
          ]
        },
        {
          "id": "hammer",
          "statement": "Hammer it in, ride, hammer again.",
          "standing": "secondary",
          "sources": [
            "cottered-field-recipe-2007"
          ]
        }
      ],
      "comment": "A press gives the lower rate of loosening."
    }
  ],
  "missing": [
    "A source for the diameters of cotters and for the angle of their flat.",
    "Threads and torques of cotter nuts, and a published account of greasing cotters."
  ]
};
