import { Defect } from '#lib/kernel';

/**
 * A symmetric matrix whose entries lie within `band` of the diagonal; rows of the lower half, diagonal last.
 * Entry (i, j), j <= i, stands at i (band + 1) + band - (i - j).
 */
export interface Banded {
  readonly size: number;
  readonly band: number;
  readonly rows: Float64Array;
}

export const banded = (size: number, band: number): Banded => ({
  size,
  band,
  rows: new Float64Array(size * (band + 1)),
});

export const copyBanded = (matrix: Banded): Banded => ({ ...matrix, rows: matrix.rows.slice() });

/** Adds to entry (i, j) and so, being symmetric, to (j, i). */
export function addTo({ band, rows }: Banded, i: number, j: number, value: number): void {
  const [low, high] = i < j ? [i, j] : [j, i];
  rows[high * (band + 1) + band - (high - low)] += value;
}

/** Entry (i, j) of the symmetric matrix, within the band. */
export const entryOf = ({ band, rows }: Banded, i: number, j: number): number =>
  i < j ? rows[j * (band + 1) + band - (j - i)] : rows[i * (band + 1) + band - (i - j)];

/**
 * Cholesky's factor L of a positive definite banded matrix, A = L L^T.
 * Source: [GOLUB-VAN-LOAN] banded Cholesky
 */
export function factorised(matrix: Banded): Banded {
  const { size, band } = matrix;
  const rows = matrix.rows.slice();
  for (let i = 0; i < size; i += 1) {
    const first = i > band ? i - band : 0;
    const rowI = i * (band + 1) + band - i;
    for (let j = first; j < i; j += 1) {
      const rowJ = j * (band + 1) + band - j;
      rows[rowI + j] =
        (rows[rowI + j] -
          sumOfProducts(
            { values: rows, from: rowI + first },
            { values: rows, from: rowJ + first },
            j - first,
          )) /
        rows[rowJ + j];
    }
    rows[rowI + i] = root(
      rows[rowI + i] -
        sumOfProducts({ values: rows, from: rowI + first }, { values: rows, from: rowI + first }, i - first),
    );
  }
  return { size, band, rows };
}

/** Numbers from a place on; the compiler makes no object of it where the sum is in line. */
interface Run {
  readonly values: Float64Array;
  readonly from: number;
}

/** Four sums side by side, so that no addition waits for the one before it: this is where the time of a map goes. */
function sumOfProducts(
  { values: a, from: fromA }: Run,
  { values: b, from: fromB }: Run,
  count: number,
): number {
  let one = 0;
  let two = 0;
  let three = 0;
  let four = 0;
  let k = 0;
  for (; k + 3 < count; k += 4) {
    one += a[fromA + k] * b[fromB + k];
    two += a[fromA + k + 1] * b[fromB + k + 1];
    three += a[fromA + k + 2] * b[fromB + k + 2];
    four += a[fromA + k + 3] * b[fromB + k + 3];
  }
  for (; k < count; k += 1) one += a[fromA + k] * b[fromB + k];
  return one + two + (three + four);
}

function root(pivot: number): number {
  if (!(pivot > 0)) throw new Defect(`A precision matrix lost its definiteness: pivot ${pivot}`);
  return Math.sqrt(pivot);
}

/** Solves L y = b in place. */
export function solveLower({ size, band, rows }: Banded, values: Float64Array): void {
  for (let i = 0; i < size; i += 1) {
    const row = i * (band + 1) + band - i;
    const first = i > band ? i - band : 0;
    values[i] =
      (values[i] - sumOfProducts({ values: rows, from: row + first }, { values, from: first }, i - first)) /
      rows[row + i];
  }
}

/** Solves L^T x = y in place. */
export function solveUpper({ size, band, rows }: Banded, values: Float64Array): void {
  for (let i = size - 1; i >= 0; i -= 1) {
    const row = i * (band + 1) + band - i;
    const value = values[i] / rows[row + i];
    values[i] = value;
    for (let k = Math.max(0, i - band); k < i; k += 1) values[k] -= rows[row + k] * value;
  }
}

/** Solves A x = b in place, given the factor of A. */
export function solveWith(factor: Banded, values: Float64Array): void {
  solveLower(factor, values);
  solveUpper(factor, values);
}

/** log |A| from its factor. */
export function logDeterminant({ size, band, rows }: Banded): number {
  let sum = 0;
  for (let i = 0; i < size; i += 1) sum += Math.log(rows[i * (band + 1) + band]);
  return 2 * sum;
}

/**
 * The inverse within the band, from the factor, by the recursion that needs no entry outside it.
 * Both halves of a column's neighbourhood are kept in a square window that moves up with the column.
 * Source: [TAKAHASHI-1973], as used for Gaussian Markov random fields in [RUE-MARTINO-2007]
 */
export function inverseWithinBand(factor: Banded): Banded {
  const { size, band, rows } = factor;
  const width = band + 1;
  const inverse = new Float64Array(size * width);
  // full[(i mod width) * width + (k mod width)] mirrors the inverse for i and k among the last `width` columns.
  const full = new Float64Array(width * width);
  const column = new Float64Array(width);
  for (let j = size - 1; j >= 0; j -= 1) {
    const last = j + band < size ? j + band : size - 1;
    const pivot = rows[j * width + band];
    column.fill(0);
    for (let k = j + 1; k <= last; k += 1) column[k % width] = rows[k * width + band - (k - j)] / pivot;
    column[j % width] = 0;
    const own = (j % width) * width;
    full.fill(0, own, own + width);
    let diagonal = 1 / (pivot * pivot);
    for (let i = j + 1; i <= last; i += 1) {
      const row = (i % width) * width;
      full[row + (j % width)] = 0;
      const sum = -sumOfProducts({ values: column, from: 0 }, { values: full, from: row }, width);
      inverse[i * width + band - (i - j)] = sum;
      diagonal -= column[i % width] * sum;
    }
    for (let i = j + 1; i <= last; i += 1) {
      const value = inverse[i * width + band - (i - j)];
      full[(i % width) * width + (j % width)] = value;
      full[own + (i % width)] = value;
    }
    full[own + (j % width)] = diagonal;
    inverse[j * width + band] = diagonal;
  }
  return { size, band, rows: inverse };
}
