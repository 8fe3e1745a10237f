import { convert, type Limits } from '@spindlewright/quantity';
import {
  type Compliance,
  coneForces,
  faceAngleFromTaper,
  loadMargin,
  type PressFit,
  predictSeat,
  pressFit,
  settledPreload,
  shrinkFit,
} from '@spindlewright/taper';
import { type Adapters, type Cell, numberIn, type Row, textIn } from '../adapter.ts';

const tangent = (angleDeg: number): number => Math.tan((angleDeg * Math.PI) / 180);
const numberOr = (row: Row, column: string, otherwise: number): number => {
  const cell: Cell | undefined = row[column];
  return typeof cell === 'number' ? cell : otherwise;
};

/** The joint of the finite-element runs; a row overrides what it varies. */
function pressOf(row: Row, compliance?: Compliance): PressFit {
  const lengthMm = numberOr(row, 'engagedLengthMm', 14);
  const faceAngleDeg = numberOr(row, 'faceAngleDeg', 2);
  const boreFaceAngleDeg = numberOr(row, 'boreFaceAngleDeg', faceAngleDeg);
  const yieldStrengthMPa = row.yieldStrengthMPa;
  return pressFit({
    spindle: {
      acrossFlatsAtEndMm: 12.6,
      faceAngleDeg,
      flatLengthMm: lengthMm + 6,
      cornerDiameterMm: numberOr(row, 'cornerDiameterMm', 16.5),
    },
    arm: {
      // First contact with the mouth at that length, at the steeper of the two angles.
      acrossFlatsAtMouthMm: 12.6 + 2 * lengthMm * tangent(Math.max(faceAngleDeg, boreFaceAngleDeg)),
      faceAngleDeg: boreFaceAngleDeg,
      boreLengthMm: lengthMm + numberOr(row, 'collarMm', 1.5),
      bossDiameterMm: numberOr(row, 'bossDiameterMm', 34),
      boreCornerRadiusMm: numberOr(row, 'boreCornerRadiusMm', 1),
    },
    axialForceN: numberOr(row, 'axialForceN', 12000),
    friction: numberOr(row, 'friction', 0.1),
    materials: {
      spindle: { youngsModulusGPa: 205, poissonsRatio: 0.29 },
      arm: {
        youngsModulusGPa: 70,
        poissonsRatio: 0.33,
        ...(typeof yieldStrengthMPa === 'number' ? { yieldStrengthMPa } : {}),
      },
    },
    ...(compliance === undefined ? {} : { compliance }),
  });
}

/** The two-dimensional runs: 13 mm across flats in the middle of the length, flats of the width of the row. */
function sectionOf(row: Row, compliance?: Compliance): PressFit {
  const lengthMm = 14;
  const taperMm = lengthMm * tangent(2);
  return pressFit({
    spindle: {
      acrossFlatsAtEndMm: 13 - taperMm,
      faceAngleDeg: 2,
      flatLengthMm: 20,
      cornerDiameterMm: Math.hypot(13, numberOr(row, 'flatWidthMm', 10)),
    },
    arm: {
      acrossFlatsAtMouthMm: 13 + taperMm,
      faceAngleDeg: 2,
      boreLengthMm: lengthMm,
      bossDiameterMm: numberIn(row, 'bossDiameterMm'),
      boreCornerRadiusMm: numberOr(row, 'boreCornerRadiusMm', 1),
    },
    axialForceN: 1000,
    friction: 0.1,
    materials: {
      spindle: { youngsModulusGPa: 205, poissonsRatio: 0.29 },
      arm: { youngsModulusGPa: 70, poissonsRatio: 0.33 },
    },
    ...(compliance === undefined ? {} : { compliance }),
  });
}

const insideLimits = (press: PressFit, row: Row): boolean => {
  const range = press.travelRangeMm;
  const travelMm = numberIn(row, 'travelMm');
  return range !== null && range.lower <= travelMm && travelMm <= range.upper;
};

/** The limits of what stays open hold the row. */
const openingInside = (press: PressFit, row: Row): boolean => {
  const limits = press.permanentOpeningMm;
  const openMm = numberIn(row, 'permanentOpeningMm');
  return limits !== null && limits.lower <= openMm && openMm <= limits.upper;
};

