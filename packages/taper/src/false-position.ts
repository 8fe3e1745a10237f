/**
 * Root of a rising or falling function between two places where its sign differs; the nearer end where it does not.
 *
 * False position closes in fast; halving the value kept at a stale end, and every third place in the middle, keep it from
 * stalling.
 * @internal
 */
export function falsePosition(value: (place: number) => number, low: number, high: number, tolerance: number): number {
  let [from, to] = [low, high];
  let [atFrom, atTo] = [value(from), value(to)];
  let stale = 0;
  for (let step = 1; step < 150 && atFrom * atTo < 0; step++) {
    const place = step % 3 === 0 ? (from + to) / 2 : to - (atTo * (to - from)) / (atTo - atFrom);
    const found = value(place);
    if (Math.abs(found) <= tolerance) return place;
    if (found * atFrom > 0) {
      [from, atFrom] = [place, found];
      if (stale > 0) atTo /= 2;
      stale = 1;
    } else {
      [to, atTo] = [place, found];
      if (stale < 0) atFrom /= 2;
      stale = -1;
    }
  }
  return Math.abs(atFrom) <= Math.abs(atTo) ? from : to;
}
