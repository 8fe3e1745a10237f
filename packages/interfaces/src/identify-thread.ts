import type { Finding } from '@spindlewright/quantity';
import { dataEdition } from './data-edition.ts';
import { identificationData } from './identification.generated.ts';
import { makeFinding } from './make-finding.ts';
import { nextThreadReadings } from './next-thread-reading.ts';
import { UNLISTED } from './square-hypotheses.ts';
import { type ThreadHypothesis, type ThreadKind, threadHypotheses } from './thread-hypotheses.ts';
import { type ThreadReadings, threadJoint } from './thread-likelihood.ts';
import { type KnownThread, threadList } from './thread-list.ts';
import { type NearMiss, nearMisses } from './thread-near-misses.ts';
import { type IdentifyThreadInput, threadReadings } from './thread-readings.ts';

/** One thread that the readings may belong to. */
export interface ThreadCandidate {
  /** Designation and hand as an id, or `unlisted` for any thread without a record. */
  id: string;
  /** Probability, 0 to 1; over all candidates they sum to 1. */
  probability: number;
  /** Designation, such as `M22x1`; absent for an unlisted one. */
  designation?: string;
  /** Hand; absent for an unlisted one. */
  hand?: 'right' | 'left';
  /** What it is used for. */
  uses: readonly string[];
  /** Ids of the records that hold it. */
  records: readonly string[];
  /** How that probability is shared among published sizes and the kinds of thread. */
  sets: readonly ThreadSetProbability[];
}

/** The share of one published size, outside or inside, in the probability of its thread. */
export interface ThreadSetProbability {
  /** Name of the size. */
  set: string;
  /** Whether the thread would stand outside or inside. */
  kind: ThreadKind;
  /** Probability, 0 to 1. */
  probability: number;
}

/** What a thread may be, by its readings. */
export interface ThreadIdentification {
  /** Every candidate, likeliest first; `unlisted` is always among them. */
  candidates: readonly ThreadCandidate[];
  /** The one reading to take next. */
  next: {
    /** What to read. */
    reading: 'diameter' | 'pitch' | 'hand' | 'trial-fit';
    /** Chance of naming the right thread after it, 0 to 1; absent for a trial fit. */
    expectedProbability?: number;
    /** How, in a sentence. */
    message: string;
  };
  /** Everything worth saying; near-misses that start and then strip are named. */
  findings: readonly Finding[];
  /** What holds whatever the answer. */
  cautions: readonly Finding[];
  /** Ids in the register of sources. */
  sources: readonly string[];
  /** Edition of the data. */
  dataEdition: string;
}

/**
 * Ranks the threads around a crank joint that readings of diameter, pitch and hand may belong to.
 *
 * @remarks
 * Formula: Bayes over every listed thread, each size that sources give for it, outside and inside, and over an unlisted
 * thread. The crests of an external thread lie within the limits 6g below the nominal size, those of an internal one
 * within 6H above the minor diameter d - 1.0825 P; a reading is normal about them with its own variance, that of the limits
 * (width/sqrt 12) and a judged spread. A jaw near the end of the thread may bear on the chamfer, where an external thread
 * reads small and an internal one large. Each reading may be a slip, with a stated probability. `next` is the reading
 * with the largest expected probability of naming the right thread.
 *
 * Validity: diameters of 4 to 60 mm, pitches of 0.2 to 6 mm. Threads that are not metric are given the same limits with a
 * wider spread. `unlisted` never has probability 0, so no answer is certain.
 *
 * Accuracy: that of the limits and judgements in the data (`identificationData.threads`). How far its probabilities can be
 * believed stands on the validation page "identification".
 *
 * @param input - `diameterMm` (mm) with `atMm`, the plane in which the jaw bore (mm from the end of the thread inward);
 * `pitchMm` (mm) or `threadsPerInch`; each a number, limits or a value with standard uncertainty; `hand`; `kind`.
 * @returns `candidates` (probabilities 0 to 1, summing to 1), `next`, `findings`, `cautions`, `sources`, `dataEdition`.
 * @throws {@link DomainError} without diameter and pitch, for both a pitch and a count of threads, a plane without a
 * diameter, a pitch beyond a third of the diameter, an unknown key or a number out of range.
 * @example
 * ```ts
 * import { identifyThread } from '@spindlewright/interfaces';
 * const pedal = identifyThread({ diameterMm: 14.2, pitchMm: 1.27, hand: 'left', kind: 'external' });
 * pedal.candidates[0]?.designation; // => '9/16 in x 20 tpi'
 * identifyThread({ diameterMm: 21.1, kind: 'internal' }).candidates[0]?.id; // => 'm22x1'
 * ```
 * @see Limits: source `iso-68-1` for the profile; ISO 965-1 as remembered, see `identificationData.threads.limits`.
 */
