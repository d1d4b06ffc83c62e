import { expect, test } from '@jest/globals';
import { materialsOf, shippedCatalogue, type Hardener, type ResinSystem } from '#lib/catalogue';
import { weatherGates, type ForecastHour } from '#lib/cure';
import { randomStream } from '#lib/kernel';

/*
 * Permitted start hours against another way to judge them, with its own arithmetic for dew point, night sky and gel: the
 * gel is integrated by the classical Runge-Kutta rule in steps of three minutes along the deck, straight between hours.
 */
const seed = 20261128;
const FORECASTS = 50;
const HOURS = 240;
const shelters = ['open', 'tent', 'shed'] as const;

interface Case {
  readonly hours: readonly ForecastHour[];
  readonly resin: ResinSystem;
  readonly hardener: Hardener;
  readonly shelter: (typeof shelters)[number];
  readonly workH: number;
}

function caseOf(number: number): Case {
  const random = randomStream(seed + number);
  const between = (from: number, to: number): number => from + (to - from) * random();
  const [mean, swing, dew, wind] = [between(8, 26), between(2, 9), between(2, 12), between(0, 7)];
  let front = 0;
  let rain = 0;
  const hours = Array.from({ length: HOURS }, (_, index): ForecastHour => {
    front = 0.97 * front + between(-0.5, 0.5);
    rain = random() < 0.02 ? 3 : rain - 1;
    const temperatureC = mean + front + swing * Math.cos((2 * Math.PI * (index - 15)) / 24);
    const depressionK = Math.max(0.3, dew + 0.6 * swing * Math.cos((2 * Math.PI * (index - 15)) / 24));
    return {
      at: new Date(Date.UTC(2026, 4, 4) + index * 3_600_000).toISOString(),
      temperatureC,
      relativeHumidityPercent: Math.min(100, 100 * Math.exp(-0.062 * depressionK)),
      windMPerS: Math.max(0, wind + between(-2, 3)),
      rainMm: rain > 0 ? 1 : 0,
      cloudPercent: random() < 0.5 ? 0 : 100 * random(),
    };
  });
  const resins = materialsOf(shippedCatalogue, 'resin');
  const resin = resins[Math.floor(random() * resins.length)];
  return {
    hours,
    resin,
    hardener: resin.hardeners[Math.floor(random() * resin.hardeners.length)],
    shelter: shelters[number % 3],
    workH: 1 + Math.floor(4 * random()),
  };
}

const dewOf = ({ temperatureC: t, relativeHumidityPercent: rh }: ForecastHour): number => {
  const vapour = 6.112 * Math.exp((17.62 * t) / (243.12 + t)) * (rh / 100);
  const ln = Math.log(vapour / 6.112);
  return (243.12 * ln) / (17.62 - ln);
};

/** By bisection: the deck at which radiation and air balance, at night and in the open. */
function deckOf(hour: ForecastHour, shelter: Case['shelter']): number {
  const clock = new Date(hour.at).getUTCHours();
  if (shelter !== 'open' || (clock > 6 && clock < 18)) return hour.temperatureC;
  const air = hour.temperatureC + 273.15;
  const share = dewOf(hour) / 100;
  const clear = 0.711 + 0.56 * share + 0.73 * share * share;
  const cloud = (hour.cloudPercent ?? 0) / 100;
  const sky = (1 - 0.84 * cloud) * clear + 0.84 * cloud;
  let [low, high] = [air - 40, air];
  for (let step = 0; step < 60; step += 1) {
    const deck = (low + high) / 2;
    const net =
      0.9 * 5.670374e-8 * (deck ** 4 - sky * air ** 4) - (5.7 + 3.8 * (hour.windMPerS ?? 0)) * (air - deck);
    if (net > 0) high = deck;
    else low = deck;
  }
  return (low + high) / 2 - 273.15;
}

/** Hour at which resin that goes on at an hour has gelled; none within the forecast. */
function gelledAt({ resin, hardener }: Case, deckC: readonly number[], from: number): number | undefined {
  const rate = (hour: number): number => {
    const place = Math.min(hour, deckC.length - 1);
    const before = Math.floor(place);
    const deck = deckC[before] + (place - before) * ((deckC[before + 1] ?? deckC[before]) - deckC[before]);
    const kelvin = deck + 273.15;
    return Math.exp(
      ((resin.activationEnergyKJPerMol.value * 1000) / 8.314462618) * (1 / 298.15 - 1 / kelvin),
    );
  };
  const step = 0.05;
  let age = 0;
  for (let hour = from; hour < deckC.length; hour += step) {
    age += (step / 6) * (rate(hour) + 4 * rate(hour + step / 2) + rate(hour + step));
    if (age >= hardener.gelH.value) return hour + step;
  }
  return undefined;
}

/** Whether work begun at an hour is fit while it lasts and safe until it has gelled. */
function isSafe(one: Case, deckC: readonly number[], start: number): boolean {
  const { hours, hardener, shelter, workH } = one;
  const isHarmless = (hour: number): boolean =>
    hour < hours.length &&
    deckC[hour] - dewOf(hours[hour]) >= 3 - 1e-9 &&
    hours[hour].relativeHumidityPercent <= 85 &&
    deckC[hour] >= hardener.lowestTemperatureC.value - 1e-9 &&
    (shelter !== 'open' || (hours[hour].rainMm ?? 0) === 0);
  const isFit = (hour: number): boolean =>
    isHarmless(hour) &&
    deckC[hour] <= hardener.highestTemperatureC.value + 1e-9 &&
    (shelter !== 'open' || (hours[hour].windMPerS ?? 0) <= 10);
  for (let hour = start; hour < start + workH; hour += 1) if (!isFit(hour)) return false;
  const gelled = gelledAt(one, deckC, start + workH);
  if (gelled === undefined) return false;
  for (let hour = start + workH; hour < gelled; hour += 1) if (!isHarmless(hour)) return false;
  return true;
}

function permittedStarts(one: Case): readonly number[] {
  const outcome = weatherGates({
    steps: [{ code: 'lay', title: 'Lay resin', gate: 'resin', workH: one.workH }],
    resin: one.resin,
    hardener: one.hardener.code,
    shelter: one.shelter,
    coreMoisturePercent: 9,
    forecast: { hours: one.hours },
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const firstMs = Date.parse(one.hours[0].at);
  return outcome.value.steps[0].windows.flatMap(({ fromAt, untilAt }) => {
    const [from, until] = [fromAt, untilAt].map((at) => (Date.parse(at) - firstMs) / 3_600_000);
    return Array.from({ length: until - from }, (_, index) => from + index);
  });
}

test('over 50 forecasts no permitted hour is unsafe when the gel is integrated, and few safe ones are refused', () => {
  const counted = { permitted: 0, unsafe: 0, refused: 0 };
  for (let number = 0; number < FORECASTS; number += 1) {
    const one = caseOf(number);
    const deckC = one.hours.map((hour) => deckOf(hour, one.shelter));
    const permitted = new Set(permittedStarts(one));
    for (let start = 0; start + one.workH < HOURS; start += 1) {
      const safe = isSafe(one, deckC, start);
      if (permitted.has(start)) counted.permitted += 1;
      if (permitted.has(start) && !safe) counted.unsafe += 1;
      if (!permitted.has(start) && safe) counted.refused += 1;
    }
  }
  expect(counted.unsafe).toBe(0);
  expect(counted.permitted).toBeGreaterThan(1500);
  // The rate of the slower end of each half hour refuses an hour here and there that would just do.
  expect(counted.refused).toBeLessThan(0.03 * counted.permitted);
}, 120_000);
