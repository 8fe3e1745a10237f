import { identificationData } from './identification.generated.ts';
import {
  ACROSS_FLATS_RANGE,
  FLAT_LENGTH_RANGE,
  logJoints,
  type Reading,
  type SquareHypothesis,
  type SquareReadings,
} from './square-hypotheses.ts';

/** A careful reading that could be taken next, with the chance of naming the right square after it. @internal */
export interface NextReading {
  reading: 'across-flats' | 'flat-length';
  expectedProbability: number;
}

/** The careful readings that could be taken next, the one after which the right square is likeliest named first. @internal */
export function nextSquareReadings(hypotheses: readonly SquareHypothesis[], readings: SquareReadings): NextReading[] {
  const { nextReading } = identificationData;
  const at: Reading = { value: nextReading.acrossFlatsAtMm.value, uncertainty: nextReading.planeMm.value };
  const size = nextReading.acrossFlatsMm.value;
  const withFlats = (value: number): SquareReadings => ({
    ...readings,
    flats: [...readings.flats, { acrossFlats: { value, uncertainty: size }, at }],
  });
  const acrossFlats = expectedBest({ hypotheses, readings, ...ACROSS_FLATS_RANGE, step: size, add: withFlats });
  // A length already read would only be read again: the doubt about the part's own length stays.
  if (readings.flatLength !== undefined) return [{ reading: 'across-flats', expectedProbability: acrossFlats }];
  const uncertainty = nextReading.flatLengthMm.value;
  const withLength = (value: number): SquareReadings => ({ ...readings, flatLength: { value, uncertainty } });
  const flatLength = expectedBest({ hypotheses, readings, ...FLAT_LENGTH_RANGE, step: uncertainty, add: withLength });
  const options: NextReading[] = [
    { reading: 'across-flats', expectedProbability: acrossFlats },
    { reading: 'flat-length', expectedProbability: flatLength },
  ];
  return options.sort((a, b) => b.expectedProbability - a.expectedProbability);
}

/**
 * Probability of the likeliest candidate, averaged over what a further reading may turn out to be. The step is the
 * standard uncertainty of that reading: no density of it is narrower, so the midpoint rule resolves them all.
 */
function expectedBest(input: {
  hypotheses: readonly SquareHypothesis[];
  readings: SquareReadings;
  min: number;
  max: number;
  step: number;
  add: (value: number) => SquareReadings;
}): number {
  const { hypotheses, min, max, step } = input;
  const now = logJoints(hypotheses, input.readings);
  const peak = Math.max(...now);
  const evidence = now.reduce((sum, log) => sum + Math.exp(log - peak), 0);
  let best = 0;
  for (let value = min + step / 2; value < max; value += step) {
    const byCandidate = new Map<string, number>();
    for (const [index, log] of logJoints(hypotheses, input.add(value)).entries()) {
      const id = hypotheses[index]?.id ?? '';
      byCandidate.set(id, (byCandidate.get(id) ?? 0) + Math.exp(log - peak));
    }
    best += Math.max(...byCandidate.values()) * step;
  }
  return Math.min(1, best / evidence);
}
