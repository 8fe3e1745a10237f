import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { metricThread } from './metric-thread.ts';
import { preloadFromTorque } from './preload-from-torque.ts';
import { preloadFromTorqueColumns } from './preload-from-torque-columns.ts';
import { torqueFromPreload } from './torque-from-preload.ts';
import { torqueFromPreloadColumns } from './torque-from-preload-columns.ts';

const base = {
  thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1 }),
  bearing: { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 0.5 },
};

describe('column conversions', () => {
  it.each(['exact', 'vdi-2230', 'nut-factor'] as const)('%s: give the numbers of the single ones', (method) => {
    const frictions = [0.08, 0.12, 0.3];
    const joint = { ...base, method, threadFriction: frictions, bearingFriction: 0.15 };
    const preloads = Float64Array.of(0, 20_000, 30_000);
    const { torqueNm, refused } = torqueFromPreloadColumns({ preloadN: preloads, ...joint });
    const single = frictions.map(
      (threadFriction, row) =>
        torqueFromPreload({ ...base, method, threadFriction, bearingFriction: 0.15, preloadN: preloads[row] ?? 0 })
          .torqueNm,
    );
    expect(Array.from(torqueNm)).toEqual(single);
    expect(Array.from(refused)).toEqual([0, 0, 0]);
    const back = preloadFromTorqueColumns({ torqueNm, ...joint });
    expect(back.preloadN[1]).toBe(
      preloadFromTorque({ ...base, method, threadFriction: 0.12, bearingFriction: 0.15, torqueNm: torqueNm[1] ?? 0 })
        .preloadN,
    );
  });

  it('write into arrays of the caller, and refuse such of another kind or length', () => {
    const out = { torqueNm: new Float64Array(2).fill(9), refused: new Uint8Array(2).fill(9) };
    const joint = { ...base, threadFriction: 0.1, bearingFriction: 0.1 };
    const { torqueNm, refused } = torqueFromPreloadColumns({ ...joint, preloadN: [20_000, -1], out });
    expect(torqueNm).toBe(out.torqueNm);
    expect(refused).toBe(out.refused);
    expect(torqueNm[0]).toBe(torqueFromPreload({ ...joint, preloadN: 20_000 }).torqueNm);
    expect([torqueNm[1], ...refused]).toEqual([0, 0, 1]);
    expect(() => torqueFromPreloadColumns({ ...joint, preloadN: [1, 2, 3], out })).toThrow('out.torqueNm');
    const wrong = { torqueNm: new Float64Array(2), refused: new Float64Array(2) as unknown as Uint8Array };
    expect(() => torqueFromPreloadColumns({ ...joint, preloadN: [1, 2], out: wrong })).toThrow('out.refused');
  });

  it('mark bad rows and go on', () => {
    const { preloadN, refused } = preloadFromTorqueColumns({
      ...base,
      torqueNm: [40, -1, Number.NaN, Number.POSITIVE_INFINITY, 40, 40, 40],
      threadFriction: [0.1, 0.1, 0.1, 0.1, 0, 1.5, 1],
      bearingFriction: [0.1, 0.1, 0.1, 0.1, 0.1, 0.1, Number.NaN],
    });
    expect(Array.from(refused)).toEqual([0, 1, 1, 1, 1, 1, 1]);
    expect(Array.from(preloadN.slice(1))).toEqual([0, 0, 0, 0, 0, 0]);
    expect(preloadN[0]).toBeGreaterThan(0);
  });

  it('write preloads into arrays of the caller too', () => {
    const out = { preloadN: new Float64Array(1), refused: new Uint8Array(1) };
    const joint = { ...base, threadFriction: 0.1, bearingFriction: 0.1 };
    expect(preloadFromTorqueColumns({ ...joint, torqueNm: [40], out }).preloadN).toBe(out.preloadN);
    expect(out.preloadN[0]).toBe(preloadFromTorque({ ...joint, torqueNm: 40 }).preloadN);
  });

  it.each(['exact', 'vdi-2230', 'nut-factor'] as const)(
    '%s: judge rows at the ends of their domain as the single ones',
    (method) => {
      const ends = [
        [1e9, 0.1, 0.1],
        [1.000001e9, 0.1, 0.1],
        [0, 0.1, 0.1],
        [40, 1, 0.1],
        [40, 0.1, 1],
        [40, 0.1, 1.0001],
        [40, 0.1, 0],
        [40, 0.1, -0.1],
      ];
      const column = (place: number): number[] => ends.map((row) => row[place] ?? 0);
      const columns = { threadFriction: column(1), bearingFriction: column(2) };
      const accepted = (run: () => unknown): number => {
        try {
          run();
          return 0;
        } catch {
          return 1;
        }
      };
      const single = ends.map(([torqueNm = 0, threadFriction = 0, bearingFriction = 0]) =>
        accepted(() => preloadFromTorque({ ...base, method, torqueNm, threadFriction, bearingFriction })),
      );
      expect(single).toEqual([0, 1, 0, 0, 0, 1, 1, 1]);
      expect([...preloadFromTorqueColumns({ ...base, method, ...columns, torqueNm: column(0) }).refused]).toEqual(
        single,
      );
      expect([...torqueFromPreloadColumns({ ...base, method, ...columns, preloadN: column(0) }).refused]).toEqual(
        single,
      );
    },
  );

  it('mark texts, however much they read like a number', () => {
    const joint = {
      ...base,
      threadFriction: [0.1, '0.1', 0.1, 0.1, null],
      bearingFriction: [0.1, 0.1, '0.1', 0.1, 0.1],
    };
    const values = [40, 40, 40, '40', 40];
    const marked = [0, 1, 1, 1, 1];
    const preloads = preloadFromTorqueColumns({ ...joint, torqueNm: values } as never);
    expect(Array.from(preloads.refused)).toEqual(marked);
    expect(Array.from(preloads.preloadN.slice(1))).toEqual([0, 0, 0, 0]);
    const torques = torqueFromPreloadColumns({ ...joint, preloadN: values } as never);
    expect(Array.from(torques.refused)).toEqual(marked);
  });

  it('refuse what is no input at all, and columns that only look like some', () => {
    const joint = { ...base, threadFriction: 0.1, bearingFriction: 0.1 };
    for (const nothing of [undefined, null, 5, 'text', []]) {
      expect(refusal(() => preloadFromTorqueColumns(nothing as never)).path).toBe('torqueNm');
      expect(refusal(() => torqueFromPreloadColumns(nothing as never)).path).toBe('preloadN');
    }
    for (const column of ['40', { length: 1, 0: 40 }, { length: Number.NaN }, new DataView(new ArrayBuffer(8))]) {
      expect(refusal(() => preloadFromTorqueColumns({ ...joint, torqueNm: column as never })).path).toBe('torqueNm');
    }
    for (const friction of ['0.1', { length: 1, 0: 0.1 }, null]) {
      const odd = { ...joint, torqueNm: [40], threadFriction: friction as never };
      expect(refusal(() => preloadFromTorqueColumns(odd)).path).toBe('threadFriction');
    }
  });

  it('refuse what is wrong with the whole', () => {
    const joint = { ...base, threadFriction: 0.1, bearingFriction: 0.1 };
    expect(refusal(() => preloadFromTorqueColumns({ ...joint, torqueNm: 40 as never })).path).toBe('torqueNm');
    expect(refusal(() => torqueFromPreloadColumns({ ...joint, preloadN: null as never })).path).toBe('preloadN');
    expect(refusal(() => torqueFromPreloadColumns({ ...joint, preloadN: [1, 2], threadFriction: [0.1] })).path).toBe(
      'threadFriction',
    );
    expect(
      refusal(() => torqueFromPreloadColumns({ ...base, preloadN: [1], bearingFriction: 0.1 } as never)).path,
    ).toBe('threadFriction');
    expect(refusal(() => torqueFromPreloadColumns({ ...joint, preloadN: [1], tool: 'x' } as never)).path).toBe('tool');
  });
});
