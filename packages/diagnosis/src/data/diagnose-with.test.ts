import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { diagnose } from '../diagnose.ts';
import type { DiagnoseInput, FrequencyWord } from '../types.ts';
import { diagnoseWith } from './diagnose-with.ts';
import { listLikelihoods } from './list-likelihoods.ts';
import { listRepairNeeds } from './list-repair-needs.ts';

const input: DiagnoseInput = {
  joint: 'spline-8-long',
  side: 'non-drive',
  observations: { 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'tight', history: ['ridden-loose'] },
};

describe('diagnoseWith', () => {
  it('changes nothing when nothing is changed, or every record is given the word that it has', () => {
    expect(diagnoseWith({ input, likelihoods: {} })).toEqual(diagnose(input));
    const same = Object.fromEntries(listLikelihoods(input.joint).map(({ id, word }) => [id, word]));
    expect(diagnoseWith({ input, likelihoods: same })).toEqual(diagnose(input));
  });

  it('moves the odds of a condition by the ratio of its new and its old likelihood', () => {
    const observations = { 'fretting-debris': 'dark-powder-or-rust' } as const;
    const odds = (result: ReturnType<typeof diagnose>): number => {
      const p = result.conditions.find(({ id }) => id === 'arm-bent')?.probability ?? Number.NaN;
      return p / (1 - p);
    };
    const bare = { joint: 'square-taper', observations } as const;
    const changed = diagnoseWith({
      input: bare,
      likelihoods: {
        'fretting-debris/dark-powder-or-rust/arm-bent/any': 'often',
        'fretting-debris/none/arm-bent/any': 'sometimes',
      },
    });
    // By hand: rarely 0.07 of 0.07 + 0.93 before, often 0.65 of 0.65 + 0.3 after.
    expect(odds(changed) / odds(diagnose(bare))).toBeCloseTo(0.65 / 0.95 / 0.07, 9);
  });

  it('changes what is told of the past', () => {
    const causeOf = (likelihoods: Record<string, FrequencyWord>): number =>
      diagnoseWith({
        input: { joint: 'square-taper', observations: { history: 'long-service' } },
        likelihoods,
      }).causes.find(({ id }) => id === 'fatigue')?.probability ?? 0;
    expect(causeOf({ 'history/long-service/any/fatigue': 'almost-never' })).toBeLessThan(causeOf({}) / 3);
  });

  it.each([
    [{ 'bore-flats/rounded/bore-deformed/anyy': 'often' }, 'likelihoods.bore-flats/rounded/bore-deformed/anyy'],
    [{ 'bore-flats/rounded/bore-deformed/any': 'frequently' }, 'likelihoods.bore-flats/rounded/bore-deformed/any'],
    [7, 'likelihoods'],
  ])('refuses %j', (likelihoods, path) => {
    try {
      diagnoseWith({ input, likelihoods: likelihoods as Record<string, FrequencyWord> });
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect(error.path).toBe(path);
      return;
    }
    throw new Error('was not refused');
  });

  it('refuses a case as diagnose does', () => {
    expect(() => diagnoseWith({ likelihoods: {} } as unknown as Parameters<typeof diagnoseWith>[0])).toThrow(/joint/);
    const odd = { joint: 'square-taper', observations: { 'bore-flats': 'round' } } as unknown as DiagnoseInput;
    expect(() => diagnoseWith({ input: odd, likelihoods: {} })).toThrow(/observations.bore-flats/);
  });
});

describe('listRepairNeeds', () => {
  it('says what stands for what at which family', () => {
    const cotter = listRepairNeeds().find(({ id }) => id === 'cotter-pressed-in');
    expect(cotter).toMatchObject({ kind: 'fitting', causes: ['under-tightened'], families: ['cottered'] });
  });
});
