// A batch of arms, invented, each bore measured to 0.02 mm: which of them seat on one spindle, nominally and at worst, and how
// sure that is for the arm nearest to a limit. CSV in; CSV, a picture and what it all rests on out. Run it from the root of the
// repository: npx node --conditions=@spindlewright/source examples/columns/study.ts
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { drawSeatDistribution } from '@spindlewright/drawing';
import { screenSeats, seatDistribution } from '@spindlewright/taper';
import { parse } from 'csv-parse/sync';
import { provenance } from 'spindlewright';

const SEED = 7;
export const PLUS_MINUS_MM = 0.02;

/** Invented, as is the batch: a spindle end of about the sizes that are published, and a bolt tightened by feel. */
export const spindle = {
  acrossFlatsAtEndMm: { lower: 12.6, nominal: 12.63, upper: 12.66 },
  faceAngleDeg: 2,
  flatLengthMm: 20,
  endChamferMm: 0.5,
  cornerDiameterMm: { lower: 16.3, nominal: 16.5, upper: 16.7 },
};
export const pressing = {
  axialForceN: { lower: 10_000, nominal: 15_000, upper: 20_000 },
  friction: { lower: 0.1, nominal: 0.13, upper: 0.16 },
};

/** Reads the batch: one column for each size, NaN where a cell is empty. */
export function readBatch(csv: string): { arms: string[]; column: (name: string) => Float64Array } {
  const rows: Record<string, string>[] = parse(csv, { columns: true });
  const number = (text: string | undefined): number => (text === undefined || text === '' ? Number.NaN : Number(text));
  return {
    arms: rows.map(({ arm }) => arm ?? ''),
    column: (name) => Float64Array.from(rows, (row) => number(row[name])),
  };
}

/** Screens the batch, looks closer at the arm with the least room, and says what it rests on. */
export function study(csv: string): { table: string; picture: string; provenance: string; nearest: string } {
  const { arms, column } = readBatch(csv);
  const sizes = {
    boreLengthMm: column('bore_mm'),
    boltSeatFromMouthMm: column('bolt_seat_mm'),
    bossDiameterMm: column('boss_mm'),
  };
  const mouth = column('mouth_mm');
  const screened = screenSeats({
    spindle,
    arms: { ...sizes, acrossFlatsAtMouthMm: { nominal: mouth, plusMinusMm: PLUS_MINUS_MM } },
    pressing,
    lengths: true,
  });
  const name = (code: number | undefined): string => screened.verdictNames[code ?? 255] ?? 'refused';
  const { travelMm = [], endGapMm = [], verdict, worstLower, worstUpper } = screened;
  const lines = arms.map((arm, row) =>
    [
      arm,
      name(verdict[row]),
      name(worstLower[row]),
      name(worstUpper[row]),
      (travelMm[row] ?? 0).toFixed(3),
      (endGapMm[row] ?? 0).toFixed(3),
    ].join(),
  );

  // The arm with the least room before the bolt among those that a worst case leaves open; without one there is no picture.
  const room = (row: number): number =>
    name(verdict[row]) === 'marginal' ? (endGapMm[row] ?? 0) : Number.POSITIVE_INFINITY;
  const row = arms.reduce((best, _, index) => (room(index) < room(best) ? index : best), 0);
  if (!Number.isFinite(room(row)))
    throw new Error('no arm of this batch is marginal: there is nothing to look closer at');
  const around = (value: number | undefined, by: number) => ({
    lower: (value ?? 0) - by,
    nominal: value ?? 0,
    upper: (value ?? 0) + by,
  });
  const spread = seatDistribution({
    spindle,
    arm: {
      acrossFlatsAtMouthMm: around(mouth[row], PLUS_MINUS_MM),
      faceAngleDeg: spindle.faceAngleDeg,
      boreLengthMm: sizes.boreLengthMm[row] ?? 0,
      boltSeatFromMouthMm: sizes.boltSeatFromMouthMm[row] ?? 0,
      bossDiameterMm: sizes.bossDiameterMm[row] ?? 0,
    },
    pressing,
    samples: 5000,
    seed: SEED,
    keepSamples: true,
  });
  const samplesMm = (spread.kept ?? []).map(({ pressed }) => pressed.endGapMm ?? 0);
  const { endGapMm: limitsMm } = spread.worstCase.pressed;
  return {
    nearest: arms[row] ?? '',
    table: `arm,verdict,worst_out,worst_in,travel_mm,end_gap_mm\n${lines.join('\n')}\n`,
    picture: drawSeatDistribution({
      endGap: { samplesMm, ...(limitsMm === null ? {} : { limitsMm }) },
      title: `End gap of ${arms[row]} once pressed (invented)`,
      idPrefix: 'end-gap',
    }),
    provenance: `${JSON.stringify({ ...provenance(spread), samples: spread.samples, seed: spread.seed, verdicts: spread.verdicts }, null, 2)}\n`,
  };
}

if (import.meta.main) {
  const result = study(readFileSync(new URL('arms.csv', import.meta.url), 'utf8'));
  const out = new URL('out/', import.meta.url);
  mkdirSync(out, { recursive: true });
  writeFileSync(new URL('verdicts.csv', out), result.table);
  writeFileSync(new URL('end-gap.svg', out), result.picture);
  writeFileSync(new URL('provenance.json', out), result.provenance);
  console.log(result.table.split('\n').slice(0, 4).join('\n'));
  console.log(`verdicts.csv, end-gap.svg (arm ${result.nearest}) and provenance.json are in examples/columns/out`);
}
