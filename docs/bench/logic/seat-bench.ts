import { drawSeat } from '@spindlewright/drawing';
import { armGeometries, getInterface, spindleGeometries } from '@spindlewright/interfaces';
import { limitsOf, type Measurand } from '@spindlewright/quantity';
import {
  type ArmShape,
  assumedMaterials,
  flatFriction,
  predictSeat,
  type SeatPrediction,
  type SeatVerdict,
  type SpindleShape,
  seatDistribution,
} from '@spindlewright/taper';
import {
  type Bench,
  type BenchContext,
  type Block,
  type Group,
  numberOf,
  option,
  type State,
  sorted,
  stops,
  type Tone,
} from './bench.ts';
import { show, showLimits } from './units.ts';

const SQUARES = ['square-taper-jis', 'square-taper-iso'] as const;
type Square = (typeof SQUARES)[number];
const NAMES: Record<Square, string> = { 'square-taper-jis': 'JIS square', 'square-taper-iso': 'ISO square' };

/** As many as make a bar of a few pixels certain, and still answer while somebody drags. */
const SAMPLES = 4000;

const defaults = {
  way: 'trial',
  spindle: 'square-taper-jis',
  arm: 'square-taper-jis',
  endGap: '3.5',
  shoulderGap: '3.4',
  reading: '0.1',
  sEnd: '12.65',
  sAngle: '2',
  sFlats: '15',
  sShoulder: '',
  aMouth: '13.55',
  aAngle: '2',
  aBore: '15.5',
  size: '0.02',
  force: '20000',
  flats: 'greased',
  boss: '',
  yield: '',
  pressed: '100',
};

const isSquare = (id: string | undefined): id is Square => SQUARES.some((square) => square === id);
const squareOf = (id: string | undefined): Square => (isSquare(id) ? id : 'square-taper-jis');
const squares = SQUARES.map((id) => option(id, NAMES[id]));

function groups({ state }: BenchContext): readonly Group[] {
  const measured = state.way === 'shapes';
  return [
    {
      title: 'What do you know?',
      fields: [
        {
          key: 'way',
          label: 'Best first',
          type: 'radios',
          options: [
            option('trial', 'I pushed the arm on by hand and measured two gaps'),
            option('shapes', 'I measured the spindle and the arm'),
            option('records', 'only the names of the two squares'),
          ],
        },
      ],
    },
    ...(state.way === 'trial'
      ? [
          {
            title: 'The trial fit',
            note: 'Arm pushed on by hand, no bolt. A depth rod is good to about a tenth of a millimetre.',
            fields: [
              { key: 'endGap', label: 'Bolt seat down to the spindle end', type: 'number', quantity: 'length' },
              { key: 'shoulderGap', label: 'Arm to the shoulder behind', type: 'number', quantity: 'length' },
              { key: 'reading', label: 'Uncertainty of a reading', type: 'number', quantity: 'length' },
            ] as const,
          },
        ]
      : []),
    ...(measured
      ? [
          {
            title: 'The spindle',
            fields: [
              { key: 'sEnd', label: 'Across flats at the end', type: 'number', quantity: 'length' },
              { key: 'sAngle', label: 'Angle of a face', type: 'number', quantity: 'angle' },
              { key: 'sFlats', label: 'Length of the flats', type: 'number', quantity: 'length' },
              {
                key: 'sShoulder',
                label: 'End to the wall behind the flats',
                type: 'number',
                quantity: 'length',
                hint: 'empty = no wall',
              },
            ] as const,
          },
          {
            title: 'The arm',
            fields: [
              { key: 'aMouth', label: 'Across flats at its inner mouth', type: 'number', quantity: 'length' },
              { key: 'aAngle', label: 'Angle of a face', type: 'number', quantity: 'angle' },
              { key: 'aBore', label: 'Mouth to the seat of the bolt', type: 'number', quantity: 'length' },
              {
                key: 'size',
                label: 'Uncertainty across flats',
                type: 'number',
                quantity: 'length',
                hint: '0.01 mm moves the seat 0.14 mm',
              },
            ] as const,
          },
        ]
      : [
          {
            title: state.way === 'trial' ? 'The shapes behind it' : 'The two squares',
            note:
              state.way === 'trial'
                ? 'The gaps are yours; how far the arm travels under the press depends on the shapes a little.'
                : 'Published sizes contradict each other: all of them are shown below.',
            fields: [
              { key: 'spindle', label: 'Spindle', type: 'radios', options: squares },
              { key: 'arm', label: 'Arm', type: 'radios', options: squares },
            ] as const,
          },
        ]),
    {
      title: 'The press',
      fields: [
        {
          key: 'force',
          label: 'Axial force of the bolt',
          type: 'range',
          quantity: 'force',
          min: 0,
          max: 35000,
          step: 500,
        },
        {
          key: 'flats',
          label: 'Flats are',
          type: 'radios',
          options: [
            option('greased', `greased (friction ${frictionWords('greased')})`),
            option('dry', `dry (friction ${frictionWords('dry')})`),
          ],
        },
        { key: 'boss', label: 'Boss of the arm, outside', type: 'number', quantity: 'length', hint: 'empty = assumed' },
        {
          key: 'yield',
          label: 'Yield strength of the arm',
          type: 'number',
          quantity: 'pressure',
          hint: 'empty = not known',
        },
      ],
    },
  ];
}

