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
import { type ReadingQuestion, readingQuestions } from './reading-questions.ts';
import { readingsIn, withReadings } from './readings-in.ts';

/** How far the walk through the checks of a job has come. @internal */
export interface Walk {
  /** The job; its observations are those of `observations`. */
  job: Job;
  /** What was found, in the order in which it was answered. */
  observations: Observations;
  /** What was read, by path, in the order in which it was answered and in the words of the file. */
  readings: Readonly<Record<string, unknown>>;
  /** True once readings are taken: they follow the checks. */
  measuring: boolean;
  /** Checks and paths of readings that were put off in this walk. */
  putOff: readonly string[];
  /** Checks and paths of readings that can be taken back, last at the end: those of the file come first, in its order. */
  trail: readonly string[];
  /** True when the walk was ended before nothing was left to ask. */
  stopped: boolean;
}

/** What may be said to a step. @internal */
export type Reply =
  | { kind: 'found'; outcomes: readonly string[] }
  /** Looked, and it could be either. */
  | { kind: 'unclear' }
  /** A reading, as the file holds it. */
  | { kind: 'read'; value: unknown }
  /** Take the readings now. */
  | { kind: 'measure' }
  /** Not now; the next best check is asked. */
  | { kind: 'put-off' }
  | { kind: 'undo' }
  | { kind: 'stop' };

/** What to do next: ask a check, ask a reading, or end. @internal */
export interface Step {
  /** The check to ask; absent when there is none left. */
  check?: CheckDescription;
  /** The reading to ask, once readings are taken. */
  reading?: ReadingQuestion;
  /** How many readings the sheet could still use. */
  readingsLeft: number;
  /** Why it is over: no answer would change what to do, what is left was put off, or it was stopped. */
  over?: 'decided' | 'put-off' | 'stopped';
  /** What is thought of the joint so far. */
  diagnosis: Diagnosis;
  /** The check or reading that undo takes back. */
  last?: string;
}

/** Begins a walk with what a job says already; `data` is the job as its file holds it. @internal */
export function startWalk(job: Job, data: unknown = job): Walk {
  const observations = job.observations ?? {};
  const checks = (Object.keys(observations) as CheckId[]).filter((check) => observations[check] !== 'not-checked');
  const paths = readingQuestions(job).map(({ path }) => path);
  const { readings, before } = readingsIn(data, paths);
  const [earlier, later] = [Object.keys(readings).slice(0, before), Object.keys(readings).slice(before)];
  const trail = [...earlier, ...checks, ...later];
  return { job, observations, readings, measuring: false, putOff: [], trail, stopped: false };
}

/** The next step of a walk: the check that earns most, as long as an answer could change what to do. @internal */
export function stepOf({ job, observations, readings, measuring, putOff, trail, stopped }: Walk): Step {
  const part = diagnosisOf({ ...job, observations });
  if (part === undefined) throw new Error('a job with observations has a diagnosis');
  const diagnosis = part.result;
  const last = trail.at(-1);
  const unread = readingQuestions(job).filter(({ path }) => !Object.hasOwn(readings, path));
  const step = { diagnosis, readingsLeft: unread.length, ...(last === undefined ? {} : { last }) };
  if (stopped) return { ...step, over: 'stopped' };
  const open = diagnosis.nextChecks.find(({ check }) => !putOff.includes(check));
  if (open === undefined) {
    const reading = measuring ? unread.find(({ path }) => !putOff.includes(path)) : undefined;
    if (reading !== undefined) return { ...step, reading };
    return { ...step, over: diagnosis.nextChecks.length === 0 ? 'decided' : 'put-off' };
  }
  const check = listChecks(jointOf(job)).find(({ id }) => id === open.check);
  if (check === undefined) throw new Error(`no check ${open.check}`);
  return { ...step, check };
}

/** The walk after a reply. @internal */
export function replied(walk: Walk, reply: Reply): Walk {
  if (reply.kind === 'stop') return { ...walk, stopped: true };
  if (reply.kind === 'undo') return undone(walk);
  if (reply.kind === 'measure') return measuring(walk);
  const { check, reading } = stepOf(walk);
  if (reading !== undefined) return replyToReading(walk, reading.path, reply);
  if (check === undefined) throw refuse('a reply to a walk that is over', 'undo or stop');
  if (reply.kind === 'read') throw refuse('a reading', `an answer to ${check.id}`);
  const { observations, putOff, trail } = walk;
  const others = trail.filter((id) => id !== check.id);
  if (reply.kind === 'put-off') {
    return { ...walk, putOff: [...putOff, check.id], trail: [...others, check.id] };
  }
  return { ...walk, observations: withAnswer(observations, check, reply), trail: [...others, check.id] };
}

/** Readings that were put off are asked again when somebody asks for them. */
function measuring(walk: Walk): Walk {
  const paths = readingQuestions(walk.job).map(({ path }) => path);
  const isOpen = (id: string): boolean => !walk.putOff.includes(id) || !paths.includes(id);
  return { ...walk, measuring: true, putOff: walk.putOff.filter(isOpen), trail: walk.trail.filter(isOpen) };
}

function replyToReading(walk: Walk, path: string, reply: Reply): Walk {
  const trail = [...walk.trail.filter((id) => id !== path), path];
  if (reply.kind === 'put-off') return { ...walk, putOff: [...walk.putOff, path], trail };
  if (reply.kind !== 'read') throw refuse(reply.kind, `a reading of ${path}`);
  return { ...walk, readings: { ...walk.readings, [path]: reply.value }, trail };
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
    readings: wasPutOff ? walk.readings : without(walk.readings, last),
    putOff: walk.putOff.filter((id) => id !== last),
    trail: walk.trail.slice(0, -1),
    stopped: false,
  };
}

const without = <T extends object>(answers: T, id: string): T =>
  Object.fromEntries(Object.entries(answers).filter(([key]) => key !== id)) as T;

/** What a walk leaves to be saved: the data of the job as they were, with what was found. @internal */
export function savedJob(data: unknown, { job, observations, readings }: Walk): Record<string, unknown> {
  const paths = readingQuestions(job).map(({ path }) => path);
  return withReadings({ ...(data as Record<string, unknown>), observations }, paths, readings);
}

const refuse = (received: string, allowed: string): DomainError =>
  new DomainError('job --ask', [{ path: 'reply', received, allowed }]);
