// Arbitrary cases for the diagnosis, made from the public list of checks, and a seeded generator for simulations.
import {
  type CheckId,
  type DiagnoseInput,
  type JointId,
  listChecks,
  listJoints,
  type Measurements,
  type Observations,
  type OutcomeId,
} from '@spindlewright/diagnosis';
import fc from 'fast-check';

/** Every joint that can be diagnosed. */
const JOINTS: readonly JointId[] = listJoints().flatMap(({ id, modelled }) => (modelled ? [id as JointId] : []));

/** One joint of each family, with readings as exact as the family has them. */
export const FAMILY_JOINTS = [
  'square-taper-jis',
  'spline-10',
  'spline-8-long',
  'spline-48',
  'face-spline',
  'through-spindle-24',
  'cottered-inch',
  'one-piece',
] as const satisfies readonly JointId[];

const known = new Map<JointId, ReadonlyMap<CheckId, readonly OutcomeId[]>>();

/** Outcomes of each check that applies to a joint. */
export function outcomesByCheck(joint: JointId): ReadonlyMap<CheckId, readonly OutcomeId[]> {
  const found =
    known.get(joint) ??
    new Map(listChecks(joint).map((check) => [check.id, check.outcomes.map((outcome) => outcome.id)]));
  known.set(joint, found);
  return found;
}

const answers = fc.record(
  Object.fromEntries(
    listChecks().map(({ id: check, outcomes: described }) => {
      const outcomes = described.map((outcome) => outcome.id);
      return [
        check,
        check === 'history'
          ? fc.oneof(fc.constantFrom(...outcomes), fc.uniqueArray(fc.constantFrom(...outcomes, 'unknown')))
          : fc.constantFrom(...outcomes, 'unclear', 'not-checked', 'unknown'),
      ];
    }),
  ),
  { requiredKeys: [] },
) as fc.Arbitrary<Observations>;

const between = (min: number, max: number) => {
  const value = fc.double({ min, max, noNaN: true });
  const uncertainty = fc.double({ min: 0, max: (max - min) / 10, noNaN: true });
  return fc.oneof(
    value,
    fc.tuple(value, uncertainty).map(([reading, standardUncertainty]) => ({ value: reading, standardUncertainty })),
    fc
      .tuple(value, value, value)
      .map((three) => three.sort((a, b) => a - b))
      .map(([lower = 0, nominal = 0, upper = 0]) => ({ lower, nominal, upper })),
  );
};

const readings = fc.record(
  {
    endGapMm: between(-5, 10),
    shoulderGapMm: between(-1, 14),
    playAngleDeg: between(0, 10),
    markEndFromSpindleEndMm: between(0, 25),
    releaseForceN: between(0, 40000),
    runoutMm: between(0, 5),
    torqueAtFirstMovementNm: between(0, 70),
    turnsToTorque: between(0, 6),
  },
  { requiredKeys: [] },
) as fc.Arbitrary<Measurements>;

/** Any case that `diagnose` has to take, contradictory ones included. */
export const cases: fc.Arbitrary<DiagnoseInput> = fc.record(
  {
    joint: fc.constantFrom(...JOINTS),
    side: fc.constantFrom('drive' as const, 'non-drive' as const),
    observations: answers,
    measurements: readings,
  },
  { requiredKeys: ['joint', 'observations'] },
) as fc.Arbitrary<DiagnoseInput>;
