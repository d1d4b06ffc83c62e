import { faultsIn } from '#lib/asking';
import {
  findMaterial,
  materialsOf,
  type Catalogue,
  type Reinforcement,
  type ResinSystem,
} from '#lib/catalogue';
import { readOutline, regionOf, type Point, type Region } from '#lib/geometry';
import {
  allOf,
  allOfList,
  andThen,
  below,
  mapValue,
  pointer,
  problem,
  refusal,
  success,
  type Outcome,
} from '#lib/kernel';
import { closingPlies, pliesToFill, type ClosingPlies, type ClosingRequest } from '../taper/closing-plies.js';
import type { ResinConstants } from '../ply/constituents.js';
import { layupOf, resinConstantsOf, type Layup } from '../theory/layup.js';
import type { PlyMethodName } from '../ply/ply-method.js';
import { relaidPlies, type PlyToLay, type RelaidPlies } from '../taper/relaid-plies.js';
import {
  laminateScheduleQuestions,
  type LaminateScheduleRequest,
  type NamedPly,
  type RebeddedSkinRequest,
  type RelaidSkinRequest,
} from './asked.js';
import type { FabricOffer, ScheduleRequest } from './schedule-request.js';
import type { Schedule, ScheduleSearch } from './schedule-report.js';
import { searchSchedules } from './schedule-search.js';

export interface LaminateSchedule {
  /** The best skins, where a skin is laid anew. */
  readonly search?: ScheduleSearch;
  /** The first of them laid out over the opening. */
  readonly relaid?: RelaidPlies;
  /** The plies over the cut, where the lifted skin is bonded back. */
  readonly rebedded?: ClosingPlies;
  /** Cautions for whoever lays the plies. */
  readonly cautions: readonly string[];
}

const cautions = [
  'glass dust and uncured resin: gloves, eye protection, a mask for dust and vapour; local rules decide',
  'laminate laid too thick in one go overheats: keep to the stages',
  'a comparison, not a design approval: highly loaded fittings go to a naval architect or qualified surveyor',
] as const;

interface Context {
  readonly catalogue: Catalogue;
  readonly resin: ResinConstants;
  readonly method: PlyMethodName;
}

/** The laminate of a repair from codes of a catalogue: what to lay, and how it is cut and laid. */
export function laminateSchedule(
  request: LaminateScheduleRequest,
  catalogue: Catalogue,
): Outcome<LaminateSchedule> {
  const wrong = faultsIn(request, laminateScheduleQuestions);
  if (wrong.length > 0) return refusal(...wrong);
  if (request.relaid === undefined && request.rebedded === undefined) {
    return refusal(
      problem('missing', '/relaid', {
        expected: 'a skin to lay anew (relaid), one to bond back (rebedded), or both',
      }),
    );
  }
  return andThen(resinOf(catalogue, request.resin, '/resin'), (resin) =>
    scheduled(request, { catalogue, resin: resinConstantsOf(resin), method: request.method ?? 'class-bv' }),
  );
}

function scheduled(
  { relaid, rebedded, method }: LaminateScheduleRequest,
  context: Context,
): Outcome<LaminateSchedule> {
  const whole = allOf({
    relaid: relaid === undefined ? success(undefined) : at('/relaid', relay(relaid, context, method)),
    rebedded: rebedded === undefined ? success(undefined) : at('/rebedded', rebed(rebedded, context)),
  });
  return mapValue(whole, (parts) => ({
    ...parts.relaid,
    ...(parts.rebedded === undefined ? {} : { rebedded: parts.rebedded }),
    cautions,
  }));
}

const at = <T>(where: string, outcome: Outcome<T>): Outcome<T> =>
  outcome.ok
    ? outcome
    : refusal(
        ...outcome.problems.map((found) =>
          found.at === '/resin' || found.at === '/method' ? found : { ...found, at: `${where}${found.at}` },
        ),
      );

