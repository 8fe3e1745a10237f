import { getInterface, listInterfaces } from '@spindlewright/interfaces';
import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import type { Job } from './job.ts';
import { readJob } from './read-job.ts';
import { renderText } from './render-text.ts';
import type { JobSheet } from './sheet.ts';
import { workJob } from './work-job.ts';

const jobAt = (spindle: string, more: Partial<Job> = {}, arm = spindle): Job => ({
  format: 'spindlewright-job-1',
  title: 'Demo',
  date: '2026-11-27',
  invented: true,
  bike: 'an invented bike',
  side: 'non-drive',
  interface: { spindle, arm },
  ...more,
});
const codes = (sheet: JobSheet): string[] => sheet.findings.map(({ code }) => code);
const refusal = (input: unknown): string | undefined => {
  try {
    workJob(readJob(input));
  } catch (error) {
    if (isDomainError(error)) return error.path;
    throw error;
  }
  return undefined;
};

// What each joint asks for is common practice (no source) unless a source stands beside it.
describe('a pinched arm', () => {
  const sheet = workJob(jobAt('through-spindle-24', { observations: { 'bolt-on-arrival': 'turns-before-torque' } }));

  it('is diagnosed as what it is, not as a taper', () => {
    expect(sheet.diagnosis?.result.joint).toBe('through-spindle-24');
    expect(sheet.seat).toBeUndefined();
    expect(sheet.tightening).toBeUndefined();
  });

  it('is fastened in the order cap, catch, bolts in turn', () => {
    const steps = sheet.joint?.fastening.steps ?? [];
    const place = (pattern: RegExp): number => steps.findIndex((step) => pattern.test(step));
    const order = [place(/^Preload cap first, and light/), place(/^Safety catch/), place(/in turn and in small steps/)];
    expect(order.every((at) => at >= 0)).toBe(true);
    expect([...order].sort((a, b) => a - b)).toEqual(order);
  });

  it('takes 12 Nm, the lowest torque that both published ranges contain, and shows both (12 to 15 and 12 to 14 Nm)', () => {
    expect(sheet.joint?.fastening.torqueNm?.nominal).toBe(12);
    expect(sheet.joint?.fastening.tradeTorques.map(({ lowerNm, upperNm }) => [lowerNm, upperNm])).toEqual([
      [12, 15],
      [12, 14],
    ]);
  });

  it('names what it leaves out', () => {
    expect(sheet.joint?.notHere.map(({ what }) => what).join()).toMatch(/Where the arm seats on a taper/);
    expect(renderText(sheet)).toMatch(/What does not apply here/);
  });

  it('holds by a slip torque of mu (2 to pi) N d/2 about its hinge', () => {
    const clamp = { clampWidthMm: 20, hingeToBoltMm: 30, hingeToAxisMm: 15 };
    const part = workJob(jobAt('through-spindle-24', { clamp, partMakerTorqueNm: 12 })).joint;
    const preload = part?.fastening.preloadN?.nominal ?? 0;
    // Two bolts about the hinge press with 2 F 30/15; the cosine pressure adds 8/pi of one half's force.
    const expected = (0.15 * (8 / Math.PI) * (2 * preload * 2) * 24) / 2000;
    expect(part?.clamp?.slipTorqueNm.nominal).toBeCloseTo(expected, 6);
  });

  it.each([
    [{ slotGapMm: -0.2 }, 'slot-closed', 'does-not-fit'],
    [{ safetyCatch: 'not-engaged' as const }, 'safety-catch-open', 'cannot-tell'],
  ])('is not ridden with %j', (clamp, code, state) => {
    const bad = workJob(jobAt('through-spindle-24', { clamp }));
    expect(codes(bad)).toContain(code);
    expect(bad.doNotRide).toBe(true);
    expect(bad.headline).toMatch(/[Dd]o not ride|not to be ridden/);
    expect(bad.state).toBe(state);
  });
});

describe('arm and spindle by their interfaces', () => {
  it.each([
    ['through-spindle-30', 'through-spindle-24', 'does-not-fit'],
    ['spline-8-long', 'spline-8-short', 'does-not-fit'],
    ['square-taper-jis', 'spline-10', 'does-not-fit'],
    ['spline-10', 'spline-10', 'fits'],
    ['through-spindle-24', 'through-spindle-24', 'cannot-tell'],
  ])('%s with an arm %s: %s', (spindle, arm, state) => {
    const sheet = workJob(jobAt(spindle, {}, arm));
    expect(sheet.state).toBe(state);
    if (state !== 'fits') expect(sheet.doNotRide).toBe(true);
    if (state === 'cannot-tell') expect(sheet.missingFact).toBe('partMakerStatement');
  });

  it('judges each candidate the same way, also one of another kind on a taper', () => {
    const arms = ['square-taper-jis', 'spline-10'].map((id) => ({ name: id, interface: id }));
    const sheet = workJob(jobAt('square-taper-jis', { candidates: arms }));
    expect(sheet.candidates.map(({ state }) => state)).toEqual(['cannot-tell', 'does-not-fit']);
    expect(sheet.candidates[1]?.mate?.verdict).toBe('does-not-mate');
  });
});

