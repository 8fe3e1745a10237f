import { dataEdition, version as interfacesVersion } from '@spindlewright/interfaces';
import type { Finding } from '@spindlewright/quantity';
import { version as taperVersion } from '@spindlewright/taper';
import { version } from '../version.ts';
import { decideFacts } from './decide-facts.ts';
import { idSet } from './id-set.ts';
import type { Mapping } from './mapping.ts';
import { circleOf, mateLookup } from './mate-lookup.ts';
import type { Need } from './need.ts';
import type { Facts, PartField } from './part.ts';
import type { Row } from './read-cell.ts';
import { fieldsFor, rowReader } from './read-row.ts';
import { type Outcome, outcomeOf, say, unmappedOf } from './screen-outcome.ts';
import type { ScreenCount, ScreenedPart, ScreenSummary, UnmappedWord } from './screened.ts';
import { type JudgedSeat, seatByReadings } from './seat-by-readings.ts';

/** Judges rows one by one and counts them. @internal */
export interface Screener {
  /** Judges a row. */
  judge(row: unknown, line: number): ScreenedPart;
  /** Judges a row whose form is known: returns what is shared with all rows alike, for a writer that keeps it as text. */
  judgeShared(row: unknown, take: (partId: string, outcome: Outcome) => void): void;
  /** Counts a row that a reader could not read. */
  refuse(line: number, reason: Finding): ScreenedPart;
  /** What has come so far. */
  summary(): ScreenSummary;
}

interface Counted {
  outcome: Outcome;
  /** The same with the mark of a repeated id, made when it is needed. */
  repeated?: Outcome;
  rowCount: number;
  words: readonly (readonly [PartField, string])[];
}

/** More outcomes than a catalogue of sane columns has; beyond it the memory is emptied, so that no file can fill it. */
const MOST_OUTCOMES = 20_000;
const MOST_WORDS = 2_000;
const SHOWN_WORDS = 200;

