import { seatThresholds } from './assumed.ts';
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
  plasticShare,
  THICKNESS_FACTOR,
  THINNEST_BOSS_RATIO,
} from './fitted-factors.ts';
import type { Joint, ResolvedPressing } from './joint.ts';

/** Codes of the verdicts, places in `verdictNames`. @internal */
export const CODE = { seats: 0, marginal: 1, bottoms: 2, shoulder: 3, little: 4, noStart: 5, unknown: 6 } as const;

/** Lower, nominal and upper value. */
type Triple = Float64Array;

/** The sizes of one arm, filled anew for each row. @internal */
export interface ArmRow {
  acrossFlatsAtMouthMm: Triple;
  boreLengthMm: Triple;
  boltSeatFromMouthMm: Triple;
  seatIntrusionMm: Triple;
  mouthChamferMm: Triple;
  bossDiameterMm: Triple;
  boreCornerRadiusMm: Triple;
}

/** What the travel at one bound depends on. */
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
  /** Filled for each row. */
  bears: boolean;
  bounded: boolean;
  stopMm: number;
  acrossFlatsMm: number;
  flatWidthMm: number;
  engagedLengthMm: number;
  collarMm: number;
  growthMm: number;
  armFactor: number;
  spindleFactor: number;
  factor: number;
}

/** Judges row after row without making anything anew. @internal */
export interface RowJudge {
  /** Code of the verdict at the lower, nominal or upper end of the seat's depth. */
  verdictAt(corner: 0 | 1 | 2): number;
  /** Works out what the row's press depends on; to be called once the row is filled. */
  prepare(): void;
  /** Travel at nominal values, in mm. */
  travelMm(): number;
  /** Gaps at nominal values by hand, in mm. */
  endGapMm(): number;
  shoulderGapMm(): number;
}

const triple = ({ lower, nominal, upper }: { lower: number; nominal: number; upper: number }): Triple =>
  Float64Array.of(lower, nominal, upper);
const at = (values: Triple, corner: number): number => values[corner] as number;

/**
 * Makes the judge of one spindle and press: `predictSeat` for equal and exact face angles, with the verdict from whether the
 * travel passes a place instead of from the travel, so that no root is sought. The force that a travel d takes, k(d) d,
 * rises with d, so the travel passes d just when the force given is more than that.
 * @internal
 */
