import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  everywhere,
  panelCheck,
  plateModel,
  sandwichSection,
  supportedPlate,
  type PanelCheckRequest,
  type PlateStiffness,
  type SkinValues,
} from '#lib/panel';

const SEED = 20_261_126;
const options = { seed: SEED, numRuns: 12, endOnFailure: true };

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Orthotropic plates with a positive definite stiffness, from soft to stiff in shear. */
const stiffnessArb = fc
  .record({
    d11: between(1e5, 1e7),
    ratio: between(0.15, 6),
    coupling: between(0, 0.6),
    twist: between(0.15, 1),
    shear: between(2, 5),
  })
  .map(({ d11, ratio, coupling, twist, shear }): PlateStiffness => {
    const d22 = d11 * ratio;
    const mean = Math.sqrt(d11 * d22);
    return { d11, d22, d12: coupling * mean, d66: (twist * mean) / 2, sx: 10 ** shear, sy: 10 ** shear };
  });
const sizeArb = fc.record({ lengthXMm: between(300, 1500), widthYMm: between(300, 1500) });
const edgeArb = fc.constantFrom('simply-supported' as const, 'clamped' as const);
const edgesArb = fc.record({ xStart: edgeArb, xEnd: edgeArb, yStart: edgeArb, yEnd: edgeArb });
const placeArb = between(0.15, 0.85);

/** The double series itself, summed term by term: another road to the same plate. */
function byDoubleSeries(
  { d11, d12, d22, d66, sx, sy }: PlateStiffness,
  a: number,
  b: number,
  pressure: number,
): { w: number; my: number } {
  let w = 0;
  let my = 0;
  for (let m = 1; m < 160; m += 2) {
    for (let n = 1; n < 160; n += 2) {
      const [x, y] = [(m * Math.PI) / a, (n * Math.PI) / b];
      const [k22, k33, k23] = [
        sx + d11 * x * x + d66 * y * y,
        sy + d66 * x * x + d22 * y * y,
        (d12 + d66) * x * y,
      ];
      const det = k22 * k33 - k23 * k23;
      const [px, py] = [(sx * x * k33 - sy * y * k23) / det, (sy * y * k22 - sx * x * k23) / det];
      const load = (16 * pressure) / (Math.PI * Math.PI * m * n);
      const amplitude = load / (sx * x * x + sy * y * y - sx * x * px - sy * y * py);
      const sign = ((m + n) / 2) % 2 === 1 ? 1 : -1;
      w += sign * amplitude;
      my += sign * amplitude * (d12 * x * px + d22 * y * py);
    }
  }
  return { w, my };
}

/** Clamped thin orthotropic plate by Ritz with (1 - s^2)^2 s^2i: conditions met by form, no multipliers, no series. */
function clampedByRitz({ d11, d12, d22, d66 }: PlateStiffness, a: number, b: number): number {
  const terms = 5;
  const powers = (i: number): Float64Array => {
    const c = new Float64Array(30);
    c[2 * i] += 1;
    c[2 * i + 2] -= 2;
    c[2 * i + 4] += 1;
    return c;
  };
  const slope = (c: Float64Array): Float64Array =>
    c.map((_, k) => (k + 1 < c.length ? (k + 1) * c[k + 1] : 0));
  const integral = (p: Float64Array, q: Float64Array): number => {
    let sum = 0;
    p.forEach((x, i) =>
      q.forEach((y, j) => {
        if ((i + j) % 2 === 0) sum += (2 * x * y) / (i + j + 1);
      }),
    );
    return sum;
  };
  const one = new Float64Array(30);
  one[0] = 1;
  const f = Array.from({ length: terms }, (_, i) => [powers(i), slope(powers(i)), slope(slope(powers(i)))]);
  const [kx, ky] = [2 / a, 2 / b];
  const size = terms * terms;
  const rows: number[][] = [];
  for (let r = 0; r < size; r += 1) {
    const [i, j] = [Math.floor(r / terms), r % terms];
    const row: number[] = [];
    for (let c = 0; c < size; c += 1) {
      const [k, l] = [Math.floor(c / terms), c % terms];
      const at = (p: number, q: number) => [integral(f[i][p], f[k][q]), integral(f[j][p], f[l][q])];
      const [x22, y22, x00, y00, x11, y11] = [
        at(2, 2)[0],
        at(2, 2)[1],
        at(0, 0)[0],
        at(0, 0)[1],
        at(1, 1)[0],
        at(1, 1)[1],
      ];
      row.push(
        d11 * kx ** 4 * x22 * y00 +
          d22 * ky ** 4 * x00 * y22 +
          4 * d66 * kx ** 2 * ky ** 2 * x11 * y11 +
          d12 *
            kx ** 2 *
            ky ** 2 *
            (integral(f[i][2], f[k][0]) * integral(f[j][0], f[l][2]) +
              integral(f[i][0], f[k][2]) * integral(f[j][2], f[l][0])),
      );
    }
    row.push(integral(f[i][0], one) * integral(f[j][0], one));
    rows.push(row);
  }
  for (let p = 0; p < size; p += 1) {
    for (let r = p + 1; r < size; r += 1) {
      const factor = rows[r][p] / rows[p][p];
      for (let c = p; c <= size; c += 1) rows[r][c] -= factor * rows[p][c];
    }
  }
  const answer = new Array<number>(size).fill(0);
  for (let p = size - 1; p >= 0; p -= 1)
    answer[p] =
      (rows[p][size] -
        rows[p].slice(p + 1, size).reduce((sum, value, c) => sum + value * answer[p + 1 + c], 0)) /
      rows[p][p];
  return answer[0];
}

