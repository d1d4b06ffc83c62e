import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const foredeck = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../apps/workshop/samples/foredeck.json'), 'utf8'),
) as Record<string, unknown>;
const record = { ...foredeck, pricing: { priceList: 'invented-euro', samples: 1000 } };

describe('POST /v1/estimating/variants', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  const weighed = (variants: unknown, changes: object = {}) =>
    service.post('/v1/estimating/variants', { record: { ...record, ...changes }, variants });

  test('a sample deck relaid, re-bedded and relaid with a long taper in the cold is weighed on the same criteria', async () => {
    const { status, body } = await weighed([
      { code: 'relay', title: 'New skin', method: { skin: 'relay' } },
      { code: 're-bed', method: { skin: 're-bed' } },
      {
        code: 'long-taper',
        method: { skin: 'relay', taperRatio: 20 },
        conditions: { temperatureC: '50 degF', shelter: 'shed' },
      },
    ]);
    expect(status).toBe(200);
    expect(body.currency).toBe('EUR');
    expect(body.rows.map(({ code, title }: { code: string; title: string }) => [code, title])).toEqual([
      ['relay', 'New skin'],
      ['re-bed', 're-bed'],
      ['long-taper', 'long-taper'],
    ]);
    expect(body.compared).toEqual(expect.arrayContaining(['cost', 'labourH', 'days', 'massKg']));
    const [relay, , longTaper] = body.rows;
    expect(longTaper.values.massKg).toBeGreaterThan(relay.values.massKg);
  });

  test('a variant that only repeats the record costs what the estimate of the record costs', async () => {
    const estimate = (await service.post('/v1/estimates', record)).body.estimate;
    const { body } = await weighed([{ code: 'as-it-stands' }]);
    const { net, overhead, profit } = estimate.totals as Record<string, { readonly amount: string }>;
    const cents = [net, overhead, profit].map(({ amount }) => BigInt(amount.replace('.', '')));
    const { amount, currency } = body.rows[0].values.cost as { readonly amount: string; currency: string };
    expect(currency).toBe(body.currency);
    expect(BigInt(amount.replace('.', ''))).toBe(cents.reduce((sum, part) => sum + part));
  });

  test('injection into wet, rotten core is refused by its rule beside what can be done', async () => {
    const plug = { readings: [{ kind: 'plug', at: [1000, 0], condition: 'rotten' }] };
    const { status, body } = await weighed([{ code: 'relay' }, { code: 'inject', inject: true }], {
      survey: plug,
    });
    expect(status).toBe(200);
    expect(body.rows).toHaveLength(1);
    expect(body.refused).toMatchObject([{ code: 'inject', rule: 'injection-on-rot' }]);
  });

  test('injection of a small dry debonding is priced beside opening it, with what it rests on', async () => {
    const dry = {
      panel: {
        outline: [
          [0, 0],
          [2000, 0],
          [2000, 1000],
          [0, 1000],
        ],
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 2 },
      core: { thicknessMm: 12.7 },
      zones: [
        {
          id: 'Z',
          condition: 'dry-debonded',
          outline: [
            [700, 350],
            [1100, 350],
            [1100, 750],
            [700, 750],
          ],
        },
      ],
      fittings: [],
      survey: { readings: [{ kind: 'plug', at: [900, 500], condition: 'debonded-dry' }] },
    };
    const { status, body } = await service.post('/v1/estimating/variants', {
      record: { ...dry, pricing: { samples: 1000 } },
      variants: [
        { code: 're-bed', method: { skin: 're-bed' } },
        { code: 'inject', inject: true },
      ],
    });
    expect([status, body.refused]).toEqual([200, []]);
    const [opened, injected] = body.rows;
    expect(Number(injected.values.cost.amount)).toBeLessThan(Number(opened.values.cost.amount));
    expect(opened.dominatedBy).toContain('inject');
    expect(injected.note).toContain('ends the injection');
  });

  test('faults of the record and of each variant are all named where they stand', async () => {
    const { status, body } = await weighed(
      [{ code: 'Relay' }, { code: 'b', method: { press: 'magic' }, colour: 'red' }],
      { core: { thicknessMm: '1/2 kg' } },
    );
    expect(status).toBe(422);
    expect(
      body.errors.map(({ pointer, code }: { pointer: string; code: string }) => `${pointer} ${code}`).sort(),
    ).toEqual([
      '/record/core/thicknessMm wrong-unit',
      '/variants/0/code not-in-form',
      '/variants/1/colour unknown-field',
      '/variants/1/method/press not-one-of',
    ]);
  });

  test('a core that the catalogue does not hold, one code twice, no variant and thirteen are refused', async () => {
    const faults = async (variants: unknown): Promise<unknown> =>
      (await weighed(variants)).body.errors.map(({ pointer, code }: { pointer: string; code: string }) => [
        pointer,
        code,
      ]);
    expect(await faults([{ code: 'a' }, { code: 'b', method: { core: 'core-of-cheese' } }])).toEqual([
      ['/variants/1/method/core', 'unknown-code'],
    ]);
    expect(await faults([{ code: 'a' }, { code: 'a', method: { skin: 'relay' } }])).toEqual([
      ['/variants/1/code', 'duplicate'],
    ]);
    expect(await faults([])).toEqual([['/variants', 'too-few']]);
    expect(await faults(Array.from({ length: 13 }, (_, index) => ({ code: `v${index}` })))).toEqual([
      ['/variants', 'too-many'],
    ]);
  });
});
