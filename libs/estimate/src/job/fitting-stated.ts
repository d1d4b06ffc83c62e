import { fittingKinds, isHighlyLoaded } from '#lib/extent';
import { pointer, type Problem } from '#lib/kernel';
import { cardFaults, type FittingStated } from '#lib/methods';
import type { FittingRecord } from './defect-record.js';

/** What the record says of a fitting, for its card. */
export const stated = (fitting: FittingRecord): FittingStated => ({
  id: fitting.id,
  kind: fitting.kind,
  isHighlyLoaded: isHighlyLoaded(fitting.kind),
  ...given(fitting),
});

const given = ({
  holes,
  holeDiameterMm,
  baseMm,
  boltMm,
  boltLengthMm,
  plateMm,
  plateThicknessMm,
  insertMm,
  offH,
  onH,
}: FittingRecord): Partial<FittingStated> =>
  Object.fromEntries(
    Object.entries({
      holes,
      holeDiameterMm,
      baseMm,
      boltMm,
      boltLengthMm,
      plateMm,
      plateThicknessMm,
      insertMm,
      offH,
      onH,
    }).filter(([, value]) => value !== undefined),
  );

/** Every card that contradicts itself; there is no card for a kind that nobody knows, which its own question tells. */
export const hardwareFaults = (fittings: readonly FittingRecord[]): readonly Problem[] =>
  fittings.flatMap((fitting, index) =>
    fittingKinds.includes(fitting.kind) ? cardFaults(stated(fitting), pointer('/fittings', index)) : [],
  );
