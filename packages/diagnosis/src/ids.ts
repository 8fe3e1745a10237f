/** The checks and the outcomes that each can have, in the order in which results list them. */
export const CHECK_OUTCOMES = {
  'arm-alignment': ['in-line', 'out-of-line', 'one-step-off'],
  'arm-straightness': ['straight', 'bent'],
  'play-at-arm': ['none', 'arm-moves-on-spindle', 'both-arms-together', 'insert-or-spider-moves'],
  'bolt-on-arrival': ['tight', 'turns-before-torque', 'turns-without-end', 'finger-loose', 'missing', 'broken'],
  'tightening-feel': ['rises-steadily', 'goes-solid-at-once', 'never-firms-up'],
  'play-after-tightening': ['gone', 'remains'],
  'end-gap': ['clear', 'flush', 'past-end'],
  'shoulder-gap': ['clear', 'touching', 'wide'],
  'arm-release': ['needs-puller', 'comes-off-by-hand'],
  'bore-flats': ['straight', 'galled', 'rounded', 'cracked'],
  'witness-mark': ['stops-short', 'whole-flat', 'one-edge', 'one-end'],
  'spindle-flats': ['sound', 'scored-or-rounded', 'cracked'],
  'spindle-runout': ['true', 'bent'],
  'creak-under-load': ['none', 'each-pedal-stroke'],
  'fretting-debris': ['none', 'dark-powder-or-rust'],
  'bolt-fit': ['right', 'bottoms-in-hole', 'wrong-thread-or-length', 'head-on-wrong-face', 'washer-missing'],
  'clamp-slot': ['open', 'closed'],
  cotter: ['sound', 'deformed', 'wrong-way-round'],
  'bearing-turning': ['smooth', 'rough-or-loose'],
  'other-sources': ['ruled-out', 'pedal-or-chainring-suspect'],
  history: ['newly-fitted', 'ridden-loose', 'impact', 'long-service', 'part-just-changed', 'refitted-often'],
} as const;

/** Answers that say nothing: accepted for every check and left out of the reckoning. */
export const NO_ANSWERS = ['unclear', 'not-checked', 'unknown'] as const;

/** What the joint can be now; exactly one holds. */
export const CONDITIONS = [
  'sound',
  'loose-but-sound',
  'seat-dirty-or-galled',
  'bore-deformed',
  'arm-cracked',
  'arm-bent',
  'insert-loose',
  'spindle-damaged',
  'bottomed-on-end',
  'stopped-at-shoulder',
  'too-little-engagement',
  'bolt-not-clamping',
  'fixing-thread-damaged',
  'wrong-clocking',
] as const;

/**
 * The conditions as the model tells them apart: a deformed hole is reckoned with the spindle sound and with the spindle
 * worn too, since the two lead to different actions; results give their sum.
 */
export const KINDS = [...CONDITIONS, 'bore-deformed/spindle-too'] as const;

/** What can hold beside any condition of the joint. */
export const BESIDES = ['bearing-worn', 'noise-elsewhere'] as const;

/** The earliest event that could have been prevented; exactly one holds. */
export const CAUSES = [
  'none',
  'under-tightened',
  'over-tightened',
  'settled-after-fitting',
  'ridden-loose',
  'mixed-interface',
  'worn-by-refitting',
  'wrong-fixing',
  'assembly-fault',
  'impact',
  'fatigue',
  'service-wear',
] as const;

/** What can be done next. */
export const ACTIONS = [
  'ride',
  'tighten-and-recheck',
  'remove-and-inspect',
  'clean-and-refit',
  'fit-matching-part',
  'replace-arm',
  'replace-spindle',
  'replace-both',
  'replace-fixing',
  'service-bearing',
  'look-elsewhere',
] as const;

/** Families of joints: what the same answer means differs between them. */
export const FAMILIES = [
  'square-taper',
  'spline-10',
  'spline-8',
  'spline-48',
  'face-spline',
  'through-spindle',
  'cottered',
  'one-piece',
] as const;

/** Joints whose likelihoods are written down; `square-taper` is one of the tapers, not yet told which. */
export const MODELLED_JOINTS = [
  'square-taper',
  'square-taper-jis',
  'square-taper-iso',
  'square-taper-narrow',
  'square-taper-short',
  'square-taper-nutted',
  'spline-10',
  'spline-8-short',
  'spline-8-long',
  'spline-48',
  'face-spline',
  'through-spindle-19',
  'through-spindle-22',
  'through-spindle-24-22',
  'through-spindle-24',
  'through-spindle-25',
  'through-spindle-28-99',
  'through-spindle-30',
  'cottered-inch',
  'cottered-metric',
  'one-piece',
] as const;

/**
 * Joints that can be named but not diagnosed: splines, spindles and others than those above. What an answer means at them
 * is not known.
 */
export const UNMODELLED_JOINTS = ['spline-other', 'through-spindle-other', 'other'] as const;

/** The readings that can stand beside or instead of an observation. */
export const MEASUREMENTS = [
  'endGapMm',
  'shoulderGapMm',
  'playAngleDeg',
  'markEndFromSpindleEndMm',
  'releaseForceN',
  'runoutMm',
  'torqueAtFirstMovementNm',
  'turnsToTorque',
] as const;

/** How a check gets at what it looks at. */
export const ACCESSES = ['any', 'assembled', 'tightening', 'bolt-out', 'arm-off'] as const;

/** What a need of a repair is about. */
export const NEED_KINDS = ['replacement', 'fitting', 'use'] as const;
