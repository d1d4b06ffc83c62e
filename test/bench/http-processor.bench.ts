import 'reflect-metadata';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { isMainThread, parentPort, Worker } from 'node:worker_threads';
import { Body, Controller, Inject, Module, Post } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { DataSource } from 'typeorm';
import { DefectRecordDto } from '../../apps/api/src/inputs/defect-record.dto.js';
import { checkedAs, DtoPipe } from '../../apps/api/src/edge/dto.pipe.js';
import { Log } from '../../apps/api/src/edge/log.js';
import { Database } from '../../apps/api/src/persistence/database.js';
import { newId } from '../../apps/api/src/persistence/ids.js';
import { start } from '../../apps/api/src/service.js';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { runService } from '../fault/running-service.js';

/**
 * What a request takes of the processor: an estimate beside the floor under it, which is the same validation, one insert of a
 * finished document and the same answer without working anything out; how much of it the event loop's thread takes; and the first
 * estimate after a start beside a warm one. Processor time, because others use the machine too; the client is in it.
 *
 * Run:  npm run build && node dist/test/bench/http-processor.bench.js       writes results/http-processor.md; Linux
 *       BENCH_DATABASE_URL names a server; otherwise the embedded database is used.
 */
const KEY = 'kp_a-key-that-opens-only-bench-databases';
const TURNS = 15;
const WARMING = 25;
const body = readFileSync('apps/workshop/samples/foredeck.json', 'utf8');
const headers = { 'authorization': `Bearer ${KEY}`, 'content-type': 'application/json' };
const database = process.env.BENCH_DATABASE_URL;

// A record that were refused would measure nothing.
checkedAs(DefectRecordDto, JSON.parse(body));

const finished = { text: '' };

@Controller('floor')
class FloorController {
  constructor(@Inject(DataSource) private readonly source: DataSource) {}

  /** The text is stored and sent as it is, so that nothing is counted that an estimate could save. */
  @Post()
  async create(@Body(new DtoPipe()) record: DefectRecordDto): Promise<unknown> {
    await this.source.query('INSERT INTO floor (id, record, result) VALUES ($1, $2::json, $3::json)', [
      newId(),
      JSON.stringify(record),
      finished.text,
    ]);
    return JSON.parse(finished.text);
  }
}

const post = async (url: string): Promise<string> => {
  const response = await fetch(url, { method: 'POST', headers, body });
  if (response.status !== 201) throw new Error(`${url} answered ${response.status}`);
  return response.text();
};

/** The client in a thread of its own, so that the event loop of the service does the service's work alone. */
class Client {
  private readonly thread = new Worker(new URL(import.meta.url));

  async post(url: string): Promise<void> {
    const answered = new Promise<void>((resolve, reject) => {
      this.thread.once('message', (failure?: string) => {
        if (failure === undefined) resolve();
        else reject(new Error(failure));
      });
    });
    this.thread.postMessage(url);
    return answered;
  }

  end(): Promise<number> {
    return this.thread.terminate();
  }
}

const answerFor = async (url: string): Promise<string | undefined> => {
  try {
    await post(url);
    return undefined;
  } catch (failure) {
    return String(failure);
  }
};

interface Taken {
  readonly processorMs: number;
  readonly loopMs: number;
}

const lowerQuartile = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 4)];

/** Processor time of the main thread so far, which runs the event loop; the first figure of the file, in nanoseconds. */
const loopMs = (): number =>
  Number(readFileSync(`/proc/self/task/${process.pid}/schedstat`, 'utf8').split(' ')[0]) / 1e6;

/** Processor time of the process, and of its event loop alone, for one request. */
async function once(client: Client, url: string): Promise<Taken> {
  const [cpu, loop] = [process.cpuUsage(), loopMs()];
  await client.post(url);
  const used = process.cpuUsage(cpu);
  return {
    processorMs: (used.user + used.system) / 1000,
    loopMs: loopMs() - loop,
  };
}

/** In turns, so that whatever else the machine does falls on all alike. */
async function taken(urls: readonly string[]): Promise<readonly Taken[]> {
  const client = new Client();
  for (let turn = 0; turn < WARMING; turn += 1) for (const url of urls) await client.post(url);
  const found: Taken[][] = urls.map(() => []);
  for (let turn = 0; turn < TURNS; turn += 1)
    for (const [place, url] of urls.entries()) found[place].push(await once(client, url));
  await client.end();
  return found.map((turns) => ({
    processorMs: lowerQuartile(turns.map(({ processorMs }) => processorMs)),
    loopMs: lowerQuartile(turns.map(({ loopMs }) => loopMs)),
  }));
}

