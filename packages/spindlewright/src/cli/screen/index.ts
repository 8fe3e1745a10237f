import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { isDomainError } from '@spindlewright/quantity';
import { readJob } from '../../read-job.ts';
import { checkMapping } from '../../screen/check-mapping.ts';
import { checkNeed } from '../../screen/check-need.ts';
import { draftMapping } from '../../screen/draft-mapping.ts';
import type { Mapping } from '../../screen/mapping.ts';
import type { Need } from '../../screen/need.ts';
import { needFromJob } from '../../screen/need-from-job.ts';
import type { PartKind } from '../../screen/part.ts';
import { type Screener, screener } from '../../screen/screener.ts';
import { shortlistKeeper } from '../../screen/shortlist.ts';
import { parsedJson, refuseOtherKind } from '../files.ts';
import { verbHelp } from '../help.ts';
import { type Parsed, parseVerb } from '../parse.ts';
import { fileBytes } from '../readers/file-bytes.ts';
import { type CatalogueForm, CatalogueRefusal, RowFault, readCatalogue } from '../readers/index.ts';
import { FileTrouble, faultLines, fileReason, Refusal } from '../refusal.ts';
import { screenVerb } from '../verbs/screen.ts';
import type { CliIo } from './io.ts';
import { absentColumns } from './mapping-columns.ts';
import { fileOutput, type Output, streamOutput, wholeOutput } from './output.ts';
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

export type { CliIo } from './io.ts';

/**
 * Runs the verb `screen`: a catalogue in, an answer for every part out, row by row. `args` are those after the verb.
 * Exit code: 0 done, 2 refused, 1 a file cannot be read or written, 130 interrupted. @internal
 */
export async function runScreen(args: readonly string[], io: CliIo): Promise<number> {
  try {
    return await screen(args, io);
  } catch (error) {
    if (isDomainError(error)) {
      io.stderr.write(`spindlewright screen: refused:\n${faultLines(error)}\n`);
      return 2;
    }
    if (error instanceof Refusal || error instanceof CatalogueRefusal) {
      io.stderr.write(`spindlewright screen: ${error.message}\n`);
      return 2;
    }
    // Whoever reads the output has had enough, such as `head`: no fault of anybody.
    if (codeOf(error) === 'EPIPE') return 0;
    if (error instanceof FileTrouble || typeof codeOf(error) === 'string') {
      io.stderr.write(
        `spindlewright screen: ${error instanceof FileTrouble ? error.message : `${pathOf(error)}${fileReason(error)}`}\n`,
      );
      return 1;
    }
    throw error;
  }
}

async function screen(args: readonly string[], io: CliIo): Promise<number> {
  const parsed = parseVerb(screenVerb, args);
  if (parsed.help) {
    io.stdout.write(verbHelp(screenVerb));
    return 0;
  }
  const values = optionsOf(parsed);
  // The table of the verb has checked the choices.
  const format = (parsed.on('json') ? 'json' : (values.format ?? 'text')) as OutputForm;
  const form = values.form as CatalogueForm | undefined;
  const top = values.top === undefined ? 10 : Number(values.top);
  if (!Number.isInteger(top) || top < 0 || top > 10_000)
    throw new Refusal(`--top ${values.top}: a whole number from 0 to 10000`);
  for (const name of ['need', 'job', 'mapping', 'catalogue'] as const) {
    const path = values[name];
    if (path !== undefined && values.out !== undefined && resolve(path) === resolve(values.out)) {
      throw new Refusal(`--out names the ${name} itself`);
    }
  }
  if (values['draft-mapping']) return draft(values, form, io);
  const need = needOf(values);
  const mapping = values.mapping === undefined ? undefined : readJson(values.mapping, 'mapping');
  if (mapping !== undefined) checkMapping('mapping', mapping);
  const own = screener(need, mapping as Mapping | undefined);
  keepNurserySmall();
  return run({ own, need, mapping: mapping as Mapping | undefined, top, format, values, form, io });
}

