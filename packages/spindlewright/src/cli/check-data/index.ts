import { type DomainError, isDomainError } from '@spindlewright/quantity';
import { readJob } from '../../read-job.ts';
import { checkMapping } from '../../screen/check-mapping.ts';
import { checkNeed } from '../../screen/check-need.ts';
import { workJob } from '../../work-job.ts';
import { jsonOf, jsonReason, textOf } from '../files.ts';
import { complaintOf } from '../guard.ts';
import { verbHelp } from '../help.ts';
import type { CliHost } from '../host.ts';
import { identified } from '../identify/index.ts';
import { readingsFile } from '../identify/input.ts';
import { parseVerb } from '../parse.ts';
import { FileTrouble, messageOf, Refusal } from '../refusal.ts';
import { checkDataVerb, type DATA_KINDS } from '../verbs/check-data.ts';
import { wrapped } from '../wrap.ts';
import { catalogueReport } from './catalogue.ts';
import { type JsonLines, jsonLines } from './json-lines.ts';
import type { Fault, FileReport } from './report.ts';

type Kind = (typeof DATA_KINDS)[number];

const MOST_ROWS = 20_000;

/** Looks for faults in files and reports each by line and path. Exit code: 0 none, 2 faults, 1 a file cannot be read. @internal */
export async function runCheckData(args: readonly string[], host: CliHost): Promise<number> {
  try {
    return await checkData(args, host);
  } catch (error) {
    const { text, code } = complaintOf('check-data', error);
    host.complain(text);
    return code;
  }
}

async function checkData(args: readonly string[], host: CliHost): Promise<number> {
  const parsed = parseVerb(checkDataVerb, args);
  if (parsed.help) {
    host.print(verbHelp(checkDataVerb));
    return 0;
  }
  const most = Number(parsed.text('rows') ?? MOST_ROWS);
  if (!Number.isInteger(most) || most < 1) throw new Refusal(`--rows ${parsed.text('rows')}: a whole number above 0`);
  const mappingPath = parsed.text('mapping');
  const options = {
    kind: parsed.text('as') as Kind | undefined,
    mapping: mappingPath === undefined ? undefined : jsonOf(host, mappingPath),
    most,
  };
  const reports: FileReport[] = [];
  let unreadable = false;
  for (const file of parsed.operands) {
    try {
      reports.push(await reportOf(file, options, host));
    } catch (error) {
      if (!(error instanceof FileTrouble) && !isFileError(error)) throw error;
      host.complain(`spindlewright check-data: ${messageOf(error)}\n`);
      unreadable = true;
    }
  }
  host.print(
    parsed.on('json')
      ? `${JSON.stringify({ format: 'spindlewright-check-1', files: reports }, null, 2)}\n`
      : reports.map(reportText).join(''),
  );
  if (unreadable) return 1;
  return reports.some(({ faultCount }) => faultCount > 0) ? 2 : 0;
}

const isFileError = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' && 'syscall' in error;

interface Options {
  kind: Kind | undefined;
  mapping: unknown;
  most: number;
}

async function reportOf(file: string, { kind, mapping, most }: Options, host: CliHost): Promise<FileReport> {
  const rows = (): Promise<FileReport> => catalogueReport(file, { mapping, most });
  if (kind === 'catalogue' || (kind === undefined && /\.(csv|tsv|tab|ndjson|jsonl)$/i.test(file))) return rows();
  const text = textOf(host, file);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    const { brokenAt } = jsonLines(text);
    const fault: Fault = {
      ...(brokenAt === undefined ? {} : { line: brokenAt }),
      path: '',
      received: 'a text that is no JSON',
      allowed: `JSON: ${jsonReason(text, error)}`,
    };
    return { file, kind: kind ?? 'JSON', faults: [fault], faultCount: 1, cautions: [] };
  }
  const known = kind ?? kindOf(data);
  if (known === 'catalogue') return rows();
  const lines = jsonLines(text);
  if (known === undefined) {
    const allowed =
      '"format" of a job, need, mapping, readings or sheet; "family" or "kind" of a record; a list of rows';
    const fault = {
      line: 1,
      path: 'format',
      received: 'nothing that tells what this is',
      allowed: `${allowed}; or --as`,
    };
    return { file, kind: 'unknown', faults: [fault], faultCount: 1, cautions: [] };
  }
  const { faults, cautions } = await contentFaults(known, data);
  const twice = lines.repeated.map(({ path, line }) => ({
    line,
    path,
    received: 'the field for the second time',
    allowed: 'each field once: only the last one would count',
  }));
  const placed = [...faults.map((fault) => withLine(fault, lines)), ...twice];
  const sorted = placed.sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
  return { file, kind: known, faults: sorted, faultCount: sorted.length, cautions };
}

