import 'reflect-metadata';
import { execFileSync } from 'node:child_process';
import { annexNames, jobPackOf, reportOf, type ReportRequest } from '#lib/drawings';
import { documentJob } from '../../apps/api/src/documents/document.job.js';
import { pdfPress } from '../../apps/api/src/documents/typst-compiler.js';
import { Metrics } from '../../apps/api/src/edge/metrics.js';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { Workbench } from '../../apps/api/src/workbench/workbench.js';
import { sampleRequest, smallSample, type SampleSize } from '../support/sample-estimate.js';

/**
 * Reports of the invented foredeck and of 300 lines with 40 fittings and six zones: layout and setting, every report
 * a different one (its number and its amounts change), warmed, results consumed, medians. Budgets: 400 ms and 600 ms
 * warm; memory of the service flat over 1,000 reports
 * (`KINGPLANK_BENCH_REPORTS`, default 200). Run compiled: `node dist/test/bench/report.bench.js`.
 *
 * Wall time suffers from whatever else the machine does; the time of the processors beside it does not.
 */
const WARM = 5;
const RUNS = 25;
const press = pdfPress();
let consumed = 0;

const subjects: readonly (readonly [string, SampleSize, number])[] = [
  ['foredeck sample', smallSample, 400],
  ['300 lines, 40 fittings, 6 zones', { lines: 300, fittings: 40, zones: 6, nameLength: 0 }, 600],
];

/** The same job with other numbers, so that the setter's cache does not answer. */
function changed(request: ReportRequest, run: number): ReportRequest {
  const lines = request.estimate.lines.map((line, index) => ({
    ...line,
    amount: { ...line.amount, amount: `${run * 7 + index}.${String(run % 100).padStart(2, '0')}` },
  }));
  return {
    ...request,
    estimate: { ...request.estimate, lines },
    issue: { ...request.issue, id: `est_${run}` },
  };
}

interface Took {
  readonly wallMs: number;
  readonly cpuMs: number;
}

function timed(work: () => number): Took {
  const cpu = process.cpuUsage();
  const start = process.hrtime.bigint();
  consumed += work();
  const spent = process.cpuUsage(cpu);
  return { wallMs: Number(process.hrtime.bigint() - start) / 1e6, cpuMs: (spent.user + spent.system) / 1000 };
}

const middle = (values: readonly number[]): string =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)].toFixed(0);

function measured(work: (run: number) => number): { readonly wall: string; readonly cpu: string } {
  const took = Array.from({ length: WARM + RUNS }, (_, run) => timed(() => work(run))).slice(WARM);
  return { wall: middle(took.map(({ wallMs }) => wallMs)), cpu: middle(took.map(({ cpuMs }) => cpuMs)) };
}

console.log(
  `Node ${process.version}, ${process.platform} ${process.arch}; ${RUNS} runs after ${WARM} to warm up; medians`,
);
console.log('| document | budget ms | layout ms | layout and PDF, wall ms | layout and PDF, processor ms |');
console.log('|---|---|---|---|---|');
for (const [name, size, budget] of subjects) {
  const request = sampleRequest(size);
  const layout = measured((run) => reportOf(changed(request, run)).sections.length);
  const whole = measured((run) => press.print(reportOf(changed(request, run)), 'a-2a').length);
  console.log(`| report, ${name} | ${budget} | ${layout.cpu} | ${whole.wall} | ${whole.cpu} |`);
}
const pack = measured(
  (run) => press.print(jobPackOf(changed(sampleRequest(smallSample), run)), 'a-2a').length,
);
console.log(`| job pack, foredeck sample | – | – | ${pack.wall} | ${pack.cpu} |`);

const count = Number(process.env['KINGPLANK_BENCH_REPORTS'] ?? 200);
const samples = 10;

/** Resident memory of the service and of the presses it keeps, where the system tells it per process. */
function memoryMb(): number {
  const listed = execFileSync('ps', [
    '-o',
    'rss=',
    '--ppid',
    String(process.pid),
    '-p',
    String(process.pid),
  ]).toString();
  return Math.round(
    listed
      .trim()
      .split(/\s+/)
      .reduce((sum, kb) => sum + Number(kb), 0) / 1024,
  );
}

const workbench = new Workbench(readConfiguration({}), new Metrics());
const customer = { organisationId: 'bench' };
const base = sampleRequest(smallSample);
const memory: number[] = [];
const started = process.hrtime.bigint();
let next = 0;

async function onePress(): Promise<void> {
  while (next < count) {
    const run = next++;
    const { estimate, record, issue } = changed(base, 1000 + run);
    const pdf = await workbench.do(
      documentJob,
      {
        subject: {
          estimate,
          record,
          issue,
          reader: { locale: 'en-GB', units: 'si', paper: 'a4', purpose: 'condition', annexes: annexNames },
        },
        task: { as: 'pdf', what: 'report', standard: 'a-2a' },
      },
      customer,
    );
    consumed += pdf?.length ?? 0;
    if (run % Math.ceil(count / samples) === 0) memory.push(memoryMb());
  }
}

await Promise.all([onePress(), onePress()]);
const tookS = Number(process.hrtime.bigint() - started) / 1e9;
console.log(
  `service: ${count} reports on two presses in ${tookS.toFixed(1)} s; MB resident, service and presses: ${[...memory, memoryMb()].join(', ')} (consumed ${consumed})`,
);
await workbench.onModuleDestroy();
