// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Length of a symmetric square-taper spindle. */
export const spindleLengthSymmetric: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "spindle-length-symmetric",
  "aliases": [],
  "kind": "convention",
  "title": "Length of a symmetric square-taper spindle",
  "summary": "Each end moves by half of a change in length, and the chainline with it.",
  "topic": "spindle-length",
  "values": [
    {
      "id": "shorter",
      "use": "Spindle that goes with a chainline of 47.5 mm",
      "quantity": {
        "value": 113,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "chainline-pairs-jp"
        ]
      }
    },
    {
      "id": "longer",
      "use": "Spindle that goes with a chainline of 50 mm",
      "quantity": {
        "value": 118,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "chainline-pairs-jp"
        ]
      }
    },
    {
      "id": "share",
      "use": "Share of a change in length that reaches the chainline",
      "quantity": {
        "value": 0.5,
        "unit": "ratio",
        "standing": "derived",
        "sources": [
          "chainline-pairs-jp"
        ],
        "note": "5 mm of length go with 2.5 mm of chainline."
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "half",
      "statement": "The chainline moves by half of the change in length; the published pairs agree.",
      "standing": "derived",
      "sources": [
        "chainline-pairs-jp"
      ]
    },
    {
      "id": "mixed-square",
      "statement": "A shift of the arm by a mix of squares counts like twice as much spindle length.",
      "standing": "derived",
      "sources": [
        "taper-jp-sizes-2014"
      ],
      "value": {
        "value": 3.6,
        "unit": "mm",
        "standing": "derived",
        "sources": [
          "taper-jp-sizes-2014"
        ],
        "note": "For the shift of 1.79 mm."
      }
    },
    {
      "id": "replaced",
      "statement": "A spindle of 119 mm was replaced by one of 110 mm with the other square.",
      "standing": "measured",
      "sources": [
        "taper-hobby-metrology-2022"
      ],
      "value": {
        "value": 9,
        "unit": "mm",
        "standing": "measured",
        "sources": [
          "taper-hobby-metrology-2022"
        ],
        "note": "The difference."
      }
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": []
};
