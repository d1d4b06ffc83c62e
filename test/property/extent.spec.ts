import { triangularQuantile } from '#lib/kernel';
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  areaMm2,
  difference,
  intersection,
  movePoint,
  offset,
  rectangle,
  regionOf,
  rotatePoint,
  union,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';
import {
  estimateExtent,
  planOpenings,
  quantilesOf,
  type Extent,
  type OpeningPlan,
  type OpeningRequest,
  type Reading,
} from '#lib/extent';

const seed = 20261125;
const runs = (numRuns: number) => ({ seed, numRuns, interruptAfterTimeLimit: 60_000, endOnFailure: true });

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A blob of bad core round a place of a 2.4 x 1.2 m panel. */
const zone = fc
  .record({
    at: fc.tuple(double(200, 2200), double(150, 1050)),
    corners: fc.array(double(0.35, 1), { minLength: 5, maxLength: 24 }),
    sizeMm: double(40, 350),
  })
  .map(({ at, corners, sizeMm }): Ring =>
    corners.map((share, index): Point => {
      const angle = (2 * Math.PI * index) / corners.length;
      return [at[0] + sizeMm * share * Math.cos(angle), at[1] + sizeMm * share * Math.sin(angle)];
    }),
  );

const panelRing: Ring = rectangle(0, 0, 2400, 1200);
const supports = [{ kind: 'bulkhead', from: [1600, 0] as Point, to: [1600, 1200] as Point }];
const build = { outerSkin: { thicknessMm: 3 }, innerSkin: { thicknessMm: 2 }, core: { thicknessMm: 12.7 } };

const job = fc
  .record({
    rings: fc.array(zone, { minLength: 1, maxLength: 4 }),
    skin: fc.constantFrom('relay' as const, 're-bed' as const),
    hasHatch: fc.boolean(),
    hasSupport: fc.boolean(),
    marginMm: double(0, 120),
  })
  .map(({ rings, skin, hasHatch, hasSupport, marginMm }): OpeningRequest => {
    const holes = hasHatch ? [rectangle(1000, 450, 1400, 750)] : [];
    const deck = regionOf(panelRing, holes);
    const inside = rings
      .flatMap((ring) => intersection(regionOf(ring), deck))
      .filter((polygon) => areaMm2([polygon]) > 500);
    return {
      ...build,
      method: { skin, cutMarginMm: marginMm },
      panel: { outline: panelRing, holes, ...(hasSupport ? { supports } : {}) },
      zones: inside.map(({ outer, holes: islands }, index) => ({
        id: `z${index}`,
        outline: outer,
        holes: islands,
      })),
    };
  })
  .filter(({ zones }) => zones.length > 0);

