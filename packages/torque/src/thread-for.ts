import { convert, nearestName } from '@spindlewright/quantity';
import series from '../data/thread-series.json' with { type: 'json' };
import { metricThread } from './metric-thread.ts';
import { refuse } from './refuse.ts';
import type { Hand, Thread } from './thread.ts';
import { inchSize, unifiedThread } from './unified-thread.ts';

interface SeriesRow {
  id: string;
  series: string;
  nominalDiameterMm?: number;
  pitchMm?: number;
  nominalDiameterIn?: number;
  threadsPerInch?: number;
}

// Read on demand: a table touched while the module loads would ride in every bundle.
const rows = (): readonly SeriesRow[] => series.rows;

/** Signs of the longest name that is read; the longest of the series have twenty. */
const LONGEST = 60;

const GRAMMAR =
  'M8x1, M14 x 1.25, M8 (coarse pitch), 9/16-20 UN, 1/2-20 UNF, 1/2 UNF, #10-32 UNF, 1.37 in x 24, 36 mm x 24 tpi; ' +
  'each with LH at the end for a left hand';

const NUMBER = '(\\d+(?:\\.\\d+)?|\\.\\d+)';
const SIZE = '(#\\d+|\\d+[ -]\\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?|\\.\\d+)';

/**
 * Reads a thread designation, the way drawings, catalogues and workshops write it.
 *
 * @remarks
 * Formula: `metricThread` or `unifiedThread` of the numbers read. Grammar: `M8x1`, `M14 x 1.25`, `M8` (coarse pitch from
 * the series), `9/16-20 UN`, `1/2-20 UNF`, `1/2 UNF`, `#10-32`, `1.37 in x 24`, `36 mm x 24 tpi`; a tolerance class
 * (`-6g`, `-2A`) is read and left aside; `LH` at the end makes it a left hand. Point or comma, `x` or the times sign.
 *
 * Validity: series letters UNC, UNF and UNEF have to fit the diameter and pitch; explicit pitches need be in no series.
 * A pair without a unit, such as `14 x 1.25`, is refused rather than guessed.
 *
 * Accuracy: that of `metricThread` and `unifiedThread`.
 *
 * @param designation - Text such as `M8x1`.
 * @returns The thread, with the designation in one spelling: `M8` comes back as `M8x1.25`, `1/2-20` as `1/2-20 UNF`.
 * @throws {@link DomainError} when it cannot be read or contradicts itself, with the grammar and the nearest known one.
 * @example
 * ```ts
 * import { threadFor } from '@spindlewright/torque';
 * threadFor('M8').pitchMm; // => 1.25
 * threadFor('9/16-20 UN LH').hand; // => 'left'
 * ```
 * @see ISO 965-1 and ASME B1.1 (`asme-b1-1`) for the spelling; series from `freecad-threads`.
 */
