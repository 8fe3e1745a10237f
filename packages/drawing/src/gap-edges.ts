import { spindleHalf } from './seat-outlines.ts';
import type { Gap, GapKind, Place, SeatScene } from './seat-scene.ts';
import { line } from './svg.ts';
import type { Point, View } from './view.ts';

/** Where the two edges of a gap lie: what stands still, and the radius at which the two come near. @internal */
export function gapEdges(scene: SeatScene, kind: GapKind): { fixedMm: number; focusRadiusMm: number } {
  if (kind === 'end') return { fixedMm: 0, focusRadiusMm: spindleHalf(scene, 0) };
  const { flatEndMm } = scene.spindle;
  return scene.stopIsWall
    ? {
        fixedMm: scene.stopPlaneMm,
        focusRadiusMm: Math.max(spindleHalf(scene, flatEndMm), scene.arm.mouthHalfMm) + scene.arm.chamferMm,
      }
    : { fixedMm: flatEndMm, focusRadiusMm: spindleHalf(scene, flatEndMm) + 0.4 };
}

/** The gap of a kind in one place of the arm. @internal */
export const gapOf = (place: Place, kind: GapKind): Gap | null => (kind === 'end' ? place.end : place.shoulder);

/** Heavy line where the stopped arm bears on what stops it, on both sides of the axis. @internal */
export function contactFace(scene: SeatScene, kind: GapKind, view: View): string {
  if (scene.stop !== kind) return '';
  const { spindle, arm } = scene;
  const { fixedMm } = gapEdges(scene, kind);
  const flat = spindleHalf(scene, fixedMm);
  const [from, to] =
    kind === 'end'
      ? [0.65 * spindle.halfAtEndMm, spindleHalf(scene, 0)]
      : scene.stopIsWall
        ? [arm.mouthHalfMm + arm.chamferMm, Math.min(spindle.wallRadiusMm, arm.bossRadiusMm)]
        : [flat - 0.3, flat + 0.3];
  const mark = (side: number): string => {
    const ends: Point[] = [
      [fixedMm, side * from],
      [fixedMm, side * to],
    ];
    const [a, b] = ends.map(([z, radius]) => [view.x(z), view.y(radius)] as const) as [Point, Point];
    return line(a[0], a[1], b[0], b[1], { class: 'contact-line' });
  };
  return mark(1) + mark(-1);
}
