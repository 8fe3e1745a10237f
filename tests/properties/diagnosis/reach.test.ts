// Every id of the contract can be reached, every check tells something, nothing is impossible.
import {
  type ActionId,
  type CheckId,
  diagnose,
  type JointId,
  listActions,
  listChecks,
  listConditions,
  type Observations,
} from '@spindlewright/diagnosis';
import { listCauses, listLikelihoods } from '@spindlewright/diagnosis/data';
import { describe, expect, it, vi } from 'vitest';
import { FAMILY_JOINTS, outcomesByCheck } from './generators.ts';

// A hundred cases a property, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

const probabilityOf = (joint: JointId, observations: Observations, id: string): number => {
  const result = diagnose({ joint, observations });
  return [...result.conditions, ...result.besides].find((entry) => entry.id === id)?.probability ?? 0;
};

/** Adds the answer that favours a condition most, up to four of them. */
function pursue(joint: JointId, id: string): { observations: Observations; probability: number } {
  let observations: Observations = {};
  let probability = probabilityOf(joint, observations, id);
  for (let step = 0; step < 4 && probability <= 0.8; step++) {
    let better = observations;
    for (const [check, outcomes] of outcomesByCheck(joint)) {
      for (const outcome of observations[check] === undefined ? outcomes : []) {
        const tried = { ...observations, [check]: outcome } as Observations;
        const p = probabilityOf(joint, tried, id);
        if (p > probability) {
          probability = p;
          better = tried;
        }
      }
    }
    observations = better;
  }
  return { observations, probability };
}

/** A condition or what holds beside it, at each family that can have it. */
const places = FAMILY_JOINTS.flatMap((joint) => listConditions(joint).map(({ id }) => [joint, id] as const));

describe('reach', () => {
  it.each(places)('%s: some answers bring %s above 0.8', (joint, id) => {
    const { probability, observations } = pursue(joint, id);
    expect(probability, JSON.stringify(observations)).toBeGreaterThan(0.8);
  });

  it('every condition is one of some family, and each family has one that leads to each of its actions', () => {
    expect(new Set(places.map(([, id]) => id))).toEqual(new Set(listConditions().map(({ id }) => id)));
    for (const joint of FAMILY_JOINTS) {
      const offered = diagnose({ joint, observations: {} }).actions.map(({ id }) => id);
      for (const { id, action } of listConditions(joint)) expect(offered, `${joint} ${id}`).toContain(action);
    }
  });

  const reached: Record<ActionId, Observations> = {
    ride: {
      'arm-alignment': 'in-line',
      'arm-straightness': 'straight',
      'play-at-arm': 'none',
      'bolt-on-arrival': 'tight',
      'creak-under-load': 'none',
      'fretting-debris': 'none',
      'bearing-turning': 'smooth',
      'spindle-runout': 'true',
      'end-gap': 'clear',
      'shoulder-gap': 'clear',
    },
    'tighten-and-recheck': {
      'bolt-on-arrival': 'turns-before-torque',
      'play-after-tightening': 'gone',
      history: 'newly-fitted',
    },
    'remove-and-inspect': {},
    'clean-and-refit': { 'arm-alignment': 'one-step-off', history: 'newly-fitted' },
    'fit-matching-part': {
      'shoulder-gap': 'touching',
      'bore-flats': 'straight',
      'tightening-feel': 'goes-solid-at-once',
      history: 'part-just-changed',
    },
    'replace-arm': { 'bore-flats': 'rounded', 'witness-mark': 'whole-flat', 'bolt-on-arrival': 'tight' },
    'replace-spindle': {
      'spindle-runout': 'bent',
      'arm-straightness': 'straight',
      history: 'impact',
      'bearing-turning': 'smooth',
    },
    'replace-both': {
      'bore-flats': 'rounded',
      'spindle-flats': 'scored-or-rounded',
      'arm-release': 'comes-off-by-hand',
      history: 'ridden-loose',
    },
    'replace-fixing': { 'bolt-fit': 'bottoms-in-hole', 'end-gap': 'clear', 'tightening-feel': 'goes-solid-at-once' },
    'service-bearing': {
      'play-at-arm': 'both-arms-together',
      'bearing-turning': 'rough-or-loose',
      'bolt-on-arrival': 'tight',
      'fretting-debris': 'none',
    },
    'look-elsewhere': {
      'creak-under-load': 'each-pedal-stroke',
      'other-sources': 'pedal-or-chainring-suspect',
      'play-at-arm': 'none',
      'bolt-on-arrival': 'tight',
      'bore-flats': 'straight',
      'spindle-flats': 'sound',
      'fretting-debris': 'none',
      'arm-straightness': 'straight',
      'bearing-turning': 'smooth',
      'witness-mark': 'stops-short',
      'arm-release': 'needs-puller',
      'arm-alignment': 'in-line',
    },
  };
  it.each(listActions().map(({ id }) => id))('some answers lead to %s', (id) => {
    expect(diagnose({ joint: 'square-taper', observations: reached[id] }).action).toBe(id);
  });

  const checks = FAMILY_JOINTS.flatMap((joint) =>
    [...outcomesByCheck(joint).keys()].map((check) => [joint, check] as const),
  );
  it.each(checks)('%s: %s moves at least two conditions or what holds beside them', (joint, check) => {
    const base = diagnose({ joint, observations: {} });
    const moved = new Set<string>();
    for (const outcome of outcomesByCheck(joint).get(check) ?? []) {
      const result = diagnose({ joint, observations: { [check]: outcome } as Observations });
      for (const { id, probability } of [...result.conditions, ...result.besides]) {
        const before = [...base.conditions, ...base.besides].find((entry) => entry.id === id)?.probability ?? 0;
        if (Math.abs(probability / before - 1) > 0.1) moved.add(id);
      }
    }
    // The bearing check speaks of the bearing alone, the other-sources check of the noise alone.
    const single: CheckId[] = ['bearing-turning', 'other-sources'];
    expect(moved.size).toBeGreaterThanOrEqual(single.includes(check) ? 1 : 2);
  });

  it.each(FAMILY_JOINTS)('%s: no likelihood is 0 or 1, rows are complete and sum to 1', (joint) => {
    const rows = new Map<string, number>();
    for (const { check, condition, spindleToo, cause, probability } of listLikelihoods(joint)) {
      expect(probability > 0 && probability < 1).toBe(true);
      if (check === 'history') continue;
      const row = `${check}/${condition}/${spindleToo}/${cause}`;
      rows.set(row, (rows.get(row) ?? 0) + probability);
    }
    for (const [row, total] of rows) expect(total, row).toBeCloseTo(1, 12);
    for (const check of listChecks(joint).filter(({ id }) => id !== 'history')) {
      for (const { id, beside } of listConditions(joint)) {
        const row = [false, true].some((spindleToo) => rows.has(`${check.id}/${id}/${spindleToo}/any`));
        if (!beside) expect(row, `${check.id}/${id}`).toBe(true);
      }
    }
  });

  it.each(FAMILY_JOINTS)('%s: every condition is led to by some cause, and only a sound joint has none', (joint) => {
    const pairs = listCauses({ joint });
    for (const { id, beside } of listConditions(joint)) {
      if (!beside)
        expect(
          pairs.some(({ condition }) => condition === id),
          id,
        ).toBe(true);
    }
    expect(pairs.filter(({ cause }) => cause === 'none').map(({ condition }) => condition)).toEqual(['sound']);
    expect(pairs.filter(({ condition }) => condition === 'sound').map(({ cause }) => cause)).toEqual(['none']);
  });
});
