import { describe, expect, it } from 'vitest';
import { threadFor } from './thread-for.ts';
import { torqueTable } from './torque-table.ts';
import { torqueTableCsv } from './torque-table-csv.ts';
import { torqueTableMarkdown } from './torque-table-markdown.ts';

const table = torqueTable({
  joints: [{ thread: threadFor('M8x1'), bearing: { outerDiameterMm: 11.63, holeDiameterMm: 9 } }],
  propertyClasses: ['8.8', '10.9'],
  frictions: [0.12],
});

describe('a torque table', () => {
  it('reads back from CSV with every digit, in four units', () => {
    const [head = '', ...lines] = torqueTableCsv(table).trimEnd().split('\r\n');
    const names = head.split(',');
    const rows = lines.map((line) => Object.fromEntries(line.split(',').map((cell, index) => [names[index], cell])));
    expect(rows.map((row) => Number(row.preloadN))).toEqual(table.rows.map((row) => row.preloadN));
    // NIST SP 811, appendix B.8: 1 lbf.in = 0.1129848 Nm, 1 lbf.ft = 1.355818 Nm, 1 kgf.m = 9.80665 Nm.
    const [first = {}] = rows;
    expect(Number(first.torqueLbfIn) * 0.1129848).toBeCloseTo(Number(first.torqueNm), 4);
    expect(Number(first.torqueLbfFt) * 1.355818).toBeCloseTo(Number(first.torqueNm), 4);
    expect((Number(first.torqueKgfCm) / 100) * 9.80665).toBeCloseTo(Number(first.torqueNm), 9);
    expect(first).toMatchObject({ method: 'vdi-2230', utilisation: '0.9', dataEdition: table.dataEdition });
    expect(first.sources).toContain('vdi-2230-2001-quoted');
  });

  it('quotes a cell that needs it and disarms one that a spreadsheet would run', () => {
    const [row] = table.rows;
    if (row === undefined) throw new Error('the table has lines');
    const hostile = { ...table, rows: [{ ...row, designation: '=1+1', propertyClass: 'a "b", c' }] };
    expect(torqueTableCsv(hostile).split('\r\n')[1]).toMatch(/^'=1\+1,"a ""b"", c",/);
  });

  it('is a table for people in Markdown, with what it rests on', () => {
    const text = torqueTableMarkdown(table);
    const widths = text
      .split('\n')
      .filter((line) => line.startsWith('|'))
      .map((line) => line.split('|').length);
    expect(widths).toEqual([10, 10, 10, 10]);
    // Printed VDI 2230 limit of 8.8 at a friction of 0.12: 20.2 kN and 26 Nm, that is 231 lbf.in, 19.3 lbf.ft, 266 kgf.cm.
    expect(text.split('\n')[2]).toBe('| M8x1 | 8.8 | 0.12 | 20.2 | 26.1 | 231 | 19.3 | 266 |');
    expect(text).toContain('vdi-2230-2001-quoted');
    expect(text).toContain('no advice');
  });

  it.each([torqueTableCsv, torqueTableMarkdown])('%o refuses what is none', (write) => {
    expect(() => write({ ...table, rows: [{}] } as never)).toThrow('rows[0].designation');
    expect(() => write(undefined as never)).toThrow('received');
  });
});
