// Readings from a workshop that the models know nothing of: other frequencies, skewed and uniform errors in place of
// normal ones, a caliper off its zero, jaws that bear deeper than said, wrong planes, sizes without a record, steps of
// 0.05 mm, slips. Every number here is invented for the trial and none is taken from the data of the package, so that the
// model is not tried on its own assumptions; only the sizes of the listed parts are the published ones.
import type { IdentifySpindleInput, IdentifyThreadInput } from '@spindlewright/interfaces';

/** A reading with the truth that the reader does not know. */
interface ForeignCase<Input> {
  input: Input;
  truth: string;
}

const between = (random: () => number, low: number, high: number): number => low + (high - low) * random();

/** Highest in the middle, nothing beyond the bounds. */
const triangular = (random: () => number, low: number, high: number): number =>
  low + ((high - low) * (random() + random())) / 2;

const stepped = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(4));

function pick<T>(random: () => number, weighted: readonly (readonly [T, number])[]): T {
  let left = random() * weighted.reduce((sum, [, weight]) => sum + weight, 0);
  for (const [item, weight] of weighted) {
    left -= weight;
    if (left < 0) return item;
  }
  const last = weighted.at(-1);
  if (last === undefined) throw new Error('nothing to pick from');
  return last[0];
}

// Published sizes at the end: source taper-jp-ham-2013 and the others of the records; the weights are invented.
const JIS_SIZES = [
  [12.63, 5],
  [12.65, 2],
  [12.7, 2],
  [12.73, 1.5],
] as const;
const ISO_SIZES = [
  [12.5, 5],
  [12.6, 2],
] as const;

/** One spindle end, as someone with a caliper would put it down. */
export function foreignSpindle(random: () => number): ForeignCase<IdentifySpindleInput> {
  const truth = pick(random, [
    ['square-taper-jis', 52],
    ['square-taper-iso', 33],
    ['unlisted', 15],
  ] as const);
  const size =
    truth === 'unlisted'
      ? pick(random, [
          [between(random, 12.35, 12.45), 1],
          [between(random, 12.8, 13.4), 1],
          [between(random, 11, 14.5), 1],
        ])
      : pick<number>(random, truth === 'square-taper-jis' ? JIS_SIZES : ISO_SIZES) + triangular(random, -0.04, 0.04);
  const growth = 2 * Math.tan((between(random, 1.93, 2.1) * Math.PI) / 180);
  const length =
    truth === 'square-taper-jis'
      ? triangular(random, 12.5, 17.5)
      : truth === 'square-taper-iso'
        ? triangular(random, 15, 20.5)
        : between(random, 11, 21);

  // One sitting: the caliper is off its zero, and the jaws bear deeper than they are said to.
  const zero = between(random, -0.03, 0.03);
  const deeper = between(random, -0.2, 0.9);
  const planes = pick(random, [
    [[0], 3],
    [[0, 8], 3],
    [[2, 6, 10], 2],
    [[5], 2],
  ] as const);
  const readings = planes.map((atMm) => {
    const wrongPlane = random() < 0.05 ? between(random, -3, 3) : 0;
    const slip =
      random() < 0.02
        ? pick(random, [
            [0.5, 1],
            [-0.5, 1],
            [1, 1],
            [-1, 1],
          ] as const)
        : 0;
    const real = size + growth * Math.max(0, atMm + deeper + wrongPlane);
    const acrossFlatsMm = stepped(real + zero + between(random, -0.025, 0.025) + slip, 0.05);
    return { acrossFlatsMm, atMm };
  });
  const withLength = random() < 0.4;
  const flatLengthMm = stepped(length + between(random, -0.8, 0.8), 0.5);
  return { input: withLength ? { readings, flatLengthMm } : { readings }, truth };
}

/** A real thread: its designation in the list, nominal size and pitch; `unlisted` where the list has none. */
interface RealThread {
  id: string;
  nominalMm: number;
  pitchMm: number;
  left?: boolean;
}