describe(`plates (seed ${SEED})`, () => {
  test('the closed sums are the double series', () => {
    fc.assert(
      fc.property(stiffnessArb, sizeArb, (stiffness, size) => {
        const middle = { xMm: size.lengthXMm / 2, yMm: size.widthYMm / 2 };
        const { fields } = supportedPlate(stiffness, size).at(everywhere(size, 0.01), middle);
        const series = byDoubleSeries(stiffness, size.lengthXMm, size.widthYMm, 0.01);
        expect(fields.w / series.w).toBeCloseTo(1, 4);
        expect(Math.abs(fields.my - series.my)).toBeLessThan(2e-3 * Math.max(Math.abs(series.my), 1));
      }),
      options,
    );
  });

  test('a clamped orthotropic plate agrees with a Ritz solution that meets its edges by form', () => {
    fc.assert(
      fc.property(stiffnessArb, sizeArb, (soft, size) => {
        const stiffness = { ...soft, sx: 1e6, sy: 1e6 };
        const edges = { xStart: 'clamped', xEnd: 'clamped', yStart: 'clamped', yEnd: 'clamped' } as const;
        const { deflectionMm } = plateModel(stiffness, size, edges).answerTo(everywhere(size, 0.01));
        const ritz = 0.01 * clampedByRitz(stiffness, size.lengthXMm, size.widthYMm);
        const shear = (0.01 * Math.min(size.lengthXMm, size.widthYMm) ** 2) / (8 * 1e6);
        expect(Math.abs(deflectionMm - ritz)).toBeLessThan(1.2 * shear + 4e-3 * ritz);
      }),
      options,
    );
  });

  test('load and shear balance at every spot: the shears run off as the pressure comes on', () => {
    fc.assert(
      fc.property(stiffnessArb, sizeArb, placeArb, placeArb, (stiffness, size, u, v) => {
        const plate = supportedPlate(stiffness, size);
        const [x, y, step] = [u * size.lengthXMm, v * size.widthYMm, 0.5];
        const at = (xMm: number, yMm: number) => plate.at(everywhere(size, 0.01), { xMm, yMm }).fields;
        const run =
          (at(x + step, y).qx - at(x - step, y).qx + at(x, y + step).qy - at(x, y - step).qy) / (2 * step);
        expect(run).toBeCloseTo(-0.01, 5);
      }),
      options,
    );
  });

  test('reciprocity: a foot here sinks there as much as a foot there sinks here, whatever the edges', () => {
    fc.assert(
      fc.property(
        stiffnessArb,
        sizeArb,
        edgesArb,
        fc.tuple(placeArb, placeArb, placeArb, placeArb),
        (stiffness, size, edges, [u, v, s, t]) => {
          const model = plateModel(stiffness, size, edges);
          const [here, there] = [
            { xMm: u * size.lengthXMm, yMm: v * size.widthYMm },
            { xMm: s * size.lengthXMm, yMm: t * size.widthYMm },
          ];
          const foot = ({ xMm, yMm }: typeof here) => ({
            pressureMPa: 1,
            x1Mm: xMm - 5,
            x2Mm: xMm + 5,
            y1Mm: yMm - 5,
            y2Mm: yMm + 5,
          });
          const [one, other] = [
            model.answerTo(foot(here)).at(there).w,
            model.answerTo(foot(there)).at(here).w,
          ];
          expect(Math.abs(one - other)).toBeLessThan(5e-3 * Math.max(Math.abs(one), Math.abs(other)) + 1e-6);
        },
      ),
      { ...options, numRuns: 6 },
    );
  });

  test('a panel turned by a quarter answers the same, and clamping never softens it', () => {
    fc.assert(
      fc.property(stiffnessArb, sizeArb, edgesArb, ({ d11, d12, d22, d66, sx, sy }, size, edges) => {
        const turned = plateModel(
          { d11: d22, d12, d22: d11, d66, sx: sy, sy: sx },
          { lengthXMm: size.widthYMm, widthYMm: size.lengthXMm },
          { xStart: edges.yStart, xEnd: edges.yEnd, yStart: edges.xStart, yEnd: edges.xEnd },
        );
        const held = plateModel({ d11, d12, d22, d66, sx, sy }, size, edges).answerTo(
          everywhere(size, 0.01),
        ).deflectionMm;
        const other = turned.answerTo(
          everywhere({ lengthXMm: size.widthYMm, widthYMm: size.lengthXMm }, 0.01),
        ).deflectionMm;
        const free = supportedPlate({ d11, d12, d22, d66, sx, sy }, size).at(everywhere(size, 0.01), {
          xMm: size.lengthXMm / 2,
          yMm: size.widthYMm / 2,
        }).fields.w;
        expect(other / held).toBeCloseTo(1, 5);
        expect(held).toBeLessThanOrEqual(free * (1 + 1e-6));
      }),
      { ...options, numRuns: 8 },
    );
  });
});

