import { createFinding, type Finding } from '@spindlewright/quantity';
import { screenMessages } from '../../screen/messages.ts';

/** Codes of rows that a reader cannot read. */
type FaultCode = 'row-not-json' | 'row-too-long' | 'row-columns-differ' | 'row-quotes-broken' | 'row-not-text';

/** A row that could not be read, in the place of the row. @internal */
export class RowFault {
  readonly reason: Finding;
  constructor(code: FaultCode, values: Finding['values'] = {}) {
    this.reason = createFinding({ code, severity: 'stop', template: screenMessages[code], values });
  }
}

/** A catalogue that cannot be read at all. @internal */
export class CatalogueRefusal extends Error {}

/** Rows with the lines on which they begin; a row that could not be read is a {@link RowFault}. @internal */
export interface Batch {
  rows: unknown[];
  lines: number[];
}

/** Characters of the longest line or record that is read. @internal */
export const LONGEST_ROW = 1 << 20;
