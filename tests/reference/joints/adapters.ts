import { convert, type Limits } from '@spindlewright/quantity';
import { cotterWedge, faceSpline, onePieceCrank, pinchClamp, splinePress } from '@spindlewright/taper';
import { type Adapters, numberIn, type Row } from '../adapter.ts';

const radians = (angleDeg: number): number => (angleDeg * Math.PI) / 180;
const mm = (inches: number): number => convert(inches, 'in', 'mm');
const newtons = (lbf: number): number => convert(lbf, 'lbf', 'N');
const lbf = (force: number): number => convert(force, 'N', 'lbf');
const psi = (pressure: number): number => convert(pressure, 'MPa', 'psi');

const nominal = (limits: Limits | null): number | null => limits?.nominal ?? null;

/** Splines of which a row asks only a part; what it does not ask has no bearing on that. */
const splines = { axialForceN: 1000, forceToStopN: 1000, friction: 0.1, taperPerSideDeg: 1, carryingShare: 1 } as const;

/** A cotter on a flat of 12 by 8 mm. */
const flat = { flatLengthMm: 12, flatWidthMm: 8, axisToFlatMm: 6.5 } as const;

const slips = (row: Row): { lower: number; nominal: number; upper: number } =>
  pinchClamp({
    boltPreloadN: 1000 * numberIn(row, 'preloadKN'),
    boltCount: numberIn(row, 'bolts'),
    spindleDiameterMm: numberIn(row, 'diameterMm'),
    clampWidthMm: 20,
    friction: numberIn(row, 'friction'),
    hingeToBoltMm: numberIn(row, 'boltLeverMm'),
    hingeToAxisMm: numberIn(row, 'axisLeverMm'),
  }).slipTorqueNm;

