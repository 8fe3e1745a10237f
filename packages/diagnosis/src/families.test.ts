// What the same answer means at different joints: the expectations are those of common practice as the records of the
// interfaces state them, not what the model happened to give.
import { describe, expect, it } from 'vitest';
import { diagnose } from './diagnose.ts';
import type { ConditionId, JointId, Measurements, Observations } from './types.ts';

const at = (joint: JointId, observations: Observations, id: string): number => {
  const { conditions, besides } = diagnose({ joint, observations });
  return [...conditions, ...besides].find((entry) => entry.id === id)?.probability ?? 0;
};
const leading = (joint: JointId, observations: Observations): ConditionId | undefined =>
  diagnose({ joint, observations }).conditions[0]?.id;
/** How an answer moves the probability that the joint is sound: above 1 speaks for it. */
const forSound = (joint: JointId, observations: Observations): number =>
  at(joint, observations, 'sound') / at(joint, {}, 'sound');
const codes = (joint: JointId, observations: Observations, measurements: Measurements = {}): string[] =>
  diagnose({ joint, observations, measurements }).findings.map(({ code, path }) => `${code} ${path ?? ''}`.trim());

describe('splines', () => {
  it.each(['spline-10', 'spline-8-short', 'spline-8-long', 'spline-48'] as const)('%s: touching is home', (joint) => {
    expect(forSound(joint, { 'shoulder-gap': 'touching' })).toBeGreaterThan(1);
    expect(forSound(joint, { 'shoulder-gap': 'clear' })).toBeLessThan(0.25);
    expect(diagnose({ joint, observations: { 'shoulder-gap': 'clear' } }).doNotRide).toBe(true);
    // At the square it is the other way about.
    expect(forSound('square-taper-jis', { 'shoulder-gap': 'touching' })).toBeLessThan(0.25);
    expect(forSound('square-taper-jis', { 'shoulder-gap': 'clear' })).toBeGreaterThan(1);
    // The end gap must still be clear, and a mark that stops short never was home.
    expect(forSound(joint, { 'end-gap': 'flush' })).toBeLessThan(0.25);
    expect(forSound(joint, { 'witness-mark': 'whole-flat' })).toBeGreaterThan(1);
    expect(forSound(joint, { 'witness-mark': 'stops-short' })).toBeLessThan(0.5);
    expect(diagnose({ joint, observations: {} }).conditions.map(({ id }) => id)).not.toContain('stopped-at-shoulder');
  });

  it('an arm that comes off by hand has lost its press with ten splines, decides nothing with eight, is normal with 48', () => {
    const byHand: Observations = { 'arm-release': 'comes-off-by-hand' };
    expect(forSound('spline-10', byHand)).toBeLessThan(0.1);
    expect(forSound('spline-8-long', byHand)).toBeGreaterThan(0.5);
    expect(forSound('spline-8-long', byHand)).toBeLessThan(2);
    expect(forSound('spline-48', byHand)).toBeGreaterThan(0.9);
    for (const joint of ['spline-8-long', 'spline-48'] as const) {
      const ride = diagnose({ joint, observations: byHand }).actions.find(({ id }) => id === 'ride');
      const before = diagnose({ joint, observations: {} }).actions.find(({ id }) => id === 'ride');
      expect((ride?.expectedLossMinutes ?? 0) / (before?.expectedLossMinutes ?? 1)).toBeLessThan(1.5);
    }
  });

  it('a step off is put together wrongly with ten splines; with an index spline the arm was forced and is damaged', () => {
    const stepOff: Observations = { 'arm-alignment': 'one-step-off', history: 'newly-fitted' };
    expect(leading('spline-10', stepOff)).toBe('wrong-clocking');
    expect(diagnose({ joint: 'spline-10', observations: stepOff }).action).toBe('clean-and-refit');
    expect(leading('spline-8-long', stepOff)).toBe('bore-deformed');
    expect(diagnose({ joint: 'spline-8-long', observations: stepOff }).action).toBe('replace-arm');
  });
});

