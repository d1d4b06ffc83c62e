import 'reflect-metadata';
import { ConfigurationFault, readConfiguration } from './settings/configuration.js';
import { failureFacts, Log } from './edge/log.js';
import { start } from './service.js';

/** Starts the service from the environment, and stops it when the process is asked to end. */
async function main(): Promise<void> {
  const configuration = readConfiguration(process.env);
  const log = new Log(configuration.logLevel);
  const service = await start(configuration, log);
  if (service.firstKey !== undefined) {
    process.stdout.write(`\nThe first key, shown only now; keep it:\n\n    ${service.firstKey}\n\n`);
  }
  log.entry('info', 'listening', { url: service.url, docs: `${service.url}/docs` });
  for (const signal of ['SIGTERM', 'SIGINT'] as const) {
    process.once(signal, () => {
      log.entry('info', 'stopping', { signal });
      service.stop().then(() => {
        process.exit(0);
      }, fail);
    });
  }
}

function fail(failure: unknown): void {
  if (failure instanceof ConfigurationFault) process.stderr.write(`${failure.message}\n`);
  else new Log('info').entry('error', 'The service could not start or stop', failureFacts(failure));
  process.exit(1);
}

main().catch(fail);
