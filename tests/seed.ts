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
