import { columnOf } from './check-mapping.ts';
import type { ColumnMapping, Mapping } from './mapping.ts';
import type { Need } from './need.ts';
import { type Doubt, type Facts, type NumberField, PART_FIELDS, type PartField, type WordField } from './part.ts';
import { type CellReader, cellReader, type Row, receivedText } from './read-cell.ts';
import { looksLikeExponent, readNumber } from './read-number.ts';
import { MISSING, wordReader } from './read-word.ts';
import { plainWord, standardsInTitle } from './vocabulary.ts';

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
    facts.doubts[field] = { code, received: receivedText(raw) };
  };
  if (reading.kind === 'number') {
    if (reading.value >= spec.min && reading.value <= spec.max) facts.numbers[field] = reading.value;
    else doubt('value-out-of-range');
  } else if (reading.kind === 'suspicious') doubt('value-suspicious');
  else if (reading.kind === 'several') doubt('several-values');
  else if (reading.kind === 'unread') doubt('word-not-mapped');
}
