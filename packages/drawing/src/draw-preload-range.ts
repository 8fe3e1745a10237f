import { hardLimits } from '@spindlewright/quantity';
import { balloon } from './balloon.ts';
import {
  checkPreloadRange,
  describePreloadRange,
  inKilonewtons,
  markWords,
  type PreloadRangePicture,
  preloadWords,
} from './describe-preload-range.ts';
import { svgDocument } from './document.ts';
import { DEFAULT_WIDTH_PX, MARGIN_PX } from './frame.ts';
import { hatchLines } from './hatch.ts';
import { idPrefixOf } from './id-prefix.ts';
import { type Wording, wordingOf } from './labels.ts';
import { KEY_SIGN_WIDTH, type KeyEntry, legend } from './legend.ts';
import { niceStep } from './nice-step.ts';
import { element, line } from './svg.ts';
import { textBlock, textLine, textWidth } from './text-layout.ts';
import { declare } from './theme.ts';

const { paint, stroke } = declare;
const BAR_PX = 24;
const BALLOON_PX = 20;

/**
 * Draws the range in which a preload may lie on a scale of force, beside the forces that it has to be compared with.
 *
 * @remarks
 * Formula: x = x0 + F k, the scale k in pixels a newton stated in `data-px-per-n`; it begins at 0.
 *
 * Validity: forces from 0 to 1e9 N. The picture compares; whether a mark must not be passed, and what follows from it, is
 * the reader's to know.
 *
 * Accuracy: coordinates are rounded to 0.001 px.
 *
 * @param picture - `preloadN` as a Measurand in N, `marks` as label and force in N, `title`, `idPrefix`, `widthPx` (320 to
 * 2000) and `labels` as wanted.
 * @returns An SVG document as text, with `title` and `desc`, no script and no reference to anything outside.
 * @throws {@link DomainError} for unknown keys, numbers outside their range or an `idPrefix` that is no XML name.
 * @example
 * ```ts
 * import { drawPreloadRange } from '@spindlewright/drawing';
 * const svg = drawPreloadRange({
 *   preloadN: { lower: 9800, nominal: 14200, upper: 21000 },
 *   marks: [{ label: 'proof load', forceN: 21200 }],
 *   idPrefix: 'bolt',
 * });
 * svg.includes('proof load 21.2 kN: above the range'); // => true
 * ```
 * @see ISO 128 (general principles of representation: lines, hatching).
 */
export function drawPreloadRange(picture: PreloadRangePicture): string {
  checkPreloadRange('drawPreloadRange', picture);
  const id = idPrefixOf({ where: 'drawPreloadRange', kind: 'preload', picture });
  const wording = wordingOf(picture.labels);
  const widthPx = Math.round(picture.widthPx ?? DEFAULT_WIDTH_PX);
  const inner = widthPx - 2 * MARGIN_PX;
  const title = picture.title ?? wording.say('preload-title');
  const head = textBlock({ text: title, x: MARGIN_PX, y: 24, widthPx: inner, fontSize: 15, className: 'title' });
  const value = textBlock({
    text: preloadWords(picture, wording),
    x: MARGIN_PX,
    y: head.nextY,
    widthPx: inner,
    fontSize: 12,
    className: 'strong',
  });
  const forces = (picture.marks ?? []).map(({ forceN }) => forceN);
  const greatest = Math.max(hardLimits(picture.preloadN).upper, ...forces, 1) * 1.04;
  const pxPerN = (inner - 8) / greatest;
  const plot: Plot = { picture, wording, left: MARGIN_PX + 4, right: MARGIN_PX + inner, pxPerN, top: value.nextY + 14 };
  const rows = markRows(plot);
  const key = legend({ entries: keyEntries(wording), x: MARGIN_PX + 4, y: rows.nextY + 4, widthPx: inner - 4 });
  return svgDocument({
    id,
    kind: 'preload-range',
    language: wording.say('language'),
    title,
    description: describePreloadRange(picture),
    widthPx,
    heightPx: Math.ceil(key.nextY),
    rules: {
      '.range': `${paint('fill', 'steel')};${paint('stroke', 'pressed')};stroke-width:1.4`,
      '.range-hatch': stroke('steel-hatch', 0.9),
      '.nominal': stroke('pressed', 3),
      '.mark': stroke('hand', 1.6, '6 3'),
      '.balloon': `${paint('fill', 'paper')};${paint('stroke', 'hand')};stroke-width:1.2`,
    },
    body:
      head.svg +
      value.svg +
      element(
        'g',
        { 'data-view': 'forces', 'data-px-per-n': String(pxPerN) },
        axis(plot, greatest),
        range(plot),
        rows.svg,
      ) +
      key.svg,
  });
}

