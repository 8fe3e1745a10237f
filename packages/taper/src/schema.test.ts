import { jsonSchemaOf } from '@spindlewright/quantity/schema';
import { describe, expect, it } from 'vitest';
import { predictSeat } from './predict-seat.ts';
import * as schemas from './schema.ts';

const { pressFitInputSchema, seatInputSchema, seatPredictionSchema } = schemas;
const spindle = { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20 };
const arm = { acrossFlatsAtMouthMm: 13.6, faceAngleDeg: 2, boreLengthMm: 17 };

describe('schemas', () => {
  it('each can be written as JSON Schema under its name', () => {
    for (const [name, schema] of Object.entries(schemas)) {
      const id = name.replace(/Schema$/, '').replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
      expect(jsonSchemaOf(schema, id)).toMatchObject({ $id: `urn:spindlewright:schema:${id}`, type: 'object' });
    }
  });

  it('ask for both shapes and for a yield strength where a model needs it', () => {
    const ok = (input: unknown): boolean => seatInputSchema.safeParse(input).success;
    expect(ok({ spindle, arm })).toBe(true);
    expect(ok({ spindle })).toBe(false);
    expect(ok({})).toBe(false);
    expect(ok({ spindle, arm, pressing: { axialForceN: 1, friction: 0.1, compliance: 'ring-plastic' } })).toBe(false);
    expect(ok({ spindle: { ...spindle, faceAngleDeg: { value: 0.5, standardUncertainty: 0.2 } }, arm })).toBe(false);
    expect(pressFitInputSchema.safeParse({ spindle, arm, axialForceN: 1, friction: 0.1, boltPitchMm: 1 }).success).toBe(
      false,
    );
  });

  it('refuse a result with a verdict that does not exist', () => {
    const seat = predictSeat({ spindle, arm });
    expect(seatPredictionSchema.safeParse(seat).success).toBe(true);
    expect(seatPredictionSchema.safeParse({ ...seat, verdict: 'fits' }).success).toBe(false);
  });
});
