import { describe, expect, it } from 'vitest';
import { pullerTurns } from './puller-turns.ts';

const input = { releaseForceN: 12000, armThreadForcePerTurnN: 4000, pullerThreadForcePerTurnN: 9000, engagedTurns: 5 };

describe('pullerTurns', () => {
  it('counts the turns of the weaker thread', () => {
    expect(pullerTurns(input)).toMatchObject({
      neededTurns: { lower: 3, nominal: 3, upper: 3 },
      stripForceN: 20000,
      stripsFirst: 'arm',
      holds: true,
    });
    expect(pullerTurns({ ...input, pullerThreadForcePerTurnN: 3000 })).toMatchObject({ stripsFirst: 'puller' });
  });

  it('stops where the largest force would strip it', () => {
    const pull = pullerTurns({ ...input, releaseForceN: { lower: 1e4, nominal: 12000, upper: 49000 } });
    expect(pull.holds).toBe(false);
    expect(pull.findings[0]).toMatchObject({ code: 'puller-thread-strips', severity: 'stop' });
    expect(pull.neededTurns.upper).toBe(12.25);
  });

  it('refuses unknown keys', () => {
    expect(() => pullerTurns({ ...input, turns: 1 } as never)).toThrow('turns');
  });
});
