import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import sharp from 'sharp';
import { type DefectRecord, Kingplank } from '../../libs/sdk/src/index.js';
import { startService } from './demo-service.js';

/**
 * Draws apps/desk/desk.png, the picture of the README: the desk with an invented sample.
 * Run: npm run build && node apps/desk/bundle.mjs && node dist/apps/workshop/desk-picture.js
 */
const root = process.cwd();
const folder = mkdtempSync(join(tmpdir(), 'kp-picture-'));
const service = await startService(folder);
const client = new Kingplank({ baseUrl: service.url, apiKey: service.apiKey, timeoutMs: 120_000 });
const sample = join(root, 'apps/workshop/samples/foredeck.json');
const record: DefectRecord = JSON.parse(readFileSync(sample, 'utf8'));
const { id } = await client.estimates.create(record);
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const page = await browser.newPage({ viewport: { width: 1280, height: 820 }, colorScheme: 'light' });
await page.goto(`${service.url}/#/estimates/${id}`);
await page.getByLabel('Key', { exact: true }).fill(service.apiKey);
await page.getByRole('button', { name: 'Sign in' }).click();
await page.getByRole('tab', { name: 'See' }).click({ timeout: 120_000 });
await page.locator('.price .cell-range').getByText('–').waitFor({ timeout: 120_000 });
const picture = sharp(await page.screenshot()).png({ palette: true, colours: 64, effort: 10 });
await picture.toFile(join(root, 'apps/desk/desk.png'));
await browser.close();
await service.stop();
rmSync(folder, { recursive: true, force: true });
