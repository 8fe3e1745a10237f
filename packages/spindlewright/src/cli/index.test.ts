import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../test/demo-job.ts';
import { type CliHost, runCli } from './index.ts';
import { VERBS, type Verb } from './verbs/index.ts';

const job = JSON.stringify({
  ...demoJob,
  trialFit: { endGapMm: 5, shoulderGapMm: 5 },
});

function host(files: Record<string, string>): CliHost & { out: string; err: string; written: Record<string, string> } {
  const state = {
    out: '',
    err: '',
    written: {} as Record<string, string>,
    readText: (path: string): string => {
      const text = files[path];
      if (text === undefined) throw new Error('no such file');
      return text;
    },
    writeText: (path: string, text: string): void => {
      state.written[path] = text;
    },
    print: (text: string): void => {
      state.out += text;
    },
    complain: (text: string): void => {
      state.err += text;
    },
  };
  return state;
}

describe('runCli', () => {
  it.each([
    ['text', 'DEMO'],
    ['markdown', '# Demo'],
    ['html', '<!doctype html>'],
    ['json', '{'],
  ])('prints the sheet as %s', (form, start) => {
    const fake = host({ 'a.json': job });
    expect(runCli(['job', 'a.json', '--as', form], fake)).toBe(0);
    expect(fake.out.startsWith(start)).toBe(true);
    expect(fake.written).toEqual({});
  });

  it('writes the page and says where, on standard error so that the sheet stays clean', () => {
    const fake = host({ 'a.json': job });
    expect(runCli(['job', 'a.json', '--html', 'out/a.html'], fake)).toBe(0);
    expect(fake.written['out/a.html']).toContain('<svg');
    expect(fake.err).toBe('wrote out/a.html\n');
  });

  it('refuses a misspelt field with its path, what came, what is allowed and the nearest name, and writes nothing', () => {
    const fake = host({ 'a.json': job.replace('shoulderGapMm', 'sholderGapMm') });
    expect(runCli(['job', 'a.json', '--html', 'a.html'], fake)).toBe(2);
    expect(fake.written).toEqual({});
    expect(fake.out).toBe('');
    for (const part of ['trialFit.sholderGapMm', 'came:', 'allowed:', 'nearest: shoulderGapMm']) {
      expect(fake.err).toContain(part);
    }
  });

  it.each([
    [['job', 'a.json'], '{ not json', 'is not JSON'],
    [['job'], job, 'FILE is missing'],
    [['job', 'a.json', 'b.json'], job, '"b.json" is one too many'],
    [['job', 'a.json', '--as', 'pdf'], job, 'allowed text, markdown, html, json'],
    [['job', 'a.json', '--color'], job, 'unknown flag --color (see "spindlewright job --help")'],
    [['job', 'a.json', '--htlm', 'b.html'], job, 'unknown flag --htlm; nearest: --html'],
    [['job', 'a.json', '--as', 'jsno'], job, 'nearest: json'],
    [['job', 'a.json', '--html', '--json'], job, '--html takes FILE, and --json is a flag'],
    [['job', 'a.json', '--as'], job, '--as takes FORM'],
    [['job', 'a.json', '--json=yes'], job, '--json is a switch'],
    [['job', 'a.json', '--as', 'text', '--as', 'html'], job, '--as came twice'],
    [['job', 'a.json', '--as', 'text', '--json'], job, '--json or --as'],
    [['jobs', 'a.json'], job, 'unknown verb "jobs"; nearest: job'],
    [['help', 'scren'], job, 'nearest: screen'],
    [['fly'], job, 'unknown verb "fly"; known: job, screen'],
  ])('refuses %j', (args, text, complaint) => {
    const fake = host({ 'a.json': text });
    expect(runCli(args, fake)).toBe(2);
    expect(fake.err).toContain(complaint);
    expect(fake.out).toBe('');
  });

  it('refuses to write the page over the job, and a file nested without end', () => {
    expect(runCli(['job', 'a.json', '--html', 'a.json'], host({ 'a.json': job }))).toBe(2);
    const deep = job.replace('"Demo"', `${'['.repeat(9000)}${']'.repeat(9000)}`);
    expect(runCli(['job', 'a.json'], host({ 'a.json': deep }))).toBe(2);
  });

  it('tells a file that cannot be read from one that is refused', () => {
    expect(runCli(['job', 'none.json'], host({}))).toBe(1);
  });

  it('prints the sheet as data with --json, nothing else beside it', () => {
    const fake = host({ 'a.json': job });
    expect(runCli(['job', '--json', 'a.json'], fake)).toBe(0);
    expect(JSON.parse(fake.out).format).toBe('spindlewright-sheet-1');
    expect(fake.err).toBe('');
  });

  it('refuses without a verb, and shows the verbs', () => {
    const fake = host({});
    expect(runCli([], fake)).toBe(2);
    expect(fake.err).toContain('screen');
    expect(fake.out).toBe('');
  });

  it('tells its version', () => {
    const fake = host({});
    expect(runCli(['--version'], fake)).toBe(0);
    expect(fake.out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});

describe('help', () => {
  const printed = (...args: string[]): string => {
    const fake = host({});
    expect(runCli(args, fake)).toBe(0);
    expect(fake.err).toBe('');
    return fake.out;
  };

  it('names every verb, with the exit codes', () => {
    const text = printed('help');
    expect(printed('--help')).toBe(text);
    expect(printed('-h')).toBe(text);
    for (const { name, about } of VERBS) {
      expect(text).toContain(`  ${name} `);
      expect(text).toContain(about.split(' ').slice(0, 4).join(' '));
    }
    expect(text).toContain('exit codes');
  });

  it.each(VERBS.map((verb): [string, Verb] => [verb.name, verb]))(
    'of %s names every flag, examples and exit codes',
    (name, verb) => {
      const text = printed(name, '--help');
      expect(printed('help', name)).toBe(text);
      for (const flag of verb.flags) expect(text).toContain(`--${flag.name}`);
      for (const { command } of verb.examples) expect(text).toContain(`spindlewright ${command}`);
      for (const [code, why] of verb.exits ?? [])
        expect(text).toMatch(new RegExp(`^  ${code} +${why.slice(0, 12)}`, 'm'));
      expect(verb.examples.length).toBeGreaterThan(1);
    },
  );

  it.each([['help'], ...VERBS.map(({ name }) => [name, '--help'])])(
    '%s %s fits a terminal of 80 columns and has no colour',
    (...args) => {
      const lines = printed(...args.filter((arg) => arg !== undefined)).split('\n');
      // An example is copied whole, so it is never broken.
      expect(lines.filter((line) => line.length > 80 && !line.startsWith('  spindlewright '))).toEqual([]);
      expect(lines.join('')).not.toContain('\u001b');
    },
  );
});

describe('the command itself', () => {
  const main = fileURLToPath(new URL('./main.ts', import.meta.url));
  const run = (args: string[]) =>
    spawnSync(process.execPath, ['--conditions=@spindlewright/source', main, ...args], { encoding: 'utf8' });

  it('makes the folder of the page, leaves no half page, and exits 0', () => {
    const folder = mkdtempSync(join(tmpdir(), 'spindlewright-'));
    writeFileSync(join(folder, 'a.json'), job);
    const page = join(folder, 'deep', 'a.html');
    const done = run(['job', join(folder, 'a.json'), '--html', page]);
    expect(done.status).toBe(0);
    expect(readFileSync(page, 'utf8')).toContain('</html>');
    expect(readdirSync(join(folder, 'deep'))).toEqual(['a.html']);
  });

  it('exits 2 and writes nothing for a refused job', () => {
    const folder = mkdtempSync(join(tmpdir(), 'spindlewright-'));
    writeFileSync(join(folder, 'a.json'), job.replace('"endGapMm":5', '"endGapMm":-5'));
    const done = run(['job', join(folder, 'a.json'), '--html', join(folder, 'a.html')]);
    expect(done.status).toBe(2);
    expect(done.stderr).toContain('trialFit.endGapMm');
    expect(readdirSync(folder)).toEqual(['a.json']);
  });
});
