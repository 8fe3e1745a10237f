// The one shape of every package. `node scripts/package-shape.mjs` writes it; tests/repo/shape.test.ts asserts it.
import { copyFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Entry name -> source file, relative to the package. */
const common = { '.': 'src/index.ts', './schema': 'src/schema.ts', './messages/en': 'src/messages/en.ts' };

export const packages = {
  quantity: {
    name: '@spindlewright/quantity',
    description: 'Exact units, limits, measurands, findings, typed errors, datum records and the register of sources',
    entries: { ...common, './sources': 'src/sources.ts' },
    // The table behind the type Unit; readers need the ids, which the type shows.
    hidden: ['UNITS'],
  },
  interfaces: {
    name: '@spindlewright/interfaces',
    description: 'The interfaces between crank arms and spindles as sourced data, with their conflicts kept apart',
    entries: { ...common, './data': 'src/data.ts', './records': 'src/records/index.ts' },
    data: true,
  },
  taper: {
    name: '@spindlewright/taper',
    description: 'Where a square-taper crank arm seats, what pressing does to it and how far it may turn when worn',
    entries: { ...common, './bare': 'src/bare.ts' },
    // Names the input of a function that has a page of its own.
    hidden: ['InputOf'],
  },
  torque: {
    name: '@spindlewright/torque',
    description: 'Threads, friction and the way from wrench torque to bolt preload and back, with its width',
    entries: { ...common, './bare': 'src/bare.ts', './data': 'src/data.ts' },
    data: true,
  },
  diagnosis: {
    name: '@spindlewright/diagnosis',
    description: 'What is wrong with a crank joint, why, what to check next and what to do about it',
    entries: { ...common, './data': 'src/data.ts', './messages/de': 'src/messages/de.ts' },
    // The table behind OutcomeOf; listChecks gives it to readers.
    hidden: ['CHECK_OUTCOMES'],
    data: true,
  },
  drawing: {
    name: '@spindlewright/drawing',
    description: 'Drawings of crank joints to scale as self-contained SVG, from plain numbers',
    entries: common,
  },
  spindlewright: {
    name: 'spindlewright',
    description: 'The whole crank-arm job: readings in, a job sheet with verdict, drawing and cautions out',
    entries: { ...common, './cli': 'src/cli/index.ts' },
    bin: { spindlewright: './dist/cli/main.js' },
    dependencies: {
      '@clack/prompts': '^1.9.0',
      '@spindlewright/diagnosis': '^0.1.0',
      '@spindlewright/drawing': '^0.1.0',
      '@spindlewright/interfaces': '^0.1.0',
      '@spindlewright/quantity': '^0.1.0',
      '@spindlewright/taper': '^0.1.0',
      '@spindlewright/torque': '^0.1.0',
      'csv-parse': '^7.0.3',
      entities: '^9.0.0',
      zod: '^4.3.0',
    },
  },
};

const built = (source, extension) => `./${source.replace(/^src\//, 'dist/').replace(/\.ts$/, extension)}`;

function exportsOf(spec) {
  const out = {};
  for (const [entry, source] of Object.entries(spec.entries)) {
    out[entry] = {
      '@spindlewright/source': `./${source}`,
      import: { types: built(source, '.d.ts'), default: built(source, '.js') },
      require: { types: built(source, '.d.cts'), default: built(source, '.cjs') },
    };
  }
  if (spec.data) out['./data/*'] = './data/*';
  out['./package.json'] = './package.json';
  return out;
}

/**
 * The manifest that packages/<folder>/package.json has to equal. Its own are only the version and the ranges of our
 * packages, which a release raises.
 */
export function manifestOf(folder, { version, dependencies: current = {} }) {
  const spec = packages[folder];
  const leaf = folder === 'quantity' ? undefined : { '@spindlewright/quantity': '^0.1.0' };
  const dependencies = spec.dependencies ?? leaf;
  const ranges = Object.entries(dependencies ?? {}).map(([name, range]) => [
    name,
    name.startsWith('@spindlewright/') ? (current[name] ?? range) : range,
  ]);
  return {
    name: spec.name,
    version,
    description: spec.description,
    keywords: ['bicycle', 'crank', 'spindle', 'mechanics', 'workshop'],
    license: 'MIT',
    type: 'module',
    sideEffects: false,
    engines: { node: '>=20' },
    exports: exportsOf(spec),
    main: './dist/index.cjs',
    module: './dist/index.js',
    types: './dist/index.d.ts',
    ...(spec.bin ? { bin: spec.bin } : {}),
    files: ['dist', ...(spec.data ? ['data'] : []), 'src', '!src/**/*.test.ts', 'CHANGELOG.md', 'picture.svg'],
    scripts: { build: 'tsup' },
    ...(dependencies ? { dependencies: Object.fromEntries(ranges) } : {}),
    ...(dependencies && 'zod' in dependencies
      ? {}
      : { peerDependencies: { zod: '^4.3.0' }, peerDependenciesMeta: { zod: { optional: true } } }),
    // Provenance is asked for by the workflow, which alone can give it.
    publishConfig: { access: 'public' },
  };
}

export const tsupConfigOf = (folder) => {
  const entries = { ...packages[folder].entries };
  if (packages[folder].bin) entries['./cli/main'] = 'src/cli/main.ts';
  const lines = Object.values(entries).map((source) => {
    const key = source.replace(/^src\//, '').replace(/\.ts$/, '');
    return `    ${/^\w+$/.test(key) ? key : `'${key}'`}: '${source}',`;
  });
  return `import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
${lines.join('\n')}
  },
  format: ['esm', 'cjs'],
  target: 'es2022',
  dts: true,
  clean: true,
  treeshake: true,
${packages[folder].bin ? '  removeNodeProtocol: false,\n' : ''}});
`;
};

export const tsconfigOf = (folder) => `{
  "extends": "../../tsconfig.base.json",
${folder === 'spindlewright' ? '  "compilerOptions": { "types": ["node"] },\n' : ''}  "include": ["src/**/*.ts"],
  "exclude": ["src/**/*.test.ts"]
}
`;

/** Text of typedoc.json: the pages show every entry, and only `hidden` names may stay out of them. */
export const typedocOf = (folder) => {
  const { entries, hidden } = packages[folder];
  const options = { entryPoints: Object.values(entries), ...(hidden ? { intentionallyNotExported: hidden } : {}) };
  const list = (values) => `[${values.map((value) => JSON.stringify(value)).join(', ')}]`;
  const lines = Object.entries(options).map(([name, values]) => `  "${name}": ${list(values)}`);
  return `{\n${lines.join(',\n')}\n}\n`;
};

/** Text of src/version.ts: a result states the version that made it, without reading a manifest. */
export const versionSourceOf = (version) => `/** Version of this package, as results state it in their provenance. */
export const version = '${version}';
`;

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const folder of Object.keys(packages)) {
    const path = `packages/${folder}/package.json`;
    // A new package starts at the first version.
    const own = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : { version: '0.1.0' };
    writeFileSync(path, `${JSON.stringify(manifestOf(folder, own), null, 2)}\n`);
    writeFileSync(`packages/${folder}/src/version.ts`, versionSourceOf(own.version));
    writeFileSync(`packages/${folder}/tsup.config.ts`, tsupConfigOf(folder));
    writeFileSync(`packages/${folder}/tsconfig.json`, tsconfigOf(folder));
    copyFileSync('LICENSE', `packages/${folder}/LICENSE`);
    writeFileSync(`packages/${folder}/typedoc.json`, typedocOf(folder));
  }
}
