// One TypeScript program over sources, with the settings of the repository.
import ts from 'typescript';
import { root } from '../workspace.ts';

/** Compiler options of the whole tree. */
function compilerOptions(): ts.CompilerOptions {
  const path = `${root}/tsconfig.json`;
  const { config, error } = ts.readConfigFile(path, ts.sys.readFile);
  if (error) throw new Error(ts.flattenDiagnosticMessageText(error.messageText, '\n'));
  return ts.parseJsonConfigFileContent({ ...config, include: [], files: ['package.json'] }, ts.sys, root).options;
}

// Declarations of the language and of tools are parsed once; they are most of a program over a small sample.
const installed = new Map<string, ts.SourceFile | undefined>();

/** Makes a program; `virtual` adds files that exist in memory only, by absolute path. */
export function createProgram(files: readonly string[], virtual: Readonly<Record<string, string>> = {}): ts.Program {
  const options = compilerOptions();
  const host = ts.createCompilerHost(options, true);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => Object.hasOwn(virtual, path) || fileExists(path);
  host.readFile = (path) => virtual[path] ?? readFile(path);
  host.getSourceFile = (path, ...rest) => {
    const text = virtual[path];
    if (text !== undefined) return ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
    if (!path.includes('/node_modules/')) return getSourceFile(path, ...rest);
    if (!installed.has(path)) installed.set(path, getSourceFile(path, ...rest));
    return installed.get(path);
  };
  return ts.createProgram([...files, ...Object.keys(virtual)], options, host);
}
