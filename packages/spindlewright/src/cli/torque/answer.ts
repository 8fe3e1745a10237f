import {
  createFinding,
  type Finding,
  hardLimits,
  isDomainError,
  type Limits,
  limitsOf,
  type Measurand,
  parseQuantity,
} from '@spindlewright/quantity';
import { type PreloadRange, preloadRange, type Thread, threadFor, torqueToHold } from '@spindlewright/torque';
import { listTradeTorques } from '@spindlewright/torque/data';
import { jobDefaults } from '../../defaults.ts';
import { messages } from '../../messages/en.ts';
import { TOOL } from '../../press-plan.ts';
import type { WrenchPlan } from '../../tightening-part.ts';
import type { Parsed } from '../parse.ts';
import { readMeasurand } from '../read-measurand.ts';
import { Refusal } from '../refusal.ts';
import { type LUBRICATIONS, WRENCH_UNITS } from '../verbs/torque.ts';
import { jointOfThread } from './joint-of-thread.ts';
import { leverRatioOf, settingOf, type WrenchAtHand, wrenchAtHand } from './wrench.ts';

/** What a torque and a thread come to. @internal */
export interface TorqueAnswer {
  format: 'spindlewright-torque-1';
  asked: 'target' | 'read' | 'hold';
  thread: string;
  hand: Thread['hand'];
  friction: { thread: Limits; head: Limits };
  bearing: { outerDiameterMm: number; holeDiameterMm: number };
  tool: string;
  /** Torque at the bolt: what is aimed at or was read, with what the tool makes of it. */
  torqueNm: Limits;
  /** Preload that has to be there at the least, when that was asked. */
  neededPreloadN?: number;
  wrench: WrenchPlan;
  preloadN: Limits;
  looseningTorqueNm: Limits;
  strength?: { propertyClass: string } & NonNullable<PreloadRange['strength']>;
  trade?: {
    joint: string;
    lowerNm: number;
    upperNm: number;
    state: 'below' | 'within' | 'above';
    rows: readonly { id: string; lowerNm: number; upperNm: number; sources: readonly string[] }[];
  };
  /** What was taken because no flag said it. */
  assumed: readonly string[];
  cautions: readonly string[];
  findings: readonly Finding[];
  sources: readonly string[];
  dataEdition: string;
}

const CAUTIONS = [
  "The part maker's value comes first: look it up, and where it differs from these figures follow it.",
  'What a tightening makes is not what stays: settling and riding take some of it away. Look again after the first ride.',
  'A qualified mechanic has to judge bolt, thread and arm; these figures have not seen them.',
];
const READ_CAUTION =
  'This holds for a torque that was read while the bolt still turned tighter. A bolt that stands needs more to start, and one that was loosened tells nothing of its preload.';

/** Works out what the flags ask. @internal */
export function torqueAnswer(parsed: Parsed): TorqueAnswer {
  const modes = (['target', 'read', 'hold'] as const).filter((name) => parsed.text(name) !== undefined);
  const [asked] = modes;
  if (asked === undefined || modes.length > 1) {
    throw new Refusal('one of --target TORQUE, --read TORQUE, --hold FORCE (see "spindlewright torque --help")');
  }
  const given = parsed.text(asked) ?? '';
  const designation = parsed.text('thread');
  if (designation === undefined) throw new Refusal('--thread is missing, such as M8x1');
  const thread = threadFor(designation);
  const assumed: string[] = [];
  const friction = frictionOf(parsed, assumed);
  const bearing = bearingOf(parsed, thread, assumed);
  const tool = parsed.text('tool') ?? TOOL;
  if (parsed.text('tool') === undefined) assumed.push('a click wrench in order, as ISO 6789 allows it to deviate');
  const propertyClass = parsed.text('class');
  const joint = {
    tool,
    thread,
    threadFriction: friction.thread,
    bearingFriction: friction.head,
    bearing,
    ...(propertyClass === undefined ? {} : { propertyClass }),
  };
  const wrench = wrenchAtHand(parsed, unitOf(parsed, given));
  const neededPreloadN = asked === 'hold' ? hardLimits(readMeasurand('--hold', given, 'N')).nominal : undefined;
  const atBolt =
    neededPreloadN === undefined
      ? torqueOf(asked, given, wrench)
      : torqueToHold({ neededPreloadN, ...joint }).settingNm;
  const range = preloadRange({ torqueNm: atBolt, ...joint });
  const unmarked = propertyClass === undefined ? unmarkedBolt(atBolt, joint) : [];
  const { plan, findings: wrenchFindings } = settingOf(hardLimits(atBolt).nominal, wrench);
  const trade = tradeOf(parsed.text('joint') ?? jointOfThread(thread), hardLimits(atBolt).nominal);
  return {
    format: 'spindlewright-torque-1',
    asked,
    thread: thread.designation,
    hand: thread.hand,
    friction,
    bearing,
    tool,
    torqueNm: range.torqueNm,
    ...(neededPreloadN === undefined ? {} : { neededPreloadN }),
    wrench: plan,
    preloadN: range.preloadN,
    looseningTorqueNm: range.looseningTorqueNm,
    ...(range.strength === undefined || propertyClass === undefined
      ? {}
      : { strength: { propertyClass, ...range.strength } }),
    ...(trade === undefined ? {} : { trade }),
    assumed,
    cautions: [...CAUTIONS, ...(asked === 'read' ? [READ_CAUTION] : [])],
    findings: [...unmarked, ...range.findings, ...(asked === 'read' ? [] : wrenchFindings)],
    sources: [...new Set([...range.sources, ...(trade?.rows ?? []).flatMap(({ sources }) => sources)])].sort(),
    dataEdition: range.dataEdition,
  };
}

