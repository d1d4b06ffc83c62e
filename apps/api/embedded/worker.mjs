import { parentPort, workerData } from 'node:worker_threads';
import { PGlite } from '@electric-sql/pglite';
import { PGLiteSocketServer } from '@electric-sql/pglite-socket';

/**
 * The embedded Postgres, in a thread of its own so that its work never blocks requests. It is reached through a unix
 * socket with the ordinary driver; the socket asks for no password, so its folder belongs to one user alone.
 * Plain JavaScript, because a worker is loaded from a file by Node itself, under the test runner too.
 */
if (parentPort === null) throw new Error('The embedded Postgres runs in a thread of its own.');
const service = parentPort;
const database = await PGlite.create({ dataDir: workerData.folder });
const server = new PGLiteSocketServer({
  db: database,
  path: workerData.socketPath,
  maxConnections: workerData.connections,
});
server.addEventListener('error', (event) => {
  service.postMessage({ fault: String('detail' in event ? event.detail : event.type) });
});
await server.start();
service.postMessage({ ready: true });

service.once('message', async () => {
  await server.stop();
  await database.close();
  service.postMessage({ closed: true });
  service.close();
});
