import { pointer, problem, type Problem } from '#lib/kernel';
import type { Cite } from '#lib/provenance';
import { poursFor } from '../holes.js';
import { aboutHours, usualCards, type SealantKind, type UsualCard } from './cards.js';

/** What the record says of one fitting; anything it leaves out is taken from the kind's card and said so. */
export interface FittingStated {
  readonly id: string;
  readonly kind: string;
  readonly holes?: number;
  readonly holeDiameterMm?: number;
  readonly baseMm?: number;
  readonly boltMm?: number;
  readonly boltLengthMm?: number;
  readonly plateMm?: number;
  readonly plateThicknessMm?: number;
  readonly insertMm?: number;
  /** Hours to take it off and to set it again, where somebody who knows it says so. */
  readonly offH?: number;
  readonly onH?: number;
  readonly isHighlyLoaded: boolean;
}

/** Thickness through which a bolt goes, and what stands between skins. */
export interface DeckStack {
  readonly outerSkinMm: number;
  readonly coreMm: number;
  readonly innerSkinMm: number;
}

export interface Insert {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly material: string;
}

export interface BackingPlate {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly material: string;
  readonly rule: string;
}

/** One fitting: everything that is drilled, filled, bought and tightened. */
export interface FittingCard {
  readonly id: string;
  readonly kind: string;
  readonly fasteners: number;
  readonly fastenerMm: number;
  readonly fastenerLengthMm: number;
  readonly skinHoleMm: number;
  readonly plugMm: number;
  readonly plugMl: number;
  readonly pours: number;
  readonly baseMm: number;
  readonly insert?: Insert;
  /** It stands on a spot that is filled solid: neither insert nor plug is wanted. */
  readonly isOnSolid?: boolean;
  readonly plate?: BackingPlate;
  readonly sealant: { readonly kind: SealantKind; readonly ml: number };
  readonly tightening: string;
  readonly offH: UsualCard['offH'];
  readonly onH: UsualCard['onH'];
  /** The record states the hours to set it again. */
  readonly isTimeStated: boolean;
  readonly needsSecondPerson: boolean;
  readonly referral?: string;
  readonly note?: string;
  /** Fields that the card took from the kind, because the record does not state them. */
  readonly assumed: readonly string[];
  readonly cite: Cite;
}

const MM3_PER_ML = 1000;
const MM_PER_M = 1000;

/** The card of one fitting: the record's own figures, and the kind's where it is silent. */
export function fittingCard(stated: FittingStated, stack: DeckStack): FittingCard {
  const usual = usualCards[stated.kind] ?? usualCards['other'];
  const fastenerMm = stated.boltMm ?? stated.holeDiameterMm ?? usual.fastenerMm;
  const baseMm = stated.baseMm ?? usual.baseMm;
  const widthMm = Math.min(baseMm, usual.baseWidthMm ?? baseMm);
  const plate = plateFor(stated, usual, { fastenerMm, baseMm, widthMm });
  const plugMm = fastenerMm + usual.plugOverBoltMm;
  const plugMl = ((Math.PI / 4) * plugMm ** 2 * stack.coreMm) / MM3_PER_ML;
  const insert = insertFor(stated, usual, { baseMm, widthMm, coreMm: stack.coreMm });
  const metres = usual.isByMetre === true ? baseMm / MM_PER_M : 1;
  return {
    id: stated.id,
    kind: stated.kind,
    fasteners: stated.holes ?? Math.max(2, Math.round(usual.fasteners * metres)),
    fastenerMm,
    fastenerLengthMm: stated.boltLengthMm ?? boltLength(stack, fastenerMm, plate?.thicknessMm ?? 0),
    skinHoleMm: fastenerMm,
    plugMm,
    plugMl,
    pours: poursFor(plugMl, stack.coreMm),
    baseMm,
    ...(insert === undefined ? {} : { insert }),
    ...(plate === undefined ? {} : { plate }),
    sealant: { kind: usual.sealant, ml: usual.sealantMl * metres },
    tightening: tighteningFor(usual.sealant, fastenerMm),
    offH: hoursOf(stated.offH, usual.offH, metres),
    onH: hoursOf(stated.onH, usual.onH, metres),
    isTimeStated: stated.onH !== undefined,
    needsSecondPerson: usual.needsSecondPerson,
    ...(stated.isHighlyLoaded
      ? { referral: 'a naval architect or a qualified surveyor judges bolts, plate and insert' }
      : {}),
    ...(usual.note === undefined ? {} : { note: usual.note }),
    assumed: assumedIn(stated),
    cite: usual.cite,
  };
}

