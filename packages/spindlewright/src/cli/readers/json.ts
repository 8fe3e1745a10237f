import type { TextBlock } from './decode.ts';
import { type Batch, CatalogueRefusal, LONGEST_ROW, RowFault } from './fault.ts';
import { productRows } from './product.ts';
import { tidyRow } from './tidy.ts';

/** A document that is one object has to be held whole. */
const LONGEST_DOCUMENT = 64 * LONGEST_ROW;

/**
 * Rows of a JSON document: the items of a list, one at a time, or what one object with schema.org data holds. Items are cut
 * at their commas, so a list may be longer than memory. @internal
 */
export async function* readJson(blocks: AsyncIterable<TextBlock>): AsyncGenerator<Batch> {
  const cutter = itemCutter();
  for await (const { text, tooLong } of blocks) {
    if (tooLong) throw new CatalogueRefusal('a line is too long to be read; write one part a line (NDJSON)');
    const batch: Batch = { rows: [], lines: [] };
    cutter.push(text, (item, line) => takeItem(item, line, batch));
    if (batch.rows.length > 0) yield batch;
  }
  const batch: Batch = { rows: [], lines: [] };
  cutter.end((item, line) => takeItem(item, line, batch));
  if (batch.rows.length > 0) yield batch;
}

function takeItem(text: string | undefined, line: number, { rows, lines }: Batch): void {
  let found: unknown[];
  if (text === undefined) found = [new RowFault('row-too-long', { longest: LONGEST_ROW })];
  else {
    try {
      found = productRows(JSON.parse(text)).map((row) => (text.includes('&') ? tidyRow(row) : row));
    } catch (error) {
      found = [new RowFault('row-not-json', { fault: (error as Error).message.replace(/\s+/g, ' ').slice(0, 80) })];
    }
  }
  for (const row of found) {
    rows.push(row);
    lines.push(line);
  }
}

interface ItemCutter {
  push(text: string, take: (item: string | undefined, line: number) => void): void;
  end(take: (item: string | undefined, line: number) => void): void;
}

function itemCutter(): ItemCutter {
  let mode: 'start' | 'list' | 'whole' | 'done' = 'start';
  let depth = 0;
  let inText = false;
  let escaped = false;
  let item = '';
  let tooLong = false;
  let line = 1;
  let itemLine = 1;
  const grow = (piece: string): void => {
    if (tooLong) return;
    item += piece;
    if (item.length > (mode === 'list' ? LONGEST_ROW : LONGEST_DOCUMENT)) {
      if (mode === 'whole') {
        throw new CatalogueRefusal('the document is one object too large to be held; write one part a line (NDJSON)');
      }
      tooLong = true;
      item = '';
    }
  };
  const finish = (take: (item: string | undefined, line: number) => void): void => {
    if (tooLong) take(undefined, itemLine);
    else if (item.trim() !== '') take(item, itemLine);
    item = '';
    tooLong = false;
  };
  return {
    push(text, take) {
      let from = 0;
      for (let at = 0; at < text.length; at++) {
        const code = text.charCodeAt(at);
        if (code === 10) line++;
        if (mode === 'start') {
          if (code === 0x5b) {
            mode = 'list';
            from = at + 1;
            itemLine = line;
          } else if (code > 32 && code !== 0xfeff) {
            mode = 'whole';
            break;
          }
          continue;
        }
        if (mode !== 'list') break;
        if (inText) {
          if (escaped) escaped = false;
          else if (code === 0x5c) escaped = true;
          else if (code === 0x22) inText = false;
        } else if (code === 0x22) inText = true;
        else if (code === 0x7b || code === 0x5b) {
          if (depth === 0) itemLine = line;
          depth++;
        } else if (code === 0x7d || code === 0x5d) {
          if (depth > 0) depth--;
          else {
            grow(text.slice(from, at));
            finish(take);
            mode = 'done';
          }
        } else if (code === 0x2c && depth === 0) {
          grow(text.slice(from, at));
          finish(take);
          from = at + 1;
          itemLine = line;
        }
      }
      if (mode === 'list' || mode === 'whole') grow(mode === 'list' ? text.slice(from) : text);
    },
    end(take) {
      if (mode !== 'done') finish(take);
    },
  };
}
