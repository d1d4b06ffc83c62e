import {
  degC,
  fraction,
  g,
  gPerM2,
  h,
  kelvin,
  kg,
  kgPerM2,
  kPa,
  l,
  m,
  m2,
  min,
  mm,
  mm2,
  mm3,
  mPa,
  percent,
} from './brands.js';
import type {
  DegC,
  Fraction,
  G,
  GPerM2,
  H,
  K,
  Kg,
  KgPerM2,
  KPa,
  L,
  M,
  M2,
  Min,
  Mm,
  Mm2,
  Mm3,
  MPa,
  Percent,
} from './brands.js';

const MM_PER_M = 1000;
const MM2_PER_M2 = 1_000_000;
const MM3_PER_L = 1_000_000;
const ZERO_CELSIUS_K = 273.15;

export const mFromMm = (length: Mm): M => m(length / MM_PER_M);
export const mmFromM = (length: M): Mm => mm(length * MM_PER_M);
export const m2FromMm2 = (area: Mm2): M2 => m2(area / MM2_PER_M2);
export const mm2FromM2 = (area: M2): Mm2 => mm2(area * MM2_PER_M2);
export const lFromMm3 = (volume: Mm3): L => l(volume / MM3_PER_L);
export const mm3FromL = (volume: L): Mm3 => mm3(volume * MM3_PER_L);
export const gFromKg = (mass: Kg): G => g(mass * 1000);
export const kgFromG = (mass: G): Kg => kg(mass / 1000);
export const kgPerM2FromGPerM2 = (areal: GPerM2): KgPerM2 => kgPerM2(areal / 1000);
export const gPerM2FromKgPerM2 = (areal: KgPerM2): GPerM2 => gPerM2(areal * 1000);
export const mPaFromKPa = (pressure: KPa): MPa => mPa(pressure / 1000);
export const kPaFromMPa = (pressure: MPa): KPa => kPa(pressure * 1000);
export const kelvinFromDegC = (temperature: DegC): K => kelvin(temperature + ZERO_CELSIUS_K);
export const degCFromKelvin = (temperature: K): DegC => degC(temperature - ZERO_CELSIUS_K);
export const minFromH = (time: H): Min => min(time * 60);
export const hFromMin = (time: Min): H => h(time / 60);
export const fractionFromPercent = (share: Percent): Fraction => fraction(share / 100);
export const percentFromFraction = (share: Fraction): Percent => percent(share * 100);
