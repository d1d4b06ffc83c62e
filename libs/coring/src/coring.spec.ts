import { describe, expect, test } from '@jest/globals';
import {
  areaMm2,
  difference,
  intersection,
  offset,
  rectangle,
  regionOf,
  translate,
  union,
} from '#lib/geometry';
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

  describe('plywood on a camber', () => {
    const plywood = () =>
      aCoreSheet({
        coreType: 'marine-plywood',
        inPlaneModulusMPa: datum(4300),
        thicknessesMm: [6, 9, 12, 15, 16, 18],
        forms: [{ form: 'plain' }],
        largestPieceM2: datum(0.36),
      });
    const bent = (radiusMm: number, change: Partial<StackRequest> = {}) =>
      stackOf({ core: plywood(), cavityMm: 20, skin: 'relay', camber: { radiusMm }, ...change });

    test('is one sheet where the deck is nearly flat', () => {
      expect(bent(60_000).layers.map(({ thicknessMm }) => thicknessMm)).toEqual([18]);
    });

    test('is bedded in thin layers where one sheet neither bends nor would hold, with the reason', () => {
      const { layers, joints, camber } = bent(2500);
      expect(layers.map(({ thicknessMm }) => thicknessMm)).toEqual([6, 6, 6]);
      expect(joints).toBe('staggered');
      expect(camber).toMatchObject({ way: 'bends' });
      expect(camber?.words).toMatch(/6 mm thick .* pressed down .*3 layers .*because .*18 mm .*3\d\d\d mm/);
    });

    test('is cut into short pieces that lie flat where no layer bends so far', () => {
      const { layers, camber } = bent(550);
      expect(layers).toHaveLength(1);
      expect(camber).toMatchObject({ way: 'shorter-pieces', longestFlatPieceMm: 81 });
    });
  });

  test('a cavity higher than any pair takes as few layers as fill it', () => {
    const { layers, check } = stackOf({ cavityMm: 63, skin: 'relay' });
    expect(check.verdict).toBe('holds');
    expect(layers.map(({ thicknessMm }) => thicknessMm)).toEqual([19.1, 19.1, 19.1]);
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
    cavityMm: 14.3,
    sheets: [{ lengthMm: 1220, widthMm: 610 }],
    ...change,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
/** The opening with a lip 120 mm deep all round. */
const deepLip = () => {
  const { label, area } = anOpening();
  return { label, area, undercut: difference(offset([area], 120, 'miter'), [area]) };
};
const datum = (value: number) => ({ value, cite: { source: 'FROM-MEMORY' } });
const regionsOf = (pieces: ReturnType<typeof mosaic>['pieces']) =>
  pieces.map(({ outline, holes }) => regionOf(outline, holes));

describe('the mosaic', () => {
  test('a lip 60 mm deep is filled, and what is open is one piece of what one bed holds', () => {
    const { pieces, solidFills, division } = mosaic();
    expect(pieces).toHaveLength(1);
    expect(pieces[0].areaM2).toBeCloseTo(0.45, 2);
    expect(division.limitedBy).toBe('nothing');
    // 60 x 550 mm forward of the opening and 900 x 50 mm along it.
    expect(solidFills.map(({ areaM2 }) => areaM2)).toEqual([expect.closeTo(0.06 * 0.55 + 0.9 * 0.05, 6)]);
    expect(solidFills[0]).toMatchObject({ because: 'shallow-lip', isUnderLip: true, depthMm: 14.3 });
    expect(solidFills[0].volumeL).toBeCloseTo(0.078 * 14.3, 6);
  });

  test('a strip of plywood 2.41 x 0.23 m takes two lengths, its joint off the beam', () => {
    const strip = { label: 'A', area: { outer: rectangle(0, 0, 2410, 230), holes: [] }, undercut: [] };
    const { pieces, jointOnSupportM } = mosaic({
      openings: [strip],
      core: aCoreSheet({ allowedTurnsDeg: [0, 180], largestPieceM2: datum(0.36) }),
      sheets: [{ lengthMm: 2440, widthMm: 1220 }],
      supports: [{ from: [1205, -100], to: [1205, 400] }],
    });
    expect(pieces).toHaveLength(2);
    expect(jointOnSupportM).toBe(0);
    const joint = Math.max(...pieces[0].outline.map(([x]) => x)) + 1;
    expect(Math.abs(joint - 1205)).toBeGreaterThanOrEqual(15);
  });

  describe('of joints only those across the grain are butts:', () => {
    // 1.6 x 0.8 m in four pieces of 0.8 x 0.4 m or the like: one joint along, joints across of 0.8 m in all.
    const sole = { label: 'A', area: { outer: rectangle(0, 0, 1600, 800), holes: [] }, undercut: [] };
    const divided = (allowedTurnsDeg: readonly number[], grainDeg: number) =>
      mosaic({
        openings: [sole],
        core: aCoreSheet({ allowedTurnsDeg, largestPieceM2: datum(0.36) }),
        sheets: [{ lengthMm: 1000, widthMm: 500 }],
        grainDeg,
      });

    test.each([0, 180])('grain at %d deg: the joint along it is none', (grainDeg) => {
      const { pieces, jointLengthM, buttLengthM } = divided([0, 180], grainDeg);
      expect(pieces).toHaveLength(4);
      expect(jointLengthM).toBeCloseTo(1.6 + 0.8, 6);
      expect(buttLengthM).toBeCloseTo(0.8, 6);
    });

    test('grain turned a quarter: the long joint is a butt', () => {
      const { pieces, jointLengthM, buttLengthM } = divided([0, 180], 90);
      // Along 800 mm one sheet is long enough: four lengths of 400 mm side by side, no butt.
      expect(pieces).toHaveLength(4);
      expect(jointLengthM).toBeCloseTo(3 * 0.8, 6);
      expect(buttLengthM).toBe(0);
    });

    test('core without grain in its plane has none', () => {
      const { jointLengthM, buttLengthM } = divided([], 0);
      expect(jointLengthM).toBeGreaterThan(0);
      expect(buttLengthM).toBe(0);
    });
  });

  test('a piece comes out of one sheet', () => {
    const wide = { label: 'A', area: { outer: rectangle(0, 0, 1500, 250), holes: [] }, undercut: [] };
    const { pieces, division } = mosaic({ openings: [wide] });
    expect(pieces).toHaveLength(2);
    expect(division.limitedBy).toBe('sheet');
  });

  test.each([
    [20, 'paste'],
    [30, 'solid-laminate'],
    [60, 'high-density-strip'],
  ])('a slot %d mm wide takes no core: %s', (widthMm, kind) => {
    const slot = { label: 'A', area: { outer: rectangle(0, 0, 800, widthMm), holes: [] }, undercut: [] };
    const { pieces, solidFills } = mosaic({ openings: [slot] });
    expect(pieces).toEqual([]);
    expect(solidFills).toHaveLength(1);
    expect(solidFills[0]).toMatchObject({ kind, because: 'narrow', isUnderLip: false });
    expect(solidFills[0].widthMm).toBeCloseTo(widthMm, 0);
  });

  test('75 mm of paste in 12.7 mm core is 0.95 l a metre and goes in in two lifts, 25 mm is 0.32 l and goes in at once', () => {
    const lifts = (widthMm: number) =>
      mosaic({
        cavityMm: 12.7,
        openings: [{ label: 'A', area: { outer: rectangle(0, 0, 1000, widthMm), holes: [] }, undercut: [] }],
      }).solidFills.map((fill) => [fill.volumeL.toFixed(2), fill.lifts]);
    expect(lifts(74.9)).toEqual([['0.95', 2]]);
    expect(lifts(25)).toEqual([['0.32', 1]]);
  });

  test('pieces, joints and solid places are the cavity; no piece overlaps another', () => {
    const { pieces, solidFills, jointAreaM2, solidAreaM2, netAreaM2, regionAreaM2 } = mosaic({
      openings: [deepLip()],
    });
    const regions = regionsOf(pieces);
    const covered = union(...regions);
    expect(areaMm2(covered)).toBeCloseTo(netAreaM2 * 1e6, 0);
    expect(areaMm2(difference(covered, union([deepLip().area], deepLip().undercut)))).toBeLessThan(0.01);
    expect(solidFills).toEqual([]);
    expect(Math.abs(netAreaM2 + jointAreaM2 + solidAreaM2 - regionAreaM2) * 1e6).toBeLessThan(1);
  });

  test('every piece under a deep lip is lowered inside the opening and slides to its place without meeting another', () => {
    const { pieces, findings } = mosaic({ openings: [deepLip()] });
    const opening = [deepLip().area];
    let free = union(opening, deepLip().undercut);
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
    expect(
      Math.max(...pieces.filter(({ isUnderLip }) => isUnderLip).map(({ areaM2 }) => areaM2)),
    ).toBeLessThanOrEqual(0.046 * 1.25);
    expect(Math.max(...pieces.map(({ areaM2 }) => areaM2))).toBeGreaterThan(0.1);
  });

  test('pieces under the lip are bedded before the field, and labels follow the bedding order', () => {
    const { pieces } = mosaic({ openings: [deepLip()] });
    const ways = pieces.map(({ isUnderLip }) => isUnderLip);
    expect(ways).toEqual([...ways].sort((a, b) => Number(b) - Number(a)));
    expect(ways).toContain(false);
    expect(pieces.map(({ label }) => label)).toEqual(pieces.map((_, k) => `A${k + 1}`));
  });

  test('a lip that nothing goes under is filled, and the finding says so once', () => {
    const slit = { label: 'A', area: { outer: rectangle(0, 0, 500, 110), holes: [] } };
    const { pieces, findings, solidFills } = mosaic({
      openings: [{ ...slit, undercut: difference(offset([slit.area], 150, 'miter'), [slit.area]) }],
    });
    expect(pieces.every(({ entry }) => entry?.way === 'drops')).toBe(true);
    expect(solidFills.some(({ because }) => because === 'no-way-in')).toBe(true);
    expect(findings.filter(({ code }) => code === 'filled-solid')).toHaveLength(1);
    expect(findings.map(({ code }) => code)).toContain('much-filled-solid');
  });

  test('a deck of 3 m2 is bedded bay by bay', () => {
    const deck = { label: 'A', area: { outer: rectangle(0, 0, 3000, 1000), holes: [] }, undercut: [] };
    const { pieces } = mosaic({ openings: [deck], sheets: [{ lengthMm: 2440, widthMm: 1220 }] });
    const bays = [1, 2, 3, 4].map((bay) =>
      pieces.filter((piece) => piece.bay === bay).reduce((sum, { areaM2 }) => sum + areaM2, 0),
    );
    expect(Math.max(...bays)).toBeLessThanOrEqual(1.25);
    expect(Math.min(...bays)).toBeGreaterThan(0.4);
    expect(pieces.map(({ bay }) => bay)).toEqual([...pieces.map(({ bay }) => bay)].sort());
  });

  test('joints of two layers do not lie over each other', () => {
    const deck = { label: 'A', area: { outer: rectangle(0, 0, 1600, 900), holes: [] }, undercut: [] };
    const { pieces } = mosaic({
      openings: [deck],
      layers: [
        { thicknessMm: 12.7, form: 'plain' },
        { thicknessMm: 12.7, form: 'plain' },
      ],
    });
    const inner = offset([deck.area], -5);
    const layer = (number: number) => regionsOf(pieces.filter((piece) => piece.layer === number));
    const gaps = [1, 2].map((number) => difference(inner, union(...layer(number))));
    expect(areaMm2(gaps[0])).toBeGreaterThan(1000);
    expect(areaMm2(intersection(gaps[0], gaps[1]))).toBeLessThan(0.1 * areaMm2(gaps[0]));
  });

  test('core without a grain in its plane gets no direction, core with one does', () => {
    expect(mosaic({ core: aCoreSheet({ allowedTurnsDeg: [] }) }).pieces[0].grainDeg).toBeUndefined();
    expect(mosaic({ grainDeg: 30 }).pieces[0].grainDeg).toBe(30);
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
    expect(utilisation).toBeCloseTo(0.447 / 0.744, 2);
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
      expect.arrayContaining(['/mosaicRules/jointGapMm', '/kerfMm', '/keepFromMm', '/sheets']),
    );
  });
});

describe('the number of pieces', () => {
  const sheets = [
    { lengthMm: 1220, widthMm: 610, cost: 50 },
    { lengthMm: 2440, widthMm: 1220, cost: 160 },
  ];
  const wide = { label: 'A', area: { outer: rectangle(0, 0, 1000, 640), holes: [] }, undercut: [] };
  const largest = { largestPieceM2: datum(0.7) };

  test('a piece that asks for a dearer sheet is cut in two where that costs less than the hours', () => {
    const {
      mosaic: divided,
      division,
      cost,
    } = bill({
      openings: [wide],
      sheets,
      hourCost: 50,
      core: aCoreSheet(largest),
    });
    expect(divided.pieces).toHaveLength(2);
    expect(cost).toBeLessThan(160);
    expect(division.words).toContain('cheaper sheets');
    expect(division.options[0]).toMatchObject({ pieces: 1, sheetCost: 160 });
  });

  test('where an hour costs more than the sheet saves, it stays whole', () => {
    const { mosaic: divided, division } = bill({
      openings: [wide],
      sheets,
      hourCost: 2000,
      core: aCoreSheet(largest),
    });
    expect(divided.pieces).toHaveLength(1);
    expect(division.chosen).toBe(0);
  });

  test('an opening that is filled solid throughout buys no sheet', () => {
    const slot = { label: 'A', area: { outer: rectangle(0, 0, 700, 50), holes: [] }, undercut: [] };
    const { sheetCount, mosaic: none, wasteFraction } = bill({ openings: [slot] });
    expect(sheetCount).toBe(0);
    expect(none.pieces).toEqual([]);
    expect(none.solidVolumeL).toBeCloseTo((0.7 * 50 * 0.0143 * 1000) / 1000, 2);
    expect(wasteFraction).toBeUndefined();
  });

  test('sheets narrower than the narrowest core are refused, not filled around', () => {
    const outcome = coreBill({
      openings: [wide],
      cavityMm: 14.3,
      core: aCoreSheet(),
      sheets: [{ lengthMm: 120, widthMm: 60, cost: 5 }],
    });
    expect(outcome).toMatchObject({ ok: false, problems: [{ code: 'not-supported', at: '/sheets' }] });
  });
});