export function identifyThread(input: IdentifyThreadInput): ThreadIdentification {
  const { readings, kinds, assumed } = threadReadings(input);
  const threads = threadList();
  const hypotheses = threadHypotheses(threads, kinds);
  const candidates = candidatesOf(threads, hypotheses, readings);
  const [best] = candidates;
  const probability = best?.probability ?? 0;
  return {
    candidates,
    next: nextOf(hypotheses, readings, probability),
    findings: [
      ...(best?.id === UNLISTED ? [makeFinding('probably-unlisted-thread', 'caution')] : []),
      ...(probability < identificationData.convincingProbability.value
        ? [makeFinding('cannot-tell-threads-apart', 'caution', { probability })]
        : []),
      ...nearMissesOf(candidates, threads).map(nearMissFinding),
      ...(assumed ? [makeFinding('thread-uncertainty-assumed', 'note', assumedValues())] : []),
    ],
    cautions: [makeFinding('try-by-hand', 'caution'), makeFinding('follow-maker', 'caution')],
    sources: [...new Set(hypotheses.flatMap(({ sources }) => sources))].sort(),
    dataEdition,
  };
}

function candidatesOf(
  threads: readonly KnownThread[],
  hypotheses: readonly ThreadHypothesis[],
  readings: ThreadReadings,
): ThreadCandidate[] {
  const joints = hypotheses.map((hypothesis) => threadJoint(hypothesis, readings));
  const total = joints.reduce((sum, joint) => sum + joint, 0);
  return [...new Set(hypotheses.map(({ id }) => id))]
    .map((id) => {
      const thread = threads.find((entry) => entry.id === id);
      const sets = hypotheses.flatMap(({ id: own, set, kind }, index) =>
        own === id ? [{ set, kind, probability: (joints[index] ?? 0) / total }] : [],
      );
      return {
        id,
        probability: sets.reduce((sum, set) => sum + set.probability, 0),
        ...(thread === undefined ? {} : { designation: thread.designation, hand: thread.hand }),
        uses: thread?.uses ?? [],
        records: thread?.records ?? [],
        sets: sets.sort((a, b) => b.probability - a.probability),
      };
    })
    .sort((a, b) => b.probability - a.probability);
}

function nextOf(
  hypotheses: readonly ThreadHypothesis[],
  readings: ThreadReadings,
  now: number,
): ThreadIdentification['next'] {
  const { nextReading } = identificationData.threads;
  const [option] = nextThreadReadings(hypotheses, readings);
  if (option === undefined || option.expectedProbability - now < identificationData.nextReading.worthwhileGain.value) {
    return { reading: 'trial-fit', message: makeFinding('next-thread-trial', 'note').message };
  }
  const { reading, expectedProbability } = option;
  const gain = { now, afterwards: expectedProbability };
  const asked =
    reading === 'hand'
      ? makeFinding('next-hand', 'note', gain)
      : reading === 'pitch'
        ? makeFinding('next-pitch', 'note', { ...gain, sizeMm: nextReading.pitchMm.value })
        : makeFinding('next-diameter', 'note', {
            ...gain,
            sizeMm: nextReading.diameterMm.value,
            planeRatio: nextReading.planeRatio.value,
          });
  return { reading, expectedProbability, message: asked.message };
}

/** Near-misses of every candidate worth naming, as the kind that it would be; each pair once. */
function nearMissesOf(candidates: readonly ThreadCandidate[], threads: readonly KnownThread[]): NearMiss[] {
  const least = identificationData.threads.nearMiss.worthNaming.value;
  const all = candidates.flatMap(({ id, sets }) => {
    const thread = threads.find((entry) => entry.id === id);
    const kinds = (['external', 'internal'] as const).filter(
      (kind) => sets.reduce((sum, set) => sum + (set.kind === kind ? set.probability : 0), 0) >= least,
    );
    return thread === undefined ? [] : nearMisses(thread, threads, kinds);
  });
  const pairOf = ({ male, female }: NearMiss): string => `${male.id} ${female.id}`;
  return all.filter((miss, index) => all.findIndex((other) => pairOf(other) === pairOf(miss)) === index);
}

function nearMissFinding({ male, female, why }: NearMiss): Finding {
  const values = { male: nameOf(male), female: nameOf(female) };
  const sources = [...new Set([...male.sources, ...female.sources])].sort();
  return why === 'pitch'
    ? makeFinding('starts-then-binds', 'caution', values, sources)
    : makeFinding('starts-then-strips', 'caution', values, sources);
}

const nameOf = ({ designation, hand }: KnownThread): string =>
  hand === 'left' ? `${designation}, left-hand` : designation;

function assumedValues(): Record<string, number> {
  const { externalDiameterMm, internalDiameterMm, planeMm, pitchMm, threadsPerInch } =
    identificationData.threads.assumedUncertainty;
  return {
    externalDiameterMm: externalDiameterMm.value,
    internalDiameterMm: internalDiameterMm.value,
    planeMm: planeMm.value,
    atMm: identificationData.threads.assumedPlaneMm.value,
    pitchMm: pitchMm.value,
    threadsPerInch: threadsPerInch.value,
  };
}
