import { seatNotes, seatWarning, seatWords } from './describe-seat.ts';
import { svgDocument } from './document.ts';
import { DEFAULT_WIDTH_PX, MARGIN_PX } from './frame.ts';
import { gapDetail } from './gap-detail.ts';
import { idPrefixOf } from './id-prefix.ts';
import { type Wording, wordingOf } from './labels.ts';
import { KEY_SIGN_WIDTH, type KeyEntry, legend } from './legend.ts';
import { mainView } from './seat-main-view.ts';
import { checkSeatPicture, type SeatPicture } from './seat-picture.ts';
import { seatRules } from './seat-rules.ts';
import { type SeatScene, seatScene } from './seat-scene.ts';
import { sectionExtent } from './seat-section.ts';
import { element, line } from './svg.ts';
import { textBlock } from './text-layout.ts';
import { verdictLine } from './verdict-line.ts';

/**
 * Draws a square-taper joint in section along the spindle axis, to scale, with the two gaps that decide enlarged.
 *
 * @remarks
 * Shows where the arm sits by hand (dashed) and pressed (full), their limits, and what stops it if a gap is used up.
 *
 * Formula: x = x0 + z k and y = y0 - r k, with z along the axis from the spindle's end face, r from the axis and one scale
 * k for both, stated in `data-px-per-mm` of each view; the gaps stand again in two details at a round multiple of k.
 *
 * Validity: any seat inside the ranges of the fields, however absurd the fit. A negative gap cannot be reached: the arm
 * is drawn where it touches, with what it falls short. Shapes left out are drawn as stand-ins and marked so; bolt, washer
 * and puller recess always are. Where sizes and gaps contradict each other the gaps rule, and the picture says so.
 * The picture follows the `color-scheme` of the page it stands in, on its own the reader's setting; on paper it is light.
 *
 * Accuracy: coordinates are rounded to 0.001 px. Interference of the press (some hundredths of a millimetre) is not shown:
 * the bore is drawn opened by it.
 *
 * @param picture - Seat by hand and pressed, each number a Measurand in mm or `null`; shapes, verdict (`seats`, `marginal`,
 * ... or any text), caption, `idPrefix`, `widthPx` (320 to 2000) and `labels` as wanted.
 * @returns An SVG document as text, with `title` and `desc`, no script and no reference to anything outside.
 * @throws {@link DomainError} for unknown keys, numbers outside their range or an `idPrefix` that is no XML name.
 * @example
 * ```ts
 * import { drawSeat } from '@spindlewright/drawing';
 * const svg = drawSeat({
 *   handFit: { endGapMm: { lower: 2.4, nominal: 2.5, upper: 2.6 }, shoulderGapMm: 3 },
 *   pressed: { endGapMm: { lower: 1.2, nominal: 1.5, upper: 1.8 }, shoulderGapMm: 2 },
 *   verdict: 'seats',
 *   idPrefix: 'left-arm',
 * });
 * svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg" id="left-arm" role="img"'); // => true
 * ```
 * @see ISO 128 (general principles of representation: lines, hatching), ISO 129-1 (dimensions).
 */
