import type { BondPressurePlan } from '#lib/press';
import type { DriverQuantities } from '#lib/takeoff';
import { mFromMm, mm } from '#lib/units';
import { extentOfOutline } from '../job/outline-size.js';
import type { ScopeWork } from './scope-stage.js';

/** What the press and the props are bought by. */
export type PressedQuantities = Pick<
  DriverQuantities,
  'prop' | 'prop-board-m' | 'press-bag' | 'batten-m' | 'batten-screw'
>;

/**
 * Props, boards, bags and battens as the press plan of the largest opening counts them. Bags and battens go from one
 * opening to the next; props stand under all of them from before the first cut, as dense as under the largest.
 */
export function pressedQuantities(press: BondPressurePlan, { plan }: ScopeWork): PressedQuantities {
  const [largest] = plan.openings;
  const box = extentOfOutline(largest.area.outer);
  const longestM = mFromMm(mm(Math.max(box.maxX - box.minX, box.maxY - box.minY)));
  const counted = (code: string): number =>
    press.quantities.find((quantity) => quantity.code === code)?.value ?? 0;
  const openings = plan.openings.reduce((sum, { areaM2 }) => sum + areaM2, 0) / largest.areaM2;
  return {
    'prop': Math.ceil(counted('props') * openings - 1e-9),
    'prop-board-m': counted('prop-boards') * longestM * openings,
    'press-bag': counted('bags'),
    'batten-m': counted('battens'),
    'batten-screw': counted('screws'),
  };
}
