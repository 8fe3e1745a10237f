// One thread of the fuzzer: works shard after shard and keeps a clock that the main thread can read while it hangs.
import { parentPort, workerData } from 'node:worker_threads';
import { runShard } from './shard.ts';
import { listSubjects } from './subjects.ts';

const { clock, seed } = workerData as { clock: SharedArrayBuffer; seed: number };
const at = new Int32Array(clock);
const subjects = await listSubjects();

parentPort?.on('message', async ({ name, from, to }: { name: string; from: number; to: number }) => {
  const subject = subjects[name];
  if (subject === undefined) throw new Error(`no subject "${name}"; there are ${Object.keys(subjects).join(', ')}`);
  const done = await runShard({ name, subject, seed, from, to, began: (index) => Atomics.store(at, 0, index) });
  Atomics.store(at, 0, -1);
  parentPort?.postMessage({ name, from, to, ...done });
});
parentPort?.postMessage({ ready: Object.keys(subjects) });
