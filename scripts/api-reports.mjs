// npm run api: writes what every published entry offers to packages/<folder>/api/<entry>.api.md, from the built
// declarations. With --check nothing is written and an entry that changed is a fault: who changes it on purpose runs the
// first, reads the difference, and takes it into the same commit. Needs `npm run build`.
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { Extractor, ExtractorConfig } from '@microsoft/api-extractor';
import { packages } from './package-shape.mjs';

/** Name of the report of an entry: `./messages/en` is messages-en. */
const reportOf = (entry) => (entry === '.' ? 'index' : entry.slice(2).replaceAll('/', '-'));

/** What an entry offers, as text; `trouble` takes what could not be read. */
function describe(folder, source, name, scratch, trouble) {
  const root = resolve('packages', folder);
  const declarations = join(root, source.replace(/^src\//, 'dist/').replace(/\.ts$/, '.d.ts'));
  const config = ExtractorConfig.prepare({
    packageJsonFullPath: join(root, 'package.json'),
    configObjectFullPath: undefined,
    configObject: {
      projectFolder: root,
      mainEntryPointFilePath: declarations,
      apiReport: { enabled: true, reportFolder: scratch, reportTempFolder: scratch, reportFileName: `${name}.api.md` },
      docModel: { enabled: false },
      dtsRollup: { enabled: false },
      tsdocMetadata: { enabled: false },
      compiler: {
        overrideTsconfig: {
          compilerOptions: {
            module: 'esnext',
            moduleResolution: 'bundler',
            target: 'es2022',
            lib: ['es2022', 'dom'],
            types: [],
          },
          files: [declarations],
        },
      },
      messages: {
        compilerMessageReporting: { default: { logLevel: 'error' } },
        // Docstrings are asked for in a stricter form elsewhere.
        extractorMessageReporting: { default: { logLevel: 'none' } },
        tsdocMessageReporting: { default: { logLevel: 'none' } },
      },
    },
  });
  const result = Extractor.invoke(config, {
    localBuild: true,
    messageCallback(message) {
      if (message.logLevel === 'error') trouble.push(`${folder} ${name}: ${message.text}`);
      message.handled = true;
    },
  });
  if (!result.succeeded) trouble.push(`${folder} ${name}: not read`);
  const path = join(scratch, `${name}.api.md`);
  return existsSync(path) ? readFileSync(path, 'utf8') : '';
}

const checks = process.argv.includes('--check');
const faults = [];
let count = 0;
for (const [folder, { entries }] of Object.entries(packages)) {
  const wanted = new Map();
  const scratch = mkdtempSync(join(tmpdir(), 'api-'));
  for (const [entry, source] of Object.entries(entries)) {
    const name = reportOf(entry);
    wanted.set(`${name}.api.md`, describe(folder, source, name, scratch, faults));
    count++;
  }
  rmSync(scratch, { recursive: true });
  const place = `packages/${folder}/api`;
  mkdirSync(place, { recursive: true });
  for (const file of readdirSync(place)) {
    if (wanted.has(file)) continue;
    if (checks) faults.push(`${place}/${file}: no entry of that name`);
    else rmSync(`${place}/${file}`);
  }
  for (const [file, text] of wanted) {
    const path = `${place}/${file}`;
    if (!checks) writeFileSync(path, text);
    else if (!existsSync(path) || readFileSync(path, 'utf8') !== text)
      faults.push(`${path}: not what the build offers; \`npm run api\` writes it`);
  }
}
for (const fault of faults) console.error(fault);
console.log(`${count} entries, ${faults.length} faults`);
process.exitCode = faults.length > 0 ? 1 : 0;
