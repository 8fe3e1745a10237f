const STANDARD_SEED = 20261127;

/** The seed of this run, from the variable SEED; the same for every file of a run. */
export function seedOfRun(): number {
  const text = process.env.SEED;
  if (text === undefined || text === '') return STANDARD_SEED;
  const seed = Number(text);
  if (!Number.isInteger(seed) || seed < 0 || seed >= 2 ** 31)
    throw new Error(`SEED has to be a whole number from 0 to 2^31 - 1, not "${text}"`);
  return seed;
}

/** Uniform numbers in [0, 1) from a 32-bit seed: mulberry32, of public domain. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
