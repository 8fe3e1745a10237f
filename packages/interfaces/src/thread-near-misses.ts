import { identificationData } from './identification.generated.ts';
import type { ThreadKind } from './thread-hypotheses.ts';
import { FLANK_DEPTH_RATIO } from './thread-limits.ts';
import type { KnownThread } from './thread-list.ts';

/** A thread that starts in another and then strips it. @internal */
export interface NearMiss {
  male: KnownThread;
  female: KnownThread;
  /** `shallow`: too little of the flanks meets; `pitch`: the pitches run apart and it binds. */
  why: 'shallow' | 'pitch';
}

/** Listed threads that start with the given one, as its counterpart, and then strip. @internal */
export function nearMisses(
  thread: KnownThread,
  threads: readonly KnownThread[],
  kinds: readonly ThreadKind[],
): NearMiss[] {
  return threads.flatMap((other) =>
    other.id === thread.id
      ? []
      : kinds.flatMap((kind) => {
          const [male, female] = kind === 'external' ? [thread, other] : [other, thread];
          const why = startsThenStrips(male, female);
          return why === undefined ? [] : [{ male, female, why }];
        }),
  );
}

/**
 * Why a male thread that starts in a female one by hand strips it, by nominal sizes; undefined when it does not start, or
 * holds. The flank depth that is left is the full one less what the diameters differ; it binds when the pitches run apart
 * by more than the play of the flanks takes up. @internal
 */
export function startsThenStrips(male: KnownThread, female: KnownThread): NearMiss['why'] | undefined {
  const { leastOverlapShare, soundOverlapShare, pitchShare, engagedTurns, axialPlayMm } =
    identificationData.threads.nearMiss;
  if (male.hand !== female.hand) return undefined;
  const reasons = male.diametersMm.flatMap((m) =>
    female.diametersMm.flatMap((f) =>
      male.pitchesMm.flatMap((malePitch) =>
        female.pitchesMm.map((femalePitch) => {
          const overlap = 1 - (f.value - m.value) / (FLANK_DEPTH_RATIO * femalePitch);
          const apart = Math.abs(malePitch - femalePitch);
          // A male thread larger than the female one does not start at all.
          if (m.value > f.value || overlap < leastOverlapShare.value) return undefined;
          if (apart > pitchShare.value * femalePitch) return undefined;
          const play = axialPlayMm.value + (f.value - m.value) / Math.sqrt(3);
          if (apart * engagedTurns.value > play) return 'pitch';
          return overlap < soundOverlapShare.value ? 'shallow' : undefined;
        }),
      ),
    ),
  );
  // Where sources disagree on a size, one reading of them that holds is no clearance: a fault under any of them is told.
  return reasons.find((reason) => reason !== undefined);
}
