import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { targetTorque } from './target-torque.ts';
import { toolTorque } from './tool-torque.ts';

const tool = 'click-wrench-iso-6789';

describe('targetTorque', () => {
  it('aims so that the tool at its worst meets the maximum', () => {
    const { targetTorqueNm, torqueNm } = targetTorque({ maximumTorqueNm: 60, deviationPercent: 20 });
    expect(targetTorqueNm).toBe(50);
    expect(torqueNm).toEqual({ lower: 40, nominal: 50, upper: 60 });
  });

  it.each([5, 10, 10.3, 10.39, 10.41, 10.5, 10.6, 40])(
    'never exceeds %d Nm with a class of two deviations',
    (maximumTorqueNm) => {
      const { targetTorqueNm } = targetTorque({ maximumTorqueNm, tool });
      expect(toolTorque({ torqueNm: targetTorqueNm, tool }).torqueNm.upper).toBeLessThanOrEqual(
        maximumTorqueNm * (1 + 1e-12),
      );
      expect(targetTorqueNm).toBeGreaterThanOrEqual(maximumTorqueNm / 1.0601);
    },
  );

  it('wants either a deviation or a tool', () => {
    expect(refusal(() => targetTorque({ maximumTorqueNm: 1 })).allowed).toContain('one of them');
    expect(refusal(() => targetTorque({ maximumTorqueNm: 1, tool, deviationPercent: 4 })).path).toBe('');
    expect(refusal(() => targetTorque({ maximumTorqueNm: -1, tool })).path).toBe('maximumTorqueNm');
    expect(refusal(() => targetTorque({ maximumTorqueNm: 1, deviationPercent: 100 })).path).toBe('deviationPercent');
  });
});
