import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, expect, jest, test } from '@jest/globals';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { faultsByAxe, fitsAcross, inBrowser, openDesk, type DeskInBrowser } from './desk-in-browser.js';

jest.setTimeout(240_000);

const main = readFileSync(path.join(import.meta.dirname, '../../apps/desk/src/main.ts'), 'utf8');

/** Addresses that the desk knows, as it writes them; whatever else is asked for is the list of estimates. */
const routes = [...main.matchAll(/^ {2}\[\/\^(#.+)\$\/, \w+\],$/gm)].map(([, pattern]) =>
  pattern.replaceAll('\\/', '/').replaceAll(/\(\[\^\/\]\+\)|\(\.\+\)/g, '*'),
);

/** A page of every kind: its address with what stands in its gaps, and something that it shows once it is there. */
const pages: Readonly<Record<string, { readonly gaps: readonly Gap[]; readonly shows: string }>> = {
  '#/new': { gaps: [], shows: 'svg[role=application]' },
  '#/estimates/*': { gaps: ['estimate'], shows: '.figures .total' },
  '#/estimates/*/revise': { gaps: ['estimate'], shows: '.panel' },
  '#/compare/*/*': { gaps: ['estimate', 'revision'], shows: 'table' },
  '#/order/*': { gaps: ['estimate'], shows: 'table' },
  '#/catalogue': { gaps: [], shows: 'table' },
  '#/catalogue/*': { gaps: ['edition'], shows: 'table' },
  '#/catalogue/*/rates': { gaps: ['edition'], shows: 'fieldset' },
  '#/catalogue/*/materials': { gaps: ['edition'], shows: 'table' },
  '#/catalogue/*/sources': { gaps: ['edition'], shows: 'table' },
  '#/catalogue/*/comparison': { gaps: ['edition'], shows: 'h2' },
  '#/catalogue/*/lists/*': { gaps: ['edition', 'list'], shows: 'table' },
  '#/catalogue/*/lists/*/sheet': { gaps: ['edition', 'list'], shows: 'textarea' },
  '#/catalogue/*/lists/*/suppliers': { gaps: ['edition', 'list'], shows: 'fieldset' },
  '#/catalogue/*/lists/*/stock': { gaps: ['edition', 'list'], shows: 'table' },
};

type Gap = 'estimate' | 'revision' | 'edition' | 'list';

const addressOf = (route: string, things: Readonly<Record<Gap, string>>): string =>
  pages[route].gaps.reduce((address, gap) => address.replace('*', things[gap]), route);

test('every page of the desk is looked at below', () => {
  expect(routes.length).toBeGreaterThan(10);
  expect(Object.keys(pages).sort()).toEqual([...routes].sort());
});

inBrowser('each page of the desk (needs /usr/bin/chromium)', () => {
  let desk: DeskInBrowser;
  let things: Readonly<Record<Gap, string>>;
  beforeAll(async () => {
    desk = await openDesk();
    const estimate = String((await desk.service.post('/v1/estimates', leastRecord)).body.id);
    const revision = await desk.service.post(`/v1/estimates/${estimate}/revisions`, {
      reason: 'Opened',
      record: { ...leastRecord, core: { thicknessMm: 16 } },
    });
    await desk.service.post('/v1/editions', { code: 'looked-at' });
    const [{ code }] = (await desk.service.get('/v1/price-lists')).body.items;
    things = { estimate, revision: String(revision.body.id), edition: 'looked-at', list: code };
  });
  afterAll(async () => {
    await desk?.stop();
  });

  test.each([
    { name: 'a phone by day', viewport: { width: 390, height: 844 }, colorScheme: 'light' },
    { name: 'a desk by night', viewport: { width: 1280, height: 900 }, colorScheme: 'dark' },
  ] as const)('has no fault that axe finds and fits across, on $name', async ({ viewport, colorScheme }) => {
    const page = await desk.signedIn({ viewport, colorScheme });
    const found: Record<string, unknown> = {};
    for (const route of ['', ...routes]) {
      await page.goto('about:blank');
      await page.goto(`${desk.service.url}/${route === '' ? '' : addressOf(route, things)}`);
      await page
        .locator(route === '' ? 'table' : pages[route].shows)
        .first()
        .waitFor();
      const faults = await faultsByAxe(page);
      if (faults.length > 0 || !(await fitsAcross(page))) found[route] = faults;
    }
    expect(found).toEqual({});
    await page.context().close();
  });
});
