// A catalogue of invented parts, the same for the same seed, with the faults of real feeds at stated rates. Every part,
// id and word in it is made up; nothing describes a part that exists.

/** How often each fault is put into a row, as a share of all rows. */
export interface FaultRates {
  /** An id that an earlier row had. */
  duplicateId: number;
  /** An id in exponent form. */
  exponentId: number;
  /** An id that lost its zeros. */
  lostZeros: number;
  /** No id. */
  noId: number;
  /** A fraction that became a date. */
  dateForFraction: number;
  /** `N/A` for the standard. */
  notAvailable: number;
  /** Several standards in one cell. */
  severalValues: number;
  /** The standard in the title only. */
  titleOnly: number;
  /** A title that contradicts the column. */
  contradiction: number;
  /** HTML entities in the title. */
  entities: number;
  /** A quoted line break in the title; tables only. */
  quotedBreak: number;
  /** A cell that begins like a formula. */
  formula: number;
  /** A word that no mapping knows. */
  strangeWord: number;
  /** Decimal comma and unit behind the number. */
  commaAndUnit: number;
  /** A row that cannot be read. */
  broken: number;
}

/** The rates that tests, demo and benchmark use. */
export const FAULTS: FaultRates = {
  duplicateId: 0.01,
  exponentId: 0.002,
  lostZeros: 0.005,
  noId: 0.002,
  dateForFraction: 0.01,
  notAvailable: 0.03,
  severalValues: 0.02,
  titleOnly: 0.05,
  contradiction: 0.005,
  entities: 0.05,
  quotedBreak: 0.01,
  formula: 0.005,
  strangeWord: 0.01,
  commaAndUnit: 0.3,
  broken: 0.001,
};

/** One row of the shop; columns and words are the shop's own. */
export type ShopRow = Record<string, string>;

/** A small generator of random numbers (mulberry32, public domain), so that a seed gives one catalogue everywhere. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const JOINTS = ['4-kant JIS', '4-kant ISO', 'Vielzahn 10', 'Hohlwelle 24', 'Hohlwelle 30', 'Keil 9,5'];
const GROUPS = ['Kurbelarm', 'Innenlager', 'Kurbelschraube', 'Kettenblatt', 'Pedale', 'Abzieher', 'Schlauch', 'Sattel'];
const THREADS: Readonly<Record<string, readonly string[]>> = {
  Kurbelschraube: ['M8x1', 'M12 x 1', 'M15x1'],
  Pedale: ['9/16"', '9/16 x 20', '1/2"'],
  Abzieher: ['M22x1', 'M23x1'],
};
const CIRCLES = ['110', '130', '104', '144', '94'];

/** The rows of the catalogue; `undefined` stands for a row that cannot be read. */
export function* shopRows(input: { rows: number; seed: number; faults?: FaultRates }): Generator<ShopRow | undefined> {
  const { rows, seed, faults = FAULTS } = input;
  const random = randomFrom(seed);
  const pick = (list: readonly string[]): string => list[Math.floor(random() * list.length)] ?? '';
  const now = (rate: number): boolean => random() < rate;
  let earlier = '';
  for (let index = 0; index < rows; index++) {
    if (now(faults.broken)) {
      yield undefined;
      continue;
    }
    const group = pick(GROUPS);
    const joint = group === 'Kurbelarm' || group === 'Innenlager' ? pick(JOINTS) : '';
    const standard = /JIS|ISO/.exec(joint)?.[0] ?? '';
    const onlyTitle = standard !== '' && now(faults.titleOnly);
    const other = standard === 'JIS' ? 'ISO' : 'JIS';
    const named = standard !== '' && now(faults.contradiction) ? other : onlyTitle ? standard : '';
    let id = String(10_000_000 + index);
    if (index % 3 === 0) id = id.replace('1', '0');
    if (now(faults.lostZeros)) id = id.replace(/^0+/, '');
    if (now(faults.exponentId)) id = '4.01E+12';
    if (now(faults.noId)) id = '';
    if (now(faults.duplicateId) && earlier !== '') id = earlier;
    const title = [
      now(faults.formula) ? '=1+1' : '',
      `${group} Erfunden ${index % 977}`,
      named,
      now(faults.entities) ? 'schwarz &amp; silber, 9&quot;' : '',
      now(faults.quotedBreak) ? 'zwei\nZeilen' : '',
    ]
      .filter((part) => part !== '')
      .join(' ');
    const lengthMm = 160 + 2.5 * Math.floor(random() * 8);
    const text = now(faults.commaAndUnit) ? `${String(lengthMm).replace('.', ',')} mm` : String(lengthMm);
    const thread = pick(THREADS[group] ?? ['']);
    const row: ShopRow = {
      Artikelnummer: id,
      Bezeichnung: title,
      Warengruppe: now(faults.strangeWord) ? 'Sonderposten' : group,
      Aufnahme: onlyTitle
        ? ''
        : joint !== '' && now(faults.notAvailable)
          ? 'N/A'
          : joint !== '' && now(faults.severalValues)
            ? '4-kant JIS / 4-kant ISO'
            : joint,
      Seite: group === 'Kurbelarm' || group === 'Pedale' ? pick(['links', 'rechts', 'Paar', 'L/R']) : '',
      'L\u00e4nge (mm)': group === 'Kurbelarm' ? text : '',
      'Wellenl\u00e4nge (mm)': group === 'Innenlager' ? pick(['110', '113,5', '118 mm', '122,5 mm']) : '',
      Gewinde: thread !== '' && now(faults.dateForFraction) ? '16. Sep' : thread,
      'Lochkreis (mm)': group === 'Kettenblatt' ? pick(CIRCLES) : '',
      'L\u00f6cher': group === 'Kettenblatt' ? pick(['5', '4']) : '',
    };
    if (id !== '' && id !== '4.01E+12') earlier = id;
    yield row;
  }
}

