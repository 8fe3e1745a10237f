import { describe, expect, it } from 'vitest';
import { boltTurns } from './bolt-turns.ts';

describe('boltTurns', () => {
  it('adds the stretch of the bolt to the travel', () => {
    const input = { travelMm: 1, axialForceN: 15000, boltStiffnessNPerMm: 270000, boltPitchMm: 1 };
    const turns = boltTurns(input);
    // 15 kN on 270 kN/mm is 0.0556 mm, 20 degrees at a pitch of 1 mm.
    expect(turns.solidTurns * 360).toBeCloseTo(20, 10);
    expect(turns.boltTurns).toBeCloseTo(1 + 20 / 360, 12);
    expect(boltTurns({ ...input, boltPitchMm: 1.25 }).boltTurns).toBeCloseTo(turns.boltTurns / 1.25, 12);
  });

  it('warns of a bolt that goes solid', () => {
    const { findings } = boltTurns({ travelMm: 1, axialForceN: 15000, boltStiffnessNPerMm: 270000, boltPitchMm: 1 });
    expect(findings).toMatchObject([{ code: 'stop-before-half-a-turn', severity: 'caution' }]);
    expect(findings[0]?.message).toContain('1.1 turns');
  });

  it('does not lean on half a turn where a sound press takes less, or a solid bolt more', () => {
    const of = (travelMm: number, axialForceN: number) =>
      boltTurns({ travelMm, axialForceN, boltStiffnessNPerMm: 20000, boltPitchMm: 1 }).findings;
    for (const findings of [of(0.2, 2000), of(1, 12000)]) {
      expect(findings).toMatchObject([{ code: 'half-turn-tells-nothing', severity: 'caution' }]);
      expect(findings[0]?.message).not.toContain('before half a turn');
    }
  });

  it('refuses a pitch of zero and unknown keys', () => {
    const input = { travelMm: 1, axialForceN: 15000, boltStiffnessNPerMm: 270000, boltPitchMm: 0 };
    expect(() => boltTurns(input)).toThrow('boltPitchMm');
    // So near 0 the turns would run out of numbers.
    expect(() => boltTurns({ ...input, boltPitchMm: 1e-320 })).toThrow('boltPitchMm');
    expect(() => boltTurns({ ...input, boltPitchMm: 1, pitchMm: 1 } as never)).toThrow('pitchMm');
  });
});
