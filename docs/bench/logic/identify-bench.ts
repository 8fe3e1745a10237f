import { getInterface, identifyBore, identifySpindle, identifyThread } from '@spindlewright/interfaces';
import { identificationData } from '@spindlewright/interfaces/data';
import type { Finding } from '@spindlewright/quantity';
import {
  type Bench,
  type BenchContext,
  type Block,
  type Field,
  type Group,
  numberOf,
  option,
  type State,
  sorted,
  type Tone,
} from './bench.ts';
import { type Fault, faultsOf, rangeWords, refused, typed } from './faults.ts';
import { type QuantityKind, type UnitSystem, unitText } from './units.ts';

type What = 'spindle' | 'bore' | 'thread';

/** Nothing is filled in that nobody read. */
const defaults: State = {
  what: 'spindle',
  flats: '',
  at: '',
  flats2: '',
  at2: '',
  length: '',
  u: '',
  uDepth: '',
  mouth: '',
  mouthAt: '',
  bore: '',
  diameter: '',
  toothed: '',
  threadDiameter: '',
  threadAt: '',
  pitch: '',
  tpi: '',
  uPitch: '',
  hand: '',
  kind: '',
  example: '',
};

/** Numbers that nobody read, for somebody with no part at hand. */
const EXAMPLES: Record<What, State> = {
  spindle: { flats: '12.66', length: '15.2' },
  bore: { mouth: '13.56', bore: '15.4' },
  thread: { threadDiameter: '14.2', pitch: '1.27', hand: 'left', kind: 'external' },
};

/** One reading: what it is called, how far the library takes it, and what stands for an uncertainty that is not filled in. */
interface Reading {
  label: string;
  hint?: string;
  quantity: QuantityKind;
  min: number;
  max: number;
  /** How far its uncertainty may reach below `min`: a depth is not less than none, but is not known exactly either. */
  below?: number;
  /** The field with its uncertainty. */
  by: 'u' | 'uDepth' | 'uPitch';
  judged: number;
  /** For a depth: the size that was read there. */
  of?: string;
}

const { assumedUncertainty: spindles, bore: bores, threads } = identificationData;
const ofSize = { quantity: 'length', min: 8, max: 20, by: 'u' } as const;
const ofDepth = { quantity: 'length', min: 0, by: 'uDepth' } as const;
const ofLength = { quantity: 'length', min: 3, max: 40, by: 'uDepth', hint: 'tells most' } as const;

const flats = { ...ofSize, judged: spindles.acrossFlatsMm.value };
const depth = { ...ofDepth, max: 30, below: 5, judged: spindles.planeMm.value, hint: 'empty = at the very end' };

const READINGS: Record<What, Readonly<Record<string, Reading>>> = {
  spindle: {
    flats: { ...flats, label: 'Across flats' },
    at: { ...depth, label: 'Depth of the jaws from the end', of: 'flats' },
    flats2: { ...flats, label: 'Across flats, second reading', hint: 'may stay empty' },
    at2: { ...depth, label: 'Depth of the jaws, second reading', of: 'flats2' },
    length: { ...ofLength, label: 'Length of the flats', judged: spindles.flatLengthMm.value },
  },
  bore: {
    mouth: { ...ofSize, label: 'Across flats of the bore', judged: bores.assumedUncertainty.acrossFlatsMm.value },
    mouthAt: {
      ...ofDepth,
      label: 'Depth of the jaws from the inner mouth',
      max: 40,
      below: 3,
      judged: bores.assumedUncertainty.planeMm.value,
      of: 'mouth',
      hint: 'empty = at the very mouth',
    },
    bore: { ...ofLength, label: 'Length of the square bore', judged: bores.assumedUncertainty.boreLengthMm.value },
    diameter: {
      label: 'Diameter of a round bore',
      hint: 'in place of a square one',
      quantity: 'length',
      min: 10,
      max: 40,
      by: 'u',
      judged: bores.assumedUncertainty.diameterMm.value,
    },
  },
  thread: {
    threadDiameter: {
      label: 'Diameter over, or between, the crests',
      quantity: 'length',
      min: 4,
      max: 60,
      by: 'u',
      judged: threads.assumedUncertainty.externalDiameterMm.value,
    },
    threadAt: {
      ...ofDepth,
      label: 'Depth of the jaws from the end of the thread',
      max: 60,
      below: 5,
      judged: threads.assumedUncertainty.planeMm.value,
      of: 'threadDiameter',
    },
    pitch: {
      label: 'Pitch',
      quantity: 'length',
      min: 0.2,
      max: 6,
      by: 'uPitch',
      judged: threads.assumedUncertainty.pitchMm.value,
      hint: 'or threads per inch',
    },
    tpi: {
      label: 'Threads per inch',
      quantity: 'plain',
      min: 5,
      max: 100,
      by: 'uPitch',
      judged: threads.assumedUncertainty.threadsPerInch.value,
    },
  },
};

