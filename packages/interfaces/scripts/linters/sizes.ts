import type { ThreadRecord } from '../../src/record.ts';
import { threadRows } from '../../src/thread-rows.ts';
import type { RawData } from '../raw-data.ts';
import type { Linter } from './linter.ts';

/** Pairs that have to rise, smaller first. */
function risingPairs(data: RawData): [string, number | undefined, number | undefined][] {
  const threads = [...data.records, ...data.neighbours]
    .flatMap(threadRows)
    .flatMap(({ rowId, thread }): [string, number | undefined, number | undefined][] => [
      [`${rowId} pitch, a third of the diameter`, thread.pitchMm?.value, thread.nominalDiameterMm.value / 3],
      [`${rowId} external minor, internal minor`, thread.minorDiameterMm?.value, thread.internalMinorDiameterMm?.value],
      [`${rowId} internal minor, pitch diameter`, thread.internalMinorDiameterMm?.value, thread.pitchDiameterMm?.value],
      [`${rowId} pitch diameter, nominal`, thread.pitchDiameterMm?.value, thread.nominalDiameterMm.value],
    ]);
  const joints = data.records.flatMap((record): [string, number | undefined, number | undefined][] => {
    const { geometry, id } = record;
    switch (record.family) {
      case 'spline': {
        const { minorDiameterMm, majorDiameterMm } = record.geometry;
        return [[`${id} minor, major`, minorDiameterMm?.value, majorDiameterMm?.value]];
      }
      case 'cottered': {
        const { cotterDiameterMm, spindleDiameterMm } = record.geometry;
        return [[`${id} cotter, spindle`, cotterDiameterMm.value, spindleDiameterMm.value]];
      }
      case 'square-taper': {
        const { handFitShoulderGapMm, fallback } = record.geometry;
        return [[`${id} gap, flats`, handFitShoulderGapMm.upper, fallback.flatLengthMm.value]];
      }
      case 'through-spindle': {
        const { nonDriveSideDiameterMm, driveSideDiameterMm } = record.geometry;
        // Never larger at the end over which the bearings go on; equal ones are not out of order.
        return [[`${id} non-drive, drive`, nonDriveSideDiameterMm.value - 1e-9, driveSideDiameterMm.value]];
      }
      default:
        return geometry === undefined ? [[id, 1, 0]] : [];
    }
  });
  const shells = data.neighbours.flatMap((record): [string, number | undefined, number | undefined][] => {
    if (record.kind === 'shell-thread') {
      const { shellInsideMm, cupOutsideMm } = record.caliper;
      return [[`${record.id} shell inside, cup outside`, shellInsideMm?.value, cupOutsideMm?.value]];
    }
    if (record.kind !== 'shell-bore') return [];
    return record.spindles.flatMap((spindle) =>
      record.bores.map(({ boreMm }): [string, number, number] => [
        `${record.id} spindle, bore`,
        spindle.spindleDiameterMm.value,
        boreMm.value,
      ]),
    );
  });
  return [...threads, ...joints, ...shells];
}

export const innerBelowOuter: Linter = {
  id: 'inner-below-outer',
  rule: 'inner sizes are smaller than outer ones',
  check: (data) =>
    risingPairs(data).flatMap(([place, inner, outer]) =>
      inner === undefined || outer === undefined || inner < outer
        ? []
        : [{ place, message: `${inner} is not below ${outer}` }],
    ),
};

const MM_PER_INCH = 25.4;

/** Derived sizes of a thread by ISO 68-1 and 898-1, or ASME B1.1 for inch threads. */
function threadSizes({ nominalDiameterMm, pitchMm, threadsPerInch }: ThreadRecord): Record<string, number> | undefined {
  const d = nominalDiameterMm.value;
  const p = threadsPerInch === undefined ? pitchMm?.value : MM_PER_INCH / threadsPerInch.value;
  if (p === undefined) return undefined;
  const [minor, stress] = threadsPerInch === undefined ? [1.226869, 0.938194] : [1.299038, 0.974279];
  return {
    pitchMm: p,
    pitchDiameterMm: d - 0.649519 * p,
    minorDiameterMm: d - minor * p,
    internalMinorDiameterMm: d - 1.082532 * p,
    stressAreaMm2: (Math.PI / 4) * (d - stress * p) ** 2,
  };
}

export const threadGeometry: Linter = {
  id: 'thread-geometry',
  rule: 'derived sizes of a thread follow from its diameter and pitch, and its designation says both',
  check: (data) =>
    [...data.records, ...data.neighbours].flatMap(threadRows).flatMap(({ rowId, thread }) => {
      const sizes = Object.entries(threadSizes(thread) ?? {}).flatMap(([key, value]) => {
        const stated = thread[key as 'pitchMm']?.value;
        // Half a unit of the last place that is written.
        const off = stated === undefined ? 0 : Math.abs(stated - value);
        return off <= (key === 'stressAreaMm2' ? 0.0005 : 0.00005) + 1e-9
          ? []
          : [{ place: `${rowId}.${key}`, message: `${stated} is not ${value}` }];
      });
      const named = thread.designation === designationOf(thread);
      return named ? sizes : [...sizes, { place: `${rowId}.designation`, message: `not ${designationOf(thread)}` }];
    }),
};

const INCHES: Record<number, string> = { 0.5: '1/2 in', 0.5625: '9/16 in', 1.37: '1.370 in', 1.375: '1 3/8 in' };

/** The designation that says diameter and pitch; a pitch left out of a metric one is in no source. */
function designationOf({ nominalDiameterMm: { value: d }, pitchMm, threadsPerInch }: ThreadRecord): string {
  if (threadsPerInch === undefined) return `M${d}${pitchMm === undefined ? '' : `x${pitchMm.value}`}`;
  const inches = INCHES[Number((d / MM_PER_INCH).toFixed(4))];
  return `${inches ?? `${d} mm`} x ${threadsPerInch.value} tpi`;
}

export const holeSpacing: Linter = {
  id: 'hole-spacing',
  rule: 'the distance between chainring bolts follows from circle and number',
  check: ({ neighbours }) =>
    neighbours.flatMap((record) => {
      if (record.kind !== 'bolt-circle') return [];
      const { armCount, boltCircleDiameterMm, holeSpacingMm } = record;
      const value = boltCircleDiameterMm.value * Math.sin(Math.PI / armCount.value);
      return Math.abs(value - holeSpacingMm.value) <= 0.005 + 1e-9
        ? []
        : [{ place: `${record.id}:holeSpacingMm`, message: `${holeSpacingMm.value} is not ${value}` }];
    }),
};
