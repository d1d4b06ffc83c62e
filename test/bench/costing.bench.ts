import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import {
  amountFactorAt,
  causeClasses,
  costRisk,
  partOrLabours,
  rollUp,
  solveBasket,
  solveByHighs,
  totalsOf,
  type BasketRequest,
  type Contribution,
  type CostRiskRequest,
  type LinearModel,
  type RiskLine,
  type SolverLimits,
} from '#lib/costing';
import { randomStream, triangularQuantile, type RandomStream } from '#lib/kernel';
import { decimal, findCurrency, priceOf, rate, type Currency } from '#lib/money';
import { loadHighs } from '../support/load-highs.js';

/**
 * Money, risk and baskets: exactness over many seeded cases, and times with their baselines.
 *
 * Exactness: lines = cells = tax groups = total in whole minor units, over 10^6 small roll-ups in currencies of 0, 2, 3 and 4
 * decimals, every fourth in two orders of lines. Risk: against plain random draws of the same model and number. Baskets: against
 * the quick search that takes suppliers as sets and needs one by one.
 * Times are processor time. Run: npm run build && node dist/test/bench/costing.bench.js [cases]
 */
const SEED = 20_261_125;
const CASES = Number(process.argv[2] ?? 1_000_000);

const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)];
const rows: (readonly [string, string, string])[] = [];
const report = (name: string, figure: string, against = ''): void => {
  rows.push([name, figure, against]);
  console.log(`${name.padEnd(62)} ${figure.padStart(22)}  ${against}`);
};

/** Processor time, which a busy machine does not stretch as it does the clock. */
const cpuMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

function timed(times: number, work: (turn: number) => unknown): number {
  const taken: number[] = [];
  let kept: unknown;
  for (let turn = -Math.ceil(times / 3); turn < times; turn += 1) {
    const from = cpuMs();
    kept = work(turn);
    if (turn >= 0) taken.push(cpuMs() - from);
  }
  if (kept === undefined) throw new Error('nothing was computed');
  return median(taken);
}

const currencies = ['JPY', 'EUR', 'KWD', 'CLF']
  .map((code) => findCurrency(code))
  .filter((one): one is Currency => one !== undefined);
const upTo = (random: RandomStream, most: number): number => Math.floor(random() * (most + 1));

/** One small roll-up by the arithmetic of the room, added up in every way there is. */
function isExact(random: RandomStream, isTurned: boolean): boolean {
  const currency = currencies[upTo(random, 3)];
  const taxGroups = [
    { code: 'a', percent: decimal(BigInt(upTo(random, 2500)), 2) },
    { code: 'b', percent: decimal(BigInt(upTo(random, 100)), 1) },
  ];
  const contributions = Array.from({ length: 1 + upTo(random, 7) }, (): Contribution => ({
    amount: priceOf(
      decimal(BigInt(upTo(random, 999_999)), 3),
      rate(decimal(BigInt(upTo(random, 9_999_999)), upTo(random, 5)), currency, 'each'),
      'half-away-from-zero',
    ),
    taxGroup: upTo(random, 1) === 0 ? 'a' : 'b',
    causeClass: causeClasses[upTo(random, 2)],
    partOrLabour: partOrLabours[upTo(random, 1)],
  }));
  const terms = {
    currency,
    rounding: 'half-away-from-zero',
    taxGroups,
    overheadPercent: decimal(BigInt(upTo(random, 3000)), 2),
    profitPercent: decimal(BigInt(upTo(random, 3000)), 2),
    contingency: { percent: decimal(BigInt(upTo(random, 5000)), 2) },
  } as const;
  const totals = totalsOf(contributions, terms);
  const reversed = isTurned ? totalsOf([...contributions].reverse(), terms) : totals;
  const sum = (amounts: readonly { readonly minor: bigint }[]): bigint =>
    amounts.reduce((all, { minor }) => all + minor, 0n);
  return (
    sum(contributions.map(({ amount }) => amount)) === totals.direct.minor &&
    sum(totals.cells.map(({ direct }) => direct)) === totals.direct.minor &&
    sum(totals.cells.map(({ net }) => net)) === totals.net.minor &&
    sum([totals.direct, totals.overhead, totals.profit, totals.contingency]) === totals.net.minor &&
    sum(totals.taxes.map(({ taxable }) => taxable)) === totals.net.minor &&
    sum(totals.cells.map(({ tax }) => tax)) === totals.tax.minor &&
    totals.net.minor + totals.tax.minor === totals.gross.minor &&
    reversed.gross.minor === totals.gross.minor &&
    reversed.cells.every(({ net }, index) => net.minor === totals.cells[index].net.minor)
  );
}

