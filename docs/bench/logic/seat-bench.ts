import { drawSeat } from '@spindlewright/drawing';
import { armGeometries, getInterface, spindleGeometries } from '@spindlewright/interfaces';
import { type Limits, limits } from '@spindlewright/quantity';
import { getSource } from '@spindlewright/quantity/sources';
import {
  predictSeat,
  type SeatInput,
  type SeatVerdict,
  seatDistribution,
  type VerdictShare,
} from '@spindlewright/taper';
import { type Job, type JobSeat, predictJobSeat } from 'spindlewright';
import { pathWords, verdictWords } from '../../../packages/spindlewright/src/seat-words.ts';
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
import { jobReadings, noReadings, readingFields, readingGroups, readingsIn, unreadBolt } from './readings.ts';
import { show, showLimits, type UnitSystem } from './units.ts';

const SQUARES = ['square-taper-jis', 'square-taper-iso'] as const;
type Square = (typeof SQUARES)[number];
const NAMES: Record<Square, string> = { 'square-taper-jis': 'JIS square', 'square-taper-iso': 'ISO square' };

/** The standard error of a share p of n draws is sqrt(p (1 - p)/n), at most 1.6 in 100 here; more would keep a phone waiting. */
const SAMPLES = 1000;

/** An invented trial fit, for somebody with no arm at hand. */
const EXAMPLE = { endGap: '3.5', shoulderGap: '3.6', example: 'yes' };

/** True while a gap of the example stands: somebody asked for it, and nobody read it. */
const isExample = ({ example, endGap, shoulderGap }: State): boolean =>
  Boolean(example) && (endGap === EXAMPLE.endGap || shoulderGap === EXAMPLE.shoulderGap);

const defaults = {
  ...noReadings,
  spindle: 'unknown',
  arm: 'unknown',
  example: '',
  press: 'torque',
  force: '20000',
  forceLow: '',
  forceHigh: '',
  pressed: '100',
};

const isSquare = (id: string | undefined): id is Square => SQUARES.some((square) => square === id);
const squares = [...SQUARES.map((id) => option(id, NAMES[id])), option('unknown', 'not known')];

function groups({ state }: BenchContext): readonly Group[] {
  const { gaps, sizes, arm, bolt } = readingGroups(state);
  return [
    gaps,
    {
      title: 'The two squares',
      fields: [
        { key: 'spindle', label: 'Spindle', type: 'radios', options: squares },
        { key: 'arm', label: 'Arm', type: 'radios', options: squares },
      ],
    },
    sizes,
    {
      title: 'The press',
      note: 'What the bolt really pulls with is seldom known well, and it decides how far the arm goes.',
      fields: [
        {
          key: 'press',
          label: 'What is known of it',
          type: 'radios',
          options: [option('torque', 'the torque, if at all'), option('force', 'the preload')],
        },
        ...(state.press === 'force' ? forces : bolt),
        ...arm,
      ],
    },
  ];
}

const forces = [
  {
    key: 'force',
    label: 'Preload of the bolt',
    type: 'range',
    quantity: 'force',
    min: 0,
    max: 45_000,
    step: 100,
  },
  { key: 'forceLow', label: 'It may be as low as', type: 'number', quantity: 'force', hint: 'empty = exactly that' },
  { key: 'forceHigh', label: 'It may be as high as', type: 'number', quantity: 'force', hint: 'empty = exactly that' },
] as const;

/** The readings as a job: what the sheet takes for the rest is taken here as well. */
const jobOf = (state: State): Job => {
  const { fixing, ...readings } = jobReadings(state);
  return {
    format: 'spindlewright-job-1',
    title: 'Seat',
    date: '2026-01-01',
    bike: 'not named',
    side: 'non-drive',
    interface: { spindle: state.spindle ?? 'unknown', arm: state.arm ?? 'unknown' },
    ...readings,
    ...(fixing === undefined ? {} : { fixing: { ...unreadBolt, ...fixing } }),
  };
};

