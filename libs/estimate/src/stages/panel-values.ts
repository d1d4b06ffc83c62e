import { findMaterial, materialsOf, type CoreSheet } from '#lib/catalogue';
import {
  layupOf,
  measureSkin,
  resinConstantsOf,
  type LaidPly,
  type OldSkinMeasure,
  type Schedule,
  type SkinMeasure,
} from '#lib/laminate';
import type { CraftForPanel, SandwichValues, SkinValues } from '#lib/panel';
import type { Job } from '../job/job.js';
import { extentOfOutline } from '../job/outline-size.js';
import { plyMethodName, type OldSkins } from './skins.js';

/** The largest bay between supports: a bulkhead or beam under the panel carries it. */
export function bayOf({ record: { panel } }: Job): readonly [number, number] {
  const { minX, minY, maxX, maxY } = extentOfOutline(panel.outline);
  const supports = panel.supports ?? [];
  const athwart = supports
    .filter(({ from, to }) => Math.abs(from[1] - to[1]) > Math.abs(from[0] - to[0]))
    .map(({ from, to }) => (from[0] + to[0]) / 2);
  const foreAndAft = supports
    .filter(({ from, to }) => Math.abs(from[0] - to[0]) >= Math.abs(from[1] - to[1]))
    .map(({ from, to }) => (from[1] + to[1]) / 2);
  return [largestGap(athwart, minX, maxX), largestGap(foreAndAft, minY, maxY)];
}

function largestGap(inside: readonly number[], start: number, end: number): number {
  const stops = [start, ...inside.filter((at) => at > start && at < end), end].sort((a, b) => a - b);
  return Math.max(...stops.slice(1).map((stop, index) => stop - stops[index]));
}

export const craftOf = ({ record: { craft } }: Job): CraftForPanel | undefined => {
  if (
    craft?.craftType === undefined ||
    craft.lengthWaterlineM === undefined ||
    craft.massLoadedKg === undefined ||
    craft.designCategory === undefined
  )
    return undefined;
  const { craftType, lengthWaterlineM, massLoadedKg, designCategory, lengthHullM } = craft;
  return {
    craftType,
    lengthWaterlineM,
    massLoadedKg,
    designCategory,
    ...(lengthHullM === undefined ? {} : { lengthHullM }),
  };
};

export const asBuilt = (job: Job, { outer, inner }: OldSkins): SandwichValues => ({
  outer: oldSkinValues(outer),
  inner: oldSkinValues(inner),
  core: oldCoreValues(job),
});

const oldCoreValues = (job: Job): SandwichValues['core'] =>
  coreValues(oldCoreOf(job), job.answers.core.thicknessMm.value);

export interface Repair {
  readonly skins: OldSkins;
  /** Of the new core; a spot filled solid leaves the panel its old core, and nothing is counted on the hard spot. */
  readonly coreMm: number | 'old';
  /** Absent when the old skin is bedded again. */
  readonly schedule: Schedule | undefined;
}

export function repairedWith(job: Job, { skins, coreMm, schedule }: Repair): SandwichValues {
  const fresh = schedule === undefined ? undefined : newSkinValues(job, schedule);
  const isFromAbove = job.answers.method.access.value === 'from-above';
  return {
    outer: isFromAbove && fresh !== undefined ? fresh : oldSkinValues(skins.outer),
    inner: !isFromAbove && fresh !== undefined ? fresh : oldSkinValues(skins.inner),
    core: coreMm === 'old' ? oldCoreValues(job) : coreValues(job.core, coreMm),
  };
}

const G_PER_KG = 1000;

/** Glass of a skin whose plies were guessed from its thickness is a guess upon a guess: it is left unsaid. */
function oldSkinValues({ measure, plies, high }: OldSkinMeasure): SkinValues {
  const isGuessed = high !== undefined;
  const glassGPerM2 = plies.reduce((sum, { arealMassGPerM2 }) => sum + arealMassGPerM2, 0);
  return { ...skinValues(measure), ...(isGuessed ? {} : { dryFibreKgPerM2: glassGPerM2 / G_PER_KG }) };
}

