import type { DefectRecord } from '#lib/estimate';

/** One job that somebody else did or quoted, as they reported it, restated as a record we can estimate. */
export interface OutsideJob {
  readonly id: string;
  readonly title: string;
  /** Key in `libs/catalogue/data/sources/`. */
  readonly source: string;
  readonly area: OutsideArea;
  /** Whether its hours entered the fit of ours; those held out were known to us too, and are no blind test. */
  readonly use: 'fitted' | 'held-out';
  readonly record: DefectRecord;
  readonly reported: Reported;
  /** What the source does not say and the record had to suppose. */
  readonly supposed: readonly string[];
  /** Why the reported figure and ours differ, when they do; written after the run, tuned to nothing. */
  readonly explained: readonly string[];
}

/** Core that was replaced, as the author says it or between what a reader took it to be; of a finish the painted deck. */
export type OutsideArea =
  | { readonly origin: 'stated'; readonly m2: number }
  | { readonly origin: 'bracketed'; readonly m2: number; readonly low: number; readonly high: number };

/** Of our operations those that the source counts too: all, all without some, or some only. */
export interface Counted {
  readonly without?: readonly string[];
  readonly only?: readonly string[];
}

interface Told extends Counted {
  readonly low: number;
  readonly high: number;
  readonly covers: string;
}

/** As printed; absent where the source gives none. Money in the currency and year of the source. */
export interface Reported {
  /** `derived`: from a price, at the rate and share of materials named in `covers`. */
  readonly labourH?: Told & { readonly origin: 'told' | 'derived' };
  readonly price?: Told & InYear;
  /** Of all goods, or of those whose lines begin with one of the names. */
  readonly materialsCost?: Omit<Told, keyof Counted> & InYear & { readonly onlyOf?: readonly string[] };
  /** Up to the end of the task named, or to the end of the job. */
  readonly days?: Omit<Told, keyof Counted> & { readonly upTo?: string };
  readonly coreSheets?: { readonly count: number; readonly covers: string };
  readonly growth?: Omit<Told, keyof Counted>;
}

export interface InYear {
  readonly currency: 'USD' | 'CAD';
  readonly year: number;
}

type Corner = readonly [xMm: number, yMm: number];
const rectangle = (
  lengthMm: number,
  widthMm: number,
  fromMm = 0,
  sideMm = 0,
): readonly [Corner, Corner, Corner, Corner] => [
  [fromMm, sideMm],
  [fromMm + lengthMm, sideMm],
  [fromMm + lengthMm, sideMm + widthMm],
  [fromMm, sideMm + widthMm],
];

/** In dollars; the yard's rates hold overhead and profit, and no boat is hauled for the job unless the source says so. */
const inDollars = { priceList: 'invented-dollar', labourRates: 'invented-dollar' } as const;

const FINISH = [
  'finish-set-up',
  'strip-covering',
  'sand-old-finish',
  'skim-fair',
  'prime',
  'mask',
  'topcoat',
  'nonskid',
] as const;
const OVERLAY = ['overlay-off-screwed', 'overlay-scrape-screwed', 'overlay-fill-holes'] as const;
const REFIT = ['refit-fittings', 'refit-second-person', 'final-check', 'clean-up'] as const;

