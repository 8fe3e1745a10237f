// Which way each result goes with each reading, the others kept.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, exactly, limitsOf, readingIn, SUBJECTS, type Subject } from './subjects.ts';

/** By joint and reading: what never falls with it (`+`) and what never rises (`-`). */
const SIGNS: Record<keyof typeof SUBJECTS, Record<string, string>> = {
  splinePress: {
    axialForceN: '+normalForceN +contactPressureMPa +stopForceN +pressReached +travelMm +interferenceMm -leftToStopMm',
    forceToStopN: '+normalForceN +leftToStopMm +stiffnessNPerMm -stopForceN -pressReached -travelMm -interferenceMm',
    friction: '+releaseForceN -normalForceN -contactPressureMPa',
    taperPerSideDeg: '-normalForceN -releaseForceN +interferenceMm',
    gapAtStopMm: '+travelMm +leftToStopMm +interferenceMm +normalForceN -stiffnessNPerMm -stopForceN -pressReached',
    flankHeightMm: '+torqueCapacityNm -contactPressureMPa',
    engagedLengthMm: '+torqueCapacityNm -contactPressureMPa',
    meanRadiusMm: '+torqueCapacityNm',
    allowablePressureMPa: '+torqueCapacityNm',
    carryingShare: '+torqueCapacityNm',
  },
  pinchClamp: {
    boltPreloadN: '+clampForceN +contactPressureMPa +slipTorqueNm +axialHoldN',
    closingForceN: '-clampForceN -contactPressureMPa -slipTorqueNm -axialHoldN +closingStiffnessNPerMm',
    friction: '+slipTorqueNm +axialHoldN',
    spindleDiameterMm: '+slipTorqueNm -contactPressureMPa',
    clampWidthMm: '-contactPressureMPa',
    hingeToBoltMm: '+clampForceN +slipTorqueNm +slotClosingMm -closingStiffnessNPerMm',
    hingeToAxisMm: '-clampForceN -slipTorqueNm -slotClosingMm +closingStiffnessNPerMm',
    clearanceMm: '+slotClosingMm -closingStiffnessNPerMm',
    slotGapMm: '+clampForceN +slipTorqueNm +axialHoldN',
  },
  cotterWedge: {
    pressForceN: '+normalForceN +contactPressureMPa +firstEdgeUnloadingNm +rockingLimitNm +travelMm',
    flatAngleDeg: '-normalForceN -contactPressureMPa -travelPerSlackRatio -slackTravelMm -travelMm +stiffnessNPerMm',
    flatFriction: '-normalForceN -firstEdgeUnloadingNm -travelMm +releaseForceN +stiffnessNPerMm',
    backFriction: '-normalForceN -firstEdgeUnloadingNm -travelMm +releaseForceN +stiffnessNPerMm',
    flatLengthMm: '+firstEdgeUnloadingNm +rockingLimitNm -contactPressureMPa -shearStressMPa',
    flatWidthMm: '-contactPressureMPa -shearStressMPa',
    axisToFlatMm: '-shearStressMPa',
    crankTorqueNm: '+shearStressMPa',
    slackMm: '+slackTravelMm',
    acrossStiffnessNPerMm: '-travelMm +stiffnessNPerMm',
  },
  faceSpline: {
    axialForceN: '+torqueCapacityNm +openingMomentNm +contactPressureMPa +reserveRatio',
    flankAngleDeg: '-torqueCapacityNm -openingMomentNm +neededForceN -reserveRatio',
    outerDiameterMm: '+torqueCapacityNm +openingMomentNm -neededForceN -contactPressureMPa +reserveRatio',
    innerDiameterMm: '+torqueCapacityNm +openingMomentNm -neededForceN +contactPressureMPa',
    bearingShare: '-contactPressureMPa',
    torqueNm: '+neededForceN -openingMomentNm -reserveRatio',
    bendingNm: '+neededForceN -reserveRatio',
  },
  onePieceCrank: {
    pedalForceN: '+torqueNm +bendingNm +equivalentStressMPa +yieldShare',
    crankLengthMm: '+torqueNm +equivalentStressMPa +yieldShare',
    overhangMm: '+bendingNm +equivalentStressMPa +yieldShare',
    barDiameterMm: '-equivalentStressMPa -yieldShare',
    yieldStrengthMPa: '-yieldShare',
  },
};

const cases = Object.entries(SIGNS).flatMap(([joint, signs]) =>
  Object.entries(signs).map(([reading, results]) => [joint, reading, results] as const),
);

const subjects: Record<string, Subject> = SUBJECTS;

describe.each(cases)('%s with %s', (joint, reading, results) => {
  const subject = subjects[joint];
  const range = subject?.ranges[reading];
  if (subject === undefined || range === undefined) throw new Error(`no ${reading} of ${joint}`);

  it(`goes ${results}`, () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(exactly(subject), readingIn(range), (input, other) => {
        const first = input[reading] ?? 0;
        const at = (value: number): Map<string, number> =>
          new Map(
            limitsOf(call(subject, { ...input, [reading]: value })).map(([name, { nominal }]) => [name, nominal]),
          );
        const [low, high] = [at(Math.min(first, other)), at(Math.max(first, other))];
        for (const entry of results.split(' ')) {
          const name = entry.slice(1);
          const [before, after] = [low.get(name), high.get(name)];
          // Without a bound it is null.
          if (before === undefined || after === undefined) continue;
          const rise = entry.startsWith('+') ? after - before : before - after;
          expect(rise, name).toBeGreaterThanOrEqual(-1e-12 * (Math.abs(before) + Math.abs(after)));
          if (rise > 0) seen.add(name);
        }
      }),
      { numRuns: 200 },
    );
    // Each result did move: a law of what stands still would hold by itself.
    expect([...seen].sort()).toEqual(
      results
        .split(' ')
        .map((entry) => entry.slice(1))
        .sort(),
    );
  });
});

it('has a sign for every reading of every joint', () => {
  for (const [joint, { ranges }] of Object.entries(subjects)) {
    expect(Object.keys(SIGNS[joint as keyof typeof SUBJECTS]).sort(), joint).toEqual(Object.keys(ranges).sort());
  }
});
