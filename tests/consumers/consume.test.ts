import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { createContext, runInContext } from 'node:vm';
import { build } from 'esbuild';
import { describe, expect, inject, it } from 'vitest';
import { packages } from '../../scripts/package-shape.mjs';
import { type Entry, entries, readText, root } from '../workspace.ts';
import { OLDEST_MAJOR } from './install.ts';

const packed = inject('packed');
const withZod = inject('withZod');
const withoutZod = inject('withoutZod');

const shipped = entries.filter((entry) => Object.hasOwn(packed, entry.folder));
const isCommandLine = (entry: Entry): boolean => entry.specifier.endsWith('/cli');
const isSchema = (entry: Entry): boolean => entry.specifier.endsWith('/schema');
const needsZod = (entry: Entry): boolean => isSchema(entry) || packages[entry.folder]?.dependencies?.zod !== undefined;

const nodes = inject('nodes').map((path): [string, string] => [
  spawnSync(path, ['-v'], { encoding: 'utf8' }).stdout.trim(),
  path,
]);

/** Runs a script in a project and gives what it printed as JSON. */
function run(folder: string, file: string, code: string, node = process.execPath): unknown {
  writeFileSync(join(folder, file), code);
  const result = spawnSync(node, [file], { cwd: folder, encoding: 'utf8' });
  if (result.status !== 0) throw new Error(`${file} failed\n${result.stdout}\n${result.stderr}`);
  return JSON.parse(result.stdout);
}

const namesCode = (list: readonly Entry[], load: (specifier: string) => string): string =>
  `const names = {};
${list.map(({ specifier }) => `names['${specifier}'] = Object.keys(${load(specifier)}).sort();`).join('\n')}
console.log(JSON.stringify(names));
`;
const esm = (list: readonly Entry[]): string => namesCode(list, (specifier) => `await import('${specifier}')`);
const cjs = (list: readonly Entry[]): string => namesCode(list, (specifier) => `require('${specifier}')`);

/** Names that the sources export, by specifier. */
async function sourceNames(list: readonly Entry[]): Promise<Record<string, string[]>> {
  const names: Record<string, string[]> = {};
  for (const { specifier } of list) {
    names[specifier] = Object.keys(await import(/* @vite-ignore */ specifier)).sort();
  }
  return names;
}

describe.each(nodes)('Node %s', (version, node) => {
  const tag = version.replaceAll('.', '-');

  it('imports every entry as a module, with the names of the source', async () => {
    expect(run(withZod, `all-${tag}.mjs`, esm(shipped), node)).toEqual(await sourceNames(shipped));
  });

  it('requires every entry, with the same names', async () => {
    expect(run(withZod, `all-${tag}.cjs`, cjs(shipped), node)).toEqual(await sourceNames(shipped));
  });

  it('loads the cores, the data and the messages of the leaves where there is no zod', async () => {
    const list = shipped.filter((entry) => !needsZod(entry));
    expect(existsSync(join(withoutZod, 'node_modules/zod'))).toBe(false);
    const names = await sourceNames(list);
    expect(run(withoutZod, `core-${tag}.mjs`, esm(list), node)).toEqual(names);
    expect(run(withoutZod, `core-${tag}.cjs`, cjs(list), node)).toEqual(names);
  });

  it('knows an error across module formats', () => {
    const code = `import { createRequire } from 'node:module';
      import * as esm from '@spindlewright/quantity';
      const cjs = createRequire(import.meta.url)('@spindlewright/quantity');
      const caught = (convert) => { try { convert(Number.NaN, 'mm', 'in'); } catch (error) { return error; } };
      const [fromEsm, fromCjs] = [caught(esm.convert), caught(cjs.convert)];
      console.log(JSON.stringify({
        twoCopies: esm.DomainError !== cjs.DomainError,
        esmByCjs: cjs.isDomainError(fromEsm),
        cjsByEsm: esm.isDomainError(fromCjs),
        plain: esm.isDomainError(new Error('x')) || cjs.isDomainError({ name: 'DomainError' }),
        paths: [fromEsm.path, fromCjs.path],
      }));`;
    expect(run(withZod, `errors-${tag}.mjs`, code, node)).toEqual({
      twoCopies: true,
      esmByCjs: true,
      cjsByEsm: true,
      plain: false,
      paths: ['value', 'value'],
    });
  });
});

it('the tarballs were tried on the oldest Node that the manifests promise', () => {
  expect(nodes.map(([version]) => Number(version.slice(1).split('.')[0]))).toContain(OLDEST_MAJOR);
  expect(JSON.parse(readText('packages/quantity/package.json')).engines.node).toBe(`>=${OLDEST_MAJOR}`);
});

