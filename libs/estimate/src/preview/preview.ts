import type { Catalogue } from '#lib/catalogue';
import { andThen, inOrder, mapValue, success, type Outcome } from '#lib/kernel';
import { verdictOf } from '../conclusion/verdict.js';
import type { Restoration } from '#lib/panel';
import type { BondPressurePlan } from '#lib/press';
import { rangeOf } from '../document/range.js';
import type { DefectRecord } from '../job/defect-record.js';
import { jobOf, type Job } from '../job/job.js';
import { keptWork } from '../kept-work.js';
import { besideOpening } from '../ladder/beside-opening.js';
import { openedZones, withBesides } from '../ladder/opened-places.js';
import { workOutClosed, type ClosedJob } from '../ladder/closed-job.js';
import { cardsFor, offIn } from '../ladder/hardware.js';
import { ladderOf, type LadderWork } from '../ladder/method-ladder.js';
import { takingRung } from '../ladder/taking-rung.js';
import { scopeSection } from '../sections/scope-section.js';
import { scheduleOf } from '../stages/calendar-stage.js';
import { previewedCost, type PreviewedCost } from '../stages/cost-stage.js';
import { replanned } from '../stages/replan-stage.js';
import { extentOf, type ExtentWork } from '../stages/extent-stage.js';
import { flagsOf, quantitiesOf } from '../stages/labour-drivers.js';
import { labourOf, type LabourWork } from '../stages/labour-stage.js';
import { laminateFor, type LaminateWork, withTapes } from '../stages/laminate-stage.js';
import { pricedWork, type PricingWork } from '../stages/pricing-stage.js';
import { pressedGoods } from '../stages/pressed-quantities.js';
import { pressOf, processOf, type ProcessWork } from '../stages/process-stage.js';
import { restorationWith } from '../stages/schedule-choice.js';
import { withAreas, type OpenedScope } from '../stages/three-areas.js';
import { scopeOf } from '../stages/scope-stage.js';
import { oldSkinsOf } from '../stages/skins.js';
import type { EstimatePreview, PreviewPanel } from './estimate-preview.js';
import { roughCoreFor } from './rough-core.js';

/** As many as an estimate shows; it tries more where none of them restores the panel. */
const MOST_TRIED = 3;

/**
 * Openings, hours and price of a record while it is still being drawn, at a fraction of the work of an estimate.
 * The same stages as the estimate, but for those that `leftOut` names; refuses what the estimate refuses up to there.
 */
export const previewOf = (record: DefectRecord, catalogue: Catalogue): Outcome<EstimatePreview> =>
  andThen(jobOf(record, catalogue), (job) =>
    andThen(ladderOf(job, keptWork(), 'planned'), (ladder) =>
      ladder.chosen.method.reach === 'opening'
        ? mapValue(workOutRoughly(takingRung(job, ladder.chosen), ladder), previewFrom)
        : mapValue(workOutClosed(job, ladder), closedPreview),
    ),
  );

interface RoughWork {
  readonly job: Job;
  readonly extent: ExtentWork;
  readonly scope: OpenedScope;
  readonly laminate: LaminateWork;
  readonly process: ProcessWork;
  readonly labour: LabourWork;
  readonly pricing: PricingWork;
  readonly cost: PreviewedCost;
  readonly panel: PreviewPanel;
}

