import { describeValue } from './describe-value.ts';
import { DomainError, type DomainIssue } from './domain-error.ts';
import { nearestName } from './nearest-name.ts';
import { describeNumeric, type NumericSpec, numericIssues } from './numeric-issues.ts';

/** What a field of an input may hold. */
export type FieldSpec = {
  /** True when the field may be absent. */
  optional?: boolean;
} & (
  | NumericSpec
  | { type: 'text' }
  | { type: 'flag' }
  | { type: 'choice'; values: readonly string[] }
  | { type: 'object'; fields: FieldSpecs }
  | { type: 'list'; item: FieldSpec; minLength?: number }
);

/** The fields of an object by name; any other key is refused. */
export type FieldSpecs = Readonly<Record<string, FieldSpec>>;

/**
 * Checks an input against the description of its fields and refuses it with every fault found, each by its path.
 *
 * @remarks
 * Formula: none. Unknown keys are refused, since a misspelt optional field would silently take its default. A field whose
 * value is `undefined` counts as absent, one that is `null` does not. Bounds of limits and of readings with uncertainty
 * (3 u) have to lie inside the range too.
 *
 * Validity: any plain value, as JSON could hold it; own keys only, so a field behind a getter of a class is absent. What
 * a getter or a proxy of the caller throws comes through as it is.
 *
 * Accuracy: exact comparisons.
 *
 * @param input - `where`: name of the function that asks; `value`: what came; `fields`: the description.
 * @returns Nothing; the value is as described when it returns.
 * @throws {@link DomainError} with all issues, in the order of the fields, unknown keys last.
 * @example
 * ```ts
 * import { checkInput, isDomainError } from '@spindlewright/quantity';
 * const fields = { faceAngleDeg: { type: 'number', unit: 'deg', above: 0, max: 10 } } as const;
 * let nearest: string | undefined;
 * try {
 *   checkInput({ where: 'demo', value: { faceAngleDeg: 2, faceAngelDeg: 2 }, fields });
 * } catch (error) {
 *   if (isDomainError(error)) nearest = error.nearest;
 * }
 * nearest; // => 'faceAngleDeg'
 * ```
 * @see The project's rule for bad input.
 */
export function checkInput(input: { where: string; value: unknown; fields: FieldSpecs }): void {
  const [first, ...rest] = objectIssues(input.value, input.fields, '');
  if (first !== undefined) throw new DomainError(input.where, [first, ...rest]);
}

function objectIssues(value: unknown, fields: FieldSpecs, path: string): DomainIssue[] {
  const known = Object.keys(fields);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return [{ path, received: describeValue(value), allowed: describeFields(fields) }];
  }
  const record = value as Record<string, unknown>;
  const issues = Object.entries(fields).flatMap(([key, spec]): DomainIssue[] => {
    const field = Object.hasOwn(record, key) ? record[key] : undefined;
    if (field !== undefined) return fieldIssues(field, spec, join(path, key));
    if (spec.optional === true) return [];
    return [{ path: join(path, key), received: 'nothing', allowed: describeSpec(spec) }];
  });
  for (const key of Object.keys(record)) {
    if (Object.hasOwn(fields, key)) continue;
    const nearest = nearestName({ name: key, known });
    issues.push({
      path: join(path, key),
      received: `an unknown key with ${describeValue(record[key])}`,
      allowed: describeFields(fields),
      ...(nearest === undefined ? {} : { nearest }),
    });
  }
  return issues;
}

function fieldIssues(value: unknown, spec: FieldSpec, path: string): DomainIssue[] {
  const wrong = (): DomainIssue[] => [{ path, received: describeValue(value), allowed: describeSpec(spec) }];
  switch (spec.type) {
    case 'object':
      return objectIssues(value, spec.fields, path);
    case 'list': {
      if (!Array.isArray(value) || value.length < (spec.minLength ?? 0)) return wrong();
      // Array.from visits holes as well, which flatMap alone would pass over unchecked.
      return Array.from(value, (item, index) => fieldIssues(item, spec.item, `${path}[${index}]`)).flat();
    }
    case 'text':
      return typeof value === 'string' ? [] : wrong();
    case 'flag':
      return typeof value === 'boolean' ? [] : wrong();
    case 'choice': {
      if (typeof value === 'string' && spec.values.includes(value)) return [];
      const nearest = typeof value === 'string' ? nearestName({ name: value, known: spec.values }) : undefined;
      return wrong().map((issue) => (nearest === undefined ? issue : { ...issue, nearest }));
    }
    default:
      return numericIssues(value, spec, path);
  }
}

const join = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

function describeFields(fields: FieldSpecs): string {
  const known = Object.keys(fields);
  return known.length === 0 ? 'an object without keys' : `an object with ${known.join(', ')}`;
}

/** Says in words what a field may hold. */
function describeSpec(spec: FieldSpec): string {
  switch (spec.type) {
    case 'object':
      return describeFields(spec.fields);
    case 'list':
      return `a list${spec.minLength ? ` of at least ${spec.minLength}` : ''}, each ${describeSpec(spec.item)}`;
    case 'text':
      return 'a text';
    case 'flag':
      return 'true or false';
    case 'choice':
      return spec.values.join(', ');
    default:
      return describeNumeric(spec);
  }
}
