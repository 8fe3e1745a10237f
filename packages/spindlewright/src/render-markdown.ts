import { checkRenderable } from './check-renderable.ts';
import { plainText } from './plain-text.ts';
import { type Block, type JobSheet, worded } from './sheet.ts';

/**
 * Writes a job sheet as Markdown, for a ticket or a repair log.
 *
 * @remarks
 * Formula: none; CommonMark with pipe tables, drawings by their text alternative, special characters of the job's own
 * words escaped.
 *
 * Validity: any sheet that `workJob` gave, also after a round trip through JSON.
 *
 * Accuracy: numbers are printed as the sheet words them; the sheet's own fields carry them unrounded.
 *
 * @param sheet - The sheet.
 * @returns The Markdown text, lines ended by a line feed.
 * @throws {@link DomainError} when the object is no job sheet.
 * @example
 * ```ts
 * import { renderMarkdown, workJob } from 'spindlewright';
 * const sheet = workJob({
 *   format: 'spindlewright-job-1',
 *   title: 'Demo',
 *   date: '2026-11-25',
 *   bike: 'an invented bike',
 *   side: 'drive',
 *   interface: { spindle: 'square-taper-jis', arm: 'square-taper-jis' },
 *   trialFit: { endGapMm: 3, shoulderGapMm: 3 },
 * });
 * renderMarkdown(sheet).startsWith('# Demo'); // => true
 * ```
 * @see CommonMark 0.31.2; pipe tables as in GitHub Flavored Markdown 0.29.
 */
export function renderMarkdown(sheet: JobSheet): string {
  checkRenderable('renderMarkdown', sheet);
  const parts = [
    `# ${escapeMarkdown(sheet.title)}`,
    escapeMarkdown(`${sheet.invented ? 'Invented example. ' : ''}${sheet.date}, ${sheet.side} side, ${sheet.bike}`),
    `**${escapeMarkdown(sheet.answer)}.** ${escapeMarkdown(sheet.headline)}`,
  ];
  for (const section of sheet.sections) {
    parts.push(`## ${escapeMarkdown(section.title)}`, ...worded(section).map(blockText));
  }
  return `${parts.join('\n\n')}\n`;
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'paragraph':
      return escapeMarkdown(block.text);
    case 'list':
      return block.items
        .map((item, index) => `${block.ordered ? `${index + 1}.` : '-'} ${escapeMarkdown(item)}`)
        .join('\n');
    case 'findings':
      return block.findings
        .map((finding) => `- **${finding.severity}**: ${escapeMarkdown(finding.message)}`)
        .join('\n');
    case 'drawing':
      return `*Drawing:* ${escapeMarkdown(block.description)}`;
    case 'table': {
      const row = (cells: readonly string[]): string => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
      const rule = `| ${block.head.map(() => '---').join(' | ')} |`;
      return [escapeMarkdown(block.caption), '', row(block.head), rule, ...block.rows.map(row)].join('\n');
    }
  }
}

const escapeMarkdown = (text: string): string => plainText(text).replace(/[\\`*_{}[\]<>|#&~]/g, '\\$&');
