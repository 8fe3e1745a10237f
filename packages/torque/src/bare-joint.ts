import { DomainError } from '@spindlewright/quantity';
import { type Bearing, isSquare, THINNEST_RING_MM } from './bearing.ts';
import { type FrictionJoint, leverArms } from './joint.ts';
import { type Thread, threadFault } from './thread.ts';

/** Lever arm of tightening in mm, after the checks of the numbers that it is made of. @internal */
export function bareArmMm(where: string, joint: FrictionJoint): number {
  const { thread, bearing, threadFriction, bearingFriction, method = 'exact' } = asObject(where, '', joint);
  asObject(where, 'thread', thread);
  for (const field of LENGTHS) inRange(where, `thread.${field}`, thread[field], 0.001, 1100);
  inRange(where, 'thread.stressAreaMm2', thread.stressAreaMm2, 1e-6, 1e6);
  inRange(where, 'thread.leadAngleDeg', thread.leadAngleDeg, Number.MIN_VALUE, 20);
  const fault = threadFault(thread);
  if (fault !== undefined) throw refusal(where, `thread.${fault.field}`, fault.received, fault.allowed);
  checkFace(where, asObject(where, 'bearing', bearing));
  inRange(where, 'threadFriction', threadFriction, Number.MIN_VALUE, 1);
  inRange(where, 'bearingFriction', bearingFriction, Number.MIN_VALUE, 1);
  if (!METHODS.includes(method)) throw refusal(where, 'method', String(method), METHODS.join(', '));
  return leverArms({ thread, bearing, threadFriction, bearingFriction, method }).tightenMm;
}

const METHODS = ['exact', 'vdi-2230', 'nut-factor'];

const LENGTHS = [
  'majorDiameterMm',
  'pitchMm',
  'pitchDiameterMm',
  'minorDiameterMm',
  'internalMinorDiameterMm',
  'stressDiameterMm',
] as const satisfies readonly (keyof Thread)[];

function checkFace(where: string, bearing: Bearing): void {
  inRange(where, 'bearing.outerDiameterMm', bearing.outerDiameterMm, 0.1, 500);
  const widestMm = bearing.outerDiameterMm - THINNEST_RING_MM;
  if (isSquare(bearing)) {
    inRange(where, 'bearing.squareHoleMm', bearing.squareHoleMm, 0.1, widestMm);
    if (bearing.cornerReliefMm !== undefined) {
      inRange(where, 'bearing.cornerReliefMm', bearing.cornerReliefMm, 0, bearing.squareHoleMm / 2);
    }
  } else inRange(where, 'bearing.holeDiameterMm', bearing.holeDiameterMm, 0, widestMm);
}

function asObject<T>(where: string, path: string, value: T): T {
  if (typeof value === 'object' && value !== null) return value;
  throw refusal(where, path, String(value), 'an object');
}

/** Refuses a number outside its range. @internal */
export function inRange(where: string, path: string, value: unknown, lowest: number, highest: number): void {
  if (typeof value === 'number' && value >= lowest && value <= highest) return;
  const from = lowest === Number.MIN_VALUE ? 'above 0' : `from ${lowest}`;
  throw refusal(where, path, String(value), `a number ${from} to ${highest}`);
}

const refusal = (where: string, path: string, received: string, allowed: string): DomainError =>
  new DomainError(where, [{ path, received, allowed }]);
