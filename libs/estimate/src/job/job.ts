import {
  allOf,
  andThen,
  isKnown,
  mapValue,
  problem,
  refusal,
  success,
  unlessProblems,
  type Outcome,
} from '#lib/kernel';
import {
  findMaterial,
  materialsOf,
  type Catalogue,
  type Coating,
  type CoreSheet,
  type LabourRates,
  type PriceList,
  type ResinSystem,
} from '#lib/catalogue';
import {
  assumptionOf,
  commonPractice,
  settle,
  statedInRecord,
  type Answer,
  type Assumption,
  type Settlement,
} from '#lib/asking';
import type { Method } from '#lib/methods';
import { contradictionsIn } from './contradictions.js';
import type { DefectRecord } from './defect-record.js';
import { measuredRecord, overruledAssumptions } from './measured.js';
import { usualCondition } from './questions/defect.js';
import { methodQuestions } from './questions/method.js';
import { pricingQuestions } from './questions/pricing.js';
import { recordQuestions } from './questions/record.js';

/** A record with every question answered: by the caller, or by a default that says so. */
export interface Job {
  /** With measured thicknesses in place of stated ones. */
  readonly record: DefectRecord;
  /** As the caller wrote it. */
  readonly stated: DefectRecord;
  readonly catalogue: Catalogue;
  /** Every question of the record, settled. */
  readonly answers: Settlement<typeof recordQuestions>;
  /** Each default that the answers rest on. */
  readonly assumptions: readonly Assumption[];
  /** What goes between the skins: core, or solid laminate where the planned rung says so. */
  readonly fill: Method['fill'];
  /** What the catalogue supplies, by the record's choice or the catalogue's first fit. */
  readonly supplied: Readonly<Record<'core' | 'resin' | 'priceList' | 'labourRates', Answer<string>>> & {
    readonly topcoat: Answer<string> | undefined;
  };
  readonly core: CoreSheet;
  readonly resin: ResinSystem;
  /** Absent where the catalogue has none. */
  readonly topcoat: Coating | undefined;
  readonly priceList: PriceList;
  readonly labourRates: LabourRates;
}

/** Answers every question of the record, or lists everything that stands in the way. */
export function jobOf(stated: DefectRecord, catalogue: Catalogue): Outcome<Job> {
  const { record, overruled } = measuredRecord(stated);
  const found = allOf({
    record: unlessProblems(contradictionsIn(record), () => record),
    settled: settle(record, recordQuestions),
    chosenCore: statedCore(record, catalogue),
    chosenResin: statedResin(record, catalogue),
    topcoat: topcoatFor(record, catalogue),
    priceList: listFor(catalogue.priceLists, record.pricing?.priceList, '/pricing/priceList', 'price list'),
  });
  return andThen(
    found,
    ({ settled: { value: answers, assumptions }, chosenCore, chosenResin, topcoat, priceList }) =>
      mapValue(
        allOf({
          core: chosenCore === undefined ? coreAlike(answers.core, catalogue) : success(chosenCore),
          resin:
            chosenResin === undefined
              ? epoxyFor(answers.conditions.temperatureC.value, catalogue)
              : success(chosenResin),
          labourRates: labourRatesFor(record, catalogue, priceList),
        }),
        ({ core, resin, labourRates }) => {
          const supply = { core, resin, topcoat, priceList, labourRates };
          const supplied = suppliedFor(record, supply);
          return {
            ...{ record, stated, catalogue, answers, ...supply, supplied },
            fill: 'core' as const,
            assumptions: [
              ...assumptions,
              ...overruledAssumptions(overruled),
              ...mappedCondition(record),
              ...supplyAssumptions(supplied),
            ],
          };
        },
      ),
  );
}

type Supply = Pick<Job, 'core' | 'resin' | 'topcoat' | 'priceList' | 'labourRates'>;

