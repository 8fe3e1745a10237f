import { compareSides, type Diagnosis, diagnose, type SideComparison } from '@spindlewright/diagnosis';
import { DomainError, isDomainError } from '@spindlewright/quantity';
import type { Job } from './job.ts';
import { jointOf } from './joint-kind.ts';

/** What was found out about the joint. */
export interface DiagnosisPart {
  /** Diagnosis of the side of the job. */
  result: Diagnosis;
  /** Both sides compared, when the job tells of the other one. */
  comparison?: SideComparison;
}

/** Diagnoses the joint from the observations of a job, both sides when it tells of both. @internal */
export function diagnosisOf(job: Job): DiagnosisPart | undefined {
  const { observations, measurements, otherSide, side } = job;
  if (observations === undefined) return undefined;
  const joint = jointOf(job);
  const here = { observations, ...(measurements === undefined ? {} : { measurements }) };
  if (otherSide === undefined) return { result: withJobPaths('', () => diagnose({ joint, side, ...here })) };
  const there = {
    observations: otherSide.observations,
    ...(otherSide.measurements === undefined ? {} : { measurements: otherSide.measurements }),
  };
  // Refusals name the field of the job, so each side is looked at under its own path before both are compared.
  withJobPaths('', () => diagnose({ joint, side, ...here }));
  withJobPaths('otherSide.', () => diagnose({ joint, ...there }));
  const comparison = compareSides({
    joint,
    drive: side === 'drive' ? here : there,
    nonDrive: side === 'drive' ? there : here,
  });
  return { result: side === 'drive' ? comparison.drive : comparison.nonDrive, comparison };
}

function withJobPaths<T>(prefix: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!isDomainError(error)) throw error;
    const [first, ...rest] = error.issues.map((issue) => ({ ...issue, path: prefix + issue.path }));
    if (first === undefined) throw error;
    throw new DomainError('workJob', [first, ...rest]);
  }
}
