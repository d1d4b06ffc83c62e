import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { materialsOf, shippedCatalogue } from '#lib/catalogue';
import { cautionsFor, type CautionContext } from '#lib/cautions';
import { criticalPath, planCalendar, type Activity, type CalendarRequest } from '#lib/calendar';
import { dewPointOf, equivalentAges, humidityFromDewPoint, planCure, rateRatioOf } from '#lib/cure';
import { planBatches, stepCodes, type BatchRequest, type ResinStepRequest } from '#lib/resin';
import { planBondPressure, standardPressurePa } from '#lib/press';
import { operations, type OperationFlags } from '#lib/work';

/** Printed with every failure by fast-check; change it to search elsewhere. */
const SEED = 20261125;
const runs = (numRuns: number): fc.Parameters<unknown> => ({ seed: SEED, numRuns });

const resins = materialsOf(shippedCatalogue, 'resin');
const fillers = materialsOf(shippedCatalogue, 'filler');
const resin = fc.constantFrom(...resins);
const area = fc.double({ min: 0.01, max: 20, noNaN: true });

/** Every number in an answer, however deep. */
const numbersIn = (value: unknown): readonly number[] => {
  if (typeof value === 'number') return [value];
  if (value instanceof Float64Array) return [...value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
};
const allFinite = (value: unknown): boolean => numbersIn(value).every(Number.isFinite);
const tenths = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + Math.round(value * 10), 0);

const step: fc.Arbitrary<ResinStepRequest> = fc.record({
  step: fc.constantFrom(...stepCodes),
  areaM2: area,
  lengthM: area,
  heightMm: fc.double({ min: 1, max: 40, noNaN: true }),
  spacingMm: fc.constantFrom(20, 25, 30),
  widthMm: fc.constantFrom(1, 2, 4),
  depthMm: fc.double({ min: 1, max: 30, noNaN: true }),
  holes: fc.integer({ min: 0, max: 60 }),
  diameterMm: fc.double({ min: 5, max: 60, noNaN: true }),
  plies: fc.array(
    fc.record({
      areaM2: area,
      arealMassGPerM2: fc.double({ min: 80, max: 1800, noNaN: true }),
      fibreMassFraction: fc.double({ min: 0.25, max: 0.65, noNaN: true }),
    }),
    { minLength: 1, maxLength: 5 },
  ),
  pieces: fc
    .array(area, { minLength: 1, maxLength: 8 })
    .map((areas) => areas.map((areaM2, index) => ({ label: `A${index + 1}`, areaM2 }))),
});
const batchRequest: fc.Arbitrary<BatchRequest> = fc.record({
  resin,
  fillers: fc.constant(fillers),
  temperatureC: fc.double({ min: 16, max: 35, noNaN: true }),
  people: fc.integer({ min: 1, max: 6 }),
  steps: fc.array(step, { minLength: 1, maxLength: 5 }),
});

