/** Fields that are in the unit which the field `unit` beside them names. */
const inStatedUnit = new Set([
  'value',
  'demand',
  'capacity',
  'before',
  'after',
  'limit',
  'quantity',
  'netQuantity',
  'wasteQuantity',
  'purchaseQuantity',
  'quantityBefore',
  'quantityAfter',
  'required',
  'fromOnHand',
  'covered',
  'short',
]);

/** The unit that an object states for one of its fields in `unit`; undefined for a field that it is not about. */
export const statedUnit = (owner: Readonly<Record<string, unknown>>, name: string): string | undefined =>
  mayHaveStatedUnit(name) && typeof owner.unit === 'string' ? owner.unit : undefined;

export const mayHaveStatedUnit = (name: string): boolean => inStatedUnit.has(name);
