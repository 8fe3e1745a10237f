import {
  checkInput,
  DomainError,
  type FieldSpecs,
  type Finding,
  hardLimits,
  type Limits,
  type Measurand,
} from '@spindlewright/quantity';
import { find } from '../find.ts';
import { bounds } from '../interval.ts';
import { jointsMessages as messages } from '../messages/joints.ts';
import { checkWhole, measured, NO_GAP_MM } from './measured.ts';

/** A slotted arm clamped on a through spindle by pinch bolts. */
export interface PinchClampInput {
  /** Preload of one pinch bolt, 0 to 100000 N. */
  boltPreloadN: Measurand;
  /** Number of pinch bolts, 1 to 6. */
  boltCount: number;
  /** Diameter of the spindle, 0.01 to 100 mm. */
  spindleDiameterMm: Measurand;
  /** Width of the clamp along the spindle, 0.01 to 100 mm. */
  clampWidthMm: Measurand;
  /** Friction between arm and spindle, 0 to 1. */
  friction: Measurand;
  /** From the hinge behind the spindle to the bolts, 0.01 to 200 mm. */
  hingeToBoltMm: Measurand;
  /** From that hinge to the axis of the spindle, 0.01 to 200 mm; less than to the bolts. */
  hingeToAxisMm: Measurand;
  /** Force at the bolts that bends the slot shut without clamping, 0 to 100000 N in all; 0 when absent. */
  closingForceN?: Measurand;
  /** Bore over spindle with the bolts loose, in diameter, 0 to 5 mm; the closing of the slot is not reckoned when absent. */
  clearanceMm?: Measurand;
  /** Gap that is left in the slot, -10 to 20 mm; not judged when absent. */
  slotGapMm?: Measurand;
  /** Shift of the arm along the spindle with the cap set, 0 to 10 mm; not judged when absent. */
  axialPlayMm?: Measurand;
  /** Torque of the preload cap and its thread, for the force with which it loads the bearings. */
  cap?: {
    /** Torque in Nm, 0 to 20. */
    torqueNm: Measurand;
    /** Diameter of its thread, 0.01 to 100 mm. */
    threadDiameterMm: Measurand;
    /** Nut factor, 0.05 to 1. */
    nutFactor: Measurand;
    /** Pitch of its thread, 0.2 to 5 mm, for the turns that take out the play. */
    pitchMm?: Measurand;
  };
}

/** What the clamp holds, from two lines of contact (lower) to an even pressure (upper). */
export interface PinchClamp {
  /** Force with which one half presses on the spindle, in N. */
  clampForceN: Limits;
  /** Mean pressure on the projected area, in MPa. */
  contactPressureMPa: Limits;
  /** Torque at which a smooth clamp slips, in Nm. */
  slipTorqueNm: Limits;
  /** Axial force at which it shifts, in N. */
  axialHoldN: Limits;
  /** How much the slot closes at the bolts before the arm grips, in mm; null without the clearance. */
  slotClosingMm: Limits | null;
  /** Closing force over that closing, in N/mm; null without both, or where the arm may grip at once. */
  closingStiffnessNPerMm: Limits | null;
  /** Turns of the cap that take out the play; null without play and pitch. */
  capTurns: Limits | null;
  /** Force with which the cap loads the bearings, in N; null without a cap. */
  capForceN: Limits | null;
  /** True when the slot is open at its worst; null when it was not measured. */
  slotOpen: boolean | null;
  /** What is worth saying. */
  findings: Finding[];
}

// Sum of the normal forces over the force of one half: two lines, a pressure that follows the cosine, an even one.
const ROUND = { lower: 2, nominal: 8 / Math.PI, upper: Math.PI } as const;

/**
 * Works out what a pinch-bolt clamp on a through spindle holds: pressure, slip torque, axial hold, load of the cap.
 *
 * @remarks
 * Formula: about the hinge N = (n F - F_close) b/c, b hinge to bolt, c hinge to axis. The normal forces around the spindle
 * add up to 2 N for two lines, 8 N/pi for a cosine, pi N for an even pressure; slip torque = mu sum d/2, axial hold = mu sum.
 * Cap: F = T/(K d), turns play/pitch. Halves that turn about the hinge take the clearance at the axis; at the bolts the slot
 * closes by clearance b/c, under F_close, which is a stiffness of F_close over that.
 *
 * Validity: a smooth bore of any pressure between those; on a splined spindle the splines carry the torque and the clamp
 * only keeps them without play. A closed slot clamps nothing: all is 0 at the lower limit, with a finding.
 *
 * Accuracy: exact for the stated pressures; which of them holds is not known, so that the limits include them all.
 *
 * @param input - See {@link PinchClampInput}; each a number, limits or a value with uncertainty, `boltCount` a number.
 * @returns Forces in N, pressure in MPa, torque in Nm, closing in mm, stiffness in N/mm as limits.
 * @throws {@link DomainError} for unknown keys, values outside their ranges, or a hinge farther from the axis than from the
 * bolts.
 * @example
 * ```ts
 * import { pinchClamp } from '@spindlewright/taper';
 * const clamp = pinchClamp({
 *   boltPreloadN: 8000, boltCount: 2, spindleDiameterMm: 24, clampWidthMm: 20, friction: 0.15,
 *   hingeToBoltMm: 30, hingeToAxisMm: 15, clearanceMm: 0.05,
 * });
 * clamp.clampForceN.nominal; // => 32000
 * Math.round(clamp.slipTorqueNm.lower); // => 115
 * clamp.slotClosingMm?.nominal; // => 0.1
 * ```
 * @see Clamped hubs: handbook form with the three pressures, from memory; checked by integrating the pressure.
 */
