import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { angleTightening } from './angle-tightening.ts';
import { metricThread } from './metric-thread.ts';
import { threadFor } from './thread-for.ts';

const joint = {
  thread: threadFor('M8x1'),
  snugPreloadN: 5000,
  targetPreloadN: 25_000,
  boltStiffnessNPerMm: 250_000,
  memberStiffnessNPerMm: 1_000_000,
};

describe('angleTightening', () => {
  it('turns by the give of bolt and parts: 0.1 mm on a pitch of 1 mm are 36 degrees', () => {
    // By hand: 20 kN (1/250 + 1/1000) mm/kN = 0.1 mm.
    const { angleDeg, angleTurns, preloadNPerDeg } = angleTightening(joint);
    expect(angleDeg).toBeCloseTo(36, 9);
    expect(angleTurns).toBeCloseTo(0.1, 12);
    expect(preloadNPerDeg * 36).toBeCloseTo(20_000, 6);
  });

  it('turns less where the pitch is larger: 0.1 mm on 1.25 mm are 8 hundredths of a turn', () => {
    const { angleTurns, preloadNPerDeg } = angleTightening({ ...joint, thread: threadFor('M8') });
    expect(angleTurns).toBeCloseTo(0.08, 12);
    expect(preloadNPerDeg).toBeCloseTo(20_000 / 28.8, 9);
  });

  it('adds the travel of a part that moves in', () => {
    expect(angleTightening({ ...joint, travelMm: 0.9 }).angleTurns).toBeCloseTo(1, 12);
  });

  it('says so where a few degrees decide', () => {
    expect(angleTightening(joint).findings.map((finding) => finding.code)).toEqual(['angle-too-fine']);
    expect(angleTightening({ ...joint, boltStiffnessNPerMm: 80_000 }).findings).toEqual([]);
    const still = angleTightening({ ...joint, targetPreloadN: 5000 });
    expect(still).toMatchObject({ angleDeg: 0, fiveDegreeRatio: null, findings: [] });
  });

  it('lets five degrees be a tenth of the rise, and no more', () => {
    // 0.9 mm x 5/360 = 0.0125 mm; two springs of 2 kN/mm in series give 1 kN/mm: 12.5 N of 125 N.
    const soft = {
      thread: metricThread({ nominalDiameterMm: 8, pitchMm: 0.9 }),
      snugPreloadN: 0,
      boltStiffnessNPerMm: 2000,
      memberStiffnessNPerMm: 2000,
    };
    expect(angleTightening({ ...soft, targetPreloadN: 125 })).toMatchObject({ fiveDegreeRatio: 0.1, findings: [] });
    expect(angleTightening({ ...soft, targetPreloadN: 124 }).findings).toHaveLength(1);
  });

  it('refuses a target below snug', () => {
    expect(refusal(() => angleTightening({ ...joint, targetPreloadN: 4000 })).path).toBe('targetPreloadN');
    expect(refusal(() => angleTightening({ ...joint, travelMm: -1 })).path).toBe('travelMm');
  });
});
