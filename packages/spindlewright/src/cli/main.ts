#!/usr/bin/env node
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { CliHost } from './host.ts';
import { runCommand } from './run-command.ts';
import type { CliIo } from './screen/io.ts';

const host: CliHost = {
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
};

const io: CliIo = {
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  onInterrupt: (stop) => {
    process.once('SIGINT', stop);
    return () => process.off('SIGINT', stop);
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
