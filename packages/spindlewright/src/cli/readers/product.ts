import { tidyText } from './tidy.ts';

type Thing = Readonly<Record<string, unknown>>;

/** Deeper than any feed: a list of groups of variants is three. */
const DEEPEST = 6;

const isThing = (value: unknown): value is Thing =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const listOf = (value: unknown): readonly unknown[] =>
  Array.isArray(value) ? value : value === undefined || value === null ? [] : [value];
const own = (thing: Thing, key: string): unknown => (Object.hasOwn(thing, key) ? thing[key] : undefined);

/**
 * Rows of schema.org data: every product of a graph, every variant of a group with what the group says of all, extra
 * properties as columns of their own with their unit behind the value. What is no such data comes back as it is. @internal
 */
export function productRows(value: unknown, depth = 0): unknown[] {
  if (!isThing(value) || depth > DEEPEST) return [value];
  const graph = own(value, '@graph');
  if (graph !== undefined) return listOf(graph).flatMap((one) => productRows(one, depth + 1));
  const types = listOf(own(value, '@type'));
  const is = (name: string): boolean =>
    types.some((type) => typeof type === 'string' && type.replace(/^.*[/:]/, '') === name);
  if (is('ItemList')) {
    return listOf(own(value, 'itemListElement')).flatMap((element) =>
      productRows(isThing(element) ? (own(element, 'item') ?? element) : element, depth + 1),
    );
  }
  if (is('ProductGroup')) {
    const base = flat(value);
    // A group is no part: only its variants can be ordered.
    return listOf(own(value, 'hasVariant')).flatMap((variant) =>
      productRows(variant, depth + 1).map((row) => (isThing(row) ? { ...base, ...row } : row)),
    );
  }
  return types.length > 0 ? [flat(value)] : [value];
}

function flat(thing: Thing): Thing {
  const columns: [string, unknown][] = [];
  for (const key of Object.keys(thing)) {
    if (key === 'hasVariant' || key === 'additionalProperty' || key === '@context') continue;
    columns.push([key, plain(thing[key])]);
  }
  for (const property of listOf(own(thing, 'additionalProperty'))) {
    if (!isThing(property)) continue;
    const name = own(property, 'name') ?? own(property, 'propertyID');
    if (typeof name === 'string') columns.push([tidyText(name), plain(property)]);
  }
  // fromEntries defines own properties, so that a property called __proto__ stays data.
  return Object.fromEntries(columns);
}

/** A value with its unit as a text; lists keep their form. */
function plain(value: unknown): unknown {
  if (typeof value === 'string') return tidyText(value);
  if (Array.isArray(value)) return value.slice(0, 50).map((one) => (isThing(one) ? plain(one) : one));
  if (!isThing(value)) return value;
  const amount = own(value, 'value') ?? own(value, 'name');
  const unit = own(value, 'unitCode') ?? own(value, 'unitText');
  if (typeof amount !== 'string' && typeof amount !== 'number') return undefined;
  return typeof unit === 'string' && unit !== '' ? `${amount} ${unit}` : plain(amount);
}
