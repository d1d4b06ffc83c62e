import http from 'node:http';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runService } from '../fault/running-service.js';

/**
 * How fast the service answers others while long cutting plans run, while callers give up theirs, and how much memory it
 * takes meanwhile. Nothing is asserted: what is printed goes to results/heavy-load.md. Run from the build:
 * node dist/test/bench/heavy-load.bench.js
 */
const KEY = 'kp_a-key-that-opens-only-bench-databases';
const target = join(
  dirname(fileURLToPath(import.meta.url)),
  '..',
  '..',
  '..',
  'test',
  'bench',
  'results',
  'heavy-load.md',
);
const planSeconds = 10;
const plansAtOnce = 4;
const pauseMs = 5;

interface Answered {
  readonly status: number;
  readonly ms: number;
  readonly text: string;
}

/** One request; ended after `giveUpMs` when that is given. */
function ask(url: string, body: string | undefined, giveUpMs?: number): Promise<Answered> {
  const start = performance.now();
  return new Promise((resolve, reject) => {
    const request = http.request(
      url,
      {
        method: body === undefined ? 'GET' : 'POST',
        headers: { 'authorization': `Bearer ${KEY}`, 'content-type': 'application/json' },
      },
      (response) => {
        let text = '';
        response.on('data', (part: unknown) => {
          text += String(part);
        });
        response.once('end', () => {
          resolve({ status: response.statusCode ?? 0, ms: performance.now() - start, text });
        });
      },
    );
    request.once('error', (failure) => {
      if (giveUpMs === undefined) reject(failure);
      else resolve({ status: 0, ms: performance.now() - start, text: '' });
    });
    if (giveUpMs !== undefined)
      setTimeout(() => {
        request.destroy();
      }, giveUpMs);
    request.end(body);
  });
}

/** A roll of many different outlines: a search that never finishes by itself. */
function longPlan(pieceCount: number, seconds: number): string {
  const pieces = Array.from({ length: 60 }, (_, k) => {
    const [length, width, cut] = [120 + ((k * 37) % 180), 90 + ((k * 53) % 140), 20 + ((k * 29) % 60)];
    return {
      id: `p${k}`,
      outline: [
        [0, 0],
        [length, 0],
        [length, width - cut],
        [length - cut, width],
        [cut / 2, width],
      ],
      count: Math.floor(pieceCount / 60),
      turnsDeg: [0, 180],
    };
  });
  return JSON.stringify({
    pieces,
    roll: { widthMm: 1270 },
    kerfMm: 2,
    edgeTrimMm: 5,
    workUnits: 1_000_000,
    timeLimitS: seconds,
  });
}

async function latencies(url: string, until: () => boolean): Promise<readonly number[]> {
  const times: number[] = [];
  while (!until()) {
    const { ms, status } = await ask(url, undefined);
    if (status !== 200) throw new Error(`health answered ${status}`);
    times.push(ms);
    await new Promise((resolve) => {
      setTimeout(resolve, pauseMs);
    });
  }
  return times.sort((a, b) => a - b);
}

const at = (sorted: readonly number[], share: number): string =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))].toFixed(1);
const latencyRow = (title: string, times: readonly number[]): string =>
  `| ${title} | ${times.length} | ${at(times, 0.5)} | ${at(times, 0.99)} | ${at(times, 1)} |`;

async function whileWaiting(url: string, work: Promise<unknown>): Promise<readonly number[]> {
  let isDone = false;
  const done = work.then(
    () => {
      isDone = true;
    },
    (failure: unknown) => {
      isDone = true;
      throw failure;
    },
  );
  const times = await latencies(url, () => isDone);
  await done;
  return times;
}

/** The most memory the service has held so far, where the system tells. */
function peakMb(): string {
  const file = `/proc/${String(service.child.pid)}/status`;
  const peak = existsSync(file) ? /VmHWM:\s+(\d+) kB/.exec(readFileSync(file, 'utf8'))?.[1] : undefined;
  return peak === undefined ? 'not told by this system' : (Number(peak) / 1024).toFixed(0);
}

function forMs(ms: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, ms);
  });
}

const folder = mkdtempSync(join(tmpdir(), 'kp-bench-'));
const service = await runService({ DATA_DIR: folder, FIRST_KEY: KEY, LOG_LEVEL: 'info' });
const health = `${service.url}/health/live`;
const plans = `${service.url}/v1/estimating/cutting-plan`;
await ask(health, undefined);
const memory = [`| started | ${peakMb()} |`];

const idle = await whileWaiting(health, forMs(5000));
const answers: Answered[] = [];
const busy = await whileWaiting(
  health,
  Promise.all(
    Array.from({ length: plansAtOnce }, async () => {
      answers.push(await ask(plans, longPlan(60, planSeconds)));
    }),
  ),
);

memory.push(`| after ${plansAtOnce} plans of 60 pieces | ${peakMb()} |`);

const left = await Promise.all([1, 2, 3].map(() => ask(plans, longPlan(60, 60), 1500)));
const afterwards = await ask(
  plans,
  JSON.stringify({
    pieces: [
      {
        id: 'a',
        outline: [
          [0, 0],
          [100, 0],
          [100, 100],
          [0, 100],
        ],
        turnsDeg: [0],
      },
    ],
    roll: { widthMm: 200 },
    kerfMm: 0,
    edgeTrimMm: 0,
    workUnits: 1,
  }),
);

const many = await ask(plans, longPlan(1500, planSeconds));
const refused = await ask(plans, longPlan(5000, planSeconds));
memory.push(`| after one of 1500 pieces and one of 5000 refused | ${peakMb()} |`);
service.child.kill('SIGTERM');
await service.ended;
rmSync(folder, { recursive: true });

const lines = [
  '# The service under long cutting plans',
  '',
  `Wall clock on a machine that others use too; Node ${process.version}. Health is asked every ${pauseMs} ms.`,
  '',
  '| health, while | answers | median ms | 99 % ms | longest ms |',
  '|---|---|---|---|---|',
  latencyRow('nothing else runs', idle),
  latencyRow(`${plansAtOnce} plans of ${planSeconds} s each are asked for at once`, busy),
  '',
  '| cutting plan | status | ms |',
  '|---|---|---|',
  ...answers
    .sort((p, q) => p.ms - q.ms)
    .map(
      ({ status, ms }, k) =>
        `| ${k + 1} of ${plansAtOnce}, ${planSeconds} s each | ${status} | ${ms.toFixed(0)} |`,
    ),
  ...left.map(({ ms }) => `| of 60 s, given up by its caller | none | ${ms.toFixed(0)} |`),
  `| small one right afterwards | ${afterwards.status} | ${afterwards.ms.toFixed(0)} |`,
  `| of 1500 pieces on a roll, ${planSeconds} s | ${many.status} | ${many.ms.toFixed(0)} |`,
  `| of 5000 pieces, refused | ${refused.status} | ${refused.ms.toFixed(0)} |`,
  '',
  '| most memory held | MB |',
  '|---|---|',
  ...memory,
];
console.log(lines.join('\n'));
mkdirSync(dirname(target), { recursive: true });
writeFileSync(target, `${lines.join('\n')}\n`);
