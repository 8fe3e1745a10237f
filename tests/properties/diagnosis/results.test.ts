// What has to hold for every case, however odd the answers.
import { compareSides, type DiagnoseInput, diagnose, explain } from '@spindlewright/diagnosis';
import {
  compareSidesInputSchema,
  diagnoseInputSchema,
  diagnosisSchema,
  sideComparisonSchema,
} from '@spindlewright/diagnosis/schema';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import losses from '../../../packages/diagnosis/data/losses.json' with { type: 'json' };
import { cases } from './generators.ts';

// A hundred cases a property, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

const sum = (list: readonly { probability: number }[]): number =>
  list.reduce((total, { probability }) => total + probability, 0);

/** The same object with its keys in another order. */
const shuffled = <T extends object>(value: T, order: readonly number[]): T =>
  Object.fromEntries(
    Object.entries(value)
      .map((entry, index) => ({ entry, key: order[index % order.length] ?? 0 }))
      .sort((a, b) => a.key - b.key)
      .map(({ entry }) => entry),
  ) as T;

describe('every result', () => {
  it('has probabilities that lie in [0, 1], sum to 1 and are sorted', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const result = diagnose(input);
        // 14 and 12 sums of about 200 products each: a few hundred roundings.
        expect(Math.abs(sum(result.conditions) - 1)).toBeLessThan(1e-12);
        expect(Math.abs(sum(result.causes) - 1)).toBeLessThan(1e-12);
        for (const list of [result.conditions, result.causes, result.besides]) {
          for (const { probability } of list) expect(probability >= 0 && probability <= 1 + 1e-12).toBe(true);
          expect(list.map((entry) => entry.probability)).toEqual(
            list.map((entry) => entry.probability).sort((a, b) => b - a),
          );
        }
      }),
    );
  });

  it('does not depend on the order of the answers, to the last bit', () => {
    fc.assert(
      fc.property(cases, fc.array(fc.integer(), { minLength: 5, maxLength: 25 }), (input, order) => {
        const history = input.observations.history;
        const turned: DiagnoseInput = {
          ...shuffled(input, order),
          observations: {
            ...shuffled(input.observations, order),
            ...(Array.isArray(history) ? { history: [...history].reverse() } : {}),
          },
          ...(input.measurements === undefined ? {} : { measurements: shuffled(input.measurements, order) }),
        };
        expect(diagnose(turned)).toEqual(diagnose(input));
      }),
    );
  });

  it('equals its JSON round trip, survives structuredClone and keeps its schema', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const result = diagnose(input);
        expect(JSON.parse(JSON.stringify(result))).toStrictEqual(result);
        expect(structuredClone(result)).toStrictEqual(result);
        expect(diagnoseInputSchema.safeParse(input).success).toBe(true);
        expect(diagnosisSchema.parse(result)).toStrictEqual(result);
      }),
    );
  });

  it('is not changed by answers that say nothing', () => {
    const silent = fc.constantFrom('unclear' as const, 'not-checked' as const, 'unknown' as const);
    fc.assert(
      fc.property(cases, silent, (input, nothing) => {
        const result = diagnose(input);
        const open = ['arm-alignment', 'cotter', 'witness-mark', 'fretting-debris'] as const;
        const added = Object.fromEntries(
          open.filter((check) => input.observations[check] === undefined).map((check) => [check, nothing]),
        );
        const again = diagnose({ ...input, observations: { ...input.observations, ...added } });
        // Only what is worth asking next may differ: what was asked in vain is not asked again.
        expect({ ...again, nextChecks: [] }).toEqual({ ...result, nextChecks: [] });
      }),
    );
  });

  it('forbids riding whenever the action is a repair, a sign of danger is in sight or answers contradict each other', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const result = diagnose(input);
        // A dirty seat is heard, a bent arm and one a step off are seen long before anything lets go.
        const unsafe = result.conditions
          .filter(({ id }) => !['sound', 'seat-dirty-or-galled', 'arm-bent', 'wrong-clocking'].includes(id))
          .reduce((total, { probability }) => total + probability, 0);
        if (!['ride', 'look-elsewhere', 'service-bearing'].includes(result.action)) expect(result.doNotRide).toBe(true);
        if (unsafe > losses.doNotRideAbove + 1e-7) expect(result.doNotRide).toBe(true);
        // Below that the doubt that is left is named.
        const codes = result.cautions.map(({ code }) => code);
        if (unsafe > 0.0050001) expect(codes.includes('caution-doubt-left')).toBe(!result.doNotRide);
        if (result.contradictions.length > 0) expect(result.doNotRide).toBe(true);
        // A crack or an arm that moves, also where the joint has no such place: then it is another joint.
        if (input.observations['bore-flats'] === 'cracked') expect(result.doNotRide).toBe(true);
        if (input.observations['play-at-arm'] === 'arm-moves-on-spindle') expect(result.doNotRide).toBe(true);
        if (result.doNotRide) expect(result.action).not.toBe('ride');
        expect(codes).toContain('caution-maker-first');
        expect(codes.includes('caution-do-not-ride')).toBe(result.doNotRide);
      }),
    );
  });

  it('chooses the cheapest admissible action and asks only for what is open', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const result = diagnose(input);
        const admissible = result.actions.filter((action) => action.admissible);
        const least = Math.min(...admissible.map((action) => action.expectedLossMinutes));
        expect(admissible.find(({ id }) => id === result.action)?.expectedLossMinutes).toBe(least);
        for (const { check, gain, minutes } of result.nextChecks) {
          const given = input.observations[check];
          expect(given === undefined || given === 'not-checked' || (Array.isArray(given) && given.length === 0)).toBe(
            true,
          );
          expect(gain > 0 && minutes > 0).toBe(true);
        }
      }),
    );
  });

  it('has evidence whose log-odds are what leaving that answer out takes away', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const result = diagnose(input);
        const [leading] = result.conditions;
        const [heaviest] = result.evidence.filter(
          ({ measurement, check }) => measurement === undefined && check !== 'history',
        );
        if (leading === undefined || heaviest === undefined) return;
        const { [heaviest.check]: _dropped, ...rest } = input.observations;
        const without = diagnose({ ...input, observations: rest });
        const odds = (of: typeof result): number => {
          const p = of.conditions.find(({ id }) => id === leading.id)?.probability ?? 0;
          const others = of.conditions
            .filter(({ id }) => id !== leading.id)
            .reduce((total, c) => total + c.probability, 0);
          return Math.log(p / others);
        };
        expect(heaviest.logOddsRatio).toBeCloseTo(odds(result) - odds(without), 8);
      }),
    );
  });

  it('can be explained, in English or in another table, without a hole in any sentence', () => {
    fc.assert(
      fc.property(cases, (input) => {
        const result = diagnose(input);
        for (const { message } of [...explain({ result }), ...result.findings, ...result.contradictions]) {
          expect(message).not.toMatch(/[{}]|undefined|NaN/);
          expect(message).not.toMatch(/(condition|cause|action|outcome|check|beside)-[a-z]/);
        }
        const other = explain({ result, messages: { 'explain-action': 'X {id}' } });
        expect(other.find(({ code }) => code === 'explain-action')?.message).toBe(`X ${result.action}`);
      }),
      { numRuns: 50 },
    );
  });
});

describe('both sides together', () => {
  it('agree with each side alone on what is not shared, and keep their schema', () => {
    fc.assert(
      fc.property(cases, cases, (a, b) => {
        const strip = (input: DiagnoseInput) => ({
          observations: { ...input.observations, 'bearing-turning': 'unclear', 'other-sources': 'unclear' } as const,
          ...(input.measurements === undefined ? {} : { measurements: input.measurements }),
        });
        const input = { joint: a.joint, drive: strip(a), nonDrive: strip(b) };
        const both = compareSides(input);
        expect(both.drive).toEqual(diagnose({ ...input.drive, joint: a.joint, side: 'drive' }));
        expect(both.nonDrive).toEqual(diagnose({ ...input.nonDrive, joint: a.joint, side: 'non-drive' }));
        expect(both.doNotRide).toBe(both.drive.doNotRide || both.nonDrive.doNotRide);
        expect(both.firstSide === 'neither').toBe(!both.doNotRide);
        expect(compareSidesInputSchema.safeParse(input).success).toBe(true);
        expect(sideComparisonSchema.parse(both)).toStrictEqual(both);
      }),
      { numRuns: 50 },
    );
  });
});
