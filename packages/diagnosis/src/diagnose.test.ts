import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { diagnose } from './diagnose.ts';
import { listJoints } from './list-joints.ts';
import type { ActionId, DiagnoseInput, Diagnosis, Observations, OutcomeOf } from './types.ts';

const joint = 'square-taper-jis' as const;
const leading = (observations: Observations): string | undefined => diagnose({ joint, observations }).conditions[0]?.id;

function refusal(input: unknown): { path: string; allowed: string; nearest: string | undefined } {
  try {
    diagnose(input as DiagnoseInput);
  } catch (error) {
    if (isDomainError(error)) return error;
    throw error;
  }
  throw new Error('was not refused');
}

describe('diagnose', () => {
  it('with nothing known does not let anybody ride and asks', () => {
    const result = diagnose({ joint, observations: {} });
    expect(result.doNotRide).toBe(true);
    expect(result.action).toBe('remove-and-inspect');
    expect(result.nextChecks.length).toBeGreaterThan(3);
    expect(result.evidence).toEqual([]);
  });

  it('names conditions, causes and what holds beside them, each id once', () => {
    const result = diagnose({ joint, observations: {} });
    expect(new Set(result.conditions.map(({ id }) => id)).size).toBe(14);
    expect(new Set(result.causes.map(({ id }) => id)).size).toBe(12);
    expect(new Set(result.besides.map(({ id }) => id)).size).toBe(2);
    expect(new Set(result.actions.map(({ id }) => id)).size).toBe(11);
  });

  it('both may hold: a worn bearing beside a loose arm', () => {
    const { besides, conditions, action } = diagnose({
      joint,
      observations: {
        'bolt-on-arrival': 'finger-loose',
        'play-after-tightening': 'gone',
        'bearing-turning': 'rough-or-loose',
        history: 'newly-fitted',
      },
    });
    expect(conditions[0]?.id).toBe('loose-but-sound');
    expect(besides[0]).toMatchObject({ id: 'bearing-worn' });
    expect(besides[0]?.probability).toBeGreaterThan(0.5);
    expect(action).toBe('tighten-and-recheck');
  });

  it('takes the history as one answer or as a list, unknown left out', () => {
    const one = diagnose({ joint, observations: { history: 'impact' } });
    expect(diagnose({ joint, observations: { history: ['impact'] } })).toEqual(one);
    expect(diagnose({ joint, observations: { history: ['unknown', 'impact', 'impact'] } })).toEqual(one);
    expect(diagnose({ joint, observations: { history: [] } })).toEqual(diagnose({ joint, observations: {} }));
  });

  it('asks again for what was not checked, but not for what could not be told', () => {
    const asked = (answer: 'not-checked' | 'unclear'): boolean =>
      diagnose({ joint, observations: { 'play-at-arm': answer } }).nextChecks.some(
        ({ check }) => check === 'play-at-arm',
      );
    expect(asked('not-checked')).toBe(true);
    expect(asked('unclear')).toBe(false);
  });

  it('proposes nothing that needs the bolt turned before the bolt was tried', () => {
    const spoiling = ['tightening-feel', 'play-after-tightening', 'end-gap', 'bolt-fit', 'arm-release', 'bore-flats'];
    const proposed = (observations: Observations): string[] =>
      diagnose({ joint, observations }).nextChecks.map(({ check }) => check);
    const before = proposed({ 'play-at-arm': 'arm-moves-on-spindle' });
    expect(before).toContain('bolt-on-arrival');
    expect(before.filter((check) => spoiling.includes(check))).toEqual([]);
    const after = proposed({ 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'tight' });
    expect(after.some((check) => spoiling.includes(check))).toBe(true);
  });

  it('orders what to look at by gain for each minute; who only goes before another counts the minutes of both', () => {
    let handed = 0;
    for (const observations of [{}, { 'play-at-arm': 'arm-moves-on-spindle' }] as Observations[]) {
      const { nextChecks } = diagnose({ joint, observations });
      const rates = nextChecks.map(({ gainPerMinute }) => gainPerMinute);
      expect(rates).toEqual([...rates].sort((a, b) => b - a));
      for (const { gain, minutes, gainPerMinute } of nextChecks) {
        if (gainPerMinute === gain / minutes) continue;
        expect(gain / gainPerMinute).toBeGreaterThanOrEqual(minutes + 1);
        handed += 1;
      }
    }
    expect(handed).toBeGreaterThan(0);
  });

  it('does not propose to measure an arrival torque that has been tightened away', () => {
    const { nextChecks } = diagnose({ joint, observations: { 'play-after-tightening': 'remains' } });
    expect(nextChecks.map(({ check }) => check)).not.toContain('bolt-on-arrival');
  });

  it('tells a loose joint from a worn one by what tightening does', () => {
    const loose: Observations = { 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'turns-before-torque' };
    expect(leading({ ...loose, 'play-after-tightening': 'gone' })).toBe('loose-but-sound');
    expect(leading({ ...loose, 'play-after-tightening': 'remains' })).toBe('bore-deformed');
  });

  it('the left joint is likelier to have worked loose', () => {
    const at = (side: 'drive' | 'non-drive'): number =>
      diagnose({ joint, side, observations: {} }).conditions.find(({ id }) => id === 'loose-but-sound')?.probability ??
      0;
    expect(at('non-drive')).toBeGreaterThan(at('drive'));
  });

  it('takes no action for an answer that nothing speaks for', () => {
    const admissible = (id: ActionId, observations: Observations): boolean | undefined =>
      diagnose({ joint, observations }).actions.find((action) => action.id === id)?.admissible;
    expect(admissible('tighten-and-recheck', { 'bolt-on-arrival': 'tight' })).toBe(false);
    expect(admissible('tighten-and-recheck', {})).toBe(false);
    expect(admissible('tighten-and-recheck', { 'bolt-on-arrival': 'finger-loose' })).toBe(true);
    expect(admissible('look-elsewhere', { 'creak-under-load': 'none' })).toBe(false);
    expect(admissible('look-elsewhere', { 'creak-under-load': 'each-pedal-stroke' })).toBe(true);
    expect(admissible('service-bearing', { 'bearing-turning': 'smooth' })).toBe(false);
    expect(admissible('service-bearing', { 'play-at-arm': 'both-arms-together' })).toBe(true);
  });

  it('what a reading stands for rules actions out as a word does', () => {
    const { actions } = diagnose({
      joint,
      observations: {},
      measurements: {
        torqueAtFirstMovementNm: { value: 40, standardUncertainty: 1 },
        endGapMm: { value: 0, standardUncertainty: 0.05 },
      },
    });
    const ruledOut = actions.flatMap(({ id, admissible }) => (admissible ? [] : [id]));
    expect(ruledOut).toContain('tighten-and-recheck');
    expect(ruledOut).toContain('ride');
  });
});

