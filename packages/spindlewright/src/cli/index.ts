import { parseArgs } from 'node:util';
import { isDomainError } from '@spindlewright/quantity';
import { readJob } from '../read-job.ts';
import { renderHtml } from '../render-html.ts';
import { renderMarkdown } from '../render-markdown.ts';
import { renderText } from '../render-text.ts';
import { workJob } from '../work-job.ts';

/** What the command line needs of its surroundings. */
export interface CliHost {
  /** Reads a file as text, `-` being standard input; throws when it cannot. */
  readText(path: string): string;
  /** Writes a file whole, making its folder; throws when it cannot. */
  writeText(path: string, text: string): void;
  /** Prints to standard output. */
  print(text: string): void;
  /** Prints to standard error. */
  complain(text: string): void;
}

const USAGE = `spindlewright: work a crank-arm job, screen a catalogue

  spindlewright job FILE             work the job in FILE (JSON; - for standard input), print the sheet
    --as text|markdown|html|json     form of the printed sheet (text)
    --html FILE                      write the page with the drawing too
  spindlewright screen --need FILE   say of every part of a catalogue whether it fits (screen --help tells the rest)
  spindlewright help                 this text

exit codes: 0 done, 2 refused (bad input; nothing was written), 1 anything else
`;

const FORMS = {
  text: renderText,
  markdown: renderMarkdown,
  html: renderHtml,
  json: (sheet: unknown) => `${JSON.stringify(sheet, null, 2)}\n`,
} as const;

/**
 * Runs the command line.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: verbs `job` and `help`; `screen` streams and is run by the command itself.
 *
 * Accuracy: as the functions it calls.
 *
 * @param args - Arguments after the command's name.
 * @param host - Reading, writing and printing.
 * @returns Exit code: 0 done, 2 for refused input (then nothing was written), 1 when a file cannot be read or written.
 * @throws Nothing that comes from input; faults of the program itself pass through.
 * @example
 * ```ts
 * import { runCli } from 'spindlewright/cli';
 * const silent = { readText: () => '{}', writeText: () => {}, print: () => {}, complain: () => {} };
 * runCli(['job', 'x.json'], silent); // => 2
 * ```
 * @see The project's own command form.
 */
export function runCli(args: readonly string[], host: CliHost): number {
  const [verb, ...rest] = args;
  if (verb === undefined || verb === 'help' || verb === '--help' || verb === '-h') {
    host.print(USAGE);
    return verb === undefined ? 2 : 0;
  }
  if (verb !== 'job') {
    host.complain(`spindlewright: unknown verb "${verb}"; known: job, screen, help\n`);
    return 2;
  }
  return runJob(rest, host);
}

function runJob(args: readonly string[], host: CliHost): number {
  const refused = (text: string): number => {
    host.complain(`spindlewright job: ${text}\n`);
    return 2;
  };
  let parsed: { values: { as?: string; html?: string }; positionals: string[] };
  try {
    parsed = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { as: { type: 'string' }, html: { type: 'string' } },
    });
  } catch (error) {
    return refused(messageOf(error));
  }
  const { positionals, values } = parsed;
  const [path] = positionals;
  const form = values.as ?? 'text';
  if (path === undefined || positionals.length > 1) return refused('one job file, please (see "spindlewright help")');
  if (!Object.hasOwn(FORMS, form)) return refused(`--as ${form}: allowed ${Object.keys(FORMS).join(', ')}`);

  if (values.html !== undefined && values.html === path) return refused('--html names the job file itself');
  let text: string;
  try {
    text = host.readText(path);
  } catch (error) {
    host.complain(`spindlewright job: cannot read ${path}: ${messageOf(error)}\n`);
    return 1;
  }
  let data: unknown;
  try {
    // Some editors begin a file with a byte-order mark.
    data = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return refused(`${path} is not JSON: ${messageOf(error)}`);
  }
  try {
    const sheet = workJob(readJob(data));
    const printed = FORMS[form as keyof typeof FORMS](sheet);
    const page = values.html === undefined ? undefined : renderHtml(sheet);
    if (page !== undefined && values.html !== undefined) {
      try {
        host.writeText(values.html, page);
      } catch (error) {
        host.complain(`spindlewright job: cannot write ${values.html}: ${messageOf(error)}\n`);
        return 1;
      }
    }
    host.print(printed);
    if (values.html !== undefined) host.complain(`wrote ${values.html}\n`);
    return 0;
  } catch (error) {
    if (!isDomainError(error)) throw error;
    const lines = error.issues.map(
      (issue) =>
        `  ${issue.path || '(the whole file)'}\n    came:    ${issue.received}\n    allowed: ${issue.allowed}${
          issue.nearest === undefined ? '' : `\n    nearest: ${issue.nearest}`
        }`,
    );
    return refused(`${path} refused, nothing written:\n${lines.join('\n')}`);
  }
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
