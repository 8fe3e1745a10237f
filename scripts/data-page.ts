// The pages on the data, as texts.
import { dataEdition, listConflicts, listInterfaces, listNeighbours } from '@spindlewright/interfaces';
import { type NumberRow, numberRows } from '@spindlewright/interfaces/data';
import type { Standing } from '@spindlewright/quantity';
import { cellText } from './page-text.ts';

const STANDINGS = [
  'standard',
  'handbook',
  'secondary',
  'measured',
  'derived',
  'common-practice',
  'judgement',
  'from-memory',
] as const satisfies readonly Standing[];

const MEANINGS: Record<(typeof STANDINGS)[number], string> = {
  standard: 'the text of the standard was read',
  handbook: 'a printed handbook',
  secondary: 'a page, table or manual that is not the standard',
  measured: 'somebody measured it',
  derived: 'reckoned from the others by a stated formula',
  'common-practice': 'the trade does so, and no source was found',
  judgement: 'ours, stated so',
  'from-memory': 'known, and not confirmed by a source',
};

interface Entry {
  id: string;
  title: string;
  group: string;
  conflicts: number;
  rows: readonly NumberRow[];
}

function entries(): Entry[] {
  return [
    ...listInterfaces().map((record) => ({ ...record, group: `Joints: ${record.family}`, data: record })),
    ...listNeighbours().map((record) => ({ ...record, group: `Beside the joint: ${record.kind}`, data: record })),
  ].map(({ id, title, group, conflicts, data }) => ({
    id,
    title,
    group,
    conflicts: conflicts.length,
    rows: numberRows({ name: id, data }),
  }));
}

const count = (rows: readonly NumberRow[], standing: Standing): number =>
  rows.filter((row) => row.standing === standing).length;
const sourced = (rows: readonly NumberRow[]): number => rows.filter(({ sources }) => sources.length > 0).length;

/** Only the standings that occur: a column for each would be mostly noughts and wider than a page. */
const standings = (rows: readonly NumberRow[]): string =>
  STANDINGS.flatMap((standing) => {
    const own = count(rows, standing);
    return own === 0 ? [] : `${own} ${standing}`;
  }).join(', ');

/** The page that lists every record with counts of its numbers by standing. */
export function recordsPage(): string {
  const all = entries();
  const groups = [...new Set(all.map(({ group }) => group))];
  const sections = groups.map((group) => {
    const own = all.filter((entry) => entry.group === group);
    const lines = own.map(
      ({ id, title, rows, conflicts }) =>
        `| ${cellText(title)}<br>\`${id}\` | ${rows.length} | ${sourced(rows)} | ${standings(rows)} | ${conflicts} |`,
    );
    const head = '| record | numbers | with source | by standing | conflicts |\n| --- | --: | --: | --- | --: |';
    return `## ${group}\n\n${head}\n${lines.join('\n')}`;
  });
  const rows = all.flatMap((entry) => entry.rows);
  const conflicts = listConflicts().length;
  const meanings = STANDINGS.map(
    (standing) => `| ${standing} | ${count(rows, standing)} | ${cellText(MEANINGS[standing])} |`,
  );
  return `# The data

Edition ${dataEdition}: ${all.length} records, ${rows.length} numbers, ${sourced(rows)} of them with a source. Where
sources disagree nothing is merged: ${conflicts} [disagreements](./conflicts.md) stand with every position. A number that
several records need is counted in each.

The same is shipped as files in the folder \`data\` of the package: \`datapackage.json\` describes the tables (CSV, and
\`atlas.json\` for all of them), \`records\`, \`neighbours\` and \`observations\` hold one JSON file a record, \`schemas\`
the JSON Schemas. How to add a record is told in [the guide](../guides/adding-a-record.md).

| standing | numbers | meaning |
| --- | --: | --- |
${meanings.join('\n')}

${sections.join('\n\n')}
`;
}

/** The page that lists every disagreement of sources. */
export function conflictsPage(): string {
  const sections = listConflicts().map(({ conflict, records }) => {
    const lines = conflict.positions.map(({ statement, value, standing, sources }) => {
      const number = value === undefined ? '' : `${value.value} ${value.unit}`;
      return `| ${cellText(statement)} | ${number} | ${standing} | ${sources.map((id) => `\`${id}\``).join(' ')} |`;
    });
    const names = records.map((id) => `\`${id}\``).join(', ');
    return `## ${cellText(conflict.subject)}\n\n${names}. ${cellText(conflict.comment)}\n\n| position | number | standing | sources |\n| --- | --- | --- | --- |\n${lines.join('\n')}`;
  });
  return `# Where sources disagree

Every position is kept; none is merged, averaged or decided. Sources are ids of the register, in the table
\`sources.csv\`.

${sections.join('\n\n')}
`;
}
