import { describe, expect, test } from '@jest/globals';
import { areaMm2, rectangle, regionOf, containsPoint, distance, type Point } from '#lib/geometry';
import { randomStream } from '#lib/kernel';
import { estimateExtent, planOpenings, type Extent, type ExtentRequest, type Reading } from './index.js';

const panel = { outline: rectangle(0, 0, 2000, 1000) };

const extent = (request: Omit<ExtentRequest, 'panel'> & Partial<ExtentRequest>): Extent => {
  const outcome = estimateExtent({ panel, ...request });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

const codes = ({ findings }: Extent): readonly string[] => findings.map(({ code }) => code);

/** A sounding every 100 mm; core is bad within 300 mm of (700, 500). */
const isBad = ([x, y]: Point): boolean => Math.hypot(x - 700, y - 500) < 300;
const grid = Array.from({ length: 19 * 9 }, (_, index): Point => [
  100 + 100 * (index % 19),
  100 + 100 * Math.floor(index / 19),
]);
const soundings = grid.map((at): Reading => ({ kind: 'sounding', at, sound: isBad(at) ? 'void' : 'sharp' }));
const disc = Math.PI * 0.3 ** 2;

describe('a round void sounded every 100 mm', () => {
  const found = extent({ survey: { readings: soundings } });

  test('is mapped where it is, somewhat larger than it is', () => {
    expect(found.zones).toHaveLength(1);
    const [{ outline, holes }] = found.zones;
    expect(containsPoint([{ outer: outline, holes }], [700, 500])).toBe(true);
    expect(found.mappedAreaM2).toBeGreaterThan(disc * 0.95);
    expect(found.mappedAreaM2).toBeLessThan(disc * 1.4);
  });

  test('contours of lower probability hold those of higher', () => {
    const areas = found.contours.map(({ areaM2 }) => areaM2);
    expect([...areas].sort((a, b) => b - a)).toEqual(areas);
    expect(found.contours.map(({ probability }) => probability)).toEqual([
      0.1,
      found.cut?.probability,
      0.5,
      0.9,
    ]);
  });

  test('its own spread holds the truth, and what symptoms miss widens it', () => {
    expect(found.mapSpreadM2?.p10).toBeLessThan(disc * 1.1);
    expect(found.mapSpreadM2?.p90).toBeGreaterThan(disc * 0.95);
    expect(found.evidence.grade).toBe('single-symptom');
    expect(found.damagedAreaM2.p90 - found.damagedAreaM2.p10).toBeGreaterThan(
      (found.mapSpreadM2?.p90 ?? 0) - (found.mapSpreadM2?.p10 ?? 0),
    );
  });

  test('the zones go straight into a plan of openings', () => {
    const planned = planOpenings({
      panel,
      zones: found.zones,
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 2 },
      core: { thicknessMm: 12 },
    });
    expect(planned.ok && planned.value.openings).toHaveLength(1);
  });

  test('every judgement it rests on is listed', () => {
    const at = found.assumptions.map(({ origin }) => (origin.kind === 'assumed' ? origin.at : ''));
    expect(at).toEqual([
      '/map/leaveCostHPerM2',
      '/map/usualBadShare',
      '/map/odds/sounding/sharp',
      '/map/odds/sounding/void',
      '/rules/openedHPerM2',
      '/evidence',
    ]);
  });
});

describe('the evidence', () => {
  const plugs: readonly Reading[] = [
    { kind: 'plug', at: [700, 500], condition: 'rotten' },
    { kind: 'plug', at: [1150, 500], condition: 'dry-sound' },
  ];

  test('a plug outranks the sound round it', () => {
    const sharp = grid.map((at): Reading => ({ kind: 'sounding', at, sound: 'sharp' }));
    const found = extent({
      survey: { readings: [...sharp, { kind: 'plug', at: [700, 500], condition: 'rotten' }] },
    });
    expect(
      found.zones.some(({ outline, holes }) => containsPoint([{ outer: outline, holes }], [700, 500])),
    ).toBe(true);
  });

  test('plugs on both sides of the boundary make the best grade and the narrowest range', () => {
    const found = extent({ survey: { readings: [...soundings, ...plugs] } });
    expect(found.evidence.grade).toBe('mapped-with-plugs');
    const { low, likely, high } = found.evidence.multiplier;
    expect(low < likely && likely < high).toBe(true);
  });

  test('an unreliable plug proves nothing', () => {
    const found = extent({
      survey: { readings: [...soundings, ...plugs.map((plug) => ({ ...plug, isUnreliable: true }))] },
    });
    expect(found.evidence.grade).toBe('single-symptom');
    expect(codes(found)).toContain('no-plug-in-zone');
  });

  test('soundings and a meter make the middle grade', () => {
    const meter = { dryReference: 10, wetReference: 30 };
    const readings = [
      ...soundings,
      ...grid
        .filter((_, index) => index % 3 === 0)
        .map((at): Reading => ({ kind: 'moisture', at, value: isBad(at) ? 28 : 12 })),
    ];
    expect(extent({ survey: { readings, meter } }).evidence.grade).toBe('sounded-and-metered');
  });

  test('a stated grade is believed downwards only', () => {
    expect(extent({ survey: { readings: soundings }, evidence: 'mapped-with-plugs' }).evidence.grade).toBe(
      'single-symptom',
    );
    expect(codes(extent({ survey: { readings: soundings }, evidence: 'mapped-with-plugs' }))).toContain(
      'evidence-overstated',
    );
    expect(
      extent({ survey: { readings: [...soundings, ...plugs] }, evidence: 'single-symptom' }).evidence.grade,
    ).toBe('single-symptom');
  });

  test('only the place of a meter reading between its references matters', () => {
    const mapped = (dry: number, wet: number): number =>
      extent({
        survey: {
          meter: { dryReference: dry, wetReference: wet },
          readings: grid.map((at): Reading => ({ kind: 'moisture', at, value: isBad(at) ? wet : dry })),
        },
      }).mappedAreaM2;
    expect(mapped(10, 30)).toBeCloseTo(mapped(1000, 5), 9);
  });
});

