import {
  ask,
  askEach,
  askList,
  askOutline,
  askOutlines,
  askPart,
  askText,
  type AnswersTo,
  practice,
} from '#lib/asking';

/** More pieces than any deck needs: two pairs of sheets full of hand-sized pieces; it bounds memory and time. */
export const mostPieces = 1500;
/** Different outlines in one request. */
export const mostOutlines = 600;
const MOST_KINDS = 40;
/** A longer piece would leave the range in which the overlap test is exact. */
export const longestPieceMm = 16_000;

export const longestTimeLimitS = 120;

/** What every search for a layout is asked. */
export const searchQuestions = {
  seed: ask({
    unit: '1',
    meaning: 'seed of the search',
    note: 'The same seed gives the same layout.',
    range: { from: 0, upTo: 4_294_967_295 },
    isWhole: true,
    otherwise: practice(1, 'any seed will do, as long as it is the same'),
  }),
  workUnits: ask({
    unit: '1',
    meaning: 'thousands of pairs of pieces looked at',
    description: 'Thousands of pairs of pieces looked at; more never gives a worse layout.',
    range: { from: 0, upTo: 1e6 },
    otherwise: practice(4000, "a good layout of a deck's worth of pieces takes a fraction of it"),
  }),
  timeLimitS: ask({
    unit: 's',
    meaning: 'time for the search',
    note: 'After this time the best layout so far is the answer.',
    range: { from: 0.05, upTo: longestTimeLimitS },
    otherwise: practice(20, 'nobody waits longer for a drawing'),
  }),
};

export const kerfAsked = {
  unit: 'mm',
  meaning: 'width that the blade takes',
  range: { from: 0, upTo: 50 },
} as const;

export const edgeTrimAsked = {
  unit: 'mm',
  meaning: 'strip along every edge of the stock that is not used',
  range: { from: 0, upTo: 500 },
} as const;

export const sheetAvailableAsked = {
  unit: '1',
  meaning: 'how many there are',
  range: { from: 1, upTo: mostPieces },
  isWhole: true,
} as const;

export const sheetCostAsked = {
  unit: '1',
  meaning: 'cost in any one currency; costs are only compared',
  range: { from: 0, upTo: 1e9 },
} as const;

/** What takes the place of nothing: holes in a piece, bad spots in an offcut. */
export const holesAsked = { least: 0, most: 20 } as const;

export const pieceQuestions = {
  id: askText({ meaning: 'name of the piece, unique in the request', atMost: 60 }),
  outline: askOutline({ meaning: 'the edge of the piece' }),
  holes: askOutlines({
    ...holesAsked,
    meaning: 'holes in the piece; other pieces may be cut from them',
    otherwise: 'unknown',
  }),
  count: ask({
    unit: '1',
    meaning: 'how many alike',
    range: { from: 1, upTo: mostPieces },
    isWhole: true,
    otherwise: practice(1, 'a piece is one unless more are asked for'),
  }),
  turnsDeg: askEach({
    meaning: 'turns that keep the grain right',
    description:
      'Turns in degrees that keep the grain right, such as [0, 180]; an empty list means any turn.',
    least: 0,
    most: 72,
    of: ask({ unit: 'degrees', meaning: 'a turn', range: { from: -360, upTo: 360 } }),
  }),
};

export const stockQuestions = {
  id: askText({ meaning: 'name of the sheet, unique in the request', atMost: 60 }),
  outline: askOutline({ meaning: 'a whole, half or quarter sheet, or an offcut as it is' }),
  holes: askOutlines({ ...holesAsked, meaning: 'bad spots and cut-outs', otherwise: 'unknown' }),
  cost: ask(sheetCostAsked),
  available: ask({
    ...sheetAvailableAsked,
    description: 'How many there are; absent: as many as it takes. Needed for a sheet that costs nothing.',
    otherwise: 'unknown',
  }),
};

export const rollQuestions = {
  widthMm: ask({
    unit: 'mm',
    meaning: 'width of the roll',
    description: 'Width of the roll that pieces are cut from.',
    range: { from: 1, upTo: longestPieceMm },
  }),
  longestMm: ask({
    unit: 'mm',
    meaning: 'longest length that can be had',
    range: { above: 0, upTo: 1_000_000 },
    otherwise: 'unknown',
  }),
};

/** Any pieces on any stock: sheets and offcuts, or a roll. */
export const cuttingQuestions = {
  pieces: askList({
    meaning: 'what is to be cut',
    least: 1,
    most: mostOutlines,
    unlike: 'id',
    of: pieceQuestions,
  }),
  stock: askList({
    meaning: 'sheets and offcuts; give these or a roll',
    least: 1,
    most: MOST_KINDS,
    unlike: 'id',
    of: stockQuestions,
    otherwise: 'unknown',
  }),
  roll: askPart({
    meaning: 'a roll that plies come off: x runs along it',
    of: rollQuestions,
    otherwise: 'unknown',
  }),
  kerfMm: ask(kerfAsked),
  edgeTrimMm: ask(edgeTrimAsked),
  ...searchQuestions,
};

export type CuttingPlanRequest = AnswersTo<typeof cuttingQuestions>;
