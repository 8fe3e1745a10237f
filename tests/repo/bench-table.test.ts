import { expect, it } from 'vitest';
import { tableOf } from '../benchmarks/table.ts';

it('the table of the benchmarks says each ratio beside both of its numbers', () => {
  const table = tableOf([
    { what: 'a seat', baseline: 'a bare loop', unit: 'ms', value: 0.0123456, baselineValue: 0.00411 },
    { what: 'size', baseline: 'its budget', unit: 'bytes gzip', value: 38561, baselineValue: 42000 },
  ]);
  const [head, line, seat, size] = table.split('\n').map((row) => row.split('|').map((cell) => cell.trim()));
  expect(head?.slice(1, -1)).toEqual(['what', 'against', 'unit', 'value', 'baseline', 'ratio']);
  expect(line?.every((cell) => /^-*$/.test(cell))).toBe(true);
  expect(seat?.slice(1, -1)).toEqual(['a seat', 'a bare loop', 'ms', '0.0123', '0.00411', '3.00']);
  expect(size?.slice(1, -1)).toEqual(['size', 'its budget', 'bytes gzip', '38561', '42000', '0.918']);
});
