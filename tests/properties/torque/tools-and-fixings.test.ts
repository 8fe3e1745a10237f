import {
  checkFixing,
  frustumStiffness,
  metricThread,
  settlingLoss,
  strippingEngagement,
  targetTorque,
  threadFor,
  toolTorque,
  wrenchSetting,
} from '@spindlewright/torque';
import { toolClasses } from '@spindlewright/torque/data';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const double = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const tool = fc.constantFrom(...toolClasses.map((row) => row.id));

describe('designations', () => {
  it('come back as they were written', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 600 }),
        fc.integer({ min: 20, max: 500 }),
        fc.boolean(),
        (tenths, hundredths, left) => {
          const nominalDiameterMm = tenths / 10;
          const pitchMm = Math.min(hundredths / 100, nominalDiameterMm / 2);
          const thread = metricThread({ nominalDiameterMm, pitchMm, hand: left ? 'left' : 'right' });
          expect(threadFor(thread.designation)).toEqual(thread);
        },
      ),
    );
  });
});

describe('tools', () => {
  it('stay below the torque not to be exceeded', () => {
    fc.assert(
      fc.property(fc.oneof(fc.constant(0), double(1e-6, 300)), tool, (maximumTorqueNm, id) => {
        const { targetTorqueNm, torqueNm } = targetTorque({ maximumTorqueNm, tool: id });
        const really = toolTorque({ torqueNm: targetTorqueNm, tool: id }).torqueNm;
        expect(really.upper).toBeLessThanOrEqual(maximumTorqueNm * (1 + 1e-12));
        expect(torqueNm.lower).toBeLessThanOrEqual(really.lower * (1 + 1e-12));
      }),
    );
  });

  it('contain every torque that a setting inside its limits may give', () => {
    fc.assert(
      fc.property(double(0, 30), double(0, 10), double(0, 1), double(-1, 1), tool, (from, width, part, error, id) => {
        const set = { lower: from, nominal: from, upper: from + width };
        const here = Math.min(set.upper, from + part * width);
        const { deviationPercent } = toolTorque({ torqueNm: here, tool: id });
        const given = here * (1 + (error * deviationPercent) / 100);
        const { torqueNm } = toolTorque({ torqueNm: set, tool: id });
        expect(given).toBeGreaterThanOrEqual(torqueNm.lower - 1e-12);
        expect(given).toBeLessThanOrEqual(torqueNm.upper + 1e-12);
      }),
    );
  });

  it('with an extension turn the fastener by the torque wanted: the moment of one pull at the mark', () => {
    fc.assert(
      fc.property(
        double(0, 200),
        double(100, 1000),
        double(0, 99),
        double(-180, 180),
        (target, wrench, extension, angle) => {
          const { settingNm } = wrenchSetting({
            targetTorqueNm: target,
            wrenchLengthMm: wrench,
            extensionLengthMm: extension,
            extensionAngleDeg: angle,
          });
          // Wrench along x, square at the origin, grip at x = wrench, pull along y; fastener at -extension (cos, sin).
          const pullN = settingNm / wrench;
          const fastenerX = -extension * Math.cos((angle * Math.PI) / 180);
          expect(pullN * (wrench - fastenerX)).toBeCloseTo(target, 8);
        },
      ),
    );
  });
});

