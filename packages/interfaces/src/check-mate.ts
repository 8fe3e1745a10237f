import type { Finding } from '@spindlewright/quantity';
import { dataEdition } from './data-edition.ts';
import { makeFinding } from './make-finding.ts';
import { type Decision, sourcesIn } from './mate-decision.ts';
import { type MatePair, mateInputOf } from './mate-input.ts';
import { mateJoint } from './mate-joint.ts';
import { mateNeighbours, mateOnStud, mateWithJoint } from './mate-neighbours.ts';
import type { NeighbourRecord } from './neighbour.ts';
import type { Claim, InterfaceRecord, MateVerdict } from './record.ts';
import { taperFindings } from './taper-findings.ts';
import { type MateShift, taperShifts } from './taper-shifts.ts';

/** A pair to check, by the parts or by their sex. */
export type MateInput =
  | { spindle: InterfaceRecord; arm: InterfaceRecord }
  | {
      /** What goes in or on: a spindle, a bolt, a puller, a pedal, a ring, a cup. */
      male: InterfaceRecord | NeighbourRecord;
      /** What takes it: an arm, a spindle, an arm of that bolt circle or pedal thread, a shell, a nut. */
      female: InterfaceRecord | NeighbourRecord;
      /** Side of the bicycle that the male part is made for; only where the record has threads by side. */
      maleSide?: 'left' | 'right';
      /** Side of the bicycle at which it is to go in; the same as `maleSide` when absent. */
      femaleSide?: 'left' | 'right';
    };

/** Whether two parts go together, and how well. */
export interface MateResult {
  /** What happens. */
  verdict: MateVerdict;
  /** For square tapers: how far the arm moves against a spindle of its own standard, one entry a published set. */
  shiftMm: readonly MateShift[];
  /** What is said in print about that shift, every claim apart. */
  claims: readonly Claim[];
  /** What follows from it, in a sentence. */
  consequence: string;
  /** Everything worth saying, the reason of the verdict first. */
  findings: readonly Finding[];
  /** What holds whatever the verdict. */
  cautions: readonly Finding[];
  /** Ids in the register of sources. */
  sources: readonly string[];
  /** Edition of the data. */
  dataEdition: string;
}

/**
 * Says whether two parts go together, such as an arm on a spindle, a puller in an arm or cups in a shell.
 *
 * @remarks
 * Formula: verdicts on joints are read from the records (their rules on mating, whether parts of one name interchange,
 * counts of splines, diameters). For square tapers the shift against a spindle of the arm's own standard is (across flats
 * of the arm's standard - across flats of the spindle's standard) / (2 tan(angle)), positive toward the frame, both sizes
 * from one published set; its bounds span the face angles published for that set. Threads are compared by hand, nominal
 * diameter and pitch: the share of the flanks that meets is 1 - (difference of diameters) / (1.0825 pitch of the female
 * thread), and pitches bind that run apart over the engaged turns by more than the flanks play; the lines drawn are stated
 * judgement.
 *
 * Validity: any two records of parts: arm and spindle, bolt and spindle, puller and arm, pedal and pedal thread, ring and
 * bolt circle, cups and shell; conventions such as a chainline are no parts. Different families do not mate; parts
 * of one family without a rule are `unknown`, and so are parts of one name whose form is the maker's own, parts with
 * several threads of which none is the usual one, and questions that the record of a joint does not answer, such as the
 * pedal thread of its arm.
 *
 * Accuracy: that of the published sizes. Sets of one square differ by 0.1 mm, 1.4 mm of seat, so a verdict by name is
 * never the last word: the trial fit named in the findings is, and a thread is tried by hand.
 *
 * @param input - `spindle` and `arm`, or `male` and `female`: records, not ids; `maleSide`, `femaleSide` for one thread of
 * cups and pedals.
 * @returns `verdict`, `shiftMm` (mm, positive toward the frame), `claims`, `consequence`, `findings`, `cautions`,
 * `sources`, `dataEdition`.
 * @throws {@link DomainError} when the pair is not two records of parts under those names, or a side is given for a part
 * without sides.
 * @example
 * ```ts
 * import { checkMate, getInterface, getNeighbour } from '@spindlewright/interfaces';
 * const mate = checkMate({ spindle: getInterface('square-taper-iso'), arm: getInterface('square-taper-jis') });
 * mate.verdict; // => 'mates-with-shift'
 * mate.shiftMm[0]?.shiftMm.nominal.toFixed(2); // => '2.15'
 * checkMate({ male: getNeighbour('puller-m23x1'), female: getNeighbour('puller-odd-french') }).verdict;
 * // => 'starts-then-fails'
 * ```
 * @see Sources `taper-jp-sizes-2014`, `taper-de-wiki`, `puller-threads-fr-wiki`, `shell-thread-page`.
 */
export function checkMate(input: MateInput): MateResult {
  const pair = mateInputOf(input);
  const joints =
    'family' in pair.male && 'family' in pair.female ? { spindle: pair.male, arm: pair.female } : undefined;
  return joints === undefined ? resultOf(decide(pair)) : jointResult(joints.spindle, joints.arm);
}

function decide({ male, female, sides }: MatePair): Decision {
  if ('family' in male) return 'family' in female ? mateJoint(male, female) : mateOnStud(male, female);
  return 'family' in female ? mateWithJoint(male, female) : mateNeighbours(male, female, sides);
}

function jointResult(spindle: InterfaceRecord, arm: InterfaceRecord): MateResult {
  const decision = mateJoint(spindle, arm);
  if (spindle.family !== 'square-taper' || arm.family !== 'square-taper') return resultOf(decision);
  const shiftMm = taperShifts(spindle, arm);
  const claims =
    spindle.id === arm.id || shiftMm.length === 0
      ? []
      : (spindle.conflicts.find(({ id }) => id === 'mixed-arm-shift')?.positions ?? []);
  const findings = taperFindings(spindle, arm, shiftMm, decision.findings[0]);
  return resultOf({ ...decision, findings }, shiftMm, claims);
}

function resultOf(
  { verdict, findings }: { verdict: MateVerdict; findings: readonly Finding[] },
  shiftMm: readonly MateShift[] = [],
  claims: readonly Claim[] = [],
): MateResult {
  const cautions = cautionsOf(verdict);
  return {
    verdict,
    shiftMm,
    claims,
    consequence: findings[0]?.message ?? '',
    findings,
    cautions,
    sources: sourcesIn([...findings, ...cautions, ...shiftMm, ...claims]),
    dataEdition,
  };
}

function cautionsOf(verdict: MateVerdict): Finding[] {
  const fails = verdict === 'does-not-mate' || verdict === 'starts-then-fails';
  return [
    ...(fails ? [makeFinding('do-not-force', 'stop')] : []),
    ...(verdict === 'mates-with-shift' || verdict === 'unknown' ? [makeFinding('do-not-ride-untried', 'caution')] : []),
    makeFinding('follow-maker', 'caution'),
  ];
}
