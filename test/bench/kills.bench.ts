import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { randomStream } from '#lib/kernel';
import { TEST_KEY } from '../e2e/database-of-test.js';
import { lostOrDoubled, newLedger, writeKeyed, type Ledger } from '../fault/keyed-writing.js';
import { runService, type RunningService } from '../fault/running-service.js';
import { ownServer, type OwnServer } from './reliability/own-server.js';

/**
 * Three copies of the service on one database are killed over and over while writers write under keys, and then the database
 * is, as a power cut would. Afterwards everything that was acknowledged must be there once, and no answer may have been
 * another than an answer or "come back". Fails otherwise, and writes results/kills.md.
 *
 * Run:  npm run build && POSTGRES_BIN=/usr/lib/postgresql/15/bin node dist/test/bench/kills.bench.js [copies killed] [database killed] [minutes]
 *       No more is killed when the minutes are over, half of them for the copies; the table says how many kills there were.
 *       POSTGRES_UID names who runs the database where the bench runs as root.
 */
const COPIES = 3;
const COPY_KILLS = Number(process.argv[2] ?? 100);
const DATABASE_KILLS = Number(process.argv[3] ?? 50);
const MINUTES = Number(process.argv[4] ?? 10);
const WRITERS = 4;
const SEED = 20_261_129;
const TARGET = 'test/bench/results/kills.md';

interface Run {
  readonly what: string;
  readonly kills: number;
  readonly ledger: Ledger;
  readonly faults: readonly string[];
  readonly readyMs: readonly number[];
}

const pause = (ms: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, ms);
  });

const started = (server: OwnServer, folder: string): Promise<RunningService> =>
  runService({ DATABASE_URL: server.url, DATA_DIR: folder, FIRST_KEY: TEST_KEY, LOG_LEVEL: 'info' });

/** Whether the half of the time that one kind of kill has is over. */
function halfOver(): () => boolean {
  const until = Date.now() + MINUTES * 30_000;
  return () => Date.now() >= until;
}

/** Copies end with the bench, however it ends. */
function endingWithBench(copies: readonly RunningService[]): void {
  process.on('exit', () => {
    for (const { child } of copies) child.kill('SIGKILL');
  });
}

async function killedCopies(server: OwnServer, folder: string): Promise<Run> {
  const random = randomStream(SEED);
  const copies = [await started(server, folder)];
  endingWithBench(copies);
  while (copies.length < COPIES) copies.push(await started(server, folder));
  const isOver = halfOver();
  const ledger = newLedger();
  const writers = writersOn(ledger, () => copies[Math.floor(COPIES * random())].url);
  const readyMs: number[] = [];
  for (let kill = 0; kill < COPY_KILLS && !isOver(); kill += 1) {
    await pause(100 + 900 * random());
    const place = Math.floor(COPIES * random());
    copies[place].child.kill('SIGKILL');
    await copies[place].ended;
    const before = performance.now();
    copies[place] = await started(server, folder);
    readyMs.push(performance.now() - before);
  }
  ledger.isOver = true;
  await Promise.all(writers);
  const faults = await lostOrDoubled(ledger, copies[0].url);
  await stopped(copies);
  return { what: `one of ${COPIES} copies killed`, kills: readyMs.length, ledger, faults, readyMs };
}

async function killedDatabase(server: OwnServer, folder: string): Promise<Run> {
  const random = randomStream(SEED + 1);
  const copies = [await started(server, folder), await started(server, folder)];
  endingWithBench(copies);
  const isOver = halfOver();
  const ledger = newLedger();
  const writers = writersOn(ledger, () => copies[Math.floor(copies.length * random())].url);
  const readyMs: number[] = [];
  for (let kill = 0; kill < DATABASE_KILLS && !isOver(); kill += 1) {
    await pause(300 + 1200 * random());
    readyMs.push(await server.killAndStart());
  }
  ledger.isOver = true;
  await Promise.all(writers);
  const isUp = copies.every(({ child }) => child.exitCode === null);
  const faults = [
    ...(isUp ? [] : ['a copy ended with its database']),
    ...(await lostOrDoubled(ledger, copies[0].url)),
  ];
  await stopped(copies);
  return { what: 'the database killed', kills: readyMs.length, ledger, faults, readyMs };
}

const writersOn = (ledger: Ledger, addressOf: () => string): readonly Promise<void>[] =>
  Array.from({ length: WRITERS }, (_, writer) =>
    writeKeyed(`w${process.pid}-${Date.now()}-${writer}`, ledger, addressOf),
  );

async function stopped(copies: readonly RunningService[]): Promise<void> {
  for (const { child } of copies) child.kill('SIGTERM');
  await Promise.all(copies.map(({ ended }) => ended));
}

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

function row({ what, kills, ledger: { acknowledged, wrong, askedAgain }, faults, readyMs }: Run): string {
  const of = (kind: string): number => acknowledged.filter((one) => one.kind === kind).length;
  const counts = [kills, of('organisation'), of('estimate'), of('later'), askedAgain];
  return `| ${[what, ...counts, faults.length, wrong.length, `${(middle(readyMs) / 1000).toFixed(1)}`].join(' | ')} |`;
}

for (const signal of ['SIGINT', 'SIGTERM'] as const)
  process.once(signal, () => {
    process.exit(1);
  });
const bin = process.env.POSTGRES_BIN;
if (bin === undefined) throw new Error('POSTGRES_BIN must name the folder of initdb and postgres');
const uid = process.env.POSTGRES_UID === undefined ? undefined : Number(process.env.POSTGRES_UID);
const folder = mkdtempSync(path.join(tmpdir(), 'kp-kills-copies-'));
const server = await ownServer(bin, uid);
const runs = [await killedCopies(server, folder), await killedDatabase(server, folder)];
await server.remove();
rmSync(folder, { recursive: true, force: true });
const table = [
  '| what | kills | organisations acknowledged | estimates | estimates that came later | asked again under the key | lost or doubled | wrong statuses | s until it answered again, median |',
  '|---|---|---|---|---|---|---|---|---|',
  ...runs.map(row),
].join('\n');
writeFileSync(
  TARGET,
  `# Kills\n\n${WRITERS} writers ask for organisations and small estimates, each under an Idempotency-Key of its own, until they are answered, while processes are ended with SIGKILL at moments drawn from a seed. Afterwards everything acknowledged is looked for: it must be there once. Any status other than 201, 202, 409 and 503 is wrong. A database server of the bench's own; Node ${process.version}, a machine that others use too.\n\n${table}\n`,
);
console.log(table);
for (const { what, faults, ledger } of runs)
  for (const fault of [...faults, ...ledger.wrong]) console.error(`${what}: ${fault}`);
if (runs.some(({ faults, ledger }) => faults.length + ledger.wrong.length > 0)) process.exitCode = 1;