function forceOf(state: State): { axialForceN?: Limits } {
  if (state.press !== 'force') return {};
  const nominal = numberOf(state, 'force') ?? 0;
  const lower = Math.min(nominal, numberOf(state, 'forceLow') ?? nominal);
  const upper = Math.max(nominal, numberOf(state, 'forceHigh') ?? nominal);
  return { axialForceN: limits({ lower, nominal, upper }) };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const TONES: Record<SeatVerdict, Tone> = {
  seats: 'good',
  marginal: 'care',
  'bottoms-on-end': 'stop',
  'hits-shoulder': 'stop',
  'too-little-engagement': 'stop',
  'does-not-start': 'stop',
};

const percent = (part: number): string => `${Math.round(100 * part)} %`;

interface Told {
  seat: JobSeat;
  before: readonly Block[];
  after: readonly Block[];
}

let last: { key: string; told: Told } | undefined;

/** All but the drawing. It stays the same while an arm is dragged, and takes longest. */
function tell({ state, units }: BenchContext): Told {
  const { pressed: _pressed, ...asked } = state;
  const key = JSON.stringify([asked, units]);
  if (last?.key !== key) last = { key, told: tellAnew(state, units) };
  return last.told;
}

function tellAnew(state: State, units: UnitSystem): Told {
  const seat = predictJobSeat({ job: jobOf(state), ...forceOf(state) });
  if (nothingRead(state)) {
    return { seat, before: [nothingYet, tryExample], after: [cautions(seat)] };
  }
  const findings = sorted(seat.findings);
  const likely = likelyOf(seat);
  return {
    seat,
    before: [headlineOf(state, seat, likely), { kind: 'findings', findings: stops(findings) }],
    after: [
      ...others(state, units),
      chances(likely),
      values(state, seat, units),
      ways(seat, units),
      { kind: 'links', title: 'Next', links: links(state) },
      { kind: 'findings', findings: findings.filter(({ severity }) => severity !== 'stop') },
      ...(isExample(state) ? [clearExample] : []),
    ],
  };
}

const nothingRead = (state: State): boolean =>
  readingsIn(state).length === 0 && !isSquare(state.spindle) && !isSquare(state.arm);

const nothingYet: Block = {
  kind: 'headline',
  tone: 'plain',
  text: 'Two gaps tell it best',
  detail:
    'Push the arm on by hand, without the bolt, and measure how deep the spindle end lies below the seat of the bolt, and what is left between arm and shoulder. Sizes or the names of the two squares tell less.',
};

const tryExample: Block = {
  kind: 'actions',
  title: 'No arm at hand?',
  actions: [{ label: 'try it with an invented trial fit', set: { ...EXAMPLE, spindle: SQUARES[0], arm: SQUARES[0] } }],
};

const clearExample: Block = {
  kind: 'actions',
  actions: [{ label: 'clear the example', set: { ...defaults } }],
};

const cautions = ({ findings }: JobSeat): Block => ({
  kind: 'findings',
  findings: findings.filter(({ code }) => code === 'instructions-first'),
});

/** The answer in the words of the sheet; green only over readings of somebody's own. */
function headlineOf(state: State, { state: fits, headline, lead }: JobSeat, likely: readonly VerdictShare[]): Block {
  const { verdict } = lead.prediction;
  const words = verdictWords[verdict];
  const example = isExample(state) ? 'An invented example. ' : '';
  if (fits === 'fits') {
    const tone = example === '' ? TONES[verdict] : 'care';
    return { kind: 'headline', tone, text: 'It seats', detail: `${example}${headline}` };
  }
  if (fits === 'does-not-fit') {
    return { kind: 'headline', tone: 'stop', text: capital(words), detail: `${example}${headline}` };
  }
  const [first] = likely;
  const chance =
    first === undefined ? '' : `: ${verdictWords[first.verdict]} in ${inHundred(first.probability)} of 100`;
  const text = lead.basis === 'published-set' ? 'Cannot tell by names or one part alone' : `Cannot tell yet${chance}`;
  return { kind: 'headline', tone: 'care', text, detail: `${example}${headline}` };
}

/** Never all and never none: draws are no proof. */
const inHundred = (part: number): number => Math.min(99, Math.max(1, Math.round(100 * part)));

const chanceText = (part: number): string => (part < 0.005 ? 'under 1 %' : part >= 0.995 ? 'over 99 %' : percent(part));

/** What the draws come to, likeliest first. */
const likelyOf = ({ input }: JobSeat): VerdictShare[] =>
  seatDistribution({ ...input, samples: SAMPLES, seed: 1 })
    .verdicts.filter(({ probability }) => probability > 0)
    .sort((a, b) => b.probability - a.probability);

function chances(likely: readonly VerdictShare[]): Block {
  return {
    kind: 'bars',
    title: 'If each reading lies anywhere within its limits, alike',
    note: `${SAMPLES} draws from the seed 1, good to about 2 in 100. The worst case decides, and it is what stands above.`,
    rows: likely.map(({ verdict, probability }) => ({
      label: capital(verdictWords[verdict]),
      share: probability,
      text: chanceText(probability),
    })),
  };
}

function values(state: State, seat: JobSeat, units: UnitSystem): Block {
  const { handFit, pressed, travelMm, pressReached, sensitivity } = seat.lead.prediction;
  const length = (value: Limits | null): string => showLimits(value, 'gap', units);
  const [top] = sensitivity;
  return {
    kind: 'values',
    title: 'From hand fit to pressed',
    rows: [
      { label: 'End gap by hand', value: length(handFit.endGapMm) },
      { label: 'Shoulder gap by hand', value: length(handFit.shoulderGapMm) },
      {
        label: 'Preload that presses',
        value: showLimits(seat.press.preloadN, 'force', units),
        note: pressNote(state, seat, units),
      },
      { label: 'Travel under the press', value: length(travelMm) },
      { label: 'End gap, pressed', value: length(pressed.endGapMm) },
      { label: 'Shoulder gap, pressed', value: length(pressed.shoulderGapMm) },
      { label: 'Flats in use', value: length(pressed.engagedLengthMm) },
      { label: 'Share of the press that the stops leave', value: percent(pressReached.nominal) },
      ...endsThatSeat(state, seat.input, units),
      ...(top === undefined
        ? []
        : [
            {
              label: 'What moves this most',
              value: capital(pathWords(top.path)),
              note: `${show(Math.abs(top.effectMm), 'gap', units)} of seat within its limits`,
            },
          ]),
    ],
  };
}

function pressNote({ press: known }: State, { press }: JobSeat, units: UnitSystem): string {
  if (known === 'force') return 'as filled in';
  const from =
    press.torqueFrom === 'part-maker' ? 'the part maker’s torque' : 'the torque that most of the trade allows';
  return `${from}, ${show(press.torqueNm.nominal, 'torque', units)}; friction of thread and head ${press.threadFriction.lower} to ${press.threadFriction.upper}`;
}

/** Every other way of knowing, the published sets apart: they contradict each other and none is merged. */
function ways({ lead, others: rest }: JobSeat, units: UnitSystem): Block {
  const rows = [lead, ...rest].filter(({ basis }) => basis === 'published-set');
  return {
    kind: 'ranges',
    title: 'End gap, pressed, by every published pair of sizes',
    note: `${lead.basis === 'published-set' ? 'Sources contradict each other and none is merged.' : 'Claims about parts of the name; what was read of yours comes before them.'} Left of the line the bolt lands on the spindle end.`,
    zero: 'flush',
    rows: rows.map(({ set, sources, prediction: { pressed, verdict } }) => ({
      label: setName(set, sources),
      text: `${showLimits(pressed.endGapMm, 'gap', units)}. ${capital(verdictWords[verdict])}`,
      tone: TONES[verdict],
      ...pressed.endGapMm,
    })),
  };
}

/** A set by the title of what published it; two makers of one page are told apart by the set's own name. */
function setName(set: string, sources: readonly string[]): string {
  const own = sources.find((id) => set.startsWith(id));
  const { title } = getSource(own ?? sources[0] ?? set);
  const rest = set
    .slice(own?.length ?? set.length)
    .replaceAll('-', ' ')
    .trim();
  return `${title}${rest === '' ? '' : ` (${rest})`}`;
}

/** Readings of one part alone: that part on every published mate, to say which of them it is for. */
function others(state: State, units: UnitSystem): Block[] {
  if (state.endGap || state.shoulderGap) return [];
  if (state.aMouth) return [everyMate(state, units, 'spindle')];
  return state.sEnd ? [everyMate(state, units, 'arm')] : [];
}

function everyMate(state: State, units: UnitSystem, mate: 'spindle' | 'arm'): Block {
  const rows = SQUARES.flatMap((square) => {
    const own = isSquare(state[mate === 'arm' ? 'spindle' : 'arm'])
      ? {}
      : { [mate === 'arm' ? 'spindle' : 'arm']: square };
    const { input } = predictJobSeat({ job: jobOf({ ...state, ...own, [mate]: square }), ...forceOf(state) });
    const shapes = mate === 'spindle' ? spindleGeometries(getInterface(square)) : armGeometries(getInterface(square));
    return shapes.flatMap(({ geometry, set, sources }) => {
      const { pressed, verdict } = predictSeat({ ...input, [mate]: geometry, sensitivities: false } as SeatInput);
      if (pressed.endGapMm === null) return [];
      const text = `${showLimits(pressed.endGapMm, 'gap', units)}. ${capital(verdictWords[verdict])}`;
      return [{ label: `${NAMES[square]}: ${setName(set, sources)}`, text, tone: TONES[verdict], ...pressed.endGapMm }];
    });
  });
  return {
    kind: 'ranges',
    title:
      mate === 'spindle'
        ? 'Which spindle is it for? End gap of this arm, pressed, on each published one'
        : 'Which arm is it for? End gap, pressed, of each published arm on this spindle',
    note: 'Left of the line the bolt lands on the spindle end. A part of the name may still differ: push the arm on by hand.',
    zero: 'flush',
    rows,
  };
}

/** Which sizes of the spindle's end may seat the arm that was read, all else as it is. */
function endsThatSeat(state: State, input: SeatInput, units: UnitSystem) {
  const mouth = numberOf(state, 'aMouth');
  if (mouth === undefined || state.endGap || state.shoulderGap) return [];
  const ends = Array.from({ length: 75 }, (_, k) => mouth - 1.7 + 0.02 * k).filter((acrossFlatsAtEndMm) => {
    if (acrossFlatsAtEndMm <= 0) return false;
    const spindle = { ...input.spindle, acrossFlatsAtEndMm };
    return ['seats', 'marginal'].includes(
      predictSeat({ ...input, spindle, sensitivities: false } as SeatInput).verdict,
    );
  });
  const [least] = ends;
  const most = ends.at(-1);
  if (least === undefined || most === undefined) return [];
  return [
    {
      label: 'Spindle ends that may seat this arm',
      value: `${show(least, 'length', units).replace(/\s.*/, '')} to ${show(most, 'length', units)} across flats`,
      note: 'at the middle of all else; a trial fit by hand decides',
    },
  ];
}

/** Classes of friction that the sheet takes for a thread and head, as the torque page calls them. */
const THREADS: Record<string, string> = { lubricated: 'friction-class-b', dry: 'friction-class-c' };

function links(state: State) {
  const { spindle = '', arm = '', torque = '', thread = '', lubrication = '', strength = '' } = state;
  const named = isSquare(spindle) ? [['joint', spindle]] : [];
  const differs = isSquare(arm) && arm !== spindle ? [['armJoint', arm]] : [];
  const title = isExample(state) ? [['title', 'Invented example']] : [];
  const sheet = new URLSearchParams([['from', 'empty'], ...title, ...named, ...differs, ...readingsIn(state)]);
  const bolt = new URLSearchParams([
    ...(torque === '' ? [] : [['torque', torque]]),
    ...(thread === '' ? [] : [['bolt', thread]]),
    ...(strength === '' ? [] : [['strength', strength]]),
    ...(lubrication === '' ? [] : [['friction', THREADS[lubrication] ?? '']]),
  ]);
  return [
    { text: 'How tight: torque and preload of the bolt', href: `./torque.html${bolt.size === 0 ? '' : `?${bolt}`}` },
    { text: 'Everything on one sheet', href: `./job.html?${sheet}` },
    ...(state.endGap || state.shoulderGap
      ? []
      : [{ text: 'What square is it? Readings to a name', href: './identify.html' }]),
  ];
}

/** The gaps while the arm is pressed on, as the drawing shows them: hand fit and pressed seat are the library's. */
function between(hand: Limits | null, pressed: Limits | null, share: number): Limits | null {
  if (hand === null || pressed === null) return pressed;
  const at = (key: keyof Limits): number => hand[key] + share * (pressed[key] - hand[key]);
  return { lower: at('lower'), nominal: at('nominal'), upper: at('upper') };
}

function answer(context: BenchContext): readonly Block[] {
  const { state, wide } = context;
  const { seat, before, after } = tell(context);
  const { handFit, pressed, verdict } = seat.lead.prediction;
  const share = (numberOf(state, 'pressed') ?? 100) / 100;
  const drawn = {
    ...pressed,
    endGapMm: between(handFit.endGapMm, pressed.endGapMm, share),
    shoulderGapMm: between(handFit.shoulderGapMm, pressed.shoulderGapMm, share),
    engagedLengthMm: between(handFit.engagedLengthMm, pressed.engagedLengthMm, share),
  };
  const { set, sources } = seat.lead;
  return [
    ...before,
    {
      kind: 'figure',
      svg: drawSeat({
        ...seat.shapes,
        handFit,
        pressed: drawn as typeof pressed,
        ...(nothingRead(state) ? {} : { verdict }),
        widthPx: wide ? 720 : 360,
      }),
      caption: `Section to scale; what was not read is drawn as by: ${setName(set, sources)}. Drag the arm sideways.`,
      drag: { key: 'pressed', label: 'How far it is pressed', from: 'by hand', to: 'pressed' },
    },
    ...(nothingRead(state) ? [] : [swap(state)]),
    ...after,
  ];
}

const other = (id: string | undefined): Square => (id === SQUARES[0] ? SQUARES[1] : SQUARES[0]);

/** The other square in one press. Gaps that were measured belong to the arm they were measured on, so names go by themselves. */
function swap({ endGap, shoulderGap, spindle, arm }: State): Block {
  const measured = Boolean(endGap || shoulderGap);
  const names = measured ? { endGap: '', shoulderGap: '', example: '' } : {};
  return {
    kind: 'actions',
    title: measured ? 'And without the gaps, by the names, with' : 'Swap',
    actions: [
      { label: `arm: ${NAMES[other(arm)]}`, set: { ...names, arm: other(arm) } },
      { label: `spindle: ${NAMES[other(spindle)]}`, set: { ...names, spindle: other(spindle) } },
    ],
  };
}

export const seatBench: Bench = {
  defaults,
  fieldOf: { ...readingFields, 'pressing.axialForceN': 'force' },
  groups,
  answer,
};
