import { nearestName } from '@spindlewright/quantity';
import { version } from '../version.ts';
import { runCompletion } from './completion/index.ts';
import { complaintOf } from './guard.ts';
import { commandHelp, verbHelp } from './help.ts';
import type { CliHost } from './host.ts';
import { runIdentify } from './identify/index.ts';
import { runJob } from './job/index.ts';
import { type Parsed, parseVerb } from './parse.ts';
import { Refusal } from './refusal.ts';
import { runTorque } from './torque/index.ts';
import { VERBS } from './verbs/index.ts';

export type { CliHost } from './host.ts';

/** The verbs that neither stream nor ask. */
const RUNNERS: Readonly<Record<string, (parsed: Parsed, host: CliHost) => number>> = {
  job: runJob,
  identify: runIdentify,
  torque: runTorque,
  completion: runCompletion,
};

/**
 * Runs the command line.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: every verb but those that stream or ask (`screen`, `check-data`, `job --ask`), which the command itself runs;
 * help for all of them.
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
  const [first, ...rest] = args;
  if (first === undefined) {
    host.complain(commandHelp(VERBS));
    return 2;
  }
  if (first === '--version') {
    host.print(`${version}\n`);
    return 0;
  }
  const helped = first === 'help' || first === '--help' || first === '-h';
  const [asked] = rest;
  if (helped && asked === undefined) {
    host.print(commandHelp(VERBS));
    return 0;
  }
  const name = helped && asked !== undefined ? asked : first;
  const verb = VERBS.find((known) => known.name === name);
  if (verb === undefined) {
    const known = [...VERBS.map((one) => one.name), 'help'];
    const nearest = nearestName({ name, known });
    const like = nearest === undefined ? '' : `; nearest: ${nearest}`;
    host.complain(`spindlewright: unknown verb "${name}"${like}; known: ${known.join(', ')}\n`);
    return 2;
  }
  try {
    const parsed = helped ? undefined : parseVerb(verb, rest);
    if (parsed === undefined || parsed.help) {
      host.print(verbHelp(verb));
      return 0;
    }
    if (parsed.on('ask')) throw new Refusal('--ask needs somebody at a terminal');
    const run = Object.hasOwn(RUNNERS, name) ? RUNNERS[name] : undefined;
    if (run === undefined) throw new Refusal('reads and writes streams, so only the command itself runs it');
    return run(parsed, host);
  } catch (error) {
    const { text, code } = complaintOf(name, error);
    host.complain(text);
    return code;
  }
}
