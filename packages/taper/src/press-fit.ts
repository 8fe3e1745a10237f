import { checkInput, DomainError, type Finding, type Limits } from '@spindlewright/quantity';
import { type BoltTurns, countTurns, pitchSpec } from './bolt-turns.ts';
import { cornerStressFactor, firstYieldMPa } from './boss-stress.ts';
import { find } from './find.ts';
import { bounds, nominal } from './interval.ts';
import { requireYieldStrength, resolveJoint, resolvePressing } from './joint.ts';
import { pressMessages } from './messages/press.ts';
import { pressFitMessages as messages } from './messages/press-fit.ts';
import { pressFindings } from './press-findings.ts';
import { pressStateAt } from './press-state.ts';
import { handFitAt } from './seat-geometry.ts';
import {
  type ArmShape,
  armSpec,
  frictionSpec,
  type Pressing,
  pressingSpec,
  type SpindleShape,
  spindleSpec,
} from './shapes.ts';

/** What pressing an arm on comes to. */
export interface PressFit {
  /** Engaged length at hand fit, on which the pressure is reckoned, in mm; 0 or less when the parts do not meet. */
  engagedLengthMm: number;
  /** Width of the flats in the middle of the engaged length, in mm. */
  flatWidthMm: number;
  /** Across flats of the spindle there, in mm. */
  acrossFlatsMm: number;
  /** Force normal to each of the four flats, in N; at least 0. */
  normalForceN: number;
  /** Mean contact pressure, in MPa; null when there is nothing to press on. */
  contactPressureMPa: number | null;
  /** Travel of the arm from hand fit, in mm; null when it has no bound. */
  travelMm: number | null;
  /** The same with the error of the model; null when it has no bound. */
  travelRangeMm: Limits | null;
  /** How much wider across its flats the bore stays after removal, in mm; null where only `fitted-plastic` could tell. */
  permanentOpeningMm: Limits | null;
  /** Travel that the next pressing to the same force costs on top, in mm; null where only `fitted-plastic` could tell. */
  repressTravelMm: Limits | null;
  /** Slope of force over travel at first contact with full length, in N/mm; 0 when there is nothing to press on. */
  stiffnessNPerMm: number;
  /** Force that pulls the arm off, in N; negative when it has to be held on. */
  releaseForceN: number;
  /** Friction alone holds the arm while nothing moves. Never ride on it. */
  holdsAtRestWithoutBolt: boolean;
  /** Largest elastic stress at the corner fillets of the bore, in MPa; null for a boss under 1.85 across flats. */
  boreCornerStressMPa: number | null;
  /** First yield of the bore is passed; always false while the yield strength is not known. */
  plastic: boolean;
  /** Compliance factors u E/(p s/2) of arm and spindle that were used; null when there is nothing to press on. */
  complianceFactors: { armFactor: number; spindleFactor: number } | null;
  /** Turns of the bolt from snug to the full force, when stiffness and pitch of the bolt were given. */
  boltTurns?: number;
  /** Cautions, assumptions and limits of validity. */
  findings: Finding[];
}

// What of the plastic travel 3 y^4 stays after removal, fitted to the pull-off rows within 4 %; the upper limit is that of
// the plastic travel itself.
const REPRESS_FACTOR: Limits = { lower: 2.3, nominal: 2.6, upper: 4 };

