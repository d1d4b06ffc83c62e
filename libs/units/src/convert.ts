import { kelvin, kg, l, m, m2, mm2, mPa } from './brands.js';
import type { DegC, G, K, Kg, KPa, L, M, M2, Mm, Mm2, Mm3, MPa } from './brands.js';

const MM_PER_M = 1000;
const MM2_PER_M2 = 1_000_000;
const MM3_PER_L = 1_000_000;
const ZERO_CELSIUS_K = 273.15;

export const mFromMm = (length: Mm): M => m(length / MM_PER_M);
export const m2FromMm2 = (area: Mm2): M2 => m2(area / MM2_PER_M2);
export const mm2FromM2 = (area: M2): Mm2 => mm2(area * MM2_PER_M2);
export const lFromMm3 = (volume: Mm3): L => l(volume / MM3_PER_L);
export const kgFromG = (mass: G): Kg => kg(mass / 1000);
export const mPaFromKPa = (pressure: KPa): MPa => mPa(pressure / 1000);
export const kelvinFromDegC = (temperature: DegC): K => kelvin(temperature + ZERO_CELSIUS_K);
