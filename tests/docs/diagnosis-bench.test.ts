// What the diagnosis page says, asked of its bench: in words, in the order of the library, and never riding beside a stop.
import { type CheckId, diagnose, listChecks, listJoints, outlook } from '@spindlewright/diagnosis';
import { messages as words } from '@spindlewright/diagnosis/messages/en';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerOf, type Block, readState, type State } from '../../docs/bench/logic/bench.ts';
import { diagnosisBench } from '../../docs/bench/logic/diagnosis-bench.ts';
import { jobBench } from '../../docs/bench/logic/job-bench.ts';
import { idsIn, textsOf } from './bench-texts.ts';

const { defaults } = diagnosisBench;
const state = (filled: State): State => ({ ...defaults, ...filled });
const ask = (filled: State): readonly Block[] => answerOf(diagnosisBench, { state: state(filled), units: 'metric' });
const fieldsOf = (filled: State) =>
  diagnosisBench.groups({ state: state(filled), units: 'metric' }).flatMap(({ fields }) => fields);
const headline = (blocks: readonly Block[]) => blocks.find((block) => block.kind === 'headline');
const table = (blocks: readonly Block[], title: string) =>
  blocks.flatMap((block) => (block.kind === 'table' && block.title.startsWith(title) ? [block] : []))[0];

const joints = listJoints().flatMap(({ id, modelled }) => (modelled ? [id] : []));

/** Answers to some checks of some joint. */
const cases = fc.constantFrom(...joints).chain((joint) => {
  const known = listChecks(joint as never);
  return fc
    .subarray(known, { maxLength: 5 })
    .chain((some) =>
      fc.record(
        Object.fromEntries(some.map(({ id, outcomes }) => [id, fc.constantFrom(...outcomes.map((one) => one.id))])),
      ),
    )
    .map((answers): State => ({ joint, ...answers }));
});

const inputOf = ({ joint, ...answers }: State) => ({
  joint: joint as 'square-taper-jis',
  side: 'non-drive' as const,
  observations: Object.fromEntries(
    Object.entries(answers).map(([id, answer]) => [id, id === 'history' ? [answer] : answer]),
  ),
});

/** Everything that the library calls by an id: none of it is a word to read. */
const IDS = new Set([
  ...joints,
  ...Object.keys(words),
  ...Object.keys(words).map((code) =>
    code.replace(/^(check|outcome|condition|beside|cause|action|part|tool|access|need)-/, ''),
  ),
  ...listChecks().flatMap(({ id, outcomes }) => [id, ...outcomes.map((outcome) => outcome.id)]),
  ...['strongly-for', 'strongly-against', 'non-drive', 'endGapMm', 'shoulderGapMm', 'playAngleDeg', 'runoutMm'],
]);

