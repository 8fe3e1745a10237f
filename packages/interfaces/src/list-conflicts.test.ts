import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { listConflicts } from './list-conflicts.ts';

const ids = (record?: string): string[] =>
  listConflicts(record === undefined ? {} : { record }).map(({ conflict }) => conflict.id);
const values = (id: string, record: string): (number | undefined)[] =>
  listConflicts({ record })
    .filter(({ conflict }) => conflict.id === id)
    .flatMap(({ conflict }) => conflict.positions.map(({ value }) => value?.value));

describe('listConflicts', () => {
  it.each([
    ['the number of the Japanese standard', 'document-number', 'square-taper-jis', 2],
    ['the JIS size across flats', 'across-flats-at-end', 'square-taper-jis', 4],
    ['the ISO size across flats', 'across-flats-at-end', 'square-taper-iso', 3],
    ['the shift of a mixed arm', 'mixed-arm-shift', 'square-taper-jis', 7],
    ['the face angle', 'face-angle', 'square-taper-jis', 4],
    ['the plane of the size', 'reading-plane', 'square-taper-jis', 3],
    ['the thread of studs', 'nut-thread', 'square-taper-nutted', 2],
    ['the odd French puller thread', 'odd-french-puller-thread', 'puller-odd-french', 3],
    ['the engagement of the short eight splines', 'eight-spline-engagement', 'spline-8-short', 2],
    ['the bore of the one-piece shell', 'one-piece-bore', 'one-piece', 3],
    ['the diameter of the British shell thread', 'bsc-thread-diameter', 'shell-bsc', 2],
    ['the torque of square tapers', 'fixing-torque', 'square-taper-jis', 4],
    ['the torque of M12', 'm12-torque', 'spline-10', 2],
    ['the torque of M15', 'm15-torque', 'spline-10', 3],
    ['the torque of pinch bolts', 'pinch-torque', 'through-spindle-24', 2],
    ['the torque of chainring bolts', 'chainring-torque', 'chainring-bolt-m8x0-75', 2],
    ['the road chainline', 'road-chainline', 'chainline-road-double', 2],
    ['the force of the bolt', 'bolt-force', 'bolt-m8x1', 3],
    ['grease on the flats', 'lubrication-of-flats', 'square-taper-jis', 2],
    ['tightening again', 'retightening', 'square-taper-jis', 3],
  ])('shows the disagreement on %s', (_subject, id, record, count) => {
    const found = listConflicts({ record }).filter(({ conflict }) => conflict.id === id);
    expect(found.map(({ conflict }) => conflict.positions.length)).toEqual([count]);
  });

  it('keeps the printed values apart', () => {
    expect(values('odd-french-puller-thread', 'puller-odd-french')).toEqual([23.35, 23.15, 23.2]);
    expect(values('road-chainline', 'chainline-road-double')).toEqual([43.5, 45]);
    expect(values('bsc-thread-diameter', 'shell-bsc')).toEqual([34.798, 34.925]);
    expect(values('one-piece-bore', 'shell-american')).toEqual([51.3, 51.4, 51]);
    expect(values('eight-spline-engagement', 'spline-8-short')).toEqual([5, 3]);
    // 40 Nm over nut factor and 8 mm.
    expect(values('bolt-force', 'bolt-m8x1')).toEqual(
      [40 / 0.15 / 0.008, 40 / 0.2 / 0.008, 40 / 0.25 / 0.008].map(Math.round),
    );
  });

  it('lists what records share once, with all of them', () => {
    const shared = listConflicts().find(({ conflict }) => conflict.id === 'one-piece-bore');
    expect(shared?.records).toEqual(['one-piece', 'shell-american']);
    expect(ids().filter((id) => id === 'across-flats-at-end')).toHaveLength(2);
    expect(ids('tread')).toEqual([]);
  });

  it('refuses an unknown key', () => {
    try {
      listConflicts({ id: 'face-angle' } as never);
      expect.unreachable();
    } catch (error) {
      expect(isDomainError(error)).toBe(true);
    }
  });
});
