// Checks the whole tree with Node's types, then each package's published code without any platform types, so that a
// leaf that reaches for a browser or Node global fails here. As many at once as there are cores.
import { spawn } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';

const projects = ['tsconfig.json', ...readdirSync('packages').map((name) => `packages/${name}/tsconfig.json`)];
const waiting = projects.filter(existsSync);
let failed = 0;

const check = (project) =>
  new Promise((resolve) => {
    const run = spawn('node', ['node_modules/typescript/bin/tsc', '-p', project], { stdio: 'inherit' });
    run.on('close', (status) => {
      if (status !== 0) failed++;
      resolve();
    });
  });

async function worker() {
  for (let project = waiting.shift(); project !== undefined; project = waiting.shift()) await check(project);
}

await Promise.all(Array.from({ length: Math.min(availableParallelism(), waiting.length) }, worker));
process.exit(failed ? 1 : 0);
