import { checkInput, type Finding } from '@spindlewright/quantity';
import { find } from './find.ts';
import { boltMessages } from './messages/bolt.ts';
import { forceSpec } from './shapes.ts';

// The finest standard pitch (ISO 261) is 0.2 mm; a pitch near 0 would make the turns run out of numbers.
/** Domain of the pitch of a bolt. @internal */
export const pitchSpec = { type: 'number', unit: 'mm', min: 0.2, max: 5 } as const;

/** How far a bolt turns while it presses an arm on. */
export interface BoltTurns {
  /** Turns from snug to the full force; at least 0. */
  boltTurns: number;
  /** Turns to the same force when the bolt has met the spindle end and nothing moves; at least 0. */
  solidTurns: number;
  /** The half-turn warning. */
  findings: Finding[];
}

/**
 * Gives the turns of the bolt between snug and the full axial force, and those of a bolt that has gone solid.
 *
 * @remarks
 * Formula: turns = (travel + F/k)/pitch, F/k the stretch of the bolt; solid: F/(k pitch).
 *
 * Validity: one bolt, elastic. Slack in thread or washer adds to the count before snug, not after. Few turns before the
 * torque means that the bolt has met the spindle end or the arm its shoulder. Where a sound press takes no more than half a
 * turn, or a solid bolt no less, the rule of half a turn tells nothing, and the finding says so.
 *
 * Accuracy: exact arithmetic; as good as the travel and the stiffness put in (travel: see {@link pressFit}).
 *
 * @param input - `travelMm` 0 to 50 mm; `axialForceN` 0 to 200000 N; `boltStiffnessNPerMm` 1000 to 10000000 N/mm, of
 * the bolt and all it clamps, in series; `boltPitchMm` 0.2 to 5 mm.
 * @returns Turns, both at least 0, and the warning that goes with them.
 * @throws {@link DomainError} for unknown keys and values outside those ranges.
 * @example
 * ```ts
 * import { boltTurns } from '@spindlewright/taper';
 * const count = boltTurns({ travelMm: 0.8, axialForceN: 12000, boltStiffnessNPerMm: 200000, boltPitchMm: 1 });
 * [count.boltTurns.toFixed(2), count.solidTurns.toFixed(2)]; // => ['0.86', '0.06']
 * ```
 * @see Statics of a bolt as a spring; the rule of half a turn is judgement.
 */
export function boltTurns(input: {
  travelMm: number;
  axialForceN: number;
  boltStiffnessNPerMm: number;
  boltPitchMm: number;
}): BoltTurns {
  checkInput({
    where: 'boltTurns',
    value: input,
    fields: {
      travelMm: { type: 'number', unit: 'mm', min: 0, max: 50 },
      axialForceN: forceSpec('number'),
      boltStiffnessNPerMm: { type: 'number', unit: 'N/mm', min: 1e3, max: 1e7 },
      boltPitchMm: pitchSpec,
    },
  });
  return countTurns(input);
}

/** The same without the check, for a travel however absurd. @internal */
export function countTurns(input: Parameters<typeof boltTurns>[0]): BoltTurns {
  const { travelMm, axialForceN, boltStiffnessNPerMm, boltPitchMm } = input;
  const solidTurns = axialForceN / boltStiffnessNPerMm / boltPitchMm + 0;
  const turns = travelMm / boltPitchMm + solidTurns;
  const code = turns > 0.5 && solidTurns < 0.5 ? 'stop-before-half-a-turn' : 'half-turn-tells-nothing';
  return {
    boltTurns: turns,
    solidTurns,
    findings: [find(boltMessages, code, 'caution', { boltTurns: turns, solidTurns })],
  };
}
