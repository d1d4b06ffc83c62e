import { problem, refusal, success, type Outcome } from '#lib/kernel';
import type {
  CoreSheet,
  Material,
  MaterialKind,
  Reinforcement,
  ResinSystem,
  Filler,
  Coating,
  Consumable,
} from './materials.js';
import type { LabourRates, PriceList } from './prices.js';
import type { Source } from './sources.js';

/** One published state of everything an estimate looks up. */
export interface Catalogue {
  readonly edition: string;
  /** SHA-256 of the edition's content, so that a replay can prove it used the same. */
  readonly hash: string;
  readonly materials: readonly Material[];
  readonly priceLists: readonly PriceList[];
  readonly labourRates: readonly LabourRates[];
  readonly sources: readonly Source[];
}

interface MaterialOfKind {
  readonly core: CoreSheet;
  readonly reinforcement: Reinforcement;
  readonly resin: ResinSystem;
  readonly filler: Filler;
  readonly coating: Coating;
  readonly consumable: Consumable;
  readonly safety: Consumable;
  readonly fastener: Consumable;
}

const isOfKind =
  <K extends MaterialKind>(kind: K) =>
  (material: Material): material is Extract<Material, MaterialOfKind[K]> =>
    material.kind === kind;

type ByKind = { readonly [K in MaterialKind]: readonly MaterialOfKind[K][] };
const sorted = new WeakMap<Catalogue['materials'], ByKind>();

/** All materials of a kind, in catalogue order; sorted out once for each catalogue. */
export function materialsOf<K extends MaterialKind>(
  { materials }: Catalogue,
  kind: K,
): readonly MaterialOfKind[K][] {
  const known = sorted.get(materials) ?? byKind(materials);
  sorted.set(materials, known);
  return known[kind];
}

const byKind = (materials: Catalogue['materials']): ByKind => ({
  core: materials.filter(isOfKind('core')),
  reinforcement: materials.filter(isOfKind('reinforcement')),
  resin: materials.filter(isOfKind('resin')),
  filler: materials.filter(isOfKind('filler')),
  coating: materials.filter(isOfKind('coating')),
  consumable: materials.filter(isOfKind('consumable')),
  safety: materials.filter(isOfKind('safety')),
  fastener: materials.filter(isOfKind('fastener')),
});

export const findMaterial = <K extends MaterialKind>(
  catalogue: Catalogue,
  kind: K,
  code: string,
): MaterialOfKind[K] | undefined => materialsOf(catalogue, kind).find((material) => material.code === code);

/** The material of that code, or the problem that names the codes there are. */
export function materialAt<K extends MaterialKind>(
  catalogue: Catalogue,
  kind: K,
  code: string,
  at: string,
): Outcome<MaterialOfKind[K]> {
  const material = findMaterial(catalogue, kind, code);
  if (material !== undefined) return success(material);
  const known = materialsOf(catalogue, kind).map((other) => other.code);
  return refusal(problem('unknown-code', at, { value: code, kind, known: known.join(', ') }));
}
