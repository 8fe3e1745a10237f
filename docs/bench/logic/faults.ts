// What cannot be reckoned with, said by the name of its field: an address may hold anything.
import type { Block, Field, Group, State } from './bench.ts';
import { type QuantityKind, toField, type UnitSystem, unitText } from './units.ts';

/** One thing that was filled in and cannot be used. */
export interface Fault {
  label: string;
  value: string;
}

/** What was typed, as it is quoted back: a long one cut short. */
export const quoted = (text: string): string => `“${text.length > 30 ? `${text.slice(0, 30)}…` : text}”`;

/** A number as somebody would type it, in the units shown. */
export function typed(kept: number, kind: QuantityKind, units: UnitSystem): string {
  const text = String(Number(Number(toField(String(kept), kind, units)).toFixed(4)));
  return text.replace('-', '−');
}

/** From where to where a number may lie, in the units shown. */
export function rangeWords(min: number, max: number, kind: QuantityKind, units: UnitSystem): string {
  return `${typed(min, kind, units)} to ${typed(max, kind, units)} ${unitText(kind, units)}`.trimEnd();
}

function faultOf(field: Field, text: string, units: UnitSystem): string | undefined {
  if (field.type === 'choice' || field.type === 'radios') {
    return field.options?.some(({ value }) => value === text) ? undefined : `${quoted(text)} is none of its answers`;
  }
  if (field.type !== 'number') return undefined;
  const value = text.trim() === '' ? Number.NaN : Number(text);
  if (!Number.isFinite(value)) return `${quoted(text)} is not a number`;
  const { min, max, quantity = 'plain' } = field;
  if (min === undefined || max === undefined || (value >= min && value <= max)) return undefined;
  return `${typed(value, quantity, units)} is out of range: ${rangeWords(min, max, quantity, units)}`;
}

/** Every field whose text is no number, a number out of its range, or none of its answers. */
export function faultsOf(groups: readonly Group[], state: State, units: UnitSystem): Fault[] {
  return groups
    .flatMap(({ fields }) => fields)
    .flatMap((field) => {
      const text = state[field.key] ?? '';
      const fault = text === '' ? undefined : faultOf(field, text, units);
      return fault === undefined ? [] : [{ label: field.label, value: fault }];
    });
}

/** Says what is wrong instead of answering. */
export const refused = (faults: readonly Fault[]): Block[] => [
  {
    kind: 'headline',
    tone: 'care',
    text: 'This does not go together yet',
    detail: 'Nothing is reckoned from it until it is put right.',
  },
  { kind: 'values', rows: faults },
];
