import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

const solids = { symbol: 'VS', unit: '%', meaning: 'solids by volume', above: 0, upTo: 100 } as const;
const dryFilm = { symbol: 'DFT', unit: 'um', meaning: 'dry film thickness', above: 0 } as const;

export const spreadingRate = defineFormula({
  id: 'process.spreading-rate',
  title: 'Theoretical spreading rate of a coating',
  cite: { source: 'MAKER-SPREADING-RATE', clause: 'TSR = 10 VS/DFT' },
  inputs: { volumeSolids: solids, dryFilmUm: dryFilm },
  output: { symbol: 'TSR', unit: 'm2/l', meaning: 'area covered by a litre' },
  evaluate: ({ volumeSolids, dryFilmUm }) => inUnit('m2/l', (10 * volumeSolids) / dryFilmUm),
  worked: [
    { at: 'table, 60 % and 150 um', given: { volumeSolids: 60, dryFilmUm: 150 }, printed: '4.0' },
    { at: 'table, 55 % and 75 um', given: { volumeSolids: 55, dryFilmUm: 75 }, printed: '7.3' },
  ],
});

export const practicalSpreadingRate = defineFormula({
  id: 'process.practical-spreading-rate',
  title: 'Practical spreading rate',
  cite: { source: 'COATINGS-TRADE-NOTES' },
  inputs: {
    theoretical: { symbol: 'TSR', unit: 'm2/l', meaning: 'theoretical spreading rate', above: 0 },
    lossFraction: {
      symbol: 'k',
      unit: '1',
      meaning: 'share lost on roller, tray and roughness',
      from: 0,
      below: 1,
    },
  },
  output: { symbol: 'PSR', unit: 'm2/l', meaning: 'area covered by a litre, losses taken out' },
  evaluate: ({ theoretical, lossFraction }) => inUnit('m2/l', theoretical * (1 - lossFraction)),
  worked: [{ at: '100 with 30 % lost', given: { theoretical: 100, lossFraction: 0.3 }, printed: '70' }],
});

export const thinnedSolids = defineFormula({
  id: 'process.thinned-solids',
  title: 'Solids of a thinned coating',
  cite: { source: 'COATINGS-TRADE-NOTES' },
  inputs: {
    volumeSolids: solids,
    thinner: { symbol: 'k', unit: '%', meaning: 'thinner added by volume', from: 0, upTo: 100 },
  },
  output: { symbol: 'VS', unit: '%', meaning: 'solids by volume after thinning' },
  evaluate: ({ volumeSolids, thinner }) => inUnit('%', volumeSolids / (1 + thinner / 100)),
  worked: [{ at: '50 % thinned by 10 %', given: { volumeSolids: 50, thinner: 10 }, printed: '45.45' }],
});

export const wetFilm = defineFormula({
  id: 'process.wet-film',
  title: 'Wet film to lay for a dry film',
  cite: { source: 'MAKER-SPREADING-RATE', clause: 'WFT = DFT/VS' },
  inputs: { dryFilmUm: dryFilm, volumeSolids: solids },
  output: { symbol: 'WFT', unit: 'um', meaning: 'wet film thickness' },
  evaluate: ({ dryFilmUm, volumeSolids }) => inUnit('um', (dryFilmUm * 100) / volumeSolids),
  worked: [{ at: 'by hand: 100 um at 50 %', given: { dryFilmUm: 100, volumeSolids: 50 }, printed: '200' }],
});

/** One reading of a spot is the mean of three. Source: [WEAVER-2006] on SSPC-PA 2. */
export const spotMean = (readings: readonly number[]): number =>
  readings.reduce((sum, reading) => sum + reading, 0) / readings.length;

export const coatingFormulas = [spreadingRate, practicalSpreadingRate, thinnedSolids, wetFilm];
