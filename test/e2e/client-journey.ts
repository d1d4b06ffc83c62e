import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import type { Kingplank } from '../../libs/sdk/src/index.js';
import { doors } from '../contract/bounds/doors.js';
import { png } from '../support/pictures.js';

type Client = Kingplank;
type DefectRecord = Parameters<Client['estimates']['create']>[0];
type Room = Parameters<Client['estimating']['ask']>[0];

/** Points are tuples for the client; the sample is written as lists. */
const record = leastRecord as unknown as DefectRecord;
const ANY = { ifMatch: '*' };
const DAY_MS = 86_400_000;

/** Calls every method of the client once against a running service, in an order in which each succeeds. Invented throughout. */
export async function clientJourney(client: Client): Promise<void> {
  await access(client);
  await pages(client);
  await letterhead(client);
  const { id } = await client.estimates.create(record);
  await estimate(client, id);
  await revision(client, id);
  await papers(client, id);
  await people(client, id);
  await later(client);
  await events(client);
  await rooms(client);
  await catalogue(client, id);
}

async function access({ health, organisations, keys, audit }: Client): Promise<void> {
  await health.live();
  await health.ready();
  const { id } = await organisations.create({ name: 'Invented Boatyard' });
  await organisations.list();
  const { etag } = await organisations.get(id);
  await organisations.change(id, { name: 'Invented Boatyard East' }, { ifMatch: etag });
  const made = await keys.create({ name: 'Invented survey office', roles: ['surveyor'] });
  await keys.list();
  await keys.renew(made.id, { overlapHours: 1 });
  await keys.history(made.id);
  await keys.revoke(made.id, { ifMatch: (await keys.get(made.id)).etag });
  await audit.list();
}

async function pages({ pages: shop }: Client): Promise<void> {
  const { id } = await shop.createKey({
    name: 'Invented shop form',
    origins: ['https://shop.example'],
    perMinute: 60,
    perMinutePerVisitor: 10,
    perDay: 200,
  });
  await shop.keys();
  await shop.revokeKey(id, { ifMatch: (await shop.key(id)).etag });
  await shop.openSession({ reference: 'order-7', minutes: 15 });
}

async function letterhead({ letterhead: head }: Client): Promise<void> {
  await head.set({ lines: ['Quay 1, Invented Harbour'], logoDescription: 'A lighthouse' }, ANY);
  await head.setLogo(new Uint8Array(png(300, 200)), { ...ANY, type: 'image/png' });
  await head.logo();
  await head.removeLogo({ ifMatch: (await head.get()).etag });
}

async function estimate({ estimates }: Client, id: string): Promise<void> {
  await estimates.get(id);
  await estimates.list().firstPage();
  await estimates.record(id);
  await estimates.replay(id);
  await estimates.why(id, 'labour-cut-skin');
  await estimates.calendar(id);
  await estimates.usualBasket(id);
  await estimates.basket(id, { pricedAt: 'current' });
}

async function revision({ estimates }: Client, id: string): Promise<void> {
  const found = { ...record, core: { thicknessMm: 16 } };
  const revised = await estimates.revise(id, { reason: 'Wet core reached farther', record: found });
  await estimates.revisions(id);
  await estimates.compare(revised.id, {});
  await estimates.changeOrder(revised.id);
}

async function papers({ estimates }: Client, id: string): Promise<void> {
  const [{ name }] = (await estimates.drawings(id)).items;
  await estimates.drawing(id, name);
  const picture = new Uint8Array(png(300, 200));
  await estimates.setPhotograph(id, 1, picture, { caption: 'Plug beside the stanchion', type: 'image/png' });
  await estimates.photographs(id);
  await estimates.photograph(id, 1);
  await estimates.removePhotograph(id, 1);
}

async function people({ estimates, keys }: Client, id: string): Promise<void> {
  const chandler = await keys.create({ name: 'Invented chandlery', roles: ['chandler'] });
  await estimates.share(id, chandler.id);
  await estimates.shares(id);
  await estimates.unshare(id, chandler.id);
  await estimates.eraseParties(id);
}

/** Work that is answered later goes by the address of an operation, which the client follows by itself. */
async function later({ estimates }: Client): Promise<void> {
  const { id } = await estimates.create(record, { inBackground: true });
  await estimates.pdf(id, {}, { inBackground: true });
}

async function events({ webhookEndpoints: hooks, events: feed }: Client): Promise<void> {
  const { id } = await hooks.create({ url: 'https://shop.example/events', types: ['estimate.created'] });
  await hooks.list();
  await hooks.renewSecret(id, { overlapHours: 1 });
  const [{ id: event }] = (await feed.page({})).items;
  await hooks.deliveries(id);
  await hooks.repeat(id, event);
  await hooks.remove(id, { ifMatch: (await hooks.get(id)).etag });
}

