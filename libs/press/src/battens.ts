import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

/** One pound, inch and pound-force of the handbook's inch forms, in N and mm. */
const NEWTON_PER_LBF = 4.4482216152605;
const MM_PER_IN_UNIT = 25.4;

/** N/mm2 for each lbf/in2 of a withdrawal constant that multiplies D and L. Source: unit definitions. */
export const screwConstantSi = (inchPound: number): number =>
  (inchPound * NEWTON_PER_LBF) / MM_PER_IN_UNIT ** 2;
/** N/mm^1.75 for each unit of a lag constant that multiplies D^0.75 and L. Source: unit definitions. */
export const lagConstantSi = (inchPound: number): number =>
  (inchPound * NEWTON_PER_LBF) / MM_PER_IN_UNIT ** 1.75;

export const ULTIMATE_SCREW = screwConstantSi(15700);
export const ALLOWABLE_SCREW = screwConstantSi(2850);
export const ALLOWABLE_LAG = lagConstantSi(1800);

const screwInputs = {
  gravity: {
    symbol: 'G',
    unit: '1',
    meaning: 'specific gravity of the wood, oven-dry',
    above: 0.1,
    upTo: 1.2,
  },
  diameterMm: { symbol: 'D', unit: 'mm', meaning: 'shank diameter of the screw', above: 1, upTo: 12 },
  threadMm: { symbol: 'L', unit: 'mm', meaning: 'thread in the wood', above: 0, upTo: 150 },
} as const;

export const screwUltimate = defineFormula({
  id: 'process.screw-withdrawal-ultimate',
  title: 'Withdrawal of a wood screw from side grain, ultimate',
  cite: { source: 'FPL-GTR-282-CH8', clause: 'eq. 8-10' },
  inputs: screwInputs,
  output: { symbol: 'p', unit: 'N', meaning: 'ultimate withdrawal' },
  evaluate: ({ gravity, diameterMm, threadMm }) =>
    inUnit('N', ULTIMATE_SCREW * gravity ** 2 * diameterMm * threadMm),
  // 15,700 x 0.7^2 x 0.164 in x 1 in = 1,261.7 lbf = 5,612 N; the page prints 1,262 lbf.
  worked: [
    {
      at: 'G 0.7, No. 8, one inch: 1262 lbf',
      given: { gravity: 0.7, diameterMm: 4.1656, threadMm: 25.4 },
      printed: '5612',
    },
  ],
});

export const screwAllowable = defineFormula({
  id: 'process.screw-withdrawal-allowable',
  title: 'Withdrawal of a wood screw from side grain, allowable',
  cite: { source: 'NDS-2015', clause: 'W = 2850 G² D' },
  inputs: screwInputs,
  output: { symbol: 'W', unit: 'N', meaning: 'allowable withdrawal' },
  evaluate: ({ gravity, diameterMm, threadMm }) =>
    inUnit('N', ALLOWABLE_SCREW * gravity ** 2 * diameterMm * threadMm),
  // 2,850 lbf/in2 is 19.650 N/mm2; x 0.25 x 4.2 x 10 = 206.3 N.
  worked: [
    {
      at: 'by hand: G 0.50, 4.2 mm, 10 mm of thread',
      given: { gravity: 0.5, diameterMm: 4.2, threadMm: 10 },
      printed: '206.3',
    },
  ],
});

export const lagAllowable = defineFormula({
  id: 'process.lag-withdrawal-allowable',
  title: 'Withdrawal of a lag screw from side grain, allowable',
  cite: { source: 'NDS-2015', clause: 'table 12.2A, W = 1800 G^1.5 D^0.75' },
  inputs: screwInputs,
  output: { symbol: 'W', unit: 'N', meaning: 'allowable withdrawal' },
  evaluate: ({ gravity, diameterMm, threadMm }) =>
    inUnit('N', ALLOWABLE_LAG * gravity ** 1.5 * diameterMm ** 0.75 * threadMm),
  // Table cell 225 lbf/in at G 0.50, 1/4 in: 225 x 4.44822 = 1000.8 N over one inch.
  worked: [
    {
      at: 'table 12.2A, G 0.50, 1/4 in, 225 lbf over one inch',
      given: { gravity: 0.5, diameterMm: 6.35, threadMm: 25.4 },
      printed: '1001',
    },
  ],
});

/**
 * Least interlaminar shear strength of hand-laid mat, and what a temporary screw is divided by.
 *
 * Source: [ISO-12215-5-2008] Annex C at a fibre mass fraction of 0.30, 17.25 MPa, times its factor 0.8; [FROM-MEMORY] the factor
 */
export const LEAST_INTERLAMINAR_MPA = 13.8;
export const SAFETY_OF_A_SCREW = 3;

