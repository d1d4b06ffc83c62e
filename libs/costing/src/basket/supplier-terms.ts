import type { Supplier } from '#lib/catalogue';
import { moneyIn, noMoney, type Currency, type Money } from '#lib/money';
import type { Transport } from './questions.js';

/** What a supplier asks besides the price of the goods, for this way of transport. */
export interface SupplierTerms {
  readonly code: string;
  readonly name: string;
  readonly minimumOrder: Money;
  /** Goods that make delivery free; nothing when none do. */
  readonly freeDeliveryFrom: Money;
  readonly delivery: Money;
  readonly hazardSurcharge: Money;
  readonly oversizeFreight: Money;
}

/** Who collects pays no freight and no surcharges. */
export function termsOf(
  supplier: Supplier,
  currency: Currency,
  transport: Transport | undefined,
): SupplierTerms {
  const read = (text: string | undefined): Money =>
    text === undefined ? noMoney(currency) : moneyIn(text, currency);
  const carried = (text: string | undefined): Money => read(transport === 'collect' ? undefined : text);
  return {
    code: supplier.code,
    name: supplier.name,
    minimumOrder: read(supplier.minimumOrder),
    freeDeliveryFrom: carried(supplier.freeDeliveryFrom),
    delivery: carried(supplier.delivery),
    hazardSurcharge: carried(supplier.hazardSurcharge),
    oversizeFreight: carried(supplier.oversizeFreight),
  };
}
