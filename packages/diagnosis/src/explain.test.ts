import { describe, expect, it } from 'vitest';
import { diagnose } from './diagnose.ts';
import { explain } from './explain.ts';
import type { Diagnosis } from './types.ts';

const result = diagnose({
  joint: 'square-taper-jis',
  observations: {
    'bolt-on-arrival': 'tight',
    'play-after-tightening': 'remains',
    'bore-flats': 'rounded',
    'witness-mark': 'whole-flat',
    history: 'ridden-loose',
  },
});

describe('explain', () => {
  it('puts a diagnosis into sentences, riding first', () => {
    const lines = explain({ result });
    expect(lines.map(({ code }) => code).slice(0, 4)).toEqual([
      'explain-do-not-ride',
      'explain-condition',
      'explain-cause',
      'explain-action',
    ]);
    expect(lines[0]).toMatchObject({ severity: 'stop', message: 'Not to be ridden until this is done and checked.' });
    expect(lines[1]?.message).toMatch(/^Most probable: the hole of the arm is deformed \((99|100) in 100\)\.$/);
    expect(lines[3]?.message).toBe('What to do: replace the arm.');
    expect(lines.map(({ message }) => message)).toContain(
      'The hole is rounded, bellied or widened at its mouth: speaks strongly for it.',
    );
    expect(lines.at(-1)?.code).toBe('caution-maker-first');
  });

  it('speaks another language where the table has it, English where it has not', () => {
    const messages = {
      'explain-action': 'Zu tun: {text}.',
      'action-replace-arm': 'Kurbel ersetzen',
      'caution-do-not-ride': 'Nicht fahren ({action}).',
    };
    const texts = explain({ result, messages }).map(({ message }) => message);
    expect(texts).toContain('Zu tun: Kurbel ersetzen.');
    expect(texts).toContain('Nicht fahren (replace-arm).');
    expect(texts).toContain('Not to be ridden until this is done and checked.');
  });

  it('says so when nothing is left to check, and names contradictions', () => {
    const odd = diagnose({
      joint: 'square-taper',
      observations: { 'shoulder-gap': 'touching', 'witness-mark': 'stops-short' },
    });
    expect(explain({ result: odd }).map(({ code }) => code)).toContain('contradiction-incompatible');
    const done = explain({ result: { ...result, nextChecks: [] } });
    expect(done.map(({ code }) => code)).toContain('explain-no-next-check');
  });

  it.each([[undefined], [null], [{}], [{ conditions: [], causes: [] }]])('refuses %j', (value) => {
    expect(() => explain({ result: value as unknown as Diagnosis })).toThrow(/explain: result/);
  });
});
