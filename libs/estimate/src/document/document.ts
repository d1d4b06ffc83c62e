import { assumptionsOf, type Figure } from '#lib/provenance';
import { withDays } from '#lib/calendar';
import { isKnown } from '#lib/kernel';
import { paceSigma, priceSigma } from '#lib/costing';
import { growthCite, type EvidenceGrade } from '#lib/extent';
import type { Assumption, Check, BodyWithWhy, ProvenanceStamp, BodySummary } from './estimate-document.js';
import { bayOf } from '../stages/panel-values.js';
import { calendarSection } from '../stages/calendar-stage.js';
import { cautionsOf } from '../stages/caution-stage.js';
import { panelChecks, panelSection, type OpenDeck } from '../sections/check-section.js';
import type { Job } from '../job/job.js';
import { cardsFor, offIn } from '../ladder/hardware.js';
import { pricedLadder } from '../ladder/priced-ladder.js';
import { hardwareCard, leakSection, methodsSection } from '../sections/methods-section.js';
import { figuresOf } from '../stages/labour-drivers.js';
import { linesSection, sectionsSection } from '../sections/lines-section.js';
import { gateGroups } from '../stages/gate-groups.js';
import { pressSection } from '../stages/press-section.js';
import { potsSection } from '../stages/process-stage.js';
import { scopeSection } from '../sections/scope-section.js';
import type { WorkedJob } from '../worked-job.js';
import { cureSection, weatherChecks, weatherSection } from '../sections/weather-section.js';
import { workAndMoney } from './work-and-money.js';

/** Puts everything worked out into the document, and keeps the derivations beside it. */
export function documentOf(work: WorkedJob, engineVersion: string): BodyWithWhy {
  const { job, core, laminate, cost, pricing, scope } = work;
  const { startDate } = job.answers.crew;
  const hardware = cardsFor(job, [...offIn(scope.plan.fittings), ...work.beside.off]);
  const open = openDeckOf(work);
  const panel = panelChecks(work.panel, bayOf(work.job), open);
  const checks: readonly Check[] = [
    ...core.checks,
    ...laminate.checks,
    ...panel.checks,
    ...weatherChecks(job, work.process, work.weather),
  ];
  return {
    estimate: {
      title: job.record.title ?? 'Deck repair',
      ...(job.record.reference === undefined ? {} : { reference: job.record.reference }),
      summary: summaryOf(work),
      methods: methodsSection(work.ladder, pricedLadder(job, work.ladder, work)),
      scope: scopeSection(job, work.scope, work.extent),
      core: core.section,
      laminate: laminate.section,
      panel: panelSection(work.panel, bayOf(job), open),
      leftOut: [],
      hardware: hardware.map(hardwareCard),
      leak: leakSection(job, work.ladder.chosen, { cards: hardware, isTreated: work.beside.isLeakTreated }),
      checks,
      process: {
        ...potsSection(job, work.process, gateGroups(job, work.process.batches.resin.hardener)),
        bondPressure: pressSection(work),
        cure: cureSection(job, work.process, work.weather),
        ...weatherSection(work.weather),
        calendar: calendarSection(
          withDays(work.calendar, work.schedule.momentAfter, work.cost.risk),
          isKnown(startDate) ? startDate.value : undefined,
        ),
      },
      sections: sectionsSection(cost.rollUp),
      lines: linesSection(cost.rollUp, pricing.needs, work.labour),
      totals: cost.totals,
      cautions: cautionsOf(work, checks),
      assumptions: assumptionsIn(work),
      limits: limitsOf(work),
      provenance: stampOf(job, engineVersion),
    },
    derivations: {
      ...Object.fromEntries(cost.rollUp.lines.map(({ code, why }) => [code, why])),
      ...panel.derivations,
      ...quantityFigures(work),
    },
  };
}

export const stampOf = (job: WorkedJob['job'], engineVersion: string): ProvenanceStamp => ({
  engineVersion,
  edition: job.catalogue.edition,
  catalogueHash: job.catalogue.hash,
  priceList: job.priceList.code,
  labourRates: job.labourRates.code,
});

function summaryOf(work: WorkedJob): BodySummary {
  const { scope, core } = work;
  return {
    openedAreaM2: scope.plan.openedAreaM2,
    cutLengthM: scope.plan.cutLengthM + scope.plan.splitLengthM,
    coreSheets: core.sheets.reduce((sum, { count }) => sum + count.value, 0),
    ...workAndMoney(work),
  };
}

const quantityFigures = ({ quantities, core, laminate }: WorkedJob): Readonly<Record<string, Figure>> =>
  Object.fromEntries([
    ...figuresOf(quantities).map(([name, figure]) => [`quantity:${name}`, figure] as const),
    ['quantity:coreM2', core.beddedM2],
    ['quantity:largestPlyM2', laminate.largestPlyM2],
  ]);

/** Each once: the first place that names it. */
export function onceEach(all: readonly Assumption[]): readonly Assumption[] {
  const once = new Map<string, Assumption>();
  for (const assumption of all.filter(({ source }) => source !== 'ARITHMETIC')) {
    const key = `${assumption.at} ${assumption.meaning}`;
    if (!once.has(key)) once.set(key, assumption);
  }
  return [...once.values()];
}

/** Every default taken anywhere, once: under the record where it has the field, otherwise under the room that has; counting to one is not an assumption. */
const isCutFromBelow = ({ answers }: Job): boolean => answers.method.access.value === 'from-below';

const openDeckOf = ({ job, press }: WorkedJob): OpenDeck =>
  isCutFromBelow(job) && press.innerSkin !== undefined ? { above: press.innerSkin } : {};

