import { hatchLines, type Window } from './hatch.ts';
import {
  armOutline,
  boltOutline,
  breakLine,
  FIXING,
  shankRadius,
  spindleOutline,
  washerOutline,
} from './seat-outlines.ts';
import type { SeatScene } from './seat-scene.ts';
import { element } from './svg.ts';
import { mirrored, type Point, pathData, type View } from './view.ts';

/** Extent of the section along the axis, mm from the spindle's end. @internal */
export interface SectionExtent {
  /** Outermost face that shows. */
  fromMm: number;
  /** Where the spindle is broken off. */
  toMm: number;
}

/** How far the section reaches: from the recess of the arm by hand to a stub of spindle behind the shoulder. @internal */
export function sectionExtent(scene: SeatScene): SectionExtent {
  const { spindle, arm, hand, pressed } = scene;
  const runOutEnd = spindle.wallMm ?? spindle.flatEndMm + Math.max(1.5, spindle.cornerRadiusMm - spindle.halfAtEndMm);
  const outermostMouth = Math.min(hand.mouthMm, pressed.mouthMm);
  return {
    fromMm: Math.min(outermostMouth - arm.boltSeatMm - FIXING.recessDepth, 0),
    toMm: Math.max(runOutEnd, pressed.mouthMm) + 7,
  };
}

// Adjacent parts by ISO 128-50: opposite slopes, different spacing.
const HATCHING = {
  arm: { angleDeg: -45, spacingPx: 5, ground: 'arm-ground', lines: 'arm-hatch' },
  spindle: { angleDeg: 45, spacingPx: 7, ground: 'steel-ground', lines: 'steel-hatch' },
} as const;

const part = (name: string, className: string, points: readonly Point[], view: View): string =>
  element('path', { d: pathData(points, view), class: className, 'data-part': name });

/** The cut parts in a view: spindle, arm as pressed, washer; and the bolt, which is not cut. @internal */
export function sectionParts(input: {
  scene: SeatScene;
  view: View;
  extent: SectionExtent;
  /** Part of the picture that shows; all of it when left out. */
  window?: Window;
}): string {
  const { scene, view, extent, window } = input;
  const seat = scene.pressed.mouthMm - scene.arm.boltSeatMm;
  const upper = spindleOutline(scene, extent.toMm);
  const end = upper[upper.length - 1]?.[1] ?? 0;
  const stub = breakLine([extent.toMm, end], [extent.toMm, -end]);
  const spindle = [...upper, ...stub.slice(1, -1), ...mirrored(upper).reverse()];
  const tip = Math.max(scene.spindle.flatEndMm * 0.72, seat + 3);
  const arm = armOutline(scene, scene.pressed.mouthMm);
  const washer = washerOutline(scene, seat);
  const both = (name: string, className: string, points: readonly Point[]): string =>
    part(name, className, points, view) + part(name, className, mirrored(points), view);
  const cut = (name: 'arm' | 'spindle', points: readonly Point[]): string => {
    const outline = points.map(([z, radius]) => [view.x(z), view.y(radius)] as const);
    const { ground, lines, ...hatch } = HATCHING[name];
    const d = pathData(points, view);
    return (
      element('path', { d, class: ground }) +
      element('path', { d: hatchLines({ outline, window, ...hatch }), class: lines }) +
      element('path', { d, class: 'cut', 'data-part': name })
    );
  };
  return [
    cut('spindle', spindle),
    threadedHole(scene, tip, view),
    cut('arm', arm),
    cut('arm', mirrored(arm)),
    both('washer', 'washer', washer),
    boltParts(scene, seat, tip, view),
  ].join('');
}

/** Hole in the spindle beyond the tip of the bolt, with the cone of a drill. */
function threadedHole(scene: SeatScene, tip: number, view: View): string {
  const core = shankRadius(scene) - (FIXING.shankRadius - FIXING.coreRadius);
  const end = tip + 2;
  const hole: Point[] = [
    [0, shankRadius(scene)],
    [end, shankRadius(scene)],
    [end, core],
    [end + core * 0.6, 0],
    [end, -core],
    [end, -shankRadius(scene)],
    [0, -shankRadius(scene)],
  ];
  return part('hole', 'hole', hole, view);
}

function boltParts(scene: SeatScene, seat: number, tip: number, view: View): string {
  const core = shankRadius(scene) - (FIXING.shankRadius - FIXING.coreRadius);
  const threads = [core, -core]
    .map((radius) =>
      pathData(
        [
          [Math.max(0, seat), radius],
          [tip - 0.4, radius],
        ],
        view,
        false,
      ),
    )
    .join('');
  return part('bolt', 'bolt', boltOutline(scene, seat, tip), view) + element('path', { d: threads, class: 'thin' });
}

/** Outline of the arm in its place by hand, upper and lower half. @internal */
export function handOutline(scene: SeatScene, view: View): string {
  const outline = armOutline(scene, scene.hand.mouthMm);
  const d = pathData(outline, view) + pathData(mirrored(outline), view);
  return element('path', { d, class: 'hand-outline', 'data-part': 'arm-by-hand' });
}
