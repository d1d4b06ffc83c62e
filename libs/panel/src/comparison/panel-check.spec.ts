import { describe, expect, test } from '@jest/globals';
import { detailOf, randomStream } from '#lib/kernel';
import {
  keptPlates,
  panelAnswer,
  panelCheck,
  restorationOf,
  type PanelCheck,
  type PanelCheckRequest,
  type SkinValues,
} from '../index.js';

const skin = (thicknessMm: number): SkinValues => ({
  thicknessMm,
  modulusXMPa: 12000,
  modulusYMPa: 11000,
  shearModulusMPa: 3000,
  poissonXY: 0.2,
  tensileStrengthMPa: 150,
  compressiveStrengthMPa: 130,
});
const balsa = {
  coreType: 'end-grain-balsa',
  thicknessMm: 12.7,
  shearModulusMPa: 129,
  shearStrengthMPa: 2.33,
  compressiveModulusMPa: 3255,
  compressiveStrengthMPa: 10.3,
  inPlaneModulusMPa: 98,
} as const;
const deck: PanelCheckRequest = {
  panel: { lengthXMm: 900, widthYMm: 600 },
  asBuilt: { outer: skin(3), inner: skin(2), core: balsa },
  repaired: { outer: skin(3), inner: skin(2), core: balsa },
};

const checked = (request: PanelCheckRequest): PanelCheck => {
  const outcome = panelCheck(request);
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join('\n'));
  return outcome.value;
};
const faults = (request: PanelCheckRequest): readonly (readonly [string, string])[] => {
  const outcome = panelCheck(request);
  return outcome.ok ? [] : outcome.problems.map(({ at, code }) => [at, code]);
};

