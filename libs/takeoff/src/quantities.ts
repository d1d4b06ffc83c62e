import { derived, defineFormula, type Figure } from '#lib/provenance';
import { fraction, l } from '#lib/units';

/**
 * What must be at hand to have the net quantity in the work: waste is added on top of the net quantity,
 * which is how published resin and cloth allowances are given.
 */
export const requiredQuantity = defineFormula({
  id: 'takeoff.required-quantity',
  title: 'Required quantity with waste',
  cite: { source: 'COMMON-PRACTICE', note: 'waste as a share of the net quantity' },
  inputs: {
    netQuantity: { symbol: 'q', unit: 'l', meaning: 'net quantity', from: 0 },
    wasteFraction: { symbol: 'w', unit: '1', meaning: 'waste on top of the net quantity', from: 0 },
  },
  output: { symbol: 'Q', unit: 'l', meaning: 'required quantity' },
  evaluate: ({ netQuantity, wasteFraction }) => l(netQuantity * (1 + wasteFraction)),
  // By hand: 4.5 l x 1.18 = 5.31 l.
  worked: [{ at: 'by hand', given: { netQuantity: 4.5, wasteFraction: 0.18 }, printed: '5.31' }],
});

/**
 * A pack that is full to one part in 10^9 counts as full: quantities come from measured geometry, whose last
 * binary digits must not make somebody buy a second pack.
 */
const FULL_PACK_ALLOWANCE = 1e-9;

export const wholePackCount = (required: number, packQuantity: number): number =>
  Math.max(0, Math.ceil((required / packQuantity) * (1 - FULL_PACK_ALLOWANCE)));

export const wholePacks = defineFormula({
  id: 'takeoff.whole-packs',
  title: 'Whole packs that cover a quantity',
  cite: { source: 'ARITHMETIC', note: 'nobody sells part of a pack' },
  inputs: {
    required: { symbol: 'Q', unit: 'l', meaning: 'required quantity', from: 0 },
    packQuantity: { symbol: 'p', unit: 'l', meaning: 'content of one pack', above: 0 },
  },
  output: { symbol: 'n', unit: '1', meaning: 'whole packs' },
  evaluate: ({ required, packQuantity }) => fraction(wholePackCount(required, packQuantity)),
  // By hand: 5.31 / 1.2 = 4.425, so 5 packs; and 6 / 1.2 is exactly 5 packs.
  worked: [
    { at: 'by hand', given: { required: 5.31, packQuantity: 1.2 }, printed: '5' },
    { at: 'by hand', given: { required: 6, packQuantity: 1.2 }, printed: '5' },
  ],
});

/** `requiredQuantity` in the unit the thing is counted in. */
export const requiredFigure = (net: Figure, wasteFraction: Figure): Figure =>
  derived(net.unit, fraction(net.value * (1 + wasteFraction.value)), `${net.meaning}, with waste`, {
    formula: requiredQuantity.id,
    title: requiredQuantity.title,
    symbol: requiredQuantity.output.symbol,
    cite: requiredQuantity.cite,
    inputs: { netQuantity: net, wasteFraction },
  });

/** `wholePacks` times the content of one pack, in the unit the thing is counted in. */
export const purchaseFigure = (required: Figure, packQuantity: Figure): Figure => {
  const count = derived('1', fraction(wholePackCount(required.value, packQuantity.value)), 'whole packs', {
    formula: wholePacks.id,
    title: wholePacks.title,
    symbol: wholePacks.output.symbol,
    cite: wholePacks.cite,
    inputs: { required, packQuantity },
  });
  return derived(
    required.unit,
    fraction(count.value * packQuantity.value),
    `${required.meaning}, in whole packs`,
    {
      formula: 'arithmetic.product',
      title: 'Product of factors',
      symbol: 'Π',
      cite: { source: 'ARITHMETIC' },
      inputs: { packs: count, packQuantity },
    },
  );
};
