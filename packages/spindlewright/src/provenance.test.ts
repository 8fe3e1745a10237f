import { diagnose } from '@spindlewright/diagnosis';
import { checkMate, getInterface } from '@spindlewright/interfaces';
import { listSources } from '@spindlewright/quantity/sources';
import { describe, expect, it } from 'vitest';
import { provenance } from './provenance.ts';
import { workJob } from './work-job.ts';

const sheet = workJob({
  format: 'spindlewright-job-1',
  title: 'Demo',
  date: '2026-11-27',
  bike: 'an invented bike',
  side: 'drive',
  interface: { spindle: 'spline-10', arm: 'spline-10' },
});

describe('provenance', () => {
  it('is that of a sheet, also after a round trip through JSON, and a copy of it', () => {
    expect(provenance(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet.provenance);
    expect(provenance(sheet).sources).not.toBe(sheet.provenance.sources);
  });

  it('gathers what a result of a leaf cites, each once and sorted, all of it in the register', () => {
    const mate = checkMate({ spindle: getInterface('square-taper-iso'), arm: getInterface('square-taper-jis') });
    const { sources, dataEdition } = provenance(mate);
    const known = new Set(listSources().map(({ id }) => id));
    expect(dataEdition).toBe(mate.dataEdition);
    expect(sources).toEqual([...new Set(sources)].sort());
    expect(sources).toEqual(expect.arrayContaining([...mate.sources]));
    expect(sources.filter((id) => !known.has(id))).toEqual([]);
  });

  it('takes the edition that the result states', () => {
    const result = diagnose({ joint: 'cottered-inch', observations: { cotter: 'deformed' } });
    expect(provenance(result).dataEdition).toBe(result.dataEdition);
  });

  it('names the version of every package', () => {
    expect(Object.keys(provenance([]).versions)).toEqual([
      'spindlewright',
      ...['diagnosis', 'drawing', 'interfaces', 'quantity', 'taper', 'torque'].map((name) => `@spindlewright/${name}`),
    ]);
  });

  it.each([null, 'sheet', 3])('refuses %j', (value) => {
    expect(() => provenance(value as never)).toThrow(/provenance/);
  });

  it('comes to an end at data that hold themselves', () => {
    const loop: Record<string, unknown> = { sources: ['a-b'] };
    loop.self = loop;
    expect(provenance(loop).sources).toEqual(['a-b']);
  });
});
