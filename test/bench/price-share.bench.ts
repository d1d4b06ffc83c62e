import { readFileSync } from 'node:fs';
import { Session, type Profiler } from 'node:inspector/promises';
import { cpus, loadavg } from 'node:os';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate, type DefectRecord } from '#lib/estimate';
import { DefectRecordDto } from '../../apps/api/src/inputs/defect-record.dto.js';
import { checkedAs } from '../../apps/api/src/edge/dto.pipe.js';
import { randomJobs } from '../property/random-jobs.js';
import { processorMs } from './processor.js';

/**
 * What planning again, the calendars of all extents and paces, and the risk add to an estimate: of the samples that a profiler
 * takes of warm estimates, those inside each of them, as a share of the processor time of an estimate. The rungs that are only
 * compared are in it.
 *
 * Run:  npm run build && node dist/test/bench/price-share.bench.js
 */
const AIM_MS = 5;
const WARMING = 12;
const TURNS = 20;
const SAMPLE_EVERY_US = 200;

/** By the function under which a sample lies. */
const parts: Readonly<Record<string, string>> = {
  replanned: 'planned again at other extents',
  roughExtents: 'planned again at other extents',
  scheduleOf: 'calendars',
  jobAtExtents: 'money at other extents',
  jobRisk: 'risk',
  contingencyFor: 'risk on better evidence',
};

const sample = (name: string): DefectRecord =>
  structuredClone<DefectRecord>(
    checkedAs(DefectRecordDto, JSON.parse(readFileSync(`apps/workshop/samples/${name}.json`, 'utf8'))),
  );
const works: readonly (readonly [name: string, records: readonly DefectRecord[]])[] = [
  ['foredeck', [sample('foredeck')]],
  ['side-deck', [sample('side-deck')]],
  ['ten invented jobs, seed 3', randomJobs(10, 3).map(({ record }) => record)],
];

process.stdout.write(
  `${cpus()[0].model}, Node.js ${process.version}, load ${loadavg()[0].toFixed(1)}; aim ${AIM_MS} ms together\n`,
);
for (const [name, records] of works) process.stdout.write(`${await measured(name, records)}\n`);

async function measured(name: string, records: readonly DefectRecord[]): Promise<string> {
  const all = (): void => records.forEach((record) => estimate(record, shippedCatalogue, 'bench'));
  for (let turn = 0; turn < WARMING; turn += 1) all();
  const eachMs = Array.from({ length: TURNS }, () => processorMs(all) / records.length).sort((a, b) => a - b);
  const estimateMs = eachMs[Math.floor(TURNS / 4)];
  const shares = sharesIn(await profileOf(() => Array.from({ length: TURNS }, all)));
  const together = [...shares.values()].reduce((sum, share) => sum + share, 0);
  const rows = [...shares].map(([part, share]) => `  ${(share * estimateMs).toFixed(2)} ms  ${part}`);
  return [
    `${name}: ${estimateMs.toFixed(1)} ms, of which ${(together * estimateMs).toFixed(2)} ms`,
    ...rows,
  ].join('\n');
}

async function profileOf(run: () => unknown): Promise<Profiler.Profile> {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.setSamplingInterval', { interval: SAMPLE_EVERY_US });
  await session.post('Profiler.start');
  run();
  const { profile } = await session.post('Profiler.stop');
  session.disconnect();
  return profile;
}

/** Of the samples in which something runs, the share under each part; what lies under two counts for the outer one. */
function sharesIn({ nodes }: Profiler.Profile): ReadonlyMap<string, number> {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const shares = new Map<string, number>();
  let whole = 0;
  const count = (id: number, under: string | undefined): void => {
    const node = byId.get(id);
    if (node === undefined) return;
    const { functionName } = node.callFrame;
    const part = under ?? parts[functionName];
    const hits = functionName === '(idle)' ? 0 : (node.hitCount ?? 0);
    whole += hits;
    if (part !== undefined) shares.set(part, (shares.get(part) ?? 0) + hits);
    for (const child of node.children ?? []) count(child, part);
  };
  count(nodes[0].id, undefined);
  return new Map([...shares].map(([part, hits]) => [part, hits / whole]));
}
