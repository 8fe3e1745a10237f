import { getNeighbour, listInterfaces, listNeighbours } from '@spindlewright/interfaces';
import { columnOf } from './check-mapping.ts';
import type { ColumnMapping, Mapping } from './mapping.ts';
import type { Need } from './need.ts';
import { type Doubt, type Facts, type NumberField, PART_FIELDS, type PartField, type WordField } from './part.ts';
import { looksLikeDate, looksLikeExponent, readNumber } from './read-number.ts';
import { meaningOf, plainWord, standardsInTitle } from './vocabulary.ts';

/** A row of a catalogue: fields by name. @internal */
export type Row = Readonly<Record<string, unknown>>;

/** Reads one field of a row, whatever it holds. */
type CellReader = (row: Row) => unknown;

/** How rows are read by one mapping for one need. */
interface RowReader {
  /** The part id as text; a code when there is none to use. */
  idOf(row: Row): { id: string } | { code: 'part-id-missing' | 'part-id-damaged'; received: string };
  /** Reads the cell that tells the kind. */
  kindCell: CellReader;
  /** Everything of a row that can move the answer, as one text. */
  keyOf(row: Row): string;
  /** The facts of a row. */
  factsOf(row: Row): Facts;
}

const WORD_FIELDS: Readonly<Record<Need['for'], readonly WordField[]>> = {
  arm: ['interface', 'side'],
  spindle: ['interface', 'shell'],
  bolt: ['thread'],
  puller: ['thread'],
  pedals: ['thread', 'side'],
  chainring: [],
};

const NUMBER_FIELDS: Readonly<Record<Need['for'], readonly NumberField[]>> = {
  arm: ['armLengthMm'],
  spindle: ['spindleLengthMm'],
  bolt: [],
  puller: [],
  pedals: [],
  chainring: ['boltCircleMm', 'boltCount', 'toothCount'],
};

/** Sizes of the square; they count only where the counterpart was read too. */
const SQUARE_FIELDS = {
  arm: ['acrossFlatsAtMouthMm', 'boreLengthMm', 'boltSeatFromMouthMm', 'faceAngleDeg'],
  spindle: ['acrossFlatsAtEndMm', 'flatLengthMm', 'shoulderFromEndMm', 'faceAngleDeg'],
} as const satisfies Record<string, readonly NumberField[]>;

/** Texts that mean that nothing is known. */
const MISSING = [
  ...['', '-', '--', '\u2013', '?', '.', 'n/a', '#n/a', 'na', 'n.a.', 'none', 'null', 'nan', 'undefined', 'tbd'],
  ...['unknown', 'unbekannt', 'k.a.', 'inconnu', 's/o', '#value!', '#ref!', '#name?'],
];

/** The fields that can move the answer to this need. @internal */
export function fieldsFor(need: Need): {
  words: readonly WordField[];
  numbers: readonly NumberField[];
  square: readonly NumberField[];
} {
  const square: readonly NumberField[] =
    need.for === 'arm' && need.spindle !== undefined
      ? SQUARE_FIELDS.arm
      : need.for === 'spindle' && need.arm !== undefined
        ? SQUARE_FIELDS.spindle
        : [];
  return { words: WORD_FIELDS[need.for], numbers: [...NUMBER_FIELDS[need.for], ...square], square };
}

