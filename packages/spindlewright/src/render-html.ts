import { checkRenderable } from './check-renderable.ts';
import { escapeHtml } from './escape-html.ts';
import type { Block, JobSheet, Section } from './sheet.ts';
import { sheetCss } from './sheet-css.ts';

const SEVERITY_WORDS = { stop: 'Stop', caution: 'Caution', note: 'Note' } as const;

/**
 * Writes a job sheet as one self-contained HTML page with its drawings, for a screen or for A4 and Letter paper.
 *
 * @remarks
 * Formula: none; no script, no outside request; light and dark follow the reader's setting, print is always light.
 *
 * Validity: any sheet that `workJob` gave, also after a round trip through JSON. The job's own words are escaped; the
 * drawings are trusted, since they come from the drawing package.
 *
 * Accuracy: numbers are printed as the sheet words them; the sheet's own fields carry them unrounded.
 *
 * @param sheet - The sheet.
 * @returns The page as text.
 * @throws {@link DomainError} when the object is no job sheet.
 * @example
 * ```ts
 * import { renderHtml, workJob } from 'spindlewright';
 * const sheet = workJob({
 *   format: 'spindlewright-job-1',
 *   title: 'Demo <1>',
 *   date: '2026-11-25',
 *   bike: 'an invented bike',
 *   side: 'drive',
 *   interface: { spindle: 'square-taper-jis', arm: 'square-taper-jis' },
 *   trialFit: { endGapMm: 3, shoulderGapMm: 3 },
 * });
 * renderHtml(sheet).includes('<title>Demo &lt;1&gt;</title>'); // => true
 * ```
 * @see WHATWG HTML Living Standard.
 */
export function renderHtml(sheet: JobSheet): string {
  checkRenderable('renderHtml', sheet);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escapeHtml(sheet.title)}</title>
<style>${sheetCss}</style>
</head>
<body>
<main>
<header>
<p class="facts">${sheet.invented ? 'Invented example · ' : ''}${escapeHtml(sheet.date)} · ${escapeHtml(
    sheet.side,
  )} side · ${escapeHtml(sheet.bike)}</p>
<h1>${escapeHtml(sheet.title)}</h1>
<p class="answer ${answerClass(sheet)}"><strong>${escapeHtml(sheet.answer)}.</strong> ${escapeHtml(sheet.headline)}</p>
</header>
${sheet.sections.map(sectionHtml).join('\n')}
${printedGrounds(sheet)}
</main>
</body>
</html>
`;
}

/** Red where parts fail or the joint keeps the bike at the stand, amber where something is open, green where nothing is. */
const answerClass = ({ state, doNotRide, diagnosis, seat }: JobSheet): string => {
  if (state === 'does-not-fit' || diagnosis?.result.doNotRide === true) return 'no';
  return doNotRide || (seat !== undefined && state === 'cannot-tell') ? 'not-yet' : 'yes';
};

function sectionHtml({ id, title, detail, blocks }: Section): string {
  const heading = `<h2 id="h-${escapeHtml(id)}">${escapeHtml(title)}</h2>`;
  const body = rowsOf(blocks).join('\n');
  return `<section id="${escapeHtml(id)}" aria-labelledby="h-${escapeHtml(id)}">
${detail === true ? `<details><summary>${heading}</summary>\n${body}\n</details>` : `${heading}\n${body}`}
</section>`;
}

/** The blocks in order; drawings that follow each other share a row, so that paper sets them side by side. */
function rowsOf(blocks: readonly Block[]): string[] {
  const rows: string[] = [];
  let drawings: string[] = [];
  const close = (): void => {
    if (drawings.length > 0) rows.push(`<div class="drawings">${drawings.join('')}</div>`);
    drawings = [];
  };
  for (const block of blocks) {
    if (block.kind === 'drawing') drawings.push(blockHtml(block));
    else {
      close();
      rows.push(blockHtml(block));
    }
  }
  close();
  return rows;
}

/** What paper keeps of the folded sections: enough to find it all again. */
function printedGrounds({ provenance: { versions, dataEdition, sources } }: JobSheet): string {
  const own = Object.entries(versions).filter(([name]) => name === 'spindlewright');
  const made = own.map(([name, version]) => `${name} ${version}`).join('');
  const cited = sources.length === 0 ? 'none cited' : sources.join(', ');
  return `<footer class="printed">${escapeHtml(
    `Made by ${made}, standards data edition ${dataEdition}. Sources by id: ${cited}. What was assumed, and each source in full: on the page on screen.`,
  )}</footer>`;
}

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'paragraph':
      return `<p>${escapeHtml(block.text)}</p>`;
    case 'list': {
      const tag = block.ordered ? 'ol' : 'ul';
      return `<${tag}>${block.items.map((item) => `<li>${escapeHtml(item)}</li>`).join('')}</${tag}>`;
    }
    case 'findings':
      return `<ul class="findings">${block.findings
        .map(
          (finding) =>
            `<li class="${finding.severity}"><strong>${SEVERITY_WORDS[finding.severity]}</strong> ${escapeHtml(finding.message)}</li>`,
        )
        .join('')}</ul>`;
    case 'drawing':
      return `<figure${block.told === true ? ' class="told"' : ''}><div class="narrow">${block.narrowSvg}</div><div class="wide">${block.wideSvg}</div></figure>`;
    case 'table':
      return `<div class="table" role="region" tabindex="0" aria-label="${escapeHtml(block.caption)}"><table role="table">
<caption>${escapeHtml(block.caption)}</caption>
<thead role="rowgroup"><tr role="row">${block.head.map((cell) => `<th scope="col" role="columnheader">${escapeHtml(cell)}</th>`).join('')}</tr></thead>
<tbody role="rowgroup">${block.rows
        .map(
          (row) =>
            `<tr role="row">${row
              .map((cell, index) =>
                index === 0
                  ? `<th scope="row" role="rowheader">${escapeHtml(cell)}</th>`
                  : `<td role="cell" data-head="${escapeHtml(block.head[index] ?? '')}">${escapeHtml(cell)}</td>`,
              )
              .join('')}</tr>`,
        )
        .join('\n')}</tbody>
</table></div>`;
  }
}