describe('resin', () => {
  test('pots add up to every step and to the bill, whatever the job', () => {
    fc.assert(
      fc.property(batchRequest, (request) => {
        const outcome = planBatches(request);
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
        const { demand, batches } = outcome.value;
        for (const { index, resinG, hardenerG, fillerG } of demand.steps) {
          const own = batches.filter(({ stepIndex }) => stepIndex === index);
          expect([
            tenths(own.map((pot) => pot.resinG)),
            tenths(own.map((pot) => pot.hardenerG)),
            tenths(own.map((pot) => pot.fillerG)),
          ]).toEqual([tenths([resinG]), tenths([hardenerG]), tenths([fillerG])]);
        }
        expect(tenths(batches.map((pot) => pot.resinG))).toBe(tenths([demand.totals.resinG]));
        expect(allFinite(outcome.value)).toBe(true);
      }),
      runs(60),
    );
  });

  test('every piece is in some pot, once, in the order given', () => {
    fc.assert(
      fc.property(batchRequest, (request) => {
        const outcome = planBatches({ ...request, steps: [{ ...request.steps[0], step: 'bed-core' }] });
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
        const labels = outcome.value.batches.flatMap(({ covers }) =>
          covers.map((label) => label.split(' ')[0]),
        );
        expect(labels.filter((label, index) => labels.indexOf(label) === index)).toEqual(
          request.steps[0].pieces?.map(({ label }) => label),
        );
      }),
      runs(60),
    );
  });

  test('a warmer day never lengthens the pot life of a hardener', () => {
    fc.assert(
      fc.property(
        resin,
        fc.double({ min: 15, max: 30, noNaN: true }),
        fc.double({ min: 0.1, max: 8, noNaN: true }),
        (system, temperatureC, warmerK) => {
          const lifeAt = (at: number): number => {
            const outcome = planBatches({
              resin: system,
              hardener: system.hardeners[0].code,
              fillers,
              temperatureC: at,
              people: 2,
              steps: [{ step: 'seal', areaM2: 1 }],
            });
            return outcome.ok ? outcome.value.potLife.at100GMin : Number.NaN;
          };
          expect(lifeAt(temperatureC + warmerK)).toBeLessThan(lifeAt(temperatureC));
        },
      ),
      runs(40),
    );
  });
});

describe('cure', () => {
  const course = fc.array(fc.double({ min: -5, max: 45, noNaN: true }), { minLength: 2, maxLength: 200 });
  const law = { referenceC: 25, activationEnergyKJPerMol: 55, stopsBelowC: 8 };

  test('age never falls, and no course is older than the same course warmed', () => {
    fc.assert(
      fc.property(course, fc.double({ min: 0, max: 10, noNaN: true }), (temperatures, warmerK) => {
        const ages = equivalentAges({ stepH: 0.5, temperaturesC: Float64Array.from(temperatures) }, law);
        const warmed = equivalentAges(
          { stepH: 0.5, temperaturesC: Float64Array.from(temperatures, (value) => value + warmerK) },
          law,
        );
        for (let index = 1; index < ages.length; index += 1)
          expect(ages[index]).toBeGreaterThanOrEqual(ages[index - 1]);
        expect(warmed[warmed.length - 1]).toBeGreaterThanOrEqual(ages[ages.length - 1] - 1e-9);
      }),
      runs(200),
    );
  });

  test('age adds up over a course cut anywhere', () => {
    fc.assert(
      fc.property(course, fc.nat(), (temperatures, place) => {
        const cut = 1 + (place % (temperatures.length - 1));
        const ageOf = (part: readonly number[]) => {
          const ages = equivalentAges({ stepH: 1, temperaturesC: Float64Array.from(part) }, law);
          return ages[ages.length - 1];
        };
        expect(ageOf(temperatures.slice(0, cut + 1)) + ageOf(temperatures.slice(cut))).toBeCloseTo(
          ageOf(temperatures),
          9,
        );
      }),
      runs(200),
    );
  });

  test('milestones come in the order of their ages, inside their band', () => {
    fc.assert(
      fc.property(resin, fc.double({ min: 21, max: 38, noNaN: true }), (system, temperatureC) => {
        for (const { code } of system.hardeners) {
          const outcome = planCure({
            resin: system,
            hardener: code,
            temperature: { kind: 'constant', temperatureC },
          });
          if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
          const { milestones } = outcome.value;
          for (const { likelyH = 0, earlyH = 0, lateH = 0 } of milestones)
            expect(earlyH <= likelyH && likelyH <= lateH).toBe(true);
          const byAge = [...milestones].sort((a, b) => a.ageH - b.ageH).map(({ likelyH }) => likelyH ?? 0);
          expect(byAge).toEqual([...byAge].sort((a, b) => a - b));
        }
      }),
      runs(40),
    );
  });
});

