import { describe, expect, it } from 'vitest';
import * as schemas from '../schema.ts';
import { cotterWedge } from './cotter-wedge.ts';
import { faceSpline } from './face-spline.ts';
import { onePieceCrank } from './one-piece-crank.ts';
import { pinchClamp } from './pinch-clamp.ts';
import { splinePress } from './spline-press.ts';

const about = (nominal: number) => ({ lower: 0.9 * nominal, nominal, upper: 1.1 * nominal });
const spline = {
  axialForceN: about(25_000),
  forceToStopN: 15_000,
  friction: 0.13,
  taperPerSideDeg: 1,
  splineCount: 10,
  flankHeightMm: 1.8,
  engagedLengthMm: 16,
  meanRadiusMm: 10,
  allowablePressureMPa: 100,
  gapAtStopMm: 0.5,
};
const clamp = {
  boltPreloadN: about(8000),
  boltCount: 2,
  spindleDiameterMm: 24,
  clampWidthMm: 20,
  friction: 0.15,
  hingeToBoltMm: 30,
  hingeToAxisMm: 15,
  closingForceN: 300,
  clearanceMm: 0.05,
  axialPlayMm: 0.1,
  cap: { torqueNm: 0.7, threadDiameterMm: 20, nutFactor: 0.2, pitchMm: 1 },
};
const cotter = {
  pressForceN: about(10_000),
  flatAngleDeg: 5,
  flatFriction: 0.12,
  backFriction: 0.12,
  flatLengthMm: 12,
  flatWidthMm: 8,
  axisToFlatMm: 6.5,
  sameWayRound: true,
  slackMm: 0.1,
  acrossStiffnessNPerMm: 200_000,
};
const face = { axialForceN: 20_000, flankAngleDeg: 30, outerDiameterMm: 24, innerDiameterMm: 14 };
const crank = {
  pedalForceN: about(1000),
  crankLengthMm: 165,
  overhangMm: 80,
  barDiameterMm: 20,
  yieldStrengthMPa: 400,
};

describe('schemas of the other joints', () => {
  it.each([
    ['splinePress', schemas.splinePressInputSchema, spline, schemas.splinePressSchema, splinePress(spline)],
    ['pinchClamp', schemas.pinchClampInputSchema, clamp, schemas.pinchClampSchema, pinchClamp(clamp)],
    ['cotterWedge', schemas.cotterWedgeInputSchema, cotter, schemas.cotterWedgeSchema, cotterWedge(cotter)],
    ['faceSpline', schemas.faceSplineInputSchema, face, schemas.faceSplineSchema, faceSpline(face)],
    ['onePieceCrank', schemas.onePieceCrankInputSchema, crank, schemas.onePieceCrankSchema, onePieceCrank(crank)],
  ])('%s: takes what the function takes and gives, and nothing more', (_, inputSchema, input, schema, result) => {
    expect(inputSchema.safeParse(input).error).toBeUndefined();
    expect(schema.safeParse(JSON.parse(JSON.stringify(result))).error).toBeUndefined();
    expect(inputSchema.safeParse({ ...input, odd: 1 }).success).toBe(false);
    expect(schema.safeParse({ ...result, odd: 1 }).success).toBe(false);
  });
});
