import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { materialsOf, shippedCatalogue } from '#lib/catalogue';
import {
  arrange,
  compareStacks,
  complianceOf,
  constituentSets,
  emptyStrip,
  EQUAL,
  inPlaneConstants,
  measureMembrane,
  responseOf,
  noClimate,
  searchSchedules,
  searchStacks,
  stackFibreFraction,
  stiffnessOf,
  stripBending,
  thicknessOf,
  withLayer,
  type Ply,
  type Stack,
  type StackOption,
  type StackProblem,
} from '#lib/laminate';

const SEED = 20_261_125;
const options = { seed: SEED, numRuns: 150 };

const plyArb = fc.record({
  youngAlongMPa: fc.double({ min: 3000, max: 200_000, noNaN: true }),
  youngAcrossMPa: fc.double({ min: 2000, max: 60_000, noNaN: true }),
  poissonRatio: fc.double({ min: 0, max: 0.2, noNaN: true }),
  shearModulusMPa: fc.double({ min: 500, max: 20_000, noNaN: true }),
  thicknessMm: fc.double({ min: 0.05, max: 3, noNaN: true }),
  angleDeg: fc.double({ min: -180, max: 180, noNaN: true }),
});
const pliesArb = fc.array(plyArb, { minLength: 1, maxLength: 24 });

const largest = (m: Float64Array): number => Math.max(...m.map(Math.abs));
const full = (m: Float64Array): readonly (readonly number[])[] => [
  [m[0], m[1], m[2]],
  [m[1], m[3], m[4]],
  [m[2], m[4], m[5]],
];
const times = (
  x: readonly (readonly number[])[],
  y: readonly (readonly number[])[],
): readonly (readonly number[])[] =>
  x.map((row) => y[0].map((_, j) => row.reduce((sum, value, k) => sum + value * y[k][j], 0)));

