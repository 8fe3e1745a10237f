/** A point of the picture, px. */
type PicturePoint = readonly [x: number, y: number];

/** A rectangle of the picture, px. @internal */
export interface Window {
  x: number;
  y: number;
  width: number;
  height: number;
}

/**
 * Even hatching of a closed outline by ISO 128-50, as path data. The lines are worked out rather than left to a pattern
 * fill: printers and converters turn patterns into coarse images, and lines stay lines.
 *
 * Lines lie on one raster for the whole picture, so that the two halves of a part match. @internal
 */
export function hatchLines(input: {
  outline: readonly PicturePoint[];
  angleDeg: number;
  spacingPx: number;
  window: Window | undefined;
}): string {
  const { outline, angleDeg, spacingPx, window } = input;
  const [cos, sin] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
  // In turned coordinates every hatching line is horizontal.
  const turned = outline.map(([x, y]): PicturePoint => [x * cos + y * sin, y * cos - x * sin]);
  const reach = (window === undefined ? outline : corners(window)).map(([x, y]) => y * cos - x * sin);
  const first = Math.ceil(Math.min(...reach) / spacingPx);
  const last = Math.floor(Math.max(...reach) / spacingPx);
  let data = '';
  for (let index = first; index <= last; index++) {
    // Off the raster by a hair: a line through a corner of the outline would count that corner twice.
    const level = index * spacingPx + 1e-7;
    const crossings = crossingsAt(turned, level);
    for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
      const ends = [crossings[pair] ?? 0, crossings[pair + 1] ?? 0].map(
        (u): PicturePoint => [u * cos - level * sin, u * sin + level * cos],
      );
      const [a, b] = ends as [PicturePoint, PicturePoint];
      const cut = window === undefined ? ([a, b] as const) : clipped(a, b, window);
      if (cut !== null) data += `M${cut.map(([x, y]) => `${tenth(x)} ${tenth(y)}`).join('L')}`;
    }
  }
  return data;
}

// Hatching is no measure: tenths of a pixel halve its size and cannot be seen.
const tenth = (value: number): string => String(Math.round(value * 10) / 10 + 0);

const corners = ({ x, y, width, height }: Window): PicturePoint[] => [
  [x, y],
  [x + width, y],
  [x, y + height],
  [x + width, y + height],
];

function crossingsAt(outline: readonly PicturePoint[], level: number): number[] {
  const found: number[] = [];
  let previous = outline[outline.length - 1];
  for (const point of outline) {
    if (previous !== undefined && previous[1] > level !== point[1] > level) {
      found.push(previous[0] + ((level - previous[1]) / (point[1] - previous[1])) * (point[0] - previous[0]));
    }
    previous = point;
  }
  return found.sort((a, b) => a - b);
}

/** The part of a segment inside a window, or `null`. */
function clipped(a: PicturePoint, b: PicturePoint, window: Window): readonly [PicturePoint, PicturePoint] | null {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  let [from, to] = [0, 1];
  for (const [delta, room] of [
    [-dx, a[0] - window.x],
    [dx, window.x + window.width - a[0]],
    [-dy, a[1] - window.y],
    [dy, window.y + window.height - a[1]],
  ] as const) {
    if (delta === 0 && room < 0) return null;
    if (delta < 0) from = Math.max(from, room / delta);
    if (delta > 0) to = Math.min(to, room / delta);
  }
  if (from >= to) return null;
  return [
    [a[0] + from * dx, a[1] + from * dy],
    [a[0] + to * dx, a[1] + to * dy],
  ];
}
