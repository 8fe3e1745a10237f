import { checkInput, DomainError, type Finding } from '@spindlewright/quantity';
import { find } from './find.ts';
import { keepingMessages as messages } from './messages/keeping.ts';
import { faceAngleSpec, frictionSpec } from './shapes.ts';

/** The joint after one more tightening and the riding that follows. */
export interface RetighteningCycle {
  /** Count of tightenings so far; 1 is the first. */
  cycleCount: number;
  /** Bolt force that riding leaves, in N, at least 0. */
  settledPreloadN: number;
  /** How far the arm has moved on since it was first pressed, in mm, at least 0. */
  advanceMm: number;
  /** Press over that of the first tightening, at least 0. */
  pressRatio: number;
  /** End gap that is left, in mm; 0 or less when the bolt has met the spindle. */
  endGapMm: number;
}

/** What re-tightening leads to. */
export interface RetighteningPath {
  /** One entry a tightening, to the end or to the number asked for. */
  cycles: RetighteningCycle[];
  /** What ends it. */
  endsBy: 'end-gap' | 'boss' | 'nothing-yet';
  /** Cautions. */
  findings: Finding[];
}

/**
 * Follows an arm through tightening, riding and tightening again, until the end gap or the boss is used up.
 *
 * @remarks
 * Formula: riding shakes the friction out, and the arm creeps on until the bolt, F0 - k x, meets the press without
 * friction, Fs (d + x)/d0, with Fs = F0 tan a/(tan a + mu) and d the travel so far (see {@link settledPreload}). Tightening
 * to F0 again moves nothing by itself: the press has grown, so friction holds the difference until it is shaken out. Wear w
 * per flat and cycle lets the arm move on by w/tan a at the same press, as far as the stretch of the bolt reaches.
 *
 * Validity: the same torque and friction each time, friction wholly shaken out between, bolt elastic. Wear is whatever is put
 * in: no rate of wear is known. The press is elastic; a boss that yields goes farther on.
 *
 * Accuracy: closed form, not checked against measured joints, since no measurement was found.
 *
 * @param input - `preloadN` 1 to 200000 N; `friction` 0 to 1; `faceAngleDeg` 0.2 to 10 deg; `travelMm` of the first
 * press 0.001 to 50 mm; `boltStiffnessNPerMm` 1000 to 10000000 N/mm; `endGapMm` left after the first press, -100 to 100 mm;
 * `contactPressureMPa` of the first press with `largestPressureMPa` (0.001 to 5000 MPa); `wearPerCycleUm` per flat, 0 to
 * 100 um, default 0; `cycleCount` 1 to 1000, default 10.
 * @returns The cycles, what ends them and cautions.
 * @throws {@link DomainError} for unknown keys, values outside those ranges, or one pressure without the other.
 * @example
 * ```ts
 * import { retighteningPath } from '@spindlewright/taper';
 * const path = retighteningPath({
 *   preloadN: 12000, friction: 0.1, faceAngleDeg: 2, travelMm: 0.82, boltStiffnessNPerMm: 200000, endGapMm: 0.3,
 * });
 * [path.endsBy, path.cycles.length, path.cycles[0]?.advanceMm.toFixed(3)]; // => ['end-gap', 8, '0.044']
 * ```
 * @see Statics of the wedge and the bolt as a spring, as in {@link settledPreload}.
 */
export function retighteningPath(input: {
  preloadN: number;
  friction: number;
  faceAngleDeg: number;
  travelMm: number;
  boltStiffnessNPerMm: number;
  endGapMm: number;
  contactPressureMPa?: number;
  largestPressureMPa?: number;
  wearPerCycleUm?: number;
  cycleCount?: number;
}): RetighteningPath {
  const pressure = { type: 'number', unit: 'MPa', min: 1e-3, max: 5000, optional: true } as const;
  checkInput({
    where: 'retighteningPath',
    value: input,
    fields: {
      preloadN: { type: 'number', unit: 'N', min: 1, max: 200000 },
      friction: frictionSpec('number'),
      faceAngleDeg: faceAngleSpec('number'),
      travelMm: { type: 'number', unit: 'mm', min: 1e-3, max: 50 },
      boltStiffnessNPerMm: { type: 'number', unit: 'N/mm', min: 1e3, max: 1e7 },
      endGapMm: { type: 'number', unit: 'mm', min: -100, max: 100 },
      contactPressureMPa: pressure,
      largestPressureMPa: pressure,
      wearPerCycleUm: { type: 'number', unit: 'um', min: 0, max: 100, optional: true },
      cycleCount: { type: 'number', unit: 'cycles', min: 1, max: 1000, optional: true },
    },
  });
  const { preloadN, friction, travelMm, boltStiffnessNPerMm, endGapMm, contactPressureMPa, largestPressureMPa } = input;
  const { wearPerCycleUm = 0, cycleCount = 10 } = input;
  const refuse = (path: string, received: string, allowed: string): DomainError =>
    new DomainError('retighteningPath', [{ path, received, allowed }]);
  if (!Number.isInteger(cycleCount)) throw refuse('cycleCount', String(cycleCount), 'a whole number');
  if ((contactPressureMPa === undefined) !== (largestPressureMPa === undefined)) {
    const path = contactPressureMPa === undefined ? 'contactPressureMPa' : 'largestPressureMPa';
    throw refuse(path, 'nothing', 'both pressures or neither');
  }
  const tangent = Math.tan((input.faceAngleDeg * Math.PI) / 180);
  const wedgeN = (preloadN * tangent) / (tangent + friction);
  const wearMm = wearPerCycleUm / 1000 / tangent;

  const cycles: RetighteningCycle[] = [];
  let endsBy: RetighteningPath['endsBy'] = 'nothing-yet';
  let pressedMm = travelMm;
  let advanceMm = 0;
  while (cycles.length < cycleCount && endsBy === 'nothing-yet') {
    const pressN = (wedgeN * pressedMm) / travelMm;
    const creepMm = Math.max(0, (preloadN - pressN) / (boltStiffnessNPerMm + wedgeN / travelMm));
    const settledN = preloadN - boltStiffnessNPerMm * creepMm;
    const followedMm = Math.min(wearMm, settledN / boltStiffnessNPerMm);
    pressedMm = Math.max(0, pressedMm + creepMm + followedMm - wearMm);
    advanceMm += creepMm + followedMm;
    cycles.push({
      cycleCount: cycles.length + 1,
      settledPreloadN: Math.max(0, settledN - boltStiffnessNPerMm * followedMm) + 0,
      advanceMm,
      pressRatio: pressedMm / travelMm,
      endGapMm: endGapMm - advanceMm + 0,
    });
    if (advanceMm >= endGapMm) endsBy = 'end-gap';
    else if (((contactPressureMPa ?? 0) * pressedMm) / travelMm > (largestPressureMPa ?? 0)) endsBy = 'boss';
  }
  const cycle = cycles.length;
  const findings: Finding[] = [];
  if (endsBy === 'end-gap') findings.push(find(messages, 'retightening-ends-on-end', 'stop', { cycle }));
  if (endsBy === 'boss') {
    const pressureMPa = ((contactPressureMPa ?? 0) * pressedMm) / travelMm;
    const values = { cycle, pressureMPa, largestPressureMPa: largestPressureMPa ?? 0 };
    findings.push(find(messages, 'retightening-ends-the-boss', 'stop', values));
  }
  if (contactPressureMPa === undefined) findings.push(find(messages, 'boss-not-checked', 'note'));
  findings.push(find(messages, 'retightening-uses-the-seat', 'caution', { advanceMm }));
  return { cycles, endsBy, findings };
}
