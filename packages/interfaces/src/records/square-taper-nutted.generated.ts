// Generated from the files in data/ by `npm run generate`; edit those.
import type { SquareTaperRecord } from '../record.ts';

/** Square taper with a stud and nut. */
export const squareTaperNutted: SquareTaperRecord = {
  "dataEdition": "2026.11",
  "id": "square-taper-nutted",
  "aliases": [],
  "family": "square-taper",
  "title": "Square taper with a stud and nut",
  "summary": "A square spindle end that carries a threaded stud instead of a tapped hole; a nut draws the arm on.",
  "documents": [],
  "interchange": {
    "id": "square-not-named",
    "kind": "maker-specific",
    "statement": "The stud says nothing about the square: the square has to be measured as well.",
    "standing": "common-practice",
    "sources": []
  },
  "geometry": {
    "sets": [],
    "fallback": {
      "faceAngleDeg": {
        "value": 2,
        "unit": "deg",
        "standing": "secondary",
        "sources": [
          "taper-cad-spec",
          "taper-de-wiki",
          "taper-de-wiki-older",
          "taper-tech-notes"
        ],
        "note": "Per face, against the axis; opposite faces include twice as much.",
        "alternatives": [
          {
            "value": 2.083333,
            "unit": "deg",
            "standing": "secondary",
            "sources": [
              "taper-fr-workshop-wiki"
            ],
            "note": "Two degrees and five minutes, as decimal degrees. The page writes 2 deg 05, which could also be a decimal."
          },
          {
            "value": 2.05,
            "unit": "deg",
            "standing": "secondary",
            "sources": [
              "taper-fr-myths"
            ],
            "note": "Half of 4.10 included, said to hold for both tapers; 4.10 could also be 4 deg 10 min, which is twice 2 deg 05 min."
          }
        ]
      },
      "flatLengthMm": {
        "value": 15,
        "unit": "mm",
        "lower": 13,
        "upper": 18,
        "standing": "judgement",
        "sources": [],
        "note": "No length is published for studded spindles; taken from the two common squares."
      }
    },
    "handFitShoulderGapMm": {
      "value": 2,
      "unit": "mm",
      "lower": 1,
      "upper": 3,
      "standing": "judgement",
      "sources": [],
      "note": "How far the inner face of an arm, pushed on by hand, stands from the inner end of the flats of its own standard. No gauge dimension of an arm bore is published; a trial fit replaces this."
    },
    "handFitEndGapMm": {
      "value": 2.5,
      "unit": "mm",
      "lower": 1.5,
      "upper": 3.5,
      "standing": "judgement",
      "sources": [],
      "note": "How far the bolt seat of an arm, pushed on by hand, stands proud of the spindle end of its own standard. No gauge dimension of an arm bore is published; a trial fit replaces this."
    },
    "claims": [
      {
        "id": "studs",
        "statement": "The stud stands out beyond the taper; its thread is not the one of the bolts.",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki",
          "thread-size-list"
        ]
      }
    ]
  },
  "axialStop": {
    "kind": "press-on-taper",
    "claims": [
      {
        "id": "no-stop",
        "statement": "Nothing stops the arm but its own press on the taper: it may bear neither on the shoulder nor, through its bolt seat, on the spindle end.",
        "standing": "secondary",
        "sources": [
          "forum-mixed-signs",
          "taper-fr-workshop-wiki",
          "taper-jp-sizes-2014"
        ]
      }
    ]
  },
  "drawnTight": {
    "by": "centre-bolt-or-nut",
    "claims": [
      {
        "id": "nut",
        "statement": "A nut on the stud draws the arm up the taper.",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki",
          "thread-size-list"
        ]
      },
      {
        "id": "right-hand",
        "statement": "JIS classes the threads of axle, bolt and nut as right-hand metric threads, not as cycle threads.",
        "standing": "secondary",
        "sources": [
          "bolt-classes-jp-2022"
        ]
      },
      {
        "id": "thin-nuts",
        "statement": "Thin nuts on studded spindles are hard to tighten and come loose.",
        "standing": "secondary",
        "sources": [
          "left-arm-post"
        ]
      }
    ]
  },
  "fixingThreads": [
    {
      "id": "nut-m10x1-25",
      "use": "Nut on a studded spindle end",
      "designation": "M10x1.25",
      "nominalDiameterMm": {
        "value": 10,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki"
        ]
      },
      "pitchMm": {
        "value": 1.25,
        "unit": "mm",
        "standing": "secondary",
        "sources": [
          "taper-fr-workshop-wiki"
        ]
      },
      "hand": "right",
      "member": "external",
      "note": "Another list gives M8x1.25 for the stud: measure."
    },
    {
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
      "member": "external",
      "note": "Another page gives M10x1.25 for the stud: measure."
    }
  ],
  "fixingHeads": [
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
  "puller": {
    "threads": [
      {
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
        "member": "internal",
        "usual": true
      }
    ],
    "tip": [
      {
        "id": "on-the-stud",
        "statement": "The tip bears on the end of the stud; a spare nut, screwed on flush, keeps the thread of the stud from spreading.",
        "standing": "common-practice",
        "sources": []
      }
    ],
    "practice": [
      {
        "id": "screw-in-fully",
        "statement": "Screw the puller in fully: partial engagement strips the thread of the arm.",
        "standing": "secondary",
        "sources": [
          "no-grease-instruction"
        ]
      },
      {
        "id": "heat",
        "statement": "Boiling water widens an aluminium bore against the steel and helps removal; disputed in the same thread.",
        "standing": "secondary",
        "sources": [
          "forum-heat-145257"
        ]
      },
      {
        "id": "no-riding-off",
        "statement": "Riding without the bolt to free a stuck arm rounds the bore each time.",
        "standing": "secondary",
        "sources": [
          "mailing-list-2001-05"
        ]
      }
    ]
  },
  "indexPositions": {
    "count": {
      "value": 4,
      "unit": "positions",
      "standing": "derived",
      "sources": [
        "square-orientation-2015"
      ],
      "note": "A square goes on in four positions."
    },
    "stepDeg": {
      "value": 90,
      "unit": "deg",
      "standing": "derived",
      "sources": [
        "square-orientation-2015"
      ]
    },
    "claims": [
      {
        "id": "corner-in-line",
        "statement": "Most arms put a corner of the square in line with the arm, so that the flats stand at 45 degrees to it.",
        "standing": "secondary",
        "sources": [
          "forum-orientation-108816",
          "square-orientation-2015"
        ]
      },
      {
        "id": "flat-in-line",
        "statement": "Some arms put a flat parallel to the arm.",
        "standing": "secondary",
        "sources": [
          "forum-orientation-108816",
          "square-orientation-2015"
        ]
      },
      {
        "id": "not-to-be-paired",
        "statement": "A left and a right arm of different orientation cannot be paired: they would not stand opposite each other.",
        "standing": "secondary",
        "sources": [
          "forum-orientation-108816",
          "square-orientation-2015"
        ]
      }
    ]
  },
  "torquePractice": [],
  "lubrication": [
    {
      "id": "known-press",
      "surface": "flats",
      "advice": "grease",
      "statement": "No mechanical reason for dry fitting: finger grease lubricates already, and a lubricant gives a known, repeatable press at a given torque.",
      "standing": "secondary",
      "sources": [
        "fitting-answers-qa",
        "fitting-faq-1995"
      ]
    },
    {
      "id": "galling",
      "surface": "flats",
      "advice": "grease",
      "statement": "Dry, the harder spindle shaves flakes off the aluminium that stay trapped, spoil the fit and creak.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs"
      ]
    },
    {
      "id": "trade-habit",
      "surface": "flats",
      "advice": "dry",
      "statement": "Dry is the habit of the trade, reported by a page that disagrees with it.",
      "standing": "secondary",
      "sources": [
        "fitting-workshop-page"
      ]
    },
    {
      "id": "instruction",
      "surface": "flats",
      "advice": "dry",
      "statement": "One instruction set says never to grease a square taper, but to grease splined spindles.",
      "standing": "secondary",
      "sources": [
        "no-grease-instruction"
      ]
    },
    {
      "id": "degrease",
      "surface": "flats",
      "advice": "dry",
      "statement": "A service manual cleans the flats with acetone or alcohol before fitting.",
      "standing": "secondary",
      "sources": [
        "service-manual-page-16"
      ]
    },
    {
      "id": "nut",
      "surface": "bolt-thread-and-head",
      "advice": "grease",
      "statement": "Grease the thread of the stud and the face of the nut.",
      "standing": "common-practice",
      "sources": []
    }
  ],
  "retightening": [
    {
      "id": "creep",
      "advice": "explains",
      "statement": "The arm creeps up the taper under riding load and unloads the bolt without the bolt turning.",
      "standing": "secondary",
      "sources": [
        "fitting-workshop-page",
        "forum-2005-933904",
        "forum-roadbike-304978",
        "retightening-log"
      ]
    },
    {
      "id": "after-first-ride",
      "advice": "once",
      "statement": "Tighten again once after the first ride, an hour or a few miles, then leave it alone.",
      "standing": "secondary",
      "sources": [
        "forum-roadbike-304978",
        "retightening-log"
      ]
    },
    {
      "id": "never-to-full-torque",
      "advice": "never",
      "statement": "Never tighten again to full torque after riding: repeated chasing splits the arm.",
      "standing": "secondary",
      "sources": [
        "fitting-workshop-page",
        "forum-2005-933904",
        "forum-mixed-signs"
      ]
    },
    {
      "id": "several-times",
      "advice": "repeatedly",
      "statement": "Several times after fitting is normal.",
      "standing": "secondary",
      "sources": [
        "forum-roadbike-65490"
      ]
    }
  ],
  "failures": [
    {
      "id": "ridden-loose",
      "where": "arm-bore",
      "statement": "Once ridden loose, the bore of the arm is deformed and does not hold again.",
      "standing": "secondary",
      "sources": [
        "fitting-answers-qa",
        "forum-mixed-signs",
        "forum-roadbike-65490"
      ]
    },
    {
      "id": "split-arm",
      "where": "arm-bore",
      "statement": "The arm splits at a corner of the square; asserted in the trade, no fractographic study found.",
      "standing": "secondary",
      "sources": [
        "forum-2005-933904"
      ]
    },
    {
      "id": "bottomed",
      "where": "joint",
      "statement": "Wrong pairing, or a bore too deep on: the bolt seat lands on the spindle end and the bolt no longer presses the arm.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs",
        "taper-jp-sizes-2014"
      ]
    },
    {
      "id": "left-side",
      "where": "joint",
      "statement": "The left side comes loose more often: the torque of the left leg passes only that joint towards the spindle and reverses each turn.",
      "standing": "secondary",
      "sources": [
        "left-arm-post",
        "spindle-torque-answer-2007"
      ]
    },
    {
      "id": "root-of-square",
      "where": "spindle",
      "statement": "The spindle breaks at the large end of the square, where it leaves the arm: bending and torsion peak there.",
      "standing": "secondary",
      "sources": [
        "spindle-failures"
      ]
    }
  ],
  "inspection": [
    {
      "id": "whole-flat",
      "look": "witness-mark",
      "statement": "Marks along the whole flat of the spindle mean that the square of the arm is worn out: replace the arm.",
      "standing": "secondary",
      "sources": [
        "service-manual-page-16"
      ]
    },
    {
      "id": "straight-flats",
      "look": "bore-flats",
      "statement": "The square hole should have straight, even flats; look for rounding or mushrooming.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs",
        "service-manual-page-16"
      ]
    },
    {
      "id": "clearance",
      "look": "end-gap",
      "statement": "There has to be clearance between the bolt seat of the arm and the spindle end.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs",
        "taper-jp-sizes-2014"
      ]
    },
    {
      "id": "not-on-shoulder",
      "look": "shoulder-gap",
      "statement": "The arm may not bear on the shoulder at the inner end of the flats; an arm or chainring that touches the frame gives the same symptom.",
      "standing": "secondary",
      "sources": [
        "forum-mixed-signs",
        "taper-fr-workshop-wiki"
      ]
    },
    {
      "id": "creak",
      "look": "creak-under-load",
      "statement": "A creak under load points to the joint, and as well to chainring bolts, pedals and cups; one that returns after tightening: remove, clean, grease, fit again.",
      "standing": "secondary",
      "sources": [
        "creak-advice",
        "magazine-answer"
      ]
    }
  ],
  "mating": [
    {
      "id": "jis-arm-on-studded-spindle",
      "spindle": "square-taper-nutted",
      "arm": "square-taper-jis",
      "verdict": "unknown",
      "statement": "Which square the studded spindle carries is not told by its stud: measure it, then look the pair up by that square.",
      "standing": "common-practice",
      "sources": []
    },
    {
      "id": "iso-arm-on-studded-spindle",
      "spindle": "square-taper-nutted",
      "arm": "square-taper-iso",
      "verdict": "unknown",
      "statement": "Which square the studded spindle carries is not told by its stud: measure it, then look the pair up by that square.",
      "standing": "common-practice",
      "sources": []
    }
  ],
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
    },
    {
      "id": "lubrication-of-flats",
      "subject": "Grease or dry flats",
      "positions": [
        {
          "id": "grease",
          "statement": "No mechanical reason for dry fitting: the lubricant gives a known press at a given torque and keeps the flats from galling.",
          "standing": "secondary",
          "sources": [
            "fitting-answers-qa",
            "fitting-faq-1995",
            "fitting-workshop-page",
            "forum-mixed-signs"
          ]
        },
        {
          "id": "dry",
          "statement": "Flats are cleaned of grease before fitting; one instruction set says never to grease a square taper.",
          "standing": "secondary",
          "sources": [
            "no-grease-instruction",
            "service-manual-page-16"
          ]
        }
      ],
      "comment": "Both are practised. The press at a given torque differs by a factor of about 1.5 to 2.5, so the choice has to be stated beside a torque."
    },
    {
      "id": "retightening",
      "subject": "Whether to tighten again after riding",
      "positions": [
        {
          "id": "once",
          "statement": "Once, after the first ride.",
          "standing": "secondary",
          "sources": [
            "forum-roadbike-304978",
            "retightening-log"
          ]
        },
        {
          "id": "never",
          "statement": "Never to full torque: chasing it splits the arm.",
          "standing": "secondary",
          "sources": [
            "fitting-workshop-page",
            "forum-2005-933904",
            "forum-mixed-signs"
          ]
        },
        {
          "id": "several",
          "statement": "Several times after fitting is normal.",
          "standing": "secondary",
          "sources": [
            "forum-roadbike-65490"
          ]
        }
      ],
      "comment": "The first time restores the clamp that settling took; each further time drives the arm farther on."
    }
  ],
  "missing": [
    "A published torque for crank nuts: the tables in hand speak of bolts.",
    "Which of the two squares a studded spindle carries."
  ]
};