describe('air', () => {
  test('the dew point lies at or below the air, and gives the humidity back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (airC, relativeHumidity) => {
          const dewC = dewPointOf(airC, relativeHumidity);
          expect(dewC).toBeLessThanOrEqual(airC + 1e-9);
          expect(humidityFromDewPoint(airC, dewC)).toBeCloseTo(relativeHumidity, 8);
        },
      ),
      runs(300),
    );
  });

  test('the standard atmosphere thins with height', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -500, max: 5000, noNaN: true }),
        fc.double({ min: 1, max: 1000, noNaN: true }),
        (altitudeM, higherM) => {
          expect(standardPressurePa(altitudeM + higherM)).toBeLessThan(standardPressurePa(altitudeM));
        },
      ),
      runs(200),
    );
  });
});

describe('press', () => {
  const odd = fc.oneof(
    fc.double({ min: -10, max: 20_000 }),
    fc.constantFrom(0, Number.NaN, Number.POSITIVE_INFINITY, 1e300, -1),
  );

  test('whatever numbers come in, the answer is a refusal or finite', () => {
    fc.assert(
      fc.property(
        fc.tuple(odd, odd, odd, odd, odd, odd, odd, odd),
        ([areaM2, lengthMm, widthMm, thicknessMm, spanMm, altitudeM, requiredKPa, dropKPa]) => {
          const outcome = planBondPressure({
            areaM2,
            lengthMm,
            widthMm,
            innerSkin: { thicknessMm, spanMm, isAirtight: true },
            altitudeM,
            requiredKPa,
            vacuum: { dropKPa, dropMinutes: 5 },
            battens: { deckAround: 'wood', woodSpecificGravity: 0.5 },
          });
          expect(outcome.ok ? allFinite(outcome.value) : outcome.problems.length > 0).toBe(true);
        },
      ),
      runs(400),
    );
  });

  test('weights for an area are those of its parts together', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 3, noNaN: true }), (areaM2) => {
        const pressOf = (share: number) => {
          const outcome = planBondPressure({
            areaM2: areaM2 * share,
            lengthMm: 1000,
            widthMm: 500,
            innerSkin: { thicknessMm: 3, spanMm: 300 },
            weights: { bagKg: 1 },
          });
          return outcome.ok ? (outcome.value.options[0].availableKPa ?? 0) : 0;
        };
        expect(pressOf(1)).toBeGreaterThanOrEqual(1);
        expect(pressOf(0.5) / pressOf(1)).toBeCloseTo(1, 0);
      }),
      runs(60),
    );
  });
});

describe('network', () => {
  /** Activities that wait only for earlier ones, so that there is no circle. */
  const network: fc.Arbitrary<readonly Activity[]> = fc
    .array(
      fc.record({ duration: fc.integer({ min: 0, max: 20 }), picks: fc.array(fc.nat(), { maxLength: 3 }) }),
      { minLength: 1, maxLength: 25 },
    )
    .map((drawn) =>
      drawn.map(({ duration, picks }, index) => ({
        code: `T${index}`,
        duration,
        after: index === 0 ? [] : [...new Set(picks.map((pick) => `T${pick % index}`))],
      })),
    );

  test('the critical path is as long as the longest chain, tried one by one, and no slack is negative', () => {
    fc.assert(
      fc.property(network, (activities) => {
        const longest = new Map<string, number>();
        for (const { code, duration, after } of activities)
          longest.set(code, duration + Math.max(0, ...after.map((before) => longest.get(before) ?? 0)));
        const outcome = criticalPath(activities);
        if (!outcome.ok) throw new Error('refused');
        expect(outcome.value.length).toBe(Math.max(...longest.values()));
        for (const { slack } of outcome.value.activities) expect(slack).toBeGreaterThanOrEqual(-1e-9);
        expect(outcome.value.critical.length).toBeGreaterThan(0);
      }),
      runs(200),
    );
  });

  test('the order in which activities are listed changes nothing', () => {
    fc.assert(
      fc.property(network, fc.nat(), (activities, turn) => {
        const turned = [
          ...activities.slice(turn % activities.length),
          ...activities.slice(0, turn % activities.length),
        ].reverse();
        const timesOf = (listed: readonly Activity[]) => {
          const outcome = criticalPath(listed);
          return outcome.ok ? [...outcome.value.activities].sort((a, b) => (a.code < b.code ? -1 : 1)) : [];
        };
        expect(timesOf(turned)).toEqual(timesOf(activities));
      }),
      runs(100),
    );
  });

  test('closing any chain into a circle is named', () => {
    fc.assert(
      fc.property(network, fc.nat(), (activities, pick) => {
        const chain = activities.filter(({ after }) => after.length > 0);
        fc.pre(chain.length > 0);
        const last = chain[pick % chain.length];
        const closed = activities.map((activity) =>
          activity.code === last.after[0] ? { ...activity, after: [...activity.after, last.code] } : activity,
        );
        const outcome = criticalPath(closed);
        expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code)).toEqual(['network-cycle']);
      }),
      runs(100),
    );
  });
});

