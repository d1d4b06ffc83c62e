import { fullSize, scaleToFit, type Scale } from '../sheet/scale.js';
import { boxOf, type Box, type Point, type Ring } from '../sheet/shapes.js';
import type { Outline, Place } from './place.js';

/** How the deck lies on the sheet: never mirrored, the bow to the right or up. */
export interface DeckView {
  readonly scale: Scale;
  readonly bow: 'right' | 'up';
  readonly at: (place: Place) => Point;
  readonly ring: (outline: Outline) => Ring;
  /** The part of the sheet that the deck takes. */
  readonly box: Box;
}

const turnedTo: Readonly<Record<DeckView['bow'], (place: Place) => Point>> = {
  right: ([x, y]) => [x, y],
  up: ([x, y]) => [y, -x],
};

/** Fits places into room at a recommended scale, with the bow where the drawing comes out larger. */
export function deckView(places: readonly Place[], room: Box): DeckView {
  const [right, up] = [viewWith('right', places, room), viewWith('up', places, room)];
  return up.scale.factor > right.scale.factor ||
    (up.scale.factor === right.scale.factor && room.height > room.width)
    ? up
    : right;
}

export function viewWith(bow: DeckView['bow'], places: readonly Place[], room: Box): DeckView {
  const bounds = boxOf(places.map(turnedTo[bow]));
  return placed(bow, bounds, room, scaleToFit(bounds.width, bounds.height, room.width, room.height));
}

/** One sheet millimetre is one real millimetre; `origin` comes to lie at the upper left of the room. */
export function fullSizeView(origin: Place, room: Box): DeckView {
  return placed(
    'right',
    { x: origin[0], y: origin[1], width: room.width, height: room.height },
    room,
    fullSize,
  );
}

function placed(bow: DeckView['bow'], bounds: Box, room: Box, scale: Scale): DeckView {
  const [width, height] = [bounds.width * scale.factor, bounds.height * scale.factor];
  const box = { x: room.x + (room.width - width) / 2, y: room.y + (room.height - height) / 2, width, height };
  const at = (place: Place): Point => {
    const [x, y] = turnedTo[bow](place);
    return [box.x + (x - bounds.x) * scale.factor, box.y + (y - bounds.y) * scale.factor];
  };
  return { scale, bow, at, ring: (outline) => outline.map(at), box };
}
