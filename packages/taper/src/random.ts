// Leaf packages do not import each other and `quantity` holds no samplers, so that this is the same text as in `torque`;
// a test holds the two together.

/**
 * Uniform numbers above 0 and below 1 from a whole seed from 0 to 2^32 - 1, the same on every machine: the 32 bit numbers
 * of xorshift128, moved by half a step so that neither end comes up. @internal
 */
export function uniformSource(seed: number): () => number {
  // Splitmix in 32 bits: multiples of the golden step, each mixed. Mixing is one to one, so that the four words cannot all
  // be 0, where xorshift would stand still.
  const word = (k: number): number => mix32(seed + k * GOLDEN_STEP);
  const next = xorshift128([word(1), word(2), word(3), word(4)]);
  return () => (next() + 0.5) / 4294967296;
}

/**
 * Marsaglia's xorshift generator of 128 bits with the shifts 11, 8 and 19: whole numbers from 0 to 2^32 - 1 with the period
 * 2^128 - 1. G. Marsaglia, Xorshift RNGs, Journal of Statistical Software 8 (14), 2003, function xor128. @internal
 */
export function xorshift128(state: readonly [number, number, number, number]): () => number {
  let [x, y, z, w] = state;
  return () => {
    const t = x ^ (x << 11);
    [x, y, z] = [y, z, w];
    w = (w ^ (w >>> 19) ^ t ^ (t >>> 8)) >>> 0;
    return w;
  };
}

/** Finaliser of MurmurHash3 (A. Appleby, in the public domain): mixes the bits of a 32 bit number, one to one. @internal */
export function mix32(value: number): number {
  let h = value >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** 2^32 over the golden ratio, made odd. */
const GOLDEN_STEP = 0x9e3779b9;

/**
 * Quantile of the standard normal distribution cut at -+3, for a probability above 0 and below 1: Newton's method on the
 * series of the error function. @internal
 */
export function cutNormalQuantile(probability: number): number {
  const target = MASS_WITHIN_3 * (probability - 0.5);
  let z = Math.min(3, Math.max(-3, target * ROOT_TWO_PI));
  for (let i = 0; i < 40; i++) {
    const step = (halfMass(z) - target) * ROOT_TWO_PI * Math.exp((z * z) / 2);
    const next = Math.min(3, Math.max(-3, z - step));
    if (Math.abs(next - z) < 1e-12) return next;
    z = next;
  }
  return z;
}

/** Mass of the standard normal distribution between 0 and z, by its series; enough terms for |z| up to 3. */
function halfMass(z: number): number {
  let term = z / ROOT_TWO_PI;
  let sum = term;
  for (let n = 1; n < 60; n++) {
    term *= (-z * z) / (2 * n);
    sum += term / (2 * n + 1);
  }
  return sum;
}

const ROOT_TWO_PI = 2.5066282746310002;
/** erf(3/sqrt 2). */
const MASS_WITHIN_3 = 0.9973002039367398;

/** Probability of the standard normal distribution to lie below z: positive series of G. Marsaglia, Evaluating the normal
 * distribution, Journal of Statistical Software 11 (4), 2004. @internal */
export function normalProbability(z: number): number {
  const bounded = Math.min(8, Math.max(-8, z));
  let term = bounded;
  let sum = bounded;
  for (let n = 3; Math.abs(term) > 1e-17; n += 2) {
    term *= (bounded * bounded) / n;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-bounded * bounded) / 2)) / ROOT_TWO_PI;
}
