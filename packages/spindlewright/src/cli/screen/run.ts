import { setFlagsFromString } from 'node:v8';
import type { Mapping } from '../../screen/mapping.ts';
import type { Need } from '../../screen/need.ts';
import type { Screener } from '../../screen/screener.ts';
import { shortlistKeeper } from '../../screen/shortlist.ts';
import { type CatalogueForm, RowFault, readCatalogue } from '../readers/index.ts';
import type { CliIo } from './io.ts';
import { absentColumns } from './mapping-columns.ts';
import type { Options } from './options.ts';
import { fileOutput, type Output, streamOutput, wholeOutput } from './output.ts';
import { progressOn } from './progress.ts';
import { sourceOf } from './source.ts';
import {
  csvWriter,
  jsonWriter,
  ndjsonWriter,
  type OutputForm,
  printable,
  type RowWriter,
  summaryText,
  textWriter,
} from './writers.ts';

interface Work {
  own: Screener;
  need: Need;
  mapping: Mapping | undefined;
  top: number;
  format: OutputForm;
  values: Options;
  form: CatalogueForm | undefined;
  io: CliIo;
}

/**
 * Rows live for microseconds: a small nursery keeps a million of them within 140 MB (210 MB with the usual one), and
 * costs no time.
 */
function keepNurserySmall(): void {
  setFlagsFromString('--max-semi-space-size=4');
  setFlagsFromString('--semi-space-growth-factor=1');
}

/** Judges a catalogue row by row and writes each answer as it comes. @internal */
export async function run({ own, need, mapping, top, format, values, form, io }: Work): Promise<number> {
  keepNurserySmall();
  const { bytes: source, name, stop } = sourceOf(values, io);
  const writer: RowWriter =
    format === 'ndjson'
      ? ndjsonWriter()
      : format === 'csv'
        ? csvWriter()
        : format === 'json'
          ? jsonWriter(need)
          : textWriter();
  const { out } = values;
  const output: Output =
    format === 'json' || (format === 'text' && out !== undefined)
      ? wholeOutput(out, io.stdout)
      : out === undefined
        ? streamOutput(io.stdout, false)
        : fileOutput(out);
  const keeper = shortlistKeeper(top);
  const progress = values.quiet ? undefined : progressOn(io);
  let stopped = false;
  const release = io.onInterrupt(() => {
    stopped = true;
    stop();
  });
  try {
    const headed = output.write(writer.head());
    if (headed !== undefined) await headed;
    let rows = 0;
    try {
      for await (const { rows: batch, lines } of readCatalogue({
        source,
        name,
        ...(form === undefined ? {} : { form }),
      })) {
        if (rows === 0 && mapping !== undefined && !values.quiet) tellAbsent(mapping, batch, io);
        let text = '';
        for (let index = 0; index < batch.length && !stopped; index++) {
          const row = batch[index];
          const line = lines[index] ?? 0;
          if (row instanceof RowFault) {
            const { line: _line, partId, ...outcome } = own.refuse(line, row.reason);
            text += writer.row(line, partId, outcome);
            continue;
          }
          own.judgeShared(row, (partId, outcome) => {
            text += writer.row(line, partId, outcome);
            if (!keeper.full(outcome)) keeper.offer({ line, partId, ...outcome });
          });
        }
        rows += batch.length;
        const waiting = output.write(text);
        if (waiting !== undefined) await waiting;
        progress?.tell(rows);
        if (stopped) break;
      }
    } catch (error) {
      if (!stopped) throw error;
    }
    progress?.clear();
    const summary = own.summary();
    if (stopped) {
      await output.abandon();
      io.stderr.write(
        `interrupted after ${summary.rowCount} rows${format === 'json' ? '; nothing was written' : ''}\n`,
      );
      return 130;
    }
    const best = keeper.list();
    const ended = output.write(writer.tail(summary, best));
    if (ended !== undefined) await ended;
    await output.finish();
    if (!values.quiet && (format !== 'text' || out !== undefined)) io.stderr.write(summaryText(summary, best));
    if (!values.quiet && values.mapping === undefined && rows > 0 && summary.refusedCount === rows) {
      io.stderr.write(NO_MAPPING);
    }
    return 0;
  } catch (error) {
    progress?.clear();
    await output.abandon().catch(() => {});
    throw error;
  } finally {
    release();
    stop();
  }
}

/** Said before the first answer, since a misspelt column makes every row look refused or open. */
function tellAbsent(mapping: Mapping, batch: readonly unknown[], io: CliIo): void {
  const rows = batch.filter((row) => !(row instanceof RowFault));
  for (const { column, nearest } of absentColumns(mapping, rows)) {
    const like = nearest === undefined ? '' : `; nearest: ${JSON.stringify(nearest)}`;
    const text = `the mapping names a column ${JSON.stringify(column)} that the first rows do not have${like}`;
    io.stderr.write(`! ${printable(text)}\n`);
  }
}

const NO_MAPPING = `
Every row was refused, and there is no mapping: without one the columns are taken to have our own names.
Let a first one be drafted: spindlewright screen --draft-mapping CATALOGUE --out mapping.json
`;
