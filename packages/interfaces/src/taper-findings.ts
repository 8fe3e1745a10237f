import type { Finding } from '@spindlewright/quantity';
import { makeFinding } from './make-finding.ts';
import type { SquareTaperRecord } from './record.ts';
import { type MateShift, setsWithoutCounterpart } from './taper-shifts.ts';

/** What there is to say about a pair of square tapers, the consequence first. @internal */
export function taperFindings(
  spindle: SquareTaperRecord,
  arm: SquareTaperRecord,
  shifts: readonly MateShift[],
  reason: Finding,
): Finding[] {
  const trialFit = makeFinding(
    'trial-fit-settles',
    'note',
    {},
    inspectionSources(spindle, ['end-gap', 'shoulder-gap']),
  );
  const orientation = makeFinding('orientation-of-square', 'note', {}, claimSources(spindle.indexPositions.claims));
  if (spindle.id === arm.id) return [reason, ...setsDiffer(spindle), trialFit, orientation];
  return [
    ...shiftFindings(arm, shifts),
    reason,
    trialFit,
    ...(shifts.length === 0 ? [] : [...conflictFindings(spindle), ...counterpartFinding(spindle, arm)]),
    orientation,
  ];
}

function shiftFindings(arm: SquareTaperRecord, shifts: readonly MateShift[]): Finding[] {
  if (shifts.length === 0) return [];
  const lowest = Math.min(...shifts.map(({ shiftMm }) => shiftMm.lower));
  const highest = Math.max(...shifts.map(({ shiftMm }) => shiftMm.upper));
  const sources = [...new Set(shifts.flatMap((shift) => shift.sources))].sort();
  const setCount = shifts.length;
  if (highest > 0) {
    const values = { lowestMm: lowest, highestMm: highest };
    const gap = arm.geometry.handFitEndGapMm;
    return [
      makeFinding('goes-deeper', 'caution', { ...values, setCount }, sources),
      makeFinding('end-gap-at-stake', 'caution', { ...values, ownGapMm: gap.value }, gap.sources),
    ];
  }
  return [makeFinding('sits-farther-out', 'caution', { lowestMm: -highest, highestMm: -lowest, setCount }, sources)];
}

function conflictFindings(spindle: SquareTaperRecord): Finding[] {
  const findings: Finding[] = [];
  const shift = spindle.conflicts.find(({ id }) => id === 'mixed-arm-shift');
  const claimed = shift?.positions.flatMap(({ value }) => (value === undefined ? [] : [value.value])) ?? [];
  if (shift !== undefined && claimed.length > 0) {
    const values = { lowestMm: Math.min(...claimed), highestMm: Math.max(...claimed) };
    findings.push(makeFinding('shift-claims-disagree', 'caution', values, claimSources(shift.positions)));
  }
  const steepness = spindle.conflicts.find(({ id }) => id === 'steepness');
  if (steepness !== undefined) {
    const { comment, positions } = steepness;
    findings.push(makeFinding('steepness-unsupported', 'note', { comment }, claimSources(positions)));
  }
  return findings;
}

function counterpartFinding(spindle: SquareTaperRecord, arm: SquareTaperRecord): Finding[] {
  const sets = setsWithoutCounterpart(spindle, arm);
  return sets.length === 0 ? [] : [makeFinding('sets-without-counterpart', 'note', { sets: sets.join(', ') })];
}

function setsDiffer(record: SquareTaperRecord): Finding[] {
  const sizes = record.geometry.sets.map((set) => set.acrossFlatsAtEndMm);
  // No size of its own is published for some squares.
  if (sizes.length === 0) return [];
  const values = sizes.map(({ value }) => value);
  const spreadMm = Math.max(...values) - Math.min(...values);
  const angle = record.geometry.fallback.faceAngleDeg;
  const seatMm = spreadMm / (2 * Math.tan((angle.value * Math.PI) / 180));
  return [makeFinding('sets-differ', 'caution', { spreadMm, seatMm }, claimSources([...sizes, angle]))];
}

const claimSources = (claims: readonly { sources: readonly string[] }[]): string[] =>
  [...new Set(claims.flatMap(({ sources }) => sources))].sort();

const inspectionSources = (record: SquareTaperRecord, looks: readonly string[]): string[] =>
  claimSources(record.inspection.filter(({ look }) => looks.includes(look)));
