import type { IdentifyBoreInput, IdentifySpindleInput, IdentifyThreadInput } from '@spindlewright/interfaces';
import { DomainError, type Measurand, nearestName } from '@spindlewright/quantity';
import { jsonOf } from '../files.ts';
import type { CliHost } from '../host.ts';
import type { Parsed } from '../parse.ts';
import { readMeasurand } from '../read-measurand.ts';
import { Refusal } from '../refusal.ts';
import { IDENTIFY_PARTS } from '../verbs/identify.ts';

/** What was read, with the part that it was read on. @internal */
export type PartReadings =
  | { part: 'spindle'; input: IdentifySpindleInput }
  | { part: 'bore'; input: IdentifyBoreInput }
  | { part: 'thread'; input: IdentifyThreadInput };

type Part = PartReadings['part'];
type Fields = Record<string, unknown>;

/** Field that a flag fills, by part; a flag of another part is refused. */
const FIELDS: Readonly<Record<Part, Readonly<Record<string, string>>>> = {
  spindle: { flats: 'readings', length: 'flatLengthMm' },
  bore: { flats: 'readings', length: 'boreLengthMm', diameter: 'diameterMm', teeth: 'toothed' },
  thread: {
    diameter: 'diameterMm',
    at: 'atMm',
    pitch: 'pitchMm',
    tpi: 'threadsPerInch',
    hand: 'hand',
    kind: 'kind',
  },
};

/** The flag that fills a field of a part. @internal */
export function flagOfField(part: Part, path: string): string | undefined {
  const [field = ''] = path.split(/[[.]/);
  const flag = Object.entries(FIELDS[part]).find(([, own]) => own === field)?.[0];
  return flag === undefined ? undefined : `--${flag}`;
}

const READERS: Readonly<Record<string, (text: string) => unknown>> = {
  length: (text) => readMeasurand('--length', text, 'mm'),
  diameter: (text) => readMeasurand('--diameter', text, 'mm'),
  at: (text) => readMeasurand('--at', text, 'mm'),
  pitch: (text) => readMeasurand('--pitch', text, 'mm'),
  tpi: (text) => readMeasurand('--tpi', text),
  teeth: (text) => text === 'yes',
  hand: (text) => text,
  kind: (text) => text,
};

/** Puts the readings of a file and of the flags together; a flag comes after the file. @internal */
export function partReadings(parsed: Parsed, host: CliHost): PartReadings {
  const path = parsed.text('readings');
  const [operand] = parsed.operands;
  const file = path === undefined ? undefined : readingsFile('identify', jsonOf(host, path));
  if (operand !== undefined && file !== undefined && file.part !== operand) {
    throw new Refusal(`${path} holds readings of a ${file.part}, and a ${operand} is asked for`);
  }
  const part = (operand ?? file?.part) as Part | undefined;
  if (part === undefined) {
    throw new Refusal(`what was measured? ${IDENTIFY_PARTS.join(', ')} (see "spindlewright identify --help")`);
  }
  const input: Fields = { ...file?.input };
  const own = FIELDS[part];
  for (const flag of Object.keys({ ...FIELDS.bore, ...FIELDS.thread })) {
    const [text] = parsed.texts(flag);
    if (text === undefined) continue;
    const field = Object.hasOwn(own, flag) ? own[flag] : undefined;
    if (field === undefined) {
      const flags = Object.keys(own).map((name) => `--${name}`);
      throw new Refusal(`--${flag} is no reading of a ${part}; those are ${flags.join(', ')}`);
    }
    input[field] =
      flag === 'flats'
        ? [...((input.readings as unknown[] | undefined) ?? []), ...parsed.texts(flag).map(flatsOf)]
        : READERS[flag]?.(text);
  }
  if (Object.keys(input).length === 0) {
    const flags = Object.keys(own).map((name) => `--${name}`);
    throw new Refusal(`no reading of the ${part}: give ${flags.join(', ')} or --readings FILE`);
  }
  return { part, input } as PartReadings;
}

function flatsOf(text: string): { acrossFlatsMm: Measurand; atMm: Measurand } {
  const [size = '', plane, ...more] = text.split('@');
  if (plane === undefined || more.length > 0) {
    throw new Refusal(`--flats ${JSON.stringify(text)}: a size and its plane, such as "12.65 mm @ 2 mm"`);
  }
  return { acrossFlatsMm: readMeasurand('--flats', size, 'mm'), atMm: readMeasurand('--flats', plane, 'mm') };
}

/** Reads a file of readings: texts with units become numbers; the fields are checked by the function that uses them. @internal */
export function readingsFile(where: string, data: unknown): PartReadings {
  const { format, part, ...rest } = (typeof data === 'object' && data !== null ? data : {}) as Fields;
  const refuse = (path: string, came: unknown, allowed: readonly string[]): never => {
    const nearest = typeof came === 'string' ? nearestName({ name: came, known: allowed }) : undefined;
    const received = came === undefined ? 'nothing' : (JSON.stringify(came).slice(0, 60) ?? typeof came);
    throw new DomainError(where, [
      { path, received, allowed: allowed.join(', '), ...(nearest === undefined ? {} : { nearest }) },
    ]);
  };
  if (format !== READINGS_FORMAT) refuse('format', format, [READINGS_FORMAT]);
  if (!(IDENTIFY_PARTS as readonly unknown[]).includes(part)) refuse('part', part, IDENTIFY_PARTS);
  return { part, input: withNumbers(rest) } as PartReadings;
}

/** Format of a file of readings. */
const READINGS_FORMAT = 'spindlewright-readings-1';

/** Texts with units under a name that ends in one become numbers of that unit; a list is gone through, nothing deeper. */
function withNumbers(fields: Fields, path = ''): Fields {
  return Object.fromEntries(
    Object.entries(fields).map(([key, value]) => {
      const at = path + key;
      if (typeof value === 'string' && key.endsWith('Mm')) return [key, readMeasurand(at, value, 'mm')];
      if (!Array.isArray(value)) return [key, value];
      const items = value.map((item: unknown, index) =>
        typeof item === 'object' && item !== null && path === '' ? withNumbers({ ...item }, `${at}[${index}].`) : item,
      );
      return [key, items];
    }),
  );
}
