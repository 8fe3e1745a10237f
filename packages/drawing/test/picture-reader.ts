import { allElements, readXml, type XmlElement } from './read-xml.ts';

/** The parts of a picture that tests measure. */
interface ReadPicture {
  root: XmlElement;
  elements: XmlElement[];
  /** Pixels a millimetre of a view. */
  scale: (view: string) => number;
  /** Length of a marked line, px. */
  length: (mark: string) => number;
  /** Whether a marked line is there. */
  has: (mark: string) => boolean;
  /** Outlines of a part in a view, as points in px. */
  outlines: (view: string, part: string) => [number, number][][];
  /** All text that shows, in document order. */
  words: string;
}

/** Reads a picture back from its text alone. */
export function readPicture(svg: string): ReadPicture {
  const root = readXml(svg);
  const elements = allElements(root);
  const find = (key: string, value: string): XmlElement => {
    const found = elements.find((element) => element.attributes[key] === value);
    if (found === undefined) throw new Error(`no element with ${key} ${value}`);
    return found;
  };
  const number = (element: XmlElement, key: string): number => Number(element.attributes[key] ?? 'NaN');
  return {
    root,
    elements,
    scale: (view) => number(find('data-view', view), 'data-px-per-mm'),
    length: (mark) => {
      const line = find('data-mark', mark);
      return Math.hypot(number(line, 'x2') - number(line, 'x1'), number(line, 'y2') - number(line, 'y1'));
    },
    has: (mark) => elements.some((element) => element.attributes['data-mark'] === mark),
    outlines: (view, part) =>
      allElements(find('data-view', view))
        .filter((element) => element.attributes['data-part'] === part)
        .map((element) =>
          [...(element.attributes.d ?? '').matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [
            Number(x),
            Number(y),
          ]),
        ),
    words: elements
      .filter((element) => element.name === 'text')
      .map((element) => element.text)
      .join('\n'),
  };
}
