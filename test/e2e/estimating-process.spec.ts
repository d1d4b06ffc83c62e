import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import ICAL from 'ical.js';
import { startService, type TestService } from './service.js';

const at = (path: string): string => `/v1/estimating/${path}`;
const faultsOf = (answer: {
  readonly body: { readonly errors: readonly { readonly pointer: string; readonly code: string }[] };
}) => answer.body.errors.map(({ pointer, code }) => [pointer, code]);

describe('process over HTTP', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  describe('POST /v1/estimating/resin-batches', () => {
    const request = {
      resin: 'resin-epoxy-5to1',
      temperatureC: '68 degF',
      people: 2,
      steps: [
        {
          step: 'bed-core',
          areaM2: '6 ft2',
          pieces: [
            { label: 'A1', areaM2: '3 ft2' },
            { label: 'A2', areaM2: '3 ft2' },
          ],
        },
        { step: 'potting', holes: 8, diameterMm: '1 in', depthMm: '1/2 in' },
      ],
    };

    test('pots reconcile with the demand to a tenth of a gram, and a hardener is chosen with reasons', async () => {
      const answer = await service.post(at('resin-batches'), request);
      expect(answer.status).toBe(200);
      const { batches, demand, resin, considered } = answer.body;
      const sum = (key: 'resinG' | 'hardenerG') =>
        batches.reduce(
          (total: number, batch: Record<string, number>) => total + Math.round(batch[key] * 10),
          0,
        );
      expect([sum('resinG'), sum('hardenerG')]).toEqual([
        Math.round(demand.totals.resinG * 10),
        Math.round(demand.totals.hardenerG * 10),
      ]);
      expect(considered.find(({ verdict }: { verdict: string }) => verdict === 'chosen').code).toBe(
        resin.hardener,
      );
      expect(answer.text).not.toMatch(/NaN|Infinity/);
    });

    test('cold resin, unknown codes and missing areas are named with their places', async () => {
      expect(faultsOf(await service.post(at('resin-batches'), { ...request, temperatureC: 1 }))).toEqual([
        ['/temperatureC', 'resin-too-cold'],
      ]);
      expect(
        faultsOf(
          await service.post(at('resin-batches'), {
            ...request,
            resin: 'resin-none',
            fillers: ['filler-none'],
          }),
        ),
      ).toEqual([
        ['/resin', 'unknown-code'],
        ['/fillers/0', 'unknown-code'],
      ]);
      expect(
        faultsOf(await service.post(at('resin-batches'), { ...request, steps: [{ step: 'seal' }] })),
      ).toEqual([['/steps/0/areaM2', 'missing']]);
    });
  });

  describe('POST /v1/estimating/bond-pressure', () => {
    test('weights on a skin that sags are answered with props, a bag on an untested skin with a refusal', async () => {
      const answer = await service.post(at('bond-pressure'), {
        areaM2: 0.8,
        lengthMm: 1000,
        widthMm: 800,
        innerSkin: { thicknessMm: '1/8 in', spanMm: 600 },
      });
      expect(answer.status).toBe(200);
      expect([answer.body.method, answer.body.innerSkin.props.needed]).toEqual(['weights', true]);
      expect(answer.body.refusals.join()).toContain('airtight');
    });

    test('a boat at 9,000 m is refused', async () => {
      expect(
        faultsOf(
          await service.post(at('bond-pressure'), {
            areaM2: 1,
            lengthMm: 1000,
            widthMm: 1000,
            innerSkin: { thicknessMm: 3, spanMm: 300 },
            altitudeM: 9000,
          }),
        ),
      ).toEqual([['/altitudeM', 'out-of-range']]);
    });
  });

  describe('POST /v1/estimating/cure-plan', () => {
    const hours = Array.from({ length: 72 }, (_, hour) => ({
      at: new Date(Date.parse('2026-05-04T06:00:00Z') + hour * 3_600_000).toISOString(),
      temperatureC: 18,
      relativeHumidityPercent: 60,
    }));
    const request = {
      resin: 'resin-epoxy-5to1',
      hardener: 'medium',
      shelter: 'open',
      temperature: { forecast: { hours } },
    };

    test('a forecast gives milestones and windows', async () => {
      const answer = await service.post(at('cure-plan'), request);
      expect(answer.status).toBe(200);
      expect(answer.body.cure.milestones.map(({ code }: { code: string }) => code)).toEqual([
        'gel',
        'release',
        'recoat-shuts',
        'sandable',
        'full',
      ]);
      expect(answer.body.weather.steps[0].windows[0].rank).toBe(1);
    });

    test('a gap in the forecast, or no temperature at all, has a name', async () => {
      expect(
        faultsOf(
          await service.post(at('cure-plan'), {
            ...request,
            temperature: { forecast: { hours: hours.filter((_, index) => index !== 9) } },
          }),
        ),
      ).toEqual([['/temperature/forecast/hours/9/at', 'forecast-gap']]);
      expect(faultsOf(await service.post(at('cure-plan'), { ...request, temperature: {} }))).toEqual([
        ['/temperature', 'missing'],
      ]);
    });
  });

  describe('POST /v1/estimating/calendar', () => {
    const request = {
      startDate: '2026-05-04',
      timeZone: 'Europe/Lisbon',
      resin: 'resin-epoxy-5to1',
      hardener: 'medium',
      crew: { people: 2 },
      runs: 200,
      drivers: {
        'opened-m2': 1.2,
        'cut-m': 4.4,
        'taper-m': 4.4,
        'laminate-m2': 1.5,
        'faired-m2-cycle': 6,
        'hole': 8,
        'fitting-off-h': 1,
      },
      flags: {
        skin: 'relay',
        access: 'from-above',
        condition: 'wet-rotten',
        press: 'weights',
        shelter: 'tent',
        below: 'open',
        skill: 'professional',
        props: 'needed',
        finish: 'none',
        nonskid: 'no',
        berth: 'ashore',
        panel: 'flat',
      },
      iCalendar: {
        uidPrefix: 'job-1',
        uidDomain: 'yard.example',
        stampAt: '2026-04-01T09:00:00Z',
        withTasks: false,
      },
    };

    test('dates come in order, and as iCalendar that another parser reads', async () => {
      const answer = await service.post(at('calendar'), request);
      expect(answer.status).toBe(200);
      const { early, likely, late } = answer.body.finish;
      expect([early, likely, late]).toEqual([early, likely, late].sort());
      expect(
        new ICAL.Component(ICAL.parse(answer.body.iCalendar)).getAllSubcomponents('vevent'),
      ).toHaveLength(answer.body.milestones.length);
    });

    test('a circle of operations is named', async () => {
      const looped = {
        ...request,
        customOperations: [
          {
            code: 'loop',
            title: 'Loop',
            hours: { low: 1, likely: 1, high: 1 },
            after: ['laminate-top'],
            before: ['bed-core'],
          },
        ],
      };
      expect(faultsOf(await service.post(at('calendar'), looped))).toEqual([
        ['/customOperations/0/after', 'network-cycle'],
      ]);
    });
  });
});
