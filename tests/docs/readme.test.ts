import { readFileSync } from 'node:fs';
import { readJob, renderText, workJob } from 'spindlewright';
import { expect, it } from 'vitest';
import { readText, root } from '../workspace.ts';

// The sheet in the README is cut where it says "...", and every line of it has to be one that the command prints.
it('shows what npm start prints', () => {
  const [, start] = /```text\n([\s\S]*?)```/.exec(readText('README.md')) ?? [];
  const script: string = JSON.parse(readText('package.json')).scripts.start;
  const [, file, page] = /job (\S+) --html (\S+)/.exec(script) ?? [];
  const sheet = renderText(workJob(readJob(JSON.parse(readFileSync(`${root}/${file}`, 'utf8')))));
  const printed = [...sheet.split('\n'), `wrote ${page}`];
  let from = 0;
  for (const line of (start ?? '').trimEnd().split('\n')) {
    if (line === '...') continue;
    const at = printed.indexOf(line, from);
    expect(at, `line of the README not printed (or not in this order): ${line}`).toBeGreaterThanOrEqual(from);
    from = at + 1;
  }
  expect(from).toBeGreaterThan(40);
});
