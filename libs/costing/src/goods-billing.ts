import type { Datum } from '#lib/catalogue';
import { assumed, derived, fromCatalogue, type Cite, type Figure } from '#lib/provenance';
import { isCountable, type Need } from '#lib/takeoff';
import { fraction, m2FromMm2, mm2 } from '#lib/units';

/** What a job is charged of the packs that are opened for it: what it used of them, or all of them. */
export type GoodsBilling = 'as-used' | 'as-bought';

export const goodsBillings: readonly GoodsBilling[] = ['as-used', 'as-bought'];

/** What becomes of that which a job leaves over: it goes back on the shelf, has no other use, or wears out over many jobs. */
export type LeftOver =
  | { readonly kind: 'kept' }
  | { readonly kind: 'of-no-use' }
  | { readonly kind: 'outlasts'; readonly servesJobs: Datum };

/** How a line of goods was charged. */
export type BilledBy = 'whole-packs' | 'use' | 'wear';

export interface Billed {
  readonly by: BilledBy;
  /** In the unit of the need, no more than was bought. */
  readonly quantity: Figure;
}

const practice = (note: string): Cite => ({
  source: 'COMMON-PRACTICE',
  note: `no published source: ${note}`,
});

/** A sheet is charged by quarters: what is left of one is seldom of use to the next job. */
const PARTS_OF_SHEET = 4;

const shelfTurn: Figure = assumed<string>(
  'month',
  fraction(2),
  'time an opened pack waits for the next job',
  {
    at: '/pricing/goods',
    because: 'a shop that does such work opens the pack again within one to three months',
    cite: practice('judged'),
    low: 1,
    high: 3,
  },
);

interface Bought {
  readonly quantity: number;
  /** The shortest of its packs; absent where none has a date. */
  readonly shelfLifeMonths?: number;
}

/**
 * What of a purchase is charged to the job that it was opened for. Of what goes back on the shelf: what was used, whole
 * pieces, parts of rolls and quarters of sheets, and of the rest that part which will be past its date before it is used. Of gear: one
 * job's wear. All of what has no other use, as paint in the colour of this boat.
 */
export function billedOf(need: Need, bought: Bought, leftOver: LeftOver): Billed {
  const all = (): Billed => ({ by: 'whole-packs', quantity: purchase(need, bought) });
  switch (leftOver.kind) {
    case 'of-no-use':
      return all();
    case 'outlasts':
      return { by: 'wear', quantity: wornBy(need, leftOver.servesJobs) };
    case 'kept': {
      const used = Math.min(bought.quantity, usedOf(need));
      return used >= bought.quantity ? all() : { by: 'use', quantity: usedAndLost(need, bought, used) };
    }
  }
}

const purchase = ({ unit, title }: Need, { quantity }: Bought): Figure =>
  derived(unit, fraction(quantity), `${title}, whole packs charged`, {
    formula: 'costing.billed-whole',
    title: 'All that was bought',
    symbol: 'b',
    cite: practice('what is left has no other use'),
    inputs: {},
  });

/** What is torn, cut or worn off bit by bit goes back on the shelf begun: rolls of tape and towels, filters in their mask. */
const usedInParts: ReadonlySet<string> = new Set(['roll', 'pair']);

/** Pieces whole, sheets in quarters, all else as it is. */
function usedOf({ required, net, sheet, unit }: Need): number {
  if (sheet !== undefined) {
    const partM2 = m2FromMm2(mm2(sheet.lengthMm * sheet.widthMm)) / PARTS_OF_SHEET;
    return Math.ceil(net.value / partM2 - 1e-9) * partM2;
  }
  return isCountable(unit) && !usedInParts.has(unit) ? Math.ceil(required.value - 1e-9) : required.value;
}

function wornBy(need: Need, { value, low, high, cite }: Datum): Figure {
  const pieces = isCountable(need.unit) ? Math.ceil(need.required.value - 1e-9) : need.required.value;
  return derived(need.unit, fraction(pieces / value), `${need.title}, one job's wear`, {
    formula: 'costing.billed-wear',
    title: 'What is on the job over the jobs that it serves',
    symbol: 'b',
    cite: { source: 'TRADE-SHOP-SUPPLIES', note: 'charged by use or held in the rate' },
    inputs: {
      required: need.required,
      servesJobs: fromCatalogue<string>('1', fraction(value), 'jobs that it serves', {
        item: need.material,
        field: 'servesJobs',
        cite,
        ...(low === undefined ? {} : { low }),
        ...(high === undefined ? {} : { high }),
      }),
    },
  });
}

function usedAndLost(need: Need, { quantity, shelfLifeMonths }: Bought, used: number): Figure {
  const lost = shelfLifeMonths === undefined ? 0 : Math.min(1, shelfTurn.value / shelfLifeMonths);
  return derived(need.unit, fraction(used + (quantity - used) * lost), `${need.title}, used and lost`, {
    formula: 'costing.billed-use',
    title: 'What was used, and of the rest that part of its shelf life which passes before the next job',
    symbol: 'b',
    cite: {
      source: 'TRADE-SHOP-SUPPLIES',
      note: 'what is left of a pack goes to the next job; the part lost is judged',
    },
    inputs: lost === 0 ? { required: need.required } : { required: need.required, shelfTurn },
  });
}