/** Makes the reader of a mapping; without one rows are read under our own names. @internal */
export function rowReader(mapping: Mapping | undefined, need: Need): RowReader {
  const missing = new Set([...MISSING, ...(mapping?.missing ?? []).map(plainWord)]);
  const columns = (field: PartField): ColumnMapping =>
    mapping === undefined ? { column: field } : (columnOf(mapping, field) ?? {});
  const cells = (field: PartField): CellReader => cellReader(columns(field));
  const { words, numbers } = fieldsFor(need);
  const idCell = cells('partId');
  const { digitCount } = columns('partId');
  const titleCell = cells('title');
  const wordReaders = (['kind', ...words] as const).map((field) => wordReader(field, columns(field), missing));
  const numberReaders = numbers.map((field) => ({ field, cell: cells(field), column: columns(field) }));
  const keyCells = [...wordReaders.map(({ cell }) => cell), ...numberReaders.map(({ cell }) => cell)];
  const titleOf = (row: Row): string => {
    const title = titleCell(row);
    return typeof title === 'string' ? standardsInTitle(title) : '';
  };
  return {
    kindCell: wordReaders[0]?.cell ?? (() => undefined),
    idOf(row) {
      const raw = idCell(row);
      const id = typeof raw === 'string' ? raw.trim() : typeof raw === 'number' ? String(raw) : '';
      if (id === '' || (id.length < 16 && missing.has(id.toLowerCase()))) {
        return { code: 'part-id-missing', received: '' };
      }
      // Longer than any id; a cell that swallowed half a file is no id.
      const lost = digitCount !== undefined && id.length < digitCount && /^\d+$/.test(id);
      if (lost || looksLikeExponent(id) || id.length > 200) return { code: 'part-id-damaged', received: id };
      return { id };
    },
    keyOf(row) {
      let key = titleOf(row);
      for (const cell of keyCells) {
        const value = cell(row);
        // The kind of the value is part of the key: the text "1" and the number 1 are read differently.
        key += typeof value === 'string' ? `\u0001${value}` : `\u0002${typeof value === 'object' ? '' : String(value)}`;
      }
      return key;
    },
    factsOf(row) {
      const facts: Facts = { words: {}, numbers: {}, doubts: {} };
      const named = titleOf(row);
      for (const reader of wordReaders) reader.read(row, named, facts);
      for (const { field, cell, column } of numberReaders) takeNumber(field, cell(row), column, missing, facts);
      return facts;
    },
  };
}

/** What a text means without a mapping; an empty list where it means that nothing is known. @internal */
export function usualMeaning(field: WordField, text: string): readonly string[] | undefined {
  const facts: Facts = { words: {}, numbers: {}, doubts: {} };
  wordReader(field, { column: field }, new Set(MISSING)).read({ [field]: text }, '', facts);
  const doubt = facts.doubts[field];
  return doubt === undefined || doubt.code === 'several-values' ? (facts.words[field] ?? []) : undefined;
}

function cellReader({ column, always }: ColumnMapping): CellReader {
  if (column === undefined) return () => always;
  const names = typeof column === 'string' ? [column] : column;
  const [first] = names;
  if (names.length === 1 && first !== undefined && always === undefined) return singleCell(first);
  const readers = names.map(singleCell);
  return (row) => {
    for (const reader of readers) {
      const value = reader(row);
      if (value !== undefined && value !== null && value !== '') return value;
    }
    return always;
  };
}

/** Own keys only: a row is a stranger's, and a key such as `__proto__` stays data. */
function singleCell(name: string): CellReader {
  const path = name.split('.');
  return (row) => {
    if (Object.hasOwn(row, name)) return row[name];
    if (path.length === 1) return undefined;
    let value: unknown = row;
    for (const key of path) {
      if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
      value = (value as Row)[key];
    }
    return value;
  };
}

const SHORT = 60;
// What is no text is named by its form: a list nested without end could not be written out.
const short = (value: unknown): string =>
  typeof value === 'string' ? value.slice(0, SHORT) : typeof value === 'object' ? 'something nested' : String(value);

interface WordReader {
  cell: CellReader;
  read(row: Row, title: string, facts: Facts): void;
}

