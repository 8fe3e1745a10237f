// A short run of the fuzzer, and the fuzzer itself on subjects with a fault. Long runs: `npm run fuzz`.
import { describe, expect, it } from 'vitest';
import { seededRandom, seedOfRun } from '../seed.ts';
import { mutateText } from './mutate-text.ts';
import { mutateValue } from './mutate-value.ts';
import { randomFor, runShard } from './shard.ts';
import { listSubjects, type Subject } from './subjects.ts';

const subjects = await listSubjects();
const seed = seedOfRun();

describe('whatever comes is answered or refused', () => {
  it.each(Object.keys(subjects))('%s', async (name) => {
    const subject = subjects[name] as Subject;
    const { faults } = await runShard({ name, subject, seed, from: 0, to: 300 });
    expect(faults).toEqual([]);
  });
});

describe('the fuzzer', () => {
  const planted = (run: Subject['run']) =>
    runShard({
      name: 'planted',
      subject: {
        draw: (random) => mutateText(['{"a": 1}'], random),
        run,
        refuses: (error) => error instanceof SyntaxError,
      },
      seed: 1,
      from: 0,
      to: 200,
    });

  it('tells a refusal from a crash', async () => {
    const refused = await planted((input) => JSON.parse(input as string));
    expect(refused.faults).toEqual([]);
    expect(refused.refusedCount).toBeGreaterThan(100);
    const crashed = await planted(
      (input) => (input as string).includes('{') || (undefined as unknown as string).length,
    );
    expect(crashed.faults.length).toBeGreaterThan(0);
    expect(crashed.faults[0]?.what).toContain('TypeError');
  });

  it('sees what hangs', async () => {
    // Time of the kernel counts as well: asking for the time takes some, and more of it on a busy machine.
    const now = () => {
      const { user, system } = process.threadCpuUsage();
      return (user + system) / 1000;
    };
    let slow = true;
    const { faults } = await planted(() => {
      const end = now() + (slow ? 1100 : 0);
      slow = false;
      while (now() < end);
    });
    expect(faults.map(({ index }) => index)).toEqual([0]);
    expect(faults[0]?.what).toMatch(/^took 1\d\d\d ms$/);
  });

  it('sees a changed prototype, enumerable or not', async () => {
    const shared = Object.prototype as unknown as Record<string, unknown>;
    const open = await planted(() => {
      shared.polluted = 1;
    });
    delete shared.polluted;
    expect(open.faults[0]?.what).toBe('every object has got "polluted"');
    const hidden = await planted(() => {
      Object.defineProperty(shared, 'hidden', { value: 1, configurable: true });
    });
    delete shared.hidden;
    expect(hidden.faults.at(-1)?.what).toBe('a built-in object was changed');
  });

  it('draws each input again from its number alone', () => {
    const draw = (index: number) => subjects.catalogue?.draw(randomFor(seed, 'catalogue', index));
    expect(draw(17)).toEqual(draw(17));
    expect(draw(17)).not.toEqual(draw(18));
  });

  it('breaks values in every way, and leaves what it began with as it was', () => {
    const corpus = [{ a: { b: [1, 2] }, c: 'x' }];
    const before = JSON.stringify(corpus);
    const random = seededRandom(5);
    const seen = new Set(Array.from({ length: 500 }, () => JSON.stringify(mutateValue(corpus, random))));
    expect(seen.size).toBeGreaterThan(300);
    expect([...seen].some((text) => text.includes('"__proto__"'))).toBe(true);
    expect(JSON.stringify(corpus)).toBe(before);
  });
});
