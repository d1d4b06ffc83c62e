import { describe, expect, test } from '@jest/globals';
import { areaMm2, difference, intersection, regionOf, translate, union } from '#lib/geometry';
import { coreBill, cutMosaic, planStack, type CoreBillRequest, type StackRequest } from './index.js';
import { aCoreSheet, anOpening } from '../../../test/support/core-sample.js';

const stackOf = (change: Partial<StackRequest> = {}) => {
  const outcome = planStack({ cavityMm: 17.5, core: aCoreSheet(), areaM2: 1, ...change });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

describe('the stack', () => {
  test('a cavity of 17.5 mm takes 15.9 mm core on two bond lines near the usual, flush or just below', () => {
    const { layers, bondLine, flush, check } = stackOf();
    expect(layers.map(({ thicknessMm }) => thicknessMm)).toEqual([15.9]);
    expect(bondLine.value).toBeCloseTo(0.8, 9);
    expect(flush.value).toBeCloseTo(0, 9);
    expect(check.verdict).toBe('holds');
  });

  test('core as thick as the whole cavity stands proud by its bond lines, and the next best is named', () => {
    const { check, flush } = stackOf({ cavityMm: 12.7, wantedMm: 12.7 });
    expect(check).toMatchObject({ verdict: 'fails', governs: 'proud', beyondMm: 0.5 });
    expect(check.words).toContain('stands proud by 0.5 mm');
    expect(check.words).toContain('next best: 9.5 mm core');
    expect(flush.value).toBeCloseTo(0.5, 9);
  });

  test('two layers with staggered joints where no single sheet fits', () => {
    const { layers, joints, check } = stackOf({ cavityMm: 40 });
    expect(layers).toHaveLength(2);
    expect(joints).toBe('staggered');
    expect(check.verdict).toBe('holds');
  });

  test('a cavity thinner than any sheet and its bond lines fails, with the nearest named', () => {
    expect(stackOf({ cavityMm: 5 }).check).toMatchObject({ verdict: 'fails', governs: 'proud' });
  });

  test('a gentle camber is followed by plain sheet, a tight one by scored sheet with its kerf resin', () => {
    expect(stackOf({ camber: { radiusMm: 50_000, pieceLengthMm: 200 } }).camber?.way).toBe('lies');
    const tight = stackOf({ camber: { radiusMm: 1500, pieceLengthMm: 220 } });
    expect(tight.camber?.way).toBe('scored');
    expect(tight.layers[0].form).toBe('scored');
    expect(tight.kerfResin?.value).toBeCloseTo((2 / 25 - 1 / 625) * 0.6 * 15.9, 9);
  });

  test('plywood in place of balsa makes the deck heavier, and wet core takes its water along', () => {
    const plan = stackOf({
      core: aCoreSheet({ densityKgPerM3: { value: 550, cite: { source: 'FROM-MEMORY' } } }),
      oldCore: { densityKgPerM3: 150, moistureFraction: 1.5 },
    });
    expect(plan.massChange.value).toBeCloseTo(15.9 * 0.55 - 17.5 * 0.15, 9);
    expect(plan.waterLeaving?.value).toBeCloseTo(17.5 * 0.15 * 1.38, 9);
  });
});

const mosaic = (change: Partial<Parameters<typeof cutMosaic>[0]> = {}) => {
  const outcome = cutMosaic({
    openings: [anOpening()],
    core: aCoreSheet(),
    layers: [{ thicknessMm: 12.7, form: 'plain' }],
    isFlat: true,
    ...change,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const regionsOf = (pieces: ReturnType<typeof mosaic>['pieces']) =>
  pieces.map(({ outline, holes }) => regionOf(outline, holes));

describe('the mosaic', () => {
  test('pieces of plain sheet stay near half a square foot, under the lip and in the field', () => {
    const { pieces } = mosaic();
    expect(Math.max(...pieces.map(({ areaM2 }) => areaM2))).toBeLessThanOrEqual(0.046 * 1.25);
    expect(pieces.length).toBeGreaterThan(8);
  });

  test('a flat deck and scored sheet take larger pieces in the field, hand-sized ones under the lip', () => {
    const { pieces } = mosaic({ layers: [{ thicknessMm: 12.7, form: 'scored' }] });
    expect(
      Math.max(...pieces.filter(({ isUnderLip }) => isUnderLip).map(({ areaM2 }) => areaM2)),
    ).toBeLessThanOrEqual(0.046 * 1.25);
    expect(Math.max(...pieces.map(({ areaM2 }) => areaM2))).toBeGreaterThan(0.1);
  });

  test('pieces and joints together cover the cavity; no piece overlaps another', () => {
    const { pieces } = mosaic();
    const regions = regionsOf(pieces);
    const cavity = union([anOpening().area], anOpening().undercut);
    const covered = union(...regions);
    expect(areaMm2(covered)).toBeCloseTo(
      regions.reduce((sum, region) => sum + areaMm2(region), 0),
      3,
    );
    expect(areaMm2(difference(covered, cavity))).toBeLessThan(0.01);
    expect(areaMm2(covered) / areaMm2(cavity)).toBeGreaterThan(0.96);
  });

  test('every piece under the lip is lowered inside the opening and slides to its place without meeting another', () => {
    const { pieces, findings } = mosaic();
    const opening = [anOpening().area];
    let free = union(opening, anOpening().undercut);
    expect(findings).toEqual([]);
    for (const [k, piece] of pieces.entries()) {
      const region = regionsOf(pieces)[k];
      const path = piece.entry?.path ?? [];
      expect(areaMm2(difference(translate(region, path[0]), opening))).toBeLessThan(1);
      for (let step = 0; step <= 20; step++) {
        for (let leg = 0; leg + 1 < path.length; leg++) {
          const at = [0, 1].map(
            (axis) => path[leg][axis] + (step / 20) * (path[leg + 1][axis] - path[leg][axis]),
          );
          expect(areaMm2(difference(translate(region, [at[0], at[1]]), free))).toBeLessThan(1);
        }
      }
      free = difference(free, region);
    }
    expect(pieces.filter(({ entry }) => entry?.way === 'slides').length).toBeGreaterThan(3);
  });

  test('pieces under the lip are bedded before the field, and labels follow the bedding order', () => {
    const { pieces } = mosaic();
    const ways = pieces.map(({ isUnderLip }) => isUnderLip);
    expect(ways).toEqual([...ways].sort((a, b) => Number(b) - Number(a)));
    expect(pieces.map(({ label }) => label)).toEqual(pieces.map((_, k) => `A${k + 1}`));
  });

  test('joints of two layers do not lie over each other', () => {
    const { pieces } = mosaic({
      layers: [
        { thicknessMm: 12.7, form: 'plain' },
        { thicknessMm: 12.7, form: 'plain' },
      ],
    });
    const layer = (number: number) => regionsOf(pieces.filter((piece) => piece.layer === number));
    const cavity = union([anOpening().area], anOpening().undercut);
    const gaps = [1, 2].map((number) => difference(cavity, union(...layer(number))));
    const both = areaMm2(intersection(gaps[0], gaps[1]));
    expect(both).toBeLessThan(0.4 * areaMm2(gaps[0]));
  });

  test('a joint steps aside from a support that would lie under it', () => {
    const flat = mosaic();
    const [row] = flat.pieces
      .filter(({ isUnderLip }) => !isUnderLip)
      .map(({ outline }) => Math.max(...outline.map(([, y]) => y)) + 1);
    const { jointOnSupportM } = mosaic({ supports: [{ from: [-100, row], to: [1000, row] }] });
    expect(jointOnSupportM).toBeLessThan(0.05);
  });

  test('plain sheet has bleed holes inside each larger piece, scored sheet has none', () => {
    expect(
      mosaic()
        .pieces.filter(({ areaM2 }) => areaM2 > 0.01)
        .every(({ bleedHoles }) => bleedHoles.length > 0),
    ).toBe(true);
    expect(
      mosaic({ layers: [{ thicknessMm: 12.7, form: 'scored' }] }).pieces.flatMap(
        ({ bleedHoles }) => bleedHoles,
      ),
    ).toEqual([]);
  });
});

const bill = (change: Partial<CoreBillRequest> = {}) => {
  const outcome = coreBill({
    openings: [anOpening()],
    cavityMm: 14.3,
    core: aCoreSheet(),
    workUnits: 500,
    ...change,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

describe('the bill of core', () => {
  test('half a square metre of core comes out of one sheet of 1220 x 610 mm', () => {
    const { sheetCount, cuts, utilisation } = bill();
    expect(sheetCount).toBe(1);
    expect(cuts).toHaveLength(1);
    expect(utilisation).toBeGreaterThan(0.65);
  });

  test('pieces, kerf, trim, scraps and rounding to whole sheets add up to the sheets exactly', () => {
    const { waste } = bill({ edgeTrimMm: 6 });
    const { sheetMm2, piecesMm2, kerfMm2, trimMm2, scrapsMm2, roundingMm2 } = waste;
    expect(piecesMm2 + kerfMm2 + trimMm2 + scrapsMm2 + roundingMm2).toBe(sheetMm2);
    expect(Math.min(kerfMm2, trimMm2, scrapsMm2, roundingMm2)).toBeGreaterThanOrEqual(0);
  });

  test("an offcut of one's own of the right thickness saves buying", () => {
    const offcuts = [
      {
        id: 'left-over',
        thicknessMm: 12.7,
        outline: [
          [0, 0],
          [1200, 0],
          [1200, 600],
          [0, 600],
        ] as const,
      },
    ];
    expect(bill({ offcuts }).sheetCount).toBe(0);
    expect(bill({ offcuts: offcuts.map((offcut) => ({ ...offcut, thicknessMm: 9.5 })) }).sheetCount).toBe(1);
  });

  test('a half sheet is taken when it costs less and is enough', () => {
    const sheets = [
      { lengthMm: 2440, widthMm: 1220, cost: 160 },
      { lengthMm: 1220, widthMm: 1220, cost: 90 },
      { lengthMm: 1220, widthMm: 610, cost: 50 },
    ];
    expect(bill({ sheets }).cuts[0].sheets.map(({ stockId }) => stockId)).toEqual(['1220 x 610']);
  });

  test('each default that was used is listed with its source', () => {
    const { assumptions } = bill();
    expect(assumptions.map(({ origin }) => (origin.kind === 'assumed' ? origin.at : ''))).toEqual(
      expect.arrayContaining(['/rules/jointGapMm', '/kerfMm', '/keepFromMm', '/sheets']),
    );
  });
});
