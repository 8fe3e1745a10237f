import { columnOf } from './check-mapping.ts';
import type { ColumnMapping, Mapping } from './mapping.ts';
import { PART_FIELDS, type PartField, type WordField } from './part.ts';
import type { Row } from './read-cell.ts';
import { looksLikeExponent, readNumber } from './read-number.ts';
import { usualMeaning } from './read-word.ts';
import type { UnmappedWord } from './screened.ts';
import { meaningOf, plainWord } from './vocabulary.ts';

/** A first mapping, and what is left to say. */
export interface MappingDraft {
  /** The mapping as far as names and contents tell it; words that are not understood stand in it with `""`. */
  mapping: Mapping;
  /** Words that it leaves unexplained, most frequent first. */
  unmapped: readonly UnmappedWord[];
  /** Columns that it does not use. */
  unusedColumns: readonly string[];
  /** Fields that no column was found for. */
  fieldsWithoutColumn: readonly string[];
  /** Rows that were looked at. */
  rowCount: number;
}

// How columns are named in feeds, from memory; the first pattern that suits a column takes it.
const NAMES: readonly (readonly [PartField, RegExp])[] = [
  [
    'partId',
    /^(?:part ?-?_?id|id|sku|art(?:ikel)?[ ._-]*(?:nr|no|nummer)\.?|item ?(?:id|no|number)|r\u00e9f\w*|ref\w*|mpn|part ?(?:no|number)|code)$/,
  ],
  ['title', /^(?:title|name|bezeichnung|titel|description|d\u00e9signation|designation|titolo|nombre|product ?name)$/],
  [
    'kind',
    /^(?:kind|type|category|product ?type|warengruppe|kategorie|cat\u00e9gorie|categoria|categor\u00eda|group)$/,
  ],
  ['acrossFlatsAtMouthMm', /(?:across ?flats.*(?:mouth|hole|bore|arm)|(?:hole|bore) ?(?:across|square))/],
  ['acrossFlatsAtEndMm', /across ?flats.*(?:end|spindle)/],
  ['boreLengthMm', /(?:bore|hole) ?(?:length|depth)/],
  ['boltCircleMm', /^(?:bcd|bolt ?circle.*|lochkreis.*|entraxe.*|girobulloni)$/],
  ['boltCount', /^(?:bolts|bolt ?count|holes|number of (?:bolts|holes)|l\u00f6cher|arm ?count)$/],
  ['toothCount', /^(?:teeth|tooth ?count|z\u00e4hne|dents|denti|dientes)$/],
  ['spindleLengthMm', /(?:spindle|axle|wellen|achs|axe).{0,3}(?:length|l\u00e4nge|longueur)/],
  [
    'armLengthMm',
    /(?:^(?:length|l\u00e4nge|longueur|lunghezza|longitud)$|(?:arm|crank|kurbel).{0,3}(?:length|l\u00e4nge))/,
  ],
  [
    'interface',
    /^(?:interface|taper|standard|mount|aufnahme|spindle ?(?:type|interface|standard)|emmanchement|attacco|fit)$/,
  ],
  ['thread', /^(?:thread|gewinde|filetage|filetto|rosca|pedal ?thread)$/],
  ['shell', /^(?:shell|bb ?thread|geh\u00e4use.*|shell ?thread|bo\u00eetier)$/],
  ['side', /^(?:side|seite|c\u00f4t\u00e9|cote|lato|lado|position)$/],
];

