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
        { key: 'pressed', label: 'Drawn: how much of the force is on', type: 'range', min: 0, max: 100, step: 5 },
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

function answer({ state, units }: BenchContext): readonly Block[] {
  const pairs = pairsOf(state);
  const [first] = pairs;
  if (first === undefined) return [];
  const whole = predictSeat(inputOf(state, first));
  const drawn = predictSeat(inputOf(state, first, (numberOf(state, 'pressed') ?? 100) / 100));
  const spread = seatDistribution({ ...inputOf(state, first), samples: SAMPLES, seed: 1 });
  const { text, tone } = VERDICTS[whole.verdict];
  const percent = (part: number): string => `${Math.round(100 * part)} %`;
  const likely = [...spread.verdicts].sort((a, b) => b.probability - a.probability);
  const [contribution] = spread.contributions;
  return [
    {
      kind: 'headline',
      tone,
      text,
      detail: `End gap ${showLimits(whole.pressed.endGapMm, 'length', units)}, shoulder gap ${showLimits(whole.pressed.shoulderGapMm, 'length', units)} when pressed.`,
    },
    {
      kind: 'figure',
      svg: drawSeat({
        spindle: first.spindle,
        arm: first.arm,
        handFit: drawn.handFit,
        pressed: drawn.pressed,
        verdict: drawn.verdict,
        widthPx: 360,
      }),
      caption: `Section to scale with ${state.pressed} % of the force on${first.set === undefined ? '' : `; shapes of the set ${first.set}`}`,
    },
    {
      kind: 'bars',
      title: 'How likely each outcome is',
      note: `${SAMPLES} draws from the seed 1 over the limits of what was filled in; no more certain than they are.`,
      rows: likely
        .filter(({ probability }) => probability > 0)
        .map(({ verdict, probability }) => ({
          label: VERDICTS[verdict].text,
          share: probability,
          text: percent(probability),
        })),
    },
    {
      kind: 'values',
      title: 'From hand fit to pressed',
      rows: [
        { label: 'End gap by hand', value: showLimits(whole.handFit.endGapMm, 'length', units) },
        { label: 'Shoulder gap by hand', value: showLimits(whole.handFit.shoulderGapMm, 'length', units) },
        { label: 'Travel under the press', value: showLimits(whole.travelMm, 'length', units) },
        { label: 'End gap, pressed', value: showLimits(whole.pressed.endGapMm, 'length', units) },
        { label: 'Shoulder gap, pressed', value: showLimits(whole.pressed.shoulderGapMm, 'length', units) },
        { label: 'Flats engaged', value: showLimits(whole.pressed.engagedLengthMm, 'length', units) },
        { label: 'Share of the press that the stops leave', value: percent(whole.pressReached.nominal) },
        ...(contribution === undefined
          ? []
          : [
              {
                label: 'Improve this reading first',
                value: contribution.path,
                note: `known exactly, the spread would shrink from ${show(spread.firstOrderDeviationMm, 'length', units)} to ${show(contribution.remainingMm, 'length', units)}`,
              },
            ]),
      ],
    },
    ...(pairs.length > 1 ? [conflict(state, pairs, units)] : []),
    {
      kind: 'actions',
      title: 'Try',
      actions: [
        ...(state.way === 'shapes'
          ? []
          : [
              { label: 'the other arm square', set: { arm: other(state.arm) } },
              { label: 'the other spindle square', set: { spindle: other(state.spindle) } },
            ]),
        {
          label: state.flats === 'dry' ? 'greased flats' : 'dry flats',
          set: { flats: state.flats === 'dry' ? 'greased' : 'dry' },
        },
        { label: 'hand fit only', set: { pressed: '0' } },
        { label: 'fully pressed', set: { pressed: '100' } },
      ],
    },
    { kind: 'findings', findings: sorted([...whole.findings, ...spread.findings]) },
  ];
}

const other = (id: string | undefined): Square =>
  squareOf(id) === 'square-taper-jis' ? 'square-taper-iso' : 'square-taper-jis';

function conflict(state: State, pairs: readonly Pair[], units: BenchContext['units']): Block {
  const seats = pairs.map((pair): [Pair, SeatPrediction] => [
    pair,
    predictSeat(inputOf(state, pair)) as SeatPrediction,
  ]);
  return {
    kind: 'table',
    title: 'The same by every published pair of sizes',
    note:
      state.way === 'trial'
        ? 'With a trial fit the sources hardly matter.'
        : 'They disagree; that is the state of knowledge. A trial fit settles it.',
    head: ['set', 'end gap', 'shoulder gap', 'verdict'],
    rows: seats.map(([{ set = '' }, { pressed, verdict }]) => [
      set,
      showLimits(pressed.endGapMm, 'length', units),
      showLimits(pressed.shoulderGapMm, 'length', units),
      VERDICTS[verdict].text,
    ]),
  };
}

export const seatBench: Bench = { defaults, groups, answer };
