import type { Catalogue } from '#lib/catalogue';
import { andThen, inOrder, mapValue, success, type Outcome } from '#lib/kernel';
import { concluded } from './conclusion/conclusion.js';
import { closedDocumentOf } from './document/closed-document.js';
import { documentOf } from './document/document.js';
import type { EstimateWithWhy } from './document/estimate-document.js';
import type { DefectRecord } from './job/defect-record.js';
import { jobOf, type Job } from './job/job.js';
import { keptWork, type KeptWork } from './kept-work.js';
import { workOutClosed, type ClosedJob } from './ladder/closed-job.js';
import { cardsFor, offIn } from './ladder/hardware.js';
import { ladderOf, type LadderWork, type RungsShown } from './ladder/method-ladder.js';
import { besideOpening } from './ladder/beside-opening.js';
import { openedZones, withBesides } from './ladder/opened-places.js';
import { takingRung } from './ladder/taking-rung.js';
import { scheduleOf } from './stages/calendar-stage.js';
import { replanned } from './stages/replan-stage.js';
import { panelCheckOf } from './stages/check-stage.js';
import { coreFor } from './stages/core-stage.js';
import { costOf } from './stages/cost-stage.js';
import { extentOf } from './stages/extent-stage.js';
import { flagsOf, quantitiesOf } from './stages/labour-drivers.js';
import { labourOf } from './stages/labour-stage.js';
import { jointTapes } from './ladder/joint-tapes.js';
import { laminateFor, withTapes } from './stages/laminate-stage.js';
import { pressedGoods } from './stages/pressed-quantities.js';
import { pricedWork } from './stages/pricing-stage.js';
import { pressOf, processOf } from './stages/process-stage.js';
import { scopeOf } from './stages/scope-stage.js';
import { oldSkinsOf } from './stages/skins.js';
import { withAreas } from './stages/three-areas.js';
import { weatherOf } from './stages/weather-stage.js';
import { lesserCut, withWiderCut } from './wider-cut.js';
import type { WorkedJob } from './worked-job.js';

/**
 * The main job: from what somebody knows about a soft deck to a priced, explained estimate.
 *
 * Pure: the same record, catalogue and engine version give the same document to the last digit. Refuses with every
 * problem at once when the record cannot be estimated; what merely does not fit is a finding or a failed check inside.
 */
export const estimate = (
  record: DefectRecord,
  catalogue: Catalogue,
  engineVersion: string,
): Outcome<EstimateWithWhy> =>
  andThen(jobOf(record, catalogue), (job) =>
    mapValue(workedWay(job, keptWork(), 'all'), (worked) => {
      const { estimate: body, derivations } =
        worked.kind === 'opened'
          ? documentOf(worked.work, engineVersion)
          : closedDocumentOf(worked.work, engineVersion);
      return { estimate: concluded(body, record, catalogue.sources), derivations };
    }),
  );

/** The planned rung worked out in full: a deck that is opened, or one that stays closed. */
export type WorkedWay =
  | { readonly kind: 'opened'; readonly work: WorkedJob }
  | { readonly kind: 'closed'; readonly work: ClosedJob };

export const workedWay = (job: Job, kept: KeptWork, shown: RungsShown): Outcome<WorkedWay> =>
  andThen(ladderOf(job, kept, shown), (ladder): Outcome<WorkedWay> =>
    ladder.chosen.method.reach === 'opening'
      ? mapValue(workOutCut(takingRung(job, ladder.chosen), ladder), (work) => ({ kind: 'opened', work }))
      : mapValue(workOutClosed(job, ladder), (work) => ({ kind: 'closed', work })),
  );

/** Every schedule tried costs a panel check; prices have risen by about a fifth when so many have been passed over. */
const MOST_TRIED = 40;

/** With the usual cut, or with a wider one where a lip is worth opening. */
const workOutCut = (job: Job, ladder: LadderWork): Outcome<WorkedJob> =>
  mapValue(workOut(job, ladder), (usual) => {
    const wider = withWiderCut(usual);
    const tried = wider === undefined ? undefined : workOut(wider, ladder);
    return tried?.ok === true ? lesserCut(usual, tried.value) : usual;
  });

/** The stages in the order in which each needs the ones before. */
const workOut = (job: Job, ladder: LadderWork): Outcome<WorkedJob> =>
  inOrder({ job, ladder, plates: ladder.kept.plates })
    .then('extent', () => (ladder.extent === undefined ? extentOf(job, ladder.kept) : success(ladder.extent)))
    .then('scope', ({ extent }) =>
      mapValue(scopeOf(job, openedZones(ladder, extent.zones), ladder.kept), (scope) =>
        withAreas(job, scope),
      ),
    )
    .then('skins', () => oldSkinsOf(job))
    .then('core', ({ scope }) => coreFor(job, scope, ladder.kept))
    .then('laminate', ({ scope, skins, core, plates }) =>
      laminateFor(job, scope, { skins, coreMm: core.coreMm, plates, mostTried: MOST_TRIED }),
    )
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
    .then('panel', (work) => panelCheckOf({ ...work, clampPressureKPa: work.press.requiredKPa }))
    .then('planned', (work) => success(replanned(work)))
    .then('flags', ({ press }) => success(flagsOf(job, press.innerSkin.props.needed)))
    .then('schedule', (work) =>
      scheduleOf({ ...work, labour: work, turns: work.press.turns, sessions: work.laminate.sessions }),
    )
    .then('calendar', ({ schedule }) => schedule.plan())
    .then('labour', ({ quantities, flags, schedule }) =>
      labourOf(job, { quantities, flags, visits: schedule.visits }),
    )
    .then('weather', (work) => weatherOf(work))
    .then('pricing', (work) =>
      pricedWork(
        {
          ...work,
          laminate: withTapes({ ...work, tapes: jointTapes(job, work.core) }),
          cards: cardsFor(work.job, [...offIn(work.scope.plan.fittings), ...work.beside.off]),
          needsBesides: work.beside.needs,
          ...pressedGoods(work),
        },
        work.process.batches.demand,
        work,
      ),
    )
    .then('cost', (work) => costOf({ ...work, demand: work.process.batches.demand }, work.pricing.lines))
    .done();
