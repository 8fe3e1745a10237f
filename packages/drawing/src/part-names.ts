import type { Wording } from './labels.ts';
import { FIXING } from './seat-outlines.ts';
import type { SeatScene } from './seat-scene.ts';
import type { SectionExtent } from './seat-section.ts';
import { element, line } from './svg.ts';
import { textLine, textWidth } from './text-layout.ts';
import type { View } from './view.ts';

/** Names of the parts, on them or led to them from the left margin. @internal */
export function partNames(input: {
  scene: SeatScene;
  wording: Wording;
  view: View;
  x: number;
  rightEdge: number;
  extent: SectionExtent;
}): string {
  const { scene, wording, view, x, rightEdge, extent } = input;
  const { arm, spindle, pressed } = scene;
  const seat = pressed.mouthMm - arm.boltSeatMm;
  const head = seat - FIXING.washerThickness - FIXING.headHeight;
  const led = (key: 'part-bolt' | 'part-washer', atMm: number, radius: number): string => {
    const text = wording.say(key);
    const y = view.y(radius);
    return (
      textLine(text, x, y + 4, { class: 'label' }) +
      line(x + textWidth(text, 12) + 3, y, view.x(atMm), y, { class: 'thin' }) +
      element('circle', { cx: view.x(atMm), cy: y, r: 1.8, class: 'dot' })
    );
  };
  const named = (key: 'part-arm' | 'part-spindle', standIn: boolean): string =>
    standIn ? wording.say('stand-in-mark', { part: wording.say(key) }) : wording.say(key);
  const shoulder = wording.say('part-shoulder');
  const shoulderY = view.y(-spindle.wallRadiusMm) + 18;
  const armMiddle = (Math.max(seat, -1) + pressed.mouthMm) / 2;
  return [
    led('part-bolt', head + 1.5, 0.35 * FIXING.headRadius),
    led('part-washer', seat - FIXING.washerThickness / 2, -(arm.recessRadiusMm - 1.8)),
    textLine(
      named('part-arm', scene.standIn.arm),
      view.x(armMiddle),
      view.y((arm.mouthHalfMm + arm.bossRadiusMm) / 2) + 4,
      {
        class: 'label on-arm',
        'text-anchor': 'middle',
      },
    ),
    textLine(
      named('part-spindle', scene.standIn.spindle),
      view.x(extent.toMm) - 6,
      view.y(-0.5 * spindle.halfAtEndMm) + 4,
      {
        class: 'label on-steel',
        'text-anchor': 'end',
      },
    ),
    spindle.wallMm === null
      ? ''
      : textLine(shoulder, Math.min(view.x(spindle.wallMm) + 6, rightEdge - textWidth(shoulder, 12)), shoulderY, {
          class: 'label on-paper',
        }),
  ].join('');
}
