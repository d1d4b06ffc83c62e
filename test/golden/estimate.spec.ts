import 'reflect-metadata';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate } from '#lib/estimate';
import { DefectRecordDto } from '../../apps/api/src/inputs/defect-record.dto.js';
import { checkedAs } from '../../apps/api/src/edge/dto.pipe.js';
import { opened, type Opened } from '../samples/opened.js';

/**
 * The figures of the two sample jobs that somebody would act on, to nine significant digits (more would hold the
 * machine, not the job). They check nothing against the world: they show, in a review, what a change does to a real
 * estimate. `UPDATE_GOLDEN=1 npm run jest -- test/golden` writes them anew; read the difference before it is committed.
 */
const SIGNIFICANT_DIGITS = 9;
const isUpdate = process.env.UPDATE_GOLDEN === '1';

const fileOf = (...at: readonly string[]): string => path.join(import.meta.dirname, ...at);

/** As the service reads it: texts with units become numbers. */
const recordOf = (name: string): DefectRecordDto =>
  checkedAs(
    DefectRecordDto,
    JSON.parse(readFileSync(fileOf('../../apps/workshop/samples', `${name}.json`), 'utf8')),
  );

function estimateOf(name: string): Opened {
  const outcome = estimate(structuredClone(recordOf(name)), shippedCatalogue, 'golden');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return opened(outcome.value.estimate);
}

const figuresOf = ({
  summary,
  methods,
  scope,
  core,
  laminate,
  panel,
  checks,
  process,
  sections,
  lines,
  totals,
}: Opened) => ({
  summary,
  ladder: {
    planned: methods.planned.rung,
    rungs: methods.rungs.map(({ rung, verdict, priceRange, labourH }) => ({
      rung,
      verdict,
      ...(labourH === undefined ? {} : { labourH: labourH.p50 }),
      ...(priceRange === undefined ? {} : { price: priceRange.p50 }),
    })),
  },
  scope: {
    damagedAreaM2: scope.damagedAreaM2,
    openedAreaM2: scope.openedAreaM2,
    retainedAreaM2: scope.retainedAreaM2,
    cutLengthM: scope.cutLengthM,
    openings: scope.openings.map(({ label, areaM2, cutLengthM, cutDepthMm }) => ({
      label,
      areaM2,
      cutLengthM,
      cutDepthMm,
    })),
    findings: scope.findings.map(({ code, severity }) => ({ code, severity })),
  },
  core: {
    material: core.material,
    stack: core.stack,
    flushMm: core.flushMm,
    netAreaM2: core.netAreaM2,
    purchaseAreaM2: core.purchaseAreaM2,
    massChangeKg: core.massChangeKg,
    pieceCount: core.pieces.length,
    sheetCount: core.sheets.length,
    boughtSheetCount: core.sheets.filter(({ isBought }) => isBought).length,
    sheets: core.sheets.map(({ label, lengthMm, widthMm, thicknessMm, form, placed }) => ({
      label,
      lengthMm,
      widthMm,
      thicknessMm,
      form,
      pieceCount: placed.length,
    })),
  },
  laminate: {
    method: laminate.method,
    taperRatio: laminate.taperRatio,
    totalThicknessMm: laminate.totalThicknessMm,
    glassKg: laminate.glassKg,
    resinKg: laminate.resinKg,
    plies: laminate.plies.map(({ order, material, orientationDeg, thicknessMm, areaM2, rollLengthM }) => ({
      order,
      material,
      orientationDeg,
      thicknessMm,
      areaM2,
      rollLengthM,
    })),
  },
  panel: { verdict: panel.verdict, ratios: panel.ratios.map(({ code, value }) => ({ code, value })) },
  checks: checks.map(({ code, state, verdict, utilisation }) => ({ code, state, verdict, utilisation })),
  process: {
    resin: process.resin.code,
    hardener: process.resin.hardener,
    batchCount: process.batches.length,
    press: process.bondPressure.method,
    demands: process.demands.map(({ step, totalL, totalKg }) => ({ step, totalL, totalKg })),
    criticalChain: process.calendar.criticalChain,
  },
  sections: sections.map(({ code, amount }) => ({ code, amount })),
  lines: lines.map(
    ({
      code,
      section,
      unit,
      netQuantity,
      wasteQuantity,
      purchaseQuantity,
      pricedQuantity,
      packs,
      unitPrice,
      amount,
      amountRange: { low, high },
    }) => ({
      code,
      section,
      unit,
      netQuantity,
      wasteQuantity,
      purchaseQuantity,
      pricedQuantity,
      packs: packs.map(({ sku, count }) => `${count} ${sku}`),
      unitPrice: unitPrice.amount,
      amount: amount.amount,
      low: low.amount,
      high: high.amount,
    }),
  ),
  totals,
});

const rounded = (_key: string, value: unknown): unknown =>
  typeof value === 'number' ? Number(value.toPrecision(SIGNIFICANT_DIGITS)) : value;

/** One line of text for each entry, so that a difference shows what it is about. */
const written = (figures: Readonly<Record<string, unknown>>): string =>
  `{\n${Object.entries(figures)
    .map(([part, value]) => `  ${JSON.stringify(part)}: ${entries(value)}`)
    .join(',\n')}\n}\n`;

const entries = (value: unknown): string => {
  if (Array.isArray(value))
    return `[\n${value.map((item) => `    ${JSON.stringify(item, rounded)}`).join(',\n')}\n  ]`;
  return `{\n${Object.entries(value as object)
    .map(([key, item]) => `    ${JSON.stringify(key)}: ${JSON.stringify(item, rounded)}`)
    .join(',\n')}\n  }`;
};

describe.each(['foredeck', 'side-deck'])('the %s sample', (name) => {
  const made = figuresOf(estimateOf(name));
  const golden = fileOf(`${name}.json`);

  test('comes out again with every figure that somebody would act on', () => {
    if (isUpdate) writeFileSync(golden, written(made));
    expect(JSON.parse(written(made))).toEqual(JSON.parse(readFileSync(golden, 'utf8')));
  });

  test('comes out the same to the last bit when it is made twice', () => {
    expect(JSON.stringify(figuresOf(estimateOf(name)))).toBe(JSON.stringify(made));
  });
});
