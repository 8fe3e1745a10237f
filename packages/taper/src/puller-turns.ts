import { checkInput, type Finding, hardLimits, type Limits, type Measurand } from '@spindlewright/quantity';
import { find } from './find.ts';
import { bounds } from './interval.ts';
import { keepingMessages as messages } from './messages/keeping.ts';

/** What a puller has to hold on to. */
export interface PullerTurns {
  /** Turns of thread that carry the release force, in full turns and parts; at least 0. */
  neededTurns: Limits;
  /** Force at which the weaker thread strips with the turns that are in, in N. */
  stripForceN: number;
  /** Which thread gives way first. */
  stripsFirst: 'arm' | 'puller';
  /** The turns that are in hold the largest release force. */
  holds: boolean;
  /** What to do first, and a stop where the thread would give way. */
  findings: Finding[];
}

/**
 * Gives the turns that a puller needs in the arm's thread, and which of the two threads would strip first.
 *
 * @remarks
 * Formula: turns = release force/(force that strips one turn of the weaker thread); the strip force grows with the turns.
 *
 * Validity: turns of full depth; the first and the last are not. Even load over the turns, which long engagements do not
 * have. A dished or missing start of the thread counts as turns that are not in.
 *
 * Accuracy: as good as the forces put in: the release force by {@link pressFit} lies 4 to 6 % above finite elements, and with
 * friction of 0.10 or 0.30 it differs four times.
 *
 * @param input - `releaseForceN` 0 to 1000000 N; `armThreadForcePerTurnN` and `pullerThreadForcePerTurnN`, force that strips
 * one turn, 1 to 1000000 N; `engagedTurns` that are in, 0.1 to 100.
 * @returns Turns needed as limits, strip force in N, the weaker part.
 * @throws {@link DomainError} for unknown keys and values outside those ranges.
 * @example
 * ```ts
 * import { pullerTurns } from '@spindlewright/taper';
 * const pull = pullerTurns({
 *   releaseForceN: { lower: 9000, nominal: 12000, upper: 49000 },
 *   armThreadForcePerTurnN: 8000, pullerThreadForcePerTurnN: 15000, engagedTurns: 8,
 * });
 * [pull.neededTurns.upper.toFixed(1), pull.stripsFirst, pull.holds]; // => ['6.1', 'arm', true]
 * ```
 * @see Statics.
 */
export function pullerTurns(input: {
  releaseForceN: Measurand;
  armThreadForcePerTurnN: number;
  pullerThreadForcePerTurnN: number;
  engagedTurns: number;
}): PullerTurns {
  const perTurn = { type: 'number', unit: 'N', min: 1, max: 1e6 } as const;
  checkInput({
    where: 'pullerTurns',
    value: input,
    fields: {
      releaseForceN: { type: 'measurand', unit: 'N', min: 0, max: 1e6 },
      armThreadForcePerTurnN: perTurn,
      pullerThreadForcePerTurnN: perTurn,
      engagedTurns: { type: 'number', unit: 'turns', min: 0.1, max: 100 },
    },
  });
  const { armThreadForcePerTurnN, pullerThreadForcePerTurnN, engagedTurns } = input;
  const release = hardLimits(input.releaseForceN);
  const weaker = Math.min(armThreadForcePerTurnN, pullerThreadForcePerTurnN);
  const stripsFirst = armThreadForcePerTurnN <= pullerThreadForcePerTurnN ? 'arm' : 'puller';
  const stripForceN = weaker * engagedTurns;
  const neededTurns = bounds((corner) => corner(release) / weaker);
  const holds = stripForceN >= release.upper;
  const findings = [find(messages, 'puller-in-all-the-way', 'caution', { neededTurns: neededTurns.upper })];
  if (!holds) {
    const values = { part: stripsFirst, stripForceN, engagedTurns, releaseForceN: release.upper };
    findings.unshift(find(messages, 'puller-thread-strips', 'stop', values));
  }
  return { neededTurns, stripForceN, stripsFirst, holds, findings };
}
