import { describe, expect, it } from 'vitest';
import { faceSpline } from './face-spline.ts';

const joint = { axialForceN: 20_000, flankAngleDeg: 30, outerDiameterMm: 24, innerDiameterMm: 14 };

describe('faceSpline', () => {
  it('climbs where the work of the torque is that of lifting the bolt', () => {
    // Turning by dphi on a flank at 30 degrees to the axis lifts by r dphi/tan 30... the flank rises by 1/tan f per unit of
    // turning, so that T dphi = F r dphi/tan f without friction.
    const r = (24 + 14) / 4;
    expect(faceSpline(joint).torqueCapacityNm.nominal).toBeCloseTo((20_000 * r) / Math.tan(Math.PI / 6) / 1000, 6);
  });

  it('opens where a summed pressure over the ring reaches zero at its rim', () => {
    const M = faceSpline(joint).openingMomentNm.nominal * 1000;
    const area = (Math.PI / 4) * (24 ** 2 - 14 ** 2);
    const cells = 600;
    let inertia = 0;
    for (let i = 0; i < cells; i++) {
      for (let k = 0; k < cells; k++) {
        const x = 24 * ((i + 0.5) / cells - 0.5);
        const y = 24 * ((k + 0.5) / cells - 0.5);
        const rr = Math.hypot(x, y);
        if (rr <= 12 && rr >= 7) inertia += y * y * (24 / cells) ** 2;
      }
    }
    expect((20_000 / area - (M * 12) / inertia) / (20_000 / area)).toBeCloseTo(0, 2);
  });

  it('bears more with steeper flanks, and tells when the share of the ring was taken', () => {
    const steep = faceSpline({ ...joint, flankAngleDeg: 20 });
    expect(steep.torqueCapacityNm.nominal).toBeGreaterThan(faceSpline(joint).torqueCapacityNm.nominal);
    expect(steep.findings.map(({ code }) => code)).toContain('share-of-ring-assumed');
  });

  it('has no end of reserve where the load may be nothing, and says so', () => {
    const perhaps = faceSpline({ ...joint, torqueNm: { lower: 0, nominal: 50, upper: 100 } });
    expect(perhaps.reserveRatio).toBeNull();
    expect(perhaps.findings.map(({ code }) => code)).toContain('reserve-unbounded');
  });

  it('needs more force under torque and bending, and says do not ride when it is not there', () => {
    const calm = faceSpline({ ...joint, torqueNm: 100 });
    const hard = faceSpline({ ...joint, torqueNm: 200, bendingNm: 100 });
    expect(calm.staysTogether).toBe(true);
    expect(hard.neededForceN.nominal).toBeGreaterThan(calm.neededForceN.nominal);
    expect(hard.staysTogether).toBe(false);
    expect(hard.findings[0]).toMatchObject({ code: 'face-teeth-open', severity: 'stop' });
    expect(faceSpline(joint).reserveRatio).toBeNull();
  });

  it('says that there is no travel to read', () => {
    expect(faceSpline(joint).findings.map(({ code }) => code)).toContain('teeth-have-no-travel');
  });

  it('refuses a ring without teeth', () => {
    expect(() => faceSpline({ ...joint, innerDiameterMm: 24 })).toThrow('innerDiameterMm');
  });
});
