import { Defect } from '#lib/kernel';

export interface Column {
  readonly name: string;
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  readonly isWhole: boolean;
}

export interface Term {
  readonly column: string;
  readonly factor: number;
}

export interface Row {
  readonly name: string;
  readonly lower: number;
  readonly upper: number;
  readonly terms: readonly Term[];
}

/** An integer programme to be minimised, as plain data that can cross to a worker. */
export interface LinearModel {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

export interface SolverLimits {
  readonly timeLimitS: number;
  /** Zero asks for the best; more allows an answer that is this share above it. */
  readonly relativeGap: number;
}

export type SolverStatus = 'optimal' | 'time-limit' | 'infeasible' | 'failed';

export interface SolverAnswer {
  readonly status: SolverStatus;
  /** Values in the order of the columns; empty when there is no solution. */
  readonly values: readonly number[];
  /** Proven lower bound of the cost, where the solver gives one. */
  readonly bound?: number;
  /** What the solver said, when it failed. */
  readonly said?: string;
}

/** The solver is a value: whoever calls decides where it runs. */
export type Solve = (model: LinearModel, limits: SolverLimits) => Promise<SolverAnswer>;

/** The model by rows, in the arrays that solvers take. */
export interface SparseModel {
  readonly columnCount: number;
  readonly rowCount: number;
  readonly costs: Float64Array;
  readonly columnLower: Float64Array;
  readonly columnUpper: Float64Array;
  readonly isWhole: Int32Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly starts: Int32Array;
  readonly indices: Int32Array;
  readonly factors: Float64Array;
}

export function sparseModel({ columns, rows }: LinearModel): SparseModel {
  const places = new Map(columns.map(({ name }, index) => [name, index]));
  if (places.size !== columns.length) throw new Defect('Two columns of a model share a name');
  const starts = new Int32Array(rows.length + 1);
  rows.forEach(({ terms }, index) => {
    starts[index + 1] = starts[index] + terms.length;
  });
  const terms = rows.flatMap((row) => row.terms);
  return {
    columnCount: columns.length,
    rowCount: rows.length,
    costs: Float64Array.from(columns, ({ cost }) => cost),
    columnLower: Float64Array.from(columns, ({ lower }) => lower),
    columnUpper: Float64Array.from(columns, ({ upper }) => upper),
    isWhole: Int32Array.from(columns, ({ isWhole }) => (isWhole ? 1 : 0)),
    rowLower: Float64Array.from(rows, ({ lower }) => lower),
    rowUpper: Float64Array.from(rows, ({ upper }) => upper),
    starts,
    indices: Int32Array.from(terms, ({ column }) => placeOf(places, column)),
    factors: Float64Array.from(terms, ({ factor }) => factor),
  };
}

function placeOf(places: ReadonlyMap<string, number>, column: string): number {
  const place = places.get(column);
  if (place === undefined) throw new Defect(`A row names ${column}, which is no column of the model`);
  return place;
}
