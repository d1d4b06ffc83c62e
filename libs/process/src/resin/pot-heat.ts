import { rateRatioOf } from '../cure/arrhenius.js';

/** Gel of a diepoxide with a four-functional amine, 1/sqrt(3) of the bonds made. Source: [FLORY-1953], from memory. */
export const GEL_CONVERSION = 1 / Math.sqrt(3);

/** Still air with radiation on the outside of a pot or the face of a layer, W/(m2 K). From memory, band 7 to 15. */
export const SURFACE_LOSS_W_PER_M2K = 10;

export interface PotMatter {
  readonly heatJPerG: number;
  readonly specificHeatJPerGK: number;
  readonly activationEnergyKJPerMol: number;
  readonly densityGPerCm3: number;
}

/** What heats and what cools: the rate at the air's temperature (1/min) and the time constant of loss (min). */
export interface PotCase {
  readonly matter: PotMatter;
  readonly airC: number;
  readonly ratePerMin: number;
  readonly lossTimeMin: number;
}

export interface PotCourse {
  readonly gelMin: number;
  readonly peakC: number;
  /** Temperature when half of the time to gel has passed, which is when a pot should be empty. */
  readonly halfTimeC: number;
}

/**
 * Time constant of a pot as wide as it is high, with all its faces open: m cp / (h S), S = 1.5 pi D2, D = (4V/pi)^(1/3).
 *
 * m  massG  g   result  min
 *
 * Valid:  one temperature in the whole pot (small pots); a deep drum is hotter inside.
 * Source: [FROM-MEMORY] surface loss; geometry by hand
 * Worked: libs/process/src/resin/pot-heat.spec.ts
 */
export function potLossTimeMin(matter: PotMatter, massG: number): number {
  const volumeCm3 = massG / matter.densityGPerCm3;
  const diameterCm = Math.cbrt((4 * volumeCm3) / Math.PI);
  const surfaceM2 = (1.5 * Math.PI * diameterCm ** 2) / 10_000;
  return (massG * matter.specificHeatJPerGK) / (SURFACE_LOSS_W_PER_M2K * surfaceM2 * 60);
}

/** The same for a layer spread out, one face open: rho t cp / h. */
export const layerLossTimeMin = (matter: PotMatter, thicknessMm: number): number =>
  (matter.densityGPerCm3 * 1000 * thicknessMm * matter.specificHeatJPerGK) / (SURFACE_LOSS_W_PER_M2K * 60);

const MOST_CONVERSION_STEP = 0.01;
const MOST_WARMING_STEP_K = 2;
const MOST_STEPS = 4000;

/**
 * First-order cure that heats itself: da/dt = k(T)(1 - a); dT/dt = (H/cp) da/dt - (T - Ta)/tau.
 *
 * Each step holds the rate and lets the temperature relax exactly towards its momentary balance, so that thin layers
 * (small tau) are as stable as deep pots.
 * Valid:  a planning model of the self-heating of a pot, calibrated on the pot life printed for 100 g.
 * Source: [LEE-LOOS-SPRINGER-1982] heat balance; kinetics reduced to one step
 * Worked: libs/process/src/resin/pot-heat.spec.ts (adiabatic and isothermal limits)
 */
export function courseOf({ matter, airC, ratePerMin, lossTimeMin }: PotCase): PotCourse {
  const rise = matter.heatJPerG / matter.specificHeatJPerGK;
  const history: [minutes: number, temperatureC: number][] = [[0, airC]];
  let [minutes, temperatureC, conversion, gelMin, peakC] = [0, airC, 0, 0, airC];
  for (let step = 0; step < MOST_STEPS && conversion < 0.98; step += 1) {
    const speed = ratePerMin * rateRatioOf(matter.activationEnergyKJPerMol, airC, temperatureC);
    const rate = speed * (1 - conversion);
    const warming = rate * rise - (temperatureC - airC) / lossTimeMin;
    const dt = Math.min(MOST_CONVERSION_STEP / rate, MOST_WARMING_STEP_K / Math.max(Math.abs(warming), 1e-12));
    const balanceC = airC + rate * rise * lossTimeMin;
    temperatureC = balanceC + (temperatureC - balanceC) * Math.exp(-dt / lossTimeMin);
    conversion = 1 - (1 - conversion) * Math.exp(-speed * dt);
    minutes += dt;
    peakC = Math.max(peakC, temperatureC);
    if (gelMin === 0) history.push([minutes, temperatureC]);
    if (gelMin === 0 && conversion >= GEL_CONVERSION) gelMin = minutes - (conversion - GEL_CONVERSION) / rate;
    if (conversion >= GEL_CONVERSION && temperatureC < peakC - 1) break;
  }
  return { gelMin, peakC, halfTimeC: history.find(([at]) => at >= gelMin / 2)?.[1] ?? peakC };
}

/** The rate (1/min at the air's temperature) with which a pot of `massG` gels after `potLifeMin`. */
export function rateForPotLife(matter: PotMatter, airC: number, { massG, potLifeMin }: { readonly massG: number; readonly potLifeMin: number }): number {
  const lossTimeMin = potLossTimeMin(matter, massG);
  const isothermal = -Math.log(1 - GEL_CONVERSION) / potLifeMin;
  let [slow, fast] = [isothermal / 1000, isothermal * 1.05];
  for (let turn = 0; turn < 22; turn += 1) {
    const middle = Math.sqrt(slow * fast);
    const { gelMin } = courseOf({ matter, airC, ratePerMin: middle, lossTimeMin });
    if (gelMin > potLifeMin || gelMin === 0) slow = middle;
    else fast = middle;
  }
  return Math.sqrt(slow * fast);
}
