import { isDomainError } from '@spindlewright/quantity';
import { readJob } from '../../read-job.ts';
import { renderHtml } from '../../render-html.ts';
import { renderMarkdown } from '../../render-markdown.ts';
import { renderText } from '../../render-text.ts';
import type { JobSheet } from '../../sheet.ts';
import { workJob } from '../../work-job.ts';
import { jsonOf, refuseOtherKind, writeTo } from '../files.ts';
import type { CliHost } from '../host.ts';
import type { Parsed } from '../parse.ts';
import { FileTrouble, faultLines, NO_SUCH_FILE, Refusal } from '../refusal.ts';
import type { SHEET_FORMS } from '../verbs/job.ts';

type SheetForm = (typeof SHEET_FORMS)[number];

const RENDERERS: Readonly<Record<SheetForm, (sheet: JobSheet) => string>> = {
  text: renderText,
  markdown: renderMarkdown,
  html: renderHtml,
  json: (sheet) => `${JSON.stringify(sheet, null, 2)}\n`,
};

/** Works a job and prints its sheet. @internal */
export function runJob(parsed: Parsed, host: CliHost): number {
  const [path = ''] = parsed.operands;
  const html = parsed.text('html');
  if (parsed.text('save') !== undefined && !parsed.on('ask')) throw new Refusal('--save goes with --ask');
  if (parsed.on('json') && parsed.text('as') !== undefined) throw new Refusal('--json or --as, one of them');
  const form = parsed.on('json') ? 'json' : ((parsed.text('as') ?? 'text') as SheetForm);
  if (html === path) throw new Refusal('--html names the job file itself');
  const sheet = sheetOf(path, dataOf(path, host));
  const printed = RENDERERS[form](sheet);
  if (html !== undefined) writeTo(host, html, renderHtml(sheet));
  host.print(printed);
  if (html !== undefined) host.complain(`wrote ${html}\n`);
  return 0;
}

function dataOf(path: string, host: CliHost): unknown {
  try {
    return jsonOf(host, path);
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    if (!error.message.endsWith(NO_SUCH_FILE)) throw error;
    throw new FileTrouble(`${error.message}; "spindlewright job ${path} --ask" begins one`);
  }
}

function sheetOf(path: string, data: unknown): JobSheet {
  refuseOtherKind(path, data, 'job');
  try {
    return workJob(readJob(data));
  } catch (error) {
    if (!isDomainError(error)) throw error;
    throw new Refusal(`${path} refused, nothing written:\n${faultLines(error)}`);
  }
}
