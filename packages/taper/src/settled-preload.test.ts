import { describe, expect, it } from 'vitest';
import { settledPreload } from './settled-preload.ts';

const input = { preloadN: 12000, friction: 0.1, faceAngleDeg: 2, travelMm: 0.82, boltStiffnessNPerMm: 200000 };

describe('settledPreload', () => {
  it('meets the press without friction where the bolt has let it creep to', () => {
    const { preloadAfterShakedownN, frictionlessForceN } = settledPreload(input);
    // Found by search: the creep at which the slackening bolt and the stiffening press carry the same force.
    let [low, high] = [0, 1];
    for (let step = 0; step < 100; step++) {
      const creep = (low + high) / 2;
      const bolt = 12000 - 200000 * creep;
      const press = frictionlessForceN * (1 + creep / 0.82);
      if (bolt > press) low = creep;
      else high = creep;
    }
    expect(preloadAfterShakedownN).toBeCloseTo(12000 - 200000 * high, 6);
    expect(preloadAfterShakedownN).toBeGreaterThan(frictionlessForceN);
  });

  it('keeps everything without friction, and more with a softer bolt', () => {
    expect(settledPreload({ ...input, friction: 0 }).preloadAfterShakedownN).toBeCloseTo(12000, 9);
    const soft = settledPreload({ ...input, boltStiffnessNPerMm: 20000 });
    expect(soft.preloadAfterShakedownN).toBeGreaterThan(settledPreload(input).preloadAfterShakedownN);
  });

  it('loses k w/tan a for a wear of w', () => {
    const { preloadLossPerMicrometreN } = settledPreload(input);
    expect(preloadLossPerMicrometreN).toBeCloseTo((200000 * 0.001) / Math.tan((2 * Math.PI) / 180), 9);
  });

  it('asks for a second look and claims no lower bound', () => {
    const { findings } = settledPreload(input);
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['preload-needs-recheck', 'caution'],
      ['no-lower-bound', 'caution'],
    ]);
  });

  it('refuses a travel of zero, which leaves no stiffness', () => {
    expect(() => settledPreload({ ...input, travelMm: 0 })).toThrow('travelMm');
  });
});
