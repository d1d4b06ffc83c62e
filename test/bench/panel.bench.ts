import { randomStream } from '#lib/kernel';
import {
  everywhere,
  panelCheck,
  supportedPlate,
  type PanelCheckRequest,
  type PlateStiffness,
  type SkinValues,
} from '#lib/panel';

/**
 * The four-state panel check against its budget of 5 ms, and the closed sums against the plain double series at the same
 * accuracy. Seeded, warmed, results consumed. The least time of many stands beside the median: on a busy machine the
 * median tells of the neighbours.
 */
const SEED = 20_261_125;
const BUDGET_MS = 5;
const random = randomStream(SEED);
let consumed = 0;

interface Timing {
  readonly leastMs: number;
  readonly medianMs: number;
}

function timed(work: () => number, runs: number): Timing {
  for (let i = 0; i < runs; i += 1) consumed += work();
  const times = Array.from({ length: runs }, () => {
    const start = process.hrtime.bigint();
    consumed += work();
    return Number(process.hrtime.bigint() - start) / 1e6;
  }).sort((a, b) => a - b);
  return { leastMs: times[0], medianMs: times[Math.floor(runs / 2)] };
}

const skin = (): SkinValues => ({
  thicknessMm: 2 + 2 * random(),
  modulusXMPa: 10000 + 4000 * random(),
  modulusYMPa: 10000 + 4000 * random(),
  shearModulusMPa: 3000,
  poissonXY: 0.2,
  tensileStrengthMPa: 150,
  compressiveStrengthMPa: 130,
});
const core = {
  coreType: 'end-grain-balsa',
  thicknessMm: 12.7,
  shearModulusMPa: 129,
  shearStrengthMPa: 2.33,
  compressiveModulusMPa: 3255,
  compressiveStrengthMPa: 10.3,
} as const;
const request = (): PanelCheckRequest => ({
  panel: { lengthXMm: 600 + 600 * random(), widthYMm: 400 + 300 * random() },
  asBuilt: { outer: skin(), inner: skin(), core },
  repaired: { outer: skin(), inner: skin(), core },
});
const requests = Array.from({ length: 40 }, request);
let turn = 0;

function check(change: (asked: PanelCheckRequest) => PanelCheckRequest): number {
  turn = (turn + 1) % requests.length;
  const outcome = panelCheck(change(requests[turn]));
  return outcome.ok ? outcome.value.ratios[0].ratio : 0;
}

const withEdges =
  (edges: 'clamped' | 'simply-supported') =>
  (asked: PanelCheckRequest): PanelCheckRequest => ({ ...asked, panel: { ...asked.panel, edges } });
const oneClamped = (asked: PanelCheckRequest): PanelCheckRequest => ({
  ...asked,
  panel: {
    ...asked.panel,
    eachEdge: {
      xStart: 'clamped',
      xEnd: 'simply-supported',
      yStart: 'simply-supported',
      yEnd: 'simply-supported',
    },
  },
});

const stiffness: PlateStiffness = { d11: 3.5e6, d12: 7e5, d22: 3.2e6, d66: 1e6, sx: 2346, sy: 2346 };
const size = { lengthXMm: 900, widthYMm: 600 };
const middle = { xMm: 450, yMm: 300 };

function doubleSeries(waves: number): number {
  let my = 0;
  for (let m = 1; m < waves; m += 2) {
    for (let n = 1; n < waves; n += 2) {
      const [x, y] = [(m * Math.PI) / 900, (n * Math.PI) / 600];
      const [k22, k33, k23] = [
        stiffness.sx + stiffness.d11 * x * x + stiffness.d66 * y * y,
        stiffness.sy + stiffness.d66 * x * x + stiffness.d22 * y * y,
        (stiffness.d12 + stiffness.d66) * x * y,
      ];
      const det = k22 * k33 - k23 * k23;
      const [px, py] = [
        (stiffness.sx * x * k33 - stiffness.sy * y * k23) / det,
        (stiffness.sy * y * k22 - stiffness.sx * x * k23) / det,
      ];
      const amplitude =
        0.16 /
        (Math.PI ** 2 * m * n) /
        (stiffness.sx * x * x + stiffness.sy * y * y - stiffness.sx * x * px - stiffness.sy * y * py);
      my +=
        (((m + n) / 2) % 2 === 1 ? 1 : -1) * amplitude * (stiffness.d12 * x * px + stiffness.d22 * y * py);
    }
  }
  return my;
}

const closed = (): number => supportedPlate(stiffness, size).at(everywhere(size, 0.01), middle).fields.my;
const exact = closed();
const wavesFor =
  [40, 80, 160, 320, 640, 1280].find((waves) => Math.abs(doubleSeries(waves) / exact - 1) < 1e-6) ?? 1280;

const rows: readonly (readonly [string, Timing])[] = [
  ['four states, simply supported', timed(() => check(withEdges('simply-supported')), 200)],
  ['four states, clamped all round', timed(() => check(withEdges('clamped')), 100)],
  ['four states, one edge clamped', timed(() => check(oneClamped), 60)],
  ['one moment, closed sums', timed(closed, 2000)],
  [`one moment, double series of ${wavesFor} waves (1e-6)`, timed(() => doubleSeries(wavesFor), 60)],
];

console.log(`Seed ${SEED}; Node ${process.version}; budget ${BUDGET_MS} ms a four-state check`);
console.log('| what | least ms | median ms |\n|---|---|---|');
for (const [name, { leastMs, medianMs }] of rows)
  console.log(`| ${name} | ${leastMs.toFixed(4)} | ${medianMs.toFixed(4)} |`);
console.log(
  `Closed sums against the double series: ${(rows[4][1].leastMs / rows[3][1].leastMs).toFixed(0)} times quicker (least times).`,
);
console.log(`(consumed ${Number.isFinite(consumed)})`);
