import type { MoneyJson } from '#lib/money';
import type { CauseClass, LinePack, LineQuantity, PartOrLabour, Section, TaxGroup } from './cost-line.js';

/** A priced line as quotations and comparisons need it. */
export interface DocumentLine {
  readonly code: string;
  readonly section: Section;
  readonly title: string;
  readonly causeClass: CauseClass;
  readonly partOrLabour: PartOrLabour;
  readonly quantity: LineQuantity;
  readonly unit: string;
  readonly unitRate: MoneyJson;
  readonly packs: readonly LinePack[];
  readonly amount: MoneyJson;
  readonly taxGroup: string;
  readonly note?: string;
}

/** Priced work with its totals. A roll-up is one as it stands; a stored estimate is restated as one. */
export interface PricedDocument {
  readonly currency: string;
  readonly lines: readonly DocumentLine[];
  readonly sections: readonly {
    readonly section: Section;
    readonly title: string;
    readonly amount: MoneyJson;
  }[];
  readonly direct: MoneyJson;
  readonly overhead: MoneyJson;
  readonly profit: MoneyJson;
  /** What will probably be found besides, measured again. */
  readonly provisional: MoneyJson;
  readonly contingency: MoneyJson;
  readonly net: MoneyJson;
  readonly taxes: readonly (TaxGroup & { readonly taxable: MoneyJson; readonly tax: MoneyJson })[];
  readonly tax: MoneyJson;
  readonly gross: MoneyJson;
}
