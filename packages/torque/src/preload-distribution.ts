import { checkInput, type FieldSpecs, type Finding, type Limits, type Measurand } from '@spindlewright/quantity';
import { yieldOf } from './assembly-limit.ts';
import { ringOf } from './bearing.ts';
import { leverArms } from './joint.ts';
import { type PreloadRangeInput, preloadRange } from './preload-range.ts';
import { cutNormalQuantile, uniformSource } from './random.ts';
import { refuse } from './refuse.ts';
import { equivalentStress } from './strength-use.ts';
import { toolTorque } from './tool-torque.ts';

/** How thread and head friction go together. */
export interface FrictionCorrelation {
  /** First quantity. */
  a: 'threadFriction';
  /** Second quantity. */
  b: 'bearingFriction';
  /** Rank correlation from 0 (nothing in common) to 1 (the same grease and finish on both). */
  r: number;
}

/** What is sampled, how often and from which seed. */
export interface PreloadDistributionInput extends PreloadRangeInput {
  /** Number of samples, 100 to 1 000 000. */
  samples: number;
  /** Whole number from 0 to 4 294 967 295 that the samples follow from. */
  seed: number;
  /** How thread and head friction go together; independent when absent. */
  correlation?: readonly FrictionCorrelation[];
  /** Preloads in N for which the probability to stay below is wanted. */
  belowN?: readonly number[];
  /** True to get every sample back. */
  keepSamples?: boolean;
}

/** A preload and the share of the distribution below it. */
export interface PreloadShare {
  /** Probability to lie below, 0 to 1. */
  probability: number;
  /** Preload in N, at least 0. */
  preloadN: number;
}

/** Preload as a distribution. */
export interface PreloadDistribution {
  /** Worst case in N; no sample lies outside. */
  preloadN: Limits;
  /** Mean in N. */
  meanN: number;
  /** Standard deviation in N. */
  standardDeviationN: number;
  /** Preloads in N below which 2.5, 5, 50, 95 and 97.5 % of the samples lie. */
  quantiles: PreloadShare[];
  /** Share of the samples below each preload asked for. */
  below: PreloadShare[];
  /** Probability that the bolt yields, 0 to 1; absent when no strength was given. */
  yieldProbability?: number;
  /** Every preload drawn, in N, in the order drawn, when asked for. */
  keptN?: number[];
  /** Number of samples. */
  samples: number;
  /** Seed that they follow from. */
  seed: number;
  /** Ids in the register of sources. */
  sources: string[];
  /** Edition of the data. */
  dataEdition: string;
  /** What is worth saying; that of the worst case. */
  findings: Finding[];
}

const own: FieldSpecs = {
  samples: { type: 'number', unit: 'samples', min: 100, max: 1_000_000 },
  seed: { type: 'number', unit: '1', min: 0, max: 4294967295 },
  correlation: {
    type: 'list',
    optional: true,
    item: {
      type: 'object',
      fields: {
        a: { type: 'choice', values: ['threadFriction'] },
        b: { type: 'choice', values: ['bearingFriction'] },
        r: { type: 'number', unit: '1', min: 0, max: 1 },
      },
    },
  },
  belowN: { type: 'list', optional: true, item: { type: 'number', unit: 'N', min: 0, max: 1e9 } },
  keepSamples: { type: 'flag', optional: true },
};

const QUANTILES = [0.025, 0.05, 0.5, 0.95, 0.975];

/**
 * Gives the preload of a torque as a distribution, beside its worst case.
 *
 * @remarks
 * Formula: seeded Monte Carlo of `preloadFromTorque`. Limits are drawn evenly over their span, readings from a normal
 * distribution cut at 3 u; the tool's deviation evenly over its class, about the torque drawn. A rank correlation r of
 * the frictions lets both take the same quantile in a share r of the draws.
 *
 * With a `propertyClass` each draw is set against its yield strength: equivalent stress of pull and twist as in
 * `preloadRange`.
 *
 * Validity: that of `preloadRange`. The strength is a minimum, so the chance of yielding is an upper one. An even spread
 * over a friction class is an assumption, not a measurement: the tails say no more than that. Where a bolt may break,
 * decide by the worst case.
 *
 * Accuracy: the standard error of a probability is sqrt(p (1 - p)/samples), 0.5 % of 1 at p = 0.5 and 10 000 samples. The
 * same seed gives the same samples on every machine, to the rounding of its exp and sqrt.
 *
 * @param input - That of `preloadRange`, with `samples` (100 to 1 000 000), `seed` (whole), `correlation`, `belowN` in
 * N, `keepSamples`.
 * @returns Mean, deviation and quantiles in N, probabilities from 0 to 1 (that of yielding where a strength is given),
 * the worst case in N, findings.
 * @throws {@link DomainError} as `preloadRange`, and for samples, seed or correlation outside their domain.
 * @example
 * ```ts
 * import { preloadDistribution, threadFor } from '@spindlewright/torque';
 * const spread = preloadDistribution({
 *   torqueNm: 40,
 *   tool: 'click-wrench-iso-6789',
 *   thread: threadFor('M8x1'),
 *   threadFriction: { lower: 0.08, nominal: 0.12, upper: 0.16 },
 *   bearingFriction: { lower: 0.08, nominal: 0.12, upper: 0.16 },
 *   bearing: { outerDiameterMm: 20, squareHoleMm: 12.6 },
 *   samples: 20_000,
 *   seed: 1,
 * });
 * Math.round(spread.meanN / 1000); // => 24
 * (spread.quantiles[0]?.preloadN ?? 0) > spread.preloadN.lower; // => true
 * ```
 * @see JCGM 101:2008, propagation of distributions by a Monte Carlo method; Marsaglia, Xorshift RNGs, 2003, generator.
 */
