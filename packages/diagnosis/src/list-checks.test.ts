import { describe, expect, it } from 'vitest';
import { CHECK_OUTCOMES } from './ids.ts';
import { listChecks } from './list-checks.ts';
import { messages } from './messages/en.ts';
import type { JointId } from './types.ts';

describe('listChecks', () => {
  it('gives every check with every outcome in plain words', () => {
    const checks = listChecks();
    expect(checks.map(({ id }) => id)).toEqual(Object.keys(CHECK_OUTCOMES));
    for (const { id, code, question, outcomes, minutes } of checks) {
      expect(outcomes.map((outcome) => outcome.id)).toEqual(CHECK_OUTCOMES[id]);
      expect(question).toBe(messages[code]);
      for (const outcome of outcomes) expect(outcome.text).toBe(messages[outcome.code]);
      expect(new Set(outcomes.map(({ text }) => text)).size).toBe(outcomes.length);
      expect(minutes).toBeGreaterThan(0);
    }
  });

  it('leaves out what does not apply to the square taper', () => {
    const ids = listChecks('square-taper-iso').map(({ id }) => id);
    expect(ids).not.toContain('cotter');
    expect(ids).not.toContain('clamp-slot');
    expect(ids).toHaveLength(19);
  });

  it('says what has to come first: the two lists mirror each other', () => {
    const checks = listChecks();
    for (const { id, destroys } of checks) {
      for (const other of destroys) {
        expect(checks.find((check) => check.id === other)?.before, `${id} spoils ${other}`).toContain(id);
      }
    }
    expect(checks.find(({ id }) => id === 'bolt-on-arrival')?.before).toContain('play-after-tightening');
    expect(checks.find(({ id }) => id === 'bore-flats')?.wearMinutes).toBeGreaterThan(0);
  });

  it('gives the order and the effort of each joint', () => {
    const at = (joint: JointId, wanted: string) => listChecks(joint).find(({ id }) => id === wanted);
    // Drawing the arm home hides that it was not: at ten splines the gap comes before the wrench, at a square it need not.
    expect(at('spline-10', 'shoulder-gap')?.before).toContain('tightening-feel');
    expect(at('square-taper-jis', 'shoulder-gap')?.before).not.toContain('tightening-feel');
    expect(at('through-spindle-24', 'clamp-slot')?.before).toEqual(
      expect.arrayContaining(['tightening-feel', 'bore-flats']),
    );
    // A clamp opens by hand; a cotter is looked at when it is out, which loses the state of its nut.
    const offMinutes = (joint: JointId): number => at(joint, 'bore-flats')?.accessMinutes ?? Number.NaN;
    expect(offMinutes('through-spindle-24')).toBeLessThan(offMinutes('square-taper-jis'));
    expect(at('cottered-inch', 'cotter')).toMatchObject({ access: 'bolt-out' });
    expect(at('cottered-inch', 'cotter')?.destroys).toContain('bolt-on-arrival');
    expect(listChecks('one-piece').map(({ id }) => id)).toEqual([
      'arm-alignment',
      'arm-straightness',
      'play-at-arm',
      'spindle-flats',
      'spindle-runout',
      'creak-under-load',
      'bearing-turning',
      'other-sources',
      'history',
    ]);
  });

  it('refuses a joint that is not modelled', () => {
    expect(() => listChecks('other' as JointId)).toThrow(/no other joint is modelled/);
  });

  it('asks nobody to ride: every check is made before anybody may', () => {
    const asked = listChecks().flatMap(({ question, tools }) => [question, ...tools.map(({ text }) => text)]);
    expect(
      asked.map((text) => text.replace('Without riding', '')).filter((text) => /\brid(e|den|ing)\b/i.test(text)),
    ).toEqual([]);
  });
});
