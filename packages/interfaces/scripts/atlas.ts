// The data as plain tables, for people who do not write TypeScript; `atlas-files.ts` writes them.
// Node only; no part of what is published.
import { listSources } from '@spindlewright/quantity/sources';
import { numberRows } from '../src/number-rows.ts';
import type { Claim, Conflict, ThreadRecord } from '../src/record.ts';
import { threadRows } from '../src/thread-rows.ts';
import type { RawData } from './raw-data.ts';

type FieldType = 'string' | 'number' | 'integer' | 'boolean';
/** A cell; `null` is an empty one. */
export type AtlasCell = string | number | boolean | null;
/** One row; the first column of its table is its stable id. */
type AtlasRow = Record<string, AtlasCell>;

/** A table of the atlas. */
export interface AtlasTable {
  name: string;
  description: string;
  /** Column -> type and meaning, in the order of the file. */
  fields: Record<string, [FieldType, string]>;
  /** Columns whose cells are rows of another table. */
  foreignKeys: Record<string, string>;
  rows: AtlasRow[];
}

const list = (ids: readonly string[]): string => ids.join(';');

/** Every table, from the raw data. */
export function atlasTables(raw: RawData): AtlasTable[] {
  return [
    recordsTable(raw),
    numbersTable(raw),
    threadsTable(raw),
    conflictsTable(raw),
    claimsTable(raw),
    observationsTable(raw),
    sourcesTable(),
  ];
}

interface Subject {
  id: string;
  kind: string;
  title: string;
  summary: string;
  conflicts: readonly Conflict[];
  missing: readonly string[];
  data: object;
}

const subjects = ({ records, neighbours }: RawData): Subject[] =>
  [
    ...records.map((record) => ({ ...record, kind: `joint: ${record.family}`, data: record })),
    ...neighbours.map((record) => ({ ...record, data: record })),
  ].map(({ id, kind, title, summary, conflicts, missing, data }) => ({
    id,
    kind,
    title,
    summary,
    conflicts,
    missing,
    data,
  }));

/** Names of the trees whose numbers are listed, with the trees. */
export const numberedTrees = (raw: RawData): { name: string; data: object }[] => [
  { name: 'identification', data: raw.identification },
  { name: 'mating', data: raw.mating },
  ...raw.records.map((record) => ({ name: record.id, data: record })),
  ...raw.neighbours.map((record) => ({ name: record.id, data: record })),
];

function recordsTable(raw: RawData): AtlasTable {
  return {
    name: 'records',
    description: 'One row a record: joints between arm and spindle, what stands beside them, conventions.',
    fields: {
      id: ['string', 'Id of the record, never reused'],
      kind: ['string', 'Kind of record; joints with their family'],
      numbers: ['integer', 'Count of numbers, alternatives included'],
      sourced: ['integer', 'Count of those that name a source'],
      conflicts: ['integer', 'Count of subjects on which sources disagree'],
      title: ['string', 'Name for people'],
      summary: ['string', 'One or two sentences'],
      missing: ['string', 'What could not be found out'],
    },
    foreignKeys: {},
    rows: subjects(raw).map(({ id, kind, title, summary, conflicts, missing, data }) => {
      const numbers = numberRows({ name: id, data });
      return {
        id,
        kind,
        numbers: numbers.length,
        sourced: numbers.filter(({ sources }) => sources.length > 0).length,
        conflicts: conflicts.length,
        title,
        summary,
        missing: missing.join(' '),
      };
    }),
  };
}

function numbersTable(raw: RawData): AtlasTable {
  return {
    name: 'numbers',
    description: 'One row a number with its standing and its sources; what sources give instead has rows of its own.',
    fields: {
      rowId: ['string', 'Record and path, made of names'],
      record: ['string', 'Id of the record, or identification or mating'],
      path: ['string', 'Where in the record; a member of a list by its id in brackets'],
      value: ['number', 'The number, in the unit of the next column'],
      unit: ['string', 'Unit, or a plain word for counts'],
      lower: ['number', 'Lower bound, when there is one'],
      upper: ['number', 'Upper bound, when there is one'],
      standing: ['string', 'Where the number comes from'],
      sources: ['string', 'Ids of sources, split by semicolons'],
      set: ['string', 'Name of the set of values published together'],
    },
    foreignKeys: {},
    rows: numberedTrees(raw)
      .flatMap((tree) => numberRows(tree))
      .map((row) => ({
        rowId: row.rowId,
        record: row.record,
        path: row.path,
        value: row.value,
        unit: row.unit,
        lower: row.lower ?? null,
        upper: row.upper ?? null,
        standing: row.standing,
        sources: list(row.sources),
        set: row.set ?? null,
      })),
  };
}

function threadsTable(raw: RawData): AtlasTable {
  const sourcesOf = ({ nominalDiameterMm, pitchMm, threadsPerInch }: ThreadRecord): string[] =>
    [...new Set([nominalDiameterMm, pitchMm, threadsPerInch].flatMap((datum) => datum?.sources ?? []))].sort();
  return {
    name: 'threads',
    description: 'One row a thread of a joint or of what stands beside it.',
    fields: {
      rowId: ['string', 'Record and path, made of names'],
      record: ['string', 'Id of the record'],
      purpose: ['string', 'fixing, puller, pedal or shell'],
      designation: ['string', 'Designation; without a pitch where the source gives none'],
      nominalDiameterMm: ['number', 'Nominal diameter in mm'],
      pitchMm: ['number', 'Pitch in mm'],
      threadsPerInch: ['number', 'Threads an inch, for inch threads'],
      hand: ['string', 'Hand of the thread'],
      side: ['string', 'Side of the bicycle, where the thread belongs to one'],
      stressAreaMm2: ['number', 'Tensile stress area in mm2, where it was reckoned'],
      sources: ['string', 'Ids of sources, split by semicolons'],
      use: ['string', 'What the thread is for'],
    },
    foreignKeys: { record: 'records' },
    rows: [...raw.records, ...raw.neighbours].flatMap(threadRows).map(({ rowId, record, purpose, side, thread }) => ({
      rowId,
      record,
      purpose,
      designation: thread.designation,
      nominalDiameterMm: thread.nominalDiameterMm.value,
      pitchMm: thread.pitchMm?.value ?? null,
      threadsPerInch: thread.threadsPerInch?.value ?? null,
      hand: thread.hand,
      side: side ?? null,
      stressAreaMm2: thread.stressAreaMm2?.value ?? null,
      sources: list(sourcesOf(thread)),
      use: thread.use,
    })),
  };
}

