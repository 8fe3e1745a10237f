import { checkMapping } from '../../screen/check-mapping.ts';
import type { Mapping } from '../../screen/mapping.ts';
import { screener } from '../../screen/screener.ts';
import { fileBytes } from '../readers/file-bytes.ts';
import { CatalogueRefusal, RowFault, readCatalogue } from '../readers/index.ts';
import { mappingColumns } from '../screen/mapping-columns.ts';
import { printable } from '../screen/writers.ts';
import type { Fault, FileReport } from './report.ts';

const SHOWN_FAULTS = 100;
const SHOWN_WORDS = 20;

/** Looks at the rows of a catalogue: what cannot be read or ordered, and what its mapping does not explain. @internal */
export async function catalogueReport(
  file: string,
  { mapping, most }: { mapping: unknown; most: number },
): Promise<FileReport> {
  if (mapping !== undefined) checkMapping('mapping', mapping);
  const own = mapping as Mapping | undefined;
  // Any need will do: what cannot be read stays unreadable, whatever is wanted.
  const judge = screener({ format: 'spindlewright-need-1', for: 'arm', interface: 'square-taper-jis' }, own);
  const faults: Fault[] = [];
  const columns = new Set<string>();
  let rowCount = 0;
  let faultCount = 0;
  const add = (fault: Fault): void => {
    faultCount++;
    if (faults.length < SHOWN_FAULTS) faults.push(fault);
  };
  try {
    for await (const { rows, lines } of readCatalogue({
      source: fileBytes(file),
      name: file,
    })) {
      for (const [index, row] of rows.entries()) {
        if (rowCount >= most) break;
        rowCount++;
        const line = lines[index] ?? 0;
        if (!(row instanceof RowFault) && typeof row === 'object' && row !== null) {
          for (const name of Object.keys(row)) columns.add(name);
        }
        const { state, reasons } = row instanceof RowFault ? judge.refuse(line, row.reason) : judge.judge(row, line);
        const [reason] = reasons;
        if (state === 'refused' && reason !== undefined) {
          add({ line, path: reason.code, received: 'a row that cannot be used', allowed: printable(reason.message) });
        }
      }
      if (rowCount >= most) break;
    }
  } catch (error) {
    if (!(error instanceof CatalogueRefusal)) throw error;
    add({ path: '', received: 'a catalogue that cannot be read', allowed: error.message });
  }
  if (rowCount === 0 && faultCount === 0) add({ path: '', received: 'no row', allowed: 'a catalogue with rows' });
  // Told first: a column that is not there may be why every row was refused.
  for (const column of own === undefined || rowCount === 0 ? [] : mappingColumns(own).reverse()) {
    if (columns.has(column)) continue;
    const known = [...columns].slice(0, 30).join(', ');
    faultCount++;
    faults.unshift({
      path: 'columns',
      received: `no column ${JSON.stringify(column)}, which the mapping names`,
      allowed: known,
    });
  }
  const { unmappedWords, duplicateCount } = judge.summary();
  const cautions = [
    ...(duplicateCount > 0
      ? [`${duplicateCount} ${duplicateCount === 1 ? 'row repeats' : 'rows repeat'} an earlier part id`]
      : []),
    ...(own === undefined
      ? ['Without a mapping the columns are taken to have our own names; screen --draft-mapping writes a first one.']
      : []),
    ...unmappedWords
      .slice(0, SHOWN_WORDS)
      .map(
        ({ field, word, rowCount: count }) =>
          `${field}: the mapping does not explain ${JSON.stringify(printable(word))} (${count} rows)`,
      ),
    ...(rowCount >= most ? [`Only the first ${rowCount} rows were looked at (--rows).`] : []),
  ];
  return { file, kind: 'catalogue', faults, faultCount, cautions, rowCount };
}