describe('readings', () => {
  it('a measured gap does what the word for it does, softened by its uncertainty', () => {
    const at = (measurement: number, standardUncertainty: number): number =>
      diagnose({
        joint,
        observations: {},
        measurements: { endGapMm: { value: measurement, standardUncertainty } },
      }).conditions.find(({ id }) => id === 'bottomed-on-end')?.probability ?? 0;
    const word = diagnose({ joint, observations: { 'end-gap': 'flush' } }).conditions;
    expect(at(0, 0.05)).toBeCloseTo(word.find(({ id }) => id === 'bottomed-on-end')?.probability ?? 0, 1);
    expect(at(0, 0.05)).toBeGreaterThan(at(0, 1.5));
    expect(at(3, 0.1)).toBeLessThan(0.01);
  });

  it('the mark is judged by the length of the flats of the standard', () => {
    const at = (id: DiagnoseInput['joint']): number =>
      diagnose({
        joint: id,
        observations: {},
        measurements: { markEndFromSpindleEndMm: { value: 15.5, standardUncertainty: 0.2 } },
      }).conditions.find((entry) => entry.id === 'bore-deformed')?.probability ?? 0;
    expect(at('square-taper-jis')).toBeGreaterThan(at('square-taper-iso'));
  });

  it('word and reading together count once when they agree', () => {
    const measurements = { endGapMm: { value: 0, standardUncertainty: 0.02 } };
    const reading = diagnose({ joint, observations: {}, measurements });
    const both = diagnose({ joint, observations: { 'end-gap': 'flush' }, measurements });
    expect(both.evidence).toHaveLength(1);
    expect(both.conditions[0]?.id).toBe(reading.conditions[0]?.id);
    expect(both.conditions[0]?.probability).toBeCloseTo(reading.conditions[0]?.probability ?? 0, 2);
    expect(both.contradictions).toEqual([]);
  });

  it('a reading against a word is named as a contradiction and riding is off', () => {
    const result = diagnose({
      joint,
      observations: { 'bolt-on-arrival': 'tight', 'play-at-arm': 'none' },
      measurements: { torqueAtFirstMovementNm: { value: 8, standardUncertainty: 1 } },
    });
    expect(result.contradictions[0]).toMatchObject({
      code: 'contradiction-reading-against-word',
      values: { check: 'bolt-on-arrival', outcome: 'tight', nearest: 'turns-before-torque' },
    });
    expect(result.doNotRide).toBe(true);
    expect(result.cautions.map(({ code }) => code)).toContain('caution-contradiction');
  });

  it('a bare number takes the usual uncertainty with a note; one out of reach is a caution', () => {
    const { findings } = diagnose({ joint, observations: {}, measurements: { runoutMm: 0.1, shoulderGapMm: 25 } });
    expect(findings.filter(({ code }) => code === 'uncertainty-assumed').map(({ path }) => path)).toEqual([
      'measurements.shoulderGapMm',
      'measurements.runoutMm',
    ]);
    expect(findings.find(({ code }) => code === 'reading-outside-bands')).toMatchObject({
      severity: 'caution',
      path: 'measurements.shoulderGapMm',
    });
  });
});

