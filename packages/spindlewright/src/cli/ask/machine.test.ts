import { type CheckId, diagnose, type Observations } from '@spindlewright/diagnosis';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../test/demo-job.ts';
import type { Job } from '../../job.ts';
import { readJob } from '../../read-job.ts';
import { type Reply, replied, savedJob, startWalk, stepOf, type Walk } from './machine.ts';

const job: Job = {
  ...demoJob,
};
const asked = (observations: Observations) => diagnose({ joint: 'square-taper-jis', side: 'drive', observations });

/** Replies to whatever is asked by picking among the choices; ends when the walk does. */
function play(walk: Walk, picks: readonly number[]): Walk[] {
  const seen = [walk];
  for (const pick of picks) {
    const now = seen.at(-1) ?? walk;
    const { check } = stepOf(now);
    if (check === undefined) break;
    const replies: Reply[] = [
      ...check.outcomes.map(({ id }): Reply => ({ kind: 'found', outcomes: [id] })),
      { kind: 'unclear' },
      { kind: 'put-off' },
    ];
    seen.push(replied(now, replies[pick % replies.length] ?? { kind: 'stop' }));
  }
  return seen;
}
const picks = fc.array(fc.nat(20), { minLength: 1, maxLength: 8 });

describe('the walk through the checks', () => {
  it('asks the check that earns most, by the diagnosis of what is known', () => {
    expect(stepOf(startWalk(job)).check?.id).toBe(asked({}).nextChecks[0]?.check);
    const observations: Observations = { 'play-at-arm': 'arm-moves-on-spindle' };
    expect(stepOf(startWalk({ ...job, observations })).check?.id).toBe(asked(observations).nextChecks[0]?.check);
  });

  it('stops asking when no answer would change what to do', () => {
    // A crack in the arm outweighs whatever else is found.
    const observations: Observations = { 'bore-flats': 'cracked', 'play-at-arm': 'arm-moves-on-spindle' };
    let walk = startWalk({ ...job, observations });
    for (let step = stepOf(walk); step.check !== undefined; step = stepOf(walk)) {
      walk = replied(walk, { kind: 'found', outcomes: [step.check.outcomes[0]?.id ?? ''] });
    }
    expect(asked(walk.observations).nextChecks).toEqual([]);
    expect(stepOf(walk)).toMatchObject({ over: 'decided', diagnosis: { doNotRide: true } });
  });

  it('ends after each check was asked once at the most, whatever is answered', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(20), { minLength: 40, maxLength: 40 }), (many) => {
        const walks = play(startWalk(job), many);
        const end = walks.at(-1);
        expect(end && stepOf(end).check).toBeUndefined();
        const trail = end?.trail ?? [];
        expect(new Set(trail).size).toBe(trail.length);
      }),
      { numRuns: 8 },
    );
  });

  it('undoes one reply after the other, back to the beginning', () => {
    fc.assert(
      fc.property(picks, (some) => {
        const walks = play(startWalk(job), some);
        let walk = walks.at(-1) ?? startWalk(job);
        for (const before of [...walks].reverse().slice(1)) {
          walk = replied(walk, { kind: 'undo' });
          expect(walk).toEqual(before);
        }
        expect(replied(walk, { kind: 'undo' })).toEqual(walk);
      }),
      { numRuns: 15 },
    );
  });

  it('goes on from the saved file where it was stopped, and asks again what was put off', () => {
    fc.assert(
      fc.property(picks, (some) => {
        const walk = play(startWalk(job), some).at(-1) ?? startWalk(job);
        const file = JSON.parse(JSON.stringify(savedJob({ ...job, note: 'kept' }, walk)));
        expect(file.note).toBe('kept');
        const { note: _note, ...saved } = file;
        const again = startWalk(readJob(saved));
        expect(again.observations).toEqual(walk.observations);
        expect(Object.keys(again.observations)).toEqual(Object.keys(walk.observations));
        expect(stepOf(again).check?.id).toBe(asked(walk.observations).nextChecks[0]?.check);
      }),
      { numRuns: 15 },
    );
  });

  it('puts a check off without an answer, and undo brings it back', () => {
    const begun = startWalk(job);
    const [first, second] = asked({}).nextChecks.map(({ check }) => check);
    const walk = replied(begun, { kind: 'put-off' });
    expect(walk.observations).toEqual({});
    expect(stepOf(walk).check?.id).toBe(second);
    expect(stepOf(replied(walk, { kind: 'undo' })).check?.id).toBe(first);
    let rest = walk;
    while (stepOf(rest).check !== undefined) rest = replied(rest, { kind: 'put-off' });
    expect(stepOf(rest).over).toBe('put-off');
  });

  it('can be stopped and taken up again', () => {
    const walk = replied(startWalk(job), { kind: 'stop' });
    expect(stepOf(walk)).toMatchObject({ over: 'stopped' });
    expect(stepOf(walk).check).toBeUndefined();
  });

  it('takes several answers for the history and one for anything else', () => {
    let walk = startWalk(job);
    const skipTo = (wanted: CheckId): boolean => {
      for (;;) {
        const { check } = stepOf(walk);
        if (check === undefined || check.id === wanted) return check !== undefined;
        walk = replied(walk, { kind: 'put-off' });
      }
    };
    expect(skipTo('history')).toBe(true);
    walk = replied(walk, { kind: 'found', outcomes: ['impact', 'long-service'] });
    expect(walk.observations.history).toEqual(['impact', 'long-service']);
    const { check } = stepOf(walk);
    const two = (check?.outcomes ?? []).slice(0, 2).map(({ id }) => id);
    expect(() => replied(walk, { kind: 'found', outcomes: two })).toThrow(/one of/);
    expect(() => replied(walk, { kind: 'found', outcomes: ['purple'] })).toThrow(/purple/);
    expect(() => replied(walk, { kind: 'found', outcomes: [] })).toThrow();
  });
});
