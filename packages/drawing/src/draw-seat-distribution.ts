import { hardLimits } from '@spindlewright/quantity';
import {
  checkSeatDistribution,
  describeSeatDistribution,
  type GapSamples,
  gapSentence,
  gapsOf,
  roomOf,
  type SeatDistributionPicture,
} from './describe-seat-distribution.ts';
import { svgDocument } from './document.ts';
import { DEFAULT_WIDTH_PX, MARGIN_PX } from './frame.ts';
import { hatchLines } from './hatch.ts';
import { idPrefixOf } from './id-prefix.ts';
import { type Wording, wordingOf } from './labels.ts';
import { KEY_SIGN_WIDTH, legend } from './legend.ts';
import { niceStep } from './nice-step.ts';
import { element, line } from './svg.ts';
import { textBlock, textLine } from './text-layout.ts';
import { declare } from './theme.ts';

const { paint, stroke } = declare;
const BINS = 28;
const PLOT_PX = 74;

/**
 * Draws how the two clearances of a pressed seat are spread, with the room to keep and the worst case.
 *
 * @remarks
 * Formula: bars of equal width over the range of the samples, the limits and both thresholds; height by the share of the
 * samples in the bar. The scale of length is stated in `data-px-per-mm`, one for both clearances.
 *
 * Validity: 1 sample or more; samples say no more than what they were drawn from.
 *
 * Accuracy: coordinates are rounded to 0.001 px; a share has the standard error sqrt(p (1 - p)/samples).
 *
 * @param picture - `endGap`, `shoulderGap` as `samplesMm` and `limitsMm` in mm, `roomMm` to keep, `title`, `idPrefix`,
 * `widthPx` (320 to 2000) and `labels` as wanted.
 * @returns An SVG document as text, with `title` and `desc`, no script and no reference to anything outside.
 * @throws {@link DomainError} for unknown keys, numbers outside their range, no clearance at all, or an `idPrefix` that is
 * no XML name.
 * @example
 * ```ts
 * import { drawSeatDistribution } from '@spindlewright/drawing';
 * const svg = drawSeatDistribution({
 *   endGap: { samplesMm: [0.9, 1.2, 1.4, 1.5, 1.9], limitsMm: { lower: 0.7, nominal: 1.4, upper: 2.2 } },
 *   idPrefix: 'spread',
 * });
 * svg.includes('End gap: middle 1.4 mm'); // => true
 * ```
 * @see ISO 128 (general principles of representation: lines, hatching).
 */
export function drawSeatDistribution(picture: SeatDistributionPicture): string {
  checkSeatDistribution('drawSeatDistribution', picture);
  const id = idPrefixOf({ where: 'drawSeatDistribution', kind: 'spread', picture });
  const wording = wordingOf(picture.labels);
  const widthPx = Math.round(picture.widthPx ?? DEFAULT_WIDTH_PX);
  const inner = widthPx - 2 * MARGIN_PX;
  const title = picture.title ?? wording.say('spread-title');
  const head = textBlock({ text: title, x: MARGIN_PX, y: 24, widthPx: inner, fontSize: 15, className: 'title' });
  const scale = scaleOf(picture, inner);
  let y = head.nextY;
  const panels = gapsOf(picture).map(({ key, gap }) => {
    // A number keeps its unit beside it when the line is broken.
    const text = gapSentence(key, gap, roomOf(picture), wording).replace(/ (%|mm)/g, '\u00a0$1');
    const words = textBlock({ text, x: MARGIN_PX, y, widthPx: inner, fontSize: 12, className: 'label' });
    const plot = { ...scale, top: words.nextY };
    y = plot.top + PLOT_PX + 54;
    return words.svg + panel(key, gap, picture, plot, wording);
  });
  const key = legend({ entries: keyEntries(wording), x: MARGIN_PX, y: y - 4, widthPx: inner });
  return svgDocument({
    id,
    kind: 'seat-distribution',
    language: wording.say('language'),
    title,
    description: describeSeatDistribution(picture),
    widthPx,
    heightPx: Math.ceil(key.nextY),
    rules: {
      '.share': `${paint('fill', 'steel')};${paint('stroke', 'pressed')};stroke-width:1`,
      '.gone': `${paint('fill', 'arm')};${paint('stroke', 'contact')};stroke-width:1`,
      '.gone-hatch': stroke('contact', 0.8),
      '.nothing': stroke('contact', 2),
      '.room': stroke('hand', 1.6, '6 3'),
      '.limits': stroke('ink', 1.5),
    },
    body: head.svg + panels.join('') + key.svg,
  });
}

interface Scale {
  left: number;
  right: number;
  fromMm: number;
  toMm: number;
  pxPerMm: number;
}

interface Plot extends Scale {
  top: number;
}

/** One scale for both clearances, so that they can be compared; both thresholds are always on it. */
function scaleOf(picture: SeatDistributionPicture, inner: number): Scale {
  const ends = gapsOf(picture).flatMap(({ gap: { samplesMm, limitsMm } }) => {
    const limits = limitsMm === undefined ? [] : [hardLimits(limitsMm).lower, hardLimits(limitsMm).upper];
    return [...rangeOf(samplesMm), ...limits];
  });
  const lower = Math.min(0, ...ends);
  const upper = Math.max(roomOf(picture), ...ends);
  const rest = Math.max(0.2, 0.04 * (upper - lower));
  const [fromMm, toMm] = [lower - rest, upper + rest];
  const [left, right] = [MARGIN_PX, MARGIN_PX + inner];
  return { left, right, fromMm, toMm, pxPerMm: (right - left) / (toMm - fromMm) };
}

