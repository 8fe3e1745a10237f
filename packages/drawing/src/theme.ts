import { FONT_STACK } from './text-layout.ts';

// Light and dark of each role. Blue and orange stay apart in every common form of colour blindness; no meaning hangs on
// colour alone (dash, hatch and words carry it too).
const PALETTE = {
  paper: ['#fdfdfb', '#14191d'],
  ink: ['#1a2227', '#e9edee'],
  soft: ['#4a5861', '#aab6bd'],
  rule: ['#b9c2c7', '#46535b'],
  arm: ['#f7ecd9', '#2f2719'],
  'arm-hatch': ['#b08a4a', '#a98648'],
  steel: ['#dfeaf2', '#1b2c38'],
  'steel-hatch': ['#6b93ad', '#55829d'],
  bolt: ['#c6d0d6', '#4a5963'],
  hand: ['#a4470b', '#ffa664'],
  pressed: ['#1d5ca3', '#7db9ff'],
  contact: ['#a8104f', '#ff8db6'],
  good: ['#176541', '#7cd5a5'],
  caution: ['#775300', '#efc06a'],
} as const;

/** A role in the palette. */
type Tone = keyof typeof PALETTE;

const variables = (value: (light: string, dark: string) => string): string =>
  Object.entries(PALETTE)
    .map(([name, [light, dark]]) => `--${name}:${value(light, dark)}`)
    .join(';');

// The plain colour first: a converter that does not know custom properties keeps it and shows the light picture.
const paint = (property: 'fill' | 'stroke', tone: Tone): string =>
  `${property}:${PALETTE[tone][0]};${property}:var(--${tone})`;

const fill = (tone: Tone): string => `${paint('fill', tone)};stroke:none`;
const stroke = (tone: Tone, width: number, dash = ''): string =>
  `fill:none;${paint('stroke', tone)};stroke-width:${width}${dash === '' ? '' : `;stroke-dasharray:${dash}`}`;

/** Rules that every picture shares: lines by ISO 128 (wide outlines, narrow hatching, dash-dot axes), text sizes. */
const SHARED: Readonly<Record<string, string>> = {
  '.sheet': fill('paper'),
  text: `font-family:${FONT_STACK};${fill('ink')}`,
  '.title': 'font-size:15px;font-weight:650',
  '.strong': 'font-size:12px;font-weight:650',
  '.label': 'font-size:12px',
  '.small': `font-size:11px;${paint('fill', 'soft')}`,
  '.outline': `${stroke('ink', 1.5)};stroke-linejoin:round`,
  '.thin': stroke('ink', 0.7),
  '.rule': stroke('rule', 1),
  '.axis': stroke('ink', 0.8, '14 3 2 3'),
};

/**
 * The style of one picture, scoped to its id so that it touches nothing else on the page.
 *
 * Colours follow the colour scheme in force where the picture stands: a page that sets `color-scheme` decides, a picture
 * on its own follows the reader's setting, paper is always light. @internal
 */
export function styleSheet(id: string, rules: Readonly<Record<string, string>>): string {
  const at = `#${id}`;
  const body = Object.entries({ ...SHARED, ...rules })
    .map(([selector, declarations]) => `${selector.split(',').map((one) => `${at} ${one}`)}{${declarations}}`)
    .join('\n');
  const light = variables((value) => value);
  return `
:where(${at}){max-width:100%;height:auto}
${at}{${light}}
${at}:root{color-scheme:light dark}
@media (prefers-color-scheme:dark){${at}{${variables((_, value) => value)}}}
@supports (color:light-dark(#000,#fff)){${at}{${variables((day, night) => `light-dark(${day},${night})`)}}}
@media print{:where(${at}){max-height:95vh}${at}{${light};--paper:#fff}}
${body}
`;
}

/** Declarations for the rules of a picture. @internal */
export const declare = { paint, fill, stroke };
