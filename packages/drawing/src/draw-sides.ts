import { hardLimits, type Measurand } from '@spindlewright/quantity';
import { checkSides, describeSides, gapWords, type PictureSide, playOf, type SidesPicture } from './describe-sides.ts';
import { svgDocument } from './document.ts';
import { DEFAULT_WIDTH_PX, MARGIN_PX } from './frame.ts';
import { hatchLines } from './hatch.ts';
import { idPrefixOf } from './id-prefix.ts';
import { type Wording, wordingOf } from './labels.ts';
import { element, line } from './svg.ts';
import { textBlock } from './text-layout.ts';
import { declare } from './theme.ts';

const { paint, stroke } = declare;

/** Half the shell, the collar of the spindle, the arm along the axis, and half of each across it, px. */
const SHELL = { half: 30, halfHeight: 34 };
const SPINDLE_HALF = 11;
const ARM = { width: 52, halfHeight: 26 };
const BOLT = { width: 9, halfHeight: 15 };
/** Longest gap that is drawn to scale, mm, and what stands in for one that was not measured. */
const LONGEST_MM = 6;
const STAND_IN_MM = 2;
/** Wider, and the parts would look lost between their clearances. */
const WIDEST_PX_PER_MM = 14;

/**
 * Draws both ends of a spindle beside each other, the sound one and the bad one, with their two clearances to one scale.
 *
 * @remarks
 * Formula: each clearance is drawn as its nominal value times the scale in `data-px-per-mm`, the same at both ends.
 *
 * Validity: clearances from -100 to 100 mm; beyond 6 mm, or past the end by more, the picture stops and only the words go
 * on. One that was not measured is dashed.
 *
 * Accuracy: coordinates are rounded to 0.001 px.
 *
 * @param picture - `drive` and `nonDrive` as words, state, clearances in mm and play in deg; `title`, `idPrefix`, `widthPx`
 * (320 to 2000) and `labels` as wanted.
 * @returns An SVG document as text, with `title` and `desc`, no script and no reference to anything outside.
 * @throws {@link DomainError} for unknown keys, numbers outside their range or an `idPrefix` that is no XML name.
 * @example
 * ```ts
 * import { drawSides } from '@spindlewright/drawing';
 * const svg = drawSides({
 *   drive: { words: 'the joint is sound', state: 'good', endGapMm: 2, shoulderGapMm: 3 },
 *   nonDrive: { words: 'the hole is deformed', state: 'bad', endGapMm: 0 },
 *   idPrefix: 'both',
 * });
 * svg.includes('the hole is deformed'); // => true
 * ```
 * @see ISO 128 (general principles of representation: lines, hatching).
 */
export function drawSides(picture: SidesPicture): string {
  checkSides('drawSides', picture);
  const id = idPrefixOf({ where: 'drawSides', kind: 'sides', picture });
  const wording = wordingOf(picture.labels);
  const widthPx = Math.round(picture.widthPx ?? DEFAULT_WIDTH_PX);
  const inner = widthPx - 2 * MARGIN_PX;
  const title = picture.title ?? wording.say('sides-title');
  const head = textBlock({ text: title, x: MARGIN_PX, y: 24, widthPx: inner, fontSize: 15, className: 'title' });
  const middle = widthPx / 2;
  // What is left of half the width once the parts stand in it goes to the two clearances.
  const room = inner / 2 - SHELL.half - ARM.width - BOLT.width - 6;
  const pxPerMm = Math.min(WIDEST_PX_PER_MM, room / LONGEST_MM);
  const axisY = head.nextY + SHELL.halfHeight + 4;
  const half = inner / 2 - 6;
  const left = textColumn(picture.nonDrive, 'side-non-drive', MARGIN_PX, axisY + 56, half, wording);
  const right = textColumn(picture.drive, 'side-drive', middle + 6, axisY + 56, half, wording);
  const note = textBlock({
    text: wording.say('sides-scale'),
    x: MARGIN_PX,
    y: Math.max(left.nextY, right.nextY) + 4,
    widthPx: inner,
    fontSize: 11,
    className: 'small',
  });
  return svgDocument({
    id,
    kind: 'sides',
    language: wording.say('language'),
    title,
    description: describeSides(picture),
    widthPx,
    heightPx: Math.ceil(note.nextY),
    rules: {
      '.shell': `${paint('fill', 'paper')};${paint('stroke', 'ink')};stroke-width:1.2`,
      '.arm': `${paint('fill', 'arm')};${paint('stroke', 'ink')};stroke-width:1.2`,
      '.arm-hatch': stroke('arm-hatch', 0.7),
      '.spindle': `${paint('fill', 'steel')};${paint('stroke', 'ink')};stroke-width:1.2`,
      '.bolt': `${paint('fill', 'bolt')};${paint('stroke', 'ink')};stroke-width:1`,
      '.gap': stroke('pressed', 2.2),
      '.guess': stroke('soft', 1.4, '3 3'),
      '.good': stroke('good', 2.4),
      '.bad': stroke('contact', 2.4),
      '.open': stroke('caution', 2.4),
    },
    body:
      head.svg +
      sideParts(picture.nonDrive, 'non-drive', { middle, axisY, pxPerMm, way: -1 }) +
      sideParts(picture.drive, 'drive', { middle, axisY, pxPerMm, way: 1 }) +
      element('rect', {
        x: middle - SHELL.half,
        y: axisY - SHELL.halfHeight,
        width: 2 * SHELL.half,
        height: 2 * SHELL.halfHeight,
        class: 'shell',
      }) +
      line(MARGIN_PX, axisY, MARGIN_PX + inner, axisY, { class: 'axis' }) +
      left.svg +
      right.svg +
      note.svg,
  });
}

