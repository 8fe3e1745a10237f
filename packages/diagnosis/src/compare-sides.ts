import {
  checkInput,
  createFinding,
  type FieldSpec,
  type Finding,
  hardLimits,
  type Limits,
  type Measurand,
} from '@spindlewright/quantity';
import { caseFields, checkJoint, withHistoryList } from './check-case.ts';
import { diagnose } from './diagnose.ts';
import { CHECK_OUTCOMES, MEASUREMENTS, NO_ANSWERS } from './ids.ts';
import { sides as messages } from './messages/sides.ts';
import type {
  ActionId,
  CheckId,
  Diagnosis,
  JointId,
  MeasurementId,
  Measurements,
  Observations,
  OutcomeId,
} from './types.ts';

/** What was found on one side. */
export interface SideInput {
  /** What was seen, felt and told. */
  observations: Observations;
  /** What was measured. */
  measurements?: Measurements;
}

/** A check that was answered otherwise on either side: the side in order shows what right looks like on this bicycle. */
export interface SideDifference {
  /** The check. */
  check: CheckId;
  /** Its answer on the side with the chainrings. */
  drive: OutcomeId;
  /** Its answer on the other side. */
  nonDrive: OutcomeId;
}

/** A reading taken on both sides. */
export interface ReadingDifference {
  /** Which reading. */
  measurement: MeasurementId;
  /** Drive side less the other, in the unit of the reading. */
  difference: Limits;
  /** True when the limits of the difference leave out 0: it is more than the readings' uncertainty. */
  beyondUncertainty: boolean;
}

/** Both ends of one spindle, side by side. */
export interface SideComparison {
  /** Diagnosis of the side with the chainrings. */
  drive: Diagnosis;
  /** Diagnosis of the other side. */
  nonDrive: Diagnosis;
  /** The side to see to first; `neither` when both may be ridden. */
  firstSide: 'drive' | 'non-drive' | 'neither';
  /** What to do on that side. */
  action: ActionId;
  /** True when either side is not to be ridden. */
  doNotRide: boolean;
  /** Where the sides answer otherwise, in the order of the checks. */
  differences: readonly SideDifference[];
  /** Readings that were taken on both sides, and by how much they differ. */
  readings: readonly ReadingDifference[];
  /** Contradictions between the sides and what was taken over from one to the other. */
  findings: readonly Finding[];
}

// Gaps that shrink as the arm goes on: the smaller one is the deeper seat.
const GAPS: readonly MeasurementId[] = ['endGapMm', 'shoulderGapMm'];

// One pair of bearings, one rider's noise: what is found out about them holds at both ends.
const SHARED = ['bearing-turning', 'other-sources'] as const;

/**
 * Diagnoses both ends of one spindle, sharing what belongs to both, and says which side to see to first.
 *
 * @remarks
 * Formula: `diagnose` for each side; an answer on the bearing or on other sources of noise that was given for one side
 * only is taken for both. First comes the side whose riding would cost more (expected loss of the action `ride`). What was
 * answered or read on both sides is set side by side: the end in order shows what right looks like on this bicycle.
 *
 * Validity: as `diagnose`. Different answers on what is shared are a finding; each side then keeps its own.
 *
 * Accuracy: as `diagnose`; that the two joints were put together by the same hands is not used.
 *
 * @param input - `joint`, and `drive` and `nonDrive` with `observations` and optional `measurements` each.
 * @returns Both diagnoses, the side to see to first, its action, `doNotRide` for the bicycle, `differences`
 * of answers, `readings` of both with the limits of their difference (drive less the other, in the unit of the reading),
 * findings.
 * @throws {@link DomainError} as `diagnose`.
 * @example
 * ```ts
 * import { compareSides } from '@spindlewright/diagnosis';
 * const both = compareSides({
 *   joint: 'square-taper-jis',
 *   drive: { observations: { 'play-at-arm': 'none', 'bolt-on-arrival': 'tight' } },
 *   nonDrive: { observations: { 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'finger-loose' } },
 * });
 * both.firstSide; // => 'non-drive'
 * both.doNotRide; // => true
 * both.differences.map(({ check }) => check); // => ['play-at-arm', 'bolt-on-arrival']
 * ```
 * @see spindle-torque-answer-2007 in the register of sources: why the left joint works loose first.
 */