const whatOf = ({ what }: State): What => (what === 'bore' || what === 'thread' ? what : 'spindle');
const readingOf = (what: What, key: string): Reading => READINGS[what][key] as Reading;

/** A number with its unit, as somebody would type it. */
const withUnit = (value: number, kind: QuantityKind, units: UnitSystem): string =>
  `${typed(value, kind, units)} ${unitText(kind, units)}`.trimEnd();

function fieldOf(what: What, key: string, units: UnitSystem): Field {
  const { label, hint, quantity, min, max } = readingOf(what, key);
  const plane = key === 'threadAt' ? `empty = ${withUnit(threads.assumedPlaneMm.value, 'length', units)}` : hint;
  return { key, label, type: 'number', quantity, min, max, ...(plane === undefined ? {} : { hint: plane }) };
}

function uncertainty(key: Reading['by'], label: string, units: UnitSystem, ...judged: [number, string][]): Field {
  const words = judged.map(([value, of]) => `${withUnit(value, 'length', units)}${of}`).join(', ');
  // No tool of a shop is worse than this; more would be no reading.
  return { key, label, type: 'number', quantity: 'length', min: 0, max: 3, hint: `empty = ${words}: a judgement` };
}

const NOTE = 'Uncertainties are standard ones: two readings in three are no farther off.';

function groupOf(state: State, units: UnitSystem): Group {
  const what = whatOf(state);
  const fields = Object.keys(READINGS[what]).map((key) => fieldOf(what, key, units));
  if (what === 'spindle') {
    return {
      title: 'Readings of the spindle',
      note: `A caliper across a pair of opposite flats, and how far from the end its jaws bore. ${NOTE}`,
      fields: [
        ...fields,
        uncertainty('u', 'Uncertainty across flats', units, [spindles.acrossFlatsMm.value, '']),
        uncertainty('uDepth', 'Uncertainty of a depth or length', units, [spindles.planeMm.value, '']),
      ],
    };
  }
  if (what === 'bore') {
    const { acrossFlatsMm, planeMm, boreLengthMm } = bores.assumedUncertainty;
    return {
      title: 'Readings of the arm',
      note: `A square bore by its flats and length, a round one by its diameter. Fill in one of the two. ${NOTE}`,
      fields: [
        ...fields,
        {
          key: 'toothed',
          label: 'Wall of a round bore',
          type: 'choice',
          options: [option('', 'not looked'), option('yes', 'has teeth'), option('no', 'is plain')],
        },
        uncertainty('u', 'Uncertainty across flats or of a diameter', units, [acrossFlatsMm.value, '']),
        uncertainty(
          'uDepth',
          'Uncertainty of a depth or length',
          units,
          [planeMm.value, ' for the depth'],
          [boreLengthMm.value, ' for the length'],
        ),
      ],
    };
  }
  const { externalDiameterMm, internalDiameterMm, planeMm, pitchMm, threadsPerInch } = threads.assumedUncertainty;
  return {
    title: 'Readings of the thread',
    note: NOTE,
    fields: [
      {
        key: 'kind',
        label: 'The thread is',
        type: 'radios',
        options: [option('external', 'on the outside (pedal, bolt)'), option('internal', 'inside a hole')],
      },
      ...fields,
      {
        key: 'hand',
        label: 'It tightens',
        type: 'choice',
        options: [option('', 'not looked'), option('right', 'clockwise'), option('left', 'anticlockwise')],
      },
      uncertainty(
        'u',
        'Uncertainty of the diameter',
        units,
        [externalDiameterMm.value, ' outside'],
        [internalDiameterMm.value, ' inside'],
      ),
      uncertainty('uDepth', 'Uncertainty of the depth', units, [planeMm.value, '']),
      uncertainty('uPitch', 'Uncertainty of the pitch', units, [
        pitchMm.value,
        ` (${threadsPerInch.value} of a thread per inch where they were counted)`,
      ]),
    ],
  };
}

function groups({ state, units }: BenchContext): readonly Group[] {
  return [
    {
      title: 'What is in your hand?',
      fields: [
        {
          key: 'what',
          label: 'Part',
          type: 'radios',
          options: [
            option('spindle', 'a spindle with a square end'),
            option('bore', 'an arm'),
            option('thread', 'a thread'),
          ],
        },
      ],
    },
    groupOf(state, units),
  ];
}

