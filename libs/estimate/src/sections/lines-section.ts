import { laidOver } from '#lib/kernel';
import { sectionTitles, type CostLine, type CostRollUp, type Section } from '#lib/costing';
import type { Need } from '#lib/takeoff';
import type { LabourWork, WorkedHours } from '../stages/labour-stage.js';
import type { CostSection, EstimateLine } from '../document/estimate-document.js';

/** The rolled-up lines as the document shows them. */
export function linesSection(
  rollUp: CostRollUp,
  needs: readonly Need[],
  { operations }: Pick<LabourWork, 'operations'>,
): readonly EstimateLine[] {
  const worked = new Map(operations.map((operation) => [`labour-${operation.code}`, operation]));
  const needed = new Map(needs.map((need) => [`material-${need.id}`, need]));
  return rollUp.lines.map((line) =>
    laidOver(lineOf(line, needed.get(line.code)), hoursOf(worked.get(line.code))),
  );
}

const hoursOf = (operation: WorkedHours | undefined): Pick<EstimateLine, 'hours'> =>
  operation === undefined ? {} : { hours: laidOver(operation.hours, { mean: operation.meanH }) };

const kinds: Readonly<Record<Section, EstimateLine['kind']>> = {
  labour: 'labour',
  materials: 'material',
  consumables: 'consumable',
  safety: 'consumable',
  hire: 'hire',
  yard: 'charge',
  subcontract: 'labour',
  disposal: 'disposal',
  freight: 'charge',
};

const lineOf = (line: CostLine, need: Need | undefined): EstimateLine => ({
  code: line.code,
  section: line.section,
  title: line.title,
  kind: kinds[line.section],
  partOrLabour: line.partOrLabour,
  causeClass: line.causeClass,
  ...(need === undefined
    ? {}
    : { material: need.material, range: { low: need.range.low, high: need.range.high } }),
  unit: line.unit,
  netQuantity: line.quantity.net,
  wasteQuantity: line.quantity.waste,
  purchaseQuantity: line.quantity.purchase ?? line.quantity.required,
  pricedQuantity: line.quantity.charged,
  packs: line.packs.map(({ sku, name, supplier, count, price }) => ({
    sku,
    name,
    supplier,
    count,
    price: { amount: price, currency: line.amount.currency },
  })),
  ...(line.goods === undefined ? {} : { goods: line.goods }),
  unitPrice: line.unitRate,
  isAveragePrice: line.isAverageRate,
  amount: line.amount,
  amountRange: { low: line.range.low, high: line.range.high },
  depreciable: line.partOrLabour === 'part',
  ...(line.depreciation === undefined ? {} : { depreciation: line.depreciation }),
  taxGroup: line.taxGroup,
});

export const sectionsSection = (rollUp: CostRollUp): readonly CostSection[] =>
  rollUp.sections.map(({ section, amount }) => ({ code: section, title: sectionTitles[section], amount }));
