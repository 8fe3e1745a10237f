import { identificationData } from './identification.generated.ts';
import { UNLISTED } from './square-hypotheses.ts';
import { crestLimits, FLANK_DEPTH_RATIO } from './thread-limits.ts';
import type { KnownThread } from './thread-list.ts';

/** One way in which the thread could be made; without a diameter it could have any. @internal */
export interface ThreadHypothesis {
  id: string;
  set: string;
  kind: ThreadKind;
  hand?: 'right' | 'left';
  prior: number;
  /** Diameter over or between the crests, in mm. */
  diameterMm?: { mean: number; deviation: number };
  /** Pitch in mm; the deviation is 0 where a source gives it. */
  pitchMm: { mean: number; deviation: number };
  sources: readonly string[];
}

/** Whether the thread stands outside, as on a bolt, or inside, as in a nut. */
export type ThreadKind = 'external' | 'internal';

/** All hypotheses over a list: each designation weighs the same, in it each hand, each diameter and each kind. @internal */
export function threadHypotheses(threads: readonly KnownThread[], kinds: readonly ThreadKind[]): ThreadHypothesis[] {
  const { unlistedProbability, unlistedPitchMm, unlistedPitchSpreadMm } = identificationData.threads;
  const designations = new Set(threads.map(({ designation }) => designation)).size;
  return [
    ...threads.flatMap((thread) => {
      const hands = threads.filter(({ designation }) => designation === thread.designation).length;
      const share = (1 - unlistedProbability.value) / (designations * hands);
      return waysOf(thread, kinds).map((way) => ({ ...way, prior: share * way.prior }));
    }),
    ...kinds.map((kind) => ({
      id: UNLISTED,
      set: UNLISTED,
      kind,
      prior: unlistedProbability.value / kinds.length,
      pitchMm: { mean: unlistedPitchMm.value, deviation: unlistedPitchSpreadMm.value },
      sources: [],
    })),
  ];
}

function waysOf(thread: KnownThread, kinds: readonly ThreadKind[]): ThreadHypothesis[] {
  const { spread, unstatedPitchMm, unstatedPitchSpreadMm } = identificationData.threads;
  const pitches =
    thread.pitchesMm.length > 0
      ? thread.pitchesMm.map((mean) => ({ mean, deviation: 0 }))
      : [{ mean: unstatedPitchMm.value, deviation: unstatedPitchSpreadMm.value }];
  const own = thread.metric ? spread.metricMm.value : spread.otherMm.value;
  return kinds.flatMap((kind) =>
    thread.diametersMm.flatMap(({ value, set }) =>
      pitches.map((pitchMm) => {
        const { lower, upper } = crestLimits({ nominalDiameterMm: value, pitchMm: pitchMm.mean, kind });
        const ofPitch = kind === 'internal' ? FLANK_DEPTH_RATIO * pitchMm.deviation : 0;
        return {
          id: thread.id,
          set,
          kind,
          hand: thread.hand,
          prior: 1 / (kinds.length * thread.diametersMm.length * pitches.length),
          diameterMm: {
            mean: (lower + upper) / 2,
            deviation: Math.hypot((upper - lower) / Math.sqrt(12), own, ofPitch),
          },
          pitchMm,
          sources: thread.sources,
        };
      }),
    ),
  );
}
