import { DomainError, type FieldSpecs, type Finding, type Limits } from '@spindlewright/quantity';
import { find } from './find.ts';
import { exactly, nominal } from './interval.ts';
import { distributionMessages as messages } from './messages/distribution.ts';
import { predictSeat } from './predict-seat.ts';
import { uniformSource } from './random.ts';
import { SEAT_VERDICTS, type Seat, type SeatPrediction, type SeatVerdict } from './seat.ts';
import { checkSeatInput, knownSeat, type SeatInput } from './seat-input.ts';
import { jointOf, sampledAt, worstCase } from './seat-places.ts';
import {
  correlationMatrix,
  deviationOf,
  type InputCorrelation,
  sampler,
  triangleOf,
  varyingInputs,
} from './seat-samples.ts';
import { verdictAt } from './seat-verdict.ts';
import { mixOf, type SeatMix } from './seat-ways.ts';
import { solveSeat } from './solve-seat.ts';

/** What is sampled, how often and from which seed. */
export interface SeatDistributionInput extends SeatInput {
  /** Number of samples, 100 to 1 000 000. */
  samples: number;
  /** Whole number from 0 to 4 294 967 295 that the samples follow from. */
  seed: number;
  /** Which inputs go together; independent when absent. */
  correlation?: readonly InputCorrelation[];
  /** True to get the pressed seat of every sample back. */
  keepSamples?: boolean;
}

/** A length and the share of the distribution below it. */
export interface LengthShare {
  /** Probability to lie below, 0 to 1. */
  probability: number;
  /** Length in mm. */
  lengthMm: number;
}

/** A length as a distribution. */
export interface LengthSpread {
  /** Mean in mm. */
  meanMm: number;
  /** Standard deviation in mm, at least 0. */
  standardDeviationMm: number;
  /** Lengths in mm below which 2.5, 5, 50, 95 and 97.5 % of the samples lie. */
  quantiles: LengthShare[];
}

/** A seat as distributions; null what cannot be known from the input. */
export type SeatSpread = { [K in keyof Seat]: LengthSpread | null };

/** What one input adds to the uncertainty of the pressed seat, to first order. */
export interface SeatContribution {
  /** Path of the input, or `model` for the error of the travel. */
  path: string;
  /** Standard deviation of the pressed mouth that this input alone makes, in mm; at least 0. */
  standardDeviationMm: number;
  /** What would remain of the whole standard deviation if this input were known exactly, in mm; at least 0. */
  remainingMm: number;
}

/** A verdict and how likely it is. */
export interface VerdictShare {
  /** The verdict. */
  verdict: SeatVerdict;
  /** Share of the samples that come to it, 0 to 1. */
  probability: number;
}

/** One sample. */
export interface SampledSeat {
  /** Pressed seat, in mm; null what cannot be known from the input. */
  pressed: { [K in keyof Seat]: number | null };
  /** Its verdict. */
  verdict: SeatVerdict;
}

/** Where an arm seats as a distribution, beside the worst case. */
export interface SeatDistribution {
  /** Worst case; no sample lies outside. */
  worstCase: SeatPrediction<Limits | null>;
  /** Each verdict with the share of the samples that come to it, 0 to 1. */
  verdicts: VerdictShare[];
  /** Seat by hand. */
  handFit: SeatSpread;
  /** Seat pressed on. */
  pressed: SeatSpread;
  /** Travel in mm, with the error of its model. */
  travelMm: LengthSpread;
  /** Standard deviation of the pressed mouth (without shapes: of its gap) to first order, in mm. */
  firstOrderDeviationMm: number;
  /** What makes it, largest first: the first is the reading to improve. */
  contributions: SeatContribution[];
  /** Pressed seat and verdict of each sample, when asked for; a length is null where it is not known. */
  kept?: SampledSeat[];
  /** Number of samples. */
  samples: number;
  /** Seed that they follow from. */
  seed: number;
  /** What the probabilities mean; what the worst case has to say stands with it. */
  findings: Finding[];
}

const SEAT_KEYS = ['mouthFromEndMm', 'endGapMm', 'shoulderGapMm', 'engagedLengthMm'] as const;
const QUANTILES = [0.025, 0.05, 0.5, 0.95, 0.975];
const WHERE = 'seatDistribution';

const own: FieldSpecs = {
  samples: { type: 'number', unit: 'samples', min: 100, max: 1_000_000 },
  seed: { type: 'number', unit: '1', min: 0, max: 4294967295 },
  correlation: {
    type: 'list',
    optional: true,
    item: {
      type: 'object',
      fields: { a: { type: 'text' }, b: { type: 'text' }, r: { type: 'number', unit: '1', min: -1, max: 1 } },
    },
  },
  keepSamples: { type: 'flag', optional: true },
};

