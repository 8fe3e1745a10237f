import { checkInput, DomainError, type DomainIssue, type FieldSpec } from '@spindlewright/quantity';
import type { ColumnMapping, Mapping } from './mapping.ts';
import { PART_FIELDS, type PartField } from './part.ts';

const COLUMN: FieldSpec = {
  type: 'object',
  fields: {
    always: { type: 'text', optional: true },
    unit: { type: 'choice', values: ['mm', 'cm', 'm', 'in', 'deg', 'rad'], optional: true },
    separator: { type: 'text', optional: true },
    digitCount: { type: 'number', unit: '', min: 1, max: 40, optional: true },
  },
};

/** Refuses what is no mapping, with every fault by its path. @internal */
export function checkMapping(where: string, value: unknown): asserts value is Mapping {
  const { columns, ...rest } = plainObject(value);
  checkInput({
    where,
    value: rest,
    fields: {
      format: { type: 'choice', values: ['spindlewright-mapping-1'] },
      note: { type: 'text', optional: true },
      missing: { type: 'list', item: { type: 'text' }, optional: true },
    },
  });
  const given = plainObject(columns);
  const issues: DomainIssue[] = [];
  for (const field of Object.keys(given)) {
    if (Object.hasOwn(PART_FIELDS, field)) issues.push(...columnIssues(where, field, given[field]));
    else {
      const allowed = Object.keys(PART_FIELDS).join(', ');
      issues.push({ path: `columns.${field}`, received: 'an unknown field', allowed });
    }
  }
  if (!Object.hasOwn(given, 'partId')) {
    issues.push({ path: 'columns.partId', received: 'nothing', allowed: 'the column of the part id' });
  }
  const [first, ...others] = issues;
  if (first !== undefined) throw new DomainError(where, [first, ...others]);
}

const plainObject = (value: unknown): Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : {};

function columnIssues(where: string, field: string, given: unknown): DomainIssue[] {
  const path = `columns.${field}`;
  if (typeof given === 'string') return given === '' ? [{ path, received: '""', allowed: 'a column' }] : [];
  const { column, values, ...rest } = plainObject(given);
  const issues: DomainIssue[] = [];
  try {
    checkInput({ where, value: rest, fields: COLUMN.type === 'object' ? COLUMN.fields : {} });
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    issues.push(...error.issues.map((issue) => ({ ...issue, path: `${path}.${issue.path}` })));
  }
  const named = Array.isArray(column) ? column : column === undefined ? [] : [column];
  if (named.some((name) => typeof name !== 'string' || name === '')) {
    issues.push({ path: `${path}.column`, received: JSON.stringify(column) ?? '', allowed: 'a column or several' });
  }
  if (named.length === 0 && rest.always === undefined) {
    issues.push({ path, received: 'neither', allowed: '`column` or `always`' });
  }
  if (values !== undefined && Object.values(plainObject(values)).some((one) => typeof one !== 'string')) {
    issues.push({ path: `${path}.values`, received: 'something else', allowed: 'our words by the words of the shop' });
  }
  return issues;
}

/** The long form of a mapping's column. @internal */
export const columnOf = (mapping: Mapping, field: PartField): ColumnMapping | undefined => {
  const given = Object.hasOwn(mapping.columns, field) ? mapping.columns[field] : undefined;
  return typeof given === 'string' ? { column: given } : given;
};
