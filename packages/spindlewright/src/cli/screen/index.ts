import type { CliIo } from './io.ts';

export type { CliIo } from './io.ts';

/** Screens a catalogue; the arguments after `screen`. @internal */
export async function runScreen(args: readonly string[], io: CliIo): Promise<number> {
  io.stderr.write(`spindlewright screen: not ready (${args.length} arguments)\n`);
  return 1;
}
