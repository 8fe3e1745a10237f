// What was read at the stand, as fields of a page and as part of a job: the seat page and the sheet ask and reckon alike.
import { type Limits, limits } from '@spindlewright/quantity';
import { type Fixing, type Job, jobDefaults } from 'spindlewright';
import { type Field, type Group, numberOf, option, type State } from './bench.ts';

/** Nothing is filled in that nobody read. */
export const noReadings = {
  endGap: '',
  shoulderGap: '',
  reading: '',
  sEnd: '',
  sAngle: '',
  sFlats: '',
  sShoulder: '',
  aMouth: '',
  aAngle: '',
  aBore: '',
  size: '',
  boss: '',
  yield: '',
  flats: '',
  torque: '',
  thread: '',
  lubrication: '',
  strength: '',
} as const satisfies State;

const length = { type: 'number', quantity: 'length' } as const;
const { depthReading, caliperReading, armYield, bossDiameter } = jobDefaults;

const gaps: Group = {
  title: 'The trial fit',
  note: 'Arm pushed on by hand, no bolt. The best way to know: it asks for no sizes.',
  fields: [
    { key: 'endGap', label: 'Bolt seat down to the spindle end', ...length },
    { key: 'shoulderGap', label: 'Arm to the shoulder behind', ...length },
    { key: 'reading', label: 'A gap may be off by', ...length, hint: `empty = ${depthReading.value} mm either way` },
  ],
};

const sizes: Group = {
  title: 'Sizes of both parts',
  note: 'What stays empty is taken from the published sizes of the square that is chosen.',
  fields: [
    { key: 'sEnd', label: 'Spindle: across flats at the end', ...length },
    { key: 'sAngle', label: 'Spindle: angle of a face', type: 'number', quantity: 'angle' },
    { key: 'sFlats', label: 'Spindle: length of the flats', ...length },
    { key: 'sShoulder', label: 'Spindle: end to the wall behind', ...length },
    { key: 'aMouth', label: 'Arm: across flats at its inner mouth', ...length },
    { key: 'aAngle', label: 'Arm: angle of a face', type: 'number', quantity: 'angle' },
    { key: 'aBore', label: 'Arm: mouth to the seat of the bolt', ...length },
    {
      key: 'size',
      label: 'A size across flats may be off by',
      ...length,
      hint: `empty = ${caliperReading.value} mm; 0.01 mm moves the seat 0.14 mm`,
    },
  ],
};

const arm: readonly Field[] = [
  {
    key: 'flats',
    label: 'Flats are',
    type: 'radios',
    options: [option('', 'not known'), option('greased', 'greased'), option('dry', 'dry')],
  },
  {
    key: 'yield',
    label: 'Yield strength of the arm',
    type: 'number',
    quantity: 'pressure',
    hint: `empty = not known, ${armYield.lower} to ${armYield.upper} MPa`,
  },
  {
    key: 'boss',
    label: 'Boss of the arm, outside',
    ...length,
    hint: `empty = ${bossDiameter.lower} to ${bossDiameter.upper} mm`,
  },
];

const bolt: readonly Field[] = [
  {
    key: 'torque',
    label: 'Torque that the part maker states',
    type: 'number',
    quantity: 'torque',
    hint: 'empty = what most of the trade allows',
  },
  { key: 'thread', label: 'Bolt thread', type: 'text', hint: 'empty = M8x1' },
  {
    key: 'lubrication',
    label: 'Thread and head of the bolt are',
    type: 'radios',
    options: [option('', 'not known'), option('lubricated', 'greased or oiled'), option('dry', 'dry')],
  },
];

const strength: Field = { key: 'strength', label: 'Mark on its head', type: 'text', hint: 'as 8.8; empty = not read' };

/** Fields of the readings, in groups; sizes are folded away until one of them is there. */
export function readingGroups(state: State): {
  gaps: Group;
  sizes: Group;
  arm: readonly Field[];
  bolt: readonly Field[];
} {
  const measured = sizes.fields.some(({ key }) => state[key]);
  return { gaps, sizes: { ...sizes, folded: !measured }, arm, bolt: [...bolt, strength] };
}

