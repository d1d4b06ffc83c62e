import type { BondPressurePlan, PressMethod } from '#lib/press';
import type { DriverQuantities } from '#lib/takeoff';
import { mFromMm, mm } from '#lib/units';
import { extentOfOutline } from '../job/outline-size.js';
import type { Job } from '../job/job.js';
import type { ScopeWork } from './scope-stage.js';

/** What the press and the props are bought by. */
export type PressedQuantities = Pick<
  DriverQuantities,
  'prop' | 'prop-board-m' | 'press-bag' | 'batten-m' | 'batten-screw'
>;

/** What is bought to press and prop; a spot that is filled solid is propped and not pressed. */
export const pressedGoods = ({
  job,
  press,
  scope,
}: {
  readonly job: Pick<Job, 'fill'>;
  readonly press: BondPressurePlan;
  readonly scope: ScopeWork;
}): { readonly pressed: PressedQuantities; readonly pressedBy: PressMethod | 'nothing' } => {
  const pressed = pressedQuantities(press, scope);
  return job.fill === 'solid'
    ? {
        pressed: { ...pressed, 'press-bag': 0, 'batten-m': 0, 'batten-screw': 0 },
        pressedBy: 'nothing',
      }
    : { pressed, pressedBy: press.method ?? 'nothing' };
};

/**
 * Props, boards, bags and battens as the press plan of the largest opening counts them. Bags and battens go from one
 * opening to the next; props stand under all of them from before the first cut, as dense as under the largest.
 */
function pressedQuantities(press: BondPressurePlan, { plan }: ScopeWork): PressedQuantities {
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
