import { checkMate, getInterface, getNeighbour, listThreads, spindleGeometries } from '@spindlewright/interfaces';
import { limits } from '@spindlewright/quantity';
import { type Adapters, numberIn, type Row, textIn } from '../adapter.ts';

function shiftOf(row: Row): number {
  const { shiftMm } = checkMate({
    spindle: getInterface(textIn(row, 'spindle')),
    arm: getInterface(textIn(row, 'arm')),
  });
  const entry = shiftMm.find(({ set }) => set === textIn(row, 'set'));
  if (entry === undefined) throw new Error(`no shift by the set ${textIn(row, 'set')}`);
  return entry.shiftMm[textIn(row, 'bound') as 'lower' | 'nominal' | 'upper'];
}

/** The sizes of a thread as a record that reckons them states them. */
function threadOf(row: Row): Record<string, number> {
  const designation = textIn(row, 'designation');
  const thread = listThreads({ designation }).find((entry) => entry.thread.stressAreaMm2 !== undefined)?.thread;
  if (thread === undefined) throw new Error(`no record reckons the sizes of ${designation}`);
  const { nominalDiameterMm, pitchMm, pitchDiameterMm, minorDiameterMm, internalMinorDiameterMm, stressAreaMm2 } =
    thread;
  const data = { nominalDiameterMm, pitchMm, pitchDiameterMm, minorDiameterMm, internalMinorDiameterMm, stressAreaMm2 };
  return Object.fromEntries(Object.entries(data).map(([key, datum]) => [key, datum?.value ?? Number.NaN]));
}

export const adapters: Adapters = {
  'mixed-taper-shift': (row) => {
    const entry = spindleGeometries(getInterface(textIn(row, 'spindle'))).find(({ set }) => set === textIn(row, 'set'));
    if (entry === undefined) throw new Error(`no spindle by the set ${textIn(row, 'set')}`);
    const shiftMm = shiftOf(row);
    return { shiftMm, contactMm: limits(entry.geometry.flatLengthMm).nominal + shiftMm };
  },
  'mixed-taper-shift-claimed': (row) => ({ shiftMm: shiftOf(row) }),
  'thread-diameters-listed': threadOf,
  'thread-areas-listed': threadOf,
  'thread-areas-listed-erratum': threadOf,
  'thread-pairs-listed': threadOf,
  'pedal-thread-area-listed': (row) => {
    const { stressAreaMm2 = Number.NaN, minorDiameterMm = Number.NaN } = threadOf(row);
    return {
      stressAreaIn2: stressAreaMm2 / 25.4 ** 2,
      minorAreaIn2: ((Math.PI / 4) * minorDiameterMm ** 2) / 25.4 ** 2,
    };
  },
  'bolt-circle-spacing': (row) => {
    const record = getNeighbour(`bolt-circle-${numberIn(row, 'boltCircleMm')}x5`);
    return { holeSpacingMm: record.kind === 'bolt-circle' ? record.holeSpacingMm.value : Number.NaN };
  },
};
