import { checkTable } from './table-columns.ts';
import type { TorqueTable } from './torque-table.ts';

/**
 * Writes a torque table as Markdown for people, rounded, with what it rests on below it.
 *
 * @remarks
 * Formula: none. Preload in kN with one decimal, torques in Nm with one, in lbf.in and kgf.cm with none, in lbf.ft with one.
 *
 * Validity: any result of `torqueTable`. A line is a limit at its own friction, not advice: the text says so.
 *
 * Accuracy: rounded to the digits shown; take `torqueTableCsv` for all of them.
 *
 * @param table - What `torqueTable` gave.
 * @returns Text of a table (thread, class, friction, preload in kN, torque in Nm, lbf.in, lbf.ft, kgf.cm) and a paragraph.
 * @throws {@link DomainError} for what is no torque table.
 * @example
 * ```ts
 * import { threadFor, torqueTable, torqueTableMarkdown } from '@spindlewright/torque';
 * const table = torqueTable({
 *   joints: [{ thread: threadFor('M8x1'), bearing: { outerDiameterMm: 11.63, holeDiameterMm: 9 } }],
 *   propertyClasses: ['8.8'],
 *   frictions: [0.12],
 * });
 * torqueTableMarkdown(table).split('\n')[2]; // => '| M8x1 | 8.8 | 0.12 | 20.2 | 26.1 | 231 | 19.3 | 266 |'
 * ```
 * @see `torqueTable`.
 */
export function torqueTableMarkdown(table: TorqueTable): string {
  checkTable('torqueTableMarkdown', table);
  const { method, utilisation, sources, dataEdition, rows } = table;
  const lines = rows.map((row) =>
    [
      row.designation.replaceAll('|', '\\|'),
      row.propertyClass.replaceAll('|', '\\|'),
      row.friction,
      (row.preloadN / 1000).toFixed(1),
      row.torqueNm.toFixed(1),
      row.torqueLbfIn.toFixed(0),
      row.torqueLbfFt.toFixed(1),
      row.torqueKgfCm.toFixed(0),
    ].join(' | '),
  );
  const body = [
    'thread | class | friction | preload kN | Nm | lbf.in | lbf.ft | kgf.cm',
    '--- | --- | --: | --: | --: | --: | --: | --:',
    ...lines,
  ].map((line) => `| ${line} |`);
  return `${body.join('\n')}

Limits of tightening at ${utilisation} of the yield strength by the method ${method}, each at its own friction; no advice:
the part maker's own torque comes first. Sources: ${sources.join(', ')}. Edition ${dataEdition} of the data.
`;
}
