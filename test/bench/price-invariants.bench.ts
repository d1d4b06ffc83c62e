import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { rules, tried, type Rule, type Tried } from '../property/price-invariants.js';
import { randomJobs } from '../property/random-jobs.js';

/**
 * The rules that a price keeps, tried on random jobs, four estimates each, in pieces: every run goes on where the last one
 * of the same project stopped, for so many seconds, and writes the page of all that was tried.
 *
 * Run:  npm run build && node dist/test/bench/price-invariants.bench.js 2000 200     up to job 2000, for 200 s
 *       ... 2000 200 11   jobs of another seed, begun anew
 *       ... --anew        forgets what was tried before a change of the price
 */
const PIECES = 'test/bench/results/price-invariants.json';
const PAGE = 'test/bench/results/price-invariants.md';
const [upTo = 2000, seconds = 200, seed = 7] = process.argv
  .slice(2)
  .filter((said) => /^\d+$/.test(said))
  .map(Number);

/** By place of the job: whether it was priced, its share within, its contingency's share, and the rules it broke. */
type Kept = readonly [
  isPriced: 0 | 1,
  within: number,
  contingency: number,
  ...broken: (readonly [Rule, string])[],
];

interface Pieces {
  readonly seed: number;
  readonly jobs: readonly Kept[];
}

const kept = goneOn(process.argv.includes('--anew') ? [] : keptBefore());
const rows = kept.map((one) => JSON.stringify(one)).join(',\n');
writeFileSync(PIECES, `{"seed": ${seed}, "jobs": [\n${rows}\n]}\n`);
const results = kept.map(triedAgain);
const count = results.length;
const priced = results.filter(({ isPriced }) => isPriced);
const page = `${[...head(), ...counted(), ...spreads(), ...found()].join('\n')}\n`;
writeFileSync(PAGE, page);
process.stdout.write(page);

/** What was tried before of the same jobs. */
function keptBefore(): readonly Kept[] {
  if (!existsSync(PIECES)) return [];
  const { seed: before, jobs }: Pieces = JSON.parse(readFileSync(PIECES, 'utf8'));
  return before === seed ? jobs : [];
}

function goneOn(done: readonly Kept[]): readonly Kept[] {
  const until = performance.now() + seconds * 1000;
  const more: Kept[] = [];
  for (const job of randomJobs(upTo, seed).slice(done.length)) {
    if (performance.now() > until) break;
    more.push(short(tried(job)));
  }
  return [...done, ...more];
}

function short({ isPriced, shareWithin, contingencyShare, breaches }: Tried): Kept {
  const [within, contingency] = [shareWithin, contingencyShare].map((share) => Number(share.toFixed(4)));
  return [isPriced ? 1 : 0, within, contingency, ...breaches.map(({ rule, said }) => [rule, said] as const)];
}

function triedAgain([isPriced, shareWithin, contingencyShare, ...broken]: Kept): Tried {
  return {
    isPriced: isPriced === 1,
    shareWithin,
    contingencyShare,
    breaches: broken.map(([rule, said]) => ({ rule, said })),
  };
}

function head(): readonly string[] {
  return [
    '# Rules of the price on random jobs',
    '',
    `${count} invented jobs of seed ${seed}, ${priced.length} of them priced and the others refused; each also with 1 % and with 40 % more bad core and without its first fitting. Where a larger zone is done another way, or is refused, it is not compared.`,
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
