/** Renders what came in so that an error can quote it: short, safe for JSON, never throwing. @internal */
export function describeValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}...` : value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object') {
    const keys = Object.keys(value);
    return keys.length === 0 ? 'an empty object' : `an object with ${keys.slice(0, 6).join(', ')}`;
  }
  return `a ${typeof value}`;
}
