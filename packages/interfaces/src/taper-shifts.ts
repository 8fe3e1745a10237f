import { type Datum, type Limits, limitsOf } from '@spindlewright/quantity';
import type { SquareTaperRecord, TaperSet } from './record.ts';

/** How far an arm moves on another spindle, against the spindle of its own record, by one published set. */
export interface MateShift {
  /** Name of the set from which both parts are drawn. */
  set: string;
  /** Shift along the axis in mm, positive toward the frame; the bounds span the face angles published for the set. */
  shiftMm: Limits;
  /** The same in words. */
  direction: 'toward-frame' | 'away-from-frame' | 'none';
  /** Ids in the register of sources. */
  sources: readonly string[];
}

/** The shift by every set that gives a size for both tapers. @internal */
export function taperShifts(spindle: SquareTaperRecord, arm: SquareTaperRecord): MateShift[] {
  return sharedSets(spindle, arm).map(([onSpindle, ofArm]) => shiftOf(onSpindle, ofArm, spindle, arm));
}

/** Names of the sets that give a size for one of the two only. @internal */
export function setsWithoutCounterpart(spindle: SquareTaperRecord, arm: SquareTaperRecord): string[] {
  const shared = sharedSets(spindle, arm).map(([set]) => set.id);
  const all = [...spindle.geometry.sets, ...arm.geometry.sets].map((set) => set.id);
  return [...new Set(all)].filter((id) => !shared.includes(id)).sort();
}

function sharedSets(spindle: SquareTaperRecord, arm: SquareTaperRecord): [TaperSet, TaperSet][] {
  return spindle.geometry.sets.flatMap((set): [TaperSet, TaperSet][] => {
    const other = arm.geometry.sets.find((candidate) => candidate.id === set.id);
    return other === undefined ? [] : [[set, other]];
  });
}

function shiftOf(onSpindle: TaperSet, ofArm: TaperSet, spindle: SquareTaperRecord, arm: SquareTaperRecord): MateShift {
  const wide = limitsOf(ofArm.acrossFlatsAtEndMm);
  const narrow = limitsOf(onSpindle.acrossFlatsAtEndMm);
  const angles = [
    onSpindle.faceAngleDeg ?? spindle.geometry.fallback.faceAngleDeg,
    ofArm.faceAngleDeg ?? arm.geometry.fallback.faceAngleDeg,
  ];
  // Each published angle is reckoned through on its own: alternatives are other people's values, not a tolerance.
  const readings = angles.flatMap((angle): Datum[] => [angle, ...(angle.alternatives ?? [])]).map(({ value }) => value);
  const shift = (differenceMm: number, angleDeg: number): number =>
    differenceMm / (2 * Math.tan((angleDeg * Math.PI) / 180)) + 0;
  const nominal = shift(wide.nominal - narrow.nominal, angles[0]?.value ?? 0);
  const lowest = readings.map((angleDeg) => shift(wide.lower - narrow.upper, angleDeg));
  const highest = readings.map((angleDeg) => shift(wide.upper - narrow.lower, angleDeg));
  return {
    set: onSpindle.id,
    shiftMm: { lower: Math.min(...lowest), nominal, upper: Math.max(...highest) },
    direction: nominal > 0 ? 'toward-frame' : nominal < 0 ? 'away-from-frame' : 'none',
    sources: [
      ...new Set([onSpindle.acrossFlatsAtEndMm, ofArm.acrossFlatsAtEndMm, ...angles].flatMap(({ sources }) => sources)),
    ].sort(),
  };
}
