import 'reflect-metadata';
import { readFileSync, mkdtempSync, rmSync } from 'node:fs';
import http from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Body, Controller, Inject, Module, Post } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { DataSource } from 'typeorm';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate } from '#lib/estimate';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { DefectRecordDto } from '../../apps/api/src/inputs/defect-record.dto.js';
import { checkedAs, DtoPipe } from '../../apps/api/src/edge/dto.pipe.js';
import { Log } from '../../apps/api/src/edge/log.js';
import { Database } from '../../apps/api/src/persistence/database.js';
import { newId } from '../../apps/api/src/persistence/ids.js';
import { start } from '../../apps/api/src/service.js';

/**
 * Whole requests of the service against a bare NestJS handler that validates the same body (the same class) and inserts
 * one row (the body as jsonb) into the same database, in the same process. The two take turns, so that whatever else the
 * machine does falls on both. Run from the build: node dist/test/bench/http.bench.js. BENCH_DATABASE_URL names a server;
 * otherwise the embedded database is used. BENCH_SECONDS is the time of one turn.
 */
const KEY = 'kp_a-key-that-opens-only-bench-databases';
const seconds = Number(process.env.BENCH_SECONDS ?? 3);
const turns = 3;
const callers = 8;
const body = readFileSync('apps/workshop/samples/foredeck.json', 'utf8');

@Controller('bare')
class BareController {
  constructor(@Inject(DataSource) private readonly source: DataSource) {}

  @Post()
  async create(@Body(new DtoPipe()) record: DefectRecordDto): Promise<{ readonly id: string }> {
    const id = newId();
    await this.source.query('INSERT INTO bare (id, body) VALUES ($1, $2::jsonb)', [
      id,
      JSON.stringify(record),
    ]);
    return { id };
  }
}

const folder = mkdtempSync(path.join(tmpdir(), 'kp-bench-'));
const service = await start(
  readConfiguration({
    PORT: '0',
    DATA_DIR: folder,
    FIRST_KEY: KEY,
    REQUESTS_PER_MINUTE: '9000000',
    LOG_LEVEL: 'warn',
    ...(process.env.BENCH_DATABASE_URL === undefined ? {} : { DATABASE_URL: process.env.BENCH_DATABASE_URL }),
  }),
  new Log('warn'),
);
const { dataSource } = service.app.get(Database);
await dataSource.query('CREATE TABLE IF NOT EXISTS bare (id uuid PRIMARY KEY, body jsonb NOT NULL)');

@Module({ controllers: [BareController], providers: [{ provide: DataSource, useValue: dataSource }] })
class BareModule {}

const bare = await NestFactory.create(BareModule, { logger: false });
await bare.listen(0, '127.0.0.1');
const bareUrl = await bare.getUrl();

interface Target {
  readonly name: string;
  readonly url: string;
  readonly payload: () => string;
}

const targets: readonly Target[] = [
  { name: 'bare handler: validate, insert one row', url: `${bareUrl}/bare`, payload: () => body },
  {
    name: 'POST /v1/organisations: key, validate, two rows in a transaction',
    url: `${service.url}/v1/organisations`,
    payload: () => '{"name":"Yard"}',
  },
  {
    name: 'POST /v1/estimates: key, validate, compute, store',
    url: `${service.url}/v1/estimates`,
    payload: () => body,
  },
];

const agent = new http.Agent({ keepAlive: true, maxSockets: callers });

function send({ url, payload }: Target): Promise<number> {
  const text = payload();
  return new Promise((resolve, reject) => {
    const request = http.request(
      url,
      {
        method: 'POST',
        agent,
        headers: {
          'content-type': 'application/json',
          'content-length': Buffer.byteLength(text),
          'authorization': `Bearer ${KEY}`,
        },
      },
      (response) => {
        response.resume();
        response.once('end', () => {
          resolve(response.statusCode ?? 0);
        });
      },
    );
    request.once('error', reject);
    request.end(text);
  });
}

/** Answers a second, all of which must have made something. */
async function throughput(target: Target): Promise<number> {
  const startedAt = performance.now();
  let answered = 0;
  const one = async (): Promise<void> => {
    while (performance.now() - startedAt < seconds * 1000) {
      const status = await send(target);
      if (status !== 201) throw new Error(`${target.name} answered ${status}`);
      answered += 1;
    }
  };
  await Promise.all(Array.from({ length: callers }, one));
  return answered / ((performance.now() - startedAt) / 1000);
}

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

function computeMs(): { readonly wall: number; readonly processor: number } {
  const record = structuredClone(checkedAs(DefectRecordDto, JSON.parse(body)));
  const took = Array.from({ length: 15 }, () => {
    const cpu = process.cpuUsage();
    const startedAt = performance.now();
    const made = estimate(record, shippedCatalogue, 'bench');
    if (!made.ok) throw new Error(JSON.stringify(made.problems));
    return { wall: performance.now() - startedAt, processor: process.cpuUsage(cpu).user / 1000 };
  }).slice(5);
  return {
    wall: middle(took.map(({ wall }) => wall)),
    processor: middle(took.map(({ processor }) => processor)),
  };
}

function validateMs(): number {
  const parsed = JSON.parse(body) as unknown;
  const took = Array.from({ length: 400 }, () => {
    const startedAt = performance.now();
    checkedAs(DefectRecordDto, parsed);
    return performance.now() - startedAt;
  }).slice(100);
  return middle(took);
}

for (const target of targets) for (let warm = 0; warm < 20; warm += 1) await send(target);
const rates = new Map<string, number[]>();
for (let turn = 0; turn < turns; turn += 1) {
  for (const target of targets)
    rates.set(target.name, [...(rates.get(target.name) ?? []), await throughput(target)]);
}
const medians = targets.map(({ name }) => middle(rates.get(name) ?? []));

const [{ version }]: readonly { readonly version: string }[] = await dataSource.query('SELECT version()');
console.log(
  `Node ${process.version}, ${version.split(',')[0].slice(0, 60)}; ${callers} callers, ${turns} turns of ${seconds} s each in rotation; medians`,
);
console.log('| request | answers a second | share of the bare handler |');
console.log('|---|---|---|');
targets.forEach(({ name }, index) => {
  console.log(`| ${name} | ${medians[index].toFixed(1)} | ${(medians[index] / medians[0]).toFixed(2)} |`);
});
const compute = computeMs();
console.log('');
console.log(
  `Sample (a): computed without the database in ${compute.wall.toFixed(1)} ms (processor ${compute.processor.toFixed(1)} ms), validated in ${validateMs().toFixed(3)} ms; medians.`,
);

await dataSource.query('DROP TABLE bare');
agent.destroy();
await bare.close();
await service.stop();
rmSync(folder, { recursive: true, force: true });
