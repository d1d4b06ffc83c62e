import { areaMm2, boundsOfPoints, type Region } from '#lib/geometry';
import type { MosaicNumbers } from './rules.js';

const MM2_PER_M2 = 1_000_000;
/** A last bay smaller than this share is bedded with the one before. From memory. */
const OVER_BAY = 1.25;

/** Which bay each piece belongs to, from 1: what is bedded in one go, from one end of the opening to the other. */
export function baysOf(
  pieces: readonly Region[],
  { bayM2 }: Pick<MosaicNumbers, 'bayM2'>,
): readonly number[] {
  const areas = pieces.map((piece) => areaMm2(piece) / MM2_PER_M2);
  const whole = areas.reduce((sum, area) => sum + area, 0);
  if (whole <= OVER_BAY * bayM2) return pieces.map(() => 1);
  const order = fromOneEnd(pieces);
  for (let count = Math.ceil(whole / bayM2); ; count++) {
    const bays = evenBays(areas, order, count);
    const largest = Math.max(...sumsOf(areas, bays, count));
    if (largest <= OVER_BAY * bayM2 || count >= pieces.length) return bays;
  }
}

/** Along the longer side of all of them. */
function fromOneEnd(pieces: readonly Region[]): readonly number[] {
  const box = boundsOfPoints(pieces.flatMap(([{ outer }]) => outer));
  const axis = box !== undefined && box.maxY - box.minY > box.maxX - box.minX ? 1 : 0;
  const middles = pieces.map(([{ outer }]) => {
    const along = outer.map((corner) => corner[axis]);
    return (Math.min(...along) + Math.max(...along)) / 2;
  });
  return pieces.map((_, piece) => piece).sort((a, b) => middles[a] - middles[b] || a - b);
}

function evenBays(areas: readonly number[], order: readonly number[], count: number): readonly number[] {
  const whole = areas.reduce((sum, area) => sum + area, 0);
  const bays = areas.map(() => 1);
  let done = 0;
  for (const piece of order) {
    bays[piece] = Math.min(count, 1 + Math.floor(((done + areas[piece] / 2) / whole) * count));
    done += areas[piece];
  }
  return bays;
}

const sumsOf = (areas: readonly number[], bays: readonly number[], count: number): readonly number[] =>
  Array.from({ length: count }, (_, bay) =>
    areas.reduce((sum, area, piece) => sum + (bays[piece] === bay + 1 ? area : 0), 0),
  );
