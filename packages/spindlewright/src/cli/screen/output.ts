import { createReadStream, createWriteStream, mkdirSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';

/** Where rows go. @internal */
export interface Output {
  /** Takes text; what comes back is waited for before more is given. */
  write(text: string): Promise<void> | undefined;
  /** Everything is written and in its place. */
  finish(): Promise<void>;
  /** It is over too early: what is whole stays, what is not goes. */
  abandon(): Promise<void>;
}

const GATHERED = 1 << 16;

/** Straight to a stream, gathered to larger pieces. @internal */
export function streamOutput(stream: Writable, closes: boolean): Output {
  let gathered = '';
  let failure: Error | undefined;
  stream.on('error', (error: Error) => {
    failure ??= error;
  });
  // One piece is on its way while the next is made.
  let under: Promise<void> | undefined;
  const send = async (): Promise<void> => {
    const text = gathered;
    gathered = '';
    await under;
    if (failure !== undefined) throw failure;
    under = new Promise((resolve, reject) => {
      stream.write(text, (error) => (error ? reject(error) : resolve()));
    });
    // Whoever waits for it next hears of a failure.
    under.catch(() => {});
  };
  const finish = async (): Promise<void> => {
    if (gathered !== '') await send();
    await under;
    if (!closes) return;
    await new Promise<void>((resolve, reject) => {
      stream.once('error', reject);
      stream.end(resolve);
    });
  };
  return {
    write(text) {
      gathered += text;
      return gathered.length < GATHERED ? undefined : send();
    },
    finish,
    // Whole rows only were written, so what is there stands.
    abandon: finish,
  };
}

/** To a file that keeps whole rows when it is interrupted. @internal */
export function fileOutput(path: string): Output {
  mkdirSync(dirname(path), { recursive: true });
  return streamOutput(createWriteStream(path), true);
}

/** To a file beside, put in its place at the end, so that nobody meets half a document; without a path to a stream. @internal */
export function wholeOutput(path: string | undefined, stream: Writable): Output {
  const partial =
    path === undefined ? join(tmpdir(), `spindlewright-${process.pid}.part`) : `${path}.${process.pid}.part`;
  const inner = fileOutput(partial);
  return {
    write: inner.write,
    async finish() {
      try {
        await inner.finish();
        if (path !== undefined) renameSync(partial, path);
        else await pipeline(createReadStream(partial), stream, { end: false });
      } finally {
        rmSync(partial, { force: true });
      }
    },
    async abandon() {
      await inner.finish().catch(() => {});
      rmSync(partial, { force: true });
    },
  };
}
