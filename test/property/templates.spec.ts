import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { defaultReader, templateTiles, type Drawing } from '#lib/drawings';

/** Fixed, and printed by fast-check with every failure. */
const seed = 20261130;
const block = { job: 'job', reference: 'ref', made: '2026-03-02', sheet: '1' };

type Place = readonly [number, number];

/**
 * Room for one piece on a page held upright, counted from the paper: 12 mm all round that office printers keep free, 14 mm of
 * heading, 16 mm of foot with the check line, half a millimetre at each edge. Paper sizes: A4 of ISO 216, and US Letter.
 */
const pages = {
  a4: { acrossMm: 210 - 24 - 1, upMm: 297 - 24 - 14 - 16 - 1 },
  letter: { acrossMm: 215.9 - 24 - 1, upMm: 279.4 - 24 - 14 - 16 - 1 },
} as const;
const paper = fc.constantFrom('a4', 'letter');

/** An outline of many kinds that fills its box, with a hole for resin somewhere in the middle of it. */
const piece = (alongMm: fc.Arbitrary<number>, upMm: fc.Arbitrary<number>) =>
  fc
    .record({ along: alongMm, up: upMm, cut: fc.double({ min: 0.1, max: 0.4, noNaN: true }) })
    .map(({ along, up, cut }) => ({
      label: 'A1',
      outline: [
        [0, cut * up],
        [cut * along, 0],
        [along, 0],
        [along, up],
        [0.5 * along, up],
      ] as readonly Place[],
      holes: [],
      grainDeg: 30,
      bleedHoles: [[0.6 * along, 0.5 * up] as Place],
    }));

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const tilesOf = (one: Parameters<typeof templateTiles>[0], on: 'a4' | 'letter'): readonly Drawing[] =>
  templateTiles(one, on, { reader: defaultReader, block });

/** The one outline on a page: not the check line, which is level. */
const drawnOutline = ({ marks }: Drawing): readonly Place[] => {
  const rings = marks.flatMap((mark) => (mark.kind === 'path' && mark.line === 'visible' ? mark.rings : []));
  return rings.filter((ring) => ring.length > 2).flat();
};

const sideMm = (ring: readonly Place[], axis: 0 | 1): number =>
  Math.max(...ring.map((corner) => corner[axis])) - Math.min(...ring.map((corner) => corner[axis]));

/** Twice the area, its sign the way round. */
const wayRound = (ring: readonly Place[]): number =>
  ring.reduce((sum, [x, y], k) => {
    const [nextX, nextY] = ring[(k + 1) % ring.length];
    return sum + x * nextY - nextX * y;
  }, 0);

describe('a piece that fits a page turned is turned:', () => {
  test('it takes one page, at full size, lying across', () => {
    fc.assert(
      fc.property(
        paper.chain((on) => {
          const { acrossMm, upMm } = pages[on];
          return fc.tuple(fc.constant(on), piece(between(acrossMm + 0.1, upMm), between(40, acrossMm)));
        }),
        ([on, one]) => {
          const tiles = tilesOf(one, on);
          expect(tiles).toHaveLength(1);
          const ring = drawnOutline(tiles[0]);
          expect(sideMm(ring, 0)).toBeCloseTo(sideMm(one.outline, 1), 6);
          expect(sideMm(ring, 1)).toBeCloseTo(sideMm(one.outline, 0), 6);
        },
      ),
      { seed, numRuns: 300 },
    );
  });

  test('turned and not mirrored, its hole and its grain with it', () => {
    fc.assert(
      fc.property(piece(between(190, 240), between(60, 180)), (one) => {
        const [tile] = tilesOf(one, 'a4');
        const [straight] = tilesOf({ ...one, outline: one.outline.map(([x, y]): Place => [x / 2, y]) }, 'a4');
        expect(Math.sign(wayRound(drawnOutline(tile)))).toBe(Math.sign(wayRound(drawnOutline(straight))));
        const ring = drawnOutline(tile);
        const [hole] = tile.marks.flatMap((mark) => (mark.kind === 'circle' ? [mark.at] : []));
        const low: Place = [Math.min(...ring.map(([x]) => x)), Math.min(...ring.map(([, y]) => y))];
        const [[holeX, holeY]] = one.bleedHoles;
        // Forward on the deck is down or up the page now: 0.6 of the length from one end, 0.5 of the width.
        expect(hole[0] - low[0]).toBeCloseTo(holeY, 6);
        expect([holeX, sideMm(one.outline, 0) - holeX]).toContainEqual(expect.closeTo(hole[1] - low[1], 6));
      }),
      { seed, numRuns: 200 },
    );
  });
});

test('a piece that fits a page upright stays upright, and one that fits neither way takes the fewer pages', () => {
  fc.assert(
    fc.property(paper, piece(between(40, 700), between(40, 700)), (on, one) => {
      const [along, up] = [sideMm(one.outline, 0), sideMm(one.outline, 1)];
      const { acrossMm, upMm } = pages[on];
      const fits = (across: number, high: number): boolean => across <= acrossMm && high <= upMm;
      const tiles = tilesOf(one, on);
      expect(tiles.length === 1).toBe(fits(along, up) || fits(up, along));
      if (fits(along, up)) expect(sideMm(drawnOutline(tiles[0]), 0)).toBeCloseTo(along, 6);
      const turned = one.outline.map(([x, y]): Place => [y, -x]);
      expect(tilesOf({ ...one, outline: turned }, on)).toHaveLength(tiles.length);
    }),
    { seed, numRuns: 300 },
  );
});
