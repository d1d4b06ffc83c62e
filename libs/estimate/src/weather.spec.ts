import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { dewPointOf, type ForecastHour } from '#lib/cure';
import { aRecord } from '../../../test/samples/a-record.js';
import type { Conditions, DefectRecord } from './job/defect-record.js';
import type { Estimate } from './document/estimate-document.js';
import { estimate } from './estimate.js';

const HOUR_MS = 3_600_000;
const START = '2027-05-02T23:00:00Z';
/** Hours from midnight of Monday, 3 May 2027 in Lisbon. Invented. */
const hourly = (
  days: number,
  change: (hour: number) => Partial<ForecastHour> = () => ({}),
): readonly ForecastHour[] =>
  Array.from({ length: days * 24 }, (_, hour) => ({
    at: new Date(Date.parse(START) + hour * HOUR_MS).toISOString(),
    temperatureC: 19,
    relativeHumidityPercent: 55,
    windMPerS: 2,
    rainMm: 0,
    ...change(hour),
  }));
const lisbon = (hours: readonly ForecastHour[], more: Conditions = {}): Partial<DefectRecord> => ({
  crew: { startDate: '2027-05-03' },
  pricing: { samples: 1000 },
  conditions: { temperatureC: 18, shelter: 'open', forecast: { timeZone: 'Europe/Lisbon', hours }, ...more },
});