const skinArb = fc.record({
  thicknessMm: between(0.5, 8),
  modulusXMPa: between(5000, 40000),
  modulusYMPa: between(5000, 40000),
  shearModulusMPa: between(1500, 9000),
  poissonXY: between(0, 0.35),
  tensileStrengthMPa: between(50, 500),
  compressiveStrengthMPa: between(50, 400),
}) satisfies fc.Arbitrary<SkinValues>;
const coreArb = fc.record({
  coreType: fc.constantFrom(
    'end-grain-balsa',
    'cross-linked-foam',
    'san-foam',
    'marine-plywood',
  ) as fc.Arbitrary<'end-grain-balsa' | 'cross-linked-foam' | 'san-foam' | 'marine-plywood'>,
  thicknessMm: between(5, 30),
  shearModulusMPa: between(10, 200),
  shearStrengthMPa: between(0.4, 4),
  compressiveModulusMPa: between(30, 5000),
  compressiveStrengthMPa: between(0.4, 15),
  inPlaneModulusMPa: between(0, 5000),
});
const sandwichArb = fc.record({ outer: skinArb, inner: skinArb, core: coreArb });

const numbersIn = (value: unknown): readonly number[] => {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersIn);
};

describe(`sandwiches (seed ${SEED})`, () => {
  test('bending stiffness is positive definite, and less than the skins would have about any other axis', () => {
    fc.assert(
      fc.property(sandwichArb, (sandwich) => {
        const {
          stiffness: { d11, d12, d22, d66 },
        } = sandwichSection(sandwich);
        expect(Math.min(d11, d22, d66, d11 * d22 - d12 * d12)).toBeGreaterThan(0);
        const { stiffness: upsideDown } = sandwichSection({
          ...sandwich,
          outer: sandwich.inner,
          inner: sandwich.outer,
        });
        expect(upsideDown.d11 / d11).toBeCloseTo(1, 9);
      }),
      options,
    );
  });

  test('no figure is ever lost: every number of every answer is finite', () => {
    const request = fc.record({
      panel: fc.record({ lengthXMm: between(400, 1600), widthYMm: between(400, 1600), edges: edgeArb }),
      asBuilt: sandwichArb,
      repaired: sandwichArb,
      asFound: fc.record({
        degradedFraction: between(0, 1),
        stiffnessFraction: between(0, 1),
        strengthFraction: between(0, 1),
      }),
    }) satisfies fc.Arbitrary<PanelCheckRequest>;
    fc.assert(
      fc.property(request, (asked) => {
        const outcome = panelCheck(asked);
        expect(outcome.ok).toBe(true);
        if (!outcome.ok) return;
        const { states, ratios, opened, loads } = outcome.value;
        const plain = states.map(({ checks, ...state }) => ({
          ...state,
          checks: checks.map(({ demand, capacity, utilisation }) => ({ demand, capacity, utilisation })),
        }));
        for (const value of numbersIn([plain, ratios, opened, loads]))
          expect(Number.isFinite(value)).toBe(true);
        expect(outcome.value.truncation).toBeLessThan(0.05);
        expect(outcome.value.verdict === 'restored').toBe(
          outcome.value.ratios.every(({ ratio }) => ratio >= 1 - 1e-6),
        );
      }),
      { ...options, numRuns: 12 },
    );
  });
});
