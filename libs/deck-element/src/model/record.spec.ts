import { expect, test } from '@jest/globals';
import { flipped, withFitting, without, withOutline, withReading, withZone } from './edits.js';
import { withValueAt } from './fields.js';
import { gridPlaces, nextPlace, readTyped } from './hammer.js';
import { begun, redone, stepped, undone } from './history.js';
import { Outbox } from './outbox.js';
import { freshPen, stroked, touched } from './pen.js';
import { directionDeg, isFiled, numberFor, spotAfter, type Photograph } from './photograph.js';
import { emptySheet, isReadyToPrice } from './record.js';
import { contains, simplified, snapped } from './snapping.js';

const square = withOutline(emptySheet, [
  [0, -500],
  [1000, -500],
  [1000, 500],
  [0, 500],
]);
const zoned = withZone(square, [
  [200, -100],
  [400, -100],
  [400, 100],
]);

test('a step is taken back and made again, and a new step forgets what was taken back', () => {
  const one = stepped(begun(0), 1);
  expect([undone(one).present, redone(undone(one)).present]).toEqual([0, 1]);
  expect(redone(stepped(undone(one), 2)).present).toBe(2);
});

test('a sheet flipped twice is the sheet', () => {
  const full = withReading(withFitting(zoned, 'cleat', [600, 200]), {
    kind: 'sounding',
    at: [10, 20],
    sound: 'dull',
  });
  expect(flipped(flipped(full))).toEqual(full);
  expect(flipped(full).fittings?.[0].at).toEqual([600, -200]);
});

test('a name that was taken away is free again, and the price is asked for only when enough is said', () => {
  expect(withZone(without(zoned, { kind: 'zone', index: 0 }), [[0, 0]]).zones?.[0].id).toBe('Z1');
  expect(isReadyToPrice(zoned)).toBe(false);
  const said = ['/outerSkin/thicknessMm', '/core/thicknessMm', '/innerSkin/thicknessMm'];
  expect(isReadyToPrice(said.reduce((record, at) => withValueAt(record, at, 3), zoned))).toBe(true);
});

test('what is unsaid leaves no empty part behind', () => {
  const said = withValueAt(square, '/conditions/temperatureC', 18);
  expect(said.conditions).toEqual({ temperatureC: 18 });
  expect(withValueAt(said, '/conditions/temperatureC', undefined)).toEqual(square);
});

test('a hammer goes over every place of the grid once, on deck only', () => {
  const way = gridPlaces(square, 250);
  expect(way).toHaveLength(16);
  let record = square;
  for (let at = nextPlace(record, way, 250); at !== undefined; at = nextPlace(record, way, 250))
    record = withReading(record, { kind: 'sounding', at, sound: 'sharp' });
  expect(record.survey?.readings.map(({ at }) => at)).toEqual(way);
});

test('a typed list is taken whole, or its first unreadable line is named', () => {
  expect(readTyped('850 0 d\n\n900, 10, 18\n10 20 plug rotten')).toEqual({
    readings: [
      { kind: 'sounding', at: [850, 0], sound: 'dull' },
      { kind: 'moisture', at: [900, 10], value: 18 },
      { kind: 'plug', at: [10, 20], condition: 'rotten' },
    ],
  });
  expect(readTyped('10 20 plug rotten 3.2')).toEqual({
    readings: [{ kind: 'plug', at: [10, 20], condition: 'rotten', outerSkinMm: 3.2 }],
  });
  expect(readTyped('850 0 d\n850 soft')).toEqual({ line: 2, text: '850 soft' });
});

test('a finger near a corner means the corner, near the middle the centreline', () => {
  expect(snapped([996, -497], square, 15, 'si')).toEqual({ place: [1000, -500], to: 'corner' });
  expect(snapped([303, 9], square, 15, 'si')).toEqual({ place: [305, 0], to: 'centreline' });
  expect(snapped([303, 492], square, 15, 'si')).toEqual({ place: [303, 500], to: 'edge' });
});

test('a trembling line keeps its corners and loses its trembling', () => {
  const line = [
    [0, 0],
    [50, 1],
    [100, 0],
    [101, 50],
    [100, 100],
  ] as const;
  expect(simplified(line, 3)).toEqual([line[0], line[2], line[4]]);
  expect(
    contains(
      [
        [0, 0],
        [10, 0],
        [0, 10],
      ],
      [2, 2],
    ),
  ).toBe(true);
});

