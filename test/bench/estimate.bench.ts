import 'reflect-metadata';
import { readFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate, estimateVariants, type DefectRecord } from '#lib/estimate';
import type { Outcome } from '#lib/kernel';
import { DefectRecordDto } from '../../apps/api/src/inputs/defect-record.dto.js';
import { checkedAs } from '../../apps/api/src/edge/dto.pipe.js';

/**
 * How long the main job computes, without HTTP and without a database: the two invented samples as the service reads them.
 *
 * Run: npm run build && node dist/test/bench/estimate.bench.js
 * Budget (stated, not asserted): 50 ms for one estimate on a quiet core. Baseline: reading and writing the same record
 * as JSON. The processor's time stands beside the clock's, because others may use the machine.
 */
const TURNS = Number(process.env.BENCH_TURNS ?? 60);
const WARMING = 25;

const recordOf = (name: string): DefectRecord =>
  structuredClone<DefectRecord>(
    checkedAs(DefectRecordDto, JSON.parse(readFileSync(`apps/workshop/samples/${name}.json`, 'utf8'))),
  );

let consumed = 0;
const rows: Readonly<Record<string, string | number>>[] = [];

/** Medians of warmed turns: by the clock and by the processor, in milliseconds. */
function timed(name: string, turns: number, work: () => number): number {
  for (let turn = 0; turn < Math.min(WARMING, turns); turn += 1) consumed += work();
  const times: number[] = [];
  const processor: number[] = [];
  for (let turn = 0; turn < turns; turn += 1) {
    const used = process.cpuUsage();
    const from = performance.now();
    consumed += work();
    times.push(performance.now() - from);
    const { user, system } = process.cpuUsage(used);
    processor.push((user + system) / 1000);
  }
  const median = middle(times);
  rows.push({
    'work': name,
    'median ms': median.toPrecision(3),
    'best ms': Math.min(...times).toPrecision(3),
    'worst ms': Math.max(...times).toPrecision(3),
    'processor ms': middle(processor).toPrecision(3),
    turns,
  });
  return median;
}

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

function valueOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(JSON.stringify(outcome.problems));
}

const samples = (record: DefectRecord): number =>
  valueOf(estimate(record, shippedCatalogue, 'bench')).estimate.totals.samples;
const totalOf = (record: DefectRecord): number =>
  Number(valueOf(estimate(record, shippedCatalogue, 'bench')).estimate.totals.total.amount);

const foredeck = recordOf('foredeck');
const sideDeck = recordOf('side-deck');
const variants = [
  { code: 'relay', method: { skin: 'relay' } },
  { code: 're-bed', method: { skin: 're-bed' } },
  { code: 'vacuum', method: { press: 'vacuum' } },
  { code: 'shed', conditions: { shelter: 'shed' } },
] as const;

const first = performance.now();
consumed += totalOf(foredeck);
const firstMs = performance.now() - first;
const text = JSON.stringify(foredeck);
const json = timed(
  'read and write the record as JSON (baseline)',
  2000,
  () => JSON.stringify(JSON.parse(text)).length,
);
const one = timed('estimate (a), foredeck', TURNS, () => totalOf(foredeck));
timed('estimate (b), side deck', TURNS, () => totalOf(sideDeck));
timed('estimate (a), 1,000 cost samples', TURNS, () =>
  totalOf({ ...foredeck, pricing: { ...foredeck.pricing, samples: 1000 } }),
);
const four = timed(
  'four variants of (a) in one call',
  Math.ceil(TURNS / 4),
  () => valueOf(estimateVariants({ record: foredeck, variants }, shippedCatalogue)).rows.length,
);

console.table(rows);
console.log(
  `first estimate of the process ${firstMs.toFixed(0)} ms; estimate / JSON ${(one / json).toFixed(0)}; four variants / one estimate ${(four / one).toFixed(2)}`,
);
console.log(
  `${samples(foredeck)} cost samples and 300 calendars in each estimate, seeded; ${consumed.toFixed(0)} consumed; Node ${process.version}, ${cpus().length} cores, load ${loadavg()
    .map((load) => load.toFixed(1))
    .join(' ')}`,
);
