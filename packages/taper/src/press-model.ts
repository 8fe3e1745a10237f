import type { Limits } from '@spindlewright/quantity';
import { falsePosition } from './false-position.ts';
import {
  COLLAPSE_RATIO,
  clamp,
  effectiveCollar,
  fitRange,
  fittedArmFactor,
  fittedSpindleFactor,
  LARGEST_RATIO,
  LEAST_CONTACT_MM,
  PLASTIC_RISE,
  PLASTIC_RISE_UPPER,
  plasticShare,
  THICKNESS_FACTOR,
  THINNEST_BOSS_RATIO,
  TRAVEL_LOWER,
  TRAVEL_UPPER,
} from './fitted-factors.ts';
import type { Corner } from './interval.ts';
import type { Joint } from './joint.ts';
import type { Material } from './shapes.ts';

/** Everything the press depends on, as plain numbers at one corner of the limits. @internal */
export interface PressState {
  axialForceN: number;
  friction: number;
  /** Face angle of the spindle, on whose flats the edge of the bore slides. */
  faceAngleRad: number;
  engagedLengthMm: number;
  /** Across flats and width of the flats in the middle of the contact zone. */
  acrossFlatsMm: number;
  flatWidthMm: number;
  /** Widest flats within the limits, which decide whether the boss collapses. */
  widestFlatMm: number;
  /** Bore beyond the outer end of the contact, and how much of it the spindle can still move into. */
  collarMm: number;
  growthMm: number;
  bossDiameterMm: number;
  boreCornerRadiusMm: number;
  /** Materials; a yield strength that is not known is infinite. */
  spindle: Required<Material>;
  arm: Required<Material>;
}

/** Compliance factors of both parts. */
interface ComplianceFactors {
  armFactor: number;
  spindleFactor: number;
}

/** Travel with equal angles. */
interface ModelTravel {
  /** False when the bore gives way without bound; the travel is then the largest for which the model has an answer. */
  bounded: boolean;
  nominalMm: number;
  upperMm: number;
}

/** How the parts give way. @internal */
export interface PressModel {
  /** Compliance factors of both parts. */
  factors(state: PressState, bossRatio: number): ComplianceFactors;
  /** Compliance over that of plane stress. */
  thickness: number;
  /** 1 when bore beyond the contact helps, else 0. */
  collars: 0 | 1;
  /** What yield makes of the elastic travel. */
  travel(press: ElasticPress, state: PressState, bossRatio: number): ModelTravel;
  /** What the lower and the upper bound take of the travel: the error of the model. */
  lower: number;
  upper: number;
}

/** Where a joint stands and at which corner of its limits. @internal */
export interface PressPlace {
  joint: Joint;
  mouthMm: Limits;
  corner: Corner;
}

/** What a difference of the face angles makes of the travel. */
interface AngleEffect {
  /** What it adds to the travel. */
  closingMm: number;
  /** Slope of the face that the end in contact rides on, over that of the spindle. */
  slope: number;
}

/** Finds what a difference of the face angles does, from the stiffness of the press without collar. @internal */
export type AngleModel = (state: PressState, place: PressPlace, stiffnessNPerMm: number) => AngleEffect;

/** What the press comes to before yield is reckoned with. */
interface ElasticPress {
  pressureMPa: number;
  stiffnessNPerMm: number;
  factors: ComplianceFactors;
  /** Share of what the boss carries fully plastic, as p/(Sy (D/s - 1)) of the first rows; 0 without a yield strength. */
  plasticityRatio: number;
  /** p/(Sy (D/s - 1)). */
  pressureRatio: number;
  /** The boss runs towards collapse. */
  collapses: boolean;
  /** Travel with equal angles and without yield. */
  elasticMm: number;
  /** What unequal angles add to the travel. */
  closingMm: number;
}

/** What the press comes to. Travel has the bounds of the model itself, not those of the input. @internal */
export interface PressOutcome extends ElasticPress {
  /** False when the bore gives way without bound. */
  bounded: boolean;
  travelMm: { lower: number; nominal: number; upper: number };
}

// What unequal angles add to the travel, over what it comes to in the rows.
const CLOSING_LOWER = 0.85;
const CLOSING_UPPER = 1.15;

/**
 * Solves the press at one corner; undefined when there is nothing to press on. Without a model of unequal angles they are
 * taken as equal.
 * @internal
 */
