import { type ArmRow, at, type Triple, triple } from './arm-row.ts';
import { falsePosition } from './false-position.ts';
import {
  COLLAPSE_RATIO,
  clamp,
  fitRange,
  fittedArmFactor,
  fittedSpindleFactor,
  LARGEST_RATIO,
  LEAST_CONTACT_MM,
  LONGEST_COLLAR_RATIO,
  PLASTIC_RISE,
  PLASTIC_RISE_UPPER,
  plasticShare,
  THICKNESS_FACTOR,
  THINNEST_BOSS_RATIO,
  TRAVEL_LOWER,
  TRAVEL_UPPER,
} from './fitted-factors.ts';
import type { Joint, ResolvedPressing } from './joint.ts';

/** What the travel at one bound depends on, the same for all rows. */
interface Side {
  forceN: number;
  /** Four times the wedge and the slope of the faces: axial force over normal pressure, width and length. */
  wedge: number;
  armModulus: number;
  spindleModulus: number;
  /** Yield strength of the arm, infinite when it is not reckoned with. */
  strengthMPa: number;
  turnedSquare: number;
  widestTurnedSquare: number;
  /** Share of the travel that the error of the model leaves, and what the fourth power of the plasticity adds. */
  scale: number;
  plastic: number;
}

/** Where an arm stands by hand, filled anew for each row: gaps, engaged length and across flats in its middle, in mm. */
interface RowPlaces {
  mouth: Triple;
  endGap: Triple;
  shoulderGap: Triple;
  engaged: Triple;
  middle: Triple;
}

/** The press of row after row. */
interface RowPress {
  /** Works out what the row's press depends on; to be called once row and places are filled. */
  prepare(): void;
  /** 1 where the travel at a bound is past a place, 0 where it ends there, -1 where it falls short. */
  travelPast(corner: number, placeMm: number): number;
  /** Travel at nominal values, in mm. */
  travelMm(): number;
}

/**
 * Makes the press of one spindle and force for many arms. The force that a travel d takes, k(d) d, rises with d, so the
 * travel passes d just when the force given is more than that: no root is sought but for the travel itself.
 * @internal
 */
