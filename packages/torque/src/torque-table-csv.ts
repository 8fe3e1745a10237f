import { checkTable, TABLE_COLUMNS } from './table-columns.ts';
import type { TorqueTable } from './torque-table.ts';

/**
 * Writes a torque table as CSV, one line a combination, with what it rests on in every line.
 *
 * @remarks
 * Formula: none; RFC 4180: a head line, CRLF, quotes where a cell needs them. Numbers in full, with a decimal point.
 *
 * Validity: any result of `torqueTable`. A cell that a spreadsheet could take for a formula gets an apostrophe before it;
 * no id or designation of this package begins so.
 *
 * Accuracy: every digit of the table, so that reading the file gives the same numbers.
 *
 * @param table - What `torqueTable` gave.
 * @returns Text of the file: designation, class, friction, preload in N, torque in Nm, lbf.in, lbf.ft and kgf.cm, method,
 * utilisation, sources (separated by blanks), edition of the data.
 * @throws {@link DomainError} for what is no torque table.
 * @example
 * ```ts
 * import { threadFor, torqueTable, torqueTableCsv } from '@spindlewright/torque';
 * const table = torqueTable({
 *   joints: [{ thread: threadFor('M8x1'), bearing: { outerDiameterMm: 11.63, holeDiameterMm: 9 } }],
 *   propertyClasses: ['8.8'],
 *   frictions: [0.1, 0.14],
 * });
 * const lines = torqueTableCsv(table).split('\r\n');
 * lines.length; // => 4
 * lines[1]?.startsWith('M8x1,8.8,0.1,'); // => true
 * ```
 * @see RFC 4180 (2005), section 2.
 */
export function torqueTableCsv(table: TorqueTable): string {
  checkTable('torqueTableCsv', table);
  const { method, utilisation, sources, dataEdition } = table;
  const rest = [method, utilisation, sources.join(' '), dataEdition];
  const lines = [
    [...TABLE_COLUMNS, 'method', 'utilisation', 'sources', 'dataEdition'],
    ...table.rows.map((row) => [...TABLE_COLUMNS.map((column) => row[column]), ...rest]),
  ];
  return lines.map((cells) => `${cells.map(cell).join(',')}\r\n`).join('');
}

function cell(value: string | number): string {
  const plain = String(value);
  const text = /^[=+\-@\t\r]/.test(plain) ? `'${plain}` : plain;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
