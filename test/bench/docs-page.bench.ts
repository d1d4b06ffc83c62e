/**
 * How soon the page of the interface at /docs/api shows an operation that can be opened.
 *
 * Run: npm run build && node dist/test/bench/docs-page.bench.js
 * No slower profile: whoever reads it sits at a desk. Each run has a browser context of its own, so that nothing is kept
 * from the run before; the service has made its document once. Budget (stated, not asserted): 1.5 s. The time that the
 * page's own thread had a processor stands beside it, because on a busy machine the clock goes on meanwhile.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { chromium, type Browser } from 'playwright-core';
import { startService } from '../../apps/workshop/demo-service.js';

const RUNS = 5;

interface Measured {
  /** From opening until the groups of operations can be pressed. */
  readonly groupsMs: number;
  /** From opening until the first operation of a pressed group is there. */
  readonly operationMs: number;
  /** Processor time of the page's thread until then. */
  readonly workedMs: number;
}

async function measured(browser: Browser, url: string): Promise<Measured> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const startedAt = performance.now();
  await page.goto(`${url}/docs/api`);
  await page.locator('.opblock-tag').first().waitFor();
  const groupsMs = performance.now() - startedAt;
  await page.locator('.opblock-tag').first().click();
  await page.locator('.opblock').first().waitFor();
  const operationMs = performance.now() - startedAt;
  const { metrics } = await session.send('Performance.getMetrics');
  const worked = metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
  await context.close();
  return { groupsMs, operationMs, workedMs: 1000 * worked };
}

const folder = mkdtempSync(path.join(os.tmpdir(), 'kp-bench-'));
const service = await startService(folder);
await fetch(`${service.url}/openapi.json`);
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const all: Measured[] = [];
for (let run = 0; run < RUNS; run += 1) all.push(await measured(browser, service.url));
await browser.close();
await service.stop();
rmSync(folder, { recursive: true, force: true });

const line = (what: string, name: keyof Measured): string => {
  const sorted = all.map((one) => one[name]).sort((a, b) => a - b);
  const shown = [sorted[Math.floor(RUNS / 2)], sorted[0], sorted[RUNS - 1]].map((ms) => ms.toFixed(0));
  return `| ${what} | ${shown.join(' | ')} |`;
};
console.log(
  [
    `${os.cpus()[0].model.trim()}, ${os.cpus().length} processors, load ${os.loadavg()[0].toFixed(1)}, ${RUNS} runs`,
    '',
    '| measured, ms | median | least | most |',
    '|---|---|---|---|',
    line('page opened until its groups can be pressed', 'groupsMs'),
    line('until the first operation of a pressed group', 'operationMs'),
    line("processor time of the page's thread until then", 'workedMs'),
  ].join('\n'),
);
