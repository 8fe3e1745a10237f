import type { Need } from '../../screen/need.ts';
import type { Outcome } from '../../screen/screen-outcome.ts';
import type { ScreenedPart, ScreenSummary } from '../../screen/screened.ts';
import { pathWords } from '../../seat-words.ts';

/** Forms of output. @internal */
export type OutputForm = 'ndjson' | 'csv' | 'json' | 'text';

/** Writes rows as text; what rows alike share is turned into text once. @internal */
export interface RowWriter {
  /** What stands before the first row. */
  head(): string;
  /** One row. */
  row(line: number, partId: string, outcome: Outcome): string;
  /** What stands after the last row. */
  tail(summary: ScreenSummary, best: readonly ScreenedPart[]): string;
}

const SAFE = /^[\w .:/+-]*$/;
const quoted = (text: string): string => (SAFE.test(text) ? `"${text}"` : JSON.stringify(text));

/** Keeps what was made of an outcome as long as the outcome lives. */
function kept(make: (outcome: Outcome) => string): (outcome: Outcome) => string {
  const all = new WeakMap<Outcome, string>();
  return (outcome) => {
    const known = all.get(outcome);
    if (known !== undefined) return known;
    const fresh = make(outcome);
    all.set(outcome, fresh);
    return fresh;
  };
}

/** One JSON object a line. @internal */
export function ndjsonWriter(): RowWriter {
  const rest = kept((outcome) => `,${JSON.stringify(outcome).slice(1)}\n`);
  return {
    head: () => '',
    row: (line, partId, outcome) => `{"line":${line},"partId":${quoted(partId)}${rest(outcome)}`,
    tail: () => '',
  };
}

const COLUMNS = [
  ...['line', 'part_id', 'state', 'missing_fact', 'reason_codes', 'reason', 'basis', 'seat_verdict'],
  ...['chainline_lower_mm', 'chainline_mm', 'chainline_upper_mm'],
];

/** A table with commas; a cell that a spreadsheet would take for a formula is disarmed by an apostrophe. @internal */
export function csvWriter(): RowWriter {
  const rest = kept((outcome) => {
    const { state, missingFact = '', reasons, basis = '', predictedSeat, chainlineEffectMm: by } = outcome;
    const cells = [
      state,
      missingFact,
      reasons.map(({ code }) => code).join(' '),
      reasons[0]?.message ?? '',
      basis,
      predictedSeat?.verdict ?? '',
      ...(by === undefined ? ['', '', ''] : [by.lower, by.nominal, by.upper].map((value) => value.toFixed(2))),
    ];
    return `,${cells.map(csvCell).join(',')}\r\n`;
  });
  return {
    head: () => `${COLUMNS.join(',')}\r\n`,
    row: (line, partId, outcome) => `${line},${csvCell(partId)}${rest(outcome)}`,
    tail: () => '',
  };
}

const NUMBER = /^-?\d+(?:\.\d+)?$/;

/** One cell of a table. @internal */
export function csvCell(text: string): string {
  const armed = /^[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/.test(text) && !NUMBER.test(text);
  const safe = armed ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}

/** One JSON document: the need, every row, the shortlist and the counts. @internal */
export function jsonWriter(need: Need): RowWriter {
  const rows = ndjsonWriter();
  let first = true;
  return {
    head: () => `{"format":"spindlewright-screening-1","need":${JSON.stringify(need)},"parts":[\n`,
    row(line, partId, outcome) {
      const comma = first ? '' : ',';
      first = false;
      return comma + rows.row(line, partId, outcome);
    },
    tail: (summary, best) => `],"shortlist":${JSON.stringify(best)},"summary":${JSON.stringify(summary)}}\n`,
  };
}

const WORDS = {
  fits: 'fits',
  'does-not-fit': 'does not fit',
  'cannot-tell': 'cannot tell',
  refused: 'refused',
} as const;

/** A text of a stranger without what a terminal takes for a command. @internal */
export const printable = (text: string): string => text.replace(/[\p{Cc}\p{Cf}]/gu, '\ufffd');

/** The counts and the shortlist for people; rows are not listed. @internal */
export function textWriter(): RowWriter {
  return {
    head: () => '',
    row: () => '',
    tail: (summary, best) => summaryText(summary, best),
  };
}

/** Counts, shortlist and what is left to say, in lines. @internal */
export function summaryText(summary: ScreenSummary, best: readonly ScreenedPart[]): string {
  const count = (value: number): string => String(value).padStart(9);
  const lines = [
    `${count(summary.rowCount)} rows`,
    `${count(summary.fitsCount)} fit`,
    `${count(summary.doesNotFitCount)} do not fit`,
    `${count(summary.cannotTellCount)} cannot tell: one fact is missing`,
    `${count(summary.refusedCount)} refused: could not be read, or have no id to order by`,
    ...(summary.duplicateCount > 0 ? [`${count(summary.duplicateCount)} of them repeat an earlier part id`] : []),
  ];
  if (best.length > 0) {
    lines.push('', 'Worth a look, best first');
    for (const { line, partId, state, missingFact, chainlineEffectMm, reasons } of best) {
      const by =
        chainlineEffectMm === undefined
          ? ''
          : `, chainline ${chainlineEffectMm.lower.toFixed(1)} to ${chainlineEffectMm.upper.toFixed(1)} mm`;
      const open = missingFact === undefined ? '' : `, missing: ${pathWords(missingFact)}`;
      lines.push(`  ${printable(partId)} (line ${line}): ${WORDS[state]}${open}${by}`);
      const [why] = reasons;
      if (why !== undefined) lines.push(`      ${printable(why.message)}`);
    }
  }
  if (summary.missingFacts.length > 0) {
    lines.push('', 'Facts that would decide');
    for (const { what, rowCount } of summary.missingFacts.slice(0, 10))
      lines.push(`${count(rowCount)}  ${pathWords(what)}`);
  }
  lines.push('', 'Deciding reasons');
  for (const { what, rowCount } of summary.reasons.slice(0, 15)) lines.push(`${count(rowCount)}  ${what}`);
  if (summary.unmappedWords.length > 0) {
    lines.push('', 'Words that no mapping explains');
    for (const { field, word, rowCount } of summary.unmappedWords.slice(0, 15)) {
      lines.push(`${count(rowCount)}  ${field}: ${printable(word)}`);
    }
  }
  lines.push('', ...summary.cautions.map(({ message }) => `! ${message}`));
  lines.push(
    `Data ${summary.provenance.dataEdition}, ${Object.entries(summary.provenance.versions)
      .map(([name, version]) => `${name} ${version}`)
      .join(', ')}`,
  );
  return `${lines.join('\n')}\n`;
}
