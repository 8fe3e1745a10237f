import { convert, isDomainError, type Measurand, parseQuantity, type Unit } from '@spindlewright/quantity';
import { Refusal } from './refusal.ts';

const BOTH_WAYS = /\u00b1|\+\/?-/;
const NUMBER = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;

/**
 * Reads `12.65 mm`, `12.65 +- 0.02 mm`, `12.6..12.7 mm` or `1/2 in` in the unit that is wanted; a bound without a unit has
 * that of the other number. Without a wanted unit the numbers are plain. @internal
 */
export function readMeasurand(name: string, text: string, unit?: Unit): Measurand {
  const refuse = (): never => {
    const such = unit === undefined ? '"0.12" or "0.08..0.16"' : EXAMPLES[unit];
    throw new Refusal(
      `${name} ${JSON.stringify(text)}: ${unit === undefined ? 'a number or a range' : 'a number with its unit'}, such as ${such ?? `"1 ${unit}"`}`,
    );
  };
  const read = (part: string, fallback: string): number => {
    const given = part.trim();
    if (unit === undefined) return NUMBER.test(given) ? Number(given.replace(',', '.')) : refuse();
    try {
      const quantity = parseQuantity(NUMBER.test(given) ? `${given} ${fallback}` : given);
      return convert(quantity.value, quantity.unit as typeof unit, unit);
    } catch (error) {
      if (!isDomainError(error)) throw error;
      return refuse();
    }
  };
  /** The unit behind a number, which the other one may go without. */
  const unitOf = (part: string): string => part.replace(/^[\s\d.,/+-]+/, '').trim();
  const [nominalText = '', spreadText, ...more] = text.split(BOTH_WAYS).map((part) => part.trim());
  if (more.length > 0) return refuse();
  if (spreadText !== undefined && nominalText !== '') {
    const nominal = read(nominalText, unitOf(spreadText));
    const half = read(spreadText, unitOf(nominalText));
    return half < 0 ? refuse() : { lower: nominal - half, nominal, upper: nominal + half };
  }
  const [from = '', to, ...others] = text.split('..');
  if (others.length > 0) return refuse();
  if (to === undefined) return read(from, '');
  const lower = read(from, unitOf(to));
  const upper = read(to, unitOf(from));
  return lower > upper ? refuse() : { lower, nominal: (lower + upper) / 2, upper };
}

const EXAMPLES: Readonly<Partial<Record<Unit, string>>> = {
  mm: '"12.65 mm", "9/16 in", "12.65 +- 0.02 mm" or "12.6..12.7 mm"',
  Nm: '"40 Nm", "350 lbf.in", "30 ft-lb" or "38..42 Nm"',
  N: '"14 kN" or "3000 lbf"',
  deg: '"90 deg"',
};
