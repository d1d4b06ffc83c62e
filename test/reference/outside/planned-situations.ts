import { aRecord } from '../../samples/a-record.js';
import { box, zoneless, type Situation } from './situation.js';

/** What the plan of a situation has to hold, and what it must not: lines, steps of resin and cautions by their codes. */
export interface PlannedSituation extends Situation {
  readonly must: readonly [string, string, ...(readonly string[])];
  readonly mustNot: readonly [string, string, ...(readonly string[])];
  /** Where the ladder takes another rung and was left to: what its plan has to hold instead. */
  readonly insteadMust?: readonly [string, ...(readonly string[])];
}

const whole = { ...aRecord().panel, outerSkinState: 'whole' } as const;
const crazed = { ...aRecord().panel, outerSkinState: 'cracked', surface: 'smooth-paint' } as const;
const stanchions = [200, 500, 800, 1100, 1400, 1700] as const;

/**
 * Ten more, with rung, reason and contents written down before ladder and plan were asked: rows of fittings, leaks over dry
 * core, two places of different kinds on one deck, and edges under planks or at a coaming.
 */
export const plannedSituations: readonly PlannedSituation[] = [
  {
    id: 'six-stanchions-dry',
    title: 'Six stanchions that all drip; a plug beside each is dry and pale at 11 %',
    record: zoneless(
      aRecord({
        survey: {
          readings: stanchions.map((x) => ({
            kind: 'plug' as const,
            at: [x + 40, 110] as const,
            condition: 'dry-sound' as const,
            moisturePercent: 11,
          })),
        },
        fittings: stanchions.map((x) => ({
          id: `S${x}`,
          kind: 'stanchion' as const,
          at: [x, 80] as const,
          holes: 4,
          baseMm: 75,
          isLeaking: true,
        })),
      }),
    ),
    expected: 'rebed',
    because: 'dry core stays: six bases off, cleaned and bedded in one run with somebody below',
    must: ['labour-spot-bed', 'labour-spot-second-person'],
    mustNot: ['labour-spot-dig', 'labour-tent', 'labour-cut-skin'],
  },
  {
    id: 'winch-merged-pockets',
    title: 'A sheet winch on five bolts; wet core comes out 28 mm from each hole, then dry shavings',
    record: zoneless(
      aRecord({
        survey: {
          readings: [{ kind: 'plug', at: [430, 140], condition: 'wet-bonded', moisturePercent: 24 }],
        },
        fittings: [
          {
            id: 'W1',
            kind: 'winch',
            at: [400, 110],
            holes: 5,
            holeDiameterMm: 6.5,
            baseMm: 148,
            isLeaking: true,
            wetReachMm: 28,
          },
        ],
      }),
    ),
    expected: 'ream-and-pot',
    because: 'a set of longer keys reaches 32 mm; the pockets may merge, and are filled in lifts',
    unfit: { rebed: 'wet' },
    must: ['labour-spot-dig', 'step:potting'],
    mustNot: ['labour-cut-skin', 'labour-bed-core', 'labour-topcoat'],
  },
  {
    id: 'hatch-leak-beside-rot',
    title:
      '0.3 m2 rotten under crazed paint beside a hatch that let the water in and is no fitting of the record',
    record: aRecord({
      panel: crazed,
      zones: [{ id: 'Z1', outline: box(600, 300, 600, 500), condition: 'wet-rotten' }],
      cause: { cause: 'unknown', leak: 'hatch' },
    }),
    expected: 'above-new-skin',
    because:
      'the deck is opened and skinned anew, and the frame comes off, its core edge sealed, while it is',
    must: ['labour-frame-ring', 'labour-hardware-off', 'labour-refit-fittings'],
    mustNot: ['labour-leak-hunt', 'labour-rail-off'],
  },
  {
    id: 'open-joint-dry',
    title: 'The joint of hull and deck stands open over 1.6 m; plugs 60 mm inboard are dry and pale at 10 %',
    record: zoneless(
      aRecord({
        panel: whole,
        survey: {
          readings: [
            { kind: 'plug', at: [600, 940], condition: 'dry-sound', moisturePercent: 10 },
            { kind: 'plug', at: [1400, 940], condition: 'dry-sound', moisturePercent: 10 },
          ],
        },
        cause: { cause: 'unknown', leak: 'hull-deck-joint', lengthMm: 1600 },
      }),
    ),
    expected: 'close-leak',
    because: 'two tapes over a cleaned joint are half a day; nobody opens a dry deck for it',
    unfit: { 'inject': '', 'above-new-skin': '' },
    must: ['labour-joint-grind', 'labour-joint-tape'],
    mustNot: ['labour-cut-skin', 'labour-bed-core', 'labour-tent'],
  },
  {
    id: 'crack-over-dry-foam',
    title: 'A crack of 400 mm beside a coaming; plugs at both ends show dry foam that holds',
    record: zoneless(
      aRecord({
        panel: crazed,
        core: { thicknessMm: 15, coreType: 'cross-linked-foam' },
        survey: {
          readings: [
            { kind: 'plug', at: [800, 500], condition: 'dry-sound' },
            { kind: 'plug', at: [1220, 500], condition: 'dry-sound' },
          ],
        },
        cause: { cause: 'impact', leak: 'crack', lengthMm: 400 },
      }),
    ),
    expected: 'close-leak',
    because: 'the crack is ground out 12:1, closed with two tapes and faired; the core is dry and stays',
    unfit: { rebed: 'fitting' },
    must: ['labour-crack-grind', 'labour-crack-tape'],
    mustNot: ['labour-core-out-rotten', 'labour-lift-skin-bonded', 'yard-haul-out'],
  },
  {
    id: 'wet-foam-cells',
    title: '0.25 m2 of foam core, wet through and still bonded, under crazed paint; half a year of time',
    record: aRecord({
      panel: crazed,
      core: { thicknessMm: 12.7, coreType: 'cross-linked-foam' },
      zones: [{ id: 'Z1', outline: box(700, 300, 500, 500), condition: 'wet-bonded' }],
      survey: { readings: [{ kind: 'plug', at: [950, 550], condition: 'wet-bonded' }] },
      conditions: { shelter: 'shed', daysAvailable: 180, isFreezeExpected: false },
    }),
    expected: 'above-new-skin',
    because: 'foam that is wet has broken cells: it does not dry back, it is replaced',
    unfit: { 'inject': '', 'dry-in-place': '' },
    must: ['labour-core-out-bonded', 'labour-laminate-top'],
    mustNot: ['labour-dry-drill', 'labour-dry-read'],
  },
  {
    id: 'debond-and-dripping-fill',
    title: '0.12 m2 rattles dry under a whole skin; 900 mm away a deck fill drips over a dry plug',
    record: aRecord({
      panel: whole,
      zones: [{ id: 'Z1', outline: box(1300, 500, 400, 300), condition: 'dry-debonded' }],
      survey: {
        readings: [
          { kind: 'plug', at: [1500, 650], condition: 'debonded-dry', moisturePercent: 9 },
          { kind: 'plug', at: [330, 150], condition: 'dry-sound', moisturePercent: 10 },
        ],
      },
      fittings: [{ id: 'F1', kind: 'fill', at: [300, 120], holes: 3, baseMm: 90, isLeaking: true }],
    }),
    expected: 'inject',
    because: 'the gap is injected and the fill bedded anew on the same visit: neither asks for a saw',
    unfit: { 'dry-in-place': 'dry' },
    must: ['labour-inject', 'labour-hardware-off', 'labour-refit-fittings'],
    mustNot: ['labour-cut-skin', 'labour-tent', 'labour-spot-dig'],
  },
  {
    id: 'cleat-over-debond',
    title: '0.08 m2 of balsa has let go, dry, right under a mooring cleat',
    record: aRecord({
      panel: whole,
      zones: [{ id: 'Z1', outline: box(800, 400, 320, 250), condition: 'dry-debonded' }],
      survey: { readings: [{ kind: 'plug', at: [860, 460], condition: 'debonded-dry', moisturePercent: 9 }] },
      fittings: [{ id: 'C1', kind: 'cleat', at: [960, 525], holes: 4, holeDiameterMm: 8, baseMm: 200 }],
    }),
    expected: 'solid-spot',
    because: 'resin under a loaded cleat is not trusted: the spot is opened and laid solid under the base',
    unfit: { inject: '' },
    must: ['labour-cut-skin', 'labour-fill-solid', 'labour-refit-fittings'],
    disagreement: {
      says: 'above-new-skin',
      kept: 'a solid of 280 by 140 mm goes under the base in either plan; 0.08 m2 under a stanchion is the anchor that the notes give for new core round it, and more solid than the base asks for only adds weight',
    },
    insteadMust: ['labour-cut-skin', 'labour-set-inserts', 'labour-refit-fittings'],
    mustNot: ['labour-inject', 'labour-bed-core'],
  },
  {
    id: 'rail-strip-under-planks',
    title:
      'A strip 60 mm deep along 2 m of toe rail rotten to the joint, under screwed planks that go for paint',
    record: aRecord({
      panel: {
        outline: box(0, 0, 2600, 450),
        surface: 'planked',
        overlay: { kind: 'screwed-planks', thicknessMm: 12, then: 'paint' },
        supports: [{ kind: 'toe-rail', from: [0, 450], to: [2600, 450] }],
        outerSkinState: 'whole',
        accessBelow: 'none',
      },
      zones: [{ id: 'Z1', outline: box(300, 390, 2000, 60), condition: 'wet-rotten' }],
    }),
    expected: 'edge-rout-and-fill',
    because:
      'planks off, screw holes filled, a slot beside the lip, routed with hooked tools and filled solid',
    unfit: { inject: '' },
    must: ['labour-overlay-off-screwed', 'labour-overlay-fill-holes', 'labour-strip-fill'],
    mustNot: ['labour-overlay-back', 'labour-bed-core'],
  },
  {
    id: 'coaming-no-lip',
    title: 'Rot 130 mm deep along 1 m of coaming, up to the upstand, no way from below',
    record: aRecord({
      panel: {
        outline: box(0, 0, 2000, 600),
        surface: 'smooth-paint',
        supports: [{ kind: 'coaming', from: [0, 600], to: [2000, 600] }],
        accessBelow: 'none',
      },
      zones: [{ id: 'Z1', outline: box(500, 470, 1000, 130), condition: 'wet-rotten' }],
    }),
    expected: 'edge-wrap',
    because:
      'no flange is left to taper on: core beside the upstand, a fillet, and the plies run up the coaming',
    unfit: { 'edge-rout-and-fill': '75' },
    must: ['labour-wrap-upstand', 'labour-bed-core'],
    mustNot: ['labour-rail-off', 'labour-strip-rout'],
  },
];