const removalRatio = (row: Row): Record<string, Cell> => ({
  removalRatio: pressOf(row).releaseForceN / numberIn(row, 'axialForceN'),
});

/** How much farther in the arm sits on the smaller of two spindles. */
function seatShift(row: Row): Record<string, Cell> {
  const faceAngleDeg = numberIn(row, 'faceAngleDeg');
  const mouth = (acrossFlatsAtEndMm: number): number =>
    predictSeat({
      spindle: { acrossFlatsAtEndMm, faceAngleDeg, flatLengthMm: 20 },
      arm: { acrossFlatsAtMouthMm: 13.6, faceAngleDeg, boreLengthMm: 20 },
    }).handFit.mouthFromEndMm.nominal;
  return { shiftMm: mouth(numberIn(row, 'smallerMm')) - mouth(numberIn(row, 'largerMm')) };
}

const GPA_PER_MPSI = convert(1e3, 'psi', 'MPa');

/** A solid steel shaft in a ring, in the units of the row. */
function inchFit(row: Row): Record<string, Cell> {
  const inMm = (column: string): number => convert(numberIn(row, column), 'in', 'mm');
  const fit = shrinkFit({
    interfaceDiameterMm: 2 * inMm('interfaceRadiusIn'),
    outerDiameterMm: 2 * inMm('outerRadiusIn'),
    diametralInterferenceMm: 2 * inMm('radialInterferenceIn'),
    inner: { youngsModulusGPa: 30 * GPA_PER_MPSI, poissonsRatio: 0.292 },
    outer: {
      youngsModulusGPa: numberIn(row, 'outerModulusMpsi') * GPA_PER_MPSI,
      poissonsRatio: numberIn(row, 'outerPoissonsRatio'),
    },
  });
  return {
    pressurePsi: convert(fit.pressureMPa, 'MPa', 'psi'),
    outerHoopPsi: convert(fit.outerHoopStressMPa, 'MPa', 'psi'),
    innerHoopPsi: convert(fit.innerHoopStressMPa, 'MPa', 'psi'),
  };
}

function classFit(row: Row): Record<string, Cell> {
  const inches = textIn(row, 'unit') === 'in';
  const size = (column: string): number => numberIn(row, column) * (inches ? 25.4 : 1);
  const steel = { youngsModulusGPa: numberIn(row, 'modulus') * (inches ? GPA_PER_MPSI : 1), poissonsRatio: 0.292 };
  const { pressureMPa } = shrinkFit({
    interfaceDiameterMm: size('interfaceDiameter'),
    outerDiameterMm: size('outerDiameter'),
    diametralInterferenceMm: 2 * size('radialInterference'),
    inner: steel,
    outer: steel,
  });
  return { pressure: inches ? convert(pressureMPa, 'MPa', 'psi') : pressureMPa };
}

function pushUp(row: Row): Record<string, Cell> {
  const { faceAngleDeg } = faceAngleFromTaper({ taperRatio: 1 / 12 });
  const fit = shrinkFit({
    interfaceDiameterMm: 30,
    outerDiameterMm: 60,
    diametralInterferenceMm: 0.5 / 12,
    inner: { youngsModulusGPa: 207, poissonsRatio: 0.292 },
    outer: { youngsModulusGPa: 71.7, poissonsRatio: 0.333 },
  });
  const { pressureMPa, outerHoopStressMPa } = fit;
  const friction = numberIn(row, 'friction');
  const forces = coneForces({ pressureMPa, meanDiameterMm: 30, lengthMm: 30, faceAngleDeg, friction });
  return {
    pressureMPa,
    boreHoopMPa: outerHoopStressMPa,
    pushOnKN: forces.pushOnForceN / 1000,
    releaseKN: forces.releaseForceN / 1000,
  };
}

/** Stiffness over that of the same joint without a collar; the spindle as stiff as the domain allows. */
function collarHelp(row: Row): Record<string, Cell> {
  const stiffness = (collarMm: number): number =>
    pressFit({
      spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
      arm: {
        acrossFlatsAtMouthMm: 12.6 + 28 * tangent(2),
        faceAngleDeg: 2,
        boreLengthMm: 14 + collarMm,
        bossDiameterMm: numberIn(row, 'bossDiameterMm'),
      },
      axialForceN: 1000,
      friction: 0.1,
      materials: { spindle: { youngsModulusGPa: 1000, poissonsRatio: 0.29 } },
    }).stiffnessNPerMm;
  return { stiffnessRatio: stiffness(numberIn(row, 'collarMm')) / stiffness(0) };
}

