import { draftMapping } from '../../screen/draft-mapping.ts';
import { type CatalogueForm, RowFault, readCatalogue } from '../readers/index.ts';
import type { CliIo } from './io.ts';
import type { Options } from './options.ts';
import { wholeOutput } from './output.ts';
import { sourceOf } from './source.ts';
import { printable } from './writers.ts';

const MOST_DRAFT_ROWS = 20_000;

/** Writes the draft of a mapping and says what it leaves open. @internal */
export async function draft(values: Options, form: CatalogueForm | undefined, io: CliIo): Promise<number> {
  const { bytes: source, name, stop } = sourceOf(values, io);
  const rows: unknown[] = [];
  let read = '';
  for await (const batch of readCatalogue({
    source,
    name,
    ...(form === undefined ? {} : { form }),
    tell: ({ encoding, form: found }) => {
      read = `${found}, ${encoding}`;
    },
  })) {
    for (const row of batch.rows) if (!(row instanceof RowFault)) rows.push(row);
    if (rows.length >= MOST_DRAFT_ROWS) break;
  }
  stop();
  const { mapping, unmapped, unusedColumns, fieldsWithoutColumn, rowCount } = draftMapping(rows);
  const output = wholeOutput(values.out, io.stdout);
  const waiting = output.write(`${JSON.stringify(mapping, null, 2)}\n`);
  if (waiting !== undefined) await waiting;
  await output.finish();
  const lines = [
    `${rowCount} rows looked at (${read}). This is a draft: read it before it is used.`,
    ...(fieldsWithoutColumn.includes('partId')
      ? ['No column looks like a part id: name it under columns.partId.']
      : []),
    ...(fieldsWithoutColumn.includes('kind')
      ? ['No column tells the kind of part: name it, or set columns.kind to {"always": "arm"}.']
      : []),
    ...(unusedColumns.length > 0 ? [`Columns not used: ${unusedColumns.join(', ')}`] : []),
    ...(unmapped.length > 0 ? ['Words that are not understood, with their counts; write our word behind each:'] : []),
    ...unmapped
      .slice(0, 50)
      .map(({ field, word, rowCount: count }) => `${String(count).padStart(9)}  ${field}: ${word}`),
  ];
  io.stderr.write(`${lines.map(printable).join('\n')}\n`);
  return 0;
}