const withLine = (fault: Fault, { lineOf }: JsonLines): Fault => ({ line: lineOf(fault.path), ...fault });

const BY_FORMAT: readonly (readonly [RegExp, Kind])[] = [
  [/^spindlewright-job-/, 'job'],
  [/^spindlewright-need-/, 'need'],
  [/^spindlewright-mapping-/, 'mapping'],
  [/^spindlewright-readings-/, 'readings'],
  [/^spindlewright-sheet-/, 'sheet'],
];

function kindOf(data: unknown): Kind | undefined {
  if (Array.isArray(data)) return 'catalogue';
  if (typeof data !== 'object' || data === null) return undefined;
  const { format } = data as { format?: unknown };
  if (typeof format === 'string') return BY_FORMAT.find(([pattern]) => pattern.test(format))?.[1];
  if ('@graph' in data || '@type' in data) return 'catalogue';
  return 'family' in data || 'kind' in data || 'meanings' in data ? 'record' : undefined;
}

async function contentFaults(kind: Kind, data: unknown): Promise<{ faults: Fault[]; cautions: string[] }> {
  if (kind === 'record' || kind === 'sheet') {
    // Only these need the schemas, which take their time to load.
    const { recordFaults, sheetFaults } = await import('./records.ts');
    return kind === 'record' ? recordFaults(data) : { faults: sheetFaults(data), cautions: [] };
  }
  const looks: Readonly<Partial<Record<Kind, () => unknown>>> = {
    // What cannot be worked is refused as surely as what cannot be read.
    job: () => workJob(readJob(data)),
    need: () => checkNeed('need', data),
    mapping: () => checkMapping('mapping', data),
    readings: () => identified(readingsFile('readings', data)),
  };
  try {
    looks[kind]?.();
    return { faults: [], cautions: [] };
  } catch (error) {
    if (isDomainError(error)) return { faults: faultsOf(error), cautions: [] };
    if (error instanceof Refusal) return { faults: [refusalFault(error)], cautions: [] };
    throw error;
  }
}

const faultsOf = ({ issues }: DomainError): Fault[] =>
  issues.map(({ path, received, allowed, nearest }) => ({
    path,
    received,
    allowed,
    ...(nearest === undefined ? {} : { nearest }),
  }));

/** A text with a unit is refused in words: path, what came, what is wanted. */
function refusalFault({ message }: Refusal): Fault {
  const [, path = '', received = '', allowed = message] = /^(\S+) (".*?"): (.*)$/s.exec(message) ?? [];
  return { path, received, allowed };
}

/** Of faults alike only the first are shown whole. */
const SHOWN_ALIKE = 3;
const SHOWN_LINES = 8;

function reportText({ file, kind, faults, faultCount, cautions, rowCount }: FileReport): string {
  const rows = rowCount === undefined ? '' : `, ${rowCount} rows`;
  const count = faultCount === 0 ? 'no faults' : faultCount === 1 ? '1 fault' : `${faultCount} faults`;
  const alike = new Map<string, Fault[]>();
  for (const fault of faults) {
    const key = `${fault.received}\n${fault.allowed}`;
    alike.set(key, [...(alike.get(key) ?? []), fault]);
  }
  return [
    `${file}: ${kind}${rows}, ${count}`,
    ...[...alike.values()].flatMap((group) => [
      ...group.slice(0, SHOWN_ALIKE).flatMap(faultText),
      ...(group.length > SHOWN_ALIKE ? wrapped(othersText(group.slice(SHOWN_ALIKE)), undefined, '    ') : []),
    ]),
    ...(faultCount > faults.length ? [`  ${faultCount - faults.length} faults more`] : []),
    ...cautions.flatMap((text) => wrapped(text, undefined, '  !   ', '      ')),
    '',
  ].join('\n');
}

const faultText = ({ line, path, received, allowed, nearest }: Fault): string[] => [
  `  ${line === undefined ? '' : `line ${line}: `}${path || '(the whole file)'}`,
  ...wrapped(received, undefined, '    came:    '),
  ...wrapped(allowed, undefined, '    allowed: '),
  ...(nearest === undefined ? [] : [`    nearest: ${nearest}`]),
];

function othersText(faults: readonly Fault[]): string {
  const lines = faults.flatMap(({ line }) => (line === undefined ? [] : [line]));
  const shown = lines.slice(0, SHOWN_LINES).join(', ');
  return `and ${faults.length} more like it${shown === '' ? '' : `, in lines ${shown}${lines.length > SHOWN_LINES ? ', ...' : ''}`}`;
}
