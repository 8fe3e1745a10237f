// Generated from the files in data/ by `npm run generate`; edit those.
import type { PullerThreadRecord } from '../neighbour.ts';

/** Puller thread M23x1. */
export const pullerM23x1: PullerThreadRecord = {
  "dataEdition": "2026.11",
  "id": "puller-m23x1",
  "aliases": [],
  "kind": "puller-thread",
  "title": "Puller thread M23x1",
  "summary": "One old French family.",
  "thread": {
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
    "pitchDiameterMm": {
      "value": 22.3505,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Nominal diameter less 0.649519 pitches."
    },
    "minorDiameterMm": {
      "value": 21.7731,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "External thread: nominal diameter less 1.226869 pitches."
    },
    "internalMinorDiameterMm": {
      "value": 21.9175,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Internal thread: nominal diameter less 1.082532 pitches."
    },
    "stressAreaMm2": {
      "value": 382.272,
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
  "conflicts": [],
  "missing": []
};
