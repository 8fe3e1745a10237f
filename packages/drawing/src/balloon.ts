import { element } from './svg.ts';
import { textLine } from './text-layout.ts';

/** A letter in a ring. @internal */
export const balloon = (letter: string, x: number, y: number): string =>
  element('circle', { cx: x, cy: y, r: 9, class: 'balloon' }) +
  textLine(letter, x, y + 4, { class: 'strong', 'text-anchor': 'middle' });
