/**
 * Remembers ids by 64 bits of hash, 8 bytes a place: 10 to 12 bytes an id, whatever its length. The places stand in several
 * tables that grow a quarter each and at different times, so that growing needs little room. Two ids of a
 * million share a hash once in forty million catalogues.
 */
interface IdSet {
  /** Takes an id; false when it was there. */
  add(id: string): boolean;
}

interface Table {
  /** Two words a place; both are zero where it is free. */
  words: Int32Array;
  places: number;
  held: number;
}

/** As many as the first bits of a hash tell apart; few, since memory is reached faster in large pieces. */
const TABLES = 16;
const FIRST_PLACES = 64;
const GROWTH = 1.25;
/** Fuller, and a search would go past many places; emptier, and they would cost more. Judgement. */
const FULLEST = 0.85;

const tableOf = (places: number): Table => ({ words: new Int32Array(2 * places), places, held: 0 });

/** Puts a hash into a table that has room; false when it was there. */
function insert(table: Table, high: number, low: number): boolean {
  const { words, places } = table;
  let at = Math.floor(((low >>> 0) / 2 ** 32) * places);
  for (;;) {
    const there = words[2 * at];
    if (there === 0 && words[2 * at + 1] === 0) break;
    if (there === high && words[2 * at + 1] === low) return false;
    at = at + 1 === places ? 0 : at + 1;
  }
  words[2 * at] = high;
  words[2 * at + 1] = low;
  table.held++;
  return true;
}

function grown(table: Table): Table {
  const next = tableOf(Math.ceil(table.places * GROWTH));
  for (let at = 0; at < table.places; at++) {
    const [high = 0, low = 0] = [table.words[2 * at], table.words[2 * at + 1]];
    if (high !== 0 || low !== 0) insert(next, high, low);
  }
  return next;
}

/** An empty set. @internal */
export function idSet(): IdSet {
  const tables = Array.from({ length: TABLES }, (_, k) => tableOf(Math.ceil(FIRST_PLACES * GROWTH ** (k / TABLES))));
  return {
    add(id) {
      // Two multiplicative hashes with different factors (odd constants, judgement), stirred at the end.
      let high = 0x9e3779b9 | 0;
      let low = 0x85ebca6b | 0;
      for (let index = 0; index < id.length; index++) {
        const code = id.charCodeAt(index);
        high = Math.imul(high ^ code, 0x01000193);
        low = Math.imul(low ^ code, 0x27d4eb2d) + index;
      }
      high = Math.imul(high ^ (high >>> 15) ^ id.length, 0x2c1b3c6d);
      low = Math.imul(low ^ (low >>> 13), 0x297a2d39);
      high ^= high >>> 12;
      low ^= low >>> 15;
      // Zero in both words means that a place is free.
      if (high === 0 && low === 0) low = 1;
      const which = high >>> 28;
      const table = tables[which] as Table;
      if (!insert(table, high, low)) return false;
      if (table.held > FULLEST * table.places) tables[which] = grown(table);
      return true;
    },
  };
}
