import type { Measurand } from '@spindlewright/quantity';
import { CHECK_OUTCOMES, MEASUREMENTS } from './ids.ts';
import { READINGS, SCALE } from './model.generated.ts';
import { checkOf, type FamilyCode, letterOf } from './model-data.ts';
import type { CheckId, JointId, MeasurementId } from './types.ts';

/** How a reading is turned into likelihoods of outcomes. */
export interface ReadingRule {
  measurement: MeasurementId;
  check: CheckId;
  unit: string;
  usual: number;
  min: number;
  max: number;
  /** Where the true value lies, by outcome; empty where the reading does not apply. */
  bands: Readonly<Record<string, readonly [number, number]>>;
}

/** The rules of a joint, one a reading; without a joint only what holds everywhere. */
export const readingRules = (code?: FamilyCode, joint?: JointId): ReadingRule[] =>
  READINGS.map(([letter, unit, usual, min, max], index) => {
    const check = checkOf(letter);
    const own = code?.joints[`${letterOf(index)} ${joint}`] ?? code?.bands.split('|')[index] ?? '';
    const ends = own.split(',').map((band) => band.split(' ').map(Number));
    const bands: Record<string, readonly [number, number]> = {};
    CHECK_OUTCOMES[check].forEach((outcome, place) => {
      const [lower = 0, upper] = ends[place] ?? [];
      if (upper !== undefined) bands[outcome] = [lower, upper];
    });
    return { measurement: MEASUREMENTS[index] ?? 'endGapMm', check, unit, usual, min, max, bands };
  });

/** What a reading says about the outcomes of its check. */
export interface ReadingLikelihood {
  /** Likelihood of the reading under each outcome, per unit of the reading. */
  byOutcome: Record<string, number>;
  /** True when the reading lies outside every band of its check. */
  outside: boolean;
  /** True when no uncertainty came with the reading and the usual one was taken. */
  assumed: boolean;
}

// A normal distribution cut at three standard uncertainties keeps this share of its mass.
const KEPT = 0.9973002039367398;

/**
 * Likelihood of a reading under each outcome. Given an outcome the true value is taken to lie anywhere in its band; the
 * reading differs from it by its own uncertainty, and in a `never-say-never` share of the cases it is a slip of any size.
 */
export function readingLikelihood(rule: ReadingRule, reading: Measurand): ReadingLikelihood {
  const { inside, assumed } = distributionOf(reading, rule.usual);
  const [slip = 0] = SCALE;
  const byOutcome: Record<string, number> = {};
  let outside = true;
  for (const outcome of CHECK_OUTCOMES[rule.check]) {
    const band = rule.bands[outcome];
    const hit = band === undefined ? 0 : inside(...band) / (band[1] - band[0]);
    byOutcome[outcome] = (1 - slip) * hit + slip / (rule.max - rule.min);
    if (hit > 0) outside = false;
  }
  return { byOutcome, outside, assumed };
}

/** The value of a reading, whatever it says about its uncertainty. */
export const readingValue = (reading: Measurand): number =>
  typeof reading === 'number' ? reading : 'value' in reading ? reading.value : reading.nominal;

/** Share of the reading's distribution between two values. */
function distributionOf(
  reading: Measurand,
  usual: number,
): { inside: (from: number, to: number) => number; assumed: boolean } {
  if (typeof reading === 'object' && 'standardUncertainty' in reading && reading.standardUncertainty > 0) {
    return { inside: normal(reading.value, reading.standardUncertainty), assumed: false };
  }
  if (typeof reading === 'object' && 'lower' in reading && reading.upper > reading.lower) {
    const { lower, upper } = reading;
    return {
      inside: (from, to) => Math.max(0, Math.min(to, upper) - Math.max(from, lower)) / (upper - lower),
      assumed: false,
    };
  }
  // Nobody reads a joint exactly: a bare number stands for a reading with the uncertainty usual for its tool.
  return { inside: normal(readingValue(reading), usual), assumed: true };
}

const normal =
  (value: number, u: number) =>
  (from: number, to: number): number => {
    const cut = (z: number): number => Math.min(3, Math.max(-3, z));
    return Math.max(0, phi(cut((to - value) / u)) - phi(cut((from - value) / u))) / KEPT;
  };

// Abramowitz and Stegun 7.1.26, absolute error below 1.5e-7: far below the share reserved for slips.
function phi(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const half = (poly * Math.exp(-x * x)) / 2;
  return z < 0 ? half : 1 - half;
}