interface Plot {
  picture: PreloadRangePicture;
  wording: Wording;
  left: number;
  right: number;
  top: number;
  pxPerN: number;
}

function axis(plot: Plot, greatest: number): string {
  const { picture, wording, left, right, top, pxPerN } = plot;
  const kilo = inKilonewtons(picture);
  const step = niceStep(greatest, Math.floor((right - left) / 56));
  const decimals = Math.max(0, -Math.floor(Math.log10(step / (kilo ? 1000 : 1)) + 1e-9));
  const ticks = Array.from({ length: Math.floor(greatest / step) + 1 }, (_, index) => index * step);
  const written = ticks.map((force, index) => {
    const x = left + force * pxPerN;
    const number = wording.number(kilo ? force / 1000 : force, decimals);
    const text = index === 0 ? number : index === ticks.length - 1 ? unitWord(kilo, number, wording) : number;
    const anchor = index === 0 ? 'start' : x + textWidth(text, 11) / 2 > right ? 'end' : 'middle';
    return (
      line(x, top, x, top + 6, { class: 'thin' }) +
      textLine(text, x, top - 4, { class: 'small', 'text-anchor': anchor })
    );
  });
  return line(left, top + 6, right, top + 6, { class: 'thin' }) + written.join('');
}

const unitWord = (kilo: boolean, value: string, wording: Wording): string =>
  wording.say(kilo ? 'unit-kn' : 'unit-n', { value });

function range({ picture, left, top, pxPerN }: Plot): string {
  const { lower, nominal, upper } = hardLimits(picture.preloadN);
  const y = top + 14;
  const [x1, x2] = [left + lower * pxPerN, left + upper * pxPerN];
  const outline = [
    [x1, y],
    [x2, y],
    [x2, y + BAR_PX],
    [x1, y + BAR_PX],
  ] as const;
  const lines = hatchLines({ outline, angleDeg: 45, spacingPx: 6, window: undefined });
  const middle = left + nominal * pxPerN;
  return (
    element('rect', { x: x1, y, width: x2 - x1, height: BAR_PX, class: 'range', 'data-mark': 'range' }) +
    element('path', { d: lines, class: 'range-hatch' }) +
    line(middle, y - 4, middle, y + BAR_PX + 4, { class: 'nominal', 'data-mark': 'nominal' })
  );
}

function keyEntries(wording: Wording): KeyEntry[] {
  return [
    {
      sign: (x, y) => element('rect', { x, y: y - 5, width: KEY_SIGN_WIDTH, height: 10, class: 'range' }),
      text: wording.say('key-range'),
    },
    {
      sign: (x, y) => line(x + KEY_SIGN_WIDTH / 2, y - 7, x + KEY_SIGN_WIDTH / 2, y + 7, { class: 'nominal' }),
      text: wording.say('key-nominal'),
    },
  ];
}

/** Numbered marks from left to right, and what each number means below: words then never cross a leader. */
function markRows(plot: Plot): { svg: string; nextY: number } {
  const { picture, wording, left, right, top, pxPerN } = plot;
  const marks = (picture.marks ?? []).map((mark, index) => ({ mark, index, x: left + mark.forceN * pxPerN }));
  marks.sort((a, b) => a.x - b.x || a.index - b.index);
  const firstRow = top + 14 + BAR_PX + 18;
  const rowEnds: number[] = [];
  let svg = '';
  marks.forEach(({ index, x }, place) => {
    const free = rowEnds.findIndex((end) => x - end >= BALLOON_PX);
    const row = free === -1 ? rowEnds.length : free;
    rowEnds[row] = x;
    const y = firstRow + row * BALLOON_PX;
    svg +=
      line(x, top + 6, x, y - 9, { class: 'mark', 'data-mark': `mark-${index}` }) + balloon(String(place + 1), x, y);
  });
  let nextY = marks.length === 0 ? firstRow : firstRow + rowEnds.length * BALLOON_PX + 12;
  marks.forEach(({ mark }, place) => {
    const text = markWords(picture, mark, wording);
    const words = textBlock({
      text,
      x: left + 24,
      y: nextY,
      widthPx: right - left - 24,
      fontSize: 12,
      className: 'label',
    });
    svg += balloon(String(place + 1), left + 8, nextY - 4) + words.svg;
    nextY = words.nextY + 6;
  });
  return { svg, nextY };
}