function exactness(): void {
  const random = randomStream(SEED);
  let wrong = 0;
  const from = performance.now();
  for (let i = 0; i < CASES; i += 1) if (!isExact(random, i % 4 === 0)) wrong += 1;
  report(
    `money: roll-ups that do not add up, of ${CASES}`,
    String(wrong),
    `${((performance.now() - from) / 1000).toFixed(0)} s`,
  );
}

/** The same sums in floating point, rounded by the usual trick: how many of the ties it loses. */
function floatTies(): void {
  const random = randomStream(SEED);
  let lost = 0;
  const count = 100_000;
  for (let i = 0; i < count; i += 1) {
    const thousandths = upTo(random, 9_999_99) * 10 + 5;
    const exact = (BigInt(thousandths) + 5n) / 10n;
    if (BigInt(Math.round((thousandths / 1000) * 100)) !== exact) lost += 1;
  }
  report(
    'money: half-cent ties that floating point gets wrong, of 100000',
    String(lost),
    'ours: 0, by whole numbers',
  );
}

/** What does not grow, what grows as half of it, and what grows as the area. */
const growths = [
  [],
  [
    { extentFactor: 0, amountFactor: 0.5 },
    { extentFactor: 5, amountFactor: 3 },
  ],
  [
    { extentFactor: 0, amountFactor: 0 },
    { extentFactor: 5, amountFactor: 5 },
  ],
] as const;

const riskLines = (count: number): readonly RiskLine[] =>
  Array.from({ length: count }, (_, i) => ({
    code: `l${i}`,
    title: `line ${i}`,
    amount: 100 + 37 * (i % 11),
    spread: { low: 0.5 + 0.01 * (i % 30), high: 1.3 + 0.03 * (i % 20) },
    atExtents: growths[i % 3],
    partOrLabour: i % 2 === 0 ? 'labour' : 'part',
  }));

const riskRequest = (lines: number, seed: number): CostRiskRequest => ({
  currency: 'EUR',
  lines: riskLines(lines),
  extent: { low: 0.9, likely: 1.4, high: 2.5 },
  seed,
});

function p90Of(lines: number, seed: number): number {
  const outcome = costRisk({
    ...riskRequest(lines, seed),
    extentToRate: 0,
    commonShare: { labour: 0, part: 0 },
  });
  if (!outcome.ok) throw new Error('refused');
  return Number(outcome.value.p90.amount);
}

/** Plain random draws of the uncorrelated model, quantiles computed one by one. */
function plainP90(lines: readonly RiskLine[], seed: number): number {
  const random = randomStream(seed);
  const totals = Float64Array.from({ length: 10_000 }, () => {
    const extent = triangularQuantile({ low: 0.9, likely: 1.4, high: 2.5 }, random());
    return lines.reduce(
      (sum, { amount, spread, atExtents = [] }) =>
        sum +
        amount *
          amountFactorAt(atExtents, extent) *
          triangularQuantile({ low: spread?.low ?? 1, likely: 1, high: spread?.high ?? 1 }, random()),
      0,
    );
  }).sort();
  return totals[9000];
}

const scatter = (values: readonly number[]): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1)) / mean;
};

function risk(): void {
  const plain = timed(10, (turn) => plainP90(riskLines(40), turn + 100));
  for (const count of [40, 150]) {
    const ours = timed(20, (turn) => costRisk(riskRequest(count, turn + 100)));
    report(
      `risk: ${count} lines, 10000 samples, with drivers and worth of opening`,
      `${ours.toFixed(1)} ms`,
      count === 40 ? `plain draws, P90 only: ${plain.toFixed(1)} ms` : '',
    );
  }
  const seeds = Array.from({ length: 30 }, (_, i) => SEED + i);
  const latin = scatter(seeds.map((seed) => p90Of(40, seed)));
  const random = scatter(seeds.map((seed) => plainP90(riskLines(40), seed)));
  report(
    'risk: scatter of P90 over 30 seeds, uncorrelated model',
    `${(100 * latin).toFixed(3)} %`,
    `plain draws: ${(100 * random).toFixed(3)} %`,
  );
}

