import { convert, type Unit } from '@spindlewright/quantity';
import { getSource } from '@spindlewright/quantity/sources';
import { describe, expect, it } from 'vitest';
import engagementJson from '../data/engagement-lengths.json' with { type: 'json' };
import frictionJson from '../data/friction-classes.json' with { type: 'json' };
import pressureJson from '../data/limiting-pressures.json' with { type: 'json' };
import majorJson from '../data/major-diameters-6g.json' with { type: 'json' };
import nutFactorJson from '../data/nut-factors.json' with { type: 'json' };
import classJson from '../data/property-classes.json' with { type: 'json' };
import settlementJson from '../data/settlements.json' with { type: 'json' };
import seriesJson from '../data/thread-series.json' with { type: 'json' };
import methodJson from '../data/tightening-methods.json' with { type: 'json' };
import toolJson from '../data/tool-classes.json' with { type: 'json' };
import torqueJson from '../data/trade-torques.json' with { type: 'json' };
import {
  dataEdition,
  frictionClasses,
  majorDiameters6g,
  majorDiameters6gProvenance,
  propertyClasses,
  threadSeries,
  threadSeriesProvenance,
  tradeTorques,
} from './data.ts';
import { metricThread } from './metric-thread.ts';
import { tradeTorqueRowSchema } from './schema.ts';

type Cell = number | string | readonly string[];
type Table = { dataEdition: string; standing?: string; sources?: string[]; rows: Record<string, Cell>[] };

const tables = {
  'engagement-lengths': engagementJson,
  'friction-classes': frictionJson,
  'limiting-pressures': pressureJson,
  'major-diameters-6g': majorJson,
  'nut-factors': nutFactorJson,
  'property-classes': classJson,
  settlements: settlementJson,
  'thread-series': seriesJson,
  'tightening-methods': methodJson,
  'tool-classes': toolJson,
  'trade-torques': torqueJson,
} as unknown as Record<string, Table>;

const withoutSource = ['common-practice', 'judgement', 'from-memory', 'invented'];

/** The table as CSV: id, standing and sources first, then the other columns as they first appear. */
function csvOf(table: Table): string {
  const rows = table.rows.map(({ id, standing, sources, ...rest }) => ({
    id,
    standing: standing ?? table.standing,
    sources: sources ?? table.sources,
    ...rest,
  })) as Record<string, Cell | undefined>[];
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const written = (cell: Cell | undefined): string => {
    const text = cell === undefined ? '' : typeof cell === 'object' ? cell.join(';') : String(cell);
    return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  };
  const lines = rows.map((row) => columns.map((column) => written(row[column])).join(','));
  return `${[columns.join(','), ...lines].join('\n')}\n`;
}

/** The table as Markdown for reading: the same cells, numbers to four figures. */
function markdownOf(table: Table): string {
  const [head = '', ...lines] = csvOf({
    ...table,
    rows: table.rows.map((row) =>
      Object.fromEntries(
        Object.entries(row).map(([key, cell]) => [
          key,
          typeof cell === 'number'
            ? Number(cell.toPrecision(4))
            : typeof cell === 'string'
              ? cell.replaceAll(',', ';')
              : cell,
        ]),
      ),
    ),
  })
    .trimEnd()
    .split('\n');
  const cells = [head, head.replace(/[^,]+/g, '---'), ...lines].map((text) => text.split(','));
  const widths = (cells[0] ?? []).map((_, column) => Math.max(...cells.map((line) => line[column]?.length ?? 0)));
  const padded = cells.map((line, row) =>
    line.map((cell, column) => cell.padEnd(widths[column] ?? 0, row === 1 ? '-' : ' ')),
  );
  return `${padded.map((line) => `| ${line.join(' | ')} |`).join('\n')}\n`;
}

it('trade torques have a Markdown twin for reading (vitest -u writes it)', async () => {
  await expect(markdownOf(tables['trade-torques'] as Table)).toMatchFileSnapshot('../data/trade-torques.md');
});

