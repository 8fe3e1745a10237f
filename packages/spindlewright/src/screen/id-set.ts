/**
 * Remembers ids by 64 bits of hash, two words a place and half of the places free: 16 bytes an id, whatever its length.
 * Two ids of a million share a hash once in forty million catalogues. @internal
 */
export interface IdSet {
  /** Takes an id; false when it was there. */
  add(id: string): boolean;
}

const FIRST_PLACES = 1 << 12;

/** An empty set. @internal */
export function idSet(): IdSet {
  let table = new Int32Array(2 * FIRST_PLACES);
  let places = FIRST_PLACES;
  let held = 0;
  const insert = (into: Int32Array, size: number, high: number, low: number): boolean => {
    let at = low & (size - 1);
    for (;;) {
      const there = into[2 * at];
      if (there === 0 && into[2 * at + 1] === 0) break;
      if (there === high && into[2 * at + 1] === low) return false;
      at = (at + 1) & (size - 1);
    }
    into[2 * at] = high;
    into[2 * at + 1] = low;
    return true;
  };
  const grow = (): void => {
    const next = new Int32Array(4 * places);
    for (let at = 0; at < places; at++) {
      const [high = 0, low = 0] = [table[2 * at], table[2 * at + 1]];
      if (high !== 0 || low !== 0) insert(next, 2 * places, high, low);
    }
    table = next;
    places *= 2;
  };
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
      if (!insert(table, places, high, low)) return false;
      held++;
      if (2 * held > places) grow();
      return true;
    },
  };
}
