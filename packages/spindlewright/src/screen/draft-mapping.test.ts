import { describe, expect, it } from 'vitest';
import { mappingSchema } from '../schema.ts';
import { draftMapping } from './draft-mapping.ts';

describe('draftMapping', () => {
  it('names columns by their names, units in them, and contents', () => {
    const { mapping, unmapped, unusedColumns, fieldsWithoutColumn, rowCount } = draftMapping([
      {
        Ref: 'a',
        Famille: 'Manivelle',
        Gizmo: 'rechts',
        'Longueur [cm]': '17',
        Prix: '9,90',
        Emmanchement: 'Carr\u00e9',
      },
      { Ref: 'b', Famille: 'Selle', Gizmo: 'links', 'Longueur [cm]': 'sur mesure', Prix: '8', Emmanchement: 'Typ 7' },
      { Ref: 'c', Famille: 'Manivelle', Gizmo: 'L/R', 'Longueur [cm]': '17,5', Prix: '8', Emmanchement: 'N/A' },
    ]);
    expect(mapping.columns).toMatchObject({
      partId: 'Ref',
      kind: { column: 'Famille', values: { Manivelle: 'arm', Selle: '' } },
      side: { column: 'Gizmo', values: { rechts: 'drive', links: 'non-drive', 'L/R': 'pair' } },
      armLengthMm: { column: 'Longueur [cm]', unit: 'cm' },
      interface: { column: 'Emmanchement', values: { 'Typ 7': '' } },
    });
    expect(unmapped).toEqual([
      { field: 'kind', word: 'Selle', rowCount: 1 },
      { field: 'interface', word: 'Typ 7', rowCount: 1 },
      { field: 'armLengthMm', word: 'sur mesure', rowCount: 1 },
    ]);
    expect(unusedColumns).toEqual(['Prix']);
    expect(fieldsWithoutColumn).toContain('thread');
    expect(rowCount).toBe(3);
    expect(mappingSchema.parse(mapping)).toEqual(mapping);
  });

  it('gives ids of figures their width, and only where nearly all share it', () => {
    const rows = (width: (index: number) => number) =>
      Array.from({ length: 40 }, (_, index) => ({ sku: String(index).padStart(width(index), '0') }));
    expect(draftMapping(rows(() => 6)).mapping.columns.partId).toEqual({ column: 'sku', digitCount: 6 });
    expect(draftMapping(rows((index) => (index % 2 ? 6 : 7))).mapping.columns.partId).toBe('sku');
  });

  it('is not moved by rows that are none, nor by columns with names of methods', () => {
    const hostile = JSON.parse('{"__proto__": "x", "constructor": "JIS", "sku": "1"}');
    const { mapping } = draftMapping([null, 5, [], hostile]);
    expect(mapping.columns.partId).toBe('sku');
    expect(draftMapping([]).rowCount).toBe(0);
  });
});