/** A reading with its bounds, where somebody said how far it may be off; no length is less than nothing. */
function read(state: State, key: string, by: string): number | Limits | undefined {
  const nominal = numberOf(state, key);
  const plusMinus = numberOf(state, by);
  if (nominal === undefined || plusMinus === undefined) return nominal;
  const { lower, upper } = limits({ nominal, plusMinus });
  return { lower: Math.min(nominal, Math.max(0, lower)), nominal, upper };
}

/** Leaves out what was not filled in. */
export const given = <T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined && value !== '')) as never;

const some = <T extends object>(fields: T): T | undefined => (Object.keys(fields).length === 0 ? undefined : fields);

/** One reading across flats, at the end face or mouth; sizes said to be exact are read exactly there. */
const acrossFlats = (state: State, key: string) => {
  const acrossFlatsMm = read(state, key, 'size');
  if (acrossFlatsMm === undefined) return undefined;
  const atMm = numberOf(state, 'size') === 0 ? { lower: 0, nominal: 0, upper: 0 } : 0;
  return [{ acrossFlatsMm, atMm, pair: 'a' as const }];
};

/** What a bolt is taken for as far as nobody read it. */
export const unreadBolt = { thread: 'M8x1', lubrication: 'unknown' } as const;

/** Readings as part of a job; what was not read is not in it. */
export function jobReadings(state: State): Omit<Partial<Job>, 'fixing'> & { fixing?: Partial<Fixing> } {
  const trialFit = some(
    given({ endGapMm: read(state, 'endGap', 'reading'), shoulderGapMm: read(state, 'shoulderGap', 'reading') }),
  );
  const spindle = some(
    given({
      flats: acrossFlats(state, 'sEnd'),
      faceAngleDeg: numberOf(state, 'sAngle'),
      flatLengthMm: numberOf(state, 'sFlats'),
      shoulderFromEndMm: numberOf(state, 'sShoulder'),
    }),
  );
  const armRead = some(
    given({
      flats: acrossFlats(state, 'aMouth'),
      faceAngleDeg: numberOf(state, 'aAngle'),
      boreLengthMm: numberOf(state, 'aBore'),
      boltSeatFromMouthMm: numberOf(state, 'aBore'),
      bossDiameterMm: numberOf(state, 'boss'),
      yieldStrengthMPa: numberOf(state, 'yield'),
    }),
  );
  const { thread, lubrication, strength: propertyClass } = state;
  const fixing = some(given({ thread, lubrication, propertyClass }));
  return given({
    trialFit,
    spindle,
    arm: armRead,
    flats: state.flats,
    partMakerTorqueNm: numberOf(state, 'torque'),
    fixing,
  }) as ReturnType<typeof jobReadings>;
}

/** The readings of a state, as they stand in an address. */
export const readingsIn = (state: State): [string, string][] =>
  Object.keys(noReadings).flatMap((key) => (state[key] ? [[key, state[key]] as [string, string]] : []));

/** Paths of a job by the field that fills them. */
export const readingFields = {
  'trialFit.endGapMm': 'endGap',
  'trialFit.shoulderGapMm': 'shoulderGap',
  plusMinus: 'reading',
  'spindle.flats.acrossFlatsMm': 'sEnd',
  'spindle.faceAngleDeg': 'sAngle',
  'spindle.flatLengthMm': 'sFlats',
  'spindle.shoulderFromEndMm': 'sShoulder',
  'arm.flats.acrossFlatsMm': 'aMouth',
  'arm.faceAngleDeg': 'aAngle',
  'arm.boreLengthMm': 'aBore',
  'arm.boltSeatFromMouthMm': 'aBore',
  'arm.bossDiameterMm': 'boss',
  'arm.yieldStrengthMPa': 'yield',
  partMakerTorqueNm: 'torque',
  'fixing.thread': 'thread',
  'fixing.propertyClass': 'strength',
  'fixing.lubrication': 'lubrication',
} as const;
