// A record that has the form and nothing in it: the linters refuse it until every number and claim is filled in.
// Node only; not published.
import type { Datum } from '@spindlewright/quantity';
import { dataEdition } from '../src/data-edition.ts';
import type { NeighbourKind, NeighbourRecord } from '../src/neighbour.ts';
import type { Claim, InterfaceFamily, InterfaceRecord, ThreadRecord } from '../src/record.ts';

// `invented` is what no linter lets through, so a skeleton cannot be shipped by mistake.
const number = (unit: string, value = 1): Datum => ({ value, unit, standing: 'invented', sources: [] });
const claim = (id: string): Claim => ({ id, statement: 'To be written.', standing: 'invented', sources: [] });
const thread = (id: string, hand: 'right' | 'left' = 'right'): ThreadRecord => ({
  id,
  use: 'To be written',
  designation: 'M1x1',
  nominalDiameterMm: number('mm'),
  pitchMm: number('mm'),
  hand,
});

const GEOMETRIES = {
  'square-taper': {
    sets: [{ id: 'name-of-the-source', acrossFlatsAtEndMm: number('mm'), interpreted: [] }],
    fallback: { faceAngleDeg: number('deg'), flatLengthMm: number('mm') },
    handFitShoulderGapMm: number('mm'),
    handFitEndGapMm: number('mm'),
    claims: [],
  },
  spline: { splineCount: number('splines'), spindleDiameterMm: number('mm'), claims: [] },
  'face-spline': { toothCount: number('teeth'), outerDiameterMm: number('mm'), claims: [] },
  'through-spindle': { driveSideDiameterMm: number('mm'), nonDriveSideDiameterMm: number('mm'), claims: [] },
  cottered: { spindleDiameterMm: number('mm'), cotterDiameterMm: number('mm'), claims: [] },
  'one-piece': { shellBoreMm: number('mm'), claims: [] },
} as const;

const PARTS = {
  'shell-thread': {
    threads: { left: thread('left-cup'), right: thread('right-cup', 'left') },
    widths: [{ id: 'w-1', widthMm: number('mm') }],
    caliper: {},
  },
  'shell-bore': {
    seat: 'pressed-cup',
    bores: [{ id: 'b-1', boreMm: number('mm') }],
    widths: [{ id: 'w-1', widthMm: number('mm') }],
    spindles: [{ id: 's-1', spindleDiameterMm: number('mm') }],
  },
  fixing: { form: 'spindle-bolt', thread: thread('bolt'), heads: [] },
  'puller-thread': { thread: thread('puller') },
  'pedal-thread': { threads: { left: thread('left-pedal', 'left'), right: thread('right-pedal') } },
  'bolt-circle': {
    armCount: number('arms'),
    boltCircleDiameterMm: number('mm'),
    smallestRing: number('teeth'),
    holeSpacingMm: number('mm'),
  },
  convention: { topic: 'chainline', values: [{ id: 'value', use: 'To be written', quantity: number('mm') }] },
} as const;

/** Names of the skeletons: families of joints, and kinds of what stands beside them. */
export const skeletonNames: readonly (InterfaceFamily | NeighbourKind)[] = [
  ...(Object.keys(GEOMETRIES) as InterfaceFamily[]),
  ...(Object.keys(PARTS) as NeighbourKind[]),
];

/** A skeleton and the folder of `data/` in which it belongs; undefined for a name that is none. */
export function recordSkeleton(
  name: string,
  id: string,
): { folder: 'records' | 'neighbours'; record: InterfaceRecord | NeighbourRecord } | undefined {
  const head = { dataEdition, id, aliases: [] };
  const words = { title: 'To be written', summary: 'To be written.' };
  if (Object.hasOwn(GEOMETRIES, name)) {
    const family = name as InterfaceFamily;
    const record = {
      ...head,
      family,
      ...words,
      documents: [],
      interchange: { ...claim('interchange'), kind: 'published-sizes' },
      geometry: GEOMETRIES[family],
      axialStop: { kind: 'shoulder', claims: [claim('stop')] },
      drawnTight: { by: 'centre-bolt-or-nut', claims: [claim('drawn')] },
      fixingThreads: [thread('bolt')],
      fixingHeads: [],
      puller: { threads: [], tip: [], practice: [claim('taking-off')] },
      indexPositions: { count: number('positions'), claims: [] },
      torquePractice: [],
      lubrication: [],
      retightening: [],
      failures: [],
      inspection: [],
      mating: [],
      conflicts: [],
      missing: [],
    } as unknown as InterfaceRecord;
    return { folder: 'records', record };
  }
  if (!Object.hasOwn(PARTS, name)) return undefined;
  const kind = name as NeighbourKind;
  const record = {
    ...head,
    kind,
    ...words,
    ...PARTS[kind],
    documents: [],
    claims: [claim('fact')],
    torquePractice: [],
    mating: [],
    conflicts: [],
    missing: [],
  } as unknown as NeighbourRecord;
  return { folder: 'neighbours', record };
}
