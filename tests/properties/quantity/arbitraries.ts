// Values shared by the property tests of quantity.
import type { Limits, Measurand, Unit } from '@spindlewright/quantity';
import fc from 'fast-check';

/** Numbers of a size that lengths, forces and torques of this trade stay well inside, in any unit of the table. */
export const bounded = fc.double({ min: -1e12, max: 1e12, noNaN: true });

/** Units by dimension. */
const groups: readonly (readonly Unit[])[] = [
  ['mm', 'um', 'cm', 'm', 'in'],
  ['N', 'kN', 'lbf', 'kgf'],
  ['Nm', 'lbf.in', 'lbf.ft', 'kgf.cm', 'kgf.m'],
  ['MPa', 'psi'],
  ['deg', 'rad'],
];

/** Three units of one dimension, repetitions included. */
export const unitTriple = fc
  .constantFrom(...groups)
  .chain((group) => fc.tuple(fc.constantFrom(...group), fc.constantFrom(...group), fc.constantFrom(...group)));

/** Limits, their three numbers in order. */
export const limitsValue: fc.Arbitrary<Limits> = fc.tuple(bounded, bounded, bounded).map((numbers) => {
  const [lower = 0, nominal = 0, upper = 0] = numbers.sort((a, b) => a - b);
  return { lower, nominal, upper };
});

/** Every spelling of a measurand. */
export const measurandValue: fc.Arbitrary<Measurand> = fc.oneof(
  bounded,
  limitsValue,
  fc.record({ value: bounded, standardUncertainty: fc.double({ min: 0, max: 1e6, noNaN: true }) }),
);

/** Difference of two numbers relative to the larger; the floor keeps the quotient of two zeros, and of subnormals, sane. */
export const relativeDifference = (a: number, b: number): number =>
  Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-290);