describe('a splined arm', () => {
  it('that stands off its stop at torque is not ridden, and not pulled home', () => {
    const sheet = workJob(jobAt('spline-10', { spline: { gapAtTorqueMm: 0.4 } }));
    expect(codes(sheet)).toContain('arm-not-home');
    expect(sheet.doNotRide).toBe(true);
    expect(sheet.headline).toMatch(/more torque/);
  });

  it('takes the torques of its own thread', () => {
    const at = (thread: string) =>
      workJob(jobAt('spline-10', { fixing: { thread, lubrication: 'dry' } })).joint?.fastening.tradeTorques.map(
        ({ id }) => id,
      );
    expect(at('M12x1')).toEqual(['dealer-m12-first', 'dealer-m12-second']);
    expect(at('M15x1')).toEqual(['dealer-m15-first', 'dealer-m15-second']);
  });
});

describe('joints without a published torque', () => {
  it.each(['spline-48', 'face-spline', 'through-spindle-24-22', 'square-taper-nutted'])('%s: none is guessed', (id) => {
    const sheet = workJob(jobAt(id));
    expect(sheet.joint?.fastening.torqueFrom).toBe('not-known');
    expect(sheet.joint?.fastening.torqueNm).toBeUndefined();
    expect(codes(sheet)).toContain('torque-not-known');
    expect(renderText(sheet)).toMatch(/none is guessed here/);
  });

  it.each(['cottered-metric', 'one-piece'])('%s has nothing to torque', (id) => {
    const sheet = workJob(jobAt(id, { partMakerTorqueNm: 30 }));
    expect(sheet.joint?.fastening.torqueFrom).toBe('no-torque');
    expect(codes(sheet)).toContain('torque-not-used');
  });
});

describe('cotters', () => {
  it('the same way round are told as twice the angle of their flats', () => {
    const cotter = {
      pressForceN: 10_000,
      flatAngleDeg: 6,
      flatLengthMm: 13,
      flatWidthMm: 8,
      axisToFlatMm: 5,
      sameWayRound: true,
    };
    const sheet = workJob(jobAt('cottered-inch', { cotter }));
    expect(sheet.joint?.cotter?.misalignmentDeg.nominal).toBeCloseTo(12, 9);
    expect(codes(sheet)).toContain('cotters-same-way-round');
    expect(sheet.doNotRide).toBe(true);
  });
});

describe('the bearings of a crank that is fastened by what sets them', () => {
  it.each([
    ['one-piece', {}],
    ['through-spindle-24', { 'bolt-on-arrival': 'tight', 'clamp-slot': 'open', 'creak-under-load': 'none' }],
  ] as const)('%s: the steps stay on the sheet', (id, more) => {
    const observations = { 'play-at-arm': 'both-arms-together', 'bearing-turning': 'rough-or-loose', ...more } as const;
    const sheet = workJob(jobAt(id, { observations }));
    expect(sheet.diagnosis?.result.action).toBe('service-bearing');
    expect(sheet.sections.some((section) => section.id === 'tighten')).toBe(true);
  });
});

