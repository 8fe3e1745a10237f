import { type Finding, isDomainError } from '@spindlewright/quantity';
import type { QuantityKind, UnitSystem } from './units.ts';

/** Everything a bench page holds, as text: it is what stands in the address. */
export type State = Readonly<Record<string, string>>;

export interface Option {
  value: string;
  label: string;
}

/** One thing to fill in. */
export interface Field {
  key: string;
  label: string;
  hint?: string;
  type: 'number' | 'range' | 'choice' | 'radios' | 'text' | 'file';
  quantity?: QuantityKind;
  options?: readonly Option[];
  /** Ends and step of a range, in the kept unit. */
  min?: number;
  max?: number;
  step?: number;
  /** Marks the question to answer next. */
  next?: boolean;
}

/** Fields that belong together. */
export interface Group {
  title: string;
  note?: string;
  fields: readonly Field[];
  /** Folded away until somebody opens it. */
  folded?: boolean;
}

export type Tone = 'good' | 'care' | 'stop' | 'plain';

/** What a hand on a figure moves, from 0 to 100: by dragging sideways, and by a slider of its own under the figure. */
export interface Drag {
  key: string;
  label: string;
  /** What the two ends are called. */
  from: string;
  to: string;
}

/** One line of intervals that are drawn to one scale. */
export interface Range {
  label: string;
  text: string;
  tone: Tone;
  lower: number;
  nominal: number;
  upper: number;
}

/** A part of what a bench answers. */
export type Block =
  | { kind: 'headline'; tone: Tone; text: string; detail?: string }
  | { kind: 'figure'; svg: string; caption: string; drag?: Drag }
  | { kind: 'values'; title?: string; rows: readonly { label: string; value: string; note?: string }[] }
  | { kind: 'bars'; title: string; note?: string; rows: readonly { label: string; share: number; text: string }[] }
  | { kind: 'ranges'; title: string; note?: string; zero: string; rows: readonly Range[] }
  | { kind: 'table'; title: string; note?: string; head: readonly string[]; rows: readonly (readonly string[])[] }
  | { kind: 'findings'; findings: readonly Finding[] }
  | { kind: 'actions'; title?: string; actions: readonly { label: string; set: Record<string, string> }[] }
  | { kind: 'links'; title: string; links: readonly { text: string; href: string }[] }
  | { kind: 'sheet'; html: string; name: string; save: string }
  | { kind: 'text'; text: string };

export interface BenchContext {
  state: State;
  units: UnitSystem;
  /** There is room for a wide drawing. */
  wide?: boolean;
  /** A file somebody opened; it stays in the page and out of the address. */
  file?: string;
}

/** A page that answers as it is filled in. */
export interface Bench {
  defaults: State;
  /** Which field a path of the library comes from, so that a refusal names what somebody filled in. */
  fieldOf?: Readonly<Record<string, string>>;
  groups(context: BenchContext): readonly Group[];
  answer(context: BenchContext): readonly Block[];
}

/** The state that an address asks for; unknown keys are left alone. */
export function readState(search: string, defaults: State): State {
  const asked = new URLSearchParams(search);
  return Object.fromEntries(Object.entries(defaults).map(([key, value]) => [key, asked.get(key) ?? value]));
}

/** The address of a state: only what differs from the defaults. */
export function writeState(state: State, defaults: State, units: UnitSystem): string {
  const out = new URLSearchParams();
  for (const [key, value] of Object.entries(state)) if (value !== defaults[key]) out.set(key, value);
  if (units === 'inch') out.set('units', 'inch');
  const text = out.toString();
  return text === '' ? '' : `?${text}`;
}

/** One thing to choose. */
export const option = (value: string, label = value): { value: string; label: string } => ({ value, label });

/** A field as a number; undefined when it is empty. */
export const numberOf = (state: State, key: string): number | undefined =>
  state[key] === '' || state[key] === undefined ? undefined : Number(state[key]);

/** Answers, or says in words what is wrong with what was filled in. */
export function answerOf(bench: Bench, context: BenchContext): readonly Block[] {
  try {
    return bench.answer(context);
  } catch (error) {
    if (!isDomainError(error)) throw error;
    return [
      { kind: 'headline', tone: 'care', text: 'This does not go together yet' },
      {
        kind: 'values',
        rows: error.issues.map(({ path, received, allowed, nearest }) => {
          const { label, typed } = filledIn(bench, context, path);
          return {
            label,
            value: `${typed ?? received} does not go: it takes ${allowedWords(allowed)}`,
            ...(nearest === undefined ? {} : { note: `did you mean ${nearest}?` }),
          };
        }),
      },
    ];
  }
}

/** The field behind a path of the library, and what stands in it; a path without a field stays a path. */
function filledIn(bench: Bench, context: BenchContext, path: string): { label: string; typed?: string } {
  const plain = path.replaceAll(/\[\d+\]|\.(lower|nominal|upper)$/g, '');
  const key = bench.fieldOf?.[plain] ?? plain;
  const field = bench
    .groups(context)
    .flatMap(({ fields }) => fields)
    .find((candidate) => candidate.key === key);
  if (field === undefined) return { label: path === '' ? 'What was filled in' : path };
  const text = context.state[key] ?? '';
  return { label: field.label, ...(text === '' ? {} : { typed: text.replace(/^-/, '−') }) };
}

/** What is allowed, without the forms that only code can give a reading in. */
const allowedWords = (allowed: string): string =>
  allowed
    .replace(/, \{ lower, nominal, upper \} or .* of such$/, '')
    .replace(/^a finite number (from )?/, '')
    .replace(/^a number or rising limits (from )?/, '')
    .replace(/ that keeps the bounds finite$/, '');

const RANK = { stop: 0, caution: 1, note: 2 } as const;

/** Findings by weight, each sentence once. */
export const sorted = (findings: readonly Finding[]): Finding[] =>
  findings
    .filter((finding, index) => findings.findIndex(({ message }) => message === finding.message) === index)
    .sort((a, b) => RANK[a.severity] - RANK[b.severity]);

/** What forbids: it stands right under the answer. */
export const stops = (findings: readonly Finding[]): Finding[] =>
  findings.filter(({ severity }) => severity === 'stop');
