import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { forceSpec } from './domain.ts';
import { angleTooFine } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';
import { refuse } from './refuse.ts';
import { checkThread, type Thread, threadFields } from './thread.ts';

/** How far to turn after snug. */
export interface AngleTightening {
  /** Angle from snug to the preload in degrees, at least 0. */
  angleDeg: number;
  /** The same in turns. */
  angleTurns: number;
  /** Preload for each degree in N, once nothing moves any more. */
  preloadNPerDeg: number;
  /** Change of preload that five degrees make, over the rise from snug; null when there is no rise. */
  fiveDegreeRatio: number | null;
  /** What is worth saying. */
  findings: Finding[];
}

const stiffness = { type: 'number', unit: 'N/mm', min: 1e-3, max: 1e9 } as const;

const fields: FieldSpecs = {
  thread: { type: 'object', fields: threadFields },
  snugPreloadN: forceSpec,
  targetPreloadN: forceSpec,
  boltStiffnessNPerMm: stiffness,
  memberStiffnessNPerMm: stiffness,
  travelMm: { type: 'number', unit: 'mm', min: 0, max: 100, optional: true },
};

// Judgement: what a hand and a paint mark hit.
const HAND_DEG = 5;

/**
 * Gives the angle to turn a bolt or nut after snug for a preload, from the stiffness of the joint.
 *
 * @remarks
 * Formula: angle = 360/P [(F - F0)(1/kb + 1/km) + s]; F0 preload at snug, s travel of a part that moves in meanwhile, as
 * an arm does on its taper. Preload per degree P/360/(1/kb + 1/km).
 *
 * Validity: elastic throughout. The snug preload has the scatter of the torque that made it, and the travel of a taper
 * is uncertain too, so work with both ends. Where five degrees are more than a tenth of the rise comes a finding: short
 * bolts cannot be tightened by angle. The press of an
 * arm on a square taper is a member too, and by far the softest: give the stiffness that `pressFit` of the taper package
 * finds for it.
 *
 * Accuracy: that of the stiffnesses; members are known to some 10 %, engaged threads and heads give more.
 *
 * @param input - `thread`; `snugPreloadN`, `targetPreloadN` at least 0 in N; `boltStiffnessNPerMm`,
 * `memberStiffnessNPerMm` above 0 in N/mm; `travelMm` at least 0 in mm (default 0).
 * @returns Angle in degrees and turns, preload per degree in N, findings.
 * @throws {@link DomainError} for a target below snug, values outside their domain, a thread whose sizes contradict each
 * other, or unknown keys.
 * @example
 * ```ts
 * import { angleTightening, threadFor } from '@spindlewright/torque';
 * const joint = { thread: threadFor('M8x1'), boltStiffnessNPerMm: 250_000, memberStiffnessNPerMm: 1_000_000 };
 * angleTightening({ ...joint, snugPreloadN: 5000, targetPreloadN: 25_000 }).angleDeg.toFixed(1); // => '36.0'
 * ```
 * @see Shigley (`shigley-9`), section 8-8, turn of the nut; the stiffness of the joint is `boltStiffness` and
 * `memberStiffness`.
 */
export function angleTightening(input: {
  thread: Thread;
  snugPreloadN: number;
  targetPreloadN: number;
  boltStiffnessNPerMm: number;
  memberStiffnessNPerMm: number;
  travelMm?: number;
}): AngleTightening {
  checkInput({ where: 'angleTightening', value: input, fields });
  checkThread('angleTightening', input.thread);
  const { thread, snugPreloadN, targetPreloadN, boltStiffnessNPerMm, memberStiffnessNPerMm, travelMm = 0 } = input;
  if (targetPreloadN < snugPreloadN) {
    throw refuse('angleTightening', 'targetPreloadN', String(targetPreloadN), `at least snug, ${snugPreloadN} N`);
  }
  const mmPerN = 1 / boltStiffnessNPerMm + 1 / memberStiffnessNPerMm;
  const riseN = targetPreloadN - snugPreloadN;
  const angleTurns = (riseN * mmPerN + travelMm) / thread.pitchMm;
  const preloadNPerDeg = thread.pitchMm / 360 / mmPerN;
  const fiveDegreeRatio = riseN === 0 ? null : (HAND_DEG * preloadNPerDeg) / riseN;
  return {
    angleDeg: 360 * angleTurns,
    angleTurns,
    preloadNPerDeg,
    fiveDegreeRatio,
    findings:
      fiveDegreeRatio !== null && fiveDegreeRatio > 0.1
        ? [raiseText('angle-too-fine', angleTooFine, 'caution', { sharePercent: 100 * fiveDegreeRatio })]
        : [],
  };
}
