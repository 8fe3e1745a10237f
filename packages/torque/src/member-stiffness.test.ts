import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { frustumStiffness } from './frustum-stiffness.ts';
import { memberStiffness } from './member-stiffness.ts';

const pack = { layers: [{ thicknessMm: 30, modulusGPa: 207 }], faceDiameterMm: 18, holeDiameterMm: 12 };

describe('memberStiffness', () => {
  it('is half a frustum for one layer, however it is sliced', () => {
    const half = { outerFaceDiameterMm: 18, holeDiameterMm: 12, thicknessMm: 15, modulusGPa: 207 };
    const whole = memberStiffness(pack).stiffnessNPerMm;
    expect(whole / (frustumStiffness(half).stiffnessNPerMm / 2)).toBeCloseTo(1, 12);
    const slices = [4, 11, 3, 12].map((thicknessMm) => ({ thicknessMm, modulusGPa: 207 }));
    expect(memberStiffness({ ...pack, layers: slices }).stiffnessNPerMm / whole).toBeCloseTo(1, 12);
  });

  it('does not care which face comes first', () => {
    const layers = [
      { thicknessMm: 5, modulusGPa: 207 },
      { thicknessMm: 21, modulusGPa: 71 },
    ];
    const there = memberStiffness({ ...pack, layers, farFaceDiameterMm: 22 });
    const back = memberStiffness({
      ...pack,
      layers: [...layers].reverse(),
      faceDiameterMm: 22,
      farFaceDiameterMm: 18,
    });
    expect(there.stiffnessNPerMm / back.stiffnessNPerMm).toBeCloseTo(1, 12);
    expect(there.gripLengthMm).toBe(26);
  });

  it('lets unequal cones meet where they are equally wide', () => {
    const { cones } = memberStiffness({ ...pack, farFaceDiameterMm: 22 });
    const [near, far] = cones;
    const widest = (face: number, heightMm = 0): number => face + 2 * heightMm * Math.tan(Math.PI / 6);
    expect(cones).toHaveLength(2);
    expect((near?.thicknessMm ?? 0) + (far?.thicknessMm ?? 0)).toBeCloseTo(30, 12);
    expect(widest(18, near?.thicknessMm)).toBeCloseTo(widest(22, far?.thicknessMm), 12);
  });

  it('leaves one cone where the other face is wider than it ever grows', () => {
    const one = memberStiffness({ ...pack, farFaceDiameterMm: 200 });
    expect(one.cones).toHaveLength(1);
    expect(one.cones[0]).toMatchObject({ outerFaceDiameterMm: 18, thicknessMm: 30 });
  });

  it('refuses a hole as wide as a face, and no layer', () => {
    for (const faces of [{ farFaceDiameterMm: 12 }, { faceDiameterMm: 12, farFaceDiameterMm: 18 }]) {
      const narrow = refusal(() => memberStiffness({ ...pack, ...faces }));
      expect(narrow).toMatchObject({ path: 'holeDiameterMm', received: '12', allowed: 'below the faces, 12 mm' });
    }
    expect(refusal(() => memberStiffness({ ...pack, layers: [] })).path).toBe('layers');
    expect(refusal(() => memberStiffness({ ...pack, layers: [{ thicknessMm: 0, modulusGPa: 1 }] })).path).toBe(
      'layers[0].thicknessMm',
    );
  });
});
