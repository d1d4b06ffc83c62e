import { NestFactory } from '@nestjs/core';
import type { NestExpressApplication } from '@nestjs/platform-express';
import type { Server } from 'node:http';
import { setTimeout as delay } from 'node:timers/promises';
import { AppModule } from './app.module.js';
import type { Configuration } from './settings/configuration.js';
import { Metrics } from './edge/metrics.js';
import { Readiness } from './edge/readiness.js';
import { crossOrigin, edge } from './edge/every-answer.js';
import { StrictAdapter } from './edge/http-server.js';
import { Log } from './edge/log.js';
import { packed } from './edge/packed.js';
import { serveDesk } from './desk.js';
import { serveDocs } from './docs.js';
import { DeliveryWorker } from './events/delivery-worker.js';
import { OperationWorker } from './operations/operation-worker.js';
import { Database } from './persistence/database.js';
import { Workbench } from './workbench/workbench.js';
import { Seeding } from './persistence/seeding.js';

export interface Service {
  readonly url: string;
  readonly app: NestExpressApplication;
  /** Shown once, when the database was new. */
  readonly firstKey?: string;
  /** Stops taking work, lets what is under way finish, then closes everything. */
  readonly stop: () => Promise<void>;
}

/** The application, assembled but touching neither the database nor a port. */
export async function assemble(
  configuration: Configuration,
  log = new Log(configuration.logLevel),
): Promise<NestExpressApplication> {
  const app = await NestFactory.create<NestExpressApplication>(
    AppModule.with(configuration, log),
    new StrictAdapter(configuration),
    {
      bodyParser: false,
      logger: log,
      abortOnError: false,
    },
  );
  app.disable('x-powered-by');
  app.disable('etag');
  app.set('trust proxy', configuration.trustedProxies);
  app.set('query parser', 'simple');
  app.use(edge(log, app.get(Metrics), configuration));
  app.use(crossOrigin(configuration));
  app.use(packed);
  serveDocs(app);
  serveDesk(app, log);
  return app;
}

/** A running service. */
export async function start(
  configuration: Configuration,
  log = new Log(configuration.logLevel),
): Promise<Service> {
  const app = await assemble(configuration, log);
  const database = app.get(Database);
  await database.open();
  const firstKey = await closingOnFailure(database, async () => {
    const made = await app.get(Seeding).run();
    await app.init();
    await app.get(Workbench).warm();
    await app.listen(configuration.port, configuration.host);
    if (configuration.databaseUrl !== undefined && configuration.webhookSecretsKeys.length === 0)
      log.entry('warn', 'Without WEBHOOK_SECRETS_KEYS webhook secrets stand in the database as they are');
    app.get(OperationWorker).start();
    app.get(DeliveryWorker).start();
    return made;
  });
  const stop = onceOnly(() => stopGently(app, configuration));
  return { url: await app.getUrl(), app, firstKey, stop };
}

async function stopGently(
  app: NestExpressApplication,
  { drainMs, lameDuckMs }: Configuration,
): Promise<void> {
  app.get(Readiness).stop();
  await delay(lameDuckMs);
  const server: Server = app.getHttpServer();
  const closed = new Promise<void>((resolve) => {
    server.close(() => {
      resolve();
    });
  });
  // Idle keep-alive connections would hold the server open for as long as their callers like.
  server.closeIdleConnections();
  const idleSweep = setInterval(() => {
    server.closeIdleConnections();
  }, 50);
  const patience = setTimeout(() => {
    server.closeAllConnections();
  }, drainMs);
  await closed;
  clearInterval(idleSweep);
  clearTimeout(patience);
  await app.close();
  await app.get(Database).close();
}

async function closingOnFailure<T>(database: Database, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (failure) {
    await database.close();
    throw failure;
  }
}

function onceOnly(work: () => Promise<void>): () => Promise<void> {
  let running: Promise<void> | undefined;
  return () => (running ??= work());
}
