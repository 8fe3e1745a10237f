const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Characters that XML 1.0 does not allow even as references (clause 2.2), lone surrogates included. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: the control characters are what has to be found.
const NOT_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;

/** Escapes text for element content and quoted attributes; what XML cannot hold becomes U+FFFD. @internal */
export const escapeXml = (text: string): string =>
  text.replace(NOT_XML, '\ufffd').replace(/[&<>"']/g, (character) => ENTITIES[character] ?? '');

/** Attributes of an element; `undefined` leaves one out. @internal */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** A length or coordinate as text: thousandths of a pixel, no exponent, no negative zero. @internal */
export const px = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

/** One element with attributes escaped; children are markup already. @internal */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? px(value) : escapeXml(value ?? '')}"`)
    .join('');
  const content = children.join('');
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/** A straight line between two points of the picture. @internal */
export const line = (x1: number, y1: number, x2: number, y2: number, attributes: Attributes): string =>
  element('line', { x1, y1, x2, y2, ...attributes });
