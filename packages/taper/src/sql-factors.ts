import {
  ARM_FIT,
  COLLAR_POWER,
  LOCAL_SHARE,
  LONGEST_COLLAR_RATIO,
  OF_ROWS,
  plain,
  SPINDLE_FACTORS,
  SPINDLE_FIT,
  THINNEST_WALL,
  WIDTH_POWER,
} from './fitted-factors.ts';
import {
  atLeast,
  choose,
  greatest,
  least,
  literal,
  minus,
  over,
  plus,
  power,
  square,
  squareRoot,
  type Term,
  times,
  wholeBelow,
} from './sql-terms.ts';

/** Held within two bounds. @internal */
export const held = (value: Term, [low, high]: readonly [number, number]): Term => least(high, greatest(low, value));

/** What a collar helps, as engaged length. @internal */
export const helpOf = (collar: Term, s: Term): Term =>
  over(collar, squareRoot(plus(1, square(over(collar, times(LONGEST_COLLAR_RATIO, s))))));

/** Compliance factor of the boss. @internal */
export function armFactorOf(beta: Term, r: Term, bossRatio: Term): Term {
  const [c0, c1, c2, c3, c4, c5, c6, c7, c8] = ARM_FIT;
  const flats = plus(plus(plus(c0, times(c1, beta)), times(c2, square(beta))), times(c3, r));
  const crowd = plus(plus(plus(1, times(c5, beta)), times(c6, square(beta))), times(c7, r));
  return plus(flats, over(times(c4, crowd), minus(square(bossRatio), c8)));
}

/** Compliance factor of the solid spindle. @internal */
export function spindleFactorOf(flatRatio: Term, beta: Term, bossRatio: Term): Term {
  const place = minus(times(flatRatio, 13), 7);
  const below = held(wholeBelow(place), [0, SPINDLE_FACTORS.length - 2]);
  let from: Term = literal(SPINDLE_FACTORS[0]);
  let rise: Term = literal(SPINDLE_FACTORS[1] - SPINDLE_FACTORS[0]);
  for (let step = 1; step < SPINDLE_FACTORS.length - 1; step++) {
    const here = SPINDLE_FACTORS[step] ?? 0;
    const isPast = atLeast(below, step);
    from = choose(isPast, here, from);
    rise = choose(isPast, (SPINDLE_FACTORS[step + 1] ?? 0) - here, rise);
  }
  const [c0, c1, c2] = SPINDLE_FIT;
  const boss = minus(over(1, times(square(bossRatio), square(square(bossRatio)))), OF_ROWS);
  const crowd = plus(plus(c0, times(c1, beta)), times(c2, square(beta)));
  return plus(plus(from, times(minus(place, below), rise)), times(crowd, boss));
}

/** Plasticity ratio for a pressure as large as the yield strength. @internal */
export function plasticShareOf({
  at,
  s,
  l,
  collar,
  fillet,
  bossRatio,
}: Record<'at' | 's' | 'l' | 'collar' | 'fillet' | 'bossRatio', Term>): Term {
  const filled = over(times(2 * (Math.SQRT2 - 1), fillet), s);
  const wall = over(greatest(THINNEST_WALL, plus(minus(bossRatio, Math.SQRT2), filled)), plain.wall);
  const carries = times(wall, squareRoot(over(1 + LOCAL_SHARE, plus(1, times(LOCAL_SHARE, square(wall))))));
  const helped = power(over(plus(1, over(helpOf(collar, s), l)), plain.helped), COLLAR_POWER);
  return over(
    power(over(over(at, s), plain.flatRatio), WIDTH_POWER),
    times(times(carries, helped), plain.bossRatio - 1),
  );
}
