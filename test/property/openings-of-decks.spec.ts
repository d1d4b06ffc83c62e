import { describe, expect, test } from '@jest/globals';
import { aCoreSheet } from '../support/core-sample.js';
import { areaMm2, difference, interiorPoint, offset, perimeterMm, regionOf, union } from '#lib/geometry';
import { cutMosaic, type Mosaic } from '#lib/coring';
import { conflictsOf } from './bedding-checker.js';
import { openingsOfDecks, type OpeningOfDeck } from './openings-of-decks.js';

const seed = 20_261_130;
const MM2_PER_M2 = 1e6;
const ONE_CM2 = 100;

const cut = ({ supports, longestSideMm, form, ...opening }: OpeningOfDeck): Mosaic => {
  const outcome = cutMosaic({
    openings: [opening],
    supports,
    core: aCoreSheet(),
    layers: [{ thicknessMm: 12.7, form }],
    cavityMm: 14.3,
    sheets: [{ lengthMm: 1220, widthMm: 610 }],
    ...(longestSideMm === undefined ? {} : { longestSideMm }),
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

describe('300 openings of round, tapered and bent shapes, over beams, with camber and with core that stays', () => {
  const cases = openingsOfDecks(seed, 300).map((opening, k) => {
    const mosaic = cut(opening);
    const parts = [...mosaic.pieces, ...mosaic.solidFills].map(({ outline, holes }) =>
      regionOf(outline, holes),
    );
    return {
      k,
      opening,
      mosaic,
      cavity: union(difference([opening.area], opening.staying), opening.undercut),
      covered: union(...parts),
      sumMm2: parts.reduce((all, part) => all + areaMm2(part), 0),
    };
  });

  test('hold what they are said to hold', () => {
    const count = (holds: (opening: OpeningOfDeck) => boolean): number =>
      cases.filter(({ opening }) => holds(opening)).length;
    expect(count(({ staying }) => staying.length > 0)).toBeGreaterThan(40);
    expect(count(({ supports }) => supports.length > 0)).toBeGreaterThan(60);
    expect(count(({ longestSideMm }) => longestSideMm !== undefined)).toBeGreaterThan(60);
    expect(count(({ undercut }) => undercut.length > 0)).toBeGreaterThan(100);
  });

  test('pieces, joints and what is filled solid are the cavity to 1 mm2', () => {
    const errors = cases.map(({ k, cavity, covered, sumMm2, mosaic }) => {
      const balanceMm2 = Math.abs(sumMm2 + mosaic.jointAreaM2 * MM2_PER_M2 - areaMm2(cavity));
      const outsideMm2 = areaMm2(difference(covered, cavity));
      // The kernel counts in micrometres: each operation may move an edge by half of one.
      const allowedMm2 = Math.max(1, perimeterMm(cavity) * 0.0005);
      return { k, error: Math.max(balanceMm2, outsideMm2), allowedMm2 };
    });
    expect(errors.filter(({ error, allowedMm2 }) => error > allowedMm2)).toEqual([]);
  });

  test('no two pieces or places overlap', () => {
    const overlaps = cases.map(({ sumMm2, covered }) => sumMm2 - areaMm2(covered));
    expect(Math.max(...overlaps)).toBeLessThan(1);
  });

  test('nothing above 1 cm2 is left bare in silence: what no piece covers is filled, and the filling is a finding', () => {
    const bare = cases.flatMap(({ k, cavity, covered }) =>
      // Half a joint runs round every piece: grown by it, pieces and places must close up.
      difference(cavity, offset(covered, 2.1, 'miter'))
        .filter((polygon) => areaMm2([polygon]) > ONE_CM2)
        .map(() => k),
    );
    expect(bare).toEqual([]);
    const silent = cases.filter(
      ({ mosaic: { solidFills, findings } }) =>
        solidFills.some(({ areaM2 }) => areaM2 * MM2_PER_M2 > ONE_CM2) &&
        !findings.some(({ code }) => code === 'filled-solid'),
    );
    expect(silent.map(({ k }) => k)).toEqual([]);
  });

  test('no piece is narrower or smaller than the least, and none is longer than the camber allows', () => {
    for (const { opening, mosaic } of cases) {
      for (const { outline, holes, entry, areaM2 } of mosaic.pieces) {
        const widthMm = 2 * (interiorPoint(regionOf(outline, holes))?.clearanceMm ?? 0);
        // The largest circle is found to 1 % of the piece's own width.
        expect(widthMm).toBeGreaterThan(0.99 * (entry?.way === 'slides' ? 100 : 40));
        expect(areaM2).toBeGreaterThanOrEqual(0.0025);
        const ys = outline.map(([, y]) => y);
        if (opening.longestSideMm !== undefined)
          expect(Math.max(...ys) - Math.min(...ys)).toBeLessThan(opening.longestSideMm + 1);
      }
    }
  });

  test('played through in their order, no piece meets another, a solid place, core that stays or the wall', () => {
    const conflicts = cases.flatMap(({ k, opening, mosaic }) =>
      conflictsOf(mosaic, opening).map((one) => `${k}: ${one}`),
    );
    expect(conflicts).toEqual([]);
  });
});