export function solvePress(
  state: PressState,
  place: PressPlace,
  model: PressModel,
  unequal?: AngleModel,
): PressOutcome | undefined {
  const { engagedLengthMm, acrossFlatsMm, flatWidthMm, friction, faceAngleRad, axialForceN, spindle, arm } = state;
  if (!(Math.min(engagedLengthMm, flatWidthMm) > LEAST_CONTACT_MM)) return undefined;
  const ratio = state.bossDiameterMm / acrossFlatsMm;
  const bossRatio = Math.max(ratio, THINNEST_BOSS_RATIO);
  const wedge = Math.sin(faceAngleRad) + friction * Math.cos(faceAngleRad);
  const pressureMPa = axialForceN / (4 * wedge) / (flatWidthMm * engagedLengthMm);
  const factors = model.factors(state, bossRatio);
  const stiffness = (growthMm: number, freeMm = state.collarMm): number => {
    const lengthMm = engagedLengthMm + growthMm;
    const collarMm = model.collars * effectiveCollar(Math.max(0, freeMm - growthMm), acrossFlatsMm);
    const give =
      (acrossFlatsMm / 2000) *
      ((factors.armFactor * lengthMm) / (lengthMm + collarMm) / arm.youngsModulusGPa +
        factors.spindleFactor / spindle.youngsModulusGPa);
    const force = 4 * flatWidthMm * lengthMm * wedge * Math.tan(faceAngleRad);
    return force / give / model.thickness;
  };
  // The engaged length grows with the travel while there is bore beyond the spindle end, so the force rises faster than in
  // proportion: F = k(d) d with k rising. The root of F/k(d) - d is bracketed by the stiffest and the softest slope.
  const softestMm = axialForceN / stiffness(0);
  const elasticMm = falsePosition(
    (d) => axialForceN / stiffness(Math.min(d, state.growthMm)) - d,
    axialForceN / stiffness(state.growthMm),
    softestMm,
    1e-15 * softestMm,
  );
  const { closingMm, slope } = unequal?.(state, place, stiffness(0, 0)) ?? { closingMm: 0, slope: 1 };
  const strained = pressureMPa / arm.yieldStrengthMPa;
  const pressureRatio = pressureMPa / (arm.yieldStrengthMPa * (bossRatio - 1));
  // Wider flats lower the travel as a whole, yet bring collapse nearer.
  const collapseRatio = strained * plasticShare(state, bossRatio, state.widestFlatMm);
  const press: ElasticPress = {
    pressureMPa,
    stiffnessNPerMm: stiffness(0),
    factors,
    plasticityRatio: strained * plasticShare(state, bossRatio, flatWidthMm),
    pressureRatio,
    collapses: pressureRatio > COLLAPSE_RATIO || collapseRatio > LARGEST_RATIO,
    elasticMm,
    closingMm,
  };
  const { bounded, nominalMm, upperMm } = model.travel(press, state, bossRatio);
  const nominal = nominalMm / slope + closingMm;
  return {
    ...press,
    bounded: bounded && ratio >= THINNEST_BOSS_RATIO,
    travelMm: {
      // The order holds by itself but for the rounding of forces below 1e-300 N.
      lower: Math.min(model.lower * (nominalMm / slope) + CLOSING_LOWER * closingMm, nominal),
      nominal,
      upper: Math.max(model.upper * (upperMm / slope) + CLOSING_UPPER * closingMm, nominal),
    },
  };
}

/** The fit to the finite-element rows, with yield where the strength of the arm is known. @internal */
export const fittedPlastic: PressModel = {
  factors(state, bossRatio) {
    const over = state.acrossFlatsMm;
    const flatRatio = clamp(state.flatWidthMm / over, fitRange.flatRatio);
    const filletRatio = clamp(state.boreCornerRadiusMm / over, fitRange.filletRatio);
    return {
      armFactor: fittedArmFactor(flatRatio, filletRatio, bossRatio),
      spindleFactor: fittedSpindleFactor(flatRatio, bossRatio),
    };
  },
  thickness: THICKNESS_FACTOR,
  collars: 1,
  travel({ elasticMm, plasticityRatio, collapses }) {
    const fourth = Math.min(plasticityRatio, LARGEST_RATIO) ** 4;
    return {
      bounded: !collapses,
      nominalMm: elasticMm * (1 + PLASTIC_RISE * fourth),
      upperMm: elasticMm * (1 + PLASTIC_RISE_UPPER * fourth),
    };
  },
  lower: TRAVEL_LOWER,
  upper: TRAVEL_UPPER,
};

/** Finds what a press comes to; the model is in it. @internal */
export type PressSolver = (state: PressState, place: PressPlace) => PressOutcome | undefined;
