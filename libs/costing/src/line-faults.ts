import { faultsIn } from '#lib/asking';
import { below, pointer, problem, type Problem } from '#lib/kernel';
import { decimalFrom } from '#lib/money';
import type { Figure } from '#lib/provenance';
import { depreciationQuestions } from './depreciation-questions.js';
import { unitCodes } from './exports/unit-codes.js';
import {
  causeClasses,
  partOrLabours,
  sectionTitles,
  type AtExtent,
  type DepreciationTerms,
  type LineRequest,
  type TaxGroup,
} from './cost-line.js';

/** Twelve decimals are read exactly; more would be cut, so they are refused. */
const MOST_DECIMALS = 12;

/** A text that must be an exact decimal of zero or more. */
export function decimalFault(text: string, at: string): readonly Problem[] {
  const read = decimalFrom(text);
  if (read === undefined) return [problem('not-a-decimal', at, { value: text, most: MOST_DECIMALS })];
  return read.scaled < 0n ? [problem('out-of-range', at, { value: text, range: '0 or more' })] : [];
}

function priceFaults({ unitRate, packs }: LineRequest): readonly Problem[] {
  if (unitRate !== undefined) return decimalFault(unitRate, '/unitRate');
  if (packs === undefined)
    return [problem('missing', '/unitRate', { expected: 'a price per unit, or the packs that are bought' })];
  return packs.flatMap(({ count, price }, index) => [
    ...below(pointer('/packs', index), decimalFault(price, '/price')),
    ...(Number.isSafeInteger(count) && count >= 0
      ? []
      : [
          problem('out-of-range', pointer('/packs', index, 'count'), {
            value: count,
            range: 'a whole number of 0 or more',
          }),
        ]),
  ]);
}

const MOST_QUANTITY = 1e9;
const units = Object.keys(unitCodes);
const sections = Object.keys(sectionTitles);

export function faultsOfLine(line: LineRequest, taxGroups: readonly TaxGroup[]): readonly Problem[] {
  return [
    ...quantityFault(line.netQuantity, '/netQuantity'),
    ...(line.wasteFraction === undefined ? [] : quantityFault(line.wasteFraction, '/wasteFraction')),
    ...(line.purchaseQuantity === undefined ? [] : quantityFault(line.purchaseQuantity, '/purchaseQuantity')),
    ...priceFaults(line),
    ...choiceFault(line.unit, units, '/unit'),
    ...choiceFault(line.section, sections, '/section'),
    ...choiceFault(line.causeClass, causeClasses, '/causeClass'),
    ...choiceFault(line.partOrLabour, partOrLabours, '/partOrLabour'),
    ...choiceFault(line.scope ?? 'in', ['in', 'out'], '/scope'),
    ...choiceFault(
      line.taxGroup,
      taxGroups.map(({ code }) => code),
      '/taxGroup',
    ),
    ...spreadFault(line),
    ...(line.depreciation === undefined ? [] : depreciationFaults(line.depreciation, line)),
  ];
}

function quantityFault(given: number | Figure, at: string): readonly Problem[] {
  const value = typeof given === 'number' ? given : given.value;
  if (Number.isFinite(value) && value >= 0 && value <= MOST_QUANTITY) return [];
  return [problem('out-of-range', at, { value, range: `0 to ${MOST_QUANTITY}` })];
}

const choiceFault = (value: string, choices: readonly string[], at: string): readonly Problem[] =>
  choices.includes(value) ? [] : [problem('not-one-of', at, { value, choices: choices.join(', ') })];

/** Extents rise, each once, and nothing is negative or endless. */
export function faultsOfAtExtents(points: readonly AtExtent[] = [], at: string): readonly Problem[] {
  const isAmount = (value: number): boolean => Number.isFinite(value) && value >= 0;
  return points.flatMap(({ extentFactor, amountFactor }, index) => {
    const isNext = index === 0 || points[index - 1].extentFactor < extentFactor;
    return isAmount(extentFactor) && isAmount(amountFactor) && isNext
      ? []
      : [
          problem('out-of-range', pointer(at, index), {
            value: `${extentFactor}: ${amountFactor}`,
            range: 'factors of 0 or more, the extents rising',
          }),
        ];
  });
}

function spreadFault({ spread, atExtents }: LineRequest): readonly Problem[] {
  const extentFaults = faultsOfAtExtents(atExtents, '/atExtents');
  if (spread === undefined) return extentFaults;
  const isFine = spread.low >= 0 && spread.low <= 1 && spread.high >= 1 && Number.isFinite(spread.high);
  if (isFine) return extentFaults;
  return [
    ...extentFaults,
    problem('out-of-range', '/spread', {
      value: `${spread.low} to ${spread.high}`,
      range: 'from 0 up to 1 at the low end, 1 or more at the high end',
    }),
  ];
}

const depreciationFaults = (terms: DepreciationTerms, line: LineRequest): readonly Problem[] => [
  ...(line.partOrLabour === 'part'
    ? []
    : [
        problem('contradiction', '/depreciation', {
          other: 'partOrLabour',
          why: 'labour does not depreciate, only parts do',
        }),
      ]),
  ...depreciationTermsFaults(terms, '/depreciation'),
];

/** Faults of the terms themselves, at their fields below `at`: a percentage, or a life to work it out from. */
export const depreciationTermsFaults = (terms: DepreciationTerms, at: string): readonly Problem[] => {
  const { percent, lifeYears } = terms;
  const isLeftOpen = percent === undefined && lifeYears === undefined;
  return isLeftOpen
    ? [
        ...wearFaults(terms, at),
        problem('missing', `${at}/percent`, { expected: 'a percentage, or lifeYears to work it out from' }),
      ]
    : wearFaults(terms, at);
};

/** The same where a life that nobody stated is judged. */
export function wearFaults(terms: DepreciationTerms, at: string): readonly Problem[] {
  const faults = faultsIn(terms, depreciationQuestions, at);
  const { percent } = terms;
  return percent === undefined || Number.isNaN(Number(percent)) || Number(percent) <= 100
    ? faults
    : [...faults, problem('out-of-range', `${at}/percent`, { value: percent, range: '0 to 100' })];
}
