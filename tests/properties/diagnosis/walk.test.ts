// A person who knows next to nothing follows the first proposed check each time and must arrive at the right action.
import { type ActionId, type CheckId, diagnose, type Observations } from '@spindlewright/diagnosis';
import { describe, expect, it } from 'vitest';
import { seededRandom, seedOfRun } from '../../seed.ts';
import { FAMILY_JOINTS, outcomesByCheck } from './generators.ts';
import { createSampler } from './simulate.ts';

/** What the joint would show, check by check; what is not listed cannot be told. */
type Truth = Partial<Record<CheckId, string>>;

function walk(start: Observations, truth: Truth): { steps: CheckId[]; actions: ActionId[]; doNotRide: boolean[] } {
  let observations = start;
  const steps: CheckId[] = [];
  const actions: ActionId[] = [];
  const doNotRide: boolean[] = [];
  for (;;) {
    const result = diagnose({ joint: 'square-taper-jis', observations });
    actions.push(result.action);
    doNotRide.push(result.doNotRide);
    const [next] = result.nextChecks;
    if (next === undefined || steps.length > 20) return { steps, actions, doNotRide };
    steps.push(next.check);
    observations = { ...observations, [next.check]: truth[next.check] ?? 'unknown' } as Observations;
  }
}

const wornOut: Truth = {
  'play-at-arm': 'arm-moves-on-spindle',
  'bolt-on-arrival': 'tight',
  'tightening-feel': 'rises-steadily',
  'play-after-tightening': 'remains',
  'end-gap': 'clear',
  'shoulder-gap': 'clear',
  'arm-release': 'comes-off-by-hand',
  'bore-flats': 'rounded',
  'witness-mark': 'whole-flat',
  'spindle-flats': 'sound',
  'spindle-runout': 'true',
  'fretting-debris': 'dark-powder-or-rust',
  'creak-under-load': 'each-pedal-stroke',
  'bolt-fit': 'right',
  'arm-alignment': 'in-line',
  'arm-straightness': 'straight',
  'bearing-turning': 'smooth',
  'other-sources': 'ruled-out',
};
const inOrder: Truth = {
  ...wornOut,
  'play-at-arm': 'none',
  'play-after-tightening': 'gone',
  'arm-release': 'needs-puller',
  'bore-flats': 'straight',
  'witness-mark': 'stops-short',
  'fretting-debris': 'none',
  'creak-under-load': 'none',
  history: 'long-service',
};

