/** Logarithm of a multivariate normal density with zero mean; `covariance` is symmetric and positive definite. @internal */
export function logDensity(residual: readonly number[], covariance: readonly (readonly number[])[]): number {
  // Cholesky L of the covariance, solved forward as it grows: the density needs |L| and L^-1 r only.
  const rows: number[][] = [];
  const solved: number[] = [];
  let logDeterminant = 0;
  let squares = 0;
  for (const [i, covarianceRow] of covariance.entries()) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? row : (rows[j] ?? []);
      const rest = (covarianceRow[j] ?? 0) - dot(row, other, j);
      row.push(j === i ? Math.sqrt(rest) : rest / (other[j] ?? 1));
    }
    rows.push(row);
    const pivot = row[i] ?? 1;
    const z = ((residual[i] ?? 0) - dot(row, solved, i)) / pivot;
    solved.push(z);
    squares += z * z;
    logDeterminant += 2 * Math.log(pivot);
  }
  return -0.5 * (squares + logDeterminant + residual.length * Math.log(2 * Math.PI));
}

function dot(a: readonly number[], b: readonly number[], length: number): number {
  let sum = 0;
  for (let k = 0; k < length; k++) sum += (a[k] ?? 0) * (b[k] ?? 0);
  return sum;
}
