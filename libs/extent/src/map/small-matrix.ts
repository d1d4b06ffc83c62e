import { addTo, banded, factorised, logDeterminant, solveLower, solveUpper, type Banded } from './banded.js';

/** Cholesky's factor of a small full matrix: a band as wide as the matrix. */
export interface SmallFactor {
  readonly size: number;
  readonly logDeterminant: number;
  readonly factor: Banded;
  readonly solveUpper: (values: Float64Array) => void;
}

export function smallFactor(rowByRow: Float64Array, size: number): SmallFactor {
  const matrix = banded(size, size - 1);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) addTo(matrix, i, j, rowByRow[i * size + j]);
  }
  const factor = factorised(matrix);
  return {
    size,
    factor,
    logDeterminant: logDeterminant(factor),
    solveUpper: (values) => solveUpper(factor, values),
  };
}

export function solvedSmall({ factor }: SmallFactor, right: Float64Array): Float64Array {
  const copy = right.slice();
  solveLower(factor, copy);
  solveUpper(factor, copy);
  return copy;
}
