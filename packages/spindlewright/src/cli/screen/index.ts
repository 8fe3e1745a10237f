import { resolve } from 'node:path';
import { isDomainError } from '@spindlewright/quantity';
import { checkMapping } from '../../screen/check-mapping.ts';
import type { Mapping } from '../../screen/mapping.ts';
import { screener } from '../../screen/screener.ts';
import { verbHelp } from '../help.ts';
import { parseVerb } from '../parse.ts';
import { type CatalogueForm, CatalogueRefusal } from '../readers/index.ts';
import { FileTrouble, faultLines, fileReason, Refusal } from '../refusal.ts';
import { screenVerb } from '../verbs/screen.ts';
import { draft } from './draft.ts';
import type { CliIo } from './io.ts';
import { needOf, optionsOf, readJson } from './options.ts';
import { run } from './run.ts';
import type { OutputForm } from './writers.ts';

/**
 * Runs the verb `screen`: a catalogue in, an answer for every part out, row by row. `args` are those after the verb.
 * Exit code: 0 done, 2 refused, 1 a file cannot be read or written, 130 interrupted. @internal
 */
export async function runScreen(args: readonly string[], io: CliIo): Promise<number> {
  try {
    return await screen(args, io);
  } catch (error) {
    if (isDomainError(error)) {
      io.stderr.write(`spindlewright screen: refused:\n${faultLines(error)}\n`);
      return 2;
    }
    if (error instanceof Refusal || error instanceof CatalogueRefusal) {
      io.stderr.write(`spindlewright screen: ${error.message}\n`);
      return 2;
    }
    // Whoever reads the output has had enough, such as `head`: no fault of anybody.
    if (codeOf(error) === 'EPIPE') return 0;
    if (error instanceof FileTrouble || typeof codeOf(error) === 'string') {
      io.stderr.write(
        `spindlewright screen: ${error instanceof FileTrouble ? error.message : `${pathOf(error)}${fileReason(error)}`}\n`,
      );
      return 1;
    }
    throw error;
  }
}

async function screen(args: readonly string[], io: CliIo): Promise<number> {
  const parsed = parseVerb(screenVerb, args);
  if (parsed.help) {
    io.stdout.write(verbHelp(screenVerb));
    return 0;
  }
  const values = optionsOf(parsed);
  // The table of the verb has checked the choices.
  const format = (parsed.on('json') ? 'json' : (values.format ?? 'text')) as OutputForm;
  const form = values.form as CatalogueForm | undefined;
  const top = values.top === undefined ? 10 : Number(values.top);
  if (!Number.isInteger(top) || top < 0 || top > 10_000)
    throw new Refusal(`--top ${values.top}: a whole number from 0 to 10000`);
  for (const name of ['need', 'job', 'mapping', 'catalogue'] as const) {
    const path = values[name];
    if (path !== undefined && values.out !== undefined && resolve(path) === resolve(values.out)) {
      throw new Refusal(`--out names the ${name} itself`);
    }
  }
  if (values['draft-mapping']) return draft(values, form, io);
  const need = needOf(values);
  const mapping = values.mapping === undefined ? undefined : readJson(values.mapping, 'mapping');
  if (mapping !== undefined) checkMapping('mapping', mapping);
  const own = screener(need, mapping as Mapping | undefined);
  return run({ own, need, mapping: mapping as Mapping | undefined, top, format, values, form, io });
}

/** The file that the system names in its error. */
const pathOf = (error: unknown): string =>
  error instanceof Error && 'path' in error && typeof error.path === 'string' ? `${error.path}: ` : '';

const codeOf = (error: unknown): unknown =>
  typeof error === 'object' && error !== null && 'code' in error ? error.code : undefined;
