import { checkInput, type Finding, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds, opposite } from './interval.ts';
import { resolveJoint } from './joint.ts';
import { loadMessages as messages } from './messages/load.ts';
import {
  axialForceSpec,
  carryingSection,
  legLoad,
  loadSpec,
  opensInPlaces,
  type PedalLoad,
  type SquareOrientation,
  unloadingForceAt,
} from './pedal-load.ts';
import { type ArmShape, armSpec, type SpindleShape, spindleSpec } from './shapes.ts';

/** What a load does to one taper. */
export interface SideMargin {
  /** Torque that passes this taper at its worst moment, in Nm. */
  torqueNm: Limits;
  /** Bending moment by its own pedal, in Nm. */
  bendingNm: Limits;
  /** Times the load may grow until an edge of the flats carries nothing; null without load or contact. */
  firstEdgeUnloading: Limits | null;
  /** Times the load may grow until the arm rocks: three times that; null without load or contact. */
  rockingLimit: Limits | null;
  /** Pressure at the loaded edge, in MPa; null without contact. */
  loadedEdgePressureMPa: Limits | null;
}

/** What a pedal load does to both tapers. */
export interface LoadMargin {
  /** Left taper: torque and bending of the left leg at once. */
  left: SideMargin;
  /** Right taper: torque of the left leg or bending by the right one, whichever is worse. */
  right: SideMargin;
  /** Torque alone that unloads an edge, without any help of friction, in Nm; null without contact. */
  torsionLimitNm: Limits | null;
  /** The same with the share of the torque that friction in the flats carries, in Nm; null without contact. */
  torsionLimitWithFrictionNm: Limits | null;
  /** What it means and what it does not. */
  findings: Finding[];
}

// Share of the torque that friction in the plane of the flats carries just before lift-off, bolt force held: 0.1 at a
// friction of 0.10 and 0.2 at 0.20 in the finite-element rows; no more is taken beyond them.
const LARGEST_FRICTION_SHARE = 0.2;

// A margin against less than this is no longer a number that says anything.
const LEAST_MOMENT_NM = 1e-6;

/**
 * Compares a pedal load with what unloads an edge of the flats, on both sides.
 *
 * @remarks
 * Formula: a linear change of pressure over each flat. By torque alone T0 = (2/3) p L b^2 = 2 N b/3, by bending alone M0 =
 * p b L^2/(3 f) = N L/(3 f) across one pair of flats; f = 1 for a rigid spindle, and 1.17 (1 to 1.35) for one that bends in
 * its bore. M counts with the larger of |cos| and |sin| of the angle between load and flat, so that along the diagonal it
 * takes sqrt 2 more. Together T/T0 + M/M0 = 1: `firstEdgeUnloading` = 1/(T/T0 + M/M0);
 * `rockingLimit` = 3 times that. T = F r cos(angle), M = F (overhang + face to seat). Left: T and M of the left leg at
 * once; right: the larger of T (left leg) and M (right leg). Edge pressure = p (1 + T/T0 + M/M0). With friction: T0/(1 -
 * mu), mu at most 0.2.
 *
 * Validity: pressed and tight, elastic, length and width of the flats at hand fit, pressure even at rest, no ends and no
 * fretting. A comparison of joints and preloads; never a verdict by itself and no leave to ride.
 *
 * Accuracy: T0 with friction is 165 Nm where the contact area of the finite-element rows begins to shrink between 150
 * and 175 Nm, 107 Nm where it does so between 100 and 125; T0 without is 10 to 20 % below. The upper limits, which have
 * f = 1, are within -0.1 to +2.4 % of pressure summed patch by patch over four slanted flats (largest for bending along
 * the diagonal); the pedal force itself, which pushes the square across, takes another F/(2 N): with it they are 0.1 to
 * 5 % too large. Bending alone, that force with it, in three-dimensional contact uses up the mean pressure along the
 * edge at the mouth at 0.93 to 0.98 of the moment of a rigid spindle, the lower the finer the mesh, and runs towards
 * 0.84 to 0.87; at half of it the edge falls 1.31 times as fast as with a rigid spindle, and faster on each finer mesh,
 * so that the lower limit is judgement. Torque and bending at once were not compared with finite elements.
 *
 * @param input - `spindle`, `arm` as readings; `axialForceN` 0 to 200000 N; `friction` 0 to 1 at which it was pressed;
 * `load` in N, mm, deg; `squareOrientation`.
 * @returns Margins as factors of the load, torques in Nm, pressures in MPa, all as limits.
 * @throws {@link DomainError} for unknown keys and values outside the domain.
 * @example
 * ```ts
 * import { loadMargin } from '@spindlewright/taper';
 * const margin = loadMargin({
 *   spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
 *   arm: { acrossFlatsAtMouthMm: 13.5777, faceAngleDeg: 2, boreLengthMm: 15.5 },
 *   axialForceN: 12000,
 *   friction: 0.1,
 *   squareOrientation: 'corner-in-line',
 *   load: { pedalForceN: 700, crankLengthMm: 170, overhangMm: 65, faceToSeatMm: 15, crankAngleDeg: 0 },
 * });
 * [margin.left.firstEdgeUnloading?.nominal.toFixed(2), margin.right.firstEdgeUnloading?.nominal.toFixed(2)];
 * // => ['0.80', '1.25']
 * ```
 * @see Torque rows of source `fe-square-taper`; test geometry: source `iso-4210-8`.
 */
