import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { torqueSpec } from './domain.ts';
import { pullAtTheGrip } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';
import { refuse } from './refuse.ts';

/** What to set the wrench to. */
export interface WrenchSetting {
  /** Setting in Nm, at least 0. */
  settingNm: number;
  /** Torque at the fastener over the setting: (L + E cos b)/L, above 0. */
  leverRatio: number;
  /** What is worth saying. */
  findings: Finding[];
}

const fields: FieldSpecs = {
  targetTorqueNm: torqueSpec,
  wrenchLengthMm: { type: 'number', unit: 'mm', min: 1, max: 10_000 },
  extensionLengthMm: { type: 'number', unit: 'mm', min: 0, max: 10_000 },
  extensionAngleDeg: { type: 'number', unit: 'deg', min: -360, max: 360, optional: true },
};

/**
 * Gives the setting of a torque wrench that turns the fastener through an extension or crowfoot.
 *
 * @remarks
 * Formula: setting = T L/(L + E cos b); T torque wanted, L wrench length from its square to the mark on the grip, E
 * extension from the square to the fastener, b its angle to the wrench: 0 lengthens it, 90 leaves the setting alone, 180
 * points back under the handle.
 *
 * Validity: a hand that pulls at the mark, at right angles to the wrench; then the force is the same whatever the
 * extension, and only the distance along the wrench counts. A socket extension in line with the fastener changes
 * nothing and needs no sum. L + E cos b has to stay above 0.
 *
 * Accuracy: exact at 0, 90 and 180 degrees, else one cosine. A hand 20 mm off the mark of a 300 mm wrench with a 60 mm
 * extension is 1.2 % of torque.
 *
 * @param input - `targetTorqueNm` at least 0 in Nm; `wrenchLengthMm` above 0, `extensionLengthMm` at least 0 in mm;
 * `extensionAngleDeg` in degrees (default 0).
 * @returns Setting in Nm and the ratio of torque to setting.
 * @throws {@link DomainError} for values outside their domain or an extension that reaches back past the grip.
 * @example
 * ```ts
 * import { wrenchSetting } from '@spindlewright/torque';
 * const wrench = { targetTorqueNm: 40, wrenchLengthMm: 300, extensionLengthMm: 75 };
 * wrenchSetting({ ...wrench, extensionAngleDeg: 0 }).settingNm; // => 32
 * wrenchSetting({ ...wrench, extensionAngleDeg: 90 }).settingNm; // => 40
 * ```
 * @see Service tool sheet (`torque-adapter-rule`); angle: `lever-extension-discussion`.
 */
export function wrenchSetting(input: {
  targetTorqueNm: number;
  wrenchLengthMm: number;
  extensionLengthMm: number;
  extensionAngleDeg?: number;
}): WrenchSetting {
  checkInput({ where: 'wrenchSetting', value: input, fields });
  const { targetTorqueNm, wrenchLengthMm, extensionLengthMm, extensionAngleDeg = 0 } = input;
  const reachMm = wrenchLengthMm + extensionLengthMm * cosine(extensionAngleDeg);
  if (reachMm <= 0) {
    throw refuse(
      'wrenchSetting',
      'extensionLengthMm',
      `${extensionLengthMm} at ${extensionAngleDeg} deg`,
      `an extension that reaches back less than the wrench is long, ${wrenchLengthMm} mm`,
    );
  }
  return {
    settingNm: (targetTorqueNm * wrenchLengthMm) / reachMm,
    leverRatio: reachMm / wrenchLengthMm,
    findings:
      reachMm === wrenchLengthMm ? [] : [raiseText('pull-at-the-grip', pullAtTheGrip, 'note', { wrenchLengthMm })],
  };
}

// Math.cos(pi/2) is 6e-17: a crowfoot at right angles would change the setting's last digit.
function cosine(angleDeg: number): number {
  if (Math.abs(angleDeg) % 180 === 90) return 0;
  return Math.cos((angleDeg * Math.PI) / 180);
}
