import { coreBill } from '#lib/coring';
import { estimateExtent, planOpenings } from '#lib/extent';
import { keptPlates, type PlateSource } from '#lib/panel';

/**
 * What rooms have answered, for as long as one request is worked on: the rungs of a ladder, the job that takes one of them and
 * the variants of a record ask them much the same.
 */
export interface KeptWork {
  readonly extent: typeof estimateExtent;
  readonly openings: typeof planOpenings;
  readonly core: (request: Parameters<typeof coreBill>[0]) => ReturnType<typeof coreBill>;
  readonly plates: PlateSource;
}

export const keptWork = (): KeptWork => ({
  extent: askedOnce(estimateExtent),
  openings: askedOnce(planOpenings),
  core: askedOnce((request) => coreBill(request)),
  plates: keptPlates(),
});

/** Requests are plain values: the same text is the same question. */
function askedOnce<Q extends object, A>(room: (request: Q) => A): (request: Q) => A {
  const known = new Map<string, A>();
  return (request) => {
    const key = JSON.stringify(request);
    const found = known.get(key) ?? room(request);
    known.set(key, found);
    return found;
  };
}
