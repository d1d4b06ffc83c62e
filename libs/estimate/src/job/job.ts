import { allOf, andThen, success, type Outcome } from '#lib/kernel';
import {
  findMaterial,
  materialsOf,
  type Catalogue,
  type CoreSheet,
  type LabourRates,
  type PriceList,
  type ResinSystem,
} from '#lib/catalogue';
import type { EvidenceGrade } from '#lib/extent';
import type { Figure } from '#lib/provenance';
import { problem, refusal } from '#lib/kernel';
import { choiceOr, figureOr, type Choice } from './choice.js';
import { commonPractice, fallbacks, skinMethodFor } from './defaults.js';
import type { DefectRecord, OldCore } from './defect-record.js';
import { conditionFallbacks, startOf } from './forecast-conditions.js';
import { faultsOfRecord } from './record-faults.js';

/** A record with every question answered: by the caller, or by a default that says so. */
export interface Job {
  readonly record: DefectRecord;
  readonly catalogue: Catalogue;
  readonly skin: Choice<'re-bed' | 'relay'>;
  readonly access: Choice<'from-above' | 'from-below'>;
  readonly press: Choice<'weights' | 'battens' | 'vacuum'>;
  readonly finish: Choice<'patch' | 'panel' | 'whole-deck'>;
  readonly evidence: Choice<EvidenceGrade>;
  readonly edges: Choice<'simply-supported' | 'clamped'>;
  readonly surface: Choice<NonNullable<DefectRecord['panel']['surface']>>;
  readonly accessBelow: Choice<NonNullable<DefectRecord['panel']['accessBelow']>>;
  readonly shelter: Choice<'shed' | 'tent' | 'open'>;
  readonly workers: Choice<'professional' | 'owner'>;
  readonly oldCoreType: Choice<NonNullable<OldCore['coreType']>>;
  readonly core: CoreSheet;
  readonly resin: ResinSystem;
  readonly priceList: PriceList;
  readonly labourRates: LabourRates;
  readonly numbers: JobNumbers;
  /** Absent when the record names no day and has no forecast: the calendar then counts days without dates. */
  readonly startDate?: Choice<string>;
  readonly choices: readonly Choice<string>[];
}

export interface JobNumbers {
  readonly outerSkinMm: Figure<'mm'>;
  readonly innerSkinMm: Figure<'mm'>;
  readonly coreMm: Figure<'mm'>;
  readonly cavityMm: Figure<'mm'>;
  readonly taperRatio: Figure<'1'>;
  readonly cutMarginMm: Figure<'mm'>;
  readonly flangeMm: Figure<'mm'>;
  readonly temperatureC: Figure<'degC'>;
  readonly relativeHumidityPercent: Figure<'%'>;
  readonly altitudeM: Figure<'m'>;
  readonly people: Figure<'1'>;
  readonly hoursPerDay: Figure<'h'>;
}

/** Answers every question of the record, or lists everything that stands in the way. */
export function jobOf(record: DefectRecord, catalogue: Catalogue): Outcome<Job> {
  const faults = faultsOfRecord(record);
  const oldCoreType = choiceOr(record.core.coreType, '/core/coreType', fallbacks.oldCoreType);
  const found = allOf({
    record: faults.length === 0 ? success(record) : refusal(...faults),
    core: coreFor(record, catalogue, oldCoreType),
    resin: resinFor(record, catalogue),
    priceList: listFor(catalogue.priceLists, record.pricing?.priceList, '/pricing/priceList', 'price list'),
  });
  return andThen(found, ({ core, resin, priceList }) =>
    andThen(labourRatesFor(record, catalogue, priceList), (labourRates) =>
      success(assembled({ record, catalogue, core, resin, priceList, labourRates, oldCoreType })),
    ),
  );
}

type Found = Pick<
  Job,
  'record' | 'catalogue' | 'core' | 'resin' | 'priceList' | 'labourRates' | 'oldCoreType'
