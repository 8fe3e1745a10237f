#!/usr/bin/env node
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { runCli } from './index.ts';

process.exitCode = runCli(process.argv.slice(2), {
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
});
