import { allOfList, below, mapValue, refusal, success, type Outcome } from '#lib/kernel';
import { readQuantity, siUnitOf, type Dimension } from '#lib/units';
import { shownValue } from '../../edge/dto/field.js';
import { quantityProblem } from '../../edge/dto/quantities.js';

export interface TypedQuantity {
  readonly dimension: Dimension;
  readonly text: string;
}

export interface QuantityRead {
  /** The text as sent. */
  readonly text: string;
  /** In the SI unit beside it, rounded once from the exact fraction to the nearest double. */
  readonly value: number;
  /** Unit that was recognised. */
  readonly unit: string;
}

export interface QuantitiesRead {
  /** The texts, in the order sent, each as it was understood. */
  readonly quantities: readonly QuantityRead[];
}

/** Reads each typed quantity exactly, or says of every one that cannot be read why not. */
export const readQuantities = ({
  quantities,
}: {
  readonly quantities: readonly TypedQuantity[];
}): Outcome<QuantitiesRead> =>
  mapValue(
    allOfList(
      quantities.map(({ dimension, text }, index) =>
        readOne({ dimension, text }, `/quantities/${index}/text`),
      ),
    ),
    (read) => ({ quantities: read }),
  );

function readOne({ dimension, text }: TypedQuantity, at: string): Outcome<QuantityRead> {
  const reading = readQuantity(text, dimension);
  if (typeof reading === 'number') return success({ text, value: reading, unit: siUnitOf(dimension) });
  return refusal(...below(at, [quantityProblem(reading, dimension, shownValue(text))]));
}