function order(seed: number, materials: number): BasketRequest {
  const random = randomStream(seed);
  const money = (amount: number): string => amount.toFixed(2);
  const kinds = Array.from({ length: materials }, (_, m) => ({
    m,
    base: 1 + random() * 40,
    sizes: [0.25, 0.5, 1, 2.5, 5, 10].sort(() => random() - 0.5).slice(0, 5),
  }));
  return {
    currency: 'EUR',
    options: {},
    needs: kinds.map(({ m }) => ({
      id: `n${m}`,
      material: `m${m}`,
      requiredQuantity: 0.2 + random() * 12,
      unit: 'kg',
    })),
    priceList: {
      code: 'bench',
      name: 'bench',
      currency: 'EUR',
      validFrom: '2026-01-01',
      validTo: '2026-12-31',
      invented: true,
      pricesIncludeTax: false,
      suppliers: [0, 1, 2].map((s) => ({
        code: `s${s}`,
        name: `s${s}`,
        delivery: money(5 + 5 * s),
        hazardSurcharge: '12.00',
        oversizeFreight: '40.00',
        minimumOrder: money(20 * s),
        ...(s === 1 ? { freeDeliveryFrom: '250.00' } : {}),
      })),
      packs: kinds.flatMap(({ m, base, sizes }) =>
        sizes.map((quantity, i) => {
          const price = base * quantity ** 0.85 * (0.9 + 0.2 * random());
          const hasBreak = random() < 0.5;
          return {
            sku: `p${m}-${i}`,
            name: 'pack',
            supplier: `s${upTo(random, 2)}`,
            content: { material: `m${m}`, quantity, unit: 'kg' },
            massKg: quantity,
            prices: [
              { fromPacks: 1, price: money(price) },
              ...(hasBreak ? [{ fromPacks: 4, price: money(price * 0.93) }] : []),
            ],
            hazardous: m % 5 === 0,
            oversize: false,
          };
        }),
      ),
    },
  };
}

async function baskets(): Promise<void> {
  const highs = await loadHighs();
  const solve = async (model: LinearModel, limits: SolverLimits) => solveByHighs(highs, model, limits);
  const nothingSolved = async () => ({ status: 'time-limit' as const, values: [] });
  for (const secondBest of [false, true]) {
    const times: number[] = [];
    const dearer: number[] = [];
    let proven = 0;
    for (let turn = -3; turn < 20; turn += 1) {
      const request = { ...order(SEED + turn, 40), options: { secondBest } };
      const from = cpuMs();
      const outcome = await solveBasket(request, solve);
      const taken = cpuMs() - from;
      const picked = await solveBasket({ ...request, options: { secondBest: false } }, nothingSolved);
      if (!outcome.ok || !picked.ok) throw new Error('refused');
      if (turn < 0) continue;
      times.push(taken);
      dearer.push(Number(picked.value.total.amount) / Number(outcome.value.total.amount));
      if (outcome.value.proof.kind === 'proven') proven += 1;
    }
    report(
      `basket: 40 needs x 5 packs${secondBest ? ', with a second best' : ''}, ${proven} of 20 proven`,
      `${median(times).toFixed(0)} ms median`,
      `worst ${Math.max(...times).toFixed(0)} ms; the quick search costs ${(100 * (median(dearer) - 1)).toFixed(2)} % more, at worst ${(100 * (Math.max(...dearer) - 1)).toFixed(2)} %`,
    );
  }
  const from = performance.now();
  const large = await solveBasket(
    { ...order(SEED, 2000), options: { secondBest: false, timeLimitS: 5 } },
    solve,
  );
  if (!large.ok) throw new Error('refused');
  const { proof, isComplete } = large.value;
  const gap =
    proof.kind === 'gap' && proof.gapFraction !== undefined
      ? `${(100 * proof.gapFraction).toFixed(2)} % gap`
      : proof.kind;
  report(
    'basket: 2000 needs x 5 packs, limit 5 s',
    `${((performance.now() - from) / 1000).toFixed(1)} s`,
    `${gap}, complete: ${isComplete}`,
  );
}

function rollUps(): void {
  const lines = riskLines(150).map(({ code, title, partOrLabour }, i) => ({
    code,
    title,
    partOrLabour,
    section: 'materials' as const,
    causeClass: causeClasses[i % 3],
    netQuantity: 1.234 + i,
    unit: 'kg',
    unitRate: `${i}.37`,
    taxGroup: 'all',
  }));
  const request = {
    currency: 'EUR',
    lines,
    taxGroups: [{ code: 'all', name: 'All', percent: '20' }],
    overheadPercent: '6',
    profitPercent: '8',
  };
  report('roll-up of 150 lines with reasons', `${timed(50, () => rollUp(request)).toFixed(2)} ms`);
}

console.log(`${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}, seed ${SEED}`);
rollUps();
risk();
await baskets();
floatTies();
exactness();
mkdirSync('test/bench/results', { recursive: true });
writeFileSync(
  'test/bench/results/costing.md',
  [
    '# Money, risk and baskets',
    '',
    `${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}, seed ${SEED}.`,
    '',
    '| what | figure | against |',
    '| --- | --- | --- |',
    ...rows.map((row) => `| ${row.join(' | ')} |`),
    '',
  ].join('\n'),
);
