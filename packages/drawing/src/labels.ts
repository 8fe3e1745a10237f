import type { FieldSpec, FieldSpecs, Limits } from '@spindlewright/quantity';
import { messages } from './messages/en.ts';

/** Key of a word or sentence that pictures show. */
export type LabelKey = keyof typeof messages;

/** Words that replace the English ones, by key; keys left out stay English. */
export type Labels = Readonly<Partial<Record<LabelKey, string>>>;

/** Words and number forms of one picture. @internal */
export interface Wording {
  /** The word of a key, with `{name}` filled in. */
  say: (key: LabelKey, values?: Readonly<Record<string, string>>) => string;
  /** A number with fixed decimals, true minus sign and the decimal mark of the language. */
  number: (value: number, decimals: number) => string;
  /** The bounds of limits, rounded outward so that the words never claim less width than the numbers. */
  bounds: (limits: Limits, decimals: number) => { lower: string; upper: string };
}

/** Field description of `labels` for checkInput. @internal */
export const labelFields = (): FieldSpec => ({
  type: 'object',
  optional: true,
  fields: Object.fromEntries(
    Object.keys(messages).map((key) => [key, { type: 'text', optional: true } as const]),
  ) satisfies FieldSpecs,
});

/** Makes the wording of a picture from its labels. @internal */
export function wordingOf(labels: Labels | undefined): Wording {
  const word = (key: LabelKey): string => labels?.[key] ?? messages[key];
  const number = (value: number, decimals: number): string => {
    const rounded = Math.round(Math.abs(value) * 10 ** decimals * (1 + Number.EPSILON)) / 10 ** decimals;
    const digits = rounded.toFixed(decimals).replace('.', word('decimal-mark'));
    return value < 0 && rounded > 0 ? `\u2212${digits}` : digits;
  };
  return {
    say: (key, values = {}) =>
      word(key).replace(/\{(\w+)\}/g, (whole, name: string) =>
        Object.hasOwn(values, name) ? (values[name] ?? whole) : whole,
      ),
    number,
    bounds: ({ lower, upper }, decimals) => {
      const unit = 10 ** -decimals;
      // A millionth of the last digit is slack for binary fractions, lest 0.1 + 0.2 be called 0.4.
      return {
        lower: number(Math.floor(lower / unit + 1e-6) * unit, decimals),
        upper: number(Math.ceil(upper / unit - 1e-6) * unit, decimals),
      };
    },
  };
}

/** Decimals that suit a value: hundredths when its limits are close, tenths when they are not. @internal */
export const decimalsFor = (limits: Limits): number => (limits.upper - limits.lower >= 0.15 ? 1 : 2);
