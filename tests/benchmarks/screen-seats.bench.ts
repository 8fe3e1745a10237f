// One spindle against a hundred thousand arms, nominal and worst case: against the same arithmetic written into one loop for
// this one case (wanted: 0.6 of its speed or more), and the hand fit alone against the same formula in mathjs with units
// (wanted: 100 times as fast or more, though the verdict does far more). Then a million Monte Carlo samples against a loop that
// draws the same deviates (wanted: within 3 times).
import { predictSeat, screenSeats, seatDistribution } from '@spindlewright/taper';
import { all, create } from 'mathjs';
import { expect, it } from 'vitest';
import { fittedArmFactor, fittedSpindleFactor } from '../../packages/taper/src/fitted-factors.ts';
import { cutNormalQuantile, uniformSource } from '../../packages/taper/src/random.ts';
import { seededRandom } from '../seed.ts';

const ROWS = 100_000;
const PLUS_MINUS = 0.02;
const random = seededRandom(1);
const column = (low: number, high: number): Float64Array =>
  Float64Array.from({ length: ROWS }, () => low + random() * (high - low));
const flats = column(13.2, 13.9);
const bore = column(14, 20);
const boltSeat = column(14, 20);
const boss = column(28, 40);
const spindle = {
  acrossFlatsAtEndMm: 12.63,
  faceAngleDeg: 2,
  flatLengthMm: 20,
  endChamferMm: 0.5,
  cornerDiameterMm: 16.5,
} as const;
const FRICTION = [0.16, 0.13, 0.1] as const;
const pressing = {
  axialForceN: 15_000,
  friction: { lower: 0.1, nominal: 0.13, upper: 0.16 },
  materials: {
    spindle: { youngsModulusGPa: 205, poissonsRatio: 0.29 },
    arm: { youngsModulusGPa: 70, poissonsRatio: 0.33 },
  },
} as const;
const FILLET = 1;

