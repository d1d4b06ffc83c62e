import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../test/samples/a-record.js';
import type { DefectRecord } from './job/defect-record.js';
import type { Estimate } from './document/estimate-document.js';
import { estimate } from './estimate.js';
import { opened } from '../../../test/samples/opened.js';

const estimated = (changes: Partial<DefectRecord> = {}): Estimate => {
  const outcome = estimate(aRecord(changes), shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return outcome.value.estimate;
};

const refused = (changes: Partial<DefectRecord>) => {
  const outcome = estimate(aRecord(changes), shippedCatalogue, 'test');
  return outcome.ok ? [] : outcome.problems.map((found) => ({ at: found.at, said: detailOf(found) }));
};

describe('what a later stage cannot do is refused at a field of the record', () => {
  const everywhereSharp = Array.from({ length: 60 }, (_, index) => ({
    kind: 'sounding' as const,
    at: [100 + 200 * (index % 10), 100 + 160 * Math.floor(index / 10)] as const,
    sound: 'sharp' as const,
  }));

  test.each<[string, Partial<DefectRecord>, string, RegExp]>([
    [
      'a deck too cold for the resin',
      { conditions: { temperatureC: 2 } },
      '/conditions/temperatureC',
      /needs at least 10 degC/,
    ],
    [
      'a skin thicker than the rest of the deck',
      { outerSkin: { thicknessMm: 38.1 } },
      '/outerSkin/thicknessMm',
      /thinner than that/,
    ],
    [
      'a worked skin from below thicker than the rest',
      { innerSkin: { thicknessMm: 30 }, method: { access: 'from-below' } },
      '/innerSkin/thicknessMm',
      /thinner than that/,
    ],
    [
      'readings that find nothing',
      { zones: [], survey: { readings: everywhereSharp } },
      '/survey/readings',
      /no place where bad core/,
    ],
    [
      'more pieces than one layout takes',
      {
        panel: {
          outline: [
            [0, 0],
            [40000, 0],
            [40000, 12000],
            [0, 12000],
          ],
        },
        zones: [
          {
            id: 'Z1',
            outline: [
              [300, 300],
              [39500, 300],
              [39500, 11600],
              [300, 11600],
            ],
          },
        ],
      },
      '/zones',
      /divide the deck/,
    ],
  ])('%s', (_, changes, at, words) => {
    expect(refused(changes)).toEqual([{ at, said: expect.stringMatching(words) }]);
  });

  test('core too stiff for the camber: no way fits, from above or below, and each says what would', () => {
    const said = refused({
      panel: { ...aRecord().panel, camberRadiusMm: 500 },
      core: { thicknessMm: 25, coreType: 'marine-plywood' },
    }).map((problem) => problem.said);
    // Flat pieces that lie within 1.5 mm on a radius of 500 mm: the root of 8 x 500 x 1.5 is 77 mm
    expect(said.filter((text) => /would not lie down and breaks.* at most 77 mm/.test(text))).toHaveLength(3);
    expect(said.filter((text) => text.includes('scored or thinner core'))).toHaveLength(3);
  });
});

describe('pots', () => {
  test('that kick before they are spread stop the plan with their numbers; those that last do not', () => {
    const {
      process: { findings },
    } = estimated({ conditions: { temperatureC: 45 } });
    expect(findings.find(({ code }) => code === 'pot-too-short')).toMatchObject({
      severity: 'stop',
      text: expect.stringContaining('kicks before it is spread'),
    });
    expect(
      estimated({ conditions: { temperatureC: 20 } }).process.findings.filter(
        ({ severity }) => severity === 'stop',
      ),
    ).toEqual([]);
  });

  test('weigh up to the bill to a tenth of a gram, each part in its order, and count strokes where a pump is named', () => {
    const {
      process: { batches, demands },
    } = estimated({ method: { pumpResinMlPerStroke: 20 } });
    const tenths = (grams: number): number => Math.round(grams * 10);
    for (const { weigh, resinG, hardenerG, fillerG, pumps } of batches) {
      expect(weigh.map(({ what }) => what)).toEqual(['resin', 'hardener', 'filler'].slice(0, weigh.length));
      expect(weigh.map(({ addG }) => tenths(addG)).reduce((sum, part) => sum + part, 0)).toBe(
        tenths(resinG) + tenths(hardenerG) + tenths(fillerG),
      );
      expect(tenths(weigh[weigh.length - 1].scaleShowsG)).toBe(
        weigh.reduce((sum, { addG }) => sum + tenths(addG), 0),
      );
      expect(pumps).toContain(`${(weigh[0].volumeMl / 20).toFixed(1)} strokes`);
    }
    expect(
      batches.reduce(
        (sum, { resinG, hardenerG, fillerG }) => sum + tenths(resinG) + tenths(hardenerG) + tenths(fillerG),
        0,
      ),
    ).toBe(tenths(demands.reduce((sum, { totalKg }) => sum + totalKg, 0) * 1000));
  });
});

describe('cautions', () => {
  const codesOf = ({ cautions }: Estimate) => cautions.map(({ code }) => code);

  test('come of the press that was planned, the holes through the deck and the pumps, each by its own condition', () => {
    const pressed = opened(
      estimated({
        zones: [
          {
            id: 'Z1',
            outline: [
              [300, 150],
              [1700, 150],
              [1700, 850],
              [300, 850],
            ],
          },
        ],
        method: { press: 'weights' },
      }),
    );
    const kg = pressed.process.bondPressure.quantities.find(({ code }) => code === 'weights')!.value;
    expect(pressed.cautions.find(({ code }) => code === 'heavy-weights')?.because).toContain(
      `${kg.toFixed(0)} kg`,
    );
    expect(
      codesOf(
        estimated({
          zones: [
            {
              id: 'Z1',
              outline: [
                [900, 450],
                [1000, 450],
                [1000, 550],
                [900, 550],
              ],
            },
          ],
        }),
      ),
    ).not.toContain('heavy-weights');
    const bolted = estimated({
      panel: { ...aRecord().panel, accessBelow: 'open' },
      fittings: [{ id: 'C1', kind: 'cleat', at: [1000, 500], holes: 4 }],
    });
    expect(bolted.cautions.find(({ code }) => code === 'resin-rain')?.because).toBe(
      'the inner skin has holes',
    );
    expect(codesOf(estimated({ panel: { ...aRecord().panel, accessBelow: 'open' } }))).not.toContain(
      'resin-rain',
    );
    expect([codesOf(pressed).includes('off-ratio'), codesOf(pressed).includes('off-ratio-scale')]).toEqual([
      false,
      true,
    ]);
    expect(codesOf(estimated({ method: { pumpResinMlPerStroke: 20 } }))).toContain('off-ratio');
  });
});

describe('the yard', () => {
  const daysAshore = (crew: DefectRecord['crew']) => {
    const {
      lines,
      process: { calendar },
    } = estimated({ conditions: { shelter: 'open', place: 'ashore-for-this' }, crew });
    return {
      layDays: lines.find(({ code }) => code === 'yard-lay-day-open')?.netQuantity ?? 0,
      p50: calendar.calendarDays.p50,
      workingDays: calendar.workingDays.p50,
    };
  };

  test('charges for every day that a craft hauled for the job stands there, cure and drying counted', () => {
    const { layDays, p50, workingDays } = daysAshore({ attendanceFraction: 1 });
    expect(Math.abs(layDays / p50 - 1)).toBeLessThan(0.1);
    expect(layDays).toBeGreaterThanOrEqual(workingDays);
  });

  test('takes no rent for days on which it stays away, but of an owner who works there it does', () => {
    const [always, usual] = [daysAshore({ attendanceFraction: 1 }), daysAshore({})];
    expect(usual.layDays).toBeCloseTo(always.layDays, 6);
    expect(usual.p50).toBeGreaterThan(1.1 * usual.layDays);
    const [ownAlways, own] = [
      daysAshore({ labour: 'owner', attendanceFraction: 1 }),
      daysAshore({ labour: 'owner' }),
    ];
    expect(own.layDays).toBeGreaterThan(1.1 * ownAlways.layDays);
    expect(Math.abs(own.layDays / own.p50 - 1)).toBeLessThan(0.1);
  });

  test('charges neither haul-out nor days where the craft lies anyway', () => {
    const codes = estimated({ conditions: { shelter: 'open' } }).lines.map(({ code }) => code);
    expect(codes.filter((code) => code.startsWith('yard-lay-day') || code === 'yard-haul')).toEqual([]);
  });
});

describe('the price', () => {
  const netOf = ({ base, growth, newAreas }: Estimate['totals']): number =>
    [base, growth.amount, newAreas.amount].reduce((sum, { amount }) => sum + Number(amount), 0);

  test('is base, growth and new areas, exceeded about as often as not, inside its own range', () => {
    for (const evidence of ['mapped-with-plugs', 'sounded-and-metered', 'single-symptom'] as const) {
      const { totals } = estimated({ evidence });
      expect(Number(totals.total.amount) - Number(totals.tax.amount)).toBeCloseTo(netOf(totals), 2);
      expect(totals.shareWithin).toBeGreaterThan(0.4);
      expect(totals.shareWithin).toBeLessThan(0.62);
      expect(Number(totals.range.p10.amount)).toBeLessThan(Number(totals.total.amount));
      expect(Number(totals.range.p90.amount)).toBeGreaterThan(Number(totals.total.amount));
    }
  });

  test('carries a contingency by kinds whose shares make the whole, less of it the better the evidence', () => {
    const shares = (['single-symptom', 'sounded-and-metered', 'mapped-with-plugs'] as const).map(
      (evidence) => {
        const { totals } = estimated({ evidence });
        expect(totals.contingencyByKind.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        expect(
          totals.contingencyByKind.reduce((sum, { amount }) => sum + Number(amount.amount), 0),
        ).toBeCloseTo(Number(totals.contingency.amount), 2);
        return Number(totals.contingency.amount) / netOf(totals);
      },
    );
    expect(shares[0]).toBeGreaterThan(shares[1]);
    expect(shares[1]).toBeGreaterThan(shares[2]);
  });

  test('is the same whatever the seed', () => {
    expect(estimated({ pricing: { seed: 7 } }).totals).toEqual(estimated({ pricing: { seed: 8 } }).totals);
  });

  test('of work that the owner does holds no hours, and says what a yard would ask', () => {
    const { totals, lines } = estimated({ crew: { labour: 'owner', skill: 'owner' } });
    expect(
      lines.filter(({ section, amount }) => section === 'labour' && Number(amount.amount) !== 0),
    ).toEqual([]);
    expect(totals.ownWork!.labourH).toBeGreaterThan(0);
    expect(Number(totals.ownWork!.aYardWouldAsk.amount)).toBeGreaterThan(Number(totals.base.amount));
  });
});

describe('the new skin', () => {
  const craft = {
    craftType: 'sail',
    lengthHullM: 10.4,
    lengthWaterlineM: 8.9,
    massLoadedKg: 5600,
    designCategory: 'A',
  } as const;
  const panel = {
    outline: [
      [0, -700],
      [1652, -450],
      [1652, 450],
      [0, 700],
    ],
    supports: [{ kind: 'beam', from: [560, -615], to: [560, 615] }],
  } as const;
  const zones = [
    {
      id: 'Z1',
      outline: [
        [850, -220],
        [1380, -220],
        [1380, 220],
        [850, 220],
      ],
    },
  ] as const;
  const core = { thicknessMm: 12.7, coreType: 'end-grain-balsa' } as const;

  test('is the cheapest that restores the panel too; a cheaper one that would not is named with what it leaves short', () => {
    const {
      laminate: {
        alternatives: [chosen, cheaper],
      },
      panel: { verdict },
    } = opened(
      estimated({
        craft,
        panel,
        zones,
        core,
        outerSkin: { thicknessMm: 3 },
        innerSkin: { thicknessMm: 2 },
      }),
    );
    expect([verdict, chosen.rank, cheaper.rank]).toEqual(['restored', 2, 1]);
    expect(cheaper.reason).toMatch(
      /^cheaper by \d+\.\d\d per m2; leaves the panel short in shear in the core/,
    );
  });

  test('fails no limit of its own where the deck as built failed it more, and brings its glass to the check of dry fibre', () => {
    const { checks, summary } = estimated({
      craft,
      panel,
      zones,
      core,
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 2 },
    });
    const byCode = (code: string) => checks.find((check) => check.code === code);
    expect(byCode('panel-deflection-repaired-yardstick')).toMatchObject({
      verdict: 'fails',
      asBuilt: { verdict: 'fails', isNoWorse: true },
    });
    expect(summary.verdict).toBe('restored');
    expect(byCode('panel-minimum-outer-fibre-repaired-yardstick')).toMatchObject({
      verdict: 'passes',
      unit: 'kg/m2',
    });
    expect(byCode('panel-minimum-inner-fibre-repaired-yardstick')?.verdict).toBe('not-established');
  });
});

describe('what is printed', () => {
  test('tells one check from another of the same state', () => {
    const named = estimated().checks.map(({ title, state }) => `${title} (${state ?? ''})`);
    expect(named.filter((one, index) => named.indexOf(one) !== index)).toEqual([]);
  });

  test('carries no tail of digits from a conversion of units', () => {
    const { process } = opened(estimated({ conditions: { temperatureC: (65 - 32) / 1.8 } }));
    expect(
      [process.resin.why, process.bondPressure.props.why, process.bondPressure.recommendation].join(' '),
    ).not.toMatch(/\d\.\d{3}/);
  });

  test('names the way of pressing that each refusal refuses', () => {
    const {
      process: { bondPressure },
    } = opened(estimated());
    expect(bondPressure.refusals.length).toBeGreaterThan(0);
    for (const refusal of bondPressure.refusals) expect(refusal).toMatch(/^(weights|battens|vacuum): /);
    expect(bondPressure.refusals.join(' ')).not.toContain('no sound deck');
  });
});

describe('wear of the parts', () => {
  test('is shown on parts alone, adds up to the total, and changes no price', () => {
    const plain = estimated();
    const { lines, totals } = estimated({ pricing: { depreciation: { ageYears: 10, lifeYears: 40 } } });
    expect(lines.map(({ depreciation }) => depreciation?.percent)).toEqual(
      lines.map(({ partOrLabour }) => (partOrLabour === 'part' ? '25.00' : undefined)),
    );
    const cents = (amount: string): bigint => BigInt(amount.replace('.', ''));
    const worn = lines.reduce((sum, { depreciation }) => sum + cents(depreciation?.amount.amount ?? '0'), 0n);
    const parts = lines
      .filter(({ depreciable }) => depreciable)
      .reduce((sum, { amount }) => sum + cents(amount.amount), 0n);
    expect(cents(totals.depreciation?.depreciation.amount ?? '0')).toBe(worn);
    expect(cents(totals.depreciation?.remaining.amount ?? '0')).toBe(parts - worn);
    expect([totals.total, plain.totals.depreciation]).toEqual([plain.totals.total, undefined]);
  });

  test('is judged by the kind of part where neither a percentage nor a life is stated, and says so', () => {
    const { lines, assumptions } = estimated({ pricing: { depreciation: { ageYears: 9 } } });
    // Nine of forty-five, of twenty, of ten and of seven years, by hand.
    const shares = ['20.00', '45.00', '90.00', '100.00'];
    const parts = lines.filter(({ partOrLabour }) => partOrLabour === 'part');
    expect(parts.filter(({ depreciation }) => !shares.includes(depreciation!.percent))).toEqual([]);
    const found = new Set(parts.map(({ depreciation }) => depreciation!.percent));
    expect([found.has('20.00'), found.has('90.00')]).toEqual([true, true]);
    expect(
      assumptions.filter((one) => JSON.stringify(one).includes('/pricing/depreciation/lifeYears')).length,
    ).toBeGreaterThanOrEqual(3);
  });

  test('is refused below nothing and above everything', () => {
    expect(refused({ pricing: { depreciation: { ageYears: -1, percent: '120' } } })).toEqual([
      { at: '/pricing/depreciation/ageYears', said: expect.any(String) },
      { at: '/pricing/depreciation/percent', said: expect.stringContaining('0 to 100') },
    ]);
  });
});
