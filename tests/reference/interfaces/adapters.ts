import { checkMate, getInterface, spindleGeometries } from '@spindlewright/interfaces';
import { limits } from '@spindlewright/quantity';
import { type Adapters, type Row, textIn } from '../adapter.ts';

function shiftOf(row: Row): number {
  const { shiftMm } = checkMate({
    spindle: getInterface(textIn(row, 'spindle')),
    arm: getInterface(textIn(row, 'arm')),
  });
  const entry = shiftMm.find(({ set }) => set === textIn(row, 'set'));
  if (entry === undefined) throw new Error(`no shift by the set ${textIn(row, 'set')}`);
  return entry.shiftMm[textIn(row, 'bound') as 'lower' | 'nominal' | 'upper'];
}

export const adapters: Adapters = {
  'mixed-taper-shift': (row) => {
    const entry = spindleGeometries(getInterface(textIn(row, 'spindle'))).find(({ set }) => set === textIn(row, 'set'));
    if (entry === undefined) throw new Error(`no spindle by the set ${textIn(row, 'set')}`);
    const shiftMm = shiftOf(row);
    return { shiftMm, contactMm: limits(entry.geometry.flatLengthMm).nominal + shiftMm };
  },
  'mixed-taper-shift-claimed': (row) => ({ shiftMm: shiftOf(row) }),
};
