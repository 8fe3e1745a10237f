import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { assemblyLimit } from './assembly-limit.ts';
import { metricThread } from './metric-thread.ts';
import { torqueTable } from './torque-table.ts';

const m8 = {
  thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1 }),
  bearing: { outerDiameterMm: 11.63, holeDiameterMm: 9 },
};
const m10 = {
  thread: metricThread({ nominalDiameterMm: 10, pitchMm: 1 }),
  bearing: { outerDiameterMm: 14.63, holeDiameterMm: 11 },
};

describe('torqueTable', () => {
  it('runs through threads, classes and frictions in that order', () => {
    const table = torqueTable({
      joints: [m8, m10],
      propertyClasses: ['8.8', '10.9'],
      frictions: [0.1, 0.14],
      utilisation: 0.8,
    });
    expect(table.rows.map((row) => `${row.designation} ${row.propertyClass} ${row.friction}`)).toEqual([
      'M8x1 8.8 0.1',
      'M8x1 8.8 0.14',
      'M8x1 10.9 0.1',
      'M8x1 10.9 0.14',
      'M10x1 8.8 0.1',
      'M10x1 8.8 0.14',
      'M10x1 10.9 0.1',
      'M10x1 10.9 0.14',
    ]);
    const limit = assemblyLimit({ ...m10, propertyClass: '10.9', threadFriction: 0.14, utilisation: 0.8 });
    expect(table.rows[7]).toMatchObject({ preloadN: limit.preloadN, torqueNm: limit.torqueNm });
    expect(table.sources).toContain('shigley-9');
    expect(table.utilisation).toBe(0.8);
  });

  it('refuses empty lists and faulty joints', () => {
    const input = { joints: [m8], propertyClasses: ['8.8'], frictions: [0.1] };
    expect(torqueTable(input).utilisation).toBe(0.9);
    expect(refusal(() => torqueTable({ ...input, joints: [] })).path).toBe('joints');
    expect(refusal(() => torqueTable({ ...input, frictions: [0] })).path).toBe('frictions[0]');
    expect(refusal(() => torqueTable({ ...input, propertyClasses: ['7.7'] })).path).toBe('propertyClass');
    expect(refusal(() => torqueTable({ ...input, joints: [{ ...m8, hand: 1 }] as never })).path).toBe('hand');
    expect(refusal(() => torqueTable(null as never)).path).toBe('joints');
  });
});
