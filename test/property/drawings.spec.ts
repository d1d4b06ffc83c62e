import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { convert } from 'xmlbuilder2';
import {
  defaultReader,
  defectMap,
  figure,
  landscape,
  openingPlan,
  phone,
  piecePlan,
  printable,
  standardScales,
  svgOf,
  templateTiles,
  textBox,
  textMarks,
  type DefectMapInput,
  type Drawing,
  type OpeningPlanInput,
  type SheetFormat,
} from '#lib/drawings';

/** Fixed, and printed by fast-check with every failure. */
const seed = 20261125;
const block = { job: 'job', reference: 'ref', made: '2026-03-02', sheet: '1' };

type Place = readonly [number, number];

/** A star-shaped outline about the origin: any number of corners, never crossing itself. */
const outline = (least: number, most: number): fc.Arbitrary<readonly Place[]> =>
  fc
    .array(fc.integer({ min: least, max: most }), { minLength: 3, maxLength: 14 })
    .map((radii) =>
      radii.map((radius, index): Place => [
        Math.round(radius * Math.cos((index / radii.length) * 2 * Math.PI)),
        Math.round(radius * Math.sin((index / radii.length) * 2 * Math.PI)),
      ]),
    );

const moved = (shape: readonly Place[], [x, y]: Place): readonly Place[] =>
  shape.map(([px, py]): Place => [px + x, py + y]);
const within = (reach: number): fc.Arbitrary<number> =>
  fc.integer({ min: -Math.round(reach), max: Math.round(reach) });
const place = (reach: number): fc.Arbitrary<Place> => fc.tuple(within(reach), within(reach));
const name = fc.oneof(
  fc.string({ maxLength: 24, unit: 'grapheme' }),
  fc.string({ maxLength: 24, unit: 'binary' }),
  fc.constantFrom('stanchion', 'cleat port', '<b>&"\'', ']]>', '\u0000\u202E', 'x'.repeat(90)),
);
const format: fc.Arbitrary<SheetFormat> = fc.constantFrom(
  landscape('a4'),
  landscape('letter'),
  figure(176, 130),
  phone,
);

const reading = (reach: number): fc.Arbitrary<DefectMapInput['readings'][number]> =>
  fc.oneof(
    fc.record({
      kind: fc.constant('sounding' as const),
      at: place(reach),
      sound: fc.constantFrom('sharp' as const, 'dull' as const, 'void' as const),
      isUnreliable: fc.boolean(),
    }),
    fc.record({
      kind: fc.constant('moisture' as const),
      at: place(reach),
      value: fc.double({ min: 0, max: 100, noNaN: true }),
    }),
    fc.record({
      kind: fc.constant('plug' as const),
      at: place(reach),
      condition: fc.constantFrom('rotten' as const, 'dry-sound' as const),
    }),
  );

const deck: fc.Arbitrary<DefectMapInput> = fc.integer({ min: 300, max: 6000 }).chain((size) =>
  fc.record({
    panel: outline(Math.round(size * 0.6), size).map((outer) => ({
      name: 'panel',
      outer,
      holes: [],
      supports: [{ kind: 'beam' as const, from: [-size / 2, 0] as const, to: [size / 2, 0] as const }],
    })),
    zones: fc.array(
      fc
        .record({
          id: name,
          at: place(size / 4),
          shape: outline(Math.round(size / 12), Math.round(size / 5)),
          condition: fc.constantFrom('wet-rotten', 'wet-bonded', 'odd'),
        })
        .map(({ id, at, shape, condition }) => ({ id, outline: moved(shape, at), areaM2: 0.12, condition })),
      { maxLength: 5 },
    ),
    contours: fc.constant([]),
    next: fc.array(
      fc.record({
        number: fc.integer({ min: 1, max: 40 }),
        kind: fc.constantFrom('sounding' as const, 'moisture' as const, 'plug' as const),
        at: place(Math.round(size / 2)),
      }),
      { maxLength: 10 },
    ),
    openings: fc.constant([]),
    photographs: fc.array(
      fc.record({
        number: fc.integer({ min: 1, max: 24 }),
        at: place(Math.round(size / 2)),
        directionDeg: fc.integer({ min: 0, max: 359 }),
      }),
      { maxLength: 8 },
    ),
    readings: fc.array(reading(Math.round(size / 2)), { maxLength: 60 }),
    fittings: fc.array(fc.record({ id: name, at: place(Math.round(size / 2)) }), { maxLength: 12 }),
    damagedAreaM2: fc.constant(0.3),
  }),
);

