import { cautionsFor } from '#lib/cautions';
import { mixedFacts, recordFacts, usesSolvent } from '../stages/caution-facts.js';
import { coatingsOf } from '../stages/coatings.js';
import { coreFoundBy } from '../stages/core-readings.js';
import { isKnown } from '#lib/kernel';
import { m2FromMm2, mm2 } from '#lib/units';
import { measuredFindings } from '../job/measured.js';
import type { ClosedJob } from '../ladder/closed-job.js';
import { netAreaMm2 } from '../ladder/deck-facts.js';
import { pricedLadder } from '../ladder/priced-ladder.js';
import { panelScope, zoneScope } from '../sections/deck-scope.js';
import { linesSection, sectionsSection } from '../sections/lines-section.js';
import { overlayIn, overlayOut } from '../sections/scope-section.js';
import { hardwareCard, leakSection, methodsSection } from '../sections/methods-section.js';
import { calendarSection } from '../stages/calendar-stage.js';
import { gateGroups, gatesOf } from '../stages/gate-groups.js';
import { figuresOf } from '../stages/labour-drivers.js';
import { potsSection } from '../stages/process-stage.js';
import { ofRecord, onceEach, recordAssumptions, stampOf } from './document.js';
import { workAndMoney } from './work-and-money.js';
import type {
  BodyWithWhy,
  Caution,
  FittingScope,
  LeftOutSection,
  Scope,
  BodySummary,
} from './estimate-document.js';

/** The document of a job that leaves the deck closed: what it has no use for is left out with the reason. */
export function closedDocumentOf(work: ClosedJob, engineVersion: string): BodyWithWhy {
  const { job, ladder, cost, pricing, process, calendar } = work;
  const { startDate } = job.answers.crew;
  return {
    estimate: {
      title: job.record.title ?? 'Deck repair',
      ...(job.record.reference === undefined ? {} : { reference: job.record.reference }),
      summary: summaryOf(work),
      methods: methodsSection(ladder, pricedLadder(job, ladder, work)),
      scope: scopeOf(work),
      leftOut,
      hardware: work.cards.map(hardwareCard),
      leak: leakSection(job, ladder.chosen, {
        cards: work.cards,
        isTreated: work.plan.isLeakTreated,
      }),
      checks: [],
      process: {
        ...potsSection(
          job,
          process,
          gatesOf(
            gateGroups(job, process.batches.resin.hardener),
            calendar.tasks.map(({ gate }) => gate),
          ),
        ),
        cure: [],
        calendar: calendarSection(calendar, isKnown(startDate) ? startDate.value : undefined),
      },
      sections: sectionsSection(cost.rollUp),
      lines: linesSection(cost.rollUp, pricing.needs, work.labour),
      totals: cost.totals,
      cautions: cautionsOf(work),
      assumptions: onceEach([
        ...recordAssumptions(work),
        ...ofRecord([...pricing.assumptions, ...figuresOf(work.plan.quantities).map(([, figure]) => figure)]),
      ]),
      limits: limitsOf(work),
      provenance: stampOf(job, engineVersion),
    },
    derivations: {
      ...Object.fromEntries(cost.rollUp.lines.map(({ code, why }) => [code, why])),
      ...Object.fromEntries(
        figuresOf(work.plan.quantities).map(([name, figure]) => [`quantity:${name}`, figure] as const),
      ),
    },
  };
}

/** The deck stays closed. */
const leftOut: readonly LeftOutSection[] = [
  { section: 'core', because: 'no core is cut' },
  { section: 'laminate', because: 'no skin is laid' },
  { section: 'panel', because: 'its skins carry as they did' },
  { section: 'bond-pressure', because: 'nothing is bedded that would have to be pressed' },
];

const summaryOf = (work: ClosedJob): BodySummary => ({
  openedAreaM2: 0,
  cutLengthM: 0,
  coreSheets: 0,
  ...workAndMoney(work),
});

const fittingsIn = ({ record }: ClosedJob['job'], cards: ClosedJob['cards']): readonly FittingScope[] =>
  (record.fittings ?? []).flatMap(({ id, kind, at }) => {
    const card = cards.find((one) => one.id === id);
    return card === undefined
      ? []
      : [
          {
            id,
            kind,
            at,
            holes: card.fasteners,
            where: 'near',
            work: ['remove', 'pot', 'refit'],
            isHighlyLoaded: card.referral !== undefined,
          },
        ];
  });

