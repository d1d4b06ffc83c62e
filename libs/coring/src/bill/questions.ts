import {
  ask,
  askCode,
  askLabel,
  askList,
  askOutline,
  askOutlines,
  askPart,
  askPlace,
  askText,
  askWhich,
  cavityAsked,
  commonPractice,
  practice,
  type AnswersTo,
} from '#lib/asking';
import {
  edgeTrimAsked,
  holesAsked,
  kerfAsked,
  searchQuestions,
  sheetAvailableAsked,
  sheetCostAsked,
} from '#lib/nesting';
import { mosaicRuleQuestions, grainAsked } from '../mosaic/rules.js';
import { camberQuestions, oldCoreQuestions, stackQuestions } from '../stack/rules.js';

const MOST_OPENINGS = 30;
const sheetSide = { unit: 'mm', range: { above: 0, upTo: 10_000 } } as const;

const form = {
  meaning: 'form of the sheet',
  note: 'Plain, or scored so that it bends.',
  choices: ['plain', 'scored'],
} as const;

/** What is cut out of the skin, and what core comes out under it. */
export const drawnOpeningQuestions = {
  label: askLabel({
    meaning: 'letter of the opening',
    note: 'A, B, C ...; labels of pieces begin with it.',
    example: 'A',
  }),
  outline: askOutline({ meaning: 'what is cut out of the skin' }),
  undercutMm: ask({
    unit: 'mm',
    meaning: 'how far core is taken out under the skin all round',
    range: { from: 0, upTo: 500 },
    otherwise: practice(0, 'core is taken out as far as the skin is cut'),
  }),
  cavity: askOutline({
    meaning: 'the edge to which core is taken out, where it is not the same all round',
    otherwise: 'unknown',
  }),
};
export type DrawnOpening = AnswersTo<typeof drawnOpeningQuestions>;

export const supportLineQuestions = {
  from: askPlace({ meaning: 'where the support starts' }),
  to: askPlace({ meaning: 'where the support ends' }),
};

/** What can be bought. */
export const sheetQuestions = {
  lengthMm: ask({ ...sheetSide, meaning: 'length of the sheet' }),
  widthMm: ask({ ...sheetSide, meaning: 'width of the sheet' }),
  cost: ask({
    ...sheetCostAsked,
    description: 'With the fee for cutting a half or quarter sheet; costs are only compared.',
    range: { above: 0, upTo: 1e9 },
  }),
  available: ask({ ...sheetAvailableAsked, otherwise: 'unknown' }),
};
export type SheetOnSale = AnswersTo<typeof sheetQuestions>;

/** The customer's own pieces of the same core. */
export const offcutQuestions = {
  id: askText({ meaning: 'name of the offcut, unique in the request', atMost: 60 }),
  outline: askOutline({ meaning: 'the edge of the offcut as it is' }),
  holes: askOutlines({
    ...holesAsked,
    meaning: 'bad spots and cut-outs of the offcut',
    otherwise: 'unknown',
  }),
  thicknessMm: ask({ unit: 'mm', meaning: 'thickness of the offcut', range: { above: 0, upTo: 200 } }),
  form: askWhich({
    ...form,
    otherwise: practice('plain', 'most offcuts are'),
  }),
};
export type OwnOffcut = AnswersTo<typeof offcutQuestions>;

/** Blade and sheets: what each of them takes of the stock. */
export const cutQuestions = {
  kerfMm: ask({ ...kerfAsked, otherwise: practice(2, 'a fine saw or a stout knife') }),
  edgeTrimMm: ask({ ...edgeTrimAsked, otherwise: practice(0, 'sheet edges are taken as sound') }),
  keepFromMm: ask({
    unit: 'mm',
    meaning: 'narrowest offcut worth keeping',
    range: { from: 10, upTo: 2000 },
    otherwise: {
      value: 150,
      because: 'it still holds a piece of the size bedded by hand',
      cite: commonPractice,
    },
  }),
};

/** Openings and a core material; from there to labelled pieces and sheets. */
export const coreBillQuestions = {
  material: askCode({
    meaning: 'core that is bedded',
    description: 'Code of a core in the catalogue.',
    example: 'core-balsa-150',
  }),
  openings: askList({
    meaning: 'openings to fill',
    least: 1,
    most: MOST_OPENINGS,
    unlike: 'label',
    of: drawnOpeningQuestions,
  }),
  cavityMm: ask({ ...cavityAsked, example: 17.5 }),
  supports: askList({
    meaning: 'lines the deck rests on; no joint runs along one',
    least: 0,
    most: 100,
    of: supportLineQuestions,
    otherwise: 'unknown',
  }),
  wantedMm: ask({
    unit: 'mm',
    meaning: 'a thickness of the list that is insisted on',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  form: askWhich({ ...form, otherwise: 'unknown' }),
  skin: askWhich({
    meaning: 'what closes the openings',
    description: 'What closes the openings: the old skin bedded again, or plies laid wet on the core.',
    choices: ['re-bed', 'relay'],
    otherwise: practice('re-bed', 'the old skin goes back wherever it can'),
  }),
  camber: askPart({
    meaning: 'camber of the deck; absent: it is flat',
    of: camberQuestions,
    otherwise: 'unknown',
  }),
  oldCore: askPart({
    meaning: 'how heavy and how wet the old core is',
    of: oldCoreQuestions,
    otherwise: 'unknown',
  }),
  grainDeg: grainAsked,
  stackRules: askPart({
    meaning: 'how thick the beds are and how the skin sits',
    of: stackQuestions,
    otherwise: 'unknown',
  }),
  mosaicRules: askPart({
    meaning: 'how core is divided into pieces',
    of: mosaicRuleQuestions,
    otherwise: 'unknown',
  }),
  sheets: askList({
    meaning: 'what can be bought',
    description: "What can be bought; absent: the material's formats, the smallest area being the cheapest.",
    least: 1,
    most: 20,
    of: sheetQuestions,
    otherwise: 'unknown',
  }),
  offcuts: askList({
    meaning: "the customer's own pieces of the same core",
    least: 0,
    most: 20,
    of: offcutQuestions,
    otherwise: 'unknown',
  }),
  ...cutQuestions,
  hourCost: ask({
    unit: '1',
    meaning: 'what an hour of work costs',
    description:
      'What an hour of work costs, in the currency of the sheets; absent: the sheets alone decide how the core is divided.',
    range: { from: 0, upTo: 1e6 },
    otherwise: 'unknown',
  }),
  ...searchQuestions,
};

/** A core bill with the material by its code and openings as outlines. */
export type CoreBillByCode = AnswersTo<typeof coreBillQuestions>;
