import { type DomainIssue, isDomainError } from '@spindlewright/quantity';
import { propertyClass, threadFor } from '@spindlewright/torque';
import type { Job } from './job.ts';

/** Names in a job that only another package can judge, refused by their path in the job. @internal */
export function unknownNames(job: Job): DomainIssue[] {
  const { fixing } = job;
  if (fixing === undefined) return [];
  const threads = (['thread', 'spindleThread'] as const).flatMap((key) => {
    const designation = fixing[key];
    return designation === undefined ? [] : tried(`fixing.${key}`, designation, () => threadFor(designation));
  });
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