describe(`lamination theory (seed ${SEED})`, () => {
  test('a mirrored stack has no coupling', () => {
    fc.assert(
      fc.property(pliesArb, (plies) => {
        const { bN, aNPerMm, dNmm } = stiffnessOf([...plies, ...[...plies].reverse()]);
        expect(largest(bN)).toBeLessThan(1e-12 * Math.sqrt(largest(aNPerMm) * largest(dNmm)));
      }),
      options,
    );
  });

  test('a balanced stack has no shear coupling in its plane', () => {
    fc.assert(
      fc.property(pliesArb, (plies) => {
        const { aNPerMm } = stiffnessOf(plies.flatMap((ply) => [ply, { ...ply, angleDeg: -ply.angleDeg }]));
        expect(Math.max(Math.abs(aNPerMm[2]), Math.abs(aNPerMm[4]))).toBeLessThan(1e-12 * largest(aNPerMm));
      }),
      options,
    );
  });

  test('turning the whole laminate keeps A11 + A22 + 2 A12 and A66 - A12', () => {
    fc.assert(
      fc.property(pliesArb, fc.double({ min: -180, max: 180, noNaN: true }), (plies, turn) => {
        const before = stiffnessOf(plies).aNPerMm;
        const after = stiffnessOf(plies.map((ply) => ({ ...ply, angleDeg: ply.angleDeg + turn }))).aNPerMm;
        expect(
          Math.abs(before[0] + before[3] + 2 * before[1] - after[0] - after[3] - 2 * after[1]),
        ).toBeLessThan(1e-11 * largest(before));
        expect(Math.abs(before[5] - before[1] - after[5] + after[1])).toBeLessThan(1e-11 * largest(before));
      }),
      options,
    );
  });

  test('stiffness times compliance is one, and the compliance is symmetric', () => {
    fc.assert(
      fc.property(pliesArb, (plies) => {
        const stiffness = stiffnessOf(plies);
        const { aMmPerN, bPerN, dPerNmm } = complianceOf(stiffness);
        const b = [0, 1, 2].map((row) => [...bPerN.subarray(3 * row, 3 * row + 3)]);
        const bT = [0, 1, 2].map((row) => [bPerN[row], bPerN[3 + row], bPerN[6 + row]]);
        const left = times(full(stiffness.aNPerMm), full(aMmPerN)).map((row, i) =>
          row.map((value, j) => value + times(full(stiffness.bN), bT)[i][j]),
        );
        const right = times(full(stiffness.bN), b).map((row, i) =>
          row.map((value, j) => value + times(full(stiffness.dNmm), full(dPerNmm))[i][j]),
        );
        for (const product of [left, right]) {
          product.forEach((row, i) =>
            row.forEach((value, j) => expect(Math.abs(value - (i === j ? 1 : 0))).toBeLessThan(1e-8)),
          );
        }
      }),
      options,
    );
  });

  test('ply stresses add up to the forces and moments applied', () => {
    const load = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(
        pliesArb,
        fc.tuple(load, load, load),
        fc.tuple(load, load, load),
        (plies, forcesNPerMm, momentsN) => {
          const stiffness = stiffnessOf(plies);
          const { stressMPa } = responseOf(
            { plies, stiffness, compliance: complianceOf(stiffness) },
            { forcesNPerMm, momentsN },
            noClimate,
          );
          const sums = resultants(plies, stiffness.heightsMm, stiffness.turns, stressMPa);
          const scale = Math.max(
            1,
            ...forcesNPerMm.map(Math.abs),
            ...momentsN.map(Math.abs),
            largest(stressMPa),
          );
          [...forcesNPerMm, ...momentsN].forEach((value, i) =>
            expect(Math.abs(sums[i] - value)).toBeLessThan(1e-7 * scale),
          );
        },
      ),
      options,
    );
  });

  test('a strip of sandwich bends as lamination theory says with the core as a ply: D11 - B11²/A11', () => {
    fc.assert(
      fc.property(pliesArb, fc.double({ min: 3, max: 40, noNaN: true }), (plies, thicknessMm) => {
        const core: Ply = {
          youngAlongMPa: 90,
          youngAcrossMPa: 90,
          poissonRatio: 0.2,
          shearModulusMPa: 60,
          thicknessMm,
          angleDeg: 0,
        };
        const all = [...plies.slice(0, 3), core, ...plies];
        const { aNPerMm, bN, dNmm } = stiffnessOf(all);
        let [sums, height] = [emptyStrip, 0];
        for (const ply of all) {
          sums = withLayer(sums, stiffnessOf([ply]).aNPerMm[0], height, ply.thicknessMm);
          height += ply.thicknessMm;
        }
        expect(stripBending(sums) / (dNmm[0] - bN[0] ** 2 / aNPerMm[0])).toBeCloseTo(1, 8);
      }),
      options,
    );
  });

  test('reciprocity: nu_xy over Ex equals nu_yx over Ey', () => {
    fc.assert(
      fc.property(pliesArb, (plies) => {
        const stiffness = stiffnessOf(plies);
        const { free } = inPlaneConstants(complianceOf(stiffness), stiffness.thicknessMm);
        expect(free.poissonAlong / free.youngAlongMPa).toBeCloseTo(
          free.poissonAcross / free.youngAcrossMPa,
          12,
        );
      }),
      options,
    );
  });

  test('equal isotropic plies at any angles are the isotropic plate', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -90, max: 90, noNaN: true }), { minLength: 1, maxLength: 12 }),
        (angles) => {
          const plies = angles.map((angleDeg): Ply => ({
            youngAlongMPa: 7000,
            youngAcrossMPa: 7000,
            poissonRatio: 0.3,
            shearModulusMPa: 7000 / 2.6,
            thicknessMm: 0.4,
            angleDeg,
          }));
          const stiffness = stiffnessOf(plies);
          const { free } = inPlaneConstants(complianceOf(stiffness), stiffness.thicknessMm);
          expect(free.youngAlongMPa).toBeCloseTo(7000, 6);
          expect(stiffness.dNmm[0]).toBeCloseTo(((7000 / (1 - 0.09)) * stiffness.thicknessMm ** 3) / 12, 6);
        },
      ),
      options,
    );
  });

  test('a mixed stack is as thick at its mean fraction as its plies are together', () => {
    const wet = fc.record({
      arealMassGPerM2: fc.double({ min: 50, max: 2000, noNaN: true }),
      fibreMassFraction: fc.double({ min: 0.2, max: 0.7, noNaN: true }),
    });
    const dense = { fibreDensityKgPerM3: 2560, resinDensityKgPerM3: 1200 };
    fc.assert(
      fc.property(fc.array(wet, { minLength: 1, maxLength: 10 }), (plies) => {
        const total = plies.reduce((sum, { arealMassGPerM2 }) => sum + arealMassGPerM2, 0);
        const apart = plies.reduce((sum, ply) => sum + thicknessOf({ ...ply, ...dense }), 0);
        expect(
          thicknessOf({ arealMassGPerM2: total, fibreMassFraction: stackFibreFraction(plies), ...dense }) /
            apart,
        ).toBeCloseTo(1, 12);
      }),
      options,
    );
  });
});

