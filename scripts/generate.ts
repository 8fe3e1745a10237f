// Writes every generated file of the workspace: `npm run generate`. Each package that ships data gives its files, and each
// README has a picture.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { diagnosisFiles } from '../packages/diagnosis/scripts/generate.ts';
import { interfaceFiles } from '../packages/interfaces/scripts/generate.ts';
import { readmePictures } from './readme-pictures.ts';

for (const [path, text] of [...interfaceFiles(), ...diagnosisFiles(), ...readmePictures()]) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}