/**
 * Works out what an axial force does to an arm on a square taper: normal force, pressure, travel, release and stresses.
 *
 * @remarks
 * Formula: F = 4 N (sin a + mu cos a) on the way on, 4 N (mu' cos a - sin a) on the way off, a the face angle of the
 * spindle; p = N/(b L). Travel = u/tan a with u = p (s/2) (C_arm/E_arm + C_sp/E_sp), s and b across flats and flat width
 * at the middle of the engaged length L. `ring`: C_arm of a ring of bore s, C_sp = 1 - nu. `fitted`: both C from finite
 * elements, C_sp too by b/s and D/s (a thin boss presses on the edges of the flat); C_arm is reduced by L/(L + c), c =
 * the bore beyond the spindle end counted as c/sqrt(1 + (c/0.183 s)^2); the stiffness is divided by 0.965 for the
 * thickness; L grows with the travel while there is bore left. `fitted-plastic`: its elastic travel times 1 + 3 y^4,
 * upper limit 1 + 4 y^4, y = 0.626 (p/Sy) (b/s/0.768)^1.4/(W H), with w = (D/s - 1.414 + 0.828 r/s)/1.247 for the wall
 * at the corners and W = w sqrt(1.7/(1 + 0.7 w^2)), and H = ((1 + c/L)/1.0908)^1.2; of this 2.6 y^4 (2.3 to 4) stays
 * after removal as travel of the next pressing, times 2 tan a as opening across flats. `ring-plastic`: Tresca ring,
 * plane stress, no hardening. Unequal face angles add what it takes to spread the contact from one end, on a foundation
 * of coupled springs whose wall fades over 0.183 s and shares all but 0.0525 of the compliance; fully spread, L |tan s -
 * tan a|/(2 tan s). Corner stress = Kt p, Kt for uniform pressure in two dimensions.
 *
 * Validity: `fitted` was fitted for D/s 1.7 to 4, b/s 0.54 to 0.85, fillet/s 0.038 to 0.115, and compared for 1.5 and 2
 * deg, L 10 and 14 mm, friction 0 to 0.2, collars to 1.5 mm; beyond, a finding. Elastic results end at first yield of
 * the ring, (Sy/2)(1 - s^2/D^2); x = p/(Sy (D/s - 1)) > 0.63 or y > 0.685 is `bore-fully-plastic`, and the travel of
 * `fitted-plastic` null; the elastic models and `ring-plastic`, as long as its ring carries, still give theirs, too
 * short. A boss under 1.3 s would be cut by the corners of the square: no travel. Missing dimensions are taken as in
 * `assumedDimensions` (corner diameter 16.5, boss 34, fillet 1 mm), missing materials as in `assumedMaterials`.
 *
 * Accuracy: against the three-dimensional contact rows at 12 kN `fitted` is within -1.5 to +2.8 % in travel and -2.9 to
 * +1.4 % in slope, elastic rows to 30 kN +1.7 to +2.3 %, elastic-plastic rows -1.0 to +2.2 % while x <= 0.63; their own
 * mesh error is about 1 %. With flats, length, fillet, angle and boss varied: -7.8 to +2.7 %, -3.0 to +2.7 % where held
 * back from the fit, upper limit never below 1.03 of a row; elastic +1.3 to +3.3 %. `ring` is within -10.4 to +3.2 %,
 * `ring-plastic` -6.3 to +39 % below x = 0.53. What stays after removal is within 6 % of four pull-off rows, all of a
 * boss of 34 mm, and -23 to +10 % of rows with other shapes, all of them inside the limits. With unequal angles the
 * travel is within -5.7 to +3.2 % of 48 elastic rows, 24 of them held back from the fit, and -7.6 to +9.3 % of 20 rows
 * of other bosses, lengths and collars, none of them used; of a yielding arm with unequal angles there is no row.
 * `travelRangeMm` carries these: fitted -+ 5 %, ring -5/+15 %, ring-plastic -35/+15 %, what unequal angles add -+ 15 %.
 * Kt: 4.8 % in two dimensions for D/s 1.85 to 4, to 6 % beyond; in three (boss 34, fillet 1 mm) 5.15 at mid length, 5.9
 * at the spindle end, 7.1 at a free edge, where this gives 5.3. Release by statics is 4 to 6 % above the removal rows: N
 * falls by 1.5 to 2.6 % on unloading, and part of the friction points across the flat. For a puller that is the safe
 * side, for what holds the arm on it is not.
 *
 * @param input - `spindle` and `arm` as plain numbers; `axialForceN` 0 to 200000 N; `friction` and `releaseFriction`
 * (default: `friction`) 0 to 1; `materials`; `compliance` (default `fitted-plastic` when the arm's yield strength is given,
 * else `fitted`); `boltStiffnessNPerMm` with `boltPitchMm` for the turns of the bolt.
 * @returns Forces in N, pressures in MPa, lengths in mm; see {@link PressFit}.
 * @throws {@link DomainError} for unknown keys, values outside the domain, a plastic model without the yield strength of
 * the arm, or only one of the two bolt fields.
 * @example
 * ```ts
 * import { pressFit } from '@spindlewright/taper';
 * const press = pressFit({
 *   spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
 *   arm: { acrossFlatsAtMouthMm: 13.5777, faceAngleDeg: 2, boreLengthMm: 15.5, bossDiameterMm: 34 },
 *   axialForceN: 12000,
 *   friction: 0.1,
 * });
 * [press.normalForceN.toFixed(0), press.travelMm?.toFixed(2), press.holdsAtRestWithoutBolt];
 * // => ['22249', '0.82', true]
 * ```
 * @see Sources `fe-square-taper` and, for unequal angles, `kerr-1964`.
 */
