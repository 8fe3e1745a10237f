import { identificationData } from './identification.generated.ts';
import { normalDensity, normalShare } from './normal.ts';
import type { Reading, Spread } from './square-hypotheses.ts';
import type { ThreadHypothesis } from './thread-hypotheses.ts';

/** What was read on a thread. @internal */
export interface ThreadReadings {
  diameter?: { size: Reading; at: Reading };
  pitch?: Reading;
  hand?: 'right' | 'left';
}

/** Diameters that are accepted, in mm. @internal */
export const THREAD_DIAMETER_RANGE = { min: 4, max: 60 } as const;

/** Pitches that are accepted, in mm. @internal */
export const PITCH_RANGE = { min: 0.2, max: 6 } as const;

/** One part of a mixture of normal densities over a value in mm; without a deviation the value could be any. @internal */
export interface Component {
  weight: number;
  mean: number;
  deviation?: number;
}

/** Prior times likelihood of the readings under a hypothesis, never 0: each reading may be a slip. @internal */
export function threadJoint(hypothesis: ThreadHypothesis, readings: ThreadReadings): number {
  const { diameter, pitch, hand } = readings;
  return (
    hypothesis.prior *
    (diameter === undefined ? 1 : sumOf(diameterAfter(hypothesis, diameter))) *
    (pitch === undefined ? 1 : sumOf(pitchAfter(hypothesis, pitch))) *
    (hand === undefined ? 1 : handLikelihood(hypothesis, hand))
  );
}

const sumOf = (components: readonly Component[]): number => components.reduce((sum, { weight }) => sum + weight, 0);

/** Probability of taking down a hand. @internal */
export function handLikelihood({ hand }: ThreadHypothesis, read: 'right' | 'left'): number {
  const slip = identificationData.threads.slipProbability.hand.value;
  if (hand === undefined) return 0.5;
  return hand === read ? 1 - slip : slip;
}

/**
 * What the diameter of the part may be after a reading, as a mixture whose weights sum to the likelihood of it: the jaw
 * bore on full crests, or on the chamfer at the end, or the reading slipped by a millimetre or so, or it has nothing to do
 * with the part. @internal
 */
export function diameterAfter(
  { diameterMm: part, kind, pitchMm }: ThreadHypothesis,
  { size, at }: { size: Reading; at: Reading },
): Component[] {
  const { slipProbability, slipSpread, blunderProbability } = identificationData.threads;
  const slip = slipProbability.diameter.value;
  const blunder = blunderProbability.value;
  const anywhere = anyDiameter(size.value);
  if (part === undefined) {
    // A thread of any size whatever was read: the reading is the only hold there is.
    return [
      { weight: (1 - blunder) * anywhere, mean: size.value, deviation: size.uncertainty },
      { weight: blunder * anywhere, mean: 0 },
    ];
  }
  const { share, loss, deviation } = chamfer(pitchMm.mean, at);
  const shift = kind === 'external' ? -loss : loss;
  const sound = (1 - slip) * (1 - blunder);
  return [
    updated(part, size.value, size.uncertainty, sound * (1 - share)),
    updated(part, size.value - shift, Math.hypot(size.uncertainty, deviation), sound * share),
    updated(part, size.value, Math.hypot(size.uncertainty, slipSpread.diameterMm.value), slip * (1 - blunder)),
    { weight: blunder * anywhere, ...part },
  ];
}

/** What the pitch may be after a reading, in the same way. @internal */
export function pitchAfter({ pitchMm: part }: ThreadHypothesis, pitch: Reading): Component[] {
  const { slipProbability, slipSpread, blunderProbability } = identificationData.threads;
  const slip = slipProbability.pitch.value;
  const blunder = blunderProbability.value;
  const wide = Math.hypot(pitch.uncertainty, slipSpread.pitchMm.value);
  return [
    updated(part, pitch.value, pitch.uncertainty, (1 - slip) * (1 - blunder)),
    updated(part, pitch.value, wide, slip * (1 - blunder)),
    { weight: blunder * ANY_PITCH, ...part },
  ];
}

/** A normal distribution after a reading with normal noise, with its share times the likelihood of the reading. */
function updated(part: Spread, reading: number, noise: number, share: number): Component {
  const total = Math.hypot(part.deviation, noise);
  const residual = reading - part.mean;
  return {
    weight: (share * normalDensity(residual / total)) / total,
    mean: part.mean + (part.deviation / total) ** 2 * residual,
    deviation: (part.deviation * noise) / total,
  };
}

/** Density of a diameter about which nothing is known: every ratio alike, since small threads are closer together. @internal */
export const anyDiameter = (diameterMm: number): number =>
  1 / (diameterMm * Math.log(THREAD_DIAMETER_RANGE.max / THREAD_DIAMETER_RANGE.min));

const ANY_PITCH = 1 / (PITCH_RANGE.max - PITCH_RANGE.min);

/** Chance that a jaw in a plane bears on the chamfer of 45 degrees, and what the diameter loses or gains there. */
function chamfer(pitchMm: number, at: Reading): { share: number; loss: number; deviation: number } {
  const { lengthRatio, lengthSpreadRatio } = identificationData.threads.chamfer;
  const deviation = Math.hypot(lengthSpreadRatio.value * pitchMm, at.uncertainty);
  const z = (lengthRatio.value * pitchMm - at.value) / deviation;
  const share = normalShare(z);
  // Far from the chamfer its share is nothing, and what is lost there is of no account.
  if (share < 1e-6) return { share: 0, loss: 0, deviation: 0 };
  const hazard = normalDensity(z) / share;
  return {
    share,
    loss: 2 * deviation * (z + hazard),
    deviation: 2 * deviation * Math.sqrt(Math.max(0, 1 - hazard * (z + hazard))),
  };
}
