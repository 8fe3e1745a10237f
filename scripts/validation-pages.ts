// Writes docs/validation from the same rows and adapters that tests/reference runs on: one page a package, or part of one,
// and an index.
// Generated, never committed, so that a page cannot be older than the code.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { getSource } from '@spindlewright/quantity/sources';
import { workAll } from '../examples/worked/index.ts';
import { meets, type Worked, type WorkedStep } from '../examples/worked/worked.ts';
import type { Cell } from '../tests/reference/adapter.ts';
import {
  type Comparison,
  compareRow,
  folderOf,
  isProved,
  packageOf,
  type ReferenceFile,
  readAdapters,
  readReferenceFile,
  referencePaths,
  rowName,
} from '../tests/reference/reference-file.ts';
import { packages } from './package-shape.mjs';
import { cellText, numberText } from './page-text.ts';
import { plot, short } from './validation-plot.ts';

const out = 'docs/validation';

const KINDS: Record<ReferenceFile['origin']['kind'], string> = {
  standard: 'standard',
  handbook: 'handbook',
  'finite-elements': 'finite elements',
  'other-tool': 'general-purpose tool',
  'closed-form': 'closed form',
  measurement: 'measurement',
  erratum: 'erratum: printed values that must not be met',
};

/** One reference file with every comparison made. */
interface Case {
  file: ReferenceFile;
  rows: { name: string; comparisons: Comparison[]; proved: boolean }[];
}

function number(value: Cell): string {
  if (typeof value !== 'number') return value === null ? 'none' : cellText(String(value));
  return numberText(Number(value.toPrecision(8)));
}

const shareOf = (difference: number | null, allowed: number | null): number | null =>
  difference === null || allowed === null || allowed === 0 ? null : difference / allowed;

// Longer tables are folded up behind their plot: who looks for one comparison need not pass all the others.
const LONGEST_OPEN = 8;

const folded = (title: string, length: number, table: string): string =>
  length > LONGEST_OPEN ? `::: details ${title}\n\n${table}\n\n:::` : table;

/** What comes first on a page: every comparison in a line, with the value that is nearest to its bound. */
function overview(cases: readonly Case[]): string {
  const lines = cases.map(({ file, rows }) => {
    const shares = rows.flatMap(({ comparisons }) =>
      comparisons.flatMap(({ difference, allowed }) => shareOf(difference, allowed) ?? []),
    );
    const largest = shares.length === 0 ? 'words alone' : `${short(100 * Math.max(...shares.map(Math.abs)))} %`;
    const nearest = file.origin.kind === 'erratum' ? 'must not be met' : largest;
    const amiss = rows.every(({ proved }) => proved) ? '' : ', **not as it should be**';
    return `| [${cellText(file.title)}](#${file.id}) | ${rows.length} | ${nearest}${amiss} |`;
  });
  return `| comparison | rows | largest difference, of what is allowed |\n| --- | --: | --: |\n${lines.join('\n')}`;
}

function section({ file, rows }: Case): string {
  const source = getSource(file.origin.source);
  const edition = source.edition === '' ? '' : `, ${source.edition}`;
  const head = [
    `## ${cellText(file.title)} {#${file.id}}`,
    `Function \`${file.function}\`, ${KINDS[file.origin.kind]}. Source: ${cellText(source.title)}${cellText(edition)} ` +
      `(\`${source.id}\`), ${cellText(file.origin.citation)}.` +
      (file.origin.tool === undefined ? '' : ` Tool: ${cellText(file.origin.tool)}.`),
    ...[file.origin.note, file.note].flatMap((note) => (note === undefined ? [] : [cellText(note)])),
  ];
  const bounds = Object.entries(file.tolerance).map(([column, { rtol, atol, why }]) => {
    const parts = [
      ...(rtol > 0
        ? [rtol < 1e-4 ? `${numberText(rtol)} of the value` : `${Number((rtol * 100).toPrecision(6))} % of the value`]
        : []),
      ...(atol > 0 ? [`${numberText(atol)} ${file.columns[column]}`] : []),
    ];
    return `- \`${column}\`: ${parts.join(' or ') || 'exactly equal'}; ${cellText(why)}`;
  });
  const plotted = rows.flatMap(({ name, comparisons }) =>
    comparisons.map(({ column, difference, allowed, met }) => ({
      name: `${name}: ${column}`,
      share: shareOf(difference, allowed),
      met,
    })),
  );
  const table = rows.flatMap(({ name, comparisons }) =>
    comparisons.map(
      (entry) =>
        `| ${cellText(name)} | ${entry.column} [${cellText(entry.unit)}] | ${number(entry.expected)} | ` +
        `${number(entry.ours)} | ${entry.difference === null ? (entry.met ? 'none' : 'differs') : short(entry.difference)} | ` +
        `${short(entry.allowed)} | ${entry.met ? 'met' : 'not met'} |`,
    ),
  );
  return [
    ...head,
    ...(bounds.length > 0 ? [`Tolerances:\n\n${bounds.join('\n')}`] : []),
    plot(file.title, plotted),
    folded(
      `${rows.length} rows, ${table.length} values`,
      table.length,
      `| row | value | source says | ours | difference | allowed | outcome |\n| --- | --- | --: | --: | --: | --: | --- |\n${table.join('\n')}`,
    ),
  ].join('\n\n');
}

