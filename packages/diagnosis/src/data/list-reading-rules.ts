import readingFile from '../../data/readings.json' with { type: 'json' };
import { checkJoint } from '../check-case.ts';
import { MEASUREMENTS, MODELLED_JOINTS } from '../ids.ts';
import type { CheckId, JointId, MeasurementId } from '../types.ts';
import { familyFor } from './rows.ts';

/** How a reading is taken for the outcomes of a check. */
export interface ReadingRuleRecord {
  /** Stable id: reading, outcome and joint joined by slashes. */
  id: string;
  /** The reading. */
  measurement: MeasurementId;
  /** The check whose outcomes it stands for. */
  check: CheckId;
  /** The outcome. */
  outcome: string;
  /** The joint. */
  joint: JointId;
  /** Unit of the numbers. */
  unit: string;
  /** Where the true value lies when this is the outcome: from, in `unit`. */
  lower: number;
  /** Where the true value lies when this is the outcome: to, in `unit`. */
  upper: number;
  /** Standard uncertainty taken for a bare number, in `unit`. */
  standardUncertainty: number;
  /** Always `judgement`. */
  standing: 'judgement';
  /** Why. */
  reason: string;
  /** Ids in the register of sources that point the same way. */
  sources: readonly string[];
}

/**
 * Lists how each reading is turned into likelihoods.
 *
 * @remarks
 * Formula: L(reading | outcome) = share of the reading's distribution inside the band / width of the band, in all but a
 * `never-say-never` share of the cases, in which the reading is a slip of any size.
 *
 * Validity: a reading without a record says nothing at that joint. Bands may overlap; an outcome without a band (no
 * bolt, no torque) is left to the slips.
 *
 * Accuracy: judgement; edges are soft by the uncertainty of the reading.
 *
 * @param joint - Id of a joint that can be diagnosed; every one of them when left out.
 * @returns One record for each reading, outcome and joint.
 * @throws {@link DomainError} for a joint that is unknown or not modelled.
 * @example
 * ```ts
 * import { listReadingRules } from '@spindlewright/diagnosis/data';
 * listReadingRules().find(({ id }) => id === 'endGapMm/flush/square-taper-jis')?.upper; // => 0.3
 * ```
 * @see The raw files `families/*.json` and `readings.json` of this package.
 */
export function listReadingRules(joint?: JointId): ReadingRuleRecord[] {
  if (joint !== undefined) checkJoint('listReadingRules', joint);
  return MEASUREMENTS.flatMap((measurement) =>
    (joint === undefined ? MODELLED_JOINTS : [joint]).flatMap((id) => {
      const own = familyFor(id).readings[measurement];
      const common = readingFile.readings.find((entry) => entry.measurement === measurement);
      if (own === undefined || common === undefined) return [];
      return Object.entries(own.byJoint?.[id] ?? own.bands).map(([outcome, [lower, upper]]) => ({
        id: `${measurement}/${outcome}/${id}`,
        measurement,
        check: common.check as CheckId,
        outcome,
        joint: id,
        unit: common.unit,
        lower,
        upper,
        standardUncertainty: common.usualUncertainty,
        standing: 'judgement' as const,
        reason: own.reason,
        sources: own.sources ?? [],
      }));
    }),
  );
}
