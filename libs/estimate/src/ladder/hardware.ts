import { isLoaded } from '#lib/extent';
import { fittingCard, fittingHours, type DeckStack, type FittingCard } from '#lib/methods';
import { derived, sumOf, type Figure } from '#lib/provenance';
import type { ResinStepRequest } from '#lib/resin';
import { h } from '#lib/units';
import { stated } from '../job/fitting-stated.js';
import { isLaidAgain } from '../stages/coatings.js';
import type { FittingRecord, OverlayRecord } from '../job/defect-record.js';
import type { Job } from '../job/job.js';

/** A fitting that comes off, and whether the core under it is opened. */
export interface FittingOff {
  readonly id: string;
  readonly isOnOpening: boolean;
}

/** Cards of the fittings that come off, in the order of the record. */
export const cardsFor = (
  { record, answers, fill }: Pick<Job, 'record' | 'answers' | 'fill'>,
  off: readonly FittingOff[],
): readonly FittingCard[] => {
  const stack = stackOf(answers, laidAgainMm(record.panel.overlay));
  return (record.fittings ?? []).flatMap((fitting) => {
    const found = off.find(({ id }) => id === fitting.id);
    return found === undefined ? [] : [cardOf(fitting, stack, { ...found, fill })];
  });
};

const laidAgainMm = (overlay: OverlayRecord | undefined): number =>
  overlay !== undefined && isLaidAgain(overlay) ? overlay.thicknessMm : 0;

/** A bolt goes through planks that are laid again as through the skin they lie on. */
const stackOf = (answers: Job['answers'], overlayMm: number): DeckStack => ({
  outerSkinMm: answers.outerSkin.thicknessMm.value + overlayMm,
  coreMm: answers.core.thicknessMm.value,
  innerSkinMm: answers.innerSkin.thicknessMm.value,
});

/** Solid goes under what carries load, and only where the deck is open; elsewhere each hole is potted. */
const cardOf = (
  fitting: FittingRecord,
  stack: DeckStack,
  { isOnOpening, fill }: FittingOff & Pick<Job, 'fill'>,
): FittingCard => {
  const { insert, ...card } = fittingCard(stated(fitting), stack);
  if (isOnOpening && fill === 'solid') return { ...card, isOnSolid: true };
  return insert !== undefined && isOnOpening && isLoaded(fitting.kind) ? { ...card, insert } : card;
};

/** Fittings of the plan of an opening that are set again. */
export const offIn = (
  fittings: readonly { readonly id: string; readonly where: 'inside' | 'near' }[],
): readonly FittingOff[] => fittings.map(({ id, where }) => ({ id, isOnOpening: where === 'inside' }));

/** Hours that the cards of these fittings come to, and of those that come off without being in the record. */
export interface FittingFigures {
  readonly fittingOffH: Figure<'h'>;
  readonly fittingOnH: Figure<'h'>;
  readonly fittingHelpedH: Figure<'h'>;
}

/** A leaking hatch or chainplate comes off whether or not the record lists it. */
export function fittingFigures(
  job: Pick<Job, 'record' | 'answers' | 'fill'>,
  off: readonly FittingOff[],
  unlisted: readonly string[] = [],
): FittingFigures {
  const listed = cardsFor(job, off);
  const stack = stackOf(job.answers, 0);
  const more = unlisted
    .filter((kind) => !listed.some((card) => card.kind === kind))
    .map((kind) => fittingCard({ id: kind, kind, isHighlyLoaded: false }, stack));
  const { offH, onH, helpedH } = fittingHours([...listed, ...more]);
  return {
    fittingOffH: ofCards('fittings off', offH),
    fittingOnH: ofCards('fittings bedded and bolted', onH),
    fittingHelpedH: ofCards('fittings bedded with somebody below', helpedH),
  };
}

/** What comes off beside the opening is added to the hours of its own fittings, in a row with those that are like it. */
export function fittingsBeside(
  job: Pick<Job, 'record' | 'answers' | 'fill'>,
  own: readonly FittingOff[],
  { off, unlisted }: { readonly off: readonly FittingOff[]; readonly unlisted: readonly string[] },
): (opening: FittingFigures) => FittingFigures {
  const alone = fittingFigures(job, own);
  const all = fittingFigures(job, [...own, ...off], unlisted);
  const more = (name: keyof FittingFigures, meaning: string): Figure<'h'> =>
    ofCards(`${meaning} beside the opening`, all[name].value - alone[name].value);
  const beside = {
    fittingOffH: more('fittingOffH', 'fittings off'),
    fittingOnH: more('fittingOnH', 'fittings bedded and bolted'),
    fittingHelpedH: more('fittingHelpedH', 'fittings bedded with somebody below'),
  };
  const sum = (name: keyof FittingFigures, opening: FittingFigures): Figure<'h'> =>
    beside[name].value === 0
      ? opening[name]
      : sumOf('h', opening[name].meaning, { opening: opening[name], beside: beside[name] });
  return (opening) => ({
    fittingOffH: sum('fittingOffH', opening),
    fittingOnH: sum('fittingOnH', opening),
    fittingHelpedH: sum('fittingHelpedH', opening),
  });
}

const ofCards = (meaning: string, hours: number): Figure<'h'> =>
  derived('h', h(hours), `hours of the cards: ${meaning}`, {
    formula: 'scope.hardware',
    title: 'Hours of the cards of the fittings, each further one of a kind set in half',
    symbol: 't',
    cite: { source: 'FROM-MEMORY', note: 'hours of each card are those of the record where it states them' },
    inputs: {},
  });

/** Pockets round the holes of these fittings, those of one size together: they are potted from the same pots. */
export function pottingSteps(
  { answers }: Pick<Job, 'answers'>,
  cards: readonly FittingCard[],
): readonly ResinStepRequest[] {
  const sizes = [...new Set(cards.map(({ plugMm }) => plugMm))];
  return sizes.map((plugMm) => {
    const alike = cards.filter((card) => card.plugMm === plugMm);
    return {
      step: 'potting',
      title: `Pot the holes of ${alike.map(({ id }) => id).join(', ')}`,
      holes: alike.reduce((sum, { fasteners }) => sum + fasteners, 0),
      diameterMm: plugMm,
      depthMm: answers.core.thicknessMm.value,
    };
  });
}

/** Holes of cards whose core stays, which are drilled wide and potted; through solid laminate a bolt goes as it is. */
export const pottedCards = (cards: readonly FittingCard[]): readonly FittingCard[] =>
  cards.filter(({ insert, isOnSolid }) => insert === undefined && isOnSolid !== true);
