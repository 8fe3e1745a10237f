import { DomainError, type FieldSpecs, type Finding, type Limits } from '@spindlewright/quantity';
import { find } from './find.ts';
import { nominal } from './interval.ts';
import { distributionMessages as messages } from './messages/distribution.ts';
import { predictSeat } from './predict-seat.ts';
import { uniformSource } from './random.ts';
import { SEAT_VERDICTS, type Seat, type SeatPrediction, type SeatVerdict } from './seat.ts';
import { firstOrder, type SeatContribution } from './seat-contributions.ts';
import { checkSeatInput, knownSeat, type SeatInput } from './seat-input.ts';
import { jointOf, sampledAt } from './seat-places.ts';
import { correlationMatrix, type InputCorrelation, sampler, triangleOf, varyingInputs } from './seat-samples.ts';
import { emptySeat, type LengthSpread, type SeatSpread, seatSpread, spreadOf } from './seat-spread.ts';
import { verdictAt } from './seat-verdict.ts';
import { mixOf } from './seat-ways.ts';
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

const nominalSeat = (seat: Seat<Limits | null>): { [K in keyof Seat]: number | null } => ({
  mouthFromEndMm: seat.mouthFromEndMm?.nominal ?? null,
  endGapMm: seat.endGapMm?.nominal ?? null,
  shoulderGapMm: seat.shoulderGapMm?.nominal ?? null,
  engagedLengthMm: seat.engagedLengthMm?.nominal ?? null,
});
