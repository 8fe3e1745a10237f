import type { CliHost } from '../host.ts';
import type { Parsed } from '../parse.ts';
import { torqueAnswer } from './answer.ts';
import { torqueText } from './text.ts';

/** Torque to setting and preload, or back, printed with its range. @internal */
export function runTorque(parsed: Parsed, host: CliHost): number {
  const answer = torqueAnswer(parsed);
  host.print(parsed.on('json') ? `${JSON.stringify(answer, null, 2)}\n` : torqueText(answer));
  return 0;
}
