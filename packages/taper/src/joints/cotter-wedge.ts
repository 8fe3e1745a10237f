import {
  checkInput,
  type FieldSpecs,
  type Finding,
  hardLimits,
  type Limits,
  type Measurand,
} from '@spindlewright/quantity';
import { find } from '../find.ts';
import { bounds, type Corner } from '../interval.ts';
import { jointsMessages as messages } from '../messages/joints.ts';
import { measured } from './measured.ts';

/** A cotter pressed between the arm and the flat of a round spindle. */
export interface CotterWedgeInput {
  /** Force along the cotter that presses it in, 0 to 100000 N: of the press, not of the nut. */
  pressForceN: Measurand;
  /** Angle of the cotter's flat against its axis, 0.01 to 20 deg. */
  flatAngleDeg: Measurand;
  /** Friction on the flat, 0 to 0.6. */
  flatFriction: Measurand;
  /** Friction on the round back of the cotter, 0 to 0.6. */
  backFriction: Measurand;
  /** Length of the flat across the spindle, 0.01 to 50 mm. */
  flatLengthMm: Measurand;
  /** Width of the flat along the spindle, 0.01 to 50 mm. */
  flatWidthMm: Measurand;
  /** From the axis of the spindle to its flat, 0.01 to 50 mm. */
  axisToFlatMm: Measurand;
  /** Torque of the crank, 0 to 1000 Nm; 0 when absent. */
  crankTorqueNm?: Measurand;
  /** True when both cotters were put in the same way round. */
  sameWayRound?: boolean;
  /** Play of the loose arm across the flat, 0 to 5 mm; no travel for it when absent. */
  slackMm?: Measurand;
  /** Stiffness of arm, cotter and spindle across the flat, 1000 to 10000000 N/mm; no travel of the press when absent. */
  acrossStiffnessNPerMm?: Measurand;
}

/** What a pressed cotter holds. */
export interface CotterWedge {
  /** Force with which the flats press on each other, in N. */
  normalForceN: Limits;
  /** Pressure on the flat, in MPa. */
  contactPressureMPa: Limits;
  /** Travel of the cotter for each mm of play across the flat that it takes up. */
  travelPerSlackRatio: Limits;
  /** Travel that takes up the play, in mm; null without it. */
  slackTravelMm: Limits | null;
  /** Travel from there to the full pressing force, in mm; null without the stiffness across. */
  travelMm: Limits | null;
  /** Force along the cotter over that travel, in N/mm; null without the stiffness across. */
  stiffnessNPerMm: Limits | null;
  /** Force along the cotter that drives it out again, in N; 0 or less: it works out by itself. */
  releaseForceN: Limits;
  /** True when friction keeps it at rest without its nut, at its lowest. */
  holdsAtRestWithoutNut: boolean;
  /** Torque that lifts one edge of the flat, in Nm. */
  firstEdgeUnloadingNm: Limits;
  /** Torque at which the flat rocks on its other edge, three times that, in Nm. */
  rockingLimitNm: Limits;
  /** Shear stress in the cotter under the crank's torque, in MPa. */
  shearStressMPa: Limits;
  /** How far the arms stand out of line with both cotters the same way round, in deg; 0 else. */
  misalignmentDeg: Limits;
  /** What is worth saying. */
  findings: Finding[];
}

/**
 * Works out what a cotter pressed into an arm holds: its wedge force, whether it holds itself, and the torque it bears.
 *
 * @remarks
 * Formula: wedge with friction on flat (m) and back (mb), a angle of the flat: P = N (sin a + m cos a) + mb N (cos a - m
 * sin a); release R = N (m cos a - sin a) + mb N (cos a + m sin a). Even pressure N/(l w) under a torque turns into a
 * linear one: first lifting at N l/6, rocking at N l/2. Shear T/(r l w), as a key. Same way round: both flats turn their
 * arms the same way, so that they end up 2 a out of line. A cotter that moves by x wedges the flat away by x tan a: play
 * takes 1/tan a of travel a mm, and a joint of stiffness k across it is pressed with k tan a (tan(a + atan m) + mb) a mm
 * of travel.
 *
 * Validity: flats that bear all over; a filed or worn cotter bears at one end and holds less. The angle differs from
 * cotter to cotter: read it, no published one was found.
 *
 * Accuracy: exact for rigid parts, Coulomb friction and a linear pressure. Bounds are exact for independent readings.
 *
 * @param input - See {@link CotterWedgeInput}; each a number, limits or a value with uncertainty.
 * @returns Forces in N, travel in mm, stiffness in N/mm, pressures in MPa, torques in Nm, misalignment in deg, as limits.
 * @throws {@link DomainError} for unknown keys or values outside their ranges.
 * @example
 * ```ts
 * import { cotterWedge } from '@spindlewright/taper';
 * const cotter = cotterWedge({
 *   pressForceN: 10_000, flatAngleDeg: 5, flatFriction: 0.12, backFriction: 0.12,
 *   flatLengthMm: 12, flatWidthMm: 8, axisToFlatMm: 6.5,
 * });
 * cotter.holdsAtRestWithoutNut; // => true
 * (cotter.normalForceN.nominal / 1000).toFixed(1); // => '30.8'
 * cotter.travelPerSlackRatio.nominal.toFixed(1); // => '11.4'
 * ```
 * @see Wedge and key: Shigley (`shigley-9`), chapters on friction of wedges and on keys, from memory; pressing in instead of
 * hammering: `cotter-press`.
 */
