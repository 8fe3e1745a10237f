import { describe, expect, it } from 'vitest';
import { diagnose } from './diagnose.ts';
import { outlook } from './outlook.ts';
import type { DiagnoseInput } from './types.ts';

const input: DiagnoseInput = {
  joint: 'square-taper-jis',
  observations: { 'play-at-arm': 'arm-moves-on-spindle', history: ['newly-fitted'] },
};

describe('outlook', () => {
  it('shows for each check worth making what every answer would do, and some answer that changes the action', () => {
    const checks = outlook(input);
    expect(checks.map(({ check }) => check)).toEqual(diagnose(input).nextChecks.map(({ check }) => check));
    expect(checks.flatMap(({ answers }) => answers).some(({ changesAction }) => changesAction)).toBe(true);
  });

  it('agrees with giving the answer', () => {
    const [first] = outlook(input);
    if (first === undefined) throw new Error('something is worth looking at');
    for (const { outcome, condition, probability, action, doNotRide, changesAction } of first.answers) {
      const observations = { ...input.observations, [first.check]: outcome };
      const given = diagnose({ ...input, observations } as DiagnoseInput);
      expect({ condition, probability, action, doNotRide }).toEqual({
        condition: given.conditions[0]?.id,
        probability: given.conditions[0]?.probability,
        action: given.action,
        doNotRide: given.doNotRide,
      });
      expect(changesAction).toBe(given.action !== diagnose(input).action);
    }
  });

  it('is empty when nothing would change what to do', () => {
    const cracked = {
      joint: 'square-taper-jis',
      observations: { 'bore-flats': 'cracked', 'spindle-flats': 'sound' },
    } as const;
    expect(diagnose(cracked).nextChecks.length).toBe(outlook(cracked).length);
  });
});
