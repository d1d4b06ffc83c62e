import type { FillerUse } from '#lib/catalogue';
import type { Default } from '#lib/asking';

export const stepCodes = [
  'seal',
  'undercut',
  'bed-core',
  'prewet',
  'core-kerfs',
  'bed-skin',
  'cut-kerf',
  'closing-plies',
  'top-laminate',
  'weave-fill',
  'peel-ply',
  'potting',
  'inject',
  'fairing',
] as const;
export type StepCode = (typeof stepCodes)[number];

/** How much a step takes is asked of its own basis: a film, a bed, a section, scores, plies or holes. */
export type StepBasis = 'film' | 'bed' | 'section' | 'kerfs' | 'plies' | 'holes';

export interface StepDefinition {
  readonly title: string;
  readonly basis: StepBasis;
  /** Thickened with a filler of this use; absent: neat resin. */
  readonly filler?: FillerUse;
  /** Default of the basis: l/m2 for films, mm for beds, mm wide for sections. */
  readonly amount?: Default;
  /** Minutes that one person takes for one unit (m2, m, hole, m2 of ply). */
  readonly minutesPerUnit: Default;
  /** Thickness at which the resin stands once spread, for its heat. */
  readonly layerMm: number;
}

const remembered = (value: number, low: number, high: number, because: string): Default => ({
  value,
  low,
  high,
  because,
  cite: { source: 'FROM-MEMORY' },
});
const pace = (value: number, low: number, high: number): Default =>
  remembered(value, low, high, 'pace of one practised person; time yours on the first batch');

export const stepDefinitions: Readonly<Record<StepCode, StepDefinition>> = {
  'seal': {
    title: 'Seal the inner skin',
    basis: 'film',
    layerMm: 0.25,
    minutesPerUnit: pace(8, 5, 12),
    amount: remembered(0.25, 0.15, 0.4, 'litres to wet out a ground skin'),
  },
  'undercut': {
    title: 'Fill the undercut and what is too narrow for core',
    basis: 'section',
    filler: 'bedding',
    layerMm: 12,
    minutesPerUnit: pace(10, 6, 18),
    amount: remembered(25, 20, 50, 'usual reach under the lip'),
  },
  'bed-core': {
    title: 'Bed the core',
    basis: 'bed',
    filler: 'bedding',
    layerMm: 1.5,
    minutesPerUnit: pace(25, 15, 45),
    amount: {
      value: 1.4,
      low: 0.9,
      high: 2.2,
      because: 'a 1/4 in notch leaves 0.89 mm, the rest fills an uneven skin',
      cite: { source: 'MAKER-NOTCH' },
    },
  },
  'prewet': {
    title: 'Pre-wet both faces of the core',
    basis: 'film',
    layerMm: 0.5,
    minutesPerUnit: pace(10, 6, 15),
    amount: remembered(0.5, 0.3, 0.8, 'end-grain balsa, both faces; foam takes 0.1 to 0.3'),
  },
  'core-kerfs': {
    title: 'Fill the scores of contour sheet',
    basis: 'kerfs',
    filler: 'bedding',
    layerMm: 7,
    minutesPerUnit: pace(10, 6, 15),
  },
  'bed-skin': {
    title: 'Bed the saved skin',
    basis: 'bed',
    filler: 'bedding',
    layerMm: 1.5,
    minutesPerUnit: pace(22, 13, 40),
    amount: remembered(1.3, 0.9, 2, 'as for the core, on a flatter face'),
  },
  'cut-kerf': {
    title: 'Fill the saw cut',
    basis: 'section',
    filler: 'bedding',
    layerMm: 5,
    minutesPerUnit: pace(4, 2, 7),
    amount: remembered(4, 2, 6, 'width of the saw cut'),
  },
  'closing-plies': {
    title: 'Wet out the closing tapes',
    basis: 'plies',
    layerMm: 2.5,
    minutesPerUnit: pace(25, 15, 40),
  },
  'top-laminate': {
    title: 'Wet out the new skin',
    basis: 'plies',
    layerMm: 2.5,
    minutesPerUnit: pace(22, 13, 35),
  },
  'weave-fill': {
    title: 'Fill the weave',
    basis: 'film',
    layerMm: 0.3,
    minutesPerUnit: pace(8, 5, 12),
    amount: {
      value: 0.089,
      low: 0.07,
      high: 0.115,
      because: 'a third of three roll coats with waste, less 15 % waste',
      cite: { source: 'MAKER-EPOXY-ESTIMATE' },
    },
  },
  'peel-ply': {
    title: 'Wet the peel ply',
    basis: 'film',
    layerMm: 0.1,
    minutesPerUnit: pace(5, 3, 8),
    amount: {
      value: 0.035,
      low: 0.026,
      high: 0.044,
      because: '30 to 50 g/m2 on one re-weighed sample',
      cite: { source: 'PEEL-PLY-2020' },
    },
  },
  'potting': {
    title: 'Pot the holes',
    basis: 'holes',
    filler: 'potting',
    layerMm: 12,
    minutesPerUnit: pace(2.5, 1.5, 5),
  },
  'inject': {
    title: 'Inject under the skin',
    basis: 'bed',
    layerMm: 1,
    minutesPerUnit: pace(200, 100, 500),
    amount: remembered(1, 0.5, 2, 'gap under a skin that has let go, mean over the area'),
  },
  'fairing': {
    title: 'Fair',
    basis: 'bed',
    filler: 'fairing',
    layerMm: 1,
    minutesPerUnit: pace(20, 12, 35),
    amount: remembered(2, 1, 4, 'all cycles together, mean thickness'),
  },
};

/** Published 15 to 20 %; amateurs have used double. */
export const defaultWaste: Default = {
  value: 0.18,
  low: 0.1,
  high: 0.3,
  because: 'between the 15 and 20 % that suppliers print; spread from trade logs',
  cite: { source: 'MAKER-WASTE' },
};
