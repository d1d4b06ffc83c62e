import { describe, expect, test } from '@jest/globals';
import { materialsOf, shippedCatalogue, type Filler, type ResinSystem } from '#lib/catalogue';
import { planBatches, resinDemand, type BatchPlan, type BatchRequest } from './index.js';

const resinOf = (code: string): ResinSystem =>
  materialsOf(shippedCatalogue, 'resin').find((resin) => resin.code === code)!;
const fillers: readonly Filler[] = materialsOf(shippedCatalogue, 'filler');

/** One small panel: 1.2 m2 of core in five pieces, closed with two plies, eight holes. */
const panel: BatchRequest = {
  resin: resinOf('resin-epoxy-5to1'),
  fillers,
  temperatureC: 20,
  people: 2,
  steps: [
    { step: 'seal', areaM2: 1.2 },
    { step: 'undercut', lengthM: 4.4, widthMm: 25, heightMm: 12.7 },
    {
      step: 'bed-core',
      areaM2: 1.2,
      pieces: [
        { label: 'A1', areaM2: 0.3 },
        { label: 'A2', areaM2: 0.3 },
        { label: 'A3', areaM2: 0.25 },
        { label: 'A4', areaM2: 0.2 },
        { label: 'A5', areaM2: 0.15 },
      ],
    },
    { step: 'prewet', areaM2: 1.2 },
    {
      step: 'top-laminate',
      plies: [
        { label: 'P1', areaM2: 1.5, arealMassGPerM2: 900, fibreMassFraction: 0.5 },
        { label: 'P2', areaM2: 1.3, arealMassGPerM2: 900, fibreMassFraction: 0.5 },
      ],
    },
    { step: 'potting', holes: 8, diameterMm: 25, depthMm: 12.7 },
    { step: 'fairing', areaM2: 2 },
  ],
};
const planOf = (request: BatchRequest): BatchPlan => {
  const outcome = planBatches(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const problemsOf = (request: BatchRequest) => {
  const outcome = planBatches(request);
  return outcome.ok ? [] : outcome.problems;
};
const tenths = (values: readonly number[]) => values.reduce((sum, value) => sum + Math.round(value * 10), 0);

describe('batches', () => {
  test('resin, hardener and filler of the pots add up to each step and to the bill, to a tenth of a gram', () => {
    const { demand, batches } = planOf(panel);
    for (const step of demand.steps) {
      const own = batches.filter(({ stepIndex }) => stepIndex === step.index);
      expect([
        tenths(own.map(({ resinG }) => resinG)),
        tenths(own.map(({ hardenerG }) => hardenerG)),
        tenths(own.map(({ fillerG }) => fillerG)),
      ]).toEqual([tenths([step.resinG]), tenths([step.hardenerG]), tenths([step.fillerG])]);
    }
    expect(tenths(batches.map(({ resinG }) => resinG))).toBe(tenths([demand.totals.resinG]));
    expect(tenths(batches.map(({ hardenerG }) => hardenerG))).toBe(tenths([demand.totals.hardenerG]));
  });

  test('each pot keeps the ratio of its hardener as far as a scale of a tenth of a gram shows', () => {
    const { demand, batches } = planOf(panel);
    for (const { resinG, hardenerG } of batches)
      expect(Math.abs(hardenerG - (resinG * demand.partsByMass) / 100)).toBeLessThan(0.15);
  });

  test('every piece is bedded once, in bedding order, and no joint straddles two pots', () => {
    const covers = planOf(panel)
      .batches.filter(({ step }) => step === 'bed-core')
      .flatMap((batch) => batch.covers);
    expect(
      covers.map((label) => label.slice(0, 2)).filter((label, index, all) => all.indexOf(label) === index),
    ).toEqual(['A1', 'A2', 'A3', 'A4', 'A5']);
  });

  test('a pot is mixed and spread before half its pot life has passed', () => {
    for (const { spreadMin, useWithinMin, fillerG } of planOf(panel).batches)
      expect(spreadMin + (fillerG > 0 ? 6 : 4)).toBeLessThanOrEqual(useWithinMin + 0.1);
  });

  test('the scale reads resin, then resin with hardener, then all', () => {
    const [card] = planOf(panel).batches.filter(({ step }) => step === 'bed-core');
    expect(card.weigh.map(({ what }) => what)).toEqual(['resin', 'hardener', 'filler']);
    expect(card.weigh[2].scaleShowsG).toBeCloseTo(card.mixedG, 6);
    expect(card.mixedMl).toBeGreaterThan(0);
  });

  test('a pump that gives 20 ml a stroke gives one stroke of hardener to each of resin', () => {
    const [card] = planOf({ ...panel, pumpResinMlPerStroke: 20 }).batches;
    expect(card.pumps).toContain(`${(card.resinG / 1.15 / 20).toFixed(1)} strokes`);
  });

  test('a warmer day takes a slower hardener, and says why the quicker ones lost', () => {
    const cold = planOf({ ...panel, temperatureC: 10 });
    const warm = planOf({ ...panel, temperatureC: 30 });
    expect(cold.resin.hardener).not.toBe('slow');
    expect(warm.resin.hardener).toBe('slow');
    expect(warm.considered.find(({ code }) => code === 'fast')?.reasons.join()).toContain('too quick above');
  });

  test('twice the hands make fewer, larger pots', () => {
    const [two, six] = [2, 6].map(
      (people) => planOf({ ...panel, hardener: 'medium', temperatureC: 24, people }).batches.length,
    );
    expect(six).toBeLessThan(two);
  });

  test('a piece that would gel at its first edge is named with the size that fits', () => {
    const { findings } = planOf({
      ...panel,
      people: 1,
      temperatureC: 26,
      hardener: 'fast',
      steps: [{ step: 'bed-core', areaM2: 4, pieces: [{ label: 'whole', areaM2: 4 }] }],
    });
    expect(
      findings.some(
        ({ code, severity, facts }) =>
          code === 'piece-too-large' && severity === 'stop' && Number(facts.fitsM2) < 4,
      ),
    ).toBe(true);
  });

  test('resin below the limit of all its hardeners, crew of zero, ratio of zero: each is named', () => {
    expect(
      problemsOf({ ...panel, temperatureC: 2 }).map(({ code, at, facts }) => [code, at, facts.lowest]),
    ).toEqual([['resin-too-cold', '/temperatureC', 5]]);
    expect(problemsOf({ ...panel, people: 0 }).map(({ at }) => at)).toEqual(['/people']);
    const medium = panel.resin.hardeners[1];
    const spoiled = {
      ...panel.resin,
      hardeners: [{ ...medium, partsByMass: { ...medium.partsByMass, value: 0 } }],
    };
    expect(problemsOf({ ...panel, resin: spoiled }).map(({ code, at }) => [code, at])).toContainEqual([
      'out-of-range',
      '/resin/hardeners/0/partsByMass/value',
    ]);
    const crossed = {
      ...panel.resin,
      hardeners: [{ ...medium, partsByMass: { ...medium.partsByMass, value: 40 } }],
    };
    expect(problemsOf({ ...panel, resin: crossed }).map(({ code }) => code)).toContain('contradiction');
  });

  test('all faults of a request come at once', () => {
    const faults = problemsOf({
      ...panel,
      people: 0,
      temperatureC: Number.NaN,
      steps: [{ step: 'seal' }, { step: 'potting', holes: -1, diameterMm: 0, depthMm: 10 }],
    });
    expect(faults.map(({ at }) => at)).toEqual([
      '/steps/1/holes',
      '/steps/1/diameterMm',
      '/temperatureC',
      '/people',
      '/steps/0/areaM2',
    ]);
  });
});

describe('resin by step', () => {
  test('a square metre bedded on the stated default takes 1.4 litres net and its waste stands apart', () => {
    const outcome = resinDemand({
      resin: panel.resin,
      hardener: 'slow',
      fillers,
      steps: [{ step: 'bed-core', areaM2: 1 }],
    });
    if (!outcome.ok) throw new Error('refused');
    const [step] = outcome.value.steps;
    expect(step.netL).toBeCloseTo(1.4, 12);
    expect(step.wasteL).toBeCloseTo(1.4 * 0.18, 12);
    expect(outcome.value.assumptions.map(({ at }) => at)).toEqual(
      expect.arrayContaining(['/steps/0/thicknessMm', '/wasteFraction']),
    );
  });

  test('the masses of a step fill exactly the volume that the step puts down', () => {
    const outcome = resinDemand({ resin: panel.resin, hardener: 'slow', fillers, steps: panel.steps });
    if (!outcome.ok) throw new Error('refused');
    for (const { resinG, hardenerG, fillerG, filler, totalL } of outcome.value.steps) {
      const hardener = panel.resin.hardeners.find(({ code }) => code === 'slow')!;
      const density = fillers.find(({ code }) => code === filler)?.trueDensityGPerCm3.value ?? 1;
      const volumeMl =
        resinG / panel.resin.densityGPerCm3.value +
        hardenerG / hardener.densityGPerCm3.value +
        fillerG / density;
      expect(Math.abs(volumeMl - totalL * 1000)).toBeLessThan(0.4);
    }
  });
});