const angleOf = (row: Row): Record<string, Cell> => faceAngleFromTaper({ taperRatio: numberIn(row, 'taperRatio') });

function torqueLiftOff(row: Row): Record<string, Cell> {
  const torsionLimitNm =
    loadMargin({
      spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
      arm: { acrossFlatsAtMouthMm: 12.6 + 28 * tangent(2), faceAngleDeg: 2, boreLengthMm: 15.5 },
      axialForceN: 12000,
      friction: numberIn(row, 'friction'),
      squareOrientation: 'flat-in-line',
      load: { pedalForceN: 0, crankLengthMm: 170, overhangMm: 0, faceToSeatMm: 0, crankAngleDeg: 0 },
    }).torsionLimitWithFrictionNm?.nominal ?? Number.NaN;
  const insideRows =
    torsionLimitNm > numberIn(row, 'contactFullAtNm') && torsionLimitNm < numberIn(row, 'contactShrinksAtNm');
  return { torsionLimitNm, insideRows };
}

function loadEdges(row: Row): Record<string, Cell> {
  const lengthMm = numberIn(row, 'engagedLengthMm');
  const faceAngleDeg = numberIn(row, 'faceAngleDeg');
  const { left, right } = loadMargin({
    spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg, flatLengthMm: lengthMm + 6, cornerDiameterMm: 16.5 },
    arm: {
      acrossFlatsAtMouthMm: 12.6 + 2 * lengthMm * tangent(faceAngleDeg),
      faceAngleDeg,
      boreLengthMm: lengthMm + 1.5,
    },
    axialForceN: numberIn(row, 'axialForceN'),
    friction: numberIn(row, 'friction'),
    squareOrientation: textIn(row, 'squareOrientation') === 'flat-in-line' ? 'flat-in-line' : 'corner-in-line',
    load: {
      pedalForceN: numberIn(row, 'pedalForceN'),
      crankLengthMm: numberIn(row, 'crankLengthMm'),
      overhangMm: numberIn(row, 'overhangMm'),
      faceToSeatMm: numberIn(row, 'faceToSeatMm'),
      crankAngleDeg: numberIn(row, 'crankAngleDeg'),
    },
  });
  // The rows take the spindle for rigid, the best that can be hoped of it: the upper limit.
  return { left: left.firstEdgeUnloading?.upper ?? null, right: right.firstEdgeUnloading?.upper ?? null };
}

