import { fileBytes } from '../readers/file-bytes.ts';
import type { CliIo } from './io.ts';
import type { Options } from './options.ts';

interface Source {
  bytes: AsyncIterable<Uint8Array | string>;
  name: string;
  /** Ends a source that may wait for ever. */
  stop(): void;
}

/** The catalogue: a file, or what comes in. @internal */
export function sourceOf({ catalogue }: Options, { stdin }: CliIo): Source {
  if (catalogue !== undefined && catalogue !== '-')
    return { bytes: fileBytes(catalogue), name: catalogue, stop: () => {} };
  return {
    bytes: stdin,
    name: '',
    stop: () => {
      stdin.destroy();
    },
  };
}
