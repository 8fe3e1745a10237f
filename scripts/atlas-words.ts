// What the pages of the atlas call kinds of records, places in them and numbers.
import type { InterfaceFamily, NeighbourKind } from '@spindlewright/interfaces';
import { numberText } from './page-text.ts';

const FAMILIES: Record<InterfaceFamily, string> = {
  'square-taper': 'Joints: square taper',
  spline: 'Joints: splines',
  'face-spline': 'Joints: face spline',
  'through-spindle': 'Joints: through spindle',
  cottered: 'Joints: cottered',
  'one-piece': 'Joints: one-piece crank',
};

const KINDS: Record<NeighbourKind, string> = {
  fixing: 'Bolts and nuts',
  'puller-thread': 'Puller threads',
  'pedal-thread': 'Pedal threads',
  'bolt-circle': 'Bolt circles of chainrings',
  'shell-thread': 'Shells with threads',
  'shell-bore': 'Shells with plain bores',
  convention: 'Conventions: lengths, chainlines, codes',
};

/** The group of a record, for people. */
export const groupName = (record: { family: InterfaceFamily } | { kind: NeighbourKind }): string =>
  'family' in record ? FAMILIES[record.family] : KINDS[record.kind];

const ORDER = [...Object.values(FAMILIES), ...Object.values(KINDS)];
const natural = new Intl.Collator('en', { numeric: true });

/** Orders records by group, and within one as people count: 56 before 104. */
export const byGroup = (a: { group: string; id: string }, b: { group: string; id: string }): number =>
  ORDER.indexOf(a.group) - ORDER.indexOf(b.group) || natural.compare(a.id, b.id);

const NAMES: Record<string, string> = {
  left: 'left thread',
  right: 'right thread',
  fallback: 'where a set gives none',
};

/** A name of the data as words, without its unit. */
const words = (name: string): string =>
  NAMES[name] ??
  name
    .replace(/Mm2?$|Deg$|Nm$|MPa$/, '')
    .replace(/([A-Z])/g, ' $1')
    .replaceAll('-', ' ')
    .toLowerCase();

interface Step {
  name: string;
  id?: string;
}

const stepsOf = (path: string): Step[] =>
  [...path.matchAll(/([^.[\]]+)(?:\[([^\]]*)\])?/g)].map(([, name = '', id]) => ({
    name,
    ...(id === undefined ? {} : { id }),
  }));

// Names that say where the data keeps something, and nothing about it.
const SILENT = new Set(['geometry', 'value', 'quantity', 'values', 'claims', 'threads', 'alternatives']);

/** A place in a record without the members of its lists, so that two records can be set side by side. */
export function placeWords(path: string): string {
  const names = stepsOf(path).map(({ name }) => name);
  const told = names.filter((name) => !SILENT.has(name)).map(words);
  // Only a list of values or statements is left without a name: it goes by its own.
  return told.length === 0 ? (names.find((name) => name !== 'geometry') ?? path) : told.reverse().join(', ');
}

// What a member of a list is, before its name; lists whose members need no more than their name are left out.
const MEMBER: Record<string, string> = {
  fixingThreads: 'thread ',
  threads: 'thread ',
  fixingHeads: 'head ',
  heads: 'head ',
  mating: 'mating: ',
  failures: 'failure: ',
  retightening: 'retightening: ',
};

interface Member {
  id?: string;
  designation?: string;
  use?: string;
  joint?: string;
}

const lowerFirst = (text: string): string => text.replace(/^[A-Z](?=[a-z])/, (c) => c.toLowerCase());

function memberWords(list: string, { id = '', designation, use, joint }: Member, index: number): string {
  if (list === 'sets') return `set\u00a0${index + 1}`;
  if (designation !== undefined) return `${designation}${use === undefined ? '' : ` (${lowerFirst(use)})`}`;
  if (use !== undefined) return lowerFirst(use);
  if (joint !== undefined) return lowerFirst(joint);
  // The id of a width, a bore or a spindle is its number once more.
  return ['widths', 'bores', 'spindles'].includes(list) ? '' : words(id);
}

/** What a number of a record is, its members by the names that people give them. */
export function numberWords(path: string, data: object): string {
  const steps = stepsOf(path);
  const around: string[] = [];
  let node: unknown = data;
  for (const { name, id } of steps.filter((step) => step.name !== 'alternatives')) {
    node = (node as Record<string, unknown> | undefined)?.[name];
    if (id !== undefined && Array.isArray(node)) {
      const index = node.findIndex((member: Member) => member.id === id);
      node = node[index];
      around.push(`${MEMBER[name] ?? ''}${memberWords(name, (node ?? { id }) as Member, index)}`.trim());
    } else if (!SILENT.has(name)) around.push(words(name));
  }
  const alternative = steps.some(({ name }) => name === 'alternatives') ? ['by another source'] : [];
  const last = around.pop() ?? words(steps[0]?.name ?? '');
  return [last, ...alternative, ...around].filter((part) => part !== '').join(', ');
}

/** A number with its limits and unit; a line may end before the limits only. */
export function valueWords(row: { value: number; unit: string; lower?: number; upper?: number }): string {
  const [lower, upper] = [row.lower, row.upper].map((limit) => (limit === undefined ? '…' : numberText(limit)));
  const limits = row.lower === undefined && row.upper === undefined ? '' : ` (${lower}\u00a0to\u00a0${upper})`;
  return `${numberText(row.value)}${limits}\u00a0${row.unit}`;
}

// Lists whose members are sizes of one thing; the others have an order of their own, what is usual first.
const SIZES = /^(values|bores|widths|spindles|fixingHeads|heads)\[/;

/** The numbers of a record in the order in which they are read: sizes of one thing as people count. */
export function inReadingOrder<Row extends { path: string }>(rows: readonly Row[]): Row[] {
  const listOf = (path: string): string => SIZES.exec(path)?.[1] ?? path;
  return rows
    .map((row, place) => ({ row, place: rows.findIndex(({ path }) => listOf(path) === listOf(row.path)), own: place }))
    .sort(
      (a, b) =>
        a.place - b.place ||
        natural.compare(stepsOf(a.row.path)[0]?.id ?? '', stepsOf(b.row.path)[0]?.id ?? '') ||
        a.own - b.own,
    )
    .map(({ row }) => row);
}
