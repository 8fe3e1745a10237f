import { type BorePlayScene, borePlayScene } from './bore-play-scene.ts';
import { type BorePlayPicture, checkBorePlay, describeBorePlay, playNotes, playWords } from './describe-bore-play.ts';
import { svgDocument } from './document.ts';
import { DEFAULT_WIDTH_PX, MARGIN_PX } from './frame.ts';
import { hatchLines } from './hatch.ts';
import { idPrefixOf } from './id-prefix.ts';
import { wordingOf } from './labels.ts';
import { KEY_SIGN_WIDTH, type KeyEntry, legend } from './legend.ts';
import { element, line } from './svg.ts';
import { textBlock, textLine } from './text-layout.ts';
import { declare } from './theme.ts';
import { createView, type Point, pathData, type View } from './view.ts';

const { paint, fill, stroke } = declare;
const HATCHING = { angleDeg: -45, spacingPx: 6, window: undefined };

/**
 * Draws a spindle square in a bore that has been opened, with the arm turned to either stop.
 *
 * @remarks
 * Formula: the bore turns until h cos phi + (b/2) sin phi = h + c, with half-width h, flat width b and clearance c as
 * drawn. A clearance too thin to see is drawn a round number of times as wide, which the picture says; sizes else keep
 * one scale, stated in `data-px-per-mm`.
 *
 * Validity: plane flats, opened evenly on all sides; corners of the bore are drawn sharp. Where the rotation given does
 * not follow from the sizes the sizes are drawn, and the picture says so.
 *
 * Accuracy: coordinates are rounded to 0.001 px.
 *
 * @param picture - `halfWidthMm`, `flatWidthMm` (at most twice that), `clearanceMm` on each side, `rotationDeg` from the
 * middle to one stop or `null`; `title`, `idPrefix`, `widthPx` (320 to 2000) and `labels` as wanted.
 * @returns An SVG document as text, with `title` and `desc`, no script and no reference to anything outside.
 * @throws {@link DomainError} for unknown keys, numbers outside their range or an `idPrefix` that is no XML name.
 * @example
 * ```ts
 * import { drawBorePlay } from '@spindlewright/drawing';
 * const svg = drawBorePlay({ halfWidthMm: 6.5, flatWidthMm: 10, clearanceMm: 0.1, rotationDeg: 1.18, idPrefix: 'bore' });
 * svg.includes('1.2°'); // => true
 * ```
 * @see Plane geometry of a rectangle turning in a slot: the relation above is derived, no source needed.
 */
export function drawBorePlay(picture: BorePlayPicture): string {
  checkBorePlay('drawBorePlay', picture);
  const id = idPrefixOf({ where: 'drawBorePlay', kind: 'bore-play', picture });
  const wording = wordingOf(picture.labels);
  const widthPx = Math.round(picture.widthPx ?? DEFAULT_WIDTH_PX);
  const inner = widthPx - 2 * MARGIN_PX;
  const scene = borePlayScene(picture);
  const title = picture.title ?? wording.say('play-title');
  const head = textBlock({ text: title, x: MARGIN_PX, y: 24, widthPx: inner, fontSize: 15, className: 'title' });
  const words = textBlock({
    text: playWords(picture, wording).join(' '),
    x: MARGIN_PX,
    y: head.nextY,
    widthPx: inner,
    fontSize: 12,
    className: 'strong',
  });
  const outer = (scene.halfWidthMm + scene.drawnClearanceMm) * 1.55;
  const pxPerMm = Math.min(inner, 420) / (2.3 * outer);
  const centre = { x: widthPx / 2, y: words.nextY + 1.15 * outer * pxPerMm };
  const view = createView({ pxPerMm, at: [0, 0], ...centre });
  const key = legend({
    entries: keyEntries(scene, wording.say),
    x: MARGIN_PX,
    y: centre.y + 1.15 * outer * pxPerMm + 12,
    widthPx: inner,
  });
  const notes = textBlock({
    text: playNotes(picture, scene, wording).join(' '),
    x: MARGIN_PX,
    y: key.nextY + 4,
    widthPx: inner,
    fontSize: 11,
    className: 'small',
  });
  return svgDocument({
    id,
    kind: 'bore-play',
    language: wording.say('language'),
    title,
    description: describeBorePlay(picture),
    widthPx,
    heightPx: Math.ceil(notes.nextY),
    rules: {
      '.arm-ground': `${fill('arm')};fill-rule:evenodd`,
      '.arm-hatch': stroke('arm-hatch', 0.9),
      '.steel-ground': fill('steel'),
      '.steel-hatch': stroke('steel-hatch', 0.9),
      '.cut': `${stroke('ink', 1.4)};stroke-linejoin:round`,
      '.other': `${stroke('hand', 1.4, '5 3')};stroke-linejoin:round`,
      '.touch': `${paint('fill', 'contact')};${paint('stroke', 'paper')};stroke-width:1`,
      '.on-steel': `paint-order:stroke;${paint('stroke', 'steel')};stroke-width:5;stroke-linejoin:round`,
      '.on-arm': `paint-order:stroke;${paint('stroke', 'arm')};stroke-width:5;stroke-linejoin:round`,
    },
    body:
      head.svg +
      words.svg +
      element(
        'g',
        { 'data-view': 'square', 'data-px-per-mm': String(pxPerMm), 'data-clearance-factor': scene.factor },
        section(scene, view, outer),
        textLine(wording.say('part-spindle'), centre.x, centre.y + 4, {
          class: 'label on-steel',
          'text-anchor': 'middle',
        }),
        textLine(wording.say('part-arm'), centre.x, view.y(-0.86 * outer) + 4, {
          class: 'label on-arm',
          'text-anchor': 'middle',
        }),
      ) +
      key.svg +
      notes.svg,
  });
}