export const adapters: Adapters = {
  'spline-torque-sae': (row) => {
    const outer = numberIn(row, 'outerIn');
    const depth = outer * numberIn(row, 'depthShare');
    const { torqueCapacityNm } = splinePress({
      ...splines,
      splineCount: numberIn(row, 'splines'),
      flankHeightMm: mm(depth),
      engagedLengthMm: mm(1),
      meanRadiusMm: mm((outer - depth) / 2),
      allowablePressureMPa: convert(1000, 'psi', 'MPa'),
    });
    return { torqueLbfIn: convert(torqueCapacityNm.nominal, 'Nm', 'lbf.in') };
  },
  'spline-wedge-cone': (row) => {
    const forceToStopN = 1000 * numberIn(row, 'forceToStopKN');
    const press = splinePress({
      ...splines,
      axialForceN: forceToStopN,
      forceToStopN,
      friction: numberIn(row, 'friction'),
      taperPerSideDeg: numberIn(row, 'angleDeg'),
      splineCount: numberIn(row, 'splines'),
      flankHeightMm: numberIn(row, 'flankHeightMm'),
      engagedLengthMm: numberIn(row, 'flankLengthMm'),
      meanRadiusMm: 15,
      allowablePressureMPa: 100,
    });
    return { pressureMPa: press.contactPressureMPa.nominal, releaseKN: press.releaseForceN.nominal / 1000 };
  },
  'spline-travel-cone': (row) => {
    const press = splinePress({
      ...splines,
      axialForceN: 1000 * numberIn(row, 'axialForceKN'),
      forceToStopN: 1000 * numberIn(row, 'forceToStopKN'),
      taperPerSideDeg: numberIn(row, 'angleDeg'),
      gapAtStopMm: numberIn(row, 'gapMm'),
      splineCount: 10,
      flankHeightMm: 2,
      engagedLengthMm: 16,
      meanRadiusMm: 10,
      allowablePressureMPa: 100,
    });
    return {
      travelMm: nominal(press.travelMm),
      interferenceMm: nominal(press.interferenceMm),
      stiffnessKNPerMm: (nominal(press.stiffnessNPerMm) ?? Number.NaN) / 1000,
    };
  },
  'clamp-slot-closing': (row) => {
    const clamp = pinchClamp({
      boltPreloadN: 8000,
      boltCount: 2,
      spindleDiameterMm: 24,
      clampWidthMm: 20,
      friction: 0.15,
      hingeToBoltMm: numberIn(row, 'boltLeverMm'),
      hingeToAxisMm: numberIn(row, 'axisLeverMm'),
      closingForceN: numberIn(row, 'closingForceN'),
      clearanceMm: numberIn(row, 'clearanceMm'),
      axialPlayMm: numberIn(row, 'playMm'),
      cap: { torqueNm: 0.7, threadDiameterMm: 20, nutFactor: 0.2, pitchMm: numberIn(row, 'pitchMm') },
    });
    return {
      closingMm: nominal(clamp.slotClosingMm),
      stiffnessNPerMm: nominal(clamp.closingStiffnessNPerMm),
      capTurns: nominal(clamp.capTurns),
    };
  },
  'clamp-collar': (row) => {
    const shaft = mm(numberIn(row, 'shaftIn'));
    const clamp = pinchClamp({
      boltPreloadN: newtons(numberIn(row, 'screwLbf')),
      boltCount: 1,
      spindleDiameterMm: shaft,
      clampWidthMm: mm(numberIn(row, 'widthIn')),
      friction: numberIn(row, 'friction'),
      // A ring cut at its screw hinges opposite to it.
      hingeToBoltMm: 2 * shaft,
      hingeToAxisMm: shaft,
    });
    return { pressurePsi: psi(clamp.contactPressureMPa.nominal), axialHoldLbf: lbf(clamp.axialHoldN.upper) };
  },
  'clamp-cap-force': (row) => ({
    forceN:
      pinchClamp({
        boltPreloadN: 8000,
        boltCount: 2,
        spindleDiameterMm: 24,
        clampWidthMm: 20,
        friction: 0.15,
        hingeToBoltMm: 30,
        hingeToAxisMm: 15,
        cap: {
          torqueNm: numberIn(row, 'torqueNm'),
          threadDiameterMm: numberIn(row, 'threadMm'),
          nutFactor: numberIn(row, 'nutFactor'),
        },
      }).capForceN?.nominal ?? null,
  }),
  'clamp-pressure-factors': (row) => {
    const { lower, nominal, upper } = slips(row);
    return { lineSlipNm: lower, cosineSlipNm: nominal, evenSlipNm: upper };
  },
  'cotter-wedge-block': (row) => {
    const friction = numberIn(row, 'friction');
    const pressForceN = 1000;
    const cotter = cotterWedge({
      ...flat,
      pressForceN,
      flatAngleDeg: numberIn(row, 'angleDeg'),
      flatFriction: friction,
      backFriction: friction,
    });
    const along = row.onto === true ? pressForceN : cotter.releaseForceN.nominal;
    const resultant = cotter.normalForceN.nominal * Math.hypot(1, friction);
    return { alongLbf: (along / resultant) * numberIn(row, 'resultantLbf') };
  },
  'cotter-friction-angles': (row) => {
    const flatFriction = numberIn(row, 'flatFriction');
    const angle = radians(numberIn(row, 'angleDeg'));
    const { normalForceN, releaseForceN } = cotterWedge({
      ...flat,
      pressForceN: 1000 * numberIn(row, 'pressKN'),
      flatAngleDeg: numberIn(row, 'angleDeg'),
      flatFriction,
      backFriction: numberIn(row, 'backFriction'),
    });
    const across = (sign: number): number =>
      normalForceN.nominal * (Math.cos(angle) + sign * flatFriction * Math.sin(angle));
    return { acrossKN: across(-1) / 1000, releasePerAcrossRatio: releaseForceN.nominal / across(1) };
  },
  'cotter-travel': (row) => {
    const cotter = cotterWedge({
      ...flat,
      pressForceN: 1000 * numberIn(row, 'pressKN'),
      flatAngleDeg: numberIn(row, 'angleDeg'),
      flatFriction: numberIn(row, 'flatFriction'),
      backFriction: numberIn(row, 'backFriction'),
      slackMm: numberIn(row, 'slackMm'),
      acrossStiffnessNPerMm: 1000 * numberIn(row, 'stiffnessKNPerMm'),
    });
    return { slackTravelMm: nominal(cotter.slackTravelMm), pressTravelMm: nominal(cotter.travelMm) };
  },
  'cotter-flat-edge': (row) => {
    const cotter = cotterWedge({
      pressForceN: 1000 * numberIn(row, 'pressKN'),
      flatAngleDeg: numberIn(row, 'angleDeg'),
      flatFriction: 0,
      backFriction: 0,
      flatLengthMm: numberIn(row, 'lengthMm'),
      flatWidthMm: numberIn(row, 'widthMm'),
      axisToFlatMm: 6.5,
    });
    return {
      firstEdgeNm: cotter.firstEdgeUnloadingNm.nominal,
      rockingNm: cotter.rockingLimitNm.nominal,
      evenPressureMPa: cotter.contactPressureMPa.nominal,
    };
  },
  'cotter-key': (row) => {
    const { shearStressMPa } = cotterWedge({
      pressForceN: 1000,
      flatAngleDeg: 5,
      flatFriction: 0.1,
      backFriction: 0.1,
      flatLengthMm: mm(numberIn(row, 'keyLengthIn')),
      flatWidthMm: mm(numberIn(row, 'keyWidthIn')),
      axisToFlatMm: mm(numberIn(row, 'shaftIn') / 2),
      crankTorqueNm: convert(numberIn(row, 'torqueLbfIn'), 'lbf.in', 'Nm'),
    });
    return { shearPsi: psi(shearStressMPa.nominal) };
  },
  'face-teeth-statics': (row) => {
    const joint = faceSpline({
      axialForceN: 1000 * numberIn(row, 'axialKN'),
      flankAngleDeg: numberIn(row, 'flankDeg'),
      outerDiameterMm: numberIn(row, 'outerMm'),
      innerDiameterMm: numberIn(row, 'innerMm'),
      torqueNm: numberIn(row, 'torqueNm'),
      bendingNm: numberIn(row, 'bendingNm'),
    });
    return {
      climbNm: joint.torqueCapacityNm.nominal,
      needKN: joint.neededForceN.nominal / 1000,
      bearingMPa: joint.contactPressureMPa.nominal,
    };
  },
  'one-piece-lever': (row) => {
    // Half of every length and a quarter of the force: no crank is 15 in long.
    const bar = onePieceCrank({
      pedalForceN: newtons(numberIn(row, 'forceLbf')) / 4,
      crankLengthMm: mm(numberIn(row, 'leverIn')) / 2,
      overhangMm: mm(numberIn(row, 'overhangIn')) / 2,
      barDiameterMm: mm(numberIn(row, 'diameterIn')) / 2,
      ...(row.yieldPsi === null ? {} : { yieldStrengthMPa: convert(numberIn(row, 'yieldPsi'), 'psi', 'MPa') }),
    });
    return {
      equivalentPsi: psi(bar.equivalentStressMPa.nominal),
      yieldShare: bar.yieldShare === null ? null : bar.yieldShare.nominal,
    };
  },
};