const newSkinValues = (job: Job, schedule: Schedule): SkinValues => ({
  ...skinValues(newSkin(job, schedule)),
  dryFibreKgPerM2: schedule.glassGPerM2.value / G_PER_KG,
});

function newSkin(job: Job, { plies }: Schedule): SkinMeasure {
  return measureSkin(plies.flatMap((ply) => laidPlies(job, ply)));
}

type LaidByFabric = Map<string, readonly LaidPly[]>;
const laidOf = new WeakMap<Job, LaidByFabric>();

/** One fabric as it is laid; forty schedules of one job are made of the same few. */
function laidPlies(job: Job, ply: Schedule['plies'][number]): readonly LaidPly[] {
  const known: LaidByFabric = laidOf.get(job) ?? new Map();
  laidOf.set(job, known);
  const key = `${ply.material}/${ply.turnDeg}/${ply.fibreMassFraction}`;
  const found = known.get(key) ?? laidAnew(job, ply);
  known.set(key, found);
  return found;
}

function laidAnew(
  job: Job,
  { material: code, turnDeg, fibreMassFraction }: Schedule['plies'][number],
): readonly LaidPly[] {
  const material = findMaterial(job.catalogue, 'reinforcement', code);
  if (material === undefined) return [];
  const resin = resinConstantsOf(job.resin);
  const layup = layupOf({ material, resin, method: plyMethodName, turnDeg, fibreMassFraction });
  return layup.ok ? layup.value.plies : [];
}

/** A membrane as the panel room wants it: moduli over the thickness, strengths at the first ply to break. */
function skinValues({
  thicknessMm,
  aNPerMm,
  alongNPerMm,
  acrossNPerMm,
  shearNPerMm,
  strengthNPerMm,
}: SkinMeasure): SkinValues {
  const [, a12, , a22] = aNPerMm;
  const [tensionAlong, compressionAlong, tensionAcross, compressionAcross] = strengthNPerMm;
  return {
    thicknessMm,
    modulusXMPa: alongNPerMm / thicknessMm,
    modulusYMPa: acrossNPerMm / thicknessMm,
    shearModulusMPa: shearNPerMm / thicknessMm,
    poissonXY: a12 / a22,
    tensileStrengthMPa: tensionAlong / thicknessMm,
    compressiveStrengthMPa: compressionAlong / thicknessMm,
    tensileStrengthYMPa: tensionAcross / thicknessMm,
    compressiveStrengthYMPa: compressionAcross / thicknessMm,
  };
}

const coreValues = (core: CoreSheet, thicknessMm: number): SandwichValues['core'] => ({
  coreType: core.coreType,
  thicknessMm,
  shearModulusMPa: core.shearModulusMPa.value,
  shearStrengthMPa: core.shearStrengthMPa.value,
  compressiveModulusMPa: core.compressiveModulusMPa.value,
  compressiveStrengthMPa: core.compressiveStrengthMPa.value,
  inPlaneModulusMPa: core.inPlaneModulusMPa.value,
  densityKgPerM3: core.densityKgPerM3.value,
});

/** The catalogue's core of the old core's type nearest to it in density. */
export const oldCoreOf = (job: Job) =>
  materialsOf(job.catalogue, 'core')
    .filter(({ coreType }) => coreType === job.answers.core.coreType.value)
    .sort(
      (a, b) =>
        Math.abs(a.densityKgPerM3.value - wantedDensity(job)) -
        Math.abs(b.densityKgPerM3.value - wantedDensity(job)),
    )
    .at(0) ?? job.core;

const wantedDensity = ({ record, core }: Job): number =>
  record.core.densityKgPerM3 ?? core.densityKgPerM3.value;