async function beside(folder: string): Promise<readonly Taken[]> {
  const service = await start(
    readConfiguration({
      PORT: '0',
      DATA_DIR: folder,
      FIRST_KEY: KEY,
      REQUESTS_PER_MINUTE: '9000000',
      LOG_LEVEL: 'warn',
      ...(database === undefined ? {} : { DATABASE_URL: database }),
    }),
    new Log('warn'),
  );
  const { dataSource } = service.app.get(Database);
  await dataSource.query(
    'CREATE TABLE IF NOT EXISTS floor (id uuid PRIMARY KEY, record json NOT NULL, result json NOT NULL)',
  );
  @Module({ controllers: [FloorController], providers: [{ provide: DataSource, useValue: dataSource }] })
  class FloorModule {}
  const floor = await NestFactory.create(FloorModule, { logger: false });
  await floor.listen(0, '127.0.0.1');
  finished.text = await post(`${service.url}/v1/estimates`);
  const found = await taken([`${await floor.getUrl()}/floor`, `${service.url}/v1/estimates`]);
  await dataSource.query('DROP TABLE floor');
  await floor.close();
  await service.stop();
  return found;
}

/** Processor time of another process so far, in ms: its clock ticks are hundredths of a second. */
function processorOf(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1].split(' ');
  return 10 * (Number(fields[11]) + Number(fields[12]));
}

interface Started {
  readonly readyMs: number;
  readonly firstMs: number;
  readonly laterMs: number;
}

/** Of a process of its own: to be ready, for the first estimate, and for one of the next ten. */
async function fromTheStart(folder: string): Promise<Started> {
  const { url, child, ended } = await runService({
    DATA_DIR: folder,
    FIRST_KEY: KEY,
    LOG_LEVEL: 'info',
    DATABASE_URL: database ?? '',
  });
  const pid = child.pid ?? 0;
  const readyMs = processorOf(pid);
  await post(`${url}/v1/estimates`);
  const firstMs = processorOf(pid) - readyMs;
  const next: number[] = [];
  for (let turn = 0; turn < 10; turn += 1) {
    const before = processorOf(pid);
    await post(`${url}/v1/estimates`);
    next.push(processorOf(pid) - before);
  }
  child.kill('SIGTERM');
  await ended;
  return { readyMs, firstMs, laterMs: lowerQuartile(next) };
}

async function measuredAll(): Promise<void> {
  const folder = mkdtempSync(path.join(tmpdir(), 'kp-bench-'));
  const [floor, estimate] = await beside(folder);
  const starting = await fromTheStart(folder);
  rmSync(folder, { recursive: true, force: true });
  const ms = (value: number): string => value.toPrecision(3);
  const page = [
    '# Processor time of requests',
    `Foredeck sample, ${database === undefined ? 'embedded database' : 'database server'}, Node ${process.version}, load ${loadavg()[0].toFixed(1)} on 2 cores shared with other work; lower quartile of ${TURNS} turns after ${WARMING}, the client, in a thread of its own, counted in the processor's time and not in the event loop's.`,
    [
      '| request | processor ms | of it in the thread of the event loop, ms | times the floor |',
      '|---|---|---|---|',
      `| floor: validate, insert a finished document, answer it | ${ms(floor.processorMs)} | ${ms(floor.loopMs)} | 1 |`,
      `| POST /v1/estimates | ${ms(estimate.processorMs)} | ${ms(estimate.loopMs)} | ${ms(estimate.processorMs / floor.processorMs)} |`,
    ].join('\n'),
    [
      '| of a process of its own | processor ms |',
      '|---|---|',
      `| from the start until it listens, folder known | ${ms(starting.readyMs)} |`,
      `| first estimate | ${ms(starting.firstMs)} |`,
      `| one of the next ten | ${ms(starting.laterMs)} |`,
    ].join('\n'),
    `The first estimate after a start takes ${ms(starting.firstMs / starting.laterMs)} times one of the next.`,
  ];
  writeFileSync('test/bench/results/http-processor.md', `${page.join('\n\n')}\n`);
  console.log(page.slice(1).join('\n\n'));
}

if (isMainThread) await measuredAll();
else
  parentPort?.on('message', (url: string) => {
    void answerFor(url).then((failure) => parentPort?.postMessage(failure));
  });
