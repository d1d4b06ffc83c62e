import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ProblemError, type DefectRecord, Kingplank, type StoredEstimate } from '../../libs/sdk/src/index.js';
import { startService } from './demo-service.js';
import { summaryText } from './demo-summary.js';

/** The main job from end to end: service, embedded database, client, document, drawings. All data is invented. */
const root = process.cwd();
const output = join(root, 'demo-output');
const samples = join(root, 'apps', 'workshop', 'samples');
const names = process.argv.slice(2).length > 0 ? process.argv.slice(2) : ['foredeck'];

async function main(): Promise<void> {
  rmSync(output, { recursive: true, force: true });
  mkdirSync(output, { recursive: true });
  say('Starting the service on an embedded Postgres in demo-output/database (about 5 s) …');
  const service = await startService(join(output, 'database'));
  const made: string[] = [];
  let key = '';
  try {
    const client = new Kingplank({ baseUrl: service.url, apiKey: service.apiKey, timeoutMs: 120_000 });
    for (const name of names) made.push(await estimateSample(client, name));
    key = service.apiKey;
  } finally {
    await service.stop();
  }
  say(`Everything is in ${output}.`);
  sayDesk(made, key);
}

/** The desk opens on what was just made, once the demo's own database is served. */
function sayDesk(made: readonly string[], key: string): void {
  say('The desk with it: DATA_DIR=demo-output/database npm start, then');
  for (const id of made) say(`  http://127.0.0.1:3000/#/estimates/${id}`);
  say(`  and sign in with the key of this invented database: ${key}`);
}

/** The id of the estimate that was made. */
async function estimateSample(client: Kingplank, name: string): Promise<string> {
  const record: DefectRecord = JSON.parse(readFileSync(join(samples, `${name}.json`), 'utf8'));
  say(`Submitting the invented sample "${name}" …`);
  const stored = await client.estimates.create(record);
  console.log(summaryText(stored.estimate));
  await keepDocuments(client, stored, name);
  return stored.id;
}

async function keepDocuments(
  client: Kingplank,
  { id, estimate }: StoredEstimate,
  name: string,
): Promise<void> {
  writeFileSync(join(output, `${name}.json`), `${JSON.stringify(estimate, undefined, 2)}\n`);
  const { items } = await client.estimates.drawings(id);
  for (const drawing of items.filter((item) => !item.name.includes('template'))) {
    writeFileSync(
      join(output, `${name}-${drawing.name}.svg`),
      await client.estimates.drawing(id, drawing.name),
    );
  }
  if (estimate.process.calendar.startDate !== undefined)
    writeFileSync(join(output, `${name}.ics`), await client.estimates.iCalendar(id));
  say('Setting the report and the job pack as PDF …');
  const report = await client.estimates.pdf(id);
  writeFileSync(join(output, `${name}-report.pdf`), report.bytes);
  writeFileSync(join(output, `${name}-quotation.xml`), await client.estimates.quotation(id));
  const jobPack = await client.estimates.pdf(id, { document: 'job-pack' });
  writeFileSync(join(output, `${name}-job-pack.pdf`), jobPack.bytes);
}

function say(text: string): void {
  console.error(`· ${text}`);
}

main().catch((failure: unknown) => {
  console.error(failure instanceof ProblemError ? failure.message : failure);
  process.exit(1);
});
