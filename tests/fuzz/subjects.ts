// What is fuzzed: everything that reads what strangers write. Each subject gets a text or a value and has to answer or to
// refuse in the way it promises; anything else that it throws is a fault.
import { globSync, readFileSync } from 'node:fs';
import { isDomainError, parseQuantity } from '@spindlewright/quantity';
import { threadFor } from '@spindlewright/torque';
import { readJob } from 'spindlewright';
import * as z from 'zod/v4';
import { csvLines, ndjsonLines, shopMapping, shopRows } from '../../examples/screening/generate.ts';
import { readMeasurand } from '../../packages/spindlewright/src/cli/read-measurand.ts';
import { CatalogueRefusal, RowFault, readCatalogue } from '../../packages/spindlewright/src/cli/readers/index.ts';
import { Refusal } from '../../packages/spindlewright/src/cli/refusal.ts';
import { checkMapping } from '../../packages/spindlewright/src/screen/check-mapping.ts';
import { checkNeed } from '../../packages/spindlewright/src/screen/check-need.ts';
import { screener } from '../../packages/spindlewright/src/screen/screener.ts';
import { runCommand } from '../../packages/spindlewright/test/run-command.ts';
import { seededRandom } from '../seed.ts';
import { entries, root } from '../workspace.ts';
import { mutateText } from './mutate-text.ts';
import { mutateValue } from './mutate-value.ts';
import { sampleOf } from './sample-of.ts';

/** One thing that reads input. */
export interface Subject {
  /** Makes one input from random numbers alone. */
  draw: (random: () => number) => unknown;
  /** Answers, or throws what it may throw. */
  run: (input: unknown) => unknown;
  /** Whether an error is a refusal that the subject promises. */
  refuses: (error: unknown) => boolean;
}

const read = (path: string): unknown => JSON.parse(readFileSync(`${root}/${path}`, 'utf8'));

const texts = (
  corpus: readonly string[],
  run: (input: string) => unknown,
  refuses: Subject['refuses'] = isDomainError,
): Subject => ({ draw: (random) => mutateText(corpus, random), run: (input) => run(input as string), refuses });

const values = (
  corpus: readonly unknown[],
  run: (input: unknown) => unknown,
  refuses: Subject['refuses'] = isDomainError,
): Subject => ({ draw: (random) => mutateValue(corpus, random), run, refuses });

const QUANTITIES = [
  ...[
    '40 Nm',
    '300 in-lb',
    '12,65 mm',
    '1 1/2 in',
    '9/16"',
    '-3.5e-2 N',
    '5 kgf·cm',
    '2 deg',
    '30 ft lb',
    '100 N/mm²',
    '½ in',
  ],
  ...['12.65 mm @ 2 mm', '12.6..12.7 mm', '12.65 ± 0.02 mm', '12.65 +- 0.02', '0.1 to 0.3'],
];
const DESIGNATIONS = [
  ...[
    'M8x1',
    'M14 x 1.25',
    'M8',
    '9/16-20 UN',
    '9/16"-20 LH',
    '1.37 in x 24',
    'M22x1 LH',
    '1/2 x 20 TPI',
    '#10-32 UNF',
  ],
  ...['M12×1,5', 'BSA', 'G 1/2', '36 mm x 24 tpi'],
];
const COMMANDS = [
  'torque --target "40 Nm" --thread M8x1 --friction 0.12..0.18 --class 8.8 --head "16 mm"',
  'torque --read "300 lbf.in" --thread "9/16-20 LH" --tool click-wrench-iso-6789 --wrench "250 mm" --extension "50 mm"',
  'torque --hold "10 kN" --thread M8x1 --lubrication dry --json',
  'identify thread --diameter "14.2 mm" --pitch "1.27 mm" --hand left',
  'identify spindle --flats "12.65 mm" --at "2 mm" --json',
  'identify thread --readings b.json',
  'completion bash',
  'torque --help',
];

