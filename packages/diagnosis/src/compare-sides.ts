import { checkInput, createFinding, type FieldSpec, type Finding } from '@spindlewright/quantity';
import { caseFields, checkJoint, withHistoryList } from './check-case.ts';
import { diagnose } from './diagnose.ts';
import { NO_ANSWERS } from './ids.ts';
import { sides as messages } from './messages/sides.ts';
import type { ActionId, Diagnosis, JointId, Measurements, Observations } from './types.ts';

/** What was found on one side. */
export interface SideInput {
  /** What was seen, felt and told. */
  observations: Observations;
  /** What was measured. */
  measurements?: Measurements;
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
  /** Contradictions between the sides and what was taken over from one to the other. */
  findings: readonly Finding[];
}

// One pair of bearings, one rider's noise: what is found out about them holds at both ends.
const SHARED = ['bearing-turning', 'other-sources'] as const;

/**
 * Diagnoses both ends of one spindle, sharing what belongs to both, and says which side to see to first.
 *
 * @remarks
 * Formula: `diagnose` for each side; an answer on the bearing or on other sources of noise that was given for one side
 * only is taken for both. First comes the side whose riding would cost more (expected loss of the action `ride`).
 *
 * Validity: as `diagnose`. Different answers on what is shared are a finding; each side then keeps its own.
 *
 * Accuracy: as `diagnose`; that the two joints were put together by the same hands is not used.
 *
 * @param input - `joint`, and `drive` and `nonDrive` with `observations` and optional `measurements` each.
 * @returns Both diagnoses, the side to see to first, its action, `doNotRide` for the bicycle, findings.
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
    findings,
  };
}

const answer = (said: string | undefined): string | undefined =>
  (NO_ANSWERS as readonly (string | undefined)[]).includes(said) ? undefined : said;

/** A side that is not to be ridden comes before one that is; among equals the one whose riding would cost more. */
const urgency = (result: Diagnosis): number =>
  (result.doNotRide ? 1e6 : 0) + (result.actions.find(({ id }) => id === 'ride')?.expectedLossMinutes ?? 0);
