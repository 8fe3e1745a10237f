import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { assemblyLimit } from './assembly-limit.ts';
import { metricThread } from './metric-thread.ts';
import { propertyClass } from './property-class.ts';

const joint = {
  thread: metricThread({ nominalDiameterMm: 8, pitchMm: 1 }),
  propertyClass: '8.8',
  threadFriction: 0.12,
  bearing: { outerDiameterMm: 11.63, holeDiameterMm: 9 },
};

describe('assemblyLimit', () => {
  it('uses the wanted share of yield by pull and twist together', () => {
    const limit = assemblyLimit(joint);
    expect(limit.equivalentStressMPa).toBeCloseTo(0.9 * 640, 10);
    expect(Math.hypot(limit.tensileStressMPa, Math.sqrt(3) * limit.torsionalStressMPa)).toBeCloseTo(0.9 * 640, 9);
    expect(limit.preloadN).toBeCloseTo(limit.tensileStressMPa * joint.thread.stressAreaMm2, 8);
  });

  it('twists as the thread torque over the fully plastic modulus does', () => {
    const limit = assemblyLimit(joint);
    const threadTorqueNmm = limit.preloadN * (1 / (2 * Math.PI) + (0.12 * 1.155 * joint.thread.pitchDiameterMm) / 2);
    const plasticModulus = (Math.PI * joint.thread.stressDiameterMm ** 3) / 12;
    expect(limit.torsionalStressMPa).toBeCloseTo(threadTorqueNmm / plasticModulus, 9);
    const elastic = assemblyLimit({ ...joint, torsion: 'elastic' });
    expect(elastic.torsionalStressMPa / elastic.tensileStressMPa).toBeCloseTo(
      (4 / 3) * (limit.torsionalStressMPa / limit.tensileStressMPa),
      12,
    );
  });

  it('takes the head like the thread unless told otherwise', () => {
    expect(assemblyLimit({ ...joint, bearingFriction: 0.12 })).toEqual(assemblyLimit(joint));
    const greased = assemblyLimit({ ...joint, bearingFriction: 0.08 });
    expect(greased.preloadN).toBe(assemblyLimit(joint).preloadN);
    expect(greased.torqueNm).toBeLessThan(assemblyLimit(joint).torqueNm);
  });

  it('takes a class by id, by record or as a yield strength', () => {
    const byId = assemblyLimit(joint);
    expect(assemblyLimit({ ...joint, propertyClass: propertyClass('8.8', 8) }).preloadN).toBe(byId.preloadN);
    expect(assemblyLimit({ ...joint, propertyClass: { yieldStrengthMPa: 640 } }).preloadN).toBe(byId.preloadN);
    expect(byId.sources).toEqual(['iso-898-1-quoted', 'iso-898-1-ultimate-quoted', 'vdi-2230-2001-quoted']);
    // A bare number rests on nothing of ours, and nothing is known about its sizes.
    const bare = assemblyLimit({ ...joint, propertyClass: { yieldStrengthMPa: 640 } });
    expect(bare.sources).toEqual(['vdi-2230-2001-quoted']);
    expect(bare.findings.map((finding) => finding.code)).toEqual(['one-friction-value']);
  });

  it('says that the limit belongs to one friction', () => {
    expect(assemblyLimit(joint).findings.map((finding) => finding.code)).toEqual(['one-friction-value']);
  });

  it.each([
    [{ utilisation: 0 }, 'utilisation'],
    [{ utilisation: 1.01 }, 'utilisation'],
    [{ threadFriction: 1.5 }, 'threadFriction'],
    [{ propertyClass: '8.7' }, 'propertyClass'],
    [{ propertyClass: { yieldStrengthMPa: 0 } }, 'propertyClass.yieldStrengthMPa'],
    [{ propertyClass: undefined }, 'propertyClass'],
    [{ propertyClass: null }, 'propertyClass'],
    [{ propertyClass: { strengthMPa: 640 } }, 'propertyClass.yieldStrengthMPa'],
    [{ bearing: { outerDiameterMm: 8, holeDiameterMm: 9 } }, 'bearing.holeDiameterMm'],
    [{ torsion: 'none' }, 'torsion'],
  ])('refuses %j', (change, path) => {
    expect(refusal(() => assemblyLimit({ ...joint, ...change } as never)).path).toBe(path);
  });

  it.each([null, undefined, 'M8x1'])('refuses %j for a joint', (input) => {
    expect(refusal(() => assemblyLimit(input as never)).message).toMatch(/^assemblyLimit: /);
  });
});