const workOutRoughly = (job: Job, ladder: LadderWork): Outcome<RoughWork> =>
  inOrder({ job, ladder, plates: ladder.kept.plates, isRough: true })
    .then('extent', () => (ladder.extent === undefined ? extentOf(job, ladder.kept) : success(ladder.extent)))
    .then('scope', ({ extent }) =>
      mapValue(scopeOf(job, openedZones(ladder, extent.zones), ladder.kept), (scope) =>
        withAreas(job, scope),
      ),
    )
    .then('skins', () => oldSkinsOf(job))
    .then('core', ({ scope }) => roughCoreFor(job, scope))
    .then('around', ({ skins, core, plates }) =>
      success({ skins, coreMm: core.coreMm, plates, mostTried: MOST_TRIED }),
    )
    .then('laminate', ({ scope, around }) => laminateFor(job, scope, around))
    .then('beside', ({ scope }) =>
      success(
        besideOpening(job, ladder.combination, {
          method: ladder.chosen.method,
          offAnyway: scope.plan.fittings,
        }),
      ),
    )
    .then('quantities', ({ scope, laminate, core, beside }) =>
      success(withBesides(job, ladder, quantitiesOf(job, scope, laminate, core), beside)),
    )
    .then('press', ({ scope }) => pressOf(job, scope))
    .then('process', (work) => processOf(work))
    .then('panel', ({ around, laminate, press }) =>
      success(panelOf(laminate.restoration ?? restorationWith(job, around, laminate.schedule), press)),
    )
    .then('planned', (work) => success(replanned(work)))
    .then('flags', ({ press }) => success(flagsOf(job, press.innerSkin.props.needed)))
    .then('schedule', (work) =>
      scheduleOf({ ...work, labour: work, turns: work.press.turns, sessions: work.laminate.sessions }),
    )
    .then('labour', ({ quantities, flags, schedule }) =>
      labourOf(job, { quantities, flags, visits: schedule.visits }),
    )
    .then('pricing', (work) =>
      pricedWork(
        {
          ...work,
          laminate: withTapes(work),
          cards: cardsFor(work.job, [...offIn(work.scope.plan.fittings), ...work.beside.off]),
          needsBesides: work.beside.needs,
          ...pressedGoods(work),
        },
        work.process.batches.demand,
        work,
      ),
    )
    .then('cost', (work) =>
      previewedCost({ ...work, demand: work.process.batches.demand }, work.pricing.lines),
    )
    .done();

function panelOf(found: Restoration | undefined, press: BondPressurePlan): PreviewPanel {
  const { code, sentence } = verdictOf({
    isPressed: press.method !== undefined,
    isOpened: true,
    shortfalls: found?.tellable,
  });
  return { verdict: code, sentence, shortfalls: found?.tellable ?? [] };
}

function previewFrom(work: RoughWork): EstimatePreview {
  const { job, extent, scope, laminate, process, labour, cost, pricing, panel } = work;
  const { plan } = scope;
  const { zones, openings, findings, damagedAreaM2 } = scopeSection(job, scope, {
    ...extent,
    next: () => ({}),
  });
  return {
    title: job.record.title ?? 'Deck repair',
    summary: {
      damagedAreaM2,
      openedAreaM2: plan.openedAreaM2,
      cutLengthM: plan.cutLengthM + plan.splitLengthM,
      plyCount: laminate.plyCount,
      mixedResinL: process.batches.demand.totals.totalL,
      labourLikelyH: labour.likelyH,
      labourH: rangeOf(cost.risk.labourH),
      workingDays: rangeOf(cost.risk.workingDays),
      calendarDays: rangeOf(cost.risk.calendarDays),
    },
    zones,
    openings: openings.map(({ label, area, sawLine, areaM2, cutLengthM, cutDepthMm, reason }) => ({
      label,
      area,
      sawLine,
      areaM2,
      cutLengthM,
      ...(cutDepthMm === undefined ? {} : { cutDepthMm }),
      reason,
    })),
    findings,
    panel,
    price: { withoutContingency: cost.total, range: cost.range, missing: pricing.missing },
    leftOut,
  };
}

/** A deck that stays closed has no opening, no laminate and no new core; its work is worked out as in the estimate. */
function closedPreview({ job, ladder, process, labour, pricing, cost }: ClosedJob): EstimatePreview {
  const { code, sentence } = verdictOf({ isPressed: true, isOpened: false });
  return {
    title: job.record.title ?? 'Deck repair',
    summary: {
      openedAreaM2: 0,
      cutLengthM: 0,
      plyCount: 0,
      mixedResinL: process.batches.demand.totals.totalL,
      labourLikelyH: labour.likelyH,
      labourH: rangeOf(cost.risk.labourH),
      workingDays: rangeOf(cost.risk.workingDays),
      calendarDays: rangeOf(cost.risk.calendarDays),
    },
    zones: [],
    openings: [],
    findings: ladder.extent?.findings ?? [],
    panel: { verdict: code, sentence, shortfalls: [] },
    price: {
      withoutContingency: cost.totals.total,
      range: cost.totals.range,
      missing: pricing.missing,
    },
    leftOut: ['The deck stays closed: no opening is drawn and the panel is not compared.'],
  };
}

const leftOut = [
  'Core is priced by area at four fifths of each sheet: its pieces, their order and the sheets are laid out in the estimate.',
  'Of the schedules that restore the skin the three cheapest are tried on the panel; the estimate tries up to forty.',
  'The panel is compared as built and repaired; as found, opened, fittings and every check stand in the estimate.',
  'What better evidence would save, and the contingency by kind of risk, stand in the estimate.',
  'Cure, weather and gates stand in the estimate.',
] as const;