export function compareSides(input: { joint: JointId; drive: SideInput; nonDrive: SideInput }): SideComparison {
  const where = 'compareSides';
  if (typeof input === 'object' && input !== null) checkJoint(where, input.joint);
  const { joint, side: _side, ...rest } = caseFields();
  const side: FieldSpec = { type: 'object', fields: rest };
  const value = { ...input, drive: withHistoryList(input?.drive), nonDrive: withHistoryList(input?.nonDrive) };
  checkInput({ where, value, fields: { joint: joint ?? side, drive: side, nonDrive: side } });
  const findings: Finding[] = [];
  const drive: Observations = { ...input.drive.observations };
  const nonDrive: Observations = { ...input.nonDrive.observations };
  for (const check of SHARED) {
    const a = answer(drive[check]);
    const b = answer(nonDrive[check]);
    if (a === b) continue;
    const both = a !== undefined && b !== undefined;
    const code = both ? 'contradiction-sides' : 'answer-shared';
    const values: Finding['values'] = both ? { check, drive: a, nonDrive: b } : { check };
    findings.push(createFinding({ code, severity: both ? 'caution' : 'note', template: messages[code] ?? '', values }));
    if (a === undefined) Object.assign(drive, { [check]: b });
    if (b === undefined) Object.assign(nonDrive, { [check]: a });
  }
  const readings = readingsOf(input.drive.measurements, input.nonDrive.measurements);
  for (const { measurement, difference, beyondUncertainty } of readings) {
    if (!beyondUncertainty || !GAPS.includes(measurement)) continue;
    const deeper = difference.nominal < 0 ? 'drive' : 'non-drive';
    const values = { measurement, side: deeper, byMm: Math.abs(difference.nominal) };
    findings.push(
      createFinding({
        code: 'arm-sits-deeper',
        severity: 'caution',
        template: messages['arm-sits-deeper'] ?? '',
        values,
      }),
    );
  }
  const driveResult = diagnose({ ...input.drive, joint: input.joint, side: 'drive', observations: drive });
  const otherResult = diagnose({ ...input.nonDrive, joint: input.joint, side: 'non-drive', observations: nonDrive });
  const driveFirst = urgency(driveResult) > urgency(otherResult);
  const doNotRide = driveResult.doNotRide || otherResult.doNotRide;
  return {
    drive: driveResult,
    nonDrive: otherResult,
    firstSide: !doNotRide ? 'neither' : driveFirst ? 'drive' : 'non-drive',
    action: (driveFirst ? driveResult : otherResult).action,
    doNotRide,
    differences: differencesOf(drive, nonDrive),
    readings,
    findings,
  };
}

/** Checks of this joint's ends that were answered otherwise; what is told of the past belongs to neither. */
const differencesOf = (drive: Observations, nonDrive: Observations): SideDifference[] =>
  (Object.keys(CHECK_OUTCOMES) as CheckId[]).flatMap((check) => {
    if (check === 'history') return [];
    const [a, b] = [answer(drive[check]), answer(nonDrive[check])];
    return a === undefined || b === undefined || a === b
      ? []
      : [{ check, drive: a as OutcomeId, nonDrive: b as OutcomeId }];
  });

// Judgement: a plain number counts as read to a tenth of a millimetre, degree, turn; larger ones to three in a hundred.
const READ_TO = 0.1;

function readingsOf(drive: Measurements = {}, nonDrive: Measurements = {}): ReadingDifference[] {
  const widened = (value: Measurand): Limits => {
    const { lower, nominal, upper } = hardLimits(value);
    const half = lower === upper ? Math.max(READ_TO, 0.03 * Math.abs(nominal)) : 0;
    return { lower: lower - half, nominal, upper: upper + half };
  };
  return MEASUREMENTS.flatMap((measurement) => {
    const [a, b] = [drive[measurement], nonDrive[measurement]];
    if (a === undefined || b === undefined) return [];
    const [left, right] = [widened(a), widened(b)];
    const difference = {
      lower: left.lower - right.upper,
      nominal: left.nominal - right.nominal,
      upper: left.upper - right.lower,
    };
    return [{ measurement, difference, beyondUncertainty: difference.lower > 0 || difference.upper < 0 }];
  });
}

const answer = (said: string | undefined): string | undefined =>
  (NO_ANSWERS as readonly (string | undefined)[]).includes(said) ? undefined : said;

/** A side that is not to be ridden comes before one that is; among equals the one whose riding would cost more. */
const urgency = (result: Diagnosis): number =>
  (result.doNotRide ? 1e6 : 0) + (result.actions.find(({ id }) => id === 'ride')?.expectedLossMinutes ?? 0);
