import type { DefectRecord } from 'kingplank-sdk';

/** Millimetres on deck: x forward, y to starboard, from the datum of the drawing. */
export type Place = readonly [number, number];
export type Ring = readonly Place[];

export type Zone = NonNullable<DefectRecord['zones']>[number];
export type Fitting = NonNullable<DefectRecord['fittings']>[number];
export type Support = NonNullable<DefectRecord['panel']['supports']>[number];
export type Reading = NonNullable<DefectRecord['survey']>['readings'][number];
export type Sound = Extract<Reading, { kind: 'sounding' }>['sound'];
export type PlugCondition = Extract<Reading, { kind: 'plug' }>['condition'];

/** A sheet with nothing drawn on it; the thicknesses are left to be asked for, not made up. */
export const emptySheet: DefectRecord = {
  panel: { outline: [] },
  outerSkin: { thicknessMm: '' },
  innerSkin: { thicknessMm: '' },
  core: { thicknessMm: '' },
};

export const zonesOf = ({ zones }: DefectRecord): readonly Zone[] => zones ?? [];
export const fittingsOf = ({ fittings }: DefectRecord): readonly Fitting[] => fittings ?? [];
export const supportsOf = ({ panel }: DefectRecord): readonly Support[] => panel.supports ?? [];
export const readingsOf = ({ survey }: DefectRecord): readonly Reading[] => survey?.readings ?? [];
export const holesOf = ({ panel }: DefectRecord): readonly Ring[] => (panel.holes ?? []).map(ringOf);
export const outlineOf = ({ panel }: DefectRecord): Ring => ringOf(panel.outline);

/** The contract writes a place as a list of numbers; here it is a pair. */
export const placeOf = (pair: readonly number[]): Place => [pair[0] ?? 0, pair[1] ?? 0];
export const ringOf = (pairs: readonly (readonly number[])[]): Ring => pairs.map(placeOf);

/** Enough to ask the service for a price: a panel, its thicknesses, and something bad in it. */
export function isReadyToPrice(record: DefectRecord): boolean {
  const thicknesses = [record.outerSkin, record.innerSkin, record.core].map(({ thicknessMm }) => thicknessMm);
  const hasBadCore = zonesOf(record).length > 0 || readingsOf(record).length > 0;
  return record.panel.outline.length >= 3 && thicknesses.every((given) => given !== '') && hasBadCore;
}
