import { identificationData } from './identification.generated.ts';
import { logJoints, type Reading, type SquareHypothesis, type SquareReadings } from './square-hypotheses.ts';

/** A careful reading that could be taken next, with the chance of naming the right square after it. @internal */
export interface NextReading {
  reading: 'across-flats' | 'flat-length';
  expectedProbability: number;
}

/** The careful reading after which the right square is most likely named, best first. @internal */
export function nextSquareReadings(hypotheses: readonly SquareHypothesis[], readings: SquareReadings): NextReading[] {
  const { nextReading } = identificationData;
  const at: Reading = { value: nextReading.acrossFlatsAtMm.value, uncertainty: nextReading.planeMm.value };
  const size = nextReading.acrossFlatsMm.value;
  const growth = (hypothesis: SquareHypothesis): number => 2 * Math.tan((hypothesis.faceAngleDeg.mean * Math.PI) / 180);
  const options: NextReading[] = [
    {
      reading: 'across-flats',
      expectedProbability: expectedBest({
        hypotheses,
        readings,
        predicted: (hypothesis) => ({
          value: hypothesis.acrossFlatsMm.mean + growth(hypothesis) * at.value,
          uncertainty: Math.hypot(hypothesis.acrossFlatsMm.deviation, size),
        }),
        add: (value) => ({
          ...readings,
          flats: [...readings.flats, { acrossFlats: { value, uncertainty: size }, at }],
        }),
      }),
    },
  ];
  // A length already read would only be read again: the doubt about the part's own length stays.
  if (readings.flatLength === undefined) {
    const uncertainty = nextReading.flatLengthMm.value;
    options.push({
      reading: 'flat-length',
      expectedProbability: expectedBest({
        hypotheses,
        readings,
        predicted: ({ flatLengthMm }) => ({
          value: flatLengthMm.mean,
          uncertainty: Math.hypot(flatLengthMm.deviation, uncertainty),
        }),
        add: (value) => ({ ...readings, flatLength: { value, uncertainty } }),
      }),
    });
  }
  return options.sort((a, b) => b.expectedProbability - a.expectedProbability);
}

// Half the smallest deviation is a step at which the trapezoid rule on normal densities is exact to many digits; five
// deviations leave out less than a millionth.
const STEPS_PER_DEVIATION = 2;
const REACH = 5;

function expectedBest(input: {
  hypotheses: readonly SquareHypothesis[];
  readings: SquareReadings;
  predicted: (hypothesis: SquareHypothesis) => Reading;
  add: (value: number) => SquareReadings;
}): number {
  const { hypotheses, readings } = input;
  const predictions = hypotheses.map(input.predicted);
  const from = Math.min(...predictions.map(({ value, uncertainty }) => value - REACH * uncertainty));
  const to = Math.max(...predictions.map(({ value, uncertainty }) => value + REACH * uncertainty));
  const step = Math.min(...predictions.map(({ uncertainty }) => uncertainty)) / STEPS_PER_DEVIATION;
  const now = logJoints(hypotheses, readings);
  const peak = Math.max(...now);
  const evidence = now.reduce((sum, log) => sum + Math.exp(log - peak), 0);
  let best = 0;
  for (let value = from; value <= to; value += step) {
    const byCandidate = new Map<string, number>();
    for (const [index, log] of logJoints(hypotheses, input.add(value)).entries()) {
      const id = hypotheses[index]?.id ?? '';
      byCandidate.set(id, (byCandidate.get(id) ?? 0) + Math.exp(log - peak));
    }
    best += Math.max(...byCandidate.values()) * step;
  }
  return Math.min(1, best / evidence);
}
