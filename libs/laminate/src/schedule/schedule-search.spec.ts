import { describe, expect, test } from '@jest/globals';
import { materialsOf, shippedCatalogue, type Reinforcement } from '#lib/catalogue';
import { constituentSets } from '../ply/constituents.js';
import type { ScheduleRequest } from './schedule-request.js';
import { searchSchedules } from './schedule-search.js';
import { measureSkin } from '../theory/skin.js';
import { layupOf } from '../theory/layup.js';

const fabrics = materialsOf(shippedCatalogue, 'reinforcement');
const fabric = (code: string): Reinforcement => {
  const found = fabrics.find((material) => material.code === `reinforcement-${code}`);
  if (found === undefined) throw new Error(`no ${code}`);
  return found;
};
const { polyester, epoxy } = constituentSets.bv.resins;
const offers = (...codes: readonly string[]) => codes.map((code) => ({ material: fabric(code) }));
const search = (request: Partial<ScheduleRequest>) => {
  const outcome = searchSchedules({
    oldSkin: { thicknessMm: 3 },
    fabrics: offers('cloth-335', 'woven-roving-600', 'mat-450'),
    resin: polyester,
    ...request,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const panel = {
  core: { thicknessMm: 12.7, youngMPa: 98 },
  otherSkin: { thicknessMm: 2, alongNPerMm: 18_000, acrossNPerMm: 18_000 },
};

describe('the search for a relaid skin', () => {
  test('a skin of known plies can always be laid again from the same fabrics', () => {
    const old = ['mat-450', 'woven-roving-600', 'mat-450'].map((code) => ({ material: fabric(code) }));
    const plies = old.flatMap((ply) => {
      const laid = layupOf({ ...ply, resin: polyester, method: 'class-bv' });
      return laid.ok ? laid.value.plies : [];
    });
    const { thicknessMm } = measureSkin(plies);
    const found = search({
      oldSkin: { thicknessMm, plies: old, resin: polyester },
      panel,
      flush: { proudUpToMm: 0, lowUpToMm: 0 },
    });
    expect(found.outcome).toBe('found');
    // With no difference of level allowed, only the same plies fit, and every ratio is one.
    expect(found.best[0].plies.map(({ material }) => material).sort()).toEqual([
      'reinforcement-mat-450',
      'reinforcement-mat-450',
      'reinforcement-woven-roving-600',
    ]);
    expect(found.best[0].checks.find(({ check }) => check === 'stiffness-along')?.utilisation).toBeCloseTo(
      1,
      9,
    );
  });

  test('every check of every skin found passes, and the surface is flush', () => {
    const { best } = search({ panel });
    expect(best).toHaveLength(3);
    for (const { checks, proudMm } of best) {
      expect(checks.filter(({ verdict }) => verdict === 'fails')).toEqual([]);
      expect(proudMm).toBeLessThanOrEqual(0.5);
      expect(proudMm).toBeGreaterThanOrEqual(-1);
    }
  });

  test('roving never lies against the core nor prints through the outer ply', () => {
    for (const { plies } of search({ panel }).best) {
      expect(plies[0].material).not.toBe('reinforcement-woven-roving-600');
      expect(plies.at(-1)?.material).not.toBe('reinforcement-woven-roving-600');
    }
  });

  test('the skins are ranked by price and the runners-up say what they lose by', () => {
    const found = search({
      fabrics: ['cloth-335', 'woven-roving-600', 'mat-450'].map((code, i) => ({
        material: fabric(code),
        pricePerM2: 4 + 3 * i,
      })),
    });
    const prices = found.best.map(({ pricePerM2 }) => pricePerM2 ?? 0);
    expect(prices).toEqual([...prices].sort((a, b) => a - b));
    expect(found.rankedBy).toBe('price');
    expect(found.best[1].lost).toMatchObject({ by: 'price' });
    expect(found.best[0].lost).toBeUndefined();
  });

  test('a guessed old skin says so and gives its spread', () => {
    const { oldSkin, assumptions } = search({});
    expect(oldSkin.isGuessed).toBe(true);
    expect(oldSkin.alongLowNPerMm).toBeLessThan(oldSkin.alongNPerMm);
    expect(oldSkin.alongHighNPerMm).toBeGreaterThan(oldSkin.alongNPerMm);
    expect(assumptions.map(({ at }) => at)).toEqual(
      expect.arrayContaining(['/method', '/oldSkin/plies', '/oldSkin/resin', '/flush']),
    );
  });

  test('binder-bound mat is left out with epoxy, and tapes are left out of a field', () => {
    const { leftOut } = search({ fabrics: offers('cloth-335', 'mat-450', 'tape-plain-300'), resin: epoxy });
    expect(leftOut.map(({ material }) => material)).toEqual([
      'reinforcement-mat-450',
      'reinforcement-tape-plain-300',
    ]);
  });

  test('what cannot be done says which demand nothing meets', () => {
    const { outcome, best, missing } = search({
      fabrics: offers('unidirectional-300'),
      oldSkin: { thicknessMm: 6 },
    });
    expect([outcome, best.length]).toEqual(['cannot-be-done', 0]);
    expect(missing?.metByNone.length).toBeGreaterThan(0);
    expect(missing?.words[0]).toMatch(/no stack meets/);
  });

  test('roving alone cannot be laid against a core: the order is what is missing', () => {
    const { missing } = search({ fabrics: offers('woven-roving-600') });
    expect(missing?.reports.find(({ constraint }) => constraint === 'order')?.soleObstacleOf).toBeGreaterThan(
      0,
    );
  });

  test('a thinner new core is made up for by the skin or refused, never passed over', () => {
    const thin = search({ panel: { ...panel, newCore: { thicknessMm: 9, youngMPa: 98 } } });
    const same = search({ panel });
    expect(
      thin.outcome === 'cannot-be-done' || thin.best[0].thicknessMm.value > same.best[0].thicknessMm.value,
    ).toBe(true);
  });

  test('thickness and resin of the best skin answer why, down to the catalogue', () => {
    const [first] = search({}).best;
    const layers = first.plies.reduce((sum, ply) => sum + ply.thicknessMm, 0);
    expect(first.thicknessMm.value).toBeCloseTo(layers, 9);
    expect(first.resinGPerM2.value).toBeCloseTo(
      first.plies.reduce((sum, ply) => sum + ply.resinGPerM2, 0),
      6,
    );
    expect(JSON.stringify(first.thicknessMm.origin)).toContain('"kind":"catalogue"');
  });

  test('methods without strengths refuse to restore strength', () => {
    const outcome = searchSchedules({
      oldSkin: { thicknessMm: 3 },
      fabrics: offers('cloth-335'),
      resin: polyester,
      method: 'class-gl',
    });
    expect(outcome.ok ? [] : outcome.problems.map(({ at, code }) => [at, code])).toEqual([
      ['/method', 'not-supported'],
    ]);
  });

  test('where the taper has no room for the steps of more plies, the answer says so', () => {
    const { mostPlies, missing } = search({ fabrics: offers('cloth-200'), limits: { smallestStepMm: 18 } });
    expect(mostPlies).toBe(2);
    expect(missing?.words.at(-1)).toMatch(/room for the steps of 2 plies/);
  });

  const stock = fabrics
    .filter(({ fabric: kind, suitsResins }) => kind !== 'tape' && suitsResins.includes('epoxy'))
    .map((material) => ({ material }));
  const thick = { ...panel, core: { thicknessMm: 20, youngMPa: 98 } };

  // 20 mm of taper on 0.8 mm is 25:1, with room for four steps of 5 mm; 12:1 has room for one (9.6 / 5).
  test.each([[0.5], [0.8], [1.2], [8], [10]])(
    'a skin of %d mm is given back without a word about taper or plies',
    (thicknessMm) => {
      const found = search({ oldSkin: { thicknessMm }, fabrics: stock, resin: epoxy, panel: thick });
      expect([
        found.outcome,
        found.best.every(({ checks }) => checks.every(({ verdict }) => verdict === 'passes')),
      ]).toEqual(['found', true]);
    },
  );

  test('the taper of a thin skin is 20 mm wide, and says so; one that was asked for is kept', () => {
    const thin = search({ oldSkin: { thicknessMm: 0.8 }, fabrics: stock, resin: epoxy });
    expect(thin.assumptions.find(({ at }) => at === '/limits/taperRatio')?.value).toBe('25.0:1, 20 mm wide');
    expect(thin.mostPlies).toBe(4);
    expect(
      search({ oldSkin: { thicknessMm: 0.8 }, fabrics: stock, resin: epoxy, limits: { taperRatio: 12 } })
        .mostPlies,
    ).toBe(1);
  });

  test('a skin that no number of plies fills says how far they come', () => {
    const { outcome, missing } = search({
      oldSkin: { thicknessMm: 19 },
      fabrics: stock,
      resin: epoxy,
      panel: thick,
    });
    expect(outcome).toBe('cannot-be-done');
    expect(missing?.words.join(' ')).toMatch(
      /12 plies of the thickest fabric come to 1\d\.\d mm, and the skin must have 18\.0 mm at least/,
    );
  });

  test('a skin thicker than the rest of the deck is a contradiction', () => {
    const outcome = searchSchedules({
      oldSkin: { thicknessMm: 20 },
      fabrics: offers('cloth-335'),
      resin: polyester,
      panel,
    });
    expect(outcome.ok ? [] : outcome.problems.map(({ at, code }) => [at, code])).toEqual([
      ['/oldSkin/thicknessMm', 'contradiction'],
    ]);
  });

  test('every fault of a request is said at once', () => {
    const outcome = searchSchedules({
      oldSkin: { thicknessMm: Number.NaN },
      fabrics: [{ material: fabric('cloth-335'), pricePerM2: -1 }, { material: fabric('mat-450') }],
      resin: { ...polyester, poissonRatio: 0.5 },
      limits: { mostPlies: 0.5 },
      panel: { ...panel, core: { thicknessMm: -3, youngMPa: 98 } },
    });
    expect(outcome.ok ? [] : outcome.problems.map(({ at }) => at).sort()).toEqual([
      '/fabrics/0/pricePerM2',
      '/fabrics/1/pricePerM2',
      '/limits/mostPlies',
      '/oldSkin/thicknessMm',
      '/panel/core/thicknessMm',
      '/resin/poissonRatio',
    ]);
  });
});