const hoursOf = (statedH: number | undefined, usual: UsualCard['offH'], metres: number): UsualCard['offH'] =>
  aboutHours(statedH ?? usual.likely * metres);

const assumedIn = ({
  holes,
  holeDiameterMm,
  boltMm,
  baseMm,
  boltLengthMm,
  plateMm,
  insertMm,
  offH,
  onH,
}: FittingStated): readonly string[] =>
  Object.entries({
    'number of fasteners': holes,
    'size of fasteners': boltMm ?? holeDiameterMm,
    'size of the base': baseMm,
    'length of fasteners': boltLengthMm,
    'backing plate': plateMm,
    'solid insert': insertMm,
    'hours to take it off': offH,
    'hours to set it again': onH,
  }).flatMap(([name, value]) => (value === undefined ? [name] : []));

/** A flange of the fitting, sealant, washer, nut, and two threads that show. Source: [FROM-MEMORY]. */
const BASE_PLATE_MM = 6;
const WASHER_AND_NUT_DIAMETERS = 1.4;
/** Bolts are sold by the quarter inch or the five millimetres. */
const STEP_MM = 5;

const boltLength = (
  { outerSkinMm, coreMm, innerSkinMm }: DeckStack,
  boltMm: number,
  plateMm: number,
): number =>
  STEP_MM *
  Math.ceil(
    (BASE_PLATE_MM + outerSkinMm + coreMm + innerSkinMm + plateMm + WASHER_AND_NUT_DIAMETERS * boltMm) /
      STEP_MM,
  );

interface Sizes {
  readonly fastenerMm: number;
  readonly baseMm: number;
  readonly widthMm: number;
}

/** Of the bolt, in laminate board. Source: [METHODS-PLATES]. */
const LAMINATE_SHARE = 2 / 3;

/** The plate by the rule of its kind, never smaller than the base; its thickness the more of the kind's and the bolt's. */
function plateFor(
  stated: FittingStated,
  usual: UsualCard,
  { fastenerMm, baseMm, widthMm }: Sizes,
): BackingPlate | undefined {
  const thicknessMm =
    stated.plateThicknessMm ?? Math.max(usual.plateMm, Math.ceil(LAMINATE_SHARE * fastenerMm));
  const sized = (lengthMm: number, widthMm: number, rule: string): BackingPlate => ({
    lengthMm: Math.ceil(lengthMm),
    widthMm: Math.ceil(widthMm),
    thicknessMm,
    material: 'laminate board, corners rounded, edge bevelled',
    rule,
  });
  if (stated.plateMm !== undefined) return sized(stated.plateMm, stated.plateMm, 'as stated in the record');
  switch (usual.plate) {
    case 'none':
      return undefined;
    case 'twice-the-base':
      return sized(
        baseMm * Math.SQRT2,
        baseMm * Math.SQRT2,
        'twice the area of the base, edges not in line with it',
      );
    case 'strip':
      return sized(baseMm + usual.plateMarginMm, 50, 'a strip under the row of bolts');
    case 'base-and-margin':
    case 'round-base-and-margin':
      return sized(
        baseMm + usual.plateMarginMm,
        widthMm + usual.plateMarginMm,
        `the base and ${usual.plateMarginMm} mm, at least ${Math.ceil(5 * fastenerMm)} mm for each bolt`,
      );
  }
}

/** Solid beyond the base, as thick as the core. */
/** The solid under such a fitting by its card; none where a plug round each bolt is enough. */
export function insertUnder(
  kind: string,
  statedBaseMm?: number,
): Pick<Insert, 'lengthMm' | 'widthMm'> | undefined {
  const usual = usualCards[kind] ?? usualCards['other'];
  const baseMm = statedBaseMm ?? usual.baseMm;
  const widthMm = Math.min(baseMm, usual.baseWidthMm ?? baseMm);
  return insertFor({}, usual, { baseMm, widthMm, coreMm: 0 });
}

