import type { Assumption } from '#lib/asking';
import { andThen, below, Defect, problem, refusal, success, type Outcome } from '#lib/kernel';
import { findMaterial, materialsOf, type Material, type PriceList, type Reinforcement } from '#lib/catalogue';
import { distanceToEdge, type Region } from '#lib/geometry';
import {
  closingPlies,
  layupOf,
  pliesToFill,
  relaidPlies,
  resinConstantsOf,
  openSearch,
  type ClosingPlies,
  type FabricOffer,
  type OpenSearch,
  type PlyToLay,
  type RelaidPlies,
  type RollStrip,
  type Schedule,
  type ScheduleRequest,
  type ScheduleSearch,
} from '#lib/laminate';
import type { Restoration } from '#lib/panel';
import type { Figure } from '#lib/provenance';
import type { Check, LaminateSection } from '../document/estimate-document.js';
import type { Job } from '../job/job.js';
import { closingSection, relaidSection, scheduleChecks } from '../sections/laminate-section.js';
import { atRecord } from '../job/record-pointers.js';
import { oldCoreOf } from './panel-values.js';
import {
  chooseSchedule,
  type FoundSchedules,
  type PanelAround,
  type ScheduleChoice,
} from './schedule-choice.js';
import type { ScopeWork } from './scope-stage.js';
import { plyMethodName, pliesOf, workedSkin, type OldSkins } from './skins.js';

/** One ply of the new laminate as the bill and the pots need it. */
export interface PlyWork {
  readonly label: string;
  readonly fabric: Reinforcement;
  readonly areaM2: Figure<'m2'>;
  /** Running length off the roll, cutting allowance apart. */
  readonly rollLengthM: number;
  readonly rollWidthMm: number;
  /** As they are cut: along the roll and across it. */
  readonly strips: readonly RollStrip[];
  readonly fibreMassFraction: number;
}

export interface LaminateWork {
  readonly plies: readonly PlyWork[];
  readonly plyCount: number;
  /** Times that plies are laid wet on wet before the stack has to cure. */
  readonly sessions: number;
  readonly largestPlyM2: Figure<'m2'>;
  readonly section: LaminateSection;
  readonly checks: readonly Check[];
  /** Absent when the old skin is bedded again. */
  readonly schedule?: Schedule;
  /** What the panel comes to with it; absent where no schedule was tried on the panel. */
  readonly restoration?: Restoration;
  readonly assumptions: readonly Assumption[];
}

/** The laminate that closes the openings: a new skin, or tapes over the cut of the old one. */
export const laminateFor = (job: Job, scope: ScopeWork, around: PanelAround): Outcome<LaminateWork> =>
  job.answers.method.skin.value === 'relay' ? relaid(job, scope, around) : rebedded(job, scope, around.skins);

function relaid(job: Job, { plan }: ScopeWork, around: PanelAround): Outcome<LaminateWork> {
  const { skins } = around;
  return andThen(scheduleFor(job, skins), ({ more, search, isRelaxed }) => {
    const choice = chooseSchedule(job, around, { search, more });
    const best = choice.chosen.schedule;
    const plies = best.plies.map(({ material, thicknessMm, fibreMassFraction, turnDeg }) => ({
      material: fabricOf(job, material),
      thicknessMm,
      fibreMassFraction,
      turnDeg,
    }));
    const laid = relaidPlies({
      opening: openingRegion(plan),
      oldThicknessMm: workedSkin(job, skins).workedMm.value,
      plies,
      taperRatio: job.answers.method.taperRatio.value,
      soundSkin: plan.retained.concat(openingRegion(plan)),
    });
    return laid.ok ? success(relaidWork(job, { laid: laid.value, search, choice, isRelaxed })) : laid;
  });
}

interface RelaidWork {
  readonly laid: RelaidPlies;
  readonly search: ScheduleSearch;
  readonly choice: ScheduleChoice;
  readonly isRelaxed: boolean;
}