const UNIT_IN_NAME = /[\s_([/-]+(mm|cm|in|inch|zoll|deg|\u00b0|")[\s)\]]*$/i;
const UNITS: Readonly<Record<string, 'mm' | 'cm' | 'in' | 'deg'>> = {
  mm: 'mm',
  cm: 'cm',
  in: 'in',
  inch: 'in',
  zoll: 'in',
  '"': 'in',
  deg: 'deg',
  '\u00b0': 'deg',
};

const MOST_ROWS = 20_000;
const MOST_WORDS = 500;
const WORD_FIELDS: readonly WordField[] = ['kind', 'interface', 'thread', 'shell', 'side'];

/**
 * Drafts a mapping from the names of columns, the units in them, and what the rows hold.
 *
 * @remarks
 * Formula: none. A column is taken by its name, with the unit behind it; where no name suits, the column in which most texts
 * are words of ours is taken for the kind, the joint, the thread or the side (half of the rows at least). Part ids that
 * are figures of one width in nine rows of ten get that width, so that a lost zero is noticed.
 *
 * Validity: rows as objects; the first 20000 are looked at. A draft is to be read by a person before it is used: every
 * word that is not understood stands in it with an empty meaning, and is listed with its count.
 *
 * Accuracy: a guess.
 *
 * @param rows - Rows of a catalogue, columns by name.
 * @returns The draft, unexplained words with counts, columns not used and fields without a column.
 * @throws Nothing.
 * @example
 * ```ts
 * import { draftMapping } from 'spindlewright';
 * const draft = draftMapping([{ SKU: 'K-1', Category: 'Kurbelarm', Taper: 'JIS', 'Arm length (mm)': '170' }]);
 * draft.mapping.columns; // => {
 * //   partId: 'SKU', kind: { column: 'Category', values: { Kurbelarm: 'arm' } },
 * //   interface: { column: 'Taper', values: { JIS: 'square-taper-jis' } },
 * //   armLengthMm: { column: 'Arm length (mm)', unit: 'mm' }
 * // }
 * ```
 * @see {@link screenParts}
 */
export function draftMapping(rows: Iterable<unknown>): MappingDraft {
  const seen: Row[] = [];
  const columns = new Set<string>();
  for (const row of rows) {
    if (typeof row !== 'object' || row === null || Array.isArray(row)) continue;
    seen.push(row as Row);
    if (columns.size < MOST_WORDS) for (const key of Object.keys(row)) columns.add(key);
    if (seen.length >= MOST_ROWS) break;
  }
  const taken = new Map<PartField, string>();
  for (const [field, pattern] of NAMES) {
    if (taken.has(field)) continue;
    const used = new Set(taken.values());
    const column = [...columns].find((name) => !used.has(name) && pattern.test(bareName(name)));
    if (column !== undefined) taken.set(field, column);
  }
  for (const field of WORD_FIELDS) {
    if (taken.has(field)) continue;
    const used = new Set(taken.values());
    const column = [...columns].find((name) => !used.has(name) && understood(field, name, seen) >= 0.5);
    if (column !== undefined) taken.set(field, column);
  }
  const unmapped: UnmappedWord[] = [];
  const drafted: Partial<Record<PartField, string | ColumnMapping>> = {};
  for (const field of Object.keys(PART_FIELDS) as PartField[]) {
    const column = taken.get(field);
    if (column !== undefined) drafted[field] = draftColumn(field, column, seen, unmapped);
  }
  const mapping: Mapping = { format: 'spindlewright-mapping-1', columns: drafted };
  const used = new Set(taken.values());
  return {
    mapping,
    unmapped: unmapped.sort((a, b) => b.rowCount - a.rowCount || (a.word < b.word ? -1 : 1)),
    unusedColumns: [...columns].filter((name) => !used.has(name)),
    fieldsWithoutColumn: Object.keys(PART_FIELDS).filter(
      (field) => columnOf(mapping, field as PartField) === undefined,
    ),
    rowCount: seen.length,
  };
}

const bareName = (name: string): string => plainWord(name.replace(UNIT_IN_NAME, '').replace(/_/g, ' '));

/** Share of the texts of a column that are words of a field. */
function understood(field: WordField, column: string, rows: readonly Row[]): number {
  let texts = 0;
  let known = 0;
  for (const row of rows.slice(0, MOST_WORDS)) {
    const value = Object.hasOwn(row, column) ? row[column] : undefined;
    if (typeof value !== 'string' || value.trim() === '') continue;
    texts++;
    if (value.length < 60 && meaningOf(field, value) !== undefined) known++;
  }
  return texts === 0 ? 0 : known / texts;
}

function draftColumn(
  field: PartField,
  column: string,
  rows: readonly Row[],
  unmapped: UnmappedWord[],
): string | ColumnMapping {
  const spec = PART_FIELDS[field];
  if (field === 'partId') {
    const digitCount = commonWidth(column, rows);
    return digitCount === undefined ? column : { column, digitCount };
  }
  if (spec.form === 'text') return column;
  if (spec.form === 'number') {
    const written = UNIT_IN_NAME.exec(column)?.[1]?.toLowerCase();
    const unit = written === undefined ? undefined : UNITS[written];
    const own = unit ?? (spec.unit === '' ? undefined : spec.unit);
    countWords(column, rows, (text) => readNumber(text, own ?? '', spec.unit).kind === 'unread').forEach(
      (rowCount, word) => {
        unmapped.push({ field, word, rowCount });
      },
    );
    return own === undefined ? column : { column, unit: own };
  }
  const values: [string, string][] = [];
  for (const [word, rowCount] of countWords(column, rows, () => true)) {
    const meaning = usualMeaning(field as WordField, word);
    if (meaning?.length === 1 && meaning[0] !== undefined) values.push([word, meaning[0]]);
    else if (meaning === undefined) {
      values.push([word, '']);
      unmapped.push({ field, word, rowCount });
    }
  }
  // fromEntries defines own properties, so that a word such as __proto__ stays a word.
  return values.length === 0 ? column : { column, values: Object.fromEntries(values) };
}

function countWords(column: string, rows: readonly Row[], wanted: (text: string) => boolean): Map<string, number> {
  const counts = new Map<string, number>();
  for (const row of rows) {
    const value = Object.hasOwn(row, column) ? row[column] : undefined;
    const word = typeof value === 'string' ? value.trim() : '';
    if (word === '' || word.length > 60) continue;
    const known = counts.get(word);
    if (known !== undefined) counts.set(word, known + 1);
    else if (counts.size < MOST_WORDS && wanted(word)) counts.set(word, 1);
  }
  return counts;
}

/** Width of part ids that are figures, where nine of ten share it. */
function commonWidth(column: string, rows: readonly Row[]): number | undefined {
  const widths = new Map<number, number>();
  let ids = 0;
  for (const row of rows) {
    const value = Object.hasOwn(row, column) ? row[column] : undefined;
    if (typeof value !== 'string' || looksLikeExponent(value.trim())) continue;
    ids++;
    if (/^\d+$/.test(value.trim())) widths.set(value.trim().length, (widths.get(value.trim().length) ?? 0) + 1);
  }
  for (const [width, count] of widths) if (ids >= 20 && count >= 0.9 * ids) return width;
  return undefined;
}
