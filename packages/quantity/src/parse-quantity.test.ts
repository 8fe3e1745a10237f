import { describe, expect, it } from 'vitest';
import { isDomainError } from './domain-error.ts';
import { parseQuantity } from './parse-quantity.ts';
import { type Unit, unitIds } from './units.ts';

const NUMBER_AND_UNIT = 'one number and a unit, such as "12.5 mm", "9/16 in" or "40 Nm"';

function issueOf(text: unknown): object {
  try {
    parseQuantity(text as string);
  } catch (error) {
    if (isDomainError(error) && error.issues.length === 1) return error.issues[0] ?? {};
    throw error;
  }
  return {};
}

describe('numbers', () => {
  it.each<[string, number]>([
    ['12.5 mm', 12.5],
    ['12.5mm', 12.5],
    ['  12.5  mm  ', 12.5],
    ['12.5\u00a0mm', 12.5],
    ['12,5 mm', 12.5],
    ['1,234 mm', 1.234],
    ['.5 mm', 0.5],
    [',5 mm', 0.5],
    ['007 mm', 7],
    ['1e3 mm', 1000],
    ['1e3mm', 1000],
    ['1,5E-3 mm', 0.0015],
    ['2.5e+2 mm', 250],
    ['+3 mm', 3],
    ['-3 mm', -3],
    ['\u22123 mm', -3],
    ['0.1 mm', 0.1],
    ['9/16 mm', 0.5625],
    ['-3/8 mm', -0.375],
    ['1 3/8 mm', 1.375],
    ['1  3/8 mm', 1.375],
    ['1-3/8 mm', 1.375],
    ['-1 3/8 mm', -1.375],
    ['1\u00a03/8mm', 1.375],
    ['0/5 mm', 0],
    ['1/3 mm', 1 / 3],
    ['1.7976931348623157e308 mm', Number.MAX_VALUE],
    ['4e-324 mm', 5e-324],
  ])('%j is read', (text, value) => {
    expect(parseQuantity(text)).toEqual({ value, unit: 'mm' });
  });

  it.each(['0 mm', '-0 mm', '-0/5 mm', '-1e-999 mm', '\u22120,0 mm'])('%j is a plain 0', (text) => {
    expect(parseQuantity(text)).toEqual({ value: 0, unit: 'mm' });
  });

  it.each([
    '',
    'mm',
    '12.5',
    '1 3/8',
    '3/8',
    '1,234.5 mm',
    '1.234,5 mm',
    '1,234,567 mm',
    '1 234 mm',
    '1 234,5 mm',
    "1'234 mm",
    '1 2 mm',
    '1 .5 mm',
    '1 1/2/3 mm',
    '1.5/2 mm',
    '3/ 8 mm',
    '3/-8 mm',
    '12. mm',
    '--3 mm',
    '- 3 mm',
    '+-3 mm',
    '12.5 -mm',
    '0x10 mm',
    'mm 12.5',
    '5 mm\n6',
    'NaN mm',
    'Infinity mm',
    '\u00bd in',
  ])('%j is refused', (text) => {
    const issue = issueOf(text) as { path: string; received: string };
    expect(issue.path).toBe('text');
    expect(issue.received).toBe(JSON.stringify(text));
  });

  it('says what is missing', () => {
    for (const text of ['', 'mm', '12.5', '1 3/8', '1,234.5 mm', '1 234 mm']) {
      expect(issueOf(text)).toEqual({ path: 'text', received: JSON.stringify(text), allowed: NUMBER_AND_UNIT });
    }
  });

  it.each(['1/0 in', '0/0 in', '1 1/0 in', '1e999 in', `${'9'.repeat(400)} in`])('%j is not finite', (text) => {
    expect(issueOf(text)).toMatchObject({ allowed: 'a finite number (no zero below the fraction line)' });
  });

  it.each<[unknown, string]>([
    [5, '5'],
    [undefined, 'nothing'],
    [null, 'null'],
    [['5 mm'], 'a list of 1'],
    [new String('5 mm'), 'an object with 0, 1, 2, 3'],
  ])('%o is no text', (text, received) => {
    const allowed = 'a text with a number and a unit, such as "12.5 mm"';
    expect(issueOf(text)).toEqual({ path: 'text', received, allowed });
  });

  it('refuses long nonsense quickly', () => {
    const started = performance.now();
    for (const piece of ['1', '1.1', '1 ', '1/', '1e', '1-', ' ', 'x']) {
      expect(issueOf(`1${piece.repeat(50_000)}`)).toMatchObject({ path: 'text' });
    }
    expect(performance.now() - started).toBeLessThan(2000);
  });
});

