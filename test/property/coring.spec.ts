import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { areaMm2, difference, offset, regionOf, union } from '#lib/geometry';
import { coreBill, cutMosaic, planStack } from '#lib/coring';
import { aCoreSheet } from '../support/core-sample.js';

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

describe('any opening', () => {
  test('pieces lie inside the cavity, apart from each other, cover it but for gaps, and each has a way in', () => {
    fc.assert(
      fc.property(openings, fc.boolean(), (opening, isScored) => {
        const outcome = cutMosaic({
          openings: [opening],
          core: aCoreSheet(),
          layers: [{ thicknessMm: 12.7, form: isScored ? 'scored' : 'plain' }],
          isFlat: true,
        });
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
        const regions = outcome.value.pieces.map(({ outline, holes }) => regionOf(outline, holes));
        const cavity = union([opening.area], opening.undercut);
        const covered = union(...regions);
        expect(areaMm2(difference(covered, cavity))).toBeLessThan(1);
        expect(
          Math.abs(areaMm2(covered) - regions.reduce((sum, region) => sum + areaMm2(region), 0)),
        ).toBeLessThan(1);
        expect(areaMm2(covered) / areaMm2(cavity)).toBeGreaterThan(0.93);
        expect(outcome.value.pieces.filter(({ entry }) => entry === undefined)).toEqual([]);
        expect(new Set(outcome.value.pieces.map(({ label }) => label)).size).toBe(
          outcome.value.pieces.length,
        );
      }),
      { seed, numRuns: 15, verbose: 1 },
    );
  });

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