describe('walks', () => {
  it('"the arm moves and the bolt is tight" leads to a new arm, through the hole itself, in few steps', () => {
    const start: Observations = { 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'tight' };
    // The owner knows nothing of the past, which is the longer way.
    const { steps, actions, doNotRide } = walk(start, wornOut);
    expect(actions.at(-1)).toBe('replace-arm');
    expect(doNotRide.every((value) => value)).toBe(true);
    expect(steps).toContain('bore-flats');
    expect(actions.indexOf('replace-arm')).toBeLessThanOrEqual(6);
    expect(steps.length).toBeLessThanOrEqual(8);
    // What is seen without opening the joint comes before what opens it.
    expect(steps.indexOf('shoulder-gap')).toBeLessThan(steps.indexOf('bore-flats'));
  });

  it('the same with an owner who tells that it was ridden loose is shorter', () => {
    const start: Observations = { 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'tight' };
    const { steps, actions } = walk(start, { ...wornOut, history: 'ridden-loose' });
    expect(actions.at(-1)).toBe('replace-arm');
    expect(steps.length).toBeLessThan(walk(start, wornOut).steps.length);
  });

  it('a newly fitted arm that moves leads to tightening, and the bolt is tried before it is turned', () => {
    const { steps, actions } = walk(
      { 'play-at-arm': 'arm-moves-on-spindle' },
      { ...inOrder, 'bolt-on-arrival': 'turns-before-torque', history: 'newly-fitted' },
    );
    expect(actions.at(-1)).toBe('tighten-and-recheck');
    const arrival = steps.indexOf('bolt-on-arrival');
    expect(arrival).toBeGreaterThanOrEqual(0);
    for (const later of ['tightening-feel', 'play-after-tightening', 'end-gap', 'bolt-fit', 'arm-release'] as const) {
      if (steps.includes(later)) expect(steps.indexOf(later)).toBeGreaterThan(arrival);
    }
  });

  it('nothing known and nothing wrong ends with riding, not before six checks, and does not waver', () => {
    const { actions, doNotRide } = walk({}, inOrder);
    expect(actions.at(-1)).toBe('ride');
    expect(doNotRide.at(-1)).toBe(false);
    const first = doNotRide.indexOf(false);
    expect(first).toBeGreaterThanOrEqual(6);
    expect(doNotRide.slice(first).every((value) => !value)).toBe(true);
  });

  it('a creak from the pedal leads elsewhere, a creak from a galled seat to cleaning', () => {
    const creak: Observations = { 'creak-under-load': 'each-pedal-stroke' };
    const elsewhere = walk(creak, { ...inOrder, 'other-sources': 'pedal-or-chainring-suspect' });
    expect(elsewhere.actions.at(-1)).toBe('look-elsewhere');
    const galled = walk(creak, { ...inOrder, 'bore-flats': 'galled', 'fretting-debris': 'dark-powder-or-rust' });
    expect(galled.actions.at(-1)).toBe('clean-and-refit');
  });

  it('both arms moving together leads to the bearing', () => {
    const { actions } = walk(
      { 'play-at-arm': 'both-arms-together' },
      { ...inOrder, 'bearing-turning': 'rough-or-loose' },
    );
    expect(actions.at(-1)).toBe('service-bearing');
  });
});

describe('simulated walks', () => {
  const WALKS = 201;
  const shares: number[] = [];
  const seed = seedOfRun();

  it.each(FAMILY_JOINTS)(
    `%s: half of the cases are decided by half of the checks (SEED=${seed})`,
    (joint) => {
      const sample = createSampler(seededRandom(seed), { joint, asked: 1, read: 0 });
      const all = outcomesByCheck(joint).size;
      const lengths: number[] = [];
      let undecided = 0;
      let riddenUnsafe = 0;
      for (let index = 0; index < WALKS; index++) {
        const truth = sample();
        let observations: Observations = {};
        for (let steps = 0; ; steps++) {
          const result = diagnose({ joint, observations });
          const [next] = result.nextChecks;
          if (next === undefined) {
            lengths.push(steps);
            if (result.action === 'remove-and-inspect') undecided++;
            const isUnsafe = truth.condition !== 'sound' && truth.condition !== 'seat-dirty-or-galled';
            if (isUnsafe && !result.doNotRide) riddenUnsafe++;
            break;
          }
          observations = { ...observations, [next.check]: truth.input.observations[next.check] } as Observations;
        }
      }
      const median = lengths.sort((a, b) => a - b)[(WALKS - 1) / 2] ?? Number.NaN;
      console.log(
        `${joint}: median ${median} of ${all} checks, longest ${lengths.at(-1)}; ${undecided} of ${WALKS} left to look, ${riddenUnsafe} ridden though unsafe`,
      );
      expect(median).toBeLessThanOrEqual(all / 2);
      shares.push(median / all);
      expect(lengths.at(-1)).toBeLessThanOrEqual(all);
      // Some one in thirty is the most that is let through, mostly far less; 7 in 201 would be that, and 10 lies a standard
      // deviation above it. A bent arm and one a step off are counted here too.
      expect(riddenUnsafe).toBeLessThan(10);
      expect(undecided).toBeLessThan(WALKS / 3);
    },
    120_000,
  );

  it('half of all cases are decided by half of the checks, over the families', () => {
    expect(shares).toHaveLength(FAMILY_JOINTS.length);
    const middle = [...shares].sort((a, b) => a - b)[Math.floor(shares.length / 2)];
    expect(middle).toBeLessThanOrEqual(0.5);
  });
});