describe('units', () => {
  it.each(unitIds())('%s is read as it is', (unit) => {
    expect(parseQuantity(`2 ${unit}`)).toEqual({ value: 2, unit });
    expect(parseQuantity(`2${unit}`)).toEqual({ value: 2, unit });
  });

  it.each<[Unit, string[]]>([
    ['mm', ['MM', 'millimetre', 'Millimeters']],
    ['um', ['\u00b5m', '\u03bcm', 'micron', 'micrometres']],
    ['cm', ['CM', 'centimetres']],
    ['m', ['metre', 'meters']],
    ['in', ['in.', 'IN', 'inch', 'inches', '"', '\u2033', '\u201d']],
    ['N', ['n', 'newton', 'Newtons']],
    ['kN', ['KN', 'kn', 'kilonewton']],
    ['lbf', ['lb', 'lbs', 'lbs.', 'LBF', 'pound-force', 'pound force', 'poundforce']],
    ['kgf', ['kp', 'KGF']],
    [
      'Nm',
      [
        'N m',
        'N\u00b7m',
        'N\u22c5m',
        'N\u2219m',
        'N.m',
        'N*m',
        'N-m',
        'nm',
        'NM',
        'newton metre',
        'newton-meters',
        'newtonmetre',
      ],
    ],
    [
      'lbf.in',
      [
        'lbf in',
        'lbf\u00b7in',
        'lbf-in',
        'lb-in',
        'lb.in',
        'in-lb',
        'in lb',
        'in-lbs',
        'in.-lbs.',
        'in\u2013lbf',
        'inlb',
        'inch-pounds',
        'lbfin',
      ],
    ],
    ['lbf.ft', ['lbf ft', 'lb-ft', 'ft-lb', 'ft lbs', 'ft.lbs', 'ft\u00b7lbf', 'foot pounds', 'ftlbs', 'lbfft']],
    ['kgf.cm', ['kgf cm', 'kgf-cm', 'kg-cm', 'kg\u00b7cm', 'kgfcm']],
    ['kgf.m', ['kgf m', 'kg-m', 'kg.m', 'kgfm']],
    ['MPa', ['MPA', 'mpa', 'N/mm2', 'N/mm\u00b2', 'N/mm^2', 'megapascal']],
    ['psi', ['PSI', 'lbf/in2', 'lbf/in\u00b2']],
    ['deg', ['\u00b0', 'degree', 'Degrees']],
    ['rad', ['RAD', 'radians']],
  ])('%s is meant by %o', (unit, spellings) => {
    for (const spelling of spellings) {
      expect(parseQuantity(`2 ${spelling}`), spelling).toEqual({ value: 2, unit });
      expect(parseQuantity(`2${spelling}`), spelling).toEqual({ value: 2, unit });
    }
  });

  it('an inch mark follows its fraction', () => {
    expect(parseQuantity('5/8"')).toEqual({ value: 0.625, unit: 'in' });
    expect(parseQuantity('1 3/8"')).toEqual({ value: 1.375, unit: 'in' });
    expect(parseQuantity('9/16\u2033')).toEqual({ value: 0.5625, unit: 'in' });
  });

  it.each<[string, Unit]>([
    ['MMT', 'mm'],
    ['4H', 'um'],
    ['CMT', 'cm'],
    ['MTR', 'm'],
    ['INH', 'in'],
    ['NEW', 'N'],
    ['B47', 'kN'],
    ['C78', 'lbf'],
    ['B37', 'kgf'],
    ['NU', 'Nm'],
    ['F21', 'lbf.in'],
    ['M92', 'lbf.ft'],
    ['B38', 'kgf.m'],
    ['MPA', 'MPa'],
    ['PS', 'psi'],
    ['DD', 'deg'],
    ['C81', 'rad'],
  ])('code %s is %s', (code, unit) => {
    expect(parseQuantity(`12.5 ${code}`)).toEqual({ value: 12.5, unit });
    expect(parseQuantity(`5 ${code}`)).toEqual({ value: 5, unit });
    expect(parseQuantity(`9/16 ${code.toLowerCase()}`)).toEqual({ value: 0.5625, unit });
    expect(parseQuantity(`1e2 ${code}`)).toEqual({ value: 100, unit });
  });

  it('a code that begins with a digit needs its blank', () => {
    expect(issueOf('54H')).toMatchObject({ path: 'text', received: '"54H"' });
    expect(parseQuantity('5.4 4H')).toEqual({ value: 5.4, unit: 'um' });
  });

  it.each<[string, string | undefined]>([
    ['5 furlongs', undefined],
    ['5 milimeter', 'millimeter'],
    ['5 lbf.inn', 'lbf.in'],
    ['5 kgff', 'kgf'],
    ['5 mPa', 'MPa'],
    ['5 Mm', 'mm'],
    ['5 m m', 'mm'],
    ['5 Nm Nm', 'n.m'],
    ['5 mm of mercury', undefined],
    ['5 constructor', undefined],
    ['1e3', undefined],
    ['5 %', undefined],
  ])('%j has an unknown unit, nearest %j', (text, nearest) => {
    const issue = issueOf(text) as { nearest?: string };
    expect(issue).toMatchObject({ path: 'text', received: JSON.stringify(text) });
    expect(issue).toHaveProperty('allowed', `a unit: ${unitIds().join(', ')} or a common spelling of one`);
    expect(issue.nearest).toBe(nearest);
    expect('nearest' in issue).toBe(nearest !== undefined);
  });

  it('leaves the question of the dimension to the caller', () => {
    // A torque where a length is wanted is read all the same; the unit tells.
    const { unit } = parseQuantity('40 Nm');
    expect(unit).toBe('Nm');
  });
});
