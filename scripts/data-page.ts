// The pages on the data, as texts.
import { dataEdition, listConflicts, listInterfaces, listNeighbours } from '@spindlewright/interfaces';
import { type NumberRow, numberRows } from '@spindlewright/interfaces/data';
import type { Standing } from '@spindlewright/quantity';
import { byGroup, groupName, valueWords } from './atlas-words.ts';
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
  return [...listInterfaces(), ...listNeighbours()]
    .map((record) => ({
      id: record.id,
      title: record.title,
      group: groupName(record),
      conflicts: record.conflicts.length,
      rows: numberRows({ name: record.id, data: record }),
    }))
    .sort(byGroup);
}

const count = (rows: readonly NumberRow[], standing: Standing): number =>
  rows.filter((row) => row.standing === standing).length;
const sourced = (rows: readonly NumberRow[]): number => rows.filter(({ sources }) => sources.length > 0).length;

/** Only the standings that occur: a column for each would be mostly noughts and wider than a page. */
const standings = (rows: readonly NumberRow[]): string =>
  STANDINGS.flatMap((standing) => {
    const own = count(rows, standing);
    return own === 0 ? [] : `${own}\u00a0${standing}`;
  }).join(', ');

/** The page that lists every record with counts of its numbers by standing. */
export function recordsPage(): string {
  const all = entries();
  const groups = [...new Set(all.map(({ group }) => group))];
  const sections = groups.map((group) => {
    const own = all.filter((entry) => entry.group === group);
    const lines = own.map(
      ({ id, title, rows, conflicts }) =>
        `| [${cellText(title)}](../atlas/${id}.md)<br>\`${id}\` | ${rows.length} | ${sourced(rows)} | ${standings(rows)} | ${conflicts} |`,
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
  const titles = new Map([...listInterfaces(), ...listNeighbours()].map(({ id, title }) => [id, title]));
  const sections = listConflicts().map(({ conflict, records }) => {
    // Every record that holds the disagreement lists its sources.
    const sourceLink = (id: string): string => `[\`${id}\`](../atlas/${records[0]}.md#${id})`;
    const numbers = conflict.positions.some(({ value }) => value !== undefined);
    const lines = conflict.positions.map(({ statement, value, standing, sources }) => {
      const number = value === undefined ? '' : cellText(valueWords(value));
      return `| ${cellText(statement)} | ${numbers ? `${number} | ` : ''}${standing} | ${sources.map(sourceLink).join(', ')} |`;
    });
    const names = records.map((id) => `[${cellText(titles.get(id) ?? id)}](../atlas/${id}.md)`).join('; ');
    const head = numbers
      ? '| position | number | standing | sources |\n| --- | --- | --- | --- |'
      : '| position | standing | sources |\n| --- | --- | --- |';
    return `## ${cellText(conflict.subject)}\n\n${cellText(conflict.comment)}\n\n${head}\n${lines.join('\n')}\n\nStands in: ${names}.`;
  });
  return `# Where sources disagree

Every position is kept; none is merged, averaged or decided. Sources are ids of the register, in the table
[register.csv](../data/register.csv){target="_self"}.

${sections.join('\n\n')}
`;
}
