import { readCsv } from './csv.ts';
import { decodeLines, type Encoding, type TextBlock } from './decode.ts';
import { type Batch, CatalogueRefusal } from './fault.ts';
import { readJson } from './json.ts';
import { readNdjson } from './ndjson.ts';

export { CatalogueRefusal, RowFault } from './fault.ts';

/** Forms of a catalogue. @internal */
export type CatalogueForm = 'csv' | 'ndjson' | 'json';

const BY_NAME: readonly (readonly [RegExp, CatalogueForm])[] = [
  [/\.(?:csv|tsv|tab)$/i, 'csv'],
  [/\.(?:ndjson|jsonl)$/i, 'ndjson'],
  [/\.(?:json|jsonld)$/i, 'json'],
];

/** Tells the form by the name of the file, else by how its text begins. */
function detectForm(name: string, head: string): CatalogueForm {
  const named = BY_NAME.find(([pattern]) => pattern.test(name))?.[1];
  if (named !== undefined) return named;
  const text = head.trimStart();
  if (text.startsWith('[')) return 'json';
  if (!text.startsWith('{')) return 'csv';
  const [first = ''] = text.split('\n');
  try {
    JSON.parse(first);
    return text.length > first.length + 1 && text.slice(first.length).trim() !== '' ? 'ndjson' : 'json';
  } catch {
    return 'json';
  }
}

/** Reads a catalogue of any form row by row; `tell` hears once how it is read. @internal */
export async function* readCatalogue(input: {
  source: AsyncIterable<Uint8Array | string>;
  name: string;
  form?: CatalogueForm;
  tell?: (how: { encoding: Encoding; form: CatalogueForm }) => void;
}): AsyncGenerator<Batch> {
  let form: CatalogueForm = input.form ?? 'csv';
  const blocks = decodeLines(input.source, (encoding, head) => {
    form = input.form ?? detectForm(input.name, head);
    input.tell?.({ encoding, form });
    return form === 'json' ? 'anywhere' : 'lines';
  });
  const first = await blocks.next();
  if (first.done || (first.value.text === '' && !first.value.tooLong)) {
    throw new CatalogueRefusal('the catalogue is empty');
  }
  const all = withFirst(first.value, blocks);
  if (form === 'csv') yield* readCsv(all);
  else if (form === 'ndjson') yield* readNdjson(all);
  else yield* readJson(all);
}

async function* withFirst(first: TextBlock, rest: AsyncIterable<TextBlock>): AsyncGenerator<TextBlock> {
  yield first;
  yield* rest;
}