test('what waits is kept under its key until it is taken, and an unreadable draft is put aside', () => {
  const texts = new Map<string, string>();
  const shelf = {
    getItem: (name: string) => texts.get(name) ?? null,
    setItem: (name: string, text: string) => void texts.set(name, text),
    removeItem: (name: string) => void texts.delete(name),
  };
  const outbox = new Outbox(shelf, 'test');
  outbox.put({ key: 'a', record: zoned });
  outbox.put({ key: 'a', record: zoned });
  outbox.put({ key: 'b', record: square });
  expect(new Outbox(shelf, 'test').waiting().map(({ key }) => key)).toEqual(['a', 'b']);
  outbox.take('a');
  outbox.take('b');
  expect([outbox.waiting(), texts.size]).toEqual([[], 0]);
  texts.set('kingplank-deck:test:draft', '{ broken');
  expect(outbox.draft()).toBeUndefined();
  expect(texts.get('kingplank-deck:test:draft.unreadable')).toBe('{ broken');
});

test('the skin of a plug is noted with it and not with the next one', () => {
  const first = touched({ ...freshPen, tool: 'plug', plugSkin: 2.8 }, square, [100, 0], 5);
  const second = touched(first.pen, first.record, [300, 0], 5);
  expect(second.record.survey?.readings).toEqual([
    { kind: 'plug', at: [100, 0], condition: 'rotten', outerSkinMm: 2.8 },
    { kind: 'plug', at: [300, 0], condition: 'rotten' },
  ]);
});

test('a direction is told from the bow over starboard, and a stroke of the pen says place and direction at once', () => {
  const ways = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
    [1, -1],
  ] as const;
  expect(ways.map((way) => directionDeg([0, 0], way))).toEqual([0, 90, 180, 270, 315]);
  const pen = { ...freshPen, tool: 'photograph' as const };
  const way = [
    [200, 0],
    [200, 300],
  ] as const;
  expect(stroked(pen, square, way, 3)).toEqual({
    pen: { ...pen, spot: { at: [200, 0], directionDeg: 90 } },
    record: square,
  });
  const stood = spotAfter(undefined, [200, 0]);
  const looked = spotAfter(stood, [100, 0]);
  expect([stood, looked, spotAfter(looked, [5, 5])]).toEqual([
    { at: [200, 0] },
    { at: [200, 0], directionDeg: 180 },
    { at: [5, 5] },
  ]);
});

test('a photograph keeps its number while nobody else has it, and is known again when its answer was lost', () => {
  const taken: Photograph = { key: 'k', takenAtMs: 1, caption: 'Stain', picture: new Blob() };
  const others = [
    { number: 1, caption: 'Stain' },
    { number: 4, caption: 'Lining' },
  ];
  expect(numberFor(taken, [])).toBe(1);
  expect(numberFor(taken, others)).toBe(5);
  expect([numberFor({ ...taken, number: 2 }, others), numberFor({ ...taken, number: 4 }, others)]).toEqual([
    2, 5,
  ]);
  expect([isFiled(taken, others), isFiled({ ...taken, number: 1 }, others)]).toEqual([false, true]);
  const placed = { ...taken, number: 1, spot: { at: [10.5, -2] as const } };
  expect(isFiled(placed, others)).toBe(false);
  expect(isFiled(placed, [{ number: 1, caption: 'Stain', at: [10.5, -2] }])).toBe(true);
});

test('photographs that are taken while others are sent stay to be sent', () => {
  const texts = new Map<string, string>();
  const shelf = {
    getItem: (name: string) => texts.get(name) ?? null,
    setItem: (name: string, text: string) => void texts.set(name, text),
    removeItem: (name: string) => void texts.delete(name),
  };
  const outbox = new Outbox(shelf, 'test');
  const sent = { key: 'a', record: zoned, photographs: ['one'] };
  outbox.put(sent);
  outbox.put({ ...sent, photographs: ['one', 'two'] });
  outbox.sent(sent);
  expect(outbox.waiting()).toEqual([{ ...sent, isMade: true, photographs: ['two'] }]);
  outbox.sent({ ...sent, photographs: ['two'] });
  expect(outbox.waiting()).toEqual([]);
});
