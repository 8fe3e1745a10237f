import type { Limits } from '@spindlewright/quantity';
import { arrowHead, dimensionLine } from './dimension-line.ts';
import { gapWords } from './gap-words.ts';
import type { Wording } from './labels.ts';
import type { Gap, GapKind, Place } from './seat-scene.ts';
import { line } from './svg.ts';
import { textBlock } from './text-layout.ts';
import type { View } from './view.ts';

/** Room right of what stands still, px: as far as a mark may reach before the words begin. @internal */
export const FIXED_ROOM = 34;
const LEAST_ROW = 32;

interface RowInput {
  kind: GapKind;
  wording: Wording;
  view: View;
  fixedX: number;
  cropTop: number;
  rowsTop: number;
  textX: number;
  textWidth: number;
  place: Place;
  gap: Gap | null;
  name: 'hand' | 'pressed';
  top: number;
}

/** Dimension of one place, its limits as a bar, and both in words. */
export function gapRow(row: RowInput): { svg: string; heightPx: number } {
  const { fixedX, view, kind, place, gap, name, top, cropTop, rowsTop } = row;
  const words = gapWords({ gap, place, name, wording: row.wording });
  const block = { x: row.textX, widthPx: row.textWidth };
  const first = textBlock({
    ...block,
    text: words.first,
    y: top + 16,
    fontSize: 12,
    className: `strong ${words.tone}`,
  });
  const second = textBlock({ ...block, text: words.second, y: first.nextY - 2, fontSize: 11, className: 'small' });
  const heightPx = Math.max(LEAST_ROW, second.nextY - top - 8);
  if (gap === null) return { svg: first.svg + second.svg, heightPx };
  const y = top + 12;
  const movingX = fixedX - gap.drawnMm * view.pxPerMm;
  // Where parts touch, the mark of the contact has the detail to itself.
  const edgeTop = gap.drawnMm > 0 ? cropTop : rowsTop;
  const edge = line(movingX, edgeTop, movingX, y + 4, { class: `${name}-edge`, 'data-mark': `${kind}-${name}-edge` });
  const ends = { x1: movingX, x2: fixedX, y, lineClass: `${name}-line`, headClass: `${name}-head` };
  const size = gap.drawnMm > 0 ? dimensionLine({ ...ends, mark: `${kind}-gap-${name}` }) : '';
  const extra = place.shortMm > 0 ? missingWay(row, gap, y) : limitsBar(gap.limits, fixedX, y + 9, view.pxPerMm, name);
  return { svg: edge + size + extra + first.svg + second.svg, heightPx };
}

/** The way that the arm still lacks when it is stopped: an arrow past the plane of contact, below the parts. */
function missingWay({ place, fixedX, view }: RowInput, gap: Gap, y: number): string {
  if (gap.drawnMm > 0) return '';
  const to = Math.min(fixedX + place.shortMm * view.pxPerMm, fixedX + FIXED_ROOM);
  return line(fixedX, y, to, y, { class: 'missing' }) + (to - fixedX > 9 ? arrowHead(to, y, 1, 'contact-head') : '');
}

/** Bar from bound to bound with end ticks; what lies past contact is dashed and cut where the words begin. */
function limitsBar(limits: Limits, fixedX: number, y: number, pxPerMm: number, name: string): string {
  if (limits.lower === limits.upper) return '';
  const left = fixedX - limits.upper * pxPerMm;
  const right = fixedX - Math.max(0, limits.lower) * pxPerMm;
  const past = Math.min(fixedX - limits.lower * pxPerMm, fixedX + FIXED_ROOM);
  const tick = (at: number): string => line(at, y - 3, at, y + 3, { class: `${name}-line` });
  return [
    limits.upper > 0 ? line(left, y, right, y, { class: `${name}-bar` }) + tick(left) : '',
    limits.lower < 0 ? line(fixedX, y, past, y, { class: 'missing' }) : tick(right),
  ].join('');
}