/** One JSON object a line. */
export function* ndjsonLines(rows: Iterable<ShopRow | undefined>): Generator<string> {
  for (const row of rows) yield row === undefined ? '{"Artikelnummer": "7\n' : `${JSON.stringify(row)}\n`;
}

/** A table; a row that cannot be read has a field too many. */
export function* csvLines(rows: Iterable<ShopRow | undefined>, delimiter: ',' | ';' | '\t'): Generator<string> {
  let header: string[] | undefined;
  const cell = (text: string): string =>
    /["\r\n]/.test(text) || text.includes(delimiter) ? `"${text.replace(/"/g, '""')}"` : text;
  for (const row of rows) {
    if (header === undefined && row !== undefined) {
      header = Object.keys(row);
      yield `${header.map(cell).join(delimiter)}\r\n`;
    }
    if (header === undefined) continue;
    const fields = row === undefined ? [...header, 'zu viel'] : header.map((name) => row[name] ?? '');
    yield `${fields.map(cell).join(delimiter)}\r\n`;
  }
}

/** What the columns and words of the invented shop mean. */
export const shopMapping = {
  format: 'spindlewright-mapping-1',
  note: 'An invented shop.',
  columns: {
    partId: { column: 'Artikelnummer', digitCount: 8 },
    title: 'Bezeichnung',
    kind: {
      column: 'Warengruppe',
      values: {
        Kurbelarm: 'arm',
        Innenlager: 'spindle',
        Kurbelschraube: 'bolt',
        Kettenblatt: 'chainring',
        Pedale: 'pedals',
        Abzieher: 'puller',
        Schlauch: 'other',
        Sattel: 'other',
      },
    },
    interface: {
      column: 'Aufnahme',
      separator: ' / ',
      values: {
        '4-kant JIS': 'square-taper-jis',
        '4-kant ISO': 'square-taper-iso',
        'Vielzahn 10': 'spline-10',
        'Hohlwelle 24': 'through-spindle-24',
        'Hohlwelle 30': 'through-spindle-30',
        'Keil 9,5': 'cottered-metric',
      },
    },
    side: 'Seite',
    armLengthMm: { column: 'L\u00e4nge (mm)', unit: 'mm' },
    spindleLengthMm: { column: 'Wellenl\u00e4nge (mm)', unit: 'mm' },
    thread: 'Gewinde',
    boltCircleMm: { column: 'Lochkreis (mm)', unit: 'mm' },
    boltCount: 'L\u00f6cher',
  },
} as const;
