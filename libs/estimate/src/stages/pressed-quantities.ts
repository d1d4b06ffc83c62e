import { distance } from '#lib/geometry';
import type { BondPressurePlan, PressLine, PressMethod } from '#lib/press';
import type { DriverQuantities } from '#lib/takeoff';
import { mFromMm, mm } from '#lib/units';
import type { Job } from '../job/job.js';
import { pressLines } from './press-section.js';
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
  readonly job: Job;
  readonly press: BondPressurePlan;
  readonly scope: ScopeWork;
}): { readonly pressed: PressedQuantities; readonly pressedBy: PressMethod | 'nothing' } => {
  const pressed = pressedQuantities(press, pressLines(job, press, scope));
  return job.fill === 'solid'
    ? {
        pressed: { ...pressed, 'press-bag': 0, 'batten-m': 0, 'batten-screw': 0 },
        pressedBy: 'nothing',
      }
    : { pressed, pressedBy: press.method ?? 'nothing' };
};

/** Bags and battens go from one opening to the next; boards and props stand under all of them from before the first cut. */
function pressedQuantities(press: BondPressurePlan, lines: readonly PressLine[]): PressedQuantities {
  const counted = (code: string): number =>
    press.quantities.find((quantity) => quantity.code === code)?.value ?? 0;
  const boards = lines.filter(({ what }) => what === 'board');
  return {
    'prop': boards.reduce((sum, { points }) => sum + points.length, 0),
    'prop-board-m': boards.reduce((sum, { from, to }) => sum + mFromMm(mm(distance(from, to))), 0),
    'press-bag': counted('bags'),
    'batten-m': counted('battens'),
    'batten-screw': counted('screws'),
  };
}