describe('the four states side by side', () => {
  test('a deck put back as it was is restored, every ratio 1', () => {
    const { verdict, ratios, shortfalls } = checked(deck);
    expect(verdict).toBe('restored');
    expect(shortfalls).toEqual([]);
    for (const { ratio } of ratios) expect(ratio).toBeCloseTo(1, 12);
  });

  test('foam in place of balsa is softer and weaker in shear, and the answer says by how much', () => {
    const foam = {
      ...balsa,
      coreType: 'cross-linked-foam',
      shearModulusMPa: 23.7,
      shearStrengthMPa: 0.83,
      compressiveModulusMPa: 65,
      compressiveStrengthMPa: 0.95,
      inPlaneModulusMPa: 65,
    } as const;
    const { verdict, shortfalls } = checked({ ...deck, repaired: { ...deck.repaired, core: foam } });
    expect(verdict).toBe('not-restored');
    expect(shortfalls.some((text) => text.startsWith('Stiffness'))).toBe(true);
    expect(shortfalls.some((text) => text.startsWith('Shear in the core'))).toBe(true);
  });

  test('a limit that the deck as built misses as well is told apart from one that the repair misses', () => {
    const soft = { ...deck, panel: { lengthXMm: 1800, widthYMm: 1500 } };
    const deflectionOf = (request: PanelCheckRequest) =>
      checked(request).states[3].checks.find(
        ({ code, load }) => code === 'deflection' && load === 'class-deck',
      );
    expect(deflectionOf(soft)).toMatchObject({
      verdict: 'fails',
      asBuilt: { verdict: 'fails', isNoWorse: true },
    });
    expect(deflectionOf({ ...soft, repaired: { ...soft.repaired, outer: skin(2) } })).toMatchObject({
      verdict: 'fails',
      asBuilt: { verdict: 'fails', isNoWorse: false },
    });
    expect(checked(soft).states[0].checks.every(({ asBuilt }) => asBuilt === undefined)).toBe(true);
  });

  test('a search is told of each repair what the whole check says of it, and a shortfall never reads as 100 %', () => {
    const judge = restorationOf(deck, keptPlates());
    for (const outerMm of [2, 2.9999, 3, 4]) {
      const repaired = { ...deck.repaired, outer: skin(outerMm) };
      const { shortfalls, ratios } = checked({ ...deck, repaired });
      expect(judge.ok ? judge.value.judge(repaired) : undefined).toEqual({
        // The search is strict; the whole check names what hands could tell.
        shortfalls: expect.arrayContaining([...shortfalls]),
        tellable: shortfalls,
        leastRatio: Math.min(...ratios.map(({ ratio }) => ratio)),
      });
      expect(shortfalls.join()).not.toMatch(/: 100 %/);
    }
  });

  test('what falls short by the section alone is never more than what falls short of the whole check', () => {
    const outcome = restorationOf(deck, keptPlates());
    if (!outcome.ok) throw new Error('refused');
    const random = randomStream(15);
    const between = (low: number, high: number): number => low + (high - low) * random();
    const counts = Array.from({ length: 60 }, () => {
      const { core } = deck.repaired;
      const repaired = {
        outer: skin(between(1, 6)),
        inner: skin(between(1, 4)),
        core: { ...core, compressiveModulusMPa: core.compressiveModulusMPa * between(0.2, 3) },
      };
      return [outcome.value.fewestShort(repaired), outcome.value.judge(repaired).shortfalls.length];
    });
    expect(counts.filter(([fewest, all]) => fewest > all)).toEqual([]);
    expect(counts.some(([fewest, all]) => fewest > 0 && fewest < all)).toBe(true);
  });

  test('rot takes stiffness, opening takes nearly all of it', () => {
    const [built, found, opened] = checked(deck).states.map(
      ({ responses }) => responses[0].linearDeflectionMm,
    );
    expect(found).toBeGreaterThan(built);
    expect(opened).toBeGreaterThan(50 * built);
  });

  test('a core that has let go leaves the skins to bend apart, and says that shear cannot be established', () => {
    const found = checked({
      ...deck,
      panel: { lengthXMm: 200, widthYMm: 150 },
      loads: [{ kind: 'class-deck' }],
      asFound: { stiffnessFraction: 0, strengthFraction: 0 },
    }).states[1];
    expect(found.responses[0].working).toBe('separate-skins');
    expect(found.checks.find(({ code }) => code === 'core-shear')?.verdict).toBe('not-established');
  });

  test('every default is named with its source', () => {
    const fields = checked(deck).assumptions.map(({ at }) => at);
    for (const at of [
      '/panel/edges',
      '/asFound/stiffnessFraction',
      '/criteria/skinShare',
      '/criteria/coreShearShare',
      '/opened/clampPressureKPa',
    ])
      expect(fields).toContain(at);
  });

  test('a chainplate is sent to a naval architect or surveyor', () => {
    const { cautions } = checked({
      ...deck,
      fittings: [{ id: 'cp-1', kind: 'chainplate', bolts: 4, boltMm: 10, pullN: 20000 }],
    });
    expect(cautions.find(({ code }) => code === 'highly-loaded-fitting')?.text).toContain('naval architect');
  });

  test('a bolt through bare foam crushes it; the same bolt through a potted hole does not', () => {
    const foam = { ...balsa, coreType: 'cross-linked-foam', compressiveStrengthMPa: 0.95 } as const;
    const bolt = { id: 'b', kind: 'other', bolts: 1, boltMm: 8, torqueNm: 8 } as const;
    const crush = (fitting: NonNullable<PanelCheckRequest['fittings']>[number]) =>
      checked({ ...deck, repaired: { ...deck.repaired, core: foam }, fittings: [fitting] }).fittings.find(
        ({ code }) => code === 'core-crush',
      )?.verdict;
    expect(crush(bolt)).toBe('fails');
    expect(crush({ ...bolt, pottedMm: 25 })).toBe('passes');
  });

  test('what fails says what would make it pass, and that then passes', () => {
    const heavy = {
      ...deck,
      loads: [{ kind: 'patch' as const, forceN: 12000, xMm: 450, yMm: 300, lengthXMm: 60, widthYMm: 60 }],
    };
    const before = checked(heavy).states[3].checks.find(({ code }) => code === 'core-shear');
    expect(before?.verdict).toBe('fails');
    const needed = Number(/a core of ([\d.]+) MPa/.exec(before?.remedy ?? '')?.[1]) * 1.005;
    const core = { ...balsa, shearStrengthMPa: needed };
    expect(
      checked({ ...heavy, repaired: { ...deck.repaired, core } }).states[3].checks.find(
        ({ code }) => code === 'core-shear',
      )?.verdict,
    ).toBe('passes');
  });

  test('the why of a check goes down to what was entered', () => {
    const outcome = panelAnswer({ ...deck, explain: ['repaired:person:core-shear'] });
    const text = JSON.stringify(outcome.ok ? outcome.value.explained : {});
    for (const leaf of ['/repaired/core/shearStrengthMPa', '/repaired/outer/thicknessMm', '/panel/widthYMm'])
      expect(text).toContain(leaf);
  });

  test('an edge moment comes with clamped edges, and the middle is relieved', () => {
    const at = (edges: 'clamped' | 'simply-supported') =>
      checked({ ...deck, panel: { ...deck.panel, edges } }).states[0].responses[0].deflectionMm;
    expect(at('clamped')).toBeLessThan(at('simply-supported'));
  });
});

