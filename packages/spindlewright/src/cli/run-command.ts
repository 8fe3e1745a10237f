import { type AskHost, runAsk, wantsAsk } from './ask/index.ts';
import { runCheckData } from './check-data/index.ts';
import { runCli } from './index.ts';
import { runScreen } from './screen/index.ts';
import type { CliIo } from './screen/io.ts';

/** Runs any verb: those that stream or ask by themselves, the others as `runCli` does. @internal */
export async function runCommand(args: readonly string[], host: AskHost, io: CliIo): Promise<number> {
  const [verb, ...rest] = args;
  if (verb === 'screen') return runScreen(rest, io);
  if (verb === 'check-data') return runCheckData(rest, host);
  if (verb === 'job' && wantsAsk(rest)) return runAsk(rest, host);
  return runCli(args, host);
}