type Relaid = Pick<LaminateSchedule, 'search' | 'relaid'>;

function relay(
  request: RelaidSkinRequest,
  context: Context,
  method: PlyMethodName | undefined,
): Outcome<Relaid> {
  const { layOut, panel, flush, limits, restore, restoreShear } = request;
  const parts = allOf({
    oldSkin: oldSkinOf(request, context),
    fabrics: fabricsOf(request, context),
    opening: layOut === undefined ? success(undefined) : regionFrom(layOut.opening, '/layOut/opening'),
    soundSkin:
      layOut?.soundSkin === undefined
        ? success(undefined)
        : regionFrom(layOut.soundSkin, '/layOut/soundSkin'),
  });
  return andThen(parts, ({ oldSkin, fabrics, opening, soundSkin }) => {
    const search = searchSchedules({
      oldSkin,
      fabrics,
      resin: context.resin,
      ...given({ method, panel, flush, limits, restore, restoreShear }),
    });
    return andThen(search, (found) => laidOut(found, { request, context, opening, soundSkin }));
  });
}

/** Only what was given, so that an absent field stays absent. */
const given = <T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } => {
  const present: { [K in keyof T]?: Exclude<T[K], undefined> } = {};
  for (const [key, value] of Object.entries(fields))
    if (value !== undefined) Reflect.set(present, key, value);
  return present;
};

interface Layout {
  readonly request: RelaidSkinRequest;
  readonly context: Context;
  readonly opening: Region | undefined;
  readonly soundSkin: Region | undefined;
}

function laidOut(search: ScheduleSearch, { request, context, opening, soundSkin }: Layout): Outcome<Relaid> {
  const best = search.best.at(0);
  if (opening === undefined || best === undefined) return success({ search });
  const { order, overlapMm, endAllowanceMm, wetLimitMm } = request.layOut ?? {};
  const relaid = relaidPlies({
    opening,
    oldThicknessMm: request.oldSkin.thicknessMm,
    plies: pliesOf(best, context),
    ...given({
      order,
      overlapMm,
      endAllowanceMm,
      wetLimitMm,
      soundSkin,
      taperRatio: request.limits?.taperRatio,
    }),
  });
  return relaid.ok
    ? success({ search, relaid: relaid.value })
    : refusal(...below('/layOut', relaid.problems));
}

const pliesOf = ({ plies }: Schedule, { catalogue }: Context): readonly PlyToLay[] =>
  plies.flatMap((ply) => {
    const material = findMaterial(catalogue, 'reinforcement', ply.material);
    return material === undefined
      ? []
      : [
          {
            material,
            thicknessMm: ply.thicknessMm,
            fibreMassFraction: ply.fibreMassFraction,
            turnDeg: ply.turnDeg,
          },
        ];
  });

function oldSkinOf(
  { oldSkin }: RelaidSkinRequest,
  { catalogue }: Context,
): Outcome<ScheduleRequest['oldSkin']> {
  const { thicknessMm, plies, resin } = oldSkin;
  const parts = allOf({
    plies:
      plies === undefined
        ? success(undefined)
        : allOfList(
            plies.map((ply, i) =>
              mapValue(
                fabricOf(catalogue, ply.material, pointer('/oldSkin/plies', i, 'material')),
                (material) => ({ ...ply, material }),
              ),
            ),
          ),
    resin:
      resin === undefined
        ? success(undefined)
        : mapValue(resinOf(catalogue, resin, '/oldSkin/resin'), resinConstantsOf),
  });
  return mapValue(parts, (named) => ({ thicknessMm, ...given(named) }));
}

function fabricsOf({ fabrics }: RelaidSkinRequest, { catalogue }: Context): Outcome<readonly FabricOffer[]> {
  if (fabrics === undefined)
    return success(materialsOf(catalogue, 'reinforcement').map((material) => ({ material })));
  return allOfList(
    fabrics.map((fabric, i) =>
      mapValue(fabricOf(catalogue, fabric.material, pointer('/fabrics', i, 'material')), (material) => ({
        ...fabric,
        material,
      })),
    ),
  );
}

