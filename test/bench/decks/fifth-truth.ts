import { distance, type Point, type Ring } from '#lib/geometry';
import type { RandomStream } from '#lib/kernel';
import { deckFrom, normal, type Deck, type Ground, type Heights, type PanelShape } from './truth.js';

/**
 * Decks of a fifth make: damage of one wavelength, cracks that wander and leak to both sides, pieces of core of all shapes that infect
 * each other, and bands along beams that run across the deck. Every parameter was set before the first run; nothing of the
 * map was chosen by these decks.
 */
const makings = {
  'one wavelength': oneWavelength,
  'wandering cracks': cracks,
  'pieces of core': pieces,
  'bands over beams': bands,
} as const satisfies Readonly<Record<string, Heights>>;

export type FifthDamage = keyof typeof makings;
export const fifthDamages: readonly FifthDamage[] = [
  'one wavelength',
  'wandering cracks',
  'pieces of core',
  'bands over beams',
];

/** A round foredeck, a walkway that narrows, a sole with two lockers, a deck in the shape of a T. */
const panels: readonly PanelShape[] = [
  { outline: halfRound(1500, 1700), holes: [] },
  { outline: [[0, 0], [3100, 120], [3100, 470], [1500, 620], [0, 720]], holes: [] }, // prettier-ignore
  { outline: [[0, 0], [1900, 0], [1900, 1250], [0, 1250]], holes: [[[200, 200], [700, 200], [700, 550], [200, 550]], [[1150, 700], [1650, 700], [1650, 1050], [1150, 1050]]] }, // prettier-ignore
  { outline: [[0, 400], [900, 400], [900, 0], [1700, 0], [1700, 1500], [900, 1500], [900, 1000], [0, 1000]], holes: [] }, // prettier-ignore
];

function halfRound(lengthMm: number, beamMm: number): Ring {
  return Array.from({ length: 25 }, (_, index): Point => {
    const angle = Math.PI * (index / 24 - 0.5);
    return [lengthMm * Math.cos(angle), (beamMm / 2) * (1 + Math.sin(angle))];
  });
}

export const fifthDeck = (damage: FifthDamage, share: number, random: RandomStream): Deck =>
  deckFrom(panels, makings[damage], share, random);

const anyPlace = ({ isDeck, at }: Ground, random: RandomStream): Point => {
  for (;;) {
    const index = Math.floor(random() * isDeck.length);
    if (isDeck[index] === 1) return at(index);
  }
};

const overCells = ({ isDeck, at }: Ground, heightAt: (place: Point) => number): Float64Array =>
  Float64Array.from(isDeck, (_, index) => heightAt(at(index)));

/** Waves of one length from every side: spots at an even distance, with a covariance that swings below 0. */
function oneWavelength(ground: Ground, random: RandomStream): Float64Array {
  const number = (2 * Math.PI) / (350 + 800 * random());
  const waves = Array.from({ length: 40 }, () => {
    const angle = 2 * Math.PI * random();
    return { kx: number * Math.cos(angle), ky: number * Math.sin(angle), phase: 2 * Math.PI * random() };
  });
  return overCells(ground, ([x, y]) =>
    waves.reduce((sum, { kx, ky, phase }) => sum + Math.cos(kx * x + ky * y + phase), 0),
  );
}

/** Cracks of the skin that wander; each leaks for its own time and unevenly along its length. */
function cracks(ground: Ground, random: RandomStream): Float64Array {
  const drops = Array.from({ length: 2 + Math.floor(4 * random()) }, () => crack(ground, random)).flat();
  return overCells(ground, (place) =>
    Math.max(...drops.map(({ at, reachMm }) => -distance(at, place) / reachMm)),
  );
}

interface Drop {
  readonly at: Point;
  readonly reachMm: number;
}

function crack(ground: Ground, random: RandomStream): readonly Drop[] {
  const longMm = 30 * random() ** -1.2;
  let [at, way, reachMm] = [anyPlace(ground, random), 2 * Math.PI * random(), 40 + 90 * random()];
  return Array.from({ length: 4 + Math.floor(random() * 40) }, (): Drop => {
    const drop = { at, reachMm };
    way += 0.35 * normal(random);
    const step = Math.min(60, longMm);
    at = [at[0] + step * Math.cos(way), at[1] + step * Math.sin(way)];
    reachMm = Math.max(20, reachMm * Math.exp(0.2 * normal(random)));
    return drop;
  });
}

/** Pieces of core, each the part of the deck nearest to its own middle; rot goes from piece to piece, and takes each whole. */
function pieces(ground: Ground, random: RandomStream): Float64Array {
  const middles = Array.from({ length: 25 + Math.floor(70 * random()) }, () => anyPlace(ground, random));
  const order = infected(middles, random);
  return overCells(ground, (place) => -order[nearestOf(middles, place)] + 0.4 * random());
}

const nearestOf = (middles: readonly Point[], place: Point): number =>
  middles.reduce(
    (best, middle, index) => (distance(middle, place) < distance(middles[best], place) ? index : best),
    0,
  );

/** When each piece is reached, from one to three that were wet first; a far piece is reached late, and some hold out. */
function infected(middles: readonly Point[], random: RandomStream): readonly number[] {
  const first = Array.from({ length: 1 + Math.floor(3 * random()) }, () =>
    Math.floor(random() * middles.length),
  );
  const resistance = middles.map(() => 0.3 + 1.4 * random());
  const reached = middles.map((_, index) => (first.includes(index) ? 0 : Number.POSITIVE_INFINITY));
  for (let round = 0; round < middles.length; round += 1) {
    for (const [index, middle] of middles.entries()) {
      const soonest = Math.min(
        ...middles.map(
          (other, from) => reached[from] + (resistance[index] * (40 + distance(other, middle)) ** 1.5) / 3000,
        ),
      );
      reached[index] = Math.min(reached[index], soonest);
    }
  }
  return reached;
}

/** Beams under the deck, nearly square to its length: fastenings along them let water in, here more and there less. */
function bands(ground: Ground, random: RandomStream): Float64Array {
  const [spacing, lean, wide] = [300 + 300 * random(), 0.35 * (random() - 0.5), 35 + 80 * random()];
  const wetness = new Map<string, number>();
  const wetAt = (beam: number, part: number): number => {
    const key = `${beam} ${part}`;
    const known = wetness.get(key) ?? normal(random);
    wetness.set(key, known);
    return known;
  };
  const partMm = 180 + 250 * random();
  return overCells(ground, ([x, y]) => {
    const across = x + lean * y;
    const beam = Math.round(across / spacing);
    const along = y / partMm;
    const part = Math.floor(along);
    const here = wetAt(beam, part) * (part + 1 - along) + wetAt(beam, part + 1) * (along - part);
    return here - ((across - beam * spacing) / wide) ** 2;
  });
}