describe.each(Object.entries(tables))('%s', (name, table) => {
  it('has a CSV twin (vitest -u writes it)', async () => {
    await expect(csvOf(table)).toMatchFileSnapshot(`../data/${name}.csv`);
  });

  it('states the edition of the package', () => {
    expect(table.dataEdition).toBe(dataEdition);
  });

  it('names each row once', () => {
    const ids = table.rows.map((row) => row.id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  it('gives every row a standing, and a known source where the standing claims one', () => {
    const faults = table.rows.filter((row) => {
      const standing = String(row.standing ?? table.standing);
      const sources = (row.sources ?? table.sources ?? []) as readonly string[];
      for (const id of sources) getSource(id);
      return standing === 'undefined' || (sources.length === 0 && !withoutSource.includes(standing));
    });
    expect(faults).toEqual([]);
  });

  it('has ranges the right way round and no number that is not above 0', () => {
    for (const row of table.rows) {
      const { min, max, minScatterPercent, maxScatterPercent } = row;
      if (typeof min === 'number' && typeof max === 'number') expect(min).toBeLessThanOrEqual(max);
      if (typeof minScatterPercent === 'number')
        expect(minScatterPercent).toBeLessThanOrEqual(Number(maxScatterPercent));
      for (const cell of Object.values(row)) if (typeof cell === 'number') expect(cell).toBeGreaterThan(0);
    }
  });
});

describe('trade torques', () => {
  it('have the form of their schema', () => {
    for (const row of tradeTorques) expect(tradeTorqueRowSchema.safeParse(row).error).toBeUndefined();
  });

  it('give Nm by exact factors from the unit that was printed first', () => {
    for (const row of tradeTorques) {
      expect(row.minNm).toBeCloseTo(convert(row.min, row.unit as Unit, 'Nm' as never), 12);
      expect(row.maxNm).toBeCloseTo(convert(row.max, row.unit as Unit, 'Nm' as never), 12);
    }
  });

  it('give the other units from the Nm by the factors of NIST SP 811', () => {
    const factors = [
      ['LbfIn', 0.1129848290276167],
      ['LbfFt', 1.3558179483314],
      ['KgfCm', 0.0980665],
    ] as const;
    for (const row of tradeTorques) {
      for (const [unit, factor] of factors) {
        expect(row[`min${unit}`] * factor).toBeCloseTo(row.minNm, 11);
        expect(row[`max${unit}`] * factor).toBeCloseTo(row.maxNm, 11);
      }
    }
  });

  it('keep a value as printed in the unit it was printed in', () => {
    const printed = tradeTorques.filter((row) => row.unit === 'lbf.in');
    expect(printed.length).toBeGreaterThan(2);
    for (const row of printed) expect([row.minLbfIn, row.maxLbfIn]).toEqual([row.min, row.max]);
  });

  it('agree with the Nm printed beside them to half a unit of the last digit, but for noted misprints', () => {
    const differing = tradeTorques.filter(
      (row) =>
        row.printedMinNm !== undefined &&
        row.printedMaxNm !== undefined &&
        Math.max(Math.abs(row.printedMinNm - row.minNm), Math.abs(row.printedMaxNm - row.maxNm)) > 0.06,
    );
    expect(differing.map((row) => row.id)).toEqual(['splined-m15-dealer-a', 'hollow-carbon-dealer']);
    expect(differing.every((row) => row.note !== undefined)).toBe(true);
  });
});

describe('thread series', () => {
  it('drill a core hole between the minor diameter of the nut thread and a fifth of the pitch more', () => {
    const odd = threadSeries.filter((row) => {
      if (row.nominalDiameterMm === undefined || row.pitchMm === undefined) return false;
      const { internalMinorDiameterMm } = metricThread({
        nominalDiameterMm: row.nominalDiameterMm,
        pitchMm: row.pitchMm,
      });
      const more = (row.coreHoleMm - internalMinorDiameterMm) / row.pitchMm;
      return more < 0 || more > 0.2;
    });
    expect(odd.map((row) => row.id)).toEqual([]);
    expect(threadSeriesProvenance.sources).toEqual(['freecad-threads']);
  });

  it('keep 6g below the nominal size by 15 + 11 P micrometres, to the rounding of the standard', () => {
    // Fundamental deviation g of ISO 965-1; M16 and its like are rounded by one more micrometre.
    for (const row of majorDiameters6g) {
      const pitchMm = threadSeries.find((entry) => entry.id.startsWith(`${row.id}x`))?.pitchMm ?? 0;
      const below = 1000 * (row.nominalDiameterMm - row.maxMajorDiameter6gMm);
      expect(Math.abs(below - (15 + 11 * pitchMm))).toBeLessThan(1.1);
    }
    expect(majorDiameters6gProvenance.standing).toBe('secondary');
  });
});

it('strengths rise with the figures of the class', () => {
  for (const row of propertyClasses.filter(
    (entry) => /^\d/.test(entry.propertyClass) && entry.quantity === 'yield-strength',
  )) {
    const [hundreds = 0, tenths = 0] = row.propertyClass.split('.').map(Number);
    // Nominal: 8.8 = 800 MPa x 0.8; minima stand at it or up to 6.3 % above.
    expect(row.value / (hundreds * tenths * 10)).toBeGreaterThanOrEqual(1);
    expect(row.value / (hundreds * tenths * 10)).toBeLessThan(1.064);
  }
});

it('friction classes overlap and climb', () => {
  const classes = frictionClasses.filter((row) => row.id.startsWith('friction-class'));
  for (let k = 1; k < classes.length; k++) {
    expect(classes[k]?.min).toBeGreaterThan(classes[k - 1]?.min ?? 1);
    expect(classes[k]?.min).toBeLessThanOrEqual(classes[k - 1]?.max ?? 0);
  }
});