describe('contradictions', () => {
  it('answers that exclude each other', () => {
    const { contradictions } = diagnose({
      joint,
      observations: { 'shoulder-gap': 'touching', 'witness-mark': 'stops-short' },
    });
    expect(contradictions.map(({ code }) => code)).toContain('contradiction-incompatible');
  });

  it('an answer that nothing plausible explains, without changing what the others say', () => {
    const healthy: Observations = {
      'play-at-arm': 'none',
      'bolt-on-arrival': 'tight',
      'creak-under-load': 'none',
      'fretting-debris': 'none',
      'bearing-turning': 'smooth',
      'arm-straightness': 'straight',
      'spindle-runout': 'true',
      'witness-mark': 'stops-short',
      'spindle-flats': 'sound',
      'end-gap': 'clear',
    };
    expect(diagnose({ joint, observations: healthy }).contradictions).toEqual([]);
    const odd = diagnose({ joint, observations: { ...healthy, 'arm-alignment': 'out-of-line' } });
    expect(odd.contradictions).toMatchObject([
      { code: 'contradiction-unexplained', values: { check: 'arm-alignment', outcome: 'out-of-line' } },
    ]);
    expect(odd.action).not.toBe('ride');
    expect(odd.doNotRide).toBe(true);
  });
});

it('what is merely rare is no contradiction', () => {
  const { contradictions } = diagnose({
    joint,
    observations: { 'bolt-on-arrival': 'missing', 'play-at-arm': 'arm-moves-on-spindle', history: 'ridden-loose' },
  });
  expect(contradictions).toEqual([]);
});

