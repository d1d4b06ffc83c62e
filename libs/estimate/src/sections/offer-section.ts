import { loadingOf } from '#lib/costing';
import type { MoneyJson } from '#lib/money';
import type { Totals } from '../document/estimate-document.js';
import { nearMoney } from '../stages/cost-context.js';
import { asRecorded } from '../stages/replan-stage.js';
import { perMoreM2 } from '../stages/job-at-extents.js';
import type { WorkedHours } from '../stages/labour-stage.js';
import { isStageZero } from '../stages/stage-zero.js';
import type { TotalsContext } from './totals-context.js';

/** A firm price for opening and mapping, and rates by which everything found after it is paid. */
export function offerOf(totals: TotalsContext): Totals['offer'] {
  const { context, risk } = totals;
  const percent = context.job.answers.pricing.authorisationPercent.value;
  return {
    stageZero: stageZeroOf(totals),
    unitRates: unitRatesOf(totals),
    authorisation: {
      percent,
      labourH: risk.labourH.mean * (1 + percent / 100),
      basis: `No hour above these, ${percent} % more than expected, is worked before the owner has agreed in writing.`,
    },
    holdPoint:
      'Work stops when the core is out: opening, cut and fittings are measured again, and the difference is charged or credited by the rates below.',
  };
}

function stageZeroOf({ context, bare, rollUp, risk, better }: TotalsContext): Totals['offer']['stageZero'] {
  const lines = bare.lines.filter(isStageZero);
  const opened = better.find(({ grade }) => grade === 'opened-and-measured');
  const loading = loadingOf(bare);
  return {
    title: 'Stage 0, at a firm price: open and map, up to the hold',
    amount: nearMoney(rollUp, loading * lines.reduce((sum, { amount }) => sum + Number(amount.amount), 0)),
    labourH: lines.reduce((sum, { quantity }) => sum + Number(quantity.charged), 0),
    contingencyFreed: nearMoney(
      rollUp,
      opened === undefined || context.job.record.pricing?.contingencyPercent !== undefined
        ? 0
        : Math.max(0, risk.contingency - opened.contingency),
    ),
    lines: lines.map(({ code }) => code),
  };
}

interface RateRule {
  readonly code: Totals['offer']['unitRates'][number]['code'];
  readonly what: string;
  readonly unit: string;
  readonly drivers: readonly string[];
}

const rules: readonly RateRule[] = [
  {
    code: 'opened-m2',
    what: 'Deck opened, core replaced, closed and faired, goods counted',
    unit: 'm2',
    drivers: [
      'opened-m2',
      'loose-skin-m2',
      'held-skin-m2',
      'loose-core-m2',
      'held-core-m2',
      'laminate-m2',
      'extra-ply-m2',
      'faired-m2-cycle',
      'support-m2-below',
    ],
  },
  { code: 'cut-m', what: 'Cut, reamed and tapered', unit: 'm', drivers: ['cut-m', 'taper-m'] },
  { code: 'hole', what: 'Hole potted and redrilled', unit: 'each', drivers: ['hole'] },
  {
    code: 'fitting-h',
    what: 'Fitting taken off and bedded again, for each hour of its card',
    unit: 'h',
    drivers: ['fitting-off-h', 'fitting-on-h', 'fitting-helped-h'],
  },
  {
    code: 'visit',
    what: 'Visit more: set up and pack up',
    unit: 'day',
    drivers: ['day', 'shade-day', 'heat-day'],
  },
];

/** Only what the job has is rated: a rate without a quantity behind it would be a guess. */
function unitRatesOf(totals: TotalsContext): Totals['offer']['unitRates'] {
  const { context, bare, rollUp } = totals;
  const loading = loadingOf(bare);
  return rules.flatMap(({ code, what, unit, drivers }) => {
    const worked = context.labour.operations.filter(({ driver }) => drivers.includes(driver));
    const quantity = quantityOf(code, totals);
    if (worked.length === 0 || quantity <= 0) return [];
    const labour = worked.reduce((sum, operation) => sum + billedFor(totals, operation), 0);
    const more =
      code === 'opened-m2'
        ? perMoreM2(totals.extents, ({ goods, charges }) => goods + charges)
        : code === 'visit'
          ? chargesPerVisit(totals)
          : 0;
    const rate: MoneyJson = nearMoney(rollUp, (labour / quantity) * loading + more);
    return [{ code, what, unit, quantity, rate }];
  });
}

const billedFor = ({ context }: TotalsContext, { isOwn, skill, meanH }: WorkedHours): number =>
  isOwn ? 0 : meanH * Number(context.job.labourRates.perHour[skill]);

function quantityOf(code: RateRule['code'], { context }: TotalsContext): number {
  const recorded = asRecorded(context.planned);
  switch (code) {
    case 'visit':
      return context.schedule.visits.value;
    case 'fitting-h':
      return (recorded.drivers['fitting-off-h'] ?? 0) + (recorded.drivers['fitting-on-h'] ?? 0);
    default:
      return recorded.drivers[code] ?? 0;
  }
}

const chargesPerVisit = ({ context: { job }, bare }: TotalsContext): number =>
  bare.lines
    .filter(({ code }) =>
      job.labourRates.charges.some((charge) => charge.per === 'worked-day' && code === `yard-${charge.code}`),
    )
    .reduce((sum, { unitRate }) => sum + Number(unitRate.amount), 0);
