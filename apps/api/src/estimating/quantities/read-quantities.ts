import { allOfList, mapValue, problem, refusal, success, type Outcome } from '#lib/kernel';
import { exampleOf, readQuantity, siUnitOf, unitsOf, type Dimension } from '#lib/units';

export interface TypedQuantity {
  readonly dimension: Dimension;
  readonly text: string;
}

export interface QuantityRead {
  readonly text: string;
  /** In the SI unit beside it, rounded once from the exact fraction to the nearest double. */
  readonly value: number;
  readonly unit: string;
}

export interface QuantitiesRead {
  readonly quantities: readonly QuantityRead[];
}

/** Reads each typed quantity exactly, or says of every one that cannot be read why not. */
export const readQuantities = ({ quantities }: { readonly quantities: readonly TypedQuantity[] }): Outcome<QuantitiesRead> =>
  mapValue(
    allOfList(quantities.map(({ dimension, text }, index) => readOne({ dimension, text }, `/quantities/${index}/text`))),
    (read) => ({ quantities: read }),
  );

function readOne({ dimension, text }: TypedQuantity, at: string): Outcome<QuantityRead> {
  const reading = readQuantity(text, dimension);
  if (typeof reading === 'number') return success({ text, value: reading, unit: siUnitOf(dimension) });
  if (reading.fault === 'wrong-unit') {
    return refusal(problem('wrong-unit', at, { given: reading.given, dimension, accepted: unitsOf(dimension).join(', ') }));
  }
  return refusal(problem('not-a-quantity', at, { unit: siUnitOf(dimension), example: exampleOf(dimension), value: JSON.stringify(text) }));
}