/** What each job was quoted or told for with all or part of its structure. */
const structures: readonly OutsideJob[] = [
  {
    id: 'hardtop-quote-2003',
    title: 'Hardtop of about 15 x 10 ft: take off the top skin, replace all core, laminate anew',
    source: 'JOB-HARDTOP-2003',
    area: { origin: 'stated', m2: 13.94 },
    use: 'held-out',
    record: {
      title: 'Hardtop, whole panel',
      panel: {
        name: 'hardtop',
        outline: rectangle(4572, 3048),
        surface: 'smooth-paint',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 2.5 },
      core: { thicknessMm: 12.7, coreType: 'end-grain-balsa' },
      zones: [
        { id: 'wet', outline: rectangle(2235, 2946, 51, 51), condition: 'wet-rotten' },
        { id: 'bonded', outline: rectangle(2235, 2946, 2286, 51), condition: 'wet-bonded' },
      ],
      evidence: 'opened-and-measured',
      method: { skin: 'relay', core: 'core-cross-linked-foam-80', cutMarginMm: 0 },
      conditions: { shelter: 'shed' },
      crew: { skill: 'professional' },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 0,
        high: 40,
        origin: 'told',
        covers: 'structure only: quote of "less than 40 hours"; paint, haul and tent not mentioned',
        without: ['fair', ...FINISH],
      },
      price: {
        low: 3100,
        high: 3300,
        currency: 'USD',
        year: 2003,
        covers: 'the same quote: 40 h at 65 and 500 to 700 of materials',
        without: ['fair', ...FINISH],
      },
      materialsCost: { low: 500, high: 700, currency: 'USD', year: 2003, covers: 'as quoted, not itemised' },
    },
    supposed: [
      'skins of 3 mm and 2.5 mm, core of 12.7 mm',
      'work in a shed',
      'half of the core rotten and half bonded ("part wet", all removed)',
    ],
    explained: [
      'It is a verbal quote for one flat, bare, well-reached panel, with an unknown outcome; at 2.9 h and 230 dollars a square metre it lies five to six times below every other job on this page and stays an unexplained low outlier.',
    ],
  },
  {
    id: 'small-boat-from-below-2006',
    title: 'About 10 sq ft from below: one side injected, the other cut out in pieces and re-cored',
    source: 'JOB-FROM-BELOW-2006',
    area: { origin: 'stated', m2: 0.93 },
    use: 'held-out',
    record: {
      title: 'Deck replaced from below',
      panel: {
        name: 'deck',
        outline: rectangle(1700, 1000),
        surface: 'painted-nonskid',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 1.5 },
      core: { thicknessMm: 9.5, coreType: 'end-grain-balsa' },
      zones: [{ id: 'wet', outline: rectangle(1220, 762, 240, 119), condition: 'wet-rotten' }],
      evidence: 'opened-and-measured',
      method: { skin: 're-bed', access: 'from-below', cutMarginMm: 0 },
      conditions: { shelter: 'open' },
      crew: {
        skill: 'professional',
        labour: 'owner',
        people: 1,
        hoursPerDay: 4,
        workingDays: ['sat', 'sun'],
      },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 40,
        high: 50,
        origin: 'told',
        covers:
          'the whole job as told, without protection and the hunt for the leak; the author did not track time carefully',
        without: ['inspect-map', 'protect'],
      },
      materialsCost: { low: 300, high: 300, currency: 'USD', year: 2006, covers: 'all supplies' },
    },
    supposed: [
      'skins of 3 mm and 1.5 mm, core of 9.5 mm',
      'all of the 10 sq ft replaced, although one side was only injected',
      'no refinishing',
      'the pace of a practised hand: the source does not tell of a first job',
    ],
    explained: [
      'Goods: ours buys whole packs and what outlasts the job, a mask, goggles, props, a set of pumps, for an owner who has none of it; of 300 for all supplies that leaves room for glass, core and resin only.',
    ],
  },
  {
    id: 'section-quote-2006',
    title: 'Yard quote for 32 sq ft of deck with its finish',
    source: 'JOB-SECTION-2006',
    area: { origin: 'stated', m2: 2.97 },
    use: 'fitted',
    record: {
      title: 'Section of deck, 32 sq ft',
      panel: {
        name: 'deck',
        outline: rectangle(2500, 1600),
        surface: 'painted-nonskid',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 2 },
      core: { thicknessMm: 12.7, coreType: 'end-grain-balsa' },
      zones: [{ id: 'section', outline: rectangle(2180, 1362, 160, 119), condition: 'wet-rotten' }],
      fittings: [400, 800, 1200, 1600, 2000, 2250].map((x, index) => ({
        id: `F${index + 1}`,
        kind: 'cleat' as const,
        at: [x, 240] as const,
        holes: 4,
        holeDiameterMm: 8,
        baseMm: 80,
      })),
      evidence: 'opened-and-measured',
      method: { skin: 'relay', cutMarginMm: 0 },
      conditions: { shelter: 'shed' },
      crew: { skill: 'professional' },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 76,
        high: 105,
        origin: 'derived',
        covers: 'from the price at 65 to 90 an hour and 15 % of materials',
      },
      price: { low: 8000, high: 8000, currency: 'USD', year: 2006, covers: 'the quote, with finish' },
    },
    supposed: [
      'skins, core of 12.7 mm',
      'six fittings of four bolts',
      'a panel of 4 m2 that is painted',
      'a shed',
    ],
    explained: [],
  },
  {
    id: 'side-deck-2009',
    title: 'Starboard side deck of a 27-ft sloop re-cored by a yard, ready for paint',
    source: 'JOB-SIDE-DECK-2009',
    area: { origin: 'bracketed', m2: 1.76, low: 1.4, high: 2.2 },
    use: 'fitted',
    record: {
      title: 'Starboard side deck',
      panel: {
        name: 'side deck',
        outline: rectangle(4700, 480),
        surface: 'painted-nonskid',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 1.5 },
      core: { thicknessMm: 9.5, coreType: 'end-grain-balsa' },
      zones: [{ id: 'run', outline: rectangle(4400, 400, 150, 40), condition: 'wet-rotten' }],
      evidence: 'opened-and-measured',
      method: { skin: 'relay', cutMarginMm: 0 },
      conditions: { shelter: 'shed' },
      crew: { skill: 'professional', people: 1 },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 45,
        high: 45,
        origin: 'told',
        covers: 'hours so far, all but the paint',
        without: [...FINISH, ...REFIT],
      },
      materialsCost: {
        low: 600,
        high: 600,
        currency: 'CAD',
        year: 2009,
        covers: 'core, epoxy, glass, barrier primer',
        onlyOf: [
          'core-',
          'resin',
          'hardener',
          'filler-',
          'fabric-',
          'coating-fairing',
          'coating-epoxy-primer',
        ],
      },
      days: {
        low: 21,
        high: 30,
        covers: 'early to end of October, ready for paint',
        upTo: 'check-before-paint',
      },
    },
    supposed: ['4.4 x 0.4 m', 'skins of 3 mm and 1.5 mm, core of 9.5 mm', 'a shed, one man'],
    explained: [
      'Days: ours end with the last check before paint; theirs were four weeks of a yard with other work.',
    ],
  },
  {
    id: 'whole-deck-quotes-2004',
    title: 'Foredeck, side decks, cabin top and sole of a 27-ft sloop: several quotes on one survey',
    source: 'JOB-QUOTES-2004',
    area: { origin: 'stated', m2: 5.57 },
    use: 'fitted',
    record: {
      title: 'Decks of a 27-ft sloop',
      panel: {
        name: 'decks',
        outline: rectangle(5200, 2300),
        surface: 'painted-nonskid',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 2 },
      core: { thicknessMm: 9.5, coreType: 'end-grain-balsa' },
      zones: [
        { id: 'port', outline: rectangle(3100, 400, 200, 100), condition: 'wet-rotten' },
        { id: 'starboard', outline: rectangle(3100, 400, 200, 1800), condition: 'wet-rotten' },
        { id: 'foredeck', outline: rectangle(1400, 1800, 3600, 250), condition: 'wet-rotten' },
        { id: 'cabin', outline: rectangle(800, 710, 1200, 800), condition: 'wet-rotten' },
      ],
      fittings: [600, 1300, 2000, 2700].flatMap((x, index) => [
        {
          id: `P${index + 1}`,
          kind: 'stanchion' as const,
          at: [x, 200] as const,
          holes: 4,
          holeDiameterMm: 8,
          baseMm: 80,
        },
        {
          id: `S${index + 1}`,
          kind: 'stanchion' as const,
          at: [x, 2100] as const,
          holes: 4,
          holeDiameterMm: 8,
          baseMm: 80,
        },
      ]),
      evidence: 'opened-and-measured',
      method: { skin: 'relay', cutMarginMm: 0 },
      conditions: { shelter: 'shed' },
      crew: { skill: 'professional', people: 1 },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 155,
        high: 195,
        origin: 'derived',
        covers: 'from the several quotes of 12,000 to 15,000 at 65 an hour and 15 % of materials',
      },
      price: {
        low: 12_000,
        high: 15_000,
        currency: 'CAD',
        year: 2004,
        covers: 'where several quotes lay; the lowest was 5,000 and the highest 30,000',
      },
      days: {
        low: 76,
        high: 104,
        covers: 'from the first cut to nonskid and to deck gear, a small shop with the owner',
      },
    },
    supposed: [
      'four areas that make up 60 sq ft, in a deck of 12 m2 that is painted',
      'skins of 3 mm and 2 mm, core of 9.5 mm',
      'eight stanchions',
      'a shed, one man',
    ],
    explained: ['Days: a small shop and the owner at weekends, with other work between.'],
  },
  {
    id: 'sole-2010',
    title: 'Cockpit sole re-cored by a yard in a heated hall',
    source: 'JOB-SOLE-2010',
    area: { origin: 'bracketed', m2: 1.22, low: 1, high: 1.5 },
    use: 'fitted',
    record: {
      title: 'Cockpit sole',
      panel: {
        name: 'cockpit sole',
        outline: rectangle(1800, 800),
        surface: 'painted-nonskid',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 2 },
      core: { thicknessMm: 12.7, coreType: 'marine-plywood' },
      zones: [{ id: 'sole', outline: rectangle(1740, 700, 30, 50), condition: 'wet-rotten' }],
      evidence: 'opened-and-measured',
      method: { skin: 'relay', cutMarginMm: 0 },
      conditions: { shelter: 'shed' },
      crew: { skill: 'professional', people: 1 },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 28,
        high: 34,
        origin: 'derived',
        covers: 'from the price at 75 to 80 an hour and 15 % of materials',
      },
      price: { low: 2700, high: 2700, currency: 'USD', year: 2010, covers: 'the whole job, about' },
    },
    supposed: [
      '1.74 x 0.7 m',
      'skins and core',
      'the sole painted with nonskid',
      'the pedestal stayed in place',
    ],
    explained: [
      "The area is a reader's bracket: at 1 m2, its lower end, ours would be about 38 h.",
      'Ours grooves and tapes the joints of a plywood core, an hour that no bill names: without it our P10 was 34 h, and the told 34 h lay just inside.',
    ],
  },
  {
    id: 'square-foot-rule',
    title: "A practitioner's rule for a square foot of core from outside, without finish",
    source: 'JOB-SQUARE-FOOT-RULE',
    area: { origin: 'bracketed', m2: 0.305, low: 0.093, high: 1 },
    use: 'held-out',
    record: patchOfAFoot('Three square feet and a bit', {
      panel: { name: 'deck', outline: rectangle(1200, 1200), surface: 'smooth-paint', accessBelow: 'open' },
      zones: [{ id: 'patch', outline: rectangle(552, 552, 324, 324), condition: 'wet-rotten' }],
    }),
    reported: {
      labourH: {
        low: 13.1,
        high: 13.1,
        origin: 'told',
        covers: '4 h a square foot at a shop, no finish work',
        without: [...FINISH],
      },
    },
    supposed: [
      'a rule for any area is taken at the middle between a square foot and a square metre',
      'skins of 3 mm and 2 mm, core of 12.7 mm',
    ],
    explained: [
      'The price of the rule, 300 a square foot, has no year and is not compared; 280 of it is the 4 h at 70.',
    ],
  },
  {
    id: 'patch-opinion-2013',
    title: 'A springy patch of 12 x 12 in behind a windlass: what it would take',
    source: 'JOB-PATCH-2013',
    area: { origin: 'stated', m2: 0.093 },
    use: 'fitted',
    record: patchOfAFoot('Patch behind a windlass', {}),
    reported: {
      labourH: {
        low: 0,
        high: 8,
        origin: 'told',
        covers: 'structure: not more than a day for a laminator, as an opinion',
        without: [...FINISH],
      },
      days: { low: 1, high: 2, covers: 'structure, opinion', upTo: 'laminate-extra-ply' },
    },
    supposed: ['skins of 3 mm and 2 mm, core of 12.7 mm', 'a shed'],
    explained: [
      'Days: an opinion for bare structure; ours dries the opened deck and lets the core cure before the skin goes on, and counts the days on which nobody comes.',
    ],
  },
  {
    id: 'mast-step-2014',
    title: 'Sagging mast step of a 20-ft sloop: a quote',
    source: 'JOB-MAST-STEP-2014',
    area: { origin: 'bracketed', m2: 0.087, low: 0.05, high: 0.15 },
    use: 'fitted',
    record: {
      ...patchOfAFoot('Mast step', {}),
      fittings: [{ id: 'step', kind: 'mast-step', at: [500, 500], holes: 4, holeDiameterMm: 8, baseMm: 120 }],
    },
    reported: {
      labourH: {
        low: 9,
        high: 13,
        origin: 'derived',
        covers: 'from the price at 65 to 95 an hour and 15 % of materials',
      },
      price: {
        low: 1000,
        high: 1000,
        currency: 'USD',
        year: 2014,
        covers: 'the quote; its scope is not told',
      },
    },
    supposed: [
      'a patch of a square foot under the step',
      'the mast out already',
      'touched up, not repainted',
    ],
    explained: [],
  },
  {
    id: 'mast-step-2000',
    title: 'Mast step of a 30-ft sloop: skin off over 6 x 6 in, plywood dried, glassed and matched',
    source: 'JOB-MAST-STEP-2000',
    area: { origin: 'stated', m2: 0.0232 },
    use: 'held-out',
    record: {
      title: 'Six inches square under a mast step',
      panel: {
        name: 'coachroof',
        outline: rectangle(900, 700),
        surface: 'smooth-paint',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 2 },
      core: { thicknessMm: 12.7, coreType: 'marine-plywood' },
      zones: [{ id: 'step', outline: rectangle(152, 152, 374, 274), condition: 'wet-bonded' }],
      evidence: 'opened-and-measured',
      method: {
        skin: 'relay',
        finish: 'patch',
        cutMarginMm: 0,
        finishIn: 'gelcoat',
        resin: 'resin-polyester-laminating',
      },
      conditions: { shelter: 'shed' },
      crew: { skill: 'professional', people: 1 },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 2,
        high: 4,
        origin: 'derived',
        covers: 'from the price at 50 an hour and 15 % of materials; no core was taken out',
        without: [
          'core-out-bonded',
          'ream-lip',
          'grind-inner',
          'fit-core',
          'bed-core',
          'check-bond',
          'set-inserts',
        ],
      },
      price: {
        low: 200,
        high: 200,
        currency: 'USD',
        year: 2000,
        covers: 'by an independent, about; the mast was out; no core was taken out',
        without: [
          'core-out-bonded',
          'ream-lip',
          'grind-inner',
          'fit-core',
          'bed-core',
          'check-bond',
          'set-inserts',
        ],
      },
      days: { low: 5, high: 5, covers: 'three days of drying, glass, colour' },
    },
    supposed: [
      'skins of 3 mm and 2 mm, core of 12.7 mm',
      'work under a roof',
      'the year by context',
      'glassed in polyester and matched in gelcoat: the source names neither, and over epoxy gelcoat does not go on within five days',
    ],
    explained: [
      'The lowest price in print: an independent who came by for five short visits. Ours maps, isolates, props and checks, takes an hour to get ready for the finish, and pays the yard for the environment and the current.',
    ],
  },
  {
    id: 'two-owners-2012',
    title: 'Port deck re-cored afloat by two owners in three afternoons',
    source: 'JOB-TWO-OWNERS-2012',
    area: { origin: 'bracketed', m2: 1.22, low: 1, high: 1.5 },
    use: 'held-out',
    record: {
      title: 'Port side deck',
      panel: {
        name: 'side deck',
        outline: rectangle(3400, 480),
        surface: 'painted-nonskid',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 1.5 },
      core: { thicknessMm: 12.7, coreType: 'end-grain-balsa' },
      zones: [{ id: 'run', outline: rectangle(3050, 400, 175, 40), condition: 'wet-rotten' }],
      evidence: 'opened-and-measured',
      method: { skin: 're-bed', cutMarginMm: 0 },
      conditions: { shelter: 'open', place: 'afloat' },
      crew: { skill: 'professional', labour: 'owner', people: 2, hoursPerDay: 4.5 },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 24,
        high: 30,
        origin: 'told',
        covers:
          'to skinned: two people, nearly three full afternoons of 4 to 5 h; sanding and paint come after',
        without: ['fair', 'check-before-paint', ...FINISH, ...REFIT],
      },
    },
    supposed: [
      '3.05 x 0.4 m: at most half of a sheet bought for both sides',
      'the skin bedded back',
      'in the open; the pace of a practised hand: the source does not tell of a first job',
    ],
    explained: ['The area may be less than the bracket: it is the most that half of a sheet gives.'],
  },
  {
    id: 'chainplates-2022',
    title: 'Side deck at the chainplates of a 34-ft sloop: opened, re-cored, skin bedded back',
    source: 'JOB-CHAINPLATES-2022',
    area: { origin: 'bracketed', m2: 0.53, low: 0.35, high: 0.8 },
    use: 'held-out',
    record: {
      title: 'Side deck at the chainplates',
      panel: {
        name: 'side deck',
        outline: rectangle(2000, 520),
        surface: 'moulded-nonskid',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 4 },
      innerSkin: { thicknessMm: 2 },
      core: { thicknessMm: 12.7, coreType: 'marine-plywood' },
      zones: [{ id: 'plates', outline: rectangle(1325, 400, 340, 60), condition: 'wet-rotten' }],
      evidence: 'opened-and-measured',
      method: { skin: 're-bed', cutMarginMm: 0 },
      conditions: { shelter: 'open' },
      crew: { skill: 'professional', labour: 'owner', people: 1, hoursPerDay: 7.5 },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 18,
        high: 23,
        origin: 'told',
        covers:
          'three logged days: opening, core and skin, glass in the gaps; 23 with a window and a mould of the nonskid',
        without: ['inspect-map', 'fair', 'check-before-paint', ...FINISH, ...REFIT],
      },
      days: { low: 3, high: 6, covers: 'to the gaps glassed', upTo: 'close-seam' },
    },
    supposed: [
      '1.3 x 0.4 m: a reader took 0.35 to 0.8 m2 from 4 sand bags on the core and 14 on the skin',
      'skins of 4 mm and 2 mm',
      'the pace of a practised hand: the source does not tell of a first job',
    ],
    explained: [
      'Days: the owner closed the deck within a week in the open; ours waits for the opened edges of plywood to dry, four to five days at the likely value without a roof, and for a crew that does not come every day; of part of a job only the mean share of its days is known here, so the range is too narrow.',
    ],
  },
  {
    id: 'stanchion-2014',
    title: 'One stanchion: core raked out through the holes, dried, filled and redrilled',
    source: 'JOB-STANCHION-2014',
    area: { origin: 'bracketed', m2: 0.014, low: 0.01, high: 0.02 },
    use: 'held-out',
    record: {
      title: 'One stanchion',
      panel: {
        name: 'side deck',
        outline: rectangle(2400, 420),
        surface: 'painted-nonskid',
        accessBelow: 'open',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 2 },
      core: { thicknessMm: 12.7, coreType: 'end-grain-balsa' },
      zones: [],
      survey: { readings: [{ kind: 'plug', at: [1200, 330], condition: 'wet-bonded' }] },
      fittings: [
        {
          id: 'stanchion',
          kind: 'stanchion',
          at: [1200, 340],
          holes: 4,
          holeDiameterMm: 6.5,
          baseMm: 75,
          isLeaking: true,
          wetReachMm: 20,
        },
      ],
      method: { rung: 'ream-and-pot' },
      crew: { skill: 'professional', labour: 'owner', people: 1, hoursPerDay: 4 },
      pricing: inDollars,
    },
    reported: {
      labourH: {
        low: 3,
        high: 5,
        origin: 'told',
        covers: 'much of one afternoon of digging and a short visit to fill and redrill, by a reader',
      },
      days: { low: 3, high: 6, covers: 'a few days to dry, then filled', upTo: 'spot-redrill' },
    },
    supposed: [
      'four holes; rot under one base',
      'the pace of a practised hand: the source does not tell of a first job',
    ],
    explained: [],
  },
];

