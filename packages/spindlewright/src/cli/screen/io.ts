import type { Readable, Writable } from 'node:stream';

/** A stream that may be a terminal. */
interface Terminal extends Writable {
  /** True when somebody looks at it, so that progress may be shown. */
  isTTY?: boolean;
}

/** What a verb that streams needs of its surroundings. */
export interface CliIo {
  /** Where a catalogue comes from when none is named. */
  stdin: Readable & { isTTY?: boolean };
  /** Where results go when no file is named. */
  stdout: Terminal;
  /** Where progress and complaints go. */
  stderr: Terminal;
  /** Calls back once at the first interrupt (Ctrl-C); returns what takes the call back off. */
  onInterrupt(stop: () => void): () => void;
}