describe('a hammer whose error rates are not known', () => {
  /** Every second tap of the grid, dull near a place and sharp elsewhere. */
  const taps = (isDull: (at: Point, index: number) => boolean): readonly Reading[] =>
    grid
      .filter((_, index) => index % 2 === 0)
      .map((at, index) => ({ kind: 'sounding', at, sound: isDull(at, index) ? 'dull' : 'sharp' }));
  const clustered = taps(([x, y]) => Math.hypot(x - 700, y - 500) < 180);
  const scattered = taps((_, index) => index % 17 === 3);

  test('a handful of dull taps side by side, among sharp ones, is a zone; as many far apart are chance', () => {
    expect(
      [clustered, scattered].map(
        (readings) =>
          readings.filter((reading) => reading.kind === 'sounding' && reading.sound === 'dull').length,
      ),
    ).toEqual([5, 5]);
    const found = extent({ survey: { readings: clustered } });
    expect(
      containsPoint(
        found.zones.map(({ outline, holes }) => ({ outer: outline, holes })),
        [700, 500],
      ),
    ).toBe(true);
    expect(codes(extent({ survey: { readings: scattered } }))).toContain('nothing-to-open');
  });

  test('the map tells how often it seems to err, and stated odds are kept', () => {
    // By hand: 10 readings of 0.1475 beforehand and about 90 taps over sound core, none or five of them dull.
    expect(extent({ survey: { readings: clustered } }).map?.hammer?.falseAlarmShare).toBeLessThan(0.03);
    expect(extent({ survey: { readings: scattered } }).map?.hammer?.falseAlarmShare).toBeCloseTo(
      6.475 / 100,
      2,
    );
    expect(
      extent({ survey: { readings: clustered }, map: { odds: { sounding: { dull: 4 } } } }).map?.hammer,
    ).toBeUndefined();
  });
});

describe('zones that somebody drew', () => {
  const zones = [{ id: 'port', outline: rectangle(500, 300, 1000, 700) }];

  test('grow by the grade alone: 0.65, 1.17 and 1.93 times at P10, P50 and P90', () => {
    const found = extent({ zones });
    expect(found.from).toBe('drawn-zones');
    expect(found.mappedAreaM2).toBeCloseTo(0.2, 9);
    // One in twenty a false alarm of 0.1 to 0.6, else a lognormal of median 1.20 and deviation 0.38, tabled by simulation.
    expect(found.growth?.p10).toBeCloseTo(0.65, 2);
    expect(found.growth?.p50).toBeCloseTo(1.17, 2);
    expect(found.growth?.p90).toBeCloseTo(1.93, 2);
  });

  test('overlapping zones are counted once', () => {
    expect(
      extent({ zones: [...zones, { id: 'again', outline: rectangle(500, 300, 1000, 700) }] }).mappedAreaM2,
    ).toBeCloseTo(0.2, 9);
  });

  test('readings that disagree with the drawing are said', () => {
    const found = extent({
      zones,
      survey: {
        readings: [
          { kind: 'plug', at: [1500, 500], condition: 'rotten' },
          { kind: 'plug', at: [700, 500], condition: 'dry-sound' },
        ],
      },
    });
    expect(codes(found)).toEqual(
      expect.arrayContaining(['bad-reading-outside-zone', 'sound-reading-in-zone']),
    );
  });

  test('cannot outgrow the panel', () => {
    const found = extent({
      zones: [{ id: 'all', outline: rectangle(100, 100, 1900, 900) }],
      evidence: 'single-symptom',
    });
    expect(found.damagedAreaM2.p90).toBeCloseTo(2, 9);
    expect(codes(found)).toContain('growth-capped');
  });
});

