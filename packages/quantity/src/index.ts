/**
 * Exact units, limits, measurands, findings, typed errors and datum records: what every Spindlewright package speaks in.
 *
 * @packageDocumentation
 */
export { checkInput, type FieldSpec, type FieldSpecs } from './check-input.ts';
export { convert } from './convert.ts';
export { type Datum, limitsOf, type Standing } from './datum.ts';
export { DomainError, type DomainIssue, isDomainError } from './domain-error.ts';
export { createFinding, type Finding, type Messages, type Severity } from './finding.ts';
export { formatFinding } from './format-finding.ts';
export { type Limits, type LimitsInput, type LimitsSpelling, limits } from './limits.ts';
export { hardLimits, type Measurand, type UncertainValue } from './measurand.ts';
export { nearestName } from './nearest-name.ts';
export type { NumberRange, NumericSpec } from './numeric-issues.ts';
export { parseQuantity, type Quantity } from './parse-quantity.ts';
export type { Dimension, Unit, UnitLike } from './units.ts';
export { version } from './version.ts';
