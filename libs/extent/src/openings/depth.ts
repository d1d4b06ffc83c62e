import { computeChecked, defineFormula, entered, derived, type Figure } from '#lib/provenance';
import { fraction, mm } from '#lib/units';
import { finding, roundTo, type Finding } from '../finding.js';
import type { OpeningRequest } from './request.js';
import type { RuleFigures, Rules } from './rules.js';

/** Deeper is unusual on an ordinary deck: half an inch. */
export const USUAL_DEPTH_MM = 12.7;

/** The saw, set once for all cuts. */
export interface CutDepth {
  /** Absent when no depth is safe; the finding says why. */
  readonly depthMm?: number;
  readonly figure?: Figure<'mm'>;
  readonly skinMm: { readonly least: number; readonly most: number; readonly measuredBy: 'plugs' | 'stated' };
  readonly findings: readonly Finding[];
}

export const cutDepth = defineFormula({
  id: 'extent.cut-depth',
  title: 'Depth of the saw',
  cite: { source: 'COMMON-PRACTICE', clause: 'the saw is set to the measured skin and a little more' },
  inputs: {
    skinMm: { symbol: 't', unit: 'mm', meaning: 'thickest skin on the cut', above: 0 },
    marginMm: { symbol: 'm', unit: 'mm', meaning: 'margin past the skin', from: 0 },
  },
  output: { symbol: 's', unit: 'mm', meaning: 'depth of cut' },
  evaluate: ({ skinMm, marginMm }) => mm(skinMm + marginMm),
  // By hand: a 6 mm skin and 3 mm more is 9 mm.
  worked: [{ at: 'by hand', given: { skinMm: 6, marginMm: 3 }, printed: '9' }],
});

/**
 * Skin and margin, unless that comes too near to the inner skin: then as deep as is safe, and where even the skin cannot
 * be cut through in safety, no depth at all.
 */
export function depthOf(request: OpeningRequest, rules: Rules, figures: RuleFigures): CutDepth {
  const stated =
    rules.access === 'from-above' ? request.outerSkin.thicknessMm : request.innerSkin.thicknessMm;
  const skinMm = measuredSkin(request, rules.access, stated);
  const varies =
    skinMm.measuredBy === 'plugs' &&
    Math.max(skinMm.most - stated, stated - skinMm.least) > Math.max(0.5, 0.15 * stated)
      ? [
          finding('skin-varies', {
            leastMm: roundTo(skinMm.least, 1),
            mostMm: roundTo(skinMm.most, 1),
            statedMm: stated,
          }),
        ]
      : [];
  const roomMm = skinMm.least + request.core.thicknessMm - rules.innerSkinClearanceMm;
  if (skinMm.most >= roomMm) {
    return {
      skinMm,
      findings: [
        ...varies,
        finding('depth-not-established', {
          skinMm: roundTo(skinMm.most, 1),
          roomMm: roundTo(roomMm, 1),
          clearanceMm: rules.innerSkinClearanceMm,
          ...skinsBy(rules.access),
        }),
      ],
    };
  }
  const wanted = computeChecked(cutDepth, {
    skinMm: skinFigure(request, rules.access, skinMm),
    marginMm: marginFigure(figures),
  });
  if (wanted.value <= roomMm)
    return {
      depthMm: wanted.value,
      figure: wanted,
      skinMm,
      findings: [...varies, ...deepFindings(wanted.value)],
    };
  const held = derived('mm', mm(roomMm), 'depth of cut held clear of the skin behind the core', {
    formula: 'extent.cut-depth-held',
    title: 'Depth of the saw, held clear of the skin behind the core',
    symbol: 's',
    cite: { source: 'COMMON-PRACTICE' },
    inputs: { wanted, clearance: figures.innerSkinClearanceMm },
  });
  const short = finding('depth-margin-short', {
    depthMm: roundTo(roomMm, 1),
    marginMm: roundTo(roomMm - skinMm.most, 1),
    clearanceMm: rules.innerSkinClearanceMm,
    ...skinsBy(rules.access),
  });
  return { depthMm: roomMm, figure: held, skinMm, findings: [...varies, short, ...deepFindings(roomMm)] };
}

const skinsBy = (access: Rules['access']): Readonly<Record<'cutSkin' | 'otherSkin', string>> =>
  access === 'from-below'
    ? { cutSkin: 'inner', otherSkin: 'outer' }
    : { cutSkin: 'outer', otherSkin: 'inner' };

const deepFindings = (depthMm: number): readonly Finding[] =>
  depthMm > USUAL_DEPTH_MM
    ? [finding('depth-over-usual', { depthMm: roundTo(depthMm, 1), usualMm: USUAL_DEPTH_MM })]
    : [];

function measuredSkin(
  { survey }: OpeningRequest,
  access: Rules['access'],
  stated: number,
): CutDepth['skinMm'] {
  const measured = (survey?.readings ?? []).flatMap((reading) => {
    if (reading.kind !== 'plug') return [];
    const skin = access === 'from-above' ? reading.outerSkinMm : reading.innerSkinMm;
    return skin === undefined ? [] : [skin];
  });
  if (measured.length === 0) return { least: stated, most: stated, measuredBy: 'stated' };
  return { least: Math.min(...measured), most: Math.max(...measured), measuredBy: 'plugs' };
}

function skinFigure(
  { survey }: OpeningRequest,
  access: Rules['access'],
  skinMm: CutDepth['skinMm'],
): Figure<'mm'> {
  const field = access === 'from-above' ? 'outerSkin' : 'innerSkin';
  if (skinMm.measuredBy === 'stated')
    return entered('mm', mm(skinMm.most), 'thickness of the skin to be cut', `/${field}/thicknessMm`);
  const index = (survey?.readings ?? []).findIndex(
    (reading) => reading.kind === 'plug' && reading[`${field}Mm`] === skinMm.most,
  );
  return entered(
    'mm',
    mm(skinMm.most),
    'thickest skin that a plug measured',
    `/survey/readings/${index}/${field}Mm`,
  );
}

const marginFigure = ({ depthMarginMm }: RuleFigures): Figure<'mm'> => ({
  ...depthMarginMm,
  unit: 'mm',
  value: mm(depthMarginMm.value),
});

export const taperWidth = defineFormula({
  id: 'extent.taper-width',
  title: 'Width of the taper beside the cut',
  cite: { source: 'COMMON-PRACTICE', clause: 'ratio times thickness' },
  inputs: {
    ratio: { symbol: 'r', unit: '1', meaning: 'taper ratio, length to one of thickness', above: 0 },
    thicknessMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the skin that stays', above: 0 },
  },
  output: { symbol: 'w', unit: 'mm', meaning: 'width of the taper' },
  evaluate: ({ ratio, thicknessMm }) => mm(ratio * thicknessMm),
  // By hand: 12:1 on 3 mm is 36 mm.
  worked: [{ at: 'by hand', given: { ratio: 12, thicknessMm: 3 }, printed: '36' }],
});

export function taperFigure(request: OpeningRequest, rules: Rules, figures: RuleFigures): Figure<'mm'> {
  const field = rules.access === 'from-above' ? 'outerSkin' : 'innerSkin';
  const thickness = entered(
    'mm',
    mm(request[field].thicknessMm),
    'thickness of the skin that stays',
    `/${field}/thicknessMm`,
  );
  return computeChecked(taperWidth, {
    ratio: { ...figures.taperRatio, unit: '1', value: fraction(figures.taperRatio.value) },
    thicknessMm: thickness,
  });
}