/** Makes a screener for one need. @internal */
export function screener(need: Need, mapping: Mapping | undefined): Screener {
  const reader = rowReader(mapping, need);
  const lookup = mateLookup(need.for);
  const circle = circleOf(need.boltCircle);
  const outcomes = new Map<string, Counted>();
  // Most rows of a catalogue are another kind of part, which one cell tells.
  const otherKinds = new Map<unknown, Counted>();
  const squareFields = fieldsFor(need).square;
  const ids = idSet();
  const states = { fits: 0, 'does-not-fit': 0, 'cannot-tell': 0, refused: 0 };
  const reasons = new Map<string, number>();
  const missingFacts = new Map<string, number>();
  const words = new Map<string, UnmappedWord>();
  const sources = new Set<string>();
  let duplicates = 0;

  const tally = ({ outcome, rowCount, words: unmapped }: Counted): void => {
    if (rowCount === 0) return;
    bump(reasons, outcome.reasons[0]?.code ?? '', rowCount);
    if (outcome.missingFact !== undefined) bump(missingFacts, outcome.missingFact, rowCount);
    for (const [field, word] of unmapped) {
      const key = `${field}\u0001${word}`;
      const known = words.get(key);
      if (known !== undefined) known.rowCount += rowCount;
      else if (words.size < MOST_WORDS) words.set(key, { field, word, rowCount });
    }
  };
  const settleAll = (): void => {
    for (const table of [outcomes, otherKinds]) {
      for (const counted of table.values()) {
        tally(counted);
        counted.rowCount = 0;
      }
    }
  };
  const seats = new Map<string, JudgedSeat | undefined>();
  // A seat takes milliseconds, and rows that differ in side or length share it.
  const seatFor = (facts: Facts, own: string | undefined): JudgedSeat | undefined => {
    const key = JSON.stringify([own ?? '', squareFields.map((field) => facts.numbers[field] ?? '')]);
    if (!seats.has(key)) {
      if (seats.size >= MOST_OUTCOMES) seats.clear();
      seats.set(key, seatByReadings(need, facts, own));
    }
    return seats.get(key);
  };
  const work = (row: Row): Counted => {
    const facts = reader.factsOf(row);
    const outcome = outcomeOf(need, facts, decideFacts(need, facts, lookup, circle), seatFor);
    for (const reason of outcome.reasons) for (const source of reason.sources) sources.add(source);
    return { outcome, rowCount: 0, words: unmappedOf(facts) };
  };
  const countedOf = (row: Row): Counted => {
    const kind = reader.kindCell(row);
    const known = typeof kind === 'string' ? otherKinds.get(kind) : undefined;
    if (known !== undefined) return known;
    const key = reader.keyOf(row);
    const found = outcomes.get(key);
    if (found !== undefined) return found;
    if (outcomes.size >= MOST_OUTCOMES) {
      settleAll();
      outcomes.clear();
    }
    const fresh = work(row);
    const another = fresh.outcome.reasons[0]?.code === 'another-kind';
    if (another && typeof kind === 'string' && otherKinds.size < MOST_WORDS) otherKinds.set(kind, fresh);
    else outcomes.set(key, fresh);
    return fresh;
  };
  const refused = (reason: Finding): Outcome => {
    states.refused++;
    bump(reasons, reason.code, 1);
    return { state: 'refused', reasons: [reason] };
  };

  const judgeShared: Screener['judgeShared'] = (row, take) => {
    if (typeof row !== 'object' || row === null || Array.isArray(row)) {
      take('', refused(say('row-not-an-object', 'stop')));
      return;
    }
    const id = reader.idOf(row as Row);
    if ('code' in id) {
      take('', refused(say(id.code, 'stop', { received: id.received.slice(0, 60) })));
      return;
    }
    const counted = countedOf(row as Row);
    counted.rowCount++;
    states[counted.outcome.state]++;
    if (ids.add(id.id)) {
      take(id.id, counted.outcome);
      return;
    }
    duplicates++;
    counted.repeated ??= {
      ...counted.outcome,
      reasons: [...counted.outcome.reasons, say('duplicate-part-id', 'caution')],
    };
    take(id.id, counted.repeated);
  };
  return {
    judgeShared,
    judge(row, line) {
      let result: ScreenedPart | undefined;
      judgeShared(row, (partId, outcome) => {
        result = { line, partId, ...outcome };
      });
      return result as ScreenedPart;
    },
    refuse: (line, reason) => ({ line, partId: '', ...refused(reason) }),
    summary() {
      settleAll();
      const rowCount = states.fits + states['does-not-fit'] + states['cannot-tell'] + states.refused;
      return {
        rowCount,
        fitsCount: states.fits,
        doesNotFitCount: states['does-not-fit'],
        cannotTellCount: states['cannot-tell'],
        refusedCount: states.refused,
        duplicateCount: duplicates,
        reasons: counts(reasons),
        missingFacts: counts(missingFacts),
        unmappedWords: [...words.values()]
          .map((word) => ({ ...word }))
          .sort((a, b) => b.rowCount - a.rowCount || (a.word < b.word ? -1 : 1))
          .slice(0, SHOWN_WORDS),
        cautions: [say('screen-names-first', 'caution'), say('screen-not-ridden-untried', 'stop')],
        provenance: {
          versions: {
            spindlewright: version,
            '@spindlewright/interfaces': interfacesVersion,
            '@spindlewright/taper': taperVersion,
          },
          dataEdition,
          sources: [...sources].sort(),
        },
      };
    },
  };
}

const bump = (table: Map<string, number>, key: string, by: number): void => {
  table.set(key, (table.get(key) ?? 0) + by);
};

const counts = (table: ReadonlyMap<string, number>): ScreenCount[] =>
  [...table]
    .map(([what, rowCount]) => ({ what, rowCount }))
    .sort((a, b) => b.rowCount - a.rowCount || (a.what < b.what ? -1 : 1));
