import { isDomainError } from '@spindlewright/quantity';
import { describe, expect, it } from 'vitest';
import { checkMate } from './check-mate.ts';
import { dataEdition } from './data-edition.ts';
import { armLengths } from './neighbours/arm-lengths.generated.ts';
import { pullerM22x1 } from './neighbours/puller-m22x1.generated.ts';
import { shellBsc } from './neighbours/shell-bsc.generated.ts';
import type { InterfaceRecord, MateVerdict } from './record.ts';
import { cotteredMetric } from './records/cottered-metric.generated.ts';
import { interfaceRecords } from './records/registry.generated.ts';
import { spline10 } from './records/spline-10.generated.ts';
import { squareTaperIso } from './records/square-taper-iso.generated.ts';
import { squareTaperJis } from './records/square-taper-jis.generated.ts';
import { throughSpindle24 } from './records/through-spindle-24.generated.ts';
import { mateResultSchema } from './schema.ts';

const codes = (result: ReturnType<typeof checkMate>): string[] => result.findings.map(({ code }) => code);

/** A rule as data would hold it. */
const ruled = (record: InterfaceRecord, arm: InterfaceRecord, verdict: MateVerdict): InterfaceRecord => ({
  ...record,
  mating: [
    { id: 'rule', spindle: record.id, arm: arm.id, verdict, statement: 'Invented.', standing: 'invented', sources: [] },
  ],
});

// Rows are spindles, columns arms, both in the order of the ids. By reasoning, not by running: one standard mates (m),
// another square shifts (s), a wider pinched arm or a wider cottered one goes on and fails (f), the maker's own or two of
// a kind without a rule are unknown (?), everything else does not mate (x).
const JOINTS = `
cottered-inch         mxxxxxxxxxxxxxxxxxxx
cottered-metric       fmxxxxxxxxxxxxxxxxxx
face-spline           xx?xxxxxxxxxxxxxxxxx
one-piece             xxxxxxxxxxxxxxxxxxxx
spline-10             xxxxmxxxxxxxxxxxxxxx
spline-48             xxxxx?xxxxxxx???xxxx
spline-8-long         xxxxxxmxxxxxxxxxxxxx
spline-8-short        xxxxxxxmxxxxxxxxxxxx
square-taper-iso      xxxxxxxxmsx??xxxxxxx
square-taper-jis      xxxxxxxxsmx??xxxxxxx
square-taper-narrow   xxxxxxxxxx???xxxxxxx
square-taper-nutted   xxxxxxxx?????xxxxxxx
square-taper-short    xxxxxxxx????mxxxxxxx
through-spindle-19    xxxxx?xxxxxxx?xxxxxx
through-spindle-22    xxxxx?xxxxxxxx?x?xxx
through-spindle-24    xxxxx?xxxxxxxxx?xfxx
through-spindle-24-22 xxxxxxxxxxxxxx?x?xxx
through-spindle-25    xxxxxxxxxxxxxxxxx?xx
through-spindle-28-99 xxxxxxxxxxxxxxxxxx?f
through-spindle-30    xxxxxxxxxxxxxxxxxxx?
`;
const LETTERS: Record<MateVerdict, string> = {
  mates: 'm',
  'mates-with-shift': 's',
  'starts-then-fails': 'f',
  'does-not-mate': 'x',
  unknown: '?',
};

/** The one reason that a pair of joints has, by what is known of the two. */
function reasonOf(spindle: InterfaceRecord, arm: InterfaceRecord): string {
  const is = (family: InterfaceRecord['family']): boolean => spindle.family === family && arm.family === family;
  const pair = `${spindle.id}/${arm.id}`;
  if (spindle.id === arm.id) {
    const { kind } = spindle.interchange;
    return kind === 'inseparable' ? 'no-separate-arm' : kind === 'maker-specific' ? kind : 'meant-to-interchange';
  }
  if (is('cottered')) return 'mating-rule';
  if (/^spline-48\/through-spindle-(19|22|24)$|^through-spindle-(19|22|24)\/spline-48$/.test(pair))
    return 'mating-rule';
  if (is('square-taper')) {
    // Of the narrow, the studded and the short square nothing is known with each other.
    const common = ['square-taper-jis', 'square-taper-iso'];
    if (common.includes(spindle.id) && arm.id !== 'square-taper-nutted' && arm.id !== 'square-taper-short') {
      return 'mating-rule';
    }
    return common.includes(arm.id) ? 'mating-rule' : 'no-rule';
  }
  if (is('spline')) return /spline-8.*spline-8/.test(pair) ? 'mating-rule' : 'spline-counts-differ';
  if (is('through-spindle')) {
    // Millimetres at the non-drive side.
    const size = (id: string): number =>
      id === 'through-spindle-24-22' ? 22 : Number(id.replace('through-spindle-', '').replace('-', '.'));
    const excess = size(arm.id) - size(spindle.id);
    if (excess === 0) return 'maker-specific';
    if (excess < 0) return 'arm-bore-too-small';
    return ['through-spindle-24/through-spindle-25', 'through-spindle-28-99/through-spindle-30'].includes(pair)
      ? 'clamp-closes-first'
      : 'arm-bore-too-large';
  }
  return 'families-differ';
}

