import type { Problem } from '#lib/kernel';
import { nightCoolingK, type NightAir } from './night-sky.js';
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
  /** Whether it lies open to the sky at night, under which it is colder than the air. */
  readonly isUnderSky?: boolean;
}

export const warmthFaults = (at: string, warmth: DeckWarmth | undefined): readonly Problem[] => [
  ...optionalFaults(`${at}/sunK`, warmth?.sunK, { from: 0, upTo: 50, unit: 'K' }),
  ...optionalFaults(`${at}/heaterK`, warmth?.heaterK, { from: 0, upTo: 60, unit: 'K' }),
  ...optionalFaults(`${at}/tentK`, warmth?.tentK, { from: 0, upTo: 30, unit: 'K' }),
];

/** Temperature of the deck at a local hour of the day (0 to 24); by night an open deck is colder where the air is known. */
export function deckTemperature(
  airC: number,
  localHour: number,
  { sunK = 0, heaterK = 0, tentK = 0, isUnderSky = false }: DeckWarmth = {},
  nightAir?: NightAir,
): number {
  const sunHeight = Math.sin((Math.PI * (localHour - 6)) / 12);
  const isNight = sunHeight <= NIGHT_HEIGHT;
  const coolingK = isUnderSky && isNight && nightAir !== undefined ? nightCoolingK(nightAir) : 0;
  return airC + heaterK + tentK + sunK * Math.max(0, sunHeight) - coolingK;
}

/** From six in the evening to six in the morning, both counted. */
const NIGHT_HEIGHT = 1e-9;

/** What is said of the deck; unless it says otherwise, a deck without a shelter or a tent lies open to the sky. */
export const warmthUnder = (
  shelter: 'shed' | 'tent' | 'open',
  warmth: DeckWarmth | undefined,
): DeckWarmth => ({
  ...warmth,
  isUnderSky: warmth?.isUnderSky ?? (shelter === 'open' && (warmth?.tentK ?? 0) === 0),
});

/** An open deck under a clear sky, where nobody said that it is covered at night. */
export const skyAssumptions = (
  at: string,
  { warmth, told }: { readonly warmth: DeckWarmth; readonly told: DeckWarmth | undefined },
): readonly ProcessAssumption[] =>
  warmth.isUnderSky === true && told?.isUnderSky === undefined
    ? [
        {
          at: `${at}/isUnderSky`,
          meaning: 'whether the deck lies open to the sky at night',
          value: 'it does',
          because:
            'there is no shelter: it radiates to the sky and is several kelvin colder than the air on a clear still night; a cover over it keeps that off',
          source: 'BERDAHL-MARTIN-1984',
        },
      ]
    : [];

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
