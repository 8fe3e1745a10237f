import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCli } from '../index.ts';
import { SHELLS } from '../verbs/completion.ts';
import { VERBS } from '../verbs/index.ts';

function script(shell: string): string {
  let out = '';
  const print = (text: string): void => {
    out += text;
  };
  expect(runCli(['completion', shell], { readText: () => '', writeText() {}, print, complain: print })).toBe(0);
  return out;
}
const has = (shell: string): boolean => spawnSync(shell, ['-c', 'true']).status === 0;

describe('completion', () => {
  it.each(SHELLS)('of %s holds every verb, flag and listed value of the table', (shell) => {
    const text = script(shell);
    for (const { name, flags, operands } of VERBS) {
      expect(text).toContain(name);
      for (const flag of flags) expect(text).toMatch(new RegExp(`(--|-l )${flag.name}\\b`));
      for (const { choices = [] } of [...flags, ...operands])
        for (const choice of choices) expect(text).toContain(choice);
    }
    expect(text).not.toContain('undefined');
  });

  it.each(SHELLS.filter(has))('of %s is accepted by that shell', (shell) => {
    const path = join(mkdtempSync(join(tmpdir(), 'completion-')), 'script');
    writeFileSync(path, script(shell));
    const { status, stderr } = spawnSync(shell, ['-n', path], { encoding: 'utf8' });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  });

  describe.skipIf(!has('bash'))('in bash', () => {
    const folder = mkdtempSync(join(tmpdir(), 'completion-'));
    writeFileSync(join(folder, 'my job.json'), '');
    const offered = (...typed: string[]): string[] => {
      const code = `${script('bash')}\nCOMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _spindlewright; printf '%s\\n' "\${COMPREPLY[@]}"`;
      const { stdout } = spawnSync('bash', ['-c', code, 'bash', 'spindlewright', ...typed], {
        cwd: folder,
        encoding: 'utf8',
      });
      return stdout.split('\n').filter((line) => line !== '');
    };

    it.each<[string[], string[]]>([
      [['sc'], ['screen']],
      [['torque', '--ta'], ['--target']],
      [['job', '--as', 'm'], ['markdown']],
      [
        ['torque', '--unit', 'lbf'],
        ['lbf.in', 'lbf.ft'],
      ],
      [['torque', '--target', ''], []],
      [['identify', 'b'], ['bore']],
      [['job', 'my'], ['my job.json']],
      [['screen', '--need', ''], ['my job.json']],
      [['help', 'id'], ['identify']],
      [['completion', 'f'], ['fish']],
    ])('completes %j', (typed, wanted) => {
      expect(offered(...typed)).toEqual(wanted);
    });
  });

  it('refuses another shell', () => {
    let err = '';
    const code = runCli(['completion', 'fihs'], {
      readText: () => '',
      writeText() {},
      print() {},
      complain(text) {
        err += text;
      },
    });
    expect(code).toBe(2);
    expect(err).toContain('nearest: fish');
  });
});
