import { listInterfaces } from '@spindlewright/interfaces';
import { isDomainError } from '@spindlewright/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Job } from '../../job.ts';
import { readJob } from '../../read-job.ts';
import { jobSchema } from '../../schema.ts';
import { workJob } from '../../work-job.ts';
import { type Reply, replied, savedJob, startWalk, stepOf, type Walk } from './machine.ts';
import { readingQuestions } from './reading-questions.ts';

const jobAt = (id: string): Job => ({
  format: 'spindlewright-job-1',
  title: 'Demo',
  date: '2026-11-28',
  invented: true,
  bike: 'an invented bike',
  side: 'non-drive',
  interface: { spindle: id, arm: id },
});

/** The walk with its checks put off, at its readings. */
function atReadings(job: Job, data: unknown = job): Walk {
  let walk = startWalk(job, data);
  while (stepOf(walk).check !== undefined) walk = replied(walk, { kind: 'put-off' });
  return replied(walk, { kind: 'measure' });
}

/** Readings that are possible at any joint, by path; invented. */
const POSSIBLE: Readonly<Record<string, unknown>> = {
  'trialFit.endGapMm': 2.5,
  'trialFit.shoulderGapMm': 3,
  flats: 'greased',
  partMakerTorqueNm: 14,
  'clamp.safetyCatch': 'engaged',
  'clamp.slotGapMm': 1.2,
  'clamp.axialPlayMm': 0,
  'clamp.boltCount': 2,
  'clamp.clampWidthMm': 18,
  'clamp.hingeToBoltMm': 30,
  'clamp.hingeToAxisMm': 16,
  'spline.gapAtTorqueMm': 0,
  'spline.gapByHandMm': 2,
  'spline.forceToStopN': 12_000,
  'cotter.sameWayRound': false,
  'cotter.pressForceN': 12_000,
  'cotter.flatAngleDeg': 6,
  'cotter.flatLengthMm': 13,
  'cotter.flatWidthMm': 8,
  'cotter.axisToFlatMm': 5.5,
  'faceTeeth.flankAngleDeg': 30,
  'faceTeeth.outerDiameterMm': 25,
  'faceTeeth.innerDiameterMm': 15,
  'bar.crankLengthMm': 165,
  'bar.overhangMm': 80,
  'bar.barDiameterMm': 22,
  'bar.yieldStrengthMPa': 400,
};

/** Answers every reading that is asked, in the order of the asking. */
function allRead(job: Job): Walk[] {
  const walks = [atReadings(job)];
  for (;;) {
    const now = walks.at(-1) ?? atReadings(job);
    const { reading } = stepOf(now);
    if (reading === undefined) return walks;
    walks.push(replied(now, { kind: 'read', value: POSSIBLE[reading.path] }));
  }
}