const NEED = { format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis' } as const;
const rows = () => shopRows({ rows: 40, seed: 5 });
const CATALOGUES = {
  csv: ([',', ';', '\t'] as const).map((sign) => [...csvLines(rows(), sign)].join('\n')),
  ndjson: [[...ndjsonLines(rows())].join('\n')],
  json: [
    `[${[...ndjsonLines(rows())].join(',')}]`,
    '{"@context":"https://schema.org","@graph":[{"@type":"Product","sku":"A1","name":"Arm","additionalProperty":[{"@type":"PropertyValue","name":"length","value":170,"unitCode":"MMT"}]},{"@type":"ProductGroup","productGroupID":"G","hasVariant":[{"@type":"Product","sku":"A2"}]}]}',
  ],
} as const;

interface Catalogue {
  form: keyof typeof CATALOGUES | undefined;
  encoding: BufferEncoding;
  pieceBytes: number;
  text: string;
}

function drawCatalogue(random: () => number): Catalogue {
  const pick = <T>(list: readonly [T, ...T[]]): T => list[Math.floor(random() * list.length)] ?? list[0];
  const kind = pick(['csv', 'ndjson', 'json'] as const);
  // A few rows a time: a whole catalogue would spend the time on rows that are in order.
  const whole = pick(CATALOGUES[kind] as readonly [string, ...string[]]);
  const at = Math.floor(random() * whole.length);
  const head = kind === 'csv' ? whole.slice(0, whole.indexOf('\n') + 1) : '';
  const part = kind === 'json' ? whole.slice(0, 3000) : head + whole.slice(at, at + 1200);
  return {
    form: random() < 0.3 ? undefined : kind,
    encoding: pick(['utf8', 'utf8', 'utf8', 'utf16le', 'latin1'] as const),
    pieceBytes: pick([7, 64, 1000, 100_000] as const),
    text: mutateText([part], random),
  };
}

/** Every row that the reader sees is answered for. */
async function screenCatalogue({ form, encoding, pieceBytes, text }: Catalogue): Promise<void> {
  const bytes = Buffer.from(text, encoding);
  const pieces = async function* () {
    for (let at = 0; at < bytes.length; at += pieceBytes) yield bytes.subarray(at, at + pieceBytes);
  };
  const { judge, refuse, summary } = screener(NEED, shopMapping);
  let seen = 0;
  for await (const batch of readCatalogue({ source: pieces(), name: '', ...(form ? { form } : {}) })) {
    for (const row of batch.rows) {
      if (row instanceof RowFault) refuse(seen, row.reason);
      else judge(row, seen);
      seen++;
    }
  }
  const { fitsCount, doesNotFitCount, cannotTellCount, refusedCount } = summary();
  if (fitsCount + doesNotFitCount + cannotTellCount + refusedCount !== seen) throw new Error('a row was dropped');
}

/** The words of a command line, as a shell would split it but for its escapes. */
const words = (line: string): string[] => (line.match(/"[^"]*"|\S+/g) ?? []).map((word) => word.replaceAll('"', ''));

function command(line: string): void {
  const { code, out, err } = runCommand(words(line), {
    'b.json': '{"format":"spindlewright-readings-1","part":"thread"}',
  });
  if (code === 0 ? out === '' : err === '' || out !== '') throw new Error(`exit ${code}: ${out} | ${err}`);
}

/** A value, in text, that survived the check: it may hold nothing that JSON cannot. */
function keepsToJson(value: unknown): void {
  const text = JSON.stringify(value);
  if (/[:[,](?:NaN|-?Infinity)\b/.test(text)) throw new Error('not JSON');
}

const jobs = globSync('examples/jobs/*.json', { cwd: root }).sort().map(read);

/** A subject for each schema of each package: whatever comes is taken or refused, in a report and never by a throw. */
async function schemas(): Promise<Record<string, Subject>> {
  const found: Record<string, Subject> = {};
  for (const { specifier } of entries.filter((entry) => entry.specifier.endsWith('/schema'))) {
    for (const [name, schema] of Object.entries(await import(specifier))) {
      if (!(schema instanceof z.ZodType)) continue;
      const random = seededRandom(1);
      const form = z.toJSONSchema(schema, { unrepresentable: 'any' });
      const corpus = Array.from({ length: 20 }, () => sampleOf(form, random));
      found[`${specifier} ${name}`] = values(
        corpus,
        (input) => {
          const { success, data } = schema.safeParse(input);
          if (success) keepsToJson(data);
        },
        () => false,
      );
    }
  }
  return found;
}

/** All subjects by name, the schemas of all packages taken as one. */
export async function listSubjects(): Promise<Record<string, Subject>> {
  const all = Object.values(await schemas());
  const one = (at: number): Subject => all[at] as Subject;
  const schema: Subject = {
    draw: (random) => {
      const at = Math.floor(random() * all.length);
      return { at, input: one(at).draw(random) };
    },
    run: (drawn) => {
      const { at, input } = drawn as { at: number; input: unknown };
      return one(at).run(input);
    },
    refuses: () => false,
  };
  return {
    quantity: texts(QUANTITIES, (input) => keepsToJson(parseQuantity(input))),
    reading: texts(
      QUANTITIES,
      (input) => keepsToJson(readMeasurand('flats', input, 'mm')),
      (error) => error instanceof Refusal,
    ),
    designation: texts(DESIGNATIONS, (input) => keepsToJson(threadFor(input))),
    command: texts(COMMANDS, command, () => false),
    catalogue: {
      draw: drawCatalogue,
      run: (input) => screenCatalogue(input as Catalogue),
      refuses: (error) => error instanceof CatalogueRefusal,
    },
    job: values(jobs, (input) => keepsToJson(readJob(input))),
    need: values([read('examples/screening/need.json'), NEED], (input) => checkNeed('screen', input)),
    mapping: values([read('examples/screening/mapping.json'), shopMapping], (input) => checkMapping('screen', input)),
    schema,
  };
}
