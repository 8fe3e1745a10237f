import { describe, expect, it } from 'vitest';
import { diagnose } from './diagnose.ts';
import type { DiagnoseInput, NeedId } from './types.ts';

const needs = (input: DiagnoseInput): NeedId[] => diagnose(input).repairNeeds.map(({ id }) => id);

describe('repair needs', () => {
  it('a new arm on a foreign spindle fails again: measure before buying', () => {
    const { repairNeeds, causes } = diagnose({
      joint: 'square-taper-jis',
      observations: { 'shoulder-gap': 'touching', 'bore-flats': 'straight', history: 'part-just-changed' },
    });
    expect(causes[0]?.id).toBe('mixed-interface');
    expect(repairNeeds[0]).toEqual({ id: 'same-interface', kind: 'replacement', probability: 1 });
    expect(repairNeeds[1]).toMatchObject({ id: 'measure-first', kind: 'replacement', cause: 'mixed-interface' });
    expect(repairNeeds[1]?.probability).toBe(causes[0]?.probability);
  });

  it('what was never tight enough fails again unless it is tightened otherwise, in the way of its joint', () => {
    const loose = {
      'bolt-on-arrival': 'turns-before-torque',
      'play-after-tightening': 'gone',
      history: 'newly-fitted',
    } as const;
    expect(needs({ joint: 'square-taper-jis', observations: loose }).sort()).toEqual(['full-torque', 'recheck-once']);
    expect(needs({ joint: 'through-spindle-24', observations: { ...loose, 'clamp-slot': 'open' } })).toContain(
      'bolts-in-turn',
    );
    const cottered = needs({ joint: 'cottered-inch', observations: { ...loose, cotter: 'sound' } });
    expect(cottered).toContain('cotter-pressed-in');
    expect(cottered).not.toContain('full-torque');
  });

  it('names each once, and none while nothing is repaired', () => {
    const result = diagnose({
      joint: 'square-taper-jis',
      observations: { 'bolt-fit': 'washer-missing', 'play-at-arm': 'arm-moves-on-spindle' },
    });
    expect(result.repairNeeds.map(({ id }) => id)).toEqual(['right-fixing']);
    expect(needs({ joint: 'square-taper-jis', observations: {} })).toEqual([]);
    expect(
      needs({
        joint: 'one-piece',
        observations: { 'bearing-turning': 'rough-or-loose', 'play-at-arm': 'both-arms-together' },
      }),
    ).toEqual([]);
  });
});
