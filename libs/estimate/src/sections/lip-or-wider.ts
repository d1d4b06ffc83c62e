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
  /** To fill what a cut moved out would open, and to rout it out where nothing of the lip would be left. */
  readonly fillH: number;
  /** To open the skin over it with the rest and core it. */
  readonly widerH: number;
}

const MM_PER_M = 1000;

/**
 * What is filled under the lip against a cut that is moved out over it by `spareMm`, by the rates of either. The cut keeps its
 * length, and a lip deeper than the move is routed out all the same. Nothing where there is no lip or no room to move.
 */
export function lipOrWider(places: readonly FilledLip[], spareMm: number): LipOrWider | undefined {
  const wide = places.filter(({ areaM2, widthMm }) => areaM2 >= LEAST_M2 && widthMm > 0);
  if (wide.length === 0 || spareMm <= 0) return undefined;
  const sum = (of: (place: FilledLip) => number): number => wide.reduce((all, place) => all + of(place), 0);
  const share = ({ widthMm }: FilledLip): number => Math.min(1, spareMm / widthMm);
  const routed = wide.filter((place) => share(place) === 1);
  return {
    fillH:
      meanRate('fill-solid') * sum((place) => share(place) * place.volumeL) +
      meanRate('ream-lip') * routed.reduce((all, place) => all + lengthM(place), 0),
    widerH: openingRuleQuestions.openedHPerM2.otherwise.value * sum((place) => share(place) * place.areaM2),
  };
}

/** Less is the rounding of a corner. */
const LEAST_M2 = 0.005;

const lengthM = ({ areaM2, widthMm }: FilledLip): number => (areaM2 * MM_PER_M) / widthMm;

const meanRate = (code: string): number => {
  const found = operations.find((operation) => operation.code === code);
  if (found === undefined) throw new Defect(`No operation is called ${code}`);
  return triangularMean(found.hours);
};

export type FlangeSaid = 'stated' | 'usual';

/** Why a lip is filled although more of the skin over it could be opened. */
export const lipWords = ({ fillH, widerH }: LipOrWider, spareMm: number, flange: FlangeSaid): string =>
  `${Math.round(spareMm)} mm more of the skin over the lip could be opened: ${hoursText(widerH)} to open and core it against ${hoursText(fillH)} to fill it, ${becauseOf(widerH < fillH, flange)}`;

function becauseOf(isWiderLess: boolean, flange: FlangeSaid): string {
  if (!isWiderLess) return 'so it is filled';
  return flange === 'stated'
    ? 'and the flange is kept as it was stated'
    : 'and over the whole job it does not take less, so it is filled';
}

const hoursText = (hours: number): string => `${hours.toFixed(1)} h`;
