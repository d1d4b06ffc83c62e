import { sectionTitles, type DocumentLine, type PricedDocument, type Section } from '#lib/costing';
import { Defect } from '#lib/kernel';
import { addMoney, exactMoney, moneyJson, subtractMoney } from '#lib/money';
import type { Estimate, EstimateLine } from './estimate-document.js';

/** A stored estimate restated as what quotations and comparisons are made of. */
export const pricedDocumentOf = ({ lines, sections, totals }: Estimate): PricedDocument => ({
  currency: totals.currency,
  lines: lines.map(documentLine),
  sections: sections.map(({ code, title, amount }) => ({ section: sectionOf(code), title, amount })),
  direct: totals.net,
  overhead: totals.overhead,
  profit: totals.profit,
  provisional: moneyJson(addMoney(exactMoney(totals.growth.amount), exactMoney(totals.newAreas.amount))),
  // It stands beside the price and is paid only by change orders.
  contingency: moneyJson({ ...exactMoney(totals.total), minor: 0n }),
  net: moneyJson(subtractMoney(exactMoney(totals.total), exactMoney(totals.tax))),
  taxes: totals.taxes.map(({ code, name, percent, base, amount }) => ({
    code,
    name,
    percent,
    taxable: base,
    tax: amount,
  })),
  tax: totals.tax,
  gross: totals.total,
});

const documentLine = (line: EstimateLine): DocumentLine => ({
  code: line.code,
  section: sectionOf(line.section),
  title: line.title,
  causeClass: line.causeClass,
  partOrLabour: line.partOrLabour,
  quantity: {
    net: line.netQuantity,
    waste: line.wasteQuantity,
    required: line.netQuantity + line.wasteQuantity,
    charged: line.pricedQuantity,
    ...(line.packs.length === 0 ? {} : { purchase: line.purchaseQuantity }),
  },
  unit: line.unit,
  unitRate: line.unitPrice,
  packs: line.packs.map(({ price, ...pack }) => ({ ...pack, price: price.amount })),
  amount: line.amount,
  taxGroup: line.taxGroup,
});

function sectionOf(code: string): Section {
  if (isSection(code)) return code;
  throw new Defect(`An estimate holds a line in the section ${code}, which is none`);
}

const isSection = (code: string): code is Section => Object.hasOwn(sectionTitles, code);
