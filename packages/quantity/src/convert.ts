import { describeValue } from './describe-value.ts';
import { DomainError } from './domain-error.ts';
import { nearestName } from './nearest-name.ts';
import { type Unit, type UnitLike, unitFactor, unitIds } from './units.ts';

/**
 * Converts a number between two units of the same dimension by exact factors.
 *
 * @remarks
 * Formula: value (n1 d2)/(d1 n2), where n/d is the exact ratio of each unit to the base unit of its dimension. All
 * factors come from one chain (inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s2).
 *
 * Validity: any finite value of either sign; the result must be finite too. A negative zero comes back as 0.
 *
 * Accuracy: four roundings at most, relative error below 5e-16 while the result is larger than 1e-307 in size; the same
 * unit gives the value back unchanged.
 *
 * @param value - Number to convert, in the unit `from`.
 * @param from - Unit id of the value: `mm in N lbf kgf Nm lbf.in lbf.ft kgf.cm MPa psi deg rad`, further `um cm m kN kgf.m`.
 * @param to - Unit id wanted, of the same dimension.
 * @returns The same quantity in the unit `to`, same sign.
 * @throws {@link DomainError} for a non-finite value, an unknown unit or units of different dimensions.
 * @example
 * ```ts
 * import { convert } from '@spindlewright/quantity';
 * convert(1, 'in', 'mm'); // => 25.4
 * convert(40, 'Nm', 'lbf.in').toFixed(1); // => '354.0'
 * ```
 * @see NIST SP 811 (2008), appendix B: exact factors.
 */
export function convert<U extends Unit>(value: number, from: U, to: UnitLike<U>): number {
  const source = unitFactor(from);
  const target = unitFactor(to);
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw new DomainError('convert', [{ path: 'value', received: describeValue(value), allowed: 'a finite number' }]);
  }
  if (source === undefined) throw unknownUnit('from', from);
  if (target === undefined) throw unknownUnit('to', to);
  if (source.dimension !== target.dimension) {
    const allowed = unitIds().filter((id) => unitFactor(id)?.dimension === source.dimension);
    throw new DomainError('convert', [
      { path: 'to', received: describeValue(to), allowed: `a unit of ${source.dimension}: ${allowed.join(', ')}` },
    ]);
  }
  const numerator = source.numerator * target.denominator;
  const denominator = source.denominator * target.numerator;
  // Dividing last keeps round figures round (25.4 mm is 1 in, not 0.9999999999999999); dividing first is for the few
  // values whose product would overflow although the result does not.
  const product = value * numerator;
  const converted = Number.isFinite(product) ? product / denominator : value * (numerator / denominator);
  const result = source === target ? value : converted;
  if (!Number.isFinite(result)) {
    throw new DomainError('convert', [
      { path: 'value', received: describeValue(value), allowed: `a number that stays finite in ${to}` },
    ]);
  }
  // JSON has no negative zero, and a result has to equal its JSON round trip.
  return result === 0 ? 0 : result;
}

function unknownUnit(path: string, unit: unknown): DomainError {
  const known = unitIds();
  const nearest = typeof unit === 'string' ? nearestName({ name: unit, known }) : undefined;
  return new DomainError('convert', [
    { path, received: describeValue(unit), allowed: known.join(', '), ...(nearest === undefined ? {} : { nearest }) },
  ]);
}
