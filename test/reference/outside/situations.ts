import { aRecord } from '../../samples/a-record.js';
import { furtherSituations } from './further-situations.js';
import { thirdSituations } from './third-situations.js';
import { box, zoneless, type Situation } from './situation.js';

const firstSituations: readonly Situation[] = [
  {
    id: 'stanchion-wet-plug',
    title: 'One stanchion, one wet plug beside its hole; a bent nail brings dry shavings at 18 mm',
    record: zoneless(
      aRecord({
        survey: { readings: [{ kind: 'plug', at: [400, 100], condition: 'wet-bonded' }] },
        fittings: [
          {
            id: 'S1',
            kind: 'stanchion',
            at: [400, 110],
            holes: 4,
            holeDiameterMm: 6.5,
            baseMm: 75,
            isLeaking: true,
            wetReachMm: 18,
          },
        ],
      }),
    ),
    expected: 'ream-and-pot',
    because: 'wet only round the holes, and a tool through the hole reaches dry core (25 mm)',
    unfit: { rebed: 'wet' },
  },
  {
    id: 'stanchion-leak-dry-plug',
    title: 'A stanchion that drips, plug beside it dry and pale',
    record: zoneless(
      aRecord({
        survey: { readings: [{ kind: 'plug', at: [400, 100], condition: 'dry-sound', moisturePercent: 10 }] },
        fittings: [{ id: 'S1', kind: 'stanchion', at: [400, 110], holes: 4, isLeaking: true }],
      }),
    ),
    expected: 'rebed',
    because: 'dry plug, leak seen: bedding has failed and the core has not',
  },
  {
    id: 'dry-debond-small',
    title: '0.09 m2 rattles, a plug in it is dry at 9 %, nothing stands on it, the skin is whole',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(900, 400, 300, 300), condition: 'dry-debonded' }],
      panel: { ...aRecord().panel, outerSkinState: 'whole' },
      survey: {
        readings: [{ kind: 'plug', at: [1050, 550], condition: 'debonded-dry', moisturePercent: 9 }],
      },
    }),
    expected: 'inject',
    because: 'dry, 0.09 m2 is below 0.2 m2, no fitting on it',
  },
  {
    id: 'foredeck-crazed',
    title: '0.28 m2 of foredeck rotten under crazed, painted skin',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(600, 300, 800, 350), condition: 'wet-rotten' }],
      panel: { ...aRecord().panel, surface: 'painted-nonskid', outerSkinState: 'cracked' },
    }),
    expected: 'above-new-skin',
    because: 'a cracked skin does not go back, and the deck is painted anyway',
    // Written down with the 0.2 m2 of injection as the reason; the ladder names the rot first, which decides before any area does.
    unfit: { 'above-old-skin': 'crack', 'inject': 'rotten', 'ream-and-pot': '' },
  },
  {
    id: 'moulded-nonskid-no-way-below',
    title: '0.2 m2 rotten under whole moulded nonskid, no room below',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(700, 300, 500, 400), condition: 'wet-rotten' }],
      panel: {
        ...aRecord().panel,
        surface: 'moulded-nonskid',
        outerSkinState: 'whole',
        accessBelow: 'none',
      },
    }),
    expected: 'above-old-skin',
    because: 'nonskid worth keeping, a skin over let-go core comes off whole, one person lifts it',
    unfit: { 'from-below': 'below' },
  },
  {
    id: 'fresh-paint-panels-below',
    title: '0.45 m2 rotten, moulded nonskid, lining of screwed panels, 1100 mm of height below',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(600, 250, 900, 500), condition: 'wet-rotten' }],
      panel: {
        ...aRecord().panel,
        surface: 'moulded-nonskid',
        outerSkinState: 'whole',
        accessBelow: 'lined',
        lining: 'screwed-panels',
        workingHeightMm: 1100,
      },
    }),
    expected: 'from-below',
    because: 'too large to lift in one piece, nonskid to keep, lining comes down, 600 mm of height is enough',
  },
  {
    id: 'moulded-liner',
    title: 'The same deck over a bonded moulded liner, painted above',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(600, 250, 900, 500), condition: 'wet-rotten' }],
      panel: {
        ...aRecord().panel,
        surface: 'painted-nonskid',
        accessBelow: 'lined',
        lining: 'moulded-liner',
        workingHeightMm: 1100,
      },
    }),
    expected: 'above-new-skin',
    because: 'a liner bonded in is no way from below; painted nonskid is painted again',
    unfit: { 'from-below': 'liner' },
  },
  {
    id: 'toe-rail-strip',
    title: 'A strip of 70 mm along the toe rail, rotten right to the joint',
    record: aRecord({
      panel: {
        outline: box(0, 0, 2400, 450),
        supports: [{ kind: 'toe-rail', from: [0, 450], to: [2400, 450] }],
        coreEndsMm: 0,
        accessBelow: 'none',
      },
      zones: [{ id: 'Z1', outline: box(300, 380, 1500, 70), condition: 'wet-rotten' }],
    }),
    expected: 'edge-rout-and-fill',
    because: 'no deeper than the 75 mm that a hooked tool reaches, too narrow to bed core in: rout and fill',
    unfit: { 'above-new-skin': 'flange', 'ream-and-pot': '' },
  },
  {
    id: 'many-islands',
    title: '55 % of the panel bad in five islands, the panel is to be painted anyway',
    record: aRecord({
      zones: [
        { id: 'Z1', outline: box(100, 100, 550, 350), condition: 'wet-rotten' },
        { id: 'Z2', outline: box(750, 100, 500, 400), condition: 'wet-rotten' },
        { id: 'Z3', outline: box(1350, 100, 500, 400), condition: 'wet-rotten' },
        { id: 'Z4', outline: box(150, 560, 800, 320), condition: 'wet-rotten' },
        { id: 'Z5', outline: box(1050, 580, 800, 320), condition: 'wet-rotten' },
      ],
      method: { finish: 'panel' },
    }),
    expected: 'whole-panel',
    because: 'more than 40 to 50 % bad in many islands: edges and fairing cost more than the panel',
  },
  {
    id: 'damp-but-hard',
    title: '0.6 m2 of balsa damp at 19 %, hard, pale and bonded; laid up under cover for the winter',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(500, 250, 1200, 500), condition: 'wet-bonded' }],
      survey: {
        readings: [{ kind: 'plug', at: [1000, 500], condition: 'damp-sound', moisturePercent: 19 }],
      },
      conditions: { shelter: 'shed', daysAvailable: 150, isFreezeExpected: false },
    }),
    expected: 'dry-in-place',
    because: 'pale and bonded core at 20 % or less alone does not justify replacing it; there is a season',
  },
  {
    id: 'damp-no-time',
    title: 'The same core, wet-bonded at 30 %, with ten days before launching and frost at night',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(500, 250, 1200, 500), condition: 'wet-bonded' }],
      survey: {
        readings: [{ kind: 'plug', at: [1000, 500], condition: 'wet-bonded', moisturePercent: 30 }],
      },
      conditions: { daysAvailable: 10, isFreezeExpected: true },
    }),
    expected: 'above-new-skin',
    because: 'no season to dry it, frost is due: open and replace',
    unfit: { 'dry-in-place': '' },
  },
  {
    id: 'windlass-pocket',
    title: 'A pocket of 0.06 m2 of rot under a windlass',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(900, 380, 250, 240), condition: 'wet-rotten' }],
      fittings: [{ id: 'W1', kind: 'windlass', at: [1025, 500], holes: 4, holeDiameterMm: 10, baseMm: 260 }],
    }),
    expected: 'solid-spot',
    because: 'small and under a load: solid, with plate, after a naval architect has looked',
    unfit: { 'ream-and-pot': 'windlass', 'inject': '' },
  },
];

export const situations: readonly Situation[] = [
  ...firstSituations,
  ...furtherSituations,
  ...thirdSituations,
];
