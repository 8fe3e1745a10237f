import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { squareTaperJis } from '@spindlewright/interfaces/records';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { AskHost } from './ask/index.ts';
import { runCommand } from './run-command.ts';
import { VERBS } from './verbs/index.ts';

// Every command that is shown, in a help or on a page, is run in a folder with the files that it names.

const root = fileURLToPath(new URL('../../../../', import.meta.url));
const text = (path: string): string => readFileSync(join(root, path), 'utf8');
const GUIDE = text('docs/guides/command-line.md');
const README = text('packages/spindlewright/README.md');

interface Block {
  language: string;
  lines: string[];
  /** What stands in the last line of text before it. */
  before: string;
}

/** The fenced blocks of a page. */
function blocksOf(page: string): Block[] {
  const blocks: Block[] = [];
  let open: Block | undefined;
  let before = '';
  for (const line of page.split('\n')) {
    const [, language] = /^```(\w*)$/.exec(line) ?? [];
    if (open === undefined && language !== undefined) open = { language, lines: [], before };
    else if (open !== undefined && line === '```') {
      blocks.push(open);
      open = undefined;
    } else if (open !== undefined) open.lines.push(line);
    else if (line.trim() !== '') before = line;
  }
  return blocks;
}

interface Command {
  args: string[];
  /** File that standard output goes to. */
  into?: string;
  code: number;
}

/** Reads a line as a shell would: words, quotes, a comment, standard output into a file. */
function commandOf(line: string): Command {
  const [, typed = line, comment = ''] = /^(.*?)\s+#\s*(.*)$/.exec(line) ?? [];
  const words = [...typed.matchAll(/"([^"]*)"|'([^']*)'|(\S+)/g)].map(([, a, b, c]) => a ?? b ?? c ?? '');
  const [, ...args] = words;
  const to = args.indexOf('>');
  const [, code = '0'] = /exits with (\d+)/.exec(comment) ?? [];
  return {
    args: to < 0 ? args : args.slice(0, to),
    ...(to < 0 ? {} : { into: args[to + 1] ?? '' }),
    code: Number(code),
  };
}

async function run({ args, into }: Command): Promise<{ code: number; out: string; err: string }> {
  const said = { out: '', err: '' };
  const stream = (name: 'out' | 'err'): Writable =>
    new Writable({
      write(chunk, _encoding, done) {
        said[name] += chunk;
        done();
      },
    });
  const host: AskHost = {
    readText: (path) => readFileSync(path, 'utf8'),
    writeText: (path, content) => writeFileSync(path, content),
    print: (line) => {
      said.out += line;
    },
    complain: (line) => {
      said.err += line;
    },
    exists: () => false,
    today: () => '2026-11-27',
    // Whoever is asked takes the first choice, and stops when there is something to save.
    asker: async () => ({
      one: async (_question, choices) =>
        (choices.find(({ label }) => /^Save and stop/.test(label)) ?? choices[0])?.value,
      some: async () => undefined,
      text: async (_question, example) => example,
      say: () => {},
    }),
  };
  const io = { stdin: Readable.from([]), stdout: stream('out'), stderr: stream('err'), onInterrupt: () => () => {} };
  const code = await runCommand(args, host, io);
  if (into !== undefined) writeFileSync(into, said.out);
  return { code, ...said };
}

const folder = mkdtempSync(join(tmpdir(), 'spindlewright-commands-'));
const here = process.cwd();
// Before each, since a command may write over what the next one reads.
beforeEach(() => {
  for (const name of ['parts.csv', 'need.json', 'mapping.json']) {
    writeFileSync(join(folder, name), readFileSync(join(root, 'examples/screening', name)));
  }
  writeFileSync(join(folder, 'job.json'), text('examples/jobs/bolt-bottoms.json'));
  writeFileSync(join(folder, 'record.json'), JSON.stringify(squareTaperJis));
  // A page shows its own files: the block behind the name of one.
  for (const { language, lines, before } of blocksOf(GUIDE)) {
    const [, name] = /`(\w+\.json)`[^`]*:$/.exec(before) ?? [];
    if (language === 'json' && name !== undefined) writeFileSync(join(folder, name), lines.join('\n'));
  }
});
beforeAll(() => process.chdir(folder));
afterAll(() => process.chdir(here));

describe.each(VERBS.map(({ name, examples }) => ({ name, examples })))('the help of $name', ({ examples }) => {
  it.each(examples.map(({ command }) => command))('%s', async (command) => {
    const { code, out, err } = await run(commandOf(`spindlewright ${command}`));
    // One part id of the sample shop is damaged, which is what that check is there to say.
    expect({ code, err: code === 0 ? '' : err }).toEqual({ code: /^check-data parts/.test(command) ? 2 : 0, err: '' });
    if (/--json/.test(command)) JSON.parse(out);
    else expect(`${out}${err}`.length).toBeGreaterThan(20);
    // Nothing is coloured: what is written may be piped.
    expect(`${out}${err}`).not.toContain('\u001b');
  });
});

describe.each([
  ['the guide', GUIDE],
  ['the guide for a shop', text('docs/guides/shop.md')],
  ['the README of the package', README],
])('%s', (_name, page) => {
  const blocks = blocksOf(page);
  const isCommand = (line: string): boolean => line.startsWith('spindlewright ');
  const groups = blocks.flatMap(({ language, lines }, index) => {
    const commands = lines.filter(isCommand);
    const [next] = blocks.slice(index + 1);
    return language === 'sh' && commands.length > 0
      ? [{ commands, shown: next?.language === 'text' ? next.lines : [] }]
      : [];
  });

  it.each(groups.map((group) => [group.commands.join('; '), group] as const))(
    '%s',
    async (_title, { commands, shown }) => {
      const printed: string[] = [];
      for (const line of commands) {
        const command = commandOf(line);
        const { code, out, err } = await run(command);
        expect(`${line}: ${code}${code === command.code ? '' : err}`).toBe(`${line}: ${command.code}`);
        printed.push(...out.split('\n'), ...err.split('\n'));
      }
      let from = 0;
      for (const line of shown.filter((one) => one !== '...')) {
        const at = printed.indexOf(line, from);
        expect(at, `not printed, or not in this order: ${line}`).toBeGreaterThanOrEqual(from);
        from = at + 1;
      }
    },
  );

  it('shows commands', () => {
    expect(groups.length).toBeGreaterThan(0);
  });
});

it('the guide shows every verb', () => {
  for (const { name } of VERBS) expect(GUIDE).toMatch(new RegExp(`^spindlewright ${name} `, 'm'));
});
