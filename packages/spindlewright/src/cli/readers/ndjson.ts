import type { TextBlock } from './decode.ts';
import { type Batch, LONGEST_ROW, RowFault } from './fault.ts';
import { productRows } from './product.ts';
import { tidyRow } from './tidy.ts';

/** Rows of a file with one JSON value a line. @internal */
export async function* readNdjson(blocks: AsyncIterable<TextBlock>): AsyncGenerator<Batch> {
  let line = 0;
  for await (const { text, tooLong } of blocks) {
    const batch: Batch = { rows: [], lines: [] };
    if (tooLong) {
      line++;
      batch.rows.push(new RowFault('row-too-long', { longest: LONGEST_ROW }));
      batch.lines.push(line);
    }
    for (let from = 0; from < text.length; ) {
      const feed = text.indexOf('\n', from);
      const to = feed < 0 ? text.length : feed;
      line++;
      if (to > from) takeLine(text.slice(from, to), line, batch);
      from = to + 1;
    }
    if (batch.rows.length > 0) yield batch;
  }
}

function takeLine(text: string, line: number, { rows, lines }: Batch): void {
  let row: unknown;
  if (text.length > LONGEST_ROW) row = new RowFault('row-too-long', { longest: LONGEST_ROW });
  else {
    try {
      row = JSON.parse(text);
    } catch (error) {
      if (text.trim() === '') return;
      row = new RowFault('row-not-json', { fault: (error as Error).message.replace(/\s+/g, ' ').slice(0, 80) });
    }
  }
  if (text.includes('&')) row = tidyRow(row);
  if (typeof row === 'object' && row !== null && ('@type' in row || '@graph' in row)) {
    for (const product of productRows(row)) {
      rows.push(product);
      lines.push(line);
    }
    return;
  }
  rows.push(row);
  lines.push(line);
}
