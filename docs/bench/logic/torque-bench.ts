import { drawPreloadRange } from '@spindlewright/drawing';
import { type Limits, limitsOf } from '@spindlewright/quantity';
import { getSource } from '@spindlewright/quantity/sources';
import {
  assemblyLimit,
  frictionRange,
  handForce,
  preloadFromTorque,
  preloadRange,
  propertyClass,
  threadFor,
  wrenchSetting,
} from '@spindlewright/torque';
import { frictionClasses, listTradeTorques, propertyClasses, toolClasses } from '@spindlewright/torque/data';
import { jobDefaults } from 'spindlewright';
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
} from './bench.ts';
import { show, showLimits } from './units.ts';

const BOLTS = ['M8x1', 'M8x1.25', 'M10x1', 'M12x1', 'M15x1', 'M6x1', 'M5x0.8', '9/16-20 UN', '1/2-20 UN'];

const defaults = {
  bolt: 'M8x1',
  strength: '',
  torque: '40',
  friction: 'unknown',
  head: '',
  hole: 'round',
  holeSize: '',
  tool: 'click-wrench-iso-6789',
  wrench: '250',
  extension: '0',
  angle: '0',
};

// What the sheet of a job takes, so that both say the same of the same bolt.
const { unknownThread, unreadPropertyClass, bearingHoleClearance, bearingRing } = jobDefaults;
const USUAL_CLASS = unreadPropertyClass.value.toFixed(1);

type PreloadJoint = Omit<Parameters<typeof preloadRange>[0], 'torqueNm'>;

interface Joint {
  thread: ReturnType<typeof threadFor>;
  bearing: Parameters<typeof assemblyLimit>[0]['bearing'];
  threadFriction: Limits;
}

/** Joint of the trade's torques that a crank bolt belongs to. */
const TAPER_BOLT = 'square-taper-bolt';

const words = (id: string): string => id.replaceAll('-', ' ');

function groups({ state }: BenchContext): readonly Group[] {
  return [
    {
      title: 'The bolt',
      fields: [
        {
          key: 'bolt',
          label: 'Thread',
          type: 'text',
          options: BOLTS.map((id) => option(id)),
          hint: 'as M8x1 or 9/16-20 UN',
        },
        {
          key: 'strength',
          label: 'Mark on the head',
          type: 'choice',
          options: [
            option('', 'none, or not known'),
            ...[...new Set(propertyClasses.map(({ propertyClass: id }) => id))].map((id) => option(id)),
          ],
        },
        {
          key: 'friction',
          label: 'Thread and head are',
          type: 'choice',
          options: [
            option('unknown', `not known (${unknownThread.lower} to ${unknownThread.upper})`),
            ...frictionClasses
              .filter(({ max }) => max !== undefined)
              .map(({ id, min, max }) => option(id, `${words(id)} (${min} to ${max})`)),
          ],
        },
      ],
    },
    {
      title: 'The face under the head',
      fields: [
        {
          key: 'hole',
          label: 'It lies',
          type: 'radios',
          options: [option('round', 'on a washer or flange'), option('square', 'on the square of the arm itself')],
        },
        {
          key: 'head',
          label: 'Outer diameter that bears',
          type: 'number',
          quantity: 'length',
          ...(state.hole === 'square' ? {} : { hint: `empty = a ring of ${bearingRing.value} mm round the hole` }),
        },
        {
          key: 'holeSize',
          label: state.hole === 'square' ? 'Square, across flats' : 'Hole diameter',
          type: 'number',
          quantity: 'length',
          ...(state.hole === 'square' ? {} : { hint: `empty = ${bearingHoleClearance.value} mm over the thread` }),
        },
      ],
    },
    {
      title: 'The wrench',
      fields: [
        {
          key: 'torque',
          label: 'Torque wanted at the bolt',
          type: 'number',
          quantity: 'torque',
          hint: 'any unit: 300 lbf.in',
        },
        {
          key: 'tool',
          label: 'Tool',
          type: 'choice',
          options: [option('', 'exact, as on paper'), ...toolClasses.map(({ id, name }) => option(id, name))],
        },
        { key: 'wrench', label: 'From its square to the mark on the grip', type: 'number', quantity: 'length' },
        { key: 'extension', label: 'Crowfoot or extension, square to bolt', type: 'number', quantity: 'length' },
        {
          key: 'angle',
          label: 'Its angle to the wrench',
          type: 'number',
          quantity: 'angle',
          hint: '0 lengthens, 90 leaves the setting alone',
        },
      ],
    },
  ];
}

