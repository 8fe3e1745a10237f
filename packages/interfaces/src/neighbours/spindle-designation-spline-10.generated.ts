// Generated from the files in data/ by `npm run generate`; edit those.
import type { ConventionRecord } from '../neighbour.ts';

/** Designation of ten-spline spindles. */
export const spindleDesignationSpline10: ConventionRecord = {
  "dataEdition": "2026.11",
  "id": "spindle-designation-spline-10",
  "aliases": [],
  "kind": "convention",
  "title": "Designation of ten-spline spindles",
  "summary": "The distance between the two stops of the arms, not the overall length.",
  "topic": "spindle-length",
  "values": [
    {
      "id": "d-108",
      "use": "Designation met in the trade",
      "quantity": {
        "value": 108,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "d-113",
      "use": "Designation met in the trade",
      "quantity": {
        "value": 113,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "d-118",
      "use": "Designation met in the trade",
      "quantity": {
        "value": 118,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "d-128",
      "use": "Designation met in the trade",
      "quantity": {
        "value": 128,
        "unit": "mm",
        "standing": "from-memory",
        "sources": []
      }
    },
    {
      "id": "share",
      "use": "Share of the designation from the middle plane to the stop",
      "quantity": {
        "value": 0.5,
        "unit": "ratio",
        "standing": "secondary",
        "sources": [
          "spline-10-web"
        ]
      }
    }
  ],
  "documents": [],
  "claims": [
    {
      "id": "half",
      "statement": "Half of the designation and the offset of the crank make the chainline; spindles are symmetric.",
      "standing": "secondary",
      "sources": [
        "spline-10-web"
      ]
    },
    {
      "id": "overall",
      "statement": "The overall length says nothing about the position of the arm.",
      "standing": "secondary",
      "sources": [
        "spline-10-answers"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": [
    "The list of designations of the standard."
  ]
};
