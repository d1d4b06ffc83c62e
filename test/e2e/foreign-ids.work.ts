import { Log } from '../../apps/api/src/edge/log.js';
import { start } from '../../apps/api/src/service.js';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { TEST_KEY } from './database-of-test.js';
import { Asker, pairsOf, strangerTo, thingsOf, watchStatements, type Refused } from './foreign-ids.js';

/** Prints, as JSON, how the second organisation was refused at each operation, and what the first is answered there. */
watchStatements();
const service = await start(
  readConfiguration({ ...process.env, PORT: '0', REQUESTS_PER_MINUTE: '100000', LOG_LEVEL: 'error' }),
  new Log('error'),
);
const owner = new Asker(service.url, TEST_KEY);
const things = await thingsOf(owner);
const stranger = await strangerTo(owner);
const contract = JSON.parse((await owner.send('GET', '/openapi.json')).text);
const rows: { foreign: Refused; unknown: Refused; ownersStatus?: number }[] = [];
for (const { operation, foreign, unknown } of pairsOf(contract, things)) {
  // Once before, so that neither finds a cache cold.
  await stranger.refusal(operation, unknown);
  const row = {
    foreign: await stranger.refusal(operation, foreign),
    unknown: await stranger.refusal(operation, unknown),
  };
  const isRead = operation.startsWith('GET ');
  rows.push(isRead ? { ...row, ownersStatus: (await owner.send('GET', foreign)).status } : row);
}
console.log(JSON.stringify(rows));
await service.stop();
