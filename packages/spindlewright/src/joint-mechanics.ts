import type { InterfaceRecord } from '@spindlewright/interfaces';
import { type Datum, type Finding, limitsOf, type Measurand } from '@spindlewright/quantity';
import { cotterWedge, faceSpline, onePieceCrank, pinchClamp, splinePress } from '@spindlewright/taper';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import type { FasteningPlan, JointPart } from './joint-part.ts';
import { pathWords } from './seat-words.ts';
import { withReadingError } from './with-reading-error.ts';

/** What the mechanics of a joint give, what was taken for it, and why a part of it was not worked. @internal */
export interface Mechanics {
  part: Pick<JointPart, 'clamp' | 'spline' | 'cotter' | 'faceTeeth' | 'bar'>;
  findings: readonly Finding[];
  taken: readonly { words: string; datum: Datum }[];
  /** Why nothing was reckoned, when nothing was. */
  notWorked?: string;
}

const NOTHING = { part: {}, findings: [], taken: [] } as const;

/** Works the mechanics of the joint as far as its readings go. @internal */
export function jointMechanics(job: Job, record: InterfaceRecord, plan: Omit<FasteningPlan, 'steps'>): Mechanics {
  const { preloadN } = plan;
  const most = record.family === 'through-spindle' ? MOST_PINCHED_N : MOST_N;
  if (preloadN !== undefined && preloadN.upper > most) return { ...NOTHING, notWorked: TOO_MUCH };
  switch (record.family) {
    case 'through-spindle':
      return record.drawnTight.by === 'pinch-bolts' ? clampOf(job, record, plan) : NO_MODEL_OF_BOLT;
    case 'spline':
      return splineOf(job, record, plan);
    case 'cottered':
      return cotterOf(job);
    case 'face-spline':
      return teethOf(job, plan);
    case 'one-piece':
      return barOf(job);
    case 'square-taper':
      return {
        ...NOTHING,
        notWorked: 'no size of this square is published, so that neither seat nor press can be reckoned',
      };
  }
}

/** Ends of the domains of the models, N. */
const MOST_PINCHED_N = 100_000;
const MOST_N = 200_000;
const TOO_MUCH = 'the preload at this torque lies beyond what the model is made for: look torque and thread up again';

const NO_MODEL_OF_BOLT: Mechanics = {
  ...NOTHING,
  notWorked:
    'a splined arm drawn on by one bolt has no model here: the splines carry the torque, the bolt only keeps them',
};

const length = (reading: Measurand): Measurand => withReadingError(reading, jobDefaults.lengthReading);

function clampOf(
  { clamp = {} }: Job,
  record: Extract<InterfaceRecord, { family: 'through-spindle' }>,
  { preloadN }: Omit<FasteningPlan, 'steps'>,
): Mechanics {
  if (preloadN === undefined) {
    return { ...NOTHING, notWorked: 'the preload of the pinch bolts is not known without their torque and thread' };
  }
  const { clampWidth, hingeToBolt, hingeToAxis, clampFriction, pinchBolts } = jobDefaults;
  const { slotGapMm, axialPlayMm } = clamp;
  const worked = pinchClamp({
    boltPreloadN: preloadN,
    boltCount: clamp.boltCount ?? pinchBolts.value,
    spindleDiameterMm: limitsOf(record.geometry.nonDriveSideDiameterMm),
    clampWidthMm: clamp.clampWidthMm === undefined ? limitsOf(clampWidth) : length(clamp.clampWidthMm),
    friction: limitsOf(clampFriction),
    hingeToBoltMm: clamp.hingeToBoltMm ?? limitsOf(hingeToBolt),
    hingeToAxisMm: clamp.hingeToAxisMm ?? limitsOf(hingeToAxis),
    ...(slotGapMm === undefined ? {} : { slotGapMm: withReadingError(slotGapMm, jobDefaults.depthReading, null) }),
    ...(axialPlayMm === undefined ? {} : { axialPlayMm }),
  });
  const taken: [boolean, string, Datum][] = [
    [clamp.boltCount === undefined, 'number of pinch bolts', pinchBolts],
    [clamp.clampWidthMm === undefined, 'width of the clamp', clampWidth],
    [clamp.hingeToBoltMm === undefined, 'hinge of the clamp to its bolts', hingeToBolt],
    [clamp.hingeToAxisMm === undefined, 'hinge of the clamp to the axis', hingeToAxis],
    [true, 'friction of the arm on the spindle', clampFriction],
  ];
  return { part: { clamp: worked }, findings: worked.findings, taken: named(taken) };
}

