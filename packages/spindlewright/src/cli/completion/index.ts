import type { CliHost } from '../host.ts';
import type { Parsed } from '../parse.ts';
import type { SHELLS } from '../verbs/completion.ts';
import { VERBS, type Verb } from '../verbs/index.ts';
import { bashCompletion } from './bash.ts';
import { fishCompletion } from './fish.ts';
import { zshCompletion } from './zsh.ts';

const SCRIPTS: Readonly<Record<(typeof SHELLS)[number], (verbs: readonly Verb[]) => string>> = {
  bash: bashCompletion,
  zsh: zshCompletion,
  fish: fishCompletion,
};

/** Prints the completion of a shell. @internal */
export function runCompletion(parsed: Parsed, host: CliHost): number {
  const [shell] = parsed.operands;
  host.print(SCRIPTS[shell as (typeof SHELLS)[number]](VERBS));
  return 0;
}
