import { listInterfaces } from '@spindlewright/interfaces';
import { describe, expect, it } from 'vitest';
import { createFitChecker } from './create-fit-checker.ts';
import { fitDataSchema } from './schema.ts';
import { fitData } from './screen/fit-data.ts';
import type { Need } from './screen/need.ts';
import { screener } from './screen/screener.ts';

const JOINTS = listInterfaces().map(({ id }) => id);
const rows = JOINTS.flatMap((id) => [
  { partId: `arm ${id}`, kind: 'arm', interface: id, side: 'pair', armLengthMm: 170 },
  { partId: `spindle ${id}`, kind: 'spindle', interface: id },
]);
const data = fitData({ parts: rows });
const checker = createFitChecker(JSON.parse(JSON.stringify(data)));
const ARM: Need = { format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis' };

describe('createFitChecker', () => {
  it.each(JOINTS)('answers as screening does: %s', (id) => {
    for (const wanted of ['arm', 'spindle'] as const) {
      const need: Need = { format: 'spindlewright-need-1', for: wanted, interface: id };
      const own = screener(need, undefined);
      for (const row of rows) {
        const told = own.judge(row, 1);
        const answer = checker.check({ part: row.partId, need });
        expect([answer.state, answer.missingFact], `${row.partId} for ${wanted} ${id}`).toEqual([
          told.state,
          told.missingFact,
        ]);
        expect(answer.codes[0]).toBe(told.reasons[0]?.code);
        expect(JSON.parse(JSON.stringify(answer))).toEqual(structuredClone(answer));
      }
    }
  });

  it('has data that are plain JSON of a published schema', () => {
    expect(fitDataSchema.parse(data)).toEqual(JSON.parse(JSON.stringify(data)));
    expect(checker.dataEdition).toBe(data.dataEdition);
  });

  it('knows no part by the name of a method, and says so', () => {
    for (const part of ['constructor', '__proto__', 'none']) {
      expect(checker.check({ part, need: ARM })).toMatchObject({ state: 'cannot-tell', missingFact: 'part' });
    }
    expect(checker.check({ part: 'arm spline-10', need: { ...ARM, interface: '__proto__' } }).state).toBe(
      'cannot-tell',
    );
  });

  it('takes facts in place of an id', () => {
    const part = {
      words: { kind: ['arm'], interface: ['square-taper-jis'] },
      numbers: { armLengthMm: 170 },
      doubts: {},
    };
    expect(checker.check({ part, need: { ...ARM, armLengthMm: 170 } }).state).toBe('fits');
    expect(checker.check({ part, need: { ...ARM, armLengthMm: 175 } }).codes).toEqual([
      'another-arm-length',
      'meant-to-interchange',
      'sets-differ',
    ]);
    expect(checker.check({ part, need: { ...ARM, side: 'drive' } }).missingFact).toBe('side');
  });

  it('refuses what is no fit data', () => {
    expect(() => createFitChecker({} as never)).toThrow('format');
  });
});