export function threadFor(designation: string): Thread {
  if (typeof designation !== 'string') throw unreadable(String(designation), '');
  // No thread is called by so long a name, and the patterns below take their time over one that nearly fits.
  if (designation.length > LONGEST) throw unreadable(designation.slice(0, LONGEST), '');
  const plain = designation
    .replace(/[×∗]/g, 'x')
    .replace(/["″]|\binch(?:es)?\b/gi, ' in ')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/\s+/g, ' ')
    .trim();
  const [, text = plain, side = ''] = /^(.*?)[ -]+(LH|RH)$/i.exec(plain) ?? [];
  const hand: Hand = side.toUpperCase() === 'LH' ? 'left' : 'right';
  const thread = readMetric(text, hand) ?? readInch(text, hand);
  if (thread === undefined) throw unreadable(designation, text);
  return thread;
}

function readMetric(text: string, hand: Hand): Thread | undefined {
  const match =
    new RegExp(`^M ?${NUMBER}(?: ?[x*] ?${NUMBER})?(?: ?- ?\\d[e-h](?:\\d[e-h])?)?$`, 'i').exec(text) ??
    new RegExp(`^${NUMBER} ?mm ?[x*] ?${NUMBER} ?mm$`, 'i').exec(text);
  if (match !== null) {
    const nominalDiameterMm = Number(match[1]);
    const pitchMm = match[2] === undefined ? coarsePitch(nominalDiameterMm, text) : Number(match[2]);
    return metricThread({ nominalDiameterMm, pitchMm, hand });
  }
  const inchPitch = new RegExp(`^${NUMBER} ?mm ?[x*] ?${NUMBER} ?tpi$`, 'i').exec(text);
  if (inchPitch === null) return undefined;
  const threadsPerInch = Number(inchPitch[2]);
  const nominalDiameterIn = convert(Number(inchPitch[1]), 'mm', 'in');
  const thread = unifiedThread({ nominalDiameterIn, threadsPerInch, hand });
  const suffix = hand === 'left' ? ' LH' : '';
  return { ...thread, designation: `${Number(inchPitch[1])} mm x ${threadsPerInch} tpi${suffix}` };
}

function coarsePitch(diameterMm: number, text: string): number {
  const coarse = rows().filter((row) => row.series === 'metric-coarse');
  const found = coarse.find((row) => row.nominalDiameterMm === diameterMm);
  if (found?.pitchMm !== undefined) return found.pitchMm;
  const distance = (row: SeriesRow): number => Math.abs((row.nominalDiameterMm ?? 0) - diameterMm);
  const nearest = coarse.reduce((best, row) => (distance(row) < distance(best) ? row : best));
  throw refuse(
    'threadFor',
    'designation',
    JSON.stringify(text),
    `a pitch, or a diameter of the coarse series; ${GRAMMAR}`,
    nearest.id,
  );
}

function readInch(text: string, hand: Hand): Thread | undefined {
  const bySeries = new RegExp(`^${SIZE} ?(?:in)? (UNC|UNF|UNEF)$`, 'i').exec(text);
  if (bySeries !== null) {
    const [, size = '', label = ''] = bySeries;
    const diameterIn = sizeIn(size);
    const ofSeries = rows().filter((entry) => entry.series === label.toUpperCase());
    const row = ofSeries.find((entry) => near(entry.nominalDiameterIn, diameterIn));
    if (row?.threadsPerInch === undefined) throw unreadable(text, text);
    return labelled(diameterIn, row.threadsPerInch, hand);
  }
  const match = new RegExp(
    `^${SIZE} ?(in)? ?([-x*]) ?${NUMBER} ?(tpi)? ?(UNC|UNF|UNEF|UNS|UN)?(?: ?- ?[123][AB])?$`,
    'i',
  ).exec(text);
  if (match === null) return undefined;
  const [, size = '', inch, separator, count, tpi, letters] = match;
  const threadsPerInch = Number(count);
  let diameterIn = sizeIn(size);
  const told = inch !== undefined || tpi !== undefined || letters !== undefined || /[#/]/.test(size);
  // "14 x 1.25" may be millimetres; "10-32" may be a numbered size.
  if (!told && separator !== '-') return undefined;
  if (inch === undefined && /^\d+$/.test(size)) {
    const asNumber = sizeIn(`#${size}`);
    const listed = [diameterIn, asNumber].filter((entry) => seriesOf(entry, threadsPerInch) !== undefined);
    const [only] = listed;
    if (only === undefined || listed.length > 1) return undefined;
    diameterIn = only;
  }
  const found = seriesOf(diameterIn, threadsPerInch);
  const asked = letters?.toUpperCase();
  const thread = labelled(diameterIn, threadsPerInch, hand);
  if (asked === undefined || asked === 'UN' || asked === 'UNS' || asked === found) return thread;
  const allowed = `the series that this diameter and pitch belong to; ${GRAMMAR}`;
  throw refuse('threadFor', 'designation', JSON.stringify(text), allowed, thread.designation);
}

/** Adds the letters of the series to the designation, or a spelling that claims none. */
function labelled(nominalDiameterIn: number, threadsPerInch: number, hand: Hand): Thread {
  const thread = unifiedThread({ nominalDiameterIn, threadsPerInch, hand });
  const suffix = hand === 'left' ? ' LH' : '';
  const size = inchSize(nominalDiameterIn);
  // The constant-pitch series of ASME B1.1 runs through the sixteenths of an inch from 1/4 up.
  const constantPitch =
    [4, 6, 8, 12, 16, 20, 28, 32].includes(threadsPerInch) &&
    nominalDiameterIn >= 0.25 &&
    Number.isInteger(nominalDiameterIn * 16);
  const letters = seriesOf(nominalDiameterIn, threadsPerInch) ?? (constantPitch ? 'UN' : undefined);
  const designation =
    letters === undefined ? `${size} in x ${threadsPerInch}${suffix}` : `${size}-${threadsPerInch} ${letters}${suffix}`;
  return { ...thread, designation };
}

const near = (a = Infinity, b: number): boolean => Math.abs(a - b) < 1e-9;

const seriesOf = (diameterIn: number, threadsPerInch: number): string | undefined =>
  rows().find((row) => near(row.nominalDiameterIn, diameterIn) && row.threadsPerInch === threadsPerInch)?.series;

function sizeIn(size: string): number {
  if (size.startsWith('#')) return Number((0.06 + 0.013 * Number(size.slice(1))).toFixed(3));
  return size
    .split(/[ -]/)
    .map((part) => part.split('/').map(Number))
    .reduce((sum, [numerator = 0, denominator = 1]) => sum + numerator / denominator, 0);
}

function unreadable(designation: string, text: string): Error {
  const nearest = nearestName({ name: text.replace(/ ?x ?/i, 'x'), known: rows().map((row) => row.id) });
  return refuse('threadFor', 'designation', JSON.stringify(designation), GRAMMAR, nearest);
}