describe('every interface that has a record', () => {
  const ids = listInterfaces().map(({ id }) => id);

  it.each(ids)('%s is answered whatever the arm, and says so where it is not to be ridden', (spindle) => {
    for (const arm of [spindle, 'unknown', 'square-taper-jis', 'through-spindle-24', 'cottered-metric']) {
      for (const observations of [undefined, {}, { 'play-at-arm': 'arm-moves-on-spindle' } as const]) {
        const sheet = workJob(jobAt(spindle, observations === undefined ? {} : { observations }, arm));
        const text = renderText(sheet);
        expect(text).not.toMatch(/undefined|NaN|\[object/);
        if (sheet.doNotRide)
          expect(`${sheet.headline} ${sheet.forOwner.join(' ')}`).toMatch(/not ride|not to be ridden/i);
        // Nothing of one family is known to go on a spindle of another; of two kinds of 48 splines it is not recorded.
        if (arm !== 'unknown' && getInterface(arm).family !== getInterface(spindle).family) {
          expect(sheet.state).toBe(
            spindle === 'spline-48' && arm.startsWith('through') ? 'cannot-tell' : 'does-not-fit',
          );
        }
      }
    }
  });
});

describe('odd but possible jobs', () => {
  it.each([
    ['through-spindle-24', { fixing: { thread: 'M6x1', lubrication: 'lubricated' } }],
    ['face-spline', { faceTeeth: { flankAngleDeg: 30, outerDiameterMm: 25, innerDiameterMm: 15 } }],
    ['spline-10', { spline: { forceToStopN: 12_000, gapByHandMm: 0.5 } }],
    [
      'cottered-inch',
      { cotter: { pressForceN: 9000, flatAngleDeg: 6, flatLengthMm: 45, flatWidthMm: 45, axisToFlatMm: 0.1 } },
    ],
    ['through-spindle-30', { clamp: { slotGapMm: 19, clampWidthMm: 90, hingeToBoltMm: 190, hingeToAxisMm: 0.1 } }],
    ['one-piece', { bar: { crankLengthMm: 300, overhangMm: 0, barDiameterMm: 0.1 } }],
  ] as const)('%s is worked at any torque in the domain', (id, more) => {
    const fixing = { thread: id === 'face-spline' ? 'M4' : 'M6x1', lubrication: 'lubricated' } as const;
    for (const partMakerTorqueNm of [0.001, 12, 120]) {
      expect(workJob(jobAt(id, { fixing, ...more, partMakerTorqueNm })).sections.length).toBeGreaterThan(3);
    }
  });

  it('a preload beyond the model is named and not worked', () => {
    const sheet = workJob(jobAt('through-spindle-24', { partMakerTorqueNm: 120 }));
    expect(sheet.joint?.clamp).toBeUndefined();
    expect(sheet.joint?.notHere.map(({ why }) => why).join()).toMatch(/beyond what the model is made for/);
    expect(codes(sheet)).toContain('torque-far-from-trade');
  });

  // Statics of an even stiffness: 12 kN close 0.5 mm, so with more than that the arm has travelled 0.5 mm and is home.
  it('the gap by hand gives the travel of a splined arm', () => {
    const spline = { forceToStopN: 12_000, gapByHandMm: { lower: 0.5, nominal: 0.5, upper: 0.5 } };
    const sheet = workJob(jobAt('spline-10', { spline, partMakerTorqueNm: 50 }));
    expect(sheet.joint?.spline?.travelMm?.nominal).toBeCloseTo(0.5, 9);
    expect(renderText(sheet)).toMatch(/travel from the fit by hand\s+0\.5 mm/);
  });
});

describe('refusals', () => {
  it.each([
    ['trialFit', jobAt('spline-10', { trialFit: { endGapMm: 2 } })],
    ['clamp', jobAt('spline-10', { clamp: { slotGapMm: 1 } })],
    ['bar', jobAt('cottered-inch', { bar: { crankLengthMm: 165, overhangMm: 80, barDiameterMm: 22 } })],
    ['interface.spindle', jobAt('spline-11')],
    ['clamp.boltCount', jobAt('through-spindle-24', { clamp: { boltCount: 1.5 } })],
    ['clamp.hingeToAxisMm', jobAt('through-spindle-24', { clamp: { hingeToAxisMm: 40 } })],
    [
      'faceTeeth.innerDiameterMm',
      jobAt('face-spline', { faceTeeth: { flankAngleDeg: 30, outerDiameterMm: 20, innerDiameterMm: 22 } }),
    ],
  ])('%s', (path, job) => {
    expect(refusal(job)).toBe(path);
  });
});

describe('readings that are not complete', () => {
  it.each([
    ['cottered-inch', { cotter: { pressForceN: 9000, flatAngleDeg: 6 } }, 'the length of the flat across the spindle'],
    ['face-spline', { faceTeeth: { flankAngleDeg: 30 } }, 'the outer diameter of the teeth'],
    ['one-piece', { bar: { crankLengthMm: 165, barDiameterMm: 22 } }, 'the distance from the middle of the pedal'],
  ] as const)('%s: names what is missing and reckons nothing', (id, more, missing) => {
    const part = workJob(jobAt(id, more)).joint;
    expect([part?.cotter, part?.faceTeeth, part?.bar]).toEqual([undefined, undefined, undefined]);
    expect(part?.notHere.map(({ why }) => why).join()).toContain(missing);
  });

  it('cotters the same way round are a stop without any length', () => {
    const sheet = workJob(jobAt('cottered-inch', { cotter: { sameWayRound: true } }));
    expect(codes(sheet)).toContain('cotters-one-way-round');
    expect(sheet.doNotRide).toBe(true);
    expect(sheet.state).not.toBe('does-not-fit');
  });
});
