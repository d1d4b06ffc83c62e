import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue, type Catalogue } from '#lib/catalogue';
import { cautionRules } from '#lib/cautions';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../test/samples/a-record.js';
import type { Caution } from './document/estimate-document.js';
import { estimate } from './estimate.js';
import type { DefectRecord } from './job/defect-record.js';

const box = (x: number, y: number, lengthMm: number, widthMm: number) =>
  [
    [x, y],
    [x + lengthMm, y],
    [x + lengthMm, y + widthMm],
    [x, y + widthMm],
  ] as const;
const plugAt = (x: number, y: number, moisturePercent: number) =>
  ({ kind: 'plug', at: [x, y], condition: 'dry-sound', moisturePercent }) as const;
/** Two days from midnight of a Monday in January; the nights freeze. Invented. */
const freezing = Array.from({ length: 48 }, (_, hour) => ({
  at: new Date(Date.parse('2027-01-04T00:00:00Z') + hour * 3_600_000).toISOString(),
  temperatureC: hour % 24 < 8 ? -4 : 12,
  relativeHumidityPercent: 55,
  windMPerS: 2,
  rainMm: 0,
}));

/** A small, dry, unloaded place of which everything is known. Invented, like all records here. */
const unread = aRecord({
  panel: {
    outline: aRecord().panel.outline,
    under: [],
    accessBelow: 'open',
    surface: 'smooth-paint',
  },
  craft: { yearBuilt: 2010 },
  zones: [{ id: 'Z1', outline: box(900, 400, 150, 150), condition: 'dry-debonded' }],
  evidence: 'mapped-with-plugs',
  cause: { cause: 'impact' },
  conditions: { temperatureC: 20, relativeHumidityPercent: 50, shelter: 'shed' },
  pricing: { samples: 1000 },
});

const known: DefectRecord = {
  ...unread,
  survey: { readings: [plugAt(975, 475, 10), plugAt(300, 300, 9), plugAt(1700, 700, 9)] },
};

const records = {
  known,
  unsaid: aRecord({ evidence: 'single-symptom', pricing: { samples: 1000 } }),
  old: {
    ...known,
    panel: { ...known.panel, surface: 'bonded-mat', under: ['fuel-tank', 'wiring', 'water-tank'] },
    craft: { yearBuilt: 1974 },
    fittings: [{ id: 'W1', kind: 'windlass', at: [975, 475], holes: 4 }],
    method: { topcoat: 'coating-topcoat-two-part', application: 'spray-elsewhere', pumpResinMlPerStroke: 20 },
    conditions: { temperatureC: 12, shelter: 'tent', place: 'afloat' },
  },
  polyester: {
    ...known,
    method: { resin: 'resin-polyester-laminating', topcoat: 'coating-topcoat-two-part' },
    conditions: { ...known.conditions, temperatureC: 28 },
  },
  below: {
    ...known,
    panel: { ...known.panel, workingHeightMm: 1400 },
    zones: [{ id: 'Z1', outline: box(800, 300, 400, 400), condition: 'wet-rotten' }],
    survey: { readings: [plugAt(300, 300, 9), plugAt(1700, 700, 9)] },
    method: { access: 'from-below' },
  },
  bagged: { ...known, method: { press: 'vacuum' }, panel: { ...known.panel, surface: 'moulded-nonskid' } },
  frozen: {
    ...known,
    zones: [{ id: 'Z1', outline: box(900, 400, 150, 150), condition: 'wet-bonded' }],
    conditions: {
      temperatureC: 12,
      shelter: 'shed',
      forecast: { timeZone: 'Europe/Lisbon', hours: freezing },
    },
    crew: { startDate: '2027-01-04' },
  },
  large: {
    ...known,
    zones: [{ id: 'Z1', outline: box(150, 100, 1700, 800), condition: 'wet-rotten' }],
    survey: { readings: [plugAt(975, 475, 40), plugAt(50, 50, 22)] },
    panel: { ...known.panel, accessBelow: 'none' },
  },
  propped: {
    ...known,
    zones: [{ id: 'Z1', outline: box(150, 100, 1700, 800), condition: 'wet-rotten' }],
    method: { press: 'weights' },
  },
  tiny: {
    ...known,
    panel: { ...known.panel, isInnerSkinAirtight: true },
    outerSkin: { thicknessMm: 1.5 },
    core: { thicknessMm: 6.35 },
    innerSkin: { thicknessMm: 8 },
    zones: [{ id: 'Z1', outline: box(975, 475, 20, 20), condition: 'dry-debonded' }],
    method: { cutMarginMm: 20, press: 'vacuum' },
  },
  bent: {
    ...known,
    panel: { ...known.panel, camberRadiusMm: 400 },
    core: { thicknessMm: 25.4 },
    zones: [{ id: 'Z1', outline: box(700, 300, 400, 400), condition: 'dry-debonded' }],
  },
  injected: {
    ...known,
    zones: [
      { id: 'Z1', outline: box(300, 250, 500, 400), condition: 'wet-rotten' },
      { id: 'Z2', outline: box(1400, 600, 150, 150), condition: 'dry-debonded' },
    ],
    survey: {
      readings: [{ kind: 'plug', at: [1475, 675], condition: 'debonded-dry', moisturePercent: 9 }],
    },
  },
  gelcoated: { ...known, method: { finishIn: 'gelcoat' } },
  narrow: {
    ...unread,
    panel: { ...unread.panel, outline: box(0, 0, 2000, 100) },
    outerSkin: { thicknessMm: 5 },
    core: { thicknessMm: 5, cavityMm: 5 },
    zones: [{ id: 'Z1', outline: box(900, 10, 300, 80), condition: 'dry-debonded' }],
    method: { flangeMm: 0 },
  },
} satisfies Readonly<Record<string, DefectRecord>>;

