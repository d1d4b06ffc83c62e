import { describe, expect, test } from '@jest/globals';
import { materialsOf, shippedCatalogue } from '#lib/catalogue';
import { constituentSets } from '../ply/constituents.js';
import { onsetOf, type PlyLimits } from './failure.js';
import { laminate } from './laminate.js';
import { layupOf } from './layup.js';
import type { Ply } from '../ply/ply.js';
import { plyProperties, spreadOverMethods } from '../ply/ply-properties.js';
import { measureSkin } from './skin.js';

const strength = {
  tensionAlongMPa: 1000,
  compressionAlongMPa: 600,
  tensionAcrossMPa: 40,
  compressionAcrossMPa: 120,
  shearMPa: 70,
};
const ply = (angleDeg: number, extra: Partial<Ply> = {}): Ply => ({
  youngAlongMPa: 38_000,
  youngAcrossMPa: 8000,
  poissonRatio: 0.26,
  shearModulusMPa: 4000,
  thicknessMm: 0.5,
  angleDeg,
  strength,
  ...extra,
});
const answer = (plies: readonly Ply[], extra: object = {}) => {
  const outcome = laminate({ plies, ...extra });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const faults = (plies: readonly Ply[], extra: object = {}) => {
  const outcome = laminate({ plies, ...extra });
  return outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`);
};

describe('a laminate', () => {
  test('of a mirrored stack couples nothing and does not curl when pulled', () => {
    const { couplingRatio, curvaturePerMm } = answer(
      [0, 45, 45, 0].map((angle) => ply(angle)),
      { loads: { forcesNPerMm: [50, 10, 5], momentsN: [0, 0, 0] } },
    );
    expect(couplingRatio).toBeLessThan(1e-15);
    for (const curvature of curvaturePerMm ?? []) expect(Math.abs(curvature)).toBeLessThan(1e-15);
  });

  test('cooled [0/90] curls, and a mirrored one only shrinks', () => {
    const expansion = {
      thermalAlongPerK: 7e-6,
      thermalAcrossPerK: 3e-5,
      moistureAlong: 0,
      moistureAcross: 0.3,
    };
    const climate = { temperatureChangeK: -60, moistureChange: 0.01 };
    expect(
      Math.abs(answer([ply(0, { expansion }), ply(90, { expansion })], { climate }).curvaturePerMm?.[0] ?? 0),
    ).toBeGreaterThan(1e-6);
    const flat = answer(
      [0, 90, 90, 0].map((angle) => ply(angle, { expansion })),
      { climate },
    );
    expect(Math.abs(flat.curvaturePerMm?.[0] ?? 1)).toBeLessThan(1e-12);
  });

  test('warmed freely, one ply grows without stress', () => {
    const expansion = {
      thermalAlongPerK: 7e-6,
      thermalAcrossPerK: 3e-5,
      moistureAlong: 0,
      moistureAcross: 0,
    };
    const { plies, midStrain } = answer([ply(30, { expansion })], {
      climate: { temperatureChangeK: 40, moistureChange: 0 },
    });
    for (const stress of plies?.[0].stressMPa.flat() ?? [1]) expect(Math.abs(stress)).toBeLessThan(1e-9);
    // By hand at 30 degrees: 40 x (0.75 x 7e-6 + 0.25 x 3e-5) = 5.1e-4.
    expect(midStrain?.[0]).toBeCloseTo(5.1e-4, 12);
  });

  test('loses its cross plies first and its 0 plies last', () => {
    const { progressive } = answer(
      [0, 90, 90, 0].map((angle) => ply(angle)),
      {
        loads: { forcesNPerMm: [1, 0, 0], momentsN: [0, 0, 0] },
        criteria: ['max-stress'],
        degradation: { fibreFraction: 0.01, matrixFraction: 0.1 },
      },
    );
    const events = progressive?.events ?? [];
    expect(events.slice(0, 2).map(({ plyIndex, mode }) => [plyIndex, mode])).toEqual([
      [1, 'matrix-tension'],
      [2, 'matrix-tension'],
    ]);
    expect(progressive?.ultimateFactor).toBeGreaterThan(2 * events[0].loadFactor);
  });

  test('sheds shear to the sound ply once the other has cracked', () => {
    // By hand: two plies of G 4000 and 1 mm share Nxy evenly until the weak one cracks at 2 x 12 = 24 N/mm. With a tenth of
    // its G left it takes 400/4400 of the load, so the sound one reaches 100 MPa at 100 x 4400/4000 = 110 N/mm.
    const weak = ply(0, { thicknessMm: 1, strength: { ...strength, shearMPa: 12 } });
    const sound = ply(0, { thicknessMm: 1, strength: { ...strength, shearMPa: 100 } });
    const { progressive } = answer(
      [weak, sound, sound, weak].map((each) => ({ ...each, thicknessMm: 0.5 })),
      {
        loads: { forcesNPerMm: [0, 0, 1], momentsN: [0, 0, 0] },
        criteria: ['max-stress'],
        degradation: { fibreFraction: 0.01, matrixFraction: 0.1 },
      },
    );
    expect(progressive?.events[0].loadFactor).toBeCloseTo(24, 9);
    expect(progressive?.events.find(({ plyIndex }) => plyIndex === 1)?.loadFactor).toBeCloseTo(110, 2);
  });

  test('refuses what no ply can be, all at once', () => {
    expect(
      faults([
        ply(0, { youngAlongMPa: -1 }),
        ply(0, { thicknessMm: 0 }),
        ply(0, { poissonRatio: 2.3 }),
        ply(Number.NaN),
      ]),
    ).toEqual([
      'out-of-range /plies/0/youngAlongMPa',
      'out-of-range /plies/1/thicknessMm',
      'contradiction /plies/2/poissonRatio',
      'not-a-number /plies/3/angleDeg',
    ]);
  });

  test('of ten thousand plies or of none is refused', () => {
    expect(faults(new Array<Ply>(10_000).fill(ply(0)))).toEqual(['too-many /plies']);
    expect(faults([])).toEqual(['too-few /plies']);
  });

  test('without strengths says that failure is absent', () => {
    const { strength: given, ...bare } = ply(0);
    expect(given).toBe(strength);
    expect(answer([bare]).absent).toHaveLength(1);
  });

  test('answers in numbers only', () => {
    const text = JSON.stringify(
      answer([ply(0), ply(90), ply(33)], { loads: { forcesNPerMm: [0, 0, 0], momentsN: [0, 0, 0] } }),
    );
    expect(text).not.toMatch(/null|NaN|Infinity/);
  });
});

describe('failure criteria', () => {
  const limits: PlyLimits = {
    elastic: ply(0),
    strength,
    breakingStrain: {
      tensionAlong: 0.02,
      compressionAlong: 0.015,
      tensionAcross: 0.005,
      compressionAcross: 0.015,
      shear: 0.0175,
    },
  };

  test.each(['max-stress', 'tsai-hill', 'tsai-wu', 'hoffman'] as const)(
    '%s agrees with each strength in a single stress',
    (criterion) => {
      expect(onsetOf(criterion, limits, [0, 0, 0], [1, 0, 0])?.factor).toBeCloseTo(1000, 8);
      expect(onsetOf(criterion, limits, [0, 0, 0], [-1, 0, 0])?.factor).toBeCloseTo(600, 8);
      expect(onsetOf(criterion, limits, [0, 0, 0], [0, 1, 0])?.factor).toBeCloseTo(40, 8);
      expect(onsetOf(criterion, limits, [0, 0, 0], [0, -1, 0])?.factor).toBeCloseTo(120, 8);
      expect(onsetOf(criterion, limits, [0, 0, 0], [0, 0, 1])?.factor).toBeCloseTo(70, 8);
    },
  );

  test('the interaction of two equal pulls is that of each criterion', () => {
    // By hand with X 100, Y 50, S 20 and σ1 = σ2 = λ: Hoffman 1e-4 + 4e-4 - 1e-4 = 4e-4, Tsai-Wu 1e-4 + 4e-4 - 2e-4 = 3e-4, Tsai-Hill 4e-4.
    const even = {
      tensionAlongMPa: 100,
      compressionAlongMPa: 100,
      tensionAcrossMPa: 50,
      compressionAcrossMPa: 50,
      shearMPa: 20,
    };
    const pulled = (criterion: 'hoffman' | 'tsai-wu' | 'tsai-hill') =>
      onsetOf(criterion, { ...limits, strength: even }, [0, 0, 0], [1, 1, 0])?.factor;
    expect(pulled('hoffman')).toBeCloseTo(50, 10);
    expect(pulled('tsai-wu')).toBeCloseTo(1 / Math.sqrt(3e-4), 10);
    expect(pulled('tsai-hill')).toBeCloseTo(50, 10);
  });

  test('fibres at 45 degrees break in shear under a pull, at their shear limit over a11 - a12', () => {
    const skin = [45, -45].map((angle) => ({
      ...ply(angle),
      layup: 'woven' as const,
      arealMassGPerM2: 600,
      fibreMassFraction: 0.5,
      resinGPerM2: 600,
    }));
    const { aNPerMm, strengthNPerMm } = measureSkin(skin);
    const determinant = aNPerMm[0] * aNPerMm[3] - aNPerMm[1] ** 2;
    const slide = (aNPerMm[3] + aNPerMm[1]) / determinant;
    expect(strengthNPerMm[0]).toBeCloseTo(70 / 4000 / slide, 6);
  });

  test('Tsai-Hill follows a stress through zero from compression at rest to tension', () => {
    // σ2 = -20 + λ: it passes zero at 20 and reaches Yt at 60.
    const onset = onsetOf('tsai-hill', limits, [0, -20, 0], [0, 1, 0]);
    expect(onset?.factor).toBeCloseTo(60, 10);
    expect(onset?.mode).toBe('matrix-tension');
  });

  test('a resting stress beyond the strength leaves nothing for the load', () => {
    for (const criterion of ['max-stress', 'max-strain', 'tsai-hill', 'tsai-wu', 'hoffman'] as const) {
      expect(onsetOf(criterion, limits, [0, 60, 0], [1, 0, 0])?.factor).toBe(0);
    }
  });

  test('no load never fails', () => {
    expect(onsetOf('tsai-wu', limits, [0, 0, 0], [0, 0, 0])).toBeUndefined();
    expect(onsetOf('max-stress', limits, [0, 0, 0], [0, 0, 0])).toBeUndefined();
    expect(onsetOf('tsai-hill', limits, [0, 0, 0], [0, 0, 0])).toBeUndefined();
  });
});

describe('ply methods', () => {
  const resin = constituentSets.bv.resins.polyester;

  test('outside its fibre fractions a method refuses and names its range', () => {
    const outcome = plyProperties({
      method: 'small-craft-yardstick',
      layup: 'mat',
      fibreMassFraction: 0.2,
      resin,
    });
    expect(outcome.ok ? undefined : outcome.problems[0]).toMatchObject({
      code: 'not-supported',
      at: '/fibreMassFraction',
      facts: {
        why: 'Small-craft yardstick, E-glass and polyester holds for fibre mass fractions from 0.25 to 0.66, and 0.2 lies outside',
      },
    });
  });

  test('the yardstick gives no lone unidirectional ply and says so', () => {
    const outcome = plyProperties({
      method: 'small-craft-yardstick',
      layup: 'unidirectional',
      fibreMassFraction: 0.5,
      resin,
    });
    expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code)).toEqual(['not-supported']);
  });

  test('the methods stand side by side with their spread, and the one that cannot answer is named', () => {
    const outcome = spreadOverMethods({ layup: 'mat', fibreMassFraction: 0.3, resin });
    if (!outcome.ok) throw new Error('refused');
    const young = outcome.value.properties.find(({ property }) => property === 'youngAlongMPa');
    expect(young?.values.map(({ method }) => method)).toEqual([
      'small-craft-yardstick',
      'class-bv',
      'class-gl',
      'micromechanics',
    ]);
    expect(young?.spreadFraction).toBeGreaterThan(0.2);
    expect(outcome.value.leftOut.map(({ method }) => method)).toEqual(['class-lr']);
  });

  test('a method of another name is refused with the names there are', () => {
    const outcome = plyProperties(
      JSON.parse(JSON.stringify({ method: 'guess', layup: 'mat', fibreMassFraction: 0.3, resin })),
    );
    expect(outcome.ok ? [] : outcome.problems.map(({ at, code }) => [at, code])).toEqual([
      ['/method', 'not-one-of'],
    ]);
  });
});

describe('the layup of a fabric', () => {
  const resin = constituentSets.bv.resins.epoxy;
  const reinforcements = materialsOf(shippedCatalogue, 'reinforcement');
  const suited = reinforcements.filter(({ suitsResins }) => suitsResins.includes('epoxy'));

  test.each(suited.map((material) => [material.code, material] as const))(
    '%s keeps its glass and its fraction',
    (_, material) => {
      const outcome = layupOf({ material, resin, method: 'class-bv' });
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
      const { arealMassGPerM2, resinGPerM2, fibreMassFraction } = outcome.value;
      expect(arealMassGPerM2).toBeCloseTo(material.arealMassGPerM2.value, 9);
      expect(fibreMassFraction).toBeCloseTo(material.fibreMassFraction.value, 12);
      expect(arealMassGPerM2 / (arealMassGPerM2 + resinGPerM2)).toBeCloseTo(fibreMassFraction, 12);
    },
  );

  test('a biaxial is two layers of fibres by one method and one 0/90 ply at 45 by another', () => {
    const material = reinforcements.find(({ code }) => code === 'reinforcement-biaxial-600')!;
    const byClass = layupOf({ material, resin, method: 'class-gl' });
    const byYardstick = layupOf({ material, resin, method: 'small-craft-yardstick' });
    expect(byClass.ok && byClass.value.plies.map(({ layup, angleDeg }) => [layup, angleDeg])).toEqual([
      ['unidirectional', 45],
      ['unidirectional', -45],
    ]);
    expect(byYardstick.ok && byYardstick.value.plies.map(({ layup, angleDeg }) => [layup, angleDeg])).toEqual(
      [['woven', 45]],
    );
  });

  test('woven cloth is two half plies at right angles where the method has no woven ply', () => {
    const material = reinforcements.find(({ code }) => code === 'reinforcement-cloth-335')!;
    const laid = layupOf({ material, resin, method: 'micromechanics', turnDeg: 10 });
    expect(
      laid.ok && laid.value.plies.map(({ angleDeg, arealMassGPerM2 }) => [angleDeg, arealMassGPerM2]),
    ).toEqual([
      [10, 167.5],
      [100, 167.5],
    ]);
  });

  test('binder-bound mat with epoxy is a contradiction', () => {
    const material = reinforcements.find(({ code }) => code === 'reinforcement-mat-450')!;
    const outcome = layupOf({ material, resin, method: 'class-bv' });
    expect(outcome.ok ? [] : outcome.problems.map(({ code, at }) => [code, at])).toEqual([
      ['contradiction', '/material'],
    ]);
  });
});