function section(scene: BorePlayScene, view: View, outer: number): string {
  const turn = scene.drawnRotationRad ?? 0;
  const bore = turned(boreOutline(scene), turn);
  const ring = Array.from({ length: 120 }, (_, step): Point => {
    const angle = (step / 120) * 2 * Math.PI;
    return [outer * Math.cos(angle), outer * Math.sin(angle)];
  });
  // Ring and bore as one outline with a cut between them, so that hatching fills what lies in between.
  const arm = [...ring, ring[0] ?? [outer, 0], ...[...bore, bore[0] ?? [0, 0]].reverse()];
  const square = squareOutline(scene);
  const hatched = (outline: readonly Point[], lines: typeof HATCHING): string =>
    hatchLines({ outline: outline.map(([x, y]) => [view.x(x), view.y(y)] as const), ...lines });
  const stops = scene.drawnRotationRad === null || turn === 0 ? [] : contacts(scene);
  return [
    element('path', { d: pathData(ring, view) + pathData(bore, view), class: 'arm-ground' }),
    element('path', { d: hatched(arm, HATCHING), class: 'arm-hatch' }),
    element('path', { d: pathData(ring, view), class: 'cut' }),
    element('path', { d: pathData(bore, view), class: 'cut', 'data-part': 'bore' }),
    element('path', { d: pathData(square, view), class: 'steel-ground' }),
    element('path', { d: hatched(square, { ...HATCHING, angleDeg: 45, spacingPx: 8 }), class: 'steel-hatch' }),
    element('path', { d: pathData(square, view), class: 'cut', 'data-part': 'square' }),
    stops.length === 0 ? '' : element('path', { d: pathData(turned(boreOutline(scene), -turn), view), class: 'other' }),
    axes(view, outer, turn),
    ...stops.map(([x, y]) => element('circle', { cx: view.x(x), cy: view.y(y), r: 4, class: 'touch' })),
  ].join('');
}

/** Centre lines of the arm at both stops. */
function axes(view: View, outer: number, turn: number): string {
  return [turn, -turn]
    .slice(0, turn === 0 ? 1 : 2)
    .map((angle, index) => {
      const [x, y] = [-1.12 * outer * Math.sin(angle), 1.12 * outer * Math.cos(angle)];
      return line(view.x(0), view.y(0), view.x(x), view.y(y), { class: 'axis', 'data-mark': `arm-${index}` });
    })
    .join('');
}

/** The square with its corners turned round. */
function squareOutline({ halfWidthMm, flatWidthMm, cornerRadiusMm }: BorePlayScene): Point[] {
  const start = Math.atan2(flatWidthMm / 2, halfWidthMm);
  const sweep = Math.PI / 2 - 2 * start;
  return [0, 1, 2, 3].flatMap((quarter) =>
    Array.from({ length: 9 }, (_, step): Point => {
      const angle = quarter * (Math.PI / 2) + start + (step / 8) * sweep;
      return [cornerRadiusMm * Math.cos(angle), cornerRadiusMm * Math.sin(angle)];
    }),
  );
}

function boreOutline({ halfWidthMm, drawnClearanceMm }: BorePlayScene): Point[] {
  const half = halfWidthMm + drawnClearanceMm;
  return [
    [half, half],
    [-half, half],
    [-half, -half],
    [half, -half],
  ];
}

const turned = (points: readonly Point[], angle: number): Point[] =>
  points.map(([x, y]) => [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)]);

/** The edges of the flats that the bore bears on at the stop drawn in full. */
function contacts({ halfWidthMm, flatWidthMm }: BorePlayScene): Point[] {
  const edge: Point = [halfWidthMm, flatWidthMm / 2];
  return [0, 1, 2, 3].flatMap((quarter) => turned([edge], quarter * (Math.PI / 2)));
}

function keyEntries(
  scene: BorePlayScene,
  say: (key: 'key-stop-one' | 'key-stop-other' | 'key-contact') => string,
): KeyEntry[] {
  if (scene.drawnRotationRad === null || scene.drawnRotationRad === 0) return [];
  const sign = (className: string) => (x: number, y: number) => line(x, y, x + KEY_SIGN_WIDTH, y, { class: className });
  return [
    { sign: sign('cut'), text: say('key-stop-one') },
    { sign: sign('other'), text: say('key-stop-other') },
    {
      sign: (x, y) => element('circle', { cx: x + KEY_SIGN_WIDTH / 2, cy: y, r: 4, class: 'touch' }),
      text: say('key-contact'),
    },
  ];
}