/** A patch of a square foot in the middle of a square metre, touched up and not repainted. */
function patchOfAFoot(title: string, changes: Partial<DefectRecord>): DefectRecord {
  return {
    title,
    panel: { name: 'deck', outline: rectangle(1000, 1000), surface: 'smooth-paint', accessBelow: 'open' },
    outerSkin: { thicknessMm: 3 },
    innerSkin: { thicknessMm: 2 },
    core: { thicknessMm: 12.7, coreType: 'end-grain-balsa' },
    zones: [{ id: 'patch', outline: rectangle(305, 305, 347, 347), condition: 'wet-rotten' }],
    evidence: 'opened-and-measured',
    method: { skin: 'relay', finish: 'patch', cutMarginMm: 0 },
    conditions: { shelter: 'shed' },
    crew: { skill: 'professional', people: 1 },
    pricing: inDollars,
    ...changes,
  };
}

/** Finish by itself: the core of these decks is not told, and only hours of the finish are compared. */
const finishes: readonly OutsideJob[] = [
  {
    id: 'deck-log-2023',
    title: 'Deck of a 35-ft sloop from sanding off to nonskid, hours by day',
    source: 'JOB-DECK-LOG-2023',
    area: { origin: 'bracketed', m2: 26, low: 24, high: 28 },
    use: 'fitted',
    record: wholeDeck('Deck of a 35-ft sloop', 26, { surface: 'painted-nonskid' }),
    reported: {
      labourH: {
        low: 111,
        high: 125,
        origin: 'told',
        covers:
          '66 to 70 h from primer to nonskid, three of the days not read, and 45 to 55 h of sanding and fairing before',
        only: [...FINISH],
      },
    },
    supposed: ['26 m2 painted', 'a heated shop, sprayed'],
    explained: [],
  },
  {
    id: 'covering-2018',
    title: 'Covering off the decks of a 49-ft boat, holes filled, coats and two of nonskid',
    source: 'JOB-COVERING-2018',
    area: { origin: 'bracketed', m2: 35, low: 30, high: 40 },
    use: 'fitted',
    record: wholeDeck('Decks of a 49-ft boat', 35, {
      surface: 'planked',
      overlay: { kind: 'screwed-planks', thicknessMm: 12, then: 'paint' },
    }),
    reported: {
      labourH: {
        low: 280,
        high: 280,
        origin: 'told',
        covers: 'owner 70 h and shipwright 210 h',
        only: [...FINISH, ...OVERLAY],
      },
    },
    supposed: ['35 m2 painted', 'a shed'],
    explained: [],
  },
];