/**
 * Gives the seat of an arm as a distribution: the probability of each verdict, quantiles, and which reading to improve.
 *
 * @remarks
 * Formula: seeded Monte Carlo of {@link predictSeat}. Limits are drawn evenly over their span, readings from a normal
 * distribution cut at 3 u, the travel evenly over the error of its model. Correlated inputs share a normal distribution
 * (Gaussian copula): z = L g with L L' the matrix of r, then the quantile of each at the probability of its z; for two
 * even spreads the correlation of the values is (6/pi) asin(r/2). First order: variance = sum of c_i c_j s_i s_j r_ij, c
 * the sensitivity of the pressed mouth, s the standard deviation of the input.
 *
 * Validity: that of {@link predictSeat}; dimensions and materials not given are drawn evenly over their assumed limits.
 * An even spread over limits is an assumption: tails say no more than that. A verdict of a sample is `seats` when both its
 * gaps keep 0.5 mm. Where the two angles may be equal, first contact changes its end: there the first order fails and the
 * samples count.
 *
 * Accuracy: standard error of a probability sqrt(p (1 - p)/samples). The same seed gives the same samples on every
 * machine, to the rounding of its exp, log and cos.
 *
 * @param input - That of {@link predictSeat}, with `samples` (100 to 1 000 000), `seed` (whole), `correlation` of inputs by
 * their paths with r from -1 to 1, `keepSamples`.
 * @returns Probabilities from 0 to 1, lengths in mm; see {@link SeatDistribution}.
 * @throws {@link DomainError} as `predictSeat`, for samples, seed or r outside their domain, for paths of inputs that do
 * not vary, and for correlations that contradict each other.
 * @example
 * ```ts
 * import { seatDistribution } from '@spindlewright/taper';
 * const about = (value: number) => ({ value, standardUncertainty: 0.1 });
 * const { verdicts } = seatDistribution({
 *   trialFit: { endGapMm: about(0.5), shoulderGapMm: about(4) }, samples: 10_000, seed: 1,
 * });
 * Math.abs((verdicts[0]?.probability ?? 0) - 0.5) < 0.02; // => true
 * ```
 * @see Sources `jcgm-101` (propagation of distributions by a Monte Carlo method), `marsaglia-2003` (generator) and
 * `clark-1961` (moments of the larger of two normal variables, at equal angles).
 */
export function seatDistribution(input: SeatDistributionInput): SeatDistribution {
  checkSeatInput(WHERE, input, own);
  const { samples, seed, correlation = [], keepSamples = false, ...seatInput } = input;
  for (const [path, count] of Object.entries({ samples, seed })) {
    if (!Number.isInteger(count)) {
      throw new DomainError(WHERE, [{ path, received: String(count), allowed: 'a whole number' }]);
    }
  }
  const worstCase = predictSeat(seatInput);
  const known = knownSeat(seatInput);
  const mix = mixOf(known, seatInput.mixWays === true);
  const { sample, varying } = varyingInputs(known, seatInput);
  const matrix = correlationMatrix(WHERE, varying, correlation);
  const uniform = uniformSource(seed);
  const draw = sampler(varying, triangleOf(WHERE, matrix), uniform);

  const joint = jointOf(sample);
  const columns = { handFit: emptySeat(samples), pressed: emptySeat(samples), travelMm: new Float64Array(samples) };
  const counts = new Map<SeatVerdict, number>();
  const kept: SampledSeat[] = [];
  for (let k = 0; k < samples; k++) {
    draw();
    const seat = solveSeat(sample, sampledAt(uniform()), mix);
    const { handFit, pressed, travelMm } = seat;
    const verdict = verdictAt(seat, joint, nominal);
    counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
    columns.travelMm[k] = travelMm.nominal;
    for (const key of SEAT_KEYS) {
      columns.handFit[key][k] = handFit[key]?.nominal ?? 0;
      columns.pressed[key][k] = pressed[key]?.nominal ?? 0;
    }
    if (keepSamples) kept.push({ pressed: nominalSeat(pressed), verdict });
  }
  const standardErrorPercent = 50 / Math.sqrt(samples);
  const findings = [find(messages, 'probabilities-of-the-inputs', 'note', { samples, standardErrorPercent })];
  if (varying.length === 0) findings.push(find(messages, 'nothing-varies', 'caution'));
  return {
    worstCase,
    verdicts: SEAT_VERDICTS.map((verdict) => ({ verdict, probability: (counts.get(verdict) ?? 0) / samples })),
    handFit: seatSpread(columns.handFit, worstCase.handFit),
    pressed: seatSpread(columns.pressed, worstCase.pressed),
    travelMm: spreadOf(columns.travelMm),
    ...firstOrder(worstCase, { sample, mix, varying, matrix }),
    ...(keepSamples ? { kept } : {}),
    samples,
    seed,
    findings,
  };
}

