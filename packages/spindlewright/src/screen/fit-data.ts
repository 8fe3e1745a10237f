import { dataEdition, listInterfaces, listNeighbours, type NeighbourKind } from '@spindlewright/interfaces';
import { DomainError } from '@spindlewright/quantity';
import type { FitState } from '../sheet.ts';
import { version } from '../version.ts';
import { checkMapping } from './check-mapping.ts';
import type { Circle, MateQuestion } from './decide-facts.ts';
import type { Mapping } from './mapping.ts';
import { circleOf, mateLookup } from './mate-lookup.ts';
import type { Doubt, Facts, PartField, PartKind } from './part.ts';
import { rowReader } from './read-row.ts';

/** What a fit checker works with: the answers to every pair of names, and the shop's parts. Plain JSON. */
export interface FitData {
  /** Format. */
  format: 'spindlewright-fit-data-1';
  /** Edition of the standards data; an answer may be kept as long as it stays the same. */
  dataEdition: string;
  /** Version that made it. */
  version: string;
  /** Answers: state, missing fact and codes. */
  answers: readonly FitAnswerEntry[];
  /** By question, part and need, the place of the answer. */
  pairs: Readonly<Record<string, number>>;
  /** Bolt circles by id: diameter in mm, bolts, teeth of the smallest ring. */
  circles: Readonly<Record<string, readonly [number, number, number]>>;
  /** What is known of each part by its id. */
  parts: Readonly<Record<string, FitFacts>>;
  /** Codes of what holds whatever the answer. */
  cautions: readonly string[];
}

/** One answer in short. */
export interface FitAnswerEntry {
  /** What a shop can act on. */
  state: FitState;
  /** The fact that would decide. */
  missingFact?: string;
  /** Codes of the reasons. */
  codes: readonly string[];
}

/** What is known of one part, as the checker takes it. */
export interface FitFacts {
  /** Kind, joint, thread, shell and side, each as a list of ids. */
  words: Readonly<Partial<Record<PartField, readonly string[]>>>;
  /** Sizes in mm, and counts. */
  numbers: Readonly<Partial<Record<PartField, number>>>;
  /** Values that were not used, and why. */
  doubts: Readonly<Partial<Record<PartField, Doubt>>>;
}

/**
 * Makes the data of a fit checker from a shop's parts: once, where the catalogue is built, as JSON to be kept and served.
 *
 * @remarks
 * Formula: none; the answer to every pair of names is worked out by `checkMate` beforehand, equal ones kept once.
 *
 * Validity: parts under our own names or, with a mapping, under any. Parts without a usable id are left out and counted by
 * {@link screenParts}, not here; of parts with one id the first is kept.
 *
 * Accuracy: that of the names; sizes of the square are not among it, so that a page need not carry the mechanics.
 *
 * @param input - `parts`: rows; `mapping`: what they mean.
 * @returns Plain JSON for `createFitChecker`.
 * @throws {@link DomainError} for a mapping that is none.
 * @example
 * ```ts
 * import { fitData } from 'spindlewright';
 * fitData({ parts: [{ partId: 'A1', kind: 'arm', interface: 'square-taper-jis' }] }).parts.A1?.words;
 * // => { kind: ['arm'], interface: ['square-taper-jis'] }
 * ```
 * @see {@link createFitChecker}
 */
export function fitData(input: { parts?: Iterable<unknown>; mapping?: Mapping } = {}): FitData {
  const { parts = [], mapping } = input;
  if (mapping !== undefined) checkMapping('fitData', mapping);
  if (typeof parts !== 'object' || !(Symbol.iterator in parts)) {
    throw new DomainError('fitData', [{ path: 'parts', received: typeof parts, allowed: 'an iterable of rows' }]);
  }
  const { answers, pairs } = everyPair();
  const circles = listNeighbours({ kind: 'bolt-circle' }).map(({ id }) => [id, circleTuple(circleOf(id))] as const);
  return {
    format: 'spindlewright-fit-data-1',
    dataEdition,
    version,
    answers,
    pairs,
    circles: Object.fromEntries(circles),
    parts: factsById(parts, mapping),
    cautions: ['screen-names-first', 'screen-not-ridden-untried'],
  };
}

const circleTuple = (circle: Circle | undefined): readonly [number, number, number] => [
  circle?.boltCircleMm ?? 0,
  circle?.boltCount ?? 0,
  circle?.smallestRing ?? 0,
];

/** Kinds whose fields together are all that the checker can ask for. */
const KINDS: readonly PartKind[] = ['arm', 'spindle', 'bolt', 'chainring', 'pedals', 'puller'];

function factsById(rows: Iterable<unknown>, mapping: Mapping | undefined): Record<string, FitFacts> {
  const readers = KINDS.map((kind) => rowReader(mapping, { format: 'spindlewright-need-1', for: kind }));
  const all = new Map<string, FitFacts>();
  for (const row of rows) {
    if (typeof row !== 'object' || row === null || Array.isArray(row)) continue;
    const own = row as Readonly<Record<string, unknown>>;
    const named = readers[0]?.idOf(own);
    if (named === undefined || 'code' in named || all.has(named.id)) continue;
    const facts: Facts = { words: {}, numbers: {}, doubts: {} };
    for (const reader of readers) {
      const some = reader.factsOf(own);
      Object.assign(facts.words, some.words);
      Object.assign(facts.numbers, some.numbers);
      Object.assign(facts.doubts, some.doubts);
    }
    all.set(named.id, facts);
  }
  return Object.fromEntries(all);
}

function everyPair(): Pick<FitData, 'answers' | 'pairs'> {
  const places = new Map<string, number>();
  const answers: FitAnswerEntry[] = [];
  const pairs: [string, number][] = [];
  const joints = listInterfaces().map(({ id }) => id);
  const of = (...kinds: NeighbourKind[]): string[] =>
    listNeighbours().flatMap(({ id, kind }) => (kinds.includes(kind) ? [id] : []));
  const work = (
    wanted: PartKind,
    question: MateQuestion,
    ofPart: readonly string[],
    ofNeed: readonly string[],
  ): void => {
    const lookup = mateLookup(wanted);
    for (const part of ofPart) {
      for (const need of ofNeed) {
        const entry = lookup(question, part, need);
        if (entry === undefined) continue;
        const { state, missingFact, codes } = entry;
        const answer = { state, ...(missingFact === undefined ? {} : { missingFact }), codes };
        const text = JSON.stringify(answer);
        let place = places.get(text);
        if (place === undefined) {
          place = answers.push(answer) - 1;
          places.set(text, place);
        }
        pairs.push([`${wanted} ${question} ${part} ${need}`, place]);
      }
    }
  };
  work('arm', 'joint', joints, joints);
  work('spindle', 'joint', joints, joints);
  work('spindle', 'shell', of('shell-thread', 'shell-bore'), of('shell-thread', 'shell-bore'));
  work('bolt', 'fixing', of('fixing'), joints);
  work('bolt', 'thread', of('fixing'), of('fixing'));
  work('puller', 'puller', of('puller-thread'), joints);
  work('puller', 'thread', of('puller-thread'), of('puller-thread'));
  for (const question of ['thread', 'left-thread', 'right-thread'] as const) {
    work('pedals', question, of('pedal-thread'), of('pedal-thread'));
  }
  return { answers, pairs: Object.fromEntries(pairs) };
}