function scopeOf({ job, ladder, cards, plan }: ClosedJob): Scope {
  const { besides } = plan.quantities;
  const isOverlayOff =
    besides['overlay-screwed-m2'] !== undefined || besides['overlay-glued-m2'] !== undefined;
  const { panel } = job.record;
  const areaM2 = m2FromMm2(mm2(netAreaMm2(panel)));
  const zones = ladder.extent?.zones ?? [];
  const dug = ladder.combination.reduce((sum, { place }) => sum + place.badAreaM2, 0);
  return {
    panel: panelScope(panel, areaM2),
    evidence: ladder.extent?.grade ?? job.answers.evidence.value,
    damagedAreaM2: ladder.extent?.damagedAreaM2 ?? { p10: dug, p50: dug, p90: dug },
    zones: zones.map(zoneScope),
    contours: ladder.extent?.contours ?? [],
    ...ladder.extent?.next(),
    openings: [],
    openedAreaM2: 0,
    retainedAreaM2: areaM2,
    undercutAreaM2: 0,
    coreOutAreaM2: 0,
    coreStaysAreaM2: 0,
    cutLengthM: 0,
    taperBandM2: 0,
    fittings: fittingsIn(job, cards),
    findings: [...measuredFindings(job.stated), ...(ladder.extent?.findings ?? [])],
    method: [{ choice: 'Method', value: ladder.chosen.method.title, reason: ladder.chosen.deciding.text }],
    included: [
      ...ladder.chosen.method.stages,
      ...(cards.length === 0
        ? []
        : [`fittings off, bedded and bolted: ${cards.map(({ id }) => id).join(', ')}`]),
      ...(isOverlayOff ? overlayIn(job) : []),
    ],
    excluded: [
      ...ladder.chosen.leavesUndone,
      ...overlayOut(job),
      'lift-out, lay days and cover: none is needed for this',
      'lining below, beyond what is unscrewed to reach the nuts',
    ],
  };
}

function cautionsOf(work: ClosedJob): readonly Caution[] {
  const { job, process, labour, cards, ladder, pricing, plan } = work;
  const found = coreFoundBy(job.record.survey, []);
  return cautionsFor({
    flags: labour.flags,
    ...recordFacts(job),
    ...mixedFacts(job, process.batches),
    ...nothingOpened,
    injectedAreaM2: plan.quantities.injectedM2.value,
    coatings: coatingsOf(job).filter(({ code }) => pricing.needs.some(({ material }) => material === code)),
    usesSolvent: usesSolvent(job, pricing.needs),
    fittings: cards.map(({ id, kind, fasteners, referral }) => ({
      id,
      kind,
      isHighlyLoaded: referral !== undefined,
      isThroughBolted: fasteners > 0,
    })),
    solidInserts: plan.quantities.inserts.value,
    coreMoisturePercent: found.wettestPlugPercent,
    coreReadings: found.readings,
    evidence: ladder.extent?.grade ?? job.answers.evidence.value,
    innerSkinHasHoles: cards.length > 0,
  });
}

/** A deck that stays closed is not cut, tapered, pressed or left open to the night. */
const nothingOpened = {
  openedAreaM2: 0,
  coldestNightC: 'unknown',
  needsBleedHoles: false,
  proudMm: 0,
  taperFits: true,
  innerSkinSpanMm: 'unknown',
  weightsKg: 0,
} as const;

/** Where somebody has looked: no more is said to be seen than was. */
function seenAt({ job: { record }, ladder }: ClosedJob): string {
  const isDug = ladder.combination.some(({ place }) => isKnown(place.wetReachMm));
  const hasPlugs = record.survey?.readings?.some(({ kind }) => kind === 'plug') === true;
  const where = [...(isDug ? ['its holes'] : []), ...(hasPlugs ? ['its plugs'] : [])].join(' and ');
  return where === ''
    ? 'No core was seen: its state is judged from outside, and shows when the first hole is open.'
    : `The core was seen at ${where} only: what lies beyond is judged.`;
}

const limitsOf = (work: ClosedJob): readonly string[] => {
  const { pricing, ladder } = work;
  const unpriced = pricing.needs.filter(({ id }) => pricing.missing.includes(id)).map(({ title }) => title);
  return [
    seenAt(work),
    ...ladder.chosen.conditions.map(({ text }) => `Condition: ${text}.`),
    ...(unpriced.length === 0
      ? []
      : [`Not in the price list, and so not in the total: ${unpriced.join(', ')}.`]),
    'Local rules and licensed or qualified people decide; this document plans and prices, it approves nothing.',
  ];
};
