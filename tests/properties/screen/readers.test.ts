// Hostile and broken files: whatever comes, every row is answered for and nothing is thrown but a refusal of the file.
import { Readable } from 'node:stream';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  csvLines,
  FAULTS,
  ndjsonLines,
  type ShopRow,
  shopMapping,
  shopRows,
} from '../../../examples/screening/generate.ts';
import {
  type CatalogueForm,
  CatalogueRefusal,
  RowFault,
  readCatalogue,
} from '../../../packages/spindlewright/src/cli/readers/index.ts';
import { csvCell } from '../../../packages/spindlewright/src/cli/screen/writers.ts';
import { screener } from '../../../packages/spindlewright/src/screen/screener.ts';

const NEED = { format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis' } as const;

async function rowsOf(bytes: Uint8Array, form?: CatalogueForm, pieceBytes = 7) {
  const pieces = [];
  for (let at = 0; at < bytes.length; at += pieceBytes) pieces.push(bytes.subarray(at, at + pieceBytes));
  const rows: unknown[] = [];
  const lines: number[] = [];
  for await (const batch of readCatalogue({ source: Readable.from(pieces), name: '', ...(form ? { form } : {}) })) {
    rows.push(...batch.rows);
    lines.push(...batch.lines);
  }
  return { rows, lines };
}

function screenAll(rows: readonly unknown[]) {
  const own = screener(NEED, undefined);
  rows.forEach((row, index) => {
    if (row instanceof RowFault) own.refuse(index, row.reason);
    else JSON.stringify(own.judge(row, index));
  });
  const summary = own.summary();
  expect(summary.fitsCount + summary.doesNotFitCount + summary.cannotTellCount + summary.refusedCount).toBe(
    rows.length,
  );
  expect(summary.rowCount).toBe(rows.length);
  return summary;
}

describe('readers', () => {
  it('answer any bytes with rows or a refusal of the file', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.uint8Array({ maxLength: 400 }),
        fc.constantFrom(undefined, 'csv', 'ndjson', 'json'),
        async (bytes, form) => {
          try {
            screenAll((await rowsOf(bytes, form)).rows);
          } catch (error) {
            if (!(error instanceof CatalogueRefusal)) throw error;
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it('read any JSON value a line as one row, however it is cut', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.jsonValue({ maxDepth: 4 }), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 1, max: 40 }),
        async (values, piece) => {
          const plain = values.filter(
            (value) => !JSON.stringify(value).includes('&') && !JSON.stringify(value).includes('"@'),
          );
          fc.pre(plain.length > 0);
          const text = plain.map((value) => `${JSON.stringify(value)}\n`).join('');
          const { rows, lines } = await rowsOf(Buffer.from(text), 'ndjson', piece);
          expect(rows).toEqual(plain.map((value) => JSON.parse(JSON.stringify(value))));
          expect(lines).toEqual(plain.map((_value, index) => index + 1));
          expect((await rowsOf(Buffer.from(JSON.stringify(plain)), 'json', piece)).rows).toEqual(rows);
          screenAll(rows);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('read back any table, quoted breaks and all, in every encoding', async () => {
    const cell = fc
      .string({ unit: fc.constantFrom('a', '\u00e9', ' ', ';', '"', '\n', ',', '1', '\u00df'), maxLength: 8 })
      .map((text) => `x${text}x`);
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 6 }),
        fc.constantFrom(',', ';', '\t'),
        async (cells, delimiter) => {
          const wanted: ShopRow[] = cells.map(([a, b]) => ({ Name: a, Wert: b }));
          const text = [...csvLines(wanted, delimiter as ',')].join('');
          const wide = Buffer.from(`\ufeff${text}`, 'utf16le');
          for (const bytes of [Buffer.from(text), Buffer.from(`\ufeff${text}`), Buffer.from(text, 'latin1'), wide]) {
            expect((await rowsOf(bytes, 'csv', 11)).rows.map((row) => ({ ...(row as object) }))).toEqual(wanted);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('survive what is made to break them, and go on behind it', async () => {
    const good = '{"partId":"A","kind":"arm","interface":"square-taper-jis"}\n';
    const deep = `{"partId":"D","kind":${'['.repeat(50_000)}${']'.repeat(50_000)}}\n`;
    const polluting = '{"__proto__":{"kind":"arm"},"constructor":{"prototype":{"kind":"arm"}},"partId":"P"}\n';
    const huge = `{"partId":"${'x'.repeat(6 << 20)}"}\n`;
    const { rows } = await rowsOf(Buffer.from(good + deep + polluting + huge + good), 'ndjson', 1 << 16);
    const summary = screenAll(rows);
    expect([summary.rowCount, summary.fitsCount, summary.refusedCount, summary.cannotTellCount]).toEqual([5, 2, 1, 2]);
    expect(({} as { kind?: string }).kind).toBeUndefined();
  });

  it('tell a quote that never closes and go on', async () => {
    const text = `partId,kind\nA,arm\n"B,arm\n${'C,arm\n'.repeat(200_000)}`;
    const { rows } = await rowsOf(Buffer.from(text), 'csv', 1 << 16);
    expect(rows.some((row) => row instanceof RowFault)).toBe(true);
    screenAll(rows);
  }, 20_000);

  it('take schema.org graphs, groups and units apart', async () => {
    const document = {
      '@context': 'https://schema.org',
      '@graph': [
        {
          '@type': 'ProductGroup',
          name: 'Arm &amp; more',
          additionalProperty: [{ '@type': 'PropertyValue', name: 'interface', value: 'square-taper-jis' }],
          hasVariant: [
            { '@type': 'Product', sku: 'V1', additionalProperty: { name: 'armLengthMm', value: 17, unitCode: 'CMT' } },
            {
              '@type': 'Product',
              sku: 'V2',
              additionalProperty: [{ name: 'armLengthMm', value: 175, unitCode: 'MMT' }],
            },
          ],
        },
        { '@type': ['Product'], sku: 'S', name: 'single' },
      ],
    };
    const { rows } = await rowsOf(Buffer.from(JSON.stringify(document)));
    expect(rows.map((row) => (row as ShopRow).sku)).toEqual(['V1', 'V2', 'S']);
    const mapping = {
      format: 'spindlewright-mapping-1',
      columns: { partId: 'sku', kind: { always: 'arm' }, interface: 'interface', armLengthMm: 'armLengthMm' },
    } as const;
    const own = screener({ ...NEED, armLengthMm: 170 }, mapping);
    expect(rows.map((row, index) => own.judge(row, index).state)).toEqual(['fits', 'does-not-fit', 'cannot-tell']);
    expect((rows[0] as ShopRow).name).toBe('Arm & more');
  });

  it('disarm every cell that a spreadsheet would run', () => {
    fc.assert(
      fc.property(fc.constantFrom('=', '+', '-', '@', '\t', '\r'), fc.string(), (sign, rest) => {
        const cell = csvCell(`${sign}${rest}`);
        const plain = cell.startsWith('"') ? cell.slice(1, -1).replace(/""/g, '"') : cell;
        expect(/^-?\d+(\.\d+)?$/.test(plain) || plain.startsWith("'")).toBe(true);
      }),
    );
  });
});

describe('the generated catalogue', () => {
  it('is the same for the same seed, and another for another', () => {
    const made = (seed: number): string => [...ndjsonLines(shopRows({ rows: 300, seed }))].join('');
    expect(made(5)).toBe(made(5));
    expect(made(5)).not.toBe(made(6));
  });

  it('holds its faults at their rates, and each is met with its code', async () => {
    const rows = 20_000;
    const text = [...ndjsonLines(shopRows({ rows, seed: 11 }))].join('');
    const read = await rowsOf(Buffer.from(text), 'ndjson', 1 << 16);
    const own = screener({ ...NEED, side: 'drive' }, shopMapping as never);
    for (const [index, row] of read.rows.entries()) {
      if (row instanceof RowFault) own.refuse(index, row.reason);
      else own.judge(row, index);
    }
    const summary = own.summary();
    expect(summary.rowCount).toBe(rows);
    const met = (code: string): number => summary.reasons.find(({ what }) => what === code)?.rowCount ?? 0;
    // Five standard errors of a count of rare rows; the rates are those of the generator.
    const near = (count: number, rate: number): void => {
      expect(Math.abs(count - rows * rate)).toBeLessThan(5 * Math.sqrt(rows * rate));
    };
    near(met('row-not-json'), FAULTS.broken);
    near(met('part-id-missing'), FAULTS.noId * (1 - FAULTS.duplicateId));
    near(summary.duplicateCount, FAULTS.duplicateId);
    // Zeros go from one id in three.
    near(met('part-id-damaged'), (FAULTS.lostZeros / 3 + FAULTS.exponentId) * (1 - FAULTS.duplicateId));
    for (const code of ['facts-contradict', 'several-values', 'word-not-mapped', 'another-side']) {
      expect(met(code), code).toBeGreaterThan(0);
    }
    expect(summary.unmappedWords.map(({ word }) => word)).toEqual(['Sonderposten']);
  });
});
