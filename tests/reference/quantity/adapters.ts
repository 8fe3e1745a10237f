import { convert, parseQuantity, type Unit } from '@spindlewright/quantity';
import { type Adapter, type Adapters, numberIn, type Row, textIn } from '../adapter.ts';

const unitIn = (row: Row, column: string): Unit => textIn(row, column) as Unit;

const factor: Adapter = (row) => ({ factor: convert(1, unitIn(row, 'from'), unitIn(row, 'to')) });

const lengthMm: Adapter = (row) => {
  const { value, unit } = parseQuantity(textIn(row, 'text'));
  return { lengthMm: convert(value, unit, 'mm' as Unit) };
};

export const adapters: Adapters = {
  'convert-printed-factors': factor,
  'convert-exact-factors': factor,
  'convert-rounded-factors': (row) => ({ factor: convert(1, 'Nm', unitIn(row, 'to') as 'Nm') }),
  'convert-mathjs-pairs': (row) => ({
    converted: convert(numberIn(row, 'value'), unitIn(row, 'from'), unitIn(row, 'to')),
  }),
  'convert-mathjs-psi': (row) => ({ converted: convert(numberIn(row, 'value'), 'psi', 'MPa') }),
  'parse-pedal-threads': lengthMm,
  'parse-shell-threads': lengthMm,
};
