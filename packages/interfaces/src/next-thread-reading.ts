import { identificationData } from './identification.generated.ts';
import { normalDensity } from './normal.ts';
import type { ThreadHypothesis } from './thread-hypotheses.ts';
import {
  anyDiameter,
  type Component,
  diameterAfter,
  handLikelihood,
  PITCH_RANGE,
  pitchAfter,
  THREAD_DIAMETER_RANGE,
  type ThreadReadings,
  threadJoint,
} from './thread-likelihood.ts';

/** A reading that could be taken next, with the chance of naming the right thread after it. */
interface NextThreadReading {
  reading: 'diameter' | 'pitch' | 'hand';
  expectedProbability: number;
}

/** The readings that could be taken next, the one after which the right thread is likeliest named first. @internal */
export function nextThreadReadings(
  hypotheses: readonly ThreadHypothesis[],
  readings: ThreadReadings,
): NextThreadReading[] {
  const joints = hypotheses.map((hypothesis) => threadJoint(hypothesis, readings));
  const total = joints.reduce((sum, joint) => sum + joint, 0);
  // What has next to no probability cannot become the answer, and leaving it out costs no more than that.
  const alive = hypotheses.flatMap((hypothesis, index) => {
    const share = (joints[index] ?? 0) / total;
    return share > 1e-5 ? [{ hypothesis, share }] : [];
  });
  const { nextReading } = identificationData.threads;
  const options: NextThreadReading[] = [
    {
      reading: 'diameter',
      expectedProbability: expectedBest({
        ways: alive.map(({ hypothesis, share }) => ({
          id: hypothesis.id,
          share,
          after: normalized(diameterMixture(hypothesis, readings)),
        })),
        uncertainty: nextReading.diameterMm.value,
        range: THREAD_DIAMETER_RANGE,
      }),
    },
    {
      reading: 'pitch',
      expectedProbability: expectedBest({
        ways: alive.map(({ hypothesis, share }) => ({
          id: hypothesis.id,
          share,
          after: normalized(pitchMixture(hypothesis, readings)),
        })),
        uncertainty: nextReading.pitchMm.value,
        range: PITCH_RANGE,
      }),
    },
  ];
  if (readings.hand === undefined) options.push({ reading: 'hand', expectedProbability: expectedHand(alive) });
  return options.sort((a, b) => b.expectedProbability - a.expectedProbability);
}

const diameterMixture = (hypothesis: ThreadHypothesis, { diameter }: ThreadReadings): Component[] =>
  diameter === undefined ? [{ weight: 1, mean: 0, ...hypothesis.diameterMm }] : diameterAfter(hypothesis, diameter);

const pitchMixture = (hypothesis: ThreadHypothesis, { pitch }: ThreadReadings): Component[] =>
  pitch === undefined ? [{ weight: 1, ...hypothesis.pitchMm }] : pitchAfter(hypothesis, pitch);

function normalized(components: readonly Component[]): Component[] {
  const total = components.reduce((sum, { weight }) => sum + weight, 0);
  return components.map((component) => ({ ...component, weight: component.weight / total }));
}

/** Probability of the likeliest candidate, averaged over the hands that may be taken down. */
function expectedHand(alive: readonly { hypothesis: ThreadHypothesis; share: number }[]): number {
  return (['right', 'left'] as const).reduce((sum, hand) => {
    const shares = new Map<string, number>();
    for (const { hypothesis, share } of alive) {
      const { id } = hypothesis;
      shares.set(id, (shares.get(id) ?? 0) + share * handLikelihood(hypothesis, hand));
    }
    return sum + Math.max(0, ...shares.values());
  }, 0);
}

/**
 * Probability of the likeliest candidate, averaged over what a careful reading may turn out to be: a sum over a grid of
 * its standard uncertainty, which no density undercuts, kept to where some listed thread is thinkable. Elsewhere the part
 * that could have any size is the only candidate, and its remainder counts whole.
 */
function expectedBest(input: {
  ways: readonly { id: string; share: number; after: readonly Component[] }[];
  uncertainty: number;
  range: { min: number; max: number };
}): number {
  const { ways, uncertainty: step, range } = input;
  const ids = [...new Set(ways.map(({ id }) => id))];
  const parts = ways.flatMap(({ id, share, after }) =>
    after.flatMap(({ weight, mean, deviation }) =>
      share * weight > 1e-7
        ? [
            {
              index: ids.indexOf(id),
              weight: share * weight,
              mean,
              ...(deviation === undefined ? {} : { deviation: Math.hypot(deviation, step) }),
            },
          ]
        : [],
    ),
  );
  // A window is a run of grid cells around one part; cells of several windows are visited once.
  const cells = new Set<number>();
  for (const { mean, deviation } of parts) {
    if (deviation === undefined) continue;
    const reach = WINDOW_DEVIATIONS * deviation;
    const last = Math.floor(Math.min(range.max, mean + reach) / step);
    for (let cell = Math.ceil(Math.max(range.min, mean - reach) / step); cell <= last; cell++) cells.add(cell);
  }
  let best = 0;
  let anySeen = 0;
  const shares = new Float64Array(ids.length);
  for (const cell of cells) {
    const value = cell * step;
    shares.fill(0);
    for (const { index, weight, mean, deviation } of parts) {
      const density =
        deviation === undefined ? anyDiameter(value) : normalDensity((value - mean) / deviation) / deviation;
      const mass = weight * density * step;
      shares[index] = (shares[index] ?? 0) + mass;
      if (deviation === undefined) anySeen += mass;
    }
    best += Math.max(...shares);
  }
  const any = parts.reduce((sum, { weight, deviation }) => sum + (deviation === undefined ? weight : 0), 0);
  return Math.min(1, best + Math.max(0, any - anySeen));
}

const WINDOW_DEVIATIONS = 5;
