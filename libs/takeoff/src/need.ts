import { pointer, problem, type Problem, type ThreePoint, laidOver } from '#lib/kernel';
import { assumed, entered, type Cite, type Figure } from '#lib/provenance';
import { fraction } from '#lib/units';
import { purchaseFigure, requiredFigure } from './quantities.js';
import { isOrdered } from './three-point.js';

/** Which form of a material a need asks for; packs must agree in every field that is given. */
export interface MaterialVariant {
  /** Code of the material in the catalogue. */
  readonly material: string;
  /** Code of a hardener, where the material is a resin system and its hardener is meant. */
  readonly part?: string;
  /** Thickness of the sheet, for core. */
  readonly thicknessMm?: number;
  /** Plain or scored, for core. */
  readonly form?: 'plain' | 'scored';
  /** Size of the sheet, where it matters. */
  readonly sheet?: {
    /** Length of the sheet that is meant. */
    readonly lengthMm: number;
    /** Width of the sheet that is meant. */
    readonly widthMm: number;
  };
  /** Width of the roll, for fabrics. */
  readonly rollWidthMm?: number;
}

/** One thing the job asks for. A plain number is taken as entered by the caller; a `Figure` keeps its own story. */
export interface NeedRequest extends MaterialVariant {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  /** The step or part of the job it goes into. */
  readonly purpose: string;
  readonly netQuantity: number | Figure;
  /** Least and most of the net quantity, when known. */
  readonly netRange?: { readonly low: number; readonly high: number };
  /** Absent: none is added, and the need says so. */
  readonly wasteFraction?: number | Figure;
  readonly wasteRange?: { readonly low: number; readonly high: number };
  /** Content of the one pack it is bought in, where that is known already. */
  readonly packQuantity?: number | Figure;
}

/** Net, wasted, required and bought, as separate figures. */
export interface Need extends MaterialVariant {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly purpose: string;
  readonly net: Figure;
  readonly wasteFraction: Figure;
  readonly required: Figure;
  /** Whole packs; absent until a pack is chosen. */
  readonly purchase?: Figure;
  /** Required quantity, least to most. */
  readonly range: ThreePoint;
}

/** Countable things are needed in whole ones, even before a pack is chosen. */
const countableUnits: readonly string[] = ['each', 'pair', 'roll', 'pack', 'sheet'];

export const isCountable = (unit: string): boolean => countableUnits.includes(unit);

const noWasteStated: Cite = { source: 'COMMON-PRACTICE', note: 'no allowance added when none is stated' };

/** A plain number becomes a figure entered at `at`. */
export const figureOf = (given: number | Figure, unit: string, meaning: string, at: string): Figure =>
  typeof given === 'number' ? entered(unit, fraction(given), meaning, at) : given;

const valueOf = (given: number | Figure): number => (typeof given === 'number' ? given : given.value);

export function needOf(request: NeedRequest, at: string): Need {
  const net = figureOf(
    request.netQuantity,
    request.unit,
    `${request.title}, net`,
    pointer(at, 'netQuantity'),
  );
  const wasteFraction = wasteFigure(request, at);
  const required = requiredFigure(net, wasteFraction);
  const purchase = purchaseOf(request, required, at);
  return laidOver(variantOf(request), {
    id: request.id,
    title: request.title,
    unit: request.unit,
    purpose: request.purpose,
    net,
    wasteFraction,
    required,
    ...(purchase === undefined ? {} : { purchase }),
    range: rangeOf(request, net.value, wasteFraction.value),
  });
}

/** Only the fields that say which form is meant, and only those that are given. */
export function variantOf({
  material,
  part,
  thicknessMm,
  form,
  sheet,
  rollWidthMm,
}: MaterialVariant): MaterialVariant {
  return {
    material,
    ...(part === undefined ? {} : { part }),
    ...(thicknessMm === undefined ? {} : { thicknessMm }),
    ...(form === undefined ? {} : { form }),
    ...(sheet === undefined ? {} : { sheet }),
    ...(rollWidthMm === undefined ? {} : { rollWidthMm }),
  };
}

function wasteFigure(request: NeedRequest, at: string): Figure {
  const field = pointer(at, 'wasteFraction');
  if (request.wasteFraction !== undefined)
    return figureOf(request.wasteFraction, '1', 'waste fraction', field);
  return assumed('1', fraction(0), 'waste fraction', {
    at: field,
    because: 'no waste was stated',
    cite: noWasteStated,
  });
}

function purchaseOf(request: NeedRequest, required: Figure, at: string): Figure | undefined {
  if (request.packQuantity !== undefined) {
    return purchaseFigure(
      required,
      figureOf(request.packQuantity, request.unit, 'content of one pack', pointer(at, 'packQuantity')),
    );
  }
  if (!isCountable(request.unit)) return undefined;
  const one = assumed(request.unit, fraction(1), 'smallest count', {
    at: pointer(at, 'packQuantity'),
    because: 'a countable thing is bought in whole ones',
    cite: { source: 'ARITHMETIC' },
  });
  return purchaseFigure(required, one);
}

function rangeOf({ netRange, wasteRange }: NeedRequest, net: number, waste: number): ThreePoint {
  const lowNet = netRange?.low ?? net;
  const highNet = netRange?.high ?? net;
  return {
    low: lowNet * (1 + (wasteRange?.low ?? waste)),
    likely: net * (1 + waste),
    high: highNet * (1 + (wasteRange?.high ?? waste)),
  };
}

/** The same need in another number of packs, once somebody has chosen them. */
export const boughtAs = (need: Need, purchase: Figure): Need => laidOver(need, { purchase });

export function faultsOfNeed(request: NeedRequest, at: string): readonly Problem[] {
  const net = valueOf(request.netQuantity);
  const waste = request.wasteFraction === undefined ? 0 : valueOf(request.wasteFraction);
  return [
    ...notNegative(net, pointer(at, 'netQuantity'), request.unit),
    ...notNegative(waste, pointer(at, 'wasteFraction'), ''),
    ...(request.packQuantity === undefined
      ? []
      : aboveZero(valueOf(request.packQuantity), pointer(at, 'packQuantity'), request.unit)),
    ...unorderedRange(net, request.netRange, pointer(at, 'netRange')),
    ...unorderedRange(waste, request.wasteRange, pointer(at, 'wasteRange')),
  ];
}

const notNegative = (value: number, at: string, unit: string): readonly Problem[] =>
  Number.isFinite(value) && value >= 0
    ? []
    : [problem('out-of-range', at, { value, range: `0 or more ${unit}`.trim() })];

const aboveZero = (value: number, at: string, unit: string): readonly Problem[] =>
  Number.isFinite(value) && value > 0
    ? []
    : [problem('out-of-range', at, { value, range: `above 0 ${unit}`.trim() })];

function unorderedRange(
  likely: number,
  range: { readonly low: number; readonly high: number } | undefined,
  at: string,
): readonly Problem[] {
  if (range === undefined) return [];
  const isFine = range.low >= 0 && isOrdered({ low: range.low, likely, high: range.high });
  if (isFine) return [];
  return [
    problem('out-of-range', at, {
      value: `${range.low} to ${range.high}`,
      range: `0 or more at the low end, and round ${likely}`,
    }),
  ];
}