/** Forces and moments from the stresses of every ply, by Simpson's rule, exact for what is linear in z. */
function resultants(
  plies: readonly Ply[],
  heights: Float64Array,
  turns: Float64Array,
  stress: Float64Array,
): readonly number[] {
  const sums = [0, 0, 0, 0, 0, 0];
  plies.forEach((ply, k) => {
    const [c, s] = [turns[2 * k], turns[2 * k + 1]];
    [1, 4, 1].forEach((weight, level) => {
      const [s1, s2, t] = stress.subarray(9 * k + 3 * level, 9 * k + 3 * level + 3);
      const xy = [
        c * c * s1 + s * s * s2 - 2 * c * s * t,
        s * s * s1 + c * c * s2 + 2 * c * s * t,
        c * s * (s1 - s2) + (c * c - s * s) * t,
      ];
      const z = heights[k] + (level * ply.thicknessMm) / 2;
      xy.forEach((value, i) => {
        sums[i] += (value * weight * ply.thicknessMm) / 6;
        sums[3 + i] += (value * z * weight * ply.thicknessMm) / 6;
      });
    });
  });
  return sums;
}

const limits = {
  tensionAlong: 0.016,
  compressionAlong: 0.014,
  tensionAcross: 0.015,
  compressionAcross: 0.014,
  shear: 0.02,
};

const optionArb = fc
  .record({
    thickness: fc.integer({ min: 2, max: 12 }),
    along: fc.integer({ min: 5, max: 20 }),
    across: fc.integer({ min: 5, max: 20 }),
    price: fc.integer({ min: 1, max: 12 }),
    suits: fc.boolean(),
    print: fc.integer({ min: 0, max: 3 }),
  })
  .map(({ thickness, along, across, price, suits, print }): Omit<StackOption, 'kind'> => ({
    membrane: {
      thicknessMm: thickness / 10,
      hasLimits: true,
      layers: [{ cos: 1, sin: 0, limits }],
      aNPerMm: Float64Array.of(
        thickness * along * 100,
        thickness * 150,
        0,
        thickness * across * 100,
        0,
        thickness * 250,
      ),
    },
    price,
    massGPerM2: thickness * 160,
    suitsAgainstCore: suits,
    printThrough: print,
  }));

const problemArb = fc
  .record({
    options: fc.array(optionArb, { minLength: 1, maxLength: 4 }),
    thickness: fc.integer({ min: 10, max: 35 }),
    stiffness: fc.integer({ min: 7, max: 15 }),
    strength: fc.integer({ min: 40, max: 140 }),
    mostPlies: fc.integer({ min: 1, max: 5 }),
    mostKinds: fc.integer({ min: 1, max: 3 }),
    hasPanel: fc.boolean(),
    bending: fc.integer({ min: 5, max: 20 }),
  })
  .map(
    ({
      options: given,
      thickness,
      stiffness,
      strength,
      mostPlies,
      mostKinds,
      hasPanel,
      bending,
    }): StackProblem => ({
      options: given.map((option, kind) => ({ ...option, kind })),
      target: {
        alongNPerMm: thickness * stiffness * 100,
        acrossNPerMm: thickness * stiffness * 100,
        shearNPerMm: 0,
        strengthNPerMm: [1, 1, 1, 1].map(() => (thickness * strength) / 10),
      },
      thinnestMm: thickness / 10 - 0.6,
      thickestMm: thickness / 10 + 0.4,
      mostPlies,
      mostKinds,
      worstPrintThrough: 1,
      keep: 3,
      ...(hasPanel
        ? ({
            panel: {
              base: [strip, strip],
              coreFaceMm: 14.7,
              bendingNmm: [bending * 1e5, bending * 1e5],
              momentN: [100, 100],
            },
          } as const)
        : {}),
    }),
  );
const strip = { s0: 21_000, s1: 38_000, s2: 90_000 };

/** Every stack one by one, with no bound at all. */
function everyStack(problem: StackProblem): readonly Stack[] {
  const found: Stack[] = [];
  const counts = new Int32Array(problem.options.length);
  const walk = (from: number, plies: number): void => {
    if (plies > 0) found.push(...judged(problem, counts, plies));
    if (plies === problem.mostPlies) return;
    for (let i = from; i < counts.length; i += 1) {
      counts[i] += 1;
      walk(i, plies + 1);
      counts[i] -= 1;
    }
  };
  walk(0, 0);
  return found.sort(compareStacks).slice(0, problem.keep);
}

