import type { Outcome } from '#lib/kernel';
import { layupOf, measureSkin, resinConstantsOf, type Schedule, type SkinMeasure } from '#lib/laminate';
import { panelCheck, type CraftForPanel, type FittingRequest, type PanelCheck, type PanelCheckRequest, type SandwichValues, type SkinValues } from '#lib/panel';
import { materialsOf, type CoreSheet } from '#lib/catalogue';
import type { CoreWork } from './core-stage.js';
import type { Job } from './job.js';
import { oldCoreOf, type LaminateWork } from './laminate-stage.js';
import type { ScopeWork } from './scope-stage.js';
import { plyMethodName, type OldSkins } from './skins.js';
import { extentOfOutline } from './outline-size.js';

export interface CheckContext {
  readonly job: Job;
  readonly scope: ScopeWork;
  readonly skins: OldSkins;
  readonly core: CoreWork;
  readonly laminate: LaminateWork;
  readonly clampPressureKPa: number;
}

/** The panel as built, as found, opened and repaired. */
export const panelCheckOf = (context: CheckContext): Outcome<PanelCheck> => panelCheck(requestOf(context));

function requestOf(context: CheckContext): PanelCheckRequest {
  const { job, scope: { plan }, clampPressureKPa } = context;
  const [lengthXMm, widthYMm] = bayOf(job);
  const opening = extentOfOutline(plan.openings[0]?.area.outer ?? job.record.panel.outline);
  const craft = craftOf(job);
  return {
    panel: { lengthXMm, widthYMm, edges: job.edges.value },
    asBuilt: asBuilt(context), repaired: repaired(context),
    asFound: { degradedFraction: Math.min(1, plan.openedAreaM2 / plan.panelAreaM2) },
    // An opening that runs over a support leaves no more inner skin unsupported than the bay is long.
    opened: { lengthXMm: Math.min(opening.maxX - opening.minX, lengthXMm), widthYMm: Math.min(opening.maxY - opening.minY, widthYMm), clampPressureKPa },
    ...(craft === undefined ? {} : { craft }),
    fittings: fittingRequests(context),
  };
}

/** The largest bay between supports: a bulkhead or beam under the panel carries it. */
export function bayOf({ record: { panel } }: Job): readonly [number, number] {
  const { minX, minY, maxX, maxY } = extentOfOutline(panel.outline);
  const supports = panel.supports ?? [];
  const athwart = supports.filter(({ from, to }) => Math.abs(from[1] - to[1]) > Math.abs(from[0] - to[0])).map(({ from, to }) => (from[0] + to[0]) / 2);
  const foreAndAft = supports.filter(({ from, to }) => Math.abs(from[0] - to[0]) >= Math.abs(from[1] - to[1])).map(({ from, to }) => (from[1] + to[1]) / 2);
  return [largestGap(athwart, minX, maxX), largestGap(foreAndAft, minY, maxY)];
}

function largestGap(inside: readonly number[], start: number, end: number): number {
  const stops = [start, ...inside.filter((at) => at > start && at < end), end].sort((a, b) => a - b);
  return Math.max(...stops.slice(1).map((stop, index) => stop - stops[index]));
}

const craftOf = ({ record: { craft } }: Job): CraftForPanel | undefined => {
  if (craft?.craftType === undefined || craft.lengthWaterlineM === undefined || craft.massLoadedKg === undefined || craft.designCategory === undefined) return undefined;
  const { craftType, lengthWaterlineM, massLoadedKg, designCategory, lengthHullM } = craft;
  return { craftType, lengthWaterlineM, massLoadedKg, designCategory, ...(lengthHullM === undefined ? {} : { lengthHullM }) };
};

const asBuilt = ({ job, skins }: CheckContext): SandwichValues => ({
  outer: skinValues(skins.outer.measure), inner: skinValues(skins.inner.measure),
  core: coreValues(oldCoreOf(job), job.numbers.coreMm.value),
});

function repaired(context: CheckContext): SandwichValues {
  const { job, skins, core, laminate } = context;
  const fresh = laminate.schedule === undefined ? undefined : newSkin(job, laminate.schedule);
  const isFromAbove = job.access.value === 'from-above';
  return {
    outer: skinValues(isFromAbove ? fresh ?? skins.outer.measure : skins.outer.measure),
    inner: skinValues(isFromAbove ? skins.inner.measure : fresh ?? skins.inner.measure),
    core: coreValues(job.core, core.coreMm),
  };
}

function newSkin(job: Job, { plies }: Schedule): SkinMeasure {
  const resin = resinConstantsOf(job.resin);
  return measureSkin(plies.flatMap(({ material: code, turnDeg, fibreMassFraction }) => {
    const material = materialsOf(job.catalogue, 'reinforcement').find((fabric) => fabric.code === code);
    if (material === undefined) return [];
    const layup = layupOf({ material, resin, method: plyMethodName, turnDeg, fibreMassFraction });
    return layup.ok ? layup.value.plies : [];
  }));
}

/** A membrane as the panel room wants it: moduli over the thickness, strengths at the first ply to break. */
export function skinValues({ thicknessMm, aNPerMm, alongNPerMm, acrossNPerMm, shearNPerMm, strengthNPerMm }: SkinMeasure): SkinValues {
  const [, a12, , a22] = aNPerMm;
  const [tensionAlong, compressionAlong, tensionAcross, compressionAcross] = strengthNPerMm;
  return {
    thicknessMm, modulusXMPa: alongNPerMm / thicknessMm, modulusYMPa: acrossNPerMm / thicknessMm,
    shearModulusMPa: shearNPerMm / thicknessMm, poissonXY: a12 / a22,
    tensileStrengthMPa: tensionAlong / thicknessMm, compressiveStrengthMPa: compressionAlong / thicknessMm,
    tensileStrengthYMPa: tensionAcross / thicknessMm, compressiveStrengthYMPa: compressionAcross / thicknessMm,
  };
}

const coreValues = (core: CoreSheet, thicknessMm: number): SandwichValues['core'] => ({
  coreType: core.coreType, thicknessMm, shearModulusMPa: core.shearModulusMPa.value, shearStrengthMPa: core.shearStrengthMPa.value,
  compressiveModulusMPa: core.compressiveModulusMPa.value, compressiveStrengthMPa: core.compressiveStrengthMPa.value,
  inPlaneModulusMPa: core.inPlaneModulusMPa.value, densityKgPerM3: core.densityKgPerM3.value,
});

const USUAL_BOLT_MM = 8;
/** Holes are opened to twice the fastener and potted: common practice, no published source. */
const POTTED_OVER_BOLT = 2;

function fittingRequests({ job, scope: { plan } }: CheckContext): readonly FittingRequest[] {
  return plan.fittings.filter(({ work, holes }) => work.includes('pot') && holes > 0).map(({ id, kind, holes, work }) => {
    const recorded = job.record.fittings?.find((fitting) => fitting.id === id);
    const boltMm = recorded?.holeDiameterMm ?? USUAL_BOLT_MM;
    const plateMm = recorded?.baseMm;
    return {
      id, kind, bolts: holes, boltMm, pottedMm: boltMm * POTTED_OVER_BOLT,
      ...(work.includes('plate') && plateMm !== undefined ? { backingPlate: { lengthMm: plateMm, widthMm: plateMm } } : {}),
    };
  });
}