const MM_PER_INCH = 25.4;

/** Standard uncertainty of a reading, and whether somebody filled it in. */
function uncertaintyOf(state: State, key: string, value: number): { u: number; isJudged: boolean } {
  const { by, judged } = readingOf(whatOf(state), key);
  const u = numberOf(state, by);
  if (u === undefined) {
    const isInside = key === 'threadDiameter' && state.kind !== 'external';
    return { u: isInside ? threads.assumedUncertainty.internalDiameterMm.value : judged, isJudged: true };
  }
  // First order: a count is 25.4 mm over the pitch.
  return { u: key === 'tpi' ? (value ** 2 / MM_PER_INCH) * u : u, isJudged: false };
}

interface Read {
  value: number;
  standardUncertainty: number;
}

const about = (state: State, key: string, empty?: number): Read | undefined => {
  const value = numberOf(state, key) ?? empty;
  return value === undefined ? undefined : { value, standardUncertainty: uncertaintyOf(state, key, value).u };
};

/** A depth, where a size was read; at the very end or mouth, or some turns of a thread in, where nobody says otherwise. */
const depthOf = (state: State, key: string): Read | undefined =>
  state[readingOf(whatOf(state), key).of ?? '']
    ? about(state, key, key === 'threadAt' ? threads.assumedPlaneMm.value : 0)
    : undefined;

/** What cannot be true together, or lies so near a bound that its uncertainty reaches beyond. */
function clashes(state: State, units: UnitSystem): Fault[] {
  const what = whatOf(state);
  const filled = Object.entries(READINGS[what]).filter(([key]) => state[key]);
  const found = filled.flatMap(([key, { label, quantity, min, max, below = 0, of }]): Fault[] => {
    if (of !== undefined && !state[of]) {
      return [{ label, value: `belongs to a reading: fill in “${readingOf(what, of).label}” as well` }];
    }
    const value = numberOf(state, key) ?? 0;
    const { u } = uncertaintyOf(state, key, value);
    if (value - 3 * u >= min - below && value + 3 * u <= max) return [];
    const reach = `${withUnit(value, quantity, units)} with three times its uncertainty of ${withUnit(u, quantity, units)}`;
    return [{ label, value: `${reach} is out of range: ${rangeWords(min - below, max, quantity, units)}` }];
  });
  const both = (one: string, other: string): Fault => ({
    label: readingOf(what, one).label,
    value: `stands beside “${readingOf(what, other).label}”: empty one of the two`,
  });
  if (what === 'thread') {
    const diameter = numberOf(state, 'threadDiameter');
    const pitch = pitchOf(state);
    if (state.pitch && state.tpi) found.push(both('pitch', 'tpi'));
    else if (diameter !== undefined && pitch !== undefined && 3 * pitch > diameter) {
      const words = `${withUnit(pitch, 'length', units)} on a diameter of ${withUnit(diameter, 'length', units)}`;
      const { label } = readingOf(what, state.pitch ? 'pitch' : 'tpi');
      found.push({ label, value: `a pitch of ${words}: it is at most a third` });
    }
  }
  const square = state.mouth ? 'mouth' : state.bore ? 'bore' : undefined;
  if (what === 'bore' && square !== undefined) {
    if (state.diameter) found.push(both('diameter', square));
    else if (state.toothed) {
      const { label } = readingOf(what, square);
      found.push({
        label: 'Wall of a round bore',
        value: `stands beside “${label}”, of a square one: empty one of the two`,
      });
    }
  }
  return found;
}

const pitchOf = (state: State): number | undefined => {
  const count = numberOf(state, 'tpi');
  return numberOf(state, 'pitch') ?? (count === undefined ? undefined : MM_PER_INCH / count);
};

/** Leaves out what was not filled in. */
const given = <T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as never;

interface Ranked {
  candidates: readonly { id: string; probability: number; name: string; href?: string }[];
  message: string;
  findings: readonly Finding[];
}

const NAMES: Readonly<Record<string, string>> = {
  'square-taper-jis': 'JIS square',
  'square-taper-iso': 'ISO square',
  unlisted: 'something without a record',
};

const nameOf = (id: string): string => {
  const title = NAMES[id] ?? getInterface(id as never).title;
  return NAMES[id] === undefined ? title.charAt(0).toLowerCase() + title.slice(1) : title;
};