export function pressFit(
  input: {
    spindle: SpindleShape;
    arm: ArmShape;
    releaseFriction?: number;
    boltStiffnessNPerMm?: number;
    boltPitchMm?: number;
  } & Pressing,
): PressFit {
  checkInput({
    where: 'pressFit',
    value: input,
    fields: {
      spindle: { type: 'object', fields: spindleSpec('number') },
      arm: { type: 'object', fields: armSpec('number') },
      ...pressingSpec('number'),
      releaseFriction: { ...frictionSpec('number'), optional: true },
      boltStiffnessNPerMm: { type: 'number', unit: 'N/mm', min: 1e3, max: 1e7, optional: true },
      boltPitchMm: { ...pitchSpec, optional: true },
    },
  });
  requireYieldStrength('pressFit', '', input);
  const { boltStiffnessNPerMm, boltPitchMm, axialForceN, friction } = input;
  if ((boltStiffnessNPerMm === undefined) !== (boltPitchMm === undefined)) {
    const path = boltPitchMm === undefined ? 'boltPitchMm' : 'boltStiffnessNPerMm';
    throw new DomainError('pressFit', [{ path, received: 'nothing', allowed: 'both bolt fields or neither' }]);
  }
  const joint = resolveJoint(input.spindle, input.arm);
  const mouth = bounds((corner) => handFitAt(joint, corner));
  const pressing = resolvePressing(input);
  const place = { joint, mouthMm: mouth, corner: nominal };
  const state = pressStateAt(place, pressing, false);
  const outcome = pressing.solve(state, place);
  const bounded = outcome?.bounded === true;
  const cosine = Math.cos(state.faceAngleRad);
  const tangent = Math.tan(state.faceAngleRad);
  const normalForceN = axialForceN / (4 * cosine * (tangent + friction));
  const releaseFriction = input.releaseFriction ?? friction;
  const holdsAtRestWithoutBolt = releaseFriction > tangent;

  const findings = pressFindings({ ...input, pressing: input, at: '', joint, state, outcome });
  if (!holdsAtRestWithoutBolt) findings.unshift(find(messages, 'slides-off', 'stop', { releaseFriction }));
  findings.push(
    find(messages, 'never-ride-without-bolt', 'caution'),
    find(pressMessages, 'instructions-first', 'caution'),
  );

  const stressFactor = outcome ? cornerStressFactor(state) : null;
  if (outcome && stressFactor === null) {
    const bossRatio = state.bossDiameterMm / state.acrossFlatsMm;
    findings.push(find(messages, 'bore-corner-stress-unbounded', 'caution', { bossRatio }));
  }
  const repressTravelMm =
    bounded && pressing.compliance === 'fitted-plastic'
      ? bounds((corner) => corner(REPRESS_FACTOR) * outcome.plasticityRatio ** 4 * outcome.elasticMm)
      : null;
  let turns: BoltTurns | undefined;
  if (bounded && boltStiffnessNPerMm !== undefined && boltPitchMm !== undefined) {
    turns = countTurns({ travelMm: outcome.travelMm.nominal, axialForceN, boltStiffnessNPerMm, boltPitchMm });
    findings.push(...turns.findings);
  }
  return {
    engagedLengthMm: state.engagedLengthMm + 0,
    flatWidthMm: state.flatWidthMm,
    acrossFlatsMm: state.acrossFlatsMm,
    normalForceN,
    contactPressureMPa: outcome ? outcome.pressureMPa : null,
    travelMm: bounded ? outcome.travelMm.nominal : null,
    travelRangeMm: bounded ? outcome.travelMm : null,
    permanentOpeningMm: repressTravelMm && bounds((corner) => 2 * tangent * corner(repressTravelMm)),
    repressTravelMm,
    stiffnessNPerMm: outcome ? outcome.stiffnessNPerMm : 0,
    releaseForceN: 4 * normalForceN * cosine * (releaseFriction - tangent) + 0,
    holdsAtRestWithoutBolt,
    boreCornerStressMPa: outcome && stressFactor !== null ? stressFactor * outcome.pressureMPa : null,
    plastic: outcome !== undefined && outcome.pressureMPa > firstYieldMPa(state),
    complianceFactors: outcome ? outcome.factors : null,
    ...(turns ? { boltTurns: turns.boltTurns } : {}),
    findings,
  };
}
