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

/** Rows that the factorisation takes at a time. */
const BLOCK = 4;

/** Room for entries within the band wanted; a little wider, so that rows of one block begin together. */
export function banded(size: number, wanted: number): Banded {
  const band = wanted + BLOCK - 1;
  return { size, band, rows: new Float64Array(size * (band + 1)) };
}

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
 * Cholesky's factor L of a positive definite banded matrix, A = L L^T. Four rows are taken at a time, so that each row above
 * them is read once for all four: this is where the time of a map goes.
 * Source: [GOLUB-VAN-LOAN] banded Cholesky
 */
export function factorised(matrix: Banded): Banded {
  const { size, band } = matrix;
  const rows = matrix.rows.slice();
  const sums = new Float64Array(BLOCK);
  for (let block = 0; block < size; block += BLOCK) {
    const first = Math.max(0, block + BLOCK - 1 - band);
    const isWhole = block + BLOCK <= size;
    const begun = isWhole ? block : first;
    for (let j = first; j < begun; j += 1) {
      const [one, above] = [startOf(band, block) + first, startOf(band, j) + first];
      addFourSums(sums, { rows, stride: band, one, above, count: j - first });
      const pivot = rows[startOf(band, j) + j];
      for (let row = 0; row < BLOCK; row += 1) {
        const at = startOf(band, block + row) + j;
        rows[at] = (rows[at] - sums[row]) / pivot;
      }
    }
    for (let i = block; i < Math.min(size, block + BLOCK); i += 1)
      finishRow(rows, band, i, { first, from: begun });
  }
  return { size, band, rows };
}

/** Where column 0 of row i would stand. */
const startOf = (band: number, i: number): number => i * (band + 1) + band - i;

interface FourRows {
  readonly rows: Float64Array;
  /** From a place in one row to the same column of the next. */
  readonly stride: number;
  readonly one: number;
  readonly above: number;
  readonly count: number;
}

function addFourSums(sums: Float64Array, { rows, stride, one, above, count }: FourRows): void {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  const [two, three, four] = [one + stride, one + 2 * stride, one + 3 * stride];
  for (let k = 0; k < count; k += 1) {
    const value = rows[above + k];
    a += rows[one + k] * value;
    b += rows[two + k] * value;
    c += rows[three + k] * value;
    d += rows[four + k] * value;
  }
  sums[0] = a;
  sums[1] = b;
  sums[2] = c;
  sums[3] = d;
}

/** The entries of row i that the block left, up to its diagonal. */
function finishRow(
  rows: Float64Array,
  band: number,
  i: number,
  { first, from }: { readonly first: number; readonly from: number },
): void {
  const own = startOf(band, i);
  for (let j = from; j < i; j += 1) {
    const above = startOf(band, j);
    const sum = sumOfProducts(
      { values: rows, from: own + first },
      { values: rows, from: above + first },
      j - first,
    );
    rows[own + j] = (rows[own + j] - sum) / rows[above + j];
  }
  const squares = sumOfProducts(
    { values: rows, from: own + first },
    { values: rows, from: own + first },
    i - first,
  );
  rows[own + i] = root(rows[own + i] - squares);
}

/** Numbers from a place on; the compiler makes no object of it where the sum is in line. */
interface Run {
  readonly values: Float64Array;
  readonly from: number;
}

/** Four sums side by side, so that no addition waits for the one before it. */
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
  let begin = 0;
  while (begin < size && values[begin] === 0) begin += 1;
  for (let i = begin; i < size; i += 1) {
    const row = startOf(band, i);
    const first = Math.max(begin, i - band);
    values[i] =
      (values[i] - sumOfProducts({ values: rows, from: row + first }, { values, from: first }, i - first)) /
      rows[row + i];
  }
}

/** Solves L^T x = y in place. */
export function solveUpper({ size, band, rows }: Banded, values: Float64Array): void {
  for (let i = size - 1; i >= 0; i -= 1) {
    const row = startOf(band, i);
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
  const sums = new Float64Array(width);
  for (let j = size - 1; j >= 0; j -= 1) {
    const last = j + band < size ? j + band : size - 1;
    const pivot = rows[j * width + band];
    column.fill(0);
    for (let k = j + 1; k <= last; k += 1) column[k % width] = rows[k * width + band - (k - j)] / pivot;
    const own = j % width;
    full.fill(0, own * width, own * width + width);
    for (let i = 0; i < width; i += 1) full[i * width + own] = 0;
    multiplyWindow(sums, full, column, width);
    let diagonal = 1 / (pivot * pivot);
    for (let i = j + 1; i <= last; i += 1) {
      const slot = i % width;
      const sum = -sums[slot];
      inverse[i * width + band - (i - j)] = sum;
      full[slot * width + own] = sum;
      full[own * width + slot] = sum;
      diagonal -= column[slot] * sum;
    }
    full[own * width + own] = diagonal;
    inverse[j * width + band] = diagonal;
  }
  return { size, band, rows: inverse };
}

/** Window times column, four rows at a time. */
function multiplyWindow(sums: Float64Array, full: Float64Array, column: Float64Array, width: number): void {
  let row = 0;
  for (; row + 3 < width; row += 4) {
    let a = 0;
    let b = 0;
    let c = 0;
    let d = 0;
    const one = row * width;
    for (let k = 0; k < width; k += 1) {
      const value = column[k];
      a += full[one + k] * value;
      b += full[one + width + k] * value;
      c += full[one + 2 * width + k] * value;
      d += full[one + 3 * width + k] * value;
    }
    sums[row] = a;
    sums[row + 1] = b;
    sums[row + 2] = c;
    sums[row + 3] = d;
  }
  for (; row < width; row += 1)
    sums[row] = sumOfProducts({ values: column, from: 0 }, { values: full, from: row * width }, width);
}
