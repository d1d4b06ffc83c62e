import { describe, expect, test } from '@jest/globals';
import { materialsOf, shippedCatalogue } from '#lib/catalogue';
import { planCure, type CurePlan, type CureRequest, type ForecastHour } from './index.js';

const resin = materialsOf(shippedCatalogue, 'resin').find(({ code }) => code === 'resin-epoxy-5to1')!;
const steady = (temperatureC: number): CureRequest => ({
  resin,
  hardener: 'medium',
  temperature: { kind: 'constant', temperatureC },
});
const planOf = (request: CureRequest): CurePlan => {
  const outcome = planCure(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const problemsOf = (request: CureRequest) => {
  const outcome = planCure(request);
  return outcome.ok ? [] : outcome.problems;
};
const hoursTo = (plan: CurePlan, code: string) =>
  plan.milestones.find((milestone) => milestone.code === code)!;
const hourly = (
  count: number,
  temperatureC: (hour: number) => number,
  from = '2026-05-04T06:00:00Z',
): readonly ForecastHour[] =>
  Array.from({ length: count }, (_, hour) => ({
    at: new Date(Date.parse(from) + hour * 3_600_000).toISOString(),
    temperatureC: temperatureC(hour),
    relativeHumidityPercent: 60,
  }));

describe('cure', () => {
  test('at its reference temperature each milestone comes after the hours of the spec', () => {
    const plan = planOf(steady(25));
    for (const { likelyH, ageH } of plan.milestones) expect(likelyH).toBeCloseTo(ageH, 9);
  });

  test('ten degrees colder takes about twice as long, within the band', () => {
    const [warm, cool] = [hoursTo(planOf(steady(25)), 'release'), hoursTo(planOf(steady(15)), 'release')];
    expect(cool.likelyH! / warm.likelyH!).toBeCloseTo(
      Math.exp((55 / 0.008314462618) * (1 / 288.15 - 1 / 298.15)),
      6,
    );
    expect(cool.earlyH!).toBeLessThan(cool.likelyH!);
    expect(cool.lateH!).toBeGreaterThan(cool.likelyH!);
  });

  test('an hourly forecast of one temperature gives the same as that temperature', () => {
    const plan = planOf({
      ...steady(0),
      temperature: { kind: 'hourly', forecast: { hours: hourly(400, () => 18) } },
    });
    expect(hoursTo(plan, 'sandable').likelyH).toBeCloseTo(
      hoursTo(planOf(steady(18)), 'sandable').likelyH!,
      6,
    );
    expect(hoursTo(plan, 'gel').at).toMatch(/^2026-05-04T/);
  });

  test('nights below the limit stop the clock and are counted', () => {
    const plan = planOf({ ...steady(0), temperature: { kind: 'day-night', dayC: 16, nightC: 2 } });
    expect(plan.stoppedH).toBeGreaterThan(0);
    expect(hoursTo(plan, 'sandable').likelyH).toBeGreaterThan(
      hoursTo(planOf(steady(12)), 'sandable').likelyH!,
    );
  });

  test('a heater brings the release forward', () => {
    const cold = planOf(steady(12));
    const heated = planOf({ ...steady(12), warmth: { heaterK: 12 } });
    expect(hoursTo(heated, 'release').likelyH!).toBeLessThan(0.6 * hoursTo(cold, 'release').likelyH!);
  });

  test('a milestone beyond the forecast is absent with the share of the cure that is done', () => {
    const plan = planOf({
      ...steady(0),
      temperature: { kind: 'hourly', forecast: { hours: hourly(12, () => 15) } },
    });
    expect(hoursTo(plan, 'full').likelyH).toBeUndefined();
    expect(hoursTo(plan, 'full').reason).toMatch(/the forecast ends after 11 h with \d+ % of the cure done/);
  });

  test('a deck always below the limit is refused; so are an unknown hardener and a night warmer than the day', () => {
    expect(problemsOf(steady(4)).map(({ code, at }) => [code, at])).toEqual([
      ['resin-too-cold', '/temperature/temperatureC'],
    ]);
    expect(problemsOf({ ...steady(20), hardener: 'tropical' }).map(({ at }) => at)).toEqual(['/hardener']);
    expect(
      problemsOf({ ...steady(20), temperature: { kind: 'day-night', dayC: 10, nightC: 18 } }).map(
        ({ code }) => code,
      ),
    ).toEqual(['contradiction']);
  });

  test('gaps, hours out of order, a wrong zone and a clock change have names of their own', () => {
    const hours = hourly(6, () => 18);
    const withForecast = (forecast: { hours: readonly ForecastHour[]; timeZone?: string }): CureRequest => ({
      ...steady(0),
      temperature: { kind: 'hourly', forecast },
    });
    expect(
      problemsOf(withForecast({ hours: hours.filter((_, index) => index !== 3) })).map(({ code }) => code),
    ).toEqual(['forecast-gap']);
    expect(
      problemsOf(withForecast({ hours: [hours[1], hours[0], ...hours.slice(2)] })).map(({ code }) => code),
    ).toContain('forecast-order');
    expect(
      problemsOf(
        withForecast({
          hours: hours.map((hour) => ({ ...hour, at: hour.at.replace('Z', '').replace('.000', '') })),
        }),
      ).map(({ code }) => code),
    ).toContain('no-time-zone');
    const inWrongZone = hours.map((hour) => ({ ...hour, at: hour.at.replace('.000Z', '-05:00') }));
    expect(
      problemsOf(withForecast({ hours: inWrongZone, timeZone: 'Europe/Lisbon' })).map(({ code }) => code),
    ).toEqual(['wrong-zone']);
    const wallClock = ['00', '01', '02', '03', '04'].map((hour) => ({
      at: `2026-03-29T${hour}:00:00+00:00`.replace(/(0[2-4]):00:00\+00:00/, '$1:00:00+01:00'),
      temperatureC: 15,
      relativeHumidityPercent: 60,
    }));
    expect(
      problemsOf(withForecast({ hours: wallClock, timeZone: 'Europe/Lisbon' })).map(({ code }) => code),
    ).toContain('clock-change');
  });

  test('a cure across the change of clocks counts elapsed hours and writes each moment with its own offset', () => {
    const hours = hourly(60, () => 20, '2026-03-28T12:00:00Z');
    const plan = planOf({
      ...steady(0),
      temperature: { kind: 'hourly', forecast: { hours, timeZone: 'Europe/Berlin' } },
      startAt: '2026-03-28T14:00:00+01:00',
    });
    expect(plan.notes.join()).toContain('clocks change');
    expect(hoursTo(plan, 'sandable').at).toMatch(/\+02:00$/);
    expect(Date.parse(hoursTo(plan, 'sandable').at!) - Date.parse('2026-03-28T13:00:00Z')).toBeCloseTo(
      hoursTo(plan, 'sandable').likelyH! * 3_600_000,
      -5,
    );
  });
});
