/**
 * How fast the process room plans: 2,000 simulated calendars under a 14-day hourly forecast, and resin in batches.
 *
 * Run: npm run build && node dist/test/bench/process.bench.js
 * Budgets (stated, not asserted): calendar 300 ms, batches 10 ms. The baseline of each ratio is printed beside it.
 */
import os from 'node:os';
import { materialsOf, shippedCatalogue } from '#lib/catalogue';
import { randomStream } from '#lib/kernel';
import { planBatches, type BatchRequest } from '#lib/resin';
import { planCalendar, type CalendarRequest } from '#lib/calendar';
import { planCure, weatherGates, type ForecastHour } from '#lib/cure';

const SEED = 20261125;
const random = randomStream(SEED);
const resin = materialsOf(shippedCatalogue, 'resin').find(({ code }) => code === 'resin-epoxy-5to1');
const fillers = materialsOf(shippedCatalogue, 'filler');
if (resin === undefined) throw new Error('The shipped catalogue has no resin-epoxy-5to1.');

const hours: readonly ForecastHour[] = Array.from({ length: 14 * 24 }, (_, hour) => ({
  at: new Date(Date.parse('2026-05-03T23:00:00Z') + hour * 3_600_000).toISOString(),
  temperatureC: 15 + 6 * Math.sin(((hour - 9) / 12) * Math.PI) + 2 * random(),
  relativeHumidityPercent: 50 + 35 * random(),
  windMPerS: 8 * random(),
  rainMm: random() < 0.08 ? 2 : 0,
}));
const dry: CalendarRequest = {
  startDate: '2026-05-04',
  timeZone: 'Europe/Lisbon',
  resin,
  hardener: 'medium',
  crew: { people: 2 },
  deckTemperatureC: 18,
  drivers: {
    'opened-m2': 1.2,
    'cut-m': 4.4,
    'taper-m': 4.4,
    'laminate-m2': 1.5,
    'extra-ply-m2': 0.5,
    'faired-m2-cycle': 6,
    'primed-m2-coat': 4,
    'topcoat-m2-coat': 4,
    'finish-m2': 2,
    'nonskid-m2': 2,
    'hole': 8,
    'fitting-off-h': 3,
    'fitting-on-h': 9,
    'insert': 2,
    'plate': 2,
    'support-m2-below': 1,
  },
  flags: {
    skin: 'relay',
    access: 'from-above',
    condition: 'wet-rotten',
    press: 'weights',
    shelter: 'open',
    below: 'lined',
    skill: 'professional',
    props: 'needed',
    finish: 'painted',
    nonskid: 'yes',
    berth: 'ashore',
    panel: 'flat',
  },
  customOperations: Array.from({ length: 3 }, (_, index) => ({
    code: `extra-${index}`,
    title: `Extra work ${index}`,
    hours: { low: 0.5, likely: 1, high: 2 },
    after: ['inspect-map'],
    before: ['bed-core'],
  })),
  cycles: { fair: 4, prime: 2, topcoat: 3 },
};
const calendar: CalendarRequest = { ...dry, forecast: { hours, timeZone: 'Europe/Lisbon' } };
const batches: BatchRequest = {
  resin,
  fillers,
  temperatureC: 20,
  people: 2,
  steps: [
    { step: 'seal', areaM2: 1.2 },
    { step: 'undercut', lengthM: 4.4, widthMm: 25, heightMm: 12.7 },
    {
      step: 'bed-core',
      areaM2: 1.2,
      pieces: Array.from({ length: 12 }, (_, index) => ({ label: `A${index + 1}`, areaM2: 0.1 })),
    },
    { step: 'prewet', areaM2: 1.2 },
    { step: 'core-kerfs', areaM2: 1.2, spacingMm: 25, widthMm: 1, depthMm: 7.6 },
    {
      step: 'top-laminate',
      plies: Array.from({ length: 3 }, (_, index) => ({
        label: `P${index + 1}`,
        areaM2: 1.5,
        arealMassGPerM2: 900,
        fibreMassFraction: 0.5,
      })),
    },
    { step: 'weave-fill', areaM2: 1.5, coats: 3 },
    { step: 'potting', holes: 24, diameterMm: 25, depthMm: 12.7 },
    { step: 'fairing', areaM2: 2 },
  ],
};

let consumed = 0;
const take = (outcome: { readonly ok: boolean }): void => {
  consumed += outcome.ok ? 1 : 0;
};

interface Timed {
  readonly 'name': string;
  readonly 'median ms': string;
  readonly 'worst ms': string;
  /** Processor time for a turn, garbage collection and all: what the clock shows when nobody else works. */
  readonly 'processor ms': string;
  readonly 'turns': number;
}
const rows: Timed[] = [];

/** Median and worst of warmed turns by the clock, and the mean by the processor. */
function timed(name: string, turns: number, work: () => void): number {
  for (let warm = 0; warm < Math.min(5, turns); warm += 1) work();
  const before = process.cpuUsage();
  const times = Array.from({ length: turns }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  }).sort((a, b) => a - b);
  const { user, system } = process.cpuUsage(before);
  const median = times[Math.floor(times.length / 2)];
  rows.push({
    name,
    'median ms': median.toFixed(2),
    'worst ms': times[times.length - 1].toFixed(2),
    'processor ms': ((user + system) / 1000 / turns).toFixed(2),
    turns,
  });
  return median;
}

const tasks = planCalendar(calendar);
const full = timed('calendar, 2,000 runs, 14-day forecast', 15, () =>
  take(planCalendar({ ...calendar, runs: 2000 })),
);
const few = timed('calendar, 100 runs (baseline)', 15, () => take(planCalendar({ ...calendar, runs: 100 })));
timed('calendar, 300 runs without a forecast, as in an estimate', 60, () =>
  take(planCalendar({ ...dry, runs: 300 })),
);
const nine = timed('batches, 9 steps, hardener chosen', 60, () => take(planBatches(batches)));
const one = timed('batches, 1 step, hardener given (baseline)', 60, () =>
  take(planBatches({ ...batches, hardener: 'medium', steps: batches.steps.slice(0, 1) })),
);
timed('cure over the forecast', 60, () =>
  take(
    planCure({
      resin,
      hardener: 'medium',
      temperature: { kind: 'hourly', forecast: { hours, timeZone: 'Europe/Lisbon' } },
    }),
  ),
);
timed('weather gates of 10 steps', 60, () =>
  take(
    weatherGates({
      resin,
      hardener: 'medium',
      shelter: 'open',
      forecast: { hours, timeZone: 'Europe/Lisbon' },
      steps: Array.from({ length: 10 }, (_, index) => ({
        code: `s${index}`,
        title: 's',
        gate: 'resin' as const,
        workH: 2,
      })),
    }),
  ),
);

console.table(rows);
console.log(
  `seed ${SEED}; ${tasks.ok ? tasks.value.tasks.length : 0} tasks; 2,000 runs cost ${(full / few).toFixed(1)} times 100 runs; nine steps with choice cost ${(nine / one).toFixed(1)} times one; ${consumed} results consumed; Node ${process.version}; load ${os.loadavg()[0].toFixed(1)}`,
);