function frictionWords(flats: 'greased' | 'dry'): string {
  const { lower, upper } = flatFriction[flats];
  return `${lower} to ${upper}`;
}

const about = (value: number | undefined, standardUncertainty: number | undefined): Measurand | undefined =>
  value === undefined ? undefined : standardUncertainty ? { value, standardUncertainty } : value;

interface Pair {
  spindle: SpindleShape<Measurand>;
  arm: ArmShape<Measurand>;
  set?: string;
}

/** Every pair of published shapes of one set; a pair is never mixed from two sets. */
function publishedPairs(spindle: Square, arm: Square, boss: object): Pair[] {
  const arms = armGeometries(getInterface(arm));
  return spindleGeometries(getInterface(spindle)).flatMap(({ geometry, set }) => {
    const mate = arms.find((entry) => entry.set === set);
    return mate === undefined ? [] : [{ spindle: geometry, arm: { ...mate.geometry, ...boss }, set }];
  });
}

function pairsOf(state: State): Pair[] {
  const bossDiameterMm = numberOf(state, 'boss');
  const boss = bossDiameterMm === undefined ? {} : { bossDiameterMm };
  if (state.way !== 'shapes') return publishedPairs(squareOf(state.spindle), squareOf(state.arm), boss);
  const u = numberOf(state, 'size');
  const shoulderFromEndMm = numberOf(state, 'sShoulder');
  return [
    {
      spindle: {
        acrossFlatsAtEndMm: about(numberOf(state, 'sEnd'), u) ?? 0,
        faceAngleDeg: numberOf(state, 'sAngle') ?? 0,
        flatLengthMm: numberOf(state, 'sFlats') ?? 0,
        ...(shoulderFromEndMm === undefined ? {} : { shoulderFromEndMm }),
      },
      arm: {
        acrossFlatsAtMouthMm: about(numberOf(state, 'aMouth'), u) ?? 0,
        faceAngleDeg: numberOf(state, 'aAngle') ?? 0,
        boreLengthMm: numberOf(state, 'aBore') ?? 0,
        ...boss,
      },
    },
  ];
}

function inputOf(state: State, { spindle, arm }: Pair, share = 1) {
  const u = numberOf(state, 'reading');
  const endGapMm = about(numberOf(state, 'endGap'), u);
  const shoulderGapMm = about(numberOf(state, 'shoulderGap'), u);
  const { lower, value, upper } = flatFriction[state.flats === 'dry' ? 'dry' : 'greased'];
  const yieldStrengthMPa = numberOf(state, 'yield');
  return {
    spindle,
    arm,
    ...(state.way === 'trial'
      ? {
          trialFit: {
            ...(endGapMm === undefined ? {} : { endGapMm }),
            ...(shoulderGapMm === undefined ? {} : { shoulderGapMm }),
          },
        }
      : {}),
    pressing: {
      axialForceN: share * (numberOf(state, 'force') ?? 0),
      friction: { lower: lower ?? value, nominal: value, upper: upper ?? value },
      ...(yieldStrengthMPa === undefined ? {} : { materials: { arm: { ...aluminium(), yieldStrengthMPa } } }),
    },
  };
}

/** What the library takes for an arm whose material is not given, to stand beside its yield strength. */
const aluminium = () => ({
  youngsModulusGPa: limitsOf(assumedMaterials.arm.youngsModulusGPa),
  poissonsRatio: limitsOf(assumedMaterials.arm.poissonsRatio),
});

