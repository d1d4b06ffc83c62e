import {
  ask,
  askCode,
  askDecimal,
  askFor,
  askList,
  askPart,
  askText,
  askWhether,
  askWhich,
  practice,
  type AnswersTo,
} from '#lib/asking';
import { evidenceGrades } from '#lib/extent';
import { currencyCodes } from '#lib/money';
import { causeClasses, partOrLabours, sections, type DepreciationTerms } from './cost-line.js';
import { commercialRounding, roundings } from './exact.js';
import { depreciationTermsFaults, wearFaults } from './line-faults.js';
import { unitCodes } from './exports/unit-codes.js';
import { SHARE, drawQuestions } from './risk/risk-questions.js';

const QUANTITY = { from: 0, upTo: 1e9 } as const;
const EXTENT = { from: 0, upTo: 100 } as const;

/** Units that things are sold and counted in. */
export const unitAsked = { meaning: 'unit it is counted in', choices: Object.keys(unitCodes) } as const;

const wear = { meaning: 'wear of the part', otherwise: 'unknown' } as const;

/** Wear of a part, with what its fields mean together. */
const askDepreciation = (description: string) =>
  askFor<DepreciationTerms, 'unknown'>({ ...wear, description, faults: depreciationTermsFaults });

/** Wear of all parts, where a life that is not stated is judged for each kind of part. */
export const askWear = (description: string) =>
  askFor<DepreciationTerms, 'unknown'>({ ...wear, description, faults: wearFaults });

export const spreadQuestions = {
  low: ask({ unit: '1', meaning: 'least amount as a share of the likely one', range: SHARE }),
  high: ask({
    unit: '1',
    meaning: 'most amount as a multiple of the likely one',
    range: { from: 1, upTo: 100 },
  }),
};

export const atExtentQuestions = {
  extentFactor: ask({ unit: '1', meaning: 'found area over recorded area', range: EXTENT }),
  amountFactor: ask({
    unit: '1',
    meaning: 'amount there over the amount of the line',
    range: { from: 0, upTo: 1000 },
  }),
};

export const linePackQuestions = {
  sku: askText({ meaning: 'number of the pack at its supplier', atMost: 120 }),
  name: askText({ meaning: 'name of the pack' }),
  supplier: askText({ meaning: 'supplier of the pack', atMost: 80 }),
  count: ask({
    unit: '1',
    meaning: 'packs that are bought',
    range: { from: 0, upTo: 1_000_000 },
    isWhole: true,
  }),
  price: askDecimal({ meaning: 'price of one pack', decimals: 12 }),
};

export const lineQuestions = {
  code: askText({
    meaning: 'code of the line',
    note: 'Unique among the lines; a revision is compared by it.',
    atMost: 120,
  }),
  section: askWhich({ meaning: 'where the line stands in the roll-up', choices: sections }),
  title: askText({ meaning: 'what the line says' }),
  stage: askText({ meaning: 'step of the job', atMost: 80, otherwise: 'unknown' }),
  partOrLabour: askWhich({
    meaning: 'part or labour',
    note: 'Only parts depreciate; hire, yard charges and disposal count as labour.',
    choices: partOrLabours,
  }),
  causeClass: askWhich({
    meaning: 'class of the cause',
    note: 'What an insurer asks: sudden, there before, or upkeep.',
    choices: causeClasses,
  }),
  netQuantity: ask({
    unit: '1',
    meaning: 'quantity without waste, in the unit of the line',
    range: QUANTITY,
  }),
  wasteFraction: ask({
    unit: '1',
    meaning: 'waste on top of the net quantity, as a fraction',
    range: { from: 0, upTo: 10 },
    otherwise: 'unknown',
  }),
  purchaseQuantity: ask({
    unit: '1',
    meaning: 'whole packs; charged instead of the required quantity',
    range: QUANTITY,
    otherwise: 'unknown',
  }),
  unit: askWhich({ ...unitAsked, description: 'Unit of the quantities and of the rate.' }),
  unitRate: askDecimal({
    meaning: 'exact price per unit; absent where packs are priced',
    decimals: 12,
    otherwise: 'unknown',
  }),
  packs: askList({
    meaning: 'packs that are bought, priced instead of a rate',
    least: 0,
    most: 50,
    of: linePackQuestions,
    otherwise: 'unknown',
  }),
  rateIncludesTax: askWhether({
    meaning: 'whether the rate holds the tax of its group',
    otherwise: practice(false, 'trade rates exclude tax'),
  }),
  taxGroup: askCode({ meaning: 'tax group', description: 'Code of one of taxGroups.' }),
  spread: askPart({
    meaning: 'least and most of the amount, as factors of it, at the extent recorded',
    of: spreadQuestions,
    otherwise: 'unknown',
  }),
  atExtents: askList({
    meaning: 'what it comes to where more or less is found',
    note: 'What planning it again at other extents gave, the extents rising; straight between them and the recorded one. Absent: the same whatever is found.',
    least: 1,
    most: 20,
    of: atExtentQuestions,
    otherwise: 'unknown',
  }),
  depreciation: askDepreciation('Wear of the part, shown beside the amount, which it does not change.'),
  scope: askWhich({
    meaning: 'whether it is summed',
    note: 'Out: listed so that nobody can say it was forgotten, not summed.',
    choices: ['in', 'out'],
    otherwise: practice('in', 'lines are paid for'),
  }),
  note: askText({ meaning: 'note beside the line', atMost: 1000, otherwise: 'unknown' }),
};

