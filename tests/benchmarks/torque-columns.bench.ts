// The column form of the conversions against a bare loop over the same arrays in the same run, which makes its one array
// anew each time; the column form checks each row, makes a second array of refusals, or writes into given ones. Wanted: 0.6
// of its speed or more; the table has the ratio.
import {
  preloadFromTorque,
  preloadFromTorqueColumns,
  threadFor,
  torqueFromPreload,
  torqueFromPreloadColumns,
} from '@spindlewright/torque';
import { expect, it } from 'vitest';

const ROWS = 100_000;
const thread = threadFor('M8x1');
const bearing = { outerDiameterMm: 16, holeDiameterMm: 9 };
const preloadN = Float64Array.from({ length: ROWS }, (_, row) => 5000 + (row % 20_000));
const torqueNm = Float64Array.from({ length: ROWS }, (_, row) => 10 + (row % 40));
const threadFriction = Float64Array.from({ length: ROWS }, (_, row) => 0.08 + (row % 9) / 100);
const bearingFriction = Float64Array.from({ length: ROWS }, (_, row) => 0.08 + (row % 7) / 100);
const given = new Float64Array(ROWS);
const refused = new Uint8Array(ROWS);
const joint = { thread, bearing, threadFriction, bearingFriction };

/** The formula alone, written out: no check, no finding, no choice of method. */
function bareLoop(column: Float64Array, inverse: boolean): Float64Array {
  const out = new Float64Array(column.length);
  const tangent = thread.pitchMm / (Math.PI * thread.pitchDiameterMm);
  const headRadiusMm = (bearing.outerDiameterMm + bearing.holeDiameterMm) / 4;
  for (let row = 0; row < column.length; row++) {
    const flank = (threadFriction[row] ?? 0) / 0.8660254037844387;
    const inThreadMm = ((thread.pitchDiameterMm / 2) * (tangent + flank)) / (1 - flank * tangent);
    const armMm = inThreadMm + (bearingFriction[row] ?? 0) * headRadiusMm;
    out[row] = inverse ? ((column[row] ?? 0) * 1000) / armMm : ((column[row] ?? 0) * armMm) / 1000;
  }
  return out;
}

it('torques for a hundred thousand preloads', async ({ bench }) => {
  let kept = bareLoop(preloadN, false);
  const bare = kept;
  await bench.compare(
    bench('baseline: bare loop over the same arrays', () => {
      kept = bareLoop(preloadN, false);
    }),
    bench('torqueFromPreloadColumns', () => {
      kept = torqueFromPreloadColumns({ preloadN, ...joint }).torqueNm;
    }),
    bench('torqueFromPreloadColumns into given arrays', () => {
      kept = torqueFromPreloadColumns({ preloadN, ...joint, out: { torqueNm: given, refused } }).torqueNm;
    }),
  );
  expect(Math.max(...kept.map((value, row) => Math.abs(value / (bare[row] ?? 0) - 1)).slice(0, 1000))).toBeLessThan(
    1e-12,
  );
  expect(kept[5]).toBeCloseTo(
    torqueFromPreload({
      preloadN: preloadN[5] ?? 0,
      thread,
      bearing,
      threadFriction: threadFriction[5] ?? 0,
      bearingFriction: bearingFriction[5] ?? 0,
    }).torqueNm,
    12,
  );
});

it('preloads for a hundred thousand torques', async ({ bench }) => {
  let kept = bareLoop(torqueNm, true);
  await bench.compare(
    bench('baseline: bare loop over the same arrays', () => {
      kept = bareLoop(torqueNm, true);
    }),
    bench('preloadFromTorqueColumns', () => {
      kept = preloadFromTorqueColumns({ torqueNm, ...joint }).preloadN;
    }),
    bench('preloadFromTorqueColumns into given arrays', () => {
      kept = preloadFromTorqueColumns({ torqueNm, ...joint, out: { preloadN: given, refused } }).preloadN;
    }),
  );
  expect(kept[5]).toBeCloseTo(
    preloadFromTorque({
      torqueNm: torqueNm[5] ?? 0,
      thread,
      bearing,
      threadFriction: threadFriction[5] ?? 0,
      bearingFriction: bearingFriction[5] ?? 0,
    }).preloadN,
    8,
  );
});