const HANDS = { left: 'left', right: 'right' } as const;
const KINDS = { external: 'external', internal: 'internal' } as const;
const oneOf = <T extends string>(list: Readonly<Record<string, T>>, text = ''): T | undefined => list[text];

function ranked(state: State): Ranked | undefined {
  const what = whatOf(state);
  if (what === 'thread') return thread(state);
  const answer = what === 'bore' ? bore(state) : spindle(state);
  return (
    answer && {
      candidates: answer.candidates.map(({ id, probability }) => ({
        id,
        probability,
        name: nameOf(id),
        ...(id === 'unlisted' ? {} : { href: `../atlas/${id}.html` }),
      })),
      message: answer.next.message,
      findings: [...answer.findings, ...answer.cautions],
    }
  );
}

function thread(state: State): Ranked | undefined {
  const diameterMm = about(state, 'threadDiameter');
  const pitchMm = about(state, 'pitch');
  const threadsPerInch = about(state, 'tpi');
  if (diameterMm === undefined && pitchMm === undefined && threadsPerInch === undefined) return undefined;
  const { candidates, next, findings, cautions } = identifyThread(
    given({
      diameterMm,
      atMm: depthOf(state, 'threadAt'),
      pitchMm,
      threadsPerInch,
      hand: oneOf(HANDS, state.hand),
      kind: oneOf(KINDS, state.kind),
    }),
  );
  return {
    candidates: candidates.map(({ id, probability, designation, hand: turns, uses }) => ({
      id,
      probability,
      name:
        designation === undefined
          ? 'a thread without a record'
          : `${designation}${turns === 'left' ? ', left hand' : ''}${uses.length > 0 ? ` (${uses.slice(0, 2).join('; ')})` : ''}`,
    })),
    message: next.message,
    findings: [...findings, ...cautions],
  };
}

function spindle(state: State) {
  const acrossFlatsMm = about(state, 'flats');
  const flatLengthMm = about(state, 'length');
  const second = about(state, 'flats2');
  const at2 = depthOf(state, 'at2');
  if (acrossFlatsMm === undefined && flatLengthMm === undefined && second === undefined) return undefined;
  return identifySpindle(
    given({
      acrossFlatsMm,
      atMm: depthOf(state, 'at'),
      readings: second === undefined || at2 === undefined ? undefined : [{ acrossFlatsMm: second, atMm: at2 }],
      flatLengthMm,
    }),
  );
}

function bore(state: State) {
  const diameterMm = about(state, 'diameter');
  if (diameterMm !== undefined || state.toothed) {
    return identifyBore(given({ diameterMm, toothed: state.toothed ? state.toothed === 'yes' : undefined }));
  }
  const acrossFlatsMm = about(state, 'mouth');
  const boreLengthMm = about(state, 'bore');
  if (acrossFlatsMm === undefined && boreLengthMm === undefined) return undefined;
  return identifyBore(given({ acrossFlatsMm, atMm: depthOf(state, 'mouthAt'), boreLengthMm }));
}

/** Readings of the example that still stand, by their labels: nobody took them. */
function ofExample(state: State): string[] {
  const own = EXAMPLES[whatOf(state)];
  return state.example === 'yes' ? Object.keys(own).filter((key) => state[key] === own[key]) : [];
}

/** Never none and never certain. */
const percent = (share: number): string =>
  share < 0.01 ? 'under 1 %' : share >= 0.995 ? 'over 99 %' : `${Math.round(100 * share)} %`;

const BEGIN: Record<What, string> = {
  spindle: 'The length of the flats, or a caliper across a pair of them. Each further reading tells more.',
  bore: 'From the inner mouth to the seat of the bolt, across the flats at the mouth, or the diameter of a round bore.',
  thread: 'The diameter over its crests, or the pitch. Both together tell most, and which way it tightens.',
};

const TRY: Record<What, string> = {
  spindle: 'A name is no seat: try the arm by hand as well.',
  bore: 'A name is no seat: try the arm by hand as well.',
  thread: 'A name is no thread: turn the part in by hand as well, over its whole length.',
};

const begin = (what: What): Block[] => [
  { kind: 'headline', tone: 'plain', text: 'Fill in one reading to begin', detail: BEGIN[what] },
  {
    kind: 'actions',
    title: 'No part at hand?',
    actions: [{ label: 'try it with an invented example', set: { ...EXAMPLES[what], example: 'yes' } }],
  },
];

const clear = (state: State): Block => ({
  kind: 'actions',
  actions: [
    {
      label: ofExample(state).length > 0 ? 'clear the example' : 'clear all readings',
      set: { ...defaults, what: whatOf(state) },
    },
  ],
});

