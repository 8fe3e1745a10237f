// A figure to scale of what a record describes, as far as its numbers reach: outlines only, in the reader's colours.
import type { NumberRow } from '@spindlewright/interfaces/data';

const SIZE = 260;
const STYLE =
  'fill="none" stroke="currentColor" stroke-width="1.6" stroke-linejoin="round" vector-effect="non-scaling-stroke"';
const THIN = 'fill="none" stroke="currentColor" stroke-width="0.8" stroke-dasharray="9 3 2 3"';

interface Figure {
  svg: string;
  caption: string;
}

const number = (rows: readonly NumberRow[], path: RegExp): number | undefined =>
  rows.find((row) => path.test(row.path) && !row.path.includes('alternatives'))?.value;

/** Draws the record by its numbers; undefined when they do not describe a shape. */
export function recordFigure(rows: readonly NumberRow[], title: string): Figure | undefined {
  const square = number(rows, /acrossFlatsAtEndMm$/);
  if (square !== undefined) return squareFigure(square, title);
  const splines = number(rows, /splineCount$/);
  const major = number(rows, /majorDiameterMm$/) ?? number(rows, /SideDiameterMm$|spindleDiameterMm$/);
  const minor = number(rows, /geometry\.minorDiameterMm$/);
  if (splines !== undefined && major !== undefined) return splineFigure(splines, major, minor, title);
  const circle = number(rows, /boltCircleDiameterMm$/);
  const arms = number(rows, /armCount$/);
  if (circle !== undefined && arms !== undefined) return boltCircleFigure(circle, arms, title);
  const bore = number(rows, /shellBoreMm$|boreDiameterMm$|insideDiameterMm$/);
  const diameter = number(rows, /nominalDiameterMm$/);
  const pitch = number(rows, /pitchMm$/);
  if (major !== undefined) return roundFigure(major, title, 'Spindle');
  if (diameter !== undefined && pitch !== undefined) return threadFigure(diameter, pitch, title);
  return bore === undefined ? undefined : roundFigure(bore, title, 'Bore');
}

function frame(title: string, spanMm: number, draw: (scale: number) => string, label: string): string {
  const scale = (SIZE - 70) / spanMm;
  const half = SIZE / 2;
  const axis = `<path d="M12 ${half}H${SIZE - 12}M${half} 8V${SIZE - 38}" ${THIN}/>`;
  const bar = niceLength(spanMm);
  const width = bar * scale;
  const from = half - width / 2;
  return `<svg viewBox="0 0 ${SIZE} ${SIZE}" role="img" aria-label="${title}: ${label}" class="atlas-figure">${axis}<g transform="translate(${half} ${half - 15})">${draw(scale)}</g><path d="M${from.toFixed(1)} ${SIZE - 22}h${width.toFixed(1)}m0 -4v8m${(-width).toFixed(1)} -8v8" ${STYLE}/><text x="${half}" y="${SIZE - 5}" text-anchor="middle" font-size="12" fill="currentColor">${bar} mm</text></svg>`.replace(
    axis,
    axis.replaceAll(`${half}H`, `${half - 15}H`),
  );
}

const niceLength = (spanMm: number): number => [1, 2, 5, 10, 20, 50, 100].findLast((mm) => mm <= spanMm / 2) ?? 1;
const n = (value: number): string => value.toFixed(2);

function squareFigure(acrossFlatsMm: number, title: string): Figure {
  // The corners of the square are turned off; how far is not published, so that they stay sharp here.
  const label = `square of ${acrossFlatsMm} mm across flats at the spindle end`;
  const svg = frame(
    title,
    acrossFlatsMm * 1.4,
    (scale) => {
      const half = (acrossFlatsMm / 2) * scale;
      return `<path d="M${n(-half)} ${n(-half)}h${n(2 * half)}v${n(2 * half)}h${n(-2 * half)}z" ${STYLE}/>`;
    },
    label,
  );
  return { svg, caption: `End view to scale: ${label}. Corners drawn sharp.` };
}

