import { growthQuantile, openingsAt } from '#lib/extent';
import type { DriverAmounts } from '#lib/work';
import { productOf, derived } from '#lib/provenance';
import { fraction } from '#lib/units';
import type { Job } from '../job/job.js';
import type { BesideWork } from '../ladder/beside-opening.js';
import type { LadderWork } from '../ladder/method-ladder.js';
import { withBesides } from '../ladder/opened-places.js';
import type { CoreWork } from './core-stage.js';
import type { ExtentWork } from './extent-stage.js';
import { driverAmountsOf, quantitiesOf, type JobQuantities } from './labour-drivers.js';
import type { LaminateWork } from './laminate-stage.js';
import { openingRequestOf, type ScopeWork } from './scope-stage.js';
import type { OpenedScope } from './three-areas.js';

/** The job planned for another extent: what its hours, goods and days are counted by there. */
export interface PlannedExtent {
  readonly extentFactor: number;
  readonly quantities: JobQuantities;
  readonly drivers: DriverAmounts;
  readonly fittingCount: number;
  readonly panelM2: number;
}

export interface ReplanContext {
  readonly job: Job;
  readonly ladder: LadderWork;
  readonly extent: Pick<ExtentWork, 'law'>;
  readonly scope: OpenedScope;
  readonly core: Pick<CoreWork, 'beddedM2' | 'solidL' | 'jointTapeM'>;
  readonly laminate: LaminateWork;
  readonly quantities: JobQuantities;
  readonly beside: BesideWork;
}

/** From nearly all false alarm to the panel's edge: five quantiles of the extent, the record itself among them. */
const probabilities = [0.03, 0.25, 0.6, 0.85, 0.985] as const;
/** Extents nearer than this are one. */
const APART = 0.04;

/** The same planning for larger and smaller extents, rising; what does not grow comes out the same. */
export function replanned(context: ReplanContext): readonly PlannedExtent[] {
  const { job, ladder, extent, scope, quantities, core } = context;
  const recorded: PlannedExtent = {
    extentFactor: 1,
    quantities,
    drivers: driverAmountsOf(quantities),
    fittingCount: scope.plan.fittings.length,
    panelM2: scope.plan.panelAreaM2,
  };
  const factors = apartFrom(
    1,
    probabilities.map((probability) => growthQuantile(extent.law, probability)),
  );
  const openings = openingsAt(scope.plan, openingRequestOf(job, scope.zones), factors);
  const others = openings.map(({ extentFactor, figures, fittings }) => {
    const plan = { ...scope.plan, fittings, figures: { ...scope.plan.figures, ...figures } };
    const again = withBesides(
      job,
      ladder,
      quantitiesOf(job, { ...scope, plan }, laminateAt(context, figures), core),
      context.beside,
    );
    return {
      extentFactor,
      quantities: again,
      drivers: driverAmountsOf(again),
      fittingCount: fittings.length,
      panelM2: scope.plan.panelAreaM2,
    };
  });
  return [...others, recorded].sort((a, b) => a.extentFactor - b.extentFactor);
}

/** The extent that the record states, among those planned; the least where it is none of them. */
export const asRecorded = <T extends { readonly extentFactor: number }>(extents: readonly T[]): T =>
  extents.find(({ extentFactor }) => extentFactor === 1) ?? extents[0];

const apartFrom = (start: number, factors: readonly number[]): readonly number[] =>
  factors.reduce<readonly number[]>(
    (kept, factor) =>
      [start, ...kept].every((other) => Math.abs(other - factor) > APART) ? [...kept, factor] : kept,
    [],
  );

/** The same plies over a larger or smaller opening and its taper. */
function laminateAt(
  { laminate, scope }: ReplanContext,
  { openedArea, taperBandArea }: Pick<ScopeWork['plan']['figures'], 'openedArea' | 'taperBandArea'>,
): LaminateWork {
  const { openedArea: openedBefore, taperBandArea: bandBefore } = scope.plan.figures;
  const before = openedBefore.value + bandBefore.value;
  const ratio = before === 0 ? 1 : (openedArea.value + taperBandArea.value) / before;
  return {
    ...laminate,
    largestPlyM2: productOf('m2', 'largest ply', {
      recorded: laminate.largestPlyM2,
      ratio: derived('1', fraction(ratio), 'opening and taper over those recorded', {
        formula: 'arithmetic.ratio',
        title: 'Ratio',
        symbol: 'r',
        cite: { source: 'ARITHMETIC' },
        inputs: {},
      }),
    }),
  };
}
