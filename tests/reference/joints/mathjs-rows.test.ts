import { expect, it } from 'vitest';
import { readReferenceFile } from '../reference-file.ts';
import { files } from './mathjs-rows.ts';

it.each(Object.entries(files))('%s is what the library says', (name, file) => {
  expect(readReferenceFile(`tests/reference/joints/${name}`)).toEqual(file);
});
