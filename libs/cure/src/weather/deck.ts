import type { Problem } from '#lib/kernel';
import { nightCoolingK, type NightAir } from './night-sky.js';
import {
  ask,
  askWhether,
  answeredIn,
  assumptionFrom,
  commonPractice,
  practice,
  saidOr,
  faultsIn,
  type AnswersTo,
  type ProcessAssumption,
} from '#lib/asking';

/** How much warmer the deck is than the air, and by what. The sun falls to nothing at six in the morning and the evening. */
export const deckWarmthQuestions = {
  sunK: ask({
    meaning: 'how much the sun warms the deck above the air',
    description: 'How much the midday sun warms the deck above the air.',
    unit: 'K',
    range: { from: 0, upTo: 50 },
    otherwise: {
      value: 0,
      low: 0,
      high: 20,
      because:
        'shade and night decide a cure; a dark deck in the sun is far warmer, but the sun is not to be counted on',
      cite: commonPractice,
    },
  }),
  heaterK: ask({
    meaning: 'warmth by a heater',
    note: 'Lamp, blanket or heater.',
    unit: 'K',
    range: { from: 0, upTo: 60 },
    otherwise: practice(0, 'no heater was named'),
  }),
  tentK: ask({
    meaning: 'warmth under a tent',
    note: 'A closed tent over the deck.',
    unit: 'K',
    range: { from: 0, upTo: 30 },
    otherwise: practice(0, 'no tent was named'),
  }),
  isShaded: askWhether({
    meaning: 'whether a cover keeps the sun off the deck',
    description: 'Shade over the deck while it is worked: a fifth of the warmth by the sun is left.',
    otherwise: practice(false, 'no shade was named'),
  }),
  isUnderSky: askWhether({
    meaning: 'whether the deck lies open to the sky at night',
    description:
      'Whether the deck lies open to the sky at night, where it is colder than the air; absent: it does where there is no shed and no tent.',
    otherwise: 'unknown',
  }),
};
export type DeckWarmth = AnswersTo<typeof deckWarmthQuestions>;

export const warmthFaults = (at: string, warmth: DeckWarmth = {}): readonly Problem[] =>
  faultsIn(warmth, deckWarmthQuestions, at);

/** Temperature of the deck at a local hour of the day (0 to 24); by night an open deck is colder where the air is known. */
export function deckTemperature(
  airC: number,
  localHour: number,
  warmth: DeckWarmth = {},
  nightAir?: NightAir,
): number {
  const sunHeight = Math.sin((Math.PI * (localHour - 6)) / 12);
  const isNight = sunHeight <= NIGHT_HEIGHT;
  const coolingK =
    warmth.isUnderSky === true && isNight && nightAir !== undefined ? nightCoolingK(nightAir) : 0;
  const sunK = saidOr(deckWarmthQuestions.sunK, warmth.sunK) * sunLeft(warmth);
  return airC + heldWarmthK(warmth) + sunK * Math.max(0, sunHeight) - coolingK;
}

/** Of the sun's warmth, what a shade cloth lets through; from memory, 0.1 to 0.3. */
const THROUGH_SHADE = 0.2;
const sunLeft = ({ isShaded }: DeckWarmth): number =>
  saidOr(deckWarmthQuestions.isShaded, isShaded) ? THROUGH_SHADE : 1;

/** What heater and tent add day and night. */
export const heldWarmthK = ({ heaterK, tentK }: DeckWarmth = {}): number =>
  saidOr(deckWarmthQuestions.heaterK, heaterK) + saidOr(deckWarmthQuestions.tentK, tentK);

/** From six in the evening to six in the morning, both counted. */
const NIGHT_HEIGHT = 1e-9;

/** What is said of the deck; unless it says otherwise, a deck without a shelter or a tent lies open to the sky. */
export const warmthUnder = (
  shelter: 'shed' | 'tent' | 'open',
  warmth: DeckWarmth | undefined,
): DeckWarmth => ({
  ...warmth,
  isUnderSky:
    warmth?.isUnderSky ?? (shelter === 'open' && saidOr(deckWarmthQuestions.tentK, warmth?.tentK) === 0),
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

export const warmthAssumptions = (at: string, warmth: DeckWarmth | undefined): readonly ProcessAssumption[] =>
  assumptionFrom(answeredIn(deckWarmthQuestions.sunK, warmth?.sunK, `${at}/sunK`));