interface Place {
  middle: number;
  axisY: number;
  pxPerMm: number;
  /** 1 to the right, -1 to the left. */
  way: 1 | -1;
}

function sideParts(side: PictureSide, name: string, place: Place): string {
  const { middle, axisY, pxPerMm, way } = place;
  const drawn = (gap: Measurand | null | undefined, least: number): number => {
    const mm = gap === null || gap === undefined ? STAND_IN_MM : hardLimits(gap).nominal;
    return Math.max(least, Math.min(LONGEST_MM, mm)) * pxPerMm;
  };
  // Outward from the middle of the bicycle.
  const at = (distance: number): number => middle + way * distance;
  const box = (from: number, to: number, halfHeight: number, className: string, mark?: string): string =>
    element('rect', {
      x: Math.min(at(from), at(to)),
      y: axisY - halfHeight,
      width: Math.abs(to - from),
      height: 2 * halfHeight,
      class: className,
      ...(mark === undefined ? {} : { 'data-mark': `${name}-${mark}` }),
    });
  const armFrom = SHELL.half + drawn(side.shoulderGapMm, 0);
  const armTo = armFrom + ARM.width;
  // The bolt's seat is the outer face of the arm; past it the spindle end may stand out, as far as the bolt is thick.
  const spindleEnd = armTo - Math.min(ARM.width - 4, drawn(side.endGapMm, -BOLT.width / pxPerMm));
  const outline = [
    [at(armFrom), axisY - ARM.halfHeight],
    [at(armTo), axisY - ARM.halfHeight],
    [at(armTo), axisY + ARM.halfHeight],
    [at(armFrom), axisY + ARM.halfHeight],
  ] as const;
  const measured = (gap: Measurand | null | undefined): string => (gap === null || gap === undefined ? 'guess' : 'gap');
  const dimension = (from: number, to: number, y: number, mark: string, gap: Measurand | null | undefined): string =>
    Math.abs(to - from) < 0.5
      ? ''
      : line(at(from), y, at(to), y, { class: measured(gap), 'data-mark': `${name}-${mark}` });
  return element(
    'g',
    { 'data-view': name, 'data-px-per-mm': String(pxPerMm) },
    box(armFrom, armTo, ARM.halfHeight, 'arm', 'arm'),
    element('path', {
      d: hatchLines({ outline, angleDeg: 45, spacingPx: 7, window: undefined }),
      class: 'arm-hatch',
    }),
    box(SHELL.half - 2, spindleEnd, SPINDLE_HALF, 'spindle', 'spindle'),
    box(armTo, armTo + BOLT.width, BOLT.halfHeight, 'bolt', 'bolt'),
    dimension(SHELL.half, armFrom, axisY + SHELL.halfHeight + 4, 'shoulder-gap', side.shoulderGapMm),
    dimension(spindleEnd, armTo, axisY + SHELL.halfHeight + 4, 'end-gap', side.endGapMm),
  );
}

/** A tick, a cross or a question mark as lines, so that no font has to hold it. */
function sign(state: PictureSide['state'], x: number, y: number): string {
  const path = {
    good: `M${x} ${y}l4 5l8 -10`,
    bad: `M${x} ${y - 5}l10 10M${x + 10} ${y - 5}l-10 10`,
    open: `M${x + 1} ${y - 3}q1 -4 5 -4q5 1 3 5q-4 2 -4 5M${x + 5} ${y + 6}l0 1`,
  }[state];
  return element('path', { d: path, class: state, 'data-mark': `state-${state}` });
}

function textColumn(
  side: PictureSide,
  key: 'side-drive' | 'side-non-drive',
  x: number,
  y: number,
  widthPx: number,
  wording: Wording,
): { svg: string; nextY: number } {
  const name = textBlock({ text: wording.say(key), x, y, widthPx, fontSize: 12, className: 'strong' });
  const words = textBlock({
    text: side.words,
    x: x + 18,
    y: name.nextY,
    widthPx: widthPx - 18,
    fontSize: 12,
    className: 'label',
  });
  const play = playOf(side, wording);
  const lines = [
    `${wording.say('end-gap')}: ${gapWords(side.endGapMm, wording)}`,
    `${wording.say('shoulder-gap')}: ${gapWords(side.shoulderGapMm, wording)}`,
    ...(play === '' ? [] : [play]),
  ];
  let nextY = words.nextY;
  const rest = lines.map((text) => {
    const block = textBlock({ text, x, y: nextY, widthPx, fontSize: 11, className: 'small' });
    nextY = block.nextY;
    return block.svg;
  });
  return { svg: name.svg + sign(side.state, x, name.nextY - 4) + words.svg + rest.join(''), nextY };
}
