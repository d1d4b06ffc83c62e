import type { SheetFormat } from '../sheet/formats.js';
import { fullSize, scaleToFit, type Scale } from '../sheet/scale.js';
import { boxOf, type Box, type Point, type Ring } from '../sheet/shapes.js';
import type { Outline, Place } from './place.js';

/** From which side whoever works on it looks at the deck: looking up from below, port and starboard change sides. */
export type SeenFrom = 'above' | 'below';

/** How the deck lies on the sheet: as it is seen, the bow to the right or up. */
export interface DeckView {
  readonly scale: Scale;
  readonly bow: 'right' | 'up';
  readonly seenFrom: SeenFrom;
  readonly at: (place: Place) => Point;
  readonly ring: (outline: Outline) => Ring;
  /** The part of the sheet that the deck takes. */
  readonly box: Box;
}

const turnedTo: Readonly<Record<DeckView['bow'], (place: Place) => Point>> = {
  right: ([x, y]) => [x, y],
  up: ([x, y]) => [y, -x],
};

const asSeen = ([x, y]: Place, seenFrom: SeenFrom): Place => (seenFrom === 'above' ? [x, y] : [x, -y]);

/** The angle on the sheet of a direction on the deck. */
export const sheetAngleDeg = (
  { bow, seenFrom }: Pick<DeckView, 'bow' | 'seenFrom'>,
  deckDeg: number,
): number => (seenFrom === 'above' ? deckDeg : -deckDeg) + (bow === 'up' ? -90 : 0);

/**
 * Fits places into room at a recommended scale. The figures of one document all have the bow to the right, so that a reader
 * turns nothing in the mind from one to the next; a sheet by itself has it where the drawing comes out larger.
 */
export function deckView(
  places: readonly Place[],
  room: Box,
  { seenFrom, sheet }: { readonly seenFrom: SeenFrom; readonly sheet: SheetFormat['kind'] },
): DeckView {
  if (sheet === 'figure') return viewWith({ bow: 'right', seenFrom }, places, room);
  const [right, up] = [
    viewWith({ bow: 'right', seenFrom }, places, room),
    viewWith({ bow: 'up', seenFrom }, places, room),
  ];
  return up.scale.factor > right.scale.factor ||
    (up.scale.factor === right.scale.factor && room.height > room.width)
    ? up
    : right;
}

export function viewWith(way: Way, places: readonly Place[], room: Box): DeckView {
  const bounds = boxOf(places.map((place) => onSheet(way, place)));
  return placed(way, bounds, room, scaleToFit(bounds.width, bounds.height, room.width, room.height));
}

/** One sheet millimetre is one real millimetre; `origin` comes to lie at the upper left of the room. */
export function fullSizeView(origin: Place, room: Box): DeckView {
  return placed(
    { bow: 'right', seenFrom: 'above' },
    { x: origin[0], y: origin[1], width: room.width, height: room.height },
    room,
    fullSize,
  );
}

type Way = Pick<DeckView, 'bow' | 'seenFrom'>;

const onSheet = ({ bow, seenFrom }: Way, place: Place): Point => turnedTo[bow](asSeen(place, seenFrom));

function placed(way: Way, bounds: Box, room: Box, scale: Scale): DeckView {
  const [width, height] = [bounds.width * scale.factor, bounds.height * scale.factor];
  const box = { x: room.x + (room.width - width) / 2, y: room.y + (room.height - height) / 2, width, height };
  const at = (place: Place): Point => {
    const [x, y] = onSheet(way, place);
    return [box.x + (x - bounds.x) * scale.factor, box.y + (y - bounds.y) * scale.factor];
  };
  return { ...way, scale, at, ring: (outline) => outline.map(at), box };
}
