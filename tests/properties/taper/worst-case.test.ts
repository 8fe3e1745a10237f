import type { Limits } from '@spindlewright/quantity';
import { predictSeat, type SeatInput, type SeatPrediction } from '@spindlewright/taper';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between, drawn, limitsIn, models, tolerancedJoints, tolerancedMaterials } from './arbitraries.ts';

const within = (part: Limits | null, whole: Limits | null): boolean =>
  part === null || whole === null
    ? part === whole
    : whole.lower - 1e-9 <= part.lower && part.upper <= whole.upper + 1e-9;

/** Names of the results of a sample that stick out of those of the worst case. */
const escapes = (sample: SeatPrediction<Limits | null>, worst: SeatPrediction<Limits | null>): string[] => [
  ...(['handFit', 'pressed'] as const).flatMap((seat) =>
    (['mouthFromEndMm', 'endGapMm', 'shoulderGapMm', 'engagedLengthMm'] as const)
      .filter((key) => !within(sample[seat][key], worst[seat][key]))
      .map((key) => `${seat}.${key}`),
  ),
  ...(['travelMm', 'pressReached'] as const).filter((key) => !within(sample[key], worst[key])),
];

const pressings = fc.record({
  axialForceN: limitsIn(0, 30000, 3000),
  friction: limitsIn(0.03, 0.35, 0.05),
  materials: tolerancedMaterials,
  compliance: models,
});
const shares = fc.array(between(0, 1), { minLength: 30, maxLength: 30 });

const check = (input: SeatInput, list: readonly number[]): void => {
  let next = 0;
  const share = (): number => {
    const value = list[next++ % list.length] ?? 0;
    // Corners are where a worst case fails first.
    return value < 0.3 ? 0 : value > 0.7 ? 1 : value;
  };
  const worst = predictSeat(input);
  const sample = predictSeat(drawn(input, share) as SeatInput);
  expect(escapes(sample, worst)).toEqual([]);
};

describe('the worst case contains every combination of readings', () => {
  it('from shapes', () => {
    fc.assert(
      fc.property(tolerancedJoints, pressings, shares, (joint, pressing, list) => check({ ...joint, pressing }, list)),
    );
  });

  it('from a trial fit', () => {
    const trialFits = fc.record({ endGapMm: limitsIn(-2, 6, 1), shoulderGapMm: limitsIn(-2, 8, 1) });
    fc.assert(
      fc.property(tolerancedJoints, trialFits, pressings, shares, (joint, trialFit, pressing, list) =>
        check({ ...joint, trialFit, pressing }, list),
      ),
    );
  });

  it('from a witness mark', () => {
    const marks = fc.record({ markEndFromSpindleEndMm: limitsIn(10, 16, 0.3) });
    fc.assert(
      fc.property(tolerancedJoints, marks, pressings, shares, (joint, witnessMark, pressing, list) =>
        check({ ...joint, witnessMark, pressing }, list),
      ),
    );
  });
});
