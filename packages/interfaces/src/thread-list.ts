import type { Datum } from '@spindlewright/quantity';
import { neighbourRecords } from './neighbours/registry.generated.ts';
import { interfaceRecords } from './records/registry.generated.ts';
import { type ThreadRow, threadRows } from './thread-rows.ts';

/** A thread that a reading may belong to: one designation and one hand, wherever it is used. @internal */
export interface KnownThread {
  id: string;
  designation: string;
  hand: 'right' | 'left';
  metric: boolean;
  uses: readonly string[];
  records: readonly string[];
  /** Nominal diameters in mm, each value that sources give once. */
  diametersMm: readonly { value: number; set: string }[];
  /** Pitches in mm; none where no source gives one. */
  pitchesMm: readonly number[];
  sources: readonly string[];
}

/** The threads of every record and of the neighbours, each designation and hand once, in the order of the records. @internal */
export const threadList = (): KnownThread[] =>
  knownThreads([...interfaceRecords.flatMap(threadRows), ...neighbourRecords.flatMap(threadRows)]);

/** Threads by designation and hand; sizes, uses and sources of like ones are put together, never averaged. @internal */
export function knownThreads(rows: readonly ThreadRow[]): KnownThread[] {
  const groups = new Map<string, ThreadRow[]>();
  for (const row of rows) {
    const key = idOf(row);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups].flatMap(([id, members]) => {
    const [first] = members;
    if (first === undefined) return [];
    const { designation, hand, threadsPerInch } = first.thread;
    const threads = members.map(({ thread }) => thread);
    const diameters = threads.flatMap(({ nominalDiameterMm }) => withAlternatives(nominalDiameterMm));
    const data = threads.flatMap((thread) => [thread.nominalDiameterMm, thread.pitchMm, thread.threadsPerInch]);
    return [
      {
        id,
        designation,
        hand,
        metric: threadsPerInch === undefined,
        uses: [...new Set(threads.map(({ use }) => use))],
        records: [...new Set(members.map(({ record }) => record))],
        diametersMm: [...new Set(diameters.map(({ value }) => value))].map((value) => ({
          value,
          set: `diameter-${String(value).replace('.', '-')}`,
        })),
        pitchesMm: [...new Set(threads.flatMap(pitchesOf))],
        sources: [...new Set(data.flatMap((datum) => (datum === undefined ? [] : sourcesOf(datum))))].sort(),
      },
    ];
  });
}

/** The pitches that sources give for a thread; a count of threads an inch is exact where the pitch beside it is rounded. */
function pitchesOf({ pitchMm, threadsPerInch }: ThreadRow['thread']): number[] {
  if (threadsPerInch !== undefined) return withAlternatives(threadsPerInch).map(({ value }) => MM_PER_INCH / value);
  return pitchMm === undefined ? [] : withAlternatives(pitchMm).map(({ value }) => value);
}

const MM_PER_INCH = 25.4;

const withAlternatives = (datum: Datum): Datum[] => [datum, ...(datum.alternatives ?? [])];

const sourcesOf = (datum: Datum): string[] => withAlternatives(datum).flatMap(({ sources }) => sources);

function idOf({ thread: { designation, hand } }: ThreadRow): string {
  const slug = designation
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return hand === 'left' ? `${slug}-left` : slug;
}