type Columns = { [K in keyof Seat]: Float64Array };

const emptySeat = (samples: number): Columns => ({
  mouthFromEndMm: new Float64Array(samples),
  endGapMm: new Float64Array(samples),
  shoulderGapMm: new Float64Array(samples),
  engagedLengthMm: new Float64Array(samples),
});

const nominalSeat = (seat: Seat<Limits | null>): { [K in keyof Seat]: number | null } => ({
  mouthFromEndMm: seat.mouthFromEndMm?.nominal ?? null,
  endGapMm: seat.endGapMm?.nominal ?? null,
  shoulderGapMm: seat.shoulderGapMm?.nominal ?? null,
  engagedLengthMm: seat.engagedLengthMm?.nominal ?? null,
});

const seatSpread = (columns: Columns, known: Seat<Limits | null>): SeatSpread => ({
  mouthFromEndMm: known.mouthFromEndMm && spreadOf(columns.mouthFromEndMm),
  endGapMm: known.endGapMm && spreadOf(columns.endGapMm),
  shoulderGapMm: known.shoulderGapMm && spreadOf(columns.shoulderGapMm),
  engagedLengthMm: known.engagedLengthMm && spreadOf(columns.engagedLengthMm),
});

function spreadOf(values: Float64Array): LengthSpread {
  values.sort();
  let sum = 0;
  for (let k = 0; k < values.length; k++) sum += values[k] ?? 0;
  const meanMm = sum / values.length;
  let squares = 0;
  for (let k = 0; k < values.length; k++) squares += ((values[k] ?? 0) - meanMm) ** 2;
  return {
    meanMm: meanMm + 0,
    standardDeviationMm: Math.sqrt(squares / (values.length - 1)),
    quantiles: QUANTILES.map((probability) => {
      const place = probability * (values.length - 1);
      const below = values[Math.floor(place)] ?? 0;
      const above = values[Math.ceil(place)] ?? below;
      return { probability, lengthMm: below + (place - Math.floor(place)) * (above - below) + 0 };
    }),
  };
}

function firstOrder(
  { sensitivity }: SeatPrediction<Limits | null>,
  {
    sample,
    mix,
    varying,
    matrix,
  }: ReturnType<typeof varyingInputs> & { mix: SeatMix | undefined; matrix: readonly (readonly number[])[] },
): Pick<SeatDistribution, 'firstOrderDeviationMm' | 'contributions'> {
  const effects = varying.map((input) => {
    const slope = sensitivity.find(({ path }) => path === input.path)?.mmPerUnit ?? 0;
    return slope * deviationOf(input);
  });
  for (const { limits, slot } of varying) Object.assign(slot, exactly(limits.nominal));
  const model = solveSeat(sample, worstCase, mix);
  const modelMm = (model.travelMm.upper - model.travelMm.lower) / Math.sqrt(12);
  // A witness mark tells the pressed place itself; what the shapes add to it has travelled.
  const marked = sample.trialFit === undefined && sample.witnessMark !== undefined;
  const pressedModelMm = marked ? modelMm * (mix?.mouth.shares[1] ?? 0) : modelMm;
  const without = (left: number): number => {
    let variance = left === varying.length ? 0 : pressedModelMm ** 2;
    for (const [i, first] of effects.entries()) {
      for (const [j, second] of effects.entries()) {
        if (i !== left && j !== left) variance += first * second * (matrix[i]?.[j] ?? 0);
      }
    }
    return Math.sqrt(Math.max(0, variance));
  };
  const paths = [...varying.map(({ path }) => path), 'model'];
  return {
    firstOrderDeviationMm: without(-1),
    contributions: [...effects.map(Math.abs), pressedModelMm]
      .map((standardDeviationMm, index) => ({
        path: paths[index] ?? '',
        standardDeviationMm,
        remainingMm: without(index),
      }))
      .sort((one, other) => other.standardDeviationMm - one.standardDeviationMm),
  };
}