export function pinchClamp(input: PinchClampInput): PinchClamp {
  checkInput({ where: 'pinchClamp', value: input, fields });
  checkWhole('pinchClamp', 'boltCount', input.boltCount);
  const preload = hardLimits(input.boltPreloadN);
  const diameter = hardLimits(input.spindleDiameterMm);
  const width = hardLimits(input.clampWidthMm);
  const mu = hardLimits(input.friction);
  const bolt = hardLimits(input.hingeToBoltMm);
  const axis = hardLimits(input.hingeToAxisMm);
  if (axis.upper >= bolt.lower) {
    const allowed = `less than to the bolts, ${bolt.lower} mm`;
    throw new DomainError('pinchClamp', [{ path: 'hingeToAxisMm', received: String(axis.upper), allowed }]);
  }
  const closing = hardLimits(input.closingForceN ?? 0);
  const gap = input.slotGapMm === undefined ? undefined : hardLimits(input.slotGapMm);
  const slotOpen = gap === undefined ? null : gap.lower > 0;
  const open = bounds((corner) =>
    gap !== undefined && corner(gap) <= 0
      ? 0
      : (Math.max(0, input.boltCount * corner(preload) - corner(closing, false)) * corner(bolt)) / corner(axis, false),
  );
  const cap = input.cap;
  const clearance = input.clearanceMm === undefined ? null : hardLimits(input.clearanceMm);
  const slotClosingMm = clearance && bounds((corner) => (corner(clearance) * corner(bolt)) / corner(axis, false));
  const bends = input.closingForceN !== undefined && slotClosingMm !== null && slotClosingMm.lower > NO_GAP_MM;
  return {
    clampForceN: open,
    contactPressureMPa: bounds((corner) => corner(open) / (corner(diameter, false) * corner(width, false))),
    slipTorqueNm: bounds((corner) => (corner(mu) * corner(ROUND) * corner(open) * corner(diameter)) / 2000),
    axialHoldN: bounds((corner) => corner(mu) * corner(ROUND) * corner(open)),
    slotClosingMm,
    closingStiffnessNPerMm: bends ? bounds((corner) => corner(closing) / corner(slotClosingMm, false)) : null,
    capTurns: turnsOf(input),
    capForceN:
      cap === undefined
        ? null
        : bounds(
            (corner) =>
              (1000 * corner(hardLimits(cap.torqueNm))) /
              (corner(hardLimits(cap.nutFactor), false) * corner(hardLimits(cap.threadDiameterMm), false)),
          ),
    slotOpen,
    findings: findingsOf(input, gap, input.closingForceN !== undefined && slotClosingMm !== null && !bends),
  };
}

function turnsOf({ axialPlayMm, cap }: PinchClampInput): Limits | null {
  if (axialPlayMm === undefined || cap?.pitchMm === undefined) return null;
  const [play, pitch] = [hardLimits(axialPlayMm), hardLimits(cap.pitchMm)];
  return bounds((corner) => corner(play) / corner(pitch, false));
}

function findingsOf({ axialPlayMm, cap }: PinchClampInput, gap: Limits | undefined, gripsAtOnce: boolean): Finding[] {
  const play = axialPlayMm === undefined ? 0 : hardLimits(axialPlayMm).upper;
  return [
    ...(gap !== undefined && gap.upper <= 0 ? [find(messages, 'slot-closed', 'stop', {}, { path: 'slotGapMm' })] : []),
    ...(gap !== undefined && gap.lower <= 0 && gap.upper > 0
      ? [find(messages, 'slot-may-be-closed', 'caution', {}, { path: 'slotGapMm' })]
      : []),
    ...(gripsAtOnce ? [find(messages, 'closing-stiffness-unbounded', 'note', {}, { path: 'clearanceMm' })] : []),
    ...(cap === undefined ? [] : [find(messages, 'cap-by-hand', 'caution', {}, { path: 'cap.torqueNm' })]),
    ...(play > 0 ? [find(messages, 'cap-leaves-play', 'caution', { axialPlayMm: play }, { path: 'axialPlayMm' })] : []),
    find(messages, 'safety-catch', 'caution'),
    find(messages, 'clamp-rests-on-model', 'note'),
    find(messages, 'joint-instructions-first', 'caution'),
  ];
}

const fields: FieldSpecs = {
  boltPreloadN: measured('N', { min: 0, max: 100_000 }),
  boltCount: { type: 'number', unit: 'bolts', min: 1, max: 6 },
  spindleDiameterMm: measured('mm', { min: 0.01, max: 100 }),
  clampWidthMm: measured('mm', { min: 0.01, max: 100 }),
  friction: measured('', { min: 0, max: 1 }),
  hingeToBoltMm: measured('mm', { min: 0.01, max: 200 }),
  hingeToAxisMm: measured('mm', { min: 0.01, max: 200 }),
  closingForceN: { ...measured('N', { min: 0, max: 100_000 }), optional: true },
  clearanceMm: { ...measured('mm', { min: 0, max: 5 }), optional: true },
  slotGapMm: { ...measured('mm', { min: -10, max: 20 }), optional: true },
  axialPlayMm: { ...measured('mm', { min: 0, max: 10 }), optional: true },
  cap: {
    type: 'object',
    optional: true,
    fields: {
      torqueNm: measured('Nm', { min: 0, max: 20 }),
      threadDiameterMm: measured('mm', { min: 0.01, max: 100 }),
      nutFactor: measured('', { min: 0.05, max: 1 }),
      pitchMm: { ...measured('mm', { min: 0.2, max: 5 }), optional: true },
    },
  },
};