const flags: fc.Arbitrary<OperationFlags> = fc.record({
  skin: fc.constantFrom('re-bed' as const, 'relay' as const),
  access: fc.constantFrom('from-above' as const, 'from-below' as const),
  condition: fc.constantFrom('wet-rotten' as const, 'wet-bonded' as const, 'dry-debonded' as const),
  press: fc.constantFrom('weights' as const, 'battens' as const, 'vacuum' as const),
  shelter: fc.constantFrom('shed' as const, 'tent' as const, 'open' as const),
  below: fc.constantFrom('open' as const, 'lined' as const, 'none' as const),
  skill: fc.constantFrom('professional' as const, 'owner' as const),
  props: fc.constantFrom('needed' as const, 'not-needed' as const),
  finish: fc.constantFrom('painted' as const, 'none' as const),
  nonskid: fc.constantFrom('yes' as const, 'no' as const),
  berth: fc.constantFrom('ashore' as const, 'afloat' as const),
  panel: fc.constantFrom('flat' as const, 'cambered' as const),
});

/** What goes on before the work before it has set: it waits for its end alone. */
const goesOnWet = (code: string, before: string): boolean =>
  operations.find((operation) => operation.code === code)?.wetOn?.includes(before) ?? false;

/** What may be laid on the work before while that is tacky. */
const goesOnTacky = (code: string, before: string): boolean =>
  operations.find((operation) => operation.code === code)?.tackyOn?.includes(before) ?? false;

