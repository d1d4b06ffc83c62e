import { fraction } from '#lib/units';
import { assumed, entered, type Figure } from '#lib/provenance';
import type { CoreType } from '#lib/catalogue';
import { CLASS_DECK_SPAN_OVER_DEFLECTION } from '../yardstick/class-rules.js';
import type { Criteria } from './panel-request.js';
import { coreShearShare } from '../yardstick/yardstick.js';

export interface ResolvedCriteria {
  readonly skinShare: Figure<'1'>;
  readonly coreShearShare: (coreType: CoreType) => Figure<'1'>;
  readonly coreCrushShare: Figure<'1'>;
  readonly spanOverDeflection: Figure<'1'>;
}

/** What to judge by: as given, or the yardstick's own shares stated as assumptions. */
export function criteriaOf(given: Criteria): ResolvedCriteria {
  const yardstick = { source: 'ISO-12215-5-2008', clause: 'table 11' };
  return {
    skinShare: shareOf(given.skinShare, 0.5, 'skinShare', {
      meaning: 'usable share of a skin strength',
      because: 'the small-craft yardstick; class rules take 0.28 to 0.5',
      cite: yardstick,
      low: 0.278,
      high: 0.5,
    }),
    coreShearShare: (coreType) =>
      shareOf(given.coreShearShare, coreShearShare[coreType], 'coreShearShare', {
        meaning: `usable share of the shear strength of ${coreType.replaceAll('-', ' ')}`,
        because: 'the small-craft yardstick; class rules take 0.3 to 0.65',
        cite: yardstick,
        low: 0.3,
        high: 0.65,
      }),
    coreCrushShare: shareOf(given.coreCrushShare, 0.5, 'coreCrushShare', {
      meaning: 'usable share of the compressive strength of a core',
      because: 'half, as for the other strengths; no published share was found',
      cite: { source: 'COMMON-PRACTICE' },
      low: 0.33,
      high: 1,
    }),
    spanOverDeflection: shareOf(
      given.spanOverDeflection,
      CLASS_DECK_SPAN_OVER_DEFLECTION,
      'spanOverDeflection',
      {
        meaning: 'short span over deflection',
        because: 'a class rule for sandwich decks; the small-craft yardstick stands for about 59',
        cite: { source: 'LR-SSC-2020', clause: 'deck laminate limits' },
        low: 50,
        high: 100,
      },
    ),
  };
}

interface ShareWords {
  readonly meaning: string;
  readonly because: string;
  readonly cite: { readonly source: string; readonly clause?: string };
  readonly low: number;
  readonly high: number;
}

const shareOf = (
  given: number | undefined,
  otherwise: number,
  field: keyof Criteria,
  words: ShareWords,
): Figure<'1'> =>
  given === undefined
    ? assumed('1', fraction(otherwise), words.meaning, {
        at: `/criteria/${field}`,
        because: words.because,
        cite: words.cite,
        low: words.low,
        high: words.high,
      })
    : entered('1', fraction(given), words.meaning, `/criteria/${field}`);