function splineOf(
  { spline = {} }: Job,
  { geometry }: Extract<InterfaceRecord, { family: 'spline' }>,
  { preloadN }: Omit<FasteningPlan, 'steps'>,
): Mechanics {
  const { taperPerSideDeg, engagementMm, majorDiameterMm, minorDiameterMm, splineCount } = geometry;
  if (taperPerSideDeg === undefined || engagementMm === undefined || !majorDiameterMm || !minorDiameterMm) {
    return {
      ...NOTHING,
      notWorked:
        'the splines of this joint have no press that is published: they carry the torque, and the bolt only keeps the arm home',
    };
  }
  if (spline.forceToStopN === undefined || preloadN === undefined) {
    return {
      ...NOTHING,
      notWorked:
        "the force that brings the arm onto its stop depends on how deep the arm was coined, and was not given (the part maker's value, spline.forceToStopN)",
    };
  }
  const { clampFriction, splinePressure } = jobDefaults;
  const worked = splinePress({
    axialForceN: preloadN,
    forceToStopN: spline.forceToStopN,
    ...(spline.gapByHandMm === undefined
      ? {}
      : { gapAtStopMm: withReadingError(spline.gapByHandMm, jobDefaults.depthReading, 'zero') }),
    friction: limitsOf(clampFriction),
    taperPerSideDeg: limitsOf(taperPerSideDeg),
    splineCount: splineCount.value,
    flankHeightMm: (majorDiameterMm.value - minorDiameterMm.value) / 2,
    engagedLengthMm: limitsOf(engagementMm),
    meanRadiusMm: (majorDiameterMm.value + minorDiameterMm.value) / 4,
    allowablePressureMPa: limitsOf(splinePressure),
  });
  return {
    part: { spline: worked },
    findings: worked.findings,
    taken: named([
      [true, 'friction of the splines', clampFriction],
      [true, 'pressure that the splines bear', splinePressure],
    ]),
  };
}

function cotterOf({ cotter }: Job): Mechanics {
  if (cotter === undefined) {
    return { ...NOTHING, notWorked: 'neither the force of the press nor the flat of the cotter was read' };
  }
  const { pressForceN, flatAngleDeg, flatLengthMm, flatWidthMm, axisToFlatMm } = cotter;
  if (
    pressForceN === undefined ||
    flatAngleDeg === undefined ||
    flatLengthMm === undefined ||
    flatWidthMm === undefined ||
    axisToFlatMm === undefined
  ) {
    return notRead('cotter', { pressForceN, flatAngleDeg, flatLengthMm, flatWidthMm, axisToFlatMm });
  }
  const { cotterFriction, riderTorque } = jobDefaults;
  const worked = cotterWedge({
    pressForceN,
    flatAngleDeg,
    flatFriction: limitsOf(cotterFriction),
    backFriction: limitsOf(cotterFriction),
    flatLengthMm: length(flatLengthMm),
    flatWidthMm: length(flatWidthMm),
    axisToFlatMm: length(axisToFlatMm),
    crankTorqueNm: riderTorque.value,
    ...(cotter.sameWayRound === undefined ? {} : { sameWayRound: cotter.sameWayRound }),
  });
  return {
    part: { cotter: worked },
    findings: worked.findings,
    taken: named([
      [true, 'friction of the cotter, flat and back', cotterFriction],
      [true, 'torque of the crank', riderTorque],
    ]),
  };
}

function teethOf({ faceTeeth }: Job, { preloadN }: Omit<FasteningPlan, 'steps'>): Mechanics {
  if (faceTeeth === undefined) return { ...NOTHING, notWorked: 'the teeth were not read' };
  const { flankAngleDeg, outerDiameterMm, innerDiameterMm } = faceTeeth;
  if (flankAngleDeg === undefined || outerDiameterMm === undefined || innerDiameterMm === undefined) {
    return notRead('faceTeeth', { flankAngleDeg, outerDiameterMm, innerDiameterMm });
  }
  if (preloadN === undefined) {
    return { ...NOTHING, notWorked: 'the force of the bolt is not known without its torque and thread' };
  }
  const worked = faceSpline({
    axialForceN: preloadN,
    flankAngleDeg,
    outerDiameterMm,
    innerDiameterMm,
    torqueNm: jobDefaults.riderTorque.value,
  });
  return {
    part: { faceTeeth: worked },
    findings: worked.findings,
    taken: named([[true, 'torque of the crank', jobDefaults.riderTorque]]),
  };
}

function barOf({ bar }: Job): Mechanics {
  if (bar === undefined) return { ...NOTHING, notWorked: 'the bar was not read, and there is no joint to reckon' };
  const { crankLengthMm, overhangMm, barDiameterMm, yieldStrengthMPa } = bar;
  if (crankLengthMm === undefined || overhangMm === undefined || barDiameterMm === undefined) {
    return notRead('bar', { crankLengthMm, overhangMm, barDiameterMm });
  }
  const worked = onePieceCrank({
    pedalForceN: jobDefaults.riderForce.value,
    crankLengthMm,
    overhangMm,
    barDiameterMm: length(barDiameterMm),
    ...(yieldStrengthMPa === undefined ? {} : { yieldStrengthMPa }),
  });
  return {
    part: { bar: worked },
    findings: worked.findings,
    taken: named([[true, 'force on the pedal', jobDefaults.riderForce]]),
  };
}

/** Names the fields that are still missing, so that one after the other can be read. */
function notRead(at: string, fields: Readonly<Record<string, Measurand | undefined>>): Mechanics {
  const missing = Object.keys(fields).filter((key) => fields[key] === undefined);
  return {
    ...NOTHING,
    notWorked: `not everything was read that it takes; still missing: ${missing.map((key) => pathWords(`${at}.${key}`)).join(', ')}`,
  };
}

const named = (list: readonly (readonly [boolean, string, Datum])[]): Mechanics['taken'] =>
  list.flatMap(([applies, words, datum]) => (applies ? [{ words, datum }] : []));
