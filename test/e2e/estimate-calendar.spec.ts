import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import ICAL from 'ical.js';
import { startService, type TestService } from './service.js';

const sample = (name: string) =>
  JSON.parse(
    readFileSync(path.join(import.meta.dirname, '../../apps/workshop/samples', `${name}.json`), 'utf8'),
  ) as Record<string, unknown>;
const foredeck = sample('foredeck');
const conditions = foredeck.conditions as Record<string, unknown>;
/** Two weeks of dry spring days from the day the work may start; invented. */
const hours = Array.from({ length: 14 * 24 }, (_, hour) => ({
  at: new Date(Date.parse('2027-03-01T00:00:00Z') + hour * 3_600_000).toISOString(),
  temperatureC: '62 degF',
  relativeHumidityPercent: 55,
  windMPerS: '4 kn',
  rainMm: 0,
}));
const withForecast = {
  ...foredeck,
  conditions: { ...conditions, forecast: { timeZone: 'Europe/Lisbon', hours } },
};
const eventsIn = (text: string) =>
  new ICAL.Component(ICAL.parse(text))
    .getAllSubcomponents('vevent')
    .map((component) => new ICAL.Event(component));

describe('the calendar of an estimate', () => {
  let service: TestService;
  let made: Awaited<ReturnType<TestService['post']>>;
  beforeAll(async () => {
    service = await startService();
    made = await service.post('/v1/estimates', withForecast);
  });
  afterAll(async () => {
    await service.stop();
  });
  const at = (query = ''): string => `/v1/estimates/${made.body.id}/calendar${query}`;
  const ics = { accept: 'text/calendar' };

  test('holds the windows of each step, and comes out again when it is replayed', async () => {
    expect(made.status).toBe(201);
    const { body } = await service.get(at());
    expect(
      body.weather.steps.find(({ code }: { code: string }) => code === 'bed-core').windows[0],
    ).toMatchObject({ rank: 1, limitedBy: 'end-of-work' });
    expect(body.calendar).toEqual(made.body.estimate.process.calendar);
    expect(body.day).toBeUndefined();
    expect((await service.get(`/v1/estimates/${made.body.id}/replay`)).body.isSame).toBe(true);
  });

  test('tells what a day holds', async () => {
    const { body } = await service.get(at('?on=2027-03-01'));
    expect(body.day.date).toBe('2027-03-01');
    expect(body.day.items[0]).toMatchObject({ kind: 'work', task: 'inspect-map' });
    const saturday = await service.get(at('?on=2027-03-06'));
    expect(saturday.body.day.items.map(({ kind }: { kind: string }) => kind)).toEqual(['next']);
    for (const query of ['?on=2027-02-30', '?on=today', '?day=2027-03-01', '?events=some'])
      expect([query, (await service.get(at(query))).status]).toEqual([query, 400]);
  });

  test('is iCalendar by Accept: its milestones at the moments of the document, in lines that RFC 5545 allows', async () => {
    const answer = await service.get(at(), ics);
    expect(answer.headers.get('content-type')).toBe('text/calendar; method=PUBLISH; charset=utf-8');
    const { milestones } = made.body.estimate.process.calendar as {
      milestones: readonly { code: string; title: string; at: string }[];
    };
    expect(
      eventsIn(answer.text).map((event) => [event.summary, event.startDate.toJSDate().getTime()]),
    ).toEqual(milestones.map((milestone) => [milestone.title, Date.parse(milestone.at)]));
    for (const line of answer.text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(answer.text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const stamps = new Set(
      eventsIn(answer.text).map(({ component }) => component.getFirstPropertyValue('dtstamp')?.toString()),
    );
    expect([...stamps]).toEqual([`${String(made.body.createdAt).slice(0, 19)}Z`]);
    expect((await service.get(at('?events=all'), ics)).text.match(/BEGIN:VEVENT/g)!.length).toBeGreaterThan(
      milestones.length + 20,
    );
  });

  test('has an ETag in each form, and is the same text each time', async () => {
    const [first, again, asJson] = [
      await service.get(at(), ics),
      await service.get(at(), ics),
      await service.get(at()),
    ];
    expect(again.text).toBe(first.text);
    expect(asJson.headers.get('etag')).not.toBe(first.headers.get('etag'));
    expect(
      (await service.get(at(), { ...ics, 'if-none-match': first.headers.get('etag') ?? '' })).status,
    ).toBe(304);
    expect((await service.get(at(), { 'if-none-match': first.headers.get('etag') ?? '' })).status).toBe(200);
  });

  test('of a revision moves the events of the first: the same UIDs, a higher sequence', async () => {
    const revised = await service.post(`/v1/estimates/${made.body.id}/revisions`, {
      reason: 'A week later',
      record: { ...foredeck, crew: { people: 2, startDate: '2027-03-08' } },
    });
    const [before, after] = [
      eventsIn((await service.get(at(), ics)).text),
      eventsIn((await service.get(`/v1/estimates/${revised.body.id}/calendar`, ics)).text),
    ];
    expect(after.map(({ uid }) => uid)).toEqual(before.map(({ uid }) => uid));
    expect([before[0].sequence, after[0].sequence]).toEqual([0, 1]);
    expect(after[0].startDate.toJSDate().getTime()).toBeGreaterThan(before[0].startDate.toJSDate().getTime());
  });

  test('without a day to start on there are days but no dates, and it says what to do', async () => {
    const undated = await service.post('/v1/estimates', { ...foredeck, crew: { people: 2 } });
    const place = `/v1/estimates/${undated.body.id}/calendar`;
    expect((await service.get(place)).status).toBe(200);
    for (const answer of [await service.get(place, ics), await service.get(`${place}?on=2027-03-01`)]) {
      expect(answer.status).toBe(409);
      expect(answer.body.detail).toContain('crew.startDate');
    }
  });

  test('a forecast with a gap is refused at its place in the record, and a day of the week that stands twice', async () => {
    const gap = {
      ...foredeck,
      conditions: { ...conditions, forecast: { hours: hours.filter((_, index) => index !== 9) } },
      crew: { workingDays: ['mon', 'mon'] },
    };
    expect(
      (await service.post('/v1/estimates', gap)).body.errors.map(
        ({ pointer, code }: { pointer: string; code: string }) => [pointer, code],
      ),
    ).toEqual([['/crew/workingDays/1', 'duplicate']]);
    expect(
      (await service.post('/v1/estimates', { ...gap, crew: { startDate: '0001-01-01' } })).body.errors.map(
        ({ pointer, code }: { pointer: string; code: string }) => [pointer, code],
      ),
    ).toEqual([
      ['/conditions/forecast/hours/9/at', 'forecast-gap'],
      ['/crew/startDate', 'out-of-range'],
    ]);
  });
});
