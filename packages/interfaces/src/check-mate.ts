import { DomainError, type Finding } from '@spindlewright/quantity';
import { dataEdition } from './data-edition.ts';
import { makeFinding } from './make-finding.ts';
import type { Claim, InterfaceRecord, MateVerdict, MatingRule } from './record.ts';
import { requireRecord } from './require-record.ts';
import { taperFindings } from './taper-findings.ts';
import { type MateShift, taperShifts } from './taper-shifts.ts';

/** A pair to check, by the parts or by their sex. */
export type MateInput =
  | { spindle: InterfaceRecord; arm: InterfaceRecord }
  | { male: InterfaceRecord; female: InterfaceRecord };

/** Whether an arm goes on a spindle, and how well. */
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
 * Says whether an arm of one interface goes on a spindle of another, and what follows.
 *
 * @remarks
 * Formula: verdicts are read from the records (their rules on mating, whether parts of one name interchange). For square
 * tapers the shift against a spindle of the arm's own standard is (across flats of the arm's standard - across flats of
 * the spindle's standard) / (2 tan(angle)), positive toward the frame, both sizes from one published set; its bounds span
 * the face angles published for that set.
 *
 * Validity: any two records. Different families do not mate; parts of one family without a rule are `unknown`, and so
 * are parts of one name whose form is the maker's own.
 *
 * Accuracy: that of the published sizes. Sets of one standard differ by 0.1 mm, 1.4 mm of seat, so a verdict by name is
 * never the last word: the trial fit named in the findings is.
 *
 * @param input - `spindle` and `arm`, or `male` and `female`: interface records, not ids.
 * @returns `verdict`, `shiftMm` (mm, positive toward the frame), `claims`, `consequence`, `findings`, `cautions`,
 * `sources`, `dataEdition`.
 * @throws {@link DomainError} when the pair is not two records under those names.
 * @example
 * ```ts
 * import { checkMate, getInterface } from '@spindlewright/interfaces';
 * const mate = checkMate({ spindle: getInterface('square-taper-iso'), arm: getInterface('square-taper-jis') });
 * mate.verdict; // => 'mates-with-shift'
 * mate.shiftMm[0]?.shiftMm.nominal.toFixed(2); // => '2.15'
 * ```
 * @see Sources `taper-jp-sizes-2014`, `taper-de-wiki`.
 */
export function checkMate(input: MateInput): MateResult {
  const { spindle, arm } = pairOf(input);
  const shiftMm = spindle.family === 'square-taper' && arm.family === 'square-taper' ? taperShifts(spindle, arm) : [];
  const decided = decide(spindle, arm);
  const findings =
    spindle.family === 'square-taper' && arm.family === 'square-taper'
      ? taperFindings(spindle, arm, shiftMm, decided.finding)
      : [decided.finding];
  const cautions = cautionsOf(decided.verdict);
  const claims =
    spindle.id === arm.id || shiftMm.length === 0
      ? []
      : (spindle.conflicts.find(({ id }) => id === 'mixed-arm-shift')?.positions ?? []);
  const all = [...findings, ...cautions, ...shiftMm, ...claims].flatMap(({ sources }) => sources);
  return {
    verdict: decided.verdict,
    shiftMm,
    claims,
    consequence: findings[0]?.message ?? '',
    findings,
    cautions,
    sources: [...new Set(all)].sort(),
    dataEdition,
  };
}

function pairOf(input: MateInput): { spindle: InterfaceRecord; arm: InterfaceRecord } {
  const keys = typeof input === 'object' && input !== null ? Object.keys(input).sort().join() : '';
  if (keys !== 'arm,spindle' && keys !== 'female,male') {
    throw new DomainError('checkMate', [
      {
        path: '',
        received: keys === '' ? 'no pair' : `the keys ${keys}`,
        allowed: '{ spindle, arm } or { male, female }',
      },
    ]);
  }
  const { spindle, arm, male, female } = input as Record<string, unknown>;
  const byPart = keys === 'arm,spindle';
  const pair = { spindle: byPart ? spindle : male, arm: byPart ? arm : female };
  requireRecord('checkMate', byPart ? 'spindle' : 'male', pair.spindle);
  requireRecord('checkMate', byPart ? 'arm' : 'female', pair.arm);
  return { spindle: pair.spindle, arm: pair.arm };
}

function decide(spindle: InterfaceRecord, arm: InterfaceRecord): { verdict: MateVerdict; finding: Finding } {
  if (spindle.id === arm.id) {
    const { kind, statement, sources } = spindle.interchange;
    return kind === 'maker-specific'
      ? { verdict: 'unknown', finding: makeFinding('maker-specific', 'caution', { statement }, sources) }
      : { verdict: 'mates', finding: makeFinding('meant-to-interchange', 'note', { statement }, sources) };
  }
  const rule = ruleFor(spindle, arm);
  if (rule !== undefined) {
    const { verdict, statement, note, sources } = rule;
    const severity = verdict === 'mates' ? 'note' : verdict === 'mates-with-shift' ? 'caution' : 'stop';
    const said = note === undefined ? statement : `${statement} ${note}`;
    return { verdict, finding: makeFinding('mating-rule', severity, { statement: said }, sources) };
  }
  if (spindle.family === arm.family) {
    const values = { spindle: spindle.id, arm: arm.id };
    return { verdict: 'unknown', finding: makeFinding('no-rule', 'caution', values) };
  }
  const sources = [spindle, arm].flatMap((record) => record.axialStop.claims.flatMap((claim) => claim.sources));
  const values = { spindleFamily: spindle.family, armFamily: arm.family };
  return {
    verdict: 'does-not-mate',
    finding: makeFinding('families-differ', 'stop', values, [...new Set(sources)].sort()),
  };
}

/** Either part may hold the rule. */
const ruleFor = (spindle: InterfaceRecord, arm: InterfaceRecord): MatingRule | undefined =>
  [...spindle.mating, ...arm.mating].find((rule) => rule.spindle === spindle.id && rule.arm === arm.id);

function cautionsOf(verdict: MateVerdict): Finding[] {
  const fails = verdict === 'does-not-mate' || verdict === 'starts-then-fails';
  return [
    ...(fails ? [makeFinding('do-not-force', 'stop')] : []),
    ...(verdict === 'mates-with-shift' || verdict === 'unknown' ? [makeFinding('do-not-ride-untried', 'caution')] : []),
    makeFinding('follow-maker', 'caution'),
  ];
}
