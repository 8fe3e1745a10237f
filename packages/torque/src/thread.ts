import type { FieldSpecs } from '@spindlewright/quantity';

/** Which way a thread tightens: `right` = clockwise, seen from the head. */
export type Hand = 'right' | 'left';

/** Basic dimensions of a thread of 60 degree profile, as the torque and strength formulas need them. */
export interface Thread {
  /** Designation with the pitch always written out, such as `M8x1` or `9/16-20 UN`; a left hand ends in `LH`. */
  designation: string;
  /** Nominal major diameter d in mm, above 0. */
  majorDiameterMm: number;
  /** Axial distance between threads P in mm, above 0. */
  pitchMm: number;
  /** Pitch diameter d2 in mm. */
  pitchDiameterMm: number;
  /** Minor diameter of the bolt at its root in mm: d3 of the metric profile, that of the sharp root for inch threads. */
  minorDiameterMm: number;
  /** Minor diameter D1 of the nut or tapped hole in mm. */
  internalMinorDiameterMm: number;
  /** Diameter d0 of the circle that breaks like the thread in mm: mean of pitch and minor diameter. */
  stressDiameterMm: number;
  /** Tensile stress area in mm2. */
  stressAreaMm2: number;
  /** Lead angle at the pitch diameter in degrees, above 0. */
  leadAngleDeg: number;
  /** Hand of the thread. */
  hand: Hand;
}

const length = { type: 'number', unit: 'mm', min: 0.001, max: 1100 } as const;

/** What a thread handed to a function must hold. @internal */
export const threadFields: FieldSpecs = {
  designation: { type: 'text' },
  majorDiameterMm: length,
  pitchMm: length,
  pitchDiameterMm: length,
  minorDiameterMm: length,
  internalMinorDiameterMm: length,
  stressDiameterMm: length,
  stressAreaMm2: { type: 'number', unit: 'mm2', min: 1e-6, max: 1e6 },
  leadAngleDeg: { type: 'number', unit: 'deg', above: 0, max: 20 },
  hand: { type: 'choice', values: ['right', 'left'] },
};

// Height of the sharp 60 degree triangle per pitch, sqrt(3)/2; every basic size is a plain fraction of it.
const HEIGHT_PER_PITCH = 0.8660254037844386;

/** Builds the record; `rootHeights` = how many triangle heights the root lies below the major diameter. @internal */
export function threadOf(input: {
  designation: string;
  majorDiameterMm: number;
  pitchMm: number;
  rootHeights: number;
  hand: Hand;
}): Thread {
  const heightMm = HEIGHT_PER_PITCH * input.pitchMm;
  const pitchDiameterMm = input.majorDiameterMm - 0.75 * heightMm;
  const minorDiameterMm = input.majorDiameterMm - input.rootHeights * heightMm;
  const stressDiameterMm = (pitchDiameterMm + minorDiameterMm) / 2;
  return {
    designation: input.designation,
    majorDiameterMm: input.majorDiameterMm,
    pitchMm: input.pitchMm,
    pitchDiameterMm,
    minorDiameterMm,
    internalMinorDiameterMm: input.majorDiameterMm - 1.25 * heightMm,
    stressDiameterMm,
    stressAreaMm2: (Math.PI / 4) * stressDiameterMm ** 2,
    leadAngleDeg: (Math.atan(input.pitchMm / (Math.PI * pitchDiameterMm)) * 180) / Math.PI,
    hand: input.hand,
  };
}