export function cotterWedge(input: CotterWedgeInput): CotterWedge {
  checkInput({ where: 'cotterWedge', value: input, fields });
  const press = hardLimits(input.pressForceN);
  const angle = hardLimits(input.flatAngleDeg);
  const flat = hardLimits(input.flatFriction);
  const back = hardLimits(input.backFriction);
  const length = hardLimits(input.flatLengthMm);
  const width = hardLimits(input.flatWidthMm);
  const radius = hardLimits(input.axisToFlatMm);
  const torque = hardLimits(input.crankTorqueNm ?? 0);
  const at = (corner: Corner, grows: boolean): { a: number; m: number; mb: number } => ({
    a: (corner(angle, grows) * Math.PI) / 180,
    m: corner(flat, grows),
    mb: corner(back, grows),
  });
  // Angle and both frictions make the wedge stiffer to press: each lowers the normal force.
  const normalForceN = bounds((corner) => {
    const { a, m, mb } = at(corner, false);
    return corner(press) / (Math.sin(a) + m * Math.cos(a) + mb * (Math.cos(a) - m * Math.sin(a)));
  });
  const releaseForceN = releaseOf(press, angle, flat, back);
  const slack = input.slackMm === undefined ? null : hardLimits(input.slackMm);
  const across = input.acrossStiffnessNPerMm === undefined ? null : hardLimits(input.acrossStiffnessNPerMm);
  const travelPerSlackRatio = bounds((corner) => 1 / Math.tan(at(corner, false).a));
  const stiffnessNPerMm =
    across &&
    bounds((corner) => {
      const { a, m, mb } = at(corner, true);
      return corner(across) * Math.tan(a) * (Math.tan(a + Math.atan(m)) + mb);
    });
  const edge = (corner: Corner): number => (corner(normalForceN) * corner(length)) / 6000;
  const firstEdgeUnloadingNm = bounds(edge);
  const twice = input.sameWayRound === true ? 2 : 0;
  const misalignmentDeg = bounds((corner) => twice * corner(angle));
  return {
    normalForceN,
    contactPressureMPa: bounds((corner) => corner(normalForceN) / (corner(length, false) * corner(width, false))),
    travelPerSlackRatio,
    slackTravelMm: slack && bounds((corner) => corner(slack) * corner(travelPerSlackRatio)),
    travelMm: stiffnessNPerMm && bounds((corner) => corner(press) / corner(stiffnessNPerMm, false)),
    stiffnessNPerMm,
    releaseForceN,
    holdsAtRestWithoutNut: releaseForceN.lower > 0,
    firstEdgeUnloadingNm,
    rockingLimitNm: bounds((corner) => 3 * edge(corner)),
    shearStressMPa: bounds(
      (corner) => (1000 * corner(torque)) / (corner(radius, false) * corner(length, false) * corner(width, false)),
    ),
    misalignmentDeg,
    findings: [
      ...(twice > 0
        ? [find(messages, 'cotters-same-way-round', 'stop', { misalignmentDeg: misalignmentDeg.nominal })]
        : []),
      ...(releaseForceN.lower > 0 ? [] : [find(messages, 'cotter-works-out', 'caution')]),
      ...(slack && across ? [] : [find(messages, 'cotter-travel-not-reckoned', 'note')]),
      ...(torque.upper > firstEdgeUnloadingNm.lower ? [find(messages, 'flat-lifts', 'caution')] : []),
      find(messages, 'joint-instructions-first', 'caution'),
    ],
  };
}

// Release over pressing force rises with either friction and falls with the angle.
const releaseOf = (press: Limits, angle: Limits, flat: Limits, back: Limits): Limits =>
  bounds((corner) => {
    const a = (corner(angle, false) * Math.PI) / 180;
    const [m, mb] = [corner(flat), corner(back)];
    const out = m * Math.cos(a) - Math.sin(a) + mb * (Math.cos(a) + m * Math.sin(a));
    const ratio = out / (Math.sin(a) + m * Math.cos(a) + mb * (Math.cos(a) - m * Math.sin(a)));
    return ratio * (ratio >= 0 ? corner(press) : corner(press, false));
  });

const fields: FieldSpecs = {
  pressForceN: measured('N', { min: 0, max: 100_000 }),
  flatAngleDeg: measured('deg', { min: 0.01, max: 20 }),
  // Up to there a steeper flat always presses less: the angle and both angles of friction stay below a right angle.
  flatFriction: measured('', { min: 0, max: 0.6 }),
  backFriction: measured('', { min: 0, max: 0.6 }),
  flatLengthMm: measured('mm', { min: 0.01, max: 50 }),
  flatWidthMm: measured('mm', { min: 0.01, max: 50 }),
  axisToFlatMm: measured('mm', { min: 0.01, max: 50 }),
  crankTorqueNm: { ...measured('Nm', { min: 0, max: 1000 }), optional: true },
  sameWayRound: { type: 'flag', optional: true },
  slackMm: { ...measured('mm', { min: 0, max: 5 }), optional: true },
  acrossStiffnessNPerMm: { ...measured('N/mm', { min: 1000, max: 10_000_000 }), optional: true },
};
