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
import type { ArmRow } from './screen-row.ts';
import type { SeatVerdict } from './seat.ts';
import type { ReadSources, TermTriple } from './sql-arms.ts';
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
import { CLEAR_GAP_MM, USABLE_FLAT_SHARE } from './thresholds.ts';

type Corner = 0 | 1 | 2;
const CORNERS = ['lower', 'nominal', 'upper'] as const;
const opposite = (corner: Corner): Corner => (2 - corner) as Corner;

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

/**
 * Writes the verdicts of an arm over named pieces: the same steps as `createRowJudge`, in the same order.
 * @internal
 */
export function verdictSteps(input: {
  spindle: Joint['spindle'];
  pressing: ResolvedPressing | undefined;
  row: Record<keyof ArmRow, TermTriple>;
  names: Names;
  state: ReadSources['state'];
}): { verdict: string; worstLower: string; worstUpper: string } {
  const { spindle, pressing, row, names, state } = input;
  const tan = Math.tan((spindle.faceAngleDeg.nominal * Math.PI) / 180);
  const of = (limits: Joint['spindle'][keyof Joint['spindle']], corner: Corner): number => limits[CORNERS[corner]];
  const named = (name: string, corner: Corner, term: Term): Term => names.define(`${name}_${CORNERS[corner]}`, term);
  const triple = (name: string, make: (corner: Corner) => Term): TermTriple => [
    named(name, 0, make(0)),
    named(name, 1, make(1)),
    named(name, 2, make(2)),
  ];

  const mouth = triple('mouth', (corner) =>
    over(over(minus(row.acrossFlatsAtMouthMm[corner], of(spindle.acrossFlatsAtEndMm, opposite(corner))), 2), tan),
  );
  const endGap = triple('end_gap', (corner) =>
    minus(minus(row.boltSeatFromMouthMm[corner], row.seatIntrusionMm[opposite(corner)]), mouth[opposite(corner)]),
  );
  const shoulderGap = triple('shoulder_gap', (corner) => {
    const runOut = plus(of(spindle.flatLengthMm, corner), row.mouthChamferMm[corner]);
    const wall = of(spindle.shoulderFromEndMm, corner);
    return minus(Number.isFinite(wall) ? least(wall, runOut) : runOut, mouth[opposite(corner)]);
  });
  const nearest = triple('nearest', (corner) => least(endGap[corner], shoulderGap[corner]));
  const middle = triple('middle', (corner) =>
    plus(
      of(spindle.acrossFlatsAtEndMm, corner),
      times(
        plus(
          greatest(of(spindle.endChamferMm, corner), minus(mouth[corner], row.boreLengthMm[opposite(corner)])),
          least(minus(mouth[corner], row.mouthChamferMm[opposite(corner)]), of(spindle.flatLengthMm, corner)),
        ),
        tan,
      ),
    ),
  );

  const width = (turned: number, largest: Term, smallest: Term): Term =>
    greatest(0, least(squareRoot(greatest(0, minus(turned ** 2, square(largest)))), smallest));

  const sides = ([0, 1, 2] as const).map((corner): Side => {
    const other = opposite(corner);
    const name = (piece: string, term: Term): Term => named(piece, corner, term);
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
    const widthMm = name('width', width(of(spindle.cornerDiameterMm, other), middle[corner], middle[other]));
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
      greatest(0, minus(plus(of(spindle.endChamferMm, other), row.boreLengthMm[other]), mouth[corner])),
    );
    const room = minus(plus(of(spindle.flatLengthMm, other), row.mouthChamferMm[other]), mouth[corner]);
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
      const widest = width(of(spindle.cornerDiameterMm, corner), middle[other], middle[corner]);
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
  const travelPasses = (corner: Corner, label: string, place: Term, compare: typeof more): Condition => {
    const at = names.define(label, place);
    const own = passes(sides[1], `${label}_middle`, at, compare);
    if (corner === 1) return names.decide(`${label}_passed`, own);
    const bound = passes(sides[corner], `${label}_bound`, at, compare);
    return names.decide(`${label}_passed`, corner === 0 ? all(own, bound) : any(own, bound));
  };

  const verdictAt = (corner: Corner): { text: string; seats: string } => {
    const other = opposite(corner);
    const label = CORNERS[corner];
    const end = endGap[other];
    const wall = shoulderGap[other];
    const starts = more(minus(minus(mouth[corner], row.mouthChamferMm[other]), of(spindle.endChamferMm, other)), 0);
    const stops = travelPasses(corner, `stopped_${label}`, nearest[other], atLeast);
    const usable = least(
      minus(of(spindle.flatLengthMm, other), of(spindle.endChamferMm, corner)),
      minus(row.boreLengthMm[other], row.mouthChamferMm[corner]),
    );
    const wanted = names.define(`wanted_${label}`, times(USABLE_FLAT_SHARE, usable));
    const reaches = minus(
      plus(plus(wanted, row.mouthChamferMm[other]), of(spindle.endChamferMm, other)),
      mouth[corner],
    );
    const leaves = minus(minus(plus(of(spindle.flatLengthMm, corner), row.boreLengthMm[corner]), mouth[other]), wanted);
    const little = any(
      less(minus(row.boreLengthMm[corner], row.mouthChamferMm[other]), wanted),
      less(minus(of(spindle.flatLengthMm, corner), of(spindle.endChamferMm, other)), wanted),
      not(travelPasses(corner, `reach_${label}`, reaches, atLeast)),
      travelPasses(other, `leave_${label}`, leaves, more),
    );
    const near = travelPasses(corner, `near_${label}`, minus(nearest[other], CLEAR_GAP_MM), more);
    const verdict = (name: SeatVerdict): string => `'${name}'`;
    const ladder = [
      `WHEN ${not(starts).text} THEN ${verdict('does-not-start')}`,
      `WHEN ${stops.text} AND ${atMost(end, wall).text} THEN ${verdict('bottoms-on-end')}`,
      `WHEN ${stops.text} THEN ${verdict('hits-shoulder')}`,
      `WHEN ${little.text} THEN ${verdict('too-little-engagement')}`,
      `WHEN ${near.text} THEN ${verdict('marginal')}`,
    ];
    return {
      text: `CASE ${unjudged(state)} ${ladder.join('\n    ')} ELSE 'seats' END`,
      seats: all(starts, not(stops), not(little), not(near)).text,
    };
  };
  const lower = verdictAt(0);
  const upper = verdictAt(2);
  const nominal = verdictAt(1);
  return {
    verdict: nominal.text.replace(
      /ELSE 'seats' END$/,
      `WHEN NOT (${lower.seats} AND ${upper.seats}) THEN 'marginal' ELSE 'seats' END`,
    ),
    worstLower: lower.text,
    worstUpper: upper.text,
  };
}

const unjudged = ({ unknown, refused }: ReadSources['state']): string =>
  `WHEN ${unknown} THEN 'cannot-tell'\n    WHEN ${refused} THEN 'refused'\n   `;

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