export function createRowJudge(
  spindle: Joint['spindle'],
  pressing: ResolvedPressing | undefined,
  row: ArmRow,
): RowJudge {
  const tan = Math.tan((spindle.faceAngleDeg.nominal * Math.PI) / 180);
  const endFlats = triple(spindle.acrossFlatsAtEndMm);
  const flat = triple(spindle.flatLengthMm);
  const chamfer = triple(spindle.endChamferMm);
  const shoulder = triple(spindle.shoulderFromEndMm);
  const { acrossFlatsAtMouthMm, boreLengthMm: bore, mouthChamferMm: mouthChamfer } = row;
  const {
    boltSeatFromMouthMm: seat,
    seatIntrusionMm: intrusion,
    bossDiameterMm: boss,
    boreCornerRadiusMm: fillet,
  } = row;
  const mouth = new Float64Array(3);
  const sides = [0, 1, 2].map((corner) => sideOf(spindle, pressing, corner as 0 | 1 | 2, tan)) as [Side, Side, Side];

  const endGap = (corner: number): number => at(seat, corner) - at(intrusion, 2 - corner) - at(mouth, 2 - corner);
  const shoulderGap = (corner: number): number =>
    Math.min(at(shoulder, corner), at(flat, corner) + at(mouthChamfer, corner)) - at(mouth, 2 - corner);
  const engaged = (corner: number, other: number): number =>
    Math.min(
      at(mouth, corner) - at(mouthChamfer, other) - at(chamfer, other),
      at(bore, corner) - at(mouthChamfer, other),
      at(flat, corner) - at(chamfer, other),
      at(flat, corner) + at(bore, corner) - at(mouth, other),
    );
  const middle = (corner: number, other: number): number =>
    at(endFlats, corner) +
    (Math.max(at(chamfer, corner), at(mouth, corner) - at(bore, other)) +
      Math.min(at(mouth, corner) - at(mouthChamfer, other), at(flat, corner))) *
      tan;

  function prepareSide(side: Side, corner: number): void {
    const other = 2 - corner;
    side.stopMm = Math.max(0, Math.min(endGap(corner), shoulderGap(corner)));
    const own = middle(corner, other);
    const opposed = middle(other, corner);
    const s = Math.max(LEAST_CONTACT_MM, own);
    const width = widthOf(side.turnedSquare, own, opposed);
    const length = engaged(other, corner);
    side.bears = length > LEAST_CONTACT_MM && width > LEAST_CONTACT_MM;
    side.bounded = side.bears;
    if (!side.bears) return;
    const ratio = at(boss, other) / s;
    const bossRatio = Math.max(ratio, THINNEST_BOSS_RATIO);
    const filletMm = at(fillet, other);
    const flatRatio = clamp(width / s, fitRange.flatRatio);
    const collar = Math.max(0, at(chamfer, other) + at(bore, other) - at(mouth, corner));
    const room = at(flat, other) + at(mouthChamfer, other) - at(mouth, corner);
    side.acrossFlatsMm = s;
    side.flatWidthMm = width;
    side.engagedLengthMm = length;
    side.collarMm = collar;
    side.growthMm = Math.max(0, Math.min(collar, room));
    side.armFactor = fittedArmFactor(flatRatio, clamp(filletMm / s, fitRange.filletRatio), bossRatio);
    side.spindleFactor = fittedSpindleFactor(flatRatio, bossRatio);
    side.factor = side.scale;
    if (ratio < THINNEST_BOSS_RATIO) side.bounded = false;
    if (side.strengthMPa === Number.POSITIVE_INFINITY) return;
    const pressure = ((side.forceN / side.wedge) * tan) / (width * length);
    sizes.acrossFlatsMm = s;
    sizes.boreCornerRadiusMm = filletMm;
    sizes.engagedLengthMm = length;
    sizes.collarMm = collar;
    const strained = pressure / side.strengthMPa;
    const widest = widthOf(side.widestTurnedSquare, opposed, own);
    const collapse = strained * plasticShare(sizes, bossRatio, widest);
    if (strained / (bossRatio - 1) > COLLAPSE_RATIO || collapse > LARGEST_RATIO) side.bounded = false;
    const plasticity = Math.min(strained * plasticShare(sizes, bossRatio, width), LARGEST_RATIO);
    side.factor *= 1 + side.plastic * plasticity ** 4;
  }
  const sizes = { acrossFlatsMm: 0, boreCornerRadiusMm: 0, engagedLengthMm: 0, collarMm: 0 };

  const nominalSpare = (placeMm: number): number => spare(sides[1], placeMm);

  /** By how much the travel at a bound is past a place, but for a rising scale: only its sign counts. */
  function past(side: Side, placeMm: number): number {
    if (side.forceN === 0 || placeMm < 0) return -placeMm;
    const stopped = side.bounded ? Number.NEGATIVE_INFINITY : side.stopMm - placeMm;
    if (!side.bears) return Math.max(stopped, -placeMm);
    return Math.max(stopped, spare(side, placeMm / side.factor));
  }
  const travelPast = (corner: number, placeMm: number): number => {
    const own = past(sides[1], placeMm);
    if (corner === 1) return own;
    const bound = past(sides[corner as 0 | 2], placeMm);
    return corner === 0 ? Math.min(own, bound) : Math.max(own, bound);
  };

  return {
    prepare() {
      for (let corner = 0; corner < 3; corner++) {
        mouth[corner] = (at(acrossFlatsAtMouthMm, corner) - at(endFlats, 2 - corner)) / 2 / tan;
      }
      for (let corner = 0; corner < 3; corner++) prepareSide(sides[corner as 0 | 1 | 2], corner);
    },
    verdictAt(corner) {
      const other = 2 - corner;
      if (at(mouth, corner) - at(mouthChamfer, other) - at(chamfer, other) <= 0) return CODE.noStart;
      const end = endGap(other);
      const wall = shoulderGap(other);
      const nearest = Math.min(end, wall);
      if (travelPast(corner, nearest) >= 0) return end <= wall ? CODE.bottoms : CODE.shoulder;
      const usable = Math.min(at(flat, other) - at(chamfer, corner), at(bore, other) - at(mouthChamfer, corner));
      const least = seatThresholds.usableFlatShare.value * usable;
      const reaches = least + at(mouthChamfer, other) + at(chamfer, other) - at(mouth, corner);
      const leaves = at(flat, corner) + at(bore, corner) - at(mouth, other) - least;
      if (
        at(bore, corner) - at(mouthChamfer, other) < least ||
        at(flat, corner) - at(chamfer, other) < least ||
        travelPast(corner, reaches) < 0 ||
        travelPast(other, leaves) > 0
      )
        return CODE.little;
      return travelPast(corner, nearest - seatThresholds.clearGapMm.value) > 0 ? CODE.marginal : CODE.seats;
    },
    travelMm() {
      const [, side] = sides;
      if (side.forceN === 0) return 0;
      const stop = side.bounded ? 0 : side.stopMm;
      if (!side.bears) return stop;
      const high = side.forceN / stiffness(side, 0);
      const low = side.forceN / stiffness(side, side.growthMm);
      const travel = low < high ? falsePosition(nominalSpare, low, high, 1e-15 * high) : high;
      return Math.max(stop, travel * side.factor);
    },
    endGapMm: () => endGap(1),
    shoulderGapMm: () => shoulderGap(1),
  };
}