/** Least and greatest by a loop: spreading many samples into arguments would exhaust the stack. */
function rangeOf(values: readonly number[]): [number, number] {
  let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    least = Math.min(least, value);
    greatest = Math.max(greatest, value);
  }
  return [least, greatest];
}

function panel(
  key: string,
  { samplesMm, limitsMm }: GapSamples,
  picture: SeatDistributionPicture,
  plot: Plot,
  wording: Wording,
): string {
  const { top, pxPerMm } = plot;
  const x = (mm: number): number => plot.left + (mm - plot.fromMm) * pxPerMm;
  const base = top + PLOT_PX;
  const limits = limitsMm === undefined ? undefined : hardLimits(limitsMm);
  const bracket = (y: number, lower: number, upper: number): string =>
    line(x(lower), y, x(upper), y, { class: 'limits', 'data-mark': `${key}-limits` }) +
    [lower, upper].map((mm) => line(x(mm), y - 4, x(mm), y + 4, { class: 'limits' })).join('');
  return element(
    'g',
    { 'data-view': key, 'data-px-per-mm': String(pxPerMm) },
    bars(samplesMm, plot, x),
    axis(plot, base, x, wording),
    line(x(0), top, x(0), base, { class: 'nothing', 'data-mark': `${key}-nothing` }),
    line(x(roomOf(picture)), top, x(roomOf(picture)), base, { class: 'room', 'data-mark': `${key}-room` }),
    limits === undefined ? '' : bracket(base + 30, limits.lower, limits.upper),
  );
}

function bars(samplesMm: readonly number[], { fromMm, toMm, pxPerMm, top }: Plot, x: (mm: number) => number): string {
  // An edge of the bars lies at 0, so that a bar is either of clearance or of none.
  const widthMm = (toMm - fromMm) / BINS;
  const counts = new Map<number, number>();
  for (const value of samplesMm) {
    const bin = Math.floor(value / widthMm);
    counts.set(bin, (counts.get(bin) ?? 0) + 1);
  }
  const most = Math.max(...counts.values());
  const base = top + PLOT_PX;
  return [...counts]
    .sort(([a], [b]) => a - b)
    .map(([bin, count]) => {
      const height = ((PLOT_PX - 6) * count) / most;
      const [left, width, gone] = [x(bin * widthMm), widthMm * pxPerMm, bin < 0];
      const box = { x: left, y: base - height, width, height };
      const outline = [
        [left, base - height],
        [left + width, base - height],
        [left + width, base],
        [left, base],
      ] as const;
      return (
        element('rect', { ...box, class: gone ? 'gone' : 'share', 'data-count': String(count) }) +
        (gone
          ? element('path', {
              d: hatchLines({ outline, angleDeg: 45, spacingPx: 5, window: undefined }),
              class: 'gone-hatch',
            })
          : '')
      );
    })
    .join('');
}

function axis(plot: Plot, base: number, x: (mm: number) => number, wording: Wording): string {
  const step = niceStep(plot.toMm - plot.fromMm, Math.max(2, Math.floor((plot.right - plot.left) / 52)));
  const first = Math.ceil(plot.fromMm / step);
  const last = Math.floor(plot.toMm / step);
  const decimals = step < 1 ? 1 : 0;
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
  return (
    line(plot.left, base, plot.right, base, { class: 'thin' }) +
    ticks
      .map((mm, index) => {
        const number = wording.number(mm, decimals);
        const text = index === ticks.length - 1 ? wording.say('unit-mm', { value: number }) : number;
        const anchor = plot.right - x(mm) < 22 ? 'end' : x(mm) - plot.left < 12 ? 'start' : 'middle';
        return (
          line(x(mm), base, x(mm), base + 4, { class: 'thin' }) +
          textLine(text, x(mm), base + 17, { class: 'small', 'text-anchor': anchor })
        );
      })
      .join('')
  );
}

const keyEntries = (wording: Wording) => [
  {
    sign: (x: number, y: number) => element('rect', { x, y: y - 5, width: KEY_SIGN_WIDTH, height: 10, class: 'share' }),
    text: wording.say('key-share'),
  },
  {
    sign: (x: number, y: number) =>
      element('rect', { x, y: y - 5, width: KEY_SIGN_WIDTH, height: 10, class: 'gone' }) +
      line(x + 4, y + 5, x + 14, y - 5, { class: 'gone-hatch' }) +
      line(x + 12, y + 5, x + 22, y - 5, { class: 'gone-hatch' }),
    text: wording.say('key-gone'),
  },
  {
    sign: (x: number, y: number) =>
      line(x + KEY_SIGN_WIDTH / 2, y - 7, x + KEY_SIGN_WIDTH / 2, y + 7, { class: 'room' }),
    text: wording.say('key-room'),
  },
  {
    sign: (x: number, y: number) =>
      line(x, y, x + KEY_SIGN_WIDTH, y, { class: 'limits' }) +
      line(x, y - 4, x, y + 4, { class: 'limits' }) +
      line(x + KEY_SIGN_WIDTH, y - 4, x + KEY_SIGN_WIDTH, y + 4, { class: 'limits' }),
    text: wording.say('key-worst-case'),
  },
];
