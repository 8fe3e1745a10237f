import type { PartKind, PartSide, WordField } from './part.ts';

// Plain trade words of six languages, from memory; a mapping file says everything else.
const KINDS: Readonly<Record<PartKind, readonly string[]>> = {
  arm: [
    ...['arm', 'crank arm', 'crankarm', 'crank arms', 'cranks', 'crank', 'kurbelarm', 'kurbel', 'tretkurbel'],
    ...['manivelle', 'manivelles', 'pedivella', 'biela', 'bielas', 'crankarmen', 'crankstel'],
  ],
  spindle: [
    ...['spindle', 'axle', 'bottom bracket', 'bottom brackets', 'cartridge', 'bottom bracket cartridge'],
    ...['innenlager', 'tretlager', 'tretlagerwelle', 'bo\u00eetier de p\u00e9dalier', 'boitier de pedalier'],
    ...['axe de p\u00e9dalier', 'movimento centrale', 'pedalier', 'eje pedalier', 'trapas'],
  ],
  bolt: [
    ...['bolt', 'crank bolt', 'crank bolts', 'kurbelschraube', 'kurbelschrauben', 'vis de manivelle'],
    ...['vite pedivella', 'tornillo de biela', 'crankbout', 'nut', 'crank nut', 'kurbelmutter'],
  ],
  chainring: [
    'chainring',
    'chainrings',
    'kettenblatt',
    'kettenbl\u00e4tter',
    'plateau',
    'corona',
    'plato',
    'kettingblad',
  ],
  pedals: ['pedal', 'pedals', 'pedale', 'p\u00e9dale', 'p\u00e9dales', 'pedali', 'pedales', 'pedalen'],
  puller: [
    'puller',
    'crank puller',
    'kurbelabzieher',
    'abzieher',
    'arrache-manivelle',
    'estrattore',
    'extractor',
    'cranktrekker',
  ],
};

const SIDES: Readonly<Record<PartSide, readonly string[]>> = {
  drive: ['drive', 'drive side', 'right', 'r', 'rh', 'rechts', 'rechte', 'droite', 'droit', 'destra', 'derecha'],
  'non-drive': [
    ...['non-drive', 'non-drive side', 'left', 'l', 'lh', 'links', 'linke', 'gauche', 'sinistra', 'izquierda'],
  ],
  pair: ['pair', 'set', 'both', 'paar', 'paire', 'coppia', 'par', 'l+r', 'r+l'],
};

const THREADS: Readonly<Record<string, string>> = {
  m8x1: 'bolt-m8x1',
  m12x1: 'bolt-m12x1',
  m15x1: 'bolt-m15x1',
  m6x1: 'pinch-bolt-m6x1',
  'm8x0.75': 'chainring-bolt-m8x0-75',
  '9/16': 'pedal-9-16',
  '9/16x20': 'pedal-9-16',
  '1/2': 'pedal-1-2',
  '1/2x20': 'pedal-1-2',
  'm14x1.25': 'pedal-14x1-25',
  '14x1.25': 'pedal-14x1-25',
  m22x1: 'puller-m22x1',
  '22x1': 'puller-m22x1',
  m23x1: 'puller-m23x1',
  '23x1': 'puller-m23x1',
  'm23.35x1': 'puller-odd-french',
};

const SHELLS: Readonly<Record<string, string>> = {
  bsc: 'shell-bsc',
  bsa: 'shell-bsc',
  '1.37x24': 'shell-bsc',
  '1.370x24': 'shell-bsc',
  italian: 'shell-italian',
  '36x24': 'shell-italian',
  french: 'shell-french',
  swiss: 'shell-swiss',
  t47: 'shell-t47',
  m47x1: 'shell-t47',
};

const invert = (table: Readonly<Record<string, readonly string[]>>): ReadonlyMap<string, string> => {
  const all = new Map<string, string>();
  for (const id of Object.keys(table)) for (const word of table[id] ?? []) all.set(word, id);
  return all;
};

/** Lower case, single spaces. @internal */
export const plainWord = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** A designation without what print adds to it: spaces, units, trailing zeros of a pitch. */
const compactThread = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\u00d7/g, 'x')
    .replace(/,/g, '.')
    .replace(/\s+|["\u2033\u201d]|tpi|inch|\bin\b|mm/g, '')
    .replace(/(\.\d*?)0+(?=$|x)/g, '$1')
    .replace(/\.(?=$|x)/g, '')
    .replace(/in(?=x|$)/g, '');

/** A word of negation makes a mention say the opposite. */
const NEGATED = /\b(?:not|no|non|nicht|kein|pas|sans|without|ohne)\b/i;

/**
 * What a word of a catalogue means without any mapping: our ids, or undefined when it is not known. A square taper whose
 * standard is not said is left open between the two common ones. @internal
 */
export function meaningOf(field: WordField, text: string): readonly string[] | undefined {
  const word = plainWord(text);
  switch (field) {
    case 'kind':
      return one(invert(KINDS).get(word));
    case 'side':
      return one(invert(SIDES).get(word));
    case 'thread':
      return one(own(THREADS, compactThread(word)));
    case 'shell':
      return one(own(SHELLS, compactThread(word)) ?? own(SHELLS, word));
    default:
      return squares(word);
  }
}

const one = (id: string | undefined): readonly string[] | undefined => (id === undefined ? undefined : [id]);
const own = (table: Readonly<Record<string, string>>, key: string): string | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

function squares(word: string): readonly string[] | undefined {
  if (NEGATED.test(word)) return undefined;
  const ids = [
    ...(/\bjis\b/.test(word) ? ['square-taper-jis'] : []),
    ...(/\biso\b/.test(word) ? ['square-taper-iso'] : []),
  ];
  if (ids.length > 0) return ids;
  return /^(?:square|square taper|square-taper|vierkant|4-kant|4kant|carr\u00e9|carre|quadro|cuadradillo)$/.test(word)
    ? ['square-taper-iso', 'square-taper-jis']
    : undefined;
}

const IN_TITLE = /\b(?:jis|iso)\b|\b9\/16\b|\bm\d+(?:[.,]\d+)?\s?[x\u00d7]\s?\d(?:[.,]\d+)?\b/gi;

/** Words of a title that name a standard or a thread, joined by bars; an empty text when there is none. @internal */
export function standardsInTitle(title: string): string {
  IN_TITLE.lastIndex = 0;
  let found = '';
  for (let hit = IN_TITLE.exec(title); hit !== null; hit = IN_TITLE.exec(title)) {
    found += found === '' ? hit[0].toLowerCase() : `|${hit[0].toLowerCase()}`;
  }
  return found === '' || NEGATED.test(title) ? '' : found;
}