const estimated = (changes: Partial<DefectRecord>): Estimate => {
  const outcome = estimate(aRecord(changes), shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return outcome.value.estimate;
};
const refusals = (changes: Partial<DefectRecord>) => {
  const outcome = estimate(aRecord(changes), shippedCatalogue, 'test');
  return outcome.ok ? [] : outcome.problems.map(({ code, at }) => [at, code]);
};
const weatherOf = ({ process: { weather } }: Estimate) => {
  if (weather === undefined) throw new Error('no weather');
  return weather;
};
const stepOf = (made: Estimate, code: string) => weatherOf(made).steps.find((step) => step.code === code)!;
const checkOf = (made: Estimate, code: string) => made.checks.find((check) => check.code === code);

describe('an estimate with a forecast', () => {
  const long = estimated(lisbon(hourly(50)));

  test('starts every step that waits for weather inside one of its windows', () => {
    const damp = estimated(
      lisbon(
        hourly(50, (hour) => ({
          relativeHumidityPercent: hour % 24 < 11 ? 92 : 55,
          rainMm: hour % 72 < 5 ? 1 : 0,
        })),
      ),
    );
    for (const { code, plannedAt, windows, windowCount } of weatherOf(damp).steps) {
      if (windowCount > windows.length) continue;
      expect([
        code,
        windows.some(
          ({ fromAt, untilAt }) =>
            Date.parse(fromAt) <= Date.parse(plannedAt) && Date.parse(plannedAt) < Date.parse(untilAt),
        ),
      ]).toEqual([code, true]);
    }
    const bedding = stepOf(damp, 'bed-core');
    expect(Number(bedding.plannedAt.slice(11, 13))).toBeGreaterThanOrEqual(11);
    expect(bedding.shutBy.map(({ gate }) => gate)).toContain('dew-margin');
  });

  test('ranks windows from the longest and says what ends each', () => {
    const { windows } = stepOf(long, 'bed-core');
    expect(windows.map(({ rank }) => rank)).toEqual(windows.map((_, index) => index + 1));
    expect(windows.map(({ hours }) => hours)).toEqual(
      [...windows.map(({ hours }) => hours)].sort((a, b) => b - a),
    );
    expect(windows[0].limitedBy).toBe('end-of-work');
    expect(windows[0].fromAt).toMatch(/T08:00:00\+01:00$/);
  });

  test('waits for a cure as long along the forecast as the calendar does', () => {
    const cold = estimated(
      lisbon(
        hourly(50, (hour) => ({
          temperatureC: 19 + 6 * Math.sin(((hour - 9) / 12) * Math.PI),
          relativeHumidityPercent: 40,
        })),
      ),
    );
    const row = cold.process.cure.find(({ step }) => step.startsWith('Bed the core'))!;
    const task = cold.process.calendar.tasks.find(({ code }) => code === 'bed-core')!;
    expect(row.basis).toBe('forecast');
    expect(row.startAt).toBe(task.endAt);
    // Each follows the deck in half hours from its own start, this one to the likely age and the calendar to the mean one,
    // which is 1.05 of it for every hardener of the catalogue (0.75, 1 and 1.4 of the likely): the two agree to the step.
    expect(Math.abs(1.05 * row.releaseH! - task.waitH)).toBeLessThan(0.5);
    const colder = estimated(lisbon(hourly(50, () => ({ temperatureC: 14, relativeHumidityPercent: 40 }))));
    expect(colder.process.cure[0].releaseH).toBeGreaterThan(long.process.cure[0].releaseH!);
  });

  test('that is as warm as the stated deck cures as stated', () => {
    // Covered at night: an open deck would be colder than the air.
    const same = estimated(
      lisbon(
        hourly(50, () => ({ temperatureC: 18 })),
        { warmth: { isUnderSky: false } },
      ),
    );
    const [first, ...others] = same.process.cure.map(({ releaseH, sandableH }) => [releaseH, sandableH]);
    for (const other of others)
      for (const [index, hours] of other.entries()) expect(hours).toBeCloseTo(first[index]!, 6);
  });

  test('that ends before the job says so, and falls back to the stated conditions', () => {
    const short = estimated(lisbon(hourly(3)));
    expect(weatherOf(short).notes.join(' ')).toMatch(
      /The forecast ends on 2027-05-06 00:00, before the job: from then on the stated 18.0 degC counts/,
    );
    expect(short.process.cure.map(({ basis }) => basis)).toEqual(['stated']);
    expect(checkOf(short, 'weather-after-forecast')).toMatchObject({
      verdict: 'not-established',
      reason: expect.stringContaining('Lay the new skin'),
    });
    expect(
      weatherOf(estimated({ ...lisbon(hourly(3)), crew: { startDate: '2027-06-07' } })).notes.join(' '),
    ).toMatch(/before the work begins: nothing in this calendar rests on it/);
    expect(
      weatherOf(estimated({ ...lisbon(hourly(30)), crew: { startDate: '2027-04-26' } })).notes.join(' '),
    ).toMatch(/begins on 2027-05-03 00:00, after the work/);
  });

  test('in which it never stops raining fails the step that could have been done', () => {
    const wet = estimated(lisbon(hourly(10, () => ({ rainMm: 1 }))));
    expect(checkOf(wet, 'weather-cut-skin')).toMatchObject({
      verdict: 'fails',
      capacity: 0,
      governs: expect.stringContaining('rain'),
      remedy: 'cover the deck',
    });
    expect(stepOf(wet, 'cut-skin').windows).toEqual([]);
    expect(wet.summary.verdict).toBe('not-restored');
    expect(Date.parse(stepOf(wet, 'cut-skin').plannedAt)).toBeGreaterThanOrEqual(
      Date.parse(weatherOf(wet).untilAt),
    );
    expect(
      checkOf(
        estimated(
          lisbon(
            hourly(10, () => ({ rainMm: 1 })),
            { shelter: 'shed' },
          ),
        ),
        'weather-cut-skin',
      ),
    ).toBeUndefined();
  });

  test('passes a step that it leaves hours for, with the hours on both sides', () => {
    const { neededH, openH } = stepOf(long, 'bed-core');
    expect(checkOf(long, 'weather-bed-core')).toMatchObject({
      verdict: 'passes',
      demand: neededH,
      capacity: openH,
      utilisation: neededH / openH,
    });
  });

  test('says when a deck is warmer than the pots were planned for', () => {
    const hot = estimated(lisbon(hourly(50, () => ({ temperatureC: 28, relativeHumidityPercent: 40 }))));
    expect(weatherOf(hot).notes.join(' ')).toMatch(
      /planned for a deck of 28 degC, and its pots for 18 degC: they last about 4\d % as long/,
    );
    expect(weatherOf(long).notes.join(' ')).not.toContain('pots');
  });

  test('gives the day, the temperature and the humidity where the record states none, as assumptions', () => {
    const {
      process: { calendar },
      assumptions,
      checks,
    } = estimated({ ...lisbon(hourly(20), { temperatureC: undefined }), crew: {} });
    expect([calendar.startDate, calendar.timeZone]).toEqual(['2027-05-03', 'Europe/Lisbon']);
    const assumed = (at: string) =>
      assumptions.find((assumption) => assumption.of === 'record' && assumption.at === at)?.value;
    expect([
      assumed('/crew/startDate'),
      assumed('/conditions/temperatureC'),
      assumed('/conditions/relativeHumidityPercent'),
    ]).toEqual(['2027-05-03', '19 degC', '55 %']);
    expect(checks.find(({ code }) => code === 'weather-stated-resin')?.title).toBe(
      'Bonding and laminating at 19.0 degC and 55 %',
    );
  });

  test('works by the clock of the place, also where only an offset is known', () => {
    const hours = hourly(20).map((hour, index) => ({
      ...hour,
      at: `${new Date(Date.parse('2027-05-03T00:00:00Z') + index * HOUR_MS).toISOString().slice(0, 19)}-03:00`,
    }));
    const {
      process: { calendar },
    } = estimated({ conditions: { shelter: 'open', forecast: { hours } }, pricing: { samples: 1000 } });
    expect(calendar.timeZone).toBe('-03:00');
    expect(calendar.tasks[0].startAt).toBe('2027-05-03T08:00:00-03:00');
  });

  test('a heater keeps a cold deck curing and its windows open; a tent keeps nothing from the stated deck', () => {
    const cold = hourly(30, () => ({ temperatureC: 9, relativeHumidityPercent: 60 }));
    const cautionsOf = (made: Estimate) => made.cautions.map(({ code }) => code);
    expect(cautionsOf(estimated(lisbon(cold, { shelter: 'tent' })))).toContain('cold-cure');
    expect(cautionsOf(long)).not.toContain('cold-cure');
    expect(checkOf(estimated(lisbon(cold, { shelter: 'tent' })), 'weather-bed-core')).toMatchObject({
      verdict: 'fails',
      governs: expect.stringContaining('cold'),
    });
    expect(
      checkOf(estimated(lisbon(cold, { shelter: 'tent', warmth: { heaterK: 10 } })), 'weather-bed-core')
        ?.verdict,
    ).toBe('passes');
    expect(estimated(lisbon(cold, { warmth: { heaterK: 10 } })).process.cure.at(-1)).toMatchObject({
      basis: 'stated',
      temperatureC: 18,
    });
  });

  test('comes out the same twice, to the last digit', () => {
    expect(JSON.stringify(estimated(lisbon(hourly(50))))).toBe(JSON.stringify(long));
  });
});

describe('an estimate without a forecast', () => {
  test('says what to require, and holds the stated air against it', () => {
    const {
      process: { weather, gates },
      checks,
    } = estimated({ conditions: { temperatureC: 20, relativeHumidityPercent: 70 } });
    expect(weather).toBeUndefined();
    expect(gates[0]).toMatchObject({
      step: 'Bonding and laminating',
      requires: expect.arrayContaining([
        'surface at least 3 K above the dew point, from the start until gel',
      ]),
    });
    expect(checks.find(({ code }) => code === 'weather-stated-resin')).toMatchObject({
      verdict: 'passes',
      demand: 70,
      capacity: 85,
    });
  });

  test('air close to its dew point, and a deck colder than the primer allows, fail with their numbers', () => {
    const damp = estimated({ conditions: { temperatureC: 20, relativeHumidityPercent: 90 } });
    expect(checkOf(damp, 'weather-stated-resin')).toMatchObject({ verdict: 'fails', demand: 3, unit: 'K' });
    expect(checkOf(damp, 'weather-stated-resin')?.capacity).toBeCloseTo(20 - dewPointOf(20, 90), 9);
    expect(
      checkOf(
        estimated({ conditions: { temperatureC: 14, relativeHumidityPercent: 50 } }),
        'weather-stated-primer',
      ),
    ).toMatchObject({ verdict: 'fails', demand: 15, capacity: 14, unit: 'degC' });
  });
});

describe('a forecast that cannot be used is refused at its own place', () => {
  const good = hourly(4);
  const at = '/conditions/forecast/hours';
  test.each<[string, readonly ForecastHour[], readonly (readonly [string, string])[]]>([
    ['a gap', good.filter((_, index) => index !== 9), [[`${at}/9/at`, 'forecast-gap']]],
    [
      'out of order',
      [good[1], good[0], ...good.slice(2)],
      [
        [`${at}/1/at`, 'forecast-order'],
        [`${at}/2/at`, 'forecast-gap'],
      ],
    ],
    ['an hour twice', [...good.slice(0, 5), ...good.slice(4)], [[`${at}/5/at`, 'forecast-order']]],
    [
      'the wrong zone',
      good.map((hour) => ({ ...hour, at: hour.at.replace('.000Z', '+05:00') })),
      [[`${at}/0/at`, 'wrong-zone']],
    ],
    [
      'no zone',
      good.map((hour, index) => (index === 3 ? { ...hour, at: '2027-05-03T02:00:00' } : hour)),
      [[`${at}/3/at`, 'no-time-zone']],
    ],
    [
      'a humidity of 140 % and a temperature that is none',
      good.map((hour, index) =>
        index === 2 ? { ...hour, relativeHumidityPercent: 140, temperatureC: Number.NaN } : hour,
      ),
      [
        [`${at}/2/temperatureC`, 'not-a-number'],
        [`${at}/2/relativeHumidityPercent`, 'out-of-range'],
      ],
    ],
  ])('%s', (_, hours, faults) => {
    expect(refusals(lisbon(hours))).toEqual(faults);
  });

  test('wall-clock hours over the change of clocks are named as that', () => {
    const wall = Array.from({ length: 12 }, (_, hour) => ({
      at: `2027-03-28T${String(hour).padStart(2, '0')}:00:00+00:00`,
      temperatureC: 15,
      relativeHumidityPercent: 60,
    }));
    const said = wall.map((hour, index) =>
      index < 2 ? hour : { ...hour, at: hour.at.replace('+00:00', '+01:00') },
    );
    expect(refusals(lisbon(said))).toEqual([[`${at}/2/at`, 'clock-change']]);
  });

  test('an unknown zone, sun without a forecast, a day in the year 1, a day twice: all at their places', () => {
    expect(refusals({ conditions: { forecast: { timeZone: 'Europe/Atlantis', hours: good } } })).toEqual([
      ['/conditions/forecast/timeZone', 'unknown-code'],
    ]);
    expect(
      refusals({
        conditions: { warmth: { heaterK: 5, sunK: 10 } },
        crew: { startDate: '0001-01-01', workingDays: ['mon', 'mon'] },
      }),
    ).toEqual([
      ['/conditions/forecast', 'missing'],
      ['/crew/startDate', 'out-of-range'],
      ['/crew/workingDays/1', 'duplicate'],
    ]);
  });
});
