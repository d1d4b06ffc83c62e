import { areaMm2, offset, readOutline, ringsOf, type Region } from '#lib/geometry';

/** Smaller than the hole of a plug: nothing to cut for. */
const LEAST_MM2 = 400;

/** As many zones as a record takes. */
const MOST_ZONES = 40;

/** Gaps closed first when there are too many zones; doubled until they are few enough. */
const FIRST_GAP_MM = 50;

/** A contour as zones that a record accepts: no specks, no outline that touches itself, and no more of them than a person can mark. */
export const drawable = (contour: Region): Region => few(simple(withoutSpecks(contour)), FIRST_GAP_MM);

const withoutSpecks = (region: Region): Region =>
  region
    .filter((polygon) => areaMm2([polygon]) >= LEAST_MM2)
    .map(({ outer, holes }) => ({
      outer,
      holes: holes.filter((hole) => areaMm2([{ outer: [...hole].reverse(), holes: [] }]) >= LEAST_MM2),
    }));

/** Where an outline touches itself in a point the halves are parted by a tenth of a millimetre. */
const simple = (region: Region): Region =>
  ringsOf(region).every((ring) => readOutline(ring).ok)
    ? region
    : withoutSpecks(offset(offset(region, -1, 'miter'), 0.9, 'miter'));

/** Zones too many to mark one by one are those of a patchy deck: near ones are taken together. */
function few(region: Region, gapMm: number): Region {
  if (region.length <= MOST_ZONES || gapMm > 2000) return region;
  return few(
    simple(withoutSpecks(offset(offset(region, gapMm / 2, 'round', 0.5), -gapMm / 2, 'round', 0.5))),
    2 * gapMm,
  );
}