>;

function assembled(found: Found): Job {
  const { record } = found;
  const { method, panel, conditions, crew } = record;
  const surface = choiceOr(panel.surface, '/panel/surface', fallbacks.surface);
  const choices = {
    skin: choiceOr(method?.skin, '/method/skin', skinMethodFor(record, surface.value)),
    access: choiceOr(method?.access, '/method/access', fallbacks.access),
    press: choiceOr(method?.press, '/method/press', fallbacks.press),
    finish: choiceOr(method?.finish, '/method/finish', fallbacks.finish),
    evidence: choiceOr(record.evidence, '/evidence', fallbacks.evidence),
    edges: choiceOr(panel.edges, '/panel/edges', fallbacks.edges),
    surface,
    accessBelow: choiceOr(panel.accessBelow, '/panel/accessBelow', fallbacks.accessBelow),
    shelter: choiceOr(conditions?.shelter, '/conditions/shelter', fallbacks.shelter),
    workers: choiceOr(crew?.skill, '/crew/skill', fallbacks.workers),
  };
  const materials = [
    choiceOr(method?.core, '/method/core', {
      value: found.core.code,
      because: 'the same kind of core as the old one, nearest in density',
      cite: commonPractice,
    }),
    choiceOr(method?.resin, '/method/resin', {
      value: found.resin.code,
      because: 'first laminating epoxy of the catalogue',
      cite: commonPractice,
    }),
    choiceOr(record.pricing?.priceList, '/pricing/priceList', {
      value: found.priceList.code,
      because: 'first price list of the catalogue',
      cite: commonPractice,
    }),
    choiceOr(record.pricing?.labourRates, '/pricing/labourRates', {
      value: found.labourRates.code,
      because: 'labour rates in the currency of the price list',
      cite: commonPractice,
    }),
  ];
  const startDate = startOf(record);
  const all = [
    ...Object.values(choices),
    found.oldCoreType,
    ...materials,
    ...(startDate === undefined ? [] : [startDate]),
  ];
  return {
    ...found,
    ...choices,
    numbers: numbersOf(record),
    choices: all,
    ...(startDate === undefined ? {} : { startDate }),
  };
}

const asked = <U extends string>(unit: U, meaning: string, at: string) => ({ unit, meaning, at });

const numbersOf = (record: DefectRecord): JobNumbers => ({
  ...deckNumbers(record),
  ...methodNumbers(record),
  ...placeNumbers(record),
});

const deckNumbers = (
  record: DefectRecord,
): Pick<JobNumbers, 'outerSkinMm' | 'innerSkinMm' | 'coreMm' | 'cavityMm'> => ({
  outerSkinMm: figureOr(
    record.outerSkin.thicknessMm,
    asked('mm', 'outer skin thickness', '/outerSkin/thicknessMm'),
    fallbacks.never,
  ),
  innerSkinMm: figureOr(
    record.innerSkin.thicknessMm,
    asked('mm', 'inner skin thickness', '/innerSkin/thicknessMm'),
    fallbacks.never,
  ),
  coreMm: figureOr(
    record.core.thicknessMm,
    asked('mm', 'old core thickness', '/core/thicknessMm'),
    fallbacks.never,
  ),
  cavityMm: figureOr(
    record.core.cavityMm,
    asked('mm', 'cavity between the skins', '/core/cavityMm'),
    fallbacks.cavityMm(record.core.thicknessMm),
  ),
});

