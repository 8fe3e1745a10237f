import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../test/demo-job.ts';
import type { Asker, Choice } from './asker.ts';
import { type AskHost, runAsk } from './index.ts';

const job = {
  ...demoJob,
  partMakerTorqueNm: '350 lbf.in',
};

/** Somebody who answers by a script: a label, a text or * for the first choice; what is asked beyond it is broken off. */
function stand(files: Record<string, unknown>, script: readonly string[], somebody = true) {
  const answers = [...script];
  const asked: { question: string; choices: readonly Choice[] }[] = [];
  const state = {
    files: Object.fromEntries(Object.entries(files).map(([name, data]) => [name, JSON.stringify(data)])),
    asked,
    out: '',
    err: '',
    said: [] as string[],
    faults: [] as string[],
  };
  const pick = (question: string, choices: readonly Choice[]): string | undefined => {
    asked.push({ question, choices });
    const wanted = answers.shift();
    if (wanted === '*') return choices[0]?.value;
    return wanted === undefined ? undefined : choices.find(({ label }) => label.startsWith(wanted))?.value;
  };
  const asker: Asker = {
    one: async (question, choices) => pick(question, choices),
    some: async (_question, choices) => choices.slice(0, 2).map(({ value }) => value),
    text: async (_question, _example, fault) => {
      // What is wrong is said, and the same question stands, as at a terminal.
      for (;;) {
        const line = answers.shift();
        const wrong = line === undefined ? undefined : fault?.(line);
        if (wrong === undefined) return line;
        state.faults.push(wrong);
      }
    },
    say: (text) => state.said.push(text),
  };
  const host: AskHost = {
    readText: (path) => state.files[path] ?? '',
    writeText: (path, text) => {
      state.files[path] = text;
    },
    print: (text) => {
      state.out += text;
    },
    complain: (text) => {
      state.err += text;
    },
    exists: (path) => Object.hasOwn(state.files, path),
    today: () => '2026-11-27',
    asker: async () => (somebody ? asker : undefined),
  };
  return { state, run: (...args: string[]) => runAsk([...args, '--ask'], host) };
}
const saved = (state: { files: Record<string, string> }, name = 'a.json') => JSON.parse(state.files[name] ?? '{}');

