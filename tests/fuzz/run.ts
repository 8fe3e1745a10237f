// npm run fuzz -- --inputs 10000000 --seed 7 [--subject job] [--only 12345] [--threads 2]
// Throws broken input at everything that reads input. Stops with 1 when something crashed, hung for over a second or
// changed a built-in object. What is done is kept in tests/.out/fuzz-<seed>.json; the same command goes on from there.
import { once } from 'node:events';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { root } from '../workspace.ts';
import { type Fault, LONGEST_MS, randomFor, runShard } from './shard.ts';
import { listSubjects } from './subjects.ts';

const { values: given } = parseArgs({
  options: {
    inputs: { type: 'string', default: '1000000' },
    seed: { type: 'string', default: '1' },
    subject: { type: 'string' },
    only: { type: 'string' },
    threads: { type: 'string', default: String(availableParallelism()) },
  },
});
const seed = Number(given.seed);
const SHARD = 5000;

if (given.only !== undefined) {
  const name = given.subject ?? '';
  const subject = (await listSubjects())[name];
  if (subject === undefined) throw new Error('--only asks for --subject');
  const from = Number(given.only);
  console.log(subject.draw(randomFor(seed, name, from)));
  console.log(await runShard({ name, subject, seed, from, to: from + 1 }));
  process.exit();
}

interface State {
  done: Record<string, number>;
  refused: Record<string, number>;
  slowestMs: Record<string, number>;
  tookMs: Record<string, number>;
  faults: Fault[];
}
const stateFile = `${root}/tests/.out/fuzz-${seed}.json`;
mkdirSync(`${root}/tests/.out`, { recursive: true });
const state: State = existsSync(stateFile)
  ? (JSON.parse(readFileSync(stateFile, 'utf8')) as State)
  : { done: {}, refused: {}, slowestMs: {}, tookMs: {}, faults: [] };
// A fault is told again until its input is borne.
state.faults = [];

const names = given.subject === undefined ? Object.keys(await listSubjects()) : [given.subject];
const each = Math.ceil(Number(given.inputs) / names.length);
const shards = names.flatMap((name) => {
  const from = state.done[name] ?? 0;
  const count = Math.max(0, Math.ceil((each - from) / SHARD));
  return Array.from({ length: count }, (_, k) => ({
    name,
    from: from + k * SHARD,
    to: Math.min(each, from + (k + 1) * SHARD),
  }));
});
// In turns, so that a run that is cut short has looked at all of them.
shards.sort((a, b) => a.from - b.from);

/** Ranges that are done but do not follow on yet. */
const early = new Map<string, Map<number, number>>(names.map((name) => [name, new Map()]));
function finish(name: string, from: number, to: number): void {
  const waiting = early.get(name);
  waiting?.set(from, to);
  let end = state.done[name] ?? 0;
  for (let next = waiting?.get(end); next !== undefined; next = waiting?.get(end)) {
    waiting?.delete(end);
    end = next;
  }
  state.done[name] = end;
}

async function work(): Promise<void> {
  const clock = new SharedArrayBuffer(4);
  const at = new Int32Array(clock);
  Atomics.store(at, 0, -1);
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { workerData: { clock, seed } });
  const message = async (): Promise<unknown> => (await once(worker, 'message'))[0];
  await message();
  for (let shard = shards.shift(); shard !== undefined; shard = shards.shift()) {
    const { name } = shard;
    let seen = -1;
    let since = Date.now();
    const watch = setInterval(() => {
      const now = Atomics.load(at, 0);
      if (now !== seen) [seen, since] = [now, Date.now()];
      // A minute: the worker itself tells what is merely slow, this is for what never ends.
      else if (now >= 0 && Date.now() - since > 60 * LONGEST_MS) {
        console.error(`hangs: --subject ${name} --seed ${seed} --only ${now}`);
        process.exit(1);
      }
    }, 500);
    const answer = message();
    worker.postMessage(shard);
    const { faults, refusedCount, slowestMs, tookMs } = (await answer) as Awaited<ReturnType<typeof runShard>>;
    clearInterval(watch);
    finish(name, shard.from, shard.to);
    state.refused[name] = (state.refused[name] ?? 0) + refusedCount;
    state.slowestMs[name] = Math.max(state.slowestMs[name] ?? 0, slowestMs);
    state.tookMs[name] = (state.tookMs[name] ?? 0) + tookMs;
    state.faults.push(...faults);
    writeFileSync(stateFile, `${JSON.stringify(state, null, 2)}\n`);
    if (state.faults.length > 100) break;
  }
  await worker.terminate();
}

const start = Date.now();
await Promise.all(Array.from({ length: Math.max(1, Number(given.threads)) }, work));
for (const name of names)
  console.log(
    `${name}: ${state.done[name]} inputs, ${state.refused[name]} refused, slowest ${state.slowestMs[name]?.toFixed(0)} ms, ${((1000 * (state.tookMs[name] ?? 0)) / (state.done[name] ?? 1)).toFixed(0)} us each`,
  );
const kinds = new Map<string, Fault>();
for (const fault of state.faults) kinds.set(`${fault.subject} ${fault.what.split('\n')[0]}`, fault);
for (const { subject, index, what, input } of kinds.values())
  console.error(`\nFAULT --subject ${subject} --seed ${seed} --only ${index}\n${what}\n${input.slice(0, 600)}`);
const total = names.reduce((sum, name) => sum + (state.done[name] ?? 0), 0);
console.log(`${total} inputs, ${state.faults.length} faults, ${Math.round((Date.now() - start) / 1000)} s`);
process.exitCode = state.faults.length === 0 ? 0 : 1;
