import { describe, expect, test } from '@jest/globals';
import { findMaterial, materialsOf, shippedCatalogue } from '#lib/catalogue';
import { cautionRules, cautionsFor, hazardStatements, type CautionContext } from './index.js';
import type { OperationFlags } from '#lib/work';

const flags: OperationFlags = {
  skin: 'relay',
  access: 'from-above',
  condition: 'dry-debonded',
  press: 'battens',
  shelter: 'shed',
  below: 'open',
  skill: 'professional',
  props: 'not-needed',
  finish: 'none',
  nonskid: 'no',
  berth: 'ashore',
  panel: 'usual',
};
/** A job of which everything is known and nothing is used: only the height ashore is left. */
const quiet: CautionContext = {
  flags,
  under: [],
  cause: 'impact',
  evidence: 'mapped-with-plugs',
  plugs: 3,
  yearBuilt: 2010,
  surface: 'smooth-paint',
  coreMoisturePercent: 9,
};
const codesOf = (context: CautionContext) => cautionsFor(context).map(({ code }) => code);
const epoxy = findMaterial(shippedCatalogue, 'resin', 'resin-epoxy-5to1')!;
const polyester = findMaterial(shippedCatalogue, 'resin', 'resin-polyester-laminating')!;
const twoPart = findMaterial(shippedCatalogue, 'coating', 'coating-topcoat-two-part')!;

/** For each rule, the condition that calls it. */
const calls: Readonly<Record<string, Partial<CautionContext>>> = {
  'isocyanate-spray': { coatings: [twoPart], application: 'spray-elsewhere' },
  'isocyanate': { coatings: [twoPart], application: 'brush-and-roller' },
  'peroxide': { resin: polyester },
  'styrene': { resin: polyester },
  'lead-paint': { yearBuilt: 1974 },
  'asbestos-mat': { surface: 'bonded-mat', yearBuilt: 1974 },
  'amine-hardener': { resin: epoxy },
  'epoxy-sensitisation': { resin: epoxy },
  'glass-dust': { openedAreaM2: 1 },
  'light-powders': { fillers: materialsOf(shippedCatalogue, 'filler') },
  'enclosed-below': { flags: { ...flags, access: 'from-below' } },
  'deck-shape': { flags: { ...flags, access: 'from-below' }, openedAreaM2: 0.5 },
  'overhead-work': { flags: { ...flags, access: 'from-below' }, openedAreaM2: 0.5 },
  'jacks-slip': { flags: { ...flags, access: 'from-below' }, openedAreaM2: 0.5 },
  'highly-loaded-fitting': { fittings: [{ id: 'W1', kind: 'windlass', isHighlyLoaded: true }] },
  'fuel-below': { under: ['fuel-tank'] },
  'wiring-below': { under: ['wiring'] },
  'tank-or-hose-below': { under: ['hoses'] },
  'under-unknown': { isUnderKnown: false },
  'prop-first': { flags: { ...flags, props: 'needed' } },
  'vacuum-unsupported': { flags: { ...flags, press: 'vacuum' } },
  'exotherm': { largestPotG: 400 },
  'hardener-on-dust': { resin: epoxy, openedAreaM2: 1 },
  'solvent': { usesSolvent: true },
  'heater-in-tent': { flags: { ...flags, shelter: 'tent' }, temperatureC: 8 },
  'afloat-tools': { flags: { ...flags, berth: 'afloat' } },
  'height-ashore': {},
  'heavy-weights': { flags: { ...flags, press: 'weights' }, weightsKg: 160 },
  'neighbours': { flags: { ...flags, shelter: 'open' } },
  'local-rules': { resin: epoxy },
  'injection-refused': { injectedAreaM2: 0.3 },
  'core-wet': { coreMoisturePercent: 18 },
  'cause-open': { cause: 'unknown' },
  'extent-uncertain': { evidence: 'single-symptom' },
  'no-plug': { plugs: 0 },
  'kicked-pot': { temperatureC: 30 },
  'layer-heats': { solidInserts: 2 },
  'off-ratio': { usesPumps: true },
  'off-ratio-scale': { usesPumps: false, resin: epoxy },
  'air-under-core': { needsBleedHoles: true },
  'proud-skin': { proudMm: 1.2 },
  'no-taper': { taperFits: false },
  'bolt-crush': { fittings: [{ id: 'S1', kind: 'stanchion', isHighlyLoaded: false }] },
  'cold-cure': { resin: epoxy, hardener: 'slow', coldestNightC: 5 },
  'blush': { resin: epoxy, flags: { ...flags, finish: 'painted' } },
  'paint-too-soon': { resin: epoxy, flags: { ...flags, finish: 'painted' } },
  'one-part-on-epoxy': {
    resin: epoxy,
    coatings: [findMaterial(shippedCatalogue, 'coating', 'coating-topcoat-one-part')!],
  },
  'cut-too-deep': { openedAreaM2: 1 },
  'open-deck': { openedAreaM2: 1 },
  'resin-rain': { innerSkinHasHoles: true },
  'press-short': { pressRefusals: ['163 kg are needed and 60 kg are at hand'] },
  'nonskid-match': { surface: 'moulded-nonskid', finishExtent: 'patch' },
  'frost': { coldestNightC: -4, flags: { ...flags, condition: 'wet-bonded' } },
};

