import type { Cite } from '#lib/provenance';
import { fromMemory } from '../cites.js';
import { inPrint } from '../tests.js';

export type SealantKind = 'butyl-tape' | 'polysulphide' | 'polyurethane';

/** How the plate under a fitting is sized. */
export type PlateRule = 'twice-the-base' | 'base-and-margin' | 'round-base-and-margin' | 'strip' | 'none';

/** What a yard takes for a kind of fitting until somebody measures the one on the deck. */
export interface UsualCard {
  readonly fasteners: number;
  readonly fastenerMm: number;
  readonly baseMm: number;
  /** Across a long, narrow base; absent where it is about as wide as long. */
  readonly baseWidthMm?: number;
  /** Solid beyond the base, all round; 0 is a plug round each bolt. */
  readonly insertBeyondBaseMm: number;
  readonly plugOverBoltMm: number;
  readonly plate: PlateRule;
  readonly plateMarginMm: number;
  readonly plateMm: number;
  readonly sealant: SealantKind;
  readonly sealantMl: number;
  /** Fasteners, sealant and hours are those of a metre of it. */
  readonly isByMetre?: boolean;
  readonly offH: { readonly low: number; readonly likely: number; readonly high: number };
  readonly onH: { readonly low: number; readonly likely: number; readonly high: number };
  readonly needsSecondPerson: boolean;
  readonly isWood: boolean;
  readonly note?: string;
  readonly cite: Cite;
}

const usual = (
  given: Partial<UsualCard> &
    Pick<UsualCard, 'fasteners' | 'fastenerMm' | 'baseMm' | 'sealantMl' | 'offH' | 'onH'>,
): UsualCard => ({
  insertBeyondBaseMm: 0,
  plugOverBoltMm: 25,
  plate: 'base-and-margin',
  plateMarginMm: 12,
  plateMm: 6,
  sealant: 'butyl-tape',
  needsSecondPerson: true,
  isWood: false,
  cite: fromMemory,
  ...given,
});

/** Half to twice the likely hours: nobody knows how the nuts sit before they are turned. Source: [FROM-MEMORY]. */
export const aboutHours = (likely: number): UsualCard['offH'] => ({
  low: likely / 2,
  likely,
  high: likely * 2,
});
const h = aboutHours;

/** Counts and sizes by kind of fitting; from memory unless a citation says otherwise. */
export const usualCards: Readonly<Record<string, UsualCard>> = {
  'stanchion': usual({
    fasteners: 4,
    fastenerMm: 6.35,
    baseMm: 75,
    insertBeyondBaseMm: 25,
    plate: 'twice-the-base',
    sealantMl: 45,
    offH: h(0.5),
    onH: h(1),
    cite: inPrint,
  }),
  'cleat': usual({
    fasteners: 4,
    fastenerMm: 7.94,
    baseMm: 200,
    baseWidthMm: 60,
    insertBeyondBaseMm: 40,
    plugOverBoltMm: 38,
    plateMarginMm: 25,
    plateMm: 10,
    sealantMl: 50,
    offH: h(0.5),
    onH: h(1.5),
  }),
  'winch': usual({
    fasteners: 5,
    fastenerMm: 6.35,
    baseMm: 148,
    insertBeyondBaseMm: 25,
    plugOverBoltMm: 38,
    plate: 'round-base-and-margin',
    plateMm: 6,
    sealantMl: 60,
    offH: h(1),
    onH: h(2.5),
  }),
  'windlass': usual({
    fasteners: 4,
    fastenerMm: 9.525,
    baseMm: 260,
    insertBeyondBaseMm: 50,
    plugOverBoltMm: 38,
    plateMarginMm: 25,
    plateMm: 12,
    sealantMl: 125,
    offH: h(2),
    onH: h(7),
    cite: inPrint,
    note: 'check before the deck is closed that every bolt can be put in: the drum may stand over two of them; 300 mm of fall are wanted under it',
  }),
  'chainplate': usual({
    fasteners: 5,
    fastenerMm: 5,
    baseMm: 120,
    baseWidthMm: 50,
    insertBeyondBaseMm: 25,
    plate: 'none',
    plateMm: 0,
    sealant: 'polysulphide',
    sealantMl: 60,
    offH: h(1),
    onH: h(2.5),
    note: 'fill a block under the cover and cut the slot anew; 3 to 12 mm round the plate for a sealant that flexes',
  }),
  'mast-step': usual({
    fasteners: 5,
    fastenerMm: 9.525,
    baseMm: 250,
    insertBeyondBaseMm: 50,
    plate: 'none',
    plateMm: 0,
    sealantMl: 60,
    offH: h(0.5),
    onH: h(1),
    note: 'the mast is out already: taking it down and stepping it again is no part of these hours',
  }),
  'track': usual({
    fasteners: 10,
    fastenerMm: 7.94,
    baseMm: 1000,
    baseWidthMm: 35,
    insertBeyondBaseMm: 20,
    plate: 'strip',
    plateMarginMm: 10,
    plateMm: 6,
    sealantMl: 150,
    isByMetre: true,
    offH: h(0.5),
    onH: h(1.2),
    note: 'solid strip 75 mm wide under it, hours for each metre',
  }),
  'hatch': usual({
    fasteners: 16,
    fastenerMm: 5,
    baseMm: 500,
    plugOverBoltMm: 12,
    plate: 'none',
    plateMm: 0,
    sealant: 'polyurethane',
    sealantMl: 125,
    offH: h(1.5),
    onH: h(3),
    needsSecondPerson: false,
    cite: inPrint,
    note: 'a solid ring of 12 mm or more round the opening; shim flat within 1 mm',
  }),
  'fill': usual({
    fasteners: 3,
    fastenerMm: 4.8,
    baseMm: 90,
    insertBeyondBaseMm: 25,
    plate: 'none',
    plateMm: 0,
    sealant: 'polysulphide',
    sealantMl: 30,
    offH: h(0.5),
    onH: h(1),
    needsSecondPerson: false,
    cite: inPrint,
  }),
  'vent': usual({
    fasteners: 4,
    fastenerMm: 4.8,
    baseMm: 150,
    plugOverBoltMm: 12,
    plate: 'none',
    plateMm: 0,
    sealantMl: 40,
    offH: h(0.4),
    onH: h(0.8),
    needsSecondPerson: false,
  }),
  'pad-eye': usual({
    fasteners: 4,
    fastenerMm: 7.94,
    baseMm: 80,
    insertBeyondBaseMm: 40,
    plateMm: 6,
    sealantMl: 25,
    offH: h(0.3),
    onH: h(0.8),
  }),
  'other': usual({
    fasteners: 4,
    fastenerMm: 6.35,
    baseMm: 80,
    plate: 'none',
    plateMm: 0,
    sealantMl: 30,
    offH: h(0.5),
    onH: h(1),
  }),
};
