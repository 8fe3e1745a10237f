// What a page pays for an import, made by esbuild from the sources.
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { root } from './workspace.ts';

/** The bundle of a module's text, minified. */
export async function bundle(contents: string, settings: { ignoreAnnotations?: boolean } = {}): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    // The command line alone asks for Node.
    platform: contents.includes('/cli') ? 'node' : 'browser',
    conditions: ['@spindlewright/source'],
    logLevel: 'silent',
    ...settings,
  });
  return outputFiles[0]?.text ?? '';
}

/** Bytes of a bundle, compressed as a server would. */
export const gzippedBytes = async (contents: string): Promise<number> =>
  gzipSync(await bundle(contents), { level: 9 }).length;

/** Text of a module that keeps one name of an entry, and with it what it needs. */
export const only = (name: string, specifier: string): string =>
  `import { ${name} } from '${specifier}'; globalThis.${name} = ${name};`;

/** Text of a module that keeps all of an entry. */
export const whole = (specifier: string): string => `export * from '${specifier}';`;
