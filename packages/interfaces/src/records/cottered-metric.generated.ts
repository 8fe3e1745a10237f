// Generated from the files in data/ by `npm run generate`; edit those.
import type { CotteredRecord } from '../record.ts';

/** Cottered crank, metric. */
export const cotteredMetric: CotteredRecord = {
  "dataEdition": "2026.11",
  "id": "cottered-metric",
  "aliases": [],
  "family": "cottered",
  "title": "Cottered crank, metric",
  "summary": "A round spindle with a flat across it; a cotter with one tapered flat is pressed through the arm and wedges it.",
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
    "id": "measure",
    "kind": "published-sizes",
    "statement": "Arms go on spindles of their own diameter with cotters of their own diameter and flat; the sizes in print are nominal.",
    "standing": "secondary",
    "sources": [
      "cottered-notes"
    ]
  },
  "geometry": {
    "spindleDiameterMm": {
      "value": 15.5,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "cottered-notes"
      ],
      "note": "French; 0.610 in.",
      "alternatives": [
        {
          "value": 16,
          "unit": "mm",
          "standing": "from-memory",
          "sources": [],
          "set": "other-continental",
          "note": "Other continental spindles; not confirmed."
        }
      ]
    },
    "cotterDiameterMm": {
      "value": 9,
      "unit": "mm",
      "standing": "from-memory",
      "sources": [],
      "note": "Continental cotters.",
      "alternatives": [
        {
          "value": 9.5,
          "unit": "mm",
          "standing": "from-memory",
          "sources": [],
          "set": "british",
          "note": "British cotters, of the inch interface."
        }
      ]
    },
    "claims": [
      {
        "id": "inch-sibling",
        "statement": "Most other cottered spindles measure 5/8 in: they are the inch interface.",
        "standing": "secondary",
        "sources": [
          "cottered-notes"
        ],
        "value": {
          "value": 15.875,
          "unit": "mm",
          "standing": "secondary",
          "sources": [
            "cottered-notes"
          ]
        }
      },
      {
        "id": "pedal-thread",
        "statement": "Most French cottered cranks have pedal threads of 14 x 1.25 mm.",
        "standing": "secondary",
        "sources": [
          "pedal-threads-fr-wiki"
        ]
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
  "mating": [],
  "conflicts": [
    {
      "id": "spindle-diameter",
      "subject": "Diameter of metric cottered spindles",
      "positions": [
        {
          "id": "15-5",
          "statement": "15.5 mm, French.",
          "standing": "secondary",
          "sources": [
            "cottered-notes"
          ]
        },
        {
          "id": "16",
          "statement": "16 mm on other continental spindles.",
          "standing": "from-memory",
          "sources": []
        }
      ],
      "comment": "Measure the spindle."
    },
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