describe('job --ask', () => {
  it('saves every answer at once, and leaves what else the file says', async () => {
    const { state, run } = stand({ 'a.json': job }, ['*', 'Save and stop']);
    const first = await run('a.json');
    expect(first).toBe(0);
    expect(saved(state).partMakerTorqueNm).toBe('350 lbf.in');
    expect(Object.keys(saved(state).observations)).toHaveLength(1);
    expect(state.err).toContain('spindlewright job a.json');
  });

  it('says before each question what is thought, what to do and whether it may be ridden', async () => {
    const { state, run } = stand({ 'a.json': job }, ['Not now', 'Save and stop']);
    await run('a.json');
    expect(state.said[0]).toMatch(/^So far: .+ \(\d+ %\).*\nTo do: /);
    expect(state.said.join()).toContain('DO NOT RIDE');
    expect(saved(state).observations).toEqual({});
  });

  it('offers undo with the answer that goes, and takes it back in the file', async () => {
    const given = { ...job, observations: { 'bolt-on-arrival': 'tight', 'play-at-arm': 'none' } };
    const { state, run } = stand({ 'a.json': given }, ['Undo', 'Save and stop']);
    await run('a.json');
    expect(state.asked[0]?.choices.map(({ label }) => label)).toContain('Undo: take back play at arm');
    expect(saved(state).observations).toEqual({ 'bolt-on-arrival': 'tight' });
  });

  it('keeps what was answered when it is broken off', async () => {
    const { state, run } = stand({ 'a.json': job }, ['Cannot tell']);
    expect(await run('a.json', '--save', 'b.json')).toBe(130);
    expect(Object.values(saved(state, 'b.json').observations)).toEqual(['unclear']);
    expect(saved(state)).toEqual(job);
    expect(state.err).toContain('the answers so far are in b.json');
  });

  it('ends by itself when nothing would change what to do, and prints the sheet when asked', async () => {
    const decided = {
      ...job,
      observations: {
        'play-at-arm': 'arm-moves-on-spindle',
        'bore-flats': 'cracked',
        'spindle-flats': 'cracked',
        'witness-mark': 'one-edge',
        history: ['ridden-loose'],
      },
    };
    const { state, run } = stand({ 'a.json': decided }, ['End']);
    expect(await run('a.json', '--as', 'text')).toBe(0);
    expect(state.asked.map(({ question }) => question)).toEqual(['No further look would change what to do.']);
    expect(state.out.startsWith('DEMO')).toBe(true);
  });

  const pinched = { ...job, interface: { spindle: 'through-spindle-24', arm: 'through-spindle-24' } };
  const { partMakerTorqueNm: _torque, ...clamped } = pinched;
  const looked = {
    ...clamped,
    observations: { 'play-at-arm': 'arm-moves-on-spindle', 'bore-flats': 'cracked', 'spindle-flats': 'cracked' },
  };
  const past = ['Not now', 'Not now', 'Not now', 'Not now', 'Not now', 'Not now', 'Not now', 'Not now', 'Not now'];
  /** Puts off whatever check is left, which depends on the weights of the diagnosis. */
  const checksLeft = async (): Promise<string[]> => {
    const { state, run } = stand({ 'a.json': looked }, past);
    await run('a.json');
    return past.slice(0, state.asked.filter(({ choices }) => choices.some(({ label }) => label === 'Not now')).length);
  };

  it('takes readings once the checks are through: one key or one number each, with undo and stop', async () => {
    const script = [...(await checksLeft()), 'Readings', '14', 'yes', '0,8', 'n', '2 bolts', 'u', '3 bolts', 's'];
    const { state, run } = stand({ 'a.json': looked }, script);
    expect(await run('a.json')).toBe(0);
    expect(saved(state).clamp).toEqual({ safetyCatch: 'engaged', slotGapMm: 0.8, boltCount: 3 });
    expect(saved(state).partMakerTorqueNm).toBe(14);
  });

  it('says what is wrong with a reading and asks again', async () => {
    const script = [...(await checksLeft()), 'Readings', 'n', 'Not now', 'wide', '99', '1.2', 's'];
    const { state, run } = stand({ 'a.json': looked }, script);
    expect(await run('a.json')).toBe(0);
    expect(state.faults[0]).toMatch(/a number with its unit/);
    expect(state.faults[1]).toMatch(/the gap left in the slot: allowed is/);
    expect(saved(state).clamp).toEqual({ slotGapMm: 1.2 });
  });

  it('asks and answers in the words of the joint', async () => {
    const { state, run } = stand({ 'a.json': clamped }, past);
    await run('a.json');
    const words = JSON.stringify(state.asked) + state.said.join();
    expect(words).toMatch(/pinch bolt/i);
    expect(words).not.toMatch(/crank bolt/i);
  });

  it('begins a job that is not there, and keeps it', async () => {
    const { state, run } = stand({}, ['an invented bike', 'the other side', 'a square taper, not', 'Save and stop']);
    expect(await run('new.json')).toBe(0);
    expect(saved(state, 'new.json')).toEqual({
      format: 'spindlewright-job-1',
      title: 'an invented bike',
      date: '2026-11-27',
      bike: 'an invented bike',
      side: 'non-drive',
      interface: { spindle: 'unknown', arm: 'unknown' },
      observations: {},
    });
    const gone = stand({}, ['an invented bike']);
    expect(await gone.run('new.json')).toBe(130);
    expect(gone.state.files).toEqual({});
  });

  it.each<[string, readonly string[], string]>([
    ['standard input', ['-'], 'the job has to be in a file'],
    ['the page in place of the job', ['a.json', '--html', 'a.json'], '--html names the job file'],
    ['a job with faults', ['bad.json'], 'side'],
    ['nothing', [], 'FILE is missing'],
  ])('refuses %s', async (_name, args, complaint) => {
    const { state, run } = stand({ 'a.json': job, 'bad.json': { ...job, side: 'left' } }, []);
    expect(await run(...args)).toBe(2);
    expect(state.err).toContain(complaint);
  });

  it('refuses where nobody sits at a terminal', async () => {
    const { state, run } = stand({ 'a.json': job }, [], false);
    expect(await run('a.json')).toBe(2);
    expect(state.err).toContain('--ask needs somebody at a terminal');
  });
});
