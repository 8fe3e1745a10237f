// npm run test:long -- --seed 7 [--seconds 60] [--only taper]: every property a million times, or as often as the seconds
// allow. The same command goes on where the last one was stopped; the counts come at the end.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    seconds: { type: 'string', default: '60' },
    only: { type: 'string' },
  },
});
mkdirSync('tests/.out', { recursive: true });
const notes = `tests/.out/long-${values.seed}.jsonl`;
const { status } = spawnSync(
  process.execPath,
  ['node_modules/vitest/vitest.mjs', 'run', '--config', 'vitest.long.config.ts', ...(values.only ? [values.only] : [])],
  { stdio: 'inherit', env: { ...process.env, SEED: values.seed, LONG_SECONDS: values.seconds, LONG_NOTES: notes } },
);
const rows = existsSync(notes) ? readFileSync(notes, 'utf8').trim().split('\n').map(JSON.parse) : [];
for (const { name, runs, seconds } of rows)
  console.log(`${String(runs).padStart(9)} runs ${seconds.toFixed(0).padStart(4)} s  ${name}`);
console.log(`${rows.length} properties, ${rows.reduce((sum, { runs }) => sum + runs, 0)} runs, seed ${values.seed}`);
process.exitCode = status ?? 1;
