// Says what changed between two editions of the data: npm run data:diff -- old/atlas.json new/atlas.json
import { readFileSync } from 'node:fs';
import { type Atlas, diffAtlas, diffText } from '../packages/interfaces/scripts/diff-data.ts';

const [before, after = 'packages/interfaces/data/atlas.json', ...rest] = process.argv.slice(2);
if (before === undefined || rest.length > 0) {
  console.error('usage: npm run data:diff -- old/atlas.json [new/atlas.json]');
  process.exitCode = 2;
} else {
  const read = (path: string): Atlas => JSON.parse(readFileSync(path, 'utf8')) as Atlas;
  console.log(diffText(diffAtlas(read(before), read(after))));
}
