import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { angleTightening } from './angle-tightening.ts';
import { assemblyLimit } from './assembly-limit.ts';
import { checkFixing } from './check-fixing.ts';
import { firstToFail } from './first-to-fail.ts';
import { frictionFromTest } from './friction-from-test.ts';
import { minimumEngagement } from './minimum-engagement.ts';
import { preloadFromTorque } from './preload-from-torque.ts';
import { preloadFromTorqueColumns } from './preload-from-torque-columns.ts';
import { preloadRange } from './preload-range.ts';
import { strippingEngagement } from './stripping-engagement.ts';
import { type Thread, threadFault } from './thread.ts';
import { threadFor } from './thread-for.ts';

const thread = threadFor('M8x1');
const faultOf = (change: Partial<Thread>): string | undefined => threadFault({ ...thread, ...change })?.field;

describe('a thread record', () => {
  it('as the functions make it does not contradict itself', () => {
    for (const designation of ['M1.6', 'M8', 'M30', 'M1000x0.01', 'M2x1', '#0-80', '9/16-20 UN', '1.37 in x 24']) {
      expect(threadFault(threadFor(designation))).toBeUndefined();
    }
  });

  it('with printed sizes passes', () => {
    // Fine series of ISO 724 and areas of ISO 898-1, as quoted (tests/reference/torque/metric-fine-dimensions*).
    const m10 = {
      ...threadFor('M10x1.25'),
      pitchDiameterMm: 9.188,
      minorDiameterMm: 8.466,
      internalMinorDiameterMm: 8.647,
      stressAreaMm2: 61.2,
    };
    const m16 = { ...threadFor('M16x1.5'), pitchDiameterMm: 15.026, minorDiameterMm: 14.16, stressAreaMm2: 167 };
    expect([threadFault(m10), threadFault(m16)]).toEqual([undefined, undefined]);
  });

  it('with sizes measured at the ends of their tolerance passes', () => {
    // M8x1-6g by ISO 965-1 (from memory): major diameter 7.794 to 7.974, pitch diameter 7.212 to 7.324.
    expect(faultOf({ majorDiameterMm: 7.974, pitchDiameterMm: 7.324 })).toBeUndefined();
    expect(faultOf({ majorDiameterMm: 7.794, pitchDiameterMm: 7.212 })).toBeUndefined();
  });

  it('with sizes that just meet each other passes', () => {
    const { minorDiameterMm, pitchDiameterMm } = thread;
    expect(faultOf({ internalMinorDiameterMm: minorDiameterMm })).toBeUndefined();
    expect(faultOf({ internalMinorDiameterMm: pitchDiameterMm })).toBeUndefined();
  });

  it.each<[Partial<Thread>, string]>([
    [{ pitchMm: 100 }, 'pitchMm'],
    [{ pitchMm: 1.25 }, 'pitchMm'],
    [{ pitchMm: 0.75 }, 'pitchMm'],
    [{ majorDiameterMm: 10 }, 'pitchMm'],
    [{ pitchDiameterMm: 8.1 }, 'pitchDiameterMm'],
    [{ pitchDiameterMm: 6 }, 'pitchMm'],
    [{ minorDiameterMm: 7.4 }, 'minorDiameterMm'],
    [{ minorDiameterMm: 4 }, 'minorDiameterMm'],
    [{ internalMinorDiameterMm: 7.5 }, 'internalMinorDiameterMm'],
    [{ stressDiameterMm: 7.5 }, 'stressDiameterMm'],
    [{ stressDiameterMm: 6.5 }, 'stressDiameterMm'],
    [{ stressAreaMm2: 36.6 }, 'stressAreaMm2'],
    [{ stressAreaMm2: 0.392 }, 'stressAreaMm2'],
    [{ leadAngleDeg: 4.95 }, 'leadAngleDeg'],
  ])('mixed up with %j is found out', (change, field) => {
    expect(faultOf(change)).toBe(field);
  });

  it('that contradicts itself is refused wherever one comes in, by its path', () => {
    const mixed = { ...thread, pitchMm: 100 };
    const face = { bearing: { outerDiameterMm: 16, holeDiameterMm: 9 } };
    const joint = { thread: mixed, threadFriction: 0.1, bearingFriction: 0.1, ...face };
    const bolt = { fixing: 'bolt', thread, lengthUnderHeadMm: 22, endGapMm: 2, travelMm: 1 } as const;
    const calls = [
      () => preloadFromTorque({ torqueNm: 40, ...joint }),
      () => preloadFromTorque({ torqueNm: 40, thread: mixed, nutFactor: 0.2, method: 'nut-factor' }),
      () => preloadFromTorqueColumns({ torqueNm: [40], ...joint }),
      () => preloadRange({ torqueNm: 40, ...joint }),
      () => assemblyLimit({ thread: mixed, propertyClass: '8.8', threadFriction: 0.1, ...face }),
      () => strippingEngagement({ thread: mixed, loadN: 1, shearStrengthMPa: 100 }),
      () => checkFixing({ ...bolt, thread: mixed }),
      () =>
        angleTightening({
          thread: mixed,
          snugPreloadN: 0,
          targetPreloadN: 1,
          boltStiffnessNPerMm: 1e5,
          memberStiffnessNPerMm: 1e5,
        }),
      () =>
        firstToFail({ thread: mixed, propertyClass: '8.8', loadN: 1, engagementMm: 8, tappedShearStrengthMPa: 180 }),
      () => frictionFromTest({ torqueNm: 4000, preloadN: 25_000, thread: mixed, ...face }),
      () => minimumEngagement({ thread: mixed, pitch: 'fine', propertyClass: '8.8', nutMaterial: 'S235' }),
    ];
    for (const call of calls) expect(refusal(call).path).toBe('thread.pitchMm');
    const error = refusal(() => checkFixing({ ...bolt, spindleThread: mixed }));
    expect(error.path).toBe('spindleThread.pitchMm');
    expect(error.received).toBe('100');
    expect(error.allowed).toMatch(/^0.866 to 1.181,/);
  });
});
