import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { startService, type TestService } from './service.js';

interface Pack {
  readonly sku: string;
  readonly name: string;
  readonly supplier: string;
  readonly prices: readonly { readonly price: string }[];
}

const patchType = { 'content-type': 'application/merge-patch+json' };

describe('prices of a draft, changed and tried before they are published', () => {
  let service: TestService;
  let list = '';
  let packs: readonly Pack[] = [];
  beforeAll(async () => {
    service = await startService();
    await service.post('/v1/editions', { code: 'autumn' });
    const made = await service.post('/v1/estimates', { ...leastRecord, reference: 'JOB-1' });
    const { priceList } = made.body.estimate.provenance as { priceList?: string };
    const lists = (await service.get('/v1/price-lists?edition=autumn')).body.items as readonly {
      readonly code: string;
      readonly currency: string;
      readonly packs: readonly Pack[];
    }[];
    const { currency } = made.body.estimate.totals as { currency: string };
    const used =
      lists.find(({ code }) => code === priceList) ?? lists.find((one) => one.currency === currency);
    list = used?.code ?? '';
    packs = used?.packs ?? [];
  });
  afterAll(async () => {
    await service.stop();
  });

  const matching = async (at: string): Promise<Record<string, string>> => ({
    'if-match': (await service.get(at)).headers.get('etag') ?? '',
  });

  test('one pack is read, changed, put and taken out by its own address', async () => {
    const [first] = packs;
    const at = `/v1/price-lists/${list}/packs/${encodeURIComponent(first.sku)}?edition=autumn`;
    const read = await service.get(at);
    expect(read.body).toEqual(first);
    const tag = { 'if-match': read.headers.get('etag') ?? '' };
    const patch = await service.send('PATCH', at, { stock: 7 }, { ...patchType, ...tag });
    expect([patch.status, patch.body]).toEqual([200, { ...first, stock: 7 }]);
    expect((await service.send('PATCH', at, { stock: 8 }, { ...patchType, ...tag })).status).toBe(412);
    const now = await matching(at);
    const wrong = await service.send('PATCH', at, { massKg: 'heavy', price: '1' }, { ...patchType, ...now });
    expect(wrong.body.errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
      '/massKg',
      '/price',
    ]);
    const renamed = await service.send('PATCH', at, { sku: 'another' }, { ...patchType, ...now });
    expect([renamed.status, renamed.body.errors[0].pointer]).toEqual([422, '/sku']);
    const added = `/v1/price-lists/${list}/packs/ADDED%2F1?edition=autumn`;
    expect((await service.get(added)).status).toBe(404);
    const put = await service.send('PUT', added, { ...first, sku: 'ADDED/1' }, now);
    expect([put.status, put.body.sku]).toEqual([200, 'ADDED/1']);
    expect((await service.send('DELETE', added, undefined, await matching(added))).status).toBe(204);
    expect((await service.get(added)).status).toBe(404);
  });

  test('a draft with dearer prices is tried on what is kept: money and quantities, and nothing is stored', async () => {
    await service.post('/v1/editions', { code: 'dearer' });
    const at = `/v1/price-lists/${list}`;
    const shelf = `${at}?edition=dearer`;
    const same = await service.post('/v1/editions/dearer/trial', {});
    expect(same.body).toMatchObject({ edition: 'dearer', sameCount: 1 });
    expect(same.body.totals[0].difference.amount).toMatch(/^0(\.00)?$/);
    const change = await service.post(
      `${at}/price-changes?edition=dearer`,
      { percent: '100' },
      await matching(shelf),
    );
    expect(change.status).toBe(200);
    expect(change.body.chosenCount).toBe(packs.length);
    expect(change.body.changed).toHaveLength(packs.length);
    for (const { before, after } of change.body.changed as readonly Record<'before' | 'after', string[]>[])
      expect(after.map(Number)).toEqual(before.map((price) => expect.closeTo(2 * Number(price), 2)));

    const trial = await service.post('/v1/editions/dearer/trial', { newest: 1 });
    const [one] = trial.body.estimates;
    expect(one).toMatchObject({ reference: 'JOB-1', refusedBecause: [] });
    expect(one.before).toEqual(one.keptNet);
    expect(Number(one.difference.amount)).toBeGreaterThan(0);
    expect(one.lines.length).toBeGreaterThan(0);
    expect(trial.body.totals).toEqual([
      {
        currency: one.before.currency,
        estimateCount: 1,
        before: one.before,
        after: one.after,
        difference: one.difference,
      },
    ]);
    expect((await service.get('/v1/estimates')).body.items).toHaveLength(1);

    // What the trial said is what an estimate comes to once the draft is published.
    const publish = await service.send(
      'POST',
      '/v1/editions/dearer/publication',
      undefined,
      await matching('/v1/editions/dearer'),
    );
    expect(publish.status).toBe(200);
    const made = await service.post('/v1/estimates', leastRecord);
    const again = await service.get(
      `/v1/estimates/${made.body.id as string}/comparison?with=${one.id as string}`,
    );
    expect(again.body.difference).toEqual(one.difference);
  });

  test('a trial says what an edition cannot answer, and refuses an edition that does not hold together', async () => {
    await service.post('/v1/editions', { code: 'poorer' });
    const cores = (await service.get('/v1/materials?edition=poorer&kind=core')).body.items as readonly {
      readonly code: string;
    }[];
    for (const { code } of cores)
      await service.send('DELETE', `/v1/materials/${code}?edition=poorer`, undefined, { 'if-match': '*' });
    const trial = await service.post('/v1/editions/poorer/trial', { newest: 1 });
    expect([trial.status, trial.body.detail]).toEqual([422, expect.stringMatching(/does not hold together/)]);
    await service.post('/v1/editions', { code: 'unpriced' });
    await service.send('DELETE', `/v1/price-lists/${list}?edition=unpriced`, undefined, { 'if-match': '*' });
    const unpriced = await service.post('/v1/editions/unpriced/trial', { newest: 1 });
    expect(unpriced.body.estimates[0].refusedBecause[0]).toMatch(/^With the edition tried: /);
    expect(unpriced.body.totals).toEqual([]);
    const both = await service.post('/v1/editions/autumn/trial', { newest: 1, estimates: ['x'] });
    expect([both.status, both.body.errors[0].pointer]).toEqual([422, '/newest']);
    const unknown = await service.post('/v1/editions/autumn/trial', {
      estimates: ['00000000-0000-7000-8000-000000000000'],
    });
    expect([unknown.status, unknown.body.errors[0].pointer]).toEqual([422, '/estimates/0']);
    expect((await service.post('/v1/editions/nobodys/trial', {})).status).toBe(404);
  });

  test('who may not read estimates is told no title and no reference', async () => {
    const key = await service.post('/v1/keys', { name: 'Prices', roles: ['catalogue-admin'] });
    const trial = await service.post(
      '/v1/editions/autumn/trial',
      {},
      { authorization: `Bearer ${key.body.key as string}` },
    );
    expect(trial.status).toBe(200);
    expect(trial.text).not.toMatch(/JOB-1|"title":"Deck/);
    expect(Object.keys(trial.body.estimates[0] as object)).not.toContain('reference');
  });
});
