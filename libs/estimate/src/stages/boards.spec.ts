import { describe, expect, test } from '@jest/globals';
import { boardsFor, layersFor } from './boards.js';

const small = { lengthMm: 600, widthMm: 300 };
const piece = (lengthMm: number, widthMm: number) => ({ lengthMm, widthMm });

describe('boards for plates and inserts', () => {
  test('a plate of 285 mm comes out of a board of 300 x 600 mm, and a second one beside it', () => {
    expect(boardsFor([piece(285, 285)], small)).toBe(1);
    expect(boardsFor([piece(285, 285), piece(285, 285)], small)).toBe(1);
    expect(boardsFor([piece(285, 285), piece(285, 285), piece(285, 285)], small)).toBe(2);
  });

  test('an insert of 360 mm fits no board of 300 x 600 mm', () => {
    expect(boardsFor([piece(360, 360)], small)).toBeUndefined();
    expect(boardsFor([piece(360, 360)], { lengthMm: 1200, widthMm: 600 })).toBe(1);
  });

  test('never takes fewer boards than the area asks, nor more than one for each piece', () => {
    for (let side = 20; side <= 290; side += 30)
      for (let count = 1; count <= 12; count += 1) {
        const boards = boardsFor(
          Array.from({ length: count }, () => piece(side, side)),
          small,
        );
        expect(boards).toBeGreaterThanOrEqual(Math.ceil((count * side * side) / (600 * 300)));
        expect(boards).toBeLessThanOrEqual(count);
      }
  });
});

describe('layers of board in place of core', () => {
  const stockMm = [3, 6, 10, 12, 18];
  test('12.7 mm is filled by one board of 12, 25.4 mm by two, never proud', () => {
    expect(layersFor(12.7, stockMm)).toEqual([12]);
    const layers = layersFor(25.4, stockMm);
    expect([layers.length, layers.reduce((sum, layer) => sum + layer, 0)]).toEqual([2, 24]);
    expect(layersFor(2, stockMm)).toEqual([]);
  });
});
