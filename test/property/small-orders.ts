import type { BasketRequest } from '#lib/costing';
import { randomStream } from '#lib/kernel';

/** A pack of a small order; quantities in quarters of a unit, money in whole cents. */
export interface SmallPack {
  readonly material: number;
  readonly supplier: number;
  readonly quarters: number;
  readonly cents: number;
  readonly breakAt: number;
  readonly breakCents: number;
  readonly hazardous: boolean;
  readonly oversize: boolean;
  readonly cutFee: number;
  readonly stock: number;
}

export interface SmallSupplier {
  readonly delivery: number;
  readonly hazard: number;
  readonly oversize: number;
  readonly minimum: number;
  readonly freeFrom: number;
}

export interface SmallOrder {
  readonly requiredQuarters: readonly number[];
  readonly packs: readonly SmallPack[];
  readonly suppliers: readonly SmallSupplier[];
  /** Hardener to resin (material 0 cured by material 1); 0 when nothing has to be cured. */
  readonly ratio: number;
  /** Hazardous goods travel in boxes of this mass, a kilogram to a pack; 0: one surcharge to an order. */
  readonly hazardBoxKg: number;
}

export interface SmallSizes {
  readonly mostSuppliers: number;
  readonly mostMaterials: number;
  readonly packsOfEach: number;
  /** All prices and limits are whole multiples of this. */
  readonly centsStep: number;
}

/** An invented order. About one in six has a resin whose hardener nobody needs by itself. */
export function smallOrder(seed: number, sizes: SmallSizes): SmallOrder {
  const random = randomStream(seed);
  const upTo = (most: number): number => Math.floor(random() * (most + 1));
  const amount = (least: number, most: number): number =>
    sizes.centsStep * Math.round((least + upTo(most - least)) / sizes.centsStep);
  const materials = 1 + upTo(sizes.mostMaterials - 1);
  const suppliers = Array.from({ length: 1 + upTo(sizes.mostSuppliers - 1) }, () => ({
    delivery: amount(0, 1500),
    hazard: amount(0, 1500),
    oversize: amount(0, 3000),
    minimum: random() < 0.5 ? amount(0, 5000) : 0,
    freeFrom: random() < 0.5 ? amount(sizes.centsStep, 9000) : 0,
  }));
  const ratio = materials >= 2 && random() < 0.4 ? [0.25, 0.5, 1][upTo(2)] : 0;
  const requiredQuarters = Array.from({ length: materials }, () => 1 + upTo(10));
  if (ratio > 0 && random() < 0.5) requiredQuarters[1] = 0;
  const packOf = (material: number): SmallPack => {
    const quarters = [1, 2, 3, 4, 6, 10, 20][upTo(6)];
    const cents = sizes.centsStep * Math.max(1, Math.round((300 + upTo(300) * quarters) / sizes.centsStep));
    const hasBreak = random() < 0.4;
    return {
      material,
      supplier: upTo(suppliers.length - 1),
      quarters,
      cents,
      breakAt: hasBreak ? 2 + upTo(3) : 0,
      breakCents:
        sizes.centsStep * Math.max(1, Math.round(((0.5 + 0.45 * random()) * cents) / sizes.centsStep)),
      hazardous: random() < 0.3,
      oversize: random() < 0.2,
      cutFee: random() < 0.2 ? amount(50, 400) : 0,
      stock: random() < 0.25 ? upTo(3) : Number.POSITIVE_INFINITY,
    };
  };
  const packs = requiredQuarters.flatMap((_, material) =>
    Array.from({ length: 1 + upTo(sizes.packsOfEach - 1) }, () => packOf(material)),
  );
  return { requiredQuarters, packs, suppliers, ratio, hazardBoxKg: random() < 0.2 ? 3 : 0 };
}

const text = (cents: number): string => `${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')}`;

export function requestOf({
  requiredQuarters,
  packs,
  suppliers,
  ratio,
  hazardBoxKg,
}: SmallOrder): BasketRequest {
  const variant = (material: number) =>
    ratio > 0 && material === 1 ? { material: 'm0', part: 'hardener' } : { material: `m${material}` };
  return {
    currency: 'EUR',
    options: { secondBest: false, ...(hazardBoxKg > 0 ? { hazardBoxKg } : {}) },
    ...(ratio > 0 ? { matches: [{ resin: 'm0', hardener: 'hardener', massRatio: ratio }] } : {}),
    needs: requiredQuarters.flatMap((quarters, material) =>
      quarters === 0
        ? []
        : [{ id: `need${material}`, ...variant(material), requiredQuantity: quarters / 4, unit: 'kg' }],
    ),
    priceList: {
      code: 'small',
      name: 'small',
      currency: 'EUR',
      validFrom: '2026-01-01',
      validTo: '2026-12-31',
      invented: true,
      pricesIncludeTax: false,
      suppliers: suppliers.map((one, index) => ({
        code: `s${index}`,
        name: `s${index}`,
        delivery: text(one.delivery),
        hazardSurcharge: text(one.hazard),
        oversizeFreight: text(one.oversize),
        minimumOrder: text(one.minimum),
        ...(one.freeFrom === 0 ? {} : { freeDeliveryFrom: text(one.freeFrom) }),
      })),
      packs: packs.map((pack, index) => ({
        sku: `p${index}`,
        name: `p${index}`,
        supplier: `s${pack.supplier}`,
        content: { ...variant(pack.material), quantity: pack.quarters / 4, unit: 'kg' },
        prices: [
          { fromPacks: 1, price: text(pack.cents) },
          ...(pack.breakAt > 0 ? [{ fromPacks: pack.breakAt, price: text(pack.breakCents) }] : []),
        ],
        massKg: 1,
        hazardous: pack.hazardous,
        oversize: pack.oversize,
        ...(pack.cutFee > 0 ? { cutFee: text(pack.cutFee) } : {}),
        ...(Number.isFinite(pack.stock) ? { stock: pack.stock } : {}),
      })),
    },
  };
}

export const priceAt = ({ cents, breakAt, breakCents }: SmallPack, count: number): number =>
  breakAt > 0 && count >= breakAt ? breakCents : cents;
