import { describeValue } from './describe-value.ts';
import type { DomainIssue } from './domain-error.ts';
import { risingIssues } from './limits.ts';

/** Where a reading is cut: beyond this many standard uncertainties it is taken as impossible. */
export const TRUNCATION_UNCERTAINTIES = 3;

/** The numbers allowed in a field. */
export interface NumberRange {
  /** Unit id, for the message; empty for a plain number. */
  unit: string;
  /** Smallest value allowed. */
  min?: number;
  /** The value has to be larger than this one. */
  above?: number;
  /** Largest value allowed. */
  max?: number;
}

/** A field that holds a number, and how uncertain it may be written. */
export type NumericSpec = {
  /** `number`: a plain one; `limits`: or hard bounds; `measurand`: or hard bounds or a reading with uncertainty. */
  type: 'number' | 'limits' | 'measurand';
} & NumberRange;

/** What is wrong with a number, limits or a measurand; empty when nothing is. @internal */
export function numericIssues(value: unknown, spec: NumericSpec, path: string): DomainIssue[] {
  const outside = (at: string, came: unknown): DomainIssue => ({
    path: at,
    received: describeValue(came),
    allowed: describeRange(spec),
  });
  const within = (key: string): string => (path === '' ? key : `${path}.${key}`);
  if (typeof value === 'number' && inRange(value, spec)) return [];
  const keys = typeof value === 'object' && value !== null ? Object.keys(value).sort().join() : '';
  const record = value as Readonly<Record<string, unknown>>;
  if (spec.type !== 'number' && keys === 'lower,nominal,upper') {
    const { lower, nominal, upper } = record;
    const issues = risingIssues({ lower, nominal, upper }, ['lower', 'nominal', 'upper'], path);
    if (issues.length > 0) return issues;
    if (!inRange(lower, spec)) issues.push(outside(within('lower'), lower));
    if (!inRange(upper, spec)) issues.push(outside(within('upper'), upper));
    return issues;
  }
  if (spec.type === 'measurand' && keys === 'standardUncertainty,value') {
    const { value: reading, standardUncertainty: u } = record;
    const issues = inRange(reading, spec) ? [] : [outside(within('value'), reading)];
    if (!inRange(u, { unit: '', min: 0 })) {
      issues.push({
        path: within('standardUncertainty'),
        received: describeValue(u),
        allowed: 'a number of at least 0',
      });
    }
    if (issues.length > 0) return issues;
    const width = TRUNCATION_UNCERTAINTIES * (u as number);
    const bounds = [(reading as number) - width, (reading as number) + width];
    if (bounds.every((bound) => inRange(bound, spec))) return [];
    return [
      {
        path,
        received: `${reading} with standard uncertainty ${u}`,
        allowed: `${describeRange(spec)}, out to ${TRUNCATION_UNCERTAINTIES} standard uncertainties on either side`,
      },
    ];
  }
  return [{ path, received: describeValue(value), allowed: describeNumeric(spec) }];
}

const inRange = (value: unknown, range: NumberRange): boolean =>
  typeof value === 'number' &&
  Number.isFinite(value) &&
  (range.min === undefined || value >= range.min) &&
  (range.above === undefined || value > range.above) &&
  (range.max === undefined || value <= range.max);

function describeRange({ unit, min, above, max }: NumberRange): string {
  const from = above !== undefined ? ` above ${above}` : min !== undefined ? ` from ${min}` : '';
  const to = max === undefined ? '' : from === '' ? ` of at most ${max}` : ` to ${max}`;
  return `a finite number${from}${to}${unit === '' ? '' : ` ${unit}`}`;
}

/** Says in words what a numeric field may hold. @internal */
export function describeNumeric(spec: NumericSpec): string {
  const other = {
    number: '',
    limits: ' or { lower, nominal, upper } of such',
    measurand: ', { lower, nominal, upper } or { value, standardUncertainty } of such',
  }[spec.type];
  return `${describeRange(spec)}${other}`;
}
