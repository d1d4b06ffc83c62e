import { saidOr } from '#lib/asking';
import {
  andThen,
  below,
  lazily,
  pointer,
  problem,
  refusal,
  success,
  unlessProblems,
  type Outcome,
  type Problem,
} from '#lib/kernel';
import type { PlyMethod } from '../ply/ply-method.js';
import { findPlyMethod } from '../ply/ply-properties.js';
import { layupOf, type Layup } from '../theory/layup.js';
import { measureOldSkin, type SkinBuild } from './old-skin.js';
import {
  emptyStrip,
  neutralHeight,
  stripBending,
  withLayer,
  type StripSums,
} from '../theory/sandwich-strip.js';
import {
  flushFaults,
  scheduleFaults,
  settle,
  type FabricOffer,
  type ScheduleRequest,
} from './schedule-request.js';
import { relaidSkinQuestions, type CoreLayer, type PanelBelow } from './asked.js';
import type { LaidOffer, LeftOut, PreparedSearch } from './prepared-search.js';
import { scheduleReport, type ScheduleSearch } from './schedule-report.js';
import { layupFigures, type LayupFigures } from '../theory/layup-figures.js';
import { membraneOf } from '../theory/skin.js';
import { momentCapacity } from './stack-order.js';
import type { StackOption, StackPanel, StackProblem } from './stack-problem.js';
import { searchStacks } from './stack-search.js';

/**
 * The best three skins, from the fabrics offered, that give back what the old skin was.
 *
 * Each restores extensional stiffness and first-ply strength along and across and, where the panel is given, its bending
 * stiffness and moment capacity; lies flush; has a fabric that suits the core first and one that prints little last.
 * The answer is proven: see `searchStacks`. A skin that cannot be made is an answer too, with what stands in the way.
 */
export const searchSchedules = (request: ScheduleRequest): Outcome<ScheduleSearch> =>
  andThen(openSearch(request), ({ find }) => find({}));

/** A search with the fabrics wet out and the old skin measured, ready to look more than once. */
export interface OpenSearch {
  /** As the request says, but for what is asked here. */
  readonly find: (asked: Pick<ScheduleRequest, 'flush' | 'keep'>) => Outcome<ScheduleSearch>;
}

export function openSearch(request: ScheduleRequest): Outcome<OpenSearch> {
  const faults = scheduleFaults(request);
  if (faults.length > 0) return refusal(...faults);
  const { method: name } = settle(request);
  const method = findPlyMethod(name);
  if (method === undefined || !givesStrength(method, request)) return refusal(noStrengthProblem(name));
  const old = measureOldSkin(request.oldSkin, method);
  if (!old.ok) return refusal(...below('/oldSkin', old.problems));
  const { offers, leftOut } = layOffers(request, method);
  if (offers.length === 0) return refusal(...leftOut.flatMap(({ problems }) => problems));
  const options = offers.map((laid) => optionOf(laid, request));
  const laid = { old: old.value, offers, leftOut, options };
  return success({
    find: (asked) =>
      unlessProblems(flushFaults(asked.flush), () => {
        const wanted = { ...request, ...asked };
        const prepared = prepare({ request: wanted, settled: settle(wanted), ...laid });
        return scheduleReport(prepared, searchStacks(prepared.problem));
      }),
  });
}

const givesStrength = (method: PlyMethod, { resin }: ScheduleRequest): boolean =>
  method.propertiesOf({ layup: 'woven', fibreMassFraction: 0.5, resin }).strength !== undefined;

const noStrengthProblem = (method: string): Problem =>
  problem('not-supported', '/method', {
    why: `the method ${method} gives no ply strengths, so strength cannot be restored by it; use class-bv or small-craft-yardstick`,
  });

function layOffers(
  { fabrics, resin }: ScheduleRequest,
  method: PlyMethod,
): { readonly offers: readonly LaidOffer[]; readonly leftOut: readonly LeftOut[] } {
  const laid = fabrics.map((offer, offerIndex) => ({
    offer,
    offerIndex,
    outcomes: outcomesOf(offer, offerIndex, { resin, method }),
  }));
  return {
    offers: laid.flatMap(({ offer, offerIndex, outcomes }) =>
      outcomes.flatMap(({ turnDeg, outcome }) =>
        outcome.ok ? [laidOffer({ offer, offerIndex, turnDeg, layup: outcome.value })] : [],
      ),
    ),
    leftOut: laid.flatMap(({ offer, outcomes }) =>
      outcomes
        .slice(0, 1)
        .flatMap(({ outcome }) =>
          outcome.ok ? [] : [{ material: offer.material.code, problems: outcome.problems }],
        ),
    ),
  };
}

const laidOffer = (laid: Omit<LaidOffer, 'figures'>): LaidOffer => ({
  ...laid,
  figures: lazily(() => figuresOf(laid)),
});

const figuresOf = ({ offer, offerIndex, layup }: Omit<LaidOffer, 'figures'>): LayupFigures =>
  layupFigures({
    material: offer.material,
    layup,
    ...(offer.fibreMassFraction === undefined
      ? {}
      : { fractionAt: `/fabrics/${offerIndex}/fibreMassFraction` }),
  });

