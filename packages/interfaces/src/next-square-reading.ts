import { identificationData } from './identification.generated.ts';
import {
  ACROSS_FLATS_RANGE,
  FLAT_LENGTH_RANGE,
  logBlunder,
  logJoints,
  logLikelihood,
  logSum,
  type Reading,
  type SquareHypothesis,
  type SquareReadings,
  soundWays,
} from './square-hypotheses.ts';

/** A careful reading that could be taken next, with the chance of naming the right square after it. */
interface NextReading {
  reading: 'across-flats' | 'flat-length';
  expectedProbability: number;
}

/** What a careful reading is good for. */
interface CarefulReadings {
  /** Plane of a reading across flats. */
  at: Reading;
  /** Standard uncertainty of the size across flats, in mm. */
  acrossFlatsMm: number;
  /** Standard uncertainty of the length, in mm. */
  lengthMm: number;
}

/** The careful readings of a spindle. */
function carefulSpindleReadings(): CarefulReadings {
  const { acrossFlatsAtMm, acrossFlatsMm, planeMm, flatLengthMm } = identificationData.nextReading;
  return {
    at: { value: acrossFlatsAtMm.value, uncertainty: planeMm.value },
    acrossFlatsMm: acrossFlatsMm.value,
    lengthMm: flatLengthMm.value,
  };
}

/** The careful readings that could be taken next, the one after which the right square is likeliest named first. @internal */
export function nextSquareReadings(
  hypotheses: readonly SquareHypothesis[],
  readings: SquareReadings,
  careful: CarefulReadings = carefulSpindleReadings(),
): NextReading[] {
  const size = careful.acrossFlatsMm;
  const withFlats = (before: SquareReadings, value: number): SquareReadings => ({
    ...before,
    flats: [...before.flats, { acrossFlats: { value, uncertainty: size }, at: careful.at }],
  });
  const acrossFlats = expectedBest({ hypotheses, readings, ...ACROSS_FLATS_RANGE, step: size, add: withFlats });
  // A length already read would only be read again: the doubt about the part's own length stays.
  if (readings.flatLength !== undefined) return [{ reading: 'across-flats', expectedProbability: acrossFlats }];
  const uncertainty = careful.lengthMm;
  const withLength = (before: SquareReadings, value: number): SquareReadings => ({
    ...before,
    flatLength: { value, uncertainty },
  });
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
  add: (readings: SquareReadings, value: number) => SquareReadings;
}): number {
  const { hypotheses, readings, min, max, step, add } = input;
  const middle = (min + max) / 2;
  const half = (max - min) / 2;
  const ids = [...new Set(hypotheses.map(({ id }) => id))];
  const candidateOf = hypotheses.map(({ id }) => ids.indexOf(id));
  // The logarithm of a normal density is a parabola in one more reading: three values of it give all others. The careful
  // reading itself is taken as sound.
  const ways = soundWays(readings);
  const curves = hypotheses.flatMap((hypothesis, index) => {
    const prior = Math.log(hypothesis.prior);
    return ways.map((way) => {
      const [a = 0, b = 0, c = 0] = [min, middle, max].map((value) =>
        logLikelihood(hypothesis, add(way.readings, value)),
      );
      return {
        candidate: candidateOf[index] ?? 0,
        constant: prior + way.logWeight + b,
        slope: (c - a) / (2 * half),
        bend: (a + c - 2 * b) / (2 * half ** 2),
      };
    });
  });
  const evidence = logSum(logJoints(hypotheses, readings));
  const blunder = logBlunder(add(readings, middle));
  const ofBlunder = new Float64Array(ids.length);
  for (const [index, { prior }] of hypotheses.entries()) {
    const candidate = candidateOf[index] ?? 0;
    ofBlunder[candidate] = (ofBlunder[candidate] ?? 0) + Math.exp(Math.log(prior) + blunder - evidence);
  }
  const shares = new Float64Array(ids.length);
  let best = 0;
  for (let value = min + step / 2; value < max; value += step) {
    const x = value - middle;
    shares.set(ofBlunder);
    for (const { candidate, constant, slope, bend } of curves) {
      const log = constant + slope * x + bend * x * x - evidence;
      if (log > NEGLIGIBLE_LOG) shares[candidate] = (shares[candidate] ?? 0) + Math.exp(log);
    }
    best += Math.max(...shares) * step;
  }
  return Math.min(1, best);
}

const NEGLIGIBLE_LOG = -40;
