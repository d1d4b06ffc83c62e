/**
 * Whether the time of a refusal tells whose an id is: at every operation with an id, one that belongs to somebody else,
 * one that belongs to nobody, the same once more as a control, and a text that is no id at all.
 *
 * Run: npm run build && TEST_DATABASE_URL=postgresql://… node dist/test/bench/foreign-ids.bench.js
 * Processor time of service and client in one process, turns interleaved and their order changed from round to round, so
 * that what else the machine does falls on all alike. The difference that counts is that of medians, beside the one that
 * the control shows, which has no cause but chance. That the database is asked the same is held by a test
 * (`test/e2e/foreign-ids.spec.ts`); what is no id is refused by its form and is told apart by design, since it tells
 * nothing but what its sender knows.
 */
import os from 'node:os';
import { Log } from '../../apps/api/src/edge/log.js';
import { start } from '../../apps/api/src/service.js';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { databaseOfTest, TEST_KEY } from '../e2e/database-of-test.js';
import { Asker, pairsOf, strangerTo, thingsOf } from '../e2e/foreign-ids.js';

const ROUNDS = 21;
const WARM_ROUNDS = 3;

const kinds = ['foreign', 'unknown', 'control', 'malformed'] as const;
type Kind = (typeof kinds)[number];
type Times = Readonly<Record<Kind, number[]>>;

const sorted = (values: readonly number[]): readonly number[] => [...values].sort((a, b) => a - b);
const quantile = (values: readonly number[], share: number): number =>
  sorted(values)[Math.floor(share * (values.length - 1))];
const median = (values: readonly number[]): number => quantile(values, 0.5);

async function processorMsOf(ask: () => Promise<unknown>): Promise<number> {
  const used = process.cpuUsage();
  await ask();
  const { user, system } = process.cpuUsage(used);
  return (user + system) / 1000;
}

/** Every kind once a round, each round beginning with another. */
async function timesOf(
  stranger: Asker,
  operation: string,
  addresses: Readonly<Record<Kind, string>>,
): Promise<Times> {
  const times: Times = { foreign: [], unknown: [], control: [], malformed: [] };
  for (let round = 0; round < WARM_ROUNDS + ROUNDS; round += 1)
    for (let turn = 0; turn < kinds.length; turn += 1) {
      const kind = kinds[(turn + round) % kinds.length];
      const ms = await processorMsOf(() => stranger.refusal(operation, addresses[kind]));
      if (round >= WARM_ROUNDS) times[kind].push(ms);
    }
  return times;
}

const malformed = (unknown: string): string =>
  unknown.replace(/[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}|nobody-draft/g, 'no%20id');

const database = await databaseOfTest();
const unlimited = { REQUESTS_PER_MINUTE: '10000000', ORGANISATION_REQUESTS_PER_MINUTE: '10000000' };
const service = await start(
  readConfiguration({ ...database.environment, ...unlimited, PORT: '0', LOG_LEVEL: 'error' }),
  new Log('error'),
);
const owner = new Asker(service.url, TEST_KEY);
const things = await thingsOf(owner);
const stranger = await strangerTo(owner);
const contract = JSON.parse((await owner.send('GET', '/openapi.json')).text);
const rows: { readonly operation: string; readonly times: Times }[] = [];
for (const { operation, foreign, unknown } of pairsOf(contract, things)) {
  const addresses = { foreign, unknown, control: unknown, malformed: malformed(unknown) };
  rows.push({ operation, times: await timesOf(stranger, operation, addresses) });
}
await service.stop();
await database.remove();

const apart = (kind: Kind): readonly number[] =>
  rows.map(({ times }) => median(times[kind]) - median(times.unknown));
const ms = (value: number): string => value.toFixed(2);
const row = (kind: Kind): string => {
  const differences = apart(kind);
  const all = [0.05, 0.25, 0.5, 0.75, 0.95].map((share) => ms(quantile(differences, share)));
  return `| ${kind} | ${ms(median(rows.map(({ times }) => median(times[kind]))))} | ${all.join(' | ')} |`;
};
const reach = quantile(apart('control').map(Math.abs), 0.95);
const beyond = rows.filter((_, index) => Math.abs(apart('foreign')[index]) > reach);
console.log(
  [
    `${rows.length} operations, ${ROUNDS} rounds, Node ${process.version}, ${os.cpus().length} processors, load ${os.loadavg()[0].toFixed(1)}`,
    '',
    '| id | median of medians, ms | less the unknown, ms: 5 % | 25 % | 50 % | 75 % | 95 % |',
    '|---|---|---|---|---|---|---|',
    ...kinds.map(row),
    '',
    `The control is within ${ms(reach)} ms of the unknown at 95 % of the operations, the foreign id at ${((100 * (rows.length - beyond.length)) / rows.length).toFixed(0)} %. Beyond: ${beyond.map(({ operation }) => operation).join(', ') || 'none'}.`,
  ].join('\n'),
);
