// Writes the skeleton of a record: npm run new:record -- bolt-circle bolt-circle-120x5
import { existsSync, writeFileSync } from 'node:fs';
import { recordSkeleton, skeletonNames } from '../packages/interfaces/scripts/record-skeleton.ts';

const [name = '', id = '', ...rest] = process.argv.slice(2);
const skeleton = recordSkeleton(name, id);
const path = `packages/interfaces/data/${skeleton?.folder}/${id}.json`;
const refuse = (why: string): void => {
  console.error(`${why}\nusage: npm run new:record -- <${skeletonNames.join(' | ')}> <id>`);
  process.exitCode = 2;
};

if (skeleton === undefined || rest.length > 0) refuse(`no record of the kind ${JSON.stringify(name)}`);
else if (!/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(id)) refuse(`an id is in kebab case, unlike ${JSON.stringify(id)}`);
else if (existsSync(path)) refuse(`${path} is there already`);
else {
  writeFileSync(path, `${JSON.stringify(skeleton.record, null, 2)}\n`);
  console.log(`wrote ${path}; fill it in, then npm run format, npm run generate and npm run check`);
}