export function preloadDistribution(input: PreloadDistributionInput): PreloadDistribution {
  const { samples, seed, correlation, belowN, keepSamples, ...range } = (input ?? {}) as PreloadDistributionInput;
  checkInput({ where: 'preloadDistribution', value: { samples, seed, correlation, belowN, keepSamples }, fields: own });
  for (const [path, count] of [
    ['samples', samples],
    ['seed', seed],
  ] as const) {
    if (!Number.isInteger(count)) throw refuse('preloadDistribution', path, String(count), 'a whole number');
  }
  if (correlation !== undefined && correlation.length > 1) {
    const received = `a list of ${correlation.length}`;
    throw refuse('preloadDistribution', 'correlation', received, 'one entry: there is one pair');
  }
  const worst = preloadRange(range);
  const uniform = uniformSource(seed);
  const deviation =
    range.tool === undefined ? 0 : toolTorque({ torqueNm: range.torqueNm, tool: range.tool }).deviationPercent / 100;
  const together = correlation?.[0]?.r ?? 0;
  const ring = ringOf(range.bearing);
  const { thread, bearing, method = 'exact' } = range;
  const preloads = new Float64Array(samples);
  const yieldMPa = range.propertyClass === undefined ? null : yieldOf(range.propertyClass, thread).yieldStrengthMPa;
  let yielded = 0;
  for (let k = 0; k < samples; k++) {
    const torqueNm = draw(range.torqueNm, uniform()) * (1 + deviation * (2 * uniform() - 1));
    const inThread = uniform();
    const apart = uniform();
    const underHead = uniform() < together ? inThread : apart;
    const threadFriction = draw(range.threadFriction, inThread);
    const bearingFriction = draw(range.bearingFriction, underHead);
    const arms = leverArms({ thread, bearing, method, threadFriction, bearingFriction }, ring);
    const preloadN = (torqueNm * 1000) / arms.tightenMm;
    preloads[k] = preloadN;
    if (yieldMPa !== null && equivalentStress(thread, preloadN, threadFriction) > yieldMPa) yielded++;
  }
  const keptN = keepSamples ? Array.from(preloads) : undefined;
  preloads.sort();
  const meanN = preloads.reduce((sum, preload) => sum + preload, 0) / samples;
  const squares = preloads.reduce((sum, preload) => sum + (preload - meanN) ** 2, 0);
  return {
    preloadN: worst.preloadN,
    meanN,
    standardDeviationN: Math.sqrt(squares / (samples - 1)),
    quantiles: QUANTILES.map((probability) => ({ probability, preloadN: quantileOf(preloads, probability) })),
    below: (belowN ?? []).map((preloadN) => ({
      preloadN,
      probability: preloads.filter((preload) => preload < preloadN).length / samples,
    })),
    ...(yieldMPa === null ? {} : { yieldProbability: yielded / samples }),
    ...(keptN === undefined ? {} : { keptN }),
    samples,
    seed,
    sources: worst.sources,
    dataEdition: worst.dataEdition,
    findings: worst.findings,
  };
}

/** Value of a measurand at a quantile of its distribution. */
function draw(measurand: Measurand, probability: number): number {
  if (typeof measurand === 'number') return measurand;
  if ('standardUncertainty' in measurand) {
    return measurand.value + measurand.standardUncertainty * cutNormalQuantile(probability);
  }
  return measurand.lower + probability * (measurand.upper - measurand.lower);
}

/** Quantile of sorted values, between neighbours in proportion. */
function quantileOf(sorted: Float64Array, probability: number): number {
  const place = probability * (sorted.length - 1);
  const below = sorted[Math.floor(place)] ?? 0;
  const above = sorted[Math.ceil(place)] ?? below;
  return below + (place - Math.floor(place)) * (above - below);
}
