import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../../test/samples/a-record.js';
import { opened } from '../../../../test/samples/opened.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from '../job/defect-record.js';

const answered = (record: DefectRecord) => {
  const outcome = estimate(record, shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return opened(outcome.value.estimate);
};
const hours = ({ lines }: ReturnType<typeof answered>, code: string): number =>
  lines.find((line) => line.code === `labour-${code}`)?.hours?.mean ?? 0;

const box = (x: number, y: number, lengthMm: number, widthMm: number) =>
  [
    [x, y],
    [x + lengthMm, y],
    [x + lengthMm, y + widthMm],
    [x, y + widthMm],
  ] as const;
const quick = { samples: 1000 } as const;
const rotten = { id: 'Z1', outline: box(600, 300, 800, 350), condition: 'wet-rotten' } as const;

describe('a rotten zone with a cut 75 mm beyond it', () => {
  const stays = answered(aRecord({ zones: [rotten], pricing: quick }));
  const all = answered(aRecord({ zones: [rotten], method: { soundCore: 'comes-out' }, pricing: quick }));

  test('gives up its core and an inch beyond; the rest of the opening keeps its own', () => {
    // By hand: 0.8 x 0.35 m grown by 25 mm with round corners, 0.28 + 2.3 x 0.025 + pi x 0.025^2.
    const outM2 = 0.28 + 2 * (0.8 + 0.35) * 0.025 + Math.PI * 0.025 ** 2;
    expect(stays.scope.coreOutAreaM2).toBeCloseTo(outM2, 3);
    expect(stays.scope.coreOutAreaM2 + stays.scope.coreStaysAreaM2).toBeCloseTo(stays.scope.openedAreaM2, 9);
    expect(all.scope.coreStaysAreaM2).toBe(0);
  });

  test('new core is cut for what came out, and the face that stays is cleaned in hours of its own', () => {
    expect(stays.core.netAreaM2).toBeLessThan(stays.scope.coreOutAreaM2);
    expect(stays.core.netAreaM2).toBeGreaterThan(0.98 * stays.scope.coreOutAreaM2);
    expect(hours(stays, 'clean-kept-core')).toBeGreaterThan(0);
    expect(hours(all, 'clean-kept-core')).toBe(0);
    const ratio = stays.scope.coreOutAreaM2 / all.scope.coreOutAreaM2;
    for (const code of ['fit-core', 'bed-core', 'grind-inner', 'dry-edges'])
      expect(hours(stays, code) / hours(all, code)).toBeCloseTo(ratio, 6);
  });

  test('rotten core is scooped, the sound inch round it is cut out; skin lets go over the rot alone', () => {
    // Means of 0.5, 1.5, 3 and of 3, 6, 10 h/m2, four fifths of each.
    expect(hours(stays, 'core-out-rotten')).toBeCloseTo((0.28 * 0.8 * 5) / 3, 3);
    expect(hours(stays, 'core-out-bonded')).toBeCloseTo(
      ((stays.scope.coreOutAreaM2 - 0.28) * 0.8 * 19) / 3,
      3,
    );
    expect(hours(stays, 'lift-skin-bonded')).toBeCloseTo(
      ((stays.scope.openedAreaM2 - 0.28) * 0.8 * 14) / 3,
      3,
    );
  });

  test('one symptom shows no boundary: then all core comes out unless the record says otherwise', () => {
    const guessed = answered(aRecord({ zones: [rotten], evidence: 'single-symptom', pricing: quick }));
    expect(guessed.scope.coreStaysAreaM2).toBe(0);
    expect(guessed.assumptions.find(({ at }) => at === '/method/soundCore')?.because).toContain('symptom');
  });
});

test('core that a plug shows dry under a skin that let go stays: no core is bought, none is taken out', () => {
  const dry = answered(
    aRecord({
      panel: { ...aRecord().panel, surface: 'moulded-nonskid', outerSkinState: 'whole' },
      zones: [{ id: 'Z1', outline: box(700, 300, 700, 400), condition: 'dry-debonded' }],
      survey: {
        readings: [{ kind: 'plug', at: [1000, 500], condition: 'debonded-dry', moisturePercent: 9 }],
      },
      pricing: quick,
    }),
  );
  expect([dry.scope.coreOutAreaM2, dry.core.pieces, dry.core.sheets]).toEqual([0, [], []]);
  expect(
    ['core-out-rotten', 'core-out-bonded', 'bed-core', 'fit-core'].map((code) => hours(dry, code)),
  ).toEqual([0, 0, 0, 0]);
  expect(dry.core.stack.map(({ layer }) => layer)).toEqual(['old core, left where it is']);
});

describe('a spot that is laid solid', () => {
  const windlass = answered(
    aRecord({
      zones: [{ id: 'Z1', outline: box(900, 380, 250, 240), condition: 'wet-rotten' }],
      fittings: [{ id: 'W1', kind: 'windlass', at: [1025, 500], holes: 4, holeDiameterMm: 10, baseMm: 260 }],
      pricing: quick,
    }),
  );

  test('takes no core, no bag and no insert besides', () => {
    expect(windlass.methods.planned.rung).toBe('solid-spot');
    expect([windlass.core.pieces, windlass.core.purchaseAreaM2]).toEqual([[], 0]);
    const materials = windlass.lines.map(({ material }) => material ?? '');
    expect(materials.filter((code) => code.startsWith('core-') || code === 'consumable-sand-bag')).toEqual(
      [],
    );
    expect(hours(windlass, 'set-inserts') + hours(windlass, 'bed-core')).toBe(0);
    expect(windlass.hardware.map(({ insert }) => insert)).toEqual([undefined]);
  });

  test('is filled from skin to skin, by the litre, and weighs what it adds', () => {
    const outM2 = windlass.scope.coreOutAreaM2;
    expect(windlass.core.solidAreaM2).toBeCloseTo(outM2, 6);
    expect(windlass.core.solidVolumeL).toBeCloseTo(outM2 * windlass.core.cavityMm, 6);
    expect(hours(windlass, 'fill-solid')).toBeCloseTo((windlass.core.solidVolumeL * 0.8 * 3.2) / 3, 3);
    const paste = windlass.process.demands.find(({ step }) => step === 'undercut');
    expect(paste?.netL).toBeCloseTo(windlass.core.solidVolumeL, 3);
    // About 20 kg/m2 more than half-inch balsa.
    expect(windlass.core.massChangeKg / outM2).toBeGreaterThan(15);
  });
});
