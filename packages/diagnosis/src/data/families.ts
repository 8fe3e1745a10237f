import cottered from '../../data/families/cottered.json' with { type: 'json' };
import faceSpline from '../../data/families/face-spline.json' with { type: 'json' };
import onePiece from '../../data/families/one-piece.json' with { type: 'json' };
import spline8 from '../../data/families/spline-8.json' with { type: 'json' };
import spline10 from '../../data/families/spline-10.json' with { type: 'json' };
import spline48 from '../../data/families/spline-48.json' with { type: 'json' };
import squareTaper from '../../data/families/square-taper.json' with { type: 'json' };
import throughSpindle from '../../data/families/through-spindle.json' with { type: 'json' };
import { CAUSES, CHECK_OUTCOMES } from '../ids.ts';
import type {
  Access,
  ActionId,
  BesideId,
  CauseId,
  CheckId,
  FamilyId,
  FrequencyWord,
  JointId,
  KindId,
  MeasurementId,
  OutcomeOf,
  Side,
} from '../types.ts';

/** Words by outcome, kind or whatever they are about. */
export type Words = Readonly<Record<string, FrequencyWord>>;
/** Lower and upper end by outcome. */
type Bands = Readonly<Record<string, readonly [number, number]>>;

/** Why a number is as it is. */
export interface Reasoned {
  reason: string;
  sources?: readonly string[];
}

/** Answers by check. */
export type AnswerSets = Readonly<Partial<Record<CheckId, readonly string[]>>>;

/** One row of likelihoods. */
interface RowSource extends Reasoned {
  words: Words;
}

interface CauseSource extends Reasoned {
  prior: number;
  conditions: Readonly<Partial<Record<KindId, FrequencyWord>>>;
}

interface BesideSource extends Reasoned {
  prior: number;
  signs: readonly { check: CheckId; from: string; to: string; share: FrequencyWord }[];
}

export interface SideSource extends Reasoned {
  causes: Readonly<Partial<Record<CauseId, number>>>;
  conditions: Readonly<Partial<Record<KindId, number>>>;
}

interface ReadingSource extends Reasoned {
  bands: Bands;
  byJoint?: Readonly<Partial<Record<JointId, Bands>>>;
}

/** When an action can be one at all. */
export interface Gate {
  /** Answers after which the action is no answer. */
  ruledOutBy?: AnswerSets;
  /** Answers of which one is wanted before the action can be one. */
  onlyAfter?: AnswerSets;
}

/** A file of `data/families`: the base in full, every other family by what differs from its base. `null` takes away. */
interface FamilySource {
  id: FamilyId;
  title: string;
  base?: FamilyId;
  joints: readonly JointId[];
  summary: string;
  /** Conditions that cannot be at this family: dropped from every cause. */
  without?: readonly KindId[];
  causes?: Readonly<Partial<Record<CauseId, CauseSource | null>>>;
  besides?: Readonly<Partial<Record<BesideId, BesideSource>>>;
  sides?: Readonly<Record<Side, SideSource>>;
  history?: {
    default: Reasoned & { words: Readonly<Record<OutcomeOf<'history'>, FrequencyWord>> };
    causes: Readonly<Partial<Record<CauseId, RowSource>>>;
    conditions: Readonly<Partial<Record<KindId, RowSource>>>;
  };
  /**
   * Rows of a check by their place: `default`, or conditions, or conditions ` @ ` causes, each list parted by spaces.
   * Outcomes that a row leaves out have the word `never-say-never`. `"*": null` takes away all rows of the base.
   */
  rows: Readonly<Partial<Record<CheckId, Readonly<Record<string, RowSource | null>> | null>>>;
  readings?: Readonly<Partial<Record<MeasurementId, ReadingSource | null>>>;
  stopSigns?: Readonly<Partial<Record<CheckId, readonly string[] | null>>>;
  incompatible?: readonly (readonly [readonly [CheckId, string], readonly [CheckId, string]])[];
  /** Checks that can be made but say nothing here: left out without asking whether the joint is what it is taken for. */
  silent?: readonly CheckId[];
  checks?: Readonly<Partial<Record<CheckId, { minutes?: number; access?: Access }>>>;
  access?: Readonly<Partial<Record<Access, { minutes?: number; wearMinutes?: number; destroys?: readonly CheckId[] }>>>;
  gates?: Readonly<Partial<Record<ActionId, Gate>>>;
  noActions?: readonly ActionId[];
  losses?: Readonly<Partial<Record<ActionId, Readonly<Partial<Record<KindId, number>>>>>>;
}