const INCH = 25.4;
// Sizes as the sources of the records print them; how often each comes to the bench is invented.
const THREADS: readonly (readonly [RealThread, number])[] = [
  [{ id: 'm8x1', nominalMm: 8, pitchMm: 1 }, 14],
  [{ id: 'm8x1-25', nominalMm: 8, pitchMm: 1.25 }, 3],
  [{ id: 'm8x0-75', nominalMm: 8, pitchMm: 0.75 }, 5],
  [{ id: 'm10x1-25', nominalMm: 10, pitchMm: 1.25 }, 4],
  [{ id: 'm12x1', nominalMm: 12, pitchMm: 1 }, 3],
  [{ id: 'm15x1', nominalMm: 15, pitchMm: 1 }, 3],
  [{ id: 'm6x1', nominalMm: 6, pitchMm: 1 }, 5],
  [{ id: 'm22x1', nominalMm: 22, pitchMm: 1 }, 16],
  [{ id: 'm23x1', nominalMm: 23, pitchMm: 1 }, 4],
  [{ id: 'm23-35x1', nominalMm: 23.35, pitchMm: 1 }, 3],
  [{ id: 'm23-35x1', nominalMm: 23.2, pitchMm: 1 }, 1],
  [{ id: '9-16-in-x-20-tpi', nominalMm: (9 / 16) * INCH, pitchMm: INCH / 20 }, 8],
  [{ id: '9-16-in-x-20-tpi-left', nominalMm: (9 / 16) * INCH, pitchMm: INCH / 20, left: true }, 6],
  [{ id: '1-2-in-x-20-tpi', nominalMm: INCH / 2, pitchMm: INCH / 20 }, 2],
  [{ id: '1-2-in-x-20-tpi-left', nominalMm: INCH / 2, pitchMm: INCH / 20, left: true }, 2],
  [{ id: 'm14x1-25', nominalMm: 14, pitchMm: 1.25 }, 3],
  [{ id: 'm14x1-25-left', nominalMm: 14, pitchMm: 1.25, left: true }, 3],
  [{ id: '1-370-in-x-24-tpi', nominalMm: 34.798, pitchMm: INCH / 24 }, 6],
  [{ id: '1-370-in-x-24-tpi-left', nominalMm: 34.798, pitchMm: INCH / 24, left: true }, 6],
  [{ id: '36-mm-x-24-tpi', nominalMm: 36, pitchMm: INCH / 24 }, 5],
  [{ id: 'm35x1', nominalMm: 35, pitchMm: 1 }, 3],
  [{ id: 'm35x1-left', nominalMm: 35, pitchMm: 1, left: true }, 1],
  [{ id: 'm47x1', nominalMm: 47, pitchMm: 1 }, 1],
  // Sizes without a record, common elsewhere; the last one is a tap that someone made for himself.
  [{ id: 'unlisted', nominalMm: 9, pitchMm: 1 }, 2],
  [{ id: 'unlisted', nominalMm: 10, pitchMm: 1 }, 2],
  [{ id: 'unlisted', nominalMm: 14, pitchMm: 1.5 }, 2],
  [{ id: 'unlisted', nominalMm: 20, pitchMm: 1.5 }, 2],
  [{ id: 'unlisted', nominalMm: 26, pitchMm: 1 }, 2],
  [{ id: 'unlisted', nominalMm: 33.2, pitchMm: 1.058 }, 2],
  [{ id: 'unlisted', nominalMm: 22.4, pitchMm: 1 }, 1],
];

const GAUGE_MM = [0.5, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2];
const GAUGE_PER_INCH = [28, 26, 24, 22, 20, 18, 16];

/** One thread, as someone with a caliper and a pitch gauge would put it down. */
export function foreignThread(random: () => number): ForeignCase<IdentifyThreadInput> {
  const thread = pick(random, THREADS);
  const { nominalMm, pitchMm } = thread;
  const kind = random() < 0.6 ? 'external' : 'internal';
  // Real parts crowd the middle of their tolerance, cut threads run large and worn ones small.
  const made =
    kind === 'external'
      ? nominalMm - triangular(random, 0.01, 0.24)
      : nominalMm - 1.08 * pitchMm + triangular(random, -0.02, 0.3);
  const zero = between(random, -0.03, 0.03);
  const said = pick(random, [
    [undefined, 2],
    [1, 1],
    [3, 2],
    [5, 2],
  ] as const);
  const plane = Math.max(0, (said ?? between(random, 1.5, 6)) + between(random, -1, 0.6));
  const chamfer = between(random, 0.3, 1.4) * pitchMm;
  const lost = Math.min(1.2 * pitchMm, 2 * Math.max(0, chamfer - plane));
  // Inside jaws bear on a chord of the bore and so read small.
  const real = kind === 'external' ? made - lost : made + lost - between(random, 0, 0.08);
  const slip =
    random() < 0.02
      ? pick(random, [
          [0.5, 1],
          [-0.5, 1],
          [1, 2],
          [-1, 2],
        ] as const)
      : 0;
  const diameterMm = stepped(real + zero + between(random, -0.02, 0.02) + slip, 0.05);
  return {
    input: {
      diameterMm,
      ...(said === undefined ? {} : { atMm: said }),
      ...(random() < 0.6 ? pitchRead(random, pitchMm) : {}),
      ...(random() < 0.6 ? { hand: handRead(random, thread.left === true) } : {}),
      kind,
    },
    truth: thread.id,
  };
}

/** The blade that fits best, now and then its neighbour; metric or inch, whichever gauge lay at hand. */
function pitchRead(random: () => number, pitchMm: number): { pitchMm: number } | { threadsPerInch: number } {
  const metricFirst = random() < 0.75;
  const inMm = GAUGE_MM.map((blade) => ({ blade, apart: Math.abs(blade - pitchMm) }));
  const inInch = GAUGE_PER_INCH.map((blade) => ({ blade, apart: Math.abs(INCH / blade - pitchMm) }));
  const byFit = (a: { apart: number }, b: { apart: number }): number => a.apart - b.apart;
  const [metric, metricNeighbour] = inMm.sort(byFit);
  const [inch, inchNeighbour] = inInch.sort(byFit);
  if (!metric || !metricNeighbour || !inch || !inchNeighbour) throw new Error('a gauge without blades');
  const neighbour = random() < 0.03;
  // A blade that is 0.06 mm off rocks, and most people then take the other gauge.
  const metricFits = metric.apart < (metricFirst ? 0.05 : 0.005);
  return metricFits
    ? { pitchMm: (neighbour ? metricNeighbour : metric).blade }
    : { threadsPerInch: (neighbour ? inchNeighbour : inch).blade };
}

const handRead = (random: () => number, left: boolean): 'right' | 'left' =>
  left !== random() < 0.01 ? 'left' : 'right';
