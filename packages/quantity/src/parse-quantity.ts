import { describeValue } from './describe-value.ts';
import { DomainError } from './domain-error.ts';
import { nearestName } from './nearest-name.ts';
import { type Unit, unitIds } from './units.ts';

/** A number with its unit, as read from text. */
export interface Quantity {
  /** The number, in `unit`. */
  value: number;
  /** Unit id. */
  unit: Unit;
}

// Spellings seen in shops and catalogues, in lower case, the parts of a torque joined by one point. The codes of two or
// three characters are those of UN/ECE Recommendation 20 (from memory: the list was not at hand when this was written),
// as schema.org `unitCode` uses them.
const ALIASES: Readonly<Record<string, Unit>> = {
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  mmt: 'mm',
  // Micro sign and Greek letter mu, which look the same.
  '\u00b5m': 'um',
  '\u03bcm': 'um',
  micron: 'um',
  microns: 'um',
  micrometre: 'um',
  micrometres: 'um',
  micrometer: 'um',
  micrometers: 'um',
  '4h': 'um',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  cmt: 'cm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  mtr: 'm',
  '"': 'in',
  // Double prime, and the closing quotation mark that a phone makes of a typed one.
  '\u2033': 'in',
  '\u201d': 'in',
  inch: 'in',
  inches: 'in',
  inh: 'in',
  newton: 'N',
  newtons: 'N',
  new: 'N',
  kilonewton: 'kN',
  kilonewtons: 'kN',
  b47: 'kN',
  lb: 'lbf',
  lbs: 'lbf',
  poundforce: 'lbf',
  'pound.force': 'lbf',
  c78: 'lbf',
  kp: 'kgf',
  b37: 'kgf',
  'n.m': 'Nm',
  newtonmetre: 'Nm',
  newtonmetres: 'Nm',
  'newton.metre': 'Nm',
  'newton.metres': 'Nm',
  newtonmeter: 'Nm',
  newtonmeters: 'Nm',
  'newton.meter': 'Nm',
  'newton.meters': 'Nm',
  nu: 'Nm',
  'lb.in': 'lbf.in',
  'lbs.in': 'lbf.in',
  'in.lb': 'lbf.in',
  'in.lbs': 'lbf.in',
  'in.lbf': 'lbf.in',
  'inch.pound': 'lbf.in',
  'inch.pounds': 'lbf.in',
  inlb: 'lbf.in',
  inlbs: 'lbf.in',
  lbin: 'lbf.in',
  lbfin: 'lbf.in',
  f21: 'lbf.in',
  'lb.ft': 'lbf.ft',
  'lbs.ft': 'lbf.ft',
  'ft.lb': 'lbf.ft',
  'ft.lbs': 'lbf.ft',
  'ft.lbf': 'lbf.ft',
  'foot.pound': 'lbf.ft',
  'foot.pounds': 'lbf.ft',
  ftlb: 'lbf.ft',
  ftlbs: 'lbf.ft',
  lbft: 'lbf.ft',
  lbfft: 'lbf.ft',
  m92: 'lbf.ft',
  'kg.cm': 'kgf.cm',
  kgcm: 'kgf.cm',
  kgfcm: 'kgf.cm',
  'kg.m': 'kgf.m',
  kgm: 'kgf.m',
  kgfm: 'kgf.m',
  b38: 'kgf.m',
  'n/mm2': 'MPa',
  'n/mm^2': 'MPa',
  'n/mm\u00b2': 'MPa',
  megapascal: 'MPa',
  megapascals: 'MPa',
  'lbf/in2': 'psi',
  'lbf/in^2': 'psi',
  'lbf/in\u00b2': 'psi',
  ps: 'psi',
  '\u00b0': 'deg',
  degree: 'deg',
  degrees: 'deg',
  dd: 'deg',
  radian: 'rad',
  radians: 'rad',
  c81: 'rad',
};

// Case is ignored except where it changes the prefix: a millipascal is no megapascal, a megametre no millimetre.
const OTHER_PREFIX: readonly string[] = ['mPa', 'Mm'];

