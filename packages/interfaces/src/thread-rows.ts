import type { NeighbourRecord } from './neighbour.ts';
import type { InterfaceRecord, ThreadRecord } from './record.ts';

/** A thread with the record that holds it. */
export interface ThreadRow {
  /** Stable id: record and path, made of names. */
  rowId: string;
  /** Id of the record. */
  record: string;
  /** What the thread does: holds a part on, pulls an arm off, carries a pedal, or sits in a shell. */
  purpose: 'fixing' | 'puller' | 'pedal' | 'shell';
  /** Side of the bicycle, for threads that belong to one. */
  side?: 'left' | 'right';
  /** The thread, shared with its record. */
  thread: ThreadRecord;
}

/** The threads of a record, in its order. @internal */
export function threadRows(record: InterfaceRecord | NeighbourRecord): ThreadRow[] {
  const row = (
    purpose: ThreadRow['purpose'],
    path: string,
    thread: ThreadRecord,
    side?: 'left' | 'right',
  ): ThreadRow => ({
    rowId: `${record.id}:${path}`,
    record: record.id,
    purpose,
    ...(side === undefined ? {} : { side }),
    thread,
  });
  if ('family' in record) {
    return [
      ...record.fixingThreads.map((thread) => row('fixing', `fixingThreads[${thread.id}]`, thread)),
      ...record.puller.threads.map((thread) => row('puller', `puller.threads[${thread.id}]`, thread)),
    ];
  }
  switch (record.kind) {
    case 'shell-thread':
    case 'pedal-thread': {
      const purpose = record.kind === 'shell-thread' ? 'shell' : 'pedal';
      const { left, right } = record.threads;
      return [row(purpose, 'threads.left', left, 'left'), row(purpose, 'threads.right', right, 'right')];
    }
    case 'fixing':
      return [row('fixing', 'thread', record.thread)];
    case 'puller-thread':
      return [row('puller', 'thread', record.thread)];
    default:
      return [];
  }
}
