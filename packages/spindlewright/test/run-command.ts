import { runCli } from '../src/cli/index.ts';

/** Runs the command line on files that are given as texts: exit code and what it printed and complained. */
export function runCommand(args: readonly string[], files: Readonly<Record<string, string>> = {}) {
  let out = '';
  let err = '';
  const code = runCli(args, {
    readText(path) {
      const text = Object.hasOwn(files, path) ? files[path] : undefined;
      if (text === undefined) throw new Error('no such file');
      return text;
    },
    writeText() {},
    print(text) {
      out += text;
    },
    complain(text) {
      err += text;
    },
  });
  return { code, out, err };
}
