// Generated from the files in data/ by `npm run generate`; edit those.
import type { FixingRecord } from '../neighbour.ts';

/** Chainring bolt M8x0.75. */
export const chainringBoltM8x075: FixingRecord = {
  "dataEdition": "2026.11",
  "id": "chainring-bolt-m8x0-75",
  "aliases": [],
  "kind": "fixing",
  "title": "Chainring bolt M8x0.75",
  "summary": "The short bolt and sleeve nut that hold a chainring.",
  "form": "chainring-bolt",
  "thread": {
    "id": "chainring-bolt",
    "use": "Chainring bolt and its sleeve nut",
    "designation": "M8x0.75",
    "nominalDiameterMm": {
      "value": 8,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "thread-size-list"
      ]
    },
    "pitchMm": {
      "value": 0.75,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "thread-size-list"
      ]
    },
    "hand": "right",
    "pitchDiameterMm": {
      "value": 7.5129,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Nominal diameter less 0.649519 pitches."
    },
    "minorDiameterMm": {
      "value": 7.0798,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "External thread: nominal diameter less 1.226869 pitches."
    },
    "internalMinorDiameterMm": {
      "value": 7.1881,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Internal thread: nominal diameter less 1.082532 pitches."
    },
    "stressAreaMm2": {
      "value": 41.812,
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
      "id": "socket-5",
      "kind": "internal-hexagon",
      "acrossFlatsMm": {
        "value": 5,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    }
  ],
  "documents": [],
  "claims": [],
  "torquePractice": [
    {
      "id": "dealer-aluminium",
      "joint": "Chainring bolts of aluminium",
      "torqueNm": {
        "value": 8.5,
        "unit": "Nm",
        "lower": 8,
        "upper": 9,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "dealer-steel",
      "joint": "Chainring bolts of steel",
      "torqueNm": {
        "value": 13,
        "unit": "Nm",
        "lower": 12,
        "upper": 14,
        "standing": "secondary",
        "sources": [
          "dealer-torque-tables"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "manual-lower",
      "joint": "Chainring bolts, first line of a manual",
      "torqueNm": {
        "value": 7.45,
        "unit": "Nm",
        "lower": 5,
        "upper": 9.9,
        "standing": "secondary",
        "sources": [
          "owners-manual-torques"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "manual-upper",
      "joint": "Chainring bolts, second line of a manual",
      "torqueNm": {
        "value": 9.3,
        "unit": "Nm",
        "lower": 7.9,
        "upper": 10.7,
        "standing": "secondary",
        "sources": [
          "owners-manual-torques"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "mating": [],
  "conflicts": [
    {
      "id": "chainring-torque",
      "subject": "Tightening torque of chainring bolts",
      "positions": [
        {
          "id": "dealer",
          "statement": "8 to 9 Nm for aluminium and 12 to 14 Nm for steel bolts.",
          "standing": "secondary",
          "sources": [
            "dealer-torque-tables"
          ]
        },
        {
          "id": "manual",
          "statement": "5.0 to 9.9 and 7.9 to 10.7 Nm.",
          "standing": "secondary",
          "sources": [
            "owners-manual-torques"
          ]
        }
      ],
      "comment": "The two do not name the same bolts; the value of the maker stands above both."
    }
  ],
  "missing": []
};
