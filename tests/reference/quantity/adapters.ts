import { convert, type Unit } from '@spindlewright/quantity';
import { type Adapters, textIn } from '../adapter.ts';

export const adapters: Adapters = {
  'convert-printed-factors': (row) => ({
    factor: convert(1, textIn(row, 'from') as Unit, textIn(row, 'to') as Unit),
  }),
};
