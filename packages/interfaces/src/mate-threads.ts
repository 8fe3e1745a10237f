import type { Datum } from '@spindlewright/quantity';
import { identificationData } from './identification.generated.ts';
import { makeFinding } from './make-finding.ts';
import { type Decision, sourcesIn, worstOf } from './mate-decision.ts';
import { matingData } from './mating.generated.ts';
import type { ThreadRecord } from './record.ts';
import { FLANK_DEPTH_RATIO } from './thread-limits.ts';

/**
 * What happens when an external thread is turned into an internal one, by nominal sizes. Where sources give several
 * diameters, each pair is looked at and the worst is told. @internal
 */
export function mateThreads(male: ThreadRecord, female: ThreadRecord): Decision {
  const names = { male: male.designation, female: female.designation };
  const data = [male, female].flatMap((thread) => [thread.nominalDiameterMm, thread.pitchMm, thread.threadsPerInch]);
  const sources = sourcesIn(data);
  if (male.hand !== female.hand) {
    const values = { ...names, maleHand: male.hand, femaleHand: female.hand };
    return { verdict: 'does-not-mate', findings: [makeFinding('hands-differ', 'stop', values, sources)] };
  }
  const [first, ...rest] = valuesOf(male.nominalDiameterMm).flatMap((maleMm) =>
    // Parts of one record have one size, whichever of the published ones it is.
    (male === female ? [maleMm] : valuesOf(female.nominalDiameterMm)).map((femaleMm) =>
      mateSizes({ diameterMm: maleMm, pitchMm: pitchOf(male) }, { diameterMm: femaleMm, pitchMm: pitchOf(female) }),
    ),
  );
  // A datum always has a value, so there is a first pair.
  const { verdict, code, values } = rest.reduce(
    (worst, size) => (worstOf(asDecision(worst), asDecision(size)).verdict === worst.verdict ? worst : size),
    first as SizeVerdict,
  );
  const severity = verdict === 'mates' ? 'note' : verdict === 'unknown' ? 'caution' : 'stop';
  return { verdict, findings: [makeFinding(code, severity, { ...names, ...values }, sources)] };
}

interface Size {
  diameterMm: number;
  pitchMm: number | undefined;
}

interface SizeVerdict {
  verdict: Decision['verdict'];
  code: SizeCode;
  values: Record<string, number>;
}

type SizeCode =
  | 'thread-too-large'
  | 'pitch-not-known'
  | 'pitches-too-different'
  | 'thread-binds'
  | 'thread-agrees'
  | 'thread-drops-in'
  | 'thread-strips';

const asDecision = ({ verdict, code, values }: SizeVerdict): Decision => ({
  verdict,
  findings: [makeFinding(code, 'note', values)],
});

function mateSizes(male: Size, female: Size): SizeVerdict {
  const { nearMiss } = identificationData.threads;
  const differenceMm = female.diameterMm - male.diameterMm;
  const same = Math.abs(differenceMm) <= matingData.sameDiameterMm.value;
  if (!same && differenceMm < 0) {
    return { verdict: 'does-not-mate', code: 'thread-too-large', values: { differenceMm: -differenceMm } };
  }
  if (male.pitchMm === undefined || female.pitchMm === undefined) {
    return { verdict: 'unknown', code: 'pitch-not-known', values: {} };
  }
  const overlap = 1 - differenceMm / (FLANK_DEPTH_RATIO * female.pitchMm);
  if (!same && overlap < nearMiss.leastOverlapShare.value) {
    return { verdict: 'does-not-mate', code: 'thread-drops-in', values: { differenceMm } };
  }
  const apartMm = Math.abs(male.pitchMm - female.pitchMm);
  const pitches = { malePitchMm: male.pitchMm, femalePitchMm: female.pitchMm };
  if (apartMm > nearMiss.pitchShare.value * female.pitchMm) {
    return { verdict: 'does-not-mate', code: 'pitches-too-different', values: pitches };
  }
  // What the diameters differ by loosens the flanks of 60 degrees along the axis.
  const playMm = nearMiss.axialPlayMm.value + Math.max(0, differenceMm) / Math.sqrt(3);
  if (apartMm * nearMiss.engagedTurns.value > playMm) {
    return { verdict: 'starts-then-fails', code: 'thread-binds', values: pitches };
  }
  return same
    ? { verdict: 'mates', code: 'thread-agrees', values: {} }
    : { verdict: 'starts-then-fails', code: 'thread-strips', values: { differenceMm, overlapPercent: 100 * overlap } };
}

const valuesOf = (datum: Datum): number[] => [datum, ...(datum.alternatives ?? [])].map(({ value }) => value);

const MM_PER_INCH = 25.4;

function pitchOf({ pitchMm, threadsPerInch }: ThreadRecord): number | undefined {
  return threadsPerInch === undefined ? pitchMm?.value : MM_PER_INCH / threadsPerInch.value;
}

/**
 * What a thread does with the several threads that a part may carry: the usual one decides; without a usual one only
 * agreement of all does. @internal
 */
export function mateAnyThread(
  decisions: readonly { decision: Decision; thread: ThreadRecord }[],
): Decision | undefined {
  const [first, ...rest] = decisions;
  if (first === undefined) return undefined;
  const all = worstOf(first.decision, ...rest.map(({ decision }) => decision));
  if (decisions.every(({ decision }) => decision.verdict === first.decision.verdict)) return all;
  const threads = decisions.map(({ thread }) => thread.designation).join(', ');
  const vary = makeFinding('threads-vary', 'caution', { threads });
  const usual = decisions.find(({ thread }) => thread.usual === true);
  const mated = decisions.find(({ decision }) => decision.verdict === 'mates');
  if (usual !== undefined && usual === mated) return { verdict: 'mates', findings: [...usual.decision.findings, vary] };
  if (mated !== undefined) return { verdict: 'unknown', findings: [vary, ...mated.decision.findings] };
  // None mates: what happens with the usual thread is what is likely to happen.
  const told = usual?.decision ?? all;
  return { verdict: told.verdict, findings: [...told.findings, vary] };
}
