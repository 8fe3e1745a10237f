import { textLine, textWidth } from './text-layout.ts';

/** One entry of a key: how wide its sign is, how to draw it and what it means. @internal */
export interface KeyEntry {
  /** Draws the sign in a box of `KEY_SIGN_WIDTH` by 12 px whose left middle is given. */
  sign: (x: number, middleY: number) => string;
  /** Meaning. */
  text: string;
}

/** Width of the sign of a key entry, px. @internal */
export const KEY_SIGN_WIDTH = 26;

/** Lays the entries of a key out in rows. @internal */
export function legend(input: { entries: readonly KeyEntry[]; x: number; y: number; widthPx: number }): {
  svg: string;
  nextY: number;
} {
  const { entries, widthPx } = input;
  let x = input.x;
  let y = input.y;
  let svg = '';
  for (const entry of entries) {
    const width = KEY_SIGN_WIDTH + 6 + textWidth(entry.text, 11);
    if (x > input.x && x + width > input.x + widthPx) {
      x = input.x;
      y += 18;
    }
    svg += entry.sign(x, y - 4) + textLine(entry.text, x + KEY_SIGN_WIDTH + 6, y, { class: 'small' });
    x += width + 14;
  }
  return { svg, nextY: y + 16 };
}
