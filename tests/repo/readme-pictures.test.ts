import { describe, expect, it } from 'vitest';
import { readmePictures } from '../../scripts/readme-pictures.ts';
import { filesOf, folders, readText } from '../workspace.ts';

const pictures = readmePictures();

describe.each(folders)('the README of %s', (folder) => {
  const path = `packages/${folder}/picture.svg`;

  it('shows a picture that `npm run generate` would write today, in under 30 kB', () => {
    expect(readText(path)).toBe(pictures.get(path));
    expect(Buffer.byteLength(readText(path))).toBeLessThan(30_000);
    expect(readText(path)).toContain('prefers-color-scheme:dark');
  });

  it('has it near its top, then a first result that is run', () => {
    const readme = readText(`packages/${folder}/README.md`);
    const at = readme.indexOf('](picture.svg)');
    expect(at).toBeGreaterThan(0);
    expect(readme.slice(0, at).split('\n').length).toBeLessThan(10);
    // tests/docs runs every fence with an assertion.
    expect(/```ts\n[\s\S]*?\/\/ => [\s\S]*?```/.test(readme.slice(at))).toBe(true);
  });
});

it('there is one a package and no more', () => {
  expect(filesOf('packages/*/picture.svg')).toEqual([...pictures.keys()].sort());
});
