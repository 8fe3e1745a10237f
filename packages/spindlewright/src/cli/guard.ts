import { isDomainError } from '@spindlewright/quantity';
import { FileTrouble, faultLines, messageOf, Refusal } from './refusal.ts';

/** Turns an error of a verb into what is said of it and the exit code; what is a fault of the program passes through. @internal */
export function complaintOf(verb: string, error: unknown): { text: string; code: number } {
  const say = (text: string, code: number) => ({ text: `spindlewright ${verb}: ${text}\n`, code });
  if (isDomainError(error)) return say(`refused:\n${faultLines(error)}`, 2);
  if (error instanceof Refusal) return say(error.message, 2);
  if (error instanceof FileTrouble) return say(messageOf(error), 1);
  throw error;
}
