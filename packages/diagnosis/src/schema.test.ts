import { describe, expect, it } from 'vitest';
import { diagnose } from './diagnose.ts';
import { CHECK_OUTCOMES } from './ids.ts';
import {
  diagnoseInputJsonSchema,
  diagnoseInputSchema,
  diagnosisJsonSchema,
  diagnosisSchema,
  measurementsSchema,
} from './schema.ts';

describe('schemas', () => {
  it('take what diagnose takes and refuse what it refuses', () => {
    const joint = 'square-taper-jis';
    expect(diagnoseInputSchema.safeParse({ joint, observations: { history: 'impact' } }).success).toBe(true);
    expect(diagnoseInputSchema.safeParse({ joint, observations: { history: ['impact', 'unknown'] } }).success).toBe(
      true,
    );
    for (const observations of [{ 'play-at-arms': 'none' }, { 'bore-flats': 'round' }, { 'bore-flats': ['rounded'] }]) {
      expect(diagnoseInputSchema.safeParse({ joint, observations }).success).toBe(false);
    }
    expect(diagnoseInputSchema.safeParse({ joint: 'spline-other', observations: {} }).success).toBe(false);
    expect(measurementsSchema.safeParse({ playAngleDeg: -1 }).success).toBe(false);
    expect(measurementsSchema.safeParse({ playAngleDeg: { value: 0.1, standardUncertainty: 0.1 } }).success).toBe(true);
  });

  it('a changed result is refused', () => {
    const result = diagnose({ joint: 'square-taper', observations: {} });
    expect(diagnosisSchema.parse(result)).toStrictEqual(result);
    expect(diagnosisSchema.safeParse({ ...result, doNotRide: 'no' }).success).toBe(false);
    expect(diagnosisSchema.safeParse({ ...result, extra: 1 }).success).toBe(false);
  });

  it('give JSON Schemas with ids, every check named', () => {
    const schema = diagnoseInputJsonSchema();
    expect(schema.$id).toBe('urn:spindlewright:schema:diagnose-input');
    for (const check of Object.keys(CHECK_OUTCOMES)) expect(JSON.stringify(schema)).toContain(`"${check}"`);
    expect(diagnosisJsonSchema().$id).toBe('urn:spindlewright:schema:diagnosis');
  });
});