function relaidWork(job: Job, { laid, search, choice, isRelaxed }: RelaidWork): LaminateWork {
  const best = choice.chosen.schedule;
  const plies = laid.plies.map((ply) => ({
    label: `P${ply.order}`,
    fabric: fabricOf(job, ply.material),
    areaM2: ply.areaM2,
    rollLengthM: ply.rollLengthM,
    rollWidthMm: ply.rollWidthMm,
    strips: ply.pieces.map(({ lengthMm, usedWidthMm }) => ({ lengthMm, widthMm: usedWidthMm })),
    fibreMassFraction: best.plies[ply.order - 1].fibreMassFraction,
  }));
  return {
    plies,
    plyCount: plies.length,
    sessions: laid.stages.length,
    largestPlyM2: largestOf(plies),
    schedule: best,
    ...(choice.chosen.panel === undefined ? {} : { restoration: choice.chosen.panel }),
    section: relaidSection(job, laid, { search, choice }),
    checks: scheduleChecks(best, laid, isRelaxed),
    assumptions: [...search.assumptions, ...laid.assumptions, ...rankedFabrics(job).assumptions],
  };
}

/** The plies that are cut, those of strips beside the opening among them. */
export const withTapes = <T extends Pick<LaminateWork, 'plies'>>({
  laminate,
  beside,
  tapes = [],
}: {
  readonly laminate: T;
  readonly beside: { readonly plies: readonly PlyWork[] };
  /** Over the joints of the core. */
  readonly tapes?: readonly PlyWork[];
}): T => ({ ...laminate, plies: [...laminate.plies, ...tapes, ...beside.plies] });

const largestOf = (plies: readonly PlyWork[]): Figure<'m2'> =>
  plies.map(({ areaM2 }) => areaM2).reduce((largest, area) => (area.value > largest.value ? area : largest));

interface Found extends FoundSchedules {
  readonly isRelaxed: boolean;
}

/**
 * How level the new skin must be, strictest first. A skin at least as thick as the old keeps the distance between the skins,
 * and with it the stiffness of the panel; the last is what fairing can just hide.
 */
const flushSteps = [
  { flush: { proudUpToMm: 0.5, lowUpToMm: 0 }, isRelaxed: false },
  { flush: { proudUpToMm: 0.5, lowUpToMm: 1 }, isRelaxed: false },
  { flush: { proudUpToMm: 2, lowUpToMm: 2 }, isRelaxed: true },
] as const;

function scheduleFor(job: Job, skins: OldSkins): Outcome<Found> {
  const inRecord = <T>(outcome: Outcome<T>): Outcome<T> =>
    outcome.ok ? outcome : refusal(...atRecord(outcome.problems, scheduleFields(job, skins), '/method'));
  return andThen(scheduleRequest(job, skins), (request) =>
    andThen(inRecord(openSearch(request)), ({ find }) => strictestFound((asked) => inRecord(find(asked)))),
  );
}

/** The skins of the strictest step that has any; what is said of the last step is said of all. */
function strictestFound(find: OpenSearch['find']): Outcome<Found> {
  let refused: Outcome<Found> = refusal();
  for (const { flush, isRelaxed } of flushSteps) {
    const outcome = find({ flush });
    if (!outcome.ok) return outcome;
    if (outcome.value.best.length > 0)
      return success({ search: outcome.value, more: (keep) => find({ flush, keep }), isRelaxed });
    refused = refusal(cannotBeDone(outcome.value));
  }
  return refused;
}

const cannotBeDone = (search: ScheduleSearch) =>
  problem('not-supported', '/method/skin', {
    why: `no laminate of this catalogue restores the skin: ${search.missing?.words.join('; ') ?? 'no combination meets every demand'}`,
  });

function scheduleFields(job: Job, skins: OldSkins): Readonly<Record<string, string>> {
  const { at } = workedSkin(job, skins);
  return {
    '/oldSkin': at,
    '/panel/otherSkin': at === '/outerSkin' ? '/innerSkin' : '/outerSkin',
    '/panel/core': '/core',
    '/panel/newCore': '/core',
    '/limits/taperRatio': '/method/taperRatio',
  };
}

