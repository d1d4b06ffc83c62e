import type { Problem } from '#lib/kernel';
import { optionalFaults } from '#lib/asking';
import { assumedIn, assumptionFrom, type ProcessAssumption } from '#lib/asking';

/** How much warmer the deck is than the air, and by what. */
export interface DeckWarmth {
  /** At midday under the sun; falls to nothing at six in the morning and the evening. */
  readonly sunK?: number;
  /** Lamp, blanket or heater, all the time it is on. */
  readonly heaterK?: number;
  /** A closed tent over the deck, by day and by night. */
  readonly tentK?: number;
}

export const warmthFaults = (at: string, warmth: DeckWarmth | undefined): readonly Problem[] => [
  ...optionalFaults(`${at}/sunK`, warmth?.sunK, { from: 0, upTo: 50, unit: 'K' }),
  ...optionalFaults(`${at}/heaterK`, warmth?.heaterK, { from: 0, upTo: 60, unit: 'K' }),
  ...optionalFaults(`${at}/tentK`, warmth?.tentK, { from: 0, upTo: 30, unit: 'K' }),
];

/** Temperature of the deck at a local hour of the day (0 to 24). */
export function deckTemperature(
  airC: number,
  localHour: number,
  { sunK = 0, heaterK = 0, tentK = 0 }: DeckWarmth = {},
): number {
  return airC + heaterK + tentK + sunK * Math.max(0, Math.sin((Math.PI * (localHour - 6)) / 12));
}

export const warmthAssumptions = (
  at: string,
  warmth: DeckWarmth | undefined,
): readonly ProcessAssumption[] =>
  warmth?.sunK !== undefined
    ? []
    : assumptionFrom(
        assumedIn(
          'K',
          {
            value: 0,
            low: 0,
            high: 20,
            because:
              'shade and night decide a cure; a dark deck in the sun is far warmer, but the sun is not to be counted on',
            cite: { source: 'COMMON-PRACTICE' },
          },
          'how much the sun warms the deck above the air',
          `${at}/sunK`,
        ),
      );
