import { SQUARE_TAPER } from '../model-data.ts';
import type { CheckId, JointId, MeasurementId } from '../types.ts';
import { REASONS } from './reasons.ts';

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
 * Validity: bands may overlap; an outcome without a band (no bolt, no torque) is left to the slips.
 *
 * Accuracy: judgement; edges are soft by the uncertainty of the reading.
 *
 * @returns One record for each reading, outcome and joint.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listReadingRules } from '@spindlewright/diagnosis/data';
 * listReadingRules().find(({ id }) => id === 'endGapMm/flush/square-taper-jis')?.upper; // => 0.3
 * ```
 * @see The raw file `square-taper.json` of this package.
 */
export function listReadingRules(): ReadingRuleRecord[] {
  return SQUARE_TAPER.readings.flatMap((rule) =>
    SQUARE_TAPER.joints.flatMap((joint) =>
      Object.entries(rule.byJoint?.[joint] ?? rule.bands).map(([outcome, [lower, upper]]) => ({
        id: `${rule.measurement}/${outcome}/${joint}`,
        measurement: rule.measurement,
        check: rule.check,
        outcome,
        joint,
        unit: rule.unit,
        lower,
        upper,
        standardUncertainty: rule.usualUncertainty,
        standing: 'judgement' as const,
        reason: REASONS[`reading/${rule.measurement}`]?.reason ?? '',
        sources: REASONS[`reading/${rule.measurement}`]?.sources ?? [],
      })),
    ),
  );
}