export function loadMargin(input: {
  spindle: SpindleShape<Measurand>;
  arm: ArmShape<Measurand>;
  axialForceN: Measurand;
  friction: Measurand;
  load: PedalLoad;
  squareOrientation: SquareOrientation;
}): LoadMargin {
  checkInput({
    where: 'loadMargin',
    value: input,
    fields: {
      spindle: { type: 'object', fields: spindleSpec('measurand') },
      arm: { type: 'object', fields: armSpec('measurand') },
      axialForceN: axialForceSpec,
      ...loadSpec,
    },
  });
  const friction = hardLimits(input.friction);
  const axialForce = hardLimits(input.axialForceN);
  const section = carryingSection(resolveJoint(input.spindle, input.arm), friction);
  const { lengthMm, flatWidthMm, wedge } = section;
  const leg = legLoad(input.load, input.squareOrientation);
  const bears = lengthMm.lower > 1e-3 && flatWidthMm.lower > 1e-3;
  const findings: Finding[] = [find(messages, 'margin-compares-only', 'caution')];
  if (!bears) findings.push(find(messages, 'no-contact', 'stop'));
  const normalForce = bounds((corner) => corner(axialForce) / corner(wedge, false));
  if (bears) findings.push(...opensInPlaces(section, leg, normalForce));
  const sideOf = (side: 'left' | 'right'): SideMargin => {
    const loaded = leg.torqueNm.lower > LEAST_MOMENT_NM || leg.bendingNm.lower > LEAST_MOMENT_NM;
    if (!loaded) findings.push(find(messages, 'load-unbounded', 'note', { side }));
    const firstEdgeUnloading =
      bears && loaded
        ? bounds((corner) => corner(normalForce) / unloadingForceAt(section, leg, opposite(corner))[side])
        : null;
    if (firstEdgeUnloading !== null && firstEdgeUnloading.lower < 1) {
      const values = { side, firstEdgeUnloading: firstEdgeUnloading.lower };
      findings.push(find(messages, 'edge-unloads', 'caution', values, { sources: ['fe-square-taper'] }));
    }
    return {
      torqueNm: leg.torqueNm,
      bendingNm: leg.bendingNm,
      firstEdgeUnloading,
      rockingLimit: firstEdgeUnloading && bounds((corner) => 3 * corner(firstEdgeUnloading)),
      loadedEdgePressureMPa: bears
        ? bounds(
            (corner) =>
              (corner(normalForce) + unloadingForceAt(section, leg, corner)[side]) /
              (corner(flatWidthMm, false) * corner(lengthMm, false)),
          )
        : null,
    };
  };
  const left = sideOf('left');
  const right = sideOf('right');
  findings.push(find(messages, 'left-before-right', 'note'));
  const torsionLimitNm = bears ? bounds((corner) => (2 * corner(normalForce) * corner(flatWidthMm)) / 3000) : null;
  return {
    left,
    right,
    torsionLimitNm,
    torsionLimitWithFrictionNm:
      torsionLimitNm &&
      bounds((corner) => corner(torsionLimitNm) / (1 - Math.min(corner(friction), LARGEST_FRICTION_SHARE))),
    findings,
  };
}
