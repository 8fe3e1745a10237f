import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { handForce } from './hand-force.ts';

describe('handForce', () => {
  it('is torque over lever, more for a slanting pull', () => {
    expect(handForce({ torqueNm: 50, leverLengthMm: 250 }).forceN).toBe(200);
    expect(handForce({ torqueNm: 50, leverLengthMm: 250, pullAngleDeg: 30 }).forceN).toBeCloseTo(400, 10);
    expect(handForce({ torqueNm: 0, leverLengthMm: 250 }).forceN).toBe(0);
    expect(handForce({ torqueNm: 50, leverLengthMm: 250, pullAngleDeg: 90 }).forceN).toBe(200);
  });

  it('speaks up above what one arm holds steadily', () => {
    expect(handForce({ torqueNm: 50, leverLengthMm: 200 }).findings).toEqual([]);
    expect(handForce({ torqueNm: 50, leverLengthMm: 199 }).findings.map((finding) => finding.code)).toEqual([
      'hand-force-high',
    ]);
  });

  it('refuses what is no lever', () => {
    expect(refusal(() => handForce({ torqueNm: 50, leverLengthMm: 0 })).path).toBe('leverLengthMm');
    expect(refusal(() => handForce({ torqueNm: 50, leverLengthMm: 1, pullAngleDeg: 0 })).path).toBe('pullAngleDeg');
    expect(refusal(() => handForce({ torqueNm: 50, leverLengthMm: 1, pullAngleDeg: 91 })).path).toBe('pullAngleDeg');
  });
});
