#!/usr/bin/env node
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { type AskHost, atTerminal } from './ask/index.ts';
import { runCommand } from './run-command.ts';
import type { CliIo } from './screen/io.ts';

const io: CliIo = {
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  onInterrupt: (stop) => {
    process.once('SIGINT', stop);
    return () => process.off('SIGINT', stop);
  },
};

const host: AskHost = {
  readText: (path) => readFileSync(path === '-' ? 0 : path, 'utf8'),
  writeText: (path, text) => {
    mkdirSync(dirname(path), { recursive: true });
    // Written beside and renamed, so that a reader never meets half a page.
    const partial = `${path}.${process.pid}.part`;
    try {
      writeFileSync(partial, text);
      renameSync(partial, path);
    } catch (error) {
      rmSync(partial, { force: true });
      throw error;
    }
  },
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
  exists: existsSync,
  today: () => {
    // The day at the stand, not that of Greenwich.
    const now = new Date();
    return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
  },
  asker: async () => {
    if (!atTerminal(io)) return undefined;
    const { clackAsker } = await import('./ask/clack-asker.ts');
    return clackAsker();
  },
};

// Whoever reads the output has had enough, such as `head`: no fault of anybody.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

// No await at the top: the CommonJS build could not hold it.
runCommand(process.argv.slice(2), host, io).then((code) => {
  process.exitCode = code;
});