export const taxGroupQuestions = {
  code: askCode({ meaning: 'code of the tax group' }),
  name: askText({ meaning: 'name of the tax, as it is printed', atMost: 80 }),
  percent: askDecimal({ meaning: 'percentage of tax', example: '20' }),
};

export const extentFactorQuestions = {
  low: ask({ unit: '1', meaning: 'least that may be found, over what is recorded', range: EXTENT }),
  likely: ask({ unit: '1', meaning: 'what will likely be found, over what is recorded', range: EXTENT }),
  high: ask({ unit: '1', meaning: 'most that may be found, over what is recorded', range: EXTENT }),
};

export const riskQuestions = {
  evidence: askWhich({
    meaning: 'how the extent was found',
    description: 'How the extent was found; decides how far it may grow.',
    choices: evidenceGrades,
    otherwise: 'unknown',
  }),
  extentFactor: askPart({
    meaning: 'the growth itself, instead of the evidence',
    of: extentFactorQuestions,
    otherwise: 'unknown',
  }),
  ...drawQuestions,
  stageZeroCost: askDecimal({
    meaning: 'price of opening and mapping before the rest is agreed',
    otherwise: 'unknown',
  }),
  worthOfRepair: askDecimal({ meaning: 'what the repair is worth to the owner', otherwise: 'unknown' }),
};

export const currencyAsked = {
  meaning: 'currency',
  note: 'Every price is in it; nothing is converted. A code of ISO 4217.',
  choices: currencyCodes,
  example: 'EUR',
} as const;

/** Lines to totals, and to a distribution where one is asked for. */
export const priceJobQuestions = {
  currency: askWhich(currencyAsked),
  lines: askList({
    meaning: 'what the job holds',
    least: 1,
    most: 2000,
    unlike: 'code',
    of: lineQuestions,
  }),
  taxGroups: askList({
    meaning: 'taxes that lines may bear',
    least: 1,
    most: 20,
    unlike: 'code',
    of: taxGroupQuestions,
  }),
  overheadPercent: askDecimal({
    meaning: 'overhead, as a percentage of the sum of the lines',
    otherwise: 'unknown',
  }),
  profitPercent: askDecimal({
    meaning: 'profit, as a percentage of lines and overhead',
    otherwise: 'unknown',
  }),
  contingencyPercent: askDecimal({
    meaning: 'contingency, as a percentage',
    note: 'Absent, with no contingencyAmount: P80 less the point where risk is asked for, else none.',
    otherwise: 'unknown',
  }),
  contingencyAmount: askDecimal({ meaning: 'contingency, as an amount', otherwise: 'unknown' }),
  rounding: askWhich({
    meaning: 'how each amount is rounded',
    choices: roundings,
    otherwise: practice(commercialRounding, 'as invoices are'),
  }),
  risk: askPart({ meaning: 'how the range is worked out', of: riskQuestions, otherwise: 'unknown' }),
};

export type RiskTerms = AnswersTo<typeof riskQuestions>;
export type PriceJobRequest = AnswersTo<typeof priceJobQuestions>;
