/** One element of a document. */
export interface XmlElement {
  name: string;
  attributes: Record<string, string>;
  children: XmlElement[];
  text: string;
}

const ENTITIES: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/** Reads a document by the rules of XML 1.0 that a writer can break; throws at the first breach. */
export function readXml(source: string): XmlElement {
  const token = /<(\/?)([A-Za-z][\w:-]*)((?:\s+[A-Za-z_][\w:.-]*="[^"<]*")*)\s*(\/?)>|([^<]+)/y;
  const root: XmlElement = { name: '', attributes: {}, children: [], text: '' };
  const open: XmlElement[] = [root];
  while (token.lastIndex < source.length) {
    const at = token.lastIndex;
    const match = token.exec(source);
    if (match === null) throw new Error(`not well-formed at ${at}: ${source.slice(at, at + 60)}`);
    const [, closing, name = '', attributes = '', empty, text] = match;
    const parent = open[open.length - 1] ?? root;
    if (text !== undefined) {
      parent.text += unescaped(text);
    } else if (closing === '/') {
      if (parent.name !== name || open.length < 2) throw new Error(`</${name}> closes <${parent.name}> at ${at}`);
      open.pop();
    } else {
      const element = { name, attributes: readAttributes(attributes), children: [], text: '' };
      parent.children.push(element);
      if (empty !== '/') open.push(element);
    }
  }
  const only = root.children[0];
  if (open.length !== 1 || root.children.length !== 1 || root.text !== '' || only === undefined) {
    throw new Error('not exactly one closed root element');
  }
  return only;
}

/** All elements, in document order, the root included. */
export const allElements = (element: XmlElement): XmlElement[] => [element, ...element.children.flatMap(allElements)];

function readAttributes(source: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, name = '', value = ''] of source.matchAll(/([\w:.-]+)="([^"]*)"/g)) {
    if (Object.hasOwn(found, name)) throw new Error(`attribute ${name} twice`);
    found[name] = unescaped(value);
  }
  return found;
}

function unescaped(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the control characters are what must not be there.
  if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/u.test(text))
    throw new Error('no XML character');
  return text.replace(/&([^;&]*)(;?)/g, (whole, name: string, end: string) => {
    const character = end === ';' ? ENTITIES[name] : undefined;
    if (character === undefined) throw new Error(`bare or unknown reference ${whole}`);
    return character;
  });
}
