import { checkRenderable } from './check-renderable.ts';
import { plainText } from './plain-text.ts';
import { type Block, type JobSheet, worded } from './sheet.ts';

const WIDTH = 92;

/**
 * Writes a job sheet as plain text for a terminal or a printer.
 *
 * @remarks
 * Formula: none; sections in order, paragraphs wrapped at 92 columns, tables in columns, drawings by their text
 * alternative.
 *
 * Validity: any sheet that `workJob` gave, also after a round trip through JSON.
 *
 * Accuracy: numbers are printed as the sheet words them; the sheet's own fields carry them unrounded.
 *
 * @param sheet - The sheet.
 * @returns The text, lines ended by a line feed.
 * @throws {@link DomainError} when the object is no job sheet.
 * @example
 * ```ts
 * import { renderText, workJob } from 'spindlewright';
 * const sheet = workJob({
 *   format: 'spindlewright-job-1',
 *   title: 'Demo',
 *   date: '2026-11-25',
 *   bike: 'an invented bike',
 *   side: 'drive',
 *   interface: { spindle: 'square-taper-jis', arm: 'square-taper-jis' },
 *   trialFit: { endGapMm: 3, shoulderGapMm: 3 },
 * });
 * renderText(sheet).startsWith('DEMO'); // => true
 * ```
 * @see The project's own sheet form.
 */
export function renderText(sheet: JobSheet): string {
  checkRenderable('renderText', sheet);
  const title = plainText(sheet.title).toUpperCase();
  const lines = [title, '='.repeat(Math.min(WIDTH, title.length)), ...factLines(sheet), ''];
  for (const section of sheet.sections) {
    lines.push(section.title, '-'.repeat(section.title.length));
    for (const block of worded(section)) lines.push(...blockLines(block), '');
  }
  return `${lines.join('\n').trimEnd()}\n`;
}

const factLines = (sheet: JobSheet): string[] => [
  plainText(`${sheet.invented ? 'Invented example. ' : ''}${sheet.date}, ${sheet.side} side, ${sheet.bike}`),
  '',
  ...wrap(sheet.headline, `${sheet.answer}: `),
];

function blockLines(block: Block): string[] {
  switch (block.kind) {
    case 'paragraph':
      return wrap(block.text, '');
    case 'list':
      return block.items.flatMap((item, index) => wrap(item, block.ordered ? `${index + 1}. ` : '- '));
    case 'findings':
      return block.findings.flatMap((finding) => wrap(finding.message, `[${finding.severity}] `));
    case 'drawing':
      return wrap(block.description, '[drawing] ');
    case 'table':
      return [...wrap(block.caption, ''), ...tableLines(block.head, block.rows)];
  }
}

function tableLines(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const all = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...all.map((row) => (row[column] ?? '').length)));
  const total = widths.reduce((sum, width) => sum + width + 2, 0);
  if (total > WIDTH) return rows.flatMap((row) => recordLines(head, row));
  const line = (row: readonly string[]): string =>
    `  ${widths.map((width, column) => (row[column] ?? '').padEnd(width)).join('  ')}`.trimEnd();
  return [line(head), `  ${widths.map((width) => '-'.repeat(width)).join('  ')}`, ...rows.map(line)];
}

/** A row too wide for columns: its first cell as a heading, the others below it, each under its own head. */
function recordLines(head: readonly string[], row: readonly string[]): string[] {
  const widest = Math.max(...head.slice(1).map((cell) => cell.length));
  return [
    `  ${row[0] ?? ''}`,
    ...row.slice(1).flatMap((cell, index) => wrap(cell, `    ${(head[index + 1] ?? '').padEnd(widest)}  `)),
  ];
}

function wrap(text: string, lead: string): string[] {
  const hanging = ' '.repeat(lead.length);
  const lines: string[] = [];
  let current = lead;
  for (const word of plainText(text).split(/\s+/)) {
    const empty = current === lead || current === hanging;
    if (!empty && current.length + 1 + word.length > WIDTH) {
      lines.push(current);
      current = hanging + word;
    } else current = empty ? current + word : `${current} ${word}`;
  }
  return [...lines, current];
}
