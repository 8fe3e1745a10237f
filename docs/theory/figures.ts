// What the moving figures of the theory pages show; every number comes from the packages.
import type { Limits } from '@spindlewright/quantity';
import {
  assumedMaterials,
  coneForces,
  cotterWedge,
  flatFriction,
  pinchClamp,
  predictSeat,
  pressFit,
  splinePress,
} from '@spindlewright/taper';
import { frictionRange, preloadFromTorque, threadFor } from '@spindlewright/torque';

/** An axis: what it measures, and over which range it is drawn. */
interface Axis {
  label: string;
  min: number;
  max: number;
}

/** A line of a figure, or with `to` the band between two. */
export interface Curve {
  name: string;
  at: (x: number) => number | null;
  to?: (x: number) => number | null;
  dashed?: boolean;
}

/** A model with one reading that slides and a choice of cases. */
export interface TheoryFigure {
  title: string;
  x: Axis & { step: number; start: number; unit: string };
  y: Axis;
  choice: { label: string; options: readonly string[]; start: string };
  curves: (choice: string) => readonly Curve[];
  /** What stands at x, as a sentence. */
  tell: (x: number, choice: string) => string;
}

const spindle = { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: 20, cornerDiameterMm: 16.5 };
const arm = { acrossFlatsAtMouthMm: 13.6, faceAngleDeg: 2, boreLengthMm: 15.5, bossDiameterMm: 34 };
const { youngsModulusGPa, poissonsRatio } = assumedMaterials.arm;
const elastic = { youngsModulusGPa: youngsModulusGPa.value, poissonsRatio: poissonsRatio.value };
const GREASED = flatFriction.greased.value;

const handFit = (acrossFlatsAtMouthMm: number, faceAngleDeg: number): number =>
  predictSeat({
    spindle: { ...spindle, faceAngleDeg },
    arm: { acrossFlatsAtMouthMm, faceAngleDeg, boreLengthMm: 18 },
  }).handFit.mouthFromEndMm.nominal;

const press = (kiloNewton: number, friction: number, yieldStrengthMPa?: number) =>
  pressFit({
    spindle,
    arm,
    axialForceN: 1000 * kiloNewton,
    friction,
    ...(yieldStrengthMPa === undefined ? {} : { materials: { arm: { ...elastic, yieldStrengthMPa } } }),
  });

const flats = (choice: string) => {
  const { value, lower = value, upper = value } = flatFriction[choice === 'dry' ? 'dry' : 'greased'];
  return { value, lower, upper };
};

/** Friction of thread and head by the state of a steel thread, in words of the figure. */
const THREADS: Record<string, string> = {
  greased: 'greased-steel-thread',
  dry: 'dry-steel-thread',
  'degreased or rusty': 'degreased-or-rusty-thread',
};
function boltFriction(choice: string): Limits {
  const { friction } = frictionRange({ of: THREADS[choice] ?? '' });
  if (friction === null) throw new Error(`the friction of a ${choice} thread has no upper end`);
  return friction;
}
const preload = (torqueNm: number, friction: number): number =>
  preloadFromTorque({
    torqueNm,
    thread: threadFor('M8x1'),
    threadFriction: friction,
    bearingFriction: friction,
    bearing: { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 0.5 },
  }).preloadN / 1000;

/** Share of the force that pressed a taper on which pulls it off again. */
const pullOff = (faceAngleDeg: number, friction: number): number => {
  const { pushOnForceN, releaseForceN } = coneForces({
    pressureMPa: 100,
    meanDiameterMm: 13,
    lengthMm: 14,
    faceAngleDeg,
    friction,
  });
  return (100 * releaseForceN) / pushOnForceN;
};

const cotter = (flatAngleDeg: number, friction: number) =>
  cotterWedge({
    pressForceN: 10_000,
    flatAngleDeg,
    flatFriction: friction,
    backFriction: friction,
    flatLengthMm: 12,
    flatWidthMm: 8,
    axisToFlatMm: 6.5,
  });

const spline = (kiloNewton: number, gapAtStopMm: number) =>
  splinePress({
    axialForceN: 1000 * kiloNewton,
    forceToStopN: 15_000,
    friction: 0.13,
    taperPerSideDeg: 1,
    splineCount: 10,
    flankHeightMm: 1.8,
    engagedLengthMm: 16,
    meanRadiusMm: 10,
    allowablePressureMPa: 100,
    gapAtStopMm,
  });

const pinch = (kiloNewton: number, friction: number) =>
  pinchClamp({
    boltPreloadN: 1000 * kiloNewton,
    boltCount: 2,
    spindleDiameterMm: 24,
    clampWidthMm: 20,
    friction,
    hingeToBoltMm: 30,
    hingeToAxisMm: 15,
  });

