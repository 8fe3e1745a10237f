import type { FieldSpecs } from '@spindlewright/quantity';
import { refuse } from './refuse.ts';

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

/** A size of a record that contradicts the others. @internal */
export interface ThreadFault {
  field: keyof Thread;
  received: string;
  allowed: string;
}

/**
 * Finds the first size that contradicts the rest of a record, as when two threads were mixed; undefined when none does.
 * Basic sizes are plain fractions of the pitch; the widths let printed, rounded or measured sizes of the same thread pass
 * and the next pitch of a series not (judgement). @internal
 */
export function threadFault(thread: Thread): ThreadFault | undefined {
  const { majorDiameterMm, pitchMm, pitchDiameterMm, minorDiameterMm, stressDiameterMm } = thread;
  const depthMm = majorDiameterMm - pitchDiameterMm;
  const areaMm2 = (Math.PI / 4) * stressDiameterMm ** 2;
  const leadDeg = (Math.atan(pitchMm / (Math.PI * pitchDiameterMm)) * 180) / Math.PI;
  const spans = [
    ['pitchDiameterMm', 0, majorDiameterMm],
    // Basic: 0.6495 P between major and pitch diameter, 1.2269 P (metric) or 1.2990 P (inch) between major and minor.
    ['pitchMm', depthMm / 0.75, depthMm / 0.55],
    ['minorDiameterMm', majorDiameterMm - 1.4 * pitchMm, majorDiameterMm - pitchMm],
    ['internalMinorDiameterMm', minorDiameterMm, pitchDiameterMm],
    ['stressDiameterMm', minorDiameterMm, pitchDiameterMm],
    ['stressAreaMm2', 0.98 * areaMm2, 1.02 * areaMm2],
    // The formulas take the pitch for the lead, so that a thread of several starts is refused here too.
    ['leadAngleDeg', leadDeg - 0.1, leadDeg + 0.1],
  ] as const;
  for (const [field, from, to] of spans) {
    if (thread[field] >= from && thread[field] <= to) continue;
    const allowed = `${Number(from.toPrecision(4))} to ${Number(to.toPrecision(4))}, to go with the other sizes`;
    return { field, received: String(thread[field]), allowed };
  }
  return undefined;
}

/** Refuses a record that contradicts itself. @internal */
export function checkThread(where: string, thread: Thread, path = 'thread'): void {
  const fault = threadFault(thread);
  if (fault !== undefined) throw refuse(where, `${path}.${fault.field}`, fault.received, fault.allowed);
}

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