describe('face splines', () => {
  it('closed is right, the halves part by hand, worn teeth cost both of them', () => {
    expect(forSound('face-spline', { 'shoulder-gap': 'touching' })).toBeGreaterThan(1);
    expect(forSound('face-spline', { 'shoulder-gap': 'clear' })).toBeLessThan(0.25);
    expect(forSound('face-spline', { 'arm-release': 'comes-off-by-hand' })).toBeGreaterThan(0.9);
    const worn: Observations = {
      'play-at-arm': 'arm-moves-on-spindle',
      'play-after-tightening': 'remains',
      'bore-flats': 'rounded',
    };
    expect(diagnose({ joint: 'face-spline', observations: worn }).action).toBe('replace-both');
    expect(diagnose({ joint: 'square-taper-jis', observations: worn }).action).toBe('replace-arm');
  });
});

describe('pinched arms', () => {
  const joint = 'through-spindle-24' as const;

  it('off by hand and no end gap are normal', () => {
    expect(forSound(joint, { 'arm-release': 'comes-off-by-hand' })).toBeGreaterThan(0.95);
    const plain = diagnose({ joint, observations: {} });
    for (const gap of ['clear', 'flush', 'past-end'] as const) {
      const told = diagnose({ joint, observations: { 'end-gap': gap } });
      expect(told.conditions).toEqual(plain.conditions);
      expect(told.doNotRide).toBe(plain.doNotRide);
      expect(codes(joint, { 'end-gap': gap })).toContain('says-nothing observations.end-gap');
    }
  });

  it('a closed slot presses the arm against itself: not the bolts but the clamp fails', () => {
    const closed: Observations = {
      'clamp-slot': 'closed',
      'bolt-on-arrival': 'tight',
      'play-after-tightening': 'remains',
    };
    expect(at(joint, closed, 'bolt-not-clamping')).toBeGreaterThan(0.5);
    expect(diagnose({ joint, observations: { 'clamp-slot': 'closed' } }).doNotRide).toBe(true);
  });

  it('a loose cap shows as both arms moving together and a gap behind the arm', () => {
    const loose: Observations = { 'play-at-arm': 'both-arms-together', 'shoulder-gap': 'clear' };
    expect(at(joint, loose, 'bearing-worn')).toBeGreaterThan(0.8);
    expect(
      diagnose({ joint, observations: { ...loose, 'bolt-on-arrival': 'tight', 'clamp-slot': 'open' } }).action,
    ).toBe('service-bearing');
  });

  it('asks for the safety catch wherever the clamp is in doubt, and nowhere else', () => {
    const cautions = (id: JointId): string[] =>
      diagnose({ joint: id, observations: { 'play-at-arm': 'arm-moves-on-spindle' } }).cautions.map(({ code }) => code);
    expect(cautions(joint)).toContain('caution-safety-catch');
    expect(cautions('square-taper-jis')).not.toContain('caution-safety-catch');
  });
});

describe('cottered cranks', () => {
  const joint = 'cottered-inch' as const;

  it('the cotter is the fixing', () => {
    const stepped: Observations = {
      cotter: 'deformed',
      'play-at-arm': 'arm-moves-on-spindle',
      'bore-flats': 'straight',
    };
    expect(leading(joint, stepped)).toBe('bolt-not-clamping');
    expect(diagnose({ joint, observations: stepped }).action).toBe('replace-fixing');
  });

  it('arms a step off are cotters the same way round', () => {
    for (const seen of [{ 'arm-alignment': 'one-step-off' }, { cotter: 'wrong-way-round' }] as const) {
      expect(leading(joint, seen)).toBe('wrong-clocking');
      expect(diagnose({ joint, observations: seen }).action).toBe('clean-and-refit');
    }
  });

  it('a tight nut says little: the wedge may be loose all the same, and pressing it in again is not ruled out', () => {
    const tight = { 'bolt-on-arrival': 'tight', 'play-at-arm': 'arm-moves-on-spindle' } as const;
    const tighten = diagnose({ joint, observations: tight }).actions.find(({ id }) => id === 'tighten-and-recheck');
    expect(tighten?.admissible).toBe(true);
    expect(at(joint, { 'bolt-on-arrival': 'tight' }, 'loose-but-sound')).toBeGreaterThan(
      4 * at('square-taper-jis', { 'bolt-on-arrival': 'tight' }, 'loose-but-sound'),
    );
  });
});

