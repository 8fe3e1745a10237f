import { type Attributes, element, escapeXml } from './svg.ts';

/** Family for all text: what the reader's system has, nothing fetched. @internal */
export const FONT_STACK = "system-ui,-apple-system,'Segoe UI',Roboto,'Noto Sans','Liberation Sans',Arial,sans-serif";

// Advance widths in em, rounded up to the widest of the common sans-serif faces: a picture without a font engine has to
// plan for that one, or labels would run into each other on somebody else's machine.
const NARROW = /[ijl.,:;'|! \u00a0]/;
const SLIM = /[ft()[\]\-/\\Ir]/;
const WIDE = /[mwMW%@]/;
const CAPITAL = /[A-Z0-9\u2212+=<>&#~^$]/;

/** Width that a text may take at a font size, in px; bold faces run a good tenth wider. @internal */
export function textWidth(text: string, fontSize: number, bold = false): number {
  let em = 0;
  for (const character of text) {
    if (NARROW.test(character)) em += 0.38;
    else if (SLIM.test(character)) em += 0.42;
    else if (WIDE.test(character)) em += 1;
    else if (CAPITAL.test(character)) em += 0.74;
    else em += (character.codePointAt(0) ?? 0) < 0x2000 ? 0.63 : 1;
  }
  return em * fontSize * (bold ? 1.11 : 1);
}

/** Breaks a text into lines that fit a width; a word longer than the line is cut, a no-break space holds. @internal */
export function wrapText(text: string, fontSize: number, widthPx: number, bold = false): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(/[ \t\r\n]+/).filter((part) => part !== '')) {
    const joined = current === '' ? word : `${current} ${word}`;
    if (textWidth(joined, fontSize, bold) <= widthPx) {
      current = joined;
      continue;
    }
    if (current !== '') lines.push(current);
    current = '';
    for (const character of word) {
      if (current !== '' && textWidth(current + character, fontSize, bold) > widthPx) {
        lines.push(current);
        current = '';
      }
      current += character;
    }
  }
  if (current !== '') lines.push(current);
  return lines;
}

/** One line of text at a baseline. @internal */
export const textLine = (text: string, x: number, y: number, attributes: Attributes): string =>
  element('text', { x, y, ...attributes }, escapeXml(text));

/** A wrapped text from a first baseline on; says where the next baseline would be. @internal */
export function textBlock(input: {
  text: string;
  x: number;
  y: number;
  widthPx: number;
  fontSize: number;
  className: string;
}): { svg: string; nextY: number } {
  const { text, x, y, widthPx, fontSize, className } = input;
  const leading = Math.round(fontSize * 1.3);
  const lines = wrapText(text, fontSize, widthPx, /^(strong|title)\b/.test(className));
  return {
    svg: lines.map((row, index) => textLine(row, x, y + index * leading, { class: className })).join(''),
    nextY: y + lines.length * leading,
  };
}
