import { Matrix, inverse } from 'ml-matrix';
import { materialsOf, shippedCatalogue } from '#lib/catalogue';
import { randomStream } from '#lib/kernel';
import {
  complianceOf,
  inPlaneConstants,
  laminate,
  responseOf,
  noClimate,
  searchSchedules,
  stiffnessOf,
  type Ply,
  type ScheduleRequest,
} from '#lib/laminate';

/**
 * Lamination of 24 plies against a general-purpose matrix library doing the same, and the schedule search at full size.
 * Seeded, warmed, results consumed; medians over many runs. Budgets: 50 µs a lamination, 100 ms a search.
 */
const SEED = 20_261_125;
const random = randomStream(SEED);
let consumed = 0;

function medianUs(work: () => number, runs: number): number {
  for (let i = 0; i < Math.max(5, runs / 5); i += 1) consumed += work();
  const times = Array.from({ length: runs }, () => {
    const start = process.hrtime.bigint();
    consumed += work();
    return Number(process.hrtime.bigint() - start) / 1000;
  });
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)];
}

const ply = (): Ply => ({
  youngAlongMPa: 20_000 + 20_000 * random(),
  youngAcrossMPa: 6000 + 4000 * random(),
  poissonRatio: 0.2 + 0.1 * random(),
  shearModulusMPa: 2500 + 1500 * random(),
  thicknessMm: 0.2 + 0.8 * random(),
  angleDeg: Math.round(random() * 12) * 15,
});
const plies = Array.from({ length: 24 }, ply);
const loads = { forcesNPerMm: [100, 20, 5], momentsN: [30, -10, 2] } as const;

function ours(): number {
  const stiffness = stiffnessOf(plies);
  const compliance = complianceOf(stiffness);
  return inPlaneConstants(compliance, stiffness.thicknessMm).free.youngAlongMPa;
}

function oursWithStresses(): number {
  const stiffness = stiffnessOf(plies);
  const compliance = complianceOf(stiffness);
  return (
    responseOf({ plies, stiffness, compliance }, loads, noClimate).stressMPa[0] +
    inPlaneConstants(compliance, stiffness.thicknessMm).free.youngAlongMPa
  );
}

/** The same sums written with matrix objects: Q̄ = T⁻¹ Q R T R⁻¹, A, B and D assembled into one 6 x 6 and inverted. */
function withMatrixLibrary(): number {
  const total = plies.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
  const abd = Matrix.zeros(6, 6);
  let low = -total / 2;
  for (const each of plies) {
    const qBar = turnedStiffness(each);
    const top = low + each.thicknessMm;
    addBlock(abd, Matrix.mul(qBar, top - low), 0, 0);
    addBlock(abd, Matrix.mul(qBar, (top ** 2 - low ** 2) / 2), 0, 3);
    addBlock(abd, Matrix.mul(qBar, (top ** 2 - low ** 2) / 2), 3, 0);
    addBlock(abd, Matrix.mul(qBar, (top ** 3 - low ** 3) / 3), 3, 3);
    low = top;
  }
  return 1 / (total * inverse(abd).get(0, 0));
}

const reuter = new Matrix([
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 2],
]);
const reuterInverse = new Matrix([
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 0.5],
]);

function turnedStiffness({
  youngAlongMPa,
  youngAcrossMPa,
  poissonRatio,
  shearModulusMPa,
  angleDeg,
}: Ply): Matrix {
  const shrink = 1 - (poissonRatio ** 2 * youngAcrossMPa) / youngAlongMPa;
  const q12 = (poissonRatio * youngAcrossMPa) / shrink;
  const q = new Matrix([
    [youngAlongMPa / shrink, q12, 0],
    [q12, youngAcrossMPa / shrink, 0],
    [0, 0, shearModulusMPa],
  ]);
  const [c, s] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
  const turn = new Matrix([
    [c * c, s * s, 2 * c * s],
    [s * s, c * c, -2 * c * s],
    [-c * s, c * s, c * c - s * s],
  ]);
  return inverse(turn).mmul(q).mmul(reuter).mmul(turn).mmul(reuterInverse);
}

function addBlock(whole: Matrix, block: Matrix, row: number, column: number): void {
  for (let i = 0; i < 3; i += 1) {
    for (let j = 0; j < 3; j += 1)
      whole.set(row + i, column + j, whole.get(row + i, column + j) + block.get(i, j));
  }
}

console.log(`seed ${SEED}, Node ${process.version}`);
console.log(`Ex of the stack: ${ours()} MPa here, ${withMatrixLibrary()} MPa by the library`);
const baseline = medianUs(withMatrixLibrary, 2000);
const rows: readonly (readonly [string, number])[] = [
  ['matrix library: A, B, D, inverse, Ex', baseline],
  ['this room: A, B, D, inverse, constants', medianUs(ours, 5000)],
  ['this room: the same and all ply stresses', medianUs(oursWithStresses, 5000)],
  [
    'this room: whole answer object',
    medianUs(() => {
      const outcome = laminate({ plies, loads });
      return outcome.ok ? outcome.value.thicknessMm : 0;
    }, 2000),
  ],
];
console.log('\n24 plies                                     median µs   against library');
for (const [name, us] of rows)
  console.log(
    `${name.padEnd(44)} ${us.toFixed(1).padStart(9)}   ${(baseline / us).toFixed(1).padStart(8)} x`,
  );

const fabrics = materialsOf(shippedCatalogue, 'reinforcement').filter(({ fabric }) => fabric !== 'tape');
const real = (thicknessMm: number, extra: Partial<ScheduleRequest> = {}): ScheduleRequest => ({
  oldSkin: { thicknessMm },
  method: 'class-bv',
  fabrics: fabrics.map((material, i) => ({
    material,
    pricePerM2: (0.01 + 0.001 * (i % 4)) * material.arealMassGPerM2.value,
  })),
  resin: { chemistry: 'polyester', densityKgPerM3: 1200, youngMPa: 3550, poissonRatio: 0.38 },
  panel: {
    core: { thicknessMm: 12.7, youngMPa: 98 },
    otherSkin: { thicknessMm: 2, alongNPerMm: 18_000, acrossNPerMm: 18_000 },
  },
  ...extra,
});
console.log(`\nwhole search over the ${fabrics.length} shipped fabrics    median ms  examined      space`);
for (const [name, request] of [
  ['2 mm skin', real(2)],
  ['3 mm skin', real(3)],
  ['4.5 mm skin', real(4.5)],
  ['3 mm skin by mass, no prices', { ...real(3), fabrics: fabrics.map((material) => ({ material })) }],
  [
    '3 mm skin, all turns of 45',
    { ...real(3), fabrics: fabrics.map((material) => ({ material, turnsDeg: [0, 45] })) },
  ],
  [
    '3 mm skin that cannot be done, diagnosed',
    real(3, { flush: { proudUpToMm: 0, lowUpToMm: 0.01 }, limits: { mostPlies: 4 } }),
  ],
  ['4.5 mm skin that cannot be done, diagnosed', real(4.5, { flush: { proudUpToMm: 0, lowUpToMm: 0 } })],
] as const) {
  const outcome = searchSchedules(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const us = medianUs(() => {
    const again = searchSchedules(request);
    return again.ok ? again.value.best.length : 0;
  }, 5);
  console.log(
    `${`${name} (${outcome.value.outcome})`.padEnd(52)} ${(us / 1000).toFixed(1).padStart(6)} ${String(outcome.value.effort.examined).padStart(9)} ${String(outcome.value.effort.space).padStart(10)}`,
  );
}

console.log(`\n(consumed ${consumed.toExponential(2)})`);
