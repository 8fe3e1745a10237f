import { runCheckData } from './check-data/index.ts';
import type { CliHost } from './host.ts';
import { runCli } from './index.ts';
import { runScreen } from './screen/index.ts';
import type { CliIo } from './screen/io.ts';

/** Runs any verb: those that stream or ask by themselves, the others as `runCli` does. @internal */
export async function runCommand(args: readonly string[], host: CliHost, io: CliIo): Promise<number> {
  const [verb, ...rest] = args;
  if (verb === 'screen') return runScreen(rest, io);
  if (verb === 'check-data') return runCheckData(rest, host);
  return runCli(args, host);
}
