import { element, escapeXml } from './svg.ts';
import { styleSheet } from './theme.ts';

/** Wraps a picture into a self-contained SVG document with its title, description and style. @internal */
export function svgDocument(input: {
  id: string;
  kind: string;
  language: string;
  title: string;
  description: string;
  widthPx: number;
  heightPx: number;
  rules: Readonly<Record<string, string>>;
  body: string;
}): string {
  const { id, widthPx, heightPx } = input;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      id,
      role: 'img',
      lang: input.language,
      'aria-labelledby': `${id}-title`,
      'aria-describedby': `${id}-desc`,
      'data-picture': input.kind,
      viewBox: `0 0 ${widthPx} ${heightPx}`,
      width: widthPx,
      height: heightPx,
    },
    element('title', { id: `${id}-title` }, escapeXml(input.title)),
    element('desc', { id: `${id}-desc` }, escapeXml(input.description)),
    // Written by this package alone, never from input: nothing to escape, and ">" has to stay as it is for HTML parsers.
    element('style', {}, styleSheet(id, input.rules)),
    element('rect', { width: widthPx, height: heightPx, rx: 6, class: 'sheet' }),
    input.body,
  );
}
