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

// Spellings seen in shops and catalogues, lower case without blanks. The three-character codes are those of UN/ECE
// Recommendation 20 (from memory: the list was not at hand when this was written), as used by schema.org `unitCode`.
const ALIASES: Readonly<Record<string, Unit>> = {
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  mmt: 'mm',
  µm: 'um',
  μm: 'um',
  micron: 'um',
  microns: 'um',
  '4h': 'um',
  centimetre: 'cm',
  centimeter: 'cm',
  cmt: 'cm',
  metre: 'm',
  meter: 'm',
  mtr: 'm',
  '"': 'in',
  '″': 'in',
  inch: 'in',
  inches: 'in',
  inh: 'in',
  newton: 'N',
  newtons: 'N',
  new: 'N',
  kilonewton: 'kN',
  b47: 'kN',
  lb: 'lbf',
  lbs: 'lbf',
  poundforce: 'lbf',
  c78: 'lbf',
  kp: 'kgf',
  b37: 'kgf',
  n·m: 'Nm',
  'n.m': 'Nm',
  'n*m': 'Nm',
  'n-m': 'Nm',
  newtonmetre: 'Nm',
  newtonmetres: 'Nm',
  newtonmeter: 'Nm',
  nu: 'Nm',
  'lb.in': 'lbf.in',
  'lb-in': 'lbf.in',
  'lbf-in': 'lbf.in',
  lbf·in: 'lbf.in',
  'in-lb': 'lbf.in',
  'in.lb': 'lbf.in',
  'in-lbs': 'lbf.in',
  'in-lbf': 'lbf.in',
  in·lbf: 'lbf.in',
  inlb: 'lbf.in',
  lbin: 'lbf.in',
  lbfin: 'lbf.in',
  f21: 'lbf.in',
  'lb.ft': 'lbf.ft',
  'lb-ft': 'lbf.ft',
  'lbf-ft': 'lbf.ft',
  lbf·ft: 'lbf.ft',
  'ft-lb': 'lbf.ft',
  'ft.lb': 'lbf.ft',
  'ft-lbs': 'lbf.ft',
  'ft-lbf': 'lbf.ft',
  ft·lbf: 'lbf.ft',
  ftlb: 'lbf.ft',
  lbft: 'lbf.ft',
  lbfft: 'lbf.ft',
  m92: 'lbf.ft',
  'kg.cm': 'kgf.cm',
  'kg-cm': 'kgf.cm',
  'kgf-cm': 'kgf.cm',
  kgf·cm: 'kgf.cm',
  kgfcm: 'kgf.cm',
  'kg.m': 'kgf.m',
  'kg-m': 'kgf.m',
  'kgf-m': 'kgf.m',
  kgf·m: 'kgf.m',
  kgfm: 'kgf.m',
  b38: 'kgf.m',
  'n/mm2': 'MPa',
  'n/mm²': 'MPa',
  mpa: 'MPa',
  'lbf/in2': 'psi',
  'lbf/in²': 'psi',
  ps: 'psi',
  '°': 'deg',
  degree: 'deg',
  degrees: 'deg',
  dd: 'deg',
  radian: 'rad',
  radians: 'rad',
  c81: 'rad',
};

const PATTERN = /^([+-]?)(?:(\d+)[ -])?(?:(\d+)\/(\d+)|(\d+(?:[.,]\d+)?|[.,]\d+)(e[+-]?\d+)?)\s*(\D.*|\d\D.*)$/i;

/**
 * Reads a number with its unit from text, the way people write it.
 *
 * @remarks
 * Formula: none. Grammar: optional sign, a decimal number with point or comma, a fraction (`9/16`) or a whole number and
 * a fraction (`1 3/8`), then a unit: an id, a common spelling, or a three-character UN/ECE code.
 *
 * Validity: one number and one unit. A comma is a decimal comma; digits grouped by commas or points with more than one
 * mark (`1,234.5`) are refused rather than guessed.
 *
 * Accuracy: the number is the nearest double to the text; a fraction is divided once.
 *
 * @param text - For instance `12,5 mm`, `9/16 in`, `305 in-lb`, `40 NU`.
 * @returns The number and the unit id; the sign is kept.
 * @throws {@link DomainError} when there is no number, no unit, an unknown unit, or a zero denominator.
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
  if (match === null) throw refuse(text, 'a number and a unit, such as "12.5 mm", "9/16 in" or "40 Nm"');
  const [, sign, whole, numerator, denominator, decimal, exponent, unitText = ''] = match;
  if (decimal !== undefined && whole !== undefined)
    throw refuse(text, 'one number only, or a whole number and a fraction');
  const magnitude =
    decimal === undefined
      ? Number(whole ?? 0) + Number(numerator) / Number(denominator)
      : Number(`${decimal.replace(',', '.')}${exponent ?? ''}`);
  const value = sign === '-' ? -magnitude : magnitude;
  if (!Number.isFinite(value)) throw refuse(text, 'a finite number (no zero below the fraction line)');
  return { value, unit: readUnit(unitText, text) };
}

function readUnit(unitText: string, text: string): Unit {
  const ids = unitIds();
  const compact = unitText.replace(/\s+/g, '');
  const exact = ids.find((id) => id === compact);
  if (exact !== undefined) return exact;
  const lower = compact.toLowerCase();
  const alias = Object.hasOwn(ALIASES, lower) ? ALIASES[lower] : undefined;
  const found = alias ?? ids.find((id) => id.toLowerCase() === lower);
  if (found !== undefined) return found;
  const nearest = nearestName({ name: compact, known: ids });
  throw new DomainError('parseQuantity', [
    {
      path: 'text',
      received: describeValue(text),
      allowed: `a unit: ${ids.join(', ')} or a common spelling of one`,
      ...(nearest === undefined ? {} : { nearest }),
    },
  ]);
}

const refuse = (text: unknown, allowed: string): DomainError =>
  new DomainError('parseQuantity', [{ path: 'text', received: describeValue(text), allowed }]);
