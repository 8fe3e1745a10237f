// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Chainline of a road double. */
export const chainlineRoadDouble: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "chainline-road-double",
  "aliases": [],
  "kind": "convention",
  "title": "Chainline of a road double",
  "summary": "Middle plane between the two rings.",
  "topic": "chainline",
  "values": [
    {
      "id": "mid-plane",
      "use": "Middle between the rings",
      "quantity": {
        "value": 43.5,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "chainline-randonneur-2013"
        ],
        "alternatives": [
          {
            "value": 45,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "chainline-randonneur-later"
            ],
            "set": "later-text",
            "note": "About; today."
          }
        ]
      }
    },
    {
      "id": "inner-ring",
      "use": "Inner ring",
      "quantity": {
        "value": 41,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "chainline-forum"
        ]
      }
    },
    {
      "id": "outer-ring",
      "use": "Outer ring",
      "quantity": {
        "value": 46,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "chainline-forum"
        ]
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "tolerance",
      "statement": "A deviation of 0.5 to 2 mm is not noticed.",
      "standing": "secondary",
      "sources": [
        "chainline-forum-tolerance",
        "chainline-randonneur-later"
      ],
      "value": {
        "value": 1.25,
        "unit": "mm",
        "lower": 0.5,
        "upper": 2,
        "standing": "secondary",
        "sources": [
          "chainline-forum-tolerance",
          "chainline-randonneur-later"
        ],
        "note": "Published as a range; the value is its middle."
      }
    },
    {
      "id": "makers-vary",
      "statement": "Makers themselves vary by 1 to 2 mm.",
      "standing": "secondary",
      "sources": [
        "chainline-forum-tolerance",
        "chainline-randonneur-later"
      ],
      "value": {
        "value": 1.5,
        "unit": "mm",
        "lower": 1,
        "upper": 2,
        "standing": "secondary",
        "sources": [
          "chainline-forum-tolerance",
          "chainline-randonneur-later"
        ],
        "note": "Published as a range; the value is its middle."
      }
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [
    {
      "id": "road-chainline",
      "subject": "Chainline of a road double",
      "positions": [
        {
          "id": "half-a-century",
          "statement": "43.5 mm, unchanged for half a century.",
          "standing": "secondary",
          "sources": [
            "chainline-randonneur-2013"
          ],
          "value": {
            "value": 43.5,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "chainline-randonneur-2013"
            ]
          }
        },
        {
          "id": "later-text",
          "statement": "About 45 mm today, the same author later.",
          "standing": "secondary",
          "sources": [
            "chainline-randonneur-later"
          ],
          "value": {
            "value": 45,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "chainline-randonneur-later"
            ],
            "note": "About."
          }
        }
      ],
      "comment": "Measure the frame and the wheel; makers differ by 1 to 2 mm."
    }
  ],
  "missing": []
};