describe('the readings of a walk', () => {
  const ids = listInterfaces().map(({ id }) => id);

  it.each(ids)('%s: each is asked once, saved at once, and a job at every step', (id) => {
    const job = jobAt(id);
    const walks = allRead(job);
    expect(walks.length - 1).toBe(readingQuestions(job).length);
    for (const walk of walks) {
      const file = savedJob(job, walk);
      expect(jobSchema.safeParse(file).success).toBe(true);
      expect(workJob(readJob(file)).sections.length).toBeGreaterThan(3);
    }
    expect(stepOf(walks.at(-1) ?? atReadings(job)).over).toBe('put-off');
  });

  // The fields of the schema, so that a new one is not forgotten. Of a square taper only the trial fit, the flats and the
  // torque are asked: caliper readings need the plane of the jaw beside them.
  it('ask for every field that the schema has for the joints', () => {
    const asked = new Set(ids.flatMap((id) => readingQuestions(jobAt(id)).map(({ path }) => path)));
    const shape = (jobSchema as unknown as { shape: Record<string, { unwrap(): { shape: object } }> }).shape;
    for (const section of ['clamp', 'spline', 'cotter', 'faceTeeth', 'bar', 'trialFit']) {
      const fields = Object.keys(shape[section]?.unwrap().shape ?? {});
      expect(fields.length).toBeGreaterThan(1);
      expect(fields.filter((field) => !asked.has(`${section}.${field}`))).toEqual([]);
    }
  });

  it.each([
    ['through-spindle-24', 'clamp'],
    ['spline-10', 'spline'],
    ['cottered-inch', 'cotter'],
    ['face-spline', 'faceTeeth'],
    ['one-piece', 'bar'],
  ] as const)('%s: all of them give the mechanics of the joint', (id, part) => {
    const job = {
      ...jobAt(id),
      ...(id === 'spline-10' ? { fixing: { thread: 'M15x1', lubrication: 'dry' as const } } : {}),
    };
    const thread = id === 'face-spline' ? { fixing: { thread: 'M8x1', lubrication: 'dry' as const } } : {};
    const walk = allRead({ ...job, ...thread }).at(-1);
    if (walk === undefined) throw new Error('no walk');
    const sheet = workJob(readJob(savedJob({ ...job, ...thread }, walk)));
    expect(sheet.joint?.[part]).toBeDefined();
  });

  it.each(ids)('%s: undo takes one back after the other, also after a break', (id) => {
    const job = jobAt(id);
    const walks = allRead(job);
    let walk = walks.at(-1) ?? atReadings(job);
    for (const before of [...walks].reverse().slice(1)) {
      walk = replied(walk, { kind: 'undo' });
      expect(walk).toEqual(before);
      const file = JSON.parse(JSON.stringify(savedJob(job, walk)));
      const again = startWalk(readJob(file), file);
      expect(Object.keys(again.readings)).toEqual(Object.keys(walk.readings));
      expect(again.trail.at(-1)).toBe(Object.keys(walk.readings).at(-1));
    }
    expect(savedJob(job, walk)).toEqual({ ...job, observations: {} });
  });

  it('leaves what the file said before in its words, and takes it back last', () => {
    const data = {
      ...jobAt('through-spindle-24'),
      partMakerTorqueNm: '120 lbf.in',
      observations: { 'clamp-slot': 'open' },
    };
    const begun = startWalk(readJob(data), data);
    expect(begun.trail).toEqual(['partMakerTorqueNm', 'clamp-slot']);
    let walk = atReadings(readJob(data), data);
    while (stepOf(walk).reading?.path !== 'clamp.slotGapMm') walk = replied(walk, { kind: 'put-off' });
    walk = replied(walk, { kind: 'read', value: 0.8 });
    const file = savedJob(data, walk);
    expect(file).toMatchObject({ partMakerTorqueNm: '120 lbf.in', clamp: { slotGapMm: 0.8 } });
    expect(startWalk(readJob(file), file).trail).toEqual(['partMakerTorqueNm', 'clamp-slot', 'clamp.slotGapMm']);
  });

  it('asks what was put off again when readings are taken again', () => {
    let walk = atReadings(jobAt('one-piece'));
    const first = stepOf(walk).reading?.path;
    while (stepOf(walk).reading !== undefined) walk = replied(walk, { kind: 'put-off' });
    expect(stepOf(walk)).toMatchObject({ over: 'put-off', readingsLeft: 4 });
    walk = replied(walk, { kind: 'measure' });
    expect(stepOf(walk).reading?.path).toBe(first);
  });

  it('whatever is answered, put off or undone, the file is a job and the walk ends', () => {
    const replies: Reply['kind'][] = ['read', 'put-off', 'undo', 'measure'];
    fc.assert(
      fc.property(
        fc.constantFrom(...ids),
        fc.array(fc.constantFrom(...replies), { minLength: 1, maxLength: 25 }),
        (id, kinds) => {
          const job = jobAt(id);
          let walk = atReadings(job);
          for (const kind of kinds) {
            const { reading } = stepOf(walk);
            if (kind === 'read' && reading !== undefined) {
              walk = replied(walk, { kind, value: POSSIBLE[reading.path] });
            } else if (kind !== 'read' && (kind !== 'put-off' || reading !== undefined)) {
              walk = replied(walk, { kind } as Reply);
            }
            const file = savedJob(job, walk);
            expect(readJob(file)).toBeDefined();
            expect(new Set(walk.trail).size).toBe(walk.trail.length);
          }
        },
      ),
      { numRuns: 25 },
    );
  });

  it('refuses a reading where a check is asked, and an answer where a reading is', () => {
    const refused = (walk: Walk, reply: Reply): boolean => {
      try {
        replied(walk, reply);
      } catch (error) {
        return isDomainError(error);
      }
      return false;
    };
    expect(refused(startWalk(jobAt('one-piece')), { kind: 'read', value: 1 })).toBe(true);
    expect(refused(atReadings(jobAt('one-piece')), { kind: 'unclear' })).toBe(true);
  });
});
