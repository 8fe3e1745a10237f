import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readText, root } from '../workspace.ts';

const folder = mkdtempSync(join(tmpdir(), 'ci-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What the counting script prints for a report. */
function counted(report: object | undefined, status: number): string {
  return ranOn(report, status).stdout.trim();
}
function ranOn(report: object | undefined, status: number) {
  const path = join(folder, `${Math.random()}.json`);
  if (report) writeFileSync(path, JSON.stringify(report));
  return spawnSync(process.execPath, ['scripts/count-tests.mjs', path, String(status)], {
    cwd: root,
    encoding: 'utf8',
  });
}
const file = (status: string, ...tests: string[]): object => ({
  status,
  assertionResults: tests.map((test) => ({ status: test })),
});

describe('the counts of .ci/run', () => {
  it('are those of the report', () => {
    expect(
      counted({ testResults: [file('passed', 'passed', 'passed', 'skipped'), file('failed', 'passed', 'failed')] }, 1),
    ).toBe('3 1');
  });

  it('take a file that does not load, a run that fails unsaid and a missing report for a failure', () => {
    expect(counted({ testResults: [file('passed', 'passed'), file('failed')] }, 1)).toBe('1 1');
    expect(counted({ testResults: [file('passed', 'passed')] }, 1)).toBe('1 1');
    expect(counted({ testResults: [file('passed', 'passed')] }, 0)).toBe('1 0');
    expect(counted(undefined, 0)).toBe('0 1');
  });

  it('name what failed', () => {
    const test = { status: 'failed', fullName: 'a seat holds', failureMessages: ['expected 1 to be 2\n at x.ts'] };
    const loaded = { name: 'a.test.ts', status: 'failed', assertionResults: [test] };
    const broken = { name: 'b.test.ts', status: 'failed', message: 'cannot be read\nhere', assertionResults: [] };
    expect(
      ranOn({ testResults: [loaded, broken, file('passed', 'passed')] }, 1)
        .stderr.trim()
        .split('\n'),
    ).toEqual(['a.test.ts: a seat holds: expected 1 to be 2', 'b.test.ts: cannot be read']);
    expect(ranOn({ testResults: [file('passed', 'passed')] }, 1).stderr).toContain('status 1');
    expect(ranOn(undefined, 124).stderr).toContain('status 124');
  });

  it.skipIf(process.platform === 'win32')('come from a script that can be run and begins as the README says', () => {
    expect(statSync(join(root, '.ci/run')).mode & 0o111).toBe(0o111);
    const steps = [...readText('.ci/run').matchAll(/^step "[^"]+" \d+ \S+ (.+?)(?: \|\| finish)?$/gm)].map(
      ([, command]) => command,
    );
    expect(steps.slice(0, 2)).toEqual(['npm ci', 'npm test']);
    expect(readText('README.md')).toContain('npm ci && npm test');
    expect(spawnSync('bash', ['-n', '.ci/run'], { cwd: root }).status).toBe(0);
  });
});