describe('the diagnosis page', () => {
  it('uses words, not ids, whatever is answered', () => {
    fc.assert(
      fc.property(cases, fc.constantFrom('', '-0.5', '3'), (filled, endGapMm) => {
        const all = { ...filled, endGapMm };
        const labels = fieldsOf(all).flatMap(({ label, options = [] }) => [label, ...options.map((one) => one.label)]);
        expect(idsIn([...textsOf(ask(all)), ...labels], IDS)).toEqual([]);
      }),
      { numRuns: 80 },
    );
    expect(idsIn(['"bore-flats" was given'], IDS)).toEqual(['bore-flats']);
  });

  it('begins with the stop where the library says so, and asks for no ride', () => {
    fc.assert(
      fc.property(cases, (filled) => {
        const { doNotRide } = diagnose(inputOf(filled));
        const told = headline(ask(filled));
        const answered = Object.keys(filled).length > 1;
        if (answered) {
          expect(told?.text.startsWith('Do not ride. ')).toBe(doNotRide);
          expect(told?.tone === 'stop').toBe(doNotRide);
        }
        const asked = fieldsOf(filled).map(({ label }) => label.replace('Without riding', ''));
        expect(asked.filter((label) => /\brid(e|den|ing)\b/i.test(label))).toEqual([]);
      }),
      { numRuns: 80 },
    );
  });

  it('says after each answer what is to be done then, and whether to ride', () => {
    let stays = 0;
    fc.assert(
      fc.property(cases, (filled) => {
        const [first] = outlook(inputOf(filled));
        const rows = table(ask(filled), 'What each answer would do')?.rows;
        expect(rows?.length).toBe(first?.answers.length);
        for (const [index, { changesAction, doNotRide, action }] of (first?.answers ?? []).entries()) {
          const then = rows?.[index]?.[1] ?? '';
          const [todo = '', likely = ''] = then.split('. Most likely then: ');
          expect(todo.startsWith('Still: ')).toBe(!changesAction);
          expect(todo.endsWith('; do not ride')).toBe(doNotRide);
          expect(todo.replace('Still: ', '').replace('; do not ride', '').length).toBeGreaterThan(10);
          expect(likely).toMatch(/ (under 1|over 99|\d+) %$/);
          if (action === 'ride') expect(todo.toLowerCase()).toContain('may be ridden');
          if (!changesAction) stays += 1;
        }
      }),
      { numRuns: 60 },
    );
    expect(stays).toBeGreaterThan(0);
    const [row] =
      table(ask({ 'play-at-arm': 'arm-moves-on-spindle', 'bolt-on-arrival': 'tight' }), 'What each')?.rows ?? [];
    expect(row?.[1]).toContain('Still: take the arm off and look at hole, flats, bolt and gaps; do not ride. ');
  });

  it('orders what is worth a look by what it says it orders by, and marks the first there and among the questions', () => {
    fc.assert(
      fc.property(cases, (filled) => {
        const { nextChecks } = diagnose(inputOf(filled));
        const marked = fieldsOf(filled).filter(({ next }) => next);
        expect(marked.map(({ key }) => key)).toEqual(nextChecks.slice(0, 1).map(({ check }) => check));
        const list = table(ask(filled), 'Worth looking at');
        expect(list === undefined).toBe(nextChecks.length < 2);
        if (list === undefined) return;
        const [head] = marked;
        expect(list.rows[0]?.[0]).toBe(`1. ${head?.label} — look here next`);
        expect(list.rows.filter(([name]) => name?.includes('look here next')).length).toBe(1);
        const shown = list.rows.map(([, saves = '']) => Number(/[\d.]+/.exec(saves)?.[0]));
        expect(shown).toEqual([...shown].sort((a, b) => b - a));
        expect(list.note).toContain('for each minute it takes');
      }),
      { numRuns: 60 },
    );
  });

  it('names by its label what cannot be', () => {
    const search = '?endGapMm=abc&runoutMm=-3&play-at-arm=perhaps&joint=bayonet&clamp-slot=shut';
    const filled = readState(search, defaults);
    const blocks = ask(filled);
    expect(headline(blocks)?.text).toBe('This does not go together yet');
    expect(blocks.flatMap((block) => (block.kind === 'values' ? block.rows : []))).toEqual([
      { label: 'Interface', value: '“bayonet” is none of its answers' },
      { label: words['check-play-at-arm'], value: '“perhaps” is none of its answers' },
      { label: 'End gap, arm as found', value: '“abc” is not a number' },
      { label: 'Run-out of the spindle end, total', value: '−3 is out of range: 0 to 30 mm' },
      { label: words['check-clamp-slot'], value: '“shut” is none of its answers' },
    ]);
    const [action] = blocks.flatMap((block) => (block.kind === 'actions' ? block.actions : []));
    expect(headline(ask({ ...filled, ...action?.set }))?.text).toBe('Nothing answered yet');
  });

  it('takes readings as far as the library does, and no farther', () => {
    const fields = fieldsOf({}).filter(({ type }) => type === 'number');
    expect(fields.length).toBe(4);
    for (const { key, min = Number.NaN, max = Number.NaN } of fields) {
      const library = (value: number) => () =>
        diagnose({ joint: 'square-taper-jis', observations: {}, measurements: { [key]: value } });
      for (const value of [min, max]) {
        expect(library(value)).not.toThrow();
        expect(headline(ask({ [key]: String(value) }))?.text).not.toContain('does not go together');
      }
      for (const value of [min - 0.01, max + 0.01]) {
        expect(library(value)).toThrow();
        expect(headline(ask({ [key]: String(value) }))?.text).toBe('This does not go together yet');
      }
    }
  });

  it('leaves out what another joint has, and says so', () => {
    const kept: Partial<Record<CheckId | 'joint', string>> = { joint: 'cottered-metric', 'clamp-slot': 'open' };
    expect(textsOf(ask(kept)).join('\n')).toContain(`nothing to look at there: ${words['check-clamp-slot']}`);
    expect(textsOf(ask({ joint: 'cottered-metric' })).join('\n')).not.toContain('Left out');
  });

  it('hands every answer to the sheet, by keys that it knows', () => {
    const told = { joint: 'square-taper-iso', side: 'drive', 'bore-flats': 'rounded', history: 'impact' };
    const links = ask(told).flatMap((block) => (block.kind === 'links' ? block.links : []));
    const sheet = links.find(({ href }) => href.startsWith('./job.html?'))?.href.split('?')[1];
    const search = Object.fromEntries(new URLSearchParams(sheet));
    expect(search).toEqual({ from: 'empty', ...told });
    for (const key of Object.keys(search)) expect(jobBench.defaults).toHaveProperty([key]);
  });
});