const VERDICTS: Record<SeatVerdict, { text: string; tone: Tone }> = {
  seats: { text: 'It seats', tone: 'good' },
  marginal: { text: 'It may seat: too close to say', tone: 'care' },
  'bottoms-on-end': { text: 'The bolt lands on the spindle end', tone: 'stop' },
  'hits-shoulder': { text: 'The arm is stopped at the shoulder', tone: 'stop' },
  'too-little-engagement': { text: 'Too little of the flats engages', tone: 'stop' },
  'does-not-start': { text: 'It does not go on', tone: 'stop' },
};

/** Paths of the library in a mechanic's words. */
const READING_WORDS: Record<string, string> = {
  'trialFit.endGapMm': 'end gap by hand',
  'trialFit.shoulderGapMm': 'shoulder gap by hand',
  'spindle.acrossFlatsAtEndMm': 'spindle, across flats at the end',
  'spindle.faceAngleDeg': 'spindle, angle of a face',
  'spindle.flatLengthMm': 'spindle, length of the flats',
  'spindle.shoulderFromEndMm': 'spindle, end to the wall',
  'arm.acrossFlatsAtMouthMm': 'arm, across flats at its mouth',
  'arm.faceAngleDeg': 'arm, angle of a face',
  'arm.boltSeatFromMouthMm': 'arm, mouth to the seat of the bolt',
  'arm.boreLengthMm': 'arm, mouth to the seat of the bolt',
  'pressing.friction': 'friction of the flats',
  'pressing.axialForceN': 'axial force of the bolt',
};

const percent = (part: number): string => `${Math.round(100 * part)} %`;

interface Told {
  whole: SeatPrediction;
  before: readonly Block[];
  after: readonly Block[];
}

let last: { key: string; told: Told } | undefined;

/** All but the drawing. It stays the same while an arm is dragged, and takes longest. */
function tell({ state, units }: BenchContext, pairs: readonly Pair[], first: Pair): Told {
  const { pressed: _pressed, ...asked } = state;
  const key = JSON.stringify([asked, units]);
  if (last?.key !== key) last = { key, told: tellAnew(state, units, pairs, first) };
  return last.told;
}

function tellAnew(state: State, units: BenchContext['units'], pairs: readonly Pair[], first: Pair): Told {
  const whole = predictSeat(inputOf(state, first));
  const spread = seatDistribution({ ...inputOf(state, first), samples: SAMPLES, seed: 1 });
  const likely = [...spread.verdicts].sort((a, b) => b.probability - a.probability);
  const [contribution] = spread.contributions;
  const findings = sorted([...whole.findings, ...spread.findings]);
  const seats = pairs.map((pair) => ({ pair, seat: pair === first ? whole : predictSeat(inputOf(state, pair)) }));
  const length = (limits: Parameters<typeof showLimits>[0]): string => showLimits(limits, 'length', units);
  return {
    whole,
    before: [headlineOf(state, units, whole, seats), { kind: 'findings', findings: stops(findings) }],
    after: [
      ...(state.way === 'records' ? [conflict(state, seats, units)] : []),
      ...(state.way === 'shapes' ? [everySpindle(state, first, units)] : []),
      {
        kind: 'bars',
        title: 'Share of the samples that come to each outcome; the worst case above decides',
        note: `${SAMPLES} draws from the seed 1 over the limits of what was filled in${state.way === 'records' ? ', for the set that is drawn' : ''}; no more certain than they are.`,
        rows: likely
          .filter(({ probability }) => probability > 0)
          .map(({ verdict, probability }) => ({
            label: VERDICTS[verdict].text,
            share: probability,
            text: probability < 0.005 ? 'under 1 %' : percent(probability),
          })),
      },
      {
        kind: 'values',
        title: 'From hand fit to pressed',
        rows: [
          { label: 'End gap by hand', value: length(whole.handFit.endGapMm) },
          { label: 'Shoulder gap by hand', value: length(whole.handFit.shoulderGapMm) },
          { label: 'Travel under the press', value: length(whole.travelMm) },
          { label: 'End gap, pressed', value: length(whole.pressed.endGapMm) },
          { label: 'Shoulder gap, pressed', value: length(whole.pressed.shoulderGapMm) },
          { label: 'Flats engaged', value: length(whole.pressed.engagedLengthMm) },
          { label: 'Share of the press that the stops leave', value: percent(whole.pressReached.nominal) },
          ...(state.way === 'shapes' ? endsThatSeat(state, first, units) : []),
          ...(contribution === undefined
            ? []
            : [
                {
                  label: 'Improve this reading first',
                  value: READING_WORDS[contribution.path] ?? contribution.path,
                  note: `known exactly, the spread would shrink from ${show(spread.firstOrderDeviationMm, 'length', units)} to ${show(contribution.remainingMm, 'length', units)}`,
                },
              ]),
        ],
      },
      ...(state.way === 'trial' && pairs.length > 1 ? [conflict(state, seats, units)] : []),
      {
        kind: 'links',
        title: 'Next',
        links: [
          { text: 'How tight: torque and preload of the bolt', href: './torque.html' },
          { text: 'Everything on one sheet', href: `./job.html${jobSearch(state)}` },
          ...(state.way === 'trial'
            ? []
            : [{ text: 'What square is it? Readings to a name', href: './identify.html' }]),
        ],
      },
      { kind: 'findings', findings: findings.filter(({ severity }) => severity !== 'stop') },
    ],
  };
}