async function rooms({ estimating }: Client): Promise<void> {
  const ask = (room: string, request: unknown): PromiseLike<unknown> =>
    estimating.ask(room as Room, request as never);
  for (const { path, request } of doors)
    if (path.startsWith('/v1/estimating/')) await ask(path.slice('/v1/estimating/'.length), request);
  await ask('ladder', record);
  await ask('preview', record);
  await ask('quantities', { quantities: [{ dimension: 'length', text: '5/8 in' }] });
  const variants = [
    { code: 'relay', method: { skin: 'relay' } },
    { code: 're-bed', method: { skin: 're-bed' } },
  ];
  await ask('variants', { record, variants });
}

const edition = 'spring-2027';
const changing = { edition, ...ANY };

async function catalogue(client: Client, estimate: string): Promise<void> {
  const { editions, materials, priceLists, labourRates, sources } = client;
  const { current } = await editions.list();
  await editions.draft({ code: edition, basedOn: current, note: 'Invented prices of a new season' });
  await shelf(materials, 'code');
  await shelf(priceLists, 'code');
  await shelf(labourRates, 'code');
  await shelf(sources, 'key');
  await packs(client);
  await stock(client);
  await editions.tryOut(edition, { estimates: [estimate] });
  await editions.compare(edition, { with: current });
  await publication(client, current);
}

/** Of each shelf the methods are the same, and so is what they are asked here. */
interface Shelf {
  list(query: { readonly edition: string }): PromiseLike<{ readonly items: readonly object[] }>;
  add(entry: never, query: { readonly edition: string }): PromiseLike<unknown>;
  get(code: string, query: { readonly edition: string }): PromiseLike<{ readonly etag: string }>;
  change(
    code: string,
    patch: Readonly<Record<string, unknown>>,
    options: typeof changing,
  ): PromiseLike<unknown>;
  history(code: string): PromiseLike<unknown>;
  remove(code: string, options: typeof changing): PromiseLike<unknown>;
  listCsv(query: { readonly edition: string }): PromiseLike<string>;
  importCsv(csv: string, query: { readonly edition: string }): PromiseLike<unknown>;
}

async function shelf(entries: Shelf, named: 'code' | 'key'): Promise<void> {
  const code = named === 'key' ? 'INVENTED-COPY' : 'invented-copy';
  const [first] = (await entries.list({ edition })).items;
  await entries.add({ ...first, [named]: code } as never, { edition });
  const { etag } = await entries.get(code, { edition });
  const patch = named === 'key' ? { note: 'Read once more' } : { name: 'Renamed' };
  await entries.change(code, patch, { edition, ifMatch: etag });
  await entries.history(code);
  await entries.remove(code, changing);
  await entries.importCsv(await entries.listCsv({ edition }), { edition });
}

async function packs({ priceLists }: Client): Promise<void> {
  const [{ code }] = (await priceLists.list({ edition })).items;
  const csv = await priceLists.packsCsv(code, { edition });
  const [pack] = (await priceLists.packs(code, { edition })).packs;
  const { sku } = pack;
  await priceLists.pack(code, sku, { edition });
  await priceLists.putPack(code, sku, pack, changing);
  await priceLists.changePack(code, sku, { massKg: pack.massKg }, changing);
  await priceLists.changePrices(code, { percent: '4.5', skus: [sku] }, changing);
  const sheet = {
    cells: `Article\tNet price\n${sku}\t101.50`,
    columns: [
      { heading: 'Article', means: 'sku' },
      { heading: 'Net price', means: 'price' },
    ],
    decimalMark: '.',
    breaks: 'keep',
    unknownSkus: 'refuse',
  } as const;
  await priceLists.takeSheet(code, sheet, changing);
  await priceLists.removePack(code, sku, changing);
  await priceLists.replacePacks(code, csv, changing);
}

async function stock({ priceLists }: Client): Promise<void> {
  const [{ code, packs: sold }] = (await priceLists.list()).items;
  const [{ sku }] = sold;
  await priceLists.countStock(code, { items: [{ sku, packs: 4 }] });
  await priceLists.setStock(code, sku, { packs: 3 });
  await priceLists.packStock(code, sku);
  await priceLists.stock(code);
  await priceLists.forgetStock(code, sku);
}

/** Set for a time and taken back, published now, rolled back to what was, and a draft thrown away. */
async function publication({ editions }: Client, before: string): Promise<void> {
  const effectiveAt = new Date(Date.now() + DAY_MS).toISOString();
  await editions.publish(edition, { effectiveAt, ifMatch: (await editions.get(edition)).etag });
  await editions.withdraw(edition, ANY);
  await editions.publish(edition, { ifMatch: (await editions.get(edition)).etag });
  await editions.history(edition);
  await editions.restore(before, { code: 'winter-again', note: 'As before' });
  await editions.draft({ code: 'second-thoughts' });
  await editions.discard('second-thoughts', ANY);
}