const assumptionsIn = (work: WorkedJob): readonly Assumption[] =>
  onceEach([...recordAssumptions(work), ...roomAssumptions(work), ...quantityAssumptions(work)]);

export const recordAssumptions = ({ job }: Pick<WorkedJob, 'job'>): readonly Assumption[] =>
  job.assumptions.map((assumption) => ({ of: 'record', ...assumption }));

/** What stands behind hours and quantities: shares and coats of the record's method, and once more what the rooms assumed. */
const quantityAssumptions = ({ pricing, labour, quantities }: WorkedJob): readonly Assumption[] =>
  ofRecord([
    ...pricing.assumptions,
    ...labour.operations.map(({ driverFigure }) => driverFigure),
    ...figuresOf(quantities).map(([, figure]) => figure),
  ]);

export const ofRecord = (figures: readonly Figure[]): readonly Assumption[] =>
  figures.flatMap((figure) => assumptionsOf(figure)).flatMap((figure) => assumptionFrom(figure, 'record'));

/** Defaults of the rooms, each under the endpoint that lets a caller set it. */
function roomAssumptions({
  job,
  scope: { plan },
  extent,
  core,
  cost,
  process,
  press,
  panel,
  laminate,
  calendar,
  weather,
}: WorkedJob): readonly Assumption[] {
  const under = (of: string, found: readonly Omit<Assumption, 'of'>[]): readonly Assumption[] =>
    found.map(({ at, meaning, value, because, source }) => ({
      of: `/v1/estimating/${of}`,
      at,
      meaning,
      value,
      because,
      source,
    }));
  return [
    ...[...extent.assumptions(), ...plan.assumptions].flatMap((figure) =>
      assumptionFrom(figure, '/v1/estimating/openings'),
    ),
    ...riskAssumptions(cost),
    ...[...core.bill.assumptions].flatMap((figure) => assumptionFrom(figure, '/v1/estimating/core-bill')),
    ...under('resin-batches', process.batches.assumptions),
    ...under('cure-plan', process.cure.assumptions),
    ...weatherAssumptions(weather.assumptions),
    ...under('bond-pressure', press.assumptions),
    ...under(
      'calendar',
      calendar.assumptions.filter(({ at }) => !at.startsWith('/warmth')),
    ),
    ...under(
      'panel-check',
      panel.assumptions.filter(({ at }) => !isCutFromBelow(job) || !at.startsWith('/opened')),
    ),
    ...under('laminate-schedule', laminate.assumptions),
  ];
}

/** What the record has a field for is replaced there. */
const weatherAssumptions = (found: readonly Omit<Assumption, 'of'>[]): readonly Assumption[] =>
  found.map((assumption) =>
    assumption.at.startsWith('/core')
      ? { of: '/v1/estimating/cure-plan', ...assumption }
      : { of: 'record', ...assumption, at: `/conditions${assumption.at}` },
  );

/** What the range of the price rests on besides the record. */
const riskAssumptions = ({ totals, hands }: WorkedJob['cost']): readonly Assumption[] => [
  {
    of: 'record',
    at: '/evidence',
    meaning: 'how much more or less than recorded is found',
    value: `${totals.growth.quantity.toFixed(2)} m2 more on average`,
    because: growthCite.note ?? 'judgement',
    source: growthCite.source,
  },
  {
    of: 'record',
    at: '/pricing',
    meaning: 'how far the pace of the whole job and the level of its prices stray',
    value: `${paceSigma[hands] * 100} % and ${priceSigma * 100} %, one deviation`,
    because:
      'judgement: told jobs of yards lie within a fifth of a law fitted to them, those of owners within three tenths; shops differ among themselves by far more',
    source: 'RISK-JUDGEMENT',
  },
];

export function assumptionFrom({ origin, meaning, value, unit }: Figure, of: string): readonly Assumption[] {
  if (origin.kind !== 'assumed') return [];
  return [
    {
      of,
      at: origin.at,
      meaning,
      value: unit === '1' ? plainly(value) : `${plainly(value)} ${unit}`,
      because: origin.because,
      source: origin.cite.source,
    },
  ];
}

/** As many digits as a reader can use; the figure itself has all of them. */
const plainly = (value: number): string =>
  String(Math.abs(value) < 1000 ? Number(value.toPrecision(4)) : value);

/** What nobody looked at, and what the figures therefore cannot say. */
const noSample: Readonly<Record<EvidenceGrade, string>> = {
  'opened-and-measured': 'No core sample is recorded beside what was opened.',
  'mapped-with-plugs':
    'Core samples are stated but none is recorded with its place: mark them before the deck is cut.',
  'sounded-and-metered': 'No core sample is recorded: take one in each zone before the deck is cut.',
  'single-symptom': 'No core sample is recorded: take one in each zone before the deck is cut.',
};

function limitsOf({ job, extent, pricing, panel }: WorkedJob): readonly string[] {
  const hasPlugs = job.record.survey?.readings.some(({ kind }) => kind === 'plug') === true;
  const unpriced = pricing.needs.filter(({ id }) => pricing.missing.includes(id)).map(({ title }) => title);
  return [
    'The inside of the deck was not seen: the extent is judged from above, and may grow when the deck is opened.',
    ...(hasPlugs ? [] : [noSample[extent.grade]]),
    ...(extent.grade === 'single-symptom'
      ? ['A single symptom is recorded: sound and meter the whole panel before relying on the range.']
      : []),
    'Structure below, tanks, wiring and linings were not inspected.',
    ...(unpriced.length === 0
      ? []
      : [`Not in the price list, and so not in the total: ${unpriced.join(', ')}.`]),
    ...panel.limits,
    'Local rules and licensed or qualified people decide; this document plans and prices, it approves nothing.',
  ];
}
