import { writeFileSync } from 'node:fs';
import { rules, tried, type Tried } from '../property/price-invariants.js';
import { randomJobs } from '../property/random-jobs.js';

/**
 * The rules that a price keeps, tried on as many random jobs as asked for, four estimates each.
 *
 * Run:  npm run build && node dist/test/bench/price-invariants.bench.js 2000          prints the page
 *       ... --write   keeps it as results/price-invariants.md
 */
const SEED = 7;
const count = Number(process.argv[2] ?? 2000);
if (!Number.isInteger(count) || count < 1) throw new Error('say how many jobs, a whole number of 1 or more');

const results = randomJobs(count, SEED).map(tried);
const priced = results.filter(({ isPriced }) => isPriced);
const page = `${[...head(), ...counted(), ...spreads(), ...found()].join('\n')}\n`;
if (process.argv.includes('--write')) writeFileSync('test/bench/results/price-invariants.md', page);
process.stdout.write(page);

function head(): readonly string[] {
  return [
    '# Rules of the price on random jobs',
    '',
    `${count} invented jobs of seed ${SEED}, ${priced.length} of them priced and the others refused; each also with 1 % and with 40 % more bad core and without its first fitting. Where a larger zone is done another way, or is refused, it is not compared.`,
    '',
  ];
}

function counted(): readonly string[] {
  const breachesOf = (rule: string): number =>
    priced.filter(({ breaches }) => breaches.some((breach) => breach.rule === rule)).length;
  return [
    '| rule | jobs that break it |',
    '|---|---|',
    ...rules.map((rule) => `| ${rule} | ${breachesOf(rule)} of ${priced.length} |`),
    '',
  ];
}

function spreads(): readonly string[] {
  const span = (pick: (one: Tried) => number): string => {
    const sorted = priced.map(pick).sort((a, b) => a - b);
    const at = (share: number): string => sorted[Math.floor(share * (sorted.length - 1))].toFixed(3);
    return `${at(0)} to ${at(1)}, ${at(0.5)} in the middle`;
  };
  return [
    `Chance that the job costs no more than its price: ${span(({ shareWithin }) => shareWithin)}.`,
    `Contingency over the price without tax: ${span(({ contingencyShare }) => contingencyShare)}.`,
    '',
  ];
}

function found(): readonly string[] {
  return results.flatMap(({ breaches }, index) =>
    breaches.map(({ rule, said }) => `- job ${index + 1}, ${rule}: ${said}`),
  );
}