describe('checkMate', () => {
  const rows = new Map(
    JOINTS.trim()
      .split('\n')
      .map((line) => line.split(/ +/) as [string, string]),
  );

  it('has a verdict to be met for every pair of joints', () => {
    expect([...rows.keys()]).toEqual(interfaceRecords.map(({ id }) => id));
    expect([...rows.values()].every((row) => row.length === interfaceRecords.length)).toBe(true);
  });

  it.each(interfaceRecords)('$id as a spindle, with every arm: verdict, reason, form', (spindle) => {
    const verdicts = interfaceRecords.map((arm) => {
      const result = checkMate({ spindle, arm });
      expect(codes(result), `${spindle.id} / ${arm.id}`).toContain(reasonOf(spindle, arm));
      expect(mateResultSchema.parse(result)).toEqual(JSON.parse(JSON.stringify(result)));
      expect(result.dataEdition).toBe(dataEdition);
      expect(result.consequence).toBe(result.findings[0]?.message);
      expect(result.cautions.some(({ code }) => code === 'follow-maker')).toBe(true);
      const fails = /starts-then-fails|does-not-mate/.test(result.verdict);
      expect(result.cautions.some(({ code, severity }) => code === 'do-not-force' && severity === 'stop')).toBe(fails);
      expect(result.findings.some(({ message }) => message.includes('{'))).toBe(false);
      return LETTERS[result.verdict];
    });
    expect(verdicts.join('')).toBe(rows.get(spindle.id));
  });

  it('gives the shift of a JIS arm on an ISO spindle by every set that has both sizes', () => {
    const { shiftMm } = checkMate({ spindle: squareTaperIso, arm: squareTaperJis });
    const nominal = Object.fromEntries(shiftMm.map(({ set, shiftMm }) => [set, shiftMm.nominal]));
    // By hand from the printed sizes: 0.15 and 0.13 mm at 0.06984 mm a millimetre (2 deg), 0.13 at 0.07275 (2 deg 05 min).
    const byHand = {
      'taper-jp-ham-2013': 0.15 / 0.06984,
      'taper-jp-sizes-2014': 0.13 / 0.06984,
      'taper-de-wiki': 0.13 / 0.06984,
      'taper-fr-workshop-wiki': 0.13 / 0.07275,
      'taper-nl-workshop-first-maker': 0.13 / 0.06984,
      'taper-nl-workshop-second-maker': 0.13 / 0.06984,
    };
    expect(Object.keys(nominal)).toEqual(Object.keys(byHand));
    for (const [set, mm] of Object.entries(byHand)) expect(nominal[set]).toBeCloseTo(mm, 3);
    expect(shiftMm.every(({ direction }) => direction === 'toward-frame')).toBe(true);
    // A set that gives its angle without doubt has no width; one that does not spans the angles in print.
    expect(shiftMm.find(({ set }) => set === 'taper-de-wiki')?.shiftMm.lower).toBe(nominal['taper-de-wiki']);
    expect(shiftMm.find(({ set }) => set === 'taper-jp-sizes-2014')?.shiftMm.lower).toBeCloseTo(0.13 / 0.07275, 3);
  });

  it('turns the shift round for the reverse pair', () => {
    const deeper = checkMate({ spindle: squareTaperIso, arm: squareTaperJis });
    const out = checkMate({ spindle: squareTaperJis, arm: squareTaperIso });
    for (const [index, { set, shiftMm, direction }] of out.shiftMm.entries()) {
      const other = deeper.shiftMm[index];
      expect(other?.set).toBe(set);
      expect(shiftMm.nominal).toBeCloseTo(-(other?.shiftMm.nominal ?? 0), 12);
      expect(shiftMm.lower).toBeCloseTo(-(other?.shiftMm.upper ?? 0), 12);
      expect(direction).toBe('away-from-frame');
    }
    expect(codes(deeper)[0]).toBe('goes-deeper');
    expect(codes(out)[0]).toBe('sits-farther-out');
  });

  it('keeps every claim about the shift and names the reading that settles it', () => {
    const result = checkMate({ spindle: squareTaperIso, arm: squareTaperJis });
    // 4.5, 1.79 and "half-way" as printed.
    expect(result.claims.map(({ value }) => value?.value)).toEqual(expect.arrayContaining([4.5, 1.79, undefined]));
    expect(codes(result)).toEqual(expect.arrayContaining(['trial-fit-settles', 'steepness-unsupported']));
    expect(codes(result)).toContain('shift-claims-disagree');
    expect(result.findings.find(({ code }) => code === 'sets-without-counterpart')?.values.sets).toBe(
      'taper-de-dealer, taper-hobby-metrology-2022',
    );
    expect(result.sources).toEqual(expect.arrayContaining(['taper-de-wiki-older', 'taper-jp-sizes-2014']));
  });

  it('warns that the sizes of one standard differ', () => {
    const same = checkMate({ spindle: squareTaperJis, arm: squareTaperJis });
    const differ = same.findings.find(({ code }) => code === 'sets-differ');
    expect(differ?.severity).toBe('caution');
    // 12.73 - 12.63 mm, and 1.432 mm of seat for 0.10 mm at 2 deg (printed table).
    expect(differ?.values.spreadMm).toBeCloseTo(0.1, 9);
    expect(differ?.values.seatMm).toBeCloseTo(1.432, 3);
    expect(same.claims).toEqual([]);
    expect(same.shiftMm.every(({ shiftMm, direction }) => shiftMm.nominal === 0 && direction === 'none')).toBe(true);
  });

  it('takes the pair by sex as well', () => {
    const bySex = checkMate({ male: squareTaperIso, female: squareTaperJis });
    expect(bySex).toEqual(checkMate({ spindle: squareTaperIso, arm: squareTaperJis }));
  });

  it('does not know parts of one name that are the maker\u2019s own', () => {
    const result = checkMate({ spindle: throughSpindle24, arm: throughSpindle24 });
    expect(codes(result)).toEqual(['maker-specific']);
    expect(result.cautions.map(({ code }) => code)).toContain('do-not-ride-untried');
  });

  it.each([
    ['mates', 'note'],
    ['starts-then-fails', 'stop'],
  ] as const)('takes the verdict %s from a rule of either record', (verdict, severity) => {
    const arm: InterfaceRecord = { ...cotteredMetric, id: 'other' };
    const spindle = ruled(cotteredMetric, arm, verdict);
    const result = checkMate({ spindle, arm });
    expect([result.verdict, result.findings[0]?.severity]).toEqual([verdict, severity]);
    const byArm = checkMate({ spindle: cotteredMetric, arm: { ...arm, mating: spindle.mating } });
    expect(byArm.verdict).toBe(verdict);
  });

  it('says unknown of two of a kind without a rule', () => {
    const other: InterfaceRecord = { ...spline10, id: 'other' };
    const result = checkMate({ spindle: spline10, arm: other });
    expect([result.verdict, ...codes(result)]).toEqual(['unknown', 'no-rule']);
  });

  it.each([
    ['ids', { spindle: 'square-taper-iso', arm: squareTaperJis }, 'spindle'],
    ['half a pair', { spindle: squareTaperIso }, ''],
    ['mixed names', { spindle: squareTaperIso, female: squareTaperJis }, ''],
    ['a third part', { spindle: squareTaperIso, arm: squareTaperJis, bolt: 1 }, ''],
    ['a side beside spindle and arm', { spindle: squareTaperIso, arm: squareTaperJis, maleSide: 'left' }, ''],
    ['a convention', { male: squareTaperIso, female: armLengths }, 'female'],
    ['a side of parts without sides', { male: pullerM22x1, female: squareTaperIso, maleSide: 'left' }, 'maleSide'],
    ['a side that is none', { male: shellBsc, female: shellBsc, femaleSide: 'top' }, 'femaleSide'],
    ['nothing', undefined, ''],
    ['an object that is no record', { male: squareTaperIso, female: { id: 'x' } }, 'female'],
  ])('refuses %s', (_name, input, path) => {
    try {
      checkMate(input as never);
      expect.unreachable();
    } catch (error) {
      if (!isDomainError(error)) throw error;
      expect(error.path).toBe(path);
    }
  });
});
