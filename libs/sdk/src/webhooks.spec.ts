import { expect, test } from '@jest/globals';
import { createHmac } from 'node:crypto';
import { Kingplank } from './client.js';
import { MisusedClientError, UntrustedEventError } from './errors.js';

const secret = `whsec_${Buffer.from('a secret of twenty-four!').toString('base64')}`;
const other = `whsec_${Buffer.from('quite another of them!!!').toString('base64')}`;
const { webhooks } = new Kingplank({
  baseUrl: 'http://127.0.0.1:1',
  apiKey: 'k',
  webhookSecrets: [secret],
});
const body = '{"type":"estimate.created","timestamp":"2026-01-01T00:00:00Z","data":{"id":"e1"}}';
const now = (): Date => new Date();

test('what it signs is the HMAC that the standard prescribes', async () => {
  const at = new Date(1_700_000_000_000);
  const headers = await webhooks.sign(body, { secret, id: 'evt_1', at });
  const expected = createHmac('sha256', 'a secret of twenty-four!')
    .update(`evt_1.1700000000.${body}`)
    .digest('base64');
  expect(headers).toEqual({
    'webhook-id': 'evt_1',
    'webhook-timestamp': '1700000000',
    'webhook-signature': `v1,${expected}`,
  });
});

test('a fresh event that is signed is read, also while the secret is being replaced', async () => {
  const headers = await webhooks.sign(body, { secret, id: 'evt_1', at: now() });
  expect((await webhooks.unwrap(body, headers)).data).toMatchObject({ id: 'e1' });
  expect((await webhooks.unwrap(body, new Headers(headers), { secrets: [other, secret] })).type).toBe(
    'estimate.created',
  );
  const both = { ...headers, 'webhook-signature': `v1,AAAA ${headers['webhook-signature']} v1a,xyz` };
  expect((await webhooks.unwrap(body, both)).type).toBe('estimate.created');
});

test.each([
  ['changed', 0, [secret], `${body} `],
  ['signed with another secret', 0, [other], body],
  ['too old', -301_000, [secret], body],
  ['from the future', 301_000, [secret], body],
])('an event that is %s is not trusted', async (_, offMs, secrets, received) => {
  const headers = await webhooks.sign(body, { secret, id: 'evt_1', at: new Date(Date.now() + offMs) });
  await expect(webhooks.unwrap(received, headers, { secrets })).rejects.toBeInstanceOf(UntrustedEventError);
});

test('an event without its headers is not trusted, and no secret is a mistake of the caller', async () => {
  await expect(webhooks.unwrap(body, {})).rejects.toThrow('webhook-id');
  const headers = await webhooks.sign(body, { secret, id: 'evt_1', at: now() });
  await expect(webhooks.unwrap(body, headers, { secrets: [] })).rejects.toBeInstanceOf(MisusedClientError);
  await expect(webhooks.unwrap(body, headers, { secrets: ['whsec_'] })).rejects.toBeInstanceOf(
    MisusedClientError,
  );
});
