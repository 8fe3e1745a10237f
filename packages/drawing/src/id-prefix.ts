import { DomainError } from '@spindlewright/quantity';

/**
 * The prefix of all ids in a picture: the one asked for, or one that follows from the content, so that the same input
 * always gives the same text and different pictures can share a page. @internal
 */
export function idPrefixOf(input: { where: string; kind: string; picture: { idPrefix?: string } }): string {
  const { where, kind, picture } = input;
  if (picture.idPrefix === undefined) return `${kind}-${fnv1a(JSON.stringify(picture))}`;
  if (/^[A-Za-z][\w-]{0,63}$/.test(picture.idPrefix)) return picture.idPrefix;
  throw new DomainError(where, [
    {
      path: 'idPrefix',
      received: JSON.stringify(picture.idPrefix.slice(0, 60)),
      allowed: 'a letter, then at most 63 letters, digits, "-" or "_"',
    },
  ]);
}

// FNV-1a, 32 bit: short, well spread, and the same on every platform; nothing here needs secrecy.
function fnv1a(text: string): string {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index++) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return (hash >>> 0).toString(16).padStart(8, '0');
}