const counts = (cases: readonly Case[]): { files: number; rows: number; values: number; unproved: number } => ({
  files: cases.length,
  rows: cases.flatMap((entry) => entry.rows).length,
  values: cases.flatMap((entry) => entry.rows).flatMap((row) => row.comparisons).length,
  unproved: cases.flatMap((entry) => entry.rows).filter((row) => !row.proved).length,
});

/** A package by its name, a part of one with that part behind it. */
const titleOf = (folder: string): string =>
  packages[folder]?.name ?? `${packages[packageOf(folder)]?.name ?? packageOf(folder)}: ${folder}`;

const byFolder = new Map<string, Case[]>();
for (const path of referencePaths()) {
  const folder = folderOf(path);
  const file = readReferenceFile(path);
  const adapter = (await readAdapters(folder))[file.id];
  if (adapter === undefined) throw new Error(`${path} has no adapter`);
  const rows = file.rows.map((row, index) => {
    const comparisons = compareRow(file, row, adapter);
    return { name: rowName(row, index), comparisons, proved: isProved(file, comparisons) };
  });
  byFolder.set(folder, [...(byFolder.get(folder) ?? []), { file, rows }]);
}

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
for (const [folder, cases] of byFolder) {
  const { files, rows, values } = counts(cases);
  writeFileSync(
    `${out}/${folder}.md`,
    `# Validation of ${titleOf(folder)}\n\nComparisons: ${files}; rows: ${rows}; values: ${values}. Differences are ours less the ` +
      `source's.\n\n${overview(cases)}\n\n${cases.map(section).join('\n\n')}\n`,
  );
}

/** A worked example, its printed answers beside ours. */
function workedSection({ title, source, citation, steps, misprints = [] }: Worked): string {
  const line = (step: WorkedStep, verdict: string): string =>
    `| ${cellText(step.what)} [${cellText(step.unit)}] | ${number(step.printed)} | ${number(step.ours)} | ` +
    `${Number((100 * step.within).toPrecision(3))} %: ${cellText(step.why)} | ${verdict} |`;
  const lines = [
    ...steps.map((step) => line(step, meets(step) ? 'met' : 'not met')),
    ...misprints.map((step) => line(step, meets(step) ? 'met, though misprinted' : 'misprint, rightly not met')),
  ];
  const plotted = [...steps, ...misprints].map((step) => ({
    name: step.what,
    share: shareOf(step.ours - step.printed, step.within * Math.abs(step.printed)),
    met: meets(step),
  }));
  return (
    `## ${cellText(title)}\n\nSource: ${cellText(getSource(source).title)} (\`${source}\`), ${cellText(citation)}.\n\n` +
    `${plot(title, plotted)}\n\n` +
    `| value | printed | ours | allowed | outcome |\n| --- | --: | --: | --- | --- |\n${lines.join('\n')}`
  );
}

const worked = workAll();
writeFileSync(
  `${out}/worked.md`,
  '# Validation of worked examples\n\nExamples of books and pages worked again, step by step, by the programs in ' +
    `\`examples/worked\`; the same programs are run as tests.\n\n${worked.map(workedSection).join('\n\n')}\n`,
);
const unworked = worked.flatMap(({ steps, misprints = [] }) => [
  ...steps.filter((step) => !meets(step)),
  ...misprints.filter(meets),
]).length;

const total = counts([...byFolder.values()].flat());
const lines = [...byFolder].map(([folder, cases]) => {
  const { files, rows, values, unproved } = counts(cases);
  return `| [${titleOf(folder)}](./${folder}.md) | ${files} | ${rows} | ${values} | ${unproved} |`;
});
const kinds = [...new Set([...byFolder.values()].flat().map((entry) => entry.file.origin.kind))].map((kind) => {
  const own = [...byFolder.values()].flat().filter((entry) => entry.file.origin.kind === kind);
  return `| ${KINDS[kind]} | ${own.length} | ${counts(own).rows} |`;
});
writeFileSync(
  `${out}/index.md`,
  `# Validation

What each package says beside what a source says: published tables, worked examples, general-purpose tools, finite-element
rows. The expected values come from the source, never from our own output. A value is met when it lies within the larger
of the absolute and the relative tolerance, each with its reason. The rows of an erratum are printed values known to be
wrong; there a match would be the fault.

| package | comparisons | rows | values | rows not as they should be |
| --- | --: | --: | --: | --: |
${lines.join('\n')}
| all | ${total.files} | ${total.rows} | ${total.values} | ${total.unproved} |

[Worked examples](./worked.md): ${worked.length} examples of books and pages, each step beside what is printed.

| kind of source | comparisons | rows |
| --- | --: | --: |
${kinds.join('\n')}
`,
);
console.log(`wrote ${out}: ${total.files} comparisons, ${total.rows} rows, ${total.unproved} not as they should be`);
if (total.unproved + unworked > 0) process.exitCode = 1;
