import { COS_HALF_PROFILE } from './joint.ts';
import type { Thread } from './thread.ts';

// The arms of `leverArms`, one number a row instead of a record: the same operations in the same order, so that a row
// equals the single conversion to the last digit (tested). A loop for each way of the usual method, since a choice inside
// it costs a third of the speed; the arm is reckoned before it is known whether the row counts, so that the comparisons run
// beside the divisions.

/** Columns that go in and come out. @internal */
export interface Rows {
  values: Float64Array;
  threadFriction: Float64Array;
  bearingFriction: Float64Array;
  out: Float64Array;
  refused: Uint8Array;
}

/** What the rows share by the exact formula. @internal */
export interface ExactArms {
  halfPitchDiameterMm: number;
  tangent: number;
  radiusMm: number;
}

const counts = (value: number, inThread: number, underHead: number): boolean =>
  value >= 0 && value <= 1e9 && inThread > 0 && inThread <= 1 && underHead > 0 && underHead <= 1;

/** Torques by the exact formula. @internal */
export function exactTorques(rows: Rows, { halfPitchDiameterMm, tangent, radiusMm }: ExactArms): void {
  const { values, threadFriction, bearingFriction, out, refused } = rows;
  for (let row = 0; row < values.length; row++) {
    const value = values[row] as number;
    const inThread = threadFriction[row] as number;
    const underHead = bearingFriction[row] as number;
    const flank = inThread / COS_HALF_PROFILE;
    const armMm = (halfPitchDiameterMm * (tangent + flank)) / (1 - flank * tangent) + underHead * radiusMm;
    const good = counts(value, inThread, underHead);
    out[row] = good ? (value * armMm) / 1000 : 0;
    refused[row] = good ? 0 : 1;
  }
}

/** Preloads by the exact formula. @internal */
export function exactPreloads(rows: Rows, { halfPitchDiameterMm, tangent, radiusMm }: ExactArms): void {
  const { values, threadFriction, bearingFriction, out, refused } = rows;
  for (let row = 0; row < values.length; row++) {
    const value = values[row] as number;
    const inThread = threadFriction[row] as number;
    const underHead = bearingFriction[row] as number;
    const flank = inThread / COS_HALF_PROFILE;
    const armMm = (halfPitchDiameterMm * (tangent + flank)) / (1 - flank * tangent) + underHead * radiusMm;
    const good = counts(value, inThread, underHead);
    out[row] = good ? (value * 1000) / armMm : 0;
    refused[row] = good ? 0 : 1;
  }
}

/** Either way by the linear formulas. @internal */
export function linearRows(
  rows: Rows,
  joint: { thread: Thread; radiusMm: number; vdi: boolean; toTorque: boolean },
): void {
  const { values, threadFriction, bearingFriction, out, refused } = rows;
  const { thread, radiusMm, vdi, toTorque } = joint;
  const riseMm = vdi ? 0.16 * thread.pitchMm : thread.pitchMm / (2 * Math.PI);
  const vdiArmMm = 0.58 * thread.pitchDiameterMm;
  const halfPitchDiameterMm = thread.pitchDiameterMm / 2;
  for (let row = 0; row < values.length; row++) {
    const value = values[row] as number;
    const inThread = threadFriction[row] as number;
    const underHead = bearingFriction[row] as number;
    const flankMm = vdi ? vdiArmMm * inThread : (inThread / COS_HALF_PROFILE) * halfPitchDiameterMm;
    const armMm = riseMm + flankMm + underHead * radiusMm;
    const good = counts(value, inThread, underHead);
    out[row] = good ? (toTorque ? (value * armMm) / 1000 : (value * 1000) / armMm) : 0;
    refused[row] = good ? 0 : 1;
  }
}
