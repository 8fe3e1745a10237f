import type { Readable, Writable } from 'node:stream';

/** What a verb that streams needs of its surroundings. */
export interface CliIo {
  /** Where a catalogue comes from when none is named. */
  stdin: Readable;
  /** Where results go when no file is named. */
  stdout: Writable & { isTTY?: boolean };
  /** Where progress and complaints go. */
  stderr: Writable & { isTTY?: boolean };
  /** Calls back once at the first interrupt (Ctrl-C); returns what takes the call back off. */
  onInterrupt(stop: () => void): () => void;
}
