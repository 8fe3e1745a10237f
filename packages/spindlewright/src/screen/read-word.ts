import { getNeighbour, listInterfaces, listNeighbours } from '@spindlewright/interfaces';
import type { ColumnMapping } from './mapping.ts';
import type { Facts, WordField } from './part.ts';
import { type CellReader, cellReader, type Row, receivedText } from './read-cell.ts';
import { looksLikeDate, looksLikeExponent } from './read-number.ts';
import { meaningOf, plainWord } from './vocabulary.ts';

/** Texts that mean that nothing is known. @internal */
export const MISSING = [
  ...['', '-', '--', '\u2013', '?', '.', 'n/a', '#n/a', 'na', 'n.a.', 'none', 'null', 'nan', 'undefined', 'tbd'],
  ...['unknown', 'unbekannt', 'k.a.', 'inconnu', 's/o', '#value!', '#ref!', '#name?'],
];

interface WordReader {
  cell: CellReader;
  read(row: Row, title: string, facts: Facts): void;
}

/** Makes the reader of a column of words, each put into ours where it is understood. @internal */
export function wordReader(field: WordField, column: ColumnMapping, missing: ReadonlySet<string>): WordReader {
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
          facts.doubts[field] = {
            code: damaged ? 'value-suspicious' : 'word-not-mapped',
            received: receivedText(item),
          };
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

/** What a text means without a mapping; an empty list where it means that nothing is known. @internal */
export function usualMeaning(field: WordField, text: string): readonly string[] | undefined {
  const facts: Facts = { words: {}, numbers: {}, doubts: {} };
  wordReader(field, { column: field }, new Set(MISSING)).read({ [field]: text }, '', facts);
  const doubt = facts.doubts[field];
  return doubt === undefined || doubt.code === 'several-values' ? (facts.words[field] ?? []) : undefined;
}