function answer({ state, units, wide }: BenchContext): readonly Block[] {
  const thread = threadFor(state.bolt ?? '');
  const torqueNm = numberOf(state, 'torque') ?? 0;
  const friction = frictionOf(state.friction ?? '');
  const bearing = bearingOf(state, thread.majorDiameterMm);
  if (friction === null) return [];
  if (bearing === undefined) return [{ kind: 'headline', tone: 'plain', text: 'How large are head and square?' }];
  const joint = { thread, bearing, threadFriction: friction, bearingFriction: friction };
  const strength = state.strength ? { propertyClass: state.strength } : {};
  const range = preloadRange({ torqueNm, ...(state.tool ? { tool: state.tool } : {}), ...joint, ...strength });
  const exact = { thread, bearing, threadFriction: friction.nominal, bearingFriction: friction.nominal };
  const one = preloadFromTorque({ torqueNm, ...exact });
  const wrenchLengthMm = numberOf(state, 'wrench') ?? 0;
  const setting = wrenchSetting({
    targetTorqueNm: torqueNm,
    wrenchLengthMm,
    extensionLengthMm: numberOf(state, 'extension') ?? 0,
    extensionAngleDeg: numberOf(state, 'angle') ?? 0,
  });
  // What the head does not say is reckoned for the bolt that is usual, and said so.
  const strong = state.strength || USUAL_CLASS;
  const ofClass = state.strength ? '' : `, were it ${USUAL_CLASS}`;
  const limit = assemblyLimit({ ...exact, propertyClass: strong });
  const most = mostTorque(joint, strong);
  const yields = range.strength === undefined ? undefined : range.strength.utilisation;
  const yieldN = propertyClass(strong, thread.majorDiameterMm).yieldStrengthMPa * thread.stressAreaMm2;
  // Never taken for leave to tighten.
  const usual =
    yields === undefined ? strengthUse({ torqueNm, tool: state.tool, joint, strength: USUAL_CLASS }) : undefined;
  const breaks = yields !== undefined && yields.lower > 1;
  const tone =
    yields === undefined
      ? usual !== undefined && usual.upper > 0.9
        ? 'care'
        : 'plain'
      : yields.nominal > 1
        ? 'stop'
        : yields.upper > 0.9
          ? 'care'
          : 'good';
  const share = (partNm: number | null): number => (torqueNm === 0 || partNm === null ? 0 : partNm / torqueNm);
  const percent = (part: number): string => `${Math.round(100 * part)} %`;
  const { split } = one;
  const findings = sorted([...range.findings, ...setting.findings, ...one.findings]);
  return [
    {
      kind: 'headline',
      tone,
      text: breaks
        ? 'This bolt yields before the wrench gets there'
        : `${showLimits(range.preloadN, 'force', units)} of preload`,
      detail:
        yields !== undefined
          ? `The bolt ${breaks ? 'would be' : 'is'} used to ${percent(yields.nominal)} of its yield strength (${percent(yields.lower)} to ${percent(yields.upper)}).`
          : usual === undefined
            ? 'What this torque makes of the bolt, at the worst of tool and friction either way.'
            : `How strong the bolt is was not said: one marked ${USUAL_CLASS} would be used to ${percent(usual.nominal)} of its yield strength (${percent(usual.lower)} to ${percent(usual.upper)}). Read the mark on its head first.`,
    },
    { kind: 'findings', findings: stops(findings) },
    {
      kind: 'figure',
      svg: drawPreloadRange({
        preloadN: range.preloadN,
        marks: [
          { label: `nine tenths of yield, twist included${ofClass}`, forceN: limit.preloadN },
          { label: `yield, pull alone${ofClass}`, forceN: yieldN },
        ],
        widthPx: wide ? 720 : 360,
      }),
      caption: 'Preload that may really be there, and what the bolt bears',
    },
    {
      kind: 'values',
      title: 'At the wrench',
      rows: [
        { label: 'Set it to', value: show(setting.settingNm, 'torque', units), note: sameTorques(setting.settingNm) },
        {
          label: 'Hand force at the mark',
          value: showHand(handForce({ torqueNm: setting.settingNm, leverLengthMm: wrenchLengthMm }).forceN, units),
        },
        {
          label: state.strength
            ? 'No more than, for a bolt of this mark'
            : `No more than, were it marked ${USUAL_CLASS}`,
          value: show(most.lower, 'torque', units),
          note: `nine tenths of its yield strength where friction is lowest; at its middle that would be ${show(most.nominal, 'torque', units)}, where it is highest ${show(most.upper, 'torque', units)}, but nobody sees which it is; the part maker’s own torque comes first`,
        },
        { label: 'To loosen again, before it settles', value: showLimits(range.looseningTorqueNm, 'torque', units) },
        {
          label: 'Largest over smallest preload',
          value: range.tighteningFactor === null ? 'not known' : range.tighteningFactor.toFixed(2),
        },
      ],
    },
    {
      kind: 'table',
      title: 'What the trade says of a square taper',
      note: `Common practice and published ranges, side by side; the part maker’s own value comes before all of them.${thread.majorDiameterMm < 8 ? '' : beyondTrade(most, state.strength ?? '', units)}`,
      head: ['bolt', 'range', 'source'],
      rows: listTradeTorques(TAPER_BOLT).map(({ fastener = '', minNm, maxNm, standing, sources }) => [
        fastener === '' ? 'any' : fastener,
        minNm === maxNm || maxNm === undefined
          ? show(minNm, 'torque', units)
          : `${show(minNm, 'torque', units).replace(/\s.*/, '')} to ${show(maxNm, 'torque', units)}`,
        sources.length === 0
          ? words(standing)
          : `${sources.map((id) => getSource(id).title).join('; ')} (${words(standing)})`,
      ]),
    },
    { kind: 'links', title: 'Other joints', links: [{ text: 'Every torque that is published', href: '../data/' }] },
    {
      kind: 'bars',
      title: 'Where the torque goes',
      note: 'At the middle of the friction range.',
      rows: [
        { label: 'stretches the bolt', share: share(split.pitchNm), text: percent(share(split.pitchNm)) },
        {
          label: 'friction in the thread',
          share: share(split.threadFrictionNm),
          text: percent(share(split.threadFrictionNm)),
        },
        {
          label: 'friction under the head',
          share: share(split.bearingFrictionNm),
          text: percent(share(split.bearingFrictionNm)),
        },
      ],
    },
    {
      kind: 'links',
      title: 'Next',
      links: [
        {
          text: 'Where the arm seats with this preload',
          href: `./seat.html?${seatSearch(range.preloadN)}`,
        },
      ],
    },
    { kind: 'findings', findings: findings.filter(({ severity }) => severity !== 'stop') },
  ];
}

