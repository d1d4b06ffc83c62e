import { rectangle, regionOf } from '#lib/geometry';
import { factorised, solveWith } from '../../../libs/extent/src/map/banded.js';
import { fieldOn, RANGE_BY_KAPPA } from '../../../libs/extent/src/map/field.js';
import { latticeOver } from '../../../libs/extent/src/map/lattice.js';
import type { PublishedCase } from '../published-case.js';

const STEP_MM = 25;
const STEPS_PER_UNIT = 8;
/** Of 1/kappa where the field is stretched: 1.5 times as many along the panel, 2/3 of them across it. */
const STRETCHED_STEPS = 6;
const STRETCH = 2.25;
const KAPPA_PER_MM = 1 / (STEP_MM * STEPS_PER_UNIT);

/** Correlation of the lattice's field between a cell in the middle of a large panel and the cell `steps` further on. */
function latticeCorrelation(steps: number): number {
  const sideMm = 1600;
  const lattice = latticeOver(regionOf(rectangle(0, 0, sideMm, sideMm)), (sideMm / STEP_MM) ** 2);
  const field = fieldOn(lattice, RANGE_BY_KAPPA / KAPPA_PER_MM);
  const middle = Math.floor(lattice.columns / 2);
  const [from, to] = [middle, middle + steps].map((column) => lattice.nodeAt[column * lattice.rows + middle]);
  const column = new Float64Array(lattice.nodes.length);
  column[from] = 1;
  solveWith(factorised(field.precision), column);
  return column[to] / (field.scale[from] * field.scale[to]);
}

/** The same on a field that is stretched, so many steps along the panel or across it. */
function stretchedCorrelation(stretch: number, way: readonly [columns: number, rows: number]): number {
  const sideMm = 1600;
  const lattice = latticeOver(regionOf(rectangle(0, 0, sideMm, sideMm)), (sideMm / STEP_MM) ** 2);
  const field = fieldOn(lattice, RANGE_BY_KAPPA * STRETCHED_STEPS * STEP_MM, stretch);
  const middle = Math.floor(lattice.columns / 2);
  const [from, to] = [[0, 0], way].map(
    ([columns, rows]) => lattice.nodeAt[(middle + columns) * lattice.rows + middle + rows],
  );
  const column = new Float64Array(lattice.nodes.length);
  column[from] = 1;
  field.solve(column);
  return column[to] / (field.scale[from] * field.scale[to]);
}

/**
 * x^2 K2(x) / 2, Matern's correlation of smoothness 2, with K2 = K0 + 2 K1 / x from the printed K0 (0.9244191, 0.4210244, 0.1138939)
 * and K1 (1.6564411, 0.6019072, 0.1398659) at 0.5, 1 and 2.
 */
const matern = (
  id: string,
  x: number,
  printed: string,
  ours = () => latticeCorrelation(x * STEPS_PER_UNIT),
): PublishedCase => ({
  id: `extent-matern-${id}`,
  room: 'extent',
  title: `Correlation of the field at kappa r = ${x}`,
  source: 'ABRAMOWITZ-STEGUN-1964',
  locus: 'table 9.8, K0 and K1; digits from memory',
  unit: '1',
  printed,
  ours,
  tolerance: {
    absolute: 0.012,
    because:
      'a lattice of step 1/8 of 1/kappa misses the part of the spectrum above pi / h, which is small, and the panel ends 4/kappa away, where its edge lifts correlations a little',
  },
});

export const maternCovariance: readonly PublishedCase[] = [
  matern('half', 0.5, '0.94377'),
  matern('one', 1, '0.81242'),
  matern('two', 2, '0.50752'),
  matern('one-along', 1, '0.81242', () => stretchedCorrelation(STRETCH, [9, 0])),
  matern('one-across', 1, '0.81242', () => stretchedCorrelation(STRETCH, [0, 4])),
  matern('two-along', 2, '0.50752', () => stretchedCorrelation(STRETCH, [18, 0])),
  matern('two-across', 2, '0.50752', () => stretchedCorrelation(STRETCH, [0, 8])),
];
