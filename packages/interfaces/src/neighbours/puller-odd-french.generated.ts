// Generated from the files in data/ by `npm run generate`; edit those.
import type { PullerThreadRecord } from '../neighbour.ts';

/** Puller thread of another old French family. */
export const pullerOddFrench: PullerThreadRecord = {
  "dataEdition": "2026.11",
  "id": "puller-odd-french",
  "aliases": [],
  "kind": "puller-thread",
  "title": "Puller thread of another old French family",
  "summary": "Somewhere between 23.15 and 23.35 mm, before 1982; the arm for which a 23 mm puller is the trap.",
  "thread": {
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
    "pitchDiameterMm": {
      "value": 22.7005,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Nominal diameter less 0.649519 pitches."
    },
    "minorDiameterMm": {
      "value": 22.1231,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "External thread: nominal diameter less 1.226869 pitches."
    },
    "internalMinorDiameterMm": {
      "value": 22.2675,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Internal thread: nominal diameter less 1.082532 pitches."
    },
    "stressAreaMm2": {
      "value": 394.497,
      "unit": "mm2",
      "standing": "derived",
      "sources": [
        "iso-898-1-quoted"
      ],
      "note": "pi/4 times the square of the nominal diameter less 0.938194 pitches."
    }
  },
  "documents": [],
  "claims": [
    {
      "id": "pitch-always-1",
      "statement": "The pitch of puller threads is always 1 mm.",
      "standing": "secondary",
      "sources": [
        "puller-threads-fr-wiki"
      ],
      "value": {
        "value": 1,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "puller-threads-fr-wiki"
        ]
      }
    },
    {
      "id": "screw-in-fully",
      "statement": "Screw the puller in fully: partial engagement strips the arm.",
      "standing": "secondary",
      "sources": [
        "no-grease-instruction"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [
    {
      "id": "starts-and-strips",
      "male": "puller-m23x1",
      "female": "puller-odd-french",
      "verdict": "starts-then-fails",
      "statement": "A 23 mm puller starts in the thread of this old family and then strips it.",
      "standing": "secondary",
      "sources": [
        "puller-threads-fr-wiki",
        "puller-threads-odd"
      ]
    }
  ],
  "conflicts": [
    {
      "id": "odd-french-puller-thread",
      "subject": "Diameter of the puller thread of an old French family",
      "positions": [
        {
          "id": "23-35",
          "statement": "23.35 mm.",
          "standing": "secondary",
          "sources": [
            "puller-threads-fr-wiki"
          ],
          "value": {
            "value": 23.35,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "puller-threads-fr-wiki"
            ]
          }
        },
        {
          "id": "23-15",
          "statement": "23.15 mm.",
          "standing": "secondary",
          "sources": [
            "puller-threads-odd"
          ],
          "value": {
            "value": 23.15,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "puller-threads-odd"
            ]
          }
        },
        {
          "id": "23-2",
          "statement": "23.2 mm, quoted.",
          "standing": "secondary",
          "sources": [
            "puller-threads-odd"
          ],
          "value": {
            "value": 23.2,
            "unit": "mm",
            "standing": "secondary",
            "sources": [
              "puller-threads-odd"
            ],
            "note": "Quoted on the same page."
          }
        }
      ],
      "comment": "All with a pitch of 1 mm. Measure the arm, and let no 23 mm puller near it."
    }
  ],
  "missing": []
};
