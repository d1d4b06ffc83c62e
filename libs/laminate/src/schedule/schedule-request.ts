import type { Reinforcement } from '#lib/catalogue';
import { problem, type Problem } from '#lib/kernel';
import { assumptionOf, type Standard } from '../assumption.js';
import type { ResinConstants } from '../ply/constituents.js';
import { commonPractice, countFaults, faultsIn, type Assumption } from '#lib/asking';
import {
  flushQuestions,
  MOST_PLIES,
  namedFabricQuestions,
  oldSkinQuestions,
  panelBelowQuestions,
  relaidSkinQuestions,
  scheduleLimitsQuestions,
  type PanelBelow,
  type ScheduleLimits,
} from './asked.js';
import type { OldSkin } from './old-skin.js';
import type { PlyMethodName } from '../ply/ply-method.js';
import { standards } from '../standards.js';
import { usualTaper } from '../taper/usual-taper.js';
import { basisFaults, findPlyMethod, plyMethods } from '../ply/ply-properties.js';

export interface FabricOffer {
  readonly material: Reinforcement;
  /** Fabric with its resin, per m2 of ply, in any one currency: it ranks, it is never billed. */
  readonly pricePerM2?: number;
  /** Roll directions it may be laid in; 0, and for unidirectional 0 and 90, when absent. */
  readonly turnsDeg?: readonly number[];
  readonly fibreMassFraction?: number;
}

export interface ScheduleRequest {
  readonly oldSkin: OldSkin;
  readonly fabrics: readonly FabricOffer[];
  readonly resin: ResinConstants;
  readonly method?: PlyMethodName;
  readonly panel?: PanelBelow;
  /** How far the new surface may stand above or lie below the old. */
  readonly flush?: { readonly proudUpToMm: number; readonly lowUpToMm: number };
  readonly limits?: ScheduleLimits;
  /** With a guessed old skin: restore its likely build, or its strongest. */
  readonly restore?: 'likely' | 'strongest';
  readonly restoreShear?: boolean;
  /** How many of the best are wanted; three when absent. */
  readonly keep?: number;
}

export interface SettledRequest {
  readonly method: PlyMethodName;
  readonly proudUpToMm: number;
  readonly lowUpToMm: number;
  readonly mostPlies: number;
  readonly mostKinds: number;
  readonly taperRatio: number;
  readonly smallestStepMm: number;
  readonly worstPrintThrough: number;
  readonly assumptions: readonly Assumption[];
}

const { method: usualMethod, flush: usualFlush, mostKinds, smallestStepMm, worstPrintThrough } = standards;

const USUAL_PLIES = 8;
/** What a heavy ply adds; a skin takes a few lighter ones against the core and at the top. */
const HEAVY_PLY_MM = 1;

/** Eight plies, and for skins of more than eight heavy ones as many as those and two. */
function usualPlies(thicknessMm: number): Standard & { readonly value: number } {
  const value = Math.min(MOST_PLIES, Math.max(USUAL_PLIES, Math.ceil(thicknessMm / HEAVY_PLY_MM) + 2));
  return {
    value,
    meaning: 'most plies',
    shown: String(value),
    cite: commonPractice,
    because:
      value === USUAL_PLIES
        ? 'more than the skins of small decks need'
        : `plies of about ${HEAVY_PLY_MM} mm on a skin of ${thicknessMm} mm`,
  };
}

