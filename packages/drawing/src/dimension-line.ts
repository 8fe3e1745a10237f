import { element, line, px } from './svg.ts';

const ARROW_LENGTH = 7;
const ARROW_HALF_WIDTH = 2.2;

/** Filled arrowhead with its tip at a point, `direction` 1 to the right, -1 to the left. @internal */
export function arrowHead(x: number, y: number, direction: 1 | -1, className: string): string {
  const back = px(x - direction * ARROW_LENGTH);
  const d = `M${px(x)} ${px(y)}L${back} ${px(y - ARROW_HALF_WIDTH)}L${back} ${px(y + ARROW_HALF_WIDTH)}Z`;
  return element('path', { d, class: className });
}

/**
 * Horizontal dimension line by ISO 129-1: arrowheads inside where there is room, else outside and pointing in.
 * The line itself carries `data-mark`, so that its length can be measured. @internal
 */
export function dimensionLine(input: {
  x1: number;
  x2: number;
  y: number;
  lineClass: string;
  headClass: string;
  mark: string;
}): string {
  const { y, lineClass, headClass, mark } = input;
  const [x1, x2] = input.x1 <= input.x2 ? [input.x1, input.x2] : [input.x2, input.x1];
  const body = line(x1, y, x2, y, { class: lineClass, 'data-mark': mark });
  if (x2 - x1 >= 2.4 * ARROW_LENGTH) return body + arrowHead(x1, y, -1, headClass) + arrowHead(x2, y, 1, headClass);
  const tail = ARROW_LENGTH + 5;
  return (
    body +
    line(x1 - tail, y, x1, y, { class: lineClass }) +
    line(x2, y, x2 + tail, y, { class: lineClass }) +
    arrowHead(x1, y, 1, headClass) +
    arrowHead(x2, y, -1, headClass)
  );
}
