// Values that a JSON Schema describes: where breaking them begins.
type Schema = Record<string, unknown>;

const asSchema = (value: unknown): Schema => (typeof value === 'object' && value !== null ? (value as Schema) : {});

/** A value of the form that a schema asks for; optional members come and go, references are followed to a depth of 8. */
export function sampleOf(schema: unknown, random: () => number, root: unknown = schema, depth = 0): unknown {
  const own = asSchema(schema);
  if (depth > 8) return null;
  const again = (inner: unknown): unknown => sampleOf(inner, random, root, depth + 1);
  if (typeof own.$ref === 'string') return again(follow(root, own.$ref));
  if ('const' in own) return own.const;
  const choices = own.enum ?? own.anyOf ?? own.oneOf;
  if (Array.isArray(choices)) {
    const choice: unknown = choices[Math.floor(random() * choices.length)];
    return own.enum === undefined ? again(choice) : choice;
  }
  if (Array.isArray(own.allOf)) return Object.assign({}, ...own.allOf.map(again));
  switch (Array.isArray(own.type) ? own.type[0] : own.type) {
    case 'object': {
      const required = Array.isArray(own.required) ? own.required : [];
      const members = Object.entries(asSchema(own.properties)).filter(
        ([key]) => required.includes(key) || random() < 0.5,
      );
      return Object.fromEntries(members.map(([key, inner]) => [key, again(inner)]));
    }
    case 'array': {
      if (Array.isArray(own.prefixItems)) return own.prefixItems.map(again);
      const count = Math.max(Number(own.minItems ?? 0), Math.floor(random() * 3));
      return Array.from({ length: count }, () => again(own.items));
    }
    case 'string':
      return random() < 0.5 ? 'a text' : 'square-taper-jis';
    case 'integer':
    case 'number': {
      const lower = Number(own.minimum ?? own.exclusiveMinimum ?? -10);
      const upper = Number(own.maximum ?? own.exclusiveMaximum ?? lower + 100);
      const value = lower + random() * (Math.min(upper, lower + 1000) - lower);
      return own.type === 'integer' ? Math.ceil(value) : value;
    }
    case 'boolean':
      return random() < 0.5;
    default:
      return null;
  }
}

/** The part of a schema that a reference such as `#/$defs/limits` names. */
function follow(root: unknown, reference: string): unknown {
  let at: unknown = root;
  for (const key of reference.replace(/^#\/?/, '').split('/')) if (key !== '') at = asSchema(at)[key];
  return at;
}
