import { describe, expect, it } from 'vitest';
import { retighteningPath } from './retightening-path.ts';
import { settledPreload } from './settled-preload.ts';

const joint = { preloadN: 12000, friction: 0.1, faceAngleDeg: 2, travelMm: 0.82, boltStiffnessNPerMm: 200000 };
const run = (more: object) => retighteningPath({ ...joint, endGapMm: 3, ...more });

describe('retighteningPath', () => {
  it('begins as the first settling does', () => {
    const [first] = run({}).cycles;
    expect(first?.settledPreloadN).toBeCloseTo(settledPreload(joint).preloadAfterShakedownN, 8);
    // Some hundredths of a millimetre and a few per cent of press a cycle.
    expect(first?.advanceMm).toBeGreaterThan(0.02);
    expect(first?.advanceMm).toBeLessThan(0.09);
    expect(first?.pressRatio).toBeCloseTo(1 + (first?.advanceMm ?? 0) / 0.82, 12);
  });

  it('is found again by letting bolt and press come to rest step by step', () => {
    const { cycles } = run({ cycleCount: 5 });
    const tangent = Math.tan((2 * Math.PI) / 180);
    const perMm = (12000 * tangent) / (tangent + 0.1) / 0.82;
    let pressed = 0.82;
    for (const { settledPreloadN, advanceMm } of cycles) {
      let bolt = 12000;
      while (bolt > perMm * pressed) {
        pressed += 1e-6;
        bolt -= 200000 * 1e-6;
      }
      expect(settledPreloadN).toBeCloseTo(bolt, -1);
      expect(advanceMm).toBeCloseTo(pressed - 0.82, 4);
    }
  });

  it('keeps more each time, to rest where the wedge alone holds the bolt', () => {
    const { cycles, endsBy } = run({ endGapMm: 50, cycleCount: 1000 });
    expect(endsBy).toBe('nothing-yet');
    const kept = cycles.map(({ settledPreloadN }) => settledPreloadN);
    expect(kept).toEqual([...kept].sort((a, b) => a - b));
    const tangent = Math.tan((2 * Math.PI) / 180);
    expect(cycles.at(-1)?.pressRatio).toBeCloseTo((tangent + 0.1) / tangent, 3);
  });

  it('ends on the spindle or at the boss, whichever comes first', () => {
    expect(run({ endGapMm: 0.1 })).toMatchObject({ endsBy: 'end-gap', cycles: { length: 3 } });
    expect(run({ endGapMm: 0.1 }).findings[0]).toMatchObject({ code: 'retightening-ends-on-end', severity: 'stop' });
    const boss = run({ contactPressureMPa: 158, largestPressureMPa: 180 });
    expect(boss.endsBy).toBe('boss');
    expect((boss.cycles.at(-1)?.pressRatio ?? 0) * 158).toBeGreaterThan(180);
    expect((boss.cycles.at(-2)?.pressRatio ?? 9) * 158).toBeLessThanOrEqual(180);
  });

  it('lets wear move the arm on without more press, and the bolt go slack', () => {
    const [worn] = run({ wearPerCycleUm: 0.2 }).cycles;
    const [fresh] = run({}).cycles;
    const wayMm = 0.0002 / Math.tan((2 * Math.PI) / 180);
    expect((worn?.advanceMm ?? 0) - (fresh?.advanceMm ?? 0)).toBeCloseTo(wayMm, 12);
    expect(worn?.pressRatio).toBeCloseTo(fresh?.pressRatio ?? 0, 12);
    expect((fresh?.settledPreloadN ?? 0) - (worn?.settledPreloadN ?? 0)).toBeCloseTo(200000 * wayMm, 6);
    expect(run({ wearPerCycleUm: 2 }).cycles[0]?.settledPreloadN).toBeCloseTo(0, 9);
  });

  it('refuses half a cycle and one pressure without the other', () => {
    expect(() => run({ cycleCount: 1.5 })).toThrow('cycleCount');
    expect(() => run({ contactPressureMPa: 100 })).toThrow('largestPressureMPa');
    expect(() => run({ largestPressureMPa: 100 })).toThrow('contactPressureMPa');
    expect(() => run({ cycles: 3 })).toThrow('cycles');
  });
});
