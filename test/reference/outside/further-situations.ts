import { aRecord } from '../../samples/a-record.js';
import { box, zoneless, type Situation } from './situation.js';

const wholeMoulded = {
  ...aRecord().panel,
  surface: 'moulded-nonskid',
  outerSkinState: 'whole',
} as const;

/** Ten more, with rung and reason written down before the ladder was asked. */
export const furtherSituations: readonly Situation[] = [
  {
    id: 'stanchion-deep-pocket',
    title: 'One stanchion, wet core still comes out 45 mm from its holes',
    record: zoneless(
      aRecord({
        survey: { readings: [{ kind: 'plug', at: [400, 100], condition: 'rotten' }] },
        fittings: [
          {
            id: 'S1',
            kind: 'stanchion',
            at: [400, 110],
            holes: 4,
            holeDiameterMm: 6.5,
            baseMm: 75,
            isLeaking: true,
            wetReachMm: 45,
          },
        ],
      }),
    ),
    expected: 'solid-spot',
    because: 'past the 32 mm of the longest keys one cuts; 0.03 m2 under a base is laid solid',
    unfit: { 'rebed': 'wet', 'ream-and-pot': '45 mm', 'inject': '' },
  },
  {
    id: 'cockpit-sole-a-third',
    title: 'A third of a cockpit sole of 3.6 m2, rotten, smooth paint, no room below',
    record: aRecord({
      panel: {
        outline: box(0, 0, 2400, 1500),
        surface: 'smooth-paint',
        outerSkinState: 'whole',
        accessBelow: 'none',
      },
      zones: [{ id: 'Z1', outline: box(300, 300, 1500, 800), condition: 'wet-rotten' }],
    }),
    expected: 'above-new-skin',
    because: 'too large to lift flat, painted again anyway, and below 40 % of the panel',
    unfit: { 'whole-panel': '33 %', 'from-below': 'room', 'inject': '' },
  },
  {
    id: 'chainplate-pocket',
    title: '0.03 m2 of wet core, still bonded, round a chainplate',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(900, 400, 200, 150), condition: 'wet-bonded' }],
      fittings: [{ id: 'C1', kind: 'chainplate', at: [1000, 475], holes: 4, holeDiameterMm: 6, baseMm: 120 }],
    }),
    expected: 'solid-spot',
    because: 'any wet core at a chainplate is replaced by solid laminate, after a naval architect has looked',
    unfit: { 'ream-and-pot': 'chainplate', 'inject': '' },
  },
  {
    id: 'dry-debond-middling',
    title: '0.16 m2 rattles, a plug in it is dry at 8 %, the skin is whole, nothing stands near',
    record: aRecord({
      panel: { ...aRecord().panel, outerSkinState: 'whole' },
      zones: [{ id: 'Z1', outline: box(900, 350, 400, 400), condition: 'dry-debonded' }],
      survey: {
        readings: [{ kind: 'plug', at: [1100, 550], condition: 'debonded-dry', moisturePercent: 8 }],
      },
    }),
    expected: 'inject',
    because: 'dry, below the 0.2 m2 that injection is trusted with, though above the 0.1 nobody argues about',
  },
  {
    id: 'dry-debond-large-moulded',
    title: '0.28 m2 of dry debonding under whole moulded nonskid',
    record: aRecord({
      panel: wholeMoulded,
      zones: [{ id: 'Z1', outline: box(700, 300, 700, 400), condition: 'dry-debonded' }],
      survey: {
        readings: [{ kind: 'plug', at: [1000, 500], condition: 'debonded-dry', moisturePercent: 9 }],
      },
    }),
    expected: 'above-old-skin',
    because: 'too large to inject; the skin has let go, lifts whole, and its nonskid is worth keeping',
    unfit: { 'inject': 'more than', 'dry-in-place': 'dry' },
  },
  {
    id: 'planks-stay-panels-below',
    title: '0.3 m2 rotten under planks that are to stay, screwed panels below, 900 mm of height',
    record: aRecord({
      panel: {
        ...aRecord().panel,
        surface: 'planked',
        overlay: { kind: 'glued-planks', thicknessMm: 10, then: 'stays' },
        accessBelow: 'lined',
        lining: 'screwed-panels',
        workingHeightMm: 900,
      },
      zones: [{ id: 'Z1', outline: box(700, 300, 600, 500), condition: 'wet-rotten' }],
    }),
    expected: 'from-below',
    because:
      'nothing is cut through planks that stay, and from below there is height and a lining that comes down',
    unfit: { 'above-new-skin': 'overlay', 'above-old-skin': 'overlay' },
  },
  {
    id: 'moulded-nonskid-too-low',
    title: '0.25 m2 rotten under whole moulded nonskid, 450 mm of height below',
    record: aRecord({
      panel: { ...wholeMoulded, accessBelow: 'lined', lining: 'zipped-vinyl', workingHeightMm: 450 },
      zones: [{ id: 'Z1', outline: box(700, 300, 500, 500), condition: 'wet-rotten' }],
    }),
    expected: 'above-old-skin',
    because: 'nobody works overhead in 450 mm; a piece of 0.25 m2 lifts flat and keeps its nonskid',
    unfit: { 'from-below': '450 mm' },
  },
  {
    id: 'toe-rail-deep',
    title: 'A strip 180 mm deep along the toe rail, rotten right to the joint, no way from below',
    record: aRecord({
      panel: {
        outline: box(0, 0, 2400, 600),
        supports: [{ kind: 'toe-rail', from: [0, 600], to: [2400, 600] }],
        coreEndsMm: 0,
        accessBelow: 'none',
      },
      zones: [{ id: 'Z1', outline: box(400, 420, 1200, 180), condition: 'wet-rotten' }],
    }),
    expected: 'edge-wrap',
    because:
      'deeper than hooked tools and no flange to land on: plies wrapped up the rail before the rail is lifted',
    unfit: { 'edge-rout-and-fill': '180 mm', 'inject': '' },
  },
  {
    id: 'damp-below-twenty-open-yard',
    title: '0.2 m2 of core damp at 17 %, pale and hard, round a stanchion that drips; no cover, no frost',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(700, 300, 500, 400), condition: 'wet-bonded' }],
      survey: {
        readings: [{ kind: 'plug', at: [950, 500], condition: 'damp-sound', moisturePercent: 17 }],
      },
      fittings: [{ id: 'S1', kind: 'stanchion', at: [900, 480], holes: 4, baseMm: 75, isLeaking: true }],
      conditions: { shelter: 'open', isFreezeExpected: false },
    }),
    expected: 'rebed',
    because: 'core at 20 % or less alone does not justify replacing it: stop the leak, bed anew, look again',
    unfit: { 'dry-in-place': 'cover', 'inject': '' },
  },
  {
    id: 'old-vent-hole',
    title: 'Rot 110 mm across where a ventilator stood, nothing on it, painted deck',
    record: aRecord({
      panel: { ...aRecord().panel, surface: 'smooth-paint', outerSkinState: 'whole' },
      zones: [{ id: 'Z1', outline: box(900, 450, 110, 110), condition: 'wet-rotten' }],
    }),
    expected: 'solid-spot',
    because: 'the hole that an old fitting left, 0.012 m2: filled solid, nobody buys a sheet of core for it',
    unfit: { 'ream-and-pot': 'hole', 'inject': 'rotten' },
  },
];
