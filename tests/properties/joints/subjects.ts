// Inputs of the joints beside the square taper, for their laws.

import type { Limits } from '@spindlewright/quantity';
import { cotterWedge, faceSpline, onePieceCrank, pinchClamp, splinePress } from '@spindlewright/taper';
import fc from 'fast-check';

type Range = readonly [number, number];
export type Numbers = Record<string, number>;

export interface Subject {
  run: (input: never) => object;
  ranges: Record<string, Range>;
  /** Fields that are no readings. */
  exact?: Numbers;
}

export const SUBJECTS = {
  splinePress: {
    run: splinePress,
    ranges: {
      axialForceN: [0, 40_000],
      forceToStopN: [100, 30_000],
      friction: [0, 1],
      taperPerSideDeg: [0.1, 10],
      flankHeightMm: [0.5, 4],
      engagedLengthMm: [3, 30],
      meanRadiusMm: [5, 20],
      allowablePressureMPa: [20, 300],
      carryingShare: [0.3, 1],
      gapAtStopMm: [-0.2, 1.5],
    },
    exact: { splineCount: 10 },
  },
  pinchClamp: {
    run: pinchClamp,
    ranges: {
      boltPreloadN: [0, 20_000],
      spindleDiameterMm: [10, 40],
      clampWidthMm: [5, 40],
      friction: [0, 1],
      hingeToBoltMm: [25, 60],
      hingeToAxisMm: [5, 20],
      closingForceN: [0, 5000],
      slotGapMm: [-1, 3],
      clearanceMm: [0, 0.4],
    },
    exact: { boltCount: 2 },
  },
  cotterWedge: {
    run: cotterWedge,
    ranges: {
      pressForceN: [0, 30_000],
      flatAngleDeg: [0.5, 20],
      flatFriction: [0, 0.6],
      backFriction: [0, 0.6],
      flatLengthMm: [5, 20],
      flatWidthMm: [4, 12],
      axisToFlatMm: [4, 9],
      crankTorqueNm: [0, 300],
      slackMm: [0, 0.5],
      acrossStiffnessNPerMm: [1500, 1e6],
    },
  },
  faceSpline: {
    run: faceSpline,
    ranges: {
      axialForceN: [0, 60_000],
      flankAngleDeg: [1, 60],
      outerDiameterMm: [22, 60],
      innerDiameterMm: [0, 20],
      bearingShare: [0.2, 1],
      torqueNm: [0, 400],
      bendingNm: [0, 300],
    },
  },
  onePieceCrank: {
    run: onePieceCrank,
    ranges: {
      pedalForceN: [0, 5000],
      crankLengthMm: [100, 200],
      overhangMm: [0, 150],
      barDiameterMm: [10, 40],
      yieldStrengthMPa: [100, 1500],
    },
  },
} satisfies Record<string, Subject>;

const isLimits = (value: unknown): value is Limits =>
  typeof value === 'object' && value !== null && Object.keys(value).join() === 'lower,nominal,upper';
export const limitsOf = (result: object): [string, Limits][] =>
  Object.entries(result).filter((entry): entry is [string, Limits] => isLimits(entry[1]));

/** Readings have no more than six decimals; smaller numbers have no digits left to compare. */
export const read = (value: number): number => Math.round(value * 1e6) / 1e6;

/** A share, evenly drawn, its ends among them: doubles are drawn by their digits, most of them next to 0. */
export const shareTo = (max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((place) => (max * place) / 1_000_000);

const limitsIn = ([low, high]: Range): fc.Arbitrary<Limits> =>
  fc.tuple(shareTo(1), shareTo(0.1)).map(([place, half]) => {
    const at = (share: number): number => read(low + Math.min(1, Math.max(0, share)) * (high - low));
    return { lower: at(place - half), nominal: at(place), upper: at(place + half) };
  });

export const toleranced = ({ ranges }: Subject): fc.Arbitrary<Record<string, Limits>> =>
  fc.record(Object.fromEntries(Object.entries(ranges).map(([key, range]) => [key, limitsIn(range)])));

export const call = ({ run, exact = {} }: Subject, input: object): object => run({ ...input, ...exact } as never);

/** A reading somewhere in a range, its ends among them. */
export const readingIn = ([min, max]: Range): fc.Arbitrary<number> =>
  shareTo(1).map((share) => read(min + (max - min) * share));

/** Exact readings of a joint. */
export const exactly = ({ ranges }: Pick<Subject, 'ranges'>): fc.Arbitrary<Numbers> =>
  fc.record(Object.fromEntries(Object.entries(ranges).map(([key, range]) => [key, readingIn(range)])));
