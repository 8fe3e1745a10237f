import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { metricThread } from './metric-thread.ts';
import { torqueFromPreload } from './torque-from-preload.ts';

const joint = {
  thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1 }),
  threadFriction: 0.12,
  bearingFriction: 0.15,
  bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
};
const methods = ['exact', 'vdi-2230', 'nut-factor'] as const;

describe('torqueFromPreload', () => {
  it('follows each formula, worked by hand', () => {
    const pitchDiameter = 8 - 0.75 * 0.8660254;
    const lead = 1 / (Math.PI * pitchDiameter);
    const flank = 0.12 / Math.cos(Math.PI / 6);
    const exact = (pitchDiameter / 2) * ((lead + flank) / (1 - flank * lead)) + 0.15 * 6.25;
    const vdi = 0.16 + 0.58 * pitchDiameter * 0.12 + 0.15 * 6.25;
    const handbook =
      (1 / Math.PI + 0.12 * pitchDiameter * 1.1547 + (0.15 * 2 * (16 ** 3 - 9 ** 3)) / 3 / (16 ** 2 - 81)) / 2;
    const torques = methods.map((method) => torqueFromPreload({ ...joint, preloadN: 1000, method }).torqueNm);
    expect(torques[0]).toBeCloseTo(exact, 6);
    expect(torques[1]).toBeCloseTo(vdi, 6);
    expect(torques[2]).toBeCloseTo(handbook, 5);
    expect(torqueFromPreload({ ...joint, preloadN: 1000 }).torqueNm).toBe(torques[0]);
  });

  it.each(methods)('%s: splits the torque without rest', (method) => {
    const { torqueNm, split, nutFactor } = torqueFromPreload({ ...joint, preloadN: 25_000, method });
    expect(split.pitchNm + (split.threadFrictionNm ?? 0) + (split.bearingFrictionNm ?? 0)).toBeCloseTo(torqueNm, 10);
    expect(split.pitchNm + split.frictionNm).toBeCloseTo(torqueNm, 10);
    expect(nutFactor * 25_000 * 0.008).toBeCloseTo(torqueNm, 10);
    // One turn lifts by one pitch: the work of that part of the torque is all in the bolt.
    expect(Math.abs((split.pitchNm * 2 * Math.PI) / 25 - 1)).toBeLessThan(0.006);
  });

  it.each(methods)('%s: loosens with the pitch part the other way round', (method) => {
    const { torqueNm, looseningTorqueNm, split } = torqueFromPreload({ ...joint, preloadN: 25_000, method });
    // In the linear forms the difference is twice the pitch part; the long form differs by the square of small angles.
    expect(Math.abs((torqueNm - looseningTorqueNm) / (2 * split.pitchNm) - 1)).toBeLessThan(
      method === 'exact' ? 0.03 : 1e-12,
    );
  });

  it('takes a bare nut factor and says what that hides', () => {
    const { torqueNm, looseningTorqueNm, split, frictionRadiusMm, findings } = torqueFromPreload({
      preloadN: 25_000,
      thread: joint.thread,
      nutFactor: 0.2,
      method: 'nut-factor',
    });
    expect(torqueNm).toBeCloseTo(40, 12);
    expect(looseningTorqueNm).toBeCloseTo(40 - 25 / Math.PI, 12);
    expect(split).toMatchObject({ threadFrictionNm: null, bearingFrictionNm: null });
    expect(frictionRadiusMm).toBeNull();
    expect(findings.map((finding) => finding.code)).toEqual(['lumped-friction']);
  });

  it('gives plain zeros for no preload', () => {
    const slack = torqueFromPreload({ ...joint, threadFriction: 0.01, bearingFriction: 0.001, preloadN: 0 });
    expect(Object.is(slack.torqueNm, 0)).toBe(true);
    expect(Object.is(slack.looseningTorqueNm, 0)).toBe(true);
    expect(JSON.parse(JSON.stringify(slack))).toEqual(slack);
  });

  it('speaks up for slippery threads, odd friction, square holes and left hands', () => {
    const codesOf = (change: object): string[] =>
      torqueFromPreload({ ...joint, preloadN: 1000, ...change } as never).findings.map((finding) => finding.code);
    expect(codesOf({})).toEqual([]);
    expect(codesOf({ threadFriction: 0.04, bearingFriction: 0.35 })).toEqual([]);
    expect(codesOf({ threadFriction: 0.02, bearingFriction: 0.001 })).toEqual([
      'self-loosening',
      'friction-unusual',
      'friction-unusual',
    ]);
    expect(codesOf({ bearing: { outerDiameterMm: 20, squareHoleMm: 12.7, cornerReliefMm: 0 } })).toEqual([
      'square-hole-under-head',
    ]);
    expect(codesOf({ thread: { ...joint.thread, hand: 'left' } })).toEqual(['left-hand-thread']);
  });

  it.each([
    [{ preloadN: -1 }, 'preloadN'],
    [{ threadFriction: 0 }, 'threadFriction'],
    [{ threadFriction: 1.5 }, 'threadFriction'],
    [{ bearingFriction: 0 }, 'bearingFriction'],
    [{ bearingFriction: 1.0001 }, 'bearingFriction'],
    [{ thread: 'M8x1' }, 'thread'],
    [{ thread: { ...joint.thread, pitchMm: 0 } }, 'thread.pitchMm'],
    [{ bearing: { outerDiameterMm: 9, holeDiameterMm: 9 } }, 'bearing.holeDiameterMm'],
    [{ bearing: { outerDiameterMm: 12, squareHoleMm: 12.7 } }, 'bearing.squareHoleMm'],
    [{ bearing: { outerDiameterMm: 20, squareHoleMm: 12.7, cornerReliefMm: 6.4 } }, 'bearing.cornerReliefMm'],
    [{ bearing: { outerDiameterMm: 20, squareHoleMm: 12.7, holeDiameterMm: 9 } }, 'bearing.holeDiameterMm'],
    [{ method: 'guess' }, 'method'],
    [{ nutFactor: 0.2 }, 'method'],
    [{ friction: 0.1 }, 'friction'],
  ])('refuses %j', (change, path) => {
    const error = refusal(() => torqueFromPreload({ ...joint, preloadN: 1000, ...change } as never));
    expect(error.issues.map((issue) => issue.path)).toContain(path);
  });

  it('accepts a friction of exactly 1', () => {
    expect(
      torqueFromPreload({ ...joint, threadFriction: 1, bearingFriction: 1, preloadN: 1000 }).torqueNm,
    ).toBeGreaterThan(0);
  });

  it.each([0, 0.0009, 1.01, '0.2', null])('refuses %j for a nut factor', (nutFactor) => {
    const bare = { preloadN: 1000, thread: joint.thread, nutFactor, method: 'nut-factor' };
    expect(refusal(() => torqueFromPreload(bare as never)).path).toBe('nutFactor');
  });

  it.each([null, undefined, 5, 'M8x1', []])('refuses %j for a joint', (input) => {
    expect(refusal(() => torqueFromPreload(input as never)).message).toMatch(/^torqueFromPreload: /);
  });

  it('gives plain zeros for no preload by a nut factor below the pitch part', () => {
    const bare = { thread: joint.thread, nutFactor: 0.001, method: 'nut-factor' } as const;
    const { split } = torqueFromPreload({ ...bare, preloadN: 0 });
    expect(Object.is(split.frictionNm, 0)).toBe(true);
    // 1 kN lifted by 1 mm a turn takes 0.159 Nm, 0.001 x 8 mm x 1 kN gives 0.008.
    expect(torqueFromPreload({ ...bare, preloadN: 1000 }).split.frictionNm).toBeCloseTo(0.008 - 0.5 / Math.PI, 12);
  });

  it('holds by itself only above a loosening torque of 0', () => {
    const codes = (nutFactor: number, preloadN: number): string[] =>
      torqueFromPreload({ thread: joint.thread, nutFactor, method: 'nut-factor', preloadN }).findings.map(
        (finding) => finding.code,
      );
    // Loosening takes K d - P/pi: with a pitch of 1 mm on 8 mm nothing at K = 1/(8 pi).
    expect(codes(1 / Math.PI / 8, 1000)).toEqual(['self-loosening', 'lumped-friction']);
    expect(codes(1.001 / Math.PI / 8, 1000)).toEqual(['lumped-friction']);
    // A joint that holds is not said to unwind because nothing is clamped yet.
    expect(codes(0.2, 0)).toEqual(['lumped-friction']);
  });

  it('finds a friction above the usual classes odd as well', () => {
    const { findings } = torqueFromPreload({ ...joint, preloadN: 1000, bearingFriction: 0.36 });
    expect(findings).toMatchObject([{ code: 'friction-unusual', path: 'bearingFriction', values: { friction: 0.36 } }]);
  });
});
