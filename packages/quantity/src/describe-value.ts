/** Renders what came in so that an error can quote it: one short line, safe for JSON, never throwing. @internal */
export function describeValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return quoted(value);
  if (typeof value !== 'object') return `a ${typeof value}`;
  try {
    if (Array.isArray(value)) return `a list of ${value.length}`;
    const keys = Object.keys(value);
    const named = keys.slice(0, 6).map((key) => (/^\w{1,40}$/.test(key) ? key : quoted(key)));
    if (keys.length > named.length) named.push('...');
    return keys.length === 0 ? 'an empty object' : `an object with ${named.join(', ')}`;
  } catch {
    // A proxy may refuse even to be looked at; the error that quotes it must still come out.
    return 'an object that cannot be read';
  }
}

const quoted = (text: string): string => JSON.stringify(text.length > 60 ? `${text.slice(0, 57)}...` : text);
