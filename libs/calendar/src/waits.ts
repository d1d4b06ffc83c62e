import type { ThreePoint } from '#lib/kernel';
import { scaled } from '#lib/kernel';
import { rateRatioOf } from '#lib/cure';
import type { OperationFlags } from '#lib/work';

/** What decides how long an opened deck dries. */
export interface Drying {
  readonly shelter: OperationFlags['shelter'];
  readonly core: DryingCore;
  readonly deckC: number;
  /** By plug or oven, where somebody measured; the days then follow it. */
  readonly moisturePercent?: number;
}

export const dryingCores = ['balsa', 'plywood', 'foam'] as const;
export type DryingCore = (typeof dryingCores)[number];

/**
 * Days until the edge under the lip is dry when the rotten core is out, at 18 degC: judged. Of opened spots without a heated
 * roof it is told: three days in the summer sun, a few days, three days with solvent once a day, a couple of days under lamps
 * while it rained. The long end is for a dull week; days lost to weather are counted by themselves.
 */
const daysByShelter: Readonly<Record<Drying['shelter'], ThreePoint>> = {
  shed: { low: 0, likely: 1, high: 3 },
  tent: { low: 1, likely: 2, high: 8 },
  open: { low: 1, likely: 3, high: 8 },
};

/** An edge of plywood takes half as long again as one of balsa; closed cells are wiped and hold no water. */
const coreFactor: Readonly<Record<DryingCore, number>> = { balsa: 1, plywood: 1.5, foam: 0.25 };

/** Days of a balsa edge under a lip, damp to 25 %, by the warmth of the deck. */
const edgeDays = [
  { deckC: 5, days: 30 },
  { deckC: 15, days: 15 },
  { deckC: 21, days: 8.5 },
  { deckC: 35, days: 4 },
] as const;

/**
 * Days of a damp balsa edge at a temperature, straight in the logarithm between 5, 15, 21 and 35 degC and level beyond.
 *
 * Source: [TRADE-DRYING-TABLE]
 * Worked: test/reference/cases/calendar-waits.ts
 */
export function balsaEdgeDays(deckC: number): number {
  const above = edgeDays.findIndex((one) => one.deckC >= deckC);
  if (above === 0) return edgeDays[0].days;
  if (above === -1) return edgeDays[edgeDays.length - 1].days;
  const [from, to] = [edgeDays[above - 1], edgeDays[above]];
  const share = (deckC - from.deckC) / (to.deckC - from.deckC);
  return from.days * (to.days / from.days) ** share;
}

const ROW_C = 18;
const DRY_PERCENT = 12;
const DAMP_PERCENT = 25;
/** What wood comes to in heated or dehumidified air. */
const AIR_PERCENT = 9;

/**
 * Days of drying: the row of the shelter, slower where it is cold, by the core, and by its moisture where that was measured.
 * Moisture falls off exponentially towards that of the air, so that 12 % needs no wait and 25 % is what the row is for.
 *
 * Source: [TRADE-DRYING-TABLE]; exponential approach to the moisture of the air is common practice in drying
 * Worked: test/reference/cases/calendar-waits.ts
 */
export function dryingDays({ shelter, core, deckC, moisturePercent }: Drying): ThreePoint {
  const warmth = balsaEdgeDays(deckC) / balsaEdgeDays(ROW_C);
  const wetness = moisturePercent === undefined ? 1 : moistureFactor(moisturePercent);
  return scaled(daysByShelter[shelter], warmth * coreFactor[core] * wetness);
}

const moistureFactor = (percent: number): number =>
  percent <= DRY_PERCENT
    ? 0
    : Math.log((percent - AIR_PERCENT) / (DRY_PERCENT - AIR_PERCENT)) /
      Math.log((DAMP_PERCENT - AIR_PERCENT) / (DRY_PERCENT - AIR_PERCENT));

/** Temperature for which coats and fillers print their hours. */
export const PRINTED_C = 21;
const COATING_ENERGY_KJ_PER_MOL = 55;

/**
 * How much longer than printed for 21 degC a coat, a filler or the stand before paint takes at another temperature.
 *
 * Valid:  5 to 35 degC; 55 kJ/mol for lack of the maker's own.
 * Source: [ARRHENIUS]; the energy is derived from the rule of half the time for ten degrees more
 * Worked: test/reference/cases/calendar-waits.ts
 */
export const cureFactor = (deckC: number): number =>
  1 / rateRatioOf(COATING_ENERGY_KJ_PER_MOL, PRINTED_C, deckC);
