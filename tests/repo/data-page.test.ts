import { dataEdition, listConflicts, listInterfaces, listNeighbours } from '@spindlewright/interfaces';
import { describe, expect, it } from 'vitest';
import { conflictsPage, recordsPage } from '../../scripts/data-page.ts';
import { readText } from '../workspace.ts';

const page = recordsPage();
const rows = page.split('\n').filter((line) => line.startsWith('| ') && line.includes('<br>`'));
const cells = rows.map((row) => {
  const [, record = '', total, withSource, standings = '', conflicts] = row.split('|').map((cell) => cell.trim());
  return { id: record.replace(/^.*<br>/, ''), total, withSource, standings, conflicts };
});

describe('the page on the data', () => {
  it('lists every record once', () => {
    const ids = [...listInterfaces(), ...listNeighbours()].map(({ id }) => `\`${id}\``);
    expect(cells.map(({ id }) => id).sort()).toEqual(ids.sort());
    expect(page).toContain(`Edition ${dataEdition}: ${ids.length} records`);
  });

  it('counts each number once by its standing, and agrees with the shipped table', () => {
    for (const { id, total, standings } of cells) {
      const byStanding = [...standings.matchAll(/\d+/g)].map(Number);
      expect(
        byStanding.reduce((sum, count) => sum + count, 0),
        id,
      ).toBe(Number(total));
    }
    const shipped = readText('packages/interfaces/data/records.csv').trim().split('\n').slice(1);
    const counts = new Map(shipped.map((line) => [line.split(',')[0], line.split(',').slice(2, 5)]));
    for (const { id, total, withSource, conflicts } of cells) {
      expect([total, withSource, conflicts], id).toEqual(counts.get(id.replaceAll('`', '')));
    }
  });

  it('shows every disagreement with every position', () => {
    const text = conflictsPage();
    const positions = text.split('\n').filter((line) => line.startsWith('| ') && !/^\| (position|---)/.test(line));
    expect(positions).toHaveLength(listConflicts().flatMap(({ conflict }) => conflict.positions).length);
  });

  it('leaves nothing open to the template engine of the site', () => {
    expect(`${page}${conflictsPage()}`).not.toMatch(/\{\{|<(?!br>)[a-z]/i);
  });
});
