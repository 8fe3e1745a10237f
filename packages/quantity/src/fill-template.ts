/** Replaces `{name}` and `{name:decimals}` in a template; unknown names stay visible. @internal */
export function fillTemplate(template: string, values: Readonly<Record<string, number | string>>): string {
  return template.replace(/\{(\w+)(?::(\d))?\}/g, (whole, name: string, decimals?: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined) return whole;
    return typeof value === 'number' ? fixed(value, decimals === undefined ? 2 : Number(decimals)) : value;
  });
}

// Shifted before rounding and nudged by one unit in the last place, so that 1.005 with two decimals reads 1.01 as its
// digits promise, although the double is a shade below; from 2^50 up the nudge would reach the digits themselves.
function fixed(value: number, decimals: number): string {
  const scaled = Math.abs(value) * 10 ** decimals;
  const rounded = scaled < 2 ** 50 ? Math.round(scaled * (1 + Number.EPSILON)) / 10 ** decimals : Math.abs(value);
  return `${value < 0 && rounded !== 0 ? '-' : ''}${rounded.toFixed(decimals)}`;
}
