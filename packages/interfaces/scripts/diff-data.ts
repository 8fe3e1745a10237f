// What changed between two editions of the atlas, and how large a step of version it asks for. Node only; not published.

/** The file `data/atlas.json`: tables by name, each row with its id in the first column. */
export interface Atlas {
  dataEdition: string;
  [table: string]: string | readonly Readonly<Record<string, unknown>>[];
}

type Step = 'none' | 'patch' | 'minor' | 'major';

/** One difference. */
interface Change {
  table: string;
  row: string;
  kind: 'added' | 'removed' | 'changed';
  /** The column, of a changed row. */
  column?: string;
  from?: unknown;
  to?: unknown;
  step: Step;
}

/** All differences between two editions, in the order of the tables. */
interface AtlasDiff {
  from: string;
  to: string;
  step: Step;
  changes: Change[];
}

const STEPS: readonly Step[] = ['none', 'patch', 'minor', 'major'];

// Columns whose change makes a program that read the row read something else under the same name.
const MEANING = ['unit', 'kind', 'purpose', 'hand', 'side', 'check', 'outcome', 'conflict', 'record'];
// Columns in words: they say the same better. Counts follow from rows that are changes themselves.
const WORDS = ['title', 'summary', 'missing', 'statement', 'note', 'use', 'subject', 'position', 'comment', 'sources'];
const COUNTS = ['numbers', 'sourced', 'conflicts'];
// Rows that nobody refers to by a number: facts in words, and the register, which keeps old ids as aliases.
const WORDS_TABLES = ['claims', 'observations', 'register'];

const stepOfColumn = (table: string, column: string): Step => {
  if (COUNTS.includes(column)) return 'none';
  if (table === 'register' || WORDS.includes(column)) return 'patch';
  return MEANING.includes(column) ? 'major' : 'minor';
};

const rowsOf = (atlas: Atlas, table: string): Map<string, Readonly<Record<string, unknown>>> => {
  const rows = atlas[table];
  if (!Array.isArray(rows)) return new Map();
  return new Map(rows.map((row: Readonly<Record<string, unknown>>) => [String(Object.values(row)[0]), row]));
};

/** Differences between two editions; rows are matched by their ids. */
export function diffAtlas(before: Atlas, after: Atlas): AtlasDiff {
  const tables = [...new Set([...Object.keys(before), ...Object.keys(after)])].filter((name) => name !== 'dataEdition');
  const changes = tables.flatMap((table): Change[] => {
    const [old, now] = [rowsOf(before, table), rowsOf(after, table)];
    const words = WORDS_TABLES.includes(table);
    const removed = [...old.keys()].filter((row) => !now.has(row));
    const added = [...now.keys()].filter((row) => !old.has(row));
    return [
      ...removed.map((row): Change => ({ table, row, kind: 'removed', step: words ? 'minor' : 'major' })),
      ...added.map((row): Change => ({ table, row, kind: 'added', step: words ? 'patch' : 'minor' })),
      ...[...now].flatMap(([row, cells]) => changesOfRow(table, row, old.get(row), cells)),
    ];
  });
  const step = STEPS[Math.max(0, ...changes.map((change) => STEPS.indexOf(change.step)))] ?? 'none';
  return { from: before.dataEdition, to: after.dataEdition, step, changes };
}

function changesOfRow(
  table: string,
  row: string,
  old: Readonly<Record<string, unknown>> | undefined,
  now: Readonly<Record<string, unknown>>,
): Change[] {
  if (old === undefined) return [];
  return [...new Set([...Object.keys(old), ...Object.keys(now)])].flatMap((column): Change[] => {
    const [from, to] = [old[column] ?? null, now[column] ?? null];
    const step = stepOfColumn(table, column);
    return from === to || step === 'none' ? [] : [{ table, row, kind: 'changed', column, from, to, step }];
  });
}

/** The differences as lines for people, the largest step first. */
export function diffText({ from, to, step, changes }: AtlasDiff): string {
  const line = ({ table, row, kind, column, from: old, to: now }: Change): string =>
    kind === 'changed'
      ? `  ${table} ${row} ${column}: ${old ?? 'none'} -> ${now ?? 'none'}`
      : `  ${table} ${row} ${kind}`;
  const parts = (['major', 'minor', 'patch'] as const).flatMap((size) => {
    const own = changes.filter((change) => change.step === size);
    return own.length === 0 ? [] : [`${size} (${own.length}):`, ...own.map(line)];
  });
  return [`edition ${from} -> ${to}: ${changes.length} changes, step ${step}`, ...parts].join('\n');
}
