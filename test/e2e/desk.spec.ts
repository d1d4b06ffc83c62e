import { afterAll, beforeAll, expect, jest, test } from '@jest/globals';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import type { BrowserContextOptions, Page } from 'playwright-core';
import sharp from 'sharp';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { faultsByAxe, fitsAcross, inBrowser, openDesk, type DeskInBrowser } from './desk-in-browser.js';
import { TEST_KEY } from './service.js';

const root = path.join(import.meta.dirname, '../..');

jest.setTimeout(120_000);

test('the element with the client and all it needs takes at most 60 kB packed', () => {
  execFileSync(process.execPath, [path.join(root, 'apps/workshop/pack-deck.mjs')], { cwd: root });
  const made = readFileSync(path.join(root, 'libs/deck-element/dist/kingplank-deck.js'));
  expect(made.toString()).toContain('kingplank-deck');
  expect(gzipSync(made, { level: 9 }).length).toBeLessThanOrEqual(60_000);
});

inBrowser('the desk in a real browser (needs /usr/bin/chromium)', () => {
  let desk: DeskInBrowser;
  beforeAll(async () => {
    desk = await openDesk();
  });
  afterAll(async () => {
    await desk?.stop();
  });

  const onNewSheet = async (options: BrowserContextOptions): Promise<Page> => {
    const page = await desk.signedIn(options);
    await page.getByRole('link', { name: 'New sheet' }).first().click();
    await page.getByRole('tab', { name: 'Draw' }).waitFor();
    return page;
  };

  /** A foredeck by its sizes, with the build-up typed. */
  const drawPanel = async (page: Page): Promise<void> => {
    await page.getByRole('button', { name: 'Draw the panel' }).click();
    await page.getByLabel('Outer skin (mm)').fill('3');
    await page.getByLabel('Core (mm)').fill('12.7');
    await page.getByLabel('Inner skin (mm)').fill('2');
    await page.getByLabel('Inner skin (mm)').press('Tab');
  };

  /** A zone corner by corner with the arrow keys and Enter, closed on its first corner. */
  const zoneByKeys = async (page: Page): Promise<void> => {
    await page.getByRole('button', { name: 'Bad core' }).press('Enter');
    await page.getByRole('application').focus();
    const ways = ['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowUp'];
    for (const way of ways) {
      await page.keyboard.press('Enter');
      for (let step = 0; step < 5; step += 1) await page.keyboard.press(way);
    }
    await page.keyboard.press('Enter');
  };

  const stored = async (): Promise<number> => (await desk.service.get('/v1/estimates')).body.items.length;

  test('by keyboard alone: a deck is drawn, priced, tapped and estimated, and ordered for', async () => {
    const page = await onNewSheet({ viewport: { width: 1280, height: 900 } });
    await drawPanel(page);
    await zoneByKeys(page);
    await page.locator('.price .cell-range').getByText('–').waitFor();
    expect(await faultsByAxe(page)).toEqual([]);
    await page.getByRole('tab', { name: 'Tap' }).click();
    await page.getByRole('application').focus();
    for (const letter of ['s', 's', 'd']) await page.keyboard.press(letter);
    await page.getByText('3 readings').first().waitFor();
    const taken = page.getByRole('list', { name: 'Readings taken, the newest first' }).getByRole('button');
    expect((await taken.allTextContents()).map((said) => said.trim().split(' ')[0])).toEqual([
      'Dull',
      'Sharp',
      'Sharp',
    ]);
    await taken.first().press('Enter');
    expect(await taken.first().getAttribute('aria-pressed')).toBe('true');
    expect(await page.locator('circle.chosen').count()).toBe(1);
    await page.getByRole('application').focus();
    for (let step = 0; step < 3; step += 1) await page.keyboard.press('Control+z');
    await page.getByText('0 readings').first().waitFor();
    await page.getByRole('tab', { name: 'Result' }).click();
    await page.getByRole('button', { name: 'Make the estimate' }).press('Enter');
    await page.waitForURL(/#\/estimates\/[0-9a-f-]{36}$/);
    await page.getByRole('link', { name: 'Revise' }).waitFor();
    await page.getByRole('tab', { name: 'See' }).click();
    await page.locator('.ladder .rung-price').first().waitFor();
    expect(await faultsByAxe(page)).toEqual([]);
    await page.getByRole('tab', { name: 'Result' }).click();
    await page.getByRole('button', { name: 'To order' }).click();
    await page.getByText('Order total').waitFor();
    expect(await faultsByAxe(page)).toEqual([]);
    await page.getByRole('link', { name: 'Revise' }).click();
    await page.getByRole('tab', { name: 'Result' }).click();
    await page.getByLabel('Reason for the revision').fill('the deck was opened');
    await page.getByRole('button', { name: 'Make the revision' }).click();
    await page.getByRole('link', { name: 'What changed' }).click();
    await page.getByRole('heading', { name: 'What changed' }).waitFor();
    expect(await stored()).toBe(2);
    await page.context().close();
  });

  test('on a phone by finger, with the network lost and the page loaded again: one estimate, sent once', async () => {
    const before = await stored();
    const page = await onNewSheet({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      colorScheme: 'dark',
    });
    await drawPanel(page);
    await page.getByRole('button', { name: 'Bad core' }).tap();
    await page.getByRole('application').scrollIntoViewIfNeeded();
    const box = (await page.getByRole('application').boundingBox())!;
    const corners = [
      [0.45, 0.4],
      [0.6, 0.4],
      [0.6, 0.6],
      [0.45, 0.6],
    ];
    for (const [x, y] of corners) await page.touchscreen.tap(box.x + box.width * x, box.y + box.height * y);
    await page.getByRole('button', { name: 'Close the zone' }).tap();
    await page.locator('.price .cell-range').getByText('–').waitFor();
    expect(await faultsByAxe(page)).toEqual([]);
    await page.route('**/v1/**', (route) => route.abort());
    await page.getByRole('tab', { name: 'Result' }).tap();
    await page.getByRole('button', { name: 'Make the estimate' }).tap();
    await page.getByText('1 to be sent when there is a connection.').waitFor();
    await page.reload();
    await page.getByRole('tab', { name: 'Result' }).tap();
    await page.getByText('1 to be sent when there is a connection.').waitFor();
    expect(await stored()).toBe(before);
    await page.unroute('**/v1/**');
    await page.getByRole('button', { name: 'Send now' }).tap();
    await page.waitForURL(/#\/estimates\/[0-9a-f-]{36}$/);
    expect(await stored()).toBe(before + 1);
    expect(await fitsAcross(page)).toBe(true);
    await page.context().close();
  });

  test('is read from right to left in Arabic, and measures in inches', async () => {
    const page = await onNewSheet({ viewport: { width: 1280, height: 900 } });
    await page.getByLabel('Units').selectOption('us');
    await page.getByText('Length (in)').waitFor();
    await page.getByLabel('Language').selectOption('ar');
    await page.getByRole('tab', { name: 'رسم' }).waitFor();
    expect(await page.locator('.desk').getAttribute('dir')).toBe('rtl');
    expect(await faultsByAxe(page)).toEqual([]);
    await page.context().close();
  });

  test('on a slow network, loaded again in the middle of a drawing: nothing is lost, nothing moves by itself, and one estimate is made', async () => {
    const before = await stored();
    const page = await onNewSheet({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await page.route('**/v1/**', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 700));
      await route.continue();
    });
    await page.addInitScript(`
      window.shifted = 0;
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.shifted += entry.value;
      }).observe({ type: 'layout-shift', buffered: true });`);
    await drawPanel(page);
    await page.reload();
    await page.getByRole('tab', { name: 'Draw' }).waitFor();
    expect(await page.getByLabel('Core (mm)').inputValue()).toBe('12.7');
    await zoneByKeys(page);
    await page.locator('.price .cell-range').getByText('–').waitFor();
    await page.getByRole('tab', { name: 'Result' }).tap();
    const make = page.getByRole('button', { name: 'Make the estimate' });
    await make.tap();
    await page.getByRole('button', { name: 'Sending' }).waitFor();
    await page.waitForURL(/#\/estimates\/[0-9a-f-]{36}$/);
    expect(await stored()).toBe(before + 1);
    // Below a tenth counts as steady: web.dev, Cumulative Layout Shift.
    expect(await page.evaluate('window.shifted')).toBeLessThan(0.1);
    await page.context().close();
  });

  test('what comes after sign-in has its room before it: on a slow service nothing moves on a phone', async () => {
    const page = await desk.blankPage({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await page.addInitScript(`
      window.moved = [];
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.moved.push(entry.value);
      }).observe({ type: 'layout-shift', buffered: true });`);
    await page.route('**/v1/**', async (route) => {
      await new Promise((done) => setTimeout(done, 900));
      await route.continue();
    });
    await page.goto(desk.service.url);
    expect(await page.getByRole('link', { name: 'New sheet' }).count()).toBe(0);
    await page.getByLabel('Key', { exact: true }).fill(TEST_KEY);
    await page.getByRole('button', { name: 'Sign in' }).tap();
    await page.getByRole('link', { name: 'New sheet' }).first().waitFor();
    await page.waitForTimeout(1500);
    expect(await page.evaluate('window.moved')).toEqual([]);
    await page.context().close();
  });

  test('an estimate that is not in the list yet is found on the service by its reference', async () => {
    const page = await desk.signedIn({ viewport: { width: 1280, height: 900 } });
    await page.getByRole('heading', { name: 'Estimates' }).waitFor();
    await page.getByRole('checkbox').first().waitFor();
    const record = { ...leastRecord, title: 'Made meanwhile', reference: 'INVENTED-77' };
    expect((await desk.service.post('/v1/estimates', record)).status).toBe(201);
    const search = page.getByRole('searchbox');
    await search.fill('INVENTED-78');
    await search.press('Enter');
    await page.getByText('No estimate has this reference.').waitFor();
    await search.fill('INVENTED-77');
    await search.press('Enter');
    await page.getByRole('link', { name: 'Made meanwhile' }).waitFor();
    await page.context().close();
  });

  test('a photograph is put beside an estimate, by number with its place, and taken away', async () => {
    const made = await desk.service.post('/v1/estimates', { ...leastRecord, title: 'With a photograph' });
    const id = made.body.id as string;
    const page = await desk.signedIn({ viewport: { width: 390, height: 844 }, colorScheme: 'dark' });
    page.on('dialog', (dialog) => void dialog.accept());
    await page.goto(`${desk.service.url}/#/estimates/${id}`);
    const picture = await sharp({ create: { width: 640, height: 480, channels: 3, background: '#557' } })
      .png()
      .toBuffer();
    await page
      .getByLabel('Picture')
      .setInputFiles({ name: 'deck.png', mimeType: 'image/png', buffer: picture });
    await page.getByLabel('What it shows').fill('Invented stain');
    await page.getByLabel('Place forward').fill('900');
    await page.getByLabel('Place to starboard').fill('450');
    await page.getByLabel('Looks towards').fill('90');
    await page.getByRole('button', { name: 'Add the photograph' }).click();
    await page.getByRole('img', { name: 'Invented stain' }).waitFor();
    const kept = async () =>
      (await desk.service.get(`/v1/estimates/${id}/photographs`)).body.items as object[];
    expect(await kept()).toEqual([
      expect.objectContaining({ number: 1, caption: 'Invented stain', at: [900, 450], directionDeg: 90 }),
    ]);
    expect(await faultsByAxe(page)).toEqual([]);
    expect(await fitsAcross(page)).toBe(true);
    await page.getByRole('button', { name: 'Take away photograph 1' }).click();
    await page.getByRole('img', { name: 'Invented stain' }).waitFor({ state: 'detached' });
    expect(await kept()).toEqual([]);
    await page.context().close();
  });

  /** A picture with what a camera writes beside it: who and where. */
  const cameraPicture = async (): Promise<{ name: string; mimeType: string; buffer: Buffer }> => {
    const buffer = await sharp({ create: { width: 3000, height: 2000, channels: 3, background: '#755' } })
      .withExif({ IFD0: { Artist: 'Invented Person' }, IFD3: { GPSLatitude: '54/1 13/1 0/1' } })
      .jpeg()
      .toBuffer();
    return { name: 'deck.jpg', mimeType: 'image/jpeg', buffer };
  };

  test('a photograph is taken at a place on the deck, kept on the device, and sent once though its answer is lost', async () => {
    const page = await onNewSheet({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await drawPanel(page);
    await zoneByKeys(page);
    await page.getByRole('tab', { name: 'Tap' }).tap();
    await page.getByRole('button', { name: 'Photograph', exact: true }).tap();
    await page.getByRole('application').scrollIntoViewIfNeeded();
    const box = (await page.getByRole('application').boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + 25);
    await page.mouse.move(x, y + 50);
    await page.mouse.up();
    const direction = page.getByLabel('Looks towards');
    expect(await direction.inputValue()).toBe('90');
    const picture = await cameraPicture();
    expect(picture.buffer.toString('latin1')).toContain('Invented Person');
    await page.getByLabel('Picture').setInputFiles(picture);
    await page.getByLabel('What it shows').fill('Invented stain');
    await page.getByRole('button', { name: 'Keep the photograph' }).tap();
    await page.getByRole('img', { name: 'Invented stain' }).waitFor();
    expect(await direction.inputValue()).toBe('');
    expect(await page.locator('g.photograph path').count()).toBe(1);
    expect(await faultsByAxe(page)).toEqual([]);
    expect(await fitsAcross(page)).toBe(true);

    await page.reload();
    await page.getByRole('tab', { name: 'Tap' }).tap();
    await page.getByRole('img', { name: 'Invented stain' }).waitFor();
    const uploads: Buffer[] = [];
    const isLost = (): boolean => uploads.length <= 2;
    await page.route('**/photographs/**', async (route) => {
      if (route.request().method() !== 'PUT') return route.continue();
      uploads.push(route.request().postDataBuffer() ?? Buffer.alloc(0));
      const answer = await route.fetch();
      return isLost() ? route.abort() : route.fulfill({ response: answer });
    });
    await page.getByRole('tab', { name: 'Result' }).tap();
    await page.getByRole('button', { name: 'Make the estimate' }).tap();
    await page.waitForURL(/#\/estimates\/[0-9a-f-]{36}$/);
    const id = page.url().slice(-36);
    await page.getByRole('link', { name: 'New sheet' }).first().tap();
    await page.getByRole('tab', { name: 'Tap' }).tap();
    await page.getByRole('img', { name: 'Invented stain' }).waitFor({ state: 'detached' });
    const { items } = (await desk.service.get(`/v1/estimates/${id}/photographs`)).body;
    expect(items).toMatchObject([{ number: 1, caption: 'Invented stain', directionDeg: 90, widthPx: 1400 }]);
    expect(uploads.length).toBeGreaterThan(0);
    for (const upload of uploads) {
      expect(upload.length).toBeGreaterThan(1000);
      expect(upload.toString('latin1')).not.toMatch(/Invented Person|Exif/);
    }
    await page.context().close();
  });

  test('a sheet with photographs is thrown away only if that is meant, and a plug is noted with its skin', async () => {
    const page = await onNewSheet({ viewport: { width: 1280, height: 900 } });
    await drawPanel(page);
    await page.getByRole('tab', { name: 'Tap' }).click();
    await page.getByRole('button', { name: 'Plug', exact: true }).press('Enter');
    await page.getByLabel('Outer skin in the plug (mm)').fill('2.8');
    await page.getByLabel('Outer skin in the plug (mm)').press('Tab');
    await page.getByRole('application').focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: /^Plug, Rotten, 2.8 mm/ }).waitFor();
    await page.getByLabel('Picture').setInputFiles({
      name: 'notes.jpg',
      mimeType: 'image/jpeg',
      buffer: Buffer.from('no picture'),
    });
    await page.getByLabel('What it shows').fill('Invented fitting');
    const keep = page.getByRole('button', { name: 'Keep the photograph' });
    await keep.press('Enter');
    await page.getByText('This device cannot read the file as a picture').waitFor();
    await page.getByLabel('Picture').setInputFiles(await cameraPicture());
    await page.getByLabel('Looks towards').fill('90');
    await keep.press('Enter');
    await page.getByText('a direction needs a place').waitFor();
    await page.getByLabel('Looks towards').fill('');
    await keep.press('Enter');
    const shown = page.getByRole('img', { name: 'Invented fitting' });
    await shown.waitFor();
    page.once('dialog', (dialog) => void dialog.dismiss());
    await page.getByRole('button', { name: 'New sheet' }).click();
    expect(await shown.count()).toBe(1);
    page.once('dialog', (dialog) => void dialog.accept());
    await page.getByRole('button', { name: 'New sheet' }).click();
    await page.getByRole('tab', { name: 'Tap' }).click();
    await shown.waitFor({ state: 'detached' });
    await page.context().close();
  });

  test('who asks for less motion sees none', async () => {
    const moving = async (reducedMotion: 'reduce' | 'no-preference') => {
      const page = await onNewSheet({ viewport: { width: 1280, height: 900 }, reducedMotion });
      await drawPanel(page);
      await page.getByRole('tab', { name: 'Tap' }).click();
      const count: number = await page.evaluate(
        `document.getAnimations().length + document.querySelector('kingplank-deck').shadowRoot.getAnimations().length`,
      );
      await page.context().close();
      return count;
    };
    expect(await moving('reduce')).toBe(0);
    expect(await moving('no-preference')).toBeGreaterThan(0);
  });

  test('a deck that was tapped is told where to tap next, by number on the plan and in the list', async () => {
    const page = await onNewSheet({ viewport: { width: 1280, height: 900 } });
    await drawPanel(page);
    await page.getByRole('tab', { name: 'Tap' }).click();
    await page.getByRole('application').focus();
    for (const letter of ['s', 's', 'd', 'd', 's', 's']) await page.keyboard.press(letter);
    await page.getByRole('button', { name: 'Where to tap next' }).click();
    await page.getByText('chance of bad core').first().waitFor();
    const listed = await page.locator('.asked-list li').count();
    expect(listed).toBeGreaterThan(0);
    expect(await page.locator('.asked-number').allTextContents()).toEqual(
      Array.from({ length: listed }, (_, at) => String(at + 1)),
    );
    expect(await faultsByAxe(page)).toEqual([]);
    await page.context().close();
  });
});