describe('fixings', () => {
  const length = (min: number, max: number) =>
    fc.tuple(double(min, max), double(min, max)).map(([a, b]) => ({
      lower: Math.min(a, b),
      nominal: (Math.min(a, b) + Math.max(a, b)) / 2,
      upper: Math.max(a, b),
    }));
  const bolt = fc.record({
    lengthUnderHeadMm: length(10, 40),
    washerThicknessMm: length(0.5, 3),
    endGapMm: length(-1, 6),
    travelMm: length(0, 2),
    threadDepthMm: length(10, 40),
  });
  const thread = threadFor('M8x1');

  it('that fit, or do not, do so for all values inside the limits', () => {
    fc.assert(
      fc.property(bolt, fc.array(double(0, 1), { minLength: 5, maxLength: 5 }), (given, parts) => {
        const fixing = 'bolt' as const;
        const whole = checkFixing({ fixing, thread, spindleThread: thread, ...given });
        const drawn = Object.fromEntries(
          Object.entries(given).map(([key, { lower, upper }], index) => [
            key,
            Math.min(upper, lower + (parts[index] ?? 0) * (upper - lower)),
          ]),
        ) as Record<keyof typeof given, number>;
        const one = checkFixing({ fixing, thread, spindleThread: thread, ...drawn });
        if (whole.state === 'fits') expect(one.state).toBe('fits');
        // With nothing left of the gap the bolt clamps the spindle, whatever the depths say.
        if (drawn.endGapMm - drawn.travelMm <= 0) expect(one.state).toBe('does-not-fit');
        if (whole.state === 'does-not-fit') expect(one.state).toBe('does-not-fit');
        expect(one.state).not.toBe('cannot-tell');
        for (const stage of ['handFit', 'pressed'] as const) {
          const [outer, inner] = [whole[stage], one[stage]];
          expect(inner.engagementMm.nominal).toBeGreaterThanOrEqual(outer.engagementMm.lower - 1e-9);
          expect(inner.engagementMm.nominal).toBeLessThanOrEqual(outer.engagementMm.upper + 1e-9);
          expect(inner.clearanceMm?.nominal).toBeGreaterThanOrEqual((outer.clearanceMm?.lower ?? 1e9) - 1e-9);
          expect(inner.clearanceMm?.nominal).toBeLessThanOrEqual((outer.clearanceMm?.upper ?? -1e9) + 1e-9);
        }
      }),
    );
  });

  it('have less way left once the arm is pressed than at hand fit', () => {
    fc.assert(
      fc.property(bolt, (given) => {
        const { handFit, pressed } = checkFixing({ fixing: 'bolt', thread, ...given });
        expect(pressed.clearanceMm?.nominal).toBeLessThanOrEqual((handFit.clearanceMm?.nominal ?? -1e9) + 1e-12);
      }),
    );
  });
});

describe('stiffness and strength', () => {
  const layer = fc.record({
    outerFaceDiameterMm: double(10, 40),
    holeDiameterMm: double(3, 9),
    thicknessMm: double(0.1, 50),
    modulusGPa: double(10, 300),
  });

  it('a cone is stiffer than the tube of its small face and softer than the tube of its large one', () => {
    fc.assert(
      fc.property(layer, (given) => {
        const tube = (diameter: number): number =>
          (given.modulusGPa * 1000 * (Math.PI / 4) * (diameter ** 2 - given.holeDiameterMm ** 2)) / given.thicknessMm;
        const { stiffnessNPerMm } = frustumStiffness(given);
        expect(stiffnessNPerMm).toBeGreaterThan(tube(given.outerFaceDiameterMm) * (1 - 1e-9));
        expect(stiffnessNPerMm).toBeLessThan(
          tube(given.outerFaceDiameterMm + 2 * given.thicknessMm * Math.tan(Math.PI / 6)) * (1 + 1e-9),
        );
      }),
    );
  });

  it('settling never takes more than there is, and stiffer joints lose more', () => {
    fc.assert(
      fc.property(
        double(0, 1e5),
        double(0, 50),
        double(1e3, 1e7),
        double(1e3, 1e7),
        (preloadN, settlementUm, bolt, member) => {
          const loss = (boltStiffnessNPerMm: number) =>
            settlingLoss({ preloadN, settlementUm, boltStiffnessNPerMm, memberStiffnessNPerMm: member });
          expect(loss(bolt).lossN).toBeLessThanOrEqual(preloadN);
          expect(loss(bolt).preloadAfterN).toBeGreaterThanOrEqual(0);
          expect(loss(2 * bolt).lossN).toBeGreaterThanOrEqual(loss(bolt).lossN);
        },
      ),
    );
  });

  it('engagement is in proportion to the load and against the strength', () => {
    fc.assert(
      fc.property(double(1, 1e5), double(10, 1000), double(0.1, 10), (loadN, shearStrengthMPa, factor) => {
        const thread = threadFor('M22x1');
        const one = strippingEngagement({ thread, loadN, shearStrengthMPa }).engagementMm;
        const scaled = strippingEngagement({
          thread,
          loadN: loadN * factor,
          shearStrengthMPa: shearStrengthMPa * factor,
        });
        expect(scaled.engagementMm / one).toBeCloseTo(1, 10);
      }),
    );
  });
});
