import type { CliHost } from './host.ts';
import { FileTrouble, messageOf, Refusal } from './refusal.ts';

/** Text of a file, without the mark that some editors begin one with. @internal */
export function textOf(host: CliHost, path: string): string {
  try {
    return host.readText(path).replace(/^\uFEFF/, '');
  } catch (error) {
    throw new FileTrouble(`cannot read ${path}: ${messageOf(error)}`);
  }
}

/** Data of a JSON file. @internal */
export function jsonOf(host: CliHost, path: string): unknown {
  const text = textOf(host, path);
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Refusal(`${path} is not JSON: ${messageOf(error)}`);
  }
}

/** Writes a file whole. @internal */
export function writeTo(host: CliHost, path: string, text: string): void {
  try {
    host.writeText(path, text);
  } catch (error) {
    throw new FileTrouble(`cannot write ${path}: ${messageOf(error)}`);
  }
}
