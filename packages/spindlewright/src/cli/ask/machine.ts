import {
  type CheckDescription,
  type CheckId,
  type Diagnosis,
  listChecks,
  type Observations,
} from '@spindlewright/diagnosis';
import { DomainError } from '@spindlewright/quantity';
import { diagnosisOf } from '../../diagnosis-part.ts';
import type { Job } from '../../job.ts';
import { jointOf } from '../../joint-kind.ts';

/** How far the walk through the checks of a job has come. @internal */
export interface Walk {
  /** The job; its observations are those of `observations`. */
  job: Job;
  /** What was found, in the order in which it was answered. */
  observations: Observations;
  /** Checks that were put off in this walk. */
  putOff: readonly CheckId[];
  /** What can be taken back, last at the end: answers of the file come first, in its order. */
  trail: readonly CheckId[];
  /** True when the walk was ended before nothing was left to ask. */
  stopped: boolean;
}

/** What may be said to a step. @internal */
export type Reply =
  | { kind: 'found'; outcomes: readonly string[] }
  /** Looked, and it could be either. */
  | { kind: 'unclear' }
  /** Not now; the next best check is asked. */
  | { kind: 'put-off' }
  | { kind: 'undo' }
  | { kind: 'stop' };

/** What to do next: ask a check, or end. @internal */
export interface Step {
  /** The check to ask; absent when the walk is over. */
  check?: CheckDescription;
  /** Why it is over: no answer would change what to do, what is left was put off, or it was stopped. */
  over?: 'decided' | 'put-off' | 'stopped';
  /** What is thought of the joint so far. */
  diagnosis: Diagnosis;
  /** The answer that undo takes back. */
  last?: CheckId;
}

/** Begins a walk with what a job says already. @internal */
export function startWalk(job: Job): Walk {
  const observations = job.observations ?? {};
  const trail = (Object.keys(observations) as CheckId[]).filter((check) => observations[check] !== 'not-checked');
  return { job, observations, putOff: [], trail, stopped: false };
}

/** The next step of a walk: the check that earns most, as long as an answer could change what to do. @internal */
export function stepOf({ job, observations, putOff, trail, stopped }: Walk): Step {
  const part = diagnosisOf({ ...job, observations });
  if (part === undefined) throw new Error('a job with observations has a diagnosis');
  const diagnosis = part.result;
  const last = trail.at(-1);
  const step = { diagnosis, ...(last === undefined ? {} : { last }) };
  if (stopped) return { ...step, over: 'stopped' };
  const open = diagnosis.nextChecks.find(({ check }) => !putOff.includes(check));
  if (open === undefined) return { ...step, over: diagnosis.nextChecks.length === 0 ? 'decided' : 'put-off' };
  const check = listChecks(jointOf(job)).find(({ id }) => id === open.check);
  if (check === undefined) throw new Error(`no check ${open.check}`);
  return { ...step, check };
}

/** The walk after a reply. @internal */
export function replied(walk: Walk, reply: Reply): Walk {
  if (reply.kind === 'stop') return { ...walk, stopped: true };
  if (reply.kind === 'undo') return undone(walk);
  const { check } = stepOf(walk);
  if (check === undefined) throw refuse('a reply to a walk that is over', 'undo or stop');
  const { observations, putOff, trail } = walk;
  const others = trail.filter((id) => id !== check.id);
  if (reply.kind === 'put-off') {
    return { ...walk, putOff: [...putOff, check.id], trail: [...others, check.id] };
  }
  return { ...walk, observations: withAnswer(observations, check, reply), trail: [...others, check.id] };
}

function withAnswer(
  observations: Observations,
  check: CheckDescription,
  reply: Extract<Reply, { kind: 'found' | 'unclear' }>,
): Observations {
  // An answer that comes later stands later in the file, so that undo after a break takes back the last one.
  const rest = without(observations, check.id);
  if (reply.kind === 'unclear') return { ...rest, [check.id]: check.several ? ['unclear'] : 'unclear' };
  const { outcomes } = reply;
  const known = check.outcomes.map(({ id }) => id as string);
  const unknown = outcomes.find((outcome) => !known.includes(outcome));
  if (unknown !== undefined || outcomes.length === 0 || (outcomes.length > 1 && !check.several)) {
    throw refuse(JSON.stringify(outcomes), `${check.several ? 'some' : 'one'} of ${known.join(', ')}`);
  }
  return { ...rest, [check.id]: check.several ? [...outcomes] : outcomes[0] };
}

function undone(walk: Walk): Walk {
  const last = walk.trail.at(-1);
  if (last === undefined) return walk;
  const wasPutOff = walk.putOff.includes(last);
  return {
    ...walk,
    observations: wasPutOff ? walk.observations : without(walk.observations, last),
    putOff: walk.putOff.filter((id) => id !== last),
    trail: walk.trail.slice(0, -1),
    stopped: false,
  };
}

const without = (observations: Observations, check: CheckId): Observations =>
  Object.fromEntries(Object.entries(observations).filter(([id]) => id !== check));

/** What a walk leaves to be saved: the data of the job as they were, with what was found. @internal */
export function savedJob(data: unknown, { observations }: Walk): Record<string, unknown> {
  return { ...(data as Record<string, unknown>), observations };
}

const refuse = (received: string, allowed: string): DomainError =>
  new DomainError('job --ask', [{ path: 'reply', received, allowed }]);