/** The likeliest; over numbers that nobody read it says so first, and is never green. */
function headlineOf(state: State, best: Ranked['candidates'][number] | undefined, asked: readonly Group[]): Block {
  const what = whatOf(state);
  const { probability: sure = 0, name = '', id = 'unlisted' } = best ?? {};
  const said = `${sure >= 0.9 ? '' : 'perhaps '}${name}`;
  const told = `${percent(sure)} by these readings. ${TRY[what]}`;
  const invented = ofExample(state);
  if (invented.length === 0) {
    const tone: Tone = id === 'unlisted' || sure < 0.9 ? 'care' : 'good';
    return { kind: 'headline', tone, text: said.charAt(0).toUpperCase() + said.slice(1), detail: told };
  }
  if (invented.length === Object.keys(EXAMPLES[what]).length) {
    const text = `Invented example: ${said}`;
    return { kind: 'headline', tone: 'care', text, detail: `Nobody read these numbers. ${told}` };
  }
  const labels = asked.flatMap(({ fields }) => fields).filter(({ key }) => invented.includes(key));
  const still = labels.map(({ label }) => label.toLowerCase()).join('; ');
  return {
    kind: 'headline',
    tone: 'care',
    text: `Partly an invented example: ${said}`,
    detail: `Nobody read these, they are of the example: ${still}. ${told}`,
  };
}

/** Every reading that was reckoned with, and how far it may be off: also where nobody said so. */
function reckonedWith(state: State, units: UnitSystem): Block {
  const what = whatOf(state);
  const rows = Object.entries(READINGS[what]).flatMap(([key, { label, quantity, of }]) => {
    const read = of === undefined ? about(state, key) : depthOf(state, key);
    if (read === undefined) return [];
    const { u, isJudged } = uncertaintyOf(state, key, read.value);
    const value = `${withUnit(read.value, quantity, units)}${state[key] ? '' : ', taken for what was left empty'}`;
    const judged = isJudged ? 'a judgement, since none was filled in' : 'as filled in';
    return [{ label, value, note: `standard uncertainty ${withUnit(u, quantity, units)}, ${judged}` }];
  });
  return { kind: 'values', title: 'Reckoned with', rows };
}

function answer(context: BenchContext): readonly Block[] {
  const { state, units } = context;
  const groupsNow = groups(context);
  const wrong = faultsOf(groupsNow, state, units);
  const faults = wrong.length > 0 ? wrong : clashes(state, units);
  if (faults.length > 0) return [...refused(faults), clear(state)];
  const result = ranked(state);
  if (result === undefined) return begin(whatOf(state));
  const shown = result.candidates.filter(({ probability }, index) => index < 2 || probability >= 0.01).slice(0, 8);
  return [
    headlineOf(state, shown[0], groupsNow),
    {
      kind: 'bars',
      title: 'What it may be',
      rows: shown.map(({ name, probability }) => ({ label: name, share: probability, text: percent(probability) })),
    },
    { kind: 'text', text: result.message },
    reckonedWith(state, units),
    { kind: 'links', title: 'Next', links: seatLinks(state) },
    {
      kind: 'links',
      title: 'In the atlas',
      links: shown.flatMap(({ href, name }) => (href === undefined ? [] : [{ text: name, href }])),
    },
    { kind: 'findings', findings: sorted(result.findings) },
    clear(state),
  ];
}

/** What was read goes on to the seat, as far as the seat is reckoned from there: at the very end or mouth. Nothing invented does. */
function seatLinks(state: State) {
  const what = whatOf(state);
  const invented = ofExample(state);
  const read = (key: string): string => (invented.includes(key) ? '' : (state[key] ?? ''));
  const atEnd = (key: string, at: string): string => (Number(state[at]) === 0 ? read(key) : '');
  const readings: Record<What, Record<string, string>> = {
    spindle: { sEnd: atEnd('flats', 'at') || atEnd('flats2', 'at2'), sFlats: read('length') },
    bore: { aMouth: atEnd('mouth', 'mouthAt'), aBore: read('bore') },
    thread: {},
  };
  const goes = Object.entries(readings[what]).filter(([, text]) => text !== '');
  if (goes.length === 0) return [];
  const text = what === 'bore' ? 'Where this arm will sit, and on which spindle' : 'Where an arm will sit on it';
  return [{ text, href: `./seat.html?${new URLSearchParams(goes)}` }];
}

export const identifyBench: Bench = { defaults, groups, answer };
