import { isDomainError } from '@spindlewright/quantity';
import { jointOf } from '../../joint-kind.ts';
import { jointWords } from '../../joint-words.ts';
import { readJob } from '../../read-job.ts';
import { pathWords } from '../../seat-words.ts';
import { jsonOf, refuseOtherKind, writeTo } from '../files.ts';
import { complaintOf } from '../guard.ts';
import { verbHelp } from '../help.ts';
import type { CliHost } from '../host.ts';
import { runJob } from '../job/index.ts';
import { type Parsed, parseVerb } from '../parse.ts';
import { Refusal } from '../refusal.ts';
import type { CliIo } from '../screen/io.ts';
import { jobVerb } from '../verbs/job.ts';
import { wrapped } from '../wrap.ts';
import type { Asker } from './asker.ts';
import { converse, standing } from './conversation.ts';
import { savedJob, startWalk, stepOf, type Walk } from './machine.ts';
import { askNewJob } from './new-job.ts';

/** What the walk needs beside files: whoever is asked, what is there, and the day. @internal */
export interface AskHost extends CliHost {
  /** Whether a file is there. */
  exists(path: string): boolean;
  /** The day, `YYYY-MM-DD`. */
  today(): string;
  /** Whoever is asked; undefined where nobody sits at a terminal. */
  asker(): Promise<Asker | undefined>;
}

/** Walks through the next checks of a job and saves what is found. Exit code: 0 ended or stopped, 130 broken off. @internal */
export async function runAsk(args: readonly string[], host: AskHost): Promise<number> {
  try {
    const parsed = parseVerb(jobVerb, args);
    if (parsed.help) {
      host.print(verbHelp(jobVerb));
      return 0;
    }
    return await ask(parsed, host);
  } catch (error) {
    const { text, code } = complaintOf('job', error);
    host.complain(text);
    return code;
  }
}

async function ask(parsed: Parsed, host: AskHost): Promise<number> {
  const [path = ''] = parsed.operands;
  const target = parsed.text('save') ?? path;
  if (path === '-') throw new Refusal('--ask reads the answers from the terminal, so the job has to be in a file');
  if (parsed.text('html') === target) throw new Refusal('--html names the job file itself');
  const asker = await host.asker();
  if (asker === undefined) throw new Refusal('--ask needs somebody at a terminal');
  const data = host.exists(path) ? jsonOf(host, path) : await askNewJob(asker, host.today());
  if (data === undefined) return 130;
  refuseOtherKind(path, data, 'job');
  let written = false;
  const save = (walk: Walk): void => {
    writeTo(host, target, `${JSON.stringify(savedJob(data, walk), null, 2)}\n`);
    written = true;
  };
  const job = readJob(data);
  const faultOf = (walk: Walk): string | undefined => {
    try {
      readJob(savedJob(data, walk));
      return undefined;
    } catch (error) {
      if (!isDomainError(error)) throw error;
      return `${pathWords(error.path)}: allowed is ${error.allowed}`;
    }
  };
  const { walk, brokenOff } = await converse(startWalk(job, data), { asker, save, faultOf });
  if (brokenOff) {
    host.complain(written ? `broken off; the answers so far are in ${target}\n` : 'broken off; nothing was written\n');
    return 130;
  }
  // A job that was begun is kept even when nothing was answered.
  if (!host.exists(target)) save(walk);
  asker.say(standing(stepOf(walk).diagnosis, jointWords(jointOf(job))));
  const again = target === path ? parsed : { ...parsed, operands: [target] };
  if (parsed.on('json') || parsed.text('as') !== undefined || parsed.text('html') !== undefined) {
    return runJob(again, host);
  }
  host.complain(`${wrapped(`The job is in ${target}. Its sheet: spindlewright job ${target}`).join('\n')}\n`);
  return 0;
}

/** Whether the walk is asked for. @internal */
export const wantsAsk = (args: readonly string[]): boolean => args.includes('--ask');

/** A person can only be asked where both ends are a terminal. @internal */
export const atTerminal = ({ stdin, stdout }: CliIo): boolean => stdin.isTTY === true && stdout.isTTY === true;
