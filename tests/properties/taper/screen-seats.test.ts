import { predictSeat, screenSeats } from '@spindlewright/taper';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { limitsIn, tolerancedJoints, tolerancedMaterials } from './arbitraries.ts';

const pressings = fc.record({
  axialForceN: limitsIn(0, 30_000, 3000),
  friction: limitsIn(0.03, 0.35, 0.05),
  materials: fc.oneof(
    tolerancedMaterials,
    tolerancedMaterials.map(({ spindle, arm: { yieldStrengthMPa: _, ...arm } }) => ({ spindle, arm })),
  ),
});

it('a column of one arm has the verdicts and lengths of predictSeat', () => {
  fc.assert(
    fc.property(tolerancedJoints, pressings, ({ spindle, arm }, pressing) => {
      const exact = { ...spindle, faceAngleDeg: spindle.faceAngleDeg.nominal };
      const { faceAngleDeg: _, acrossFlatsAtMouthMm, ...sizes } = arm;
      const seat = predictSeat({ spindle: exact, arm: { ...arm, faceAngleDeg: exact.faceAngleDeg }, pressing });
      const column = {
        lower: [acrossFlatsAtMouthMm.lower],
        nominal: [acrossFlatsAtMouthMm.nominal],
        upper: [acrossFlatsAtMouthMm.upper],
      };
      const screened = screenSeats({
        spindle: exact,
        arms: { ...sizes, acrossFlatsAtMouthMm: column },
        pressing,
        lengths: true,
      });
      const name = (codes: Uint8Array): string | undefined => screened.verdictNames[codes[0] ?? 255];
      const { pressed, travelMm, worstVerdicts } = seat;
      expect(screened.travelMm?.[0]).toBeCloseTo(travelMm.nominal, 11);
      expect(screened.endGapMm?.[0]).toBeCloseTo(pressed.endGapMm.nominal, 11);
      expect(screened.shoulderGapMm?.[0]).toBeCloseTo(pressed.shoulderGapMm.nominal, 11);
      // A shrunk case may come to lie on a limit, to the last digit; there either side is right.
      const limits = [travelMm, pressed.endGapMm, pressed.shoulderGapMm].flatMap((at) => [
        at.lower,
        at.nominal,
        at.upper,
      ]);
      const onLimit = limits.some((at) => Math.abs(at) < 1e-11 || Math.abs(at - 0.5) < 1e-11);
      if (onLimit) return;
      expect([name(screened.verdict), name(screened.worstLower), name(screened.worstUpper)]).toEqual([
        seat.verdict,
        worstVerdicts.lower,
        worstVerdicts.upper,
      ]);
    }),
    { numRuns: 1000 },
  );
});