describe('one-piece cranks', () => {
  it('can only be sound, bent or damaged, and what is wrong costs the whole', () => {
    const { conditions, actions, causes } = diagnose({ joint: 'one-piece', observations: {} });
    expect(conditions.map(({ id }) => id).sort()).toEqual(['arm-bent', 'sound', 'spindle-damaged']);
    expect(causes.map(({ id }) => id).sort()).toEqual(['fatigue', 'impact', 'none', 'service-wear']);
    expect(actions.map(({ id }) => id).sort()).toEqual(
      ['look-elsewhere', 'remove-and-inspect', 'replace-both', 'ride', 'service-bearing'].sort(),
    );
    const bent: Observations = { 'arm-straightness': 'bent', history: 'impact' };
    expect(diagnose({ joint: 'one-piece', observations: bent }).action).toBe('replace-both');
    const cracked: Observations = { 'spindle-flats': 'cracked', history: 'long-service' };
    expect(diagnose({ joint: 'one-piece', observations: cracked }).action).toBe('replace-both');
  });
});

describe('readings by family', () => {
  it('a gap that is right at one joint is wrong at another', () => {
    const measurements = { shoulderGapMm: { value: 0, standardUncertainty: 0.03 } };
    const sound = (joint: JointId): number =>
      diagnose({ joint, observations: {}, measurements }).conditions.find(({ id }) => id === 'sound')?.probability ?? 0;
    expect(sound('spline-10')).toBeGreaterThan(0.5);
    expect(sound('square-taper-jis')).toBeLessThan(0.1);
  });

  it('10 N.m is tight for a pinch bolt and loose for a taper bolt', () => {
    const measurements = { torqueAtFirstMovementNm: { value: 13, standardUncertainty: 0.5 } };
    const nearest = (joint: JointId): readonly string[] | undefined =>
      diagnose({ joint, observations: {}, measurements }).evidence[0]?.outcomes;
    expect(nearest('through-spindle-24')).toEqual(['tight']);
    expect(nearest('square-taper-jis')).toEqual(['turns-before-torque']);
    expect(nearest('spline-10')).toEqual(['turns-before-torque']);
  });

  it('says which readings say nothing, and reckons without them', () => {
    const measurements: Measurements = { endGapMm: 1, markEndFromSpindleEndMm: 12, turnsToTorque: 1, runoutMm: 0.1 };
    const told = diagnose({ joint: 'one-piece', observations: {}, measurements });
    expect(told.evidence.map(({ measurement }) => measurement)).toEqual(['runoutMm']);
    expect(codes('one-piece', {}, measurements).filter((code) => code.startsWith('says-nothing'))).toEqual([
      'says-nothing measurements.endGapMm',
      'says-nothing measurements.markEndFromSpindleEndMm',
      'says-nothing measurements.turnsToTorque',
    ]);
    // A word beside such a reading still counts.
    const word = diagnose({
      joint: 'spline-48',
      observations: { 'witness-mark': 'one-edge' },
      measurements: { markEndFromSpindleEndMm: 3 },
    });
    expect(word.conditions).toEqual(
      diagnose({ joint: 'spline-48', observations: { 'witness-mark': 'one-edge' } }).conditions,
    );
  });

  it('refuses the impossible at every joint, where the reading says nothing too', () => {
    for (const joint of ['one-piece', 'cottered-metric', 'spline-48'] as const) {
      expect(() => diagnose({ joint, observations: {}, measurements: { endGapMm: 500 } })).toThrow(/endGapMm/);
      expect(() => diagnose({ joint, observations: {}, measurements: { turnsToTorque: -1 } })).toThrow(/turnsToTorque/);
    }
  });
});
