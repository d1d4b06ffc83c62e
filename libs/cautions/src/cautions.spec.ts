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
  panel: 'flat',
};
/** Everything is known and nothing is used: only the height ashore is left. Which record calls which rule: `estimate`. */
const quiet: CautionContext = {
  flags,
  resin: undefined,
  hardener: undefined,
  fillers: [],
  coatings: [],
  application: 'brush-and-roller',
  usesSolvent: false,
  usesPumps: false,
  injectedAreaM2: 0,
  openedAreaM2: 0,
  yearBuilt: 2010,
  surface: 'smooth-paint',
  finishExtent: 'panel',
  under: [],
  fittings: [],
  solidInserts: 0,
  temperatureC: 20,
  coldestNightC: 15,
  relativeHumidityPercent: 50,
  coreMoisturePercent: 9,
  coreReadings: { dryStays: 1, wetStays: 0, dryOut: 0 },
  evidence: 'mapped-with-plugs',
  plugs: 3,
  cause: 'impact',
  needsBleedHoles: false,
  proudMm: 0,
  taperFits: true,
  innerSkinSpanMm: 400,
  isInnerSkinAirtight: true,
  innerSkinHasHoles: false,
  weightsKg: 0,
  largestPotG: 0,
  forgottenPotPeakC: 0,
  batchFindings: [],
};
/** The same with nothing known that may be unknown. */
const unsaid: CautionContext = {
  ...quiet,
  yearBuilt: 'unknown',
  under: 'unknown',
  coldestNightC: 'unknown',
  coreMoisturePercent: 'unknown',
  coreReadings: { dryStays: 0, wetStays: 0, dryOut: 0 },
  cause: 'unknown',
  innerSkinSpanMm: 'unknown',
  isInnerSkinAirtight: 'unknown',
};
const codesOf = (context: CautionContext) => cautionsFor(context).map(({ code }) => code);
const saidOf = (context: CautionContext, code: string) =>
  cautionsFor(context).find((caution) => caution.code === code)?.because;
const twoPart = findMaterial(shippedCatalogue, 'coating', 'coating-topcoat-two-part')!;

describe('cautions', () => {
  test('a job of which everything is known and nothing is used brings only what its place brings', () => {
    expect(codesOf(quiet)).toEqual(['height-ashore']);
  });

  test('what nobody knows is not harmless: paint, what lies under, the way in of the water, a bag on an unproven skin', () => {
    const bagged = { ...unsaid, flags: { ...flags, press: 'vacuum' as const } };
    expect(codesOf(bagged).filter((code) => !codesOf(quiet).includes(code))).toEqual([
      'under-unknown',
      'vacuum-unsupported',
      'lead-paint',
      'cause-open',
    ]);
    expect(codesOf({ ...bagged, isInnerSkinAirtight: true })).not.toContain('vacuum-unsupported');
  });

  test('isocyanates are never sprayed outside a booth, and the statement of asthma stands beside them', () => {
    const [caution] = cautionsFor({ ...quiet, coatings: [twoPart], application: 'spray-elsewhere' });
    expect([caution.code, caution.severity]).toEqual(['isocyanate-spray', 'danger']);
    expect(caution.hazards.map(({ code }) => code)).toContain('H334');
  });

  test.each<[string, Partial<CautionContext>, string | undefined]>([
    ['no reading', {}, 'the core was found wet and no dry reading is stated'],
    [
      'a dry reading of core that stays',
      { coreReadings: { dryStays: 1, wetStays: 0, dryOut: 0 } },
      undefined,
    ],
    [
      'dry readings of core that comes out',
      { coreReadings: { dryStays: 0, wetStays: 0, dryOut: 2 } },
      'the dry readings stated are of core that comes out; none is stated of core that stays',
    ],
    [
      'one wet place among dry ones',
      { coreReadings: { dryStays: 9, wetStays: 1, dryOut: 0 } },
      'core that stays reads wet at 1 place',
    ],
    [
      'a plug at 12 %',
      { coreMoisturePercent: 12, coreReadings: { dryStays: 1, wetStays: 0, dryOut: 0 } },
      undefined,
    ],
    [
      'a plug at 12.5 %',
      { coreMoisturePercent: 12.5, coreReadings: { dryStays: 0, wetStays: 1, dryOut: 0 } },
      'a plug in core that stays reads 12.5 %',
    ],
  ])('wet core with %s', (_, facts, said) => {
    expect(saidOf({ ...unsaid, flags: { ...flags, condition: 'wet-bonded' }, ...facts }, 'core-wet')).toBe(
      said,
    );
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