describe('in a browser bundle', () => {
  const bundle = async (code: string, minify = false): Promise<string> => {
    const { outputFiles } = await build({
      stdin: { contents: code, resolveDir: withZod },
      bundle: true,
      write: false,
      platform: 'browser',
      format: 'iife',
      globalName: 'bundle',
      target: 'es2022',
      minify,
      logLevel: 'silent',
    });
    return outputFiles[0]?.text ?? '';
  };
  const forBrowsers = shipped.filter((entry) => !isCommandLine(entry));

  it.each(forBrowsers.map((entry): [string, Entry] => [entry.specifier, entry]))(
    '%s runs where there is no process, no console and no document',
    async (specifier, entry) => {
      const code = await bundle(`export * from '${specifier}';`);
      // zod asks for URL when its URL format is used; every browser has it.
      const context = createContext(isSchema(entry) ? { URL } : {});
      runInContext(code, context);
      const names = runInContext('Object.keys(bundle).sort().join()', context) as string;
      expect(names.split(',')).toEqual((await sourceNames([entry]))[specifier]);
    },
  );

  it.each(forBrowsers.filter((entry) => entry.specifier === entry.packageName).map((entry) => entry.specifier))(
    'one constant of %s does not bring the rest along',
    async (specifier) => {
      const one = await bundle(`export { version } from '${specifier}';`, true);
      const all = await bundle(`export * from '${specifier}';`, true);
      expect(one).toContain((await import(/* @vite-ignore */ specifier)).version);
      expect(one.length).toBeLessThan(0.05 * all.length);
    },
  );

  it.runIf(Object.hasOwn(packed, 'interfaces'))('one record costs itself, not the whole table', async () => {
    const specifier = '@spindlewright/interfaces/records';
    const records = Object.entries((await import(/* @vite-ignore */ specifier)) as Record<string, { id: string }>);
    expect(records.length).toBeGreaterThan(1);
    for (const [name, record] of records) {
      const code = await bundle(`export { ${name} } from '${specifier}';`, true);
      expect(code).toContain(record.id);
      expect(code.length, name).toBeLessThan(1.2 * JSON.stringify(record).length + 500);
    }
  });

  it('one function costs itself: converting does not bring the spellings of the reader along', async () => {
    const text = 'millimetre';
    expect(await bundle(`export { parseQuantity } from '@spindlewright/quantity';`, true)).toContain(text);
    const code = await bundle(`export { convert } from '@spindlewright/quantity';`, true);
    expect(code).not.toContain(text);
    expect(code.length).toBeLessThan(5000);
  });
});

describe('types', () => {
  const uses = shipped
    .map(({ specifier }, index) => `import * as m${index} from '${specifier}';\nexport const v${index} = m${index};`)
    .join('\n');

  /** Type checks one file in the consumer's project, declarations of the packages included. */
  function typeCheck(file: string, code: string, module: string, moduleResolution: string): string {
    writeFileSync(join(withZod, file), code);
    const compilerOptions = {
      ...{ noEmit: true, strict: true, exactOptionalPropertyTypes: true, skipLibCheck: false, types: [] },
      ...{ target: 'ES2022', lib: ['ES2022', 'DOM'], module, moduleResolution },
    };
    const project = join(withZod, `${file}.tsconfig.json`);
    writeFileSync(project, JSON.stringify({ compilerOptions, files: [file] }));
    const tsc = join(root, 'node_modules/typescript/bin/tsc');
    const { stdout, stderr } = spawnSync(process.execPath, [tsc, '-p', project], { cwd: withZod, encoding: 'utf8' });
    return stdout + stderr;
  }

  it.each([
    ['Bundler', 'ESNext', 'types-bundler.ts'],
    ['NodeNext', 'NodeNext', 'types-esm.mts'],
    ['NodeNext', 'NodeNext', 'types-cjs.cts'],
    ['Node16', 'Node16', 'types-node16.mts'],
  ])('of every entry resolve and hold under moduleResolution %s, module %s, in %s', (resolution, module, file) => {
    expect(typeCheck(file, uses, module, resolution)).toBe('');
  });

  it('refuse what the sources refuse', () => {
    const code = `import { convert } from '@spindlewright/quantity';\nexport const wrong = convert(1, 'mm', 'Nm');\n`;
    expect(typeCheck('refused.mts', code, 'NodeNext', 'NodeNext')).toMatch(/^refused\.mts\(2,\d+\): error TS2345/);
  });
});

describe('files that are no modules', () => {
  it.each(Object.keys(packed))('the manifest of %s can be read', (folder) => {
    const require = createRequire(join(withZod, 'x.cjs'));
    const manifest = JSON.parse(readFileSync(require.resolve(`${packages[folder]?.name}/package.json`), 'utf8'));
    expect(manifest.name).toBe(packages[folder]?.name);
  });

  it.each(Object.keys(packed).filter((folder) => packages[folder]?.data))('raw data of %s can be reached', (folder) => {
    const require = createRequire(join(withZod, 'x.cjs'));
    const data = (packed[folder]?.files ?? []).filter((path) => path.startsWith('data/'));
    expect(data.length).toBeGreaterThan(0);
    for (const path of data) expect(existsSync(require.resolve(`${packages[folder]?.name}/${path}`))).toBe(true);
  });

  const hasCommandLine = Object.hasOwn(packed, 'spindlewright');
  it.runIf(hasCommandLine)('the command line works a job from another folder', () => {
    const binary = join(withZod, 'node_modules/.bin/spindlewright');
    const job = join(root, 'examples/jobs/good-arm.json');
    const result = spawnSync(binary, ['job', job, '--as', 'json'], { cwd: withZod, encoding: 'utf8' });
    expect(result.status, result.stderr).toBe(0);
    expect(JSON.parse(result.stdout)).toHaveProperty('title');
  });

  it.runIf(hasCommandLine)('the command line is installed and tells how to use it', () => {
    const binary = join(withZod, 'node_modules/.bin/spindlewright');
    const result = spawnSync(binary, ['--help'], { cwd: withZod, encoding: 'utf8' });
    expect(result.status, result.stderr).toBe(0);
    expect(result.stdout).toContain('spindlewright job');
  });
});