describe('awkward surveys', () => {
  const refusals = (request: Partial<ExtentRequest>): readonly string[] => {
    const outcome = estimateExtent({ panel, ...request });
    return outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`);
  };

  test('two different readings at one place both count, and the place is named', () => {
    const found = extent({
      survey: { readings: [...soundings, { kind: 'sounding', at: [1500, 500], sound: 'void' }] },
    });
    expect(found.findings.find(({ code }) => code === 'readings-contradict')?.facts).toMatchObject({
      count: 1,
      xMm: 1500,
      yMm: 500,
    });
  });

  const meter = { dryReference: 10, wetReference: 30 };
  const wet = grid.map((at): Reading => ({ kind: 'moisture', at, value: isBad(at) ? 30 : 10 }));
  /** A plug found dry on the node of the map nearest to the middle of the wet disc. */
  const againstMeters = () => {
    const alone = extent({ survey: { meter, readings: wet } });
    const { at } = (alone.map?.cells ?? []).reduce((best, cell) =>
      distance(cell.at, [700, 500]) < distance(best.at, [700, 500]) ? cell : best,
    );
    const plug: Reading = { kind: 'plug', at, condition: 'dry-sound' };
    const found = extent({ survey: { meter, readings: [...wet, plug] } });
    const nearest = ({ map }: Extent): number =>
      (map?.cells ?? []).reduce((best, cell) => (distance(cell.at, at) < distance(best.at, at) ? cell : best))
        .chance;
    return { at, found, before: nearest(alone), after: nearest(found) };
  };

  test('plugs against meters are named, and pull the map down where they stand', () => {
    const { at, found, before, after } = againstMeters();
    expect(found.findings.find(({ code }) => code === 'plug-contradicts')?.facts).toMatchObject({
      count: 1,
      xMm: Math.round(at[0]),
      yMm: Math.round(at[1]),
    });
    expect(codes(found)).not.toContain('readings-contradict');
    expect(before).toBeGreaterThan(0.75);
    expect(after).toBeLessThan(before - 0.25);
  });

  test('a plug found dry is proof at its own place', () => {
    expect(againstMeters().after).toBeLessThan(0.02);
  });

  test('a meter that reads alike on dry and wet deck is refused', () => {
    const readings = grid.map((at): Reading => ({ kind: 'moisture', at, value: 12 }));
    expect(refusals({ survey: { readings, meter: { dryReference: 10, wetReference: 10 } } })).toEqual([
      'contradiction /survey/meter/wetReference',
    ]);
  });

  test('of 2,000 readings the map finds the disc, and one more is too many', () => {
    const random = randomStream(7);
    const readings = Array.from({ length: 2000 }, (): Reading => {
      const at: Point = [2000 * random(), 1000 * random()];
      return { kind: 'sounding', at, sound: isBad(at) === random() < 0.9 ? 'void' : 'sharp' };
    });
    const found = extent({ survey: { readings } });
    expect(Math.abs((found.mapSpreadM2?.p50 ?? 0) - disc)).toBeLessThan(0.15 * disc);
    expect(refusals({ survey: { readings: [...readings, readings[0]] } })).toEqual([
      'too-many /survey/readings',
    ]);
  });

  test('a hatch in the panel is no part of the damage', () => {
    const hatch = rectangle(600, 400, 800, 600);
    const found = extent({ panel: { ...panel, holes: [hatch] }, survey: { readings: soundings } });
    expect(found.zones.every(({ outline, holes }) => areaMm2(regionOf(outline, holes)) > 0)).toBe(true);
    expect(
      containsPoint(
        found.zones.map(({ outline, holes }) => ({ outer: outline, holes })),
        [700, 500],
      ),
    ).toBe(false);
  });
});

describe('a deck and its mirror image', () => {
  const random = randomStream(7);
  const readings = Array.from({ length: 40 }, (): Reading => {
    const at: Point = [50 + 1900 * random(), 50 + 900 * random()];
    const isHeard = random() < 0.85 ? isBad(at) : !isBad(at);
    return { kind: 'sounding', at, sound: isHeard ? 'dull' : 'sharp' };
  });
  const seen = (move: (point: Point) => Point) => {
    const { mapSpreadM2, damagedAreaM2, nextReadings } = extent({
      panel: { outline: panel.outline.map(move) },
      survey: { readings: readings.map((reading) => ({ ...reading, at: move(reading.at) })) },
    });
    return { mapSpreadM2, damagedAreaM2, worth: nextReadings?.readings.map(({ worthH }) => worthH) };
  };
  const here = seen((at) => at);

  test.each<readonly [string, (point: Point) => Point]>([
    ['mirrored', ([x, y]) => [x, -y]],
    ['turned end for end', ([x, y]) => [-x, -y]],
    ['turned and moved', ([x, y]) => [0.8 * x - 0.6 * y + 731, 0.6 * x + 0.8 * y - 257]],
  ])('is as large, and as doubtful, when it is %s', (_, move) => {
    expect(numbersOf(seen(move))).toEqual(numbersOf(here));
  });
});

/** To the digits that are printed. */
const numbersOf = (seen: object): unknown =>
  JSON.parse(
    JSON.stringify(seen, (_, value: unknown) => (typeof value === 'number' ? value.toFixed(6) : value)),
  );
