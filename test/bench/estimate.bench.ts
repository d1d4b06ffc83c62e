import 'reflect-metadata';
import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate, estimateVariants, previewOf, type DefectRecord } from '#lib/estimate';
import { estimateExtent } from '#lib/extent';
import { randomStream, type Outcome } from '#lib/kernel';
import { panelCheck, type PanelCheckRequest, type SkinValues } from '#lib/panel';
import { DefectRecordDto } from '../../apps/api/src/inputs/defect-record.dto.js';
import { checkedAs } from '../../apps/api/src/edge/dto.pipe.js';
import { processorMs, reference } from './processor.js';

/**
 * How long the main job computes, without HTTP and without a database, as ratios to a fixed computation that is timed
 * between the turns: another machine, or one that others use, changes both alike. Processor time in a warm process, the lower
 * quartile of the turns: what others do beside it can only make a turn slower.
 *
 * Run:  npm run build && node dist/test/bench/estimate.bench.js          prints the table
 *       ... --gate    also fails where a ratio is worse by more than a quarter than in results/ratios.json
 *       ... --write   keeps the ratios as the ones to compare with; --all adds the four variants, which take a while
 */
const RATIOS = 'test/bench/results/ratios.json';
const WORSE_BY = 1.25;
/** An estimate runs through so much code that the compiler is busy with it for this many turns. */
const WARMING = 15;
const TURNS = 9;
/** How often a ratio that looks worse is measured again before it fails the gate. */
const SECOND_LOOKS = 3;

interface Work {
  readonly name: string;
  /** What the work should take in milliseconds on a quiet core. */
  readonly aimMs: number;
  readonly run: () => unknown;
}

const recordOf = (given: unknown): DefectRecord =>
  structuredClone<DefectRecord>(checkedAs(DefectRecordDto, given));
const sample = (name: string): DefectRecord =>
  recordOf(JSON.parse(readFileSync(`apps/workshop/samples/${name}.json`, 'utf8')));

function valueOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(JSON.stringify(outcome.problems));
}

const box = (x: number, y: number, width: number, height: number) => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
const wideDeck = recordOf({
  panel: { outline: box(0, 0, 4000, 2000) },
  outerSkin: { thicknessMm: 3 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: 12.7 },
  zones: [{ id: 'Z1', outline: box(1200, 600, 1400, 700) }],
});

/** Soundings spread over a deck of 2.4 x 1.2 m, dull nine times in ten over a round bad place and once in ten beside it. */
function sounded(count: number): DefectRecord {
  const random = randomStream(20_261_129);
  const readings = Array.from({ length: count }, () => {
    const at = [100 + 2200 * random(), 100 + 1000 * random()] as const;
    const isBad = Math.hypot(at[0] - 900, at[1] - 500) < 330;
    return { kind: 'sounding', at, sound: random() < 0.9 === isBad ? 'dull' : 'sharp' };
  });
  return recordOf({
    panel: { outline: box(0, 0, 2400, 1200) },
    outerSkin: { thicknessMm: 3 },
    innerSkin: { thicknessMm: 2 },
    core: { thicknessMm: 12.7 },
    survey: { readings },
  });
}

const mapped = (record: DefectRecord): unknown => {
  const { panel, survey } = record;
  // The map with what to read next, which is worked out when it is asked for.
  const found = valueOf(estimateExtent({ panel, ...(survey === undefined ? {} : { survey }) }));
  return [found, found.nextReadings];
};

const skin = (thicknessMm: number): SkinValues => ({
  thicknessMm,
  modulusXMPa: 12000,
  modulusYMPa: 11000,
  shearModulusMPa: 3000,
  poissonXY: 0.2,
  tensileStrengthMPa: 150,
  compressiveStrengthMPa: 130,
});
const sandwich = {
  outer: skin(3),
  inner: skin(2),
  core: {
    coreType: 'end-grain-balsa',
    thicknessMm: 12.7,
    shearModulusMPa: 129,
    shearStrengthMPa: 2.33,
    compressiveModulusMPa: 3255,
    compressiveStrengthMPa: 10.3,
    inPlaneModulusMPa: 98,
  },
} as const;
const panelOn = (panel: Partial<PanelCheckRequest['panel']>): PanelCheckRequest => ({
  panel: { lengthXMm: 900, widthYMm: 600, ...panel },
  asBuilt: sandwich,
  repaired: sandwich,
});
const held = 'simply-supported';
const oneClamped = { xStart: 'clamped', xEnd: held, yStart: held, yEnd: held } as const;

const estimated = (record: DefectRecord): unknown => valueOf(estimate(record, shippedCatalogue, 'bench'));
const [foredeck, sideDeck] = [sample('foredeck'), sample('side-deck')];
const variants = [
  { code: 'relay', method: { skin: 'relay' } },
  { code: 're-bed', method: { skin: 're-bed' } },
  { code: 'vacuum', method: { press: 'vacuum' } },
  { code: 'shed', conditions: { shelter: 'shed' } },
] as const;