/** ISO 898-1 has no class above it. */
const STRONGEST_CLASS = '12.9';

/** Where the mark on the head was not told: whether a usual bolt of this thread bears it, and whether any does. */
function unmarkedBolt(torqueNm: Measurand, joint: Omit<Parameters<typeof preloadRange>[0], 'torqueNm'>): Finding[] {
  const use = (propertyClass: string): Limits | undefined =>
    preloadRange({ torqueNm, ...joint, propertyClass }).strength?.utilisation;
  const say = (code: 'beyond-any-bolt' | 'head-mark-decides', values: Finding['values']): Finding[] => [
    createFinding({
      code,
      severity: code === 'beyond-any-bolt' ? 'stop' : 'caution',
      template: messages[code],
      values,
      sources: ['iso-898-1-quoted'],
    }),
  ];
  const strongest = use(STRONGEST_CLASS);
  if (strongest !== undefined && strongest.lower > 1) {
    return say('beyond-any-bolt', { propertyClass: STRONGEST_CLASS, utilisationPercent: 100 * strongest.lower });
  }
  const usualClass = jobDefaults.unreadPropertyClass.value.toFixed(1);
  const usual = use(usualClass);
  if (usual === undefined || usual.nominal <= 1) return [];
  return say('head-mark-decides', {
    propertyClass: usualClass,
    utilisationPercent: 100 * usual.nominal,
    highestPercent: 100 * usual.upper,
  });
}

/** A target is one setting, so of a range its middle is set; a reading keeps its width. */
function torqueOf(asked: 'target' | 'read' | 'hold', text: string, wrench: WrenchAtHand): Measurand {
  const given = hardLimits(readMeasurand(`--${asked}`, text, 'Nm'));
  if (asked === 'target') return given.nominal;
  const ratio = leverRatioOf(wrench);
  return { lower: given.lower * ratio, nominal: given.nominal * ratio, upper: given.upper * ratio };
}

/** The unit of the wrench: named, or that of the torque. */
function unitOf(parsed: Parsed, given: string): WrenchPlan['unit'] {
  const named = WRENCH_UNITS.find((unit) => unit === parsed.text('unit'));
  if (named !== undefined) return named;
  if (parsed.text('hold') !== undefined) return 'Nm';
  // What stands behind the last digit is the unit; one that cannot be read is refused where the torque itself is.
  try {
    const { unit } = parseQuantity(`1 ${given.replace(/^.*\d/s, '')}`);
    return WRENCH_UNITS.find((own) => own === unit) ?? 'Nm';
  } catch (error) {
    if (!isDomainError(error)) throw error;
    return 'Nm';
  }
}

function frictionOf(parsed: Parsed, assumed: string[]): TorqueAnswer['friction'] {
  const text = parsed.text('friction');
  const state = parsed.text('lubrication') as (typeof LUBRICATIONS)[number] | undefined;
  if (text !== undefined && state !== undefined) throw new Refusal('--friction or --lubrication, one of them');
  if (text === undefined && state === undefined) {
    assumed.push('thread and head lubricated or dry, since no flag says: say --lubrication to narrow the range');
  }
  const { lubricatedThread, dryThread, unknownThread } = jobDefaults;
  const thread =
    text === undefined
      ? limitsOf({ lubricated: lubricatedThread, dry: dryThread, unknown: unknownThread }[state ?? 'unknown'])
      : hardLimits(readMeasurand('--friction', text));
  const head = parsed.text('head-friction');
  return { thread, head: head === undefined ? thread : hardLimits(readMeasurand('--head-friction', head)) };
}

/** The size at which the ring under the head was judged. */
const JUDGED_AT_MM = 8;

function bearingOf(parsed: Parsed, thread: Thread, assumed: string[]): TorqueAnswer['bearing'] {
  const { bearingHoleClearance, bearingRing } = jobDefaults;
  const holeDiameterMm = round(thread.majorDiameterMm + bearingHoleClearance.value);
  const text = parsed.text('head');
  if (text !== undefined) {
    return { outerDiameterMm: hardLimits(readMeasurand('--head', text, 'mm')).nominal, holeDiameterMm };
  }
  // Judged for a crank bolt of 8 mm; a head grows with its thread.
  const outerDiameterMm = round(holeDiameterMm + (2 * bearingRing.value * thread.majorDiameterMm) / JUDGED_AT_MM);
  assumed.push(`a face under the head of ${holeDiameterMm} to ${outerDiameterMm} mm: judgement, give --head`);
  return { outerDiameterMm, holeDiameterMm };
}

const round = (value: number): number => Math.round(10 * value) / 10;

function tradeOf(joint: string | undefined, torqueNm: number): TorqueAnswer['trade'] {
  if (joint === undefined) return undefined;
  const rows = listTradeTorques(joint).map(({ id, minNm, maxNm, sources }) => ({
    id,
    lowerNm: minNm,
    upperNm: maxNm,
    sources,
  }));
  const lowerNm = Math.min(...rows.map((row) => row.lowerNm));
  const upperNm = Math.max(...rows.map((row) => row.upperNm));
  const state = torqueNm < lowerNm ? 'below' : torqueNm > upperNm ? 'above' : 'within';
  return { joint, lowerNm, upperNm, state, rows };
}