/** The same arithmetic for this spindle, this force and these columns, elastic, with no check and no other case. */
function handWritten(verdict: Uint8Array, worstLower: Uint8Array, worstUpper: Uint8Array): void {
  const angle = (2 * Math.PI) / 180;
  const tan = Math.tan(angle);
  const turned = 16.5 ** 2;
  const wedges = FRICTION.map((mu) => 4 * (Math.sin(angle) + mu * Math.cos(angle)) * tan);
  const table = [0.555, 0.585, 0.621, 0.671, 0.743];
  const mouth = new Float64Array(3);
  const middle = new Float64Array(3);
  const factor = [0.95, 1, 1.05];
  const s = new Float64Array(3);
  const w = new Float64Array(3);
  const l = new Float64Array(3);
  const collar = new Float64Array(3);
  const growth = new Float64Array(3);
  const armFactor = new Float64Array(3);
  const spindleFactor = new Float64Array(3);
  const past = (k: number, place: number): number => {
    if (place < 0) return -place;
    const d = place / (factor[k] as number);
    const g = Math.min(d, growth[k] as number);
    const length = (l[k] as number) + g;
    const free = Math.max(0, (collar[k] as number) - g);
    const sk = s[k] as number;
    const help = free / Math.sqrt(1 + (free / (0.183 * sk)) ** 2);
    const give =
      (sk / 2000) * (((armFactor[k] as number) * length) / (length + help) / 70 + (spindleFactor[k] as number) / 205);
    return 15_000 / (((wedges[k] as number) * (w[k] as number) * length) / give / 0.965) - d;
  };
  const travelPast = (k: number, place: number): number =>
    k === 1
      ? past(1, place)
      : k === 0
        ? Math.min(past(1, place), past(0, place))
        : Math.max(past(1, place), past(2, place));
  for (let row = 0; row < ROWS; row++) {
    const a = flats[row] as number;
    const L = bore[row] as number;
    const seat = boltSeat[row] as number;
    const D = boss[row] as number;
    mouth[0] = (a - PLUS_MINUS - 12.63) / 2 / tan;
    mouth[1] = (a - 12.63) / 2 / tan;
    mouth[2] = (a + PLUS_MINUS - 12.63) / 2 / tan;
    for (let k = 0; k < 3; k++) {
      const m = mouth[k] as number;
      middle[k] = 12.63 + (Math.max(0.5, m - L) + Math.min(m, 20)) * tan;
    }
    for (let k = 0; k < 3; k++) {
      const m = mouth[k] as number;
      const o = mouth[2 - k] as number;
      const own = middle[k] as number;
      const other = middle[2 - k] as number;
      const width = Math.max(0, Math.min(Math.sqrt(Math.max(0, turned - own ** 2)), other));
      const ratio = Math.max(D / own, 1.3);
      const flat = Math.min(11 / 13, Math.max(7 / 13, width / own));
      const beta = flat - 10 / 13;
      const r = Math.min(0.1154, Math.max(0.038, FILLET / own)) - 1 / 13;
      const place = flat * 13 - 7;
      const below = Math.min(3, Math.max(0, Math.floor(place)));
      const from = table[below] as number;
      s[k] = own;
      w[k] = width;
      l[k] = Math.min(o - 0.5, L, 19.5, 20 + L - m);
      collar[k] = Math.max(0, 0.5 + L - m);
      growth[k] = Math.max(0, Math.min(collar[k] as number, 20 - m));
      armFactor[k] =
        1.4403 +
        0.3519 * beta -
        2.352 * beta ** 2 -
        0.796 * r +
        (2.823 * (1 - 0.904 * beta - 2.719 * beta ** 2 - 2.658 * r)) / (ratio ** 2 - 1.564);
      spindleFactor[k] =
        from +
        (place - below) * ((table[below + 1] as number) - from) +
        (7.91 + 18.3 * beta - 14.7 * beta ** 2) * (ratio ** -6 - (34 / 13) ** -6);
    }
    for (let k = 2; k >= 0; k--) {
      const m = mouth[k] as number;
      const end = seat - m;
      const nearest = Math.min(end, 20 - m);
      const least = 0.75 * Math.min(19.5, L);
      let code = 0;
      if (m - 0.5 <= 0) code = 5;
      else if (travelPast(k, nearest) >= 0) code = end <= 20 - m ? 2 : 3;
      else if (
        L < least ||
        travelPast(k, least + 0.5 - m) < 0 ||
        travelPast(2 - k, 20 + L - (mouth[2 - k] as number) - least) > 0
      )
        code = 4;
      else if (travelPast(k, nearest - 0.5) > 0) code = 1;
      (k === 0 ? worstLower : k === 2 ? worstUpper : verdict)[row] = code;
    }
    if (verdict[row] === 0 && (worstLower[row] !== 0 || worstUpper[row] !== 0)) verdict[row] = 1;
  }
}

const columns = (): [Uint8Array, Uint8Array, Uint8Array] => [
  new Uint8Array(ROWS),
  new Uint8Array(ROWS),
  new Uint8Array(ROWS),
];

it('verdicts of a hundred thousand arms', async ({ bench }) => {
  const own = columns();
  const [verdict, worstLower, worstUpper] = columns();
  const arms = {
    acrossFlatsAtMouthMm: { nominal: flats, plusMinusMm: PLUS_MINUS },
    boreLengthMm: bore,
    boltSeatFromMouthMm: boltSeat,
    bossDiameterMm: boss,
    boreCornerRadiusMm: FILLET,
  };
  await bench.compare(
    bench('baseline: the same arithmetic written into one loop', () => handWritten(...own)),
    bench('screenSeats', () => {
      screenSeats({ spindle, arms, pressing, out: { verdict, worstLower, worstUpper } });
    }),
  );
  for (const [place, column] of [verdict, worstLower, worstUpper].entries())
    expect(Buffer.compare(own[place] ?? new Uint8Array(), column)).toBe(0);
});

