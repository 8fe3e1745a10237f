// Packs every built package into tests/.out/tarballs, as a registry would get it.
import { spawnSync } from 'node:child_process';
import { existsSync, globSync, mkdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { packages } from './package-shape.mjs';

const out = 'tests/.out/tarballs';
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';

const newest = (pattern) => Math.max(0, ...globSync(pattern).map((path) => statSync(path).mtimeMs));
const isSource = (path) => !path.endsWith('.test.ts');

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
const packed = {};
for (const folder of Object.keys(packages)) {
  const dist = `packages/${folder}/dist/index.js`;
  if (!existsSync(dist)) fail(`packages/${folder} is not built`);
  const sources = globSync(`packages/${folder}/{src,data}/**/*.{ts,json}`).filter(isSource);
  const changed = Math.max(0, ...sources.map((path) => statSync(path).mtimeMs));
  if (changed > newest(`packages/${folder}/dist/**/*.js`))
    fail(`the build of packages/${folder} is older than its sources`);
  const run = spawnSync(npm, ['pack', '--json', '--pack-destination', `../../${out}`], {
    cwd: `packages/${folder}`,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  if (run.status !== 0) fail(`npm pack of packages/${folder} failed`);
  const answer = JSON.parse(run.stdout);
  const [{ filename, files, size, unpackedSize }] = Array.isArray(answer) ? answer : Object.values(answer);
  packed[folder] = { tarball: `${out}/${filename}`, size, unpackedSize, files: files.map((file) => file.path).sort() };
  console.log(`packed ${filename}: ${(size / 1000).toFixed(1)} kB, ${files.length} files`);
}
writeFileSync(`${out}/packed.json`, `${JSON.stringify(packed, null, 2)}\n`);

function fail(reason) {
  console.error(`${reason}: run "npm run build" first`);
  process.exit(1);
}
