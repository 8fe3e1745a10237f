import { readFileSync } from 'node:fs';
import { readJob } from '../../read-job.ts';
import { checkNeed } from '../../screen/check-need.ts';
import type { Need } from '../../screen/need.ts';
import { needFromJob } from '../../screen/need-from-job.ts';
import type { PartKind } from '../../screen/part.ts';
import { parsedJson, refuseOtherKind } from '../files.ts';
import type { Parsed } from '../parse.ts';
import { FileTrouble, fileReason, Refusal } from '../refusal.ts';

/** What the command line of the verb says. @internal */
export interface Options {
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

/** Reads what the command line says; refuses what it says twice. @internal */
export function optionsOf(parsed: Parsed): Options {
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

/** The need, from its own file or from that of a job. @internal */
export function needOf(values: Options): Need {
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

/** Reads a JSON file that a shop wrote. @internal */
export function readJson(path: string, kind: 'job' | 'need' | 'mapping'): unknown {
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
