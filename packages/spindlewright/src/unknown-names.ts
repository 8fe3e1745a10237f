import { type DomainIssue, hardLimits, isDomainError, type Measurand } from '@spindlewright/quantity';
import { propertyClass, threadFor } from '@spindlewright/torque';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';

/** Names in a job that only another package can judge, refused by their path in the job. @internal */
export function unknownNames(job: Job): DomainIssue[] {
  const { fixing } = job;
  if (fixing === undefined) return [];
  const threads = (['thread', 'spindleThread'] as const).flatMap((key) => {
    const designation = fixing[key];
    return designation === undefined ? [] : tried(`fixing.${key}`, designation, () => threadFor(designation));
  });
  const { bearingOuterDiameterMm } = fixing;
  if (threads.length === 0 && bearingOuterDiameterMm !== undefined) {
    const holeMm = threadFor(fixing.thread).majorDiameterMm + jobDefaults.bearingHoleClearance.value;
    if (hardLimits(bearingOuterDiameterMm).lower <= holeMm) {
      const allowed = `more than the hole under the head, ${holeMm} mm`;
      threads.push({ path: 'fixing.bearingOuterDiameterMm', received: describe(bearingOuterDiameterMm), allowed });
    }
  }
  const { propertyClass: id } = fixing;
  if (id === undefined || threads.length > 0) return threads;
  return tried('fixing.propertyClass', id, () => propertyClass(id, threadFor(fixing.thread).majorDiameterMm));
}

function tried(path: string, name: string, look: () => unknown): DomainIssue[] {
  try {
    look();
    return [];
  } catch (error) {
    if (!isDomainError(error)) throw error;
    const { allowed, nearest } = error;
    return [{ path, received: JSON.stringify(name), allowed, ...(nearest === undefined ? {} : { nearest }) }];
  }
}

const describe = (reading: Measurand): string =>
  typeof reading === 'number' ? String(reading) : JSON.stringify(reading);