const methodNumbers = (record: DefectRecord): Pick<JobNumbers, 'taperRatio' | 'cutMarginMm' | 'flangeMm'> => {
  const { method } = record;
  return {
    taperRatio: figureOr(
      method?.taperRatio,
      asked('1', 'taper ratio, length to one of thickness', '/method/taperRatio'),
      fallbacks.taperRatio(
        (method?.access === 'from-below' ? record.innerSkin : record.outerSkin).thicknessMm,
      ),
    ),
    cutMarginMm: figureOr(
      method?.cutMarginMm,
      asked('mm', 'margin of the cut beyond the bad core', '/method/cutMarginMm'),
      fallbacks.cutMarginMm,
    ),
    flangeMm: figureOr(
      method?.flangeMm,
      asked('mm', 'sound deck kept at every edge', '/method/flangeMm'),
      fallbacks.flangeMm,
    ),
  };
};

function placeNumbers(
  record: DefectRecord,
): Omit<JobNumbers, keyof ReturnType<typeof deckNumbers> | keyof ReturnType<typeof methodNumbers>> {
  const { conditions, crew } = record;
  const usual = conditionFallbacks(record);
  return {
    temperatureC: figureOr(
      conditions?.temperatureC,
      asked('degC', 'working temperature of the deck', '/conditions/temperatureC'),
      usual.temperatureC,
    ),
    relativeHumidityPercent: figureOr(
      conditions?.relativeHumidityPercent,
      asked('%', 'relative humidity', '/conditions/relativeHumidityPercent'),
      usual.relativeHumidityPercent,
    ),
    altitudeM: figureOr(
      conditions?.altitudeM,
      asked('m', 'altitude', '/conditions/altitudeM'),
      fallbacks.altitudeM,
    ),
    people: figureOr(crew?.people, asked('1', 'people at work', '/crew/people'), fallbacks.people),
    hoursPerDay: figureOr(
      crew?.hoursPerDay,
      asked('h', 'working hours in a day', '/crew/hoursPerDay'),
      fallbacks.hoursPerDay,
    ),
  };
}

function coreFor(
  record: DefectRecord,
  catalogue: Catalogue,
  oldCoreType: Choice<NonNullable<OldCore['coreType']>>,
): Outcome<CoreSheet> {
  const asked = record.method?.core;
  const cores = materialsOf(catalogue, 'core');
  if (asked !== undefined)
    return known(findMaterial(catalogue, 'core', asked), {
      at: '/method/core',
      value: asked,
      kind: 'core sheet',
      known: cores.map(({ code }) => code),
    });
  const density = record.core.densityKgPerM3;
  const alike = cores
    .filter(({ coreType }) => coreType === oldCoreType.value)
    .sort((a, b) =>
      density === undefined
        ? b.densityKgPerM3.value - a.densityKgPerM3.value
        : Math.abs(a.densityKgPerM3.value - density) - Math.abs(b.densityKgPerM3.value - density),
    );
  return known(alike.at(0), {
    at: '/core/coreType',
    value: oldCoreType.value,
    kind: 'core type with a sheet',
    known: [...new Set(cores.map(({ coreType }) => coreType))],
  });
}

function resinFor(record: DefectRecord, catalogue: Catalogue): Outcome<ResinSystem> {
  const asked = record.method?.resin;
  const resins = materialsOf(catalogue, 'resin');
  const found =
    asked === undefined
      ? resins.find(({ chemistry }) => chemistry === 'epoxy')
      : findMaterial(catalogue, 'resin', asked);
  return known(found, {
    at: '/method/resin',
    value: asked ?? 'epoxy',
    kind: 'resin system',
    known: resins.map(({ code }) => code),
  });
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

function labourRatesFor(
  record: DefectRecord,
  catalogue: Catalogue,
  priceList: PriceList,
): Outcome<LabourRates> {
  const asked = record.pricing?.labourRates;
  const inCurrency = catalogue.labourRates.filter(({ currency }) => currency === priceList.currency);
  if (asked === undefined)
    return listFor(inCurrency, undefined, '/pricing/labourRates', `labour rates in ${priceList.currency}`);
  return andThen(listFor(catalogue.labourRates, asked, '/pricing/labourRates', 'labour rates'), (rates) =>
    rates.currency === priceList.currency
      ? success(rates)
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