describe('cautions', () => {
  test('a job of which everything is known and nothing is used brings only what its place brings', () => {
    expect(codesOf(quiet)).toEqual(['height-ashore']);
  });

  test('every rule has a condition that calls it', () => {
    expect(Object.keys(calls).sort()).toEqual(cautionRules.map(({ code }) => code).sort());
  });

  test.each(Object.entries(calls))(
    '%s is called by its own condition, which it states, and not without it',
    (code, condition) => {
      const [called] = cautionsFor({ ...quiet, ...condition }).filter((caution) => caution.code === code);
      expect(called.because.length).toBeGreaterThan(5);
      if (code !== 'height-ashore') expect(codesOf(quiet)).not.toContain(code);
    },
  );

  test('dangers come before warnings and warnings before cautions', () => {
    const all = cautionsFor({
      ...quiet,
      ...Object.assign({}, ...Object.values(calls)),
      flags: { ...flags, shelter: 'open', props: 'needed', finish: 'painted' },
      fittings: [{ id: 'M', kind: 'mast-step', isHighlyLoaded: true }],
    });
    const ranks = all.map(({ severity }) => ['danger', 'warning', 'caution'].indexOf(severity));
    expect(ranks).toEqual([...ranks].sort());
    expect(all[0].code).toBe('highly-loaded-fitting');
    expect(all[0].decides).toContain('naval architect or qualified surveyor');
  });

  test('isocyanates are never sprayed outside a booth, and the statement of asthma stands beside them', () => {
    const [caution] = cautionsFor({ ...quiet, coatings: [twoPart], application: 'spray-elsewhere' });
    expect([caution.code, caution.severity]).toEqual(['isocyanate-spray', 'danger']);
    expect(caution.hazards.map(({ code }) => code)).toContain('H334');
  });

  test('paint of unknown age is taken to hold lead; a boat of 2010 is not', () => {
    expect(codesOf({ flags, under: [] })).toContain('lead-paint');
    expect(codesOf(quiet)).not.toContain('lead-paint');
  });

  test('what is not known is not harmless: nothing stated about what lies under is a danger', () => {
    expect(cautionsFor({ flags }).find(({ code }) => code === 'under-unknown')?.severity).toBe('danger');
  });

  test('every hazard code of the shipped materials has its statement', () => {
    const resins = materialsOf(shippedCatalogue, 'resin');
    const codes = [
      ...resins,
      ...resins.flatMap(({ hardeners }) => hardeners),
      ...materialsOf(shippedCatalogue, 'filler'),
      ...materialsOf(shippedCatalogue, 'coating'),
    ].flatMap(({ hazards = [] }) => hazards);
    expect(codes.filter((code) => hazardStatements[code] === undefined)).toEqual([]);
  });

  test('every source of a caution stands in the bibliography', () => {
    const known = new Set(shippedCatalogue.sources.map(({ key }) => key));
    expect(cautionRules.map(({ source }) => source).filter((source) => !known.has(source))).toEqual([]);
  });
});
