import { describe, expect, it } from 'vitest';
import { packages } from '../../scripts/package-shape.mjs';
import { folders, presentEntries, root } from '../workspace.ts';
import { checkDocstrings, checkReachable } from './docstring-check.ts';
import { createProgram } from './program.ts';
import { saysItsUnit } from './unit-names.ts';

const entries = presentEntries();
const program = createProgram(entries.map((entry) => entry.source));

describe('every exported name is described in the form of DEVELOPERS.md', () => {
  it.each(folders)(
    '%s',
    (folder) => {
      const own = entries.filter((entry) => entry.folder === folder);
      const faults = checkDocstrings(program, own).map((fault) => fault.replace(`${root}/`, ''));
      expect(faults).toEqual([]);
    },
    60_000,
  );
});

it('every type that a public one speaks of can be imported', () => {
  const hidden = new Set(Object.values(packages).flatMap((spec) => spec.hidden ?? []));
  expect(checkReachable(program, entries, hidden)).toEqual([]);
});

const GOOD = `
/**
 * Doubles a length.
 *
 * @remarks
 * Formula: twice the length l.
 *
 * Validity: any finite length.
 *
 * Accuracy: exact.
 *
 * @param lengthMm - Length in mm, either sign.
 * @returns Twice the length in mm, same sign.
 * @throws Nothing.
 * @example
 * \`\`\`ts
 * import { doubled } from 'sample';
 * doubled(2); // => 4
 * \`\`\`
 * @see Common arithmetic.
 */
export function doubled(lengthMm: number): number {
  return 2 * lengthMm;
}

/** A bar. */
export interface Bar {
  /** Its length in mm. */
  lengthMm: number;
  /** What it is called. */
  name: string;
}
`;

/** Faults of a sample, without the place. */
function faultsOf(text: string): string[] {
  const source = `${root}/tests/docs/sample.ts`;
  const sample = createProgram([], { [source]: text });
  return checkDocstrings(sample, [{ source, packageName: 'sample' }]).map((fault) => fault.replace(/^.*?:\d+ /, ''));
}

