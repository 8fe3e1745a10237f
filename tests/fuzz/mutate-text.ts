// Broken texts from good ones: most of a text stays as it was, so that it passes the first checks and fails later.

/** Pieces that break readers: signs of formats, numbers at their ends, names that every object has. */
const PIECES = [
  ...['{', '}', '[', ']', '"', "'", ',', ';', ':', '\t', '\n', '\r\n', '\\', '""', '{}', '[]', 'null', 'true', '[['],
  ...[
    '0',
    '-0',
    '-1',
    '1e308',
    '1e309',
    '-1e-320',
    '1e',
    '.',
    '5.',
    '.5',
    '1,5',
    'NaN',
    'Infinity',
    '9007199254740993',
  ],
  ...[
    '"__proto__":',
    '"constructor":',
    '"toString"',
    '__proto__',
    'hasOwnProperty',
    '"lower":',
    '"standardUncertainty":',
  ],
  ...[
    ' mm',
    ' in',
    '9/16',
    '1/0',
    'x',
    'M',
    'LH',
    '°',
    '±',
    '..',
    '@',
    '"',
    '½',
    'N/A',
    '=1+1',
    '@SUM(A1)',
    '&amp;',
    '&#0;',
  ],
  ...['\u0000', '\ufeff', '\ud800', '\udfff', '\u202e', '\u00a0', 'e\u0301', '😀', 'ß', 'İ'],
];

const REPEATS = [2, 3, 10, 100, 1000];

/** One text made from others by one to six cuts, insertions, repeats and splices. */
export function mutateText(corpus: readonly string[], random: () => number): string {
  const below = (count: number): number => Math.floor(random() * count);
  const pick = <T>(list: readonly T[], otherwise: T): T => list[below(list.length)] ?? otherwise;
  let text = pick(corpus, '');
  for (let left = 1 + below(6); left > 0; left--) {
    const at = below(text.length + 1);
    const to = at + below(Math.min(text.length - at, 40) + 1);
    const before = text.slice(0, at);
    switch (below(7)) {
      case 0:
        text = before + text.slice(to);
        break;
      case 1:
        text = before + pick(PIECES, '') + text.slice(at);
        break;
      case 2:
        text = before + pick(PIECES, '') + text.slice(to);
        break;
      case 3:
        text = before + String.fromCharCode(below(random() < 0.9 ? 128 : 65536)) + text.slice(at + 1);
        break;
      case 4:
        text = before + text.slice(at, to).repeat(pick(REPEATS, 2)) + text.slice(to);
        break;
      case 5:
        text = before + pick(PIECES, '').repeat(pick(REPEATS, 2)) + text.slice(at);
        break;
      default: {
        const other = pick(corpus, '');
        text = before + other.slice(below(other.length + 1));
      }
    }
  }
  // Long enough for every limit of a reader, short enough that a run gets through many.
  return text.slice(0, 60_000);
}
