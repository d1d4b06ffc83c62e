import type { DefectRecord } from '#lib/estimate';

/** One job that somebody else did or quoted, as they reported it, restated as a record we can estimate. */
export interface OutsideJob {
  readonly id: string;
  readonly title: string;
  /** Key in `libs/catalogue/data/sources/`. */
  readonly source: string;
  readonly record: DefectRecord;
  readonly reported: Reported;
  /** What the source does not say and the record had to suppose. */
  readonly supposed: readonly string[];
  /** Why the reported figure and ours differ, when they do; written after the run, tuned to nothing. */
  readonly explained: readonly string[];
}

/** As printed; absent where the source gives none. Money in the currency and year of the source, never converted. */
export interface Reported {
  /** `without` names the operations of ours that the source does not count. */
  readonly labourH?: {
    readonly low: number;
    readonly high: number;
    readonly covers: string;
    readonly without?: readonly string[];
  };
  readonly coreSheets?: { readonly count: number; readonly covers: string };
  readonly materialsCost?: {
    readonly low: number;
    readonly high: number;
    readonly currency: string;
    readonly year: string;
  };
  readonly days?: { readonly count: number; readonly covers: string };
  readonly openedM2?: number;
  readonly growth?: { readonly low: number; readonly high: number; readonly covers: string };
  readonly epoxyLPerM2?: { readonly value: number; readonly covers: string };
}

const rectangle = (lengthMm: number, widthMm: number, fromMm = 0, sideMm = 0) =>
  [
    [fromMm, sideMm],
    [fromMm + lengthMm, sideMm],
    [fromMm + lengthMm, sideMm + widthMm],
    [fromMm, sideMm + widthMm],
  ] as const;

export const outsideJobs: readonly OutsideJob[] = [
  {
    id: 'hardtop-quote-2003',
    title: 'Hardtop of about 15 x 10 ft: take off the top skin, replace all core, laminate anew',
    source: 'JOB-HARDTOP-2003',
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
      zones: [{ id: 'all', outline: rectangle(4470, 2946, 51, 51), condition: 'wet-bonded' }],
      evidence: 'sounded-and-metered',
      method: { skin: 'relay', core: 'core-cross-linked-foam-80', cutMarginMm: 0 },
      conditions: { shelter: 'shed' },
      crew: { skill: 'professional' },
    },
    reported: {
      labourH: {
        low: 0,
        high: 40,
        covers: 'structure only: quote of "less than 40 hours"; paint, haul and tent not mentioned',
        without: ['fair', 'prime', 'mask', 'topcoat'],
      },
      materialsCost: { low: 500, high: 700, currency: 'USD', year: '2003' },
      openedM2: 13.94,
    },
    supposed: [
      'skins of 3 mm and 2.5 mm',
      'core of 12.7 mm',
      'work in a shed',
      'core wet but partly bonded ("part wet", all removed)',
    ],
    explained: [
      'Fairing and paint are left out of our hours, as they are of the quote. The record states bonded core for the whole panel while the source says only part was wet: with rotten, loose core throughout ours would be 154 h (100 to 228), still well above the quote.',
      'It is a verbal quote for one flat, bare, well-reached panel, with an unknown outcome, and a twelvefold span of price per area is published for like work; it stays an unexplained low outlier.',
      'Prices are of 2003 in dollars and are not compared with an invented list.',
    ],
  },
  {
    id: 'small-boat-from-below-2006',
    title: 'About 10 sq ft from below: one side injected, the other cut out in pieces and re-cored',
    source: 'JOB-FROM-BELOW-2006',
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
      evidence: 'sounded-and-metered',
      method: { skin: 're-bed', access: 'from-below', cutMarginMm: 0 },
      conditions: { shelter: 'open' },
      crew: { skill: 'owner', people: 1, hoursPerDay: 4, workingDays: ['sat', 'sun'] },
    },
    reported: {
      labourH: {
        low: 40,
        high: 50,
        covers:
          'the whole job as told, without protection and the hunt for the leak; the author did not track time carefully',
        without: ['inspect-map', 'protect'],
      },
      materialsCost: { low: 300, high: 300, currency: 'USD', year: '2006' },
      openedM2: 0.93,
    },
    supposed: [
      'skins of 3 mm and 1.5 mm, core of 9.5 mm',
      'all of the 10 sq ft replaced, although one side was only injected',
      'no refinishing',
    ],
    explained: [
      'One side was dry and was only injected; the record replaces core under all of the 10 sq ft. With half of it replaced ours would be 79 h (43 to 136), and the reported hours would lie inside.',
      'Our hours multiply a factor for overhead work (2.1) by one for an owner doing it for the first time (2). The source does not say whether it was the first time; at the pace of a practised hand ours would be 50 h (32 to 76) for all of the area. The two factors may overlap: no published job separates them, so neither was changed.',
      "The daily set-up is not multiplied by the owner's factor, because its rate was told by owners in the first place.",
      'The author says the time was not carefully tracked and counts neither protection nor the hunt for the leak.',
    ],
  },
  {
    id: 'side-deck-strip-2015',
    title: 'Side-deck strip of 6 ft x 12 in: balsa out, foam in, new top laminate',
    source: 'JOB-STRIP-2015',
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
      evidence: 'sounded-and-metered',
      method: { skin: 'relay', core: 'core-cross-linked-foam-80', cutMarginMm: 0 },
      crew: { skill: 'owner', people: 2, hoursPerDay: 3, workingDays: ['sat', 'sun', 'wed'] },
    },
    reported: {
      coreSheets: { count: 1, covers: 'one whole foam sheet, cut by the supplier into pieces of 2 x 4 ft' },
      days: { count: 28, covers: 'from sample cuts to core bedded, evenings and weekends' },
      openedM2: 0.56,
    },
    supposed: [
      'skins of 3 mm and 1.5 mm',
      'a side deck 420 mm wide',
      'two people, three short sessions a week',
    ],
    explained: [
      'Sheets agree: one whole sheet for 0.56 m2.',
      'Our calendar runs to a finished, painted deck; the reported 28 days end with the core bedded.',
    ],
  },
  {
    id: 'side-decks-26-ft-2006',
    title: 'Both side decks of a 26-ft sloop: foam in, skin re-used',
    source: 'JOB-SIDE-DECKS-2006',
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
      evidence: 'sounded-and-metered',
      method: { skin: 're-bed', core: 'core-cross-linked-foam-80', cutMarginMm: 0 },
      crew: { skill: 'owner', people: 1, hoursPerDay: 6, workingDays: ['sat', 'sun'] },
    },
    reported: {
      coreSheets: {
        count: 3,
        covers: 'half of the six sheets of 23 x 48 in bought for both decks (an upper bound of the area)',
      },
      days: { count: 120, covers: 'one summer of spare time for both decks, not finished' },
    },
    supposed: [
      'one deck of 4.4 m x 0.39 m, so that both use at most the core bought',
      'skins of 3 mm and 1.5 mm',
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
    },
    reported: {
      growth: { low: 1.18, high: 1.41, covers: 'area found over area surveyed: 22 sq ft grew to 26 to 31' },
    },
    supposed: ['shape and thicknesses; the source gives areas only'],
    explained: ['The reported growth lies inside the range that the evidence grade gives.'],
  },
];