/** What the catalogue answers where the record does not choose. */
function suppliedFor({ method, pricing }: DefectRecord, supply: Supply): Job['supplied'] {
  const chosen = (
    said: string | undefined,
    at: string,
    { code }: { readonly code: string },
    because: string,
  ): Answer<string> =>
    said === undefined
      ? { value: code, at, because, assumedFrom: commonPractice }
      : { value: said, at, because: statedInRecord };
  return {
    core: chosen(
      method?.core,
      '/method/core',
      supply.core,
      'the same kind of core as the old one, nearest in density',
    ),
    resin: chosen(
      method?.resin,
      '/method/resin',
      supply.resin,
      'first laminating epoxy of the catalogue with a hardener for the temperature of the deck',
    ),
    topcoat:
      supply.topcoat === undefined
        ? undefined
        : chosen(method?.topcoat, '/method/topcoat', supply.topcoat, 'first topcoat of the catalogue'),
    priceList: chosen(
      pricing?.priceList,
      '/pricing/priceList',
      supply.priceList,
      'first price list of the catalogue',
    ),
    labourRates: chosen(
      pricing?.labourRates,
      '/pricing/labourRates',
      supply.labourRates,
      'labour rates in the currency of the price list',
    ),
  };
}

/** Zones that a map draws have the usual state, as those that a record draws without one. */
const mappedCondition = ({ zones = [], survey }: DefectRecord): readonly Assumption[] =>
  zones.length > 0 || survey === undefined
    ? []
    : assumptionOf(
        {
          at: '/survey',
          value: usualCondition.value,
          because: usualCondition.because,
          assumedFrom: usualCondition.cite,
        },
        'condition of the core in the mapped zones',
      );

const supplyAssumptions = ({
  core,
  resin,
  topcoat,
  priceList,
  labourRates,
}: Job['supplied']): readonly Assumption[] => [
  ...assumptionOf(core, methodQuestions.core.meaning),
  ...assumptionOf(resin, methodQuestions.resin.meaning),
  ...(topcoat === undefined ? [] : assumptionOf(topcoat, methodQuestions.topcoat.meaning)),
  ...assumptionOf(priceList, pricingQuestions.priceList.meaning),
  ...assumptionOf(labourRates, pricingQuestions.labourRates.meaning),
];

function statedCore(record: DefectRecord, catalogue: Catalogue): Outcome<CoreSheet | undefined> {
  const asked = record.method?.core;
  if (asked === undefined) return success(undefined);
  return known(findMaterial(catalogue, 'core', asked), {
    at: '/method/core',
    value: asked,
    kind: 'core sheet',
    known: materialsOf(catalogue, 'core').map(({ code }) => code),
  });
}

/** The same kind of core as the old one, nearest in density, the densest where nobody knows the old one's. */
function coreAlike(
  { coreType: { value: oldType }, densityKgPerM3: density }: Job['answers']['core'],
  catalogue: Catalogue,
): Outcome<CoreSheet> {
  const cores = materialsOf(catalogue, 'core');
  const alike = cores
    .filter(({ coreType }) => coreType === oldType)
    .sort((a, b) =>
      isKnown(density)
        ? Math.abs(a.densityKgPerM3.value - density.value) - Math.abs(b.densityKgPerM3.value - density.value)
        : b.densityKgPerM3.value - a.densityKgPerM3.value,
    );
  return known(alike.at(0), {
    at: '/core/coreType',
    value: oldType,
    kind: 'core type with a sheet',
    known: [...new Set(cores.map(({ coreType }) => coreType))],
  });
}

/** Nobody who was free to choose would take a resin that does not cure on this deck. */
const curesAt =
  (deckC: number) =>
  ({ hardeners }: ResinSystem): boolean =>
    hardeners.some(
      ({ lowestTemperatureC, highestTemperatureC }) =>
        lowestTemperatureC.value <= deckC && deckC <= highestTemperatureC.value,
    );