function rebed(request: RebeddedSkinRequest, context: Context): Outcome<ClosingPlies> {
  const { opening, skinThicknessMm } = request;
  const parts = allOf({
    opening: opening === undefined ? success(undefined) : regionFrom(opening, '/opening'),
    plies: closingStack(request, context),
  });
  return andThen(parts, ({ opening: region, plies }) => {
    const { cutLengthMm, kerfMm, taperRatio, order, overlapMm, longestStripMm, wetLimitMm, roomMm, joint } =
      request;
    const closing: ClosingRequest = {
      skinThicknessMm,
      plies,
      ...given({
        opening: region,
        cutLengthMm,
        kerfMm,
        taperRatio,
        order,
        overlapMm,
        longestStripMm,
        wetLimitMm,
        roomMm,
        joint,
      }),
    };
    return closingPlies(closing);
  });
}

function closingStack(
  { plies, fillWith, skinThicknessMm }: RebeddedSkinRequest,
  context: Context,
): Outcome<readonly PlyToLay[]> {
  if (plies !== undefined)
    return allOfList(plies.map((ply, i) => plyToLay(ply, context, pointer('/plies', i))));
  if (fillWith === undefined)
    return refusal(
      problem('missing', '/plies', {
        expected: 'the plies over the cut, or in fillWith the fabric that fills it',
      }),
    );
  return mapValue(plyToLay({ material: fillWith }, context, '/fillWith'), (ply) => {
    const count =
      Number.isFinite(skinThicknessMm) && skinThicknessMm > 0
        ? pliesToFill(skinThicknessMm, ply.thicknessMm)
        : 1;
    return new Array<PlyToLay>(Math.min(count, MOST_CLOSING_PLIES)).fill(ply);
  });
}

const MOST_CLOSING_PLIES = 60;

function plyToLay(ply: NamedPly, { catalogue, resin, method }: Context, where: string): Outcome<PlyToLay> {
  const named = fabricOf(catalogue, ply.material, where === '/fillWith' ? where : `${where}/material`);
  return andThen(named, (material) => {
    const { turnDeg, fibreMassFraction } = ply;
    const layup = layupOf({ material, resin, method, ...given({ turnDeg, fibreMassFraction }) });
    return layup.ok
      ? success(plyFrom(material, layup.value, turnDeg))
      : refusal(...below(where, layup.problems));
  });
}

const plyFrom = (material: Reinforcement, layup: Layup, turnDeg: number | undefined): PlyToLay => ({
  material,
  thicknessMm: layup.thicknessMm,
  fibreMassFraction: layup.fibreMassFraction,
  ...given({ turnDeg }),
});

const regionFrom = (outline: readonly Point[], where: string): Outcome<Region> =>
  mapValue(readOutline(outline, where), (ring) => regionOf(ring));

function fabricOf(catalogue: Catalogue, code: string, where: string): Outcome<Reinforcement> {
  const material = findMaterial(catalogue, 'reinforcement', code);
  return material === undefined
    ? unknownCode(where, code, materialsOf(catalogue, 'reinforcement'))
    : success(material);
}

function resinOf(catalogue: Catalogue, code: string, where: string): Outcome<ResinSystem> {
  const resin = findMaterial(catalogue, 'resin', code);
  return resin === undefined ? unknownCode(where, code, materialsOf(catalogue, 'resin')) : success(resin);
}

const unknownCode = (
  where: string,
  value: string,
  known: readonly { readonly kind: string; readonly code: string }[],
): Outcome<never> =>
  refusal(
    problem('unknown-code', where, {
      value,
      kind: known.at(0)?.kind ?? 'material',
      known: known.map(({ code }) => code).join(', '),
    }),
  );
