import { balloon } from './balloon.ts';
import { contactFace, gapEdges, gapOf } from './gap-edges.ts';
import { FIXED_ROOM, gapRow } from './gap-row.ts';
import { meaningKey } from './gap-words.ts';
import type { Window } from './hatch.ts';
import type { Wording } from './labels.ts';
import type { Gap, GapKind, Place, SeatScene } from './seat-scene.ts';
import { handOutline, type SectionExtent, sectionParts } from './seat-section.ts';
import { element, line } from './svg.ts';
import { textBlock } from './text-layout.ts';
import { createView, type View } from './view.ts';

// Few and round, so that a reader can check them; six times keeps enough of both parts in sight. Below one only for gaps
// so absurd that they would not fit otherwise.
const FACTORS = [0.1, 0.2, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6] as const;
/** Room left of the widest gap, px. */
const MOVING_ROOM = 38;

/** One gap enlarged, with both places of the arm dimensioned from what stands still. @internal */
export function gapDetail(input: {
  scene: SeatScene;
  kind: GapKind;
  letter: string;
  wording: Wording;
  x: number;
  y: number;
  widthPx: number;
  cropHeightPx: number;
  sectionPxPerMm: number;
  clipId: string;
  extent: SectionExtent;
}): { svg: string; heightPx: number } {
  const { scene, kind, letter, wording, x, y, widthPx, clipId, extent } = input;
  const hand = gapOf(scene.hand, kind);
  const pressed = gapOf(scene.pressed, kind);
  if (hand === null && pressed === null) return unknownGap(input);
  const cropWidth = Math.round(widthPx * 0.55);
  const { fixedMm, focusRadiusMm } = gapEdges(scene, kind);
  const most = (cropWidth - FIXED_ROOM - MOVING_ROOM) / Math.max(widestGap([hand, pressed]), 0.5);
  const factor = [...FACTORS].reverse().find((one) => one * input.sectionPxPerMm <= most) ?? FACTORS[0];
  const pxPerMm = factor * input.sectionPxPerMm;
  const fixedX = x + cropWidth - FIXED_ROOM;
  const text = { textX: x + cropWidth + 10, textWidth: widthPx - cropWidth - 10 };
  const title = detailTitle({ scene, kind, wording, factor, y, ...text });
  const crop = { x, y, width: cropWidth, height: Math.max(input.cropHeightPx, title.nextY - y - 6) };
  const view = createView({ pxPerMm, at: [fixedMm, focusRadiusMm], x: fixedX, y: y + crop.height * 0.45 });
  const rowsTop = y + crop.height;
  const common = { kind, wording, view, fixedX, cropTop: y, rowsTop, ...text };
  const first = gapRow({ ...common, place: scene.hand, gap: hand, name: 'hand', top: rowsTop });
  const second = gapRow({
    ...common,
    place: scene.pressed,
    gap: pressed,
    name: 'pressed',
    top: rowsTop + first.heightPx,
  });
  const rowsEnd = rowsTop + first.heightPx + second.heightPx;
  const picture = [
    element('rect', { ...crop, class: 'sheet' }),
    sectionParts({ scene, view, extent, window: crop }),
    hand === null ? '' : handOutline(scene, view),
    band(hand, scene.hand, 'hand-band', view, fixedMm, crop),
    band(pressed, scene.pressed, 'pressed-band', view, fixedMm, crop),
    contactFace(scene, kind, view),
  ].join('');
  return {
    svg: element(
      'g',
      { 'data-view': `${kind}-gap`, 'data-px-per-mm': String(pxPerMm) },
      element('clipPath', { id: clipId }, element('rect', { ...crop, rx: 4 })),
      element('g', { 'clip-path': `url(#${clipId})` }, picture),
      element('rect', { ...crop, rx: 4, class: 'rule' }),
      balloon(letter, x + 14, y + 14),
      title.svg,
      line(fixedX, y, fixedX, rowsTop + first.heightPx + 20, { class: 'thin', 'data-mark': `${kind}-fixed` }),
      first.svg,
      second.svg,
    ),
    heightPx: rowsEnd - y,
  };
}

function unknownGap(input: {
  kind: GapKind;
  letter: string;
  wording: Wording;
  x: number;
  y: number;
  widthPx: number;
}): {
  svg: string;
  heightPx: number;
} {
  const { kind, letter, wording, x, y, widthPx } = input;
  const words = textBlock({
    text: `${wording.say(`${kind}-gap`)}: ${wording.say('gap-unknown')}`,
    x: x + 32,
    y: y + 18,
    widthPx: widthPx - 32,
    fontSize: 12,
    className: 'strong',
  });
  return { svg: balloon(letter, x + 14, y + 14) + words.svg, heightPx: words.nextY - y };
}

function widestGap(gaps: readonly (Gap | null)[]): number {
  return Math.max(...gaps.map((gap) => (gap === null ? 0 : Math.max(gap.limits.upper, gap.drawnMm))));
}

function detailTitle(input: {
  scene: SeatScene;
  kind: GapKind;
  wording: Wording;
  factor: number;
  textX: number;
  textWidth: number;
  y: number;
}): { svg: string; nextY: number } {
  const { scene, kind, wording, factor, y } = input;
  const block = { x: input.textX, widthPx: input.textWidth };
  const name = textBlock({ ...block, text: wording.say(`${kind}-gap`), y: y + 12, fontSize: 12, className: 'strong' });
  const meaning = textBlock({
    ...block,
    text: wording.say(meaningKey(scene, kind)),
    y: name.nextY,
    fontSize: 11,
    className: 'small',
  });
  const times = wording.number(factor, Number.isInteger(factor) ? 0 : 1);
  const enlarged = textBlock({
    ...block,
    text: wording.say('enlarged', { factor: times }),
    y: meaning.nextY,
    fontSize: 11,
    className: 'small',
  });
  return { svg: name.svg + meaning.svg + enlarged.svg, nextY: enlarged.nextY };
}

/** Where the moving edge may lie, as a translucent band over the height of the detail; it ends where the parts touch. */
function band(gap: Gap | null, place: Place, className: string, view: View, fixedMm: number, crop: Window): string {
  if (gap === null || place.shortMm > 0 || gap.limits.upper <= 0 || gap.limits.lower === gap.limits.upper) return '';
  const left = view.x(fixedMm - gap.limits.upper);
  const right = view.x(fixedMm - Math.max(0, gap.limits.lower));
  return element('rect', { x: left, y: crop.y, width: right - left, height: crop.height, class: className });
}
