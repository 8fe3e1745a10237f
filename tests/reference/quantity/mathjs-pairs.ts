// Writes convert-mathjs-pairs.ref.json and convert-mathjs-psi.ref.json:
// node tests/reference/quantity/mathjs-pairs.ts
// tests/properties/quantity asserts that the files are what the library says, and compares random values as well.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { unit, version } from 'mathjs';

/** Our ids by dimension, each with the same unit in the words of the library. */
const spellings = [
  { mm: 'mm', um: 'um', cm: 'cm', m: 'm', in: 'in' },
  { N: 'N', kN: 'kN', lbf: 'lbf', kgf: 'kgf' },
  { Nm: 'N m', 'lbf.in': 'lbf in', 'lbf.ft': 'lbf ft', 'kgf.cm': 'kgf cm', 'kgf.m': 'kgf m' },
  // Its own psi is a rounded value, see the second file; the quotient of its pound-force and inch is not.
  { MPa: 'MPa', psi: 'lbf/in^2' },
  { deg: 'deg', rad: 'rad' },
] as const;

/** Every ordered pair of two units of one dimension, as [id, spelling, id, spelling]. */
export const pairs = spellings.flatMap((group) => {
  const units = Object.entries(group);
  return units.flatMap(([from, source]) =>
    units.filter(([to]) => to !== from).map(([to, target]) => [from, source, to, target] as const),
  );
});

/** The value to convert: exact in a double and no unit of anything. */
const VALUE = 7.25;

const origin = {
  source: 'mathjs',
  tool: `mathjs ${version}`,
  command: 'node tests/reference/quantity/mathjs-pairs.ts',
};

/** The files by name, without the path. */
export const files = {
  'convert-mathjs-pairs.ref.json': {
    id: 'convert-mathjs-pairs',
    title: 'Every pair of units against a general-purpose mathematics library',
    function: 'convert',
    columns: { case: 'text', value: 'unit of from', from: 'text', to: 'text', converted: 'unit of to' },
    expected: ['converted'],
    rows: pairs.map(([from, source, to, target]) => ({
      case: `${from} to ${to}`,
      value: VALUE,
      from,
      to,
      converted: unit(VALUE, source).toNumber(target),
    })),
    tolerance: {
      converted: {
        rtol: 2e-15,
        atol: 0,
        why: 'both sides multiply and divide doubles about ten times in all; ten half units in the last place are 1.1e-15, so any wrong digit of a factor shows',
      },
    },
    origin: { kind: 'other-tool', citation: 'unit(value, from).toNumber(to)', ...origin },
  },
  'convert-mathjs-psi.ref.json': {
    id: 'convert-mathjs-psi',
    title: 'A rounded pound-force per square inch, which is not to be met',
    function: 'convert',
    columns: { case: 'text', value: 'psi', converted: 'MPa' },
    expected: ['converted'],
    rows: [{ case: 'psi to MPa', value: VALUE, converted: unit(VALUE, 'psi').toNumber('MPa') }],
    tolerance: {
      converted: { rtol: 1e-12, atol: 0, why: 'the printed factor is off by 5.9e-11, sixty times this bound' },
    },
    origin: {
      kind: 'erratum',
      citation: 'unit psi, 6894.75729276459 Pa; its pound-force per square inch is 6894.757293168362 Pa',
      ...origin,
    },
  },
} as const;

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, file] of Object.entries(files)) {
    writeFileSync(new URL(name, import.meta.url), `${JSON.stringify(file, null, 2)}\n`);
  }
}
