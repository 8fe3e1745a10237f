// Runs a range of inputs of one subject and tells what was wrong. Each input follows from the seed, the subject and its
// own number, so that one alone can be run again.
import { seededRandom } from '../seed.ts';
import type { Subject } from './subjects.ts';

/** One input that was not borne. */
export interface Fault {
  subject: string;
  index: number;
  what: string;
  input: string;
}

/** Longest time on a processor that one input may take: a busy machine makes nothing slow. */
export const LONGEST_MS = 1000;

const HOLDERS = [Object.prototype, Array.prototype, String.prototype, Number.prototype, Function.prototype, globalThis];
const namesNow = (): string => HOLDERS.map((holder) => Reflect.ownKeys(holder).map(String).join()).join(';');

/** The random numbers of one input. */
export function randomFor(seed: number, subject: string, index: number): () => number {
  let hash = 2166136261 ^ seed;
  for (const sign of `${subject}:${index}`) hash = Math.imul(hash ^ (sign.codePointAt(0) ?? 0), 16777619);
  return seededRandom(hash >>> 0);
}

function cpuMs(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

/** Runs the inputs `from` (included) to `to` (not included); `began` hears of each before it is run. */
export async function runShard(input: {
  name: string;
  subject: Subject;
  seed: number;
  from: number;
  to: number;
  began?: (index: number) => void;
}): Promise<{ faults: Fault[]; refusedCount: number; slowestMs: number; tookMs: number }> {
  const { name, subject, seed, from, to } = input;
  const faults: Fault[] = [];
  let refusedCount = 0;
  let slowestMs = 0;
  const began = performance.now();
  const names = namesNow();
  for (let index = from; index < to; index++) {
    input.began?.(index);
    const drawn = subject.draw(randomFor(seed, name, index));
    const fault = (what: string): void => {
      faults.push({
        subject: name,
        index,
        what,
        input: String(JSON.stringify(drawn)).slice(0, 2000),
      });
    };
    const start = cpuMs();
    try {
      const answer = subject.run(drawn);
      if (answer instanceof Promise) await answer;
    } catch (error) {
      if (subject.refuses(error)) refusedCount++;
      else fault(error instanceof Error ? (error.stack ?? error.message) : String(error));
    }
    const took = cpuMs() - start;
    slowestMs = Math.max(slowestMs, took);
    if (took > LONGEST_MS) fault(`took ${Math.round(took)} ms`);
    for (const key in {}) fault(`every object has got "${key}"`);
    if (faults.length >= 20) break;
  }
  if (namesNow() !== names)
    faults.push({ subject: name, index: from, what: 'a built-in object was changed', input: `${from} to ${to}` });
  return { faults, refusedCount, slowestMs, tookMs: performance.now() - began };
}
