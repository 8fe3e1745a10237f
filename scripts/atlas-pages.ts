// Writes docs/atlas: a page a record, an index to filter and compare, and the data as files to load down. Generated,
// never committed, so that a page cannot be older than the data.
import { cpSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dataEdition, listInterfaces, listNeighbours } from '@spindlewright/interfaces';
import { numberRows } from '@spindlewright/interfaces/data';
import { getSource } from '@spindlewright/quantity/sources';
import { byGroup, groupName, inReadingOrder, numberWords, placeWords, valueWords } from './atlas-words.ts';
import { cellText } from './page-text.ts';
import { recordFigure } from './record-figure.ts';

interface ClaimText {
  id?: string;
  statement?: string;
  standing?: string;
  sources?: readonly string[];
}

interface AtlasRecord {
  id: string;
  title: string;
  summary: string;
  group: string;
  data: Record<string, unknown>;
  conflicts: readonly { id: string; subject: string; comment: string; positions: readonly PositionText[] }[];
  missing: readonly unknown[];
}

interface PositionText extends ClaimText {
  value?: { value: number; unit: string };
}

const out = 'docs/atlas';
const files = 'docs/public/data';

const records: AtlasRecord[] = (
  [...listInterfaces(), ...listNeighbours()].map((record) => ({
    ...record,
    group: groupName(record),
    data: { ...record },
  })) as unknown as AtlasRecord[]
).sort(byGroup);

const sourceLinks = (ids: readonly string[]): string => ids.map((id) => `[${id}](#${id})`).join(', ');

/** Every statement in the record with where it stands, in order. */
function statements(node: unknown, path: string): (ClaimText & { path: string })[] {
  if (Array.isArray(node)) return node.flatMap((item) => statements(item, path));
  if (typeof node !== 'object' || node === null) return [];
  const claim = node as ClaimText;
  const own = typeof claim.statement === 'string' ? [{ ...claim, path }] : [];
  return [
    ...own,
    ...Object.entries(node).flatMap(([key, value]) =>
      key === 'conflicts' ? [] : statements(value, path === '' ? key : path),
    ),
  ];
}

