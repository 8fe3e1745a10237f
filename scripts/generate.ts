// Writes every generated file of the workspace: `npm run generate`. Each package that ships data gives its files.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { diagnosisFiles } from '../packages/diagnosis/scripts/generate.ts';
import { interfaceFiles } from '../packages/interfaces/scripts/generate.ts';

for (const [path, text] of [...interfaceFiles(), ...diagnosisFiles()]) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}