function outcomesOf(
  offer: FabricOffer,
  i: number,
  { resin, method }: { readonly resin: ScheduleRequest['resin']; readonly method: PlyMethod },
) {
  const { material, fibreMassFraction } = offer;
  const turns = offer.turnsDeg ?? (material.fabric === 'unidirectional' ? [0, 90] : [0]);
  return turns.map((turnDeg) => ({
    turnDeg,
    outcome: inField(
      offer,
      i,
      layupOf({
        material,
        resin,
        method: method.name,
        turnDeg,
        ...(fibreMassFraction === undefined ? {} : { fibreMassFraction }),
      }),
    ),
  }));
}

/** A tape is for seams; a field of it would be all overlaps. */
function inField({ material }: FabricOffer, i: number, outcome: Outcome<Layup>): Outcome<Layup> {
  if (material.fabric === 'tape')
    return refusal(
      problem('not-supported', pointer('/fabrics', i, 'material'), {
        why: `${material.name} is a tape for seams, too narrow for a skin`,
      }),
    );
  return outcome.ok ? outcome : refusal(...below(`/fabrics/${i}`, outcome.problems));
}

const USUALLY_KEPT = 3;

interface Preparation extends Omit<PreparedSearch, 'problem' | 'target'> {
  readonly options: readonly StackOption[];
}

function prepare({ options, ...preparation }: Preparation): PreparedSearch {
  const { request, settled, old } = preparation;
  const build =
    saidOr(relaidSkinQuestions.restore, request.restore) === 'strongest' ? (old.high ?? old) : old;
  const target = build.measure;
  const { thicknessMm } = request.oldSkin;
  const steps = Math.floor((settled.taperRatio * thicknessMm) / settled.smallestStepMm);
  const { panel } = request;
  const problem: StackProblem = {
    options,
    target: {
      alongNPerMm: target.alongNPerMm,
      acrossNPerMm: target.acrossNPerMm,
      shearNPerMm: saidOr(relaidSkinQuestions.restoreShear, request.restoreShear) ? target.shearNPerMm : 0,
      strengthNPerMm: target.strengthNPerMm,
    },
    ...(panel === undefined ? {} : { panel: stackPanel(panel, request, build) }),
    thinnestMm: Math.max(0, thicknessMm - settled.lowUpToMm),
    thickestMm: thicknessMm + settled.proudUpToMm,
    mostPlies: Math.max(1, Math.min(settled.mostPlies, steps)),
    mostKinds: settled.mostKinds,
    worstPrintThrough: settled.worstPrintThrough,
    keep: request.keep ?? USUALLY_KEPT,
  };
  return { ...preparation, target, problem };
}

function optionOf({ offer, offerIndex, layup }: LaidOffer, { fabrics }: ScheduleRequest): StackOption {
  const massGPerM2 = layup.arealMassGPerM2 + layup.resinGPerM2;
  const kind = fabrics.findIndex(({ material }) => material.code === fabrics[offerIndex].material.code);
  return {
    membrane: membraneOf(layup.plies),
    kind,
    massGPerM2,
    price: offer.pricePerM2 ?? massGPerM2,
    suitsAgainstCore: offer.material.suitsAgainstCore,
    printThrough: offer.material.printThrough,
  };
}

function stackPanel(panel: PanelBelow, { oldSkin }: ScheduleRequest, build: SkinBuild): StackPanel {
  const newCore = panel.newCore ?? panel.core;
  const [along, across] = [0, 1].map((side) =>
    oldPanel(panel, { side, build, oldThicknessMm: oldSkin.thicknessMm }),
  );
  return {
    base: [baseStrip(panel, newCore, 'alongNPerMm'), baseStrip(panel, newCore, 'acrossNPerMm')],
    coreFaceMm: panel.otherSkin.thicknessMm + newCore.thicknessMm,
    bendingNmm: [along.bending, across.bending],
    momentN: [along.moment, across.moment],
  };
}

function baseStrip(
  { otherSkin }: PanelBelow,
  core: CoreLayer,
  key: 'alongNPerMm' | 'acrossNPerMm',
): StripSums {
  const skin = withLayer(emptyStrip, otherSkin[key], 0, otherSkin.thicknessMm);
  return withLayer(skin, core.youngMPa * core.thicknessMm, otherSkin.thicknessMm, core.thicknessMm);
}

interface OldSide {
  readonly side: number;
  readonly build: SkinBuild;
  readonly oldThicknessMm: number;
}

/** The panel as it was: the old plies in their places, stretched evenly to the thickness that was measured. */
function oldPanel(
  panel: PanelBelow,
  { side, build: { measure, plies }, oldThicknessMm }: OldSide,
): { readonly bending: number; readonly moment: number } {
  const key = side === 0 ? 'alongNPerMm' : 'acrossNPerMm';
  let top = panel.otherSkin.thicknessMm + panel.core.thicknessMm;
  let sums = baseStrip(panel, panel.core, key);
  for (const ply of plies) {
    const thicknessMm = (ply.thicknessMm * oldThicknessMm) / measure.thicknessMm;
    sums = withLayer(sums, membraneOf([ply]).aNPerMm[side === 0 ? 0 : 3], top, thicknessMm);
    top += thicknessMm;
  }
  const bending = stripBending(sums);
  const strength = Math.min(measure.strengthNPerMm[2 * side], measure.strengthNPerMm[2 * side + 1]);
  return { bending, moment: momentCapacity(bending, strength / measure[key], top - neutralHeight(sums)) };
}
