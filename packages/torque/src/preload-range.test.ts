import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { assemblyLimit } from './assembly-limit.ts';
import { metricThread } from './metric-thread.ts';
import { preloadFromTorque } from './preload-from-torque.ts';
import { preloadRange } from './preload-range.ts';

const classB = { lower: 0.08, nominal: 0.12, upper: 0.16 };
const joint = {
  torqueNm: 40,
  tool: 'click-wrench-iso-6789',
  thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1 }),
  threadFriction: classB,
  bearingFriction: classB,
  bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
};
const codesOf = (change: object): string[] =>
  preloadRange({ ...joint, ...change }).findings.map((finding) => finding.code);

describe('preloadRange', () => {
  it('is the scalar conversion at its corners', () => {
    const { preloadN, corners } = preloadRange(joint);
    const at = (torqueNm: number, friction: number): number =>
      preloadFromTorque({
        torqueNm,
        thread: joint.thread,
        threadFriction: friction,
        bearingFriction: friction,
        bearing: joint.bearing,
      }).preloadN;
    expect(preloadN.lower).toBeCloseTo(at(40 * 0.96, 0.16), 8);
    expect(preloadN.nominal).toBeCloseTo(at(40, 0.12), 8);
    expect(preloadN.upper).toBeCloseTo(at(40 * 1.04, 0.08), 8);
    expect(corners.lower).toEqual({ torqueNm: 38.4, threadFriction: 0.16, bearingFriction: 0.16 });
    expect(corners.upper).toEqual({ torqueNm: 41.6, threadFriction: 0.08, bearingFriction: 0.08 });
    expect(corners.nominal).toEqual({ torqueNm: 40, threadFriction: 0.12, bearingFriction: 0.12 });
  });

  it('adds the tool to limits and to readings of torque', () => {
    expect(preloadRange({ ...joint, torqueNm: { lower: 38, nominal: 40, upper: 44 } }).torqueNm).toEqual({
      lower: 38 * 0.96,
      nominal: 40,
      upper: 44 * 1.04,
    });
    const { tool: _, ...bare } = joint;
    expect(preloadRange({ ...bare, torqueNm: { value: 40, standardUncertainty: 1 } }).torqueNm).toEqual({
      lower: 37,
      nominal: 40,
      upper: 43,
    });
  });

  it('gives the factor between its ends, and null where the torque may be 0', () => {
    const range = preloadRange(joint);
    expect(range.tighteningFactor).toBeCloseTo(range.preloadN.upper / range.preloadN.lower, 12);
    const slack = preloadRange({ ...joint, torqueNm: { lower: 0, nominal: 1, upper: 2 } });
    expect(slack.tighteningFactor).toBeNull();
    expect(slack.preloadN.lower).toBe(0);
  });

  it('bounds the loosening torque below the tightening torque', () => {
    const { looseningTorqueNm, torqueNm } = preloadRange(joint);
    expect(looseningTorqueNm.lower).toBeGreaterThan(0);
    expect(looseningTorqueNm.upper).toBeLessThan(torqueNm.upper);
    const slippery = { lower: 0.005, nominal: 0.01, upper: 0.02 };
    const range = preloadRange({ ...joint, threadFriction: slippery, bearingFriction: slippery });
    expect(range.looseningTorqueNm.lower).toBeLessThan(0);
    expect(range.findings.map((finding) => finding.code)).toContain('self-loosening');
  });

  it('unwinds, or is loosened, the less hard the less it was tightened', () => {
    const slippery = { lower: 0.005, nominal: 0.006, upper: 0.007 };
    const friction = { threadFriction: slippery, bearingFriction: slippery };
    const { tool: _, ...bare } = joint;
    const range = preloadRange({ ...bare, ...friction, torqueNm: { lower: 10, nominal: 20, upper: 30 } });
    const at = (torqueNm: number, both: number): number =>
      preloadFromTorque({ ...bare, torqueNm, threadFriction: both, bearingFriction: both }).looseningTorqueNm;
    // Hardest at the most torque with the least friction, least at the least torque with the most.
    expect(range.looseningTorqueNm.lower).toBeCloseTo(at(30, 0.005), 12);
    expect(range.looseningTorqueNm.nominal).toBeCloseTo(at(20, 0.006), 12);
    expect(range.looseningTorqueNm.upper).toBeCloseTo(at(10, 0.007), 12);
    expect(range.looseningTorqueNm.upper).toBeLessThan(0);
    // A joint that holds is loosened the more easily the less it was tightened.
    const holds = preloadRange({ ...bare, torqueNm: { lower: 10, nominal: 20, upper: 30 } }).looseningTorqueNm;
    expect(holds.lower).toBeCloseTo(at(10, 0.08), 12);
    expect(holds.upper).toBeCloseTo(at(30, 0.16), 12);
  });

  it('is said to unwind by itself whenever some torque inside the limits makes it, and never without torque', () => {
    const slippery = { lower: 0.005, nominal: 0.01, upper: 0.02 };
    const friction = { threadFriction: slippery, bearingFriction: slippery };
    const untilNow = { lower: 0, nominal: 20, upper: 40 };
    expect(codesOf({ ...friction, torqueNm: untilNow })).toContain('self-loosening');
    expect(codesOf({ torqueNm: untilNow })).not.toContain('self-loosening');
    const none = preloadRange({ ...joint, ...friction, torqueNm: 0 });
    expect(none.findings.map((finding) => finding.code)).not.toContain('self-loosening');
    expect(none.looseningTorqueNm).toEqual({ lower: 0, nominal: 0, upper: 0 });
    expect(JSON.parse(JSON.stringify(none))).toEqual(none);
  });

  /** Largest and smallest of what a grid over both frictions makes, ends included, by the scalar conversion. */
  const overGrid = (
    input: Parameters<typeof preloadRange>[0],
    of: (threadFriction: number, head: number) => number,
  ) => {
    const axis = (limits: unknown): number[] => {
      const { lower, upper } = limits as { lower: number; upper: number };
      return Array.from({ length: 401 }, (_, i) => lower + (i / 400) * (upper - lower));
    };
    const [thread, head] = [axis(input.threadFriction), axis(input.bearingFriction)];
    const all = thread.flatMap((inThread) => [head[0] ?? 0, head[400] ?? 0].map((under) => of(inThread, under)));
    return { least: Math.min(...all), most: Math.max(...all) };
  };

  it('bounds the loosening torque where its share turns: it does not rise for ever with thread friction', () => {
    for (const [outerDiameterMm, head] of [
      [16, { lower: 0.1, nominal: 0.15, upper: 0.2 }],
      [16, { lower: 0.7, nominal: 0.8, upper: 0.9 }],
      [2, { lower: 0.1, nominal: 0.12, upper: 0.16 }],
    ] as const) {
      const torqueNm = 40;
      const input = {
        torqueNm,
        thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1.25 }),
        threadFriction: { lower: 0.2, nominal: 0.5, upper: 1 },
        bearingFriction: head,
        bearing: { outerDiameterMm, holeDiameterMm: 0 },
      };
      const { least, most } = overGrid(input, (threadFriction, bearingFriction) => {
        const { looseningTorqueNm } = preloadFromTorque({ ...input, threadFriction, bearingFriction });
        return looseningTorqueNm;
      });
      const { looseningTorqueNm } = preloadRange(input);
      expect(looseningTorqueNm.lower).toBeCloseTo(least, 9);
      expect(looseningTorqueNm.upper).toBeGreaterThanOrEqual(most);
      // The top is flat: between points 0.002 of friction apart it can rise by some 1e-5 Nm only.
      expect(looseningTorqueNm.upper).toBeCloseTo(most, 4);
      const atEnd = preloadFromTorque({ ...input, threadFriction: 1, bearingFriction: head.upper }).looseningTorqueNm;
      expect(looseningTorqueNm.upper).toBeGreaterThan(atEnd + 1e-4);
    }
  });

  it('bounds the stress where it turns over thread friction', () => {
    // A steep thread on a small face: the stress falls, rises and falls again.
    const joint = {
      torqueNm: 20,
      thread: metricThread({ nominalDiameterMm: 8, pitchMm: 4 }),
      threadFriction: { lower: 0.02, nominal: 0.4, upper: 0.6 },
      bearingFriction: { lower: 0.3, nominal: 0.31, upper: 0.32 },
      bearing: { outerDiameterMm: 8, holeDiameterMm: 4 },
    };
    const propertyClass = { yieldStrengthMPa: 640 };
    const useAt = (threadFriction: number, bearingFriction: number): number => {
      const { preloadN } = preloadFromTorque({ ...joint, threadFriction, bearingFriction });
      const { thread, bearing } = joint;
      return preloadN / assemblyLimit({ thread, propertyClass, threadFriction, bearing, utilisation: 1 }).preloadN;
    };
    const { least, most } = overGrid(joint, useAt);
    const { strength } = preloadRange({ ...joint, propertyClass });
    expect(strength?.utilisation.lower).toBeCloseTo(least, 5);
    expect(strength?.utilisation.upper).toBeCloseTo(most, 5);
    expect(least).toBeLessThan(Math.min(useAt(0.02, 0.32), useAt(0.6, 0.32)) - 1e-3);
    expect(most).toBeGreaterThan(Math.max(useAt(0.02, 0.3), useAt(0.6, 0.3)) + 0.01);
  });

  it('bounds the stress where it rises only in a part of the friction that the middle lies outside of', () => {
    const joint = {
      torqueNm: 20,
      thread: metricThread({ nominalDiameterMm: 8, pitchMm: 4 }),
      bearingFriction: { lower: 0.15, nominal: 0.15, upper: 0.15 },
      bearing: { outerDiameterMm: 16, holeDiameterMm: 8 },
    };
    const propertyClass = { yieldStrengthMPa: 640 };
    const useAt = (threadFriction: number, bearingFriction: number): number => {
      const { preloadN } = preloadFromTorque({ ...joint, threadFriction, bearingFriction });
      const { thread, bearing } = joint;
      return preloadN / assemblyLimit({ thread, propertyClass, threadFriction, bearing, utilisation: 1 }).preloadN;
    };
    // It falls up to a friction of about 0.08, rises up to 0.44 and falls again.
    for (const [lower, upper] of [
      [0.01, 1],
      [0.075, 0.085],
      [0.001, 0.2],
      [0.06, 0.13],
      [0.3, 0.6],
      [0.4, 0.9],
    ] as const) {
      const input = { ...joint, threadFriction: { lower, nominal: lower, upper } };
      const { least, most } = overGrid(input, useAt);
      const { strength } = preloadRange({ ...input, propertyClass });
      expect(strength?.utilisation.lower).toBeLessThanOrEqual(least * (1 + 1e-12));
      expect(strength?.utilisation.upper).toBeGreaterThanOrEqual(most * (1 - 1e-12));
      expect(strength?.utilisation.lower).toBeCloseTo(least, 4);
      expect(strength?.utilisation.upper).toBeCloseTo(most, 4);
    }
    expect(useAt(0.44, 0.15)).toBeGreaterThan(Math.max(useAt(0.01, 0.15), useAt(1, 0.15)) + 0.01);
  });

  it('finds the lowest stress of the linear form in closed form', () => {
    // With the twist x = sqrt 3 times shear over pull and the lever arm a + b x, both linear in the friction, the stress
    // per torque sqrt(1 + x^2)/(As (a + b x)) is lowest at x = b/a, where it is 1/(As sqrt(a^2 + b^2)).
    const thread = metricThread({ nominalDiameterMm: 8, pitchMm: 1.25 });
    const [head, radiusMm] = [0.2, 4.5];
    const { pitchMm, pitchDiameterMm, stressDiameterMm, stressAreaMm2 } = thread;
    const perShear = 1.5 * Math.sqrt(3) * (pitchDiameterMm / stressDiameterMm);
    const b = (0.58 * pitchDiameterMm) / (perShear * 1.155);
    const a = 0.16 * pitchMm + head * radiusMm - b * perShear * (pitchMm / (Math.PI * pitchDiameterMm));
    const { strength } = preloadRange({
      torqueNm: 20,
      thread,
      threadFriction: { lower: 0.001, nominal: 0.1, upper: 1 },
      bearingFriction: { lower: head, nominal: head, upper: head },
      bearing: { outerDiameterMm: 12, holeDiameterMm: 6 },
      method: 'vdi-2230',
      propertyClass: { yieldStrengthMPa: 640 },
    });
    expect(strength?.equivalentStressMPa.lower).toBeCloseTo(20_000 / stressAreaMm2 / Math.hypot(a, b), 9);
  });

  it('does not call a stress beyond a limit or a yield strength that it just reaches', () => {
    const exact = { ...joint, tool: undefined, threadFriction: 0.12, bearingFriction: 0.12 };
    const beyond = (change: object): string[] =>
      preloadRange({ ...exact, ...change } as never)
        .findings.map((finding) => finding.code)
        .filter((code) => code.startsWith('beyond'));
    const { strength } = preloadRange({ ...exact, propertyClass: '8.8' } as never);
    const propertyClass = { yieldStrengthMPa: strength?.equivalentStressMPa.upper ?? 0 };
    expect(beyond({ propertyClass })).toEqual(['beyond-assembly-limit']);
    expect(beyond({ propertyClass, utilisation: 1 })).toEqual([]);
    expect(beyond({ propertyClass: { yieldStrengthMPa: propertyClass.yieldStrengthMPa * 0.999 } })).toEqual([
      'beyond-yield',
    ]);
  });

  it('says how far the bolt is used, and speaks up beyond the limit, beyond yield if slippery, and beyond yield', () => {
    expect(preloadRange(joint).strength).toBeUndefined();
    const used = (propertyClass: string): [string[], number] => {
      const { findings, strength } = preloadRange({ ...joint, torqueNm: 25, propertyClass });
      return [
        findings.filter((f) => f.code.startsWith('beyond')).map((f) => `${f.code} ${f.severity}`),
        strength?.utilisation.upper ?? 0,
      ];
    };
    const [strong, share] = used('12.9');
    expect(strong).toEqual([]);
    expect(share).toBeLessThan(0.9);
    // Past yield where friction is lowest is a reason to find out; past it at the middle already, to stop.
    expect(used('8.8')[0]).toEqual(['beyond-yield-if-slippery caution']);
    expect(used('4.6')[0]).toEqual(['beyond-yield stop']);
    const limit = preloadRange({ ...joint, torqueNm: 25, propertyClass: '12.9', utilisation: share - 0.01 });
    expect(limit.findings.map((f) => f.code)).toContain('beyond-assembly-limit');
  });

  it('says when torque or friction pretend to be exact, or friction is odd', () => {
    expect(codesOf({})).toEqual(['torque-is-no-measure-of-clamp']);
    expect(codesOf({ tool: undefined })).toContain('exact-torque-assumed');
    expect(codesOf({ threadFriction: 0.12 })).toContain('friction-without-range');
    expect(codesOf({ bearingFriction: { lower: 0.02, nominal: 0.1, upper: 0.5 } })).toEqual([
      'torque-is-no-measure-of-clamp',
      'friction-unusual',
    ]);
    expect(codesOf({ thread: { ...joint.thread, hand: 'left' } })).toContain('left-hand-thread');
  });

  it('names its sources and equals its JSON round trip', () => {
    const range = preloadRange({ ...joint, propertyClass: '8.8' });
    expect(range.sources).toEqual([
      'iso-6789-quoted',
      'iso-898-1-quoted',
      'iso-898-1-ultimate-quoted',
      'vdi-2230-2001-quoted',
    ]);
    expect(JSON.parse(JSON.stringify(range))).toEqual(range);
    expect(structuredClone(range)).toEqual(range);
    const byFeel = preloadRange({ ...joint, tool: 'by-feel', propertyClass: '8.8' });
    expect(byFeel.sources).toEqual([...byFeel.sources].sort());
    expect(byFeel.sources).toContain('preload-methods-table');
    const { tool: _, ...bare } = joint;
    expect(preloadRange(bare).sources).toEqual([]);
    expect(Object.keys(preloadRange(bare))).not.toContain('strength');
  });

  it.each([
    [{ torqueNm: -1 }, 'torqueNm'],
    [{ torqueNm: { value: 1, standardUncertainty: 1 } }, 'torqueNm'],
    [{ tool: 'click-wrench' }, 'tool'],
    [{ threadFriction: { lower: 0, nominal: 0.1, upper: 0.2 } }, 'threadFriction.lower'],
    [{ threadFriction: { value: 0.12, standardUncertainty: 0.04 } }, 'threadFriction'],
    [{ bearingFriction: { lower: 0.1, nominal: 0.5, upper: 1.5 } }, 'bearingFriction.upper'],
    [{ bearingFriction: { lower: 0.2, nominal: 0.1, upper: 0.3 } }, 'bearingFriction'],
    [{ bearing: { outerDiameterMm: 9, holeDiameterMm: 9 } }, 'bearing.holeDiameterMm'],
    [{ propertyClass: '8.7' }, 'propertyClass'],
    [{ utilisation: 2 }, 'utilisation'],
    [{ tolerance: 2 }, 'tolerance'],
  ])('refuses %j', (change, path) => {
    expect(refusal(() => preloadRange({ ...joint, ...change } as never)).path).toBe(path);
  });

  it.each([null, undefined, 'M8x1'])('refuses %j for a joint', (input) => {
    expect(refusal(() => preloadRange(input as never)).message).toMatch(/^preloadRange: /);
  });
});
