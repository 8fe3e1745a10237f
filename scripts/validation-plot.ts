// Plots of differences over what is allowed, as inline SVG in the colour of the page's text.
import { cellText, numberText } from './page-text.ts';

/** A number to two figures; what has none has to be equal. */
export const short = (value: number | null): string =>
  value === null ? 'equal' : numberText(Number(value.toPrecision(2)));

/** A value of a plot: its difference over what is allowed, null where only equality will do. */
interface Plotted {
  name: string;
  share: number | null;
  met: boolean;
}

/** Where a share of what is allowed stands in a plot. */
const across = (share: number): number => Number((180 + 120 * Math.max(-1.25, Math.min(1.25, share))).toFixed(1));

/** A dot; a triangle that points outwards where the plot ends before it. */
function mark(share: number, y: number): string {
  const x = across(share);
  if (Math.abs(share) <= 1.25) return `<circle cx="${x}" cy="${y}" r="3.5" fill="currentColor" fill-opacity="0.4"/>`;
  return `<path d="M${x} ${y - 4}v8l${share > 0 ? 6 : -6} -4z" fill="currentColor" fill-opacity="0.6"/>`;
}

/** A value that is no number: a square where it has to be, or a cross beside it. */
const wordMark = (met: boolean, y: number): string =>
  met
    ? `<rect x="176" y="${y - 4}" width="8" height="8" fill="currentColor" fill-opacity="0.6"/>`
    : `<path d="M${across(1.25) - 4} ${y - 4}l8 8m0 -8l-8 8" stroke="currentColor" stroke-width="1.5"/>`;

/** Words of a plot, which stand in a line of Markdown. */
const plotText = (text: string): string =>
  cellText(text.length > 54 ? `${text.slice(0, 53)}…` : text).replace(/[*_`[\]\\]/g, (c) => `&#${c.charCodeAt(0)};`);

/** Differences over the band that is allowed: all in one where three numbers can be drawn, else each by itself. */
export function plot(title: string, values: readonly Plotted[]): string {
  const shares = values.flatMap(({ share }) => share ?? []);
  const band = (y: number): string =>
    `<rect x="${across(-1)}" y="${y - 8}" width="240" height="16" fill="currentColor" fill-opacity="0.08"/>` +
    `<path d="M180 ${y - 11}v22" stroke="currentColor"/>`;
  const lines =
    shares.length >= 3
      ? [band(16) + shares.map((share) => mark(share, 16)).join('')]
      : values.map(({ name, share, met }, index) => {
          const y = 34 + 42 * index;
          const words = `<text x="8" y="${y - 16}" fill="currentColor">${plotText(name)}</text>`;
          return words + band(y) + (share === null ? wordMark(met, y) : mark(share, y));
        });
  const foot = shares.length >= 3 ? 40 : 16 + 42 * lines.length;
  const worst =
    shares.length > 0
      ? `the largest is ${short(Math.max(...shares.map(Math.abs)))} of it`
      : `${values.filter(({ met }) => met).length} of ${values.length} are equal`;
  const foots = [
    { share: -1, words: '− allowed' },
    { share: 0, words: shares.length > 0 ? 'source' : 'equal' },
    { share: 1, words: '+ allowed' },
  ]
    .filter(({ share }) => share === 0 || shares.length > 0)
    .map(({ share, words }) => `<text x="${across(share)}" y="${foot}">${words}</text>`);
  const label = `Differences of ${cellText(title)} over what is allowed; ${worst}`;
  return (
    `<svg viewBox="0 0 360 ${foot + 6}" role="img" aria-label="${label.replaceAll('"', '&quot;')}" ` +
    'style="max-width:460px;width:100%" font-size="11" fill="none" stroke="none">' +
    `${lines.join('')}<g fill="currentColor" text-anchor="middle">${foots.join('')}</g></svg>`
  );
}