interface Options {
  need: string | undefined;
  job: string | undefined;
  mapping: string | undefined;
  catalogue: string | undefined;
  for: string | undefined;
  form: string | undefined;
  format: string | undefined;
  out: string | undefined;
  top: string | undefined;
  'draft-mapping': boolean;
  quiet: boolean;
}

function optionsOf(parsed: Parsed): Options {
  const [operand] = parsed.operands;
  const named = parsed.text('catalogue');
  if (operand !== undefined && named !== undefined) {
    throw new Refusal('one catalogue at a time (see "spindlewright screen --help")');
  }
  if (parsed.on('json') && parsed.text('format') !== undefined) throw new Refusal('--json or --format, one of them');
  return {
    need: parsed.text('need'),
    job: parsed.text('job'),
    mapping: parsed.text('mapping'),
    catalogue: operand ?? named,
    for: parsed.text('for'),
    form: parsed.text('form'),
    format: parsed.text('format'),
    out: parsed.text('out'),
    top: parsed.text('top'),
    'draft-mapping': parsed.on('draft-mapping'),
    quiet: parsed.on('quiet'),
  };
}

function needOf(values: Options): Need {
  if ((values.need === undefined) === (values.job === undefined)) {
    throw new Refusal('say what is wanted: either --need FILE or --job FILE (see "spindlewright screen --help")');
  }
  const kind = values.for as PartKind | undefined;
  if (values.job !== undefined) {
    return needFromJob({ job: readJob(readJson(values.job, 'job')), ...(kind === undefined ? {} : { for: kind }) });
  }
  const need = readJson(values.need ?? '', 'need');
  checkNeed('need', need);
  if (kind !== undefined && kind !== need.for) throw new Refusal(`--for ${kind}: the need is for ${need.for}`);
  return need;
}

function readJson(path: string, kind: 'job' | 'need' | 'mapping'): unknown {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    throw new FileTrouble(`cannot read ${path}: ${fileReason(error)}`);
  }
  const data = parsedJson(path, text.replace(/^\uFEFF/, ''));
  refuseOtherKind(path, data, kind);
  return data;
}

interface Source {
  bytes: AsyncIterable<Uint8Array | string>;
  name: string;
  /** Ends a source that may wait for ever. */
  stop(): void;
}

function sourceOf({ catalogue }: Options, { stdin }: CliIo): Source {
  if (catalogue !== undefined && catalogue !== '-')
    return { bytes: fileBytes(catalogue), name: catalogue, stop: () => {} };
  return {
    bytes: stdin,
    name: '',
    stop: () => {
      stdin.destroy();
    },
  };
}

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

async function run({ own, need, mapping, top, format, values, form, io }: Work): Promise<number> {
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

const MOST_DRAFT_ROWS = 20_000;

async function draft(values: Options, form: CatalogueForm | undefined, io: CliIo): Promise<number> {
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

const EVERY_MS = { terminal: 250, other: 5000 };

/** How far it has come: one line that is written over on a terminal, a line now and then elsewhere. */
function progressOn(io: CliIo): { tell(rows: number): void; clear(): void } {
  const terminal = io.stderr.isTTY === true;
  const every = terminal ? EVERY_MS.terminal : EVERY_MS.other;
  let last = performance.now();
  let shown = false;
  return {
    tell(rows) {
      const now = performance.now();
      if (now - last < every) return;
      last = now;
      shown = true;
      io.stderr.write(terminal ? `\r${rows} rows` : `${rows} rows\n`);
    },
    clear() {
      if (shown && terminal) io.stderr.write('\r\u001b[K');
    },
  };
}

/** The file that the system names in its error. */
const pathOf = (error: unknown): string =>
  error instanceof Error && 'path' in error && typeof error.path === 'string' ? `${error.path}: ` : '';

const codeOf = (error: unknown): unknown =>
  typeof error === 'object' && error !== null && 'code' in error ? error.code : undefined;
