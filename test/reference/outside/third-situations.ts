import { aRecord } from '../../samples/a-record.js';
import { box, zoneless, type Situation } from './situation.js';

const whole = { ...aRecord().panel, outerSkinState: 'whole' } as const;
const crazed = { ...aRecord().panel, outerSkinState: 'cracked', surface: 'smooth-paint' } as const;

/** A dozen more, with rung and reason written down before the ladder was asked, from the loads, seasons and edges that the others leave out. */
export const thirdSituations: readonly Situation[] = [
  {
    id: 'cold-shed-debond',
    title: '0.06 m2 rattles in a shed at 7 degC, a plug in it is dry at 8 %, the skin is whole',
    record: aRecord({
      panel: whole,
      zones: [{ id: 'Z1', outline: box(900, 400, 300, 200), condition: 'dry-debonded' }],
      survey: {
        readings: [{ kind: 'plug', at: [1050, 500], condition: 'debonded-dry', moisturePercent: 8 }],
      },
      conditions: { temperatureC: 7, shelter: 'shed' },
    }),
    expected: 'inject',
    because: 'a small dry gap is injected in the cold as in summer, with a hardener that cures there',
    unfit: { 'rebed': '', 'dry-in-place': 'dry' },
  },
  {
    id: 'foam-let-go-under-crazing',
    title: '0.5 m2 of foam core has let go, dry, under a crazed and painted skin',
    record: aRecord({
      panel: crazed,
      core: { thicknessMm: 12.7, coreType: 'cross-linked-foam' },
      zones: [{ id: 'Z1', outline: box(600, 250, 1000, 500), condition: 'dry-debonded' }],
      survey: { readings: [{ kind: 'plug', at: [1100, 500], condition: 'debonded-dry' }] },
    }),
    expected: 'above-new-skin',
    because: 'more than anybody injects, through a skin that is cracked: it comes off and a new one goes on',
    unfit: { 'inject': '', 'above-old-skin': 'cracked', 'dry-in-place': 'dry' },
  },
  {
    id: 'mast-step-plywood',
    title: '0.09 m2 of plywood core rotten under a mast step',
    record: aRecord({
      core: { thicknessMm: 19, coreType: 'marine-plywood' },
      zones: [{ id: 'Z1', outline: box(850, 350, 300, 300), condition: 'wet-rotten' }],
      fittings: [{ id: 'M1', kind: 'mast-step', at: [1000, 500], holes: 4, baseMm: 200 }],
    }),
    expected: 'solid-spot',
    because: 'the footprint of a mast step is laid solid, after a naval architect has looked',
    unfit: { 'ream-and-pot': 'mast step', 'inject': '' },
  },
  {
    id: 'track-strip',
    title: 'Rot 60 mm wide along 1.2 m of genoa track, all of it under the track',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(400, 470, 1200, 60), condition: 'wet-rotten' }],
      fittings: [{ id: 'T1', kind: 'track', at: [1000, 500], holes: 12, holeDiameterMm: 8, baseMm: 1200 }],
    }),
    expected: 'solid-spot',
    because:
      'under a track a strip 75 mm wide is laid solid: narrower than core that can be bedded, and loaded',
    unfit: { 'ream-and-pot': '', 'inject': '' },
  },
  {
    id: 'deck-fill-ring',
    title: 'A deck fill that drips; its bare core is wet for 20 mm all round the hole',
    record: zoneless(
      aRecord({
        survey: { readings: [{ kind: 'plug', at: [430, 140], condition: 'wet-bonded' }] },
        fittings: [
          { id: 'F1', kind: 'fill', at: [400, 110], holes: 3, baseMm: 90, isLeaking: true, wetReachMm: 20 },
        ],
      }),
    ),
    expected: 'ream-and-pot',
    because:
      'a ring of 25 mm reamed round the fill and filled is what owners print; nobody cuts a deck for it',
    unfit: { rebed: 'wet' },
  },
  {
    id: 'whole-coachroof-gone',
    title: '5.8 m2 of a coachroof of 9 m2 soft in one sweep, painted, to be painted again anyway',
    record: aRecord({
      panel: { outline: box(0, 0, 4500, 2000), surface: 'smooth-paint', outerSkinState: 'whole' },
      zones: [{ id: 'Z1', outline: box(300, 200, 3600, 1600), condition: 'wet-rotten' }],
      method: { finish: 'whole-deck', wholeDeckAreaM2: 22 },
    }),
    expected: 'whole-panel',
    because: 'well over half of the panel between hard edges: one restorer does the whole deck at once',
    unfit: { 'inject': '', 'solid-spot': 'more than' },
  },
  {
    id: 'glued-planks-come-off',
    title: '0.35 m2 rotten under glued planks that are to make way for paint, no room below',
    record: aRecord({
      panel: {
        ...aRecord().panel,
        surface: 'planked',
        overlay: { kind: 'glued-planks', thicknessMm: 10, then: 'paint' },
        accessBelow: 'none',
      },
      zones: [{ id: 'Z1', outline: box(700, 250, 700, 500), condition: 'wet-rotten' }],
    }),
    expected: 'above-new-skin',
    because: 'the planks come off anyway, the deck is made good and painted: open it and lay a new skin',
    unfit: { 'from-below': 'room', 'inject': '' },
  },
  {
    id: 'chainplate-drips-dry',
    title: 'A chainplate that drips; the plug beside its slot is dry and pale at 11 %',
    record: zoneless(
      aRecord({
        survey: { readings: [{ kind: 'plug', at: [430, 140], condition: 'dry-sound', moisturePercent: 11 }] },
        fittings: [{ id: 'C1', kind: 'chainplate', at: [400, 110], holes: 4, baseMm: 120, isLeaking: true }],
        cause: { cause: 'leaking-fitting', leak: 'chainplate' },
      }),
    ),
    expected: 'rebed',
    because: 'dry core stays; the slot is filled, cut anew and bedded with something that gives',
    unfit: { 'ream-and-pot': '', 'inject': '' },
  },
  {
    id: 'hatch-edge-soft',
    title: 'Rot 45 mm deep along one side of a hatch whose core edge was never sealed',
    record: aRecord({
      panel: {
        ...aRecord().panel,
        holes: [box(800, 300, 500, 400)],
        supports: [{ kind: 'hatch', from: [800, 300], to: [1300, 300] }],
      },
      zones: [{ id: 'Z1', outline: box(850, 255, 400, 45), condition: 'wet-rotten' }],
    }),
    expected: 'edge-rout-and-fill',
    because:
      'the core edge lies bare in the opening: rout 12 mm past the rot with the frame off, fill with paste',
    unfit: { inject: '' },
  },
  {
    id: 'damp-at-24-a-winter',
    title: '0.4 m2 of balsa at 24 %, pale, hard and bonded; a tent and 150 days without frost',
    record: aRecord({
      zones: [{ id: 'Z1', outline: box(600, 300, 800, 500), condition: 'wet-bonded' }],
      survey: {
        readings: [{ kind: 'plug', at: [1000, 500], condition: 'wet-bonded', moisturePercent: 24 }],
      },
      conditions: { shelter: 'tent', daysAvailable: 150, isFreezeExpected: false },
    }),
    expected: 'dry-in-place',
    because:
      'below fibre saturation, hard and bonded, with a season under cover: dried before anything is cut',
    unfit: { inject: '', rebed: '' },
  },
  {
    id: 'tiny-spot-moulded-nonskid',
    title: 'Rot 140 mm across under whole moulded nonskid, nothing stands on it',
    record: aRecord({
      panel: { ...whole, surface: 'moulded-nonskid' },
      zones: [{ id: 'Z1', outline: box(900, 450, 140, 140), condition: 'wet-rotten' }],
    }),
    expected: 'above-old-skin',
    because: 'a piece of 0.08 m2 lifts whole, and its nonskid cannot be matched: it goes back',
    unfit: { 'ream-and-pot': 'hole', 'inject': '' },
  },
  {
    id: 'crack-over-dry-core',
    title: 'Star crack in the gelcoat, plugs on both sides dry and pale, nothing rattles',
    record: zoneless(
      aRecord({
        panel: crazed,
        survey: {
          readings: [
            { kind: 'plug', at: [980, 500], condition: 'dry-sound', moisturePercent: 10 },
            { kind: 'plug', at: [1060, 500], condition: 'dry-sound', moisturePercent: 10 },
          ],
        },
        cause: { cause: 'impact', leak: 'crack', lengthMm: 180 },
      }),
    ),
    expected: 'close-leak',
    because: 'no bad core: the crack is ground out, taped and faired, and no deck is opened for it',
  },
];