const [few, many] = [sounded(45), sounded(2000)];

const works: readonly Work[] = [
  { name: 'estimate, foredeck', aimMs: 15, run: () => estimated(foredeck) },
  { name: 'estimate, side deck', aimMs: 20, run: () => estimated(sideDeck) },
  { name: 'estimate, one zone on 4 x 2 m', aimMs: 25, run: () => estimated(wideDeck) },
  { name: 'preview, foredeck', aimMs: 8, run: () => valueOf(previewOf(foredeck, shippedCatalogue)) },
  { name: 'map of 45 soundings', aimMs: 50, run: () => mapped(few) },
  { name: 'map of 2,000 soundings', aimMs: 250, run: () => mapped(many) },
  { name: 'panel check, supported', aimMs: 2, run: () => valueOf(panelCheck(panelOn({}))) },
  { name: 'panel check, clamped', aimMs: 4, run: () => valueOf(panelCheck(panelOn({ edges: 'clamped' }))) },
  {
    name: 'panel check, one edge clamped',
    aimMs: 5,
    run: () => valueOf(panelCheck(panelOn({ eachEdge: oneClamped }))),
  },
];
const four: Work = {
  name: 'four variants of the foredeck',
  aimMs: 22.5,
  run: () => valueOf(estimateVariants({ record: foredeck, variants }, shippedCatalogue)),
};

let consumed = 0;

const lowerQuartile = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 4)];

interface Measured {
  readonly ratio: number;
  readonly ms: number;
}

/** Each turn beside its own turns of the reference, so that what slows one slows the other. */
function measured({ run }: Work, turns: number): Measured {
  for (let turn = 0; turn < WARMING; turn += 1) consumed += run() === undefined ? 0 : 1;
  const found = Array.from({ length: turns }, () => {
    const before = processorMs(reference);
    const ms = processorMs(() => (consumed += run() === undefined ? 0 : 1));
    return { ms, ratio: (2 * ms) / (before + processorMs(reference)) };
  });
  return {
    ratio: lowerQuartile(found.map(({ ratio }) => ratio)),
    ms: lowerQuartile(found.map(({ ms }) => ms)),
  };
}

type Kept = Readonly<Record<string, number>>;

function keptRatios(): Kept {
  const read: unknown = JSON.parse(readFileSync(RATIOS, 'utf8'));
  if (typeof read !== 'object' || read === null) throw new Error(`${RATIOS} holds no ratios`);
  return Object.fromEntries(
    Object.entries(read).flatMap(([name, ratio]) => (typeof ratio === 'number' ? [[name, ratio]] : [])),
  );
}

/** A ratio that looks worse is looked at again: a gate must not fail because somebody else was busy. */
function settled(work: Work, kept: number | undefined): Measured {
  let best = measured(work, TURNS);
  for (let look = 0; look < SECOND_LOOKS && best.ratio > (kept ?? Infinity) * WORSE_BY; look += 1) {
    const again = measured(work, TURNS);
    best = again.ratio < best.ratio ? again : best;
  }
  return best;
}

const asked = new Set(process.argv.slice(2));
const isWriting = asked.has('--write');
const kept = isWriting ? {} : keptRatios();
for (let turn = 0; turn < 20; turn += 1) reference();
const rows = [...works, ...(asked.has('--all') ? [four] : [])].map((work) => {
  const before = Object.entries(kept).find(([name]) => name === work.name)?.[1];
  return { work, before, ...settled(work, before) };
});

console.table(
  rows.map(({ work, before, ratio, ms }) => ({
    'work': work.name,
    'processor ms': ms.toPrecision(3),
    'aim ms': work.aimMs,
    'over the reference': ratio.toPrecision(3),
    'kept': before?.toPrecision(3) ?? '-',
    'against kept': before === undefined ? '-' : (ratio / before).toFixed(2),
  })),
);
console.log(
  `${consumed} answers consumed; Node ${process.version}, ${cpus().length} cores, load ${loadavg()[0].toFixed(1)}`,
);
if (isWriting) {
  const ratios = Object.fromEntries(rows.map(({ work, ratio }) => [work.name, Number(ratio.toPrecision(3))]));
  writeFileSync(RATIOS, `${JSON.stringify(ratios, undefined, 2)}\n`);
}
const worse = rows.filter(({ ratio, before }) => before !== undefined && ratio > before * WORSE_BY);
const unknown = rows.filter(({ before }) => before === undefined && !isWriting);
for (const { work } of worse) console.error(`${work.name}: slower by more than a quarter`);
for (const { work } of unknown) console.error(`${work.name}: no ratio is kept; run with --write`);
if (asked.has('--gate') && worse.length + unknown.length > 0) process.exitCode = 1;