export function drawSeat(picture: SeatPicture): string {
  checkSeatPicture('drawSeat', picture);
  const id = idPrefixOf({ where: 'drawSeat', kind: 'seat', picture });
  const wording = wordingOf(picture.labels);
  const scene = seatScene(picture);
  const extent = sectionExtent(scene);
  const widthPx = Math.round(picture.widthPx ?? DEFAULT_WIDTH_PX);
  const inner = widthPx - 2 * MARGIN_PX;
  const wide = widthPx >= 600;
  const mainWidth = wide ? Math.round(inner * 0.55) : inner;

  const title = picture.caption ?? wording.say('seat-title');
  const head = seatHead({ picture, scene, wording, title, widthPx: inner });
  const top = head.nextY;

  const main = mainView({
    scene,
    wording,
    extent,
    engaged: picture.pressed.engagedLengthMm,
    x: MARGIN_PX,
    y: top,
    widthPx: mainWidth,
    maxHeightPx: wide ? Math.max(360, widthPx * 0.4) : 320,
  });
  const detailX = wide ? MARGIN_PX + mainWidth + 24 : MARGIN_PX;
  const detailWidth = wide ? inner - mainWidth - 24 : inner;
  const cropHeightPx = wide ? Math.min(Math.max(main.heightPx / 2 - 80, 90), detailWidth * 0.4) : 88;
  const common = {
    scene,
    wording,
    x: detailX,
    widthPx: detailWidth,
    cropHeightPx,
    sectionPxPerMm: main.pxPerMm,
    extent,
  };
  const firstY = wide ? top : top + main.heightPx + 12;
  const first = gapDetail({ ...common, kind: 'end', letter: 'A', y: firstY, clipId: `${id}-clip-a` });
  const secondY = firstY + first.heightPx + 12;
  const second = gapDetail({ ...common, kind: 'shoulder', letter: 'B', y: secondY, clipId: `${id}-clip-b` });
  const bottom = Math.max(secondY + second.heightPx, top + main.heightPx) + 12;

  const key = legend({ entries: keyEntries(scene, wording), x: MARGIN_PX, y: bottom + 8, widthPx: inner });
  const notes = textBlock({
    text: seatNotes(scene, wording).join(' '),
    x: MARGIN_PX,
    y: key.nextY + 4,
    widthPx: inner,
    fontSize: 11,
    className: 'small',
  });
  return svgDocument({
    id,
    kind: 'seat',
    language: wording.say('language'),
    title,
    description: seatWords(picture, scene, wording),
    widthPx,
    heightPx: Math.ceil(notes.nextY),
    rules: seatRules(),
    body: head.svg + main.svg + first.svg + second.svg + key.svg + notes.svg,
  });
}

/** Title, verdict and, when the arm is stopped, the warning. */
function seatHead(input: {
  picture: SeatPicture;
  scene: SeatScene;
  wording: Wording;
  title: string;
  widthPx: number;
}): {
  svg: string;
  nextY: number;
} {
  const { picture, scene, wording, title, widthPx } = input;
  const head = textBlock({ text: title, x: MARGIN_PX, y: 24, widthPx, fontSize: 15, className: 'title' });
  const verdict =
    picture.verdict === undefined
      ? { svg: '', nextY: head.nextY }
      : verdictLine({ verdict: picture.verdict, wording, x: MARGIN_PX, y: head.nextY + 2, widthPx });
  const warning = textBlock({
    text: seatWarning(scene, wording),
    x: MARGIN_PX,
    y: verdict.nextY + 4,
    widthPx,
    fontSize: 12,
    className: 'strong contact',
  });
  return { svg: head.svg + verdict.svg + warning.svg, nextY: warning.nextY - 4 };
}

function keyEntries(scene: SeatScene, wording: Wording): KeyEntry[] {
  const stroke = (className: string) => (x: number, y: number) =>
    line(x, y, x + KEY_SIGN_WIDTH, y, { class: className });
  const half = KEY_SIGN_WIDTH / 2;
  const bands = (x: number, y: number): string =>
    ['hand-band', 'pressed-band']
      .map((name, index) => element('rect', { x: x + index * half, y: y - 5, width: half, height: 10, class: name }))
      .join('');
  const gaps = [scene.hand.end, scene.hand.shoulder, scene.pressed.end, scene.pressed.shoulder];
  const anyLimits = gaps.some((gap) => gap !== null && gap.limits.lower < gap.limits.upper);
  return [
    { sign: stroke('hand-edge'), text: wording.say('key-hand-fit') },
    { sign: stroke('pressed-edge'), text: wording.say(scene.pressed.shortMm > 0 ? 'key-stopped' : 'key-pressed') },
    ...(anyLimits ? [{ sign: bands, text: wording.say('key-limits') }] : []),
  ];
}