export function settle({ oldSkin, method, flush, limits = {} }: ScheduleRequest): SettledRequest {
  const mostPlies = usualPlies(oldSkin.thicknessMm);
  const taperRatio = usualTaper(oldSkin.thicknessMm);
  const settled = {
    method: method ?? usualMethod.value,
    ...(flush ?? usualFlush.value),
    mostPlies: limits.mostPlies ?? mostPlies.value,
    mostKinds: limits.mostKinds ?? mostKinds.value,
    taperRatio: limits.taperRatio ?? taperRatio.value,
    smallestStepMm: limits.smallestStepMm ?? smallestStepMm.value,
    worstPrintThrough: limits.worstPrintThrough ?? worstPrintThrough.value,
  };
  const taken = [
    ['/method', method, usualMethod],
    ['/flush', flush, usualFlush],
    ['/limits/mostKinds', limits.mostKinds, mostKinds],
    ['/limits/smallestStepMm', limits.smallestStepMm, smallestStepMm],
    ['/limits/worstPrintThrough', limits.worstPrintThrough, worstPrintThrough],
    ['/limits/mostPlies', limits.mostPlies, mostPlies],
    ['/limits/taperRatio', limits.taperRatio, taperRatio],
  ] as const;
  return {
    ...settled,
    assumptions: taken.flatMap(([at, given, standard]) =>
      given === undefined ? [assumptionOf(at, standard)] : [],
    ),
  };
}

export function scheduleFaults(request: ScheduleRequest): readonly Problem[] {
  const { oldSkin, fabrics, resin, method, flush } = request;
  const methodFault =
    method === undefined || findPlyMethod(method) !== undefined
      ? []
      : [
          problem('not-one-of', '/method', {
            value: String(method),
            choices: plyMethods.map(({ name }) => name).join(', '),
          }),
        ];
  return [
    ...faultsIn(oldSkin, { thicknessMm: oldSkinQuestions.thicknessMm }, '/oldSkin'),
    ...(oldSkin.plies === undefined
      ? []
      : countFaults('/oldSkin/plies', oldSkin.plies.length, oldSkinQuestions.plies)),
    ...(oldSkin.resin === undefined
      ? []
      : basisFaults({ layup: 'mat', fibreMassFraction: 0.5, resin: oldSkin.resin }).map((found) => ({
          ...found,
          at: `/oldSkin${found.at}`,
        }))),
    ...basisFaults({ layup: 'mat', fibreMassFraction: 0.5, resin }),
    ...methodFault,
    ...countFaults('/fabrics', fabrics.length, relaidSkinQuestions.fabrics),
    ...fabrics.flatMap(offerFaults),
    ...priceFaults(fabrics),
    ...flushFaults(flush),
    ...faultsIn(request.limits ?? {}, scheduleLimitsQuestions, '/limits'),
    ...(request.panel === undefined ? [] : faultsIn(request.panel, panelBelowQuestions, '/panel')),
    ...thickerThanDeck(request),
  ];
}

export const flushFaults = (flush: ScheduleRequest['flush']): readonly Problem[] =>
  flush === undefined ? [] : faultsIn(flush, flushQuestions, '/flush');

const { pricePerM2, turnsDeg, fibreMassFraction } = namedFabricQuestions;

const offerFaults = (offer: FabricOffer, i: number): readonly Problem[] =>
  faultsIn(offer, { pricePerM2, turnsDeg, fibreMassFraction }, `/fabrics/${i}`);

/** Some prices but not all would rank the unpriced as free. */
function priceFaults(fabrics: readonly FabricOffer[]): readonly Problem[] {
  const isPriced = fabrics.map(({ pricePerM2 }) => pricePerM2 !== undefined);
  if (!isPriced.includes(true)) return [];
  return isPriced.flatMap((priced, i) =>
    priced
      ? []
      : [
          problem('missing', `/fabrics/${i}/pricePerM2`, {
            expected: 'a price for every fabric, or for none',
          }),
        ],
  );
}

/** A skin thicker than core and other skin together is not the skin of a sandwich: one of the two was mistaken. */
function thickerThanDeck({ oldSkin: { thicknessMm }, panel }: ScheduleRequest): readonly Problem[] {
  if (panel === undefined) return [];
  const rest = panel.core.thicknessMm + panel.otherSkin.thicknessMm;
  return thicknessMm > rest && rest > 0
    ? [
        problem('contradiction', '/oldSkin/thicknessMm', {
          other: 'the rest of the panel',
          why: `the skin is ${thicknessMm} mm and core with other skin ${rest} mm; a deck's skin is thinner than that`,
        }),
      ]
    : [];
}
