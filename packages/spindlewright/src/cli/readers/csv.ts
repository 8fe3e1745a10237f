import { type CsvError, parse } from 'csv-parse';
import type { TextBlock } from './decode.ts';
import { type Batch, CatalogueRefusal, LONGEST_ROW, RowFault } from './fault.ts';
import { tidyText } from './tidy.ts';

const DELIMITERS = [',', ';', '\t', '|'] as const;
const BATCH = 512;

interface Parsed {
  record: string[];
  info: { lines: number };
}

/** Tells what stands between the fields by the first line: what it holds most of, outside quotes. */
function detectDelimiter(head: string): string {
  const [, named] = /^sep=(.)\r?\n/.exec(head) ?? [];
  if (named !== undefined) return named;
  const [first = ''] = head
    .replace(/"[^"]*"/g, '')
    .split(/\r?\n/)
    .filter((line) => line.trim() !== '');
  let best = ',';
  let most = 0;
  for (const delimiter of DELIMITERS) {
    const count = first.split(delimiter).length - 1;
    if (count > most) [best, most] = [delimiter, count];
  }
  return best;
}

/** Rows of a table with a header; a row of another width or with broken quotes is reported in its place. @internal */
export async function* readCsv(blocks: AsyncIterable<TextBlock>, delimiter?: string): AsyncGenerator<Batch> {
  let header: string[] | undefined;
  let batch: Batch = { rows: [], lines: [] };
  const waiting: (Parsed | { error: CsvError })[] = [];
  let failure: Error | undefined;
  let parser: ReturnType<typeof parse> | undefined;
  let line = 0;
  const start = (head: string): { parser: ReturnType<typeof parse>; skip: number } => {
    const named = /^sep=.\r?\n/.exec(head);
    const made = parse({
      delimiter: delimiter ?? detectDelimiter(head),
      bom: true,
      info: true,
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: true,
      skip_records_with_error: true,
      max_record_size: LONGEST_ROW,
    });
    made.on('readable', () => {
      for (let one = made.read() as Parsed | null; one !== null; one = made.read() as Parsed | null) waiting.push(one);
    });
    made.on('skip', (error: CsvError) => waiting.push({ error }));
    made.on('error', (error: Error) => {
      failure = error;
    });
    return { parser: made, skip: named === null ? 0 : named[0].length };
  };
  const settle = (): void => {
    for (const one of waiting.splice(0)) {
      if ('error' in one) {
        const long = one.error.code === 'CSV_MAX_RECORD_SIZE';
        add(
          long
            ? new RowFault('row-too-long', { longest: LONGEST_ROW })
            : new RowFault('row-quotes-broken', { fault: one.error.code }),
          line + 1,
        );
        continue;
      }
      const { record, info } = one;
      const at = line + 1;
      line = info.lines;
      if (header === undefined) header = headerOf(record);
      else if (record.length !== header.length) {
        add(new RowFault('row-columns-differ', { found: record.length, wanted: header.length }), at);
      } else add(rowOf(header, record), at);
    }
  };
  const add = (row: unknown, at: number): void => {
    batch.rows.push(row);
    batch.lines.push(at);
  };
  for await (const { text, tooLong } of blocks) {
    if (tooLong) {
      add(new RowFault('row-too-long', { longest: LONGEST_ROW }), line + 1);
      line++;
    }
    let rest = text;
    if (parser === undefined) {
      if (text.trim() === '') continue;
      const started = start(text);
      parser = started.parser;
      rest = text.slice(started.skip);
    }
    if (rest !== '') await written(parser, rest);
    if (failure !== undefined) throw new CatalogueRefusal(`the table cannot be read: ${failure.message}`);
    settle();
    if (batch.rows.length >= BATCH) {
      yield batch;
      batch = { rows: [], lines: [] };
    }
  }
  if (parser !== undefined) {
    const ending = parser;
    await new Promise<void>((resolve) => {
      ending.once('end', resolve);
      ending.once('error', () => resolve());
      ending.end();
    });
    settle();
  }
  if (batch.rows.length > 0) yield batch;
}

/** Writes and lets what was parsed come out before more is written. */
function written(parser: ReturnType<typeof parse>, text: string): Promise<void> {
  return new Promise((resolve) => {
    parser.write(text, () => {
      setImmediate(resolve);
    });
  });
}

/** Names of the columns; a name that comes twice gets a number. */
function headerOf(record: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return record.map((cell, index) => {
    const name = tidyText(cell).trim().replace(/\s+/g, ' ') || `column ${index + 1}`;
    const times = (seen.get(name) ?? 0) + 1;
    seen.set(name, times);
    return times === 1 ? name : `${name} (${times})`;
  });
}

function rowOf(header: readonly string[], record: readonly string[]): Record<string, string> {
  const row: Record<string, string> = {};
  for (const [index, name] of header.entries()) {
    const value = tidyText(record[index] ?? '');
    // Setting this one key would set no field of the row.
    if (name === '__proto__') Object.defineProperty(row, name, { value, enumerable: true });
    else row[name] = value;
  }
  return row;
}
