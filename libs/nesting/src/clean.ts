import { interiorsMeet } from './exact.js';
import type { Field } from './field.js';
import { regionShifted } from './ring.js';

/** Whether no two pieces of a field overlap, by whole-number arithmetic; a search only looks for such states. */
export function isClean(field: Field): boolean {
  const standing = Array.from({ length: field.total }, (_, piece) => {
    const { padded } = field.table.shapes[field.shape[piece]];
    return regionShifted(padded, field.at[0][piece], field.at[1][piece]);
  });
  return standing.every(
    (region, piece) =>
      piece < field.fixed || !standing.slice(0, piece).some((other) => interiorsMeet(other, region)),
  );
}
