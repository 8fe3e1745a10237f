import { hardLimits, type Measurand } from '@spindlewright/quantity';
import { balloon } from './balloon.ts';
import { dimensionLine } from './dimension-line.ts';
import { contactFace, gapEdges, gapOf } from './gap-edges.ts';
import { decimalsFor, type Wording } from './labels.ts';
import { partNames } from './part-names.ts';
import { FIXING, shankRadius, spindleHalf } from './seat-outlines.ts';
import type { Gap, GapKind, SeatScene } from './seat-scene.ts';
import { handOutline, type SectionExtent, sectionParts } from './seat-section.ts';
import { element, line } from './svg.ts';
import { textLine, textWidth } from './text-layout.ts';
import { createView, type View } from './view.ts';

/** The whole joint in section, with its parts named and the two details located. @internal */
export function mainView(input: {
  scene: SeatScene;
  wording: Wording;
  extent: SectionExtent;
  engaged: Measurand | null | undefined;
  x: number;
  y: number;
  widthPx: number;
  maxHeightPx: number;
}): { svg: string; heightPx: number; pxPerMm: number } {
  const { scene, wording, extent, x, y, widthPx } = input;
  const leftMargin =
    Math.max(...(['part-bolt', 'part-washer'] as const).map((key) => textWidth(wording.say(key), 12))) + 10;
  const radius = Math.max(scene.arm.bossRadiusMm, scene.spindle.wallRadiusMm) + 0.5;
  const lengthMm = extent.toMm - extent.fromMm;
  const pxPerMm = Math.min((widthPx - leftMargin - 8) / lengthMm, (input.maxHeightPx - 60) / (2 * radius), 16);
  const slack = Math.max(0, widthPx - leftMargin - 8 - lengthMm * pxPerMm);
  const middleY = y + radius * pxPerMm + 4;
  const view = createView({ pxPerMm, at: [extent.fromMm, 0], x: x + leftMargin + slack / 2, y: middleY });
  const bottom = middleY + radius * pxPerMm;
  const engaged = engagedDimension({ scene, wording, view, engaged: input.engaged, y: bottom + 20 });
  const barY = bottom + (engaged === '' ? 26 : 48);
  return {
    svg: element(
      'g',
      { 'data-view': 'section', 'data-px-per-mm': String(pxPerMm) },
      sectionParts({ scene, view, extent }),
      bands(scene, view),
      handOutline(scene, view),
      contactFace(scene, 'end', view),
      contactFace(scene, 'shoulder', view),
      line(view.x(extent.fromMm - 1.5), middleY, view.x(extent.toMm + 0.8), middleY, { class: 'axis' }),
      partNames({ scene, wording, view, x, rightEdge: x + widthPx, extent }),
      locators(scene, view),
      engaged,
      scaleBar({ wording, pxPerMm, x, y: barY }),
    ),
    heightPx: barY + 8 - y,
    pxPerMm,
  };
}

/** Limits of the pressed place at bolt seat and mouth. */
function bands(scene: SeatScene, view: View): string {
  if (scene.pressed.shortMm > 0) return '';
  const strip = (gap: Gap | null, fixedMm: number, from: number, to: number): string => {
    if (gap === null || gap.limits.upper <= 0 || gap.limits.lower === gap.limits.upper) return '';
    const left = view.x(fixedMm - gap.limits.upper);
    const width = view.x(fixedMm - Math.max(0, gap.limits.lower)) - left;
    return [from, -to]
      .map((low) => {
        const top = view.y(low + (to - from));
        return element('rect', { x: left, y: top, width, height: (to - from) * view.pxPerMm, class: 'pressed-band' });
      })
      .join('');
  };
  const { arm, pressed } = scene;
  return (
    strip(pressed.end, 0, shankRadius(scene), spindleHalf(scene, 0)) +
    strip(pressed.shoulder, scene.stopPlaneMm, arm.mouthHalfMm, arm.bossRadiusMm)
  );
}

/** Letters that lead to the details, in the free air beside each gap. */
function locators(scene: SeatScene, view: View): string {
  const seat = scene.pressed.mouthMm - scene.arm.boltSeatMm;
  const one = (letter: string, kind: GapKind, atMm: number, radius: number): string => {
    if (gapOf(scene.hand, kind) === null && gapOf(scene.pressed, kind) === null) return '';
    const { fixedMm, focusRadiusMm } = gapEdges(scene, kind);
    const [cx, cy] = [view.x(fixedMm) - 4, view.y(focusRadiusMm)];
    const [bx, by] = [view.x(atMm), view.y(radius)];
    const length = Math.hypot(bx - cx, by - cy);
    const ring = 12;
    const [ux, uy] = length === 0 ? [0, 0] : [(bx - cx) / length, (by - cy) / length];
    return (
      element('circle', { cx, cy, r: ring, class: 'thin' }) +
      line(cx + ux * ring, cy + uy * ring, bx, by, { class: 'thin' }) +
      balloon(letter, bx, by)
    );
  };
  return (
    one('A', 'end', seat - FIXING.washerThickness - FIXING.headHeight / 2, scene.arm.recessRadiusMm - 1.6) +
    one('B', 'shoulder', (scene.spindle.wallMm ?? scene.spindle.flatEndMm) + 4, scene.arm.bossRadiusMm - 2)
  );
}

/** Engaged length under the section, when it is given and the arm stands where it holds. */
function engagedDimension(input: {
  scene: SeatScene;
  wording: Wording;
  view: View;
  engaged: Measurand | null | undefined;
  y: number;
}): string {
  const { scene, wording, view, engaged, y } = input;
  if (engaged === null || engaged === undefined || scene.pressed.shortMm > 0) return '';
  const limits = hardLimits(engaged);
  const { arm, spindle, pressed } = scene;
  const to = Math.min(pressed.mouthMm - arm.chamferMm, spindle.flatEndMm);
  const from = to - limits.nominal;
  if (limits.nominal <= 0 || Math.abs(from - Math.max(spindle.chamferMm, pressed.mouthMm - arm.boreLengthMm)) > 0.1)
    return '';
  const text = wording.say('engaged', {
    value: wording.say('unit-mm', { value: wording.number(limits.nominal, decimalsFor(limits)) }),
  });
  const [x1, x2] = [view.x(from), view.x(to)];
  const extension = (x: number): string => line(x, view.y(-spindleHalf(scene, from)), x, y + 4, { class: 'thin' });
  return (
    extension(x1) +
    extension(x2) +
    dimensionLine({ x1, x2, y, lineClass: 'thin', headClass: 'head', mark: 'engaged-length' }) +
    textLine(text, (x1 + x2) / 2, y + 15, { class: 'label', 'text-anchor': 'middle' })
  );
}

function scaleBar(input: { wording: Wording; pxPerMm: number; x: number; y: number }): string {
  const { wording, pxPerMm, x, y } = input;
  const valueMm = pxPerMm > 2.5 ? 10 : 50;
  const to = x + valueMm * pxPerMm;
  return (
    line(x, y, to, y, { class: 'outline', 'data-mark': 'scale-bar', 'data-mm': valueMm }) +
    line(x, y - 4, x, y + 4, { class: 'outline' }) +
    line(to, y - 4, to, y + 4, { class: 'outline' }) +
    textLine(wording.say('unit-mm', { value: String(valueMm) }), to + 7, y + 4, { class: 'small' })
  );
}
