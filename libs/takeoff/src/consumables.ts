import type { Consumable, Usage, UsageDriver } from '#lib/catalogue';
import { pointer } from '#lib/kernel';
import { derived, fromCatalogue, sumOf, type Figure } from '#lib/provenance';
import { fraction } from '#lib/units';
import { figureOf, needOf, type Need } from './need.js';

/** How much of each thing that drives the use of consumables a job has. */
export type DriverQuantities = Readonly<Partial<Record<UsageDriver, number | Figure>>>;

/** What is true of a job, as far as consumables care. */
export type JobFlag = NonNullable<Consumable['when']>;

export const jobFlags: readonly JobFlag[] = [
  're-bed',
  'relay',
  'vacuum',
  'battens',
  'weights',
  'epoxy',
  'polyester',
  'paint',
  'nonskid',
  'from-below',
];

export const driverUnits: Readonly<Record<UsageDriver, string>> = {
  'job': 'job',
  'opened-m2': 'm2',
  'cut-m': 'm',
  'taper-m': 'm',
  'laminate-m2': 'm2',
  'laminate-session-m2': 'm2',
  'faired-m2': 'm2',
  'finish-m2': 'm2',
  'hole': 'each',
  'fitting': 'each',
  'labour-h': 'h',
  'mixed-l': 'l',
  'styrenated-l': 'l',
  'gelcoat-m2': 'm2',
  'bag-perimeter-m': 'm',
  'person': 'each',
  'prop': 'each',
  'prop-board-m': 'm',
  'press-bag': 'each',
  'batten-m': 'm',
  'batten-screw': 'each',
};

const isWanted = ({ when }: Consumable, flags: ReadonlySet<JobFlag>): boolean =>
  when === undefined || flags.has(when);

/** Needs for every consumable that belongs to the job and whose drivers are present. */
export const consumableNeeds = (
  consumables: readonly Consumable[],
  drivers: DriverQuantities,
  flags: readonly JobFlag[],
): readonly Need[] =>
  consumables
    .filter((item) => isWanted(item, new Set(flags)))
    .map((item) => consumableNeed(item, drivers))
    .filter(({ net }) => net.value > 0);

function consumableNeed(item: Consumable, drivers: DriverQuantities): Need {
  const parts = item.usages.map((usage) => ({ usage, driver: driverFigure(usage.driver, drivers) }));
  const used = Object.fromEntries(
    parts.map(({ usage, driver }) => [usage.driver, usageFigure(item, usage, driver)]),
  );
  const quantityAt = (pick: (usage: Usage) => number): number =>
    parts.reduce((sum, { usage, driver }) => sum + pick(usage) * driver.value, 0);
  const unit: string = item.unit;
  const net = sumOf(unit, `${item.name}, used`, used);
  return needOf(
    {
      id: item.code,
      title: item.name,
      material: item.code,
      unit,
      purpose: item.kind,
      netQuantity: net,
      netRange: {
        low: quantityAt(({ perDriver }) => perDriver.low ?? perDriver.value),
        high: quantityAt(({ perDriver }) => perDriver.high ?? perDriver.value),
      },
      wasteFraction: includedWaste(item),
    },
    pointer('', 'consumables', item.code),
  );
}

const driverFigure = (driver: UsageDriver, drivers: DriverQuantities): Figure =>
  figureOf(
    drivers[driver] ?? 0,
    driverUnits[driver],
    `quantity of ${driver}`,
    pointer('', 'drivers', driver),
  );

function usageFigure(item: Consumable, { driver, perDriver }: Usage, quantity: Figure): Figure {
  const unit: string = item.unit;
  const perUnit: string = `${unit}/${driverUnits[driver]}`;
  const per = fromCatalogue(perUnit, fraction(perDriver.value), `use per ${driver}`, {
    item: item.code,
    field: `usages.${driver}`,
    cite: perDriver.cite,
    ...(perDriver.low === undefined ? {} : { low: perDriver.low }),
    ...(perDriver.high === undefined ? {} : { high: perDriver.high }),
  });
  return derived(unit, fraction(per.value * quantity.value), `${item.name} for ${driver}`, {
    formula: 'arithmetic.product',
    title: 'Product of factors',
    symbol: 'Π',
    cite: { source: 'ARITHMETIC' },
    inputs: { per, quantity },
  });
}

const includedWaste = (item: Consumable): Figure =>
  fromCatalogue('1', fraction(0), 'waste fraction', {
    item: item.code,
    field: 'usages',
    cite: { source: 'COMMON-PRACTICE', note: 'use per driver already counts what is spoiled' },
  });

/** What a consumable comes to at other quantities of its drivers, without the story of each. */
export const usedAt = (
  { usages }: Consumable,
  amounts: Readonly<Partial<Record<UsageDriver, number>>>,
): number => usages.reduce((sum, { driver, perDriver }) => sum + perDriver.value * (amounts[driver] ?? 0), 0);
