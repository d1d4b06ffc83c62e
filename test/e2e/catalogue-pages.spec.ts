import { afterAll, beforeAll, expect, jest, test } from '@jest/globals';
import type { Page } from 'playwright-core';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { faultsByAxe, fitsAcross, inBrowser, openDesk, type DeskInBrowser } from './desk-in-browser.js';

jest.setTimeout(180_000);

inBrowser('the catalogue in the hands of an admin without a program (needs /usr/bin/chromium)', () => {
  let desk: DeskInBrowser;
  let list = { code: '', name: '', packs: [] as readonly { sku: string; prices: { price: string }[] }[] };
  let shipped = '';
  beforeAll(async () => {
    desk = await openDesk();
    const made = await desk.service.post('/v1/estimates', leastRecord);
    const { priceList } = made.body.estimate.provenance as { readonly priceList: string };
    list = (await desk.service.get(`/v1/price-lists/${priceList}`)).body;
    shipped = (await desk.service.get('/v1/editions')).body.current;
  });
  afterAll(async () => {
    await desk?.stop();
  });

  const packsIn = async (edition: string) =>
    (await desk.service.get(`/v1/price-lists/${list.code}?edition=${edition}`)).body
      .packs as typeof list.packs;
  const priceOf = async (edition: string, sku: string) =>
    (await packsIn(edition)).find((pack) => pack.sku === sku)?.prices[0].price;

  const inAMonth = (): string => new Date(Date.now() + 30 * 86_400_000).toISOString().slice(0, 16);
  const makeDraft = async (page: Page, name: string): Promise<void> => {
    await page.getByRole('link', { name: 'Catalogue' }).click();
    await page.getByLabel('Name of the draft').fill(name);
    await page.getByLabel('Note').fill('Invented prices of a test');
    await page.getByRole('button', { name: 'Make the draft' }).press('Enter');
    await page.getByRole('link', { name: list.name }).press('Enter');
    await page.getByRole('heading', { name: `Edition ${name}` }).waitFor();
    await page.getByRole('link', { name: 'Take in a sheet' }).waitFor();
  };

  test('by keyboard: a draft is made, a sheet is taken in after its faults, a price and a column are changed, tried, published and taken back', async () => {
    const [first, second] = list.packs;
    const page = await desk.signedIn({ viewport: { width: 1280, height: 900 } });
    page.on('dialog', (dialog) => void dialog.accept());
    await makeDraft(page, 'spring');
    expect(await faultsByAxe(page)).toEqual([]);

    await page.getByRole('link', { name: 'Take in a sheet' }).press('Enter');
    await page
      .getByLabel('Cells')
      .fill(`Article no.\tNet price\n${first.sku}\t1.234,50\n${second.sku}\ton request\nNOT-OURS\t4,00`);
    await page.getByRole('button', { name: 'Columns' }).press('Enter');
    await page.getByLabel('Decimal mark').selectOption(',');
    await page.getByText('“on request” is not a number with this decimal mark.').waitFor();
    const faults = page.getByRole('region', { name: 'Faults' }).locator('tbody tr');
    expect(await faults.allInnerTexts()).toEqual([
      expect.stringMatching(/^3\s+Net price\s+“on request”/),
      expect.stringMatching(/^4\s+NOT-OURS is not in this list/),
    ]);
    expect(await faultsByAxe(page)).toEqual([]);
    await page.getByLabel('Cells').fill(`Article no.\tNet price\n${first.sku}\t1.234,50\nNOT-OURS\t4,00`);
    await page.getByRole('button', { name: 'Columns' }).press('Enter');
    await page.getByLabel('Numbers that are not in the list').selectOption('leave-out');
    await page.getByText('Packs that change: 1; that stay: 0; rows left out: 1.').waitFor();
    await page.getByRole('button', { name: 'Take in' }).press('Enter');
    await page.getByRole('heading', { name: 'Edition spring' }).waitFor();
    expect(await priceOf('spring', first.sku)).toBe('1234.50');

    await page.getByLabel('Search number').fill(second.sku);
    const price = page.getByLabel(`${second.sku}, One pack`);
    await price.fill('dear');
    await price.press('Tab');
    await page.getByRole('button', { name: 'Save' }).press('Enter');
    await page.locator('[aria-invalid=true]').waitFor();
    expect(await priceOf('spring', second.sku)).toBe(second.prices[0].price);
    await price.fill('99.90');
    await price.press('Tab');
    await page.getByRole('button', { name: 'Save' }).press('Enter');
    await page.getByText('Saved.').waitFor();
    expect(await priceOf('spring', second.sku)).toBe('99.90');

    await page.getByLabel('Search number').fill('');
    await page.getByText('Change the whole column').press('Enter');
    await page.getByLabel('Percent').fill('100');
    await page.getByRole('button', { name: 'Change', exact: true }).press('Enter');
    await page
      .getByText(`${list.packs.length} of ${list.packs.length} packs have other prices now.`)
      .waitFor();
    expect(await priceOf('spring', second.sku)).toBe('199.80');

    await page.getByRole('link', { name: 'What this edition changes' }).press('Enter');
    await page.getByText('Choose the estimates').press('Enter');
    await page.getByRole('checkbox').first().check();
    await page.getByRole('button', { name: 'Try it out' }).press('Enter');
    await page.getByRole('region', { name: 'Effect on stored estimates' }).getByText('%').waitFor();
    expect(await faultsByAxe(page)).toEqual([]);
    await page.getByLabel('Current from').fill(inAMonth());
    await page.getByRole('button', { name: 'Publish' }).press('Enter');
    await page.getByText('Published.').waitFor();
    expect((await desk.service.get('/v1/editions')).body.current).toBe(shipped);
    expect(await faultsByAxe(page)).toEqual([]);
    await page.getByRole('button', { name: 'Take the publication back' }).press('Enter');
    await page.getByText('It is a draft again.').waitFor();
    await page.getByRole('button', { name: 'Publish' }).press('Enter');
    await page.getByText('Published.').waitFor();
    expect((await desk.service.get('/v1/editions')).body.current).toBe('spring');

    await page.getByRole('link', { name: 'Catalogue' }).press('Enter');
    const row = page.getByRole('row', { name: shipped });
    await row.getByText('Make current again').first().press('Enter');
    await row.getByLabel('Name of the restored edition').fill('shipped-again');
    await row.getByRole('button', { name: 'Make current again' }).press('Enter');
    await page.getByRole('row', { name: 'shipped-again' }).getByText('published, current').waitFor();
    expect(await faultsByAxe(page)).toEqual([]);
    expect(await packsIn('shipped-again')).toEqual(list.packs);
    await page.context().close();
  });

  test('a whole list goes out as CSV and comes back by the file, with the faults that the service finds by row and column', async () => {
    await desk.service.post('/v1/editions', { code: 'whole' });
    const at = `/v1/price-lists/${list.code}/packs?edition=whole`;
    const csv = (await desk.service.get(at, { accept: 'text/csv' })).text;
    const page = await desk.signedIn({ viewport: { width: 390, height: 844 }, colorScheme: 'dark' });
    await page.goto(`${desk.service.url}/#/catalogue/whole/lists/${list.code}/sheet`);
    const choose = (text: string) =>
      page
        .getByLabel('File')
        .setInputFiles({ name: 'list.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
    const [head, ...rows] = csv.split('\r\n');
    const massAt = head.split(',').indexOf('massKg');
    expect(massAt).toBeGreaterThan(0);
    await choose([head, ...rows].join('\r\n').replace(/,0\.473,/, ',heavy,'));
    await page.getByRole('button', { name: 'Replace the whole list' }).click();
    await page.getByRole('region', { name: 'Faults' }).getByText('massKg').first().waitFor();
    expect(await faultsByAxe(page)).toEqual([]);
    expect(await fitsAcross(page)).toBe(true);
    await choose(csv);
    await page.getByRole('button', { name: 'Replace the whole list' }).click();
    await page.getByRole('heading', { name: 'Edition whole' }).waitFor();
    expect(await packsIn('whole')).toEqual(list.packs);
    expect(await fitsAcross(page)).toBe(true);
    await page.context().close();
  });

  test('rates of the yard are changed in Arabic, from right to left', async () => {
    await desk.service.post('/v1/editions', { code: 'rates' });
    const page = await desk.signedIn({ viewport: { width: 1280, height: 900 } });
    await page.getByLabel('Language').selectOption('ar');
    await page.goto(`${desk.service.url}/#/catalogue/rates/rates`);
    const general = page.getByLabel('general').first();
    await general.fill('77.00');
    await page.getByRole('button', { name: 'احفظ' }).first().click();
    await page.getByText('حفظ.', { exact: true }).waitFor();
    expect(await faultsByAxe(page)).toEqual([]);
    const { items } = (await desk.service.get('/v1/labour-rates?edition=rates')).body as {
      readonly items: readonly { readonly perHour: { readonly general: string } }[];
    };
    expect(items[0].perHour.general).toBe('77.00');
    await page.context().close();
  });

  test('by keyboard: what a supplier charges, taxes, counted stock, materials and sources are kept, with faults where they are', async () => {
    await desk.service.post('/v1/editions', { code: 'shelves' });
    const lists = (await desk.service.get('/v1/price-lists?edition=shelves')).body.items;
    const [{ code: list, packs }] = lists;
    const page = await desk.signedIn({ viewport: { width: 390, height: 844 } });
    const at = (to: string): Promise<unknown> => page.goto(`${desk.service.url}/#/catalogue/shelves${to}`);
    const sound = async (): Promise<void> => {
      expect(await faultsByAxe(page)).toEqual([]);
      expect(await fitsAcross(page)).toBe(true);
    };

    await at(`/lists/${list}/suppliers`);
    const delivery = page.getByLabel('One delivery').first();
    await delivery.fill('a lot');
    await page.getByRole('button', { name: 'Save' }).press('Enter');
    await page.locator('input[aria-invalid]').first().waitFor();
    await sound();
    await page.getByLabel('One delivery').first().fill('11.25');
    await page.getByRole('button', { name: 'Save' }).press('Enter');
    await page.getByText('Saved.', { exact: true }).waitFor();
    const after = (await desk.service.get(`/v1/price-lists/${list}?edition=shelves`)).body;
    expect(after.suppliers[0].delivery).toBe('11.25');
    expect(after.suppliers.length).toBe(lists[0].suppliers.length);

    await at(`/lists/${list}/stock`);
    await page.getByLabel(`Stock: ${packs[0].sku}`, { exact: true }).fill('7');
    await page.getByRole('button', { name: 'Save' }).press('Enter');
    await page.getByText('Counts kept: 1.').waitFor();
    await sound();
    expect((await desk.service.get(`/v1/price-lists/${list}/packs/${packs[0].sku}/stock`)).body.packs).toBe(
      7,
    );

    await at('/rates');
    const tax = page.getByRole('group', { name: 'Tax, percent' }).first().getByRole('textbox').first();
    await tax.fill('19');
    await page.getByRole('button', { name: 'Save' }).first().press('Enter');
    await page.getByText('Saved.', { exact: true }).waitFor();
    const rates = (await desk.service.get('/v1/labour-rates?edition=shelves')).body.items;
    expect(rates[0].taxGroups[0].percent).toBe('19');

    for (const [shelf, word] of [
      ['materials', 'Materials'],
      ['sources', 'Sources'],
    ] as const) {
      const answer = await desk.service.get(`/v1/${shelf}?edition=shelves`, { accept: 'text/csv' });
      await at(`/${shelf}`);
      await page.getByRole('heading', { name: word }).waitFor();
      await page.getByLabel('Cells').fill('nonsense\r\n1');
      await page.getByRole('button', { name: 'Take in', exact: true }).press('Enter');
      await page.getByRole('region', { name: 'Faults' }).waitFor();
      await sound();
      await page.getByLabel('Cells').fill(answer.text);
      await page.getByRole('button', { name: 'Take in', exact: true }).press('Enter');
      await page.getByText(/^Rows taken in: \d+\.$/).waitFor();
      expect(await page.getByRole('region', { name: 'Faults' }).count()).toBe(0);
    }
    await page.context().close();
  });
});