describe('refusals', () => {
  it.each(['spline-other', 'through-spindle-other', 'other', 'spline'])('%s is said not to be modelled', (other) => {
    const { path, allowed } = refusal({ joint: other, observations: {} });
    expect(path).toBe('joint');
    const named = allowed.split(/[,;] /);
    for (const { id, modelled } of listJoints()) expect(named.includes(id), id).toBe(modelled);
    expect(allowed).toMatch(/no other joint is modelled$/);
  });

  it('refuses whatever stands for a joint', () => {
    for (const other of [undefined, null, 7, {}, ['square-taper'], Symbol('x'), 7n]) {
      expect(refusal({ joint: other, observations: {} }).path).toBe('joint');
    }
  });

  it.each([
    [{ joint: 'square-tapper', observations: {} }, 'joint', 'square-taper'],
    [{ joint, observations: { 'play-at-arms': 'none' } }, 'observations.play-at-arms', 'play-at-arm'],
    [{ joint, observations: { 'bore-flats': 'round' } }, 'observations.bore-flats', 'rounded'],
    [{ joint, observations: { history: ['impakt'] } }, 'observations.history[0]', 'impact'],
    [{ joint, observations: { history: 'impakt' } }, 'observations.history[0]', 'impact'],
    [{ joint, observations: {}, measurements: { endGap: 1 } }, 'measurements.endGap', 'endGapMm'],
    [{ joint, observation: {} }, 'observations', undefined],
    [{ joint, side: 'nondrive', observations: {} }, 'side', 'non-drive'],
  ])('%j', (input, path, nearest) => {
    const found = refusal(input);
    expect(found.path).toBe(path);
    expect(found.nearest).toBe(nearest);
  });

  it.each([
    [{ playAngleDeg: -1 }, 'measurements.playAngleDeg'],
    [{ playAngleDeg: { value: -1, standardUncertainty: 1 } }, 'measurements.playAngleDeg'],
    [{ endGapMm: Number.NaN }, 'measurements.endGapMm'],
    [{ endGapMm: '1' }, 'measurements.endGapMm'],
    [{ releaseForceN: 1e9 }, 'measurements.releaseForceN'],
    [{ releaseForceN: 2.5e5 }, 'measurements.releaseForceN'],
    [{ playAngleDeg: 60 }, 'measurements.playAngleDeg'],
    [{ runoutMm: { value: 1, standardUncertainty: -1 } }, 'measurements.runoutMm.standardUncertainty'],
    [{ runoutMm: { lower: 2, nominal: 1, upper: 3 } }, 'measurements.runoutMm'],
  ])('readings %j', (measurements, path) => {
    expect(refusal({ joint, observations: {}, measurements }).path).toBe(path);
  });

  it.each([[null], [undefined], ['square-taper'], [[]]])('%j as input', (input) => {
    expect(() => diagnose(input as unknown as DiagnoseInput)).toThrow(/diagnose: /);
  });

  it('a check of another joint is left out with a finding', () => {
    const { findings, conditions } = diagnose({ joint, observations: { cotter: 'deformed' } });
    expect(findings[0]).toMatchObject({ code: 'check-not-applicable', path: 'observations.cotter' });
    expect(conditions).toEqual(diagnose({ joint, observations: {} }).conditions);
  });

  it('a fault seen where the joint has nothing to look at keeps the bicycle off the road: it is another joint', () => {
    const fine: Observations = {
      'arm-alignment': 'in-line',
      'arm-straightness': 'straight',
      'play-at-arm': 'none',
      'spindle-flats': 'sound',
      'spindle-runout': 'true',
      'creak-under-load': 'none',
      'bearing-turning': 'smooth',
    };
    expect(diagnose({ joint: 'one-piece', observations: fine }).doNotRide).toBe(false);
    expect(diagnose({ joint: 'one-piece', observations: { ...fine, 'end-gap': 'clear' } }).doNotRide).toBe(false);
    expect(diagnose({ joint: 'one-piece', observations: { ...fine, 'end-gap': 'past-end' } }).doNotRide).toBe(true);
  });
});

it('types: only outcomes of a check are taken for it', () => {
  expectTypeOf<OutcomeOf<'bearing-turning'>>().toEqualTypeOf<'smooth' | 'rough-or-loose'>();
  expectTypeOf<Diagnosis['doNotRide']>().toEqualTypeOf<boolean>();
});