function recordPage({ id, title, summary, group, data, conflicts, missing }: AtlasRecord): string {
  const rows = numberRows({ name: id, data });
  // The numbers of a disagreement stand under it, each beside its position.
  const shown = inReadingOrder(rows.filter(({ path }) => !path.startsWith('conflicts[')));
  const figure = recordFigure(rows, title);
  const said = statements(data, '');
  const used = new Set([
    ...rows.flatMap(({ sources }) => sources),
    ...said.flatMap(({ sources = [] }) => sources),
    ...conflicts.flatMap(({ positions }) => positions.flatMap(({ sources = [] }) => sources)),
  ]);
  const parts = [
    `---\ntitle: ${JSON.stringify(title)}\ndescription: ${JSON.stringify(summary)}\n---`,
    `# ${cellText(title)}`,
    `${cellText(summary)} <span class="atlas-facts">\`${id}\`; ${cellText(group)}; edition ${dataEdition}.</span>`,
    figure && `<figure>${figure.svg}<figcaption>${cellText(figure.caption)}</figcaption></figure>`,
    `<p class="atlas-files"><a href="../data/${id}.json" download target="_self">JSON</a> <a href="../data/${id}.csv" download target="_self">CSV</a> <a href="./index.html?a=${id}">compare</a></p>`,
    shown.length > 0 &&
      `## Numbers\n\n| what | value | standing | sources |\n| --- | --- | --- | --- |\n${shown
        .map(
          (row) =>
            `| ${cellText(numberWords(row.path, data))} | ${cellText(valueWords(row))} | ${row.standing} | ${sourceLinks(row.sources)} |`,
        )
        .join('\n')}`,
    said.length > 0 &&
      `## What is said\n\n| about | statement | standing | sources |\n| --- | --- | --- | --- |\n${said
        .map(
          ({ path, statement = '', standing = '', sources = [] }) =>
            `| ${placeWords(path)} | ${cellText(statement)} | ${standing} | ${sourceLinks(sources)} |`,
        )
        .join('\n')}`,
    ...conflicts.map(
      ({ subject, comment, positions }) =>
        `## Disagreement: ${cellText(subject)}\n\n${cellText(comment)}\n\n| position | number | standing | sources |\n| --- | --- | --- | --- |\n${positions
          .map(
            ({ statement = '', value, standing = '', sources = [] }) =>
              `| ${cellText(statement)} | ${value === undefined ? '' : cellText(valueWords(value))} | ${standing} | ${sourceLinks(sources)} |`,
          )
          .join('\n')}`,
    ),
    missing.length > 0 &&
      `## What is missing\n\n${missing.map((item) => `- ${cellText(typeof item === 'string' ? item : JSON.stringify(item))}`).join('\n')}`,
    used.size > 0 &&
      `## Sources\n\n${[...used]
        .sort()
        .map((source) => {
          const { title: name, edition, publisher, locator } = getSource(source);
          const facts = [name, edition, publisher, locator].filter((fact) => fact !== undefined && fact !== '');
          return `- <span id="${source}"></span>\`${source}\`: ${cellText(facts.join(', '))}`;
        })
        .join('\n')}`,
  ];
  return `${parts.filter((part) => typeof part === 'string').join('\n\n')}\n`;
}

const csvCell = (cell: unknown): string => {
  const text = cell === undefined ? '' : Array.isArray(cell) ? cell.join(' ') : String(cell);
  return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

const COLUMNS = ['rowId', 'path', 'value', 'unit', 'lower', 'upper', 'standing', 'sources', 'set'] as const;

for (const folder of [out, files]) {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
}
for (const record of records) {
  writeFileSync(`${out}/${record.id}.md`, recordPage(record));
  const { group: _group, ...plain } = record;
  writeFileSync(`${files}/${record.id}.json`, `${JSON.stringify(plain.data, null, 2)}\n`);
  const rows = numberRows({ name: record.id, data: record.data });
  const lines = [COLUMNS.join(','), ...rows.map((row) => COLUMNS.map((column) => csvCell(row[column])).join(','))];
  writeFileSync(`${files}/${record.id}.csv`, `${lines.join('\r\n')}\r\n`);
}
const all = records.map(({ id, title, summary, group, data, conflicts }) => ({
  id,
  title,
  summary,
  group,
  conflicts: conflicts.length,
  numbers: numberRows({ name: id, data }).length,
}));
writeFileSync(`${out}/records.json`, JSON.stringify(all));
// Tables, their description and their schemas as they are shipped, for whoever wants them without a package.
for (const name of readdirSync('packages/interfaces/data')) {
  if (/\.csv$|^atlas\.json$|^datapackage\.json$/.test(name))
    cpSync(`packages/interfaces/data/${name}`, `${files}/${name}`);
}
cpSync('packages/interfaces/data/schemas', `${files}/schemas`, { recursive: true });
cpSync('packages/torque/data', `${files}/torque`, { recursive: true, filter: (path) => !path.endsWith('.md') });
writeFileSync(
  `${out}/index.md`,
  `---
title: Atlas
description: Every record of a joint and of what stands beside it, with drawing, numbers, standing, sources and conflicts
pageClass: bench-page
aside: false
---

# Atlas

${records.length} records of edition ${dataEdition}: the joints between arm and spindle, and the threads, shells and
circles beside them. Each number says how far it can be relied on and where it comes from; where sources
[disagree](../data/conflicts) every position stands. Whole tables: [numbers](../data/numbers.csv){target="_self"},
[statements](../data/claims.csv){target="_self"}, [threads](../data/threads.csv){target="_self"},
[everything as JSON](../data/atlas.json){target="_self"}; all of it under the MIT licence. [How to read them](../guides/app) without running code.

<ClientOnly><AtlasIndex /></ClientOnly>

<noscript>

${records.map(({ id, title }) => `- [${cellText(title)}](./${id})`).join('\n')}

</noscript>
`,
);
console.log(`wrote ${out}: ${records.length} records`);
