/**
 * Uniform numbers above 0 and below 1 from a whole seed: Marsaglia's xorshift with a Weyl sequence (xorwow form, 128 bits
 * of state), the same on every machine. @internal
 */
export function uniformSource(seed: number): () => number {
  let [x, y, z, w] = [0x9e3779b9, 0x243f6a88, 0xb7e15162, seed >>> 0];
  let weyl = 0;
  const next = (): number => {
    let t = x ^ (x >>> 2);
    [x, y, z] = [y, z, w];
    t ^= t << 1;
    w = (w ^ (w << 4) ^ t) >>> 0;
    weyl = (weyl + 362437) >>> 0;
    return (w + weyl) >>> 0;
  };
  // The state of neighbouring seeds is alike at first.
  for (let i = 0; i < 32; i++) next();
  return () => (next() + 0.5) / 4294967296;
}

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
