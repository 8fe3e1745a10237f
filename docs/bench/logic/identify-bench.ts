import { identifyBore, identifySpindle, identifyThread } from '@spindlewright/interfaces';
import type { Finding, Measurand } from '@spindlewright/quantity';
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

const defaults = {
  what: 'spindle',
  flats: '12.65',
  at: '0',
  flats2: '',
  at2: '',
  length: '',
  u: '0.03',
  mouth: '13.55',
  mouthAt: '0',
  bore: '',
  diameter: '',
  toothed: '',
  threadDiameter: '14.2',
  pitch: '',
  tpi: '',
  hand: '',
  kind: 'external',
};

const length = { type: 'number', quantity: 'length' } as const;

function groups({ state }: BenchContext): readonly Group[] {
  const readings: Record<string, Group> = {
    spindle: {
      title: 'Readings of the spindle',
      note: 'A caliper across a pair of opposite flats, and how far from the end its jaws bore.',
      fields: [
        { key: 'flats', label: 'Across flats', ...length },
        { key: 'at', label: 'at this depth from the end', ...length },
        { key: 'flats2', label: 'Across flats, second reading', ...length, hint: 'may stay empty' },
        { key: 'at2', label: 'at this depth', ...length },
        { key: 'length', label: 'Length of the flats', ...length, hint: 'tells most' },
        { key: 'u', label: 'Uncertainty of a reading', ...length },
      ],
    },
    bore: {
      title: 'Readings of the arm',
      note: 'A square bore by its flats and length, a round one by its diameter. Fill in one of the two.',
      fields: [
        { key: 'mouth', label: 'Across flats of the bore', ...length },
        { key: 'mouthAt', label: 'at this depth from the inner mouth', ...length },
        { key: 'bore', label: 'Length of the square bore', ...length, hint: 'tells most' },
        { key: 'diameter', label: 'or: diameter of a round bore', ...length },
        {
          key: 'toothed',
          label: 'Its wall',
          type: 'choice',
          options: [option('', 'not looked'), option('yes', 'has teeth'), option('no', 'is plain')],
        },
        { key: 'u', label: 'Uncertainty of a reading', ...length },
      ],
    },
    thread: {
      title: 'Readings of the thread',
      fields: [
        {
          key: 'kind',
          label: 'The thread is',
          type: 'radios',
          options: [option('external', 'on the outside (pedal, bolt)'), option('internal', 'inside a hole')],
        },
        { key: 'threadDiameter', label: 'Diameter over, or between, the crests', ...length },
        { key: 'pitch', label: 'Pitch', ...length, hint: 'or threads per inch' },
        { key: 'tpi', label: 'Threads per inch', type: 'number', quantity: 'plain' },
        {
          key: 'hand',
          label: 'It tightens',
          type: 'choice',
          options: [option('', 'not looked'), option('right', 'clockwise'), option('left', 'anticlockwise')],
        },
      ],
    },
  };
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
    readings[state.what ?? ''] ?? (readings.spindle as Group),
  ];
}

const about = (state: State, key: string): Measurand | undefined => {
  const value = numberOf(state, key);
  const standardUncertainty = numberOf(state, 'u') ?? 0;
  return value === undefined ? undefined : standardUncertainty > 0 ? { value, standardUncertainty } : value;
};

