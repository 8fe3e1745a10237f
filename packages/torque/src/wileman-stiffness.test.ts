import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { memberStiffness } from './member-stiffness.ts';
import { wilemanStiffness } from './wileman-stiffness.ts';

const joint = { nominalDiameterMm: 12, gripLengthMm: 24, modulusGPa: 207 };

describe('wilemanStiffness', () => {
  it('stands to the two cones as the handbook prints it: 8.81 to 8.95 for 5/8 in over 1.5 in of cast iron', () => {
    // Shigley 9th edition, example 8-4, three figures each.
    const [nominalDiameterMm, gripLengthMm, modulusGPa] = [0.625 * 25.4, 1.5 * 25.4, 96.5];
    const cones = memberStiffness({
      layers: [{ thicknessMm: gripLengthMm, modulusGPa }],
      faceDiameterMm: 1.5 * nominalDiameterMm,
      holeDiameterMm: nominalDiameterMm,
    });
    const fit = wilemanStiffness({ nominalDiameterMm, gripLengthMm, modulusGPa, material: 'cast-iron' });
    expect(Math.abs(fit.stiffnessNPerMm / cones.stiffnessNPerMm / (8.81 / 8.95) - 1)).toBeLessThan(0.002);
  });

  it.each([
    // Shigley, 9th edition, table 8-8; aluminium from memory.
    ['steel', 0.78715, 0.62873],
    ['aluminium', 0.7967, 0.63816],
    ['cast-iron', 0.77871, 0.61616],
    ['general', 0.78952, 0.62914],
  ] as const)(
    'takes the constants of %s: A at a bolt that is nothing to its grip, A exp B where it is as wide',
    (material, a, b) => {
      const ratio = (gripLengthMm: number): number =>
        wilemanStiffness({ nominalDiameterMm: 0.1, gripLengthMm, modulusGPa: 100, material }).stiffnessRatio;
      expect(ratio(10_000)).toBeCloseTo(a, 4);
      expect(Math.log(ratio(0.1) / a)).toBeCloseTo(b, 9);
    },
  );

  it('says where its figures come from and where they end', () => {
    const codes = (change: object) => wilemanStiffness({ ...joint, ...change }).findings.map((finding) => finding.code);
    expect(codes({})).toEqual([]);
    expect(codes({ material: 'aluminium' })).toEqual(['fit-from-memory']);
    expect(codes({ gripLengthMm: 5 })).toEqual(['outside-stiffness-fit']);
    expect(codes({ gripLengthMm: 130 })).toEqual(['outside-stiffness-fit']);
    // A tenth and twice the grip are inside.
    expect(codes({ gripLengthMm: 120 })).toEqual([]);
    expect(codes({ gripLengthMm: 6 })).toEqual([]);
    const shortest = wilemanStiffness({ nominalDiameterMm: 10_000, gripLengthMm: 0.1, modulusGPa: 1500 });
    expect(Number.isFinite(shortest.stiffnessNPerMm)).toBe(true);
  });

  it('refuses what is outside', () => {
    expect(refusal(() => wilemanStiffness({ ...joint, gripLengthMm: 0 })).path).toBe('gripLengthMm');
    expect(refusal(() => wilemanStiffness({ ...joint, material: 'stel' as never })).nearest).toBe('steel');
  });
});
