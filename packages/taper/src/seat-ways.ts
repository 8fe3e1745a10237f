import type { Limits } from '@spindlewright/quantity';
import { nominal, type Span } from './interval.ts';
import type { Joint } from './joint.ts';
import type { Seat, SeatWay } from './seat.ts';
import { boltFaceAt, engagedAt, stopFromEndAt } from './seat-geometry.ts';
import {
  type Extent,
  jointOf,
  type KnownSeat,
  mouthsByTrialFit,
  seatByMark,
  seatFromShapes,
  travelOf,
  worstCase,
} from './seat-places.ts';

/** One length by several ways of knowing it, put together. */
interface Mixture {
  /** Share of each way, in the order of the ways; 0 for one that takes no part. They add up to 1. */
  shares: readonly number[];
  /** What all ways that take part leave. */
  limits: Pick<Limits, 'lower' | 'upper'>;
}

/** How the ways of knowing a seat are put together, found once from their limits so that every sample is treated alike. @internal */
export interface SeatMix {
  /** The ways that take part in telling where the mouth is. */
  names: SeatWay[];
  /** The first that hardly meets the best, and both places; null when there is none. */
  strained: { best: SeatWay; bestMm: Limits; way: SeatWay; wayMm: Limits } | null;
  mouth: Mixture;
  endGap: Mixture;
  shoulderGap: Mixture;
}

// Limits nearer than a nanometre are those of an exact number, apart by rounding.
const EXACT_MM = 1e-6;

/** Width of limits; 0 for an exact number. */
const widthOf = ({ lower, upper }: Limits): number => (upper - lower < EXACT_MM ? 0 : upper - lower);

const apart = (one: Limits, other: Limits): boolean => one.lower > other.upper || one.upper < other.lower;

/** Two lengths whose limits meet, but that differ by more than the half widths of both, as independent errors, let them. */
const strained = (one: Limits, other: Limits): boolean =>
  Math.min(widthOf(one), widthOf(other)) > 0 &&
  !apart(one, other) &&
  Math.abs(one.nominal - other.nominal) > Math.hypot(widthOf(one), widthOf(other)) / 2;

/**
 * Puts ways of knowing one length together, the best of them first, with the inverse square of its width for the weight of
 * each. Where two ways hardly meet, what both leave would be narrow because one of them is wrong: it takes no part. Two
 * exact numbers cannot be mixed, and one beside a reading says only that nobody told its error: a way without width takes
 * no part, and where the best has none it stands alone.
 */
function mixtureOf(ways: readonly Limits[]): Mixture {
  const limits = { lower: Number.NEGATIVE_INFINITY, upper: Number.POSITIVE_INFINITY };
  const takesPart = ways.map((way, place) => {
    const first = ways[0] ?? way;
    const unfit = apart(way, { ...limits, nominal: 0 }) || strained(first, way);
    if (place > 0 && (unfit || widthOf(first) === 0 || widthOf(way) === 0)) return false;
    limits.lower = Math.max(limits.lower, way.lower);
    limits.upper = Math.min(limits.upper, way.upper);
    return true;
  });
  const narrowest = Math.min(...ways.filter((_, place) => takesPart[place]).map(widthOf));
  const weights = ways.map((way, place) => {
    if (!takesPart[place]) return 0;
    return narrowest === 0 ? 1 : (narrowest / widthOf(way)) ** 2;
  });
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return { shares: weights.map((weight) => weight / sum), limits };
}

/** A length by its ways: their weighted mean, kept inside what all of them leave. */
const mixed = ({ shares, limits }: Mixture, ways: readonly Limits[], span: Span): Limits =>
  span((corner) => {
    if (corner !== nominal) return corner({ ...limits, nominal: 0 });
    const mean = ways.reduce((sum, way, place) => sum + (shares[place] ?? 0) * way.nominal, 0);
    return Math.min(limits.upper, Math.max(limits.lower, mean));
  });

/** What each way says of each length, the best way first. */
interface WayLengths {
  names: SeatWay[];
  mouth: Limits[];
  endGap: Limits[];
  shoulderGap: Limits[];
}

