import { listInterfaces, listNeighbours, type NeighbourKind } from '@spindlewright/interfaces';
import { checkInput, DomainError, type DomainIssue, type FieldSpecs, nearestName } from '@spindlewright/quantity';
import { jobFields } from '../job-fields.ts';
import type { Need } from './need.ts';
import type { PartKind } from './part.ts';

const KINDS: readonly PartKind[] = ['arm', 'spindle', 'bolt', 'chainring', 'pedals', 'puller'];

function fields(): FieldSpecs {
  const job = jobFields();
  const text = { type: 'text', optional: true } as const;
  const shared = (['spindle', 'arm', 'flats', 'fixing', 'partMakerTorqueNm'] as const).map((key) => [key, job[key]]);
  return {
    format: { type: 'choice', values: ['spindlewright-need-1'] },
    for: { type: 'choice', values: KINDS },
    interface: text,
    thread: text,
    boltCircle: text,
    shell: text,
    side: { type: 'choice', values: ['drive', 'non-drive'], optional: true },
    armLengthMm: { type: 'number', unit: 'mm', min: 60, max: 260, optional: true },
    spindleLengthMm: { type: 'number', unit: 'mm', min: 60, max: 220, optional: true },
    ...Object.fromEntries(shared),
  };
}

/** The fields of which a need has to hold one. */
const NEEDED: Readonly<Record<PartKind, readonly ('interface' | 'thread' | 'boltCircle')[]>> = {
  arm: ['interface'],
  spindle: ['interface'],
  bolt: ['interface', 'thread'],
  puller: ['interface', 'thread'],
  chainring: ['boltCircle'],
  pedals: ['thread'],
};

const THREADS: Readonly<Partial<Record<PartKind, NeighbourKind>>> = {
  bolt: 'fixing',
  puller: 'puller-thread',
  pedals: 'pedal-thread',
};

/** Refuses what is no need, with every fault by its path. @internal */
export function checkNeed(where: string, value: unknown): asserts value is Need {
  checkInput({ where, value, fields: fields() });
  const need = value as Need;
  const issues: DomainIssue[] = [];
  if (NEEDED[need.for].every((field) => need[field] === undefined)) {
    const path = NEEDED[need.for][0] ?? '';
    issues.push({ path, received: 'nothing', allowed: `what the ${need.for} has to go with` });
  }
  const known = (path: keyof Need, ids: readonly string[]): void => {
    const name = need[path];
    if (typeof name !== 'string' || ids.includes(name)) return;
    const nearest = nearestName({ name, known: ids });
    issues.push({
      path,
      received: JSON.stringify(name),
      allowed: ids.join(', '),
      ...(nearest === undefined ? {} : { nearest }),
    });
  };
  const neighbours = (...kinds: (NeighbourKind | undefined)[]): string[] =>
    listNeighbours().flatMap(({ id, kind }) => (kinds.includes(kind) ? [id] : []));
  known(
    'interface',
    listInterfaces().map(({ id }) => id),
  );
  known('thread', neighbours(THREADS[need.for]));
  known('boltCircle', neighbours('bolt-circle'));
  known('shell', neighbours('shell-thread', 'shell-bore'));
  const [first, ...rest] = issues;
  if (first !== undefined) throw new DomainError(where, [first, ...rest]);
}
