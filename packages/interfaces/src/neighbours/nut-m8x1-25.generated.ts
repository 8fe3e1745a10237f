// Generated from the files in data/ by `npm run generate`; edit those.
import type { FixingRecord } from '../neighbour.ts';

/** Crank nut M8x1.25. */
export const nutM8x125: FixingRecord = {
  "dataEdition": "2026.11",
  "id": "nut-m8x1-25",
  "aliases": [],
  "kind": "fixing",
  "title": "Crank nut M8x1.25",
  "summary": "The nut of a studded spindle by a list of threads.",
  "form": "spindle-nut",
  "thread": {
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
    "pitchDiameterMm": {
      "value": 7.1881,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Nominal diameter less 0.649519 pitches."
    },
    "minorDiameterMm": {
      "value": 6.4664,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "External thread: nominal diameter less 1.226869 pitches."
    },
    "internalMinorDiameterMm": {
      "value": 6.6468,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Internal thread: nominal diameter less 1.082532 pitches."
    },
    "stressAreaMm2": {
      "value": 36.609,
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
    }
  ],
  "documents": [],
  "claims": [],
  "torquePractice": [],
  "mating": [],
  "conflicts": [
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
    }
  ],
  "missing": [
    "A published torque for crank nuts."
  ]
};
