import { describe, expect, it } from 'vitest';
import { diagnose } from './diagnose.ts';
import { explain } from './explain.ts';
import { listJoints } from './list-joints.ts';
import { messages as de } from './messages/de.ts';
import { outlook } from './outlook.ts';
import type { DiagnoseInput, Diagnosis } from './types.ts';

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
    expect(texts).toContain('Nicht fahren (Kurbel ersetzen).');
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

  it.each(listJoints().flatMap(({ id, modelled }) => (modelled ? [id as DiagnoseInput['joint']] : [])))(
    'tells at %s what speaks for and against, what is open and what would change the action, in both languages',
    (joint) => {
      const input: DiagnoseInput = {
        joint,
        observations: { 'play-at-arm': 'none', 'arm-straightness': 'bent', 'creak-under-load': 'each-pedal-stroke' },
      };
      const full = { result: diagnose(input), outlook: outlook(input) };
      const codes = explain(full).map(({ code }) => code);
      expect(codes.some((code) => /^explain-evidence-.*for$/.test(code))).toBe(true);
      expect(codes.some((code) => /^explain-evidence-.*against$/.test(code))).toBe(
        full.result.evidence.some(({ weight }) => weight.endsWith('against')),
      );
      const changing = full.outlook
        .map(({ answers }) => answers.filter((answer) => answer.changesAction))
        .filter((answers) => answers.length > 0)
        .slice(0, 2)
        .flat();
      expect(codes.filter((code) => code.startsWith('explain-would-'))).toHaveLength(changing.length);
      const little: DiagnoseInput = { joint, observations: { 'play-at-arm': 'none' } };
      const early = explain({ result: diagnose(little), outlook: outlook(little), messages: de });
      expect(early.some(({ code }) => code.startsWith('explain-would-'))).toBe(true);
      for (const { message } of [...explain(full), ...early]) expect(message).toMatch(/^[^{}]*[.?)]$/);
    },
  );

  it('names what speaks against even behind three pieces that speak for', () => {
    const [piece] = result.evidence;
    if (piece === undefined) throw new Error('no evidence');
    const against = { ...piece, weight: 'against' as const, logOddsRatio: -1 };
    const evidence = [piece, piece, piece, piece, against];
    const codes = explain({ result: { ...result, evidence } }).map(({ code }) => code);
    expect(codes.filter((code) => code.startsWith('explain-evidence-'))).toHaveLength(4);
    expect(codes).toContain('explain-evidence-against');
  });

  it.each([[undefined], [null], [{}], [{ conditions: [], causes: [] }]])('refuses %j', (value) => {
    expect(() => explain({ result: value as unknown as Diagnosis })).toThrow(/explain: result/);
  });

  it('says no id of a check or an action in a sentence', () => {
    const observations = {
      'end-gap': 'clear',
      'bolt-on-arrival': 'tight',
      'play-after-tightening': 'remains',
      'bore-flats': 'rounded',
    } as const;
    const result = diagnose({ joint: 'square-taper-jis', observations, measurements: { endGapMm: -0.5 } });
    const lines = explain({ result });
    expect(lines.map(({ code }) => code)).toContain('caution-do-not-ride');
    expect(result.contradictions.length).toBeGreaterThan(0);
    for (const { message } of lines)
      expect(message).not.toMatch(/"[a-z]+(-[a-z]+)+"|\b(replace-arm|end-gap|bore-flats)\b/);
  });
});
