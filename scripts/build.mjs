// Builds every package in layer order: quantity first, the leaves, then the composing package.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';

const first = ['quantity'];
const last = ['spindlewright'];
const all = readdirSync('packages');
const order = [...first, ...all.filter((name) => !first.includes(name) && !last.includes(name)), ...last];
for (const name of order.filter((entry) => all.includes(entry))) {
  const run = spawnSync('node', ['../../node_modules/tsup/dist/cli-default.js'], {
    cwd: `packages/${name}`,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (run.status !== 0) {
    console.error(`build of packages/${name} failed`);
    process.exit(1);
  }
  console.log(`built packages/${name}`);
}
