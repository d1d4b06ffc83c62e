import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { shippedCatalogue } from '#lib/catalogue';
import { coreBillFrom, type CoreBill } from '#lib/coring';
import { madeOpenings, type MadeOpening } from './decks/makes-of-openings.js';
import { processorMs, reference } from './processor.js';

/**
 * Processor time of pieces, order of bedding and sheets, opening by opening, on 300 openings that no budget was chosen by.
 * An opening is worked out afresh each time, and its least of three times counts: the machine has other work.
 *
 *   npm run build && node dist/test/bench/openings.bench.js [seed] [openings]
 */
const BUDGET_MS = 150;
/** As much as an estimate gives to the search of sheets. */
const WORK_UNITS = 1000;
const RUNS = 3;
const WARM_UP = 60;

const [seed = '20261130', wanted = '300'] = process.argv.slice(2);
const target = join(
  dirname(fileURLToPath(import.meta.url)),
  '../..',
  process.env['OPENINGS_RESULTS'] ?? '../test/bench/results/openings.md',
);

interface Timed {
  readonly make: string;
  readonly ms: number;
  readonly pieces: number;
  readonly corners: number;
  readonly findings: readonly string[];
}

const billOf = ({ request }: MadeOpening): CoreBill => {
  const outcome = coreBillFrom({ ...request, workUnits: WORK_UNITS }, shippedCatalogue);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

function timed(opening: MadeOpening): Timed {
  let bill: CoreBill | undefined;
  const times = Array.from({ length: RUNS }, () =>
    processorMs(() => {
      bill = billOf(structuredClone(opening));
    }),
  );
  return {
    make: opening.make,
    ms: Math.min(...times),
    pieces: bill?.mosaic.pieces.length ?? 0,
    corners: opening.request.openings[0].outline.length,
    findings: (bill?.mosaic.findings ?? []).map(({ code }) => code),
  };
}

const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];

function row(title: string, rows: readonly Timed[]): string {
  const times = rows.map(({ ms }) => ms).sort((a, b) => a - b);
  const worst = rows.reduce((one, other) => (other.ms > one.ms ? other : one));
  const over = times.filter((ms) => ms > BUDGET_MS).length;
  const cells = [0.5, 0.95, 1].map((share) => quantile(times, share).toFixed(1));
  return `| ${title} | ${rows.length} | ${cells.join(' | ')} | ${over} | ${worst.pieces} | ${worst.corners} |`;
}

for (const opening of madeOpenings(1 + Number(seed), WARM_UP)) billOf(opening);
const unit = Math.min(...Array.from({ length: 5 }, () => processorMs(reference)));
const all = madeOpenings(Number(seed), Number(wanted)).map(timed);
const makes = [...new Set(all.map(({ make }) => make))];
const unproven = all.filter(({ findings }) => findings.includes('order-not-proven')).length;
const lines = [
  '# Openings: pieces, order of bedding, sheets',
  '',
  `Processor time of one opening in ms, the least of ${RUNS}; seed ${seed}; Node ${process.version}. A unit of reference work took ${unit.toFixed(1)} ms at the time. Goal: no opening over ${BUDGET_MS} ms. An order was not proven in ${unproven} of ${all.length}.`,
  '',
  '| make | openings | median | p95 | worst | over the goal | pieces of the worst | corners |',
  '|---|---|---|---|---|---|---|---|',
  row('all', all),
  ...makes.map((make) =>
    row(
      make,
      all.filter((one) => one.make === make),
    ),
  ),
];
console.log(lines.join('\n'));
mkdirSync(dirname(target), { recursive: true });
writeFileSync(target, `${lines.join('\n')}\n`);