/** Each length by each way: pressed on if a mark leads, else by hand. */
function lengthsByWay(known: KnownSeat, joint: Joint, extent: Extent): WayLengths {
  const { trialFit = {}, witnessMark, pressing } = known;
  const { span } = extent;
  const [byEnd, byShoulder] = mouthsByTrialFit(trialFit, joint, span);
  const byShapes = seatFromShapes(joint, span);
  const ways: [SeatWay, Limits | undefined][] = [
    ['end-gap', byEnd],
    ['shoulder-gap', byShoulder],
  ];
  if (known.trialFit !== undefined || witnessMark === undefined) ways.push(['shapes', byShapes.mouthFromEndMm]);
  else {
    ways.push([
      'witness-mark',
      seatByMark(witnessMark.markEndFromSpindleEndMm, joint, span).mouthFromEndMm ?? undefined,
    ]);
    // Without a press nothing tells how far a mark of a pressed arm is from the hand fit of the shapes.
    if (pressing) {
      const travelMm = travelOf(joint, pressing, byShapes, false, extent);
      ways.push(['shapes', span((corner) => corner(byShapes.mouthFromEndMm) + corner(travelMm))]);
    }
  }
  const told = ways.flatMap(([name, mouthMm]) => (mouthMm === undefined ? [] : [{ name, mouthMm }]));
  // A gap that was read is known by itself, not by way of the mouth and back.
  const gapBy = (own: SeatWay, read: Limits | undefined, faceAt: typeof boltFaceAt): Limits[] => [
    ...(read === undefined ? [] : [read]),
    ...told
      .filter(({ name }) => name !== own)
      .map(({ mouthMm }) => span((corner) => faceAt(joint, corner) - corner(mouthMm, false))),
  ];
  return {
    names: told.map(({ name }) => name),
    mouth: told.map(({ mouthMm }) => mouthMm),
    endGap: gapBy('end-gap', trialFit.endGapMm, boltFaceAt),
    shoulderGap: gapBy('shoulder-gap', trialFit.shoulderGapMm, stopFromEndAt),
  };
}

function firstStrained(names: readonly SeatWay[], mouth: readonly Limits[]): SeatMix['strained'] {
  const [best, bestMm] = [names[0], mouth[0]];
  const place = mouth.findIndex((wayMm) => bestMm !== undefined && strained(bestMm, wayMm));
  const [way, wayMm] = [names[place], mouth[place]];
  return best && bestMm && way && wayMm ? { best, bestMm, way, wayMm } : null;
}

/** How the ways of knowing a seat go together; `all` false: the best alone. @internal */
export function mixOf(known: KnownSeat, all: boolean): SeatMix | undefined {
  const joint = jointOf(known);
  // Shapes alone leave nothing to put together.
  if (joint === undefined || (known.trialFit ?? known.witnessMark) === undefined) return undefined;
  const { names, mouth, endGap, shoulderGap } = lengthsByWay(known, joint, worstCase);
  const take = (ways: readonly Limits[]): Mixture => mixtureOf(all ? ways : ways.slice(0, 1));
  const taken = take(mouth);
  return {
    names: names.filter((_, place) => (taken.shares[place] ?? 0) > 0),
    // Unasked, the shapes may be those of a published set, which no second reading mends.
    strained: all ? firstStrained(names, mouth) : null,
    mouth: taken,
    endGap: take(endGap),
    shoulderGap: take(shoulderGap),
  };
}

/** The seat by all ways that take part: pressed on if a mark leads, else by hand. @internal */
export function seatByWays(known: KnownSeat, joint: Joint, extent: Extent, mix: SeatMix): Seat {
  const ways = lengthsByWay(known, joint, extent);
  const mouthFromEndMm = mixed(mix.mouth, ways.mouth, extent.span);
  return {
    mouthFromEndMm,
    endGapMm: mixed(mix.endGap, ways.endGap, extent.span),
    shoulderGapMm: mixed(mix.shoulderGap, ways.shoulderGap, extent.span),
    engagedLengthMm: extent.span((corner) => engagedAt(joint, mouthFromEndMm, corner)),
  };
}
