import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const sample = (name: string) =>
  JSON.parse(
    readFileSync(path.join(import.meta.dirname, '../../apps/workshop/samples', `${name}.json`), 'utf8'),
  ) as Record<string, unknown>;
const foredeck = sample('foredeck');

describe('the main job', () => {
  let service: TestService;
  let made: Awaited<ReturnType<TestService['post']>>;
  beforeAll(async () => {
    service = await startService();
    made = await service.post('/v1/estimates', foredeck);
  });
  afterAll(async () => {
    await service.stop();
  });

  test('a defect record becomes a stored, priced estimate that is read back to the byte', async () => {
    expect(made.status).toBe(201);
    expect(made.body.estimate.totals.total.amount).toMatch(/^\d+\.\d\d$/);
    expect(made.headers.get('location')).toBe(`/v1/estimates/${made.body.id}`);
    const read = await service.get(`/v1/estimates/${made.body.id}`);
    expect(read.status).toBe(200);
    expect(read.text).toBe(made.text);
    expect(read.headers.get('etag')).toBe(made.headers.get('etag'));
  });

  test('whoever has it already is told that nothing changed', async () => {
    const answer = await service.get(`/v1/estimates/${made.body.id}`, {
      'if-none-match': made.headers.get('etag') ?? '',
    });
    expect(answer.status).toBe(304);
    expect(answer.text).toBe('');
  });

  test('the record it was made from is kept, with text quantities read to numbers', async () => {
    const { body } = await service.get(`/v1/estimates/${made.body.id}/record`);
    expect(body.core.thicknessMm).toBe(12.7);
    expect(body.panel.outline).toEqual((foredeck.panel as { outline: unknown }).outline);
  });

  test('the lines add up to the sections and the sections to the net sum, to the cent', () => {
    const { lines, sections, totals } = made.body.estimate as {
      lines: { section: string; amount: { amount: string } }[];
      sections: { code: string; amount: { amount: string } }[];
      totals: { net: { amount: string } };
    };
    const cents = (amount: string): number => Math.round(Number(amount) * 100);
    const total = (amounts: readonly string[]): number =>
      amounts.reduce((sum, amount) => sum + cents(amount), 0);
    for (const section of sections) {
      expect([
        section.code,
        total(lines.filter((line) => line.section === section.code).map((line) => line.amount.amount)),
      ]).toEqual([section.code, cents(section.amount.amount)]);
    }
    expect(total(sections.map((section) => section.amount.amount))).toBe(cents(totals.net.amount));
  });

  test('the price, its range and the price with contingency stand on one footing: with tax', () => {
    const { totals } = made.body.estimate;
    const cents = ({ amount }: { amount: string }): number => Math.round(Number(amount) * 100);
    // The contingency takes the price to P80, so that both together and P80 of the range are one amount.
    expect(Math.abs(cents(totals.totalWithContingency) - cents(totals.range.p80))).toBeLessThanOrEqual(2);
    expect(totals.shareWithin).toBeGreaterThan(0.4);
    expect(totals.shareWithin).toBeLessThan(0.62);
  });

  test('every line answers why, down to what was entered, looked up or assumed', async () => {
    const [line] = made.body.estimate.lines as readonly { code: string }[];
    const { status, body } = await service.get(
      `/v1/estimates/${made.body.id}/lines/${encodeURIComponent(line.code)}/why`,
    );
    expect(status).toBe(200);
    expect(body.figure.origin.kind).toBe('computed');
    expect((await service.get(`/v1/estimates/${made.body.id}/lines/no-such-line/why`)).status).toBe(404);
  });

  test('it comes as CSV, HTML and PDF by Accept', async () => {
    const at = `/v1/estimates/${made.body.id}`;
    const csv = await service.get(at, { accept: 'text/csv' });
    expect(csv.headers.get('content-type')).toMatch(/^text\/csv/);
    expect(csv.text.trim().split('\r\n')).toHaveLength(made.body.estimate.lines.length + 1);
    const html = await service.get(at, { accept: 'text/html' });
    expect(html.text).toMatch(/^<!doctype html>/i);
    const pdf = await service.get(at, { accept: 'application/pdf' });
    expect(pdf.text.slice(0, 5)).toBe('%PDF-');
    expect((await service.get(at, { accept: 'image/gif' })).status).toBe(406);
  });

  test('its drawings are listed and drawn as SVG', async () => {
    const {
      body: { items },
    } = await service.get(`/v1/estimates/${made.body.id}/drawings`);
    expect(items.length).toBeGreaterThan(0);
    const drawing = await service.get(items[0].href);
    expect(drawing.headers.get('content-type')).toMatch(/^image\/svg\+xml/);
    expect(drawing.text).toContain('<svg');
    expect((await service.get(`/v1/estimates/${made.body.id}/drawings/nothing`)).status).toBe(404);
  });

  test('its pieces and sheets go out as DXF for a cutting machine, other drawings do not', async () => {
    const at = `/v1/estimates/${made.body.id}/drawings`;
    const { pieces, sheets } = made.body.estimate.core;
    const [piecesFile, sheetsFile] = await Promise.all(
      ['piece-plan', 'sheet-layout'].map((name) => service.get(`${at}/${name}`, { accept: 'image/vnd.dxf' })),
    );
    expect(piecesFile.headers.get('content-type')).toMatch(/^image\/vnd\.dxf/);
    expect(piecesFile.text.match(/LWPOLYLINE/g)).toHaveLength(pieces.length);
    for (const { label } of [...pieces, ...sheets])
      expect(piecesFile.text + sheetsFile.text).toContain(label);
    expect(sheetsFile.text).toContain('sheet edge');
    expect((await service.get(`${at}/section`, { accept: 'image/vnd.dxf' })).status).toBe(404);
  });

  test('it comes out again to the last digit when it is replayed', async () => {
    const { body } = await service.get(`/v1/estimates/${made.body.id}/replay`);
    expect(body).toMatchObject({ isSame: true, isSameCatalogue: true, totalThen: body.totalNow });
  });

  test('its basket covers every need in whole packs, and goes out as CSV and as an order', async () => {
    const at = `/v1/estimates/${made.body.id}/basket`;
    const { status, body } = await service.get(at);
    expect([status, body.isComplete, body.missing]).toEqual([200, true, []]);
    expect(body.coverage.every((one: { short: number }) => one.short === 0)).toBe(true);
    const [{ supplier }] = body.orders as readonly { supplier: string }[];
    expect((await service.get(at, { accept: 'text/csv' })).text).toContain('packCount');
    expect((await service.get(`${at}?supplier=${supplier}`, { accept: 'application/xml' })).text).toContain(
      'urn:oasis:names:specification:ubl:schema:xsd:Order-2',
    );
    const collected = await service.post(at, { options: { transport: 'collect', suppliers: [supplier] } });
    expect(collected.status).toBe(200);
    expect(collected.body.orders.map((order: { supplier: string }) => order.supplier)).toEqual([supplier]);
  });

  test("at today's prices it says line by line what has changed since it was made", async () => {
    const at = `/v1/estimates/${made.body.id}/basket`;
    const before = (await service.get(at)).body;
    const { current } = (await service.get('/v1/editions')).body;
    expect([before.pricedAt, before.drift]).toEqual([current, []]);
    const list = made.body.estimate.provenance.priceList as string;
    await service.post('/v1/editions', { code: 'dearer', note: 'Every pack a tenth dearer' });
    const listAt = `/v1/price-lists/${list}?edition=dearer`;
    const { body: sold, headers } = await service.get(listAt);
    const tenthMore = (price: string): string => ((Math.round(Number(price) * 100) * 11) / 1000).toFixed(2);
    const packs = sold.packs.map((pack: { prices: readonly { fromPacks: number; price: string }[] }) => ({
      ...pack,
      prices: pack.prices.map(({ fromPacks, price }) => ({ fromPacks, price: tenthMore(price) })),
    }));
    const patched = await service.send(
      'PATCH',
      listAt,
      { packs },
      {
        'if-match': headers.get('etag') ?? '',
        'content-type': 'application/merge-patch+json',
      },
    );
    expect(patched.status).toBe(200);
    const draft = await service.get('/v1/editions/dearer');
    const match = { 'if-match': draft.headers.get('etag') ?? '' };
    expect((await service.send('POST', '/v1/editions/dearer/publication', undefined, match)).status).toBe(
      200,
    );
    const { body: now } = await service.get(`${at}?pricedAt=current`);
    expect([now.pricedAt, now.drift.length, now.drift[0].gone]).toEqual(['dearer', 1, []]);
    const bought = (made.body.estimate.lines as readonly { packs: readonly object[] }[]).flatMap(
      ({ packs: own }) => own,
    );
    expect(now.drift[0].lines).toHaveLength(bought.length);
    const rise = Number(now.drift[0].now.amount) / Number(now.drift[0].then.amount);
    expect(Math.abs(rise - 1.1)).toBeLessThan(0.001);
    expect((await service.get(at)).body.total).toEqual(before.total);
    expect((await service.get(`${at}?pricedAt=nowhere`)).status).toBe(404);
  });

  test('several estimates are bought for in one order, pooled before packs are chosen, and each is told its share', async () => {
    const at = `/v1/estimates/${made.body.id}/basket`;
    const other = await service.post('/v1/estimates', sample('side-deck'));
    const options = { secondBest: false };
    const alone = [
      await service.post(at, { options }),
      await service.post(`/v1/estimates/${other.body.id}/basket`, {
        options,
        priceList: made.body.estimate.provenance.priceList,
      }),
    ];
    const { status, body } = await service.post(at, { options, together: [other.body.id] });
    expect([status, body.isComplete]).toEqual([200, true]);
    const cents = (amount: { amount: string }): number => Math.round(Number(amount.amount) * 100);
    expect(body.byEstimate.map(({ estimate }: { estimate: string }) => estimate).sort()).toEqual(
      [made.body.id, other.body.id].sort(),
    );
    expect(
      body.byEstimate.reduce(
        (sum: number, { amount }: { amount: { amount: string } }) => sum + cents(amount),
        0,
      ),
    ).toBe(cents(body.total));
    expect(cents(body.total)).toBeLessThan(alone.reduce((sum, one) => sum + cents(one.body.total), 0));
    // Whichever is named first, it is the same order.
    const turned = await service.post(`/v1/estimates/${other.body.id}/basket`, {
      options,
      together: [made.body.id],
    });
    expect(turned.text).toBe((await service.post(at, { options, together: [other.body.id] })).text);
    const asCsv = await service.post(at, { options, together: [other.body.id] }, { accept: 'text/csv' });
    expect(asCsv.text.split('\n').length).toBeGreaterThan(body.lines.length);
    const [{ supplier }] = body.orders as readonly { supplier: string }[];
    const asOrder = await service.post(
      at,
      { options, together: [other.body.id], supplier },
      { accept: 'application/xml' },
    );
    expect(asOrder.text).toContain('urn:oasis:names:specification:ubl:schema:xsd:Order-2');
    const nobody = '00000000-0000-7000-8000-000000000000';
    const refused = await service.post(at, { together: [nobody, made.body.id, 'x'] });
    expect(refused.status).toBe(422);
    expect(
      refused.body.errors.map(({ pointer, code }: { pointer: string; code: string }) => `${pointer} ${code}`),
    ).toEqual(['/together/0 not-in-form', '/together/1 duplicate', '/together/2 not-in-form']);
  });

  test('it goes out as a quotation whose lines, charges and taxes make its total', async () => {
    const { status, text, headers } = await service.get(
      `/v1/estimates/${made.body.id}?customer=An%20invented%20owner&validUntil=2027-01-31`,
      { accept: 'application/xml' },
    );
    expect([status, headers.get('content-type')?.split(';')[0]]).toEqual([200, 'application/xml']);
    expect(text).toContain('urn:oasis:names:specification:ubl:schema:xsd:Quotation-2');
    expect(text).toContain('<cbc:Name>An invented owner</cbc:Name>');
    expect(text).toContain('<cbc:EndDate>2027-01-31</cbc:EndDate>');
    const amounts = (element: string): readonly number[] =>
      [...text.matchAll(new RegExp(`<cbc:${element} currencyID="[A-Z]{3}">([^<]+)<`, 'g'))].map((found) =>
        Math.round(Number(found[1]) * 100),
      );
    const { totals, lines } = made.body.estimate;
    const cents = ({ amount }: { amount: string }): number => Math.round(Number(amount) * 100);
    expect(text.match(/<cac:QuotationLine>/g)).toHaveLength(lines.length);
    expect(amounts('PayableAmount')).toEqual([cents(totals.total)]);
    expect(amounts('TaxableAmount').reduce((sum, one) => sum + one, 0)).toBe(
      amounts('TaxExclusiveAmount')[0],
    );
    expect(amounts('Amount').reduce((sum, one) => sum + one, 0)).toBe(
      cents(totals.overhead) +
        cents(totals.profit) +
        cents(totals.growth.amount) +
        cents(totals.newAreas.amount),
    );
    expect(
      (await service.get(`/v1/estimates/${made.body.id}?validUntil=soon`, { accept: 'application/xml' })).body
        .errors[0],
    ).toMatchObject({ parameter: 'validUntil' });
  });

  test('the change order of a second revision starts from the sum agreed first, and is printed for signing', async () => {
    const widened = (factor: number) =>
      (foredeck.zones as { outline: [number, number][] }[]).map((zone) => ({
        ...zone,
        outline: zone.outline.map(([x, y]) => [x, y * factor]),
      }));
    const first = await service.post('/v1/estimates', foredeck);
    const second = await service.post(`/v1/estimates/${first.body.id}/revisions`, {
      reason: 'Opened: wider to both sides',
      record: { ...foredeck, zones: widened(1.15) },
    });
    const third = await service.post(`/v1/estimates/${first.body.id}/revisions`, {
      reason: 'Wider still at the aft edge',
      record: { ...foredeck, zones: widened(1.3) },
    });
    const at = `/v1/estimates/${third.body.id}/change-order`;
    const { status, body } = await service.get(at);
    expect(status).toBe(200);
    expect(body.title).toContain('Change order 2 to ');
    expect(body.reason).toBe('Wider still at the aft edge');
    const cents = (amount: string): number => Math.round(Number(amount) * 100);
    const net = ({
      body: {
        estimate: { totals },
      },
    }: typeof first): number => cents(totals.total.amount) - cents(totals.tax.amount);
    expect(
      body.sums.slice(0, 4).map(({ amount }: { amount: { amount: string } }) => cents(amount.amount)),
    ).toEqual([net(first), net(second) - net(first), net(third) - net(second), net(third)]);
    expect(body.additions.length).toBeGreaterThan(0);
    const rates = first.body.estimate.totals.offer.unitRates;
    const opened = body.byRates.items.find(({ code }: { code: string }) => code === 'opened-m2');
    expect(opened.rate).toEqual(rates.find(({ code }: { code: string }) => code === 'opened-m2').rate);
    expect(Number(opened.quantityFound)).toBeGreaterThan(Number(opened.quantityAgreed));
    expect(cents(body.byRates.difference.amount)).toBe(
      cents(body.byRates.measured.amount) + cents(body.byRates.provisionalCredited.amount),
    );
    const page = await service.get(at, { accept: 'text/html' });
    for (const said of [
      'Wider still at the aft edge',
      'For the yard',
      'For the owner',
      'Sum agreed first, without tax',
      'By the rates agreed with the first issue',
    ])
      expect(page.text).toContain(said);
    expect((await service.get(at, { accept: 'application/pdf' })).text.slice(0, 5)).toBe('%PDF-');
    expect((await service.get(`/v1/estimates/${first.body.id}/change-order`)).status).toBe(404);
  });

  test('a revision in another currency is compared in its figures alone, and has no change order', async () => {
    const first = await service.post('/v1/estimates', {
      ...foredeck,
      pricing: { priceList: 'invented-euro' },
    });
    const second = await service.post(`/v1/estimates/${first.body.id}/revisions`, {
      reason: 'Quoted abroad',
      record: { ...foredeck, pricing: { priceList: 'invented-dollar' } },
    });
    expect(second.status).toBe(201);
    for (const kind of ['comparison', 'change-order']) {
      expect((await service.get(`/v1/estimates/${second.body.id}/${kind}`)).body).toMatchObject({
        status: 422,
        errors: [{ code: 'other-currency' }],
      });
    }
    expect((await service.get(`/v1/estimates/${second.body.id}`, { accept: 'text/html' })).status).toBe(200);
  });

  test('the same Idempotency-Key and body give the same estimate, another body is refused', async () => {
    const headers = { 'idempotency-key': '"a-key-for-one-estimate"' };
    const first = await service.post('/v1/estimates', foredeck, headers);
    const again = await service.post('/v1/estimates', foredeck, {
      'idempotency-key': 'a-key-for-one-estimate',
    });
    expect(again.status).toBe(201);
    expect(again.text).toBe(first.text);
    expect(again.headers.get('idempotency-replayed')).toBe('true');
    const other = await service.post('/v1/estimates', { ...foredeck, title: 'Another' }, headers);
    expect(other.status).toBe(422);
    expect(other.body.errors[0].header).toBe('Idempotency-Key');
    expect((await service.post('/v1/estimates', foredeck, { 'idempotency-key': '"' })).status).toBe(400);
  });

  test('a key that is still at work is refused with 409, and one estimate comes of five requests', async () => {
    const before = (await service.get('/v1/estimates?limit=200')).body.items.length as number;
    const answers = await Promise.all(
      [1, 2, 3, 4, 5].map(() =>
        service.post('/v1/estimates', foredeck, { 'idempotency-key': 'five-at-once' }),
      ),
    );
    const statuses = answers.map(({ status }) => status);
    expect(statuses.every((status) => status === 201 || status === 409)).toBe(true);
    expect(statuses).toContain(201);
    expect(
      new Set(answers.filter(({ status }) => status === 201).map(({ body }) => body.id as string)).size,
    ).toBe(1);
    expect((await service.get('/v1/estimates?limit=200')).body.items).toHaveLength(before + 1);
  });

  test('a list is read page by page without gap or repetition', async () => {
    const seen: string[] = [];
    let next: string | undefined = '/v1/estimates?limit=2';
    while (next !== undefined) {
      const page: Awaited<ReturnType<TestService['get']>> = await service.get(next);
      seen.push(...page.body.items.map(({ id }: { id: string }) => id));
      next = /<([^>]+)>; rel="next"/.exec(page.headers.get('link') ?? '')?.[1];
    }
    const all = (await service.get('/v1/estimates?limit=200')).body.items.map(({ id }: { id: string }) => id);
    expect(seen).toEqual(all);
    expect([...seen].sort().reverse()).toEqual(seen);
    for (const query of ['limit=0', 'limit=1.5', 'cursor=nonsense', 'colour=red', 'limit=2&limit=3']) {
      expect([query, (await service.get(`/v1/estimates?${query}`)).status]).toEqual([query, 400]);
    }
  });

  test('a revision carries its reason, and the comparison says what changed', async () => {
    const zones = (foredeck.zones as { outline: [number, number][] }[]).map((zone) => ({
      ...zone,
      outline: zone.outline.map(([x, y]) => [x - (x - 1100) * -0.15, y * 1.15]),
    }));
    const revised = await service.post(`/v1/estimates/${made.body.id}/revisions`, {
      reason: 'The deck was opened',
      record: { ...foredeck, zones },
    });
    expect(revised.status).toBe(201);
    expect(revised.body.revision).toEqual({ rootId: made.body.id, number: 1, reason: 'The deck was opened' });
    const { body } = await service.get(`/v1/estimates/${revised.body.id}/comparison`);
    expect(body.figures.map(({ code }: { code: string }) => code)).toContain('openedAreaM2');
    const cents = (amount: string): number => Math.round(Number(amount) * 100);
    const gross = body.totals.find(({ code }: { code: string }) => code === 'gross');
    expect(cents(gross.after.amount) - cents(gross.before.amount)).toBe(cents(gross.difference.amount));
    expect(gross.before).toEqual(made.body.estimate.totals.total);
    const direct = body.totals.find(({ code }: { code: string }) => code === 'direct');
    expect(
      body.lines.reduce(
        (sum: number, line: { difference: { amount: string } }) => sum + cents(line.difference.amount),
        0,
      ),
    ).toBe(cents(direct.difference.amount));
    for (const line of body.lines)
      expect(cents(line.becauseOfQuantity.amount) + cents(line.becauseOfRate.amount)).toBe(
        cents(line.difference.amount),
      );
    expect(body.lines[0].because).toContain('The deck was opened');
    expect(
      (await service.get(`/v1/estimates/${revised.body.id}/comparison`, { accept: 'text/csv' })).text.split(
        '\r\n',
      ),
    ).toHaveLength(1 + body.lines.length + body.totals.length + 1);
    const list = await service.get(`/v1/estimates/${made.body.id}/revisions`);
    expect(list.body.items.map(({ revision }: { revision: { number: number } }) => revision.number)).toEqual([
      0, 1,
    ]);
    expect((await service.get(`/v1/estimates/${made.body.id}/comparison`)).status).toBe(404);
    expect(
      (await service.post(`/v1/estimates/${made.body.id}/revisions`, { reason: '', record: foredeck })).body
        .errors[0].pointer,
    ).toBe('/reason');
  });

  const panel = foredeck.panel as Record<string, unknown>;
  const wrong: readonly (readonly [string, unknown, string])[] = [
    [
      'an outline that crosses itself',
      {
        ...foredeck,
        panel: {
          ...panel,
          outline: [
            [0, 0],
            [1000, 1000],
            [1000, 0],
            [0, 1000],
          ],
        },
      },
      '/panel/outline',
    ],
    [
      'an outline without area',
      {
        ...foredeck,
        panel: {
          ...panel,
          outline: [
            [0, 0],
            [500, 0],
            [1000, 0],
          ],
        },
      },
      '/panel/outline',
    ],
    [
      'an outline of two points',
      {
        ...foredeck,
        panel: {
          ...panel,
          outline: [
            [0, 0],
            [500, 0],
          ],
        },
      },
      '/panel/outline',
    ],
    [
      'a zone outside the panel',
      {
        ...foredeck,
        zones: [
          {
            id: 'Z1',
            outline: [
              [9000, 0],
              [9500, 0],
              [9500, 500],
            ],
          },
        ],
      },
      '/zones/0/outline',
    ],
    ['a negative thickness', { ...foredeck, outerSkin: { thicknessMm: -3 } }, '/outerSkin/thicknessMm'],
    ['a skin half a metre thick', { ...foredeck, outerSkin: { thicknessMm: 500 } }, '/outerSkin/thicknessMm'],
    ['an unknown core', { ...foredeck, method: { core: 'core-of-cheese' } }, '/method/core'],
    ['a thickness in kilograms', { ...foredeck, core: { thicknessMm: '3 kg' } }, '/core/thicknessMm'],
    ['a decimal comma', { ...foredeck, core: { thicknessMm: '12,7' } }, '/core/thicknessMm'],
    [
      'a point of three numbers',
      {
        ...foredeck,
        panel: {
          ...panel,
          outline: [
            [0, 0],
            [1, 2, 3],
            [500, 500],
          ],
        },
      },
      '/panel/outline/1',
    ],
    ['null where a value is needed', { ...foredeck, innerSkin: null }, '/innerSkin'],
    ['a field nobody knows', { ...foredeck, panel: { ...panel, colour: 'white' } }, '/panel/colour'],
    [
      'a polygon of 5,000 corners',
      {
        ...foredeck,
        panel: {
          ...panel,
          outline: Array.from({ length: 5000 }, (_, i) => [
            Math.round(1000 * Math.cos(i)),
            Math.round(1000 * Math.sin(i)),
          ]),
        },
      },
      '/panel/outline',
    ],
    ['neither zones nor a survey', { ...foredeck, zones: undefined }, '/zones'],
  ];

  test.each(wrong)('%s is refused with its place', async (_, record, at) => {
    const answer = await service.post('/v1/estimates', record);
    expect(answer.status).toBe(422);
    expect(answer.body.errors.map(({ pointer }: { pointer: string }) => pointer)).toContain(at);
    expect((await service.get('/health/live')).status).toBe(200);
  });

  test('all faults are named at once', async () => {
    const answer = await service.post('/v1/estimates', {
      core: { thicknessMm: 'thick' },
      outerSkin: { thicknessMm: 0 },
      zones: [{ id: 'a b' }],
      crew: { people: 1.5 },
    });
    expect(answer.body.errors.map(({ pointer }: { pointer: string }) => pointer).sort()).toEqual([
      '/core/thicknessMm',
      '/crew/people',
      '/innerSkin',
      '/outerSkin/thicknessMm',
      '/panel',
      '/zones/0/id',
      '/zones/0/outline',
    ]);
  });

  test('ids that are none of ours are not found', async () => {
    for (const id of ['7', '01a21240-7ff6-7f97-95a8-08c8d0b62aa3', "'; DROP TABLE estimate; --"]) {
      expect((await service.get(`/v1/estimates/${encodeURIComponent(id)}`)).status).toBe(404);
    }
  });

  test('a stranger is asked for a key', async () => {
    for (const authorization of [
      '',
      'Bearer kp_nobody-has-this-key-nobody-has-this-key',
      'Basic dTpw',
      'Bearer',
    ]) {
      const answer = await service.get('/v1/estimates', { authorization });
      expect(answer.status).toBe(401);
      expect(answer.headers.get('www-authenticate')).toMatch(/^Bearer realm="kingplank"/);
    }
  });
});
