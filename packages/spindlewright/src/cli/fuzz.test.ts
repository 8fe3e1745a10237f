import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runCommand } from '../../test/run-command.ts';
import { VERBS } from './verbs/index.ts';

const VALUES = [
  ...[
    '',
    '-',
    '--',
    '0',
    '-1',
    '1e400',
    'NaN',
    '9/0 in',
    '40 Nm',
    '12.65 mm',
    '12.65 mm @ 2 mm',
    '1..2',
    '0.1..0.2 mm',
  ],
  ...['M8x1', '9/16-20 LH', '8.8', '1e9 N', '0 mm', '1e-9 mm', '-40 Nm', '99999 kN', '\u0000', '\ud800', '__proto__'],
  ...['spindle', 'bore', 'thread', 'a.json', 'b.json', 'constructor', '\u00b15 mm', '5 mm \u00b1', '1 +- 2 mm'],
];
const FILES: Readonly<Record<string, string>> = {
  'a.json': '{"format":"spindlewright-readings-1","part":"thread","diameterMm":"8 mm","__proto__":{"x":1}}',
  'b.json': '[[[',
};

it('whatever is typed is answered or refused, never a fault of the program', () => {
  const verb = fc.constantFrom(...VERBS);
  const line = verb.chain(({ name, flags }) => {
    const word = fc.oneof(
      fc.constantFrom('--help', '--x', ...flags.map((flag) => `--${flag.name}`)),
      fc.constantFrom(...VALUES),
      fc.constantFrom(...flags.flatMap(({ choices = [] }) => choices), 'x'),
    );
    // A flag with its value as often as words at random, so that values are looked at too.
    const pair = fc.tuple(fc.constantFrom('--x', ...flags.map((flag) => `--${flag.name}`)), fc.constantFrom(...VALUES));
    const words = fc.array(fc.oneof(pair, fc.tuple(word)), { maxLength: 6 });
    return words.map((list) => [name, ...list.flat()]);
  });
  fc.assert(
    fc.property(line, (args) => {
      const { code, out, err } = runCommand(args, FILES);
      expect([0, 1, 2]).toContain(code);
      // Refused: a reason and no half answer; answered: no number that is none.
      expect(code === 0 ? out : err).not.toBe('');
      if (code !== 0) expect(out).toBe('');
      expect(out).not.toMatch(/\bNaN\b|Infinity|undefined/);
    }),
    { numRuns: 400 },
  );
});

it.each(['±v', '1,5', '1e309', '.5'])('takes no bundle of one-letter flags apart, however long: %s', (letters) => {
  const { code, err } = runCommand(['torque', `-${letters.repeat(20_000)}`]);
  expect(code).toBe(2);
  expect(err).toContain(`unknown flag -${letters.repeat(2)}`);
  expect(err.length).toBeLessThan(500);
});

it('takes a reading below 0 with all its digits', () => {
  const { err } = runCommand(['torque', '--target', '-40.000000000000000000000000001 Nm']);
  expect(err).not.toContain('unknown flag');
});