/**
 * Pull that the laminate round a thread holds, as shear between its plies over the cylinder of the thread: F = π D t τ/n.
 *
 * Valid:  a conservative stand-in, no published table gives the withdrawal of screws from hand-laid glass. Threads shear
 *         across the plies, which is several times as strong; the least interlaminar strength is taken, a third of it, and nothing for core or backing below. A pull test on the spot is the proof.
 */
export const laminateThreadShear = defineFormula({
  id: 'process.laminate-thread-shear',
  title: 'Pull on a screw in glass laminate, by thread shear',
  cite: { source: 'FROM-MEMORY', note: 'F = π D t τ/n, least interlaminar strength of hand-laid mat' },
  inputs: {
    diameterMm: { symbol: 'D', unit: 'mm', meaning: 'diameter of the thread', above: 1, upTo: 12 },
    threadMm: {
      symbol: 't',
      unit: 'mm',
      meaning: 'laminate that the thread goes through',
      above: 0,
      upTo: 150,
    },
    strengthMPa: { symbol: 'τ', unit: 'MPa', meaning: 'interlaminar shear strength', above: 0, upTo: 100 },
    safety: { symbol: 'n', unit: '1', meaning: 'safety factor', from: 1, upTo: 20 },
  },
  output: { symbol: 'F', unit: 'N', meaning: 'pull allowed' },
  evaluate: ({ diameterMm, threadMm, strengthMPa, safety }) =>
    inUnit('N', (Math.PI * diameterMm * threadMm * strengthMPa) / safety),
  // π x 4.2 x 2 = 26.39 mm2, x 13.8/3 = 121.4 N.
  worked: [
    {
      at: 'by hand: 4.2 mm screw through 2 mm of laminate, 13.8 MPa, a third of it',
      given: { diameterMm: 4.2, threadMm: 2, strengthMPa: 13.8, safety: 3 },
      printed: '121.4',
    },
  ],
});

/** Load that one screw of a batten holds down. */
export const battenScrewLoad = defineFormula({
  id: 'process.batten-screw-load',
  title: 'Pull on a screw of a batten',
  cite: { source: 'CIVIL-BEAM-TABLE', clause: 'uniform load' },
  inputs: {
    pressureKPa: { symbol: 'p', unit: 'kPa', meaning: 'pressure under the batten', from: 0 },
    widthMm: { symbol: 'b', unit: 'mm', meaning: 'width of deck that one batten presses', above: 0 },
    spacingMm: { symbol: 's', unit: 'mm', meaning: 'spacing of the screws', above: 0 },
  },
  output: { symbol: 'F', unit: 'N', meaning: 'pull on one screw' },
  evaluate: ({ pressureKPa, widthMm, spacingMm }) => inUnit('N', (pressureKPa * widthMm * spacingMm) / 1000),
  // 0.030 N/mm2 x 70 mm x 200 mm = 420 N.
  worked: [
    {
      at: 'by hand: 30 kPa, 70 mm, 200 mm',
      given: { pressureKPa: 30, widthMm: 70, spacingMm: 200 },
      printed: '420',
    },
  ],
});

/** Sag of a batten between two screws, interior span of a long batten: w s4/(384 E I). Simply supported it is five times that. */
export const battenSag = defineFormula({
  id: 'process.batten-sag',
  title: 'Sag of a batten between screws',
  cite: { source: 'CIVIL-BEAM-TABLE', clause: 'case 5, both ends fixed' },
  inputs: {
    lineLoad: { symbol: 'w', unit: 'N/mm', meaning: 'load on the batten', from: 0 },
    spacingMm: { symbol: 's', unit: 'mm', meaning: 'spacing of the screws', above: 0 },
    modulusMPa: { symbol: 'E', unit: 'MPa', meaning: 'modulus of the batten', above: 0 },
    widthMm: { symbol: 'b', unit: 'mm', meaning: 'width of the batten', above: 0 },
    heightMm: { symbol: 'h', unit: 'mm', meaning: 'height of the batten', above: 0 },
  },
  output: { symbol: 'δ', unit: 'mm', meaning: 'sag at midspan' },
  evaluate: ({ lineLoad, spacingMm, modulusMPa, widthMm, heightMm }) =>
    inUnit('mm', (lineLoad * spacingMm ** 4) / (384 * modulusMPa * ((widthMm * heightMm ** 3) / 12))),
  // I = 70 x 20^3/12 = 46,667 mm4; 2.1 x 200^4/(384 x 9000 x 46,667) = 0.02083 mm.
  worked: [
    {
      at: 'by hand: 70 x 20 mm batten, 9 GPa, 30 kPa, screws at 200 mm',
      given: { lineLoad: 2.1, spacingMm: 200, modulusMPa: 9000, widthMm: 70, heightMm: 20 },
      printed: '0.0208',
    },
  ],
});

export const battenFormulas = [
  screwUltimate,
  screwAllowable,
  lagAllowable,
  laminateThreadShear,
  battenScrewLoad,
  battenSag,
];