function splineFigure(count: number, majorMm: number, minorMm: number | undefined, title: string): Figure {
  const inner = minorMm ?? majorMm * 0.9;
  const label = `${count} splines on ${majorMm} mm`;
  const svg = frame(
    title,
    majorMm * 1.1,
    (scale) => {
      const points = Array.from({ length: count }, (_, k) =>
        [-0.36, -0.2, 0.2, 0.36].map((at, index) => {
          const angle = ((k + at) / count) * 2 * Math.PI;
          const radius = ((index === 0 || index === 3 ? inner : majorMm) / 2) * scale;
          return `${n(radius * Math.sin(angle))} ${n(-radius * Math.cos(angle))}`;
        }),
      ).flat();
      return `<path d="M${points.join('L')}Z" ${STYLE}/>`;
    },
    label,
  );
  const depth =
    minorMm === undefined
      ? 'Depth and form of the splines are not published: drawn as a sketch.'
      : 'Form of the splines drawn as a sketch.';
  return { svg, caption: `End view, diameters to scale: ${label}. ${depth}` };
}

function boltCircleFigure(diameterMm: number, count: number, title: string): Figure {
  const label = `${count} bolts on a circle of ${diameterMm} mm`;
  const svg = frame(
    title,
    diameterMm * 1.2,
    (scale) => {
      const radius = (diameterMm / 2) * scale;
      const holes = Array.from({ length: count }, (_, k) => {
        const angle = (k / count) * 2 * Math.PI;
        return `<circle cx="${n(radius * Math.sin(angle))}" cy="${n(-radius * Math.cos(angle))}" r="${n(4 * scale)}" ${STYLE}/>`;
      });
      return `<circle r="${n(radius)}" ${THIN}/>${holes.join('')}`;
    },
    label,
  );
  return { svg, caption: `To scale: ${label}; even spacing and holes of 8 mm are drawn as a sketch.` };
}

function roundFigure(diameterMm: number, title: string, what: string): Figure {
  const label = `${what.toLowerCase()} of ${diameterMm} mm`;
  const svg = frame(title, diameterMm * 1.1, (scale) => `<circle r="${n((diameterMm / 2) * scale)}" ${STYLE}/>`, label);
  return { svg, caption: `End view to scale: ${label}.` };
}

/** Crest to root of the basic ISO 68-1 profile: 5/8 of the height of the sharp triangle. */
function threadFigure(diameterMm: number, pitchMm: number, title: string): Figure {
  const label = `thread of ${diameterMm} mm by ${Number(pitchMm.toFixed(4))} mm pitch`;
  const turns = Math.min(12, Math.max(4, Math.round((diameterMm * 0.9) / pitchMm)));
  const depthMm = (5 / 8) * (Math.sqrt(3) / 2) * pitchMm;
  const svg = frame(
    title,
    Math.max(diameterMm, turns * pitchMm) * 1.05,
    (scale) => {
      const side = (sign: number): string => {
        const crest = sign * (diameterMm / 2) * scale;
        const root = sign * (diameterMm / 2 - depthMm) * scale;
        const start = (-turns / 2) * pitchMm * scale;
        const p = pitchMm * scale;
        const steps = Array.from(
          { length: turns },
          (_, k) =>
            `${n(start + k * p + p / 16)} ${n(crest)}L${n(start + k * p + (3 / 8) * p)} ${n(root)}L${n(start + k * p + (5 / 8) * p)} ${n(root)}L${n(start + (k + 1) * p - p / 16)} ${n(crest)}`,
        );
        return `<path d="M${steps.join('L')}" ${STYLE}/>`;
      };
      return side(-1) + side(1);
    },
    label,
  );
  return { svg, caption: `Axial section to scale: ${label}, basic profile of ISO 68-1.` };
}