describe('the check itself', () => {
  it('is content with a good sample', () => {
    expect(faultsOf(GOOD)).toEqual([]);
  });

  it.each([
    ['no docstring', /\/\*\*[\s\S]*?\*\/\n/, '', 'doubled: no docstring'],
    ['no summary', ' * Doubles a length.\n', '', 'doubled: no summary line'],
    ['a long summary', 'Doubles a length.', 'Doubles a\n * length.', 'doubled: the summary is longer than one line'],
    ['no remarks', /@remarks[\s\S]*?exact\.\n/, '\n', 'doubled: no @remarks'],
    ['no formula', 'Formula:', 'Law:', 'doubled: @remarks has no paragraph "Formula:"'],
    ['no validity', 'Validity:', 'Range:', 'doubled: @remarks has no paragraph "Validity:"'],
    ['no accuracy', ' * Accuracy: exact.\n', '', 'doubled: @remarks has no paragraph "Accuracy:"'],
    ['an empty accuracy', 'Accuracy: exact.', 'Accuracy:', 'doubled: @remarks says nothing after "Accuracy:"'],
    ['no param', / \* @param.*\n/, '', 'doubled: @param names are [], the parameters are [lengthMm]'],
    [
      'another param',
      '@param lengthMm',
      '@param widthMm',
      'doubled: @param names are [widthMm], the parameters are [lengthMm]',
    ],
    ['a silent param', ' - Length in mm, either sign.', '', 'doubled: @param lengthMm says nothing'],
    ['no returns', / \* @returns.*\n/, '', 'doubled: no @returns'],
    ['no throws', / \* @throws.*\n/, '', 'doubled: no @throws (write "Nothing." if it throws nothing)'],
    [
      'vague throws',
      '@throws Nothing.',
      '@throws Sometimes.',
      'doubled: @throws names no error by {@link ...} and is not "Nothing."',
    ],
    ['no example', /@example[\s\S]*?```\n \* @see/, '@see', 'doubled: no @example with a ts fence'],
    ['an example without assertion', ' // => 4', '', 'doubled: @example asserts nothing (no "// =>")'],
    [
      'an example of something else',
      "from 'sample'",
      "from './sample.ts'",
      'doubled: @example does not import doubled from sample',
    ],
    ['no see', / \* @see.*\n/, '', 'doubled: no @see'],
    [
      'another order',
      / \* @returns.*\n \* @throws.*\n/,
      ' * @throws Nothing.\n * @returns Twice.\n',
      'doubled: tags are not in the order @remarks, @param, @returns, @throws, @example, @see',
    ],
    ['a bare interface', '/** A bar. */\n', '', 'Bar: no description'],
    ['a bare field', '  /** What it is called. */\n', '', 'Bar.name: no description'],
    [
      'a number without unit',
      /lengthMm: number;/,
      'length: number;',
      'Bar.length: a number whose name ends in no unit and is not on the dimensionless list',
    ],
  ])('reports %s', (_name, from, to, fault) => {
    expect(GOOD).toMatch(from);
    expect(faultsOf(GOOD.replace(from, to))).toContain(fault);
  });

  it('looks at arrow functions, classes, aliases and nested objects too', () => {
    const faults = faultsOf(`
      export const twice = (lengthMm: number): number => 2 * lengthMm;
      /** A rod. */
      export type Rod = {
        end: { bore: number | null };
        /** Bounds. */
        span: Limits;
      };
      /** Bounds. */
      export interface Limits {
        /** Low. */
        lower: number;
      }
      /** A rack. */
      export class Rack { constructor(readonly widthMm: number) {} shelves = [1]; }
      export const LIMIT = 3;
    `);
    expect(faults).toEqual([
      'twice: no docstring',
      'Rod.end: no description',
      'Rod.end.bore: no description',
      'Rod.end.bore: a number whose name ends in no unit and is not on the dimensionless list',
      'Rod.span: a number whose name ends in no unit and is not on the dimensionless list',
      'Rack.constructor: @param names are [], not [widthMm]',
      'Rack.shelves: no description',
      'Rack.shelves: a number whose name ends in no unit and is not on the dimensionless list',
      'LIMIT: no description',
    ]);
  });

  it('finds a type that nobody can import', () => {
    const source = `${root}/tests/docs/sample.ts`;
    const text = `
      interface Hidden { a: string }
      interface Base { b: string }
      interface Inside { c: string }
      export interface Shown extends Base { hidden: Hidden | null }
      export function f<T>(x: readonly Hidden[], y: T): T { const z: Inside | null = null; return z ?? y; }
      export const g: Promise<Hidden> = Promise.resolve({ a: '' } as Hidden);
    `;
    const sample = createProgram([], { [source]: text });
    const entry = { source, packageName: 'sample' };
    expect(checkReachable(sample, [entry])).toEqual([
      'Shown speaks of Base, which no entry exports',
      'Shown speaks of Hidden, which no entry exports',
      'f speaks of Hidden, which no entry exports',
      'g speaks of Hidden, which no entry exports',
    ]);
    expect(checkReachable(sample, [entry], new Set(['Hidden', 'Base']))).toEqual([]);
  });

  it('knows names with units and dimensionless ones', () => {
    const told = [
      'travelMm',
      'stressAreaMm2',
      'stiffnessNPerMm',
      'threadsPerInch',
      'lossPerMicrometreN',
      'faceAngleDeg',
    ];
    expect([...told, 'threadFriction', 'probability', 'poissonsRatio'].filter((name) => !saysItsUnit(name))).toEqual(
      [],
    );
    expect(['travel', 'force', 'torque', 'angle', 'n', 'Mm', 'mm'].filter(saysItsUnit)).toEqual([]);
  });
});