function conflictsTable(raw: RawData): AtlasTable {
  return {
    name: 'conflicts',
    description: 'One row a position in a disagreement of sources; positions are never merged.',
    fields: {
      rowId: ['string', 'Record, conflict and position'],
      record: ['string', 'Id of the record'],
      conflict: ['string', 'Id of the conflict; the same in every record that it concerns'],
      value: ['number', 'The number of the position, when it has one'],
      unit: ['string', 'Unit of that number'],
      standing: ['string', 'Where the position comes from'],
      sources: ['string', 'Ids of sources, split by semicolons'],
      subject: ['string', 'What the sources disagree on'],
      position: ['string', 'The position'],
      comment: ['string', 'What can be said about the disagreement'],
    },
    foreignKeys: { record: 'records' },
    rows: subjects(raw).flatMap(({ id, conflicts }) =>
      conflicts.flatMap((conflict) =>
        conflict.positions.map((position) => ({
          rowId: `${id}:conflicts[${conflict.id}].positions[${position.id}]`,
          record: id,
          conflict: conflict.id,
          value: position.value?.value ?? null,
          unit: position.value?.unit ?? null,
          standing: position.standing,
          sources: list(position.sources),
          subject: conflict.subject,
          position: position.statement,
          comment: conflict.comment,
        })),
      ),
    ),
  };
}

function claimsTable(raw: RawData): AtlasTable {
  return {
    name: 'claims',
    description: 'One row a fact in words, positions of conflicts left out.',
    fields: {
      rowId: ['string', 'Record and path, made of names'],
      record: ['string', 'Id of the record'],
      path: ['string', 'Where in the record; a member of a list by its id in brackets'],
      standing: ['string', 'Where the fact comes from'],
      sources: ['string', 'Ids of sources, split by semicolons'],
      statement: ['string', 'The fact'],
      note: ['string', 'What a reader has to know to use it'],
    },
    foreignKeys: { record: 'records' },
    rows: subjects(raw).flatMap(({ id, data }) =>
      claimsOf(data).flatMap(([path, claim]) =>
        path.startsWith('conflicts[')
          ? []
          : [
              {
                rowId: `${id}:${path}`,
                record: id,
                path,
                standing: claim.standing,
                sources: list(claim.sources),
                statement: claim.statement,
                note: claim.note ?? null,
              },
            ],
      ),
    ),
  };
}

/** Every claim of a tree with its path. */
function claimsOf(node: unknown, path = ''): [string, Claim][] {
  if (Array.isArray(node)) return node.flatMap((item, index) => claimsOf(item, `${path}[${item?.id ?? index}]`));
  if (typeof node !== 'object' || node === null) return [];
  const own: [string, Claim][] = 'statement' in node ? [[path, node as Claim]] : [];
  return [
    ...own,
    ...Object.entries(node).flatMap(([key, child]) => claimsOf(child, path === '' ? key : `${path}.${key}`)),
  ];
}

function observationsTable({ observations }: RawData): AtlasTable {
  return {
    name: 'observations',
    description: 'One row a meaning of an outcome of a check; those of a family go before those of any joint.',
    fields: {
      rowId: ['string', 'Record and meaning'],
      family: ['string', 'Family of joints, or any'],
      check: ['string', 'Id of the check'],
      outcome: ['string', 'Id of its outcome'],
      reading: ['string', 'right, wrong, depends or cannot-be'],
      interfaces: ['string', 'Ids of joints, split by semicolons, when it holds for some of the family'],
      standing: ['string', 'Where the meaning comes from'],
      sources: ['string', 'Ids of sources, split by semicolons'],
      statement: ['string', 'The meaning'],
    },
    foreignKeys: {},
    rows: observations.flatMap(({ id, family, meanings }) =>
      meanings.map((meaning) => ({
        rowId: `${id}:${meaning.id}`,
        family,
        check: meaning.check,
        outcome: meaning.outcome,
        reading: meaning.reading,
        interfaces: meaning.interfaces === undefined ? null : list(meaning.interfaces),
        standing: meaning.standing,
        sources: list(meaning.sources),
        statement: meaning.statement,
      })),
    ),
  };
}

function sourcesTable(): AtlasTable {
  return {
    name: 'register',
    description: 'The register of sources, those of the other packages included.',
    fields: {
      id: ['string', 'Id of the source, never reused'],
      access: ['string', 'text, quoted, front-matter, memory or own: how far it was read'],
      title: ['string', 'Title'],
      edition: ['string', 'Edition, where it has one'],
      publisher: ['string', 'Publisher'],
      locator: ['string', 'Where it is found'],
    },
    foreignKeys: {},
    rows: listSources().map(({ id, access, title, edition, publisher, locator }) => ({
      id,
      access,
      title,
      edition: edition || null,
      publisher: publisher || null,
      locator,
    })),
  };
}