/** The first of the catalogue that cures so; where none does, the first, and the pots say why not. */
function epoxyFor(deckC: number, catalogue: Catalogue): Outcome<ResinSystem> {
  const resins = materialsOf(catalogue, 'resin');
  const epoxies = resins.filter(({ chemistry }) => chemistry === 'epoxy');
  return known(epoxies.find(curesAt(deckC)) ?? epoxies.at(0), {
    at: '/method/resin',
    value: 'epoxy',
    kind: 'resin system',
    known: resins.map(({ code }) => code),
  });
}

function statedResin(record: DefectRecord, catalogue: Catalogue): Outcome<ResinSystem | undefined> {
  const asked = record.method?.resin;
  if (asked === undefined) return success(undefined);
  return known(findMaterial(catalogue, 'resin', asked), {
    at: '/method/resin',
    value: asked,
    kind: 'resin system',
    known: materialsOf(catalogue, 'resin').map(({ code }) => code),
  });
}

/** The one that the record names, else the first; none over gelcoat, which the catalogue must have. */
function topcoatFor({ method }: DefectRecord, catalogue: Catalogue): Outcome<Coating | undefined> {
  const coatings = materialsOf(catalogue, 'coating');
  if (method?.finishIn === 'gelcoat')
    return mapValue(
      known(
        coatings.find(({ coating }) => coating === 'gelcoat'),
        {
          at: '/method/finishIn',
          value: 'gelcoat',
          kind: 'coating of this kind',
          known: [...new Set(coatings.map(({ coating }) => coating))],
        },
      ),
      () => undefined,
    );
  const topcoats = coatings.filter(({ coating }) => coating === 'topcoat');
  const asked = method?.topcoat;
  if (asked === undefined) return success(topcoats.at(0));
  return known(
    topcoats.find(({ code }) => code === asked),
    { at: '/method/topcoat', value: asked, kind: 'topcoat', known: topcoats.map(({ code }) => code) },
  );
}

function listFor<T extends { readonly code: string }>(
  lists: readonly T[],
  asked: string | undefined,
  at: string,
  kind: string,
): Outcome<T> {
  const found = asked === undefined ? lists.at(0) : lists.find(({ code }) => code === asked);
  return known(found, { at, value: asked ?? 'the first', kind, known: lists.map(({ code }) => code) });
}

/** Charge-out rates hold overhead and profit already: a list that adds them would charge them twice. */
const onceLoaded = (rates: LabourRates): Outcome<LabourRates> => {
  const isLoaded = Number(rates.overheadPercent) > 0 || Number(rates.profitPercent) > 0;
  return rates.rateBasis === 'posted' && isLoaded
    ? refusal(
        problem('contradiction', '/pricing/labourRates', {
          other: 'overheadPercent and profitPercent of the labour rates',
          why: `the rates ${rates.code} are posted charge-out rates, which hold overhead and profit: take the loadings off, or say that they are wages`,
        }),
      )
    : success(rates);
};

function labourRatesFor(
  record: DefectRecord,
  catalogue: Catalogue,
  priceList: PriceList,
): Outcome<LabourRates> {
  const asked = record.pricing?.labourRates;
  const inCurrency = catalogue.labourRates.filter(({ currency }) => currency === priceList.currency);
  if (asked === undefined)
    return andThen(
      listFor(inCurrency, undefined, '/pricing/labourRates', `labour rates in ${priceList.currency}`),
      onceLoaded,
    );
  return andThen(listFor(catalogue.labourRates, asked, '/pricing/labourRates', 'labour rates'), (rates) =>
    rates.currency === priceList.currency
      ? onceLoaded(rates)
      : refusal(
          problem('contradiction', '/pricing/labourRates', {
            other: '/pricing/priceList',
            why: `the rates are in ${rates.currency} and the price list is in ${priceList.currency}; amounts are never converted`,
          }),
        ),
  );
}

interface Sought {
  readonly at: string;
  readonly value: string;
  readonly kind: string;
  readonly known: readonly string[];
}

const known = <T>(found: T | undefined, { at, value, kind, known: codes }: Sought): Outcome<T> =>
  found === undefined
    ? refusal(problem('unknown-code', at, { value, kind, known: codes.join(', ') }))
    : success(found);
