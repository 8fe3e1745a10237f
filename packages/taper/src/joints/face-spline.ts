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
import { bounds, type Corner } from '../interval.ts';
import { jointsMessages as messages } from '../messages/joints.ts';
import { measured } from './measured.ts';

/** Radial teeth on two faces, drawn together by a bolt. */
export interface FaceSplineInput {
  /** Axial force that draws the faces together, 0 to 200000 N. */
  axialForceN: Measurand;
  /** Angle of a tooth flank against the axis, 1 to 60 deg: half the angle of the V between two teeth. */
  flankAngleDeg: Measurand;
  /** Outer diameter of the toothed ring, 0.01 to 200 mm. */
  outerDiameterMm: Measurand;
  /** Inner diameter of the toothed ring, 0 to below the outer one, mm. */
  innerDiameterMm: Measurand;
  /** Share of the ring, seen along the axis, on which flanks bear, 0.01 to 1; 0.65 when absent. */
  bearingShare?: Measurand;
  /** Torque to be carried, 0 to 2000 Nm; 0 when absent. */
  torqueNm?: Measurand;
  /** Bending moment to be carried, 0 to 2000 Nm; 0 when absent. */
  bendingNm?: Measurand;
}

/** What a face spline holds. */
export interface FaceSpline {
  /** Torque at which the teeth would climb, in Nm, without the help of friction. */
  torqueCapacityNm: Limits;
  /** Bending moment at which one side opens, in Nm, with the torque carried. */
  openingMomentNm: Limits;
  /** Axial force that the load needs, in N, without the help of friction. */
  neededForceN: Limits;
  /** Axial force that is there over what is needed; null when nothing is to be carried, or perhaps nothing. */
  reserveRatio: Limits | null;
  /** Pressure on the flanks from the axial force, in MPa. */
  contactPressureMPa: Limits;
  /** False when the load may open the teeth at its worst. */
  staysTogether: boolean;
  /** What is worth saying. */
  findings: Finding[];
}

/**
 * Works out whether the axial force keeps the teeth of a face spline together, and the torque and bending they bear.
 *
 * @remarks
 * Formula: at the mean radius r the torque presses on flanks at the angle f to the axis, which push the faces apart with
 * (T/r) tan f; climbing at T = F r/tan f. Bending of a ring with the even pressure F/A opens it
 * at F (D^2 + d^2)/(8 D). Needed force: (T/r) tan f + M 8 D/(D^2 + d^2). Pressure on the flanks, whose area seen
 * along the axis is A share: F/(A share), whatever their angle.
 *
 * Validity: teeth that all bear; dirt between them, or halves of two makers, bear on few. Friction
 * between the flanks helps at rest and is shaken out under riding loads: it is not counted. There is no travel to read: teeth
 * that fit meet all at once, and without the bolt nothing is taken to keep them; finding `teeth-have-no-travel`.
 *
 * Accuracy: exact for rigid halves; the share of the ring that bears is judgement (0.65). Bounds are exact for independent
 * readings.
 *
 * @param input - See {@link FaceSplineInput}; each a number, limits or a value with uncertainty.
 * @returns Torques in Nm, force in N, pressure in MPa as limits.
 * @throws {@link DomainError} for unknown keys, values outside their ranges or an inner diameter that is not below the outer.
 * @example
 * ```ts
 * import { faceSpline } from '@spindlewright/taper';
 * const joint = faceSpline({
 *   axialForceN: 25_000, flankAngleDeg: 30, outerDiameterMm: 24, innerDiameterMm: 14, torqueNm: 200,
 * });
 * joint.staysTogether; // => true
 * Math.round(joint.torqueCapacityNm.nominal); // => 411
 * ```
 * @see Radial teeth: `hirth-joint-wiki`; forces on inclined flanks: statics.
 */
export function faceSpline(input: FaceSplineInput): FaceSpline {
  checkInput({ where: 'faceSpline', value: input, fields });
  const F = hardLimits(input.axialForceN);
  const flank = hardLimits(input.flankAngleDeg);
  const outer = hardLimits(input.outerDiameterMm);
  const inner = hardLimits(input.innerDiameterMm);
  if (inner.upper >= outer.lower) {
    const allowed = `below the outer one, ${outer.lower} mm`;
    throw new DomainError('faceSpline', [{ path: 'innerDiameterMm', received: String(inner.upper), allowed }]);
  }
  const share = hardLimits(input.bearingShare ?? 0.65);
  const torque = hardLimits(input.torqueNm ?? 0);
  const bending = hardLimits(input.bendingNm ?? 0);
  const climb = (corner: Corner): number => Math.tan((corner(flank) * Math.PI) / 180);
  const meanRadius = (corner: Corner): number => (corner(outer) + corner(inner)) / 4;
  const lever = (corner: Corner): number => {
    // (D^2 + d^2)/(8 D) grows with d; with D it falls up to D = d and grows beyond, which is where D is.
    const [D, d] = [corner(outer), corner(inner)];
    return (D * D + d * d) / (8 * D);
  };
  const against =
    (corner: Corner): Corner =>
    (limits, grows = true) =>
      corner(limits, !grows);
  const separating = (corner: Corner): number => (1000 * corner(torque) * climb(corner)) / meanRadius(against(corner));
  const neededForceN = bounds((corner) => separating(corner) + (1000 * corner(bending)) / lever(against(corner)));
  const staysTogether = F.lower >= neededForceN.upper;
  const loaded = neededForceN.lower > LEAST_LOAD_N;
  const perhapsLoaded = !loaded && neededForceN.upper > LEAST_LOAD_N;
  return {
    torqueCapacityNm: bounds((corner) => (corner(F) * meanRadius(corner)) / climb(against(corner)) / 1000),
    openingMomentNm: bounds((corner) => (Math.max(0, corner(F) - separating(against(corner))) * lever(corner)) / 1000),
    neededForceN,
    reserveRatio: loaded ? bounds((corner) => corner(F) / corner(neededForceN, false)) : null,
    contactPressureMPa: bounds(
      (corner) => (4 * corner(F)) / (Math.PI * (corner(outer, false) ** 2 - corner(inner) ** 2) * corner(share, false)),
    ),
    staysTogether,
    findings: [
      ...(staysTogether
        ? []
        : [
            find(messages, 'face-teeth-open', 'stop', {
              neededForceN: neededForceN.upper,
              axialForceN: F.lower,
            }),
          ]),
      ...(perhapsLoaded ? [find(messages, 'reserve-unbounded', 'note')] : []),
      ...(input.bearingShare === undefined
        ? [find(messages, 'share-of-ring-assumed', 'note', {}, { path: 'bearingShare' })]
        : []),
      find(messages, 'teeth-have-no-travel', 'note'),
      find(messages, 'joint-instructions-first', 'caution'),
    ],
  };
}

// Less is no load; over it the reserve would have no end.
const LEAST_LOAD_N = 1e-3;

const fields: FieldSpecs = {
  axialForceN: measured('N', { min: 0, max: 200_000 }),
  flankAngleDeg: measured('deg', { min: 1, max: 60 }),
  outerDiameterMm: measured('mm', { min: 0.01, max: 200 }),
  innerDiameterMm: measured('mm', { min: 0, max: 200 }),
  bearingShare: { ...measured('', { min: 0.01, max: 1 }), optional: true },
  torqueNm: { ...measured('Nm', { min: 0, max: 2000 }), optional: true },
  bendingNm: { ...measured('Nm', { min: 0, max: 2000 }), optional: true },
};