describe('requests that cannot be answered', () => {
  const skinWith = (change: Partial<SkinValues>): PanelCheckRequest => ({
    ...deck,
    asBuilt: { ...deck.asBuilt, outer: { ...skin(3), ...change } },
  });

  test.each([
    [
      "an impossible pair of Poisson's ratios",
      skinWith({ poissonXY: 1.2 }),
      '/asBuilt/outer/poissonXY',
      'contradiction',
    ],
    ['a negative modulus', skinWith({ modulusXMPa: -1 }), '/asBuilt/outer/modulusXMPa', 'out-of-range'],
    [
      'a modulus that is no number',
      skinWith({ modulusXMPa: Number.NaN }),
      '/asBuilt/outer/modulusXMPa',
      'not-a-number',
    ],
    ['a skin of no thickness', skinWith({ thicknessMm: 0 }), '/asBuilt/outer/thicknessMm', 'out-of-range'],
    [
      'a panel with no support',
      { ...deck, panel: { ...deck.panel, edges: 'free' as const } },
      '/panel/edges',
      'not-supported',
    ],
    [
      'a patch off the panel',
      {
        ...deck,
        loads: [{ kind: 'patch' as const, forceN: 100, xMm: 895, yMm: 300, lengthXMm: 50, widthYMm: 50 }],
      },
      '/loads/0',
      'outside-panel',
    ],
    [
      'an old skin thicker than the deck',
      { ...deck, deckThicknessMm: 2.5 },
      '/asBuilt/outer/thicknessMm',
      'contradiction',
    ],
    [
      'a yardstick without a craft',
      { ...deck, loads: [{ kind: 'yardstick' as const }] },
      '/craft',
      'missing',
    ],
    [
      'a question about a check there is not',
      { ...deck, explain: ['nothing'] },
      '/explain/0',
      'not-supported',
    ],
  ])('%s is named', (_, request, at, code) => {
    const outcome = panelAnswer(request);
    expect(outcome.ok ? [] : outcome.problems.map((one) => [one.at, one.code])).toContainEqual([at, code]);
  });

  test('all faults come at once, and each says what would be right', () => {
    const request = {
      ...skinWith({ modulusXMPa: -1, thicknessMm: 0 }),
      panel: { lengthXMm: -5, widthYMm: 600 },
    };
    expect(faults(request)).toHaveLength(3);
    const outcome = panelCheck(request);
    for (const one of outcome.ok ? [] : outcome.problems) expect(detailOf(one)).not.toContain('not stated');
  });
});
