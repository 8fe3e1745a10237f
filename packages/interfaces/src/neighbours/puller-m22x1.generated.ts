// Generated from the files in data/ by `npm run generate`; edit those.
import type { PullerThreadRecord } from '../neighbour.ts';

/** Puller thread M22x1. */
export const pullerM22x1: PullerThreadRecord = {
  "dataEdition": "2026.11",
  "id": "puller-m22x1",
  "aliases": [],
  "kind": "puller-thread",
  "title": "Puller thread M22x1",
  "summary": "The puller thread of almost all square-taper arms and all splined three-piece arms.",
  "thread": {
    "id": "m22x1",
    "use": "Almost all arms",
    "designation": "M22x1",
    "nominalDiameterMm": {
      "value": 22,
      "unit": "mm",
      "standing": "secondary",
      "sources": [
        "puller-threads-fr-wiki",
        "puller-threads-odd",
        "taper-fr-workshop-wiki"
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
      "value": 21.3505,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Nominal diameter less 0.649519 pitches."
    },
    "minorDiameterMm": {
      "value": 20.7731,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "External thread: nominal diameter less 1.226869 pitches."
    },
    "internalMinorDiameterMm": {
      "value": 20.9175,
      "unit": "mm",
      "standing": "derived",
      "sources": [
        "iso-68-1"
      ],
      "note": "Internal thread: nominal diameter less 1.082532 pitches."
    },
    "stressAreaMm2": {
      "value": 348.402,
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
    },
    {
      "id": "self-extracting",
      "statement": "Self-extracting bolts use a ring screwed into the same thread.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs",
        "self-extracting-patents"
      ]
    }
  ],
  "torquePractice": [],
  "mating": [],
  "conflicts": [],
  "missing": []
};
