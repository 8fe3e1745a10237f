import { convert } from '@spindlewright/quantity';

/** What a cell that should hold a number comes to. */
type NumberReading =
  | { kind: 'number'; value: number }
  | { kind: 'missing' }
  | { kind: 'suspicious' }
  | { kind: 'several' }
  | { kind: 'unread' };

type LengthUnit = 'mm' | 'cm' | 'm' | 'in';
type AngleUnit = 'deg' | 'rad';

/** Units as catalogues write them, in lower case. */
const UNITS: Readonly<Record<string, LengthUnit | AngleUnit>> = {
  mm: 'mm',
  mmt: 'mm',
  millimeter: 'mm',
  millimetre: 'mm',
  cm: 'cm',
  cmt: 'cm',
  m: 'm',
  mtr: 'm',
  in: 'in',
  inh: 'in',
  inch: 'in',
  inches: 'in',
  zoll: 'in',
  pouces: 'in',
  '"': 'in',
  '\u2033': 'in',
  '\u201d': 'in',
  "''": 'in',
  deg: 'deg',
  dd: 'deg',
  '\u00b0': 'deg',
  grad: 'deg',
  rad: 'rad',
};

const MONTHS = 'jan|feb|m(?:ar|\u00e4r|rz)|apr|ma[iy]|jun|jul|aug|sept?|o[ck]t|nov|de[cz]';
const DATE = new RegExp(
  `^(?:\\d{1,2}[. /-]*(?:${MONTHS})[a-z]*\\.?[. /-]*\\d{0,4}|(?:${MONTHS})[a-z]*\\.?[ /-]+\\d{1,4}|\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}|\\d{4}-\\d{1,2}-\\d{1,2}(?:[t ].*)?|\\d{1,2}[.-]\\d{1,2}\\.)$`,
  'i',
);

/** True for what a spreadsheet leaves of a fraction or a range that it took for a date. @internal */
export const looksLikeDate = (text: string): boolean => DATE.test(text);

/** A number in exponent form, as a spreadsheet writes long ids. @internal */
export const looksLikeExponent = (text: string): boolean => /^[+-]?\d(?:[.,]\d+)?e[+-]?\d+$/i.test(text);

/** Longer than any size with its unit; a longer text is not searched. */
const LONGEST = 60;

/**
 * Reads a size: decimal comma or point, fractions of an inch, a unit behind the number. What a spreadsheet may have made
 * of something else is told apart, never guessed back. @internal
 */
export function readNumber(
  raw: unknown,
  unit: LengthUnit | AngleUnit | '',
  target: 'mm' | 'deg' | '',
  separator?: string,
): NumberReading {
  if (raw === null || raw === undefined || raw === '') return { kind: 'missing' };
  if (typeof raw === 'number') return Number.isFinite(raw) ? inUnit(raw, unit, target) : { kind: 'unread' };
  if (typeof raw !== 'string') return { kind: 'unread' };
  const text = raw.trim();
  if (text === '') return { kind: 'missing' };
  if (text.length > LONGEST) return { kind: 'unread' };
  if (looksLikeDate(text) || looksLikeExponent(text)) return { kind: 'suspicious' };
  const parts = /^(\d+\s+)?(\d+)\s*\/\s*(\d+)\s*(\D*)$/.exec(text);
  if (parts !== null) {
    // A fraction is one of an inch: a bare one is only taken where inches are wanted.
    const written = (parts[4] ?? '').trim().toLowerCase().replace(/\.$/, '');
    const own = written === '' ? unit : unitOf(written);
    const [whole, top, bottom] = [Number(parts[1] ?? 0), Number(parts[2]), Number(parts[3])];
    if (own === 'in' && bottom > 0 && bottom <= 64) return inUnit(whole + top / bottom, 'in', target);
    return written === '' ? { kind: 'several' } : { kind: 'unread' };
  }
  const number = /^([+-]?\d+(?:[.,]\d+)?)\s*([^\d\s]\D*)?$/.exec(text);
  if (number !== null) {
    const written = (number[2] ?? '').trim().toLowerCase().replace(/\.$/, '');
    const own = written === '' ? unit : unitOf(written);
    if (own === undefined) return { kind: 'unread' };
    // Three figures behind a comma may be thousands; no size here needs them.
    if (/,\d{3}$/.test(number[1] ?? '')) return { kind: 'suspicious' };
    return inUnit(Number((number[1] ?? '').replace(',', '.')), own, target);
  }
  const splitter = separator === undefined || separator === '' ? /[/;|+]|\bor\b|\boder\b|\bou\b/i : separator;
  const several = text.split(splitter);
  return several.length > 1 && several.every((one) => /\d/.test(one)) ? { kind: 'several' } : { kind: 'unread' };
}

const unitOf = (text: string): LengthUnit | AngleUnit | undefined =>
  Object.hasOwn(UNITS, text) ? UNITS[text] : undefined;

function inUnit(value: number, unit: LengthUnit | AngleUnit | '', target: 'mm' | 'deg' | ''): NumberReading {
  if (target === '') return unit === '' ? { kind: 'number', value } : { kind: 'unread' };
  const isAngle = unit === 'deg' || unit === 'rad';
  if (unit === '' || unit === target) return { kind: 'number', value };
  if (isAngle !== (target === 'deg')) return { kind: 'unread' };
  return {
    kind: 'number',
    value: isAngle ? convert(value, unit, 'deg') : convert(value, unit as LengthUnit, 'mm'),
  };
}
