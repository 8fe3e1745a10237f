// npm run release:rehearse: a whole release against a registry on this machine. Publishes half of the packages, breaks off,
// takes the release up again as the workflow does, installs the packages in projects of all kinds on every Node that is
// promised, and holds the tree of their dependencies against the one that was reviewed. Needs `npm run build`.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { packages } from './package-shape.mjs';

const REVIEWED = 'tests/release/dependency-tree.txt';
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';

const folder = mkdtempSync(join(tmpdir(), 'rehearsal-'));
const port = await freePort();
const registry = `http://127.0.0.1:${port}/`;
const upstream = run(npm, ['config', 'get', 'registry']).trim();
const env = { ...process.env, npm_config_registry: registry, npm_config_userconfig: join(folder, 'npmrc') };

writeFileSync(
  join(folder, 'npmrc'),
  `//127.0.0.1:${port}/:_authToken=nobody\nloglevel=error\nfund=false\naudit=false\n`,
);
writeFileSync(
  join(folder, 'verdaccio.yaml'),
  `storage: ${join(folder, 'storage')}
uplinks:
  upstream: { url: '${upstream}', cache: false }
packages:
  'spindlewright': { access: $all, publish: $all, unpublish: $all }
  '@spindlewright/*': { access: $all, publish: $all, unpublish: $all }
  '**': { access: $all, proxy: upstream }
log: { type: stdout, level: error }
`,
);
if (!existsSync('tests/release/node_modules')) run(npm, ['ci'], { cwd: 'tests/release' });

const server = spawn(
  process.execPath,
  [
    'tests/release/node_modules/verdaccio/bin/verdaccio',
    '--config',
    join(folder, 'verdaccio.yaml'),
    '--listen',
    `127.0.0.1:${port}`,
  ],
  { stdio: ['ignore', 'inherit', 'inherit'] },
);
try {
  await answers(registry);
  const shipped = Object.entries(packages).map(([name, { name: id }]) => {
    const { version } = JSON.parse(readFileSync(`packages/${name}/package.json`, 'utf8'));
    return { name, id, version };
  });

  const half = shipped.slice(0, 3);
  for (const { name } of half) run(npm, ['publish'], { cwd: `packages/${name}`, env });
  tell(`published ${half.map(({ id }) => id).join(', ')}; then the release broke off`);
  run(process.execPath, ['node_modules/@changesets/cli/bin.js', 'publish', '--no-git-tag'], { env });
  for (const { id, version } of shipped) {
    const there = JSON.parse(run(npm, ['view', id, 'versions', '--json'], { env }));
    if (![there].flat().includes(version)) throw new Error(`${id}@${version} is not on the registry`);
  }
  tell(`taken up again: ${shipped.map(({ id, version }) => `${id}@${version}`).join(', ')}`);

  const consumer = join(folder, 'consumer');
  mkdirSync(consumer);
  writeFileSync(join(consumer, 'package.json'), '{ "name": "consumer", "private": true, "version": "0.0.0" }\n');
  run(npm, ['install', ...shipped.map(({ id, version }) => `${id}@${version}`)], { cwd: consumer, env });
  const lock = JSON.parse(readFileSync(join(consumer, 'package-lock.json'), 'utf8')).packages;
  const rows = Object.entries(lock).filter(([path]) => path !== '');
  const scripted = rows.filter(([, entry]) => entry.hasInstallScript).map(([path]) => path);
  if (scripted.length > 0) throw new Error(`install scripts: ${scripted.join(', ')}`);
  const tree = `${rows
    .map(([path, { license }]) => `${path.replace(/^.*node_modules\//, '')} ${license ?? 'no licence'}`)
    .sort()
    .join('\n')}\n`;
  if (process.argv.includes('--write')) writeFileSync(REVIEWED, tree);
  const reviewed = existsSync(REVIEWED) ? readFileSync(REVIEWED, 'utf8') : '';
  if (tree !== reviewed) throw new Error(`the tree is not the one reviewed (--write writes it):\n${tree}`);
  tell(`${rows.length} packages in the tree, none with an install script`);

  run(process.execPath, ['scripts/pack.mjs']);
  const tests = spawnSync(
    process.execPath,
    ['node_modules/vitest/vitest.mjs', 'run', '--config', 'vitest.packed.config.ts', 'tests/consumers'],
    { stdio: 'inherit', env: { ...env, REHEARSAL: registry } },
  );
  if (tests.status !== 0) throw new Error('what was installed does not work');
  tell('the rehearsal went through');
} finally {
  server.kill();
  rmSync(folder, { recursive: true, force: true });
}

function run(command, args, options = {}) {
  const { status, stdout, stderr } = spawnSync(command, args, { encoding: 'utf8', ...options });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}\n${stdout}\n${stderr}`);
  return stdout;
}

function tell(text) {
  console.log(`rehearsal: ${text}`);
}

function freePort() {
  return new Promise((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

async function answers(url) {
  for (let left = 120; left > 0; left--) {
    const up = await fetch(`${url}-/ping`).then(
      ({ ok }) => ok,
      () => false,
    );
    if (up) return;
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  throw new Error('the registry does not answer');
}
