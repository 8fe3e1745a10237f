// A reliability plot as inline SVG. Lines and words take the colour of the page's text, so that it reads on light and on
// dark; series differ by shape and dash as well as by colour, and both colours keep 3:1 on white and on near-black.
import type { ReliabilityRow } from '../tests/properties/interfaces/scores.ts';

/** One series of the plot. */
interface Series {
  label: string;
  rows: readonly ReliabilityRow[];
}

const SIZE = 300;
const LEFT = 56;
const TOP = 16;
const STYLES = [
  { colour: '#2f7fbf', dash: '', offset: -2 },
  { colour: '#d55e00', dash: '5 3', offset: 2 },
] as const;

const xOf = (share: number): number => LEFT + SIZE * share;
const yOf = (share: number): number => TOP + SIZE * (1 - share);
const at = (value: number): string => value.toFixed(1);

/** Bounds that hold a share in 95 of 100 cases, from so many right ones: Wilson's interval. */
function wilson({ right, count }: ReliabilityRow): [number, number] {
  const z = 1.96;
  const middle = (right + z ** 2 / (2 * count)) / (1 + z ** 2 / count);
  const half = (z * Math.sqrt((right * (1 - right)) / count + z ** 2 / (4 * count ** 2))) / (1 + z ** 2 / count);
  return [middle - half, middle + half];
}

function marker(index: number, x: number, y: number, colour: string): string {
  return index === 0
    ? `<circle cx="${at(x)}" cy="${at(y)}" r="4.5" fill="${colour}"/>`
    : `<rect x="${at(x - 4)}" y="${at(y - 4)}" width="8" height="8" fill="${colour}"/>`;
}

function drawn({ rows }: Series, index: number): string {
  const { colour, dash, offset } = STYLES[index % STYLES.length] ?? STYLES[0];
  const points = rows.map((row) => ({ row, x: xOf(row.claimed) + offset, y: yOf(row.right) }));
  const line = points.map(({ x, y }) => `${at(x)},${at(y)}`).join(' ');
  const bars = points.map(({ row, x }) => {
    const [low, high] = wilson(row);
    return `<path d="M${at(x)} ${at(yOf(low))}V${at(yOf(high))}" stroke="${colour}" stroke-width="1.5"/>`;
  });
  return [
    `<polyline points="${line}" fill="none" stroke="${colour}" stroke-width="1.5"${dash === '' ? '' : ` stroke-dasharray="${dash}"`}/>`,
    ...bars,
    ...points.map(({ x, y }) => marker(index, x, y, colour)),
  ].join('');
}

/** The plot: what was claimed across, what was right upward; on the diagonal both agree. */
export function reliabilityPlot(series: readonly Series[]): string {
  const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1].map(
    (share) =>
      `<path d="M${at(xOf(share))} ${at(yOf(0))}v5M${LEFT} ${at(yOf(share))}h-5" stroke="currentColor"/>` +
      `<text x="${at(xOf(share))}" y="${at(yOf(0) + 18)}" text-anchor="middle">${share}</text>` +
      `<text x="${LEFT - 9}" y="${at(yOf(share) + 4)}" text-anchor="end">${share}</text>`,
  );
  const legend = series.map(({ label }, index) => {
    const { colour } = STYLES[index % STYLES.length] ?? STYLES[0];
    const y = TOP + 18 + 20 * index;
    return `${marker(index, LEFT + 18, y, colour)}<text x="${LEFT + 30}" y="${y + 4}">${label}</text>`;
  });
  const width = LEFT + SIZE + 20;
  const height = TOP + SIZE + 48;
  const words = series
    .map(({ label, rows }) => {
      const told = rows.map(
        ({ claimed, right }) => `${Math.round(100 * claimed)} claimed, ${Math.round(100 * right)} right`,
      );
      return `${label}, in per cent: ${told.join('; ')}.`;
    })
    .join(' ');
  return [
    `<svg role="img" aria-labelledby="reliability-title reliability-text" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" style="max-width:100%;height:auto" font-family="inherit" font-size="12" fill="currentColor" xmlns="http://www.w3.org/2000/svg">`,
    '<title id="reliability-title">Reliability of the likeliest candidate</title>',
    `<desc id="reliability-text">${words} On the diagonal claimed and right agree; bars hold the true share in 95 of 100 cases.</desc>`,
    `<rect x="${LEFT}" y="${TOP}" width="${SIZE}" height="${SIZE}" fill="none" stroke="currentColor"/>`,
    `<path d="M${at(xOf(0))} ${at(yOf(0))}L${at(xOf(1))} ${at(yOf(1))}" stroke="currentColor" stroke-dasharray="2 4"/>`,
    ...ticks,
    ...series.map(drawn),
    ...legend,
    `<text x="${at(xOf(0.5))}" y="${height - 8}" text-anchor="middle">probability claimed</text>`,
    `<text transform="translate(14 ${at(yOf(0.5))}) rotate(-90)" text-anchor="middle">share that was right</text>`,
    '</svg>',
  ].join('\n');
}
