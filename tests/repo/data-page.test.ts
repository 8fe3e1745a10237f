import { dataEdition, listConflicts, listInterfaces, listNeighbours } from '@spindlewright/interfaces';
import { describe, expect, it } from 'vitest';
import { conflictsPage, recordsPage } from '../../scripts/data-page.ts';
import { readText } from '../workspace.ts';

const page = recordsPage();
const rows = page.split('\n').filter((line) => line.startsWith('| `'));
const cells = rows.map((row) => row.split('|').map((cell) => cell.trim()));

describe('the page on the data', () => {
  it('lists every record once', () => {
    const ids = [...listInterfaces(), ...listNeighbours()].map(({ id }) => `\`${id}\``);
    expect(cells.map(([, id]) => id).sort()).toEqual(ids.sort());
    expect(page).toContain(`Edition ${dataEdition}: ${ids.length} records`);
  });

  it('counts each number once by its standing, and agrees with the shipped table', () => {
    for (const [, id, , total, , ...rest] of cells) {
      const byStanding = rest.slice(0, 8).map(Number);
      expect(
        byStanding.reduce((sum, count) => sum + count, 0),
        id,
      ).toBe(Number(total));
    }
    const shipped = readText('packages/interfaces/data/records.csv').trim().split('\n').slice(1);
    const counts = new Map(shipped.map((line) => [line.split(',')[0], line.split(',').slice(2, 5)]));
    for (const row of cells) {
      const [, id = '', , total, withSource] = row;
      expect([total, withSource, row.at(-2)], id).toEqual(counts.get(id.replaceAll('`', '')));
    }
  });

  it('shows every disagreement with every position', () => {
    const text = conflictsPage();
    const positions = text.split('\n').filter((line) => line.startsWith('| ') && !/^\| (position|---)/.test(line));
    expect(positions).toHaveLength(listConflicts().flatMap(({ conflict }) => conflict.positions).length);
  });

  it('leaves nothing open to the template engine of the site', () => {
    expect(`${page}${conflictsPage()}`).not.toMatch(/\{\{|<[a-z]/i);
  });
});