function insertFor(
  { insertMm }: Pick<FittingStated, 'insertMm'>,
  { insertBeyondBaseMm }: UsualCard,
  { baseMm, widthMm, coreMm }: Omit<Sizes, 'fastenerMm'> & { readonly coreMm: number },
): Insert | undefined {
  if (insertMm === undefined && insertBeyondBaseMm === 0) return undefined;
  return {
    lengthMm: insertMm ?? baseMm + 2 * insertBeyondBaseMm,
    widthMm: insertMm ?? widthMm + 2 * insertBeyondBaseMm,
    thicknessMm: coreMm,
    material: 'solid laminate or laminate board',
  };
}

const tighteningFor = (sealant: SealantKind, boltMm: number): string => {
  const torque = torqueFor(boltMm);
  const how =
    sealant === 'butyl-tape'
      ? 'a little at a time until it stops oozing, hours to weeks'
      : sealant === 'polysulphide'
        ? 'hand-tight wet; after two days the nuts only, the screw held still'
        : 'once, while it is wet';
  return `${how}; at most ${torque.toFixed(1)} N·m, threads greased`;
};

/**
 * Torque of greased 316 bolts at 65 % of yield of the soft grade: 2, 4 and 8 lbf.ft at 1/4, 5/16 and 3/8 in. Tables differ by
 * two to three; the lowest is taken in a cored deck. Between sizes as the cube of the diameter.
 *
 * Source: [METHODS-TORQUE]
 * Worked: libs/methods/src/hardware/schedule.spec.ts
 */
export const torqueFor = (boltMm: number): number => QUARTER_INCH_NM * (boltMm / QUARTER_INCH_MM) ** 3;

const QUARTER_INCH_MM = 6.35;
const QUARTER_INCH_NM = 2.7;

/** What a card says against itself. */
export function cardFaults(stated: FittingStated, at: string): readonly Problem[] {
  const { plateMm, baseMm, insertMm, boltMm, holeDiameterMm } = stated;
  const { baseMm: usualMm } = usualCards[stated.kind] ?? usualCards['other'];
  const base = { statedMm: baseMm, usualMm, kind: stated.kind, at: pointer(at, 'baseMm') };
  return [
    ...smallerThan({
      value: plateMm,
      base,
      at: pointer(at, 'plateMm'),
      what: 'a backing plate',
    }),
    ...smallerThan({
      value: insertMm,
      base,
      at: pointer(at, 'insertMm'),
      what: 'a solid insert',
    }),
    ...(boltMm !== undefined && holeDiameterMm !== undefined && boltMm > holeDiameterMm
      ? [
          problem('contradiction', pointer(at, 'boltMm'), {
            other: pointer(at, 'holeDiameterMm'),
            why: `a bolt of ${boltMm} mm does not go through a hole of ${holeDiameterMm} mm`,
          }),
        ]
      : []),
  ];
}

interface Base {
  readonly statedMm: number | undefined;
  /** Of its kind, which the card takes where the record is silent. */
  readonly usualMm: number;
  readonly kind: string;
  readonly at: string;
}

interface Smaller {
  readonly value: number | undefined;
  readonly base: Base;
  readonly at: string;
  readonly what: string;
}

function smallerThan({ value, base, at, what }: Smaller): readonly Problem[] {
  const { statedMm, usualMm, kind } = base;
  const leastMm = statedMm ?? usualMm;
  if (value === undefined || value >= leastMm) return [];
  const whose = statedMm === undefined ? `the usual base of a ${kind.replace('-', ' ')},` : 'the base of';
  const instead =
    statedMm === undefined ? ', or the base must be stated' : ', 25 mm beyond the base is usual';
  return [
    problem('contradiction', at, {
      other: base.at,
      why: `${what} of ${value} mm is smaller than ${whose} ${leastMm} mm; it must be ${leastMm} mm or more${instead}`,
    }),
  ];
}
