import { describe } from '@jest/globals';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { chromium, type BrowserContextOptions, type Page } from 'playwright-core';
import { startService, TEST_KEY, type TestService } from './service.js';

const root = path.join(import.meta.dirname, '../..');
const browserPath = '/usr/bin/chromium';
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Journeys that need Chromium; where there is none they are named as skipped. */
export const inBrowser = existsSync(browserPath) ? describe : describe.skip;

export interface DeskInBrowser {
  readonly service: TestService;
  /** A page of its own, signed in with a key that may do everything. */
  readonly signedIn: (options: BrowserContextOptions) => Promise<Page>;
  /** A page of its own that is nowhere yet. */
  readonly blankPage: (options: BrowserContextOptions) => Promise<Page>;
  readonly stop: () => Promise<void>;
}

/** The desk bundled anew, a service of its own that shows it, and a browser. */
export async function openDesk(): Promise<DeskInBrowser> {
  execFileSync(process.execPath, [path.join(root, 'apps/desk/bundle.mjs')], { cwd: root });
  const [service, browser] = await Promise.all([
    startService(),
    chromium.launch({ executablePath: browserPath, args: ['--no-sandbox'] }),
  ]);
  const blankPage = async (options: BrowserContextOptions): Promise<Page> => {
    const context = await browser.newContext({ reducedMotion: 'reduce', ...options });
    const page = await context.newPage();
    page.setDefaultTimeout(60_000);
    return page;
  };
  return {
    service,
    blankPage,
    signedIn: async (options) => {
      const page = await blankPage(options);
      await page.goto(service.url);
      await page.getByLabel('Key', { exact: true }).fill(TEST_KEY);
      await page.getByRole('button', { name: 'Sign in' }).click();
      await page.getByRole('link', { name: 'New sheet' }).first().waitFor();
      return page;
    },
    stop: async () => {
      await browser.close();
      await service.stop();
    },
  };
}

/** What axe finds against the page as it stands, one line a rule. */
export async function faultsByAxe(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return await page.evaluate(
    `axe.run().then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes.map(({ html }) => html).join(' | ')))`,
  );
}

/** Whether nothing has to be scrolled sideways. */
export const fitsAcross = (page: Page): Promise<boolean> =>
  page.evaluate('document.documentElement.scrollWidth <= innerWidth');
