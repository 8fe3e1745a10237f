import { hardLimits, type Limits, type LimitsInput } from '@spindlewright/quantity';
import type { FixingBolt, FixingNut } from './fixing-input.ts';
import { larger, minus, over, plus, smaller } from './limits-math.ts';

/** Where the fixing stands at one moment of the job. */
export interface FixingStage {
  /** How far the tip of a bolt lies below the spindle's end, in mm; null for a nut. */
  tipDepthMm: Limits | null;
  /** Way left before the thread ends, in mm; below 0: it ends first. Null when that depth is not known. */
  clearanceMm: Limits | null;
  /** Length of thread that carries, in mm, at least 0. */
  engagementMm: Limits;
  /** The same in turns. */
  engagedTurns: Limits;
}

const ZERO: Limits = { lower: 0, nominal: 0, upper: 0 };

/** A length that cannot be below 0. @internal */
export const atLeastZero = (value: Limits): Limits => larger(value, ZERO);

/** Bounds of a length that may be absent. @internal */
export const given = (value: LimitsInput | undefined): Limits => (value === undefined ? ZERO : hardLimits(value));

/** Where the thread in the spindle begins. @internal */
export const startOf = (bolt: FixingBolt): Limits => given(bolt.threadStartMm);

const tipOf = (bolt: FixingBolt, gapMm: Limits): Limits =>
  minus(minus(hardLimits(bolt.lengthUnderHeadMm), given(bolt.washerThicknessMm)), gapMm);

/** How deep the shank of the bolt ends below the spindle end. @internal */
export const shankEnd = (bolt: FixingBolt, gapMm: Limits): Limits =>
  minus(tipOf(bolt, gapMm), given(bolt.threadLengthMm));

/** Where a bolt stands at an end gap. @internal */
export function boltStage(bolt: FixingBolt, gapMm: Limits): FixingStage {
  const tipDepthMm = tipOf(bolt, gapMm);
  const depths = [bolt.threadDepthMm, bolt.holeDepthMm].flatMap((depth) =>
    depth === undefined ? [] : [hardLimits(depth)],
  );
  const stopMm = depths.length === 0 ? undefined : depths.reduce((first, second) => smaller(first, second));
  const fromMm = bolt.threadLengthMm === undefined ? startOf(bolt) : larger(startOf(bolt), shankEnd(bolt, gapMm));
  const toMm = stopMm === undefined ? tipDepthMm : smaller(tipDepthMm, stopMm);
  return stage(tipDepthMm, stopMm === undefined ? null : minus(stopMm, tipDepthMm), minus(toMm, fromMm), bolt);
}

/** Where a nut stands at an end gap. @internal */
export function nutStage(nut: FixingNut, gapMm: Limits): FixingStage {
  const faceMm = plus(gapMm, given(nut.washerThicknessMm));
  const clearanceMm = nut.threadRunoutMm === undefined ? null : minus(faceMm, hardLimits(nut.threadRunoutMm));
  const engagementMm = smaller(hardLimits(nut.nutHeightMm), minus(hardLimits(nut.studLengthMm), faceMm));
  return stage(null, clearanceMm, engagementMm, nut);
}

function stage(
  tipDepthMm: Limits | null,
  clearanceMm: Limits | null,
  engagement: Limits,
  fixing: FixingBolt | FixingNut,
): FixingStage {
  const engagementMm = atLeastZero(engagement);
  return { tipDepthMm, clearanceMm, engagementMm, engagedTurns: over(engagementMm, fixing.thread.pitchMm) };
}
