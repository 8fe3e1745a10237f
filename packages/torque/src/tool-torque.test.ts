import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { toolTorque } from './tool-torque.ts';

const tool = 'click-wrench-iso-6789';

describe('toolTorque', () => {
  it('changes from 6 to 4 % above 10 Nm, and takes the larger where the setting may be either', () => {
    const deviation = (torqueNm: number | { lower: number; nominal: number; upper: number }): number =>
      toolTorque({ torqueNm, tool }).deviationPercent;
    expect([deviation(10), deviation(10.01), deviation({ lower: 9.9, nominal: 10.1, upper: 11 })]).toEqual([6, 4, 6]);
  });

  it('keeps the nominal and widens the bounds', () => {
    const { torqueNm } = toolTorque({ torqueNm: { lower: 20, nominal: 22, upper: 25 }, tool: 'uncalibrated-wrench' });
    expect(torqueNm).toEqual({ lower: 18, nominal: 22, upper: 27.500000000000004 });
    // One deviation all along, down to a torque of 0.
    expect(toolTorque({ torqueNm: 0, tool: 'uncalibrated-wrench' }).deviationPercent).toBe(10);
  });

  it('hands out a list of sources of its own', () => {
    toolTorque({ torqueNm: 1, tool }).sources.push('x');
    expect(toolTorque({ torqueNm: 1, tool }).sources).toEqual(['iso-6789-quoted']);
  });

  it('refuses an unknown tool with the nearest', () => {
    expect(refusal(() => toolTorque({ torqueNm: 1, tool: 'click-wrench-iso-6798' })).nearest).toBe(tool);
    expect(refusal(() => toolTorque({ torqueNm: -1, tool })).path).toBe('torqueNm');
  });
});