export const figures: Readonly<Record<string, TheoryFigure>> = {
  'hand-fit': {
    title: 'Where an arm stops by hand, by the size of its hole',
    x: { label: 'across flats of the hole, mm', unit: 'mm', min: 13.2, max: 14, step: 0.01, start: 13.6 },
    y: { label: 'mouth from the spindle end, mm', min: 5, max: 25 },
    choice: { label: 'Angle of a face', options: ['1.8°', '2°', '2.2°'], start: '2°' },
    curves: (choice) => [{ name: choice, at: (x) => handFit(x, Number.parseFloat(choice)) }],
    tell: (x, choice) => {
      const angle = Number.parseFloat(choice);
      const here = handFit(x, angle);
      return `A hole of ${x.toFixed(2)} mm on an end of 12.60 mm stops ${here.toFixed(2)} mm in. One hundredth of a millimetre more moves the seat by ${(handFit(x + 0.01, angle) - here).toFixed(2)} mm.`;
    },
  },
  travel: {
    title: 'How far the press takes it on',
    x: { label: 'axial force, kN', unit: 'kN', min: 0, max: 30, step: 0.5, start: 15 },
    y: { label: 'travel from hand fit, mm', min: 0, max: 2.5 },
    choice: { label: 'Flats', options: ['greased', 'dry'], start: 'greased' },
    curves: (choice) => {
      const { value, lower, upper } = flats(choice);
      return [
        {
          name: `friction ${lower} to ${upper}`,
          at: (x) => press(x, upper).travelMm,
          to: (x) => press(x, lower).travelMm,
        },
        { name: `friction ${value}`, at: (x) => press(x, value).travelMm },
      ];
    },
    tell: (x, choice) => {
      const { value, lower, upper } = flats(choice);
      const [low, here, high] = [upper, value, lower].map((friction) => press(x, friction).travelMm?.toFixed(2) ?? '—');
      return `${x.toFixed(1)} kN on ${choice} flats carries the arm ${here} mm on from where it stopped by hand; friction alone makes that ${low} to ${high} mm.`;
    },
  },
  yield: {
    title: 'What the hole bears',
    x: { label: 'axial force, kN', unit: 'kN', min: 0, max: 25, step: 0.5, start: 12 },
    y: { label: 'stress, MPa', min: 0, max: 1500 },
    choice: { label: 'Yield strength of the arm', options: ['276 MPa', '400 MPa'], start: '276 MPa' },
    curves: (choice) => [
      { name: 'round the corner', at: (x) => press(x, GREASED).boreCornerStressMPa },
      { name: 'pressure on a flat', at: (x) => press(x, GREASED).contactPressureMPa },
      { name: 'yield', at: () => Number.parseFloat(choice), dashed: true },
    ],
    tell: (x, choice) => {
      const strength = Number.parseFloat(choice);
      const { boreCornerStressMPa, contactPressureMPa, plastic, travelMm } = press(x, GREASED, strength);
      const ring =
        travelMm === null
          ? 'The boss is about to give way: no travel is told any more.'
          : plastic
            ? `The ring round the hole yields, and the travel is ${travelMm.toFixed(2)} mm, more than elastic.`
            : `The ring round the hole is still elastic; the travel is ${travelMm.toFixed(2)} mm.`;
      return `At ${x.toFixed(1)} kN and friction ${GREASED} the flats press with ${contactPressureMPa?.toFixed(0) ?? '—'} MPa, and the hoop stress at the corners would be ${boreCornerStressMPa?.toFixed(0) ?? '—'} MPa if nothing yielded. ${ring}`;
    },
  },
  preload: {
    title: 'What a torque makes of the bolt',
    x: { label: 'torque at the bolt, Nm', unit: 'Nm', min: 0, max: 60, step: 1, start: 40 },
    y: { label: 'preload, kN', min: 0, max: 55 },
    choice: {
      label: 'Thread and head of an M8x1 bolt',
      options: Object.keys(THREADS),
      start: 'greased',
    },
    curves: (choice) => {
      const { lower, nominal, upper } = boltFriction(choice);
      return [
        { name: `friction ${lower} to ${upper}`, at: (x) => preload(x, upper), to: (x) => preload(x, lower) },
        { name: `friction ${nominal}`, at: (x) => preload(x, nominal) },
      ];
    },
    tell: (x, choice) => {
      const { lower, nominal, upper } = boltFriction(choice);
      const [low, here, high] = [upper, nominal, lower].map((friction) => preload(x, friction).toFixed(1));
      return `${x.toFixed(0)} Nm on a ${choice} thread give ${here} kN, and anything from ${low} to ${high} kN by friction alone, with a wrench that makes no error.`;
    },
  },
  'self-holding': {
    title: 'When a taper holds itself at rest',
    x: { label: 'angle of a face, °', unit: '°', min: 0.5, max: 10, step: 0.1, start: 2 },
    y: { label: 'pulls it off, % of the press', min: -60, max: 100 },
    choice: { label: 'Friction', options: ['0.05', '0.10', '0.15', '0.30'], start: '0.10' },
    curves: (choice) => [
      { name: `friction ${choice}`, at: (x) => pullOff(x, Number(choice)) },
      { name: 'slides off by itself below', at: () => 0, dashed: true },
    ],
    tell: (x, choice) => {
      const share = pullOff(x, Number(choice));
      const what =
        share > 0
          ? `it takes ${share.toFixed(0)} % of the pressing force to pull it off: it holds itself, at rest only. Riding shakes the friction out, so never ride without the bolt.`
          : 'it slides off by itself, and only the bolt keeps it on.';
      return `At ${x.toFixed(1)}° and friction ${choice} ${what}`;
    },
  },
  cotter: {
    title: 'When a cotter holds itself at rest',
    x: { label: 'angle of the flat, °', unit: '°', min: 1, max: 20, step: 0.5, start: 5 },
    y: { label: 'drives it out, kN', min: -6, max: 10 },
    choice: { label: 'Friction on flat and back', options: ['0.06', '0.12', '0.20'], start: '0.12' },
    curves: (choice) => [
      { name: `friction ${choice}`, at: (x) => cotter(x, Number(choice)).releaseForceN.nominal / 1000 },
      { name: 'works out by itself below', at: () => 0, dashed: true },
    ],
    tell: (x, choice) => {
      const { normalForceN, releaseForceN, holdsAtRestWithoutNut } = cotter(x, Number(choice));
      const out = holdsAtRestWithoutNut
        ? `${(releaseForceN.nominal / 1000).toFixed(1)} kN drive it out again: it holds itself at rest. Never ride without its nut.`
        : 'it works out by itself, whatever it was pressed with.';
      return `Pressed in with 10 kN at ${x.toFixed(1)}° and friction ${choice} it squeezes the flat with ${(normalForceN.nominal / 1000).toFixed(1)} kN, and ${out}`;
    },
  },
  spline: {
    title: 'On the way to the stop',
    x: { label: 'axial force, kN', unit: 'kN', min: 0, max: 30, step: 0.5, start: 10 },
    y: { label: 'left to the stop, mm', min: 0, max: 1.1 },
    choice: { label: 'Gap at the stop by hand', options: ['0.3 mm', '0.5 mm', '1 mm'], start: '0.5 mm' },
    curves: (choice) => [
      { name: choice, at: (x) => spline(x, Number.parseFloat(choice)).leftToStopMm?.nominal ?? null },
    ],
    tell: (x, choice) => {
      const { home, leftToStopMm, stopForceN } = spline(x, Number.parseFloat(choice));
      return home
        ? `With ${x.toFixed(1)} kN the arm is home: 15 kN went into the flanks, ${(stopForceN.nominal / 1000).toFixed(1)} kN press on the stop.`
        : `With ${x.toFixed(1)} kN the arm is not home: ${leftToStopMm?.nominal.toFixed(2) ?? '—'} mm are left, and nothing presses on the stop.`;
    },
  },
  pinch: {
    title: 'What the clamp holds',
    x: { label: 'preload of each of two bolts, kN', unit: 'kN', min: 0, max: 12, step: 0.5, start: 8 },
    y: { label: 'slips at, Nm', min: 0, max: 400 },
    choice: { label: 'Friction', options: ['0.10', '0.15', '0.20'], start: '0.15' },
    curves: (choice) => [
      {
        name: 'two lines to even',
        at: (x) => pinch(x, Number(choice)).slipTorqueNm.lower,
        to: (x) => pinch(x, Number(choice)).slipTorqueNm.upper,
      },
      { name: 'cosine', at: (x) => pinch(x, Number(choice)).slipTorqueNm.nominal },
    ],
    tell: (x, choice) => {
      const { lower, nominal, upper } = pinch(x, Number(choice)).slipTorqueNm;
      return `Two bolts with ${x.toFixed(1)} kN each and friction ${choice} hold ${nominal.toFixed(0)} Nm without splines, ${lower.toFixed(0)} to ${upper.toFixed(0)} by how the pressure spreads.`;
    },
  },
};