/** Readings of a trial fit go on to the sheet, gaps of the example do not: a sheet shows them as read. */
function jobSearch(state: State): string {
  const read = (key: 'endGap' | 'shoulderGap'): string => (state[key] === defaults[key] ? '' : (state[key] ?? ''));
  const gaps = state.way === 'trial' ? { endGap: read('endGap'), shoulderGap: read('shoulderGap') } : {};
  return `?${new URLSearchParams({ from: 'empty', ...gaps })}`;
}

interface Weighed {
  pair: Pair;
  seat: SeatPrediction;
}

function headlineOf(
  state: State,
  units: BenchContext['units'],
  whole: SeatPrediction,
  seats: readonly Weighed[],
): Block {
  const gaps = `End gap ${showLimits(whole.pressed.endGapMm, 'length', units)}, shoulder gap ${showLimits(whole.pressed.shoulderGapMm, 'length', units)} when pressed`;
  const { text, tone } = VERDICTS[whole.verdict];
  if (state.way !== 'records') {
    const doubts = doubtsOf(state, whole);
    // No green over readings that contradict each other, or over a gap that nobody has typed.
    const told = doubts === '' || tone !== 'good' ? tone : 'care';
    return { kind: 'headline', tone: told, text, detail: `${doubts}${gaps}.` };
  }
  const counts = new Map<SeatVerdict, number>();
  for (const { seat } of seats) counts.set(seat.verdict, (counts.get(seat.verdict) ?? 0) + 1);
  const [most, ...others] = [...counts].sort(([, a], [, b]) => b - a);
  const told = [...counts]
    .sort(([, a], [, b]) => b - a)
    .map(([verdict, count]) => `${lower(VERDICTS[verdict].text)} (${count})`)
    .join(', ');
  const agreed = others.length === 0 && most !== undefined;
  return {
    kind: 'headline',
    tone: agreed ? VERDICTS[most[0]].tone : 'care',
    text: agreed ? VERDICTS[most[0]].text : 'The published sizes disagree',
    detail: `Of ${seats.length} published sets: ${told}. A name is no seat: a trial fit by hand settles it.`,
  };
}

const DISAGREEMENTS = ['readings-disagree', 'ways-strained', 'mark-disagrees'];

