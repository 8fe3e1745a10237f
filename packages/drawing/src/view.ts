import { px } from './svg.ts';

/** A point of a section: distance along the axis from the spindle's end, and from the axis, in mm. @internal */
export type Point = readonly [zMm: number, radiusMm: number];

/** How a section in mm lies on the picture: one scale for both directions, so angles stay true. @internal */
export interface View {
  /** Pixels a millimetre. */
  pxPerMm: number;
  /** Horizontal place of a distance along the axis. */
  x: (zMm: number) => number;
  /** Vertical place of a distance from the axis; outward is up. */
  y: (radiusMm: number) => number;
}

/** A view that puts the point `at` of the section on the point `x`, `y` of the picture. @internal */
export function createView(input: { pxPerMm: number; at: Point; x: number; y: number }): View {
  const { pxPerMm, at, x, y } = input;
  return {
    pxPerMm,
    x: (zMm) => x + (zMm - at[0]) * pxPerMm,
    y: (radiusMm) => y - (radiusMm - at[1]) * pxPerMm,
  };
}

/** Path data of a polyline in a view. @internal */
export function pathData(points: readonly Point[], view: View, closed = true): string {
  const written = points.map(([z, radius]) => `${px(view.x(z))} ${px(view.y(radius))}`);
  return `M${written.join('L')}${closed ? 'Z' : ''}`;
}

/** The same outline on the other side of the axis. @internal */
export const mirrored = (points: readonly Point[]): Point[] => points.map(([z, radius]) => [z, -radius]);
