import { decodeHTML } from 'entities';

/** A text without the entities of HTML. @internal */
export const tidyText = (text: string): string => (text.includes('&') ? decodeHTML(text) : text);

/** A row whose own texts, and those of its lists, are without entities; what is nested deeper stays. @internal */
export function tidyRow(row: unknown): unknown {
  if (typeof row !== 'object' || row === null || Array.isArray(row)) return row;
  const tidy = (value: unknown): unknown =>
    typeof value === 'string'
      ? tidyText(value)
      : Array.isArray(value)
        ? value.map((one) => (typeof one === 'string' ? tidyText(one) : one))
        : value;
  // fromEntries defines own properties, so that a key such as __proto__ stays data.
  return Object.fromEntries(Object.entries(row).map(([key, value]) => [key, tidy(value)]));
}
