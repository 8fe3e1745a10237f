// Writes the committed samples: `node --conditions=@spindlewright/source examples/screening/write-samples.ts`.
import { writeFileSync } from 'node:fs';
import { csvLines, ndjsonLines, shopMapping, shopRows } from './generate.ts';

/** The samples by name; a test holds the committed files to them. */
export function samples(): Readonly<Record<string, string | Buffer>> {
  const rows = [...shopRows({ rows: 300, seed: 7 })];
  const need = { format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis', side: 'drive' };
  return {
    'parts.csv': Buffer.from([...csvLines(rows, ';')].join(''), 'latin1'),
    'parts.ndjson': [...ndjsonLines(rows)].join(''),
    'mapping.json': `${JSON.stringify(shopMapping, null, 2)}\n`,
    'need.json': `${JSON.stringify(need, null, 2)}\n`,
  };
}

if (process.argv[1]?.endsWith('write-samples.ts')) {
  for (const [name, content] of Object.entries(samples())) writeFileSync(new URL(name, import.meta.url), content);
}