function planned(request: OpeningRequest): OpeningPlan {
  const outcome = planOpenings(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const opened = (plan: OpeningPlan): Region => union(...plan.openings.map(({ area }) => [area]));

describe('openings', () => {
  test('what is cut and what stays are the panel, and no skin is cut twice', () => {
    fc.assert(
      fc.property(job, (request) => {
        const plan = planned(request);
        expect(plan.openedAreaM2 + plan.retainedAreaM2).toBeCloseTo(plan.panelAreaM2, 5);
        expect(plan.openings.reduce((sum, { areaM2 }) => sum + areaM2, 0)).toBeCloseTo(plan.openedAreaM2, 5);
        for (const { skinPieces, areaM2 } of plan.openings)
          expect(skinPieces.reduce((sum, piece) => sum + piece.areaM2, 0)).toBeCloseTo(areaM2, 5);
      }),
      runs(30),
    );
  });

  test('all bad core is opened, undercut or named as out of reach', () => {
    fc.assert(
      fc.property(job, (request) => {
        const plan = planned(request);
        const bad = union(...request.zones.map(({ outline, holes }) => regionOf(outline, holes)));
        const dealt = union(opened(plan), ...plan.openings.map(({ undercut }) => undercut), plan.unreached);
        expect(areaMm2(difference(bad, dealt))).toBeLessThan(10);
        for (const { undercut } of plan.openings)
          expect(areaMm2(intersection(undercut, opened(plan)))).toBeLessThan(10);
      }),
      runs(30),
    );
  });

  test('the flange of sound deck stays at every edge and round every hatch', () => {
    fc.assert(
      fc.property(job, (request) => {
        const deck = regionOf(request.panel.outline, request.panel.holes);
        const keep = difference(deck, offset(deck, -49.9));
        for (const cornerRadiusMm of [40, 200]) {
          expect(
            areaMm2(intersection(opened(planned({ ...request, rules: { cornerRadiusMm } })), keep)),
          ).toBeLessThan(1);
        }
      }),
      runs(30),
    );
  });

  test('start and direction of an outline and the order of zones do not matter', () => {
    fc.assert(
      fc.property(job, fc.nat(), (request, turn) => {
        const shifted = [...request.zones].reverse().map(({ id, outline, holes }) => ({
          id,
          holes,
          outline: [
            ...outline.slice(turn % outline.length),
            ...outline.slice(0, turn % outline.length),
          ].reverse(),
        }));
        const [plan, again] = [planned(request), planned({ ...request, zones: shifted })];
        expect(again.openings.map(({ label, areaM2 }) => [label, areaM2.toFixed(6)])).toEqual(
          plan.openings.map(({ label, areaM2 }) => [label, areaM2.toFixed(6)]),
        );
        expect(again.cutLengthM).toBeCloseTo(plan.cutLengthM, 5);
        expect(again.findings.map(({ code }) => code).sort()).toEqual(
          plan.findings.map(({ code }) => code).sort(),
        );
      }),
      runs(25),
    );
  });

  test('moving and turning the deck moves and turns the plan', () => {
    fc.assert(
      fc.property(
        job,
        double(-3, 3),
        fc.tuple(double(-3000, 3000), double(-3000, 3000)),
        (request, angle, by) => {
          const move = (point: Point): Point => movePoint(rotatePoint(point, angle), by);
          const plan = planned(request);
          const moved = planned({
            ...request,
            panel: {
              outline: request.panel.outline.map(move),
              holes: (request.panel.holes ?? []).map((hole) => hole.map(move)),
              supports: (request.panel.supports ?? []).map(({ kind, from, to }) => ({
                kind,
                from: move(from),
                to: move(to),
              })),
            },
            zones: request.zones.map(({ id, outline, holes = [] }) => ({
              id,
              outline: outline.map(move),
              holes: holes.map((hole) => hole.map(move)),
            })),
          });
          expect(moved.openings).toHaveLength(plan.openings.length);
          expect(moved.openedAreaM2 / plan.openedAreaM2).toBeCloseTo(1, 3);
          expect(moved.cutLengthM / plan.cutLengthM).toBeCloseTo(1, 3);
          const turned = opened(plan).map(({ outer, holes }) => ({
            outer: outer.map(move),
            holes: holes.map((hole) => hole.map(move)),
          }));
          expect(areaMm2(difference(turned, opened(moved)))).toBeLessThan(0.002 * areaMm2(turned) + 50);
        },
      ),
      runs(25),
    );
  });

  test('a wider margin never opens less', () => {
    fc.assert(
      fc.property(job, (request) => {
        const at = (cutMarginMm: number): number =>
          planned({ ...request, panel: { outline: panelRing }, method: { cutMarginMm } }).openedAreaM2;
        expect(at(100)).toBeGreaterThanOrEqual(at(40) * 0.98);
      }),
      runs(25),
    );
  });

  test('each corner found by tape is where the plan has it', () => {
    fc.assert(
      fc.property(job, (request) => {
        for (const {
          marking: { datum, corners },
        } of planned(request).openings) {
          for (const { alongMm, offMm, fromStartMm, fromEndMm } of corners) {
            expect(Math.hypot(alongMm, offMm)).toBeCloseTo(fromStartMm, 6);
            expect(Math.hypot(datum.lengthMm - alongMm, offMm)).toBeCloseTo(fromEndMm, 6);
          }
        }
      }),
      runs(30),
    );
  });
});

const place = fc.tuple(double(0, 2400), double(0, 1200));
const reading: fc.Arbitrary<Reading> = fc.oneof(
  fc.record({
    kind: fc.constant('sounding' as const),
    at: place,
    sound: fc.constantFrom('sharp' as const, 'dull' as const, 'void' as const),
    isUnreliable: fc.boolean(),
  }),
  fc.record({ kind: fc.constant('moisture' as const), at: place, value: double(-50, 150) }),
  fc.record({
    kind: fc.constant('plug' as const),
    at: place,
    condition: fc.constantFrom('rotten' as const, 'dry-sound' as const, 'damp-sound' as const),
  }),
);
const survey = fc
  .array(reading, { minLength: 5, maxLength: 40 })
  .map((readings) => ({ readings, meter: { dryReference: 10, wetReference: 30 } }));

function extentOf(readings: readonly Reading[], outline: Ring = panelRing): Extent {
  const outcome = estimateExtent({
    panel: { outline },
    survey: { readings, meter: { dryReference: 10, wetReference: 30 } },
    map: { draws: 100 },
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const numbersIn = (value: unknown): readonly number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};

describe('extent', () => {
  test('whatever the readings, every number is finite, every chance between 0 and 1, every range in order and within the panel', () => {
    fc.assert(
      fc.property(survey, ({ readings }) => {
        const extent = extentOf(readings);
        expect(numbersIn(extent).every(Number.isFinite)).toBe(true);
        expect(extent.map?.cells.every(({ chance }) => chance >= 0 && chance <= 1)).toBe(true);
        const { p10, p50, p90 } = extent.damagedAreaM2;
        expect(0 <= p10 && p10 <= p50 && p50 <= p90 && p90 <= 2.88 + 1e-9).toBe(true);
        const areas = extent.contours.map(({ areaM2 }) => areaM2);
        expect([...areas].sort((a, b) => b - a)).toEqual(areas);
      }),
      runs(8),
    );
  }, 120_000);

  test('the order of the readings does not matter', () => {
    fc.assert(
      fc.property(survey, ({ readings }) => {
        const [extent, again] = [extentOf(readings), extentOf([...readings].reverse())];
        expect(again.mappedAreaM2).toBeCloseTo(extent.mappedAreaM2, 6);
        expect(again.damagedAreaM2.p50).toBeCloseTo(extent.damagedAreaM2.p50, 2);
      }),
      runs(3),
    );
  }, 120_000);

  test('moving and turning the deck changes no area', () => {
    fc.assert(
      fc.property(survey, double(-3, 3), ({ readings }, angle) => {
        const move = (point: Point): Point => movePoint(rotatePoint(point, angle), [700, -300]);
        const moved = extentOf(
          readings.map((one) => ({ ...one, at: move(one.at) })),
          panelRing.map(move),
        );
        const extent = extentOf(readings);
        expect(Math.abs(moved.mappedAreaM2 - extent.mappedAreaM2)).toBeLessThan(
          0.002 + 0.01 * extent.mappedAreaM2,
        );
        expect(Math.abs(moved.damagedAreaM2.p50 - extent.damagedAreaM2.p50)).toBeLessThan(
          0.05 + 0.08 * extent.damagedAreaM2.p50,
        );
      }),
      runs(3),
    );
  }, 120_000);

  test('one more plug of rotten core never makes less bad core likely', () => {
    fc.assert(
      fc.property(survey, place, ({ readings }, at) => {
        const mean = (extent: Extent): number =>
          (extent.map?.cells ?? []).reduce((sum, { chance }) => sum + chance, 0) /
          (extent.map?.cells.length ?? 1);
        expect(mean(extentOf([...readings, { kind: 'plug', at, condition: 'rotten' }]))).toBeGreaterThan(
          mean(extentOf(readings)) - 0.02,
        );
      }),
      runs(3),
    );
  }, 120_000);
});

describe('distributions', () => {
  test('a triangular quantile rises from low to high and splits its area as asked', () => {
    fc.assert(
      fc.property(
        fc.tuple(double(0, 2), double(0, 2), double(0, 2)).map((three) => [...three].sort((a, b) => a - b)),
        double(0.001, 0.999),
        ([low, likely, high], probability) => {
          const at = triangularQuantile({ low, likely, high }, probability);
          expect(at).toBeGreaterThanOrEqual(low - 1e-12);
          expect(at).toBeLessThanOrEqual(high + 1e-12);
          if (high - low < 1e-3) return;
          // The distribution function by its own formula, not by inverting ours.
          const below =
            at < likely
              ? (at - low) ** 2 / ((high - low) * (likely - low))
              : 1 - (high - at) ** 2 / ((high - low) * (high - likely));
          if (likely - low > 1e-6 && high - likely > 1e-6) expect(below).toBeCloseTo(probability, 6);
        },
      ),
      runs(1000),
    );
  });

  test('quantiles lie in order between the least and the most', () => {
    fc.assert(
      fc.property(fc.array(double(-1e6, 1e6), { minLength: 1, maxLength: 60 }), (values) => {
        const { p10, p50, p90 } = quantilesOf(values);
        expect(Math.min(...values) <= p10 && p10 <= p50 && p50 <= p90 && p90 <= Math.max(...values)).toBe(
          true,
        );
      }),
      runs(1000),
    );
  });
});
