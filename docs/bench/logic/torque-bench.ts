import { drawPreloadRange } from '@spindlewright/drawing';
import type { Limits } from '@spindlewright/quantity';
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
import { type Bench, type BenchContext, type Block, type Group, numberOf, option, sorted, stops } from './bench.ts';
import { show, showLimits } from './units.ts';

const BOLTS = ['M8x1', 'M8x1.25', 'M10x1', 'M12x1', 'M15x1', 'M6x1', 'M5x0.8', '9/16-20 UN', '1/2-20 UN'];

const defaults = {
  bolt: 'M8x1',
  strength: '8.8',
  torque: '40',
  friction: 'greased-steel-thread',
  head: '20',
  hole: 'square',
  holeSize: '12.6',
  tool: 'click-wrench-iso-6789',
  wrench: '250',
  extension: '0',
  angle: '0',
};

// ISO 898-1 class of a bolt whose head nobody read, as a job takes it: judgement.
const USUAL_CLASS = '8.8';

type PreloadJoint = Omit<Parameters<typeof preloadRange>[0], 'torqueNm'>;

interface Joint {
  thread: ReturnType<typeof threadFor>;
  bearing: Parameters<typeof assemblyLimit>[0]['bearing'];
  threadFriction: Limits;
}

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
          options: frictionClasses
            .filter(({ max }) => max !== undefined)
            .map(({ id, min, max }) => option(id, `${words(id)} (${min} to ${max})`)),
        },
      ],
    },
    {
      title: 'The face under the head',
      fields: [
        { key: 'head', label: 'Outer diameter that bears', type: 'number', quantity: 'length' },
        {
          key: 'hole',
          label: 'Hole under it',
          type: 'radios',
          options: [option('square', 'the square of the arm'), option('round', 'round')],
        },
        {
          key: 'holeSize',
          label: state.hole === 'square' ? 'Square, across flats' : 'Hole diameter',
          type: 'number',
          quantity: 'length',
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
  const { friction } = frictionRange({ of: frictionId(state.friction ?? '') });
  if (friction === null) return [];
  const outerDiameterMm = numberOf(state, 'head') ?? 0;
  const holeMm = numberOf(state, 'holeSize') ?? 0;
  const bearing =
    state.hole === 'square' ? { outerDiameterMm, squareHoleMm: holeMm } : { outerDiameterMm, holeDiameterMm: holeMm };
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
  const limit = state.strength ? assemblyLimit({ ...exact, propertyClass: state.strength }) : undefined;
  const most = limit && mostTorque(joint, state.strength ?? '');
  const yields = range.strength === undefined ? undefined : range.strength.utilisation;
  const yieldN = state.strength
    ? propertyClass(state.strength, thread.majorDiameterMm).yieldStrengthMPa * thread.stressAreaMm2
    : undefined;
  // What the head does not say is judged for the bolt that is usual, and never taken for leave to tighten.
  const usual =
    yields === undefined ? strengthUse({ torqueNm, tool: state.tool, joint, strength: USUAL_CLASS }) : undefined;
  const breaks = yields !== undefined && yields.lower > 1;
  const tone =
    yields === undefined
      ? usual !== undefined && usual.upper > 0.9
        ? 'care'
        : 'plain'
      : yields.upper > 1
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
          ...(limit ? [{ label: 'nine tenths of yield', forceN: limit.preloadN }] : []),
          ...(yieldN ? [{ label: 'yield, pull alone', forceN: yieldN }] : []),
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
        ...(most === undefined
          ? []
          : [
              {
                label: 'No more than, for a bolt of this mark',
                value: show(most.lower, 'torque', units),
                note: `nine tenths of its yield strength where friction is lowest; where it is highest that would be ${show(most.upper, 'torque', units)}, but nobody sees which it is; the part maker’s own torque comes first`,
              },
            ]),
        { label: 'To loosen again, before it settles', value: showLimits(range.looseningTorqueNm, 'torque', units) },
        {
          label: 'Largest over smallest preload',
          value: range.tighteningFactor === null ? 'not known' : range.tighteningFactor.toFixed(2),
        },
      ],
    },
    {
      kind: 'table',
      title: 'What the trade says',
      note: `Common practice and published ranges, side by side; the part maker’s own value comes before all of them.${thread.majorDiameterMm < 8 ? '' : beyondTrade(most, state.strength ?? '', units)}`,
      head: ['for', 'range', 'source'],
      rows: listTradeTorques().map(({ joint: name, fastener, minNm, maxNm, standing, sources }) => [
        fastener === undefined || fastener === '' ? words(name) : `${words(name)}: ${fastener}`,
        minNm === maxNm || maxNm === undefined
          ? show(minNm, 'torque', units)
          : `${show(minNm, 'torque', units).replace(/\s.*/, '')} to ${show(maxNm, 'torque', units)}`,
        sources.length === 0 ? words(standing) : `${sources.join(', ')} (${words(standing)})`,
      ]),
    },
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
          href: `./seat.html?force=${Math.min(35_000, 500 * Math.round(range.preloadN.nominal / 500))}`,
        },
      ],
    },
    { kind: 'findings', findings: findings.filter(({ severity }) => severity !== 'stop') },
  ];
}

/** `frictionRange` takes a class by its letter and a state of the parts by its id. */
const frictionId = (id: string): string => {
  const letter = /^friction-class-([a-e])$/.exec(id)?.[1];
  return letter === undefined ? id : letter.toUpperCase();
};

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
function beyondTrade(most: Limits | undefined, strength: string, units: BenchContext['units']): string {
  const least = Math.min(...listTradeTorques('square-taper-bolt').map(({ minNm }) => minNm));
  if (most === undefined || most.lower >= least) return '';
  return ` A bolt marked ${strength} is sure of ${show(most.lower, 'torque', units)} only, less than any of the ranges for a square taper: fit a stronger bolt, or ask the part maker; a smaller torque presses the arm less.`;
}

/** A hand pulls with newtons, not with kilonewtons. */
const showHand = (forceN: number, units: BenchContext['units']): string =>
  units === 'metric' ? `${Math.round(forceN)} N` : show(forceN, 'force', units);

export const torqueBench: Bench = { defaults, groups, answer };