// A whole number before a fraction, or a decimal number; then a unit, which begins with a letter or a sign of its own,
// or is the one code that begins with a digit.
const PATTERN =
  /^([+\-\u2212]?)(?:(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)|(\d+(?:[.,]\d+)?|[.,]\d+)(e[+-]?\d+)?)\s*(4H|[^\s\d.,/+\-\u2212].*)$/i;

/**
 * Reads a number with its unit from text, the way people write it.
 *
 * @remarks
 * Formula: none. Grammar: optional sign, a decimal number with point or comma, a fraction (`9/16`) or a whole number and
 * a fraction (`1 3/8`, `1-3/8`), then a unit: an id, a common spelling, or a UN/ECE code of two or three characters.
 *
 * Validity: one number and one unit of any dimension; whether the dimension suits is for the caller to ask of the unit.
 * A comma is a decimal comma, so `1,234 mm` is 1.234 mm; digits grouped by blanks or with more than one mark
 * (`1 234 mm`, `1,234.5 mm`) are refused rather than guessed. Case is ignored, and `40 nm` is a torque; only `mPa` and
 * `Mm` are refused, which would be other prefixes. `lb`, `kg-cm` and `ft-lb` mean the force, as on a wrench. A negative
 * zero comes back as 0.
 *
 * Accuracy: a decimal number is the nearest double to the text; a fraction is divided once, a whole number added once.
 *
 * @param text - For instance `12,5 mm`, `9/16 in`, `305 in-lb`, `40 NU`.
 * @returns The number and the unit id; the sign is kept.
 * @throws {@link DomainError} when there is no number, no unit, an unknown unit (with the nearest spelling known), a zero
 * denominator or a number too large for a double.
 * @example
 * ```ts
 * import { parseQuantity } from '@spindlewright/quantity';
 * parseQuantity('12,5 mm'); // => { value: 12.5, unit: 'mm' }
 * parseQuantity('1 3/8 in'); // => { value: 1.375, unit: 'in' }
 * ```
 * @see UN/ECE Recommendation 20 for the codes (from memory).
 */
export function parseQuantity(text: string): Quantity {
  if (typeof text !== 'string') throw refuse(text, 'a text with a number and a unit, such as "12.5 mm"');
  const match = PATTERN.exec(text.trim());
  if (match === null) throw refuse(text, 'one number and a unit, such as "12.5 mm", "9/16 in" or "40 Nm"');
  const [, sign, whole, numerator, denominator, decimal, exponent, unitText = ''] = match;
  const magnitude =
    decimal === undefined
      ? Number(whole ?? 0) + Number(numerator) / Number(denominator)
      : Number(`${decimal.replace(',', '.')}${exponent ?? ''}`);
  if (!Number.isFinite(magnitude)) throw refuse(text, 'a finite number (no zero below the fraction line)');
  // JSON has no negative zero.
  const negative = sign !== '' && sign !== '+' && magnitude !== 0;
  return { value: negative ? -magnitude : magnitude, unit: readUnit(unitText, text) };
}

function readUnit(unitText: string, text: string): Unit {
  const ids = unitIds();
  // Between letters every blank, dot, star and dash joins two parts of a unit: `N m`, `N·m`, `in-lb`.
  // One at the end is the point of an abbreviation (`in.`).
  const joined = unitText.replace(/[\s.\u00b7\u22c5\u2219*\u2010-\u2013-]+/g, '.').replace(/\.$/, '');
  const lower = joined.toLowerCase();
  const alias = Object.hasOwn(ALIASES, lower) ? ALIASES[lower] : undefined;
  const found = alias ?? ids.find((id) => id.toLowerCase() === lower);
  if (found !== undefined && !OTHER_PREFIX.includes(joined)) return found;
  const nearest = nearestName({ name: joined, known: [...ids, ...Object.keys(ALIASES)] });
  const allowed = `a unit: ${ids.join(', ')} or a common spelling of one`;
  throw new DomainError('parseQuantity', [
    { path: 'text', received: describeValue(text), allowed, ...(nearest === undefined ? {} : { nearest }) },
  ]);
}

const refuse = (text: unknown, allowed: string): DomainError =>
  new DomainError('parseQuantity', [{ path: 'text', received: describeValue(text), allowed }]);