/** Width that the turned corners leave of the square, from the larger and the smaller across flats of the limits. */
const widthOf = (turnedSquare: number, largestMm: number, smallestMm: number): number =>
  Math.max(0, Math.min(Math.sqrt(Math.max(0, turnedSquare - largestMm ** 2)), smallestMm));

/** Axial force for each mm of travel once the engaged length has grown. */
function stiffness(side: Side, growthMm: number): number {
  const lengthMm = side.engagedLengthMm + growthMm;
  const collarMm = effectiveCollar(Math.max(0, side.collarMm - growthMm), side.acrossFlatsMm);
  const give =
    (side.acrossFlatsMm / 2000) *
    ((side.armFactor * lengthMm) / (lengthMm + collarMm) / side.armModulus + side.spindleFactor / side.spindleModulus);
  return (side.wedge * side.flatWidthMm * lengthMm) / give / THICKNESS_FACTOR;
}

/** Elastic travel that the force gives at the stiffness of a place, less that place: positive while the travel is past it. */
const spare = (side: Side, placeMm: number): number =>
  side.forceN / stiffness(side, Math.min(placeMm, side.growthMm)) - placeMm;

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
    strengthMPa: isPlastic ? (arm?.yieldStrengthMPa?.[other] ?? 0) : Number.POSITIVE_INFINITY,
    turnedSquare: spindle.cornerDiameterMm[other] ** 2,
    widestTurnedSquare: spindle.cornerDiameterMm[own] ** 2,
    scale: [0.95, 1, 1.05][corner] ?? 1,
    plastic: corner === 2 ? 4 : 3,
    bears: false,
    bounded: false,
    stopMm: 0,
    acrossFlatsMm: 0,
    flatWidthMm: 0,
    engagedLengthMm: 0,
    collarMm: 0,
    growthMm: 0,
    armFactor: 0,
    spindleFactor: 0,
    factor: 1,
  };
}
