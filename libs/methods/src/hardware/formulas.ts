import { inUnit } from '#lib/asking';
import { defineFormula } from '#lib/provenance';

const bolt = { symbol: 'd', unit: 'mm', meaning: 'diameter of the bolt', above: 1, upTo: 30 } as const;

/** Thickness of a backing plate of laminate board; metal is half of it. */
export const plateThickness = defineFormula({
  id: 'methods.plate-thickness',
  title: 'Thickness of a backing plate',
  cite: {
    source: 'METHODS-IN-PRINT',
    clause: 'tests of backing plates: 2/3 d in laminate board, 1/3 d in aluminium',
  },
  inputs: {
    boltMm: bolt,
    share: {
      symbol: 'k',
      unit: '1',
      meaning: 'share of the bolt: 2/3 laminate board, 1/3 aluminium',
      above: 0,
      upTo: 2,
    },
  },
  output: { symbol: 't', unit: 'mm', meaning: 'thickness' },
  evaluate: ({ boltMm, share }) => inUnit('mm', boltMm * share),
  // 6.35 x 2/3
  worked: [
    { at: 'by hand: 1/4 in bolt, laminate board', given: { boltMm: 6.35, share: 2 / 3 }, printed: '4.23' },
  ],
});

/** Side of the plate that one bolt wants. */
export const plateSidePerBolt = defineFormula({
  id: 'methods.plate-side',
  title: 'Plate under one bolt',
  cite: { source: 'METHODS-IN-PRINT', clause: 'tests of backing plates: 5 d' },
  inputs: { boltMm: bolt },
  output: { symbol: 'b', unit: 'mm', meaning: 'side or diameter' },
  evaluate: ({ boltMm }) => inUnit('mm', 5 * boltMm),
  worked: [{ at: 'by hand: 3/8 in bolt', given: { boltMm: 9.525 }, printed: '47.6' }],
});

/** Side of a square plate whose area is a multiple of the area of a square base. */
export const plateSideByArea = defineFormula({
  id: 'methods.plate-side-by-area',
  title: 'Side of a plate by the area of the base',
  cite: {
    source: 'METHODS-IN-PRINT',
    clause: 'stanchion bases: plate twice, pad one and a half times the area',
  },
  inputs: {
    baseMm: { symbol: 'a', unit: 'mm', meaning: 'side of the base', above: 0, upTo: 2000 },
    times: { symbol: 'k', unit: '1', meaning: 'plate over base, area', from: 1, upTo: 5 },
  },
  output: { symbol: 'b', unit: 'mm', meaning: 'side of the plate' },
  evaluate: ({ baseMm, times }) => inUnit('mm', baseMm * Math.sqrt(times)),
  // 75 x √2
  worked: [{ at: 'by hand: base of 75 mm, twice its area', given: { baseMm: 75, times: 2 }, printed: '106' }],
});

/** Pull in a bolt for a torque: F = T/(K d). */
export const clampLoad = defineFormula({
  id: 'methods.clamp-load',
  title: 'Clamp load of a tightened bolt',
  cite: { source: 'METHODS-IN-PRINT', clause: 'test magazine: lb = 20 x in-lb on a 1/4 in bolt, K = 0.2' },
  inputs: {
    torqueNm: { symbol: 'T', unit: 'N.m', meaning: 'torque', from: 0, upTo: 500 },
    boltMm: bolt,
    nutFactor: { symbol: 'K', unit: '1', meaning: 'nut factor', above: 0.05, upTo: 0.5 },
  },
  output: { symbol: 'F', unit: 'kN', meaning: 'clamp load' },
  evaluate: ({ torqueNm, boltMm, nutFactor }) => inUnit('kN', torqueNm / (nutFactor * boltMm)),
  // 70 in-lb = 7.909 N.m; / (0.2 x 6.35 mm) = 6.23 kN = 1,400 lb
  worked: [
    {
      at: '70 in-lb on 1/4 in: 1,400 lb',
      given: { torqueNm: 7.909, boltMm: 6.35, nutFactor: 0.2 },
      printed: '6.23',
    },
  ],
});

/** Pressure under a washer or a plate round a hole. */
export const washerPressure = defineFormula({
  id: 'methods.washer-pressure',
  title: 'Pressure under a washer',
  cite: { source: 'ARITHMETIC', note: 'p = F/(π/4 (D² − d²))' },
  inputs: {
    loadKN: { symbol: 'F', unit: 'kN', meaning: 'clamp load', from: 0, upTo: 500 },
    washerMm: { symbol: 'D', unit: 'mm', meaning: 'outside of the washer', above: 0, upTo: 500 },
    boltMm: bolt,
  },
  output: { symbol: 'p', unit: 'MPa', meaning: 'pressure' },
  evaluate: ({ loadKN, washerMm, boltMm }) =>
    inUnit('MPa', (loadKN * 1000) / ((Math.PI / 4) * (washerMm ** 2 - boltMm ** 2))),
  // 6,227/(π/4 (256 − 40.3)) = 36.8
  worked: [
    {
      at: 'by hand: 6.23 kN, 16 mm washer on 1/4 in',
      given: { loadKN: 6.227, washerMm: 16, boltMm: 6.35 },
      printed: '36.8',
    },
  ],
});

/** Sealant under a base, with what is squeezed out. */
export const sealantVolume = defineFormula({
  id: 'methods.sealant-volume',
  title: 'Sealant under a base',
  cite: { source: 'ARITHMETIC', note: 'twice (base x 1.6 mm + 2 ml for each bolt)' },
  inputs: {
    baseMm2: { symbol: 'A', unit: 'mm2', meaning: 'area of the base', above: 0, upTo: 1e6 },
    bolts: { symbol: 'n', unit: '1', meaning: 'bolts', from: 0, upTo: 200 },
  },
  output: { symbol: 'V', unit: 'ml', meaning: 'sealant' },
  evaluate: ({ baseMm2, bolts }) => inUnit('ml', 2 * ((baseMm2 * 1.6) / 1000 + 2 * bolts)),
  // 2 x (75² x 1.6/1000 + 8) = 34.0
  worked: [{ at: 'by hand: base of 75 x 75, four bolts', given: { baseMm2: 5625, bolts: 4 }, printed: '34' }],
});

/** Moment at the foot of a stanchion. */
export const railMoment = defineFormula({
  id: 'methods.rail-moment',
  title: 'Moment at the foot of a stanchion',
  cite: { source: 'ARITHMETIC', note: 'M = F h' },
  inputs: {
    forceN: { symbol: 'F', unit: 'N', meaning: 'horizontal force at the rail', from: 0, upTo: 10_000 },
    heightM: { symbol: 'h', unit: 'm', meaning: 'height of the rail', above: 0, upTo: 2 },
  },
  output: { symbol: 'M', unit: 'N.m', meaning: 'moment' },
  evaluate: ({ forceN, heightM }) => inUnit('N.m', forceN * heightM),
  worked: [{ at: 'by hand: 560 N at 0.61 m', given: { forceN: 560, heightM: 0.61 }, printed: '342' }],
});

export const hardwareFormulas = [
  plateThickness,
  plateSidePerBolt,
  plateSideByArea,
  clampLoad,
  washerPressure,
  sealantVolume,
  railMoment,
];
