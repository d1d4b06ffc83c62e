import { defineFormula } from '#lib/provenance';
import { inUnit } from '#lib/asking';

/** Emissivity of a clear sky seen from the ground, by the dew point of the air there. */
export const clearSkyEmissivity = defineFormula({
  id: 'process.clear-sky-emissivity',
  title: 'Emissivity of a clear sky',
  cite: {
    source: 'BERDAHL-MARTIN-1984',
    note: 'monthly mean, without the terms for the hour and the pressure',
  },
  inputs: {
    dewC: { symbol: 'Td', unit: 'degC', meaning: 'dew point of the air at the ground', from: -60, upTo: 40 },
  },
  output: { symbol: 'ε', unit: '1', meaning: 'emissivity of the sky' },
  evaluate: ({ dewC }) => inUnit('1', skyEmissivity(dewC)),
  // 0.711 + 0.56 x 0.05 + 0.73 x 0.05^2 = 0.711 + 0.028 + 0.001825.
  worked: [{ at: 'by hand, dew point 5 degC', given: { dewC: 5 }, printed: '0.7408' }],
});

const skyEmissivity = (dewC: number): number => 0.711 + 0.56 * (dewC / 100) + 0.73 * (dewC / 100) ** 2;

/** The air over a deck at night. */
export interface NightAir {
  readonly airC: number;
  readonly dewC: number;
  readonly windMPerS: number;
  /** Share of the sky that is under cloud; 0 is the coldest. */
  readonly cloudShare: number;
}

const STEFAN_BOLTZMANN_W_PER_M2K4 = 5.670374e-8;
const ZERO_C_IN_K = 273.15;
/** Paint, gelcoat and glass alike. Source: [FROM-MEMORY]. */
const DECK_EMISSIVITY = 0.9;

/**
 * How much colder than the air an open deck becomes at night: what it radiates less what the sky radiates back is what
 * the air brings, ε σ (T⁴ − εs Ta⁴) = h (Ta − T).
 *
 * εs  skyEmissivity  1         clear sky; under clouds (1 − 0.84 c) εs + 0.84 c
 * h   5.7 + 3.8 v    W/(m2 K)  air over a flat plate, v in m/s
 *
 * Valid:  steady; the core keeps the warmth of the cabin from the skin, and no heat of dew is counted, so that the
 *         deck comes out rather too cold.
 * Source: [BERDAHL-MARTIN-1984] clear sky, [CAMPBELL-NORMAN-1998] clouds, [MCADAMS-1954] air
 * Worked: test/reference/cases/cure-air.ts
 */
export function nightCoolingK({ airC, dewC, windMPerS, cloudShare }: NightAir): number {
  const airK = airC + ZERO_C_IN_K;
  const skyShare = (1 - 0.84 * cloudShare) * skyEmissivity(dewC) + 0.84 * cloudShare;
  const skyW = DECK_EMISSIVITY * STEFAN_BOLTZMANN_W_PER_M2K4 * skyShare * airK ** 4;
  const convection = 5.7 + 3.8 * windMPerS;
  let deckK = airK;
  for (let step = 0; step < NEWTON_STEPS; step += 1) {
    const lost =
      DECK_EMISSIVITY * STEFAN_BOLTZMANN_W_PER_M2K4 * deckK ** 4 - skyW - convection * (airK - deckK);
    deckK -= lost / (4 * DECK_EMISSIVITY * STEFAN_BOLTZMANN_W_PER_M2K4 * deckK ** 3 + convection);
  }
  return Math.max(0, airK - deckK);
}

/** The balance is almost straight over a few kelvin. */
const NEWTON_STEPS = 4;

export const nightSkyFormulas = [clearSkyEmissivity];
