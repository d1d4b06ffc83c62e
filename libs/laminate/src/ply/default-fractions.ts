import type { Cite } from '#lib/provenance';

export type LayupSkill = 'hand-simple' | 'hand-complex' | 'vacuum-bag';
export type FractionKind = 'mat' | 'woven' | 'multiaxial' | 'unidirectional';

const cite: Cite = { source: 'ISO-12215-5-2008', clause: 'Annex C table C.2' };

const table: Readonly<Record<FractionKind, Readonly<Record<LayupSkill, number>>>> = {
  mat: { 'hand-simple': 0.3, 'hand-complex': 0.25, 'vacuum-bag': 0.36 },
  woven: { 'hand-simple': 0.48, 'hand-complex': 0.36, 'vacuum-bag': 0.58 },
  multiaxial: { 'hand-simple': 0.5, 'hand-complex': 0.38, 'vacuum-bag': 0.6 },
  unidirectional: { 'hand-simple': 0.55, 'hand-complex': 0.41, 'vacuum-bag': 0.66 },
};

const mixed: Readonly<Record<LayupSkill, readonly [number, number]>> = {
  'hand-simple': [0.46, 0.18],
  'hand-complex': [0.35, 0.11],
  'vacuum-bag': [0.56, 0.22],
};

/** Fibre mass fraction to expect where nobody measured one. */
export const defaultFraction = (
  kind: FractionKind,
  skill: LayupSkill,
): { readonly value: number; readonly cite: Cite } => ({ value: table[kind][skill], cite });

/** Roving or multiaxial laid in turns with mat; `matShare` is the mat's part of all the glass, 0 to 1. */
export const mixedFraction = (
  matShare: number,
  skill: LayupSkill,
): { readonly value: number; readonly cite: Cite } => ({
  value: mixed[skill][0] - mixed[skill][1] * matShare,
  cite,
});
