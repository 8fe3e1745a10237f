// Generated from the files in data/ by `npm run generate`; edit those.
import type { ObservationRecord } from './observation.ts';

/** What each observation means, for every joint and by family. */
export const observationRecords: readonly ObservationRecord[] = [
  {
    "dataEdition": "2026.11",
    "id": "observations-any",
    "aliases": [],
    "family": "any",
    "checksWithoutObject": [],
    "meanings": [
      {
        "id": "arm-alignment-in-line",
        "check": "arm-alignment",
        "outcome": "in-line",
        "reading": "right",
        "statement": "The arms stand opposite each other, as they should.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-alignment-out-of-line",
        "check": "arm-alignment",
        "outcome": "out-of-line",
        "reading": "wrong",
        "statement": "The arms are out of line by less than a step: an arm turns on its spindle, is bent, or was put on crooked.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-alignment-one-step-off",
        "check": "arm-alignment",
        "outcome": "one-step-off",
        "reading": "wrong",
        "statement": "The arms are out of line by one whole position: put together wrongly, not worn.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-straightness-straight",
        "check": "arm-straightness",
        "outcome": "straight",
        "reading": "right",
        "statement": "The arm is straight.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-straightness-bent",
        "check": "arm-straightness",
        "outcome": "bent",
        "reading": "wrong",
        "statement": "A bent arm is replaced; bent back it cracks.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "play-at-arm-none",
        "check": "play-at-arm",
        "outcome": "none",
        "reading": "depends",
        "statement": "No play by hand; a joint that only creaks under load can be loose all the same.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "play-at-arm-arm-moves-on-spindle",
        "check": "play-at-arm",
        "outcome": "arm-moves-on-spindle",
        "reading": "wrong",
        "statement": "The joint is loose: stop riding until it is known why.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "play-at-arm-both-arms-together",
        "check": "play-at-arm",
        "outcome": "both-arms-together",
        "reading": "depends",
        "statement": "The play is in the bearings, not in the joint.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "play-at-arm-insert-or-spider-moves",
        "check": "play-at-arm",
        "outcome": "insert-or-spider-moves",
        "reading": "wrong",
        "statement": "An insert or a spider has come loose in the arm; the joint with the spindle may be sound.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-on-arrival-tight",
        "check": "bolt-on-arrival",
        "outcome": "tight",
        "reading": "depends",
        "statement": "The fixing held its torque; it does not say that the arm is pressed.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-on-arrival-turns-before-torque",
        "check": "bolt-on-arrival",
        "outcome": "turns-before-torque",
        "reading": "depends",
        "statement": "The fixing has lost force: settled after fitting, or never tight.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-on-arrival-turns-without-end",
        "check": "bolt-on-arrival",
        "outcome": "turns-without-end",
        "reading": "wrong",
        "statement": "The thread is stripped.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-on-arrival-finger-loose",
        "check": "bolt-on-arrival",
        "outcome": "finger-loose",
        "reading": "wrong",
        "statement": "The arm has been ridden without its press.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-on-arrival-missing",
        "check": "bolt-on-arrival",
        "outcome": "missing",
        "reading": "wrong",
        "statement": "Not to be ridden: the arm has walked or will.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-on-arrival-broken",
        "check": "bolt-on-arrival",
        "outcome": "broken",
        "reading": "wrong",
        "statement": "Not to be ridden; the rest of the fixing has to come out and its cause be found.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "tightening-feel-rises-steadily",
        "check": "tightening-feel",
        "outcome": "rises-steadily",
        "reading": "right",
        "statement": "The fixing presses the arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "tightening-feel-goes-solid-at-once",
        "check": "tightening-feel",
        "outcome": "goes-solid-at-once",
        "reading": "wrong",
        "statement": "The fixing has met something hard before the arm was pressed.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "tightening-feel-never-firms-up",
        "check": "tightening-feel",
        "outcome": "never-firms-up",
        "reading": "wrong",
        "statement": "A thread gives way, or the arm keeps climbing.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "play-after-tightening-gone",
        "check": "play-after-tightening",
        "outcome": "gone",
        "reading": "depends",
        "statement": "The joint took up its play; whether it holds shows after a ride.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "play-after-tightening-remains",
        "check": "play-after-tightening",
        "outcome": "remains",
        "reading": "wrong",
        "statement": "Tight and still loose: the seat or the spindle is gone.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "end-gap-clear",
        "check": "end-gap",
        "outcome": "clear",
        "reading": "right",
        "statement": "The seat of the bolt stands clear of the spindle end, so the bolt can press the arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "end-gap-flush",
        "check": "end-gap",
        "outcome": "flush",
        "reading": "wrong",
        "statement": "The bolt clamps the spindle and not the arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "end-gap-past-end",
        "check": "end-gap",
        "outcome": "past-end",
        "reading": "wrong",
        "statement": "The spindle stands past the seat: the bolt clamps the spindle and not the arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "shoulder-gap-clear",
        "check": "shoulder-gap",
        "outcome": "clear",
        "reading": "depends",
        "statement": "The arm does not touch the shoulder.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "shoulder-gap-touching",
        "check": "shoulder-gap",
        "outcome": "touching",
        "reading": "depends",
        "statement": "The arm touches the shoulder.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "shoulder-gap-wide",
        "check": "shoulder-gap",
        "outcome": "wide",
        "reading": "depends",
        "statement": "The arm stands far from the shoulder.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-release-needs-puller",
        "check": "arm-release",
        "outcome": "needs-puller",
        "reading": "right",
        "statement": "The arm is still pressed on.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-release-comes-off-by-hand",
        "check": "arm-release",
        "outcome": "comes-off-by-hand",
        "reading": "wrong",
        "statement": "The press is gone.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bore-flats-straight",
        "check": "bore-flats",
        "outcome": "straight",
        "reading": "right",
        "statement": "The seat in the arm is sound.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bore-flats-galled",
        "check": "bore-flats",
        "outcome": "galled",
        "reading": "depends",
        "statement": "Torn metal in the seat: clean it, and look whether what is left is straight.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bore-flats-rounded",
        "check": "bore-flats",
        "outcome": "rounded",
        "reading": "wrong",
        "statement": "The seat is worn out; no shim, glue or peening saves it.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bore-flats-cracked",
        "check": "bore-flats",
        "outcome": "cracked",
        "reading": "wrong",
        "statement": "Not to be ridden: the arm is scrap.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "witness-mark-stops-short",
        "check": "witness-mark",
        "outcome": "stops-short",
        "reading": "right",
        "statement": "The arm bore where it should.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "witness-mark-whole-flat",
        "check": "witness-mark",
        "outcome": "whole-flat",
        "reading": "wrong",
        "statement": "The arm went on to the end of its seat: worn out.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "witness-mark-one-edge",
        "check": "witness-mark",
        "outcome": "one-edge",
        "reading": "wrong",
        "statement": "The arm bore on one edge: it has rocked.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "witness-mark-one-end",
        "check": "witness-mark",
        "outcome": "one-end",
        "reading": "depends",
        "statement": "The arm bore on one end of its seat: unequal angles, or hardly any press.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "spindle-flats-sound",
        "check": "spindle-flats",
        "outcome": "sound",
        "reading": "right",
        "statement": "The spindle can take another arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "spindle-flats-scored-or-rounded",
        "check": "spindle-flats",
        "outcome": "scored-or-rounded",
        "reading": "wrong",
        "statement": "A worn spindle spoils the next arm: replace it.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "spindle-flats-cracked",
        "check": "spindle-flats",
        "outcome": "cracked",
        "reading": "wrong",
        "statement": "Not to be ridden: the spindle is scrap.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "spindle-runout-true",
        "check": "spindle-runout",
        "outcome": "true",
        "reading": "right",
        "statement": "The spindle is straight.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "spindle-runout-bent",
        "check": "spindle-runout",
        "outcome": "bent",
        "reading": "wrong",
        "statement": "A bent spindle is replaced; the arm is looked at for cracks.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "creak-under-load-none",
        "check": "creak-under-load",
        "outcome": "none",
        "reading": "depends",
        "statement": "No noise now; a joint can be loose in silence.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "creak-under-load-each-pedal-stroke",
        "check": "creak-under-load",
        "outcome": "each-pedal-stroke",
        "reading": "depends",
        "statement": "A noise at each stroke points to the joint, and as well to chainring bolts, pedals and cups.",
        "standing": "secondary",
        "sources": [
          "creak-advice",
          "magazine-answer"
        ]
      },
      {
        "id": "fretting-debris-none",
        "check": "fretting-debris",
        "outcome": "none",
        "reading": "depends",
        "statement": "No sign of movement.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "fretting-debris-dark-powder-or-rust",
        "check": "fretting-debris",
        "outcome": "dark-powder-or-rust",
        "reading": "wrong",
        "statement": "The faces have moved against each other.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-fit-right",
        "check": "bolt-fit",
        "outcome": "right",
        "reading": "right",
        "statement": "The fixing is the one that belongs there.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-fit-bottoms-in-hole",
        "check": "bolt-fit",
        "outcome": "bottoms-in-hole",
        "reading": "wrong",
        "statement": "The bolt ends in its hole before it presses the arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-fit-wrong-thread-or-length",
        "check": "bolt-fit",
        "outcome": "wrong-thread-or-length",
        "reading": "wrong",
        "statement": "A wrong fixing: look at the thread in the spindle before another goes in.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-fit-head-on-wrong-face",
        "check": "bolt-fit",
        "outcome": "head-on-wrong-face",
        "reading": "wrong",
        "statement": "The head bears on something other than the seat of the arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bolt-fit-washer-missing",
        "check": "bolt-fit",
        "outcome": "washer-missing",
        "reading": "wrong",
        "statement": "The missing washer leaves the head on too little of the arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bearing-turning-smooth",
        "check": "bearing-turning",
        "outcome": "smooth",
        "reading": "right",
        "statement": "The bearings are in order.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bearing-turning-rough-or-loose",
        "check": "bearing-turning",
        "outcome": "rough-or-loose",
        "reading": "depends",
        "statement": "The bearings are worn or out of adjustment; the joint may be sound beside it.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "other-sources-ruled-out",
        "check": "other-sources",
        "outcome": "ruled-out",
        "reading": "depends",
        "statement": "Nothing else makes the noise, so the joint does.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "other-sources-pedal-or-chainring-suspect",
        "check": "other-sources",
        "outcome": "pedal-or-chainring-suspect",
        "reading": "depends",
        "statement": "Look there first.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "history-newly-fitted",
        "check": "history",
        "outcome": "newly-fitted",
        "reading": "depends",
        "statement": "What was put together just now is looked at first.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "history-ridden-loose",
        "check": "history",
        "outcome": "ridden-loose",
        "reading": "wrong",
        "statement": "A seat that was ridden loose is deformed until shown otherwise.",
        "standing": "secondary",
        "sources": [
          "fitting-answers-qa",
          "forum-mixed-signs"
        ]
      },
      {
        "id": "history-impact",
        "check": "history",
        "outcome": "impact",
        "reading": "depends",
        "statement": "Look for bends and cracks before anything is tightened.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "history-long-service",
        "check": "history",
        "outcome": "long-service",
        "reading": "depends",
        "statement": "Look for cracks.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "history-part-just-changed",
        "check": "history",
        "outcome": "part-just-changed",
        "reading": "depends",
        "statement": "The new part may not belong to the old one.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "history-refitted-often",
        "check": "history",
        "outcome": "refitted-often",
        "reading": "depends",
        "statement": "Each fitting takes something off the seat.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  {
    "dataEdition": "2026.11",
    "id": "observations-cottered",
    "aliases": [],
    "family": "cottered",
    "checksWithoutObject": [
      "clamp-slot",
      "end-gap",
      "shoulder-gap",
      "witness-mark"
    ],
    "meanings": [
      {
        "id": "arm-alignment-one-step-off",
        "check": "arm-alignment",
        "outcome": "one-step-off",
        "reading": "wrong",
        "statement": "The cotters went in the same way round: they have to go in from opposite directions, so that their angles cancel.",
        "standing": "secondary",
        "sources": [
          "cottered-notes"
        ]
      },
      {
        "id": "arm-alignment-out-of-line",
        "check": "arm-alignment",
        "outcome": "out-of-line",
        "reading": "wrong",
        "statement": "Cotters of different flats, or one that is worn or bent.",
        "standing": "derived",
        "sources": [
          "cottered-notes"
        ]
      },
      {
        "id": "cotter-sound",
        "check": "cotter",
        "outcome": "sound",
        "reading": "right",
        "statement": "The cotter is the fixing of this joint, and it is sound.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "cotter-deformed",
        "check": "cotter",
        "outcome": "deformed",
        "reading": "wrong",
        "statement": "A cotter with a step in its flat or a bent thread is replaced, by one of the same diameter and flat.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "cotter-wrong-way-round",
        "check": "cotter",
        "outcome": "wrong-way-round",
        "reading": "wrong",
        "statement": "Turn it round: the two cotters go in from opposite directions.",
        "standing": "secondary",
        "sources": [
          "cottered-notes"
        ]
      },
      {
        "id": "bolt-on-arrival-tight",
        "check": "bolt-on-arrival",
        "outcome": "tight",
        "reading": "depends",
        "statement": "The nut of the cotter only keeps it; tight says nothing about the wedge.",
        "standing": "secondary",
        "sources": [
          "cotter-press"
        ]
      },
      {
        "id": "bolt-on-arrival-finger-loose",
        "check": "bolt-on-arrival",
        "outcome": "finger-loose",
        "reading": "wrong",
        "statement": "The cotter has worked: press it in again and look at its flat.",
        "standing": "secondary",
        "sources": [
          "cotter-press"
        ]
      },
      {
        "id": "tightening-feel-goes-solid-at-once",
        "check": "tightening-feel",
        "outcome": "goes-solid-at-once",
        "reading": "depends",
        "statement": "The nut is no means of pressing the cotter in: a press is.",
        "standing": "secondary",
        "sources": [
          "cotter-press"
        ]
      },
      {
        "id": "arm-release-needs-puller",
        "check": "arm-release",
        "outcome": "needs-puller",
        "reading": "depends",
        "statement": "The arm comes off once its cotter is pressed out; it has no puller thread.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-release-comes-off-by-hand",
        "check": "arm-release",
        "outcome": "comes-off-by-hand",
        "reading": "right",
        "statement": "Normal once the cotter is out.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bore-flats-rounded",
        "check": "bore-flats",
        "outcome": "rounded",
        "reading": "wrong",
        "statement": "A hole for the cotter worn long lets the arm rock whatever the cotter.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "spindle-flats-scored-or-rounded",
        "check": "spindle-flats",
        "outcome": "scored-or-rounded",
        "reading": "wrong",
        "statement": "A flat with a step in it shears the next cotter.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "spindle-flats-cracked",
        "check": "spindle-flats",
        "outcome": "cracked",
        "reading": "wrong",
        "statement": "The place to look is the inner edge of the crank, opposite the cotter.",
        "standing": "secondary",
        "sources": [
          "spindle-failures"
        ]
      },
      {
        "id": "play-at-arm-arm-moves-on-spindle",
        "check": "play-at-arm",
        "outcome": "arm-moves-on-spindle",
        "reading": "wrong",
        "statement": "The cotter or its holes have worked; these cranks loosen early on fixed-gear bicycles and tandems.",
        "standing": "secondary",
        "sources": [
          "cotterless-glossary"
        ]
      }
    ]
  },
  {
    "dataEdition": "2026.11",
    "id": "observations-face-spline",
    "aliases": [],
    "family": "face-spline",
    "checksWithoutObject": [
      "clamp-slot",
      "cotter",
      "end-gap",
      "witness-mark"
    ],
    "meanings": [
      {
        "id": "arm-alignment-one-step-off",
        "check": "arm-alignment",
        "outcome": "one-step-off",
        "reading": "wrong",
        "statement": "The two halves were put together one or more teeth off.",
        "standing": "derived",
        "sources": [
          "hirth-joint-wiki"
        ]
      },
      {
        "id": "shoulder-gap-touching",
        "check": "shoulder-gap",
        "outcome": "touching",
        "reading": "right",
        "statement": "The teeth are home.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "shoulder-gap-clear",
        "check": "shoulder-gap",
        "outcome": "clear",
        "reading": "wrong",
        "statement": "The teeth are not home: dirt between them, or too little torque.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "shoulder-gap-wide",
        "check": "shoulder-gap",
        "outcome": "wide",
        "reading": "wrong",
        "statement": "The teeth hardly meet: the bolt is loose, or the shell or the bearings are too wide.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-release-comes-off-by-hand",
        "check": "arm-release",
        "outcome": "comes-off-by-hand",
        "reading": "right",
        "statement": "With the bolt out the halves part by hand or with light blows: normal here.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bore-flats-rounded",
        "check": "bore-flats",
        "outcome": "rounded",
        "reading": "wrong",
        "statement": "Flanks of teeth that are rounded or burnished have worked: the halves belong together and are replaced together.",
        "standing": "derived",
        "sources": [
          "hirth-joint-wiki"
        ]
      },
      {
        "id": "play-at-arm-both-arms-together",
        "check": "play-at-arm",
        "outcome": "both-arms-together",
        "reading": "depends",
        "statement": "The bearings or their spring washer; the arms are one spindle when the teeth are home.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "tightening-feel-never-firms-up",
        "check": "tightening-feel",
        "outcome": "never-firms-up",
        "reading": "wrong",
        "statement": "The teeth ride up their flanks, or the thread of the half spindle gives way.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  {
    "dataEdition": "2026.11",
    "id": "observations-one-piece",
    "aliases": [],
    "family": "one-piece",
    "checksWithoutObject": [
      "bolt-on-arrival",
      "tightening-feel",
      "play-after-tightening",
      "end-gap",
      "shoulder-gap",
      "arm-release",
      "bore-flats",
      "witness-mark",
      "bolt-fit",
      "clamp-slot",
      "cotter",
      "fretting-debris"
    ],
    "meanings": [
      {
        "id": "arm-alignment-out-of-line",
        "check": "arm-alignment",
        "outcome": "out-of-line",
        "reading": "wrong",
        "statement": "The forging is bent.",
        "standing": "derived",
        "sources": [
          "one-piece-notes"
        ]
      },
      {
        "id": "arm-alignment-one-step-off",
        "check": "arm-alignment",
        "outcome": "one-step-off",
        "reading": "cannot-be",
        "statement": "One forging has no positions.",
        "standing": "derived",
        "sources": [
          "one-piece-notes"
        ]
      },
      {
        "id": "play-at-arm-arm-moves-on-spindle",
        "check": "play-at-arm",
        "outcome": "arm-moves-on-spindle",
        "reading": "cannot-be",
        "statement": "Arm and axle are one forging: what moves is a crack or the bearings.",
        "standing": "derived",
        "sources": [
          "one-piece-notes"
        ]
      },
      {
        "id": "play-at-arm-both-arms-together",
        "check": "play-at-arm",
        "outcome": "both-arms-together",
        "reading": "depends",
        "statement": "The cones are loose; the left one and its lock nut have a left-hand thread.",
        "standing": "secondary",
        "sources": [
          "one-piece-notes"
        ]
      },
      {
        "id": "spindle-flats-cracked",
        "check": "spindle-flats",
        "outcome": "cracked",
        "reading": "wrong",
        "statement": "A crack in the axle or at the bend of an arm: scrap.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "spindle-runout-bent",
        "check": "spindle-runout",
        "outcome": "bent",
        "reading": "wrong",
        "statement": "The forging is bent: replace it.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  {
    "dataEdition": "2026.11",
    "id": "observations-spline",
    "aliases": [],
    "family": "spline",
    "checksWithoutObject": [
      "clamp-slot",
      "cotter"
    ],
    "meanings": [
      {
        "id": "arm-alignment-one-step-off-spline-10",
        "check": "arm-alignment",
        "outcome": "one-step-off",
        "reading": "wrong",
        "statement": "One spline off, 36 degrees with ten splines.",
        "standing": "derived",
        "sources": [
          "spline-10-overview"
        ],
        "interfaces": [
          "spline-10"
        ]
      },
      {
        "id": "arm-alignment-one-step-off-spline-8-long",
        "check": "arm-alignment",
        "outcome": "one-step-off",
        "reading": "wrong",
        "statement": "The index spline was forced: the arm is damaged.",
        "standing": "secondary",
        "sources": [
          "eight-spline-index"
        ],
        "interfaces": [
          "spline-8-long",
          "spline-8-short"
        ]
      },
      {
        "id": "arm-alignment-one-step-off-spline-48",
        "check": "arm-alignment",
        "outcome": "one-step-off",
        "reading": "wrong",
        "statement": "One spline off is 7.5 degrees with 48 splines: easily overlooked.",
        "standing": "derived",
        "sources": [
          "spline-48-history-2008"
        ],
        "interfaces": [
          "spline-48"
        ]
      },
      {
        "id": "shoulder-gap-touching-spline-10",
        "check": "shoulder-gap",
        "outcome": "touching",
        "reading": "right",
        "statement": "The arm is home on its stop, as it has to be.",
        "standing": "secondary",
        "sources": [
          "spline-10-letter-2000",
          "spline-10-overview"
        ],
        "interfaces": [
          "spline-10"
        ]
      },
      {
        "id": "shoulder-gap-clear-spline-10",
        "check": "shoulder-gap",
        "outcome": "clear",
        "reading": "wrong",
        "statement": "The arm is not home: too little torque, dirt on the splines, or another spline.",
        "standing": "secondary",
        "sources": [
          "spline-10-letter-2000",
          "spline-10-overview"
        ],
        "interfaces": [
          "spline-10"
        ]
      },
      {
        "id": "shoulder-gap-wide-spline-10",
        "check": "shoulder-gap",
        "outcome": "wide",
        "reading": "wrong",
        "statement": "The arm is far from home: another spline, or a foreign body.",
        "standing": "common-practice",
        "sources": [],
        "interfaces": [
          "spline-10"
        ]
      },
      {
        "id": "shoulder-gap-touching-spline-8-long",
        "check": "shoulder-gap",
        "outcome": "touching",
        "reading": "right",
        "statement": "The arm is home on its seat, as it has to be.",
        "standing": "common-practice",
        "sources": [],
        "interfaces": [
          "spline-8-long",
          "spline-8-short"
        ]
      },
      {
        "id": "shoulder-gap-clear-spline-8-long",
        "check": "shoulder-gap",
        "outcome": "clear",
        "reading": "wrong",
        "statement": "The arm is not home: too little torque, or the index spline is not in its place.",
        "standing": "common-practice",
        "sources": [],
        "interfaces": [
          "spline-8-long",
          "spline-8-short"
        ]
      },
      {
        "id": "shoulder-gap-wide-spline-8-long",
        "check": "shoulder-gap",
        "outcome": "wide",
        "reading": "wrong",
        "statement": "The arm is far from home: the index spline, or splines of the other length.",
        "standing": "common-practice",
        "sources": [],
        "interfaces": [
          "spline-8-long",
          "spline-8-short"
        ]
      },
      {
        "id": "shoulder-gap-touching-spline-48",
        "check": "shoulder-gap",
        "outcome": "touching",
        "reading": "right",
        "statement": "The arm is drawn against its spacer or bearing, as it has to be.",
        "standing": "common-practice",
        "sources": [],
        "interfaces": [
          "spline-48"
        ]
      },
      {
        "id": "shoulder-gap-clear-spline-48",
        "check": "shoulder-gap",
        "outcome": "clear",
        "reading": "wrong",
        "statement": "The arm is not drawn up: play along the axis is left.",
        "standing": "common-practice",
        "sources": [],
        "interfaces": [
          "spline-48"
        ]
      },
      {
        "id": "shoulder-gap-wide-spline-48",
        "check": "shoulder-gap",
        "outcome": "wide",
        "reading": "wrong",
        "statement": "The arm is far from being drawn up: a spacer is missing, or the teeth do not fit.",
        "standing": "common-practice",
        "sources": [],
        "interfaces": [
          "spline-48"
        ]
      },
      {
        "id": "end-gap-flush",
        "check": "end-gap",
        "outcome": "flush",
        "reading": "wrong",
        "statement": "The end of the spindle has to stay clear of the bolt seat, at the stop as well: the bolt clamps the spindle.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-release-comes-off-by-hand-spline-10",
        "check": "arm-release",
        "outcome": "comes-off-by-hand",
        "reading": "wrong",
        "statement": "The tapered splines have lost their press.",
        "standing": "derived",
        "sources": [
          "spline-10-letter-2000"
        ],
        "interfaces": [
          "spline-10"
        ]
      },
      {
        "id": "arm-release-comes-off-by-hand-spline-8-long",
        "check": "arm-release",
        "outcome": "comes-off-by-hand",
        "reading": "depends",
        "statement": "These splines have little or no press, so this alone decides nothing; look at the play with the bolt tight.",
        "standing": "secondary",
        "sources": [
          "spline-10-letter-2000"
        ],
        "interfaces": [
          "spline-8-long",
          "spline-8-short"
        ]
      },
      {
        "id": "arm-release-comes-off-by-hand-spline-48",
        "check": "arm-release",
        "outcome": "comes-off-by-hand",
        "reading": "right",
        "statement": "Straight splines have no press: normal here.",
        "standing": "common-practice",
        "sources": [],
        "interfaces": [
          "spline-48"
        ]
      },
      {
        "id": "bore-flats-rounded",
        "check": "bore-flats",
        "outcome": "rounded",
        "reading": "wrong",
        "statement": "Splines worn to a point or flattened: replace the arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "witness-mark-whole-flat",
        "check": "witness-mark",
        "outcome": "whole-flat",
        "reading": "right",
        "statement": "The splines bear over their whole length up to the stop: normal here.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "witness-mark-stops-short",
        "check": "witness-mark",
        "outcome": "stops-short",
        "reading": "wrong",
        "statement": "The arm never was home on its stop.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  },
  {
    "dataEdition": "2026.11",
    "id": "observations-square-taper",
    "aliases": [],
    "family": "square-taper",
    "checksWithoutObject": [
      "clamp-slot",
      "cotter"
    ],
    "meanings": [
      {
        "id": "arm-alignment-one-step-off",
        "check": "arm-alignment",
        "outcome": "one-step-off",
        "reading": "wrong",
        "statement": "A quarter of a turn off, or an eighth where corner and flat orientation were mixed.",
        "standing": "derived",
        "sources": [
          "forum-orientation-108816",
          "square-orientation-2015"
        ]
      },
      {
        "id": "tightening-feel-goes-solid-at-once",
        "check": "tightening-feel",
        "outcome": "goes-solid-at-once",
        "reading": "wrong",
        "statement": "Solid before half a turn: the bolt clamps the spindle, or the bolt has ended in its hole. A press takes about a turn or more.",
        "standing": "judgement",
        "sources": []
      },
      {
        "id": "tightening-feel-never-firms-up",
        "check": "tightening-feel",
        "outcome": "never-firms-up",
        "reading": "wrong",
        "statement": "The arm keeps climbing: the bore is open or splitting, or the thread gives way.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "end-gap-flush",
        "check": "end-gap",
        "outcome": "flush",
        "reading": "wrong",
        "statement": "The bolt seat has landed on the spindle end: wrong pairing, or a bore opened by wear.",
        "standing": "secondary",
        "sources": [
          "forum-mixed-signs",
          "taper-jp-sizes-2014"
        ]
      },
      {
        "id": "end-gap-past-end",
        "check": "end-gap",
        "outcome": "past-end",
        "reading": "wrong",
        "statement": "The spindle end stands past the bolt seat: wrong pairing, or a bore opened by wear.",
        "standing": "secondary",
        "sources": [
          "forum-mixed-signs",
          "taper-jp-sizes-2014"
        ]
      },
      {
        "id": "shoulder-gap-clear",
        "check": "shoulder-gap",
        "outcome": "clear",
        "reading": "right",
        "statement": "The press on the taper alone stops the arm, as it should.",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki"
        ]
      },
      {
        "id": "shoulder-gap-touching",
        "check": "shoulder-gap",
        "outcome": "touching",
        "reading": "wrong",
        "statement": "The arm bears on the shoulder and is stopped before it is pressed.",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki"
        ]
      },
      {
        "id": "shoulder-gap-wide",
        "check": "shoulder-gap",
        "outcome": "wide",
        "reading": "wrong",
        "statement": "The arm stands far out: too little of the flats carries, or the taper is another.",
        "standing": "judgement",
        "sources": []
      },
      {
        "id": "arm-release-comes-off-by-hand",
        "check": "arm-release",
        "outcome": "comes-off-by-hand",
        "reading": "wrong",
        "statement": "The taper holds an arm at rest even without its bolt; one that comes off by hand was never pressed or has lost its seat.",
        "standing": "judgement",
        "sources": []
      },
      {
        "id": "bore-flats-galled",
        "check": "bore-flats",
        "outcome": "galled",
        "reading": "depends",
        "statement": "The harder spindle has shaved the arm: clean the flats and look whether they are straight.",
        "standing": "secondary",
        "sources": [
          "forum-mixed-signs"
        ]
      },
      {
        "id": "bore-flats-rounded",
        "check": "bore-flats",
        "outcome": "rounded",
        "reading": "wrong",
        "statement": "Rounded or mushroomed flats: replace the arm.",
        "standing": "secondary",
        "sources": [
          "forum-mixed-signs",
          "service-manual-page-16"
        ]
      },
      {
        "id": "witness-mark-whole-flat",
        "check": "witness-mark",
        "outcome": "whole-flat",
        "reading": "wrong",
        "statement": "Marks along the whole flat of the spindle: the square of the arm is worn out.",
        "standing": "secondary",
        "sources": [
          "service-manual-page-16"
        ]
      },
      {
        "id": "spindle-flats-cracked",
        "check": "spindle-flats",
        "outcome": "cracked",
        "reading": "wrong",
        "statement": "The place to look is the large end of the square, where it leaves the arm.",
        "standing": "secondary",
        "sources": [
          "spindle-failures"
        ]
      },
      {
        "id": "fretting-debris-dark-powder-or-rust",
        "check": "fretting-debris",
        "outcome": "dark-powder-or-rust",
        "reading": "depends",
        "statement": "Some fretting comes with use; much of it says that the arm has moved.",
        "standing": "secondary",
        "sources": [
          "fitting-answers-qa",
          "fitting-faq-1995"
        ]
      },
      {
        "id": "bolt-on-arrival-turns-before-torque",
        "check": "bolt-on-arrival",
        "outcome": "turns-before-torque",
        "reading": "depends",
        "statement": "The arm creeps up the taper and unloads the bolt without the bolt turning: usual once after fitting.",
        "standing": "secondary",
        "sources": [
          "fitting-workshop-page",
          "forum-roadbike-304978"
        ]
      }
    ]
  },
  {
    "dataEdition": "2026.11",
    "id": "observations-through-spindle",
    "aliases": [],
    "family": "through-spindle",
    "checksWithoutObject": [
      "cotter"
    ],
    "meanings": [
      {
        "id": "clamp-slot-open",
        "check": "clamp-slot",
        "outcome": "open",
        "reading": "right",
        "statement": "The slot is open, so the bolts press the spindle.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "clamp-slot-closed",
        "check": "clamp-slot",
        "outcome": "closed",
        "reading": "wrong",
        "statement": "The slot has closed: the bolts press the arm against itself and no longer the spindle.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-release-comes-off-by-hand",
        "check": "arm-release",
        "outcome": "comes-off-by-hand",
        "reading": "right",
        "statement": "With bolts loose and catch lifted the arm comes off by hand: normal where it is pinched.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "arm-release-needs-puller",
        "check": "arm-release",
        "outcome": "needs-puller",
        "reading": "depends",
        "statement": "A pinched arm that does not come off is stuck or its catch is down; an arm with a centre bolt has its own extractor.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "end-gap-clear",
        "check": "end-gap",
        "outcome": "clear",
        "reading": "depends",
        "statement": "The end of the spindle says nothing here: cap and pinch bolts set the arm.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "end-gap-flush",
        "check": "end-gap",
        "outcome": "flush",
        "reading": "depends",
        "statement": "Normal where the arm is pinched: the cap sets the bearings and carries no load.",
        "standing": "secondary",
        "sources": [
          "through-spindle-pages"
        ]
      },
      {
        "id": "end-gap-past-end",
        "check": "end-gap",
        "outcome": "past-end",
        "reading": "depends",
        "statement": "Normal where the arm is pinched: the cap sets the bearings and carries no load.",
        "standing": "secondary",
        "sources": [
          "through-spindle-pages"
        ]
      },
      {
        "id": "shoulder-gap-touching",
        "check": "shoulder-gap",
        "outcome": "touching",
        "reading": "right",
        "statement": "The arm meets the bearing or its spacer, as it has to.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "shoulder-gap-clear",
        "check": "shoulder-gap",
        "outcome": "clear",
        "reading": "wrong",
        "statement": "Play along the axis is left: the cap or ring was not set before the bolts were tightened.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "shoulder-gap-wide",
        "check": "shoulder-gap",
        "outcome": "wide",
        "reading": "wrong",
        "statement": "A spacer is missing, or the shell is narrower than the crank was made for.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "play-at-arm-both-arms-together",
        "check": "play-at-arm",
        "outcome": "both-arms-together",
        "reading": "depends",
        "statement": "The bearings, or a cap that has come loose.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "play-at-arm-arm-moves-on-spindle",
        "check": "play-at-arm",
        "outcome": "arm-moves-on-spindle",
        "reading": "wrong",
        "statement": "The clamp does not hold; ask for the safety catch, then for the torque of the pinch bolts.",
        "standing": "secondary",
        "sources": [
          "jp-shop-pinch"
        ]
      },
      {
        "id": "bolt-on-arrival-finger-loose",
        "check": "bolt-on-arrival",
        "outcome": "finger-loose",
        "reading": "wrong",
        "statement": "The usual beginning: too little torque on the pinch bolts, then play in the left arm, then drift of the drive side.",
        "standing": "secondary",
        "sources": [
          "jp-shop-pinch"
        ]
      },
      {
        "id": "tightening-feel-goes-solid-at-once",
        "check": "tightening-feel",
        "outcome": "goes-solid-at-once",
        "reading": "depends",
        "statement": "A clamp takes little turn before it is firm; look at the slot.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "bore-flats-rounded",
        "check": "bore-flats",
        "outcome": "rounded",
        "reading": "wrong",
        "statement": "Splines that have worked in the clamp are worn: replace the arm, and look at the spindle.",
        "standing": "common-practice",
        "sources": []
      },
      {
        "id": "witness-mark-whole-flat",
        "check": "witness-mark",
        "outcome": "whole-flat",
        "reading": "right",
        "statement": "A clamp bears over its whole length: normal here.",
        "standing": "common-practice",
        "sources": []
      }
    ]
  }
];