/** Leaves out what was not filled in. */
const given = <T extends object>(fields: T): { [K in keyof T]: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as never;

interface Ranked {
  candidates: readonly { id: string; probability: number; name: string; href?: string }[];
  message: string;
  findings: readonly Finding[];
}

const SQUARE_NAMES: Record<string, string> = {
  'square-taper-jis': 'JIS square',
  'square-taper-iso': 'ISO square',
  unlisted: 'something without a record',
};

function ranked(state: State): Ranked | undefined {
  if (state.what === 'thread') {
    const threadsPerInch = numberOf(state, 'tpi');
    const pitchMm = numberOf(state, 'pitch');
    const diameterMm = numberOf(state, 'threadDiameter');
    if (diameterMm === undefined && pitchMm === undefined && threadsPerInch === undefined) return undefined;
    const hand = state.hand === 'left' || state.hand === 'right' ? state.hand : undefined;
    const kind = state.kind === 'internal' ? 'internal' : 'external';
    const { candidates, next, findings, cautions } = identifyThread(
      given({ diameterMm, pitchMm, threadsPerInch, hand, kind } as const) as never,
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
  const answer = state.what === 'bore' ? bore(state) : spindle(state);
  return (
    answer && {
      candidates: answer.candidates.map(({ id, probability }) => ({
        id,
        probability,
        name: SQUARE_NAMES[id] ?? id.replaceAll('-', ' '),
        ...(id === 'unlisted' ? {} : { href: `../atlas/${id}.html` }),
      })),
      message: answer.next.message,
      findings: [...answer.findings, ...answer.cautions],
    }
  );
}

function spindle(state: State) {
  const acrossFlatsMm = about(state, 'flats');
  const flatLengthMm = about(state, 'length');
  const second = about(state, 'flats2');
  if (acrossFlatsMm === undefined && flatLengthMm === undefined) return undefined;
  return identifySpindle(
    given({
      acrossFlatsMm,
      atMm: acrossFlatsMm === undefined ? undefined : numberOf(state, 'at'),
      readings: second === undefined ? undefined : [{ acrossFlatsMm: second, atMm: numberOf(state, 'at2') ?? 0 }],
      flatLengthMm,
    }),
  );
}

function bore(state: State) {
  const diameterMm = about(state, 'diameter');
  if (diameterMm !== undefined) {
    const toothed = state.toothed === '' ? undefined : state.toothed === 'yes';
    return identifyBore(given({ diameterMm, toothed }));
  }
  const acrossFlatsMm = about(state, 'mouth');
  const boreLengthMm = about(state, 'bore');
  if (acrossFlatsMm === undefined && boreLengthMm === undefined) return undefined;
  return identifyBore(
    given({ acrossFlatsMm, atMm: acrossFlatsMm === undefined ? undefined : numberOf(state, 'mouthAt'), boreLengthMm }),
  );
}

function answer({ state }: BenchContext): readonly Block[] {
  const result = ranked(state);
  if (result === undefined) return [{ kind: 'headline', tone: 'plain', text: 'Fill in one reading to begin' }];
  const shown = result.candidates.filter(({ probability }, index) => index < 2 || probability >= 0.01).slice(0, 8);
  const [best] = shown;
  const sure = best?.probability ?? 0;
  const tone: Tone = best?.id === 'unlisted' ? 'care' : sure >= 0.9 ? 'good' : 'care';
  return [
    {
      kind: 'headline',
      tone,
      text: best === undefined ? 'Nothing fits' : `${sure >= 0.9 ? '' : 'Perhaps '}${best.name}`,
      detail: `${Math.round(100 * sure)} % by these readings. A name is no seat: try the arm by hand as well.`,
    },
    {
      kind: 'bars',
      title: 'What it may be',
      rows: shown.map(({ name, probability }) => ({
        label: name,
        share: probability,
        text: probability < 0.01 ? 'under 1 %' : `${Math.round(100 * probability)} %`,
      })),
    },
    { kind: 'text', text: result.message },
    { kind: 'links', title: 'Next', links: seatLinks(state) },
    {
      kind: 'links',
      title: 'In the atlas',
      links: shown.flatMap(({ href, name }) => (href === undefined ? [] : [{ text: name, href }])),
    },
    { kind: 'findings', findings: sorted(result.findings) },
  ];
}

/** What was measured goes on to the seat; a reading at the very end or mouth only, since the seat is reckoned from there. */
function seatLinks({
  what,
  flats = '',
  at = '',
  length: flatLength = '',
  mouth = '',
  mouthAt = '',
  bore: boreLength = '',
  diameter = '',
}: State) {
  const readings: Record<string, string> =
    what === 'spindle' && Number(at) === 0
      ? { sEnd: flats, sFlats: flatLength }
      : what === 'bore' && diameter === '' && Number(mouthAt) === 0
        ? { aMouth: mouth, aBore: boreLength }
        : {};
  const given = Object.entries(readings).filter(([, text]) => text !== '');
  if (given.length === 0) return [];
  const search = new URLSearchParams([['way', 'shapes'], ...given]);
  const text = what === 'bore' ? 'Where this arm will sit, and on which spindle' : 'Where an arm will sit on it';
  return [{ text, href: `./seat.html?${search}` }];
}

export const identifyBench: Bench = { defaults, groups, answer };