/** A row with the family that it is written down for. */
export interface ResolvedRow extends RowSource {
  from: FamilyId;
}

/** A family with everything that it takes over from its base. */
export interface ResolvedFamily {
  id: FamilyId;
  joints: readonly JointId[];
  causes: Readonly<Partial<Record<CauseId, CauseSource>>>;
  besides: Readonly<Record<BesideId, BesideSource>>;
  sides: Readonly<Record<Side, SideSource>>;
  history: NonNullable<FamilySource['history']>;
  rows: Readonly<Partial<Record<CheckId, Readonly<Record<string, ResolvedRow>>>>>;
  readings: Readonly<Partial<Record<MeasurementId, ReadingSource>>>;
  stopSigns: AnswerSets;
  incompatible: NonNullable<FamilySource['incompatible']>;
  silent: readonly CheckId[];
  checks: NonNullable<FamilySource['checks']>;
  access: NonNullable<FamilySource['access']>;
  gates: NonNullable<FamilySource['gates']>;
  noActions: readonly ActionId[];
  losses: NonNullable<FamilySource['losses']>;
}

// JSON imports lose their literal types; the unit tests of the data check every id against ids.ts.
/** The files as they are. */
export const FAMILY_FILES = {
  'square-taper': squareTaper,
  'spline-10': spline10,
  'spline-8': spline8,
  'spline-48': spline48,
  'face-spline': faceSpline,
  'through-spindle': throughSpindle,
  cottered,
  'one-piece': onePiece,
} as unknown as Readonly<Record<FamilyId, FamilySource>>;

/** A family and all that it takes over. */
export function resolveFamily(id: FamilyId): ResolvedFamily {
  const own = FAMILY_FILES[id];
  const base = own.base === undefined ? undefined : resolveFamily(own.base);
  const { history = base?.history, sides = base?.sides } = own;
  if (history === undefined || sides === undefined) throw new Error(`${id}: a family without base needs everything`);
  const rows = mergedRows(own, base);
  const causes = Object.fromEntries(
    CAUSES.flatMap((cause) => {
      const entry = own.causes?.[cause] === undefined ? base?.causes[cause] : own.causes[cause];
      const left = Object.entries(entry?.conditions ?? {}).filter(([kind]) => !own.without?.includes(kind as KindId));
      return entry && left.length > 0 ? [[cause, { ...entry, conditions: Object.fromEntries(left) }]] : [];
    }),
  );
  const applies = ([check]: [string, unknown]): boolean => Object.hasOwn(rows, check);
  return {
    id,
    joints: own.joints,
    causes,
    besides: { ...base?.besides, ...own.besides } as ResolvedFamily['besides'],
    sides,
    history,
    rows,
    readings: without({ ...base?.readings, ...own.readings }),
    stopSigns: Object.fromEntries(Object.entries(without({ ...base?.stopSigns, ...own.stopSigns })).filter(applies)),
    incompatible: own.incompatible ?? base?.incompatible ?? [],
    silent: own.silent ?? [],
    checks: { ...base?.checks, ...own.checks },
    access: { ...base?.access, ...own.access },
    gates: { ...base?.gates, ...own.gates },
    noActions: own.noActions ?? base?.noActions ?? [],
    losses: { ...base?.losses, ...own.losses },
  };
}

const without = <T>(entries: Readonly<Record<string, T | null | undefined>>): Record<string, T> =>
  Object.fromEntries(Object.entries(entries).filter((entry): entry is [string, T] => entry[1] != null));

function mergedRows(own: FamilySource, base: ResolvedFamily | undefined): ResolvedFamily['rows'] {
  const merged: Partial<Record<CheckId, Record<string, ResolvedRow>>> = {};
  for (const check of Object.keys(CHECK_OUTCOMES) as CheckId[]) {
    const change = own.rows[check];
    if (change === null) continue;
    const fresh = Object.fromEntries(
      Object.entries(change ?? {}).map(([key, row]) => [key, row && { ...row, from: own.id }]),
    );
    const kept = change !== undefined && Object.hasOwn(change, '*') ? {} : base?.rows[check];
    const all = without({ ...kept, ...fresh });
    if (Object.keys(all).length > 0) merged[check] = all;
  }
  return merged;
}
