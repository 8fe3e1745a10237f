// Cost of the checks around a conversion: each is measured beside a named baseline in the same run.
import { convert, parseQuantity } from '@spindlewright/quantity';
import { expect, it } from 'vitest';

const lengths = Array.from({ length: 1000 }, (_, index) => index / 7);

/** Adds up, so that no loop can be dropped as unused. */
const total = (values: (length: number) => number): number => lengths.reduce((sum, length) => sum + values(length), 0);

it('a thousand lengths from inch to millimetre', async ({ bench }) => {
  let sink = 0;
  await bench.compare(
    bench('baseline: multiplication by 25.4', () => {
      sink += total((length) => length * 25.4);
    }),
    bench('convert', () => {
      sink += total((length) => convert(length, 'in', 'mm'));
    }),
  );
  expect(sink).toBeGreaterThan(0);
});

it('a thousand readings read from text', async ({ bench }) => {
  let sink = 0;
  await bench.compare(
    bench('baseline: Number.parseFloat', () => {
      sink += total((length) => Number.parseFloat(`${length} in`));
    }),
    bench('parseQuantity', () => {
      sink += total((length) => parseQuantity(`${length} in`).value);
    }),
  );
  expect(sink).toBeGreaterThan(0);
});
