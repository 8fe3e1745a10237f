import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { predictSeat } from '@spindlewright/taper';
import { describe, expect, it } from 'vitest';
import { judgeFile } from './database.ts';
import { PLUS_MINUS_MM, pressing, readBatch, spindle, study } from './study.ts';

const path = fileURLToPath(new URL('arms.csv', import.meta.url));
const csv = readFileSync(path, 'utf8');
const batch = readBatch(csv);
const result = study(csv);
const table = new Map(
  result.table
    .trim()
    .split('\n')
    .slice(1)
    .map((line): [string, string[]] => {
      const [arm = '', ...cells] = line.split(',');
      return [arm, cells];
    }),
);

describe('a batch of arms by columns', () => {
  it('has the verdict of predictSeat for each arm, one by one', () => {
    const mouth = batch.column('mouth_mm');
    const [bore, seat, boss] = ['bore_mm', 'bolt_seat_mm', 'boss_mm'].map(batch.column);
    let judged = 0;
    for (const [row, arm] of batch.arms.entries()) {
      const nominal = mouth[row] ?? Number.NaN;
      if (!(nominal < 60)) continue;
      judged++;
      const { verdict, worstVerdicts, travelMm } = predictSeat({
        spindle,
        arm: {
          acrossFlatsAtMouthMm: { lower: nominal - PLUS_MINUS_MM, nominal, upper: nominal + PLUS_MINUS_MM },
          faceAngleDeg: 2,
          boreLengthMm: bore?.[row] ?? 0,
          boltSeatFromMouthMm: seat?.[row] ?? 0,
          bossDiameterMm: boss?.[row] ?? 0,
        },
        pressing,
      });
      expect(table.get(arm)?.slice(0, 4), arm).toEqual([
        verdict,
        worstVerdicts.lower,
        worstVerdicts.upper,
        travelMm.nominal.toFixed(3),
      ]);
    }
    expect(judged).toBe(58);
  });

  it('says so where a cell is empty or has lost its point', () => {
    expect(table.get('A017')?.[0]).toBe('cannot-tell');
    expect(table.get('A041')?.[0]).toBe('refused');
  });

  it('is made again to the last sample from its seed, with what it rests on', () => {
    expect(study(csv)).toEqual(result);
    const { seed, sources, versions, verdicts } = JSON.parse(result.provenance);
    expect(seed).toBe(7);
    expect(Object.keys(versions)).toContain('@spindlewright/taper');
    expect(Array.isArray(sources)).toBe(true);
    const sum = verdicts.reduce((total: number, { probability }: { probability: number }) => total + probability, 0);
    expect(sum).toBeCloseTo(1, 12);
    expect(result.picture).toContain(result.nearest);
  });

  it('comes out of a database alike', async () => {
    const judged = await judgeFile(path);
    expect(judged.size).toBe(60);
    for (const [arm, cells] of table) expect(judged.get(arm), arm).toEqual(cells.slice(0, 3));
  });
});
