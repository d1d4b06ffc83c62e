import { randomBytes } from 'node:crypto';
import { createServer, type IncomingHttpHeaders, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { Webhook } from 'standardwebhooks';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { Kingplank } from '../../libs/sdk/src/index.js';
import { startService, TEST_KEY, type TestService } from './service.js';

interface Received {
  readonly path: string;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** A receiver that keeps what it is sent, and answers a path with the statuses that stand there, the last one for good. */
class Receiver {
  readonly received: Received[] = [];
  readonly statuses: Record<string, number[]> = {};
  private server: Server | undefined;
  url = '';

  async open(): Promise<void> {
    this.server = createServer((request, response) => {
      let body = '';
      request.on('data', (part: Buffer) => (body += part.toString('utf8')));
      request.on('end', () => {
        const path = request.url ?? '';
        this.received.push({ path, headers: request.headers, body });
        const [status = 204, ...rest] = this.statuses[path] ?? [];
        if (rest.length > 0) this.statuses[path] = rest;
        response.writeHead(status, status === 302 ? { location: '/redirected' } : {}).end();
      });
    });
    await new Promise<void>((resolve) => this.server?.listen(0, '127.0.0.1', resolve));
    this.url = `http://127.0.0.1:${(this.server.address() as AddressInfo).port}`;
  }

  close(): void {
    this.server?.closeAllConnections();
    this.server?.close();
  }

  at = (path: string): readonly Received[] => this.received.filter((one) => one.path === path);

  async waitFor(path: string, count: number): Promise<readonly Received[]> {
    const until = Date.now() + 40_000;
    while (this.at(path).length < count && Date.now() < until)
      await new Promise((resolve) => setTimeout(resolve, 100));
    expect(this.at(path).length).toBeGreaterThanOrEqual(count);
    return this.at(path);
  }
}

/** As a receiver of any make would read a delivery. */
const verified = (secret: string, { body, headers }: Received): unknown =>
  new Webhook(secret).verify(body, {
    'webhook-id': String(headers['webhook-id']),
    'webhook-timestamp': String(headers['webhook-timestamp']),
    'webhook-signature': String(headers['webhook-signature']),
  });

describe('what happened is told', () => {
  let service: TestService;
  let client: Kingplank;
  const receiver = new Receiver();
  beforeAll(async () => {
    await receiver.open();
    service = await startService({
      WEBHOOK_LOCAL_TARGETS: 'yes',
      WEBHOOK_SECRETS_KEYS: randomBytes(32).toString('base64'),
    });
    client = new Kingplank({ baseUrl: service.url, apiKey: TEST_KEY });
  });
  afterAll(async () => {
    receiver.close();
    await service.stop();
  });

  const endpoint = async (path: string, types: readonly string[]) => {
    const { status, body } = await service.post('/v1/webhook-endpoints', { url: receiver.url + path, types });
    expect(status).toBe(201);
    return body as { readonly id: string; readonly secret: string };
  };

  test('an estimate and its revision reach the endpoint that asked, signed so that anybody can verify', async () => {
    const { secret } = await endpoint('/shop', ['estimate.created', 'estimate.revised']);
    const made = await service.post('/v1/estimates', { ...leastRecord, reference: 'JOB-7' });
    const id = String(made.body.id);
    await service.post(`/v1/estimates/${id}/revisions`, { reason: 'Opened', record: leastRecord });
    // Which of two comes first is nobody's promise.
    const told = await receiver.waitFor('/shop', 2);
    const [created, revised] = ['estimate.created', 'estimate.revised'].map((type) => {
      const found = told.find(({ body }) => (JSON.parse(body) as { readonly type: string }).type === type);
      if (found === undefined) throw new Error(`nothing of ${type} was told`);
      return found;
    });
    expect(verified(secret, created)).toMatchObject({
      id: created.headers['webhook-id'],
      type: 'estimate.created',
      data: { id, reference: 'JOB-7', href: `/v1/estimates/${id}` },
    });
    expect(created.body.length).toBeLessThan(1000);
    const event = await client.webhooks
      .unwrap(revised.body, created.headers, { secrets: [secret] })
      .catch(() => undefined);
    // A body under another delivery's headers is not believed; under its own it is.
    expect(event).toBeUndefined();
    const trusted = await client.webhooks.unwrap(revised.body, revised.headers, { secrets: [secret] });
    expect(trusted).toMatchObject({ type: 'estimate.revised', data: { rootId: id, revisionNumber: 1 } });
    expect(() => verified(secret, { ...created, body: created.body.replace('JOB-7', 'JOB-8') })).toThrow();
  });

  test('an estimate that was refused is told to nobody, and the feed tells what was done, from where one stopped', async () => {
    const { body: before } = await service.get('/v1/events?limit=1&types=estimate.created');
    expect(before.items).toHaveLength(1);
    expect((await service.post('/v1/estimates', { zones: [] })).status).toBe(422);
    const { body: rest } = await service.get(`/v1/events?cursor=${String(before.nextCursor)}`);
    expect(rest.items.map(({ type }: { type: string }) => type)).toEqual(['estimate.revised']);
    const { body: none } = await service.get(`/v1/events?cursor=${String(rest.nextCursor)}`);
    expect(none).toEqual({ items: [] });
    expect((await service.get('/v1/events?cursor=here')).status).toBe(400);
    const types: string[] = [];
    for await (const event of client.events.list({ limit: 1 })) types.push(event.type);
    expect(types).toEqual(['estimate.created', 'estimate.revised']);
  });

  test('an edition, an operation and an order are told as well', async () => {
    const { secret } = await endpoint('/all', ['edition.published', 'operation.done', 'order.made']);
    await service.post('/v1/editions', { code: 'told' });
    const tag = (await service.get('/v1/editions/told')).headers.get('etag') ?? '';
    await service.send('POST', '/v1/editions/told/publication', undefined, { 'if-match': tag });
    const [first] = await receiver.waitFor('/all', 1);
    expect(verified(secret, first)).toMatchObject({
      type: 'edition.published',
      data: { code: 'told', href: '/v1/editions/told' },
    });
    const id = String((await service.get('/v1/estimates?limit=1')).body.items[0].id);
    const accepted = await service.get(`/v1/estimates/${id}`, {
      accept: 'application/pdf',
      prefer: 'respond-async',
    });
    const [, second] = await receiver.waitFor('/all', 2);
    expect(verified(secret, second)).toMatchObject({
      type: 'operation.done',
      data: { id: accepted.body.id, status: 'done' },
    });
    const { body: basket } = await service.post(`/v1/estimates/${id}/basket`, {});
    const [{ supplier }] = basket.orders as readonly { readonly supplier: string }[];
    await service.post(`/v1/estimates/${id}/basket`, { supplier }, { accept: 'application/xml' });
    const [, , third] = await receiver.waitFor('/all', 3);
    expect(verified(secret, third)).toMatchObject({
      type: 'order.made',
      data: { estimateIds: [id], supplier },
    });
  });

  test('what fails is tried again and shown, a redirect is a failure that nobody follows, and any delivery can be repeated', async () => {
    receiver.statuses['/flaky'] = [500, 204];
    receiver.statuses['/moved'] = [302];
    const flaky = await endpoint('/flaky', ['estimate.created']);
    const moved = await endpoint('/moved', ['estimate.created']);
    await service.post('/v1/estimates', leastRecord);
    const tries = await receiver.waitFor('/flaky', 2);
    expect(new Set(tries.map(({ headers }) => headers['webhook-id'])).size).toBe(1);
    const deliveries = async (id: string) =>
      (await service.get(`/v1/webhook-endpoints/${id}/deliveries`)).body.items as readonly Record<
        string,
        unknown
      >[];
    const settled = async (id: string, status: string) => {
      const until = Date.now() + 20_000;
      while (Date.now() < until && (await deliveries(id))[0].status !== status)
        await new Promise((resolve) => setTimeout(resolve, 200));
      return (await deliveries(id))[0];
    };
    expect(await settled(flaky.id, 'delivered')).toMatchObject({ attempts: 2, lastStatus: 204 });
    await receiver.waitFor('/moved', 1);
    expect(await settled(moved.id, 'waiting')).toMatchObject({ lastStatus: 302, type: 'estimate.created' });
    expect(receiver.at('/redirected')).toEqual([]);
    const eventId = String(tries[0].headers['webhook-id']);
    const again = await service.post(
      `/v1/webhook-endpoints/${flaky.id}/deliveries/${eventId}/repetition`,
      undefined,
    );
    expect([again.status, again.body.status, again.body.attempts]).toEqual([200, 'waiting', 0]);
    const repeated = (await receiver.waitFor('/flaky', 3))[2];
    expect([repeated.headers['webhook-id'], repeated.body]).toEqual([eventId, tries[0].body]);
  });

  test('an endpoint that is gone is asked no more', async () => {
    receiver.statuses['/gone'] = [410];
    const gone = await endpoint('/gone', ['estimate.created']);
    await service.post('/v1/estimates', leastRecord);
    await receiver.waitFor('/gone', 1);
    const until = Date.now() + 10_000;
    const shown = async () =>
      (await service.get(`/v1/webhook-endpoints/${gone.id}`)).body.disabledBecause as unknown;
    while (Date.now() < until && (await shown()) === undefined)
      await new Promise((resolve) => setTimeout(resolve, 100));
    expect(await shown()).toMatch(/410/);
    await service.post('/v1/estimates', leastRecord);
    await receiver.waitFor('/shop', 5);
    expect(receiver.at('/gone')).toHaveLength(1);
  });

  test('while a secret is replaced both verify, and afterwards the new one alone', async () => {
    const { id, secret: old } = await endpoint('/rolled', ['estimate.created']);
    const renew = async (overlapHours: number) =>
      String(
        (await service.post(`/v1/webhook-endpoints/${id}/secret-renewal`, { overlapHours })).body.secret,
      );
    const fresh = await renew(1);
    await service.post('/v1/estimates', leastRecord);
    const [both] = await receiver.waitFor('/rolled', 1);
    for (const secret of [old, fresh])
      expect(verified(secret, both)).toMatchObject({ type: 'estimate.created' });
    const last = await renew(0);
    await service.post('/v1/estimates', leastRecord);
    const [, alone] = await receiver.waitFor('/rolled', 2);
    expect(verified(last, alone)).toMatchObject({ type: 'estimate.created' });
    for (const secret of [old, fresh]) expect(() => verified(secret, alone)).toThrow();
    const shown = await service.get(`/v1/webhook-endpoints/${id}`);
    expect(shown.text).not.toContain('whsec_');
    const match = { 'if-match': shown.headers.get('etag') ?? '' };
    expect((await service.send('DELETE', `/v1/webhook-endpoints/${id}`, undefined, match)).status).toBe(204);
  });

  test('another organisation reads none of it, and its endpoints hear none of it', async () => {
    const other = await service.post('/v1/organisations', { name: 'Another yard' });
    const theirs = { authorization: `Bearer ${String(other.body.adminKey.key)}` };
    expect((await service.get('/v1/events', theirs)).body).toEqual({ items: [] });
    expect((await service.get('/v1/webhook-endpoints', theirs)).body).toEqual({ items: [] });
    const made = await service.post(
      '/v1/webhook-endpoints',
      { url: `${receiver.url}/theirs`, types: ['estimate.created'] },
      theirs,
    );
    expect((await service.get(`/v1/webhook-endpoints/${String(made.body.id)}`)).status).toBe(404);
    await service.post('/v1/estimates', leastRecord);
    await receiver.waitFor('/rolled', 2);
    expect(receiver.at('/theirs')).toEqual([]);
  });

  test('an address or a type that is none is refused with what would be right', async () => {
    const refused = await service.post('/v1/webhook-endpoints', {
      url: 'gopher://x',
      types: ['estimate.made'],
    });
    expect([refused.status, refused.body.errors[0].pointer]).toEqual([422, '/types/0']);
    const strange = await service.post('/v1/webhook-endpoints', { url: 'gopher://x', types: ['order.made'] });
    expect([strange.status, strange.body.errors[0].pointer]).toEqual([422, '/url']);
  });
});