export function createRowPress(
  spindle: Joint['spindle'],
  pressing: ResolvedPressing | undefined,
  row: ArmRow,
  { mouth, endGap, shoulderGap, engaged, middle }: RowPlaces,
): RowPress {
  const tan = Math.tan((spindle.faceAngleDeg.nominal * Math.PI) / 180);
  const flat = triple(spindle.flatLengthMm);
  const chamfer = triple(spindle.endChamferMm);
  const { boreLengthMm: bore, mouthChamferMm: mouthChamfer, bossDiameterMm: boss, boreCornerRadiusMm: fillet } = row;
  const sides = [0, 1, 2].map((corner) => sideOf(spindle, pressing, corner as 0 | 1 | 2, tan)) as [Side, Side, Side];

  // What is filled for each row, by the bound of the travel.
  const bears = new Uint8Array(3);
  const bounded = new Uint8Array(3);
  const acrossFlats = new Float64Array(3);
  const flatWidth = new Float64Array(3);
  const engagedLength = new Float64Array(3);
  const collars = new Float64Array(3);
  const growth = new Float64Array(3);
  const armFactor = new Float64Array(3);
  const spindleFactor = new Float64Array(3);
  const factor = new Float64Array(3);
  const sizes = { acrossFlatsMm: 0, boreCornerRadiusMm: 0, engagedLengthMm: 0, collarMm: 0 };

  function prepareSide(corner: number): void {
    const side = sides[corner as 0 | 1 | 2];
    const other = 2 - corner;
    const own = at(middle, corner);
    const opposed = at(middle, other);
    const s = Math.max(LEAST_CONTACT_MM, own);
    const width = widthOf(side.turnedSquare, own, opposed);
    const length = at(engaged, other);
    const touches = length > LEAST_CONTACT_MM && width > LEAST_CONTACT_MM;
    bears[corner] = bounded[corner] = touches ? 1 : 0;
    if (!touches) return;
    const ratio = at(boss, other) / s;
    const bossRatio = Math.max(ratio, THINNEST_BOSS_RATIO);
    const filletMm = at(fillet, other);
    const flatRatio = clamp(width / s, fitRange.flatRatio);
    const collar = Math.max(0, at(chamfer, other) + at(bore, other) - at(mouth, corner));
    const room = at(flat, other) + at(mouthChamfer, other) - at(mouth, corner);
    acrossFlats[corner] = s;
    flatWidth[corner] = width;
    engagedLength[corner] = length;
    collars[corner] = collar;
    growth[corner] = Math.max(0, Math.min(collar, room));
    armFactor[corner] = fittedArmFactor(flatRatio, clamp(filletMm / s, fitRange.filletRatio), bossRatio);
    spindleFactor[corner] = fittedSpindleFactor(flatRatio, bossRatio);
    factor[corner] = side.scale;
    if (ratio < THINNEST_BOSS_RATIO) bounded[corner] = 0;
    if (side.strengthMPa === Number.POSITIVE_INFINITY) return;
    const pressure = ((side.forceN / side.wedge) * tan) / (width * length);
    sizes.acrossFlatsMm = s;
    sizes.boreCornerRadiusMm = filletMm;
    sizes.engagedLengthMm = length;
    sizes.collarMm = collar;
    const strained = pressure / side.strengthMPa;
    const widest = widthOf(side.widestTurnedSquare, opposed, own);
    const collapse = strained * plasticShare(sizes, bossRatio, widest);
    if (strained / (bossRatio - 1) > COLLAPSE_RATIO || collapse > LARGEST_RATIO) bounded[corner] = 0;
    const plasticity = Math.min(strained * plasticShare(sizes, bossRatio, width), LARGEST_RATIO);
    factor[corner] = side.scale * (1 + side.plastic * plasticity ** 4);
  }

  /** Where an arm that nothing holds back is stopped. */
  const stopAt = (corner: number): number => Math.max(0, Math.min(at(endGap, corner), at(shoulderGap, corner)));

  // Numbers go in and out by this array: as arguments and results of calls they would each be put on the heap.
  const asked = new Float64Array(2);
  /** Elastic travel that the force gives at the stiffness of the place asked for, less that place; left in `asked[1]`. */
  function spare(corner: number): void {
    const side = sides[corner as 0 | 1 | 2];
    const placeMm = at(asked, 0);
    const growthMm = Math.min(placeMm, at(growth, corner));
    const flatsMm = at(acrossFlats, corner);
    const lengthMm = at(engagedLength, corner) + growthMm;
    const freeMm = Math.max(0, at(collars, corner) - growthMm);
    const fading = freeMm / (LONGEST_COLLAR_RATIO * flatsMm);
    const helped = lengthMm / (lengthMm + freeMm / Math.sqrt(1 + fading * fading));
    const give =
      (flatsMm / 2000) *
      ((at(armFactor, corner) * helped) / side.armModulus + at(spindleFactor, corner) / side.spindleModulus);
    const stiffness = (side.wedge * at(flatWidth, corner) * lengthMm) / give / THICKNESS_FACTOR;
    asked[1] = side.forceN / stiffness - placeMm;
  }
  const nominalSpare = (placeMm: number): number => {
    asked[0] = placeMm;
    spare(1);
    return at(asked, 1);
  };

  /** 1 where the travel at a bound is past a place, 0 where it ends there, -1 where it falls short. */
  function past(corner: number, placeMm: number): number {
    if (placeMm < 0) return 1;
    let beyond = -placeMm;
    if (sides[corner as 0 | 1 | 2].forceN !== 0) {
      if (bears[corner] === 1) {
        asked[0] = placeMm / at(factor, corner);
        spare(corner);
        beyond = at(asked, 1);
      }
      if (bounded[corner] === 0) beyond = Math.max(beyond, stopAt(corner) - placeMm);
    }
    return beyond > 0 ? 1 : beyond < 0 ? -1 : 0;
  }
  function travelPast(corner: number, placeMm: number): number {
    const own = past(1, placeMm);
    if (corner === 1) return own;
    const bound = past(corner, placeMm);
    return corner === 0 ? Math.min(own, bound) : Math.max(own, bound);
  }

  return {
    prepare() {
      for (let corner = 0; corner < 3; corner++) prepareSide(corner);
    },
    travelPast,
    travelMm() {
      const { forceN } = sides[1];
      if (forceN === 0) return 0;
      const stop = bounded[1] === 0 ? stopAt(1) : 0;
      if (bears[1] === 0) return stop;
      const high = nominalSpare(0);
      const grown = at(growth, 1);
      const travel = falsePosition(nominalSpare, nominalSpare(grown) + grown, high, 1e-15 * high);
      return Math.max(stop, travel * at(factor, 1));
    },
  };
}

/** Width that the turned corners leave of the square, from the larger and the smaller across flats of the limits. */
const widthOf = (turnedSquare: number, largestMm: number, smallestMm: number): number =>
  Math.max(0, Math.min(Math.sqrt(Math.max(0, turnedSquare - largestMm ** 2)), smallestMm));

function sideOf(
  spindle: Joint['spindle'],
  pressing: ResolvedPressing | undefined,
  corner: 0 | 1 | 2,
  tan: number,
): Side {
  const bounds = ['lower', 'nominal', 'upper'] as const;
  const own = bounds[corner];
  const other = bounds[(2 - corner) as 0 | 1 | 2];
  const angle = Math.atan(tan);
  const friction = pressing?.friction[other] ?? 0;
  const arm = pressing?.materials.arm;
  const isPlastic = pressing?.compliance === 'fitted-plastic';
  return {
    forceN: pressing?.axialForceN[own] ?? 0,
    wedge: 4 * (Math.sin(angle) + friction * Math.cos(angle)) * tan,
    armModulus: arm?.youngsModulusGPa[other] ?? 1,
    spindleModulus: pressing?.materials.spindle.youngsModulusGPa[other] ?? 1,
    strengthMPa: isPlastic ? (arm?.yieldStrengthMPa[other] ?? 0) : Number.POSITIVE_INFINITY,
    turnedSquare: spindle.cornerDiameterMm[other] ** 2,
    widestTurnedSquare: spindle.cornerDiameterMm[own] ** 2,
    scale: [TRAVEL_LOWER, 1, TRAVEL_UPPER][corner] ?? 1,
    plastic: corner === 2 ? PLASTIC_RISE_UPPER : PLASTIC_RISE,
  };
}
