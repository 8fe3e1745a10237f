// Many arms by columns, as a catalogue has them, with rows made on purpose to lie a hair from each limit of a verdict.
import type { Limits } from '@spindlewright/quantity';
import { type BareSeat, type BareSeatInput, bareSeat } from '@spindlewright/taper/bare';

type ArmSizes = Omit<BareSeatInput['arm'], 'faceAngleDeg'>;
export type SizeName = keyof ArmSizes;

/** Smallest and largest size, far enough out that every verdict and every branch of the press is met. */
const RANGES: Record<SizeName, readonly [number, number]> = {
  acrossFlatsAtMouthMm: [12.6, 14.1],
  boreLengthMm: [8, 22],
  boltSeatFromMouthMm: [8, 24],
  seatIntrusionMm: [0.1, 1],
  mouthChamferMm: [0.1, 1.5],
  bossDiameterMm: [14, 44],
  boreCornerRadiusMm: [0.3, 1.5],
};
export const SIZES = Object.keys(RANGES) as SizeName[];

export interface Block {
  spindle: BareSeatInput['spindle'] & { faceAngleDeg: number };
  pressing: BareSeatInput['pressing'];
  plusMinusMm: number;
  columns: Record<SizeName, Float64Array>;
  rows: number;
}

export function makeBlock(random: () => number, rows: number, kind: number): Block {
  const between = (low: number, high: number): number => low + random() * (high - low);
  const isToleranced = kind % 2 === 1;
  const limits = (low: number, high: number, spread: number): Limits => {
    const nominal = between(low, high);
    const by = isToleranced ? spread : 0;
    return { lower: nominal - between(0, by), nominal, upper: nominal + between(0, by) };
  };
  const columns = {} as Record<SizeName, Float64Array>;
  for (const size of SIZES) columns[size] = Float64Array.from({ length: rows }, () => between(...RANGES[size]));
  return {
    rows,
    columns,
    plusMinusMm: isToleranced ? 0.02 : 0,
    spindle: {
      acrossFlatsAtEndMm: limits(12.4, 12.8, 0.02),
      faceAngleDeg: between(1.8, 2.3),
      flatLengthMm: limits(10, 24, 0.3),
      endChamferMm: limits(0.3, 1.5, 0.2),
      ...(kind % 3 === 0 ? {} : { shoulderFromEndMm: limits(11, 26, 0.3) }),
      cornerDiameterMm: limits(15, 17.2, 0.2),
    },
    pressing: {
      axialForceN: kind % 5 === 4 ? 0 : limits(3000, 30_000, 3000),
      friction: limits(0.06, 0.3, 0.05),
      materials: {
        spindle: { youngsModulusGPa: 205, poissonsRatio: 0.29 },
        arm: {
          youngsModulusGPa: limits(68, 72, 2),
          poissonsRatio: 0.33,
          ...(kind % 4 < 2 ? {} : { yieldStrengthMPa: limits(200, 500, 20) }),
        },
      },
    },
  };
}

/** What `bareSeat` says of one row of a block. */
export function seatOf({ spindle, pressing, plusMinusMm, columns }: Block, row: number): BareSeat {
  const arm = { faceAngleDeg: spindle.faceAngleDeg } as BareSeatInput['arm'];
  for (const size of SIZES) {
    const nominal = columns[size][row] as number;
    arm[size] = { lower: nominal - plusMinusMm, nominal, upper: nominal + plusMinusMm };
  }
  return bareSeat({ spindle, arm, pressing });
}

const DEPTHS = ['lower', 'nominal', 'upper'] as const;
/** A gap is smallest where the seat is deepest. */
const gapAt = { lower: 'upper', nominal: 'nominal', upper: 'lower' } as const;

/** How far a row is from one limit of the verdict at one bound of the depth, in mm of depth; 0 on it. */
function fromLimit(block: Block, row: number, limit: number, depth: (typeof DEPTHS)[number]): number {
  const seat = seatOf(block, row);
  const { endGapMm, shoulderGapMm, engagedLengthMm } = seat.pressed;
  const of = (value: number | Limits, at: keyof Limits): number => (typeof value === 'number' ? value : value[at]);
  const { spindle, columns, plusMinusMm } = block;
  const size = (name: SizeName, at: keyof Limits): number =>
    (columns[name][row] as number) + plusMinusMm * { lower: -1, nominal: 0, upper: 1 }[at];
  const other = gapAt[depth];
  if (limit < 2) return endGapMm[other] - 0.5 * limit;
  if (limit < 4) return shoulderGapMm[other] - 0.5 * (limit - 2);
  if (limit === 4) {
    return seat.handFit.mouthFromEndMm[depth] - size('mouthChamferMm', other) - of(spindle.endChamferMm, other);
  }
  const usable = Math.min(
    of(spindle.flatLengthMm, other) - of(spindle.endChamferMm, depth),
    size('boreLengthMm', other) - size('mouthChamferMm', depth),
  );
  return engagedLengthMm[depth] - 0.75 * usable;
}

/**
 * Moves a row to within 1e-9 mm of a limit by the size of its bore; says whether that could be done, as it cannot where the
 * limit does not depend on the depth.
 */
export function moveToLimit(block: Block, row: number, random: () => number): boolean {
  const limit = Math.floor(random() * 6);
  const depth = DEPTHS[Math.floor(random() * 3)] ?? 'nominal';
  const bore = block.columns.acrossFlatsAtMouthMm;
  const rise = 2 * Math.tan((block.spindle.faceAngleDeg * Math.PI) / 180);
  let here = bore[row] as number;
  let off = fromLimit(block, row, limit, depth);
  let slope = (limit < 4 ? -1 : 1) / rise;
  for (let step = 0; step < 12 && Math.abs(off) > 1e-12; step++) {
    const next = here - off / slope;
    if (!(next > 11 && next < 16)) return false;
    bore[row] = next;
    const found = fromLimit(block, row, limit, depth);
    if (found === off) return false;
    slope = (found - off) / (next - here);
    [here, off] = [next, found];
  }
  if (Math.abs(off) > 1e-11) return false;
  // Never nearer than 1e-11 mm, where the rounding of the travel decides and either side is right.
  bore[row] = here + ((random() < 0.5 ? -1 : 1) * (1e-11 + 0.8e-9 * random())) / Math.abs(slope);
  return Math.abs(fromLimit(block, row, limit, depth)) <= 1e-9;
}
