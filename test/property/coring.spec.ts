import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { aCoreSheet } from '../support/core-sample.js';
import { areaMm2, difference, interiorPoint, offset, perimeterMm, regionOf, union } from '#lib/geometry';
import { coreBill, cutMosaic, planStack, type Mosaic } from '#lib/coring';
import { conflictsOf } from './bedding-checker.js';
import { randomOpenings, type RandomOpening } from './random-openings.js';

const seed = 20_261_125;

const openings = fc
  .record({
    length: fc.integer({ min: 250, max: 1400 }),
    width: fc.integer({ min: 200, max: 700 }),
    cut: fc.integer({ min: 0, max: 120 }),
    lip: fc.oneof(fc.constant(0), fc.integer({ min: 10, max: 70 })),
  })
  .map(({ length, width, cut, lip }) => {
    const area = {
      outer: regionOf([
        [0, 0],
        [length, 0],
        [length, width - cut],
        [length - cut, width],
        [0, width],
      ])[0].outer,
      holes: [],
    };
    return { label: 'A', area, undercut: lip === 0 ? [] : difference(offset([area], lip, 'miter'), [area]) };
  });

const cut = (opening: RandomOpening, form: 'plain' | 'scored'): Mosaic => {
  const outcome = cutMosaic({
    openings: [opening],
    core: aCoreSheet(),
    layers: [{ thicknessMm: 12.7, form }],
    cavityMm: 14.3,
    sheets: [{ lengthMm: 1220, widthMm: 610 }],
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

describe('300 random openings', () => {
  const cases = randomOpenings(seed, 300).map((opening, k) => ({
    k,
    opening,
    mosaic: cut(opening, k % 2 === 0 ? 'plain' : 'scored'),
  }));

  test('played through in their order, no piece meets another, a solid place or the wall', () => {
    expect(
      cases.flatMap(({ k, opening, mosaic }) => conflictsOf(mosaic, opening).map((one) => `${k}: ${one}`)),
    ).toEqual([]);
    const slid = cases.flatMap(({ mosaic }) => mosaic.pieces.filter(({ entry }) => entry?.way === 'slides'));
    expect(slid.length).toBeGreaterThan(100);
  });

  test('pieces, joints and solid places are the cavity to 1 mm2, and no two of them overlap', () => {
    const errors = cases.map(({ opening, mosaic }) => {
      const parts = [...mosaic.pieces, ...mosaic.solidFills].map(({ outline, holes }) =>
        regionOf(outline, holes),
      );
      // By construction the undercut begins where the opening ends.
      const cavityMm2 = areaMm2([opening.area]) + areaMm2(opening.undercut);
      const cavity = union([opening.area], opening.undercut);
      const covered = union(...parts);
      const sum = parts.reduce((all, part) => all + areaMm2(part), 0);
      // A joint is 2 mm wide, and half of one runs round the rim: a circle of 8 mm fits nowhere between.
      expect(areaMm2(offset(difference(cavity, covered), -4))).toBe(0);
      expect(Math.abs(sum - areaMm2(covered))).toBeLessThan(1);
      return {
        balanceMm2: Math.abs(sum + mosaic.jointAreaM2 * 1e6 - cavityMm2),
        outsideMm2: areaMm2(difference(covered, cavity)),
        // The kernel counts in micrometres: each operation may move an edge by half of one.
        roundingMm2: perimeterMm(cavity) * 0.0005,
      };
    });
    const worst = errors.map(({ balanceMm2, outsideMm2 }) => Math.max(balanceMm2, outsideMm2));
    // One slot with edges of more than two metres comes to 1.03 mm2; the rounding of its edges alone may be more.
    expect(worst.filter((error) => error >= 1).length).toBeLessThanOrEqual(1);
    for (const [k, { roundingMm2 }] of errors.entries())
      expect(worst[k]).toBeLessThan(Math.max(1, roundingMm2));
  });

  test('no piece is narrower than 40 mm or smaller than 25 cm2, none that is slid is narrower than 100 mm, and none is larger than a hand slides', () => {
    for (const piece of cases.flatMap(({ mosaic }) => mosaic.pieces)) {
      const widthMm = 2 * (interiorPoint(regionOf(piece.outline, piece.holes))?.clearanceMm ?? 0);
      // The largest circle is found to 1 % of the piece's own width.
      expect(widthMm).toBeGreaterThan(0.99 * (piece.entry?.way === 'slides' ? 100 : 40));
      expect(piece.areaM2).toBeGreaterThanOrEqual(0.0025);
      if (piece.entry?.way === 'slides') expect(piece.areaM2).toBeLessThan(1.6 * 0.046);
    }
  });

  test('with the skin off, pieces are as many as bed and sheet ask for, and few over 150 x 300 mm are left small', () => {
    const open = cases.filter(({ opening }) => opening.undercut.length === 0);
    expect(open.length).toBeGreaterThan(60);
    const areas = open.map(({ opening, mosaic }) => ({
      least: Math.ceil(areaMm2([opening.area]) / 1e6 / (0.45 * 1.1)),
      count: mosaic.pieces.length,
    }));
    const sum = (key: 'least' | 'count'): number => areas.reduce((all, one) => all + one[key], 0);
    // Sheets of 1220 x 610 mm and bent outlines ask for more than the area alone.
    expect(sum('count') / sum('least')).toBeLessThan(1.5);
  });
});

describe('any opening', () => {
  test('the waste of its sheets adds up to the sheets exactly, whatever the kerf and the trim', () => {
    fc.assert(
      fc.property(
        openings,
        fc.constantFrom(0, 1, 2.5),
        fc.constantFrom(0, 6.35),
        (opening, kerfMm, edgeTrimMm) => {
          const outcome = coreBill({
            openings: [opening],
            cavityMm: 14.3,
            core: aCoreSheet(),
            workUnits: 20,
            kerfMm,
            edgeTrimMm,
          });
          if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
          for (const { use } of outcome.value.cuts.flatMap(({ sheets }) => sheets)) {
            expect(use.piecesMm2 + use.kerfMm2 + use.trimMm2 + use.scrapsMm2 + use.roundingMm2).toBe(
              use.sheetMm2,
            );
            expect(
              Math.min(use.piecesMm2, use.kerfMm2, use.trimMm2, use.scrapsMm2 + 10, use.roundingMm2),
            ).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      { seed, numRuns: 8, verbose: 1 },
    );
  });
});

describe('any cavity', () => {
  test('the stack that is chosen is never proud when another would be flush', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 60, noNaN: true }), (cavityMm) => {
        const outcome = planStack({ cavityMm, core: aCoreSheet(), areaM2: 1 });
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
        const { check, choices, flush } = outcome.value;
        expect(check.verdict === 'holds').toBe(choices.some(({ fit }) => fit === 'flush'));
        if (check.verdict === 'holds') expect(flush.value).toBeLessThanOrEqual(1e-6);
        if (check.verdict === 'holds') expect(flush.value).toBeGreaterThanOrEqual(-1 - 1e-6);
      }),
      { seed, numRuns: 200, verbose: 1 },
    );
  });
});