export const adapters: Adapters = {
  'load-edges': loadEdges,
  'load-edges-shear': loadEdges,
  'load-edges-bending': (row) => {
    const { right } = loadMargin({
      spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 },
      arm: { acrossFlatsAtMouthMm: 12.6 + 28 * tangent(2), faceAngleDeg: 2, boreLengthMm: 15.5 },
      axialForceN: numberIn(row, 'axialForceN'),
      friction: 0.1,
      squareOrientation: textIn(row, 'squareOrientation') === 'flat-in-line' ? 'flat-in-line' : 'corner-in-line',
      // An arm that points down takes no torque.
      load: { pedalForceN: 1000, crankLengthMm: 170, overhangMm: 65, faceToSeatMm: 15, crankAngleDeg: 90 },
    });
    const at = (end: keyof Limits): number => (right.firstEdgeUnloading?.[end] ?? 0) * right.bendingNm.nominal;
    const rowNm = numberIn(row, 'unloadsAtNm');
    return {
      unloadsAtNm: at('nominal'),
      isSafe: at('nominal') <= rowNm,
      insideLimits: at('lower') <= rowNm && rowNm <= at('upper'),
    };
  },
  'press-travel-fitted': (row) => {
    const { travelMm, normalForceN, stiffnessNPerMm } = pressOf(row);
    return { travelMm, normalForceN, stiffnessNPerMm };
  },
  'press-slope-ring': (row) => ({ stiffnessNPerMm: pressOf(row, 'ring').stiffnessNPerMm }),
  'press-slope-ring-flush': (row) => ({ stiffnessNPerMm: pressOf(row, 'ring').stiffnessNPerMm }),
  'press-travel-elastic': (row) => {
    const { travelMm, contactPressureMPa } = pressOf(row);
    return { travelMm, contactPressureMPa };
  },
  'press-travel-plastic': (row) => {
    const press = pressOf(row);
    return { travelMm: press.travelMm, insideLimits: insideLimits(press, row) };
  },
  'press-travel-plastic-varied': (row) => {
    const press = pressOf(row);
    const upperIsSafe = (press.travelRangeMm?.upper ?? 0) >= 0.98 * numberIn(row, 'travelMm');
    return { travelMm: press.travelMm, insideLimits: insideLimits(press, row), upperIsSafe };
  },
  'press-travel-elastic-varied': (row) => ({ travelMm: pressOf(row).travelMm }),
  'permanent-opening-varied': (row) => {
    const press = pressOf(row);
    const permanentOpeningMm = press.permanentOpeningMm?.nominal ?? null;
    return { permanentOpeningMm, insideLimits: openingInside(press, row) };
  },
  'press-unequal-angles-varied': (row) => {
    const press = pressOf(row);
    return { travelMm: press.travelMm, insideLimits: insideLimits(press, row) };
  },
  'press-collapse': (row) => {
    const { travelMm, findings } = pressOf(row);
    return { travelMm, stop: findings.find((finding) => finding.severity === 'stop')?.code ?? null };
  },
  'press-unequal-angles': (row) => {
    const press = pressOf(row);
    return { travelMm: press.travelMm, normalForceN: press.normalForceN, insideLimits: insideLimits(press, row) };
  },
  'arm-compliance': (row) => ({ armFactor: sectionOf(row).complianceFactors?.armFactor ?? null }),
  'spindle-compliance': (row) => ({ spindleFactor: sectionOf(row).complianceFactors?.spindleFactor ?? null }),
  'spindle-compliance-bosses': (row) => ({ spindleFactor: sectionOf(row).complianceFactors?.spindleFactor ?? null }),
  'permanent-opening': (row) => {
    const { permanentOpeningMm, repressTravelMm } = pressOf(row);
    return {
      permanentOpeningMm: permanentOpeningMm?.nominal ?? null,
      repressTravelMm: repressTravelMm?.nominal ?? null,
    };
  },
  'torque-lift-off': torqueLiftOff,
  'corner-stress': (row) => {
    const { boreCornerStressMPa, contactPressureMPa } = sectionOf(row);
    return { stressRatio: (boreCornerStressMPa ?? Number.NaN) / (contactPressureMPa ?? Number.NaN) };
  },
  'ring-compliance': (row) => ({ ...sectionOf(row, 'ring').complianceFactors }),
  'removal-ratio': removalRatio,
  'removal-ratio-plastic': removalRatio,
  'wedge-statics': (row) => {
    const { normalForceN } = pressOf(row);
    return { forceOverNormalRatio: 12000 / normalForceN, normalPerForceRatio: normalForceN / 12000 };
  },
  'wedge-share': (row) => {
    const friction = numberIn(row, 'friction');
    const joint = { preloadN: 1000, faceAngleDeg: 2, travelMm: 0.8, boltStiffnessNPerMm: 200000 };
    return { wedgeShare: settledPreload({ ...joint, friction }).frictionlessForceN / 1000 };
  },
  'shrink-fit-inch': inchFit,
  'shrink-fit-classes': classFit,
  'friction-capacity': (row) => ({
    ...coneForces({
      pressureMPa: numberIn(row, 'pressureMPa'),
      meanDiameterMm: numberIn(row, 'diameterMm'),
      lengthMm: numberIn(row, 'lengthMm'),
      faceAngleDeg: 0,
      friction: numberIn(row, 'friction'),
    }),
    findings: null,
  }),
  'taper-push-up': pushUp,
  'taper-angles': angleOf,
  'taper-angle-morse': angleOf,
  'seat-shift-published': seatShift,
  'seat-shift-derived': seatShift,
  'seat-shift-claim': seatShift,
  'collar-help': collarHelp,
};
