import { spawnSync } from 'node:child_process';
import { appendFileSync, cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readText, root } from '../workspace.ts';

// A package of its own inside the repository, so that the settings of the real run apply to it.
const base = join(root, 'tests/.out', `typedoc-${process.pid}`);
afterAll(() => rmSync(base, { recursive: true, force: true }));

/** Runs typedoc with the settings of the repository over a copy of quantity with a change. */
function runTypedoc(name: string, file: string, addition: string): { status: number | null; output: string } {
  const folder = join(base, name);
  mkdirSync(folder, { recursive: true });
  for (const part of ['src', 'package.json', 'typedoc.json']) {
    cpSync(join(root, 'packages/quantity', part), join(folder, part), { recursive: true });
  }
  const settings = JSON.parse(readText('packages/quantity/tsconfig.json')) as object;
  writeFileSync(
    join(folder, 'tsconfig.json'),
    JSON.stringify({ ...settings, extends: '../../../../tsconfig.base.json', exclude: ['src/**/*.test.ts'] }),
  );
  appendFileSync(join(folder, 'src', file), addition);
  const result = spawnSync(
    process.execPath,
    ['node_modules/typedoc/bin/typedoc', '--entryPoints', folder, '--out', join(folder, 'pages')],
    { cwd: root, encoding: 'utf8' },
  );
  return { status: result.status, output: result.stdout + result.stderr };
}

describe('the API pages are refused', () => {
  it('not for the sources as they are', () => {
    const { status, output } = runTypedoc('as-it-is', 'index.ts', '');
    expect(status, output).toBe(0);
  });

  it.each([
    ['an export without description', 'export const bare = 1;\n', /bare \(Variable\).*does not have any documentation/],
    [
      'a link that leads nowhere',
      '/** See {@link nowhere}. */\nexport const lost = 1;\n',
      /Failed to resolve link to "nowhere"/,
    ],
    [
      'a public type that nobody can name',
      'interface Hidden {\n  a: string;\n}\n/** Shown. */\nexport interface Shown {\n  /** Field. */\n  hidden: Hidden;\n}\n',
      /Hidden.*not included in the documentation/,
    ],
  ])('for %s', (name, addition, message) => {
    const { status, output } = runTypedoc(name.replaceAll(' ', '-'), 'index.ts', addition);
    expect(output).toMatch(message);
    expect(status).not.toBe(0);
  });
});
