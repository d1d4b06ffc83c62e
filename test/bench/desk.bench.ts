/**
 * How soon the desk answers a finger on a slow phone, and how far anything moves under it.
 *
 * Run: npm run build && node apps/desk/bundle.mjs && node dist/test/bench/desk.bench.js
 * Profile: processor slowed four times, 150 ms there and back, 1.6 Mbit/s down, 0.75 Mbit/s up: "slow 4G" as general
 * page-speed tools emulate it (Lighthouse, throttling documentation). A machine that is busy otherwise measures longer.
 * Budgets (stated, not asserted): 2 s until the page takes input, no layout shift (below 0.1: web.dev, CLS, "good").
 */
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { leastRecord } from '../../apps/api/src/inputs/least-record.js';
import { startService, type RunningService } from '../../apps/workshop/demo-service.js';

const RUNS = 7;
const profile = {
  offline: false,
  latency: 150,
  downloadThroughput: (1.6 * 1_000_000) / 8,
  uploadThroughput: 750_000 / 8,
};
const SLOWDOWN = 4;

/** Sums layout shifts nobody asked for, and remembers when the last long task of the page ended. */
const watch = `
  window.bench = { shift: 0, busyUntil: 0 };
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.bench.shift += entry.value;
  }).observe({ type: 'layout-shift', buffered: true });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) window.bench.busyUntil = entry.startTime + entry.duration;
  }).observe({ type: 'longtask', buffered: true });`;

interface Measured {
  readonly signInMs: number;
  readonly sheetMs: number;
  readonly shift: number;
}

async function main(): Promise<void> {
  const folder = mkdtempSync(path.join(tmpdir(), 'kp-bench-'));
  const service = await startService(folder);
  await fetch(`${service.url}/v1/estimates`, {
    method: 'POST',
    headers: { 'authorization': `Bearer ${service.apiKey}`, 'content-type': 'application/json' },
    body: JSON.stringify(leastRecord),
  });
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
  const all: Measured[] = [];
  for (let run = 0; run < RUNS; run += 1) {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
    all.push(await measured(await context.newPage(), service));
    await context.close();
  }
  await browser.close();
  await service.stop();
  rmSync(folder, { recursive: true, force: true });
  print(all);
}

async function measured(page: Page, { url, apiKey }: RunningService): Promise<Measured> {
  const slow = await page.context().newCDPSession(page);
  await slow.send('Network.enable');
  await slow.send('Network.emulateNetworkConditions', profile);
  await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  await page.addInitScript(watch);
  await page.goto(url);
  await page.getByRole('button', { name: 'Sign in' }).waitFor();
  const signInMs = await takesInputAt(page);
  await page.getByLabel('Key', { exact: true }).fill(apiKey);
  await page.getByRole('button', { name: 'Sign in' }).tap();
  await page.getByRole('link', { name: 'New sheet' }).first().waitFor();
  const pressedAt: number = await page.evaluate('performance.now()');
  await page.getByRole('link', { name: 'New sheet' }).first().tap();
  await page.getByRole('tab', { name: 'Draw' }).waitFor();
  const sheetMs = (await takesInputAt(page)) - pressedAt;
  await page.getByRole('button', { name: 'Draw the panel' }).tap();
  await page.waitForTimeout(1000);
  return { signInMs, sheetMs, shift: await page.evaluate('window.bench.shift') };
}

/** When what was waited for is painted and the thread is free: one frame later, or after the last long task. */
const takesInputAt = (page: Page): Promise<number> =>
  page.evaluate(
    `new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(Math.max(performance.now(), window.bench.busyUntil)))))`,
  );

function print(all: readonly Measured[]): void {
  const line = (what: string, values: readonly number[], digits: number): string => {
    const sorted = [...values].sort((a, b) => a - b);
    const [least, middle, most] = [0, Math.floor(sorted.length / 2), sorted.length - 1].map(
      (at) => sorted[at],
    );
    return `| ${what} | ${middle.toFixed(digits)} | ${least.toFixed(digits)} | ${most.toFixed(digits)} |`;
  };
  const rows = [
    line(
      'page opened until it takes input, ms',
      all.map(({ signInMs }) => signInMs),
      0,
    ),
    line(
      'new sheet pressed until it takes input, ms',
      all.map(({ sheetMs }) => sheetMs),
      0,
    ),
    line(
      'layout shift from opening to a drawn panel',
      all.map(({ shift }) => shift),
      4,
    ),
  ];
  const [{ model }] = os.cpus();
  console.log(
    `${model.trim()}, ${os.cpus().length} processors, load ${os.loadavg()[0].toFixed(1)}, ${RUNS} runs\n`,
  );
  console.log(['| measured | median | least | most |', '|---|---|---|---|', ...rows].join('\n'));
}

await main();
