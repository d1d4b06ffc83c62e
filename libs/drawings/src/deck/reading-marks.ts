import type { Reading, ReadingKind } from '#lib/extent';
import type { Reader } from '../reader.js';
import type { LegendEntry, OpenSheet } from '../sheet/furniture.js';
import { centredText, circle, line, shape, sizes, type Mark } from '../sheet/marks.js';
import { rectangle, type Box, type Point, type Ring } from '../sheet/shapes.js';
import type { DeckView } from './deck-view.js';
import { around, middleOf } from './panel-marks.js';
import type { Place } from './place.js';

/** A reading that is still to be taken, by its number in the order of taking. */
export interface NextPlace {
  readonly number: number;
  readonly kind: ReadingKind;
  readonly at: Place;
}

const isBadPlug = (condition: string): boolean => condition !== 'dry-sound' && condition !== 'damp-sound';

/** Circles for the hammer, squares for the meter, diamonds for plugs; the worse, the darker. */
export function readingSymbol(reading: Reading, [x, y]: Point): readonly Mark[] {
  const doubt = reading.isUnreliable === true ? [line('fine', [x - 1.6, y + 1.6], [x + 1.6, y - 1.6])] : [];
  return [...plainSymbol(reading, [x, y]), ...doubt];
}

function plainSymbol(reading: Reading, at: Point): readonly Mark[] {
  switch (reading.kind) {
    case 'sounding':
      return hammerSymbol(reading.sound, at);
    case 'moisture':
      return [shape([square(at, 0.8)], 'fine', 'paper')];
    case 'plug':
      return [shape([diamond(at, 1.5)], 'fine', isBadPlug(reading.condition) ? 'ink' : 'paper')];
  }
}

function hammerSymbol(sound: 'sharp' | 'dull' | 'void', at: Point): readonly Mark[] {
  const [x, y] = at;
  switch (sound) {
    case 'sharp':
      return [circle(at, 0.9, 'fine', 'paper')];
    case 'dull':
      return [
        circle(at, 0.9, 'fine', 'paper'),
        shape(
          [
            [
              [x, y - 0.9],
              [x + 0.65, y - 0.65],
              [x + 0.9, y],
              [x + 0.65, y + 0.65],
              [x, y + 0.9],
            ],
          ],
          undefined,
          'ink',
        ),
      ];
    case 'void':
      return [circle(at, 0.9, 'fine', 'ink')];
  }
}

const square = ([x, y]: Point, reach: number): Ring =>
  rectangle({ x: x - reach, y: y - reach, width: 2 * reach, height: 2 * reach });

const diamond = ([x, y]: Point, reach: number): Ring => [
  [x, y - reach],
  [x + reach, y],
  [x, y + reach],
  [x - reach, y],
];

/** Room of a place to read next with its number. */
const NEXT_REACH_MM = { sounding: 2.2, moisture: 2, plug: 2.8 } as const;

const SMALL_REACH_MM = 1.1;

/** The same shapes as readings that were taken, large and open, with the number inside. */
const nextSymbol = (kind: ReadingKind, number: string, at: Point): readonly Mark[] => [
  nextShape(kind, at, NEXT_REACH_MM[kind]),
  centredText(at, number, { sizeMm: sizes.fine, weight: 'bold' }),
];

function nextShape(kind: ReadingKind, at: Point, reach: number): Mark {
  switch (kind) {
    case 'sounding':
      return circle(at, reach, 'contour', 'paper');
    case 'moisture':
      return shape([square(at, reach)], 'contour', 'paper');
    case 'plug':
      return shape([diamond(at, reach)], 'contour', 'paper');
  }
}

/** The next places by number; where the symbol with its number has no room, a small one with the number beside it. */
export function nextMarks(
  next: readonly NextPlace[],
  view: DeckView,
  sheet: OpenSheet,
): { readonly marks: readonly Mark[]; readonly left: number } {
  const large = next.map(({ kind, at }) => sheet.room.claimBox(around(view.at(at), NEXT_REACH_MM[kind])));
  const drawn = next.map(({ number, kind, at }, index) =>
    large[index]
      ? nextSymbol(kind, String(number), view.at(at))
      : smallNext({ number, kind, at }, view.at(at), sheet),
  );
  return { marks: drawn.flat(), left: drawn.filter((marks) => marks.length === 0).length };
}

function smallNext({ kind, number }: NextPlace, spot: Point, sheet: OpenSheet): readonly Mark[] {
  const label = sheet.room.place({
    at: spot,
    content: String(number),
    style: { sizeMm: sizes.fine, weight: 'bold', backed: true },
    clearMm: 1.3,
    leader: true,
  });
  return label.length === 0 ? [] : [nextShape(kind, spot, SMALL_REACH_MM), ...label];
}

/** One entry for each kind of place to read next. */
export const nextLegend = (
  next: readonly NextPlace[],
  words: Reader['words']['defectMap'],
): readonly LegendEntry[] =>
  [...new Set(next.map(({ kind }) => kind))].map((kind) => ({
    room: 'symbol',
    sample: (box: Box) => nextSymbol(kind, '1', middleOf(box)),
    meaning: words.next[kind],
  }));

const origin = { at: [0, 0] as const };

/** One entry for each kind of reading that is there. */
export function readingLegend(
  readings: readonly Reading[],
  words: Reader['words']['defectMap'],
): readonly LegendEntry[] {
  const entry = (
    like: Reading,
    meaning: string,
    isThere: (one: Reading) => boolean,
  ): readonly LegendEntry[] =>
    readings.some(isThere)
      ? [{ room: 'symbol', sample: (box: Box) => readingSymbol(like, middleOf(box)), meaning }]
      : [];
  const heard = (sound: 'sharp' | 'dull' | 'void') =>
    entry(
      { kind: 'sounding', sound, ...origin },
      words[sound],
      (one) => one.kind === 'sounding' && one.sound === sound,
    );
  const plugs = (condition: 'rotten' | 'dry-sound', isBad: boolean) =>
    entry(
      { kind: 'plug', condition, ...origin },
      isBad ? words.plugBad : words.plugSound,
      (one) => one.kind === 'plug' && isBadPlug(one.condition) === isBad,
    );
  return [
    ...heard('sharp'),
    ...heard('dull'),
    ...heard('void'),
    ...entry({ kind: 'moisture', value: 0, ...origin }, words.moisture, ({ kind }) => kind === 'moisture'),
    ...plugs('dry-sound', false),
    ...plugs('rotten', true),
    ...entry(
      { kind: 'sounding', sound: 'sharp', isUnreliable: true, ...origin },
      words.unreliable,
      ({ isUnreliable }) => isUnreliable === true,
    ),
  ];
}
