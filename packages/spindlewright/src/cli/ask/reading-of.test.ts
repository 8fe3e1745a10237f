import { describe, expect, it } from 'vitest';
import { readingOf } from './reading-of.ts';

describe('a reading that is typed', () => {
  // 1 in = 25.4 mm and 1 lbf.in = 0.112985 Nm (NIST SP 811, appendix B.8).
  it.each([
    ['0.8', 'mm', 0.8],
    ['0,8', 'mm', 0.8],
    ['-0.1', 'mm', -0.1],
    ['1/2 in', 'mm', 12.7],
    ['12 kN', 'N', 12_000],
    ['100 lbf.in', 'Nm', 11.2985],
  ] as const)('%s in %s', (line, unit, expected) => {
    const read = readingOf(line, unit);
    expect('value' in read && read.value).toBeCloseTo(expected, 4);
  });

  it('keeps bounds', () => {
    expect(readingOf('0.7..0.9 mm', 'mm')).toEqual({ value: { lower: 0.7, nominal: 0.8, upper: 0.9 } });
  });

  // 12 is far likelier to be kilonewtons than newtons.
  it.each([
    ['12', 'N'],
    ['', 'mm'],
    ['wide', 'mm'],
    ['3 Nm', 'mm'],
  ] as const)('asks again at "%s" for %s', (line, unit) => {
    expect(readingOf(line, unit)).toMatchObject({ fault: expect.stringContaining('such as') });
  });
});