/** Friction of thread and head, by what the list calls it. */
function frictionOf(id: string): Limits | null {
  if (id === 'unknown') return limitsOf(unknownThread);
  // `frictionRange` takes a class by its letter and a state of the parts by its id.
  const letter = /^friction-class-([a-e])$/.exec(id)?.[1];
  return frictionRange({ of: letter === undefined ? id : letter.toUpperCase() }).friction;
}

/** The face that turns under the head; a washer that nobody measured is the sheet's. */
function bearingOf(state: State, majorDiameterMm: number): Joint['bearing'] | undefined {
  const holeMm = numberOf(state, 'holeSize');
  const headMm = numberOf(state, 'head');
  if (state.hole === 'square') {
    return holeMm === undefined || headMm === undefined ? undefined : { outerDiameterMm: headMm, squareHoleMm: holeMm };
  }
  const holeDiameterMm = holeMm ?? majorDiameterMm + bearingHoleClearance.value;
  return { outerDiameterMm: headMm ?? holeDiameterMm + 2 * bearingRing.value, holeDiameterMm };
}

/** The whole range goes on to the seat, so that the arm is not said to sit more surely than its bolt pulls. */
function seatSearch({ lower, nominal, upper }: Limits): URLSearchParams {
  // Bounds are rounded outward, so that they still hold.
  const to = (round: (x: number) => number, forceN: number): string => String(100 * round(forceN / 100));
  return new URLSearchParams({
    press: 'force',
    force: to(Math.round, nominal),
    forceLow: to(Math.floor, lower),
    forceHigh: to(Math.ceil, upper),
  });
}

const sameTorques = (torqueNm: number): string =>
  [show(torqueNm, 'torque', 'metric'), show(torqueNm, 'torque', 'inch')].join(' = ');

/** Torque at which the bolt is used to nine tenths of its yield strength, at either end of the friction. */
function mostTorque({ thread, bearing, threadFriction }: Joint, strength: string): Limits {
  const [lower, nominal, upper] = [threadFriction.lower, threadFriction.nominal, threadFriction.upper].map(
    (friction) =>
      assemblyLimit({ thread, bearing, threadFriction: friction, bearingFriction: friction, propertyClass: strength })
        .torqueNm,
  ) as [number, number, number];
  return { lower, nominal, upper };
}

/** Use of the yield strength by a bolt of some class; undefined where the thread has no such class. */
function strengthUse(input: {
  torqueNm: number;
  tool?: string | undefined;
  joint: PreloadJoint;
  strength: string;
}): Limits | undefined {
  const { torqueNm, tool, joint, strength } = input;
  return preloadRange({ torqueNm, ...(tool ? { tool } : {}), ...joint, propertyClass: strength }).strength?.utilisation;
}

/** Says so where a bolt does not bear what the trade states for its thread. */
function beyondTrade(most: Limits, strength: string, units: BenchContext['units']): string {
  const least = Math.min(...listTradeTorques(TAPER_BOLT).map(({ minNm }) => minNm));
  if (strength === '' || most.lower >= least) return '';
  return ` A bolt marked ${strength} is sure of ${show(most.lower, 'torque', units)} only, less than any of the ranges for a square taper: fit a stronger bolt, or ask the part maker; a smaller torque presses the arm less.`;
}

/** A hand pulls with newtons, not with kilonewtons. */
const showHand = (forceN: number, units: BenchContext['units']): string =>
  units === 'metric' ? `${Math.round(forceN)} N` : show(forceN, 'force', units);

/** Paths of the library by the field that fills them. */
const fieldOf = {
  designation: 'bolt',
  pitchMm: 'bolt',
  torqueNm: 'torque',
  targetTorqueNm: 'torque',
  propertyClass: 'strength',
  'bearing.outerDiameterMm': 'head',
  'bearing.holeDiameterMm': 'holeSize',
  'bearing.squareHoleMm': 'holeSize',
  wrenchLengthMm: 'wrench',
  extensionLengthMm: 'extension',
  extensionAngleDeg: 'angle',
  of: 'friction',
};

export const torqueBench: Bench = { defaults, fieldOf, groups, answer };
