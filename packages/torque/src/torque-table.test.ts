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

  it('names the sources of all its classes in order, whichever class comes first', () => {
    const classes = ['10.9', '8.8'];
    const { sources } = torqueTable({ joints: [m8], propertyClasses: classes, frictions: [0.1] });
    expect(sources).toEqual(['iso-898-1-quoted', 'iso-898-1-ultimate-quoted', 'shigley-9', 'vdi-2230-2001-quoted']);
  });

  it('gives each torque in four units by the exact factors of NIST SP 811', () => {
    const { rows, method } = torqueTable({ joints: [m8], propertyClasses: ['8.8'], frictions: [0.12] });
    expect(method).toBe('vdi-2230');
    for (const { torqueNm, torqueLbfIn, torqueLbfFt, torqueKgfCm } of rows) {
      expect(torqueLbfIn * 0.1129848290276167).toBeCloseTo(torqueNm, 11);
      expect(torqueLbfFt * 1.3558179483314003).toBeCloseTo(torqueNm, 11);
      expect(torqueKgfCm * 0.0980665).toBeCloseTo(torqueNm, 11);
    }
  });

  it('refuses empty lists and faulty joints', () => {
    const input = { joints: [m8], propertyClasses: ['8.8'], frictions: [0.1] };
    expect(torqueTable(input).utilisation).toBe(0.9);
    expect(refusal(() => torqueTable({ ...input, joints: [] })).path).toBe('joints');
    expect(refusal(() => torqueTable({ ...input, frictions: [0] })).path).toBe('frictions[0]');
    expect(refusal(() => torqueTable({ ...input, propertyClasses: ['7.7'] })).path).toBe('propertyClasses[0]');
    expect(refusal(() => torqueTable(null as never)).path).toBe('joints');
    expect(refusal(() => torqueTable(undefined as never)).path).toBe('joints');
  });

  it('refuses what else a joint may carry, so that nothing in it overrides the table', () => {
    const input = { propertyClasses: ['8.8'], frictions: [0.1] };
    for (const key of ['bearingFriction', 'threadFriction', 'utilisation', 'propertyClass', 'torsion', 'hand']) {
      const error = refusal(() => torqueTable({ ...input, joints: [m8, { ...m8, [key]: 0.2 }] as never }));
      expect(error.path).toBe(`joints[1].${key}`);
    }
  });

  it.each([
    [null, 'joints[1]'],
    [undefined, 'joints[1]'],
    [{ thread: m8.thread }, 'joints[1].bearing'],
    [{ bearing: m8.bearing }, 'joints[1].thread'],
    [{ ...m8, thread: { ...m8.thread, pitchMm: -1 } }, 'joints[1].thread.pitchMm'],
    [{ ...m8, thread: { ...m8.thread, pitchMm: 100 } }, 'joints[1].thread.pitchMm'],
    [{ ...m8, bearing: { outerDiameterMm: 9, holeDiameterMm: 9 } }, 'joints[1].bearing.holeDiameterMm'],
    [{ ...m8, bearing: { outerDiameterMm: 12, squareHoleMm: 12.6 } }, 'joints[1].bearing.squareHoleMm'],
    [
      { ...m8, bearing: { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 7 } },
      'joints[1].bearing.cornerReliefMm',
    ],
  ])('names the joint in which %j is at fault', (joint, path) => {
    const input = { propertyClasses: ['8.8'], frictions: [0.1], joints: [m8, joint] };
    expect(refusal(() => torqueTable(input as never)).path).toBe(path);
  });

  it('refuses a hole in the list of joints', () => {
    const joints = [m8, m10];
    delete joints[0];
    const input = { joints, propertyClasses: ['8.8'], frictions: [0.1] };
    expect(refusal(() => torqueTable(input)).path).toBe('joints[0]');
  });

  it('names the class that is unknown, and the joint in which a class is not made', () => {
    const m20 = {
      thread: metricThread({ nominalDiameterMm: 20, pitchMm: 1.5 }),
      bearing: { outerDiameterMm: 30, holeDiameterMm: 22 },
    };
    const input = { joints: [m8, m20], frictions: [0.1] };
    const unknown = refusal(() => torqueTable({ ...input, propertyClasses: ['8.8', '8,8'] }));
    expect(unknown).toMatchObject({ path: 'propertyClasses[1]', nearest: '8.8' });
    const absent = refusal(() => torqueTable({ ...input, propertyClasses: ['9.8'] }));
    expect(absent).toMatchObject({ path: 'joints[1].thread.majorDiameterMm', received: '20' });
  });
});
