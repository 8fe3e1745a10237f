import type { ArmRow } from './arm-row.ts';
import {
  CENTRE_FILLET_RATIO,
  CENTRE_FLAT_RATIO,
  COLLAPSE_RATIO,
  fitRange,
  LARGEST_RATIO,
  LEAST_CONTACT_MM,
  PLASTIC_RISE,
  PLASTIC_RISE_UPPER,
  THICKNESS_FACTOR,
  THINNEST_BOSS_RATIO,
  TRAVEL_LOWER,
  TRAVEL_UPPER,
} from './fitted-factors.ts';
import type { Joint, ResolvedPressing } from './joint.ts';
import type { TermTriple } from './sql-arms.ts';
import { armFactorOf, held, helpOf, plasticShareOf, spindleFactorOf } from './sql-factors.ts';
import {
  all,
  any,
  atLeast,
  atMost,
  type Condition,
  choose,
  greatest,
  least,
  less,
  literal,
  minus,
  more,
  type Names,
  not,
  over,
  plus,
  square,
  squareRoot,
  type Term,
  times,
} from './sql-terms.ts';

/** Place of a bound: lower, nominal or upper. @internal */
export type Corner = 0 | 1 | 2;
/** Names of the bounds. @internal */
export const CORNERS = ['lower', 'nominal', 'upper'] as const;
/** The bound at the other end. @internal */
export const opposite = (corner: Corner): Corner => (2 - corner) as Corner;

/** A size of the spindle at one bound. @internal */
export const boundOf = (limits: Joint['spindle'][keyof Joint['spindle']], corner: Corner): number =>
  limits[CORNERS[corner]];

/** What the travel at one bound depends on, as SQL. */
interface Side {
  forceN: number;
  bears: Condition;
  bounded: Condition;
  stop: Term;
  factor: Term;
  growth: Term;
  /** Axial force for each mm of travel once the engaged length has grown. */
  stiffness: (growthMm: Term) => Term;
}

/** Says whether the travel at a bound passes a place; `label` names the pieces. */
type TravelPasses = (corner: Corner, label: string, place: Term, compare: typeof more) => Condition;

/**
 * Writes the press of an arm over named pieces: the same steps as `createRowPress`, in the same order.
 * @internal
 */
