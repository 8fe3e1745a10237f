import type { LabelKey, Wording } from './labels.ts';
import { messages } from './messages/en.ts';
import { element, px } from './svg.ts';
import { textBlock } from './text-layout.ts';

type Sign = 'seats' | 'marginal' | 'fails' | 'other';

const SIGNS: Readonly<Record<string, Sign>> = {
  seats: 'seats',
  marginal: 'marginal',
  'bottoms-on-end': 'fails',
  'hits-shoulder': 'fails',
  'too-little-engagement': 'fails',
  'does-not-start': 'fails',
};

/** A verdict in words: a known id is worded, any other text stands as it is. @internal */
export function verdictWords(verdict: string, wording: Wording): string {
  const key = `verdict-${verdict}`;
  return Object.hasOwn(messages, key) ? wording.say(key as LabelKey) : verdict;
}

/** The verdict with a sign whose shape, not only its colour, tells good from bad. @internal */
export function verdictLine(input: { verdict: string; wording: Wording; x: number; y: number; widthPx: number }): {
  svg: string;
  nextY: number;
} {
  const { verdict, wording, x, y, widthPx } = input;
  const sign = Object.hasOwn(SIGNS, verdict) ? (SIGNS[verdict] ?? 'other') : 'other';
  const words = textBlock({
    text: verdictWords(verdict, wording),
    x: x + 24,
    y,
    widthPx: widthPx - 24,
    fontSize: 12,
    className: 'strong',
  });
  const d = SHAPES[sign](x + 8, y - 4);
  return { svg: element('path', { d, class: `sign ${sign}` }) + words.svg, nextY: words.nextY };
}

const at = (x: number, y: number): string => `${px(x)} ${px(y)}`;

const ring = (x: number, y: number): string => `M${at(x - 8, y)}a8 8 0 1 0 16 0a8 8 0 1 0 -16 0Z`;

const SHAPES: Readonly<Record<Sign, (x: number, y: number) => string>> = {
  seats: (x, y) => `${ring(x, y)}M${at(x - 3.6, y + 0.4)}L${at(x - 0.8, y + 3.2)}L${at(x + 4, y - 3)}`,
  marginal: (x, y) =>
    `M${at(x, y - 8)}L${at(x + 8.5, y + 7)}L${at(x - 8.5, y + 7)}ZM${at(x, y - 2.5)}L${at(x, y + 1.5)}M${at(x, y + 4.2)}L${at(x, y + 4.3)}`,
  fails: (x, y) =>
    `M${at(x - 3.4, y - 8)}h6.8l4.6 4.6v6.8l-4.6 4.6h-6.8l-4.6 -4.6v-6.8ZM${at(x - 3, y - 3)}l6 6M${at(x + 3, y - 3)}l-6 6`,
  other: (x, y) => `${ring(x, y)}M${at(x, y - 3.6)}L${at(x, y - 3.5)}M${at(x, y - 0.4)}L${at(x, y + 4)}`,
};
