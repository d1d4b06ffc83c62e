import { describe, expect, test } from '@jest/globals';
import { areaMm2, circle, containsPoint, difference, rectangle, regionOf, type Point } from '#lib/geometry';
import { openingsAt, planOpenings, type OpeningPlan, type OpeningRequest } from '../index.js';

const sideDeck = (changes: Partial<OpeningRequest> = {}): OpeningRequest => ({
  panel: { outline: rectangle(0, 0, 2000, 1000) },
  outerSkin: { thicknessMm: 3 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: 12.7 },
  zones: [{ id: 'z1', outline: rectangle(600, 400, 900, 600) }],
  ...changes,
});

function plan(changes: Partial<OpeningRequest> = {}): OpeningPlan {
  const outcome = planOpenings(sideDeck(changes));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const codes = (made: OpeningPlan): readonly string[] => made.findings.map(({ code }) => code);

describe('one zone in the middle of a panel', () => {
  const made = plan();
  const [opening] = made.openings;

  test('is opened by a rectangle 75 mm beyond it all round, corners rounded to 40 mm', () => {
    expect(opening.sawLine).toEqual([
      [525, 325],
      [975, 325],
      [975, 675],
      [525, 675],
    ]);
    expect(opening.areaM2).toBeCloseTo(0.45 * 0.35 - (4 - Math.PI) * 0.04 ** 2, 4);
    expect(opening.cutLengthM).toBeCloseTo(1.6 - 8 * 0.04 + 2 * Math.PI * 0.04, 3);
    expect(made.findings).toEqual([]);
  });

  test('is cut to the skin and 2 mm', () => expect(made.cutDepthMm).toBe(5));

  test('is marked out from the long edge nearest to it', () => {
    const { datum, corners, diagonalsMm } = opening.marking;
    expect([datum.lengthMm, Math.abs(datum.to[0] - datum.from[0])]).toEqual([2000, 2000]);
    for (const { at, alongMm, offMm, fromStartMm, fromEndMm } of corners) {
      expect(Math.hypot(alongMm, offMm)).toBeCloseTo(fromStartMm, 6);
      expect(Math.hypot(datum.lengthMm - alongMm, offMm)).toBeCloseTo(fromEndMm, 6);
      expect(offMm).toBeCloseTo(Math.abs(at[1] - datum.from[1]), 6);
    }
    expect(diagonalsMm?.[0]).toBeCloseTo(Math.hypot(450, 350), 6);
  });

  test('leaves the rest: opening and retained skin are the panel', () => {
    expect(made.openedAreaM2 + made.retainedAreaM2).toBeCloseTo(2, 6);
    expect(made.undercutAreaM2).toBe(0);
  });

  test('has a taper band 36 mm wide round it', () => {
    expect(made.taperWidthMm).toBe(36);
    expect(opening.taperBandAreaM2).toBeCloseTo((opening.cutLengthM * 36) / 1000 + Math.PI * 0.036 ** 2, 4);
  });

  test('every default it used is listed with its reason', () => {
    expect(made.assumptions.map(({ origin }) => origin.kind === 'assumed' && origin.at)).toContain(
      '/method/cutMarginMm',
    );
    expect(
      plan({ method: { cutMarginMm: 60 } }).assumptions.map(
        ({ origin }) => origin.kind === 'assumed' && origin.at,
      ),
    ).not.toContain('/method/cutMarginMm');
  });
});

describe('near an edge', () => {
  test('a flange stays and the damage under it is undercut', () => {
    const made = plan({ zones: [{ id: 'z1', outline: rectangle(600, 0, 900, 300) }] });
    expect(Math.min(...made.openings[0].sawLine.map(([, y]) => y))).toBe(50);
    expect(made.undercutAreaM2).toBeCloseTo(0.3 * 0.05, 3);
    expect(made.openings[0].undercutReachMm).toBeCloseTo(50, 0);
    expect(codes(made)).toEqual([]);
  });

  test('a thick skin keeps room for its taper where the damage stays in reach', () => {
    const made = plan({
      outerSkin: { thicknessMm: 6 },
      zones: [{ id: 'z1', outline: rectangle(600, 40, 900, 300) }],
    });
    expect(made.insetMm).toBe(72);
    expect(codes(made)).toEqual([]);
  });

  test('where the taper does not fit it says so with numbers', () => {
    const made = plan({
      outerSkin: { thicknessMm: 8 },
      zones: [{ id: 'z1', outline: rectangle(600, 0, 900, 300) }],
    });
    expect(made.insetMm).toBe(50);
    expect(made.findings.find(({ code }) => code === 'no-room-for-taper')?.facts).toMatchObject({
      neededMm: 96,
      availableMm: 50,
    });
  });

  test('a zone that lies wholly in the flange is a finding, not an error', () => {
    const made = plan({
      panel: { outline: rectangle(0, 0, 2000, 95) },
      zones: [{ id: 'rail', outline: rectangle(600, 20, 900, 80) }],
    });
    expect(made.openings).toEqual([]);
    expect(made.findings).toMatchObject([{ code: 'no-room-for-opening', severity: 'stop' }]);
    expect(areaMm2(made.unreached)).toBeCloseTo(300 * 60, 0);
  });

  test('a hatch inside the damage is left in a ring with its own flange', () => {
    const made = plan({
      panel: { outline: rectangle(0, 0, 2000, 1000), holes: [rectangle(900, 400, 1100, 600)] },
      zones: [{ id: 'z1', outline: rectangle(700, 200, 1300, 800), holes: [] }].map((zone) => ({
        ...zone,
        holes: [rectangle(900, 400, 1100, 600)],
      })),
    });
    expect(made.openings).toHaveLength(1);
    expect(made.openings[0].innerSawLines).toHaveLength(1);
    expect(regionOf(made.openings[0].innerSawLines[0])).toEqual(regionOf(rectangle(850, 350, 1150, 650)));
    expect(made.undercutAreaM2).toBeCloseTo(0.3 * 0.3 - 0.2 * 0.2, 2);
  });
});

describe('neighbours', () => {
  const pair = (gapMm: number) => [
    { id: 'a', outline: rectangle(400, 400, 700, 600) },
    { id: 'b', outline: rectangle(700 + gapMm, 400, 1000 + gapMm, 600) },
  ];

  test('far apart stay two openings', () => expect(plan({ zones: pair(600) }).openings).toHaveLength(2));

  test('become one where one costs less, and say why with the hours', () => {
    const made = plan({ zones: pair(280) });
    expect(made.openings).toHaveLength(1);
    expect(made.openings[0].joins).toMatchObject([
      { why: 'cheaper-together', bridgeMm: expect.closeTo(130, 0) },
    ]);
    expect(made.openings[0].joins[0].hoursTogether).toBeLessThan(made.openings[0].joins[0].hoursApart);
  });

  test('become one where the bridge is too narrow for both tapers, whatever it costs', () => {
    const made = plan({ zones: pair(220), rules: { openedHPerM2: 200, openingH: 0 } });
    expect(made.openings[0].joins).toMatchObject([{ why: 'bridge-too-narrow', neededBridgeMm: 100 }]);
  });

  test('overlapping zones are counted once', () => {
    const made = plan({
      zones: [
        { id: 'a', outline: rectangle(400, 400, 700, 600) },
        { id: 'b', outline: rectangle(600, 400, 900, 600) },
      ],
    });
    expect(made.openings[0].zones).toEqual(['a', 'b']);
    expect(made.openings[0].sawLine).toEqual([
      [325, 325],
      [975, 325],
      [975, 675],
      [325, 675],
    ]);
  });
});

describe('supports', () => {
  test('a cut that would run along a bulkhead is moved clear of it', () => {
    const support = { kind: 'bulkhead', from: [1000, 0] as Point, to: [1000, 1000] as Point };
    const made = plan({ panel: { outline: rectangle(0, 0, 2000, 1000), supports: [support] } });
    const right = Math.max(...made.openings[0].sawLine.map(([x]) => x));
    expect(Math.abs(right - 1000)).toBeGreaterThanOrEqual(99.5);
    expect(codes(made).filter((code) => code === 'cut-on-support')).toEqual([]);
  });

  test('where it cannot be moved the plan says how near it runs', () => {
    const support = { kind: 'bulkhead', from: [1000, 0] as Point, to: [1000, 1000] as Point };
    const made = plan({
      panel: { outline: rectangle(0, 0, 1060, 1000), supports: [support] },
      zones: [{ id: 'z1', outline: rectangle(600, 400, 1050, 600) }],
    });
    expect(made.findings.find(({ code }) => code === 'cut-on-support')?.facts).toMatchObject({
      kind: 'bulkhead',
      awayMm: 10,
      clearanceMm: 100,
    });
  });
});

describe('skins', () => {
  test('a long re-used skin is split into lengths that can be bedded', () => {
    const made = plan({
      method: { skin: 're-bed' },
      zones: [{ id: 'z1', outline: rectangle(200, 400, 1800, 600) }],
    });
    const [opening] = made.openings;
    expect(opening.skinPieces.map(({ label }) => label)).toEqual(['A1', 'A2']);
    expect(opening.skinPieces.reduce((sum, { areaM2 }) => sum + areaM2, 0)).toBeCloseTo(opening.areaM2, 5);
    expect(made.splitLengthM).toBeCloseTo(0.35, 3);
  });

  test('a new laminate needs no split', () => {
    expect(
      plan({ zones: [{ id: 'z1', outline: rectangle(200, 400, 1800, 600) }] }).openings[0].skinPieces,
    ).toHaveLength(1);
  });

  test('plugs that measure a thicker skin set the saw', () => {
    const survey = {
      readings: [{ kind: 'plug', at: [700, 500], condition: 'rotten', outerSkinMm: 4.5 }],
    } as const;
    const made = plan({ survey });
    expect(made.cutDepthMm).toBe(6.5);
    expect(codes(made)).toContain('skin-varies');
  });

  test('the saw never comes near the inner skin', () => {
    const made = plan({ core: { thicknessMm: 6 }, rules: { depthMarginMm: 3 } });
    expect(made.cutDepthMm).toBe(4);
    expect(codes(made)).toContain('depth-margin-short');
    const thin = plan({ core: { thicknessMm: 4 } });
    expect(thin.cutDepthMm).toBeUndefined();
    expect(codes(thin)).toContain('depth-not-established');
  });

  test('a cut deeper than half an inch is unusual and said to be', () => {
    expect(codes(plan({ outerSkin: { thicknessMm: 11 }, core: { thicknessMm: 25 } }))).toContain(
      'depth-over-usual',
    );
  });
});

describe('beside a hatch', () => {
  test('a zone that touches it is cut straight along the flange, without tongues round its corners', () => {
    const hatch = rectangle(800, 300, 1100, 600);
    const made = plan({
      panel: { outline: rectangle(0, 0, 2000, 900), holes: [hatch] },
      zones: [{ id: 'Z', outline: rectangle(1100, 300, 1400, 600) }],
    });
    expect(made.openings.map(({ sawLine }) => sawLine.length)).toEqual([4]);
    expect(Math.min(...made.openings[0].sawLine.map(([x]) => x))).toBeCloseTo(1150, 6);
    expect(made.openings[0].undercutReachMm).toBeLessThanOrEqual(75);
    expect(codes(made)).not.toContain('corner-too-tight');
  });
});

describe('fittings', () => {
  test('inside, near, leaking far away and out of the job', () => {
    const made = plan({
      fittings: [
        { id: 'cleat', kind: 'cleat', at: [700, 500], baseMm: 150 },
        { id: 'vent', kind: 'vent', at: [1200, 500], holes: 6 },
        { id: 'step', kind: 'mast-step', at: [975, 500], baseMm: 200 },
        { id: 'leak', kind: 'fill', at: [1900, 900], isLeaking: true },
        { id: 'far', kind: 'hatch', at: [1900, 100] },
      ],
    });
    expect(made.fittings.map(({ id, where, work }) => `${id} ${where}: ${work.join(' ')}`)).toEqual([
      'cleat inside: remove insert plate re-bed refit',
      'vent near: remove pot re-bed refit',
      'step inside: remove insert re-bed refit',
      'leak near: remove pot re-bed refit',
    ]);
    expect(codes(made)).toEqual(['fitting-on-cut', 'highly-loaded-fitting', 'leak-elsewhere']);
    expect(made.fittings[0].holes).toBe(4);
    expect(made.fittings[1].holes).toBe(6);
  });

  test('a fitting named after its kind is named once', () => {
    const texts = (id: string): readonly string[] =>
      plan({ fittings: [{ id, kind: 'mast-step', at: [700, 500], baseMm: 200 }] }).findings.flatMap(
        ({ code, text }) => (code === 'highly-loaded-fitting' ? [text.split(':')[0]] : []),
      );
    expect(['mast-step', 'Mast step 2', 'S1'].flatMap(texts)).toEqual([
      'The mast step is highly loaded',
      'Mast step 2 is highly loaded',
      'Mast step S1 is highly loaded',
    ]);
  });
});

describe('bad input', () => {
  const problems = (changes: Partial<OpeningRequest>) => {
    const outcome = planOpenings(sideDeck(changes));
    return outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`);
  };

  test('everything wrong is named at once', () => {
    expect(
      problems({
        outerSkin: { thicknessMm: Number.NaN },
        core: { thicknessMm: -1 },
        zones: [
          {
            id: 'z',
            outline: [
              [0, 0],
              [100, 100],
              [100, 0],
              [0, 100],
            ],
          },
        ],
        method: { flangeMm: -5 },
        fittings: [{ id: 'f', kind: 'cleat', at: [Number.NaN, 0] }],
      }),
    ).toEqual([
      'outline-crosses-itself /zones/0/outline',
      'not-a-number /outerSkin/thicknessMm',
      'out-of-range /core/thicknessMm',
      'out-of-range /method/flangeMm',
      'not-a-number /fittings/0/at/0',
    ]);
  });

  test('a hole that swallows the panel leaves nothing to plan', () => {
    expect(
      problems({ panel: { outline: rectangle(0, 0, 100, 100), holes: [rectangle(-10, -10, 110, 110)] } }),
    ).toEqual(['nothing-left /panel/holes']);
  });

  test('a zone off the panel is refused', () => {
    expect(problems({ zones: [{ id: 'z', outline: rectangle(2100, 400, 2300, 600) }] })).toEqual([
      'outside-panel /zones/0/outline',
    ]);
  });

  test('a zone that reaches past the panel or over a hatch is cut off there, planned as the rest of it, and said', () => {
    const hatch = rectangle(600, 400, 800, 600);
    const cases = [
      { over: rectangle(1500, 400, 2002, 600), rest: rectangle(1500, 400, 2000, 600), holes: [] },
      { over: rectangle(1700, 400, 2600, 600), rest: rectangle(1700, 400, 2000, 600), holes: [] },
      { over: rectangle(700, 400, 1100, 600), rest: rectangle(800, 400, 1100, 600), holes: [hatch] },
    ];
    for (const { over, rest, holes } of cases) {
      const shape = { outline: rectangle(0, 0, 2000, 1000), holes };
      const [drawn, cut] = [over, rest].map((outline) =>
        plan({ panel: shape, zones: [{ id: 'z', outline }] }),
      );
      expect(drawn.findings.find(({ code }) => code === 'zone-clipped')?.facts).toMatchObject({ zone: 'z' });
      expect(cut.findings.map(({ code }) => code)).not.toContain('zone-clipped');
      expect(drawn.openings.map(({ sawLine }) => sawLine)).toEqual(
        cut.openings.map(({ sawLine }) => sawLine),
      );
    }
  });

  test('no zone at all is refused', () => expect(problems({ zones: [] })).toEqual(['too-few /zones']));
});

describe('whatever the zone', () => {
  test('a round zone is cut with straight lines that take all of it in', () => {
    const zone = circle([1000, 500], 150, 0.5);
    const made = plan({ zones: [{ id: 'z', outline: zone }] });
    expect(made.openings[0].sawLine.length).toBeLessThanOrEqual(8);
    expect(areaMm2(difference(regionOf(zone), [made.openings[0].area]))).toBe(0);
  });

  test('a zone with an island of sound core is opened whole', () => {
    const made = plan({
      zones: [{ id: 'z', outline: rectangle(600, 300, 1000, 700), holes: [rectangle(750, 450, 850, 550)] }],
    });
    expect(containsPoint([made.openings[0].area], [800, 500])).toBe(true);
  });
});

describe('the openings where the bad core is larger or smaller than recorded', () => {
  const one = plan();
  const at = (...factors: readonly number[]) => openingsAt(one, sideDeck(), factors);

  // By hand: 300 x 200 mm grows to four times its area when its edge moves by d with 60 000 + 1000 d + pi d2 = 240 000,
  // d = (sqrt(1000^2 + 4 pi 180 000) - 1000) / (2 pi) = (1805.9 - 1000)/6.2832 = 128.3 mm. The opening of 450 x 350 mm
  // becomes 706.6 x 606.6 mm, its corners rounded to 168.3 mm or kept, as the offset does it.
  test('move their edges as far as the edge of the bad core moves', () => {
    const [{ figures }] = at(4);
    const grownM2 = 0.7066 * 0.6066;
    expect(figures.openedArea.value).toBeLessThanOrEqual(grownM2 + 1e-4);
    expect(figures.openedArea.value).toBeGreaterThan(grownM2 - (4 - Math.PI) * 0.1683 ** 2 - 1e-4);
  });

  test('are what was planned at the recorded extent', () => {
    const [{ figures }] = at(1);
    expect(figures.openedArea.value).toBeCloseTo(one.openedAreaM2, 6);
    expect(figures.cutLength.value).toBeCloseTo(one.cutLengthM, 3);
  });

  test('grow less than the bad core does, because their margins do not grow', () => {
    const [larger, smaller] = at(2, 0.5);
    expect(larger.figures.openedArea.value / one.openedAreaM2).toBeLessThan(2);
    expect(smaller.figures.openedArea.value / one.openedAreaM2).toBeGreaterThan(0.5);
  });

  test('stop at the edges of the panel and keep a hand-hole where nothing is bad', () => {
    const [most, least] = at(200, 0);
    expect(most.figures.openedArea.value).toBeLessThan(2);
    expect(least.figures.openedArea.value).toBeGreaterThan(0.1 * one.openedAreaM2);
  });
});
