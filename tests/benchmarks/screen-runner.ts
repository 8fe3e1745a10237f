// What the benchmark of a screening runs in processes of their own: `write FILE ROWS`, `baseline IN OUT`, `screen ARGS`.
// The last line of standard error is the wall time in milliseconds and the peak of the resident memory in MB.
import { createReadStream, createWriteStream } from 'node:fs';
import { ndjsonLines, shopRows } from '../../examples/screening/generate.ts';
import { runScreen } from '../../packages/spindlewright/src/cli/screen/index.ts';

const [verb, ...rest] = process.argv.slice(2);
const started = performance.now();

if (verb === 'write') {
  const [path = '', rows = '0'] = rest;
  const out = createWriteStream(path);
  let text = '';
  for (const line of ndjsonLines(shopRows({ rows: Number(rows), seed: 1 }))) {
    text += line;
    if (text.length < 1 << 16) continue;
    const piece = text;
    text = '';
    await new Promise((resolve) => out.write(piece, resolve));
  }
  await new Promise<void>((resolve) => out.end(text, resolve));
} else if (verb === 'baseline') {
  // Reading, JSON.parse and JSON.stringify of the same rows, written like ours.
  const [from = '', to = ''] = rest;
  const out = createWriteStream(to);
  let carry = '';
  let text = '';
  let under: Promise<unknown> = Promise.resolve();
  for await (const chunk of createReadStream(from, { encoding: 'utf8' })) {
    const lines = `${carry}${chunk}`.split('\n');
    carry = lines.pop() ?? '';
    for (const line of lines) {
      try {
        text += `${JSON.stringify(JSON.parse(line))}\n`;
      } catch {
        text += '\n';
      }
    }
    if (text.length < 1 << 16) continue;
    const piece = text;
    text = '';
    await under;
    under = new Promise((resolve) => out.write(piece, resolve));
  }
  await under;
  await new Promise<void>((resolve) => out.end(text, resolve));
} else {
  process.exitCode = await runScreen(rest, {
    stdin: process.stdin,
    stdout: process.stdout,
    stderr: process.stderr,
    onInterrupt: () => () => {},
  });
}
const peakMB = process.resourceUsage().maxRSS / 1024;
process.stderr.write(`\n${JSON.stringify({ ms: performance.now() - started, peakMB })}\n`);
