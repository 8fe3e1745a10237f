import checkFile from '../data/checks.json' with { type: 'json' };
import lossFile from '../data/losses.json' with { type: 'json' };
import scaleFile from '../data/scale.json' with { type: 'json' };
import taperFile from '../data/square-taper.json' with { type: 'json' };
import type { KINDS } from './ids.ts';
import type {
  ActionId,
  BesideId,
  CauseId,
  CheckId,
  FrequencyWord,
  JointId,
  MeasurementId,
  OutcomeOf,
  Side,
} from './types.ts';

/** A condition as the model tells them apart. */
export type KindId = (typeof KINDS)[number];

type Words = Readonly<Record<string, FrequencyWord>>;
type Bands = Readonly<Record<string, readonly [number, number]>>;

/**
 * Rows of a check by their place: `default`, or conditions, or conditions ` @ ` causes, each list parted by spaces.
 * Outcomes that a row leaves out have the word `never-say-never`.
 */
export type LikelihoodRows = Readonly<Record<string, Words>>;

/** How a reading is turned into likelihoods of outcomes. */
export interface ReadingRule {
  measurement: MeasurementId;
  check: CheckId;
  unit: string;
  usualUncertainty: number;
  min: number;
  max: number;
  bands: Bands;
  byJoint?: Readonly<Partial<Record<JointId, Bands>>>;
}

/** The data of one family of joints. */
export interface FamilyData {
  edition: string;
  joints: readonly JointId[];
  causes: Readonly<Record<CauseId, { prior: number; conditions: Readonly<Partial<Record<KindId, FrequencyWord>>> }>>;
  besides: Readonly<
    Record<
      BesideId,
      { prior: number; signs: readonly { check: CheckId; from: string; to: string; share: FrequencyWord }[] }
    >
  >;
  sides: Readonly<
    Record<
      Side,
      {
        causes: Readonly<Partial<Record<CauseId, number>>>;
        conditions: Readonly<Partial<Record<KindId, number>>>;
      }
    >
  >;
  history: {
    default: Readonly<Record<OutcomeOf<'history'>, FrequencyWord>>;
    causes: Readonly<Partial<Record<CauseId, Words>>>;
    conditions: Readonly<Partial<Record<KindId, Words>>>;
  };
  rows: Readonly<Partial<Record<CheckId, LikelihoodRows>>>;
  readings: readonly ReadingRule[];
  stopSigns: Readonly<Partial<Record<CheckId, readonly string[]>>>;
  incompatible: readonly (readonly [readonly [CheckId, string], readonly [CheckId, string]])[];
}

/** How a check gets at what it looks at. */
export type Access = 'any' | 'assembled' | 'tightening' | 'bolt-out' | 'arm-off';

/** The effort of the checks. */
export interface CheckData {
  checks: readonly {
    id: CheckId;
    minutes: number;
    access: Access;
    /** Outcomes of other checks after which this one tells nothing. */
    pointlessAfter?: Readonly<Partial<Record<CheckId, readonly string[]>>>;
  }[];
  access: Readonly<Record<Access, { minutes: number; wearMinutes: number; destroys: readonly CheckId[] }>>;
  refitMinutes: number;
}

/** The loss table. */
export interface LossData {
  doNotRideAbove: number;
  lessUrgent: readonly KindId[];
  actions: Readonly<
    Record<
      ActionId,
      {
        takesArmOff?: boolean;
        /** Answers after which the action is no answer. */
        ruledOutBy?: Readonly<Partial<Record<CheckId, readonly string[]>>>;
        /** Answers of which one is wanted before the action can be one. */
        onlyAfter?: Readonly<Partial<Record<CheckId, readonly string[]>>>;
        /** Loss by condition; `default` for those not named. */
        joint: Readonly<Partial<Record<KindId, number>>> & { default: number };
      }
    >
  >;
  besides: Readonly<
    Record<
      BesideId,
      { left: number; cured: readonly ActionId[]; needless: Readonly<Partial<Record<ActionId, number>>> }
    >
  >;
}

// JSON imports lose their literal types; the unit tests of the data check every id against ids.ts.
export const SCALE = scaleFile as Readonly<Record<FrequencyWord, number>>;
export const CHECK_DATA = checkFile as unknown as CheckData;
export const LOSSES = lossFile as LossData;
export const SQUARE_TAPER = taperFile as unknown as FamilyData;

/** What an action costs when a condition holds, in workshop minutes. */
export const jointLoss = (action: ActionId, kind: KindId): number => {
  const { joint } = LOSSES.actions[action];
  return joint[kind] ?? joint.default;
};
