import { describe, expect, test } from '@jest/globals';
import { findMaterial, shippedCatalogue } from '#lib/catalogue';
import { weatherGates, type ForecastHour, type WeatherPlan, type WeatherRequest } from '../index.js';

const resin = findMaterial(shippedCatalogue, 'resin', 'resin-epoxy-5to1')!;
const hour = (index: number, change: Partial<ForecastHour> = {}): ForecastHour => ({
  at: new Date(Date.parse('2026-05-04T06:00:00Z') + index * 3_600_000).toISOString(),
  temperatureC: 18,
  relativeHumidityPercent: 55,
  windMPerS: 3,
  rainMm: 0,
  ...change,
});
const bed = { code: 'bed', title: 'Bed the core', gate: 'resin', workH: 2 } as const;
const request = (hours: readonly ForecastHour[], change: Partial<WeatherRequest> = {}): WeatherRequest => ({
  steps: [bed],
  resin,
  hardener: 'medium',
  shelter: 'open',
  forecast: { hours },
  ...change,
});
const planOf = (given: WeatherRequest): WeatherPlan => {
  const outcome = weatherGates(given);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const days = (count: number, change: (index: number) => Partial<ForecastHour>) =>
  Array.from({ length: count * 24 }, (_, index) => hour(index, change(index)));

describe('weather', () => {
  test('without a forecast the answer is what to wait for', () => {
    const [step] = planOf({ steps: [bed], resin, hardener: 'medium', shelter: 'open' }).steps;
    expect(step.requires.map(({ gate }) => gate)).toEqual([
      'dew-margin',
      'humidity',
      'too-cold',
      'too-warm',
      'core-moisture',
      'rain',
      'wind',
    ]);
    expect(step.windows).toEqual([]);
  });

  test('a dry mild forecast is open until the end, less the hours to work and to gel', () => {
    const hoursUnder = (shelter: WeatherRequest['shelter']) =>
      planOf(
        request(
          days(1, () => ({})),
          { shelter },
        ),
      ).steps[0].windows;
    expect(hoursUnder('tent')).toHaveLength(1);
    expect(hoursUnder('tent')[0].startHours).toBe(24 - 2 - 2 + 1);
    expect(hoursUnder('tent')[0].limitedBy).toBe('end-of-forecast');
    // In the open the deck is colder at night than the air, and the gel takes an hour more.
    expect(hoursUnder('open')[0].startHours).toBe(24 - 2 - 3 + 1);
  });

  test('a window of hours from six to noon ends at noon', () => {
    const [step] = planOf(request(days(1, (index) => ({ rainMm: index === 9 ? 2 : 0 })))).steps;
    const first = step.windows.find(({ fromAt }) => fromAt === '2026-05-04T06:00:00.000Z');
    expect([first?.startHours, first?.untilAt]).toEqual([6, '2026-05-04T12:00:00Z']);
  });

  test('under a clear still sky the open deck falls below the dew point plus three, under clouds or a cover it does not', () => {
    const night = days(1, () => ({ temperatureC: 12, relativeHumidityPercent: 72, windMPerS: 1 }));
    const deckAt = (given: WeatherRequest) => planOf(given).hours[17];
    expect(deckAt(request(night)).deckC).toBeLessThan(12 - 4);
    expect(deckAt(request(night)).dewMarginK).toBeLessThan(3);
    expect(deckAt(request(night, { warmth: { isUnderSky: false } })).deckC).toBe(12);
    expect(deckAt(request(night.map((one) => ({ ...one, cloudPercent: 100 })))).deckC).toBeGreaterThan(
      12 - 2,
    );
    const said = planOf(request(night)).assumptions.map(({ at }) => at);
    expect(said).toContain('/warmth/isUnderSky');
    expect(
      planOf(request(night, { warmth: { isUnderSky: true } })).assumptions.map(({ at }) => at),
    ).not.toContain('/warmth/isUnderSky');
  });

  test('rain shuts the hours before it, because resin laid then would still be wet', () => {
    const [step] = planOf(request(days(1, (index) => ({ rainMm: index === 12 ? 2 : 0 })))).steps;
    expect(step.windows.map(({ startHours, limitedBy }) => [startHours, limitedBy])).toContainEqual([
      9,
      'rain',
    ]);
    expect(
      planOf(
        request(
          days(1, (index) => ({ rainMm: index === 12 ? 2 : 0 })),
          { shelter: 'shed' },
        ),
      ).steps[0].windows,
    ).toHaveLength(1);
  });

  test('a surface less than three kelvin above the dew point shuts the work; the same air warmed by a heater opens it', () => {
    const damp = days(1, () => ({ temperatureC: 15, relativeHumidityPercent: 84 }));
    expect(planOf(request(damp)).steps[0]).toMatchObject({
      windows: [],
      shutBy: [{ gate: 'dew-margin', hours: 24 }],
    });
    expect(planOf(request(damp, { warmth: { heaterK: 5 } })).steps[0].windows).toHaveLength(1);
  });

  test('longer windows rank before shorter ones', () => {
    const [step] = planOf(
      request(days(2, (index) => ({ rainMm: index === 8 || index === 20 ? 1 : 0 }))),
    ).steps;
    expect(step.windows.map(({ rank }) => rank)).toEqual([1, 2, 3]);
    expect(step.windows.map(({ startHours }) => startHours)).toEqual(
      [...step.windows.map(({ startHours }) => startHours)].sort((a, b) => b - a),
    );
  });

  test("with the crew's hours a window ends with the working day, and hours before the step is possible do not count", () => {
    const workTimes = {
      hoursPerDay: 8,
      startHour: 8,
      workingDays: ['mon', 'tue', 'wed', 'thu', 'fri'],
    } as const;
    const [step] = planOf(
      request(
        days(3, () => ({})),
        { workTimes, steps: [{ ...bed, workH: 1 }] },
      ),
    ).steps;
    expect(
      step.windows.map(({ fromAt, startHours, limitedBy }) => [fromAt.slice(8, 13), startHours, limitedBy]),
    ).toEqual([
      ['04T08', 8, 'end-of-work'],
      ['05T08', 8, 'end-of-work'],
      ['06T08', 8, 'end-of-work'],
    ]);
    const [late] = planOf(
      request(
        days(3, () => ({})),
        { workTimes, steps: [{ ...bed, workH: 1, earliestAt: '2026-05-05T12:30:00Z' }] },
      ),
    ).steps;
    expect(late.windows.map(({ fromAt, startHours }) => [fromAt.slice(8, 13), startHours])).toEqual([
      ['06T08', 8],
      ['05T12', 4],
    ]);
  });

  test('a forecast that is silent on rain and wind is listed as such in the open, and a core that nobody read', () => {
    const silent = days(1, () => ({})).map(({ at, temperatureC, relativeHumidityPercent }) => ({
      at,
      temperatureC,
      relativeHumidityPercent,
    }));
    const meanings = (given: WeatherRequest) => planOf(given).assumptions.map(({ meaning }) => meaning);
    expect(meanings(request(silent))).toEqual(
      expect.arrayContaining([
        'rain where the forecast is silent',
        'wind where the forecast is silent',
        'core moisture in the hours of the forecast',
      ]),
    );
    expect(meanings(request(silent, { shelter: 'shed', coreMoisturePercent: 9 })).join()).not.toMatch(
      /rain|wind|moisture/,
    );
  });

  test('a coat needs dry hours until it is touch dry, resin until it gels at the temperature of the deck', () => {
    const rainAt = (hourOfRain: number, gate: 'resin' | 'coating', temperatureC: number) =>
      planOf(
        request(
          days(1, (index) => ({
            temperatureC,
            relativeHumidityPercent: 40,
            rainMm: index === hourOfRain ? 1 : 0,
          })),
          { steps: [{ code: 's', title: 's', gate, workH: 1 }] },
        ),
      ).steps[0].windows.find(({ limitedBy }) => limitedBy === 'rain')!.startHours;
    expect(rainAt(12, 'coating', 18)).toBe(12 - 1 - 4 + 1);
    expect(rainAt(12, 'resin', 14)).toBeLessThan(rainAt(12, 'resin', 24));
  });

  test('wet core shuts every hour whatever the sky', () => {
    expect(
      planOf(
        request(
          days(1, () => ({})),
          { coreMoisturePercent: 18 },
        ),
      ).steps[0].shutBy,
    ).toEqual([{ gate: 'core-moisture', hours: 24 }]);
  });

  test('two steps of one code, a humidity of nothing and a missing resin are all named', () => {
    const outcome = weatherGates({
      steps: [bed, bed],
      shelter: 'open',
      forecast: { hours: [hour(0), hour(1, { relativeHumidityPercent: 0 })] },
    });
    expect(outcome.ok ? [] : outcome.problems.map(({ at }) => at)).toEqual([
      '/steps/1/code',
      '/resin',
      '/forecast/hours/1/relativeHumidityPercent',
    ]);
  });
});
