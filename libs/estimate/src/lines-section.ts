import { sectionTitles, type CostLine, type CostRollUp, type Section } from '#lib/costing';
import type { CostSection, EstimateLine } from './estimate.js';
import type { PackChoice } from './cheapest-packs.js';
import { broughtHome, lineCodeOf, type Purchase } from './purchasing.js';

/** The rolled-up lines as the document shows them; a part says net, waste and purchase in its own unit and the packs beside. */
export function linesSection(rollUp: CostRollUp, purchases: readonly Purchase[]): readonly EstimateLine[] {
  const bought = new Map(purchases.flatMap((purchase) => purchase.choices.map((choice, index) =>
    [lineCodeOf(purchase.need, purchase.choices.length, index), { purchase, choice }] as const)));
  return rollUp.lines.map((line) => {
    const found = bought.get(line.code);
    return found === undefined ? serviceLine(line) : partLine(line, found);
  });
}

const kinds: Readonly<Record<Section, EstimateLine['kind']>> = {
  labour: 'labour', materials: 'material', consumables: 'consumable', safety: 'consumable', hire: 'hire', yard: 'charge',
  subcontract: 'labour', disposal: 'disposal', freight: 'charge',
};

const sharedOf = (line: CostLine) => ({
  code: line.code, section: line.section, title: line.title, kind: kinds[line.section], partOrLabour: line.partOrLabour,
  causeClass: line.causeClass, pricedPer: line.unit, pricedQuantity: line.quantity.charged, unitPrice: line.unitRate, amount: line.amount,
  amountRange: { low: line.range.low, high: line.range.high }, depreciable: line.partOrLabour === 'part', taxGroup: line.taxGroup,
});

const serviceLine = (line: CostLine): EstimateLine => ({
  ...sharedOf(line), unit: line.unit, netQuantity: line.quantity.net, wasteQuantity: line.quantity.waste, purchaseQuantity: line.quantity.required,
});

interface Bought {
  readonly purchase: Purchase;
  readonly choice: PackChoice;
}

/** Where several kinds of pack cover one need, each carries its share of net and waste by content. */
function partLine(line: CostLine, { purchase: { need, choices }, choice }: Bought): EstimateLine {
  const home = broughtHome(choice);
  const share = home / choices.reduce((sum, one) => sum + broughtHome(one), 0);
  const { pack, count } = choice;
  return {
    ...sharedOf(line), material: need.material, unit: need.unit,
    netQuantity: need.net.value * share, wasteQuantity: (need.required.value - need.net.value) * share, purchaseQuantity: home,
    packs: [{ sku: pack.sku, name: pack.name, count, contentQuantity: pack.content.quantity }],
  };
}

export const sectionsSection = (rollUp: CostRollUp): readonly CostSection[] =>
  rollUp.sections.map(({ section, amount }) => ({ code: section, title: sectionTitles[section], amount }));
