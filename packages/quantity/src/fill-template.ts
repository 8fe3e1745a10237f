/** Replaces `{name}` and `{name:decimals}` in a template; unknown names stay visible. @internal */
export function fillTemplate(template: string, values: Readonly<Record<string, number | string>>): string {
  return template.replace(/\{(\w+)(?::(\d))?\}/g, (whole, name: string, decimals?: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined) return whole;
    return typeof value === 'number' ? fixed(value, decimals === undefined ? 2 : Number(decimals)) : value;
  });
}

// Decimal shift before rounding, since 1.25.toFixed(1) already depends on the binary neighbour; -0.00 reads as 0.00.
function fixed(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  const shifted = Math.round(Math.abs(value) * scale * (1 + Number.EPSILON)) / scale;
  return (value < 0 && shifted !== 0 ? -shifted : shifted).toFixed(decimals);
}
