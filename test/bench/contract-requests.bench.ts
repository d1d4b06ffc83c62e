import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { OpenAPIObject } from '@nestjs/swagger';
import { madeRequests } from '../contract/made-requests.js';
import { seedsFrom } from '../contract/seeds.js';
import { TEST_KEY } from '../e2e/database-of-test.js';
import { runService } from '../fault/running-service.js';

/**
 * Requests made from the contract, catalogue writes and imports among them, against a service of its own on the loopback. None
 * may be answered with a 5xx but 503, with a status that is not declared, or in another shape. Ends by itself after so many
 * requests or minutes, writes results/contract-requests.md, and fails where a rule is broken.
 *
 * Run:  npm run build && node dist/test/bench/contract-requests.bench.js [requests] [minutes] [seed]
 *       BENCH_DATABASE_URL names a server; otherwise the embedded database is used.
 */
const COUNT = Number(process.argv[2] ?? 50_000);
const MINUTES = Number(process.argv[3] ?? 30);
const SEED = Number(process.argv[4] ?? 20_261_129);

const folder = mkdtempSync(path.join(tmpdir(), 'kp-made-'));
const database = process.env.BENCH_DATABASE_URL;
const service = await runService({
  DATA_DIR: folder,
  FIRST_KEY: TEST_KEY,
  LOG_LEVEL: 'info',
  DATABASE_URL: database ?? '',
});
const document = JSON.parse(readFileSync('test/contract/openapi.json', 'utf8')) as OpenAPIObject;
const made = await madeRequests({
  url: service.url,
  key: TEST_KEY,
  document,
  ...(await seedsFrom(service.url, TEST_KEY)),
  count: COUNT,
  seed: SEED,
  untilMs: Date.now() + MINUTES * 60_000,
});
service.child.kill('SIGTERM');
await service.ended;
rmSync(folder, { recursive: true, force: true });

const statuses = Object.entries(made.byStatus).map(([status, count]) => `| ${status} | ${count} |`);
const page = [
  '# Requests made from the contract',
  `${made.requests} requests of ${made.operations} operations, of which ${made.successful} were answered with success at least once; seed ${SEED}, ${database === undefined ? 'embedded database' : 'database server'}, Node ${process.version}. Bodies are valid ones with up to three changes, or made from their schema; names in addresses are those that answers have given, and one in ten is none. Left out: what would end the bench's own key, and webhook endpoints, to which the service would send.`,
  ['| status | answers |', '|---|---|', ...statuses].join('\n'),
  `Broken rules (a 5xx but 503, an undeclared status, an answer of another shape): ${made.faults.length}.`,
];
writeFileSync('test/bench/results/contract-requests.md', `${page.join('\n\n')}\n`);
console.log(page.slice(1).join('\n\n'));
for (const fault of made.faults.slice(0, 50)) console.error(fault);
if (made.faults.length > 0) process.exitCode = 1;
