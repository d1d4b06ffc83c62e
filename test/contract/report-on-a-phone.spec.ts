import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, jest, test } from '@jest/globals';
import { chromium, type Browser, type Page } from 'playwright-core';
import { annexNames, defaultReader, htmlOf, reportOf, stylesheet } from '#lib/drawings';
import { estimateOf, sampleRecordOf } from '../samples/sample-record.js';

jest.setTimeout(240_000);

const browserPath = '/usr/bin/chromium';
const inBrowser = existsSync(browserPath) ? describe : describe.skip;
const styleHash = createHash('sha256').update(stylesheet).digest('base64');

/** A telephone held upright. */
const screen = { width: 390, height: 844 } as const;
const MOST_SCREENS = 6;

const pageOf = (name: string): string => {
  const record = sampleRecordOf(name);
  const report = reportOf({
    estimate: estimateOf(record),
    record,
    purpose: 'condition',
    annexes: annexNames,
    paper: 'a4',
    medium: 'screen',
    reader: defaultReader,
    issue: {
      id: 'est_1',
      madeAt: '2026-03-02T09:30:00Z',
      letterhead: { name: 'An invented office', lines: ['Invented quay 1'] },
      revision: 1,
      history: [],
      changes: [],
      photographs: [],
    },
  });
  return htmlOf(report, { styleHash });
};

inBrowser.each(['foredeck', 'cockpit-sole'])('the report of the invented %s on a phone', (name) => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: browserPath, args: ['--no-sandbox'] });
    page = await browser.newPage({ viewport: screen });
    await page.setContent(pageOf(name));
  });
  afterAll(async () => {
    await browser.close();
  });

  const widthOfAll = (): Promise<number> => page.evaluate('document.documentElement.scrollWidth');

  test('says finding, verdict, sum with its range and days on the first screen', async () => {
    const summary = page.locator('section', { has: page.locator('#summary') }).first();
    const box = await summary.boundingBox();
    expect(box!.y + box!.height).toBeLessThanOrEqual(screen.height);
    const said = (await summary.innerText()).replace(/\s+/g, ' ');
    for (const wanted of ['Finding', 'Verdict', /EUR [\d,]+.*EUR [\d,]+ to EUR [\d,]+/, /\d+ working days/])
      expect(said).toMatch(wanted);
  });

  test('ends its body within six screens', async () => {
    const annexes = await page.locator('nav').boundingBox();
    expect(annexes!.y).toBeGreaterThan(screen.height);
    expect(annexes!.y).toBeLessThanOrEqual(MOST_SCREENS * screen.height);
  });

  test('never scrolls sideways, nor with every annex unfolded', async () => {
    expect(await widthOfAll()).toBe(screen.width);
    await page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
    expect(await widthOfAll()).toBe(screen.width);
    const scrolling = await page.evaluate(
      "[...document.querySelectorAll('*')].filter((one) => one.scrollWidth > one.clientWidth + 1 && ['auto', 'scroll'].includes(getComputedStyle(one).overflowX)).length",
    );
    expect(scrolling).toBe(0);
  });
});
