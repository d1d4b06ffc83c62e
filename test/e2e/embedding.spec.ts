import { afterAll, beforeAll, expect, jest, test } from '@jest/globals';
import { execFileSync } from 'node:child_process';
import { createReadStream, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { png } from '../support/pictures.js';
import { inBrowser, openDesk, type DeskInBrowser } from './desk-in-browser.js';

jest.setTimeout(180_000);

const root = path.join(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'kp-shop-'));
const types: Readonly<Record<string, string>> = { '.html': 'text/html', '.js': 'text/javascript' };

/** The page as the README shows it, with an address and a key that work here in the place of those of the example. */
function pageOfReadme(service: string, key: string): string {
  const readme = readFileSync(path.join(root, 'libs/deck-element/README.md'), 'utf8');
  const [, page = ''] = /```html\n([\s\S]+?)```/.exec(readme) ?? [];
  const lines = page.trim().split('\n');
  expect(lines.length).toBeLessThanOrEqual(10);
  expect(page).toContain('kp_pub_…');
  return page.replace('http://127.0.0.1:3000', service).replace('kp_pub_…', key);
}

/** Where the cross is, looking to the bow. */
async function photographByKeys(page: Page, caption: string): Promise<void> {
  await page.getByRole('button', { name: 'Photograph', exact: true }).press('Enter');
  await page.getByRole('application').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  const buffer = png(300, 200);
  await page.getByLabel('Picture').setInputFiles({ name: 'deck.png', mimeType: 'image/png', buffer });
  await page.getByLabel('What it shows').fill(caption);
  await page.getByLabel('What it shows').press('Enter');
  await page.getByLabel('What it shows').and(page.locator(':invalid')).waitFor();
}

inBrowser('the page of the README in a folder of its own (needs /usr/bin/chromium)', () => {
  let desk: DeskInBrowser;
  let shop: Server;
  let origin = '';
  beforeAll(async () => {
    desk = await openDesk();
    const pack = path.join(root, 'apps/workshop/pack-deck.mjs');
    execFileSync(process.execPath, [pack, '--pack', folder], { cwd: root });
    const tarball = readdirSync(folder).find((name) => name.endsWith('.tgz'));
    writeFileSync(path.join(folder, 'package.json'), '{ "name": "shop", "private": true }');
    const install = ['install', '--offline', '--no-audit', '--no-fund', '--loglevel=error'];
    execFileSync('npm', [...install, `./${tarball}`], { cwd: folder });
    shop = createServer(({ url = '' }, response) => {
      const file = path.join(folder, url === '/' ? 'index.html' : path.normalize(url));
      response.setHeader('content-type', types[path.extname(file)] ?? 'application/octet-stream');
      response.setHeader(
        'content-security-policy',
        `default-src 'none'; script-src 'self'; connect-src ${desk.service.url}; img-src blob:`,
      );
      createReadStream(file)
        .on('error', () => response.writeHead(404).end())
        .pipe(response);
    });
    await new Promise<void>((resolve) => {
      shop.listen(0, '127.0.0.1', resolve);
    });
    const address = shop.address();
    origin = `http://127.0.0.1:${typeof address === 'object' && address !== null ? address.port : 0}`;
  });
  afterAll(async () => {
    await new Promise((resolve) => {
      shop?.close(resolve);
    });
    await desk?.stop();
    rmSync(folder, { recursive: true, force: true });
  });

  test('draws, prices and makes an estimate under a strict policy, and asks nobody but the service', async () => {
    const limits = { perMinute: 600, perMinutePerVisitor: 600, perDay: 1000 };
    const made = await desk.service.post('/v1/publishable-keys', {
      name: 'Invented shop',
      origins: [origin],
      ...limits,
    });
    writeFileSync(path.join(folder, 'index.html'), pageOfReadme(desk.service.url, made.body.key as string));
    const page = await desk.blankPage({ viewport: { width: 1280, height: 900 } });
    const [said, asked]: [string[], Set<string>] = [[], new Set()];
    page.on('console', (message) => message.type() === 'error' && said.push(message.text()));
    page.on('request', (request) => asked.add(new URL(request.url()).origin));
    await page.goto(origin);
    const estimated: Promise<string> = page.evaluate(
      `new Promise((told) => document.querySelector('kingplank-deck').addEventListener('estimate', ({ detail }) => told(detail.id)))`,
    );
    await page.getByRole('button', { name: 'Draw the panel' }).click();
    for (const [label, mm] of [
      ['Outer skin (mm)', '3'],
      ['Core (mm)', '12.7'],
      ['Inner skin (mm)', '2'],
    ] as const)
      await page.getByLabel(label).fill(mm);
    await page.getByLabel('Inner skin (mm)').press('Tab');
    await page.getByRole('button', { name: 'Bad core' }).press('Enter');
    await page.getByRole('application').focus();
    for (const way of ['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowUp']) {
      await page.keyboard.press('Enter');
      for (let step = 0; step < 5; step += 1) await page.keyboard.press(way);
    }
    await page.keyboard.press('Enter');
    await page.locator('.price .cell-range').getByText('–').waitFor();
    await page.getByRole('tab', { name: 'Tap' }).click();
    await photographByKeys(page, 'Invented stain');
    await page.getByRole('tab', { name: 'Result' }).click();
    await page.getByRole('button', { name: 'Make the estimate' }).click();
    const id = await estimated;
    const { body } = await desk.service.get(`/v1/estimates/${id}`);
    expect(Number(body.estimate.totals.total.amount)).toBeGreaterThan(0);
    await page.getByRole('tab', { name: 'Tap' }).click();
    await page.getByText('With the estimate: 1 Invented stain').waitFor();
    await photographByKeys(page, 'Taken afterwards');
    await page.getByText('With the estimate: 1 Invented stain · 2 Taken afterwards').waitFor();
    expect((await desk.service.get(`/v1/estimates/${id}/photographs`)).body.items).toMatchObject([
      { number: 1, caption: 'Invented stain', directionDeg: 0 },
      { number: 2, caption: 'Taken afterwards', directionDeg: 0 },
    ]);
    expect(said).toEqual([]);
    expect([...asked].filter((one) => one !== 'null').sort()).toEqual([origin, desk.service.url].sort());
    await page.context().close();
  });
});
