import { DomainError } from '@spindlewright/quantity';
import { type Circle, decideFacts, type MateEntry, type MateLookup } from './screen/decide-facts.ts';
import type { FitData, FitFacts } from './screen/fit-data.ts';
import type { Need } from './screen/need.ts';
import type { FitState } from './sheet.ts';

/** What the checker says of one part. */
export interface FitAnswer {
  /** What a shop can act on. */
  state: FitState;
  /** Codes of the reasons, the deciding one first; the templates of `./messages/en` and of the interfaces package word them. */
  codes: readonly string[];
  /** The one fact that would decide, when the state is `cannot-tell`. */
  missingFact?: string;
  /** Codes of what holds whatever the answer; to be shown beside it. */
  cautions: readonly string[];
  /** Edition of the data: with the part and the need the key of a cache. */
  dataEdition: string;
}

/** Answers questions of fit. */
export interface FitChecker {
  /** Edition of the data behind every answer. */
  dataEdition: string;
  /** Says whether a part, by its id or by its facts, is what is needed. */
  check(question: { part: string | FitFacts; need: Need }): FitAnswer;
}

/**
 * Makes a checker for a shop's server or page: parts by id in, one of three answers with codes out.
 *
 * @remarks
 * Formula: none; what `fitData` worked out is looked up, and side, arm length, bolt circle and number of teeth compared.
 *
 * Validity: needs whose names the data know; anything else is `cannot-tell` with the fact that is missing. An unknown part
 * id is `cannot-tell`, missing fact `part`. Stated sizes of the square are not weighed: screenParts does that.
 *
 * Accuracy: that of the names, see `screenParts`. Pure and synchronous: the same question and the same `dataEdition` give
 * the same answer, so it may be cached under both.
 *
 * @param data - What `fitData` made, as it is or after a round trip through JSON.
 * @returns The checker.
 * @throws {@link DomainError} when the data are no fit data of a known format.
 * @example
 * ```ts
 * import { createFitChecker, fitData } from 'spindlewright';
 * const checker = createFitChecker(fitData({ parts: [{ partId: 'A1', kind: 'arm', interface: 'square-taper-iso' }] }));
 * checker.check({ part: 'A1', need: { format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis' } }).state;
 * // => 'cannot-tell'
 * ```
 * @see {@link fitData}
 */
export function createFitChecker(data: FitData): FitChecker {
  if (data?.format !== 'spindlewright-fit-data-1') {
    throw new DomainError('createFitChecker', [
      { path: 'format', received: JSON.stringify(data?.format) ?? 'nothing', allowed: '"spindlewright-fit-data-1"' },
    ]);
  }
  // Maps, since a key of the data may be the name of a method of every object.
  const pairs = byQuestion(data);
  const parts = new Map(Object.entries(data.parts));
  const circles = new Map(
    Object.entries(data.circles).map(([id, [boltCircleMm, boltCount, smallestRing]]): [string, Circle] => [
      id,
      { boltCircleMm, boltCount, smallestRing },
    ]),
  );
  const lookupFor = (wanted: Need['for']): MateLookup => {
    const own = pairs.get(wanted);
    return (question, part, need) => own?.get(question)?.get(part)?.get(need);
  };
  const lookups = {
    arm: lookupFor('arm'),
    spindle: lookupFor('spindle'),
    bolt: lookupFor('bolt'),
    chainring: lookupFor('chainring'),
    pedals: lookupFor('pedals'),
    puller: lookupFor('puller'),
  };
  const { cautions, dataEdition } = data;
  return {
    dataEdition,
    check({ part, need }) {
      const facts = typeof part === 'string' ? parts.get(part) : part;
      const told = (state: FitState, codes: readonly string[], missingFact?: string): FitAnswer => ({
        state,
        codes,
        ...(missingFact === undefined ? {} : { missingFact }),
        cautions,
        dataEdition,
      });
      if (facts === undefined) return told('cannot-tell', ['fact-missing'], 'part');
      if (!Object.hasOwn(lookups, need.for)) return told('cannot-tell', ['fact-missing'], 'need');
      const circle = need.boltCircle === undefined ? undefined : circles.get(need.boltCircle);
      if (need.for === 'chainring' && circle === undefined) return told('cannot-tell', ['fact-missing'], 'need');
      const { state, steps, missingFact } = decideFacts(need, facts, lookups[need.for], circle);
      const codes = steps.flatMap((step) => ('mate' in step ? step.mate.codes : [step.code]));
      return told(state, codes, missingFact);
    },
  };
}

type Answers = Map<string, Map<string, Map<string, Map<string, MateEntry>>>>;

/** The answers by kind, question, part and need, so that no key is put together at a check. */
function byQuestion({ pairs, answers }: FitData): Answers {
  const all: Answers = new Map();
  for (const [key, place] of Object.entries(pairs)) {
    const answer = answers[place];
    const [wanted = '', question = '', part = '', need = ''] = key.split(' ');
    if (answer === undefined) continue;
    const ofKind = within(all, wanted, () => new Map());
    const ofQuestion = within(ofKind, question, () => new Map());
    within(ofQuestion, part, () => new Map()).set(need, answer);
  }
  return all;
}

function within<T>(table: Map<string, T>, key: string, make: () => T): T {
  const found = table.get(key);
  if (found !== undefined) return found;
  const fresh = make();
  table.set(key, fresh);
  return fresh;
}
