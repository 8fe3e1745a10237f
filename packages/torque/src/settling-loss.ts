import { checkInput, type FieldSpecs, type Finding } from '@spindlewright/quantity';
import { forceSpec } from './domain.ts';
import { settledSlack } from './messages/lean.ts';
import { raiseText } from './raise-text.ts';

/** What settling leaves of a preload. */
export interface SettlingLoss {
  /** Preload lost in N, at most all of it. */
  lossN: number;
  /** Preload left in N, at least 0. */
  preloadAfterN: number;
  /** Loss for each micrometre that the joint settles, in N. */
  lossPerMicrometreN: number;
  /** What is worth saying. */
  findings: Finding[];
}

const positive = { type: 'number', unit: 'N/mm', min: 1e-3, max: 1e12 } as const;

const fields: FieldSpecs = {
  preloadN: forceSpec,
  settlementUm: { type: 'number', unit: 'um', min: 0, max: 10_000 },
  boltStiffnessNPerMm: positive,
  memberStiffnessNPerMm: positive,
};

/**
 * Gives the preload that a joint loses when its surfaces settle into each other.
 *
 * @remarks
 * Formula: loss = z k, 1/k = 1/k_bolt + 1/k_member; z settlement of all faces together.
 *
 * Validity: elastic bolt and parts; the loss ends at the whole preload. Settlements are guide values by roughness; the
 * ones in the data of this package are from memory. A taper that creeps under riding loads loses more: that is not
 * settling. The press of an
 * arm on a square taper is a member too, and by far the softest: give the stiffness that `pressFit` of the taper package
 * finds for it.
 *
 * Accuracy: one series stiffness; the settlement itself is known to a factor of two at best.
 *
 * @param input - `preloadN` at least 0 in N; `settlementUm` at least 0 in micrometres; `boltStiffnessNPerMm`,
 * `memberStiffnessNPerMm` above 0 in N/mm.
 * @returns Loss and rest in N, at least 0, and loss per micrometre in N.
 * @throws {@link DomainError} for values outside their domain or unknown keys.
 * @example
 * ```ts
 * import { settlingLoss } from '@spindlewright/torque';
 * const stiffness = { boltStiffnessNPerMm: 200_000, memberStiffnessNPerMm: 600_000 };
 * settlingLoss({ preloadN: 25_000, settlementUm: 10, ...stiffness }).lossN; // => 1500
 * ```
 * @see VDI 2230, relation between settlement and loss (`vdi-2230-2001-quoted`).
 */
export function settlingLoss(input: {
  preloadN: number;
  settlementUm: number;
  boltStiffnessNPerMm: number;
  memberStiffnessNPerMm: number;
}): SettlingLoss {
  checkInput({ where: 'settlingLoss', value: input, fields });
  const { preloadN, settlementUm, boltStiffnessNPerMm, memberStiffnessNPerMm } = input;
  const lossPerMicrometreN = 1 / (1000 / boltStiffnessNPerMm + 1000 / memberStiffnessNPerMm);
  const lossN = Math.min(preloadN, settlementUm * lossPerMicrometreN);
  return {
    lossN,
    preloadAfterN: preloadN - lossN,
    lossPerMicrometreN,
    findings: preloadN > 0 && lossN === preloadN ? [raiseText('settled-slack', settledSlack, 'stop')] : [],
  };
}