function scheduleRequest(job: Job, skins: OldSkins): Outcome<ScheduleRequest> {
  const { other, workedMm, otherMm, record, at } = workedSkin(job, skins);
  return andThen(pliesOf(record, job.catalogue, at), (plies) =>
    success({
      oldSkin: { thicknessMm: workedMm.value, ...(plies === undefined ? {} : { plies }) },
      fabrics: rankedFabrics(job).offers,
      resin: resinConstantsOf(job.resin),
      method: plyMethodName,
      panel: {
        core: {
          thicknessMm: job.answers.core.thicknessMm.value,
          youngMPa: oldCoreOf(job).inPlaneModulusMPa.value,
        },
        newCore: {
          thicknessMm: job.answers.core.thicknessMm.value,
          youngMPa: job.core.inPlaneModulusMPa.value,
        },
        otherSkin: {
          thicknessMm: otherMm.value,
          alongNPerMm: other.measure.alongNPerMm,
          acrossNPerMm: other.measure.acrossNPerMm,
        },
      },
      limits: { taperRatio: job.answers.method.taperRatio.value },
    }),
  );
}

interface RankedFabrics {
  readonly offers: readonly FabricOffer[];
  readonly assumptions: readonly Assumption[];
}

/** The fabrics that suit the resin and are sold, each ranked by the price of a square metre laid. */
function rankedFabrics(job: Job): RankedFabrics {
  const resinPerKg = pricePerUnit(job.priceList, job.resin.code);
  const suited = materialsOf(job.catalogue, 'reinforcement').filter(
    ({ fabric, suitsResins }) => fabric !== 'tape' && suitsResins.includes(job.resin.chemistry),
  );
  const priced = suited.map((material) => ({ material, price: pricePerUnit(job.priceList, material.code) }));
  return {
    offers: priced.flatMap(({ material, price }) =>
      price === undefined ? [] : [{ material, pricePerM2: price + resinCost(material, resinPerKg ?? 0) }],
    ),
    assumptions: [...(resinPerKg === undefined ? [rankedByClothAlone(job)] : []), ...notSold(job, priced)],
  };
}

function resinCost({ fibreMassFraction, arealMassGPerM2 }: Reinforcement, resinPerKg: number): number {
  const psi = fibreMassFraction.value;
  return (arealMassGPerM2.value / 1000) * ((1 - psi) / psi) * resinPerKg;
}

const commonCite = { source: 'COMMON-PRACTICE' };

const rankedByClothAlone = ({ resin, priceList }: Job): Assumption => ({
  at: '/pricing/priceList',
  meaning: 'price that ranks the fabrics',
  value: 'cloth without resin',
  because: `the price list ${priceList.name} sells no ${resin.name}, so that a heavy fabric ranks cheaper than it is laid`,
  source: commonCite.source,
});

const notSold = (
  { priceList }: Job,
  priced: readonly { readonly material: Reinforcement; readonly price: number | undefined }[],
): readonly Assumption[] => {
  const missing = priced.filter(({ price }) => price === undefined).map(({ material }) => material.name);
  return missing.length === 0
    ? []
    : [
        {
          at: '/pricing/priceList',
          meaning: 'fabrics left out of the new skin',
          value: missing.join(', '),
          because: `the price list ${priceList.name} does not sell them`,
          source: commonCite.source,
        },
      ];
};

const unitPrices = new WeakMap<PriceList, ReadonlyMap<string, number>>();

/** Cheapest price of one unit over the packs that hold it; ranks fabrics, bills nothing. */
function pricePerUnit(list: PriceList, material: Material['code']): number | undefined {
  const known = unitPrices.get(list) ?? unitPricesOf(list);
  unitPrices.set(list, known);
  return known.get(material);
}

function unitPricesOf({ packs }: PriceList): ReadonlyMap<string, number> {
  const least = new Map<string, number>();
  for (const {
    content: { material, part, quantity },
    prices: [first],
  } of packs) {
    if (part !== undefined) continue;
    least.set(material, Math.min(Number(first.price) / quantity, least.get(material) ?? Infinity));
  }
  return least;
}