function wholeDeck(title: string, areaM2: number, panel: Partial<DefectRecord['panel']>): DefectRecord {
  return {
    title,
    panel: { name: 'deck', outline: rectangle(2500, 1600), accessBelow: 'open', ...panel },
    outerSkin: { thicknessMm: 3 },
    innerSkin: { thicknessMm: 2 },
    core: { thicknessMm: 12.7, coreType: 'end-grain-balsa' },
    zones: [{ id: 'one', outline: rectangle(600, 400, 900, 600), condition: 'wet-rotten' }],
    evidence: 'opened-and-measured',
    method: { skin: 'relay', finish: 'whole-deck', wholeDeckAreaM2: areaM2 },
    conditions: { shelter: 'shed' },
    crew: { skill: 'professional', people: 1 },
    pricing: inDollars,
  };
}

/** Told without hours and without a price: sheets, days, growth. */
const besides: readonly OutsideJob[] = [
  {
    id: 'side-deck-strip-2015',
    title: 'Side-deck strip of 6 ft x 12 in: balsa out, foam in, new top laminate',
    source: 'JOB-STRIP-2015',
    area: { origin: 'stated', m2: 0.56 },
    use: 'held-out',
    record: {
      title: 'Side-deck strip',
      panel: {
        name: 'side deck',
        outline: rectangle(2600, 420),
        surface: 'painted-nonskid',
        accessBelow: 'lined',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 1.5 },
      core: { thicknessMm: 6.35, coreType: 'end-grain-balsa' },
      zones: [{ id: 'strip', outline: rectangle(1829, 305, 380, 57), condition: 'wet-rotten' }],
      fittings: [
        { id: 'stanchion', kind: 'stanchion', at: [1300, 360], holes: 4, holeDiameterMm: 8, baseMm: 90 },
      ],
      evidence: 'opened-and-measured',
      method: { skin: 'relay', core: 'core-cross-linked-foam-80', cutMarginMm: 0 },
      crew: {
        skill: 'professional',
        labour: 'owner',
        people: 2,
        hoursPerDay: 3,
        workingDays: ['sat', 'sun', 'wed'],
      },
      pricing: inDollars,
    },
    reported: {
      coreSheets: { count: 1, covers: 'one whole foam sheet, cut by the supplier into pieces of 2 x 4 ft' },
      days: {
        low: 14,
        high: 28,
        covers:
          'to the core bedded on evenings and weekends: four weeks from the first sample cuts, two from the deck opened',
        upTo: 'bed-core',
      },
    },
    supposed: [
      'skins of 3 mm and 1.5 mm',
      'a side deck 420 mm wide',
      'two people, three short sessions a week',
    ],
    explained: [
      'One whole sheet was cut up for them; the shipped list has small sheets at less than half the price of a large one, and two of them hold the strip.',
    ],
  },
  {
    id: 'side-decks-26-ft-2006',
    title: 'Both side decks of a 26-ft sloop: foam in, skin re-used',
    source: 'JOB-SIDE-DECKS-2006',
    area: { origin: 'stated', m2: 4.27 },
    use: 'held-out',
    record: {
      title: 'Side deck, one of two alike',
      panel: {
        name: 'side deck',
        outline: rectangle(4700, 500),
        surface: 'painted-nonskid',
        accessBelow: 'lined',
      },
      outerSkin: { thicknessMm: 3 },
      innerSkin: { thicknessMm: 1.5 },
      core: { thicknessMm: 9.5, coreType: 'end-grain-balsa' },
      zones: [{ id: 'run', outline: rectangle(4400, 390, 150, 55), condition: 'wet-rotten' }],
      evidence: 'opened-and-measured',
      method: { skin: 're-bed', core: 'core-cross-linked-foam-80', cutMarginMm: 0 },
      crew: { skill: 'owner', people: 1, hoursPerDay: 6, workingDays: ['sat', 'sun'] },
      pricing: inDollars,
    },
    reported: {
      coreSheets: {
        count: 3,
        covers: 'half of the six sheets of 23 x 48 in bought for both decks (an upper bound of the area)',
      },
      days: { low: 120, high: 180, covers: 'one summer of spare time for both decks, not finished' },
    },
    supposed: [
      'one deck of 4.4 m x 0.39 m, so that both use at most the core bought',
      'skins of 3 mm and 1.5 mm',
      'a first job: resin poured by eye, tape with air under it, a soft spot missed',
    ],
    explained: [
      'Sheets of 23 x 48 in came in threes for each deck; ours buys one sheet of 2440 x 1220 mm, which is 1.4 times the area of three small ones at less than their price.',
      'The season went into both decks and was not enough to finish.',
    ],
  },
  {
    id: 'foredeck-growth',
    title: 'Foredeck surveyed from the bow to aft of the windlass; opened, it was more',
    source: 'JOB-FOREDECK-GROWTH',
    area: { origin: 'stated', m2: 2.04 },
    use: 'held-out',
    record: {
      title: 'Foredeck as surveyed',
      panel: {
        name: 'foredeck',
        outline: [
          [0, -1000],
          [2600, -350],
          [2600, 350],
          [0, 1000],
        ],
        surface: 'painted-nonskid',
        accessBelow: 'lined',
      },
      outerSkin: { thicknessMm: 4 },
      innerSkin: { thicknessMm: 2.5 },
      core: { thicknessMm: 12.7, coreType: 'end-grain-balsa' },
      zones: [
        {
          id: 'surveyed',
          outline: [
            [600, -720],
            [2400, -330],
            [2400, 330],
            [600, 720],
          ],
          condition: 'wet-rotten',
        },
      ],
      evidence: 'sounded-and-metered',
      method: { skin: 're-bed', cutMarginMm: 0 },
      conditions: { shelter: 'shed' },
      pricing: inDollars,
    },
    reported: {
      growth: { low: 1.18, high: 1.41, covers: 'area found over area surveyed: 22 sq ft grew to 26 to 31' },
    },
    supposed: ['shape and thicknesses; the source gives areas only'],
    explained: [],
  },
];

export const outsideJobs: readonly OutsideJob[] = [...structures, ...finishes, ...besides];
