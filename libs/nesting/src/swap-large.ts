import type { Field } from './field.js';
import type { Shortening } from './strip-job.js';

/** The largest pieces that make up this share of all boxes are called large. */
const largeShare = 0.75;
/** Exchanging pieces that differ by less changes nothing. */
const sameSize = 0.01;

/** Exchanges the places of two large pieces of different size: small ones find new places by themselves, large ones do not. */
export function swapLarge(context: Shortening, target: number): void {
  const { field, random } = context;
  const sizes = Array.from(
    field.shape,
    (shape) => field.table.shapes[shape].width * field.table.shapes[shape].height,
  );
  const large = largeOf(sizes);
  const one = large[Math.floor(random() * large.length)];
  const others = large.filter((other) => Math.abs(sizes[other] - sizes[one]) > sameSize * sizes[one]);
  if (others.length === 0) return;
  const other = others[Math.floor(random() * others.length)];
  const [here, there] = [middleOf(field, one), middleOf(field, other)];
  putMiddle(context, target, one, there);
  putMiddle(context, target, other, here);
}

function largeOf(sizes: readonly number[]): readonly number[] {
  const falling = sizes.map((_, piece) => piece).sort((p, q) => sizes[q] - sizes[p] || p - q);
  const whole = sizes.reduce((sum, size) => sum + size, 0);
  let sum = 0;
  return falling.filter((piece, k) => {
    const isLarge = k < 2 || sum < largeShare * whole;
    sum += sizes[piece];
    return isLarge;
  });
}

type Middle = readonly [x: number, y: number];

function middleOf({ at, shape, table }: Field, piece: number): Middle {
  const { width, height } = table.shapes[shape[piece]];
  return [at[0][piece] + width / 2, at[1][piece] + height / 2];
}

/** As near to the place as the strip allows. */
function putMiddle({ field, job }: Shortening, target: number, piece: number, [x, y]: Middle): void {
  const { width, height } = field.table.shapes[field.shape[piece]];
  const within = (value: number, low: number, high: number): number =>
    Math.round(Math.max(low, Math.min(high, value)));
  field.moveTo(
    piece,
    within(x - width / 2, job.low[0], target - width),
    within(y - height / 2, job.low[1], job.top - height),
  );
}
