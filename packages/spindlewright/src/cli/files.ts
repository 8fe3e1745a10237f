import type { CliHost } from './host.ts';
import { FileTrouble, fileReason, Refusal } from './refusal.ts';

/** Text of a file, without the mark that some editors begin one with. @internal */
export function textOf(host: CliHost, path: string): string {
  try {
    return host.readText(path).replace(/^\uFEFF/, '');
  } catch (error) {
    throw new FileTrouble(`cannot read ${path}: ${fileReason(error)}`);
  }
}

/** Data of a JSON file. @internal */
export const jsonOf = (host: CliHost, path: string): unknown => parsedJson(path, textOf(host, path));

/** Data of a JSON text that came from a file. @internal */
export function parsedJson(path: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Refusal(`${path} is not JSON: ${jsonReason(text, error)}`);
  }
}

/** Why a text is no JSON, without what a stranger's file could say to a terminal. @internal */
export function jsonReason(text: string, error: unknown): string {
  if (text.trim() === '') return 'it is empty';
  if (['\0', '\uFFFD'].some((mark) => text.slice(0, 4096).includes(mark)))
    return 'it is a binary file, or its text is not UTF-8';
  const said = error instanceof Error ? error.message : String(error);
  return said.replace(/\s+/g, ' ').replace(/[\p{Cc}\p{Cf}]/gu, '\uFFFD');
}

/** What a file of ours is, by the word in its format, and which command takes it. */
const FORMATS: Readonly<Record<string, string>> = {
  job: 'it goes with: spindlewright job FILE, or screen --job FILE',
  need: 'it goes with: spindlewright screen --need FILE',
  mapping: 'it goes with: spindlewright screen --mapping FILE',
  readings: 'it goes with: spindlewright identify --readings FILE',
  sheet: 'it is what spindlewright job prints with --json',
};

/** Refuses a file of ours of another kind by its name, before every field of it is found fault with. @internal */
export function refuseOtherKind(path: string, data: unknown, wanted: string): void {
  const format = typeof data === 'object' && data !== null && 'format' in data ? data.format : undefined;
  const kind = typeof format === 'string' ? /^spindlewright-([a-z]+)-\d+$/.exec(format)?.[1] : undefined;
  if (kind === undefined || kind === wanted || !Object.hasOwn(FORMATS, kind)) return;
  throw new Refusal(`${path} is a ${kind} and no ${wanted}; ${FORMATS[kind]}`);
}

/** Writes a file whole. @internal */
export function writeTo(host: CliHost, path: string, text: string): void {
  try {
    host.writeText(path, text);
  } catch (error) {
    throw new FileTrouble(`cannot write ${path}: ${fileReason(error)}`);
  }
}
