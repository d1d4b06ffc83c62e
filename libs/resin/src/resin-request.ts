import { ask, askLabel, askList, askText, askWhich, type AnswersTo, remembered } from '#lib/asking';
import type { Filler, ResinSystem } from '#lib/catalogue';
import { defaultWaste, stepCodes } from './step-definitions.js';

/** One labelled piece (of core, of skin, of fabric), listed in the order it is bedded. */
export const beddedPieceQuestions = {
  label: askLabel({
    meaning: 'label of the piece',
    description: 'Label on the piece and on the cut plan.',
    example: 'A1',
  }),
  areaM2: ask({
    meaning: 'area',
    description: 'Area of the piece that is bedded.',
    unit: 'm2',
    range: { above: 0, upTo: 1000 },
  }),
};
export type BeddedPiece = AnswersTo<typeof beddedPieceQuestions>;

/** One ply to wet out. */
export const plyToWetQuestions = {
  label: askLabel({ meaning: 'label of the piece', otherwise: 'unknown' }),
  areaM2: ask({
    meaning: 'area',
    description: 'Area of the ply that is wetted out.',
    unit: 'm2',
    range: { from: 0, upTo: 1000 },
  }),
  arealMassGPerM2: ask({
    meaning: 'areal mass',
    note: 'Dry fabric.',
    unit: 'g/m2',
    range: { above: 0, upTo: 10_000 },
  }),
  fibreMassFraction: ask({
    meaning: 'fibre mass fraction',
    description: 'Fibre mass fraction of the laid ply.',
    unit: '1',
    range: { above: 0.1, below: 0.95 },
  }),
};
export type PlyToWet = AnswersTo<typeof plyToWetQuestions>;

const wasteFraction = {
  unit: '1',
  meaning: 'waste as a share of net',
  range: { from: 0, upTo: 2 },
  otherwise: 'unknown',
} as const;

/**
 * One step that takes resin. Which fields count is the basis of the step: films and beds take `areaM2`
 * (and `litresPerM2` with `coats`, or `thicknessMm`), sections `lengthM`, `widthMm` and `heightMm`, scores `areaM2`
 * with `spacingMm`, `widthMm`, `depthMm`, plies `plies`, holes `holes`, `diameterMm` and `depthMm`.
 */
export const resinStepQuestions = {
  step: askWhich({
    meaning: 'step',
    note: 'Each kind has its own basis: films and beds take areaM2, sections lengthM and heightMm, scores areaM2 with spacing, width and depth, plies plies, potting holes.',
    choices: stepCodes,
  }),
  title: askText({
    meaning: 'title of the step',
    description: 'Words for the card, where two steps are of one kind.',
    atMost: 120,
    otherwise: 'unknown',
  }),
  areaM2: ask({
    meaning: 'area',
    description: 'Area that the step covers.',
    unit: 'm2',
    range: { from: 0, upTo: 1000 },
    otherwise: 'unknown',
  }),
  litresPerM2: ask({
    meaning: 'resin to the area',
    unit: 'l/m2',
    range: { above: 0, upTo: 10 },
    otherwise: 'unknown',
  }),
  coats: ask({
    meaning: 'number of coats',
    unit: '1',
    range: { from: 1, upTo: 20 },
    isWhole: true,
    otherwise: 'unknown',
  }),
  thicknessMm: ask({
    meaning: 'thickness',
    description: 'Mean thickness of a bed; of fairing, over all cycles.',
    unit: 'mm',
    range: { above: 0, upTo: 50 },
    otherwise: 'unknown',
  }),
  lengthM: ask({
    meaning: 'length',
    description: 'Length of a section: the edge of an undercut, the saw cut.',
    unit: 'm',
    range: { from: 0, upTo: 10_000 },
    otherwise: 'unknown',
  }),
  widthMm: ask({
    meaning: 'width',
    description: 'Width of the section: of the saw cut, of a fillet.',
    unit: 'mm',
    range: { above: 0, upTo: 500 },
    otherwise: 'unknown',
  }),
  heightMm: ask({
    meaning: 'height',
    unit: 'mm',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  spacingMm: ask({
    meaning: 'spacing of the scores',
    description: 'Spacing of scores.',
    unit: 'mm',
    range: { above: 0, upTo: 500 },
    otherwise: 'unknown',
  }),
  depthMm: ask({
    meaning: 'depth',
    description: 'Depth of scores, or of holes.',
    unit: 'mm',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  openFraction: ask({
    meaning: 'share of the scores that fills',
    unit: '1',
    range: { from: 0, upTo: 1 },
    otherwise: remembered(1, { low: 0.3, high: 1, because: 'scores pressed full from both sides' }),
  }),
  plies: askList({
    meaning: 'plies',
    description: 'Plies that the step wets out.',
    of: plyToWetQuestions,
    least: 1,
    most: 200,
    otherwise: 'unknown',
  }),
  holes: ask({
    meaning: 'number of holes',
    unit: '1',
    range: { from: 0, upTo: 100_000 },
    isWhole: true,
    otherwise: 'unknown',
  }),
  diameterMm: ask({
    meaning: 'diameter',
    description: 'Diameter to which the core is emptied at a hole.',
    unit: 'mm',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  filler: askText({
    meaning: 'filler',
    description: 'Code of a filler, or "none".',
    atMost: 80,
    otherwise: 'unknown',
  }),
  fillerPartsPerHundred: ask({
    meaning: 'filler to a hundred of resin',
    description: 'Parts of filler to 100 parts of mixed resin, by mass.',
    unit: '1',
    range: { from: 0, upTo: 300 },
    otherwise: 'unknown',
  }),
  wasteFraction: ask({ ...wasteFraction, description: 'Waste as a share of net, for this step.' }),
  minutesPerUnit: ask({
    meaning: 'time for one unit of the step',
    description: 'Minutes that one person takes for one unit of the step.',
    unit: 'min',
    range: { above: 0, upTo: 600 },
    otherwise: 'unknown',
  }),
  pieces: askList({
    meaning: 'pieces',
    description: 'Pieces in the order they are bedded; each goes to one pot.',
    of: beddedPieceQuestions,
    least: 1,
    most: 500,
    otherwise: 'unknown',
  }),
};
export type ResinStepRequest = AnswersTo<typeof resinStepQuestions>;

/** What every demand is asked, whether or not it is put in pots. */
export const demandQuestions = {
  steps: askList({ meaning: 'steps that take resin', of: resinStepQuestions, least: 1, most: 200 }),
  wasteFraction: ask({ ...wasteFraction, otherwise: defaultWaste }),
};

export interface ResinDemandRequest extends AnswersTo<typeof demandQuestions> {
  readonly resin: ResinSystem;
  /** Code of one of the resin's hardeners; the ratio belongs to it. */
  readonly hardener: string;
  readonly fillers: readonly Filler[];
}
