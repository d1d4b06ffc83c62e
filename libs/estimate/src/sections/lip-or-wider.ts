import { Defect, triangularMean } from '#lib/kernel';
import { openingRuleQuestions } from '#lib/extent';
import { operations } from '#lib/work';

/** A place under the lip that is filled solid. */
export interface FilledLip {
  readonly areaM2: number;
  readonly volumeL: number;
  readonly widthMm: number;
}

export interface LipOrWider {
  /** To rout the place out under the lip and fill it. */
  readonly fillH: number;
  /** To open the skin over it with the rest and core it. */
  readonly widerH: number;
  readonly words: string;
}

const MM_PER_M = 1000;

/**
 * What is filled under the lip against an opening that takes it in, by the rates of either. The cut runs as far as before but
 * for its two ends, and the skin over the lip is opened like the rest.
 */
export function lipOrWider(places: readonly FilledLip[]): LipOrWider | undefined {
  const wide = places.filter(({ areaM2, widthMm }) => areaM2 >= LEAST_M2 && widthMm > 0);
  if (wide.length === 0) return undefined;
  const sum = (of: (place: FilledLip) => number): number => wide.reduce((all, place) => all + of(place), 0);
  const { cutHPerM, openedHPerM2 } = openingRuleQuestions;
  const fillH =
    meanRate('fill-solid') * sum(({ volumeL }) => volumeL) +
    meanRate('ream-lip') * sum(({ areaM2, widthMm }) => (areaM2 * MM_PER_M) / widthMm);
  const widerH =
    openedHPerM2.otherwise.value * sum(({ areaM2 }) => areaM2) +
    cutHPerM.otherwise.value * sum(({ widthMm }) => (2 * widthMm) / MM_PER_M);
  return { fillH, widerH, words: wordsOf(fillH, widerH) };
}

/** Less is the rounding of a corner. */
const LEAST_M2 = 0.005;

const meanRate = (code: string): number => {
  const found = operations.find((operation) => operation.code === code);
  if (found === undefined) throw new Defect(`No operation is called ${code}`);
  return triangularMean(found.hours);
};

const wordsOf = (fillH: number, widerH: number): string =>
  widerH < fillH
    ? `under the lip ${hoursText(fillH)} to rout and fill against ${hoursText(widerH)} to open the skin over it and core it: where the edge allows a narrower flange, a wider opening takes less`
    : `under the lip ${hoursText(fillH)} to rout and fill, ${hoursText(widerH)} to open the skin over it and core it: it is filled`;

const hoursText = (hours: number): string => `${hours.toFixed(1)} h`;
