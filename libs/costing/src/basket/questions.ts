import {
  practice,
  ask,
  askCode,
  askDay,
  askDecimal,
  askEach,
  askList,
  askPart,
  askText,
  askWhether,
  askWhich,
  type AnswersTo,
} from '#lib/asking';
import { unitAsked } from '../questions.js';

const QUANTITY = { from: 0, upTo: 1e6 } as const;
const SHEET_SIDE = { above: 0, upTo: 10_000 } as const;

export const sheetSizeQuestions = {
  lengthMm: ask({ unit: 'mm', meaning: 'length of the sheet', range: SHEET_SIDE }),
  widthMm: ask({ unit: 'mm', meaning: 'width of the sheet', range: SHEET_SIDE }),
};

/** A material in the form that is meant; what is left out may be anything. */
export const variantQuestions = {
  material: askCode({ meaning: 'material', description: 'Code of a material of the catalogue.' }),
  part: askCode({ meaning: 'hardener of a resin', otherwise: 'unknown' }),
  thicknessMm: ask({
    unit: 'mm',
    meaning: 'thickness of the material',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  form: askWhich({
    meaning: 'form of the sheet: plain, or scored so that it bends',
    choices: ['plain', 'scored'],
    otherwise: 'unknown',
  }),
  sheet: askPart({ meaning: 'size of the sheet', of: sheetSizeQuestions, otherwise: 'unknown' }),
  rollWidthMm: ask({
    unit: 'mm',
    meaning: 'width of the roll',
    description: 'Width of the roll that the fabric comes on.',
    range: { above: 0, upTo: 10_000 },
    otherwise: 'unknown',
  }),
};

/** What an order is for. */
export const needQuestions = {
  ...variantQuestions,
  id: askText({ meaning: 'name of the need, unique in its estimate', atMost: 120 }),
  title: askText({ meaning: 'what the need is called on the order', otherwise: 'unknown' }),
  estimate: askText({
    meaning: 'estimate it is bought for',
    note: 'Several estimates may be bought for in one order; each is told its share.',
    atMost: 80,
    otherwise: 'unknown',
  }),
  requiredQuantity: ask({ unit: '1', meaning: 'quantity with waste', range: QUANTITY }),
  unit: askWhich({ ...unitAsked, description: 'Unit of the required quantity.' }),
};

export const hardenerChoiceQuestions = {
  resin: askCode({ meaning: 'resin of the order' }),
  hardener: askCode({ meaning: 'hardener that cures it' }),
};

export const substituteQuestions = {
  insteadOf: askPart({ meaning: 'what is asked for', of: variantQuestions }),
  use: askPart({ meaning: 'what would do as well', of: variantQuestions }),
  ratio: ask({
    unit: '1',
    meaning: 'units of the substitute that do the work of one unit',
    range: { above: 0, upTo: 1000 },
  }),
  penaltyPerUnit: askDecimal({
    meaning: 'what the trouble is worth for each unit replaced; steers the choice and is not paid',
  }),
  reason: askText({ meaning: 'why it would do', atMost: 400 }),
};

export const onHandQuestions = {
  ...variantQuestions,
  quantity: ask({ unit: '1', meaning: 'quantity left over and still good', range: QUANTITY }),
  unit: askWhich({ ...unitAsked, description: 'Unit of the quantity on hand.' }),
  monthsLeft: ask({
    unit: 'months',
    meaning: 'months for which it keeps',
    range: { from: 0, upTo: 600 },
    otherwise: 'unknown',
  }),
};

export const basketOptionQuestions = {
  transport: askWhich({
    meaning: 'how the order travels',
    note: 'By air nothing hazardous travels; who collects pays no freight.',
    choices: ['ground', 'air', 'collect'],
    otherwise: practice('ground', 'resin may not fly'),
  }),
  monthsUntilUse: ask({
    unit: 'months',
    meaning: 'months until it is used',
    note: 'Packs that would not keep this long are left out.',
    range: { from: 0, upTo: 120 },
    otherwise: 'unknown',
  }),
  suppliers: askEach({
    meaning: 'suppliers to order from',
    description: 'Suppliers of the list to order from; absent: all.',
    least: 1,
    most: 50,
    of: askText({ meaning: 'code of a supplier', atMost: 80 }),
    otherwise: 'unknown',
  }),
  hazardBoxKg: ask({
    unit: 'kg',
    meaning: 'mass of a box of hazardous goods',
    description:
      'Mass of a box of hazardous goods, each with its surcharge; absent: one surcharge to an order.',
    range: { above: 0, upTo: 1000 },
    otherwise: 'unknown',
  }),
  mayCutSheets: askWhether({
    meaning: 'whether the shop may cut whole sheets',
    description: 'Whole sheets may be cut by the shop, for its fee, so that they travel as ordinary goods.',
    otherwise: 'unknown',
  }),
  secondBest: askWhether({
    meaning: 'whether a second best order is looked for',
    note: 'Of another kind: other suppliers, other packs.',
    otherwise: practice(true, 'a buyer compares'),
  }),
  timeLimitS: ask({
    unit: 's',
    meaning: 'time for all searches of the order together',
    note: 'What is found by then is given, with its distance from the best that is possible.',
    range: { above: 0, upTo: 30 },
    otherwise: practice(5, 'orders take less'),
  }),
  orderDate: askDay({
    meaning: 'day of the order',
    note: 'The validity of the price list is checked against it.',
    otherwise: 'unknown',
  }),
};

/** How an order is put together, beside what it is for. */
export const orderQuestions = {
  hardeners: askList({
    meaning: 'which hardener cures a resin of the order',
    description:
      'Which hardener cures a resin of the order; absent: the one that is needed, else the cheapest of the resin.',
    least: 0,
    most: 50,
    of: hardenerChoiceQuestions,
    otherwise: 'unknown',
  }),
  substitutes: askList({
    meaning: 'what else would do',
    least: 0,
    most: 100,
    of: substituteQuestions,
    otherwise: 'unknown',
  }),
  onHand: askList({
    meaning: 'left over from another job and still good',
    least: 0,
    most: 500,
    of: onHandQuestions,
    otherwise: 'unknown',
  }),
  options: askPart({
    meaning: 'how the order is put together',
    of: basketOptionQuestions,
    otherwise: 'unknown',
  }),
};

/** A basket asked for by the codes of a catalogue. */
export const basketQuestions = {
  priceList: askCode({ meaning: 'price list', description: 'Code of a price list of the edition.' }),
  needs: askList({ meaning: 'what the order is for', least: 1, most: 2000, of: needQuestions }),
  ...orderQuestions,
};

export type BasketNeed = AnswersTo<typeof needQuestions>;
export type Substitute = AnswersTo<typeof substituteQuestions>;
export type OnHand = AnswersTo<typeof onHandQuestions>;
export type BasketOptions = AnswersTo<typeof basketOptionQuestions>;
export type Transport = NonNullable<BasketOptions['transport']>;
export type BasketByCode = AnswersTo<typeof basketQuestions>;