function wordReader(field: WordField, column: ColumnMapping, missing: ReadonlySet<string>): WordReader {
  const cell = cellReader(column);
  const own = new Map(Object.entries(column.values ?? {}).map(([word, id]) => [plainWord(word), id]));
  const ids = idsOf(field);
  const splitter =
    column.separator === undefined || column.separator === ''
      ? /[/;|+]|\s(?:or|oder|ou|and|und|et)\s/i
      : column.separator;
  const meaning = (text: string): readonly string[] | undefined => {
    const word = plainWord(text);
    const mapped = own.get(word);
    if (mapped !== undefined) return mapped === '' ? [] : [mapped];
    if (missing.has(word)) return [];
    if (ids.has(word)) return [word];
    return meaningOf(field, text);
  };
  const meanings = (text: string): readonly string[] | undefined => {
    const whole = meaning(text);
    if (whole !== undefined) return whole;
    const parts = text.split(splitter);
    if (parts.length === 1) return undefined;
    const found = parts.map(meaning);
    return found.every((part) => part !== undefined) ? [...new Set(found.flat())] : undefined;
  };
  return {
    cell,
    read(row, title, facts) {
      const raw = cell(row);
      const list = Array.isArray(raw) ? raw.slice(0, 20) : [raw];
      const ownWords: string[] = [];
      for (const item of list) {
        if (item === undefined || item === null) continue;
        const text = typeof item === 'string' || typeof item === 'number' ? String(item).slice(0, 200) : '';
        const found = text === '' && typeof item !== 'string' ? undefined : meanings(text.trim());
        if (found !== undefined) ownWords.push(...found);
        else {
          const damaged = field === 'thread' && (looksLikeDate(text.trim()) || looksLikeExponent(text.trim()));
          facts.doubts[field] = { code: damaged ? 'value-suspicious' : 'word-not-mapped', received: short(item) };
        }
      }
      const all = sidesAsPair(field, [...new Set(ownWords)]);
      // A value that was not understood is never overruled by a title.
      const doubt = facts.doubts[field];
      if (doubt !== undefined) return;
      const known = withTitle(field, all, title, facts);
      if (known.length > 0) facts.words[field] = known;
      if (known.length > 1 && (field === 'kind' || field === 'side') && facts.doubts[field] === undefined) {
        facts.doubts[field] = { code: 'several-values', received: known.join(', ') };
      }
    },
  };
}

const sidesAsPair = (field: WordField, words: readonly string[]): readonly string[] =>
  field === 'side' && words.includes('drive') && words.includes('non-drive') ? ['pair'] : words;

/** What the title names beside the column: it fills a gap, narrows what was left open, or contradicts. */
function withTitle(field: WordField, words: readonly string[], title: string, facts: Facts): readonly string[] {
  if (title === '' || (field !== 'interface' && field !== 'thread')) return words;
  const named = [...new Set(title.split('|').flatMap((word) => meaningOf(field, word) ?? []))].filter((id) =>
    // A title names a thread of another part too, such as the bolt of an arm: only the kind that is asked for counts.
    field === 'thread' ? threadSuits(id, facts.words.kind?.[0]) : true,
  );
  if (named.length === 0) return words;
  if (words.length === 0) return named;
  const both = words.filter((id) => named.includes(id));
  if (both.length > 0) return both;
  if (field === 'interface' && !words.some((id) => id.startsWith('square-taper'))) return words;
  const all = [...words, ...named];
  facts.doubts[field] = { code: 'facts-contradict', received: all.join(', ') };
  return all;
}

function threadSuits(id: string, kind: string | undefined): boolean {
  const record = getNeighbour(id);
  if (kind === 'pedals') return record.kind === 'pedal-thread';
  if (kind === 'puller') return record.kind === 'puller-thread';
  return record.kind === 'fixing';
}

function idsOf(field: WordField): ReadonlySet<string> {
  if (field === 'kind') return new Set(['arm', 'spindle', 'bolt', 'chainring', 'pedals', 'puller', 'other']);
  if (field === 'side') return new Set(['drive', 'non-drive', 'pair']);
  if (field === 'interface') return new Set(listInterfaces().map(({ id }) => id));
  const shell = field === 'shell';
  const kinds = shell ? ['shell-thread', 'shell-bore'] : ['fixing', 'pedal-thread', 'puller-thread'];
  return new Set(listNeighbours().flatMap(({ id, kind }) => (kinds.includes(kind) ? [id] : [])));
}

function takeNumber(
  field: NumberField,
  raw: unknown,
  column: ColumnMapping,
  missing: ReadonlySet<string>,
  facts: Facts,
): void {
  const spec = PART_FIELDS[field];
  if (spec.form !== 'number') return;
  if (typeof raw === 'string' && missing.has(plainWord(raw))) return;
  const reading = readNumber(raw, column.unit ?? spec.unit, spec.unit, column.separator);
  const doubt = (code: Doubt['code']): void => {
    facts.doubts[field] = { code, received: short(raw) };
  };
  if (reading.kind === 'number') {
    if (reading.value >= spec.min && reading.value <= spec.max) facts.numbers[field] = reading.value;
    else doubt('value-out-of-range');
  } else if (reading.kind === 'suspicious') doubt('value-suspicious');
  else if (reading.kind === 'several') doubt('several-values');
  else if (reading.kind === 'unread') doubt('word-not-mapped');
}
