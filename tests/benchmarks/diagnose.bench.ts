// Rate of a diagnosis with its next checks: wanted fast enough for typing, some hundred a second on a small machine. The
// baseline is the sum over states alone, written out: prior times likelihood, for every state and answer.
import { type DiagnoseInput, diagnose } from '@spindlewright/diagnosis';
import { expect, it } from 'vitest';

const cases: readonly DiagnoseInput[] = [
  { joint: 'square-taper-jis', observations: {} },
  { joint: 'square-taper-jis', observations: { 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'tight' } },
  {
    joint: 'spline-8-long',
    observations: { 'creak-under-load': 'each-pedal-stroke', history: ['newly-fitted', 'ridden-loose'] },
    measurements: { shoulderGapMm: { value: 0.4, standardUncertainty: 0.1 } },
  },
  { joint: 'through-spindle-24', observations: { 'clamp-slot': 'closed', 'play-after-tightening': 'remains' } },
  { joint: 'cottered-inch', observations: { cotter: 'deformed' } },
  { joint: 'one-piece', observations: { 'play-at-arm': 'both-arms-together' } },
];

const WANTED_MS = 10;
const STATES = 240;
const ANSWERS = 20;
const prior = Float64Array.from({ length: STATES }, (_, state) => (1 + (state % 7)) / STATES);
const factors = Array.from({ length: ANSWERS }, (_, answer) =>
  Float64Array.from(prior, (_p, state) => (1 + ((state * 31 + answer * 17) % 97)) / 100),
);

/** Every answer multiplied into every state: what no exact method can do without. */
function bareSum(): number {
  const weights = Float64Array.from(prior);
  for (const factor of factors) {
    for (let state = 0; state < STATES; state++) weights[state] = (weights[state] ?? 0) * (factor[state] ?? 0);
  }
  return weights.reduce((sum, weight) => sum + weight, 0);
}

it('a diagnosis with its next checks, six joints', async ({ bench }) => {
  let kept = 0;
  await bench.compare(
    bench('baseline: twenty answers over 240 states, six times', () => {
      for (let index = 0; index < cases.length; index++) kept += bareSum();
    }),
    bench('diagnose, six joints', () => {
      for (const input of cases) kept += diagnose(input).nextChecks.length;
    }),
  );
  expect(kept).toBeGreaterThan(0);
});

it('one diagnosis with its next checks takes less than ten milliseconds, unnoticed while somebody types', ({
  task,
}) => {
  for (const input of cases) diagnose(input);
  const rounds = 40;
  const start = performance.now();
  for (let round = 0; round < rounds; round++) for (const input of cases) diagnose(input);
  const each = (performance.now() - start) / (rounds * cases.length);
  task.meta.rows = [
    {
      what: 'one diagnosis with its next checks',
      baseline: 'what is wanted at most',
      unit: 'ms',
      value: each,
      baselineValue: WANTED_MS,
    },
  ];
  expect(each).toBeLessThan(WANTED_MS);
});