/** @throws {Defect} A ply of a fabric that the catalogue does not have would leave the skin thinner without a word. */
function fabricOf(job: Job, code: string): Reinforcement {
  const found = findMaterial(job.catalogue, 'reinforcement', code);
  if (found === undefined) throw new Defect(`The schedule has a ply of ${code}, which the catalogue lacks`);
  return found;
}

const openingRegion = (plan: ScopeWork['plan']): Region => plan.openings.map(({ area }) => area);

function rebedded(job: Job, { plan }: ScopeWork, skins: OldSkins): Outcome<LaminateWork> {
  const skinMm = workedSkin(job, skins).workedMm.value;
  return andThen(closingStack(job, skinMm), (plies) => {
    const closed = closingPlies({
      skinThicknessMm: skinMm,
      opening: openingRegion(plan),
      taperRatio: job.answers.method.taperRatio.value,
      plies,
      roomMm: roomBeside(job, plan),
    });
    return closed.ok
      ? success(closingWork(job, closed.value, plies))
      : refusal(...below('/method', closed.problems));
  });
}

function closingWork(job: Job, closed: ClosingPlies, laid: readonly PlyToLay[]): LaminateWork {
  const plies = closed.plies.map((ply, index) => ({
    label: `T${ply.order}`,
    fabric: laid[index].material,
    areaM2: ply.areaM2,
    rollLengthM: ply.rollLengthM,
    rollWidthMm: ply.rollWidthMm,
    strips: ply.rollStrips,
    fibreMassFraction: laid[index].fibreMassFraction,
  }));
  const { section, checks } = closingSection(job, closed);
  return {
    plies,
    plyCount: plies.length,
    sessions: closed.stages.length,
    largestPlyM2: largestOf(plies),
    section,
    checks,
    assumptions: closed.assumptions,
  };
}

/** Fabrics a seam is closed with: they lie flat in a groove and carry across it. */
const seamFabrics: readonly Reinforcement['fabric'][] = ['biaxial', 'biaxial-mat', 'tape', 'woven-roving'];

/** The fabric whose whole plies come nearest to the skin's thickness; of equals, the one with fewer plies. */
function closingStack(job: Job, skinMm: number): Outcome<readonly PlyToLay[]> {
  const candidates = materialsOf(job.catalogue, 'reinforcement')
    .filter(
      (material) =>
        seamFabrics.includes(material.fabric) &&
        material.suitsResins.includes(job.resin.chemistry) &&
        pricePerUnit(job.priceList, material.code) !== undefined,
    )
    .flatMap((material) => {
      const layup = layupOf({ material, resin: resinConstantsOf(job.resin), method: plyMethodName });
      if (!layup.ok) return [];
      const count = pliesToFill(skinMm, layup.value.thicknessMm);
      return [
        {
          material,
          count,
          thicknessMm: layup.value.thicknessMm,
          fibreMassFraction: layup.value.fibreMassFraction,
          offMm: Math.abs(count * layup.value.thicknessMm - skinMm),
        },
      ];
    })
    .sort((a, b) => a.offMm - b.offMm || a.count - b.count);
  const best = candidates.at(0);
  if (best === undefined)
    return refusal(
      problem('not-supported', '/method/resin', {
        why: 'no priced fabric of this catalogue closes a seam with this resin',
      }),
    );
  const { material, thicknessMm, fibreMassFraction } = best;
  return success(Array.from({ length: best.count }, () => ({ material, thicknessMm, fibreMassFraction })));
}

const roomBeside = ({ record: { panel } }: Job, plan: ScopeWork['plan']): number => {
  const whole: Region = [{ outer: panel.outline, holes: panel.holes ?? [] }];
  return Math.min(
    ...plan.openings.flatMap(({ area }) => area.outer.map((corner) => distanceToEdge(corner, whole))),
  );
};
