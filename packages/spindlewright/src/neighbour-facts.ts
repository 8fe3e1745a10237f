import type { Datum } from '@spindlewright/quantity';

/** Facts about the parts round the joint that a buyer needs; each with its source. */
export const neighbourFacts = {
  /** Pedal thread of three-piece cranks. */
  pedalThread: {
    text: '9/16 in x 20 on three-piece cranks; 14 x 1.25 mm on old French ones',
    sources: ['thread-size-list', 'pedal-threads-fr-wiki'],
  },
  /** Distance of neighbouring holes of a five-arm chainring over its bolt circle: the sine of 36 degrees. */
  fiveArmHoleShare: {
    value: 0.5878,
    unit: '1',
    standing: 'secondary',
    sources: ['bolt-circle-list'],
  } satisfies Datum,
} as const;
