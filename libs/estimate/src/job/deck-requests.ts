import { askList, askOutlines, askPart, askWhich, faultsIn, type AnswersTo } from '#lib/asking';
import {
  bondableQuestions,
  evidenceGrades,
  extentAndOpenings,
  mapQuestions,
  nextQuestions,
  nextReadings,
  openingMethodQuestions,
  openingRuleQuestions,
  surveyQuestions,
  surveySoFarQuestions,
  type ExtentAndOpenings,
  type NextReadings,
} from '#lib/extent';
import { refusal, type Outcome } from '#lib/kernel';
import { deckParts, outerSkinQuestions, panelQuestions } from './questions/deck.js';
import { fittingQuestions, zoneQuestions } from './questions/defect.js';

/** Zones of these requests may have sound core inside; those of a record are filled. */
export const openedZoneQuestions = {
  ...zoneQuestions,
  holes: askOutlines({ meaning: 'sound core inside the zone', least: 0, most: 100, otherwise: 'unknown' }),
};

const zonesAsked = {
  least: 1,
  most: 50,
  unlike: 'id',
  of: openedZoneQuestions,
  otherwise: 'unknown',
} as const;

const fittings = askList({
  meaning: 'fittings through the deck',
  description: 'Fittings through the deck, which openings keep clear of or take in.',
  least: 0,
  most: 200,
  unlike: 'id',
  of: fittingQuestions,
  otherwise: 'unknown',
});

const howItIsOpened = {
  method: askPart({
    meaning: 'how the deck is opened',
    of: openingMethodQuestions,
    otherwise: 'unknown',
  }),
  rules: askPart({
    meaning: 'rules of the trade',
    of: { ...openingRuleQuestions, ...bondableQuestions },
    otherwise: 'unknown',
  }),
  map: askPart({ meaning: 'how readings become a map', of: mapQuestions, otherwise: 'unknown' }),
};

/** One panel with its zones, its readings, or both, in the words of a defect record. */
export const openingsQuestions = {
  ...deckParts,
  zones: askList({
    ...zonesAsked,
    meaning: 'zones of bad core',
    description: 'Bad core as somebody drew it; absent: mapped from the readings.',
  }),
  survey: askPart({
    meaning: 'readings of hammer, meter and plugs',
    of: surveyQuestions,
    otherwise: 'unknown',
  }),
  fittings,
  evidence: askWhich({
    meaning: 'how the extent was found',
    description: 'How the extent was found; readings can lower it, never raise it.',
    choices: evidenceGrades,
    otherwise: 'unknown',
  }),
  ...howItIsOpened,
};
export type OpeningsAsked = AnswersTo<typeof openingsQuestions>;

export const openingsFor = (request: OpeningsAsked): Outcome<ExtentAndOpenings> => {
  const faults = faultsIn(request, openingsQuestions);
  return faults.length > 0 ? refusal(...faults) : extentAndOpenings(request);
};

/** One panel and what was read of it so far. */
export const nextReadingsQuestions = {
  panel: askPart({
    meaning: 'the panel of deck',
    description: 'The panel that readings are taken on.',
    of: panelQuestions,
  }),
  survey: askPart({ meaning: 'readings so far; none yet is an answer too', of: surveySoFarQuestions }),
  next: askPart({
    meaning: 'how the next readings may be taken',
    of: nextQuestions,
    otherwise: 'unknown',
  }),
  zones: askList({
    ...zonesAsked,
    meaning: 'what is opened as things stand',
    description: 'What is opened as things stand; absent: what the map would open.',
  }),
  fittings,
  outerSkin: askPart({
    meaning: 'the outer skin',
    description: 'The outer skin, where its thickness is known.',
    of: outerSkinQuestions,
    otherwise: 'unknown',
  }),
  ...howItIsOpened,
};
export type NextReadingsAsked = AnswersTo<typeof nextReadingsQuestions>;

export const nextReadingsFor = (request: NextReadingsAsked): Outcome<NextReadings> => {
  const faults = faultsIn(request, nextReadingsQuestions);
  return faults.length > 0 ? refusal(...faults) : nextReadings(request);
};