describe('calendar', () => {
  const small = fc.double({ min: 0.1, max: 3, noNaN: true });
  const request: fc.Arbitrary<CalendarRequest> = fc.record({
    startDate: fc.constantFrom('2026-01-12', '2026-03-25', '2026-10-19'),
    timeZone: fc.constantFrom('UTC', 'Europe/Berlin', 'America/New_York'),
    resin: fc.constant(resins[0]),
    hardener: fc.constant('medium'),
    deckTemperatureC: fc.double({ min: 12, max: 28, noNaN: true }),
    crew: fc.record({ people: fc.integer({ min: 1, max: 5 }), hoursPerDay: fc.integer({ min: 3, max: 10 }) }),
    flags,
    runs: fc.constant(100),
    seed: fc.nat(),
    drivers: fc.record({
      'opened-m2': small,
      'cut-m': small,
      'taper-m': small,
      'laminate-m2': small,
      'faired-m2-cycle': small,
      'primed-m2-coat': small,
      'topcoat-m2-coat': small,
      'hole': fc.nat(40),
      'fitting-on-h': fc.nat(8),
    }),
  });

  /** By its own age at the steady deck, from gel to the end of the window; moments are written to the minute. */
  const isTacky = (given: CalendarRequest, before: { readonly endAt: string }, startAt: string): boolean => {
    const { activationEnergyKJPerMol: energy, hardeners } = resins[0];
    const { gelH, recoatShutsH } = hardeners.find(({ code }) => code === given.hardener)!;
    const passedH = (Date.parse(startAt) - Date.parse(before.endAt)) / 3_600_000;
    const ageH = passedH * rateRatioOf(energy.value, 25, given.deckTemperatureC!);
    return ageH > gelH.value - 0.1 && ageH < recoatShutsH.value + 0.1;
  };

  test('no task starts before what it waits for is ready; work is done one thing at a time; all is finite', () => {
    fc.assert(
      fc.property(request, (given) => {
        const outcome = planCalendar(given);
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
        const byCode = new Map(outcome.value.tasks.map((task) => [task.code, task]));
        for (const { operation, after, startAt } of outcome.value.tasks)
          for (const before of after.map((code) => byCode.get(code)!))
            if (goesOnTacky(operation, before.operation) && Date.parse(startAt) < Date.parse(before.readyAt))
              expect(isTacky(given, before, startAt)).toBe(true);
            else
              expect(Date.parse(startAt)).toBeGreaterThanOrEqual(
                Date.parse(goesOnWet(operation, before.operation) ? before.endAt : before.readyAt),
              );
        const worked = outcome.value.tasks.filter(({ labourH }) => labourH > 0);
        for (let index = 1; index < worked.length; index += 1)
          expect(worked[index].startDay).toBeGreaterThanOrEqual(worked[index - 1].endDay - 1e-9);
        expect(allFinite(outcome.value)).toBe(true);
        const { p10, p50, p90 } = outcome.value.calendarDays;
        expect(p10 <= p50 && p50 <= p90).toBe(true);
      }),
      { ...runs(12), endOnFailure: true },
    );
  });
});

/** Nothing known that need not be, and nothing used. */
const plain: Omit<CautionContext, 'flags' | 'resin' | 'hardener' | 'openedAreaM2' | 'yearBuilt'> = {
  fillers,
  coatings: [],
  application: 'brush-and-roller',
  usesSolvent: true,
  usesPumps: false,
  surface: 'painted-nonskid',
  finishExtent: 'panel',
  under: 'unknown',
  fittings: [],
  solidInserts: 0,
  temperatureC: 20,
  coldestNightC: 'unknown',
  relativeHumidityPercent: 60,
  coreMoisturePercent: 'unknown',
  coreReadings: { dryStays: 0, wetStays: 0, dryOut: 0 },
  evidence: 'single-symptom',
  plugs: 0,
  cause: 'unknown',
  needsBleedHoles: true,
  proudMm: 0,
  taperFits: true,
  innerSkinSpanMm: 'unknown',
  isInnerSkinAirtight: 'unknown',
  innerSkinHasHoles: false,
  weightsKg: 0,
  largestPotG: 0,
  forgottenPotPeakC: 0,
  injectedAreaM2: 0,
  batchFindings: [],
};

describe('cautions', () => {
  test('the worst comes first and each says what called it, whatever the job', () => {
    fc.assert(
      fc.property(
        flags,
        resin,
        fc.option(fc.integer({ min: 1950, max: 2026 }), { nil: undefined }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (chosen, system, yearBuilt, openedAreaM2) => {
          const cautions = cautionsFor({
            ...plain,
            flags: chosen,
            resin: system,
            hardener: system.hardeners[0].code,
            openedAreaM2,
            yearBuilt: yearBuilt ?? 'unknown',
          });
          const ranks = cautions.map(({ severity }) => ['danger', 'warning', 'caution'].indexOf(severity));
          expect(ranks).toEqual([...ranks].sort());
          for (const { because, text } of cautions)
            expect(Math.min(because.length, text.length)).toBeGreaterThan(5);
          expect(new Set(cautions.map(({ code }) => code)).size).toBe(cautions.length);
        },
      ),
      runs(100),
    );
  });
});