const planOf = ({ panel, fittings, zones }: DefectMapInput): OpeningPlanInput => ({
  panel,
  fittings,
  cutLengthM: 3,
  isSkinKept: true,
  seenFrom: 'above',
  openings: zones.map(({ id, outline: shape }) => ({
    label: id,
    area: { outer: shape, holes: [] },
    sawLine: shape,
    areaM2: 0.1,
    cutDepthMm: 4,
    undercut: [],
    coreStays: [],
    taperBand: [],
  })),
});

function collisions(drawing: Drawing): readonly string[] {
  const texts = textMarks(drawing.marks)
    .filter(({ text }) => text.trim() !== '')
    .map((mark) => ({ says: mark.text, box: textBox(mark) }));
  return texts.flatMap(({ says, box: a }, index) => [
    ...(a.x < -0.1 ||
    a.y < -0.1 ||
    a.x + a.width > drawing.widthMm + 0.1 ||
    a.y + a.height > drawing.heightMm + 0.1
      ? [`${says} leaves the sheet`]
      : []),
    ...texts
      .slice(index + 1)
      .filter(
        ({ box: b }) =>
          Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x) > 0.1 &&
          Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > 0.1,
      )
      .map(({ says: other }) => `${says} on ${other}`),
  ]);
}

describe('any deck', () => {
  test('is mapped with no text on text, at a recommended scale, as well-formed XML, alike each time', () => {
    fc.assert(
      fc.property(deck, format, (input, sheet) => {
        const drawing = defectMap(input, { format: sheet, reader: defaultReader, block });
        expect(collisions(drawing)).toEqual([]);
        expect(standardScales.map(({ text }) => text)).toContain(drawing.scale?.text);
        const svg = svgOf(drawing);
        expect(Object.keys(convert(svg, { format: 'object' }))).toEqual(['svg']);
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        expect(svgOf(defectMap(input, { format: sheet, reader: defaultReader, block }))).toBe(svg);
      }),
      { seed, numRuns: 120 },
    );
  });

  test('is planned for opening with no text on text', () => {
    fc.assert(
      fc.property(deck, format, fc.constantFrom('si' as const, 'us' as const), (input, sheet, units) => {
        const drawing = openingPlan(planOf(input), {
          format: sheet,
          reader: { ...defaultReader, units },
          block,
        });
        expect(collisions(drawing)).toEqual([]);
        expect(svgOf(drawing)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { seed, numRuns: 120 },
    );
  });

  test('has its core pieces labelled with no text on text', () => {
    fc.assert(
      fc.property(deck, format, (input, sheet) => {
        const plan = planOf(input);
        const pieces = plan.openings.map(({ label, area }, index) => ({
          label,
          beddingOrder: index,
          outline: area.outer,
          areaM2: 0.1,
          grainDeg: index * 30,
          bleedHoles: [],
        }));
        const drawing = piecePlan(
          {
            panel: plan.panel,
            openings: plan.openings,
            pieces,
            solidFills: [],
            fittings: plan.fittings,
            seenFrom: 'below',
          },
          { format: sheet, reader: defaultReader, block },
        );
        expect(collisions(drawing)).toEqual([]);
        expect(svgOf(drawing)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { seed, numRuns: 80 },
    );
  });
});

test('a template of any piece shows all of its outline at full size', () => {
  fc.assert(
    fc.property(outline(60, 600), fc.constantFrom('a4' as const, 'letter' as const), (shape, paper) => {
      const tiles = templateTiles({ label: 'P1', outline: shape, holes: [], bleedHoles: [] }, paper, {
        reader: defaultReader,
        block,
      });
      const lengthOf = (ring: readonly Place[]): number =>
        ring
          .slice(1)
          .reduce((sum, [x, y], index) => sum + Math.hypot(x - ring[index][0], y - ring[index][1]), 0);
      const drawn = tiles
        .flatMap(({ marks }) =>
          marks.flatMap((mark) =>
            mark.kind === 'path' && !mark.closed && mark.line === 'visible' ? mark.rings : [],
          ),
        )
        .reduce((sum, ring) => sum + lengthOf(ring), 0);
      expect(drawn - tiles.length * 100).toBeGreaterThanOrEqual(lengthOf([...shape, shape[0]]) - 1e-6);
      expect(tiles.flatMap(collisions)).toEqual([]);
    }),
    { seed, numRuns: 120 },
  );
});

test('what the embedded font prints is made of characters that it has', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(printable(printable(text))).toBe(printable(text));
    }),
    { seed, numRuns: 500 },
  );
});
