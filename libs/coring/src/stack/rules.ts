import { assumed, entered, type Figure } from '#lib/provenance';
import { kPa, mm } from '#lib/units';
import type { StackRequest } from './request.js';

/** The rules in force, each entered or assumed. */
export interface RuleFigures {
  readonly bondLine: Figure<'mm'>;
  readonly leastBondLine: Figure<'mm'>;
  readonly mostBondLine: Figure<'mm'>;
  readonly wetLine: Figure<'mm'>;
  readonly lowestFlush: Figure<'mm'>;
  readonly highestFlush: Figure<'mm'>;
}

interface Usual {
  readonly meaning: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly because: string;
  readonly cite: { readonly source: string; readonly note?: string };
}

const usual = {
  bondLineMm: {
    meaning: 'usual bond line',
    value: 0.89,
    low: 0.25,
    high: 2.2,
    because: 'what a 1/4 in notch leaves',
    cite: { source: 'MAKER-NOTCH', note: '1/4 in notch, 0.89 l/m2' },
  },
  leastBondLineMm: {
    meaning: 'thinnest bond line',
    value: 0.25,
    low: 0.2,
    high: 0.64,
    because: 'a tight bed on balsa, pressed',
    cite: {
      source: 'FROM-MEMORY',
      note: "a maker's calculator: 0.25 to 0.64 mm on balsa, 0.2 to 0.5 mm on foam, each side",
    },
  },
  mostBondLineMm: {
    meaning: 'thickest bond line',
    value: 3,
    low: 1,
    high: 3,
    because: 'a paste bed of 1 to 3 mm',
    cite: { source: 'COMMON-PRACTICE' },
  },
  wetLineMm: {
    meaning: 'resin under plies laid wet on the core',
    value: 0.1,
    low: 0,
    high: 0.2,
    because: 'the first ply lies on the core in its own resin; there is no bed of paste',
    cite: { source: 'FROM-MEMORY', note: '0 to 0.2 mm' },
  },
  lowestFlushMm: {
    meaning: 'lowest the skin may sit',
    value: -1,
    because: 'a millimetre low is faired',
    cite: { source: 'COMMON-PRACTICE' },
  },
  highestFlushMm: {
    meaning: 'highest the skin may sit',
    value: 0,
    because: 'a proud skin cannot be faired away',
    cite: { source: 'DECK-REPAIR-PRACTICE' },
  },
} as const satisfies Readonly<Record<string, Usual>>;

function ruleOf(key: keyof typeof usual, given: number | undefined): Figure<'mm'> {
  const { meaning, value, because, cite, ...spread }: Usual = usual[key];
  const at = `/rules/${key}`;
  return given === undefined
    ? assumed('mm', mm(value), meaning, { at, because, cite, ...spread })
    : entered('mm', mm(given), meaning, at);
}

export const ruleFigures = ({ rules = {} }: StackRequest): RuleFigures => ({
  bondLine: ruleOf('bondLineMm', rules.bondLineMm),
  leastBondLine: ruleOf('leastBondLineMm', rules.leastBondLineMm),
  mostBondLine: ruleOf('mostBondLineMm', rules.mostBondLineMm),
  wetLine: ruleOf('wetLineMm', rules.wetLineMm),
  lowestFlush: ruleOf('lowestFlushMm', rules.lowestFlushMm),
  highestFlush: ruleOf('highestFlushMm', rules.highestFlushMm),
});

export const pressureFigure = (given: number | undefined): Figure<'kPa'> =>
  given === undefined
    ? assumed('kPa', kPa(2), 'pressure that holds the core down', {
        at: '/camber/pressureKPa',
        because: 'a 20 kg bag on 0.1 m2',
        cite: { source: 'ARITHMETIC', note: '20 kg x 9.81 / 0.1 m2 = 1.96 kPa' },
        low: 1,
        high: 50,
      })
    : entered('kPa', kPa(given), 'pressure that holds the core down', '/camber/pressureKPa');

export const gapFigure = (given: number | undefined): Figure<'mm'> =>
  given === undefined
    ? assumed('mm', mm(1.5), 'gap that the bed fills', {
        at: '/camber/mostGapMm',
        because: 'the largest piece lies within 1 to 1.5 mm of the skin',
        cite: { source: 'FROM-MEMORY' },
        low: 1,
        high: 1.5,
      })
    : entered('mm', mm(given), 'gap that the bed fills', '/camber/mostGapMm');
