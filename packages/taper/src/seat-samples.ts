import { DomainError, type Limits, nearestName } from '@spindlewright/quantity';
import { cutNormalQuantile, normalProbability } from './random.ts';
import type { KnownSeat } from './seat-places.ts';

/** How two inputs go together. */
export interface InputCorrelation {
  /** Path of the first input, such as `spindle.acrossFlatsAtEndMm`. */
  a: string;
  /** Path of the second input. */
  b: string;
  /** Correlation from -1 to 1 of the normal distributions behind both. */
  r: number;
}

/** An input that varies: its path, its place in the joint that is sampled, and how it is spread. */
interface VaryingInput {
  path: string;
  limits: Limits;
  /** Where each sample is written. */
  slot: Limits;
  normal: boolean;
}

// Standard deviation of the standard normal distribution cut at -+3: sqrt(1 - 6 phi(3)/(2 Phi(3) - 1)).
const CUT_DEVIATION = 0.986579;

/** Standard deviation of an input as it is sampled. @internal */
export const deviationOf = ({ limits, normal }: VaryingInput): number =>
  normal ? (CUT_DEVIATION * (limits.upper - limits.lower)) / 6 : (limits.upper - limits.lower) / Math.sqrt(12);

/**
 * Copies what is known with a slot for each number. Limits that stand in two places because one is the default of the
 * other share their slot, so that they stay equal in every sample.
 * @internal
 */
export function varyingInputs(known: KnownSeat, input: object): { sample: KnownSeat; varying: VaryingInput[] } {
  const slots = new Map<object, Limits>();
  const varying: VaryingInput[] = [];
  const copy = (node: object, raw: unknown, path: string): object => {
    if ('nominal' in node) {
      const limits = node as Limits;
      const taken = slots.get(node);
      if (taken !== undefined) return taken;
      const slot = { ...limits };
      slots.set(node, slot);
      const normal = typeof raw === 'object' && raw !== null && 'standardUncertainty' in raw;
      if (limits.upper > limits.lower) varying.push({ path, limits, slot, normal });
      return slot;
    }
    return Object.fromEntries(
      Object.entries(node).map(([key, child]) => {
        if (typeof child !== 'object') return [key, child];
        const below = typeof raw === 'object' && raw !== null ? (raw as Record<string, unknown>)[key] : undefined;
        return [key, copy(child, below, path === '' ? key : `${path}.${key}`)];
      }),
    );
  };
  return { sample: copy(known, input, '') as KnownSeat, varying };
}

/** Matrix of the correlations of the varying inputs, row by row. @internal */
export function correlationMatrix(
  where: string,
  varying: readonly VaryingInput[],
  correlation: readonly InputCorrelation[],
): number[][] {
  const paths = varying.map(({ path }) => path);
  const matrix = paths.map((_, row) => paths.map((__, column): number => (row === column ? 1 : 0)));
  for (const [index, { a, b, r }] of correlation.entries()) {
    const places = [a, b].map((name, which) => {
      const place = paths.indexOf(name);
      if (place >= 0) return place;
      const nearest = nearestName({ name, known: paths });
      const path = `correlation[${index}].${which === 0 ? 'a' : 'b'}`;
      const allowed = `the path of an input that varies: ${paths.join(', ') || 'there is none'}`;
      throw new DomainError(where, [{ path, received: name, allowed, ...(nearest === undefined ? {} : { nearest }) }]);
    });
    const [first = 0, second = 0] = places;
    if (first === second) {
      throw new DomainError(where, [{ path: `correlation[${index}].b`, received: b, allowed: 'another input than a' }]);
    }
    for (const [row, column] of [
      [first, second],
      [second, first],
    ] as const) {
      const cells = matrix[row];
      if (cells !== undefined) cells[column] = r;
    }
  }
  return matrix;
}

/** Lower triangle whose product with its transpose is the matrix; refuses correlations that cannot hold together. @internal */
export function triangleOf(where: string, matrix: readonly (readonly number[])[]): number[][] {
  const triangle: number[][] = [];
  for (const [row, cells] of matrix.entries()) {
    const line: number[] = [];
    for (let column = 0; column <= row; column++) {
      const other = column === row ? line : (triangle[column] ?? []);
      let rest = cells[column] ?? 0;
      for (let k = 0; k < column; k++) rest -= (line[k] ?? 0) * (other[k] ?? 0);
      if (column < row) {
        const pivot = other[column] ?? 0;
        // A pivot of 0 is an input that follows from those before it; the rest has to vanish with it.
        if (pivot === 0 && Math.abs(rest) > 1e-9) throw contradiction(where);
        line.push(pivot === 0 ? 0 : rest / pivot);
      } else {
        if (rest < -1e-9) throw contradiction(where);
        line.push(rest < 1e-12 ? 0 : Math.sqrt(rest));
      }
    }
    triangle.push(line);
  }
  return triangle;
}

const contradiction = (where: string): DomainError =>
  new DomainError(where, [
    { path: 'correlation', received: 'correlations that contradict each other', allowed: 'such as can hold together' },
  ]);

/** Draws every varying input into its slot. @internal */
export function sampler(
  varying: readonly VaryingInput[],
  triangle: readonly (readonly number[])[],
  uniform: () => number,
): () => void {
  // Inputs that go with no other need no normal distribution behind them.
  const alone = triangle.map(
    (line, row) =>
      line.slice(0, row).every((cell) => cell === 0) && triangle.slice(row + 1).every((below) => below[row] === 0),
  );
  const normals = new Float64Array(alone.length);
  const probabilityOf = (row: number): number => {
    if (alone[row]) return uniform();
    const z = (triangle[row] ?? []).reduce((sum, cell, k) => sum + cell * (normals[k] ?? 0), 0);
    return Math.min(1 - 2 ** -40, Math.max(2 ** -40, normalProbability(z)));
  };
  return () => {
    for (let row = 0; row < alone.length; row++) if (!alone[row]) normals[row] = standardNormal(uniform);
    let row = 0;
    for (const { limits, slot, normal } of varying) {
      const probability = probabilityOf(row++);
      const { lower, nominal, upper } = limits;
      const drawn = normal
        ? nominal + ((upper - lower) / 6) * cutNormalQuantile(probability)
        : lower + probability * (upper - lower);
      const value = Math.min(upper, Math.max(lower, drawn));
      slot.lower = value;
      slot.nominal = value;
      slot.upper = value;
    }
  };
}

// Box and Muller, A note on the generation of random normal deviates, 1958.
const standardNormal = (uniform: () => number): number =>
  Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
