import { expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Kingplank } from '../../libs/sdk/src/index.js';

interface Contract {
  readonly paths: Readonly<Record<string, Readonly<Record<string, { readonly operationId?: string }>>>>;
}

/** Every operation of the contract has a method of the client, called here with parts that carry their names. */
const contract: Contract = JSON.parse(
  readFileSync(join(process.cwd(), 'test/contract/openapi.json'), 'utf8'),
);
const operations = Object.entries(contract.paths).flatMap(([path, methods]) =>
  Object.entries(methods).flatMap(([method, { operationId }]) =>
    operationId === undefined ? [] : [`${method.toUpperCase()} ${path}`],
  ),
);

const done = JSON.stringify({ id: 'id', status: 'done', items: [] });

/** A client that never leaves the process, and what it asked for. */
function recording(): { client: Kingplank; asked: Set<string> } {
  const asked = new Set<string>();
  const fetch: typeof globalThis.fetch = (input, init) => {
    const { pathname } = new URL(input instanceof Request ? input.url : input);
    asked.add(`${init?.method ?? 'GET'} ${decodeURIComponent(pathname)}`);
    return Promise.resolve(new Response(done));
  };
  return { client: new Kingplank({ baseUrl: 'http://127.0.0.1:1', apiKey: 'k', fetch }), asked };
}

const ID = '{id}';
const CODE = '{code}';
const changing = { edition: 'draft', ifMatch: '"1"' };
const nothing = {} as never;
const number = '{number}' as never;

async function everyMethod(client: Kingplank): Promise<void> {
  const { estimates, editions, keys, pages, organisations, letterhead, priceLists, health } = client;
  await Promise.all([health.live(), health.ready()]);
  await Promise.all([keys.list(), keys.create(nothing), keys.get(ID), keys.revoke(ID, changing)]);
  await Promise.all([keys.renew(ID, nothing), keys.history(ID), client.audit.list()]);
  await Promise.all([pages.keys(), pages.createKey(nothing), pages.key(ID), pages.revokeKey(ID, changing)]);
  await pages.openSession(nothing);
  const { events, webhookEndpoints: hooks } = client;
  await Promise.all([events.page(), hooks.list(), hooks.create(nothing), hooks.get(ID)]);
  await Promise.all([hooks.remove(ID, changing), hooks.renewSecret(ID, nothing), hooks.deliveries(ID)]);
  await hooks.repeat(ID, '{eventId}');
  await Promise.all([estimates.shares(ID), estimates.share(ID, '{keyId}'), estimates.unshare(ID, '{keyId}')]);
  await Promise.all([organisations.list(), organisations.create(nothing), organisations.get(ID)]);
  await organisations.change(ID, nothing, changing);
  await Promise.all([letterhead.get(), letterhead.set(nothing, changing), letterhead.logo()]);
  await Promise.all([letterhead.setLogo(new Uint8Array(1), changing), letterhead.removeLogo(changing)]);
  await Promise.all([editions.list(), editions.draft(nothing), editions.get(CODE), editions.history(CODE)]);
  await Promise.all([editions.publish(CODE, changing), editions.discard(CODE, changing)]);
  await editions.withdraw(CODE, changing);
  await Promise.all([editions.restore(CODE, nothing), editions.compare(CODE, nothing)]);
  for (const shelf of [client.materials, priceLists, client.labourRates, client.sources]) {
    await Promise.all([shelf.list(), shelf.get(CODE), shelf.add(nothing, changing), shelf.history(CODE)]);
    await Promise.all([shelf.change(CODE, nothing, changing), shelf.remove(CODE, changing)]);
    await shelf.importCsv('', nothing);
  }
  await Promise.all([priceLists.packs(CODE), priceLists.replacePacks(CODE, '', changing)]);
  await Promise.all([priceLists.pack(CODE, '{sku}'), priceLists.putPack(CODE, '{sku}', nothing, changing)]);
  await priceLists.changePack(CODE, '{sku}', nothing, changing);
  await priceLists.removePack(CODE, '{sku}', changing);
  await priceLists.takeSheet(CODE, nothing, changing);
  await Promise.all([priceLists.stock(CODE), priceLists.countStock(CODE, nothing)]);
  await Promise.all([priceLists.packStock(CODE, '{sku}'), priceLists.forgetStock(CODE, '{sku}')]);
  await priceLists.setStock(CODE, '{sku}', nothing);
  await Promise.all([priceLists.changePrices(CODE, nothing, changing), editions.tryOut(CODE)]);
  await Promise.all([estimates.create(nothing), estimates.get(ID), estimates.list().firstPage()]);
  await Promise.all([estimates.record(ID), estimates.replay(ID), estimates.why(ID, CODE)]);
  await Promise.all([estimates.revise(ID, nothing), estimates.revisions(ID), estimates.compare(ID, nothing)]);
  await Promise.all([estimates.changeOrder(ID), estimates.drawings(ID), estimates.drawing(ID, '{name}')]);
  await Promise.all([estimates.photographs(ID), estimates.photograph(ID, number)]);
  await estimates.setPhotograph(ID, number, new Uint8Array(1), nothing);
  await estimates.removePhotograph(ID, number);
  await estimates.eraseParties(ID);
  await Promise.all([estimates.calendar(ID), estimates.usualBasket(ID), estimates.basket(ID)]);
  await Promise.all([client.operations.get(ID), client.operations.result(ID, 'application/pdf')]);
  for (const operation of operations) {
    const room = /^POST \/v1\/estimating\/(.+)$/.exec(operation)?.[1];
    if (room !== undefined) await client.estimating.ask(room as never, nothing);
  }
}

test('every operation of the contract has a method, and no method asks for anything else', async () => {
  const { client, asked } = recording();
  await everyMethod(client);
  expect([...asked].sort()).toEqual([...operations].sort());
});
