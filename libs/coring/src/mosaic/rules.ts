import { assumed, entered, type Cite, type Figure } from '#lib/provenance';
import { m2, mm } from '#lib/units';
import type { MosaicRules } from './request.js';

/** The rules in force as numbers, and as figures that say where each came from. */
export interface MosaicNumbers {
  readonly handPieceM2: number;
  readonly jointGapMm: number;
  readonly staggerMm: number;
  readonly narrowestMm: number;
  readonly supportClearanceMm: number;
  readonly bleedSpacingMm: number;
  readonly bleedDiameterMm: number;
}

interface Usual {
  readonly meaning: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly because: string;
  readonly cite: Cite;
}

const usual: Readonly<Record<keyof MosaicNumbers, Usual>> = {
  handPieceM2: {
    meaning: 'largest piece under a lip or of plain sheet',
    value: 0.046,
    because: 'about half a square foot is bedded by hand without trapping air',
    cite: { source: 'COMMON-PRACTICE' },
  },
  jointGapMm: {
    meaning: 'gap at each joint',
    value: 2,
    low: 1,
    high: 3,
    because: 'room for the bedding to rise between pieces',
    cite: { source: 'FROM-MEMORY' },
  },
  staggerMm: {
    meaning: 'distance between joints of neighbouring rows',
    value: 50,
    low: 25,
    high: 100,
    because: 'joints that line up make a hinge',
    cite: { source: 'COMMON-PRACTICE' },
  },
  narrowestMm: {
    meaning: 'narrowest piece',
    value: 40,
    low: 25,
    high: 60,
    because: 'slivers break and are lost',
    cite: { source: 'FROM-MEMORY' },
  },
  supportClearanceMm: {
    meaning: 'distance of joints from a support',
    value: 15,
    low: 10,
    high: 25,
    because: 'the core carries its shear there',
    cite: { source: 'COMMON-PRACTICE' },
  },
  bleedSpacingMm: {
    meaning: 'spacing of bleed holes',
    value: 100,
    low: 75,
    high: 150,
    because: 'air under unscored core gets out',
    cite: { source: 'FROM-MEMORY' },
  },
  bleedDiameterMm: {
    meaning: 'diameter of bleed holes',
    value: 4,
    low: 3,
    high: 5,
    because: 'air under unscored core gets out',
    cite: { source: 'FROM-MEMORY' },
  },
};

const keys = [
  'handPieceM2',
  'jointGapMm',
  'staggerMm',
  'narrowestMm',
  'supportClearanceMm',
  'bleedSpacingMm',
  'bleedDiameterMm',
] as const;

export function mosaicNumbers(rules: MosaicRules = {}): MosaicNumbers {
  const [
    handPieceM2,
    jointGapMm,
    staggerMm,
    narrowestMm,
    supportClearanceMm,
    bleedSpacingMm,
    bleedDiameterMm,
  ] = keys.map((key) => rules[key] ?? usual[key].value);
  return {
    handPieceM2,
    jointGapMm,
    staggerMm,
    narrowestMm,
    supportClearanceMm,
    bleedSpacingMm,
    bleedDiameterMm,
  };
}

export const mosaicFigures = (rules: MosaicRules = {}): readonly Figure[] =>
  keys.map((key): Figure => {
    const { meaning, value, because, cite, ...spread }: Usual = usual[key];
    const given = rules[key];
    const at = `/rules/${key}`;
    if (key === 'handPieceM2') {
      return given === undefined
        ? assumed('m2', m2(value), meaning, { at, because, cite })
        : entered('m2', m2(given), meaning, at);
    }
    return given === undefined
      ? assumed('mm', mm(value), meaning, { at, because, cite, ...spread })
      : entered('mm', mm(given), meaning, at);
  });

/** Ranges that a caller's rules must keep. */
export const ruleRanges: Readonly<Record<keyof MosaicNumbers, readonly [number, number]>> = {
  handPieceM2: [0.0025, 4],
  jointGapMm: [0, 10],
  staggerMm: [0, 500],
  narrowestMm: [5, 300],
  supportClearanceMm: [0, 200],
  bleedSpacingMm: [20, 500],
  bleedDiameterMm: [1, 12],
};
