import type { CliIo } from './io.ts';

const EVERY_MS = { terminal: 250, other: 5000 };

/** How far it has come: one line that is written over on a terminal, a line now and then elsewhere. @internal */
export function progressOn(io: CliIo): { tell(rows: number): void; clear(): void } {
  const terminal = io.stderr.isTTY === true;
  const every = terminal ? EVERY_MS.terminal : EVERY_MS.other;
  let last = performance.now();
  let shown = false;
  return {
    tell(rows) {
      const now = performance.now();
      if (now - last < every) return;
      last = now;
      shown = true;
      io.stderr.write(terminal ? `\r${rows} rows` : `${rows} rows\n`);
    },
    clear() {
      if (shown && terminal) io.stderr.write('\r\u001b[K');
    },
  };
}
