import type { ZoneShape } from '#lib/extent';
import type { PlaceChoice } from '#lib/methods';

/** Zones that are opened; one that is mended closed is left out of the cut. */
export function openedIn<T extends ZoneShape>(
  combination: readonly PlaceChoice[],
  zones: readonly T[],
): readonly T[] {
  const closed = combination
    .filter(({ rung }) => rung.method.reach !== 'opening')
    .map(({ place }) => place.id);
  return zones.filter(({ id }) => !closed.includes(id));
}
