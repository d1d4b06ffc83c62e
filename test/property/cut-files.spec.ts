import { describe, expect, test } from '@jest/globals';
import { coreBill, type CoreBill } from '#lib/coring';
import { cutFile } from '#lib/drawings';
import { areaMm2, regionOf, type Point, type Ring } from '#lib/geometry';
import { opened } from '../samples/opened.js';
import { aCoreSheet } from '../support/core-sample.js';
import { sampleEstimate, smallSample } from '../support/sample-estimate.js';
import { readDxf, type ReadDrawing, type ReadEntity } from './dxf-reader.js';
import { randomOpenings, type RandomOpening } from './random-openings.js';

const seed = 20_261_201;
const kerfMm = 3.2;
const sheets = [{ lengthMm: 1220, widthMm: 610, cost: 100 }];

function billFor(opening: RandomOpening, form: 'plain' | 'scored'): CoreBill {
  const outcome = coreBill({
    openings: [opening],
    core: aCoreSheet(),
    form,
    cavityMm: 14.3,
    kerfMm,
    sheets,
    workUnits: 0,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const square = ([x, y]: Point, size: number): Ring => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
];

/** A fitting stays in the middle of the first piece: random openings leave few pieces with a hole. */
function withHole(piece: CoreBill['mosaic']['pieces'][number]): CoreBill['mosaic']['pieces'][number] {
  const hole = square(middleOf(piece.outline), 6);
  return { ...piece, holes: [...piece.holes, hole], areaM2: piece.areaM2 - 36e-6 };
}

const middleOf = (ring: Ring): Point => [
  ring.reduce((sum, [x]) => sum + x, 0) / ring.length,
  ring.reduce((sum, [, y]) => sum + y, 0) / ring.length,
];

const sample = opened(sampleEstimate(smallSample)).core;

const documentOf = ({ mosaic, cuts }: CoreBill): typeof sample => ({
  ...sample,
  kerfMm,
  pieces: mosaic.pieces.map((piece, k) => (k === 0 ? withHole(piece) : piece)),
  sheets: cuts.flatMap(({ thicknessMm, form, sheets: cutSheets }) =>
    cutSheets.map((sheet) => ({
      ...sheet,
      thicknessMm,
      form,
      placed: sheet.placements.map(({ pieceId, ...placed }) => ({ piece: pieceId, ...placed })),
      offcutsKept: sheet.offcutsKept.map(({ outline }) => outline),
    })),
  ),
});

function readBack(name: 'piece-plan' | 'sheet-layout', core: typeof sample): ReadDrawing {
  const text = cutFile(name, { core });
  if (text === undefined) throw new Error(`No ${name}`);
  return readDxf(text);
}

const onLayer = ({ entities }: ReadDrawing, layer: string): readonly ReadEntity[] =>
  entities.filter((entity) => entity.layer === layer);
const areaOf = ({ points }: ReadEntity): number => areaMm2(regionOf(points));
const leftOf = ({ points }: ReadEntity): number => Math.min(...points.map(([x]) => x));
const rightOf = ({ points }: ReadEntity): number => Math.max(...points.map(([x]) => x));

/** Box round all that is drawn: of a circle its rim, of a text its foot; the zero added makes 0 of -0. */
function boxOf({ entities }: ReadDrawing): readonly number[] {
  const reach = (axis: 0 | 1, side: 1 | -1): number =>
    0 +
    side *
      Math.max(
        ...entities.flatMap(({ points, radiusMm }) => points.map((point) => side * point[axis] + radiusMm)),
      );
  return [reach(0, -1), reach(1, -1), reach(0, 1), reach(1, 1)];
}

function statedBox({ header }: ReadDrawing): readonly number[] {
  const corner = (name: string): readonly number[] =>
    [10, 20].map((code) => Number(header[name].find(([own]) => own === code)?.[1]));
  return [...corner('$EXTMIN'), ...corner('$EXTMAX')];
}

/** Coordinates are written in full; what is left is the last bit of a sum. */
const asDrawn = (box: readonly number[]): readonly number[] =>
  box.map((value) => Math.round(value * 1e6) / 1e6);

describe('cut files of 40 random openings, read back by other code', () => {
  const cases = randomOpenings(seed, 40).map((opening, k) => {
    const core = documentOf(billFor(opening, k % 2 === 0 ? 'plain' : 'scored'));
    return { core, isCored: core.pieces.length > 0 };
  });
  const cored = cases
    .filter(({ isCored }) => isCored)
    .map(({ core }) => ({
      core,
      pieces: readBack('piece-plan', core),
      sheets: readBack('sheet-layout', core),
    }));

  test('most openings are cored, in more than one piece often enough', () => {
    expect(cored.length).toBeGreaterThan(30);
    expect(cored.filter(({ core }) => core.pieces.length > 2).length).toBeGreaterThan(6);
  });

  test('every file says that it is metric, in millimetres, and how far it reaches', () => {
    for (const drawing of cored.flatMap(({ pieces, sheets: drawn }) => [pieces, drawn])) {
      expect(drawing.header['$INSUNITS'].map(([, value]) => Number(value))).toEqual([4]);
      expect(drawing.header['$MEASUREMENT'].map(([, value]) => Number(value))).toEqual([1]);
      expect(asDrawn(statedBox(drawing))).toEqual(asDrawn(boxOf(drawing)));
    }
  });

  test('each piece is one closed outline with its holes, of the area that the document states, apart from the next', () => {
    for (const { core, pieces } of cored) {
      const edges = onLayer(pieces, 'piece edge');
      const holes = onLayer(pieces, 'hole');
      expect([...edges, ...holes].every(({ isClosed, type }) => isClosed && type === 'LWPOLYLINE')).toBe(
        true,
      );
      expect(holes).toHaveLength(core.pieces.reduce((sum, piece) => sum + piece.holes.length, 0));
      expect(edges).toHaveLength(core.pieces.length);
      edges.forEach((edge, k) => {
        const own = holes.filter((hole) => leftOf(hole) >= leftOf(edge) && rightOf(hole) <= rightOf(edge));
        const netMm2 = areaOf(edge) - own.reduce((sum, hole) => sum + areaOf(hole), 0);
        expect(own).toHaveLength(core.pieces[k].holes.length);
        expect(Math.abs(netMm2 - core.pieces[k].areaM2 * 1e6)).toBeLessThan(1);
        if (k > 0) expect(leftOf(edge) - rightOf(edges[k - 1])).toBeCloseTo(50, 6);
      });
    }
  });

  test('every piece is named, every bleed hole is drawn, and the side of the cut and the kerf are told', () => {
    for (const { core, pieces } of cored) {
      const words = onLayer(pieces, 'label').map(({ text }) => text);
      expect(words).toEqual([
        ...core.pieces.map(({ label }) => label),
        '3.2 mm kerf, saw outside the outlines',
      ]);
      expect(onLayer(pieces, 'bleed hole')).toHaveLength(
        core.pieces.reduce((sum, { bleedHoles }) => sum + bleedHoles.length, 0),
      );
    }
  });

  test('each sheet is drawn at its size with its pieces inside it, and tells its kerf', () => {
    for (const { core, sheets: drawn } of cored) {
      const edges = onLayer(drawn, 'sheet edge');
      const placed = onLayer(drawn, 'piece edge');
      expect(edges.map(areaOf)).toEqual(
        core.sheets.map(({ lengthMm, widthMm }) => expect.closeTo(lengthMm * widthMm, 3)),
      );
      core.sheets.forEach((sheet, k) => {
        const inside = placed.filter(
          (piece) => leftOf(piece) >= leftOf(edges[k]) - 1e-6 && rightOf(piece) <= rightOf(edges[k]) + 1e-6,
        );
        expect(inside).toHaveLength(sheet.placed.length);
        inside.forEach((piece, p) => {
          expect(Math.abs(areaOf(piece) - areaMm2(regionOf(sheet.placed[p].outline)))).toBeLessThan(1);
        });
      });
      const words = onLayer(drawn, 'label').map(({ text }) => text);
      expect(words.filter((text) => text.includes('3.2 mm kerf, saw outside'))).toHaveLength(edges.length);
    }
  });
});