it('a hundred arms in mathjs with units', async ({ bench }) => {
  const math = create(all ?? {});
  // Hand fit and elastic travel at nominal values for a bore so short that it bears over its length and nothing grows; the
  // factors of the fits and the friction are plain numbers. At the three bounds that screenSeats goes through, without verdict.
  const formula = math.compile(`
    t = tan(a);
    m = (A - S) / (2 * t);
    s = S + (2 * m - L) * t;
    w = sqrt(T^2 - s^2);
    wedge = 4 * (sin(a) + mu * cos(a)) * t;
    give = s / 2 * (fa / Ea + fs / Es);
    F / (wedge * w * L / give / 0.965)
  `);
  const angle = math.unit(2, 'deg');
  const unit = (value: number, name: string) => math.unit(value, name);
  const fixed = {
    a: angle,
    S: unit(12.63, 'mm'),
    L: unit(7, 'mm'),
    T: unit(16.5, 'mm'),
    F: unit(15_000, 'N'),
    Ea: unit(70_000, 'N/mm^2'),
    Es: unit(205_000, 'N/mm^2'),
  };
  const arms = 100;
  const slice = flats.slice(0, arms);
  const travel = (A: number, mu: number): number => {
    const s = A - 7 * Math.tan(Math.PI / 90);
    const width = Math.sqrt(16.5 ** 2 - s ** 2);
    const flat = Math.min(11 / 13, Math.max(7 / 13, width / s));
    const boss = 34 / s;
    const scope = {
      ...fixed,
      mu,
      A: unit(A, 'mm'),
      fa: fittedArmFactor(flat, 1 / s, boss),
      fs: fittedSpindleFactor(flat, boss),
    };
    return (
      (formula.evaluate(scope) as { entries: { toNumber(name: string): number }[] }).entries[0]?.toNumber('mm') ?? 0
    );
  };
  const columns = {
    acrossFlatsAtMouthMm: { nominal: slice, plusMinusMm: PLUS_MINUS },
    boreLengthMm: 7,
    boltSeatFromMouthMm: 18,
    bossDiameterMm: 34,
  };
  let last = 0;
  await bench.compare(
    bench('baseline: hand fit and travel in mathjs with units, a hundred arms', () => {
      for (const A of slice) {
        travel(A - PLUS_MINUS, 0.16);
        travel(A + PLUS_MINUS, 0.1);
        last = travel(A, 0.13);
      }
    }),
    bench('screenSeats: nominal and worst case, a hundred arms', () => {
      screenSeats({ spindle, arms: { ...columns, boreCornerRadiusMm: 1 }, pressing });
    }),
  );
  const arm = {
    acrossFlatsAtMouthMm: slice[arms - 1] ?? 0,
    faceAngleDeg: 2,
    boreLengthMm: 7,
    boltSeatFromMouthMm: 18,
    bossDiameterMm: 34,
    boreCornerRadiusMm: 1,
  };
  expect(predictSeat({ spindle, arm, pressing }).travelMm.nominal).toBeCloseTo(last, 9);
});

it('a million samples', { timeout: 600_000 }, ({ task }) => {
  const about = (value: number) => ({ value, standardUncertainty: 0.1 });
  const input = { trialFit: { endGapMm: about(2), shoulderGapMm: about(4) }, samples: 1_000_000, seed: 1 };
  const gaps = new Float64Array(input.samples);
  const timed = (work: () => void): number => {
    const start = performance.now();
    work();
    return performance.now() - start;
  };
  const rounds = [1, 2].map(() => ({
    baseline: timed(() => {
      const uniform = uniformSource(1);
      for (let k = 0; k < input.samples; k++) {
        const end = 2 + 0.1 * cutNormalQuantile(uniform());
        const shoulder = 4 + 0.1 * cutNormalQuantile(uniform());
        uniform();
        gaps[k] = Math.min(end, shoulder);
      }
      gaps.sort();
    }),
    ours: timed(() => expect(seatDistribution(input).verdicts[0]?.probability).toBe(1)),
  }));
  const baseline = Math.min(...rounds.map((round) => round.baseline));
  const ours = Math.min(...rounds.map((round) => round.ours));
  task.meta.rows = [
    {
      what: 'seatDistribution: a million samples of a trial fit',
      baseline: 'the same deviates drawn, the smaller gap kept and sorted',
      unit: 'ms',
      value: ours,
      baselineValue: baseline,
    },
  ];
});