type Name = keyof typeof records;

/** An edition that sells no primer: what an administrator may publish. */
const unprimed: Catalogue = {
  ...shippedCatalogue,
  materials: shippedCatalogue.materials.filter(
    (material) => material.kind !== 'coating' || material.coating !== 'primer',
  ),
};
const editions: Readonly<Partial<Record<Name, Catalogue>>> = { narrow: unprimed };

const made = new Map<Name, readonly Caution[]>();

/** Each record is estimated once, by whichever rule asks first. */
function cautionsOf(name: Name): readonly Caution[] {
  const before = made.get(name);
  if (before !== undefined) return before;
  const outcome = estimate(records[name], editions[name] ?? shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  made.set(name, outcome.value.estimate.cautions);
  return outcome.value.estimate.cautions;
}
const saidOf = (name: Name, code: string): string | undefined =>
  cautionsOf(name).find((caution) => caution.code === code)?.because;

/** For each rule a record that calls it, what it then says, and a record that does not call it. */
const proofs: Readonly<Record<string, readonly [calls: Name, says: RegExp, silent: Name]>> = {
  'isocyanate-spray': ['old', /sprayed outside a booth/, 'polyester'],
  'isocyanate': ['polyester', /on the list of coatings/, 'known'],
  'peroxide': ['polyester', /started with ketone peroxide/, 'known'],
  'styrene': ['polyester', /in an enclosed place/, 'known'],
  'lead-paint': ['old', /built in 1974/, 'known'],
  'asbestos-mat': ['old', /a bonded deck mat on a boat of 1974/, 'unsaid'],
  'amine-hardener': ['known', /ardener.* is poured and mixed/, 'polyester'],
  'epoxy-sensitisation': ['below', /used overhead/, 'polyester'],
  'enclosed-below': ['below', /from below/, 'known'],
  'deck-shape': ['below', /the outer skin stands alone/, 'known'],
  'overhead-work': ['below', /done overhead/, 'known'],
  'jacks-slip': ['below', /press boards up/, 'known'],
  'highly-loaded-fitting': ['old', /^W1 \(windlass\)/, 'known'],
  'fuel-below': ['old', /fuel tank/, 'known'],
  'wiring-below': ['old', /wiring/, 'unsaid'],
  'tank-or-hose-below': ['old', /a water tank/, 'known'],
  'under-unknown': ['unsaid', /not stated/, 'known'],
  'prop-first': ['propped', /its span is \d+ mm/, 'tiny'],
  'vacuum-unsupported': ['bagged', /not proven airtight/, 'tiny'],
  'exotherm': ['large', /pots of up to \d{3} g/, 'tiny'],
  'hardener-on-dust': ['known', /amine hardener/, 'polyester'],
  'heater-in-tent': ['old', /a tent at 12 degC/, 'unsaid'],
  'afloat-tools': ['old', /afloat/, 'known'],
  'height-ashore': ['known', /ashore/, 'old'],
  'heavy-weights': ['propped', /kg of weights/, 'known'],
  'neighbours': ['unsaid', /in a tent/, 'known'],
  'core-wet': ['large', /a plug in core that stays reads 22 %/, 'frozen'],
  'cause-open': ['unsaid', /not stated/, 'known'],
  'extent-uncertain': ['unsaid', /one symptom/, 'narrow'],
  'no-plug': ['unsaid', /no plug/, 'known'],
  'kicked-pot': ['polyester', /28 degC/, 'known'],
  'resin-under-pressure': ['injected', /0\.02 m2 is injected under a skin that stays/, 'known'],
  'layer-heats': ['old', /the batch plan has a fill that can heat itself/, 'below'],
  'off-ratio': ['old', /pumps/, 'known'],
  'off-ratio-scale': ['known', /without pumps/, 'old'],
  'air-under-core': ['known', /plain, unscored core/, 'bent'],
  'proud-skin': ['narrow', /stands 1\.\d mm above/, 'known'],
  'no-taper': ['narrow', /does not fit/, 'known'],
  'bolt-crush': ['old', /bolted through: W1/, 'known'],
  'cold-cure': ['frozen', /nights of -4 degC, below the 10 degC/, 'known'],
  'blush': ['known', /epoxy is coated over/, 'polyester'],
  'paint-too-soon': ['known', /paint follows epoxy/, 'polyester'],
  'gelcoat-on-epoxy': ['gelcoated', /gelcoat goes over/, 'known'],
  'one-part-on-epoxy': ['narrow', /straight on epoxy/, 'known'],
  'open-deck': ['known', /m2 stand open/, 'below'],
  'cut-too-deep': ['known', /from above/, 'below'],
  'cut-through-deck': ['below', /from below/, 'known'],
  'resin-rain': ['old', /the inner skin has holes/, 'known'],
  'nonskid-match': ['bagged', /a panel in moulded nonskid/, 'known'],
  'frost': ['frozen', /frost of -4 degC/, 'known'],
};

/** What every opened deck calls for: no record that is opened goes without. */
const ofEveryOpening: Readonly<Record<string, RegExp>> = {
  'glass-dust': /m2 of glass skin/,
  'light-powders': /weighed loose/,
  'solvent': /wiping and cleaning/,
  'local-rules': /used, stored and thrown away/,
};

describe('every caution is called by a record and not by another', () => {
  test('there is a proof for each rule', () => {
    expect([...Object.keys(proofs), ...Object.keys(ofEveryOpening)].sort()).toEqual(
      cautionRules.map(({ code }) => code).sort(),
    );
  });

  test.each(Object.entries(proofs))('%s', (code, [calls, says, silent]) => {
    expect(saidOf(calls, code)).toMatch(says);
    expect(saidOf(silent, code)).toBeUndefined();
  });

  test.each(Object.entries(ofEveryOpening))('%s is called by every opened deck', (code, says) => {
    expect([...made.keys()].map((name) => saidOf(name, code))).toEqual(
      [...made.keys()].map(() => expect.stringMatching(says)),
    );
    expect(made.size).toBe(Object.keys(records).length);
  });
});
