import { type FamilyId, type JointId, listJoints } from '@spindlewright/diagnosis';
import { getInterface, type InterfaceRecord, listInterfaces } from '@spindlewright/interfaces';
import { DomainError, type DomainIssue, nearestName } from '@spindlewright/quantity';
import type { Job } from './job.ts';

/** Square tapers whose sizes are published, so that a seat can be predicted. */
const TAPERS = ['square-taper-jis', 'square-taper-iso'];
const UNKNOWN = 'unknown';

/** True for an interface whose arm is pressed on a taper of published sizes. @internal */
export const hasTaperSeat = (id: string): boolean => TAPERS.includes(id);

/** True when a job is worked by its taper seat: both parts are such tapers, or not known. @internal */
export const isTaperJob = ({ interface: { spindle, arm } }: Job): boolean =>
  [spindle, arm].every((id) => id === UNKNOWN || hasTaperSeat(id));

/** The joint of a job for the diagnosis: the spindle's, else the arm's, else a square taper of either standard. @internal */
export function jointOf({ interface: { spindle, arm } }: Job): JointId {
  const modelled = (id: string): JointId | undefined =>
    listJoints().find((joint) => joint.modelled && joint.id === id)?.id as JointId | undefined;
  // A taper that only the arm names may still be the other one on the spindle.
  return modelled(spindle) ?? (hasTaperSeat(arm) ? 'square-taper' : (modelled(arm) ?? 'square-taper'));
}

/** The family of a joint. @internal */
export const familyOf = (joint: JointId): FamilyId =>
  listJoints().find(({ id }) => id === joint)?.family ?? 'square-taper';

/** Looks a record up and refuses an unknown id by its path in the job. @internal */
export function recordAt(path: string, id: string, others: readonly string[] = []): InterfaceRecord {
  const ids = listInterfaces().map((record) => record.id);
  if (ids.includes(id)) return getInterface(id);
  const known = [...ids, ...others];
  const nearest = nearestName({ name: id, known });
  throw new DomainError('workJob', [
    {
      path,
      received: JSON.stringify(id),
      allowed: `the id of an interface: ${known.join(', ')}`,
      ...(nearest === undefined ? {} : { nearest }),
    },
  ]);
}

/** Readings that only one family of joints has, and that family in words. */
const OWN_READINGS = {
  clamp: ['through-spindle', 'a through spindle'],
  spline: ['spline', 'splines'],
  cotter: ['cottered', 'a cotter'],
  faceTeeth: ['face-spline', 'a face spline'],
  bar: ['one-piece', 'a one-piece crank'],
} as const satisfies Partial<Record<keyof Job, readonly [family: string, words: string]>>;

const TAPER_READINGS = ['spindle', 'arm', 'trialFit', 'flats'] as const;

/** Readings that a joint of this kind cannot have, refused by name. @internal */
export function misplacedReadings(job: Job): DomainIssue[] {
  const ids = [job.interface.spindle, job.interface.arm];
  // A misspelt interface is refused for itself, by workJob.
  if (ids.some((id) => id !== UNKNOWN && !listInterfaces().some((record) => record.id === id))) return [];
  const joint = jointOf(job);
  const family = familyOf(joint);
  const issues: DomainIssue[] = [];
  for (const [key, [own, words]] of Object.entries(OWN_READINGS)) {
    if (job[key as keyof typeof OWN_READINGS] === undefined) continue;
    if (own === family || (own === 'spline' && family.startsWith('spline-'))) continue;
    issues.push({ path: key, received: `readings at ${joint}`, allowed: `nothing, unless the joint has ${words}` });
  }
  if (isTaperJob(job) || (hasTaperSeat(job.interface.spindle) && job.interface.arm !== UNKNOWN)) return issues;
  const allowed = `nothing, unless spindle and arm are square tapers of published sizes: ${TAPERS.join(', ')}`;
  for (const key of TAPER_READINGS) {
    if (job[key] !== undefined) issues.push({ path: key, received: `readings at ${joint}`, allowed });
  }
  for (const [index, candidate] of (job.candidates ?? []).entries()) {
    for (const key of ['arm', 'trialFit'] as const) {
      if (candidate[key] === undefined) continue;
      issues.push({ path: `candidates[${index}].${key}`, received: `readings at ${joint}`, allowed });
    }
  }
  return issues;
}