export function sqlPress(input: {
  spindle: Joint['spindle'];
  pressing: ResolvedPressing | undefined;
  row: Record<keyof ArmRow, TermTriple>;
  names: Names;
  places: Record<'mouth' | 'nearest' | 'middle', TermTriple>;
}): TravelPasses {
  const { spindle, pressing, row, names } = input;
  const { mouth, nearest, middle } = input.places;
  const tan = Math.tan((spindle.faceAngleDeg.nominal * Math.PI) / 180);

  const sides = ([0, 1, 2] as const).map((corner): Side => {
    const other = opposite(corner);
    const name = (piece: string, term: Term): Term => names.define(`${piece}_${CORNERS[corner]}`, term);
    const force = pressing === undefined ? 0 : pressing.axialForceN[CORNERS[corner]];
    if (pressing === undefined || force === 0) {
      const none = literal(0);
      const never = atLeast(0, 1);
      return {
        forceN: 0,
        bears: never,
        bounded: never,
        stop: none,
        factor: literal(1),
        growth: none,
        stiffness: () => none,
      };
    }
    const stop = name('stop', greatest(0, nearest[corner]));
    const s = name('flats', greatest(LEAST_CONTACT_MM, middle[corner]));
    const widthMm = name('width', width(boundOf(spindle.cornerDiameterMm, other), middle[corner], middle[other]));
    const length = name('length', engaged(spindle, row, mouth, other));
    const bears = names.decide(
      `bears_${CORNERS[corner]}`,
      all(more(length, LEAST_CONTACT_MM), more(widthMm, LEAST_CONTACT_MM)),
    );
    // Where nothing bears the pieces below are not asked for; one micrometre keeps them finite.
    const w = name('bearing_width', choose(bears, widthMm, 1));
    const l = name('bearing_length', choose(bears, length, 1));
    const ratio = name('ratio', over(row.bossDiameterMm[other], s));
    const bossRatio = name('boss_ratio', greatest(ratio, THINNEST_BOSS_RATIO));
    const flatRatio = name('flat_ratio', held(over(w, s), fitRange.flatRatio));
    const filletRatio = name('fillet_ratio', held(over(row.boreCornerRadiusMm[other], s), fitRange.filletRatio));
    const beta = name('beta', minus(flatRatio, CENTRE_FLAT_RATIO));
    const collar = name(
      'collar',
      greatest(0, minus(plus(boundOf(spindle.endChamferMm, other), row.boreLengthMm[other]), mouth[corner])),
    );
    const room = minus(plus(boundOf(spindle.flatLengthMm, other), row.mouthChamferMm[other]), mouth[corner]);
    const growth = name('growth', greatest(0, least(collar, room)));
    const armFactor = name('arm_factor', armFactorOf(beta, minus(filletRatio, CENTRE_FILLET_RATIO), bossRatio));
    const spindleFactor = name('spindle_factor', spindleFactorOf(flatRatio, beta, bossRatio));
    const angle = Math.atan(tan);
    const friction = pressing.friction[CORNERS[other]];
    const wedge = 4 * (Math.sin(angle) + friction * Math.cos(angle)) * tan;
    const armModulus = pressing.materials.arm.youngsModulusGPa[CORNERS[other]];
    const spindleModulus = pressing.materials.spindle.youngsModulusGPa[CORNERS[other]];
    const thickEnough = atLeast(ratio, THINNEST_BOSS_RATIO);
    const strength = pressing.materials.arm.yieldStrengthMPa[CORNERS[other]];
    const scale = [TRAVEL_LOWER, 1, TRAVEL_UPPER][corner] ?? 1;
    let factor = literal(scale);
    let bounded = all(bears, thickEnough);
    if (strength !== undefined && strength !== Number.POSITIVE_INFINITY) {
      const pressure = over((force / wedge) * tan, times(w, l));
      const strained = name('strained', over(pressure, strength));
      const share = (at: Term): Term =>
        plasticShareOf({ at, s, l, collar, fillet: row.boreCornerRadiusMm[other], bossRatio });
      const widest = width(boundOf(spindle.cornerDiameterMm, corner), middle[other], middle[corner]);
      const collapse = name('collapse', times(strained, share(widest)));
      const plasticity = name('plasticity', least(times(strained, share(w)), LARGEST_RATIO));
      bounded = all(
        bounded,
        atMost(over(strained, minus(bossRatio, 1)), COLLAPSE_RATIO),
        atMost(collapse, LARGEST_RATIO),
      );
      const fourth = square(square(plasticity));
      factor = name('factor', times(scale, plus(1, times(corner === 2 ? PLASTIC_RISE_UPPER : PLASTIC_RISE, fourth))));
    }
    const stiffness = (growthMm: Term): Term => {
      const lengthMm = plus(l, growthMm);
      const free = greatest(0, minus(collar, growthMm));
      const give = times(
        over(s, 2000),
        plus(
          over(over(times(armFactor, lengthMm), plus(lengthMm, helpOf(free, s))), armModulus),
          over(spindleFactor, spindleModulus),
        ),
      );
      return over(over(times(times(wedge, w), lengthMm), give), THICKNESS_FACTOR);
    };
    return {
      forceN: force,
      bears,
      bounded: names.decide(`bounded_${CORNERS[corner]}`, bounded),
      stop,
      factor,
      growth,
      stiffness,
    };
  }) as [Side, Side, Side];

  /** Whether the travel at a bound is past a place, or at it. */
  const passes = (side: Side, label: string, place: Term, compare: typeof more): Condition => {
    if (side.forceN === 0) return compare(0, place);
    const elastic = names.define(`${label}_elastic`, over(place, side.factor));
    const grown = names.define(`${label}_grown`, least(elastic, side.growth));
    const spare = names.define(
      `${label}_spare`,
      choose(less(place, 0), 1, minus(over(side.forceN, side.stiffness(grown)), elastic)),
    );
    const stopped = compare(side.stop, place);
    return any(
      less(place, 0),
      all(side.bears, compare(spare, 0)),
      all(not(side.bounded), stopped),
      all(not(side.bears), compare(0, place)),
    );
  };
  return (corner, label, place, compare) => {
    const at = names.define(label, place);
    const own = passes(sides[1], `${label}_middle`, at, compare);
    if (corner === 1) return names.decide(`${label}_passed`, own);
    const bound = passes(sides[corner], `${label}_bound`, at, compare);
    return names.decide(`${label}_passed`, corner === 0 ? all(own, bound) : any(own, bound));
  };
}

/** Width that the turned corners leave of the square. */
const width = (turned: number, largest: Term, smallest: Term): Term =>
  greatest(0, least(squareRoot(greatest(0, minus(turned ** 2, square(largest)))), smallest));

function engaged(
  spindle: Joint['spindle'],
  row: Record<keyof ArmRow, TermTriple>,
  mouth: TermTriple,
  corner: Corner,
): Term {
  const other = opposite(corner);
  const chamfer = spindle.endChamferMm[CORNERS[other]];
  const flat = spindle.flatLengthMm[CORNERS[corner]];
  return least(
    least(
      minus(minus(mouth[corner], row.mouthChamferMm[other]), chamfer),
      minus(row.boreLengthMm[corner], row.mouthChamferMm[other]),
    ),
    least(literal(flat - chamfer), minus(plus(flat, row.boreLengthMm[corner]), mouth[other])),
  );
}
