// Checks the whole tree with Node's types, then each package's published code without any platform types, so that a
// leaf that reaches for a browser or Node global fails here.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';

const projects = ['tsconfig.json', ...readdirSync('packages').map((name) => `packages/${name}/tsconfig.json`)];
let failed = 0;
for (const project of projects.filter(existsSync)) {
  const run = spawnSync('node', ['node_modules/typescript/bin/tsc', '-p', project], { stdio: 'inherit' });
  if (run.status !== 0) failed++;
}
process.exit(failed ? 1 : 0);
