import { expect, test } from '@jest/globals';
import { flipped, withFitting, without, withOutline, withReading, withZone } from './edits.js';
import { withValueAt } from './fields.js';
import { gridPlaces, nextPlace, readTyped } from './hammer.js';
import { begun, redone, stepped, undone } from './history.js';
import { Outbox } from './outbox.js';
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