function judged(problem: StackProblem, counts: Int32Array, plyCount: number): readonly Stack[] {
  const sum = (value: (option: StackOption) => number): number =>
    problem.options.reduce((total, option, i) => total + counts[i] * value(option), 0);
  const aNPerMm = Float64Array.from(
    [0, 1, 2, 3, 4, 5].map((j) => sum(({ membrane }) => membrane.aNPerMm[j])),
  );
  const thicknessMm = sum(({ membrane }) => membrane.thicknessMm);
  const kinds = [...counts].filter((count) => count > 0).length;
  const measure = measureMembrane({
    thicknessMm,
    aNPerMm,
    hasLimits: true,
    layers: [{ cos: 1, sin: 0, limits }],
  });
  const meets = (value: number, needed: number): boolean => value >= needed * (1 - EQUAL);
  const { target } = problem;
  const isSound =
    meets(thicknessMm, problem.thinnestMm) &&
    thicknessMm <= problem.thickestMm * (1 + EQUAL) &&
    kinds <= problem.mostKinds &&
    meets(measure.alongNPerMm, target.alongNPerMm) &&
    meets(measure.acrossNPerMm, target.acrossNPerMm) &&
    measure.strengthNPerMm.every((value, i) => meets(value, target.strengthNPerMm[i]));
  if (!isSound) return [];
  const [t1, c1, t2, c2] = measure.strengthNPerMm;
  const arrangement = arrange(problem, counts, [
    Math.min(t1, c1) / measure.alongNPerMm,
    Math.min(t2, c2) / measure.acrossNPerMm,
  ]);
  if (arrangement === undefined) return [];
  return [
    {
      ...arrangement,
      counts: [...counts],
      plyCount,
      thicknessMm,
      price: sum(({ price }) => price),
      massGPerM2: sum(({ massGPerM2 }) => massGPerM2),
    },
  ];
}

describe(`the schedule search (seed ${SEED})`, () => {
  test('finds the same three as listing every stack', () => {
    let found = 0;
    fc.assert(
      fc.property(problemArb, (problem) => {
        const cut = searchStacks(problem).best.map(({ price, massGPerM2, plyCount }) => [
          price,
          massGPerM2,
          plyCount,
        ]);
        const listed = everyStack(problem).map(({ price, massGPerM2, plyCount }) => [
          price,
          massGPerM2,
          plyCount,
        ]);
        found += listed.length;
        expect(cut).toEqual(listed);
      }),
      { seed: SEED, numRuns: 1500 },
    );
    // The problems must not all be impossible, or the comparison would prove nothing.
    expect(found).toBeGreaterThan(300);
  });
});

describe(`skins from the shipped fabrics (seed ${SEED})`, () => {
  const fabrics = materialsOf(shippedCatalogue, 'reinforcement');
  const request = fc.record({
    thicknessMm: fc.double({ min: 0.2, max: 10, noNaN: true }),
    chosen: fc.uniqueArray(fc.integer({ min: 0, max: fabrics.length - 1 }), { minLength: 1, maxLength: 9 }),
    method: fc.constantFrom('class-bv', 'small-craft-yardstick'),
    chemistry: fc.constantFrom('epoxy', 'polyester'),
    coreMm: fc.double({ min: 11, max: 30, noNaN: true }),
    hasPanel: fc.boolean(),
    isPriced: fc.boolean(),
  });

  test('every figure of every answer is a number, and every skin found passes every check', () => {
    let found = 0;
    fc.assert(
      fc.property(request, ({ thicknessMm, chosen, method, chemistry, coreMm, hasPanel, isPriced }) => {
        const outcome = searchSchedules({
          oldSkin: { thicknessMm },
          method,
          resin: constituentSets.bv.resins[chemistry],
          fabrics: chosen.map((i) => ({ material: fabrics[i], ...(isPriced ? { pricePerM2: 3 + i } : {}) })),
          ...(hasPanel
            ? {
                panel: {
                  core: { thicknessMm: coreMm, youngMPa: 98 },
                  otherSkin: { thicknessMm: 2, alongNPerMm: 18_000, acrossNPerMm: 18_000 },
                },
              }
            : {}),
        });
        expect(JSON.stringify(outcome)).not.toMatch(/:null|\[null|,null|NaN|Infinity/);
        if (!outcome.ok) return;
        found += outcome.value.best.length;
        expect(
          outcome.value.best.flatMap(({ checks }) => checks.filter(({ verdict }) => verdict === 'fails')),
        ).toEqual([]);
      }),
      { seed: SEED, numRuns: 120 },
    );
    expect(found).toBeGreaterThan(40);
  });
});