/** What stands against taking the answer as it is: readings that cannot all be right, or numbers of the example. */
function doubtsOf(state: State, whole: SeatPrediction): string {
  const apart = whole.findings.find(({ code }) => DISAGREEMENTS.includes(code));
  if (apart !== undefined) return `${apart.message} `;
  if (state.way !== 'trial') return '';
  const ofExample = (['endGap', 'shoulderGap'] as const).filter((key) => state[key] === defaults[key]);
  if (ofExample.length === 2) return 'An invented example, until both gaps are yours. ';
  const [key] = ofExample;
  if (key === undefined) return '';
  return `The ${key === 'endGap' ? 'gap to the spindle end' : 'gap to the shoulder'} is still that of the example: empty its field if you did not measure it. `;
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function answer(context: BenchContext): readonly Block[] {
  const { state, wide } = context;
  const pairs = pairsOf(state);
  const [first] = pairs;
  if (first === undefined) return [];
  const { whole, before, after } = tell(context, pairs, first);
  const share = (numberOf(state, 'pressed') ?? 100) / 100;
  const drawn = share === 1 ? whole : predictSeat(inputOf(state, first, share));
  return [
    ...before,
    {
      kind: 'figure',
      svg: drawSeat({
        spindle: first.spindle,
        arm: first.arm,
        handFit: drawn.handFit,
        pressed: drawn.pressed,
        verdict: drawn.verdict,
        widthPx: wide ? 720 : 360,
      }),
      caption: `Section to scale${first.set === undefined ? '' : `; shapes of the set ${first.set}`}. Drag the arm sideways.`,
      drag: { key: 'pressed', label: 'How much of the force is on', from: 'by hand', to: 'pressed' },
    },
    ...(state.way === 'shapes' ? [] : [swap(state)]),
    ...after,
  ];
}

const other = (id: string | undefined): Square =>
  squareOf(id) === 'square-taper-jis' ? 'square-taper-iso' : 'square-taper-jis';

/** The other square in one press. Gaps that were measured belong to the arm they were measured on, so names go by themselves. */
function swap({ way, spindle, arm }: State): Block {
  const names = way === 'trial' ? { way: 'records' } : {};
  return {
    kind: 'actions',
    title: way === 'trial' ? 'And by the names alone, with' : 'Swap',
    actions: [
      { label: `arm: ${NAMES[other(arm)]}`, set: { ...names, arm: other(arm) } },
      { label: `spindle: ${NAMES[other(spindle)]}`, set: { ...names, spindle: other(spindle) } },
    ],
  };
}

/** Which sizes of the spindle's end may seat this arm, all else as it was filled in. */
function endsThatSeat(state: State, { spindle, arm }: Pair, units: BenchContext['units']) {
  const mouth = numberOf(state, 'aMouth');
  if (mouth === undefined) return [];
  const hundredths = Array.from({ length: 75 }, (_, k) => mouth - 1.7 + 0.02 * k);
  const ends = hundredths.filter(
    (acrossFlatsAtEndMm) =>
      acrossFlatsAtEndMm > 0 &&
      ['seats', 'marginal'].includes(
        predictSeat(inputOf(state, { arm, spindle: { ...spindle, acrossFlatsAtEndMm } })).verdict,
      ),
  );
  const [least] = ends;
  const most = ends.at(-1);
  if (least === undefined || most === undefined) return [];
  return [
    {
      label: 'Spindle ends that may seat this arm',
      value: `${show(least, 'length', units).replace(/\s.*/, '')} to ${show(most, 'length', units)} across flats`,
      note: 'at the middle of all else that was filled in; a trial fit by hand decides',
    },
  ];
}

/** The arm that was measured, on every spindle that is published: which of them it is for. */
function everySpindle(state: State, { arm }: Pair, units: BenchContext['units']): Block {
  const rows = SQUARES.flatMap((square) =>
    spindleGeometries(getInterface(square)).flatMap(({ geometry: spindle, set = '' }) => {
      const { pressed, verdict } = predictSeat(inputOf(state, { spindle, arm }));
      if (pressed.endGapMm === null) return [];
      const { text, tone } = VERDICTS[verdict];
      const label = `${NAMES[square]}, ${set}`;
      return [{ label, text: `${showLimits(pressed.endGapMm, 'length', units)}. ${text}`, tone, ...pressed.endGapMm }];
    }),
  );
  return {
    kind: 'ranges',
    title: 'Which spindle is it for? End gap of this arm, pressed, on each published one',
    note: 'Left of the line the bolt lands on the spindle end. A spindle of the name may still differ: push the arm on by hand.',
    zero: 'flush',
    rows,
  };
}

/** What every published pair of sizes would make of it, on one scale. */
function conflict(state: State, seats: readonly Weighed[], units: BenchContext['units']): Block {
  return {
    kind: 'ranges',
    title: 'End gap, pressed, by every published pair of sizes',
    note:
      state.way === 'trial'
        ? 'With a trial fit the sources hardly matter.'
        : 'Sources contradict each other and none is merged. Left of the line the bolt lands on the spindle end.',
    zero: 'flush',
    rows: seats.flatMap(({ pair: { set = '' }, seat: { pressed, verdict } }) =>
      pressed.endGapMm === null
        ? []
        : [
            {
              label: set,
              text: `${showLimits(pressed.endGapMm, 'length', units)}. ${VERDICTS[verdict].text}`,
              tone: VERDICTS[verdict].tone,
              ...pressed.endGapMm,
            },
          ],
    ),
  };
}

export const seatBench: Bench = { defaults, groups, answer };
