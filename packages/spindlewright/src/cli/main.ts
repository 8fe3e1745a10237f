#!/usr/bin/env node
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { type CliHost, runCli } from './index.ts';
import { type CliIo, runScreen } from './screen/index.ts';

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

const [verb, ...rest] = process.argv.slice(2);
if (verb === 'screen') {
  // No await at the top: the CommonJS build could not hold it.
  runScreen(rest, io).then((code) => {
    process.exitCode = code;
  });
} else process.exitCode = runCli(process.argv.slice(2), host);
