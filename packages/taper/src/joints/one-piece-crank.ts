import {
  checkInput,
  type FieldSpecs,
  type Finding,
  hardLimits,
  type Limits,
  type Measurand,
} from '@spindlewright/quantity';
import { find } from '../find.ts';
import { bounds } from '../interval.ts';
import { jointsMessages as messages } from '../messages/joints.ts';
import { measured } from './measured.ts';

/** A crank of one bent bar, loaded at one pedal. */
export interface OnePieceCrankInput {
  /** Force on the pedal, square to crank and axis, 0 to 20000 N. */
  pedalForceN: Measurand;
  /** Length of the crank, 50 to 300 mm. */
  crankLengthMm: Measurand;
  /** From the middle of the pedal to the section looked at, along the axis, 0 to 300 mm. */
  overhangMm: Measurand;
  /** Diameter of the bar there, 0.01 to 100 mm. */
  barDiameterMm: Measurand;
  /** Yield strength of the bar, 1 to 5000 MPa; not judged when absent. */
  yieldStrengthMPa?: Measurand;
}

/** What can be said of a crank without a joint. */
export interface OnePieceCrank {
  /** Torque in the bar, in Nm. */
  torqueNm: Limits;
  /** Bending moment in the bar, in Nm. */
  bendingNm: Limits;
  /** Equivalent stress at the surface of the bar, in MPa. */
  equivalentStressMPa: Limits;
  /** That over the yield strength; null when none was given. */
  yieldShare: Limits | null;
  /** What can be looked at, and what cannot be said. */
  findings: Finding[];
}

/**
 * Works out what a one-piece crank bears where its bar turns into the axle, and says that there is no joint to judge.
 *
 * @remarks
 * Formula: at a round section T = F L, M = F c; equivalent stress by the energy of shape change sqrt(s^2 + 3 t^2), s = 32
 * M/(pi d^3), t = 16 T/(pi d^3).
 *
 * Validity: a straight round bar; at the bend itself the stress is higher, by how much is not known here. No seat, no
 * preload, no play between arm and axle: none of that exists.
 *
 * Accuracy: exact for a round bar in the elastic range. Bounds are exact for independent readings.
 *
 * @param input - See {@link OnePieceCrankInput}; each a number, limits or a value with uncertainty.
 * @returns Moments in Nm, stress in MPa, share of the yield strength, as limits.
 * @throws {@link DomainError} for unknown keys or values outside their ranges.
 * @example
 * ```ts
 * import { onePieceCrank } from '@spindlewright/taper';
 * const crank = onePieceCrank({ pedalForceN: 1000, crankLengthMm: 165, overhangMm: 80, barDiameterMm: 20 });
 * crank.torqueNm.nominal; // => 165
 * Math.round(crank.equivalentStressMPa.nominal); // => 209
 * ```
 * @see Shigley (`shigley-9`), combined bending and torsion of a round shaft by distortion energy.
 */
export function onePieceCrank(input: OnePieceCrankInput): OnePieceCrank {
  checkInput({ where: 'onePieceCrank', value: input, fields });
  const force = hardLimits(input.pedalForceN);
  const length = hardLimits(input.crankLengthMm);
  const overhang = hardLimits(input.overhangMm);
  const diameter = hardLimits(input.barDiameterMm);
  const strength = input.yieldStrengthMPa === undefined ? undefined : hardLimits(input.yieldStrengthMPa);
  const torqueNm = bounds((corner) => (corner(force) * corner(length)) / 1000);
  const bendingNm = bounds((corner) => (corner(force) * corner(overhang)) / 1000);
  const equivalentStressMPa = bounds(
    (corner) =>
      (16_000 * Math.sqrt(4 * corner(bendingNm) ** 2 + 3 * corner(torqueNm) ** 2)) /
      (Math.PI * corner(diameter, false) ** 3),
  );
  const yieldShare =
    strength === undefined ? null : bounds((corner) => corner(equivalentStressMPa) / corner(strength, false));
  const past = strength !== undefined && equivalentStressMPa.upper > strength.lower;
  return {
    torqueNm,
    bendingNm,
    equivalentStressMPa,
    yieldShare,
    findings: [
      find(messages, 'no-joint', 'note'),
      ...(past
        ? [
            find(messages, 'past-yield', 'caution', {
              equivalentStressMPa: equivalentStressMPa.upper,
              yieldStrengthMPa: strength.lower,
            }),
          ]
        : []),
      find(messages, 'joint-instructions-first', 'caution'),
    ],
  };
}

const fields: FieldSpecs = {
  pedalForceN: measured('N', { min: 0, max: 20_000 }),
  crankLengthMm: measured('mm', { min: 50, max: 300 }),
  overhangMm: measured('mm', { min: 0, max: 300 }),
  barDiameterMm: measured('mm', { min: 0.01, max: 100 }),
  yieldStrengthMPa: { ...measured('MPa', { min: 1, max: 5000 }), optional: true },
};
