import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { torqueSpec } from './domain.ts';
import { pullAtTheGrip, wrenchOutOfReach } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';
import { refuse } from './refuse.ts';

/** Whether a wrench reaches a torque, and what to do when it does not. */
export interface WrenchReach {
  /** `direct`: on its scale; `with-extension`: by one in line with it; `no`: by no extension that it bears. */
  reach: 'direct' | 'with-extension' | 'no';
  /** What to set the wrench to in Nm; null when it does not reach. */
  settingNm: number | null;
  /** Extension in line, from the square to the bolt, in mm; 0 without one, null when none helps. */
  extensionLengthMm: number | null;
  /** What is worth saying. */
  findings: Finding[];
}

// Judgement: a longer one than half the wrench bends, slips and is hard to keep in line.
const LONGEST_SHARE = 0.5;

const fields: FieldSpecs = {
  targetTorqueNm: { type: 'number', unit: 'Nm', min: 1e-3, max: 1e9 },
  lowestSettingNm: torqueSpec,
  highestSettingNm: { type: 'number', unit: 'Nm', min: 1e-3, max: 1e9 },
  wrenchLengthMm: { type: 'number', unit: 'mm', min: 1, max: 10_000 },
  extensionStepMm: { type: 'number', unit: 'mm', min: 0.1, max: 500, optional: true },
};

/**
 * Tells whether a wrench reaches a torque with its scale, or with an extension in line, and what to set it to then.
 *
 * @remarks
 * Formula: setting = T L/(L + E) in line; the shortest extension that reaches is E = L (T/S - 1), S the highest setting,
 * taken up to the next whole step.
 *
 * Validity: a target above the scale; below it no extension in line helps (one that points back under the handle does, see
 * `wrenchSetting` with 180 degrees). Extensions longer than half the wrench are not proposed (judgement).
 *
 * Accuracy: exact; a hand off the mark of the grip is a few per cent, see `wrenchSetting`.
 *
 * @param input - `targetTorqueNm` above 0, `lowestSettingNm` and `highestSettingNm` of the scale in Nm, `wrenchLengthMm`
 * from its square to the mark on the grip; `extensionStepMm`: lengths to choose from, 5 mm when absent.
 * @returns Whether it reaches, setting in Nm, extension in mm.
 * @throws {@link DomainError} for values outside their domain, a scale that runs backwards, or unknown keys.
 * @example
 * ```ts
 * import { wrenchReach } from '@spindlewright/torque';
 * // A scale from 60 to 300 lbf.in, for 40 Nm.
 * const reach = wrenchReach({
 *   targetTorqueNm: 40, lowestSettingNm: 6.8, highestSettingNm: 33.9, wrenchLengthMm: 250,
 * });
 * reach.reach; // => 'with-extension'
 * reach.extensionLengthMm; // => 45
 * reach.settingNm?.toFixed(1); // => '33.9'
 * ```
 * @see Service tool sheet (`torque-adapter-rule`).
 */
export function wrenchReach(input: {
  targetTorqueNm: number;
  lowestSettingNm: number;
  highestSettingNm: number;
  wrenchLengthMm: number;
  extensionStepMm?: number;
}): WrenchReach {
  checkInput({ where: 'wrenchReach', value: input, fields });
  const { targetTorqueNm, lowestSettingNm, highestSettingNm, wrenchLengthMm, extensionStepMm = 5 } = input;
  if (lowestSettingNm > highestSettingNm) {
    throw refuse('wrenchReach', 'lowestSettingNm', String(lowestSettingNm), `at most ${highestSettingNm} Nm`);
  }
  if (targetTorqueNm >= lowestSettingNm && targetTorqueNm <= highestSettingNm) {
    return { reach: 'direct', settingNm: targetTorqueNm, extensionLengthMm: 0, findings: [] };
  }
  const neededMm = wrenchLengthMm * (targetTorqueNm / highestSettingNm - 1);
  const extensionLengthMm = Math.ceil(neededMm / extensionStepMm - 1e-9) * extensionStepMm;
  const settingNm = (targetTorqueNm * wrenchLengthMm) / (wrenchLengthMm + extensionLengthMm);
  if (neededMm > 0 && extensionLengthMm <= LONGEST_SHARE * wrenchLengthMm && settingNm >= lowestSettingNm) {
    const findings = [raiseText('pull-at-the-grip', pullAtTheGrip, 'note', { wrenchLengthMm })];
    return { reach: 'with-extension', settingNm, extensionLengthMm, findings };
  }
  const values = { targetTorqueNm, lowestSettingNm, highestSettingNm };
  return {
    reach: 'no',
    settingNm: null,
    extensionLengthMm: null,
    findings: [raiseText('wrench-out-of-reach', wrenchOutOfReach, 'caution', values, { path: 'targetTorqueNm' })],
  };
}
